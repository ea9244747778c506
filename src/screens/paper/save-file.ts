import { canShare } from '../../ui/share.ts';

/** Offers a file as the device does it: by its share sheet, or as a download. Call it straight from a touch. */
export function offerFile(file: File): void {
  if (canShare(file)) {
    // Turning away from the share sheet is no failure.
    navigator.share({ files: [file], title: file.name }).catch(() => {});
    return;
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  // Some browsers begin to read the file only after the touch has been dealt with.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A file name in plain letters. */
export function fileName(name: string, ending: 'pdf' | 'svg' | 'json'): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 80);
  return `${plain || 'pattern'}.${ending}`;
}
