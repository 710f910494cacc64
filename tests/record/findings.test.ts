import { readFileSync } from "node:fs";
import { beforeEach, describe, expect, it } from "vitest";
import type { Value } from "../../machines/install/gates.ts";
import { FLAGS, type Fold, foldAll, foldIn, openFold } from "../../machines/record/findings.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { readBrief } from "../../server/input/brief.ts";
import { PAPER } from "../support/answers.ts";
import { brief } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
});
const fold = async (): Promise<Fold> => foldAll(await job.entries()).fold;
const last = async () => foldAll(await job.entries()).flags;
const inches = (n: number): Value => ({ kind: "measure", n, unit: "in" });
const sheet = { type: "answer", gate: "sheet.atHand" } as const;
const showing = { type: "answer", gate: "drive.AB" } as const;
const rings = (AB: number, CD: number): Value => ({ kind: "figures", unit: "count", n: { AB, BC: 9, CD, DA: 9 } });
const NONE = { refused: 0, waived: 0, outOfLimit: 0, paper: 0, takenBack: 0, wentBack: 0, amended: 0, loosened: 0, clockJumped: 0 };

describe("what stands out about an entry", () => {
  it("a next past an open gate was refused", async () => {
    await job.say({ type: "next" });
    expect([await last(), (await fold()).counts]).toEqual([["refused"], { ...NONE, refused: 1 }]);
  });
  it("a paper that is not this tent's was taken down, and is out of its limit", async () => {
    await job.say({ ...sheet, value: { kind: "document", named: "RC-4040" } });
    expect([await last(), (await fold()).counts]).toEqual([["outOfLimit"], { ...NONE, outOfLimit: 1 }]);
  });
  it("a paper in place of a limit stands out once it is shown, and once only, whoever sees it after", async () => {
    await job.to((s) => s.step === "stakes.size");
    const { counts } = await fold();
    await job.say({ type: "answer", gate: "stakes.size", value: PAPER });
    expect([await last(), (await fold()).counts]).toEqual([["paper"], { ...counts, paper: 1 }]);
    const { outcome } = await job.say({ type: "answer", gate: "stakes.size", value: PAPER }, "Maren");
    expect([outcome, await last(), (await fold()).counts.paper]).toEqual([{ did: "seen" }, [], 1]);
  });
  it("a don't know was taken down, and is no good answer", async () => {
    await job.say({ ...sheet, value: { kind: "unknown" } });
    expect(await last()).toEqual(["outOfLimit"]);
  });
  it("a good answer, a note and a hold are nothing to look at", async () => {
    await job.say({ ...sheet, value: { kind: "document", named: "RC-80100 rev C" } });
    await job.say({ type: "note", text: "cloudy" });
    await job.say({ type: "hold" }, "Odd");
    expect((await fold()).counts).toEqual(NONE);
  });
  it("a measure over its limit is out of it, one at the limit is not, and moves on", async () => {
    await job.to((s) => s.step === "drive.AB");
    const before = (await fold()).counts.outOfLimit;
    await job.say({ ...showing, value: inches(6.5) });
    expect([await last(), (await fold()).counts.outOfLimit]).toEqual([["outOfLimit"], before + 1]);
    await job.say({ ...showing, value: inches(6) });
    expect([await last(), (await fold()).counts.outOfLimit]).toEqual([[], before + 1]);
    expect((await job.read()).step).toBe("drive.BC");
  });
  it("an answer to a condition is judged like any other", async () => {
    await job.to((s) => s.step === "drive.AB");
    await job.say({ type: "answer", gate: "earsAndEyes", value: { kind: "yesNo", yes: true } });
    expect(await last()).toEqual([]);
    await job.say({ type: "answer", gate: "earsAndEyes", value: { kind: "yesNo", yes: false } });
    expect(await last()).toEqual(["outOfLimit"]);
  });
  it("going back over a call is marked once, on the entry that did it", async () => {
    await job.to((s) => s.step === "talk.hazards");
    await job.say({ type: "back" });
    expect([await last(), (await fold()).counts.wentBack]).toEqual([["wentBack"], 1]);
  });
  it("thunder that is taken back is marked, once it counts", async () => {
    await job.say({ type: "reading", reading: { kind: "thunder", takenAt: 0 } });
    const reading = { kind: "noThunder", takenAt: 0, because: "a truck" } as const;
    const { no } = await job.say({ type: "readBack", intent: { type: "reading", reading } }, "Ines", { source: "talk" });
    expect(await last()).toEqual([]);
    await job.say({ type: "correct", target: no }, "Ines", { source: "talk" });
    expect([await last(), (await fold()).counts.takenBack]).toEqual([["takenBack"], 1]);
  });
  it("a check left out with a reason is marked", async () => {
    const { gate } = await job.to((s) => s.gate?.hard === false);
    await job.say({ type: "waive", gate: gate!.id, because: "no such thing here" });
    expect([await last(), (await fold()).counts.waived]).toEqual([["waived"], 1]);
  });
  it("fewer came out from under the cloth than went in: out of its limit; as many: not", async () => {
    await job.to((s) => s.step === "lower.center.C2");
    const out = { type: "answer", gate: "lower.center.C2" } as const;
    const before = (await fold()).counts.outOfLimit;
    await job.say({ ...out, value: { kind: "count", n: 2 } }, "Tobias");
    expect([await last(), (await fold()).counts.outOfLimit]).toEqual([["outOfLimit"], before + 1]);
    await job.say({ ...out, value: { kind: "count", n: 3 } }, "Tobias");
    expect(await last()).toEqual([]);
  });
});

