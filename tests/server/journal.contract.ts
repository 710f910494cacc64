import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Entry, seal } from "../../machines/record/entry.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { Conflict, type Journal, KeyUsed } from "../../server/journal/journal.ts";
import { asStored, chainOf, lineAfter, openingLine } from "../support/entries.ts";
import { named } from "../support/people.ts";

/** What every journal promises, wherever it keeps its entries. `create` gives an empty one. */
export function journalContract(where: string, create: () => Journal) {
  describe(`a journal ${where}`, () => {
    let journal: Journal;
    const [first, second, third] = chainOf("job-1", 3) as [ReturnType<typeof openingLine>, ...ReturnType<typeof chainOf>];
    beforeEach(async () => {
      journal = create();
      await journal.open(first, named({ p1: "Ines", p2: "Ömer" }));
      await journal.append(second!);
    });
    afterEach(() => journal.close());

    it("gives entries back in order and to the byte", async () => {
      await journal.append(third!);
      expect(await journal.read("job-1")).toEqual(asStored([first, second!, third!]));
      expect(verifyChain(await journal.read("job-1")).holds).toBe(true);
    });
    it("knows nothing of a job that was never opened", async () => {
      expect(await journal.read("job-9")).toEqual([]);
      expect(await journal.names("job-9")).toEqual({});
      expect(await journal.keyed("job-9", "job-1-key-2")).toBeNull();
    });
    it("finds an entry by its key, in its own job only", async () => {
      expect(await journal.keyed("job-1", "job-1-key-2")).toEqual(second);
      expect(await journal.keyed("job-1", "job-1-key-1")).toEqual(first);
      expect(await journal.keyed("job-1", "never said")).toBeNull();
    });
    it("finds a job by the key that opened it, not by another", async () => {
      expect(await journal.openedWith("job-1-key-1")).toEqual(first);
      expect(await journal.openedWith("job-1-key-2")).toBeNull();
    });
    it("lists jobs, the newest first, each with its last entry", async () => {
      const other = openingLine("job-2");
      await journal.open(other, {});
      await journal.append(third!);
      expect(await journal.jobs()).toEqual([
        { opening: other, tip: other },
        { opening: first, tip: third },
      ]);
    });
    it("keeps two jobs apart: the same key and number may stand in both", async () => {
      const other = openingLine("job-2");
      await journal.open(other, named({ p1: "Jo" }));
      await journal.append(lineAfter(other, "job-1-key-2"));
      expect(await journal.read("job-2")).toHaveLength(2);
      expect(await journal.names("job-1")).toEqual({ p1: "Ines", p2: "Ömer" });
      expect(await journal.names("job-2")).toEqual({ p1: "Jo" });
    });
    it("adds and changes names with an entry, outside of the chain", async () => {
      await journal.append(third!, named({ p2: "Omar", p3: "Li" }));
      expect(await journal.names("job-1")).toEqual({ p1: "Ines", p2: "Omar", p3: "Li" });
      expect(await journal.read("job-1")).toEqual(asStored([first, second!, third!]));
    });

    it.each([
      ["a number left out", () => lineAfter(second!, "new", { no: 4 })],
      ["a number taken", () => lineAfter(first, "new")],
      ["another hash before it", () => lineAfter(second!, "new", { prev: first.hash })],
      ["a job that was never opened", () => lineAfter(second!, "new", { job: "job-9" })],
    ])("takes no entry with %s", async (_what, wrong) => {
      await expect(journal.append(wrong())).rejects.toThrow(Conflict);
      expect(await journal.read("job-1")).toHaveLength(2);
      expect(await journal.read("job-9")).toEqual([]);
    });
    it("takes no name either with an entry that it does not take", async () => {
      await expect(journal.append(lineAfter(second!, "job-1-key-2"), named({ p3: "Li" }))).rejects.toThrow(KeyUsed);
      expect(await journal.names("job-1")).toEqual({ p1: "Ines", p2: "Ömer" });
    });
    it("takes what comes at the same moment for different jobs, and one that cannot be taken spoils no other", async () => {
      const others = ["job-2", "job-3", "job-4"].map((job) => openingLine(job));
      const opened = await Promise.allSettled([
        ...others.map((opening) => journal.open(opening, {})),
        journal.open(openingLine("job-5", "job-1-key-1"), {}),
        journal.append(lineAfter(second!, "job-1-key-2")),
        journal.append(third!),
      ]);
      expect(opened.map(({ status }) => status)).toEqual([...others.map(() => "fulfilled"), "rejected", "rejected", "fulfilled"]);
      expect((await journal.folds()).map(({ job, entries }) => [job, entries]).sort()).toEqual([
        ["job-1", 3],
        ["job-2", 1],
        ["job-3", 1],
        ["job-4", 1],
      ]);
    });
    it("takes no key twice in a job", async () => {
      await expect(journal.append(lineAfter(second!, "job-1-key-2"))).rejects.toThrow(KeyUsed);
      await expect(journal.append(lineAfter(second!, "job-1-key-1"))).rejects.toThrow(KeyUsed);
      expect(await journal.read("job-1")).toHaveLength(2);
    });
    it("takes no opening key twice over all jobs, and then no names either", async () => {
      await expect(journal.open(openingLine("job-2", "job-1-key-1"), named({ p1: "Jo" }))).rejects.toThrow(KeyUsed);
      expect(await journal.names("job-2")).toEqual({});
      expect(await journal.jobs()).toHaveLength(1);
    });
    it("opens no job twice, and none in its middle", async () => {
      await expect(journal.open(openingLine("job-1", "new"), {})).rejects.toThrow(Conflict);
      await expect(journal.open(lineAfter(openingLine("job-2")), {})).rejects.toThrow(Conflict);
      expect(await journal.jobs()).toHaveLength(1);
    });
    it("keeps the fold of each job, the newest first, without being asked", async () => {
      const other = openingLine("job-2");
      await journal.open(other, {});
      await journal.append(third!);
      expect(await journal.folds()).toEqual([
        { job: "job-2", entries: 1, tip: other.hash, fold: foldAll([other]).fold },
        { job: "job-1", entries: 3, tip: third!.hash, fold: foldAll([first, second!, third!]).fold },
      ]);
    });
    it("leaves the fold as it was where an entry was not taken", async () => {
      const before = await journal.folds();
      await expect(journal.append(lineAfter(second!, "job-1-key-2"))).rejects.toThrow(KeyUsed);
      await expect(journal.append(lineAfter(second!, "new", { no: 4 }))).rejects.toThrow(Conflict);
      await expect(journal.open(openingLine("job-2", "job-1-key-1"), {})).rejects.toThrow(KeyUsed);
      expect(await journal.folds()).toEqual(before);
    });
    it("takes an entry that cannot be folded all the same, and says that the job cannot be read", async () => {
      await journal.open(seal({ ...openingLine("job-2").entry, opened: null } as unknown as Entry), {});
      await journal.append(third!);
      expect((await journal.folds()).map(({ job, entries, fold }) => [job, entries, fold === null])).toEqual([
        ["job-2", 1, true],
        ["job-1", 3, false],
      ]);
    });
    it("rebuilds a fold to the same, and none for a job that was never opened", async () => {
      const before = await journal.folds();
      await journal.refold("job-1");
      await journal.refold("job-9");
      expect(await journal.folds()).toEqual(before);
    });
    it("goes on after a refusal", async () => {
      await expect(journal.append(lineAfter(second!, "job-1-key-2"))).rejects.toThrow(KeyUsed);
      await journal.append(third!);
      expect(await journal.keyed("job-1", "job-1-key-3")).toEqual(third);
    });
  });
}
