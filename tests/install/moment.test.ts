import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CountedFrom, countAgain, JUMP_MS, momentAt, UNKNOWN_MS } from "../../machines/install/moment.ts";
import { clockJump } from "../../machines/record/clock-jump.ts";
import { HOUR, MINUTE, SECOND, START } from "../proof/fixtures.ts";

const from: CountedFrom = { at: START, wall: START, doubtMs: 0, elapsedMs: 5 };
/** So long counted, and so much added to the wall clock besides. */
const counted = (countedMs: number, setMs = 0, since = from) =>
  momentAt(since, { wall: since.wall + countedMs + setMs, elapsedMs: since.elapsedMs + countedMs });

describe("a moment", () => {
  it("is what was counted, where both clocks agree to a minute", () => {
    for (const set of [-MINUTE, -SECOND, 0, SECOND, MINUTE]) expect(counted(HOUR, set)).toMatchObject({ at: START + HOUR, doubtMs: 0 });
  });
  it("is what was counted, where the wall clock went back", () =>
    expect(counted(HOUR, -59 * MINUTE)).toEqual({ at: START + HOUR, wall: START + MINUTE, doubtMs: 0 }));
  it("is as late as the wall clock says, where that went ahead, and the rest is in doubt", () =>
    expect(counted(MINUTE, 8 * HOUR)).toEqual({ at: START + MINUTE + 8 * HOUR, wall: START + MINUTE + 8 * HOUR, doubtMs: 8 * HOUR }));
  it("is never later than what makes everything old", () =>
    expect(counted(MINUTE, 50 * 365 * 24 * HOUR).at).toBe(START + MINUTE + UNKNOWN_MS));
});

describe("after nobody counted", () => {
  const again = (wallMs: number) => countAgain(from, { wall: START + wallMs, elapsedMs: 0 });
  it("as long passed as the wall clock says", () => expect(again(HOUR)).toMatchObject({ at: START + HOUR, doubtMs: 0 }));
  it("nobody knows how long it was, where that went back at all", () =>
    expect(again(-1)).toMatchObject({ at: START + UNKNOWN_MS, doubtMs: UNKNOWN_MS }));
  it("a clock without a battery, set right by the network a minute later: the night counts, and thunder keeps", () => {
    const began = again(10 * SECOND);
    const now = counted(MINUTE, 8 * HOUR, began);
    expect(now).toMatchObject({ at: START + 8 * HOUR + 70 * SECOND, doubtMs: 8 * HOUR });
    expect(clockJump(from, now)).toEqual({ is: "ahead", ms: 8 * HOUR });
  });
});

it("whatever is done to the wall clock, time never goes back, nothing is younger than what was counted, and no jump goes untold", () => {
  const ms = fc.integer({ min: -400 * 24 * HOUR, max: 400 * 24 * HOUR });
  const step = fc.record({ countedMs: fc.nat(30 * HOUR), setMs: fc.oneof(fc.constant(0), ms), restarts: fc.boolean() });
  fc.assert(
    fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
      let last: CountedFrom = from;
      for (const { countedMs, setMs, restarts } of steps) {
        const since = restarts ? countAgain(last, { wall: last.wall + setMs, elapsedMs: 0 }) : last;
        const now = counted(countedMs, restarts ? 0 : setMs, since);
        expect(now.at - last.at).toBeGreaterThanOrEqual(countedMs);
        expect(now.at - last.at - now.doubtMs).toBeGreaterThanOrEqual(0);
        const told = clockJump(last, now);
        expect(told !== null).toBe(restarts ? setMs < 0 : Math.abs(setMs) > JUMP_MS);
        if (told) expect(told.ms).toBe(Math.abs(setMs));
        last = { ...now, doubtMs: 0, elapsedMs: since.elapsedMs + countedMs };
      }
    }),
  );
});
