/** The examples that are shipped, by their files. */
const EXAMPLES = [
  ['small-blouse', 'A small blouse'],
  ['gathered-skirt', 'A gathered skirt'],
  ['stretch-legs', 'Stretch legs'],
] as const;

/** How to describe an outfit in a file of one’s own: examples to begin with. */
export function ByHand() {
  return (
    <details class="by-hand" data-part="by-hand">
      <summary>Describe one by hand</summary>
      <p>
        An outfit is a text file (JSON, with comments). These invented ones are small and explain themselves;
        change one and bring it in. Whatever is not right yet is said with its line.
      </p>
      <div class="choice">
        {EXAMPLES.map(([file, name]) => (
          <a key={file} class="plain" href={`examples/${file}.jsonc`} download>
            {name}
          </a>
        ))}
        <a class="plain" href="outfit.schema.json" download>
          Every field explained
        </a>
      </div>
    </details>
  );
}
