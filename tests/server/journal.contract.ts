import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Entry, seal } from "../../machines/record/entry.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { Conflict, type Journal, KeyUsed } from "../../server/journal/journal.ts";
import { asStored, chainOf, lineAfter, openingLine } from "../support/entries.ts";

/** What every journal promises, wherever it keeps its entries. `create` gives an empty one. */
export function journalContract(where: string, create: () => Journal) {
  describe(`a journal ${where}`, () => {
    let journal: Journal;
    const [first, second, third] = chainOf("job-1", 3) as [ReturnType<typeof openingLine>, ...ReturnType<typeof chainOf>];
    beforeEach(() => {
      journal = create();
      journal.open(first, { p1: "Ines", p2: "Ömer" });
      journal.append(second!);
    });
    afterEach(() => journal.close());

    it("gives entries back in order and to the byte", () => {
      journal.append(third!);
      expect(journal.read("job-1")).toEqual(asStored([first, second!, third!]));
      expect(verifyChain(journal.read("job-1")).holds).toBe(true);
    });
    it("knows nothing of a job that was never opened", () => {
      expect(journal.read("job-9")).toEqual([]);
      expect(journal.names("job-9")).toEqual({});
      expect(journal.keyed("job-9", "job-1-key-2")).toBeNull();
    });
    it("finds an entry by its key, in its own job only", () => {
      expect(journal.keyed("job-1", "job-1-key-2")).toEqual(second);
      expect(journal.keyed("job-1", "job-1-key-1")).toEqual(first);
      expect(journal.keyed("job-1", "never said")).toBeNull();
    });
    it("finds a job by the key that opened it, not by another", () => {
      expect(journal.openedWith("job-1-key-1")).toEqual(first);
      expect(journal.openedWith("job-1-key-2")).toBeNull();
    });
    it("lists jobs, the newest first, each with its last entry", () => {
      const other = openingLine("job-2");
      journal.open(other, {});
      journal.append(third!);
      expect(journal.jobs()).toEqual([
        { opening: other, tip: other },
        { opening: first, tip: third },
      ]);
    });
    it("keeps two jobs apart: the same key and number may stand in both", () => {
      const other = openingLine("job-2");
      journal.open(other, { p1: "Jo" });
      journal.append(lineAfter(other, "job-1-key-2"));
      expect(journal.read("job-2")).toHaveLength(2);
      expect(journal.names("job-1")).toEqual({ p1: "Ines", p2: "Ömer" });
      expect(journal.names("job-2")).toEqual({ p1: "Jo" });
    });
    it("adds and changes names without touching an entry", () => {
      journal.name("job-1", { p2: "Omar", p3: "Li" });
      expect(journal.names("job-1")).toEqual({ p1: "Ines", p2: "Omar", p3: "Li" });
      expect(journal.read("job-1")).toHaveLength(2);
    });

    it.each([
      ["a number left out", () => lineAfter(second!, "new", { no: 4 })],
      ["a number taken", () => lineAfter(first, "new")],
      ["another hash before it", () => lineAfter(second!, "new", { prev: first.hash })],
      ["a job that was never opened", () => lineAfter(second!, "new", { job: "job-9" })],
    ])("takes no entry with %s", (_what, wrong) => {
      expect(() => journal.append(wrong())).toThrow(Conflict);
      expect(journal.read("job-1")).toHaveLength(2);
      expect(journal.read("job-9")).toEqual([]);
    });
    it("takes no key twice in a job", () => {
      expect(() => journal.append(lineAfter(second!, "job-1-key-2"))).toThrow(KeyUsed);
      expect(() => journal.append(lineAfter(second!, "job-1-key-1"))).toThrow(KeyUsed);
      expect(journal.read("job-1")).toHaveLength(2);
    });
    it("takes no opening key twice over all jobs, and then no names either", () => {
      expect(() => journal.open(openingLine("job-2", "job-1-key-1"), { p1: "Jo" })).toThrow(KeyUsed);
      expect(journal.names("job-2")).toEqual({});
      expect(journal.jobs()).toHaveLength(1);
    });
    it("opens no job twice, and none in its middle", () => {
      expect(() => journal.open(openingLine("job-1", "new"), {})).toThrow(Conflict);
      expect(() => journal.open(lineAfter(openingLine("job-2")), {})).toThrow(Conflict);
      expect(journal.jobs()).toHaveLength(1);
    });
    it("keeps the fold of each job, the newest first, without being asked", () => {
      const other = openingLine("job-2");
      journal.open(other, {});
      journal.append(third!);
      expect(journal.folds()).toEqual([
        { job: "job-2", entries: 1, tip: other.hash, fold: foldAll([other]).fold },
        { job: "job-1", entries: 3, tip: third!.hash, fold: foldAll([first, second!, third!]).fold },
      ]);
    });
    it("leaves the fold as it was where an entry was not taken", () => {
      const before = journal.folds();
      expect(() => journal.append(lineAfter(second!, "job-1-key-2"))).toThrow(KeyUsed);
      expect(() => journal.append(lineAfter(second!, "new", { no: 4 }))).toThrow(Conflict);
      expect(() => journal.open(openingLine("job-2", "job-1-key-1"), {})).toThrow(KeyUsed);
      expect(journal.folds()).toEqual(before);
    });
    it("takes an entry that cannot be folded all the same, and says that the job cannot be read", () => {
      journal.open(seal({ ...openingLine("job-2").entry, opened: null } as unknown as Entry), {});
      journal.append(third!);
      expect(journal.folds().map(({ job, entries, fold }) => [job, entries, fold === null])).toEqual([
        ["job-2", 1, true],
        ["job-1", 3, false],
      ]);
    });
    it("makes a fold anew to the same, and none for a job that was never opened", () => {
      const before = journal.folds();
      journal.refold("job-1");
      journal.refold("job-9");
      expect(journal.folds()).toEqual(before);
    });
    it("goes on after a refusal", () => {
      expect(() => journal.append(lineAfter(second!, "job-1-key-2"))).toThrow(KeyUsed);
      journal.append(third!);
      expect(journal.keyed("job-1", "job-1-key-3")).toEqual(third);
    });
  });
}
