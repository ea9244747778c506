import { MOST_PHOTO } from '../../store/read-fitting.ts';

/** Longest side of a picture that is kept, in its own dots: enough to see a fold by. */
const MOST_DOTS = 1024;
/** Largest picture that is kept, in bytes. */
const MOST_BYTES = 170 * 1024;

/** The size of a picture once its longer side is no longer than `most`; smaller ones stay as they are. */
export function fitWithin(
  { width, height }: { readonly width: number; readonly height: number },
  most = MOST_DOTS,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(1, most / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Why a picture cannot be kept; undefined where it can, and where there is none. */
export const photoFault = (photo: string): string | undefined =>
  photo === '' || (photo.length <= MOST_PHOTO && photo.startsWith('data:image/jpeg;base64,'))
    ? undefined
    : 'This picture cannot be kept here, it is too large; take another, or take it off.';

/** How many bytes a data URL stands for: four letters for three of them. */
const bytesIn = (url: string): number => ((url.length - url.indexOf(',') - 1) * 3) / 4;

/** A picture as a small JPEG, for the ledger; undefined where it cannot be read or the browser cannot draw it. */
export async function smallPhoto(file: Blob): Promise<string | undefined> {
  try {
    const picture = await createImageBitmap(file);
    const canvas = document.createElement('canvas');
    const paper = canvas.getContext('2d');
    if (!paper) return undefined;
    for (let dots = MOST_DOTS; dots >= 128; dots /= 2) {
      const size = fitWithin(picture, dots);
      Object.assign(canvas, size);
      // A JPEG has no see-through parts; they would come out black.
      paper.fillStyle = 'white';
      paper.fillRect(0, 0, size.width, size.height);
      paper.drawImage(picture, 0, 0, size.width, size.height);
      for (const quality of [0.8, 0.65, 0.5, 0.35]) {
        const url = canvas.toDataURL('image/jpeg', quality);
        if (url.startsWith('data:image/jpeg') && url.length <= MOST_PHOTO && bytesIn(url) <= MOST_BYTES)
          return url;
      }
    }
  } catch {
    // No picture, or one of a kind that this browser does not read.
  }
  return undefined;
}
