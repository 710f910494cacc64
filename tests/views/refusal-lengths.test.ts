import { describe, expect, it } from "vitest";
import type { Reason } from "../../machines/conversation/reply-to.ts";
import { finding } from "../../machines/install/checks/any-check.ts";
import { freeze } from "../../machines/install/freeze.ts";
import type { MissingGate, UnmetStatus } from "../../machines/install/refusals.ts";
import { indexOf, type Question } from "../../machines/install/script-index.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { readBrief } from "../../server/input/brief.ts";
import { en } from "../../views/text/en/en.ts";
import { aloud } from "../../views/text/en/spoken.ts";
import { reasonText } from "../../views/text/replies.ts";
import { briefOf, middleBrief, SMALL } from "../proof/fixtures.ts";
import { SHORT_BY_PULLS, screenedBrief } from "../support/anchorages.ts";
import { badValue } from "../support/answers.ts";
import { brief, briefFor } from "../support/briefs.ts";
import { hundred } from "../tent/tents.ts";

/** A refusal is heard over a generator. */
const MAX_WORDS = 20;

const TENTS: readonly (readonly [string, Frozen])[] = [
  ["the demo tent", readBrief(brief()).frozen],
  ["a small tent", freeze(briefOf(SMALL))],
  ["a middle tent", freeze(middleBrief())],
  ["a small tent whose anchors are short by pulls", freeze(screenedBrief(SHORT_BY_PULLS))],
  ["a small tent whose anchors are short of an unknown load", freeze(screenedBrief({ ...SHORT_BY_PULLS, gustMph: null }))],
  ["a 100 by 200", freeze(briefFor(hundred))],
];
/** Which mark to move, which way and how far, is said whole: half of it would be wrong. */
const SAID_WHOLE = "lengths";
const STATUSES: readonly UnmetStatus[] = ["open", "unknown", "outOfLimit", "noGust", "early", "stale", "samePerson"];
const BECAUSE: readonly MissingGate["because"][] = [null, "amendment", "back", "strike", "clearing", "rain", "blow"];

const words = (text: string) =>
  aloud(text)
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** Every refusal of a gate: as it stands, with an answer that is out of its limit where it takes one. */
function refusals(question: Question): string[] {
  const { gate } = question;
  const person = !["wind", "quiet"].includes(gate.check.kind);
  return STATUSES.filter((status) => person || status === "outOfLimit" || status === "stale" || status === "open").flatMap((status) =>
    BECAUSE.filter((because) => because === null || status === "open").map((because) => {
      const refusal: MissingGate = { why: "gate", gate: gate.id, status, asked: "here", because, notBefore: 0 };
      const value = person && status === "outOfLimit" ? badValue(gate.check) : null;
      const found = value && finding(gate.check, value, { answers: {} });
      const read = { mph: 18, gustMph: 27 };
      const wind = gate.check.kind === "wind" ? { read, limitMph: gate.check.belowMph, standing: because === null } : null;
      const reason: Reason = { refusal, question, value, finding: found, inHand: false, wind };
      return reasonText(reason, { name: (id) => id, zone: "America/Chicago" }, en);
    }),
  );
}

describe("a refusal is at most twenty words", () => {
  it.each(TENTS)("over every gate of %s", (_, frozen) => {
    const long = [
      ...new Set([...indexOf(frozen.script).questions.values()].filter(({ gate }) => gate.check.kind !== SAID_WHOLE).flatMap(refusals)),
    ]
      .map((text) => `${words(text)}: ${text}`)
      .filter((line) => Number.parseInt(line, 10) > MAX_WORDS);
    expect(long).toEqual([]);
  });
});
