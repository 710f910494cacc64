const FRACTIONS: Readonly<Record<string, string>> = {
  "1/2": "a half",
  "1/4": "a quarter",
  "3/4": "three quarters",
  "1/8": "one eighth",
  "3/8": "three eighths",
  "5/8": "five eighths",
  "7/8": "seven eighths",
};
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/(\d)°/g, "$1 degrees"],
  [/(?<!and )((?:a|one|three|five|seven|\d+) (?:half|quarters?|eighths?|sixteenths)) in\b/g, "$1 of an inch"],
  [/(\d|half|quarters?|eighths?|sixteenths) in\b(?! (?:all|each|total|order)\b)/g, "$1 inches"],
  [/(\d|half|quarters?|eighths?) ft\b/g, "$1 feet"],
  [/(\d) lb\b/g, "$1 pounds"],
  [/(\d) mph\b/g, "$1 miles an hour"],
  [/(\d) kV\b/g, "$1 kilovolts"],
  [/(?<![\d.])1 (degree|pound|sixteenth)s\b/g, "1 $1"],
  [/(?<![\d.])1 miles an hour\b/g, "1 mile an hour"],
  [/\b1 inches\b/g, "1 inch"],
  [/\b1 feet\b/g, "1 foot"],
];

/** Corners in the open spelling alphabet: B, C and D sound alike over a generator. */
const CORNERS: Readonly<Record<string, string>> = { A: "Alpha", B: "Bravo", C: "Charlie", D: "Delta" };
const corner = (letter: string) => CORNERS[letter] ?? letter;

/** An A that begins a sentence is the article, unless what follows can only follow a corner. */
function isArticle(letter: string, at: number, text: string): boolean {
  if (letter !== "A" || !/(?:^|[.!?:;]["”)]?\s|["“(])$/.test(text.slice(0, at))) return false;
  const after = text.slice(at + 1);
  return /^\s[a-z\d]/.test(after) && !/^\s(?:to|and|or|is|was|has|at|on|in|from|toward)\b/.test(after);
}

/** Written words as they are spoken: units and fractions in full, corners, edges and stations in the spelling alphabet. */
export function aloud(text: string): string {
  const parts = text
    .replaceAll(/(\d+ )?\b(\d+)\/(\d+)\b/g, (_, whole: string | undefined, over: string, under: string) => {
      const fraction = FRACTIONS[`${over}/${under}`] ?? `${over} ${under === "16" ? "sixteenths" : `over ${under}`}`;
      return whole === undefined ? fraction : `${whole}and ${fraction}`;
    })
    .replaceAll(/(^|\s)-(?=\d)/g, "$1minus ")
    .replaceAll(
      /\b([A-D])[–-]?(?!\1)([A-D])(\d+(?:\.\d+)?)?\b/g,
      (_, one: string, other: string, no: string | undefined) => `${corner(one)}-${corner(other)}${no === undefined ? "" : ` ${no}`}`,
    )
    .replaceAll(/(?<![\w'’.-])[A-D](?![\w-]|\.\w)/g, (letter, at: number, whole: string) =>
      isArticle(letter, at, whole) ? letter : corner(letter),
    );
  return UNITS.reduce((said, [written, spoken]) => said.replaceAll(written, spoken), parts);
}
