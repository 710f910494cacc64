import { demoBrief } from "../../../server/demo.ts";
import { readBrief } from "../../../server/input/brief.ts";
import { en } from "../../../views/text/en/en.ts";
import { aloud } from "../../../views/text/en/spoken.ts";
import { sayText } from "../../../views/text/replies.ts";
import { corpus } from "../../support/corpus.ts";
import { MORE_RHYMES, SITE_TALK } from "./site-talk.ts";

/** Short words that sound like something that can be said, and are none of it. Our own list. */
const RHYMES =
  "neck|text|necks|vexed|pack|rack|lack|bat|cold|gold|told|old|bold|fold|sold|top|shop|stock|step|drop|crop|guess|chess|yet|jazz|go|toe|snow|low|collect|direct|connect|reject|long|song|strong|along|gain|a gain|a can|wine|white|y'all|house|cow|bow|cared on|marry on|carry in|the cart|make shape|cake safe|take safe|fake|all trust|alabaster|all the rest|batteries|sticks|fix|mix|seventh|heaven|eight o'clock|late|nigh|mine|pine|tent|then|when|twenty cents|fourteen cents|dirty|thirsty|for tea|four tea|sick|sticky|hook|shook|tide|tied up|night|knot|nod|note|boat|coat|lock|clock|block|rock|plum|plump|blum|hat|cat|that|hands|cans|pants|dear|beer|here|feet first|meet|free|tree|through|true|shoe|hike|bike|like it|light|ride|wide|read|red|bread|lead|comfort|conform|confirm it|forest|florist|cafe|safely|saved".split(
    "|",
  );

export const NEAR_RHYMES: readonly string[] = [...new Set([...RHYMES, ...MORE_RHYMES])];

/** Sentences of the site that mean nothing to the guide, out of the corpus and beside it: what must not be taken for a word to it. */
export const sentences = (): readonly string[] => [...new Set([...fromCorpus(), ...SITE_TALK])];
const fromCorpus = (): readonly string[] =>
  ["from-the-definitions.txt", "from-the-field.txt", "by-another-crew.txt", "by-a-third-crew.txt"]
    .flatMap(corpus)
    .filter(({ means, said }) => (means === "chatter" || means.startsWith("note")) && said.split(" ").length > 2)
    .map(({ said }) =>
      said
        .replaceAll(/[^\p{L}\p{N}' ]/gu, " ")
        .replaceAll(/\s+/g, " ")
        .trim(),
    );

/** What the guide says aloud itself: each kind of call of the demo job once. */
export function guideTexts(): readonly string[] {
  const { script } = readBrief(demoBrief("2026-06-01", "2026-06-20")).frozen;
  const kinds = new Map(script.steps.map((step) => [step.wordsKey, step]));
  return [...kinds.values()].map(({ wordsKey, params }) => aloud(sayText({ wordsKey, params }, en)));
}
