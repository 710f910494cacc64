const HALF_LETTER = /[\ud800-\udfff]/gu;

/** JSON without half letters, which have no digest and no bytes on disk: U+FFFD stands for each. Throws SyntaxError. */
export function parseJson(text: string): unknown {
  return JSON.parse(text.replace(/^\uFEFF/, ""), (name, value: unknown) => {
    if (name.search(HALF_LETTER) >= 0) throw new SyntaxError(`a name of half a letter: ${JSON.stringify(name)}`);
    return typeof value === "string" ? value.replaceAll(HALF_LETTER, "\ufffd") : value;
  });
}
