/** Puts text where it can be pasted. Says whether it got there; false where the device allows neither way. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyByHand(text);
  }
}

/** The old way, for browsers and pages without a clipboard. */
function copyByHand(text: string): boolean {
  const before = document.activeElement;
  const area = document.createElement('textarea');
  area.value = text;
  area.setAttribute('readonly', '');
  area.className = 'unseen';
  document.body.append(area);
  try {
    area.select();
    return document.execCommand('copy');
  } catch {
    return false;
  } finally {
    area.remove();
    if (before instanceof HTMLElement) before.focus();
  }
}
