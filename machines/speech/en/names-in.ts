/** What was said of each name, in order: `before` the first name, and `after` each. */
export type Named = { readonly before: string; readonly each: readonly { readonly name: string; readonly after: string }[] };

const EDGE = /^[A-D]{2}$/;

/** The names in a text, by the patterns that they are called by. A letter of an edge may stand alone: "A B eleven". */
export function namesIn(said: string, names: readonly string[], called: (name: string) => string): Named {
  const patterns = names.map((name) =>
    EDGE.test(name) ? `(?:the )?(?:(?:edge|side) )?${name[0]}\\.?[\\s-]?${name[1]}\\.?(?: (?:edge|side))?` : called(name),
  );
  const any = new RegExp(`(?<![\\p{L}\\p{N}'-])(?:${patterns.map((p) => `(${p})`).join("|")})(?![\\p{L}\\p{N}'])`, "giu");
  const found = [...said.matchAll(any)];
  const each = found.map((m, i) => ({
    name: names[m.slice(1).findIndex((group) => group !== undefined)]!,
    after: said.slice(m.index + m[0].length, found[i + 1]?.index),
  }));
  return { before: said.slice(0, found[0]?.index), each };
}
