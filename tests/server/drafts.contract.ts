import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Changed } from "../../server/journal/catalog.ts";
import type { Journal } from "../../server/journal/journal.ts";

const draft = (at: number, more: object = {}) => ({ body: { fields: { title: `ü ${at}` } }, at, opened: false, ...more });

/** What drafts promise, and what the firm keeps from job to job, wherever it lies. */
export function draftsContract(where: string, create: () => Journal) {
  let journal: Journal;
  beforeEach(() => {
    journal = create();
  });
  afterEach(() => journal.close());

  describe(`drafts ${where}`, () => {
    it("gives a draft back as it was saved, and counts its versions", async () => {
      await journal.drafts.save("d-1", 0, draft(1));
      await journal.drafts.save("d-1", 1, draft(2));
      expect(await journal.drafts.draft("d-1")).toEqual({ id: "d-1", version: 2, ...draft(2) });
      expect(await journal.drafts.draft("d-9")).toBeNull();
    });
    it.each([
      ["begun already", 0],
      ["of an older version", 1],
      ["of a version to come", 3],
    ])("does not save over one %s", async (_what, version) => {
      await journal.drafts.save("d-1", 0, draft(1));
      await journal.drafts.save("d-1", 1, draft(2));
      await expect(journal.drafts.save("d-1", version, draft(3))).rejects.toThrow(Changed);
      expect(await journal.drafts.draft("d-1")).toMatchObject({ version: 2, at: 2 });
    });
    it("lists those that have become no job, newest first, and no more than asked for", async () => {
      for (const n of [1, 2, 3, 4]) await journal.drafts.save(`d-${n}`, 0, draft(n));
      await journal.drafts.save("d-4", 1, draft(9, { opened: true }));
      await journal.drafts.save("d-1", 1, draft(8));
      expect((await journal.drafts.unopened(2)).map(({ id }) => id)).toEqual(["d-1", "d-3"]);
    });
    it.each([0, 1, 3])("does not take one out that is of another version than %i", async (version) => {
      await journal.drafts.save("d-1", 0, draft(1));
      await journal.drafts.save("d-1", 1, draft(2));
      await expect(journal.drafts.remove("d-1", version)).rejects.toThrow(Changed);
      await journal.drafts.remove("d-1", 2);
      expect(await journal.drafts.draft("d-1")).toBeNull();
      await expect(journal.drafts.remove("d-1", 2)).rejects.toThrow(Changed);
    });
    it("takes out those last written before a moment, opened or not", async () => {
      for (const n of [1, 2, 3, 4]) await journal.drafts.save(`d-${n}`, 0, draft(n, { opened: n === 2 }));
      await journal.drafts.save("d-1", 1, draft(9));
      await journal.drafts.removeBefore(4);
      expect(await Promise.all(["d-1", "d-2", "d-3", "d-4"].map(async (id) => (await journal.drafts.draft(id)) !== null))).toEqual([
        true,
        false,
        false,
        true,
      ]);
    });
    it("are no jobs: the journal beside them stays empty", async () => {
      await journal.drafts.save("d-1", 0, draft(1));
      expect([await journal.jobs(), await journal.catalog.tents()]).toEqual([[], []]);
    });
  });

  describe(`what the firm keeps ${where}`, () => {
    const people = (...names: string[]) => names.map((name) => ({ name, role: "crew" }));
    it("is who was on a job, with their last role, and nobody twice", async () => {
      await journal.firm.keep({ people: [...people("Tobias"), { name: "Ines", role: "lead" }], sheet: null, at: 1 });
      await journal.firm.keep({ people: [{ name: "INES", role: "deputy" }], sheet: null, at: 2 });
      expect(await journal.firm.people()).toEqual([
        { name: "INES", role: "deputy", onLast: true },
        { name: "Tobias", role: "crew", onLast: false },
      ]);
    });
    it("forgets somebody by their name, and whoever was on no job since a moment", async () => {
      await journal.firm.keep({ people: people("Ines", "Old"), sheet: null, at: 1 });
      await journal.firm.keep({ people: people("Ines", "Tobias"), sheet: null, at: 5 });
      await journal.firm.forgetBefore(5);
      await journal.firm.forget("INES");
      await journal.firm.forget("nobody");
      expect(await journal.firm.people()).toEqual([{ name: "Tobias", role: "crew", onLast: true }]);
    });
    it("is the last sheet of each tent as it was; another job leaves it as it is, and a tent that has changed has none", async () => {
      await journal.firm.keep({ people: [], sheet: { tent: "t-1", digest: "as-1", sheet: { document: "ü 1" } }, at: 1 });
      await journal.firm.keep({ people: [], sheet: { tent: "t-1", digest: "as-2", sheet: { document: "ü 2" } }, at: 2 });
      await journal.firm.keep({ people: [], sheet: null, at: 3 });
      const of = ([tent, digest]: readonly [string, string]) => journal.firm.sheet(tent, digest);
      const asked = [
        ["t-1", "as-2"],
        ["t-1", "as-1"],
        ["t-2", "as-2"],
      ] as const;
      expect(await Promise.all(asked.map(of))).toEqual([{ document: "ü 2" }, null, null]);
    });
  });
}
