/** More pieces than the longest sensible quantity has; a text with more of them is talk. */
const MAX_TOKENS = 40;
const PIECE =
  /\d+\/\d+(?:(?:ths?|nds?)(?![a-z]))?|\d+(?:ths?|nds?)(?![a-z])|\d{1,2}:\d{2}(?!\d)|\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|\d+(?:\.\d+)?|\.\d+|o'clock|[a-z]+(?:\.[a-z]+)*\.?|''|['"°,/-]/y;
/** Short forms that are written with a full stop inside a text: "6 ft. 2 in." */
const SHORT = /^(?:ft|ins?|lbs?|lbf|[cm]?m|deg|mins?|hrs?|secs?|kts?|[ap]m|[mk]ph)$/;

/**
 * A text in pieces, lower case: numbers ("1200", "7.5", "3/8"), ordinals of fractions ("16ths"), times ("14:15"), words,
 * and the marks ' " ° , / -. Signs that look alike become one, "½" becomes "1/2" and a hyphen inside a word a space. The
 * pieces keep their order and nothing is dropped but the stop, comma or exclamation mark at the end and the full stops of
 * short forms. `null` where there is anything else.
 */
export function tokens(text: string): readonly string[] | null {
  const plain = text
    .trim()
    .replace(/[.!,]$/, "")
    // The newton's N is a capital; in small letters kn may be a knot.
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
    PIECE.lastIndex = at;
    const piece = PIECE.exec(plain)?.[0];
    if (piece === undefined || found.length === MAX_TOKENS) return null;
    at += piece.length;
    const bare = tidy(piece);
    if (/^[a-z].*\.$/.test(piece) && at < plain.length && !SHORT.test(bare)) return null;
    found.push(bare);
  }
}

function tidy(piece: string): string {
  if (piece === "''") return '"';
  if (/^[a-z]/.test(piece)) return piece.replaceAll(".", "");
  if (piece.includes("/")) return piece.replace(/[a-z]+$/, "");
  return piece.replaceAll(/(?<=\d),/g, "");
}
