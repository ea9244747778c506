/** Sharing a file fits where a download has nowhere to go: on a phone or tablet that offers it. */
export const canShare = (file: File): boolean =>
  matchMedia('(pointer: coarse)').matches && (navigator.canShare?.({ files: [file] }) ?? false);
