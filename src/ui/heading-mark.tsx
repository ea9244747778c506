import './heading-mark.css';

const stitches = [0, 1, 2, 3, 4, 5, 6, 7, 8];

/** Slip basting, drawn: two folded edges and the thread that runs from fold to fold, with its needle. */
export function SlipBasting() {
  return (
    <svg class="slip-basting" viewBox="0 0 360 76" preserveAspectRatio="xMidYMid slice" aria-hidden="true">
      <path class="cloth-edge" d="M-4 -4H364V30H-4Z" />
      <path class="cloth-edge" d="M-4 46H364V80H-4Z" />
      <path class="cloth-turn" d="M0 18H360M0 58H360" />
      {stitches.map((i) => {
        const x = 14 + i * 34;
        return <path key={i} class="basting" d={`M${x} 30h17v16h17v-16`} />;
      })}
      <path class="needle" d="M320 30L352 38" />
    </svg>
  );
}
