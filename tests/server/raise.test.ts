import { expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { drive, type Say } from "../support/crew-lead.ts";

const PHASES = [
  "utilitiesMarked",
  "anchorsSet",
  "sectionsJoined",
  "perimeterRaised",
  "interiorRaised",
  "tensioned",
  "inspected",
  "standing",
  "struck",
];

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
    centrePoleFt: 32,
    sidePoleFt: 8,
    setbackFt: 6,
  },
});

it("an office script takes a 100 by 200 from the ticket to the last stake, refused in every phase on the way", {
  timeout: 120_000,
}, async () => {
  const { read, say, job, app } = await opened(hundred());
  const { state, refused } = await drive(read, say, () => false);
  expect(state.closed).toBe(true);
  expect([...refused].sort()).toEqual([...PHASES].sort());
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
    seen: state.turn,
    type: "amend",
    because: "cloth is one mid longer",
    brief: changed,
  });
  expect(proposed.body.outcome).toEqual({ did: "proposed" });
  const alone = await say({ as: "Ines", key: "agree-0001", seen: 0, type: "agree", of: proposed.body.entry });
  expect(alone.body.reasons[0]?.why).toBe("sameAsProposer");
  const agreed = await say({ as: "Maren", key: "agree-0002", seen: 0, type: "agree", of: proposed.body.entry });
  expect(agreed.body).toMatchObject({ outcome: { did: "amended" }, phase: "utilitiesMarked", step: "locate.covers" });
});

it("a record that was read again from its file gives the same state as the one in memory", async () => {
  const { read, say, job, journal } = await opened(brief());
  const { state } = await drive(read, say, (s) => s.step === "baseline");
  const other = testApp(journal);
  const again = (await (await other.app.request(`/jobs/${job}.json`)).json()) as typeof state;
  expect([again.step, again.turn, again.entry, again.readOnly]).toEqual([state.step, state.turn, state.entry, null]);
});
