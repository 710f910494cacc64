import { describe, expect, it, vi } from "vitest";
import { progressOf } from "../../machines/rehearsal/progress.ts";
import { ITEMS } from "../../machines/rehearsal/questions/items.ts";
import { type Led, READY, readyToLead } from "../../machines/rehearsal/ready.ts";
import { type Card, cardFrom, type Grade, graded, recall, standing } from "../../machines/rehearsal/repetition.ts";
import { answered, endOf, itemsOfRound, MAX_FIRST, MAX_NEW_A_DAY, MAX_QUESTIONS, nextOf, roundFrom, roundOf, seedOf } from "../../machines/rehearsal/round.ts"; // biome-ignore format: one line reads best

const DAY_MS = 24 * 3_600_000;
const NOON = Date.UTC(2026, 5, 2, 12);
const dayOf = (at: number) => new Date(at).toISOString().slice(0, 10);

/** An item answered on days in a row, from noon of the first. */
function over(...grades: Grade[]): Card {
  return grades.reduce<Card | null>((card, grade, i) => graded(card, grade, NOON + i * DAY_MS, dayOf(NOON + i * DAY_MS)), null)!;
}

describe("when an item comes round again", () => {
  it("follows from the answers and their times alone: no clock and no chance is asked", () => {
    vi.spyOn(Math, "random").mockImplementation(() => {
      throw new Error("chance was asked");
    });
    vi.spyOn(Date, "now").mockImplementation(() => {
      throw new Error("the clock was read");
    });
    const once = over("right", "right", "missed", "right");
    const twice = over("right", "right", "missed", "right");
    vi.restoreAllMocks();
    expect(twice).toEqual(once);
    expect(graded(null, "right", 0, "1970-01-01").dueAt).toBeLessThan(MAX_WAIT_MS);
  });
  it("is later after each time it was right, and soon after it was missed", () => {
    const wait = (card: Card) => card.dueAt - card.lastAt;
    const right = over("right");
    const again = graded(right, "right", right.dueAt, "later");
    expect(wait(right)).toBeGreaterThanOrEqual(DAY_MS);
    expect(wait(again)).toBeGreaterThan(wait(right));
    expect(wait(graded(again, "missed", again.dueAt, "missed"))).toBeLessThan(wait(again));
    expect(wait(over("afterMiss"))).toBeLessThan(wait(right));
  });
  it("never takes longer than a season", () => {
    let card = over("right");
    for (let i = 0; i < 30; i++) card = graded(card, "right", card.dueAt, `day ${i}`);
    expect(card.dueAt - card.lastAt).toBeLessThanOrEqual(MAX_WAIT_MS);
  });
  it("does not go back where the clock was set back", () => {
    const card = over("right", "right");
    expect(graded(card, "right", NOON - DAY_MS, "before").lastAt).toBe(card.lastAt);
  });
});
const MAX_WAIT_MS = 91 * DAY_MS;

describe("what somebody knows", () => {
  it("was right on two days since it was missed last, and is still likely remembered", () => {
    const at = NOON + DAY_MS;
    expect(standing(null, at)).toBe("new");
    expect(standing(over("right"), at)).toBe("begun");
    expect(standing(over("right", "right"), at)).toBe("known");
    expect(standing(graded(over("right"), "right", NOON + 1000, dayOf(NOON)), at)).toBe("begun");
    expect(standing(over("right", "right", "missed"), at + DAY_MS)).toBe("begun");
    expect(standing(over("right", "right"), at + 365 * DAY_MS)).toBe("begun");
  });
  it("fades from one on", () => {
    const card = over("right", "right");
    expect(recall(card, card.lastAt)).toBe(1);
    expect(recall(card, card.lastAt + 30 * DAY_MS)).toBeLessThan(recall(card, card.lastAt + DAY_MS));
  });
  it("is counted by phase, of what can be asked", () => {
    const known = ITEMS.filter(({ phase }) => phase === "struck").slice(0, 3);
    const cards = new Map(known.map(({ id }) => [id, over("right", "right")]));
    const struck = progressOf(ITEMS, cards, NOON + DAY_MS).find(({ phase }) => phase === "struck")!;
    expect(struck).toMatchObject({ known: 3, begun: 0, new: struck.of - 3 });
  });
  it("is read from a file only where it is whole", () => {
    const card = over("right");
    expect(cardFrom(JSON.parse(JSON.stringify(card)))).toEqual(card);
    for (const damaged of [null, 7, "card", {}, { ...card, stability: "much" }, { ...card, last: "easy" }])
      expect(cardFrom(damaged)).toBeNull();
  });
});

