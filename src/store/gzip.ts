import { bad, good, type Result } from '../length/result.ts';

const MAGIC = [0x1f, 0x8b] as const;

/** A length of bytes for people, in whole megabytes. */
export const inMegabytes = (bytes: number): string => `${Math.ceil(bytes / 1_000_000)} MB`;

/** The text as gzip (RFC 1952), or as it is where the browser cannot compress. */
export const deflate = async (text: string): Promise<Blob> => {
  const plain = new Blob([text]);
  if (typeof CompressionStream === 'undefined') return plain;
  return new Response(plain.stream().pipeThrough(new CompressionStream('gzip'))).blob();
};

/**
 * The text of a file, which may be gzip or plain UTF-8. Reading stops as soon as more than `most` bytes have come out,
 * so a small file cannot fill the memory. Refused, in words: too long, not whole, or not text.
 */
export const inflate = async (file: Blob, most: number): Promise<Result<string, string>> => {
  const head = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  const zipped = head[0] === MAGIC[0] && head[1] === MAGIC[1];
  if (zipped && typeof DecompressionStream === 'undefined') {
    return bad(
      'This browser cannot read compressed files. Update the browser, or import the file on another device.',
    );
  }
  const bytes: ReadableStream<Uint8Array> = zipped
    ? file.stream().pipeThrough(new DecompressionStream('gzip'))
    : file.stream();
  const reader = bytes.getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const parts: string[] = [];
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      length += value.byteLength;
      if (length > most) {
        void reader.cancel().catch(() => undefined);
        return bad(`The file holds more than ${inMegabytes(most)} of text; no outfit needs as much.`);
      }
      parts.push(decoder.decode(value, { stream: true }));
    }
    parts.push(decoder.decode());
  } catch {
    return bad('The file is damaged or only part of it is here. Copy it again from where it came.');
  }
  return good(parts.join(''));
};
