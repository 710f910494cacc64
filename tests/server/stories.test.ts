import { beforeAll, describe, expect, it } from "vitest";
import { testApp } from "../support/app.ts";
import { brief } from "../support/briefs.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

/** Played over HTTP as a crew would say it: each line is who, what, and how it is answered. */
const HOUR = 3600;
type Told = { readonly status: number; readonly reply: string; readonly reasons: readonly { readonly gate?: string }[] };

async function teller(job: OpenedJob) {
  let keys = 0;
  return async (as: string, ask: object): Promise<Told> => {
    const { revision, readBack } = await job.read();
    const body = { as, key: `story-${String(++keys).padStart(4, "0")}`, seen: revision, ...ask };
    const spoken = "alternatives" in ask ? { readBack: readBack?.entry ?? null } : {};
    const told = await job.post(`/jobs/${job.job}/say`, { ...body, ...spoken });
    return { status: told.status, ...((await told.json()) as Omit<Told, "status">) };
  };
}
const wind = (mph: number, gustMph: number) => ({ type: "reading", kind: "wind", mph, gustMph });

describe("a squall in the middle of the center poles", () => {
  let job: OpenedJob;
  let say: Awaited<ReturnType<typeof teller>>;
  beforeAll(async () => {
    job = await openedJob();
    await job.to((s) => s.step === "lift.center.C1");
    say = await teller(job);
  });

  it("the trainee hears thunder, the crew reads 60: STOP, both times", async () => {
    const inHand = "STOP. Finish or lower what's in hand.";
    expect((await say("Odd", { alternatives: ["I heard thunder"] })).reply).toBe(`${inHand} Everyone to shelter: the brick barn.`);
    expect((await say("Pia", wind(45, 60))).reply).toBe(`${inHand} Everyone out. Make safe.`);
    expect((await job.read()).weather.is).toBe("stop");
  });

  it("the pole in hand is finished, tied, and everybody counted out", async () => {
    expect((await job.answerWell()).outcome).toMatchObject({ did: "answered", and: "moved" });
    expect((await job.read()).step).toBe("tied.center.C1");
    expect((await job.answerWell()).outcome).toMatchObject({ did: "answered", and: "moved" });
    expect((await job.read()).step).toBe("out.center.C1");
    expect((await job.answerWell()).outcome).toMatchObject({ did: "answered" });
    expect((await job.read()).gate).toMatchObject({ id: "thunder", asked: "before" });
  });

  it("no second center pole is gone under: why, and until when", async () => {
    const told = await say("Ines", { type: "next" });
    expect(told.reasons[0]).toMatchObject({ gate: "thunder" });
    expect(told.reply).toMatch(/not.*before|before \d\d:\d\d/i);
    expect((await job.read()).step).toBe("out.center.C1");
  });

  it("making safe takes one press, and back in takes a count, a look by somebody else, a talk and the wind", async () => {
    await say("Pia", { type: "makeSafe", because: "squall" });
    expect((await job.read()).step).toBe("safe.up.pole");
    job.clock.pass(31 * 60);
    const gates: string[] = [];
    await job.to((s) => {
      if (s.gate && s.gate.status !== "good" && gates.at(-1) !== s.gate.id) gates.push(s.gate.id);
      return s.step === "under.center.C2";
    });
    expect(gates).toEqual(
      expect.arrayContaining(["safe.up.headcount", "safe.up.looked", "talk.briefed", "talk.headcount", "afterBlow", "wind.lift"]),
    );
  });

  it("and the raise goes on to its end", async () => {
    expect((await job.to((s) => s.phase === "standing")).phase).toBe("standing");
  });
});

