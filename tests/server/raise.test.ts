import { expect, it } from "vitest";
import { PHASES } from "../../machines/install/step.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief, testApp } from "../support/app.ts";
import { drive, type Say } from "../support/crew-lead.ts";

async function opened(input: object) {
  const { app, post, clock, journal } = testApp();
  const answer = await post("/jobs", { key: "office-open-1", brief: input });
  expect(answer.status).toBe(201);
  const { job } = (await answer.json()) as { job: string };
  const read = async () => (await app.request(`/jobs/${job}.json`)).json();
  const say: Say = async (body) => {
    const r = await post(`/jobs/${job}/say`, body);
    return { status: r.status, body: (await r.json()) as never };
  };
  return { app, job, read, say, post, clock, journal };
}

const hundred = () => ({
  ...brief(),
  title: "A 100 by 200 (invented)",
  tent: {
    widthFt: 100,
    lengthFt: 200,
    midsFt: [20, 20, 20, 20, 20],
    onePiece: false,
    splitEnds: true,
    spacingFt: 10,
    quarterRings: 1,
    centerPoleFt: 32,
    sidePoleFt: 8,
    setbackFt: 6,
  },
});

it("an office script takes a 100 by 200 from the ticket to the last stake: refused in every phase, held, made safe, amended once", async () => {
  const { read, say, job, app } = await opened(hundred());
  const refused = new Set<string>();
  const on = async (stop: (s: GuideState) => boolean) => {
    const leg = await drive(read, say, stop);
    for (const phase of leg.refused) refused.add(phase);
    return leg.state;
  };

  const showing = await on((s) => s.step === "drive.AB" && s.gate?.id === "drive.AB");
  const answer = (key: string, value: object) => say({ as: "Ines", key, seen: showing.revision, type: "answer", gate: "drive.AB", value });
  expect((await answer("degrees-1", { kind: "measure", n: 3, unit: "deg" })).status).toBe(422);
  const eight = await answer("inches-01", { kind: "measure", n: 8, unit: "in" });
  expect(eight.body.reply).toMatch(/^8 in\. Need at most 6 in\. /);
  const five = await answer("metric-01", { kind: "measure", n: 127, unit: "mm" });
  expect(five.body).toMatchObject({
    outcome: { did: "answered", and: "moved" },
    step: "drive.BC",
    reply: expect.stringMatching(/^5 in\. /),
  });

  const held = await say({ as: "Odd", key: "hold-0001", seen: 0, type: "hold" });
  const whileHeld = await say({ as: "Ines", key: "next-held", seen: held.body.entry!, type: "next" });
  expect(whileHeld.body.reasons[0]?.why).toBe("held");
  await say({ as: "Ines", key: "carry-001", seen: held.body.entry!, type: "carryOn" });

  await on((s) => s.step === "rings");
  const longer = { ...hundred(), tent: { ...hundred().tent, lengthFt: 220, midsFt: [20, 20, 20, 20, 20, 20] } };
  const proposed = await say({
    as: "Ines",
    key: "amend-0001",
    seen: 0,
    type: "amend",
    because: "two rings more in the cloth",
    brief: longer,
  });
  const amended = await say({ as: "Maren", key: "agree-0001", seen: 0, type: "agree", target: proposed.body.entry });
  // Nobody is walked back: what changed is asked again, and what was added is done, where the job stands.
  expect(amended.body).toMatchObject({ phase: "sectionsJoined", step: "rings" });
  expect((await read()).gate).toMatchObject({ id: "kit.loaded", asked: "again", status: "outOfLimit" });
  const again = await on((s) => s.gate?.asked !== "again");
  expect(again.phase).toBe("sectionsJoined");

  await on((s) => s.step.startsWith("lift.center"));
  await say({ as: "Jory", key: "make-safe", seen: 0, type: "makeSafe", because: "a pole kicked" });
  expect((await on((s) => !s.makingSafe)).step).toMatch(/^under\.center/);

  const state = await on((s) => s.closed);
  expect(state.closed).toBe(true);
  expect([...refused].filter((p) => p !== "up").sort()).toEqual([...PHASES].sort());
  const record = (await (await app.request(`/jobs/${job}/record.json`)).json()) as { entries: unknown[]; problem: string | null };
  expect(record.entries).toHaveLength(state.entry);
  expect(record.problem).toBeNull();
});

