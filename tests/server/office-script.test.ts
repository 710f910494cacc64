import { expect, it } from "vitest";
import { PHASES } from "../../machines/install/step.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief } from "../support/app.ts";
import { drive } from "../support/crew-lead.ts";
import { openedByScript } from "../support/office-script.ts";

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
  const { read, say, job, app } = await openedByScript(hundred());
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
