import { expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { drive } from "../support/crew-lead.ts";
import { openedByScript } from "../support/office-script.ts";

it("making safe in the middle of the interior, going on again, and the line is gone over from the count of who goes under", async () => {
  const { read, say } = await openedByScript(brief());
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
  const { read, say } = await openedByScript(brief());
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
  const { read, say, job, journal } = await openedByScript(brief());
  const { state } = await drive(read, say, (s) => s.step === "baseline");
  const other = testApp(journal);
  const again = (await (await other.app.request(`/jobs/${job}.json`)).json()) as typeof state;
  expect([again.step, again.revision, again.entry, again.readOnly]).toEqual([state.step, state.revision, state.entry, null]);
});

it("a good answer is told with what is asked next, and next asks the same", async () => {
  const { read, say } = await openedByScript(brief());
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
