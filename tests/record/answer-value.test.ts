import { describe, expect, it } from "vitest";
import type { Check, Value } from "../../machines/install/gates.ts";
import { missingNow } from "../../machines/install/job.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import { answerValue } from "../../machines/record/effective-command.ts";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { briefOf, frozenOf, SECOND } from "../proof/fixtures.ts";
import { goodValue } from "../support/answers.ts";
import { KeptJob, went } from "../support/kept-job.ts";
import { forty } from "../tent/tents.ts";

const brief = briefOf(forty);
const EDGES = ["AB", "BC", "CD", "DA"];
const gateOf = (job: KeptJob, id: string) => indexOf(job.job.frozen.script).gates.get(id)!;
/** The record's answer by an entry, as a reader of the record works it out. */
const read = (job: KeptJob, entry: CommandEntry) => answerValue(entry, job.earlier);
const figures = (n: Record<string, number>): Value => ({ kind: "figures", unit: "count", n });
const marks = (job: KeptJob) => (goodValue(gateOf(job, "marked").check) as { n: Record<string, number> }).n;
const one = (all: Record<string, number>, name: string, by = 0) => figures({ [name]: all[name]! + by });

describe("an answer that is given in parts, by the record", () => {
  it("is the state's answer after each of its parts, and the last part moves on", () => {
    const job = new KeptJob(brief).to("marked");
    const all = marks(job);
    for (const [i, edges] of [["AB", "BC"], ["CD"], ["DA"]].entries()) {
      const entry = job.answer("marked", figures(Object.fromEntries(edges.map((e) => [e, all[e]!]))));
      expect(went(entry)).toEqual(i < 2 ? ["answered"] : ["answered", "moved"]);
      expect(read(job, entry)).toEqual(job.answers.marked!.value);
    }
    expect(job.answers.marked!.value).toEqual(figures(all));
  });
  it("is put right by saying a part again", () => {
    const job = new KeptJob(brief).to("marked");
    const all = marks(job);
    job.answer("marked", figures({ AB: all.AB! + 3, BC: all.BC!, CD: all.CD! }));
    const wrong = job.answer("marked", one(all, "DA"));
    expect([went(wrong), read(job, wrong)]).toEqual([["answered"], figures({ ...all, AB: all.AB! + 3 })]);
    const right = job.answer("marked", one(all, "AB"));
    expect([went(right), read(job, right)]).toEqual([["answered", "moved"], figures(all)]);
  });
  it("starts over where the call was gone back over", () => {
    const job = new KeptJob(brief).to("marked");
    const all = marks(job);
    job.answer("marked", figures(all));
    job.say({ type: "back" });
    expect(job.call).toBe("marked");
    const again = job.answer("marked", one(all, "CD"));
    expect(read(job, again)).toEqual(one(all, "CD"));
    expect(read(job, again)).toEqual(job.answers.marked!.value);
  });
  it("starts over after a blow where that asks it again", () => {
    const job = new KeptJob(brief).to("walked");
    const { n } = goodValue(gateOf(job, "walked").check) as { n: Record<string, number> };
    job.answer("walked", one(n, "AB"), "deputy");
    job.wind(60);
    const entry = job.answer("walked", one(n, "BC"), "deputy");
    expect(read(job, entry)).toEqual(one(n, "BC"));
    expect(read(job, entry)).toEqual(job.answers.walked!.value);
  });
  it("goes on over a reading, a note, a refusal and somebody else's read-back in between", () => {
    const job = new KeptJob(brief).to("marked");
    const all = marks(job);
    job.answer("marked", one(all, "AB"));
    job.wind(6);
    job.say({ type: "note", text: "paint is running out" });
    job.say({ type: "next" });
    const heard = job.say({ type: "readBack", intent: { type: "answer", gate: "marked", value: one(all, "BC") } }, "crew");
    expect(read(job, heard)).toEqual(figures({ AB: all.AB!, BC: all.BC! }));
    const entry = job.answer("marked", one(all, "CD"));
    expect(read(job, entry)).toEqual(figures({ AB: all.AB!, CD: all.CD! }));
    expect(read(job, entry)).toEqual(job.answers.marked!.value);
    const confirmed = job.say({ type: "correct", target: heard.no }, "crew");
    expect(read(job, confirmed)).toEqual(job.answers.marked!.value);
  });
  it("is put together away from its call too, over going back to another", () => {
    const job = new KeptJob(brief).to("kit.spread");
    const ringed = frozenOf(briefOf({ ...forty, rings: { AB: 8 } }));
    const { no } = job.say({ type: "amend", because: "the cloth has eight rings along AB", to: ringed });
    expect(went(job.say({ type: "agree", target: no }, "deputy"))).toEqual(["amended"]);
    const all = marks(job);
    job.until(() => missingNow(job.job, job.at + SECOND)?.gate === "marked");
    expect(job.call).not.toBe("marked");
    for (const edge of EDGES) {
      const entry = job.answer("marked", one(all, edge));
      expect(read(job, entry)).toEqual(job.answers.marked!.value);
    }
    expect(job.answers.marked!.value).toEqual(figures(all));
  });
  it("of a list that an amendment makes longer, holds what was counted long before", () => {
    const job = new KeptJob(brief).to("kit.spread");
    const before = job.answers["kit.loaded"]!.value as Extract<Value, { kind: "counts" }>;
    const anchors = { side: { plates: 2, stakes: 4 }, seamEnd: { plates: 2, stakes: 4 }, corner: { plates: 3, stakes: 6 } };
    const heavier = frozenOf(briefOf({ ...forty, anchors } as never));
    const { no } = job.say({ type: "amend", because: "the sheet wants twice the stakes", to: heavier });
    job.say({ type: "agree", target: no }, "deputy");
    const want = (gateOf(job, "kit.loaded").check as Extract<Check, { kind: "counts" }>).want;
    job.until(() => missingNow(job.job, job.at + SECOND)?.gate === "kit.loaded");
    const entry = job.answer("kit.loaded", { kind: "counts", n: { perimeterStake: want.perimeterStake! } });
    expect(read(job, entry)).toEqual({ kind: "counts", n: { ...before.n, perimeterStake: want.perimeterStake! } });
    expect(read(job, entry)).toEqual(job.answers["kit.loaded"]!.value);
  });
  it("takes the last answer while it is not known, and starts over after that", () => {
    const job = new KeptJob(brief).to("marked");
    const all = marks(job);
    job.answer("marked", one(all, "AB"));
    expect(read(job, job.answer("marked", { kind: "unknown" }))).toEqual({ kind: "unknown" });
    const entry = job.answer("marked", one(all, "BC"));
    expect(read(job, entry)).toEqual(one(all, "BC"));
    expect(read(job, entry)).toEqual(job.answers.marked!.value);
  });
  it("of yeses by name, holds every name", () => {
    const job = new KeptJob(brief).to("private.lines");
    const say = (name: string, yes: boolean) => job.answer("private.lines", { kind: "each", yes: { [name]: yes } });
    for (const entry of [say("irrigation", true), say("septic", false), say("lighting", true), say("septic", true)])
      expect(read(job, entry)).toMatchObject({ kind: "each", yes: { irrigation: true } });
    expect(job.answers["private.lines"]!.value).toEqual({ kind: "each", yes: { irrigation: true, septic: true, lighting: true } });
    expect(went(job.entries.at(-1) as CommandEntry)).toEqual(["answered", "moved"]);
  });
});
