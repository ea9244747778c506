/**
 * Keeps what sticks to the top of the page in sight while the keyboard of a phone pushes the page up behind it: how far
 * the seen part lies below the top of the page stands in `--sight-top`. Gives what ends it.
 */
export function watchSight(): () => void {
  const seen = globalThis.visualViewport;
  const { style } = document.documentElement;
  if (!seen) return () => undefined;
  const put = (): void => {
    // Someone who has drawn the page larger moves about in it; nothing is to jump after her.
    const down = seen.scale > 1.05 ? 0 : Math.round(seen.offsetTop);
    if (down > 0) style.setProperty('--sight-top', `${down}px`);
    else style.removeProperty('--sight-top');
  };
  put();
  seen.addEventListener('resize', put);
  seen.addEventListener('scroll', put);
  return () => {
    seen.removeEventListener('resize', put);
    seen.removeEventListener('scroll', put);
    style.removeProperty('--sight-top');
  };
}
