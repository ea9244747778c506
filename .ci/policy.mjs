/**
 * What a page of Slipbaste may load and do: its own files, and pictures made on the device. Nothing from
 * elsewhere, no inline script, no inline style. index.html carries the same text in a meta element, so that it
 * also holds on a host that sends no header of ours; a test keeps the two equal.
 */
export const PAGE_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The header adds who may frame the page, which a meta element cannot say: nobody. */
export const HEADER_POLICY = `${PAGE_POLICY}; frame-ancestors 'none'`;
