import { beforeAll, describe, expect, it } from "vitest";
import { demoBrief } from "../../server/demo.ts";
import { readBrief } from "../../server/input/brief.ts";
import { corpus } from "../support/corpus.ts";
import { type Scored, scored } from "../support/corpus-score.ts";

/** Half of it goes by the definitions of gates, commands and questions; the other half is by somebody who had not seen the grammar; and more of it by two others. */
const HALVES = ["from-the-definitions.txt", "from-the-field.txt", "by-another-crew.txt", "by-a-third-crew.txt"];
/** So many of a hundred are understood at once; the others are asked again. */
const UNDERSTOOD_PERCENT = 92;
const NUMBERS = /^(?:count|measure|figures|lengths|counts|wind|none)\b/;

describe.each(HALVES)("what crews say, %s", (file) => {
  let sayings: readonly Scored[];
  beforeAll(() => {
    const { frozen } = readBrief(demoBrief("2026-06-01", "2026-06-20"));
    sayings = corpus(file).map((saying) => scored(frozen, saying));
  });
  const wrong = (of: (saying: Scored) => boolean) =>
    sayings.filter((saying) => of(saying) && saying.score === "wrong").map(({ at, said, heard }) => `${at}: ${said}: ${heard}`);

  it("is at least 300 sayings", () => expect(sayings.length).toBeGreaterThanOrEqual(300));
  it(`is understood at once, ${UNDERSTOOD_PERCENT} in a hundred at least`, () =>
    expect((100 * sayings.filter(({ score }) => score === "right").length) / sayings.length).toBeGreaterThanOrEqual(UNDERSTOOD_PERCENT));
  it("is never taken as anything else", () => expect(wrong(() => true)).toEqual([]));
  it("no number comes out other than said", () => expect(wrong(({ means }) => NUMBERS.test(means))).toEqual([]));
  it("what could be two things is asked again", () => expect(wrong(({ means }) => means === "ask")).toEqual([]));
  it("into an open microphone, nothing but a stop or a wait comes of it", () => expect(wrong(({ how }) => how === "open")).toEqual([]));
});
