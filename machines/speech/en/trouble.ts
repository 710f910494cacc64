import { SHORT_BOUNDS } from "../../install/thing.ts";
import type { Meaning, NamedItems, NamedThing } from "../meanings.ts";
import { plain, trimmed } from "../plain.ts";
import { itemsCalled } from "./kit-counts.ts";
import { asLetters } from "./letters.ts";
import { numberInUnit } from "./number-in-unit.ts";

/** More words than anybody uses for it; a longer sentence is a story. */
const MAX_WORDS = 14;
/** A denial, a condition, a doubt or another day: then it is neither said to be out nor to be back. */
const NOT_SO =
  /\b(?:not|never|nobody|if|unless|maybe|might|almost|nearly|probably|soon|yet|but|except|yesterday|tomorrow|would|could|should|looks? like)\b|n't\b|\bno (?!good)/;

const PIECE = "(?:the )?(?:piece )?(top|(?:mid|middle)(?: piece)? [a-z0-9 -]+?|end(?: piece)? [a-d]{1,2})";
const BROKEN = "(?:badly )?(?:torn|ripped|split|damaged|broken|cut|burned|burnt|holed|no good|bad)";
const FAULT = "(?:tear|rip|hole|split|cut|burn|(?:torn|ripped|broken|burst|bad|missing) [a-z]+)";
const MENDED = "(?:mended|fixed|repaired|patched(?: up)?|sewn(?: up)?|stitched(?: up)?|swapped(?: out)?|replaced|back in use|good again)";

/** Each with the piece, and what is wrong with it, in named groups. */
const PIECE_OUT = [
  `${PIECE}(?:'s| is)? out of use(?:,? (?:because |since )?(?<why>.+))?`,
  `${PIECE}(?:'s| is| got) (?<why>${BROKEN}(?: (?:at|in|on|from|near|along|by) .+)?)`,
  `${PIECE} (?<why>(?:tore|ripped|split)(?: (?:at|in|on|from|near|along|by) .+)?)`,
  `${PIECE} has (?<why>an? ${FAULT}(?: (?:at|in|on|from|near|along|by) .+)?)`,
  `(?:there's |there is |we(?:'ve)? (?:got|have) )?(?<why>(?:an? )?${FAULT}) (?:in|on) ${PIECE}`,
].map((pattern) => new RegExp(`^${pattern}$`));
const PIECE_BACK = [
  `${PIECE}(?:'s|'s been| is| has been| is back,?) (?<how>${MENDED}(?: (?:with|for|by) .+)?)`,
  `we(?:'ve)? (?<how>mended|fixed|repaired|patched|swapped|replaced) ${PIECE}`,
].map((pattern) => new RegExp(`^${pattern}$`));

const THINGS = "(?<things>[a-z0-9' -]+?)";
const SHORT = [
  `(?:we're |we are |we come up |we came up |coming up )?${THINGS} (?:short|too few|missing)`,
  `(?:we're |we are )?(?:short|missing)(?: by| of)? ${THINGS}`,
  `we need (?<n>[a-z0-9 -]+?) more (?<named>[a-z -]+)`,
].map((pattern) => new RegExp(`^${pattern}$`));
const CAME = [
  `(?:the )?(?:other |missing |rest of the )?${THINGS} (?:are here|is here|came|arrived|have come|has come)`,
  `we(?:'ve)? (?:got|found) (?<n>[a-z0-9 -]+?) more (?<named>[a-z -]+)`,
].map((pattern) => new RegExp(`^${pattern}$`));

/**
 * A piece that is torn or mended, or so many of the kit short or come: whole utterances only, and no question or denial. `null`
 * if it is none of these.
 *
 * @example parseTrouble("mid one is torn") // { outOfUse: { piece: "mid-1" }, because: "torn" }
 */
export function parseTrouble(heard: string): Meaning | null {
  const words = plain(asLetters(trimmed(heard)));
  if (heard.trim().endsWith("?") || words.split(" ").length > MAX_WORDS || NOT_SO.test(words)) return null;
  const torn = pieceIn(words, PIECE_OUT);
  if (torn) return { outOfUse: torn.named, because: torn.why ?? "out of use" };
  const mended = pieceIn(words, PIECE_BACK);
  if (mended) return { backInUse: mended.named, because: mended.how! };
  const short = itemsIn(words, SHORT);
  if (short && short.n !== null) return { outOfUse: short, because: trimmed(heard) };
  const came = itemsIn(words, CAME);
  return came && { backInUse: came, because: trimmed(heard) };
}

type PieceSaid = { readonly named: NamedThing; readonly why?: string | undefined; readonly how?: string | undefined };

function pieceIn(words: string, patterns: readonly RegExp[]): PieceSaid | null {
  for (const pattern of patterns) {
    const found = pattern.exec(words);
    const name = found?.slice(1).find((group) => /^(?:top|mid|middle|end)\b/.test(group ?? ""));
    const piece = name === undefined ? null : pieceId(name);
    if (piece !== null) return { named: { piece }, why: found?.groups?.why, how: found?.groups?.how };
  }
  return null;
}

/** A piece as the plan writes it; whether the plan has it is for the guide to say. */
function pieceId(name: string): string | null {
  if (name === "top") return "top";
  const [, kind, which = ""] = /^(mid|middle|end)(?: piece)? (.+)$/.exec(name) ?? [];
  if (kind === "end") return `end-${which.toUpperCase()}`;
  const n = countIn(which);
  return n === null ? null : `mid-${n}`;
}

function itemsIn(words: string, patterns: readonly RegExp[]): NamedItems | null {
  for (const pattern of patterns) {
    const { things, n, named } = pattern.exec(words)?.groups ?? {};
    const found = itemsNamed(things ?? (n === undefined ? "" : `${n} ${named}`));
    if (found) return found;
  }
  return null;
}

/** "Two straps", "four more stakes", "a center pole", "straps": the lines of the list that are called so, and how many. */
function itemsNamed(text: string): NamedItems | null {
  const parts = text.split(" ");
  for (let i = 0; i < parts.length; i++) {
    const items = itemsCalled(parts.slice(i).join(" "));
    const number = parts
      .slice(0, i)
      .join(" ")
      .replace(/ (?:more|of the)$/, "");
    const n = number === "" ? null : countIn(number);
    if (items.length > 0 && (i === 0 || n !== null)) return { items, n };
  }
  return null;
}

/** A whole number that so many things can have; "a" is one. */
function countIn(text: string): number | null {
  const read = /^an?$/.test(text) ? { n: 1 } : numberInUnit(text, "count");
  const within = "n" in read && Number.isSafeInteger(read.n) && read.n >= SHORT_BOUNDS.from && read.n <= SHORT_BOUNDS.to;
  return within ? read.n : null;
}
