import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Changed } from "../../server/journal/catalog.ts";
import type { Journal } from "../../server/journal/journal.ts";
import type { KeptRound, Rehearsed } from "../../server/journal/learning.ts";
import { openingLine } from "../support/entries.ts";
import { named } from "../support/people.ts";

const round = (more: Partial<KeptRound> = {}): KeptRound => ({
  id: "round-1",
  learner: "l-1",
  job: "job-1",
  at: 1,
  version: 1,
  body: { asked: ["ü"] },
  ...more,
});
const rehearsal = (more: Partial<Rehearsed> = {}): Rehearsed => ({
  job: "rehearsal-1",
  from: "job-1",
  learner: "l-1",
  way: "lead",
  trouble: "several",
  seed: 2 ** 31 + 5,
  at: 1,
  over: null,
  ...more,
});
const card = (item: string, is: unknown) => ({ item, card: is });

/** What a store of learning promises, wherever it lies. */
export function learningContract(where: string, create: () => Journal) {
  let journal: Journal;
  beforeEach(() => {
    journal = create();
  });
  afterEach(() => journal.close());

  describe(`what people learn, ${where}`, () => {
    it("is somebody's by their name, however it is typed, and begun once", async () => {
      const { learning } = journal;
      const [first, again] = await Promise.all([learning.learner("José", "l-1"), learning.learner("JOSÉ", "l-2")]);
      expect(again).toEqual(first);
      await learning.learner("Odd", "l-3");
      expect((await learning.learners()).map(({ name }) => name)).toEqual(["José", "Odd"]);
      expect([(await learning.learnerCalled(" josé "))?.id, await learning.learnerCalled("nobody")]).toEqual(["l-1", null]);
    });
    it("keeps a round with the card that an answer changed, and counts its versions", async () => {
      const { learning } = journal;
      await learning.learner("Odd", "l-1");
      await learning.saveRound(round(), null);
      await learning.saveRound(round({ version: 2, body: { asked: [] } }), card("order.struck", { n: 1 }));
      await learning.saveRound(round({ version: 3 }), card("order.struck", { n: 2 }));
      expect(await learning.round("round-1")).toEqual(round({ version: 3 }));
      expect(await learning.cards("l-1")).toEqual([card("order.struck", { n: 2 })]);
      expect([await learning.round("round-9"), await learning.cards("l-9")]).toEqual([null, []]);
    });
    it.each([1, 2, 4])("does not take a round as version %i after its second, and no card with it", async (version) => {
      const { learning } = journal;
      await learning.learner("Odd", "l-1");
      await learning.saveRound(round(), null);
      await learning.saveRound(round({ version: 2 }), null);
      await expect(learning.saveRound(round({ version }), card("a", 1))).rejects.toThrow(Changed);
      expect(await learning.cards("l-1")).toEqual([]);
    });
    it("knows the round that was begun last on a job", async () => {
      const { learning } = journal;
      for (const [id, at] of [["b", 2], ["c", 3], ["a", 1]] as const) await learning.saveRound(round({ id, at }), null); // biome-ignore format: one line reads best
      await learning.saveRound(round({ id: "elsewhere", job: "job-2", at: 9 }), null);
      expect([(await learning.lastRound("l-1", "job-1"))?.id, await learning.lastRound("l-2", "job-1")]).toEqual(["c", null]);
    });
    it("keeps rehearsals, the newest first, and how each of them ended", async () => {
      const { learning } = journal;
      await learning.startRehearsal(rehearsal());
      await learning.startRehearsal(rehearsal({ job: "rehearsal-2", at: 2 }));
      const over = { at: 5, moments: 14, unsafe: 0, whole: true };
      await learning.endRehearsal("rehearsal-1", over);
      await learning.endRehearsal("never-began", over);
      expect(await learning.rehearsalsOf("l-1")).toEqual([rehearsal({ job: "rehearsal-2", at: 2 }), rehearsal({ over })]);
      expect([await learning.rehearsalOf("rehearsal-1"), await learning.rehearsalOf("never-began")]).toEqual([rehearsal({ over }), null]);
    });
    it("is gone with a learner who is forgotten, and nobody else's is", async () => {
      const { learning } = journal;
      for (const [name, id] of [["Odd", "l-1"], ["Pia", "l-2"]] as const) {
        await learning.learner(name, id);
        await learning.saveRound(round({ id: `of-${id}`, learner: id }), card("a", 1));
        await learning.startRehearsal(rehearsal({ job: `of-${id}`, learner: id }));
      } // biome-ignore format: one line reads best
      await learning.forget("ODD");
      await learning.forget("nobody");
      const left = async (id: string) => [await learning.cards(id), await learning.round(`of-${id}`), await learning.rehearsalsOf(id)];
      expect([(await learning.learners()).map(({ id }) => id), await left("l-1")]).toEqual([["l-2"], [[], null, []]]);
      expect(await left("l-2")).toEqual([[card("a", 1)], round({ id: "of-l-2", learner: "l-2" }), [rehearsal({ job: "of-l-2", learner: "l-2" })]]); // biome-ignore format: one line reads best
    });
    it("outlives a job that is removed, but for the rounds of questions on it", async () => {
      const { learning } = journal;
      await learning.learner("Odd", "l-1");
      await journal.open(openingLine("job-1"), named({ p1: "Odd" }));
      await learning.saveRound(round(), card("a", 1));
      await learning.startRehearsal(rehearsal({ job: "job-1" }));
      await journal.removeJob("job-1");
      expect(await learning.round("round-1")).toBeNull();
      expect([(await learning.cards("l-1")).length, (await learning.rehearsalsOf("l-1")).length]).toEqual([1, 1]);
    });
    it("is no job: the journal beside it stays empty", async () => {
      await journal.learning.learner("Odd", "l-1");
      await journal.learning.startRehearsal(rehearsal());
      expect([await journal.jobs(), await journal.folds()]).toEqual([[], []]);
    });
  });
}