describe("a spoken answer", () => {
  const talk = { source: "talk" } as const;
  const readBack = (value: Value) => job.say({ type: "readBack", intent: { ...sheet, value } }, "Ines", talk);
  it("that is read back is no finding yet, and is one when it is confirmed", async () => {
    const { no } = await readBack({ kind: "unknown" });
    expect([await last(), (await fold()).counts]).toEqual([[], NONE]);
    await job.say({ type: "correct", target: no }, "Ines", talk);
    expect([await last(), (await fold()).counts]).toEqual([["outOfLimit"], { ...NONE, outOfLimit: 1 }]);
  });
  it("that was dropped, or never confirmed, never is one", async () => {
    const { no } = await readBack({ kind: "unknown" });
    await job.say({ type: "wrong", target: no }, "Ines", talk);
    await readBack({ kind: "document", named: "RC-4040" });
    job.clock.pass(60);
    await job.say({ type: "note", text: "later" });
    expect((await fold()).counts).toEqual(NONE);
  });
  it("that was refused as soon as it was heard is a refusal like any other", async () => {
    await job.say({ type: "readBack", intent: { type: "waive", gate: "sheet.atHand", because: "no time" } }, "Ines", talk);
    expect(await last()).toEqual(["refused"]);
  });
  it("left out by voice counts when it is confirmed", async () => {
    const { gate } = await job.to((s) => s.gate?.hard === false);
    const { no } = await job.say({ type: "readBack", intent: { type: "waive", gate: gate!.id, because: "none" } }, "Ines", talk);
    expect(await last()).toEqual([]);
    await job.say({ type: "correct", target: no }, "Ines", talk);
    expect(await last()).toEqual(["waived"]);
  });
});

it("an amendment is a finding once it is agreed, and answers are judged by the script that was in force", async () => {
  await job.to((s) => s.step === "marked");
  const marked = { type: "answer", gate: "marked" } as const;
  await job.say({ ...marked, value: rings(11, 11) });
  expect(await last()).toEqual([]);
  const longer = readBrief({ ...brief(), title: "Two mids", tent: { ...brief().tent, lengthFt: 120, midsFt: [20, 20] } }).frozen;
  const { no } = await job.say({ type: "amend", because: "cloth is one mid longer", to: longer });
  expect([await last(), (await fold()).lengthFt]).toEqual([[], 100]);
  await job.say({ type: "agree", target: no }, "Maren");
  expect(await last()).toEqual(["amended"]);
  expect(await fold()).toMatchObject({ title: "Two mids", lengthFt: 120, frozenAt: no });
  await job.to((s) => s.gate?.id === "marked");
  await job.say({ ...marked, value: rings(11, 13) });
  expect(await last()).toEqual(["outOfLimit"]);
  await job.say({ ...marked, value: rings(13, 13) });
  expect(await last()).toEqual([]);
});