it("making safe in the middle of the interior, going on again, and the line is gone over from the count of who goes under", async () => {
  const { read, say } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "lift.quarters.line-1");
  await say({ as: "Jory", key: "make-safe-1", seen: 0, type: "makeSafe", because: "torn strap at AB4" });
  const making = await read();
  expect([making.phase, making.makingSafe]).toEqual(["up", true]);
  const asked = new Set<string>();
  const again = await drive(read, say, (s) => {
    if (s.gate) asked.add(s.gate.id);
    return !s.makingSafe;
  });
  // Everybody was out: they are counted, looked after by somebody else, briefed and counted again.
  expect([...asked]).toEqual(expect.arrayContaining(["safe.up.headcount", "safe.up.looked", "talk.briefed", "talk.headcount"]));
  expect(again.state).toMatchObject({ step: "under.quarters.line-1", gate: { id: "under.quarters.line-1", status: "open" } });
  expect(state.phase).toBe("interiorRaised");
});

it("a mid more than the plan has: lead and a second person amend, and the stations are asked again where the job stands", async () => {
  const { read, say } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "damage");
  const changed = { ...brief(), tent: { ...brief().tent, lengthFt: 120, midsFt: [20, 20] } };
  const proposed = await say({
    as: "Ines",
    key: "amend-0001",
    seen: state.revision,
    type: "amend",
    because: "cloth is one mid longer",
    brief: changed,
  });
  expect(proposed.body.outcome).toEqual({ did: "proposed" });
  const alone = await say({ as: "Ines", key: "agree-0001", seen: 0, type: "agree", target: proposed.body.entry });
  expect(alone.body.reasons[0]?.why).toBe("sameAsProposer");
  const agreed = await say({ as: "Maren", key: "agree-0002", seen: 0, type: "agree", target: proposed.body.entry });
  expect(agreed.body).toMatchObject({ outcome: { did: "amended" }, phase: "sectionsJoined", step: "damage" });
  const asked: string[] = [];
  const there = await drive(read, say, (s) => {
    if (s.gate?.asked === "again" && asked.at(-1) !== s.gate.id) asked.push(s.gate.id);
    return s.step !== "damage";
  });
  expect(asked).toEqual(expect.arrayContaining(["white.stakeLine", "locate.covers", "squared", "marked", "stakes.AB"]));
  // The mid that the plan has now and had not before is laid where the job stands.
  expect(there.state).toMatchObject({ phase: "sectionsJoined", step: "lay.mid-2" });
});

it("a record that was read again from its file gives the same state as the one in memory", async () => {
  const { read, say, job, journal } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "baseline");
  const other = testApp(journal);
  const again = (await (await other.app.request(`/jobs/${job}.json`)).json()) as typeof state;
  expect([again.step, again.revision, again.entry, again.readOnly]).toEqual([state.step, state.revision, state.entry, null]);
});

it("a good answer is told with what is asked next, and next asks the same", async () => {
  const { read, say } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "sides.laid" && s.gate?.id === "sides.laid");
  const n = state.gate!.want.n ?? (state.gate!.check as { from: number }).from;
  const around = { as: "Ines", seen: state.revision };
  const told = await say({ ...around, key: "laid-0001", type: "answer", gate: "sides.laid", value: { kind: "count", n } });
  expect(told.body).toMatchObject({
    outcome: { did: "answered", asks: { gate: "hats", asked: "before" } },
    step: "sides.laid",
    reply: `${n}. Hard hats on?`,
  });
  const { gate, revision } = await read();
  expect(gate).toMatchObject({ id: "hats", asked: "before", ask: "Hard hats on?", status: "open" });
  // A screen that showed the question before does not answer this one.
  const late = await say({ ...around, key: "late-0001", type: "answer", gate: "hats", value: { kind: "yesNo", yes: true } });
  expect(late.body.reasons).toMatchObject([{ why: "movedOn" }]);
  const next = await say({ as: "Ines", seen: revision, key: "next-0001", type: "next" });
  expect(next.body).toMatchObject({ reply: "Hard hats on?", reasons: [{ why: "gate", gate: "hats", status: "open" }] });
});
