/** More tokens than the longest plausible quantity has; a longer text is talk. */
const MAX_TOKENS = 40;
const TOKEN =
  /\d+\/\d+(?:(?:ths?|nds?)(?![a-z]))?|\d+(?:ths?|nds?)(?![a-z])|\d{1,2}:\d{2}(?!\d)|\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|\d+(?:\.\d+)?|\.\d+|o'clock|[a-z]+(?:\.[a-z]+)*\.?|''|['"°,/-]/y;
/** Abbreviations that may have a period inside a text: "6 ft. 2 in." */
const ABBREVIATION = /^(?:ft|ins?|lbs?|lbf|[cm]?m|deg|mins?|hrs?|secs?|kts?|[ap]m|[mk]ph)$/;

/**
 * Splits a text into lowercase tokens: numbers ("1200", "7.5", "3/8"), ordinals of fractions ("16ths"), times ("14:15"), words, and
 * the marks ' " ° , / -. Look-alike characters are unified, "½" becomes "1/2", and a hyphen inside a word becomes a space. Nothing
 * is dropped except a period, comma, or exclamation mark at the end and the periods of abbreviations. `null` if the text contains
 * anything else.
 *
 * @example tokens("6 ft. 5½ in.") // ["6", "ft", "5", "1/2", "in"]
 */
export function tokens(text: string): readonly string[] | null {
  const plain = text
    .trim()
    .replace(/[.!,]$/, "")
    // The newton has a capital N; lowercase kn may be a knot.
    .replaceAll("kN", " kilonewtons ")
    .toLowerCase()
    .replaceAll(/[’‘′]/g, "'")
    .replaceAll(/[”“″]/g, '"')
    .replaceAll(/[º˚]/g, "°")
    .replaceAll(/[¼-¾⅐-⅞]/g, (c) => ` ${c.normalize("NFKD")} `)
    .replaceAll("⁄", "/")
    .replace(/^\s*[−–]/, "-")
    .replaceAll("−", "-")
    .replaceAll(/(?<=[a-z\d])-(?=[a-z])|(?<=[a-z'])-(?=\d)|(?<=\d)-(?= ?\d+\/\d)/g, " ");
  const found: string[] = [];
  for (let at = 0; ; ) {
    while (at < plain.length && /\s/.test(plain[at]!)) at += 1;
    if (at >= plain.length) return found;
    TOKEN.lastIndex = at;
    const piece = TOKEN.exec(plain)?.[0];
    if (piece === undefined || found.length === MAX_TOKENS) return null;
    at += piece.length;
    const bare = normalizeToken(piece);
    if (/^[a-z].*\.$/.test(piece) && at < plain.length && !ABBREVIATION.test(bare)) return null;
    found.push(bare);
  }
}

function normalizeToken(piece: string): string {
  if (piece === "''") return '"';
  if (/^[a-z]/.test(piece)) return piece.replaceAll(".", "");
  if (piece.includes("/")) return piece.replace(/[a-z]+$/, "");
  return piece.replaceAll(/(?<=\d),/g, "");
}