it("an amendment that makes a limit looser is a finding of its own, once it is agreed", async () => {
  const { sheet } = brief();
  const thinner = (document: string) =>
    readBrief({ ...brief(), sheet: { ...sheet, document, stakeDiameterIn: Number(sheet.stakeDiameterIn) - 0.125 } }).frozen;
  const { outcome } = await job.say({ type: "amend", because: "thinner ones came", to: thinner(sheet.document) });
  expect([outcome, await last()]).toEqual([
    { refused: [{ why: "looserLimit", paper: "sheet", fields: ["sheet.stakeDiameterIn"] }] },
    ["refused"],
  ]);
  const { no } = await job.say({ type: "amend", because: "a sheet came with them", to: thinner("RC-80100 rev D") });
  expect(await last()).toEqual([]);
  await job.say({ type: "agree", target: no }, "Maren");
  expect([await last(), (await fold()).counts.loosened]).toEqual([["amended", "loosened"], 1]);
});

describe("time", () => {
  it("between two entries belongs to the phase in which the guide stood after the earlier one", async () => {
    await job.to((s) => s.phase === "anchorsSet");
    const { phaseMs, phase } = await fold();
    expect([phase, Object.keys(phaseMs)]).toEqual(["anchorsSet", ["utilitiesMarked"]]);
    job.clock.pass(3600);
    const { at } = await job.say({ type: "note", text: "coffee" });
    expect((await fold()).phaseMs.anchorsSet).toBeGreaterThanOrEqual(3_600_000);
    expect([(await fold()).phaseMs.utilitiesMarked, (await fold()).lastAt]).toEqual([phaseMs.utilitiesMarked, at]);
  });
  it.each(["interiorRaised", "standing"])("spent making safe out of %s is counted on its own", async (phase) => {
    await job.to((s) => s.phase === phase);
    await job.say({ type: "makeSafe", because: "a strap torn" }, "Odd");
    const before = await fold();
    expect(before.phase).toBe("makingSafe");
    job.clock.pass(600);
    await job.say({ type: "note", text: "all out" });
    expect((await fold()).phaseMs.makingSafe).toBeGreaterThanOrEqual(600_000);
    expect((await fold()).phaseMs[phase]).toBe(before.phaseMs[phase]);
  });
  it("adds up to the time from the first entry to the last", async () => {
    await job.to((s) => s.phase === "sectionsJoined");
    const { phaseMs, openedAt, lastAt } = await fold();
    expect(Object.values(phaseMs).reduce((a, b) => a + b, 0)).toBe(lastAt - openedAt);
  });
  it("after a job is closed is nobody's", async () => {
    await job.say({ type: "standDown", because: "rained off" });
    const { phase, phaseMs } = await fold();
    job.clock.pass(86_400);
    await job.say({ type: "note", text: "filed" });
    expect([phase, (await fold()).phaseMs]).toEqual(["closed", phaseMs]);
  });
});

it("a rehearsal is one as it was opened, whatever an amendment says later", async () => {
  const [first] = await job.entries();
  if (first?.entry.kind !== "opening") throw new Error("no opening");
  const { opened } = first.entry;
  expect(openFold(first.entry).rehearsal).toBe(false);
  expect(openFold({ ...first.entry, opened: { ...opened, brief: { ...opened.brief, rehearsal: true } as never } }).rehearsal).toBe(true);
});

it("one entry at a time, kept as JSON between, it comes to the same as all at once", async () => {
  await job.to((s) => s.phase === "anchorsSet");
  const entries = await job.entries();
  const [first, ...rest] = entries.map((e) => e.entry);
  let state = openFold(first as never);
  for (const entry of rest) state = foldIn(JSON.parse(JSON.stringify(state)), entry as never, (no) => entries[no - 1]?.entry).fold;
  expect(state).toEqual(await fold());
});

it("the record of the procedure folds to its end, every mark counted once", () => {
  const lines = readFileSync(new URL("../golden/procedure-1.jsonl", import.meta.url), "utf8")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line) as { no: number; hash: string; bytes: string })
    .map((line) => ({ ...line, bytes: new TextEncoder().encode(line.bytes) }));
  const { fold: golden, each } = foldAll(verifyChain(lines).entries);
  const marks = each.flat();
  for (const mark of FLAGS) expect(golden.counts[mark]).toBe(marks.filter((m) => m === mark).length);
  expect([golden.phase, golden.no, each.length]).toEqual(["closed", lines.length, lines.length]);
});