describe("a job of two days, with a new hand on the second", () => {
  let job: OpenedJob;
  let say: Awaited<ReturnType<typeof teller>>;
  beforeAll(async () => {
    job = await openedJob(brief(), testApp());
    await job.to((s) => s.step === "straps.threaded");
    say = await teller(job);
    job.clock.pass(15 * HOUR);
  });

  it("nothing of the first day is walked again: the morning asks for the weather, the talk and the count", async () => {
    const { step } = await job.read();
    await job.answerWell();
    const asked: string[] = [];
    for (let gate = (await job.read()).gate; gate && gate.status !== "good"; gate = (await job.read()).gate) {
      asked.push(gate.id);
      await job.answerWell();
    }
    expect(asked.slice(0, 3)).toEqual(["warning", "talk.briefed", "talk.headcount"]);
    expect([step, (await job.read()).phase]).toEqual(["straps.threaded", "perimeterRaised"]);
  });

  it("a hand who comes at the corners is heard, briefed and counted where the job stands", async () => {
    await job.to((s) => s.step === "raise.B");
    const crew = [...brief().crew, { name: "Vera", role: "crew" as const }];
    await say("Ines", { type: "amend", because: "Vera came", brief: { ...brief(), crew } });
    const { proposed } = await job.read();
    await say("Maren", { type: "agree", target: proposed!.entry });
    const asked: string[] = [];
    for (let state = await job.read(); state.step === "raise.B" && state.gate && state.gate.status !== "good"; state = await job.read()) {
      asked.push(state.gate.id);
      await job.answerWell();
    }
    expect(asked.filter((gate) => gate !== "wind.lift")).toEqual(["talk.briefed", "talk.headcount", "caller"]);
    // It stands where it stood: nobody has said that the corner is up.
    expect((await job.read()).step).toBe("raise.B");
    await say("Ines", { type: "next" });
    expect((await job.read()).step).toBe("raise.C");
  });
});

describe("a strike by another crew", () => {
  let job: OpenedJob;
  let say: Awaited<ReturnType<typeof teller>>;
  const STRIKERS = [
    { name: "Maren", role: "lead" },
    { name: "Tobias", role: "deputy" },
    { name: "Ray", role: "crew" },
    { name: "Sol", role: "crew" },
    { name: "Wes", role: "crew" },
  ] as const;
  beforeAll(async () => {
    job = await openedJob(brief(), testApp());
    await job.to((s) => s.step === "watch.end");
    say = await teller(job);
    job.clock.pass(3 * 24 * HOUR);
    await say("Ines", { type: "amend", because: "Maren's crew strikes it", brief: { ...brief(), crew: [...STRIKERS] } });
    await say("Maren", { type: "agree", target: (await job.read()).proposed!.entry });
  });

  it("people are out before anything else is asked", async () => {
    await job.to((s) => s.step === "strike.people");
    expect((await job.read()).gate?.id).toBe("strike.people");
  });

  it("has a talk and a count of its own before the first work", async () => {
    const asked: string[] = [];
    await job.to((s) => {
      if (s.gate && s.gate.status !== "good" && asked.at(-1) !== s.gate.id) asked.push(s.gate.id);
      return s.step === "strike.ease";
    });
    expect(asked).toEqual(expect.arrayContaining(["warning", "talk.briefed", "talk.headcount", "wind.lower"]));
    expect(asked.indexOf("talk.headcount")).toBeLessThan(asked.indexOf("strike.power"));
  });

  it("lowers no line under a warning, and each line with its own count in and out", async () => {
    await job.to((s) => s.step === "lower.center.C2");
    await say("Ray", { alternatives: ["there's a severe thunderstorm warning"] });
    expect((await job.answerWell()).outcome).toMatchObject({ did: "answered" });
    await say("Maren", { type: "next" });
    const { step, gate } = await job.read();
    expect([step, gate?.id, gate?.status]).toEqual(["lower.center.C2", "warning", "outOfLimit"]);
    await say("Maren", { type: "answer", gate: "warning", value: { kind: "yesNo", yes: true } });
    const under: string[] = [];
    await job.to((s) => {
      if (/^(strike\.under|lower)\./.test(s.step) && under.at(-1) !== s.step) under.push(s.step);
      return s.step === "strike.interiorDown";
    });
    // The one it stands at, and five more lines, in and out.
    expect(under.length).toBe(11);
  });

  it("and is counted back to the last stake", async () => {
    expect((await job.to((s) => s.closed)).closed).toBe(true);
  });
});
