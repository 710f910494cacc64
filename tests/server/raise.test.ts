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

  const showing = await on((s) => s.step === "showing.AB");
  const answer = (key: string, value: object) =>
    say({ as: "Ines", key, seen: showing.revision, type: "answer", gate: "showing.AB", value });
  expect((await answer("degrees-1", { kind: "measure", n: 3, unit: "deg" })).status).toBe(422);
  const eight = await answer("inches-01", { kind: "measure", n: 8, unit: "in" });
  expect(eight.body.reply).toContain("8 in is not good: wanted 0 in to 6 in");
  expect((await answer("metric-01", { kind: "measure", n: 127, unit: "mm" })).body.reply).toBe("Taken down.");

  const held = await say({ as: "Odd", key: "hold-0001", seen: 0, type: "hold" });
  const whileHeld = await say({ as: "Ines", key: "next-held", seen: held.body.entry!, type: "next" });
  expect(whileHeld.body.reasons[0]?.why).toBe("held");
  await say({ as: "Ines", key: "carry-001", seen: held.body.entry!, type: "carryOn" });

  await on((s) => s.step === "rings.AB");
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
  expect(amended.body.phase).toBe("utilitiesMarked");

  await on((s) => s.step.startsWith("feet.center"));
  await say({ as: "Jory", key: "make-safe", seen: 0, type: "makeSafe", because: "a pole kicked" });
  expect((await on((s) => !s.makingSafe)).step).toMatch(/^gust\.center/);

  const state = await on(() => false);
  expect(state.closed).toBe(true);
  expect([...refused].filter((p) => p !== "up").sort()).toEqual([...PHASES].sort());
  const record = (await (await app.request(`/jobs/${job}/record.json`)).json()) as { entries: unknown[]; problem: string | null };
  expect(record.entries).toHaveLength(state.entry);
  expect(record.problem).toBeNull();
});

it("making safe in the middle of the interior, going on again, and the line is gone over from its wind reading", async () => {
  const { read, say } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "feet.quarters.line-1");
  await say({ as: "Jory", key: "make-safe-1", seen: 0, type: "makeSafe", because: "torn strap at AB4" });
  const making = await read();
  expect([making.phase, making.makingSafe]).toEqual(["up", true]);
  const again = await drive(read, say, (s) => !s.makingSafe);
  expect(again.state.step).toBe("gust.quarters.line-1");
  expect(state.phase).toBe("interiorRaised");
});

it("a mid more than the plan has: lead and a second person amend, and the stations are gone over again", async () => {
  const { read, say } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "damage.cloth");
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
  expect(agreed.body).toMatchObject({ outcome: { did: "amended" }, phase: "utilitiesMarked", step: "locate.covers" });
});

it("a record that was read again from its file gives the same state as the one in memory", async () => {
  const { read, say, job, journal } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "baseline");
  const other = testApp(journal);
  const again = (await (await other.app.request(`/jobs/${job}.json`)).json()) as typeof state;
  expect([again.step, again.revision, again.entry, again.readOnly]).toEqual([state.step, state.revision, state.entry, null]);
});
