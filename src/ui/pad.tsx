import './pad.css';

/** The pad across the foot of the card: the one thing that comes next. */
export function Pad(props: {
  readonly label: string;
  readonly detail?: string | undefined;
  /** Less insistent, where it is allowed but not yet due. */
  readonly quiet?: boolean | undefined;
  /** True for the moment after the pad changed its meaning, when a touch still belongs to what it said before. */
  readonly settling?: boolean | undefined;
  readonly onPress: () => void;
}) {
  const { label, detail, quiet, settling, onPress } = props;
  return (
    <div class="pad-edge">
      <button
        type="button"
        class={quiet ? 'pad pad-quiet' : 'pad'}
        data-part="pad"
        aria-disabled={settling ? 'true' : undefined}
        onClick={() => {
          if (!settling) onPress();
        }}
      >
        <span class="pad-label">{label}</span>
        {detail !== undefined && detail !== '' && <span class="pad-detail">{detail}</span>}
      </button>
    </div>
  );
}