describe("a round", () => {
  const items = ITEMS.slice(0, 30);
  it("asks what is due the longest first, then new items, and not more than so many", () => {
    const due = (daysAgo: number) => ({ ...over("right"), dueAt: NOON - daysAgo * DAY_MS, begunOn: "before" });
    const cards = new Map([[items[5]!.id, due(1)], [items[9]!.id, due(3)]]); // biome-ignore format: one line reads best
    const asked = itemsOfRound(items, cards, NOON, "today");
    expect(asked.slice(0, 3)).toEqual([items[9]!.id, items[5]!.id, items[0]!.id]);
    expect(asked).toHaveLength(MAX_FIRST);
  });
  it("has no more new items than a day allows, nor any that is not due", () => {
    const cards = new Map(items.slice(0, MAX_NEW_A_DAY).map(({ id }) => [id, { ...over("right"), begunOn: "today" }]));
    expect(itemsOfRound(items, cards, NOON, "today")).toEqual([]);
    expect(itemsOfRound(items, cards, NOON, "tomorrow")).toHaveLength(MAX_NEW_A_DAY);
  });
  it("asks once more at its end what was missed, from another seed, and never more than its questions", () => {
    const round = roundOf(items.slice(0, 2).map(({ id }) => id), 5, NOON, "today"); // biome-ignore format: one line reads best
    const missed = answered(round, 0, ["2"], false);
    expect([missed.grade, missed.round.asked.map(({ item }) => item)]).toEqual(["missed", [items[0]!.id, items[1]!.id, items[0]!.id]]);
    expect(seedOf(round, 0)).not.toBe(seedOf(round, 2));
    const next = answered(missed.round, 1, ["1"], true);
    expect([next.grade, nextOf(next.round)]).toEqual(["right", 2]);
    const last = answered(next.round, 2, ["1"], true);
    expect([last.grade, nextOf(last.round)]).toEqual(["afterMiss", null]);
    let long = roundOf(items.slice(0, MAX_FIRST).map(({ id }) => id), 5, NOON, "today"); // biome-ignore format: one line reads best
    for (let no = nextOf(long); no !== null; no = nextOf(long)) long = answered(long, no, ["1"], false).round;
    expect(long.asked).toHaveLength(MAX_QUESTIONS);
    expect(endOf(long)).toBe(NOON + 5 * 60_000);
  });
  it("is read from a file only where it is whole", () => {
    const round = roundOf(["a"], 1, NOON, "today");
    expect(roundFrom(JSON.parse(JSON.stringify(round)))).toEqual(round);
    for (const damaged of [null, [], { ...round, asked: "none" }, { ...round, seed: null }]) expect(roundFrom(damaged)).toBeNull();
  });
});

describe("ready to lead, on paper", () => {
  const all = [{ phase: "struck", of: 10, known: 8, begun: 2, new: 0 }] as const;
  const led = (seed: number, more: Partial<Led> = {}): Led => ({ way: "lead", trouble: "several", seed, over: { at: NOON, unsafe: 0, whole: true }, ...more }); // biome-ignore format: one line reads best
  it("is where every phase is known well enough and two such rehearsals were led", () => {
    expect(readyToLead(all, [led(1), led(2)], NOON)).toEqual({ ready: true, lacking: [] });
  });
  it("says of each phase how much is missing", () => {
    expect(readyToLead([{ ...all[0], known: 7 }], [led(1), led(2)], NOON).lacking).toEqual([
      { is: "phase", phase: "struck", known: 7, of: 10, wanted: 8 },
    ]);
  });
  it.each([
    ["of the same seed twice", led(1)],
    ["that was walked", led(2, { way: "walk" })],
    ["with less trouble", led(2, { trouble: "some" })],
    ["that is not over", led(2, { over: null })],
    ["with an unsafe moment", led(2, { over: { at: NOON, unsafe: 1, whole: true } })],
    ["that stopped early", led(2, { over: { at: NOON, unsafe: 0, whole: false } })],
    ["too long ago", led(2, { over: { at: NOON - (READY.maxDays + 1) * DAY_MS, unsafe: 0, whole: true } })],
    ["of a day to come", led(2, { over: { at: NOON + DAY_MS, unsafe: 0, whole: true } })],
  ])("does not count a rehearsal %s", (_what, other) => {
    expect(readyToLead(all, [led(1), other], NOON)).toMatchObject({ ready: false, lacking: [{ is: "rehearsals", led: 1, wanted: 2 }] });
  });
});
