/** Names tied together into bundles (a union-find). Near-linear; never recursive. */
export interface Bundles {
  /** The name that stands for the bundle of `name`; the name itself where nothing is tied to it. */
  root(name: string): string;
  /** Ties these names into one bundle. */
  tie(names: readonly string[]): void;
}

/** No names tied yet. */
export function bundles(): Bundles {
  const parent = new Map<string, string>();
  const root = (name: string): string => {
    let at = name;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    for (let walk = name; walk !== at; ) {
      const up = parent.get(walk) ?? at;
      parent.set(walk, at);
      walk = up;
    }
    return at;
  };
  return {
    root,
    tie(names) {
      const [first] = names;
      if (first === undefined) return;
      for (const name of names) {
        const a = root(name);
        const b = root(first);
        if (a !== b) parent.set(a, b);
      }
    },
  };
}
