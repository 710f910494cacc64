import { readFileSync } from "node:fs";
import { beforeEach, describe, expect, it } from "vitest";
import type { Brief } from "../../machines/install/brief.ts";
import { foundIn } from "../../machines/install/found-in.ts";
import { freeze } from "../../machines/install/freeze.ts";
import type { Value } from "../../machines/install/gates.ts";
import { doubtsIn } from "../../machines/record/doubts/doubts.ts";
import type { Entries } from "../../machines/record/entries.ts";
import { FLAGS, foldAll } from "../../machines/record/findings.ts";
import type { Finding, FindingKind } from "../../machines/record/oversight/finding.ts";
import { overseeAll } from "../../machines/record/oversight/oversight.ts";
import { EMPTY_SITE, type SiteModel } from "../../machines/site/model.ts";
import { MINUTE, PEOPLE, SECOND } from "../proof/fixtures.ts";
import { PAPER } from "../support/answers.ts";
import { GOLDEN, goldenLines } from "../support/golden-file.ts";
import { FAR_OFF, NEAR_AB1 } from "../support/site-briefs.ts";
import { PacedJob, plainBrief } from "./doubts-crew.ts";

let job: PacedJob;
beforeEach(() => {
  job = new PacedJob();
  job.pauseMs = MINUTE;
});
const found = <K extends FindingKind>(kind: K): Extract<Finding, { kind: K }>[] =>
  overseeAll(job.record).findings.filter((f): f is Extract<Finding, { kind: K }> => f.kind === kind);
const numbers = () => overseeAll(job.record).measures;
const inches = (n: number): Value => ({ kind: "measure", n, unit: "in" });
const golden = (): Entries =>
  goldenLines(readFileSync(GOLDEN, "utf8")).map(({ bytes }) => ({ entry: JSON.parse(new TextDecoder().decode(bytes)) })) as never;

describe("a finding", () => {
  it("of what was left out has its reason, its question, and who said it", () => {
    const soft = job.job.frozen.script.steps.find(({ gate }) => gate?.hard === false)!;
    job.to(soft.id);
    const { no } = job.say({ type: "waive", gate: soft.id, because: "no such thing here" });
    const { wordsKey } = soft;
    expect(found("waived")).toMatchObject([
      { entry: no, entries: [no], by: [PEOPLE.lead], asks: { wordsKey }, facts: { because: "no such thing here" } },
    ]);
  });
  it("of a bad answer says what came next at its gate, however often, and how long after", () => {
    job.to("drive.AB");
    job.answer("drive.AB", inches(9));
    expect(found("outOfLimit")[0]!.facts.followed).toBeNull();
    job.at += 9 * SECOND;
    job.answer("drive.AB", inches(8));
    job.say({ type: "note", text: "driven on" });
    job.at += 60 * SECOND;
    const { no } = job.answer("drive.AB", inches(5));
    const [first, second] = found("outOfLimit");
    expect([first!.facts.value, first!.facts.check]).toMatchObject([inches(9), { kind: "measure", to: 6 }]);
    expect(first!.facts.followed).toEqual({ is: "out", value: inches(8), no: second!.entry, ms: 10 * SECOND });
    expect(second!.facts.followed).toEqual({ is: "good", value: inches(5), no, ms: 62 * SECOND });
  });
  it("of a paper says who else has looked at it, and never whose it is", () => {
    job.to("stakes.size");
    const { no } = job.answer("stakes.size", PAPER);
    expect(found("paper")).toMatchObject([{ entry: no, facts: { document: "ENG-1204", seen: null } }]);
    job.answer("stakes.size", PAPER, "deputy");
    expect(found("paper")).toMatchObject([{ entry: no, facts: { seen: no + 1 } }]);
    expect(JSON.stringify(found("paper"))).not.toContain("A. Engineer");
  });
  it("of steps back is one for as long as nothing else is done", () => {
    job.to("drive.AB");
    const { no } = job.say({ type: "back" });
    job.say({ type: "back" });
    job.say({ type: "note", text: "looked again" });
    job.say({ type: "back" });
    expect(found("wentBack").map(({ entry, facts }) => [entry, facts.count])).toEqual([
      [no, 2],
      [no + 3, 1],
    ]);
  });
  it("of what had grown too old counts each time that it had, not each time that it was asked", () => {
    job.pauseMs = 5 * MINUTE;
    job.until(() => found("stale").some(({ phase }) => phase === "interiorRaised"));
    const [stale] = found("stale").filter(({ phase }) => phase === "interiorRaised");
    job.say({ type: "next" });
    job.say({ type: "next" });
    expect(found("stale")).toContainEqual(stale);
    expect(stale).toMatchObject({ asks: { wordsKey: expect.any(String) }, facts: { count: 1 } });
  });
  it("of a clock that was set says which way and how far", () => {
    job.to("permit");
    job.tell({ type: "note", text: "here" }, { aheadMs: 90 * MINUTE });
    expect(found("clockJumped")).toMatchObject([{ facts: { is: "ahead", ms: 90 * MINUTE } }]);
  });
  it("of measurements that are always exact is gone with the first that is not", () => {
    job.measures = (check, value) => (check.kind === "measure" && value.kind === "measure" ? { ...value, n: check.to ?? value.n } : value);
    job.until(() => found("alwaysExact").length > 0);
    job.measures = (check, value) => (check.kind === "measure" && value.kind === "measure" ? { ...value, n: value.n - 0.3 } : value);
    job.until(() => found("alwaysExact").length === 0 || job.call === "closed");
    expect(found("alwaysExact")).toEqual([]);
  });
});

