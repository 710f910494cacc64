import { setOf } from "./talk.ts";

const DIGITS = new Map("zero one two three four five six seven eight nine".split(" ").map((word, n) => [word, String(n)]));
const TEENS = new Map(
  "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ").map((word, i) => [word, String(i + 10)]),
);
const TENS = new Map("twenty thirty forty fifty sixty seventy eighty ninety".split(" ").map((word, i) => [word, String(i + 2)]));
const ZEROS: Readonly<Record<string, string>> = { oh: "0", o: "0", hundred: "00", thousand: "000" };
const REVISION = /^ (?:rev|revision|alpha|alfa|bravo|charlie|delta) $/;
const DASHES = setOf("dash hyphen minus");

/** "Eighty-one hundred" is 8100 or 80100. */
const TWO_WAYS =
  /\b(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[\s-]+(?:one|two|three|four|five|six|seven|eight|nine)[\s-]+(?:hundred|thousand)\b/i;

/**
 * The number of a paper that was said letter by letter and number by number, as it is written: "L T twenty forty-one" is LT2041. What is
 * written in digits already stays as it is.
 *
 * @example spelledOut("F R dash three three oh eight") // "FR-3308"
 */
export function spelledOut(said: string): string {
  if (/\d/.test(said) || TWO_WAYS.test(said)) return said;
  const words = said
    .toLowerCase()
    .replaceAll(/(?<=\p{L})-(?=\p{L})/gu, " ")
    .split(/[\s,.]+/);
  const parts = words.flatMap((word, i): string[] => {
    const tens = TENS.get(word);
    const isTens = tens !== undefined && DIGITS.has(words[i + 1] ?? "") && words[i + 1] !== "zero";
    if (tens !== undefined) return [isTens ? tens : `${tens}0`];
    const figure = DIGITS.get(word) ?? TEENS.get(word) ?? (i > 0 ? ZEROS[word] : undefined);
    if (figure !== undefined) return [figure];
    if (DASHES.has(word)) return ["-"];
    return [/^[a-z]$/.test(word) ? word.toUpperCase() : ` ${word} `];
  });
  // Any other word is talk.
  const isSpelled = parts.some((part) => /\d/.test(part)) && parts.every((part) => !/[a-z]{2}/.test(part) || REVISION.test(part));
  return isSpelled ? parts.join("").replaceAll(/\s+/g, " ").trim() : said;
}
