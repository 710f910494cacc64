import { isWhole } from "../../install/checks/count.ts";
import { own } from "../../lookup/own.ts";
import { plain } from "../plain.ts";
import type { AnswerParser } from "./asked.ts";
import { COUNTED_AT, NONE_AT } from "./count-at.ts";
import { withoutLeadIn } from "./lead-in.ts";
import { numberInUnit } from "./number-in-unit.ts";

/** The counted item may follow the number; nothing else may. */
const COUNTED = /^(.+?) (?:stakes?|plates?|straps?|poles?|rings?|marks?|people|guys|heads|of us)$/i;
/** Questions that count what is wrong: "no" and "all good" mean none. To other counts they say nothing. */
const FAULTS: ReadonlySet<string> = new Set(["stakes.bent", "lean.inward", "damage", "half.looked", "seams.gaps"]);
const NOTHING_WRONG = /^(?:no|nope|nah|negative|(?:it's |they're |looks )?all good|(?:all )?clean|all straight)$/;
const NOBODY = /^(?:none|nobody)$/;

/** A count: a number, optionally followed by the counted item, or a word for none. */
export const parseCount: AnswerParser<"count"> = (said, _, { wordsKey }) => {
  const words = plain(said);
  const none = NOBODY.test(words) || own(NONE_AT, wordsKey)?.test(words) || (FAULTS.has(wordsKey) && NOTHING_WRONG.test(words));
  if (none) return { kind: "count", n: 0 };
  const counted = withoutLeadIn(said);
  const read = numberInUnit((own(COUNTED_AT, wordsKey)?.exec(counted) ?? COUNTED.exec(counted))?.[1] ?? counted, "count");
  if (!("n" in read)) return read;
  return isWhole(read.n) ? { kind: "count", n: read.n } : { notUnderstood: true };
};