describe("of a site", () => {
  const line = { ...NEAR_AB1, id: "gas 1", told: "found" } as const;
  const tell = () => job.say({ type: "found", what: { is: "buried", line }, to: foundIn(job.job.frozen, { is: "buried", line }) }, "crew");
  const amend = (brief: Brief) => {
    const { no } = job.say({ type: "amend", because: "taped again", to: freeze(brief) });
    return [no, job.say({ type: "agree", target: no }, "deputy").no];
  };
  const shut = (of: Partial<SiteModel>) => {
    job = new PacedJob(plainBrief({ siteModel: { ...EMPTY_SITE, ...of } }));
  };

  it("a line that was found while the job ran is one, with what it shuts and who told it", () => {
    job.to("drive.AB");
    const { no } = tell();
    const facts = { name: "gas 1", shuts: [expect.objectContaining({ id: "gas 1", of: ["AB1"] })] };
    expect(found("found")).toMatchObject([{ entry: no, by: [PEOPLE.crew], facts }]);
  });
  it("what was shut by what was worked out and opened by entering it otherwise is one, of both who did it", () => {
    job.to("drive.AB");
    tell();
    const entries = amend({ ...job.job.frozen.brief, siteModel: { ...EMPTY_SITE, buried: [{ ...line, points: FAR_OFF.points }] } });
    const facts = { because: "taped again", opened: [expect.objectContaining({ id: "gas 1" })] };
    expect(found("corrected")).toMatchObject([{ entries, by: [PEOPLE.lead, PEOPLE.deputy], facts }]);
  });
  it("a tent that is moved off a line has none of that", () => {
    shut({ buried: [line] });
    const wanted = { cornerA: { xFt: 60, yFt: 0 }, headingDeg: 0 };
    amend({ ...job.job.frozen.brief, siteModel: { ...EMPTY_SITE, buried: [line], wanted } });
    expect([found("amended").length + found("loosened").length, found("corrected")]).toEqual([1, []]);
  });
  it("the rest of what is in the way staying, only what was entered otherwise is told", () => {
    shut({ buried: [line, { ...line, id: "water 1", kind: "water" }] });
    amend({ ...job.job.frozen.brief, siteModel: { ...EMPTY_SITE, buried: [line] } });
    expect(found("corrected").map(({ facts }) => facts.opened.map(({ id }) => id))).toEqual([["water 1"]]);
  });
});

describe("of a whole record", () => {
  it("the doubts are all there, as they are without oversight, and each thing that was flagged has one finding", () => {
    for (const entries of [golden(), PacedJob.playedBy(80).record]) {
      const { findings, fold } = overseeAll(entries);
      const doubts = doubtsIn(entries).map(({ kind, entries: nos, facts }) => JSON.stringify([kind, nos, facts]));
      const told = findings.map(({ kind, entries: nos, facts }) => JSON.stringify([kind, nos, facts]));
      expect(doubts.filter((doubt) => !told.includes(doubt))).toEqual([]);
      const count = (kind: FindingKind) => findings.filter((f) => f.kind === kind).length;
      const { counts } = foldAll(entries).fold;
      expect(fold.counts).toEqual(counts);
      for (const flag of FLAGS)
        if (["waived", "outOfLimit", "paper", "takenBack", "loosened", "clockJumped"].includes(flag))
          expect([flag, count(flag as FindingKind)]).toEqual([flag, counts[flag]]);
      expect(count("amended") + count("loosened")).toBe(counts.amended);
    }
  });
  it("no two findings have the same name, and people are in them by their ids", () => {
    const { findings } = overseeAll(golden());
    expect(new Set(findings.map(({ kind, entry }) => `${kind} ${entry}`)).size).toBe(findings.length);
    expect(findings.flatMap(({ by, lead }) => [...by, lead]).filter((id) => !/^p\d$/.test(id ?? ""))).toEqual([]);
  });
  it("a phase has its time once the job has gone on from it, to two figures", () => {
    job = PacedJob.playedBy(MINUTE);
    const { phaseMs } = foldAll(job.record).fold;
    const times = numbers().filter(({ what }) => what === "time");
    expect(times.map(({ name }) => name)).toEqual(Object.keys(phaseMs));
    for (const { name, n } of times) expect(Math.abs(n - phaseMs[name]! / 1000) / n).toBeLessThanOrEqual(0.05);
  });
  it("each answer that came after refusals counts them", () => {
    job.to("permit");
    for (let n = 0; n < 4; n++) job.say({ type: "next" }, "lead", 5 * SECOND);
    const { no } = job.goOn();
    expect(numbers().filter(({ what }) => what === "refusals")).toMatchObject([{ key: `${no} permit`, name: "utilitiesMarked", n: 4 }]);
  });
  it("a rehearsal has nothing of it, and does not count as a job", () => {
    const { findings, measures } = overseeAll(PacedJob.playedBy(80, plainBrief({ rehearsal: true })).record);
    expect([findings, measures]).toEqual([[], []]);
  });
});
