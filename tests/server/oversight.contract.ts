import fc from "fast-check";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { NO_ENTRY } from "../../machines/record/entry.ts";
import { type FollowUp, sealFollowUp } from "../../machines/record/follow-up.ts";
import { overseeAll } from "../../machines/record/oversight/oversight.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { ANY, type FindingFilter, FollowUpConflict, type KeptFinding } from "../../server/journal/oversight.ts";
import { keep, recordOf } from "../support/seen-jobs.ts";

/** Who is called how, job by job: two of them lead under names that begin alike. */
const NAMES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "job-1": { p1: "Ines Moreau", p2: "Maren", p3: "Ömer" },
  "job-2": { p1: "Inesita", p2: "Ines", p3: "Jo" },
  "job-3": { p1: "ÖMER", p2: "Maren", p3: "Ines" },
};
const RECORDS = {
  "job-1": recordOf("job-1", { entries: 180 }),
  "job-2": recordOf("job-2", { days: 3, lengthFt: 40 }),
  "job-3": recordOf("job-3", { days: -3 }),
};
const JOBS = Object.entries(RECORDS).map(([job, lines]) => ({ job, names: NAMES[job]!, ...overseeAll(lines) }));
const FINDINGS = JOBS.flatMap(({ job, names, findings }) => findings.map((finding) => ({ job, names, finding })));

const isCalled = (name: string, asked: string) => {
  const [is, wanted] = [name.toLowerCase(), asked.toLowerCase()];
  return is === wanted || is.startsWith(`${wanted} `);
};
type Sight = (typeof FINDINGS)[number];
const names = ({ names }: Pick<Sight, "names">, ids: readonly (string | null)[]) => ids.flatMap((id) => names[id ?? ""] ?? []);

/** The same, told plainly: one by one. */
function plainly(filter: FindingFilter): Sight[] {
  return FINDINGS.filter((sight) => {
    const { kind, phase, size, day, by, lead } = sight.finding;
    return (
      (filter.kind ?? kind) === kind &&
      (filter.phase ?? phase) === phase &&
      (filter.size ?? size) === size &&
      (filter.from ?? day) <= day &&
      (filter.to ?? day) >= day &&
      (filter.crew === null || names(sight, by).some((name) => isCalled(name, filter.crew!))) &&
      (filter.lead === null || names(sight, [lead]).some((name) => isCalled(name, filter.lead!))) &&
      (filter.state ?? "open") === "open"
    );
  });
}
const idsOf = (found: readonly Pick<KeptFinding, "job" | "finding">[]) => found.map(({ job, finding: f }) => `${job} ${f.kind} ${f.entry}`);
const orNull = <T>(all: readonly T[]) => fc.option(fc.constantFrom(...new Set(all)), { nil: null, freq: 2 });
const filters: fc.Arbitrary<FindingFilter> = fc.record({
  crew: orNull(["Ines", "ines moreau", "ömer", "Jo", "Nobody", "Moreau"]),
  lead: orNull(["INES", "Inesita", "Ömer"]),
  size: orNull([...FINDINGS.map(({ finding }) => finding.size), "9x9"]),
  phase: orNull(FINDINGS.map(({ finding }) => finding.phase)),
  kind: orNull(FINDINGS.map(({ finding }) => finding.kind)),
  state: orNull(["open", "accepted"] as const),
  from: orNull(FINDINGS.map(({ finding }) => finding.day)),
  to: orNull(FINDINGS.map(({ finding }) => finding.day)),
});

const finding = ({ job, finding: { kind, entry } }: Pick<KeptFinding, "job" | "finding">) => ({ job, kind, entry });
let keys = 0;
const said = (about: FollowUp["finding"], more: Partial<FollowUp> = {}) =>
  sealFollowUp({
    schema: 1,
    no: 1,
    prev: NO_ENTRY,
    key: `key-${++keys}`,
    request: "r",
    at: 1,
    finding: about,
    is: "noted",
    text: "asked",
    who: null,
    device: "office-1",
    ...more,
  });

/** What every store promises of what is looked at over all jobs. `create` gives an empty one. */
export function oversightContract(where: string, create: () => Journal) {
  describe(`what is looked at over all jobs, ${where}`, () => {
    let journal: Journal;
    beforeAll(async () => {
      journal = create();
      for (const [job, lines] of Object.entries(RECORDS)) await keep(journal, lines, NAMES[job]);
      await keep(journal, recordOf("practice", { rehearsal: true }), { p1: "Ines" });
    });
    afterAll(() => journal.close());

    it("is every finding of every job, and nothing of a rehearsal", async () => {
      const found = await journal.oversight.findings(ANY, null, 9999);
      expect(found.length).toBeGreaterThan(30);
      const sort = (a: Pick<KeptFinding, "job" | "finding">, b: typeof a) => (idsOf([a])[0]! < idsOf([b])[0]! ? -1 : 1);
      expect([...found].sort(sort)).toEqual([...FINDINGS].sort(sort).map(({ job, finding }) => ({ job, finding, state: "open" })));
    });
    it("comes newest first, page by page, each once", async () => {
      const all = await journal.oversight.findings(ANY, null, 9999);
      expect(all.every(({ finding }, i) => i === 0 || finding.at <= all[i - 1]!.finding.at)).toBe(true);
      const pages: KeptFinding[] = [];
      for (let before = null as KeptFinding | null; ; before = pages.at(-1)!) {
        const cursor = before && { ...finding(before), at: before.finding.at };
        const page = await journal.oversight.findings(ANY, cursor, 7);
        pages.push(...page);
        if (page.length < 7) break;
      }
      expect(pages).toEqual(all);
    });
    it("is, by whatever is looked for, what a plain recount leaves: found and counted", async () => {
      await fc.assert(
        fc.asyncProperty(filters, async (filter) => {
          const wanted = plainly(filter);
          expect(idsOf(await journal.oversight.findings(filter, null, 9999)).sort()).toEqual(idsOf(wanted).sort());
          const tallies = await journal.oversight.tallies(filter);
          const recount = new Map<string, number>();
          for (const { finding: f } of wanted) recount.set(`${f.kind} ${f.phase}`, (recount.get(`${f.kind} ${f.phase}`) ?? 0) + 1);
          expect(new Map(tallies.map(({ kind, phase, count }) => [`${kind} ${phase}`, count]))).toEqual(recount);
        }),
        { numRuns: 40 },
      );
    });
    it("has the numbers of those jobs alone", async () => {
      await fc.assert(
        fc.asyncProperty(filters, async (filter) => {
          const left = JOBS.flatMap(({ names: called, measures }) =>
            measures.filter(
              ({ what, name, size, day, lead }) =>
                (what === "job" || (filter.phase ?? name) === name) &&
                (filter.size ?? size) === size &&
                (filter.from ?? day) <= day &&
                (filter.to ?? day) >= day &&
                (filter.crew === null || Object.values(called).some((one) => isCalled(one, filter.crew!))) &&
                (filter.lead === null || isCalled(called[lead ?? ""] ?? "", filter.lead)),
            ),
          );
          const recount = new Map<string, number>();
          for (const { what, name, n } of left) recount.set(`${what} ${name} ${n}`, (recount.get(`${what} ${name} ${n}`) ?? 0) + 1);
          const kept = await journal.oversight.measures(filter);
          expect(new Map(kept.map(({ what, name, n, count }) => [`${what} ${name} ${n}`, count]))).toEqual(recount);
        }),
        { numRuns: 40 },
      );
    });
    it("is kept of a job by itself too", async () => {
      expect(await journal.fold("job-2")).toEqual((await journal.folds()).find(({ job }) => job === "job-2"));
      expect(await journal.fold("job-9")).toBeNull();
    });
  });

  describe(`what is said of findings, ${where}`, () => {
    let journal: Journal;
    let [one, other] = [] as unknown as [KeptFinding, KeptFinding];
    beforeEach(async () => {
      journal = create();
      await keep(journal, RECORDS["job-1"].slice(0, 90), NAMES["job-1"]);
      [one, other] = (await journal.oversight.findings(ANY, null, 2)) as [KeptFinding, KeptFinding];
      return () => journal.close();
    });
    const stateOf = async (sight: KeptFinding) => (await journal.oversight.finding(finding(sight)))!.state;

    it("is nothing at first, and stands one after the other", async () => {
      const { oversight } = journal;
      expect([await oversight.lastFollowUp(), await oversight.followUps(finding(one))]).toEqual([null, []]);
      const first = said(finding(one));
      const second = said(finding(other), { no: 2, prev: first.hash });
      await oversight.appendFollowUp(first);
      await oversight.appendFollowUp(second);
      expect([await oversight.lastFollowUp(), await oversight.followUps(finding(one))]).toEqual([second, [first.entry]]);
      expect([await oversight.keyedFollowUp(first.entry.key), await oversight.keyedFollowUp("never")]).toEqual([first, null]);
    });
    it.each([
      ["a number left out", { no: 3 }],
      ["a number taken", { no: 1 }],
      ["another hash before it", { no: 2, prev: NO_ENTRY }],
    ])("is not taken with %s", async (_what, wrong) => {
      const { oversight } = journal;
      const first = said(finding(one));
      await oversight.appendFollowUp(first);
      await expect(oversight.appendFollowUp(said(finding(one), { prev: first.hash, ...wrong }))).rejects.toThrow(FollowUpConflict);
      expect(await oversight.lastFollowUp()).toEqual(first);
    });
    it("is not taken twice with one key", async () => {
      const { oversight } = journal;
      const first = said(finding(one));
      await oversight.appendFollowUp(first);
      const again = said(finding(one), { no: 2, prev: first.hash, key: first.entry.key });
      await expect(oversight.appendFollowUp(again)).rejects.toThrow(FollowUpConflict);
    });
    it("decides what became of a finding; a note decides nothing", async () => {
      const { oversight } = journal;
      let last = said(finding(one), { is: "followedUp" });
      await oversight.appendFollowUp(last);
      const states = [await stateOf(one)];
      for (const [i, is] of (["noted", "accepted", "noted"] as const).entries()) {
        last = said(finding(one), { no: i + 2, prev: last.hash, is });
        await oversight.appendFollowUp(last);
        states.push(await stateOf(one));
      }
      expect([states, await stateOf(other)]).toEqual([["followedUp", "followedUp", "accepted", "accepted"], "open"]);
      expect(idsOf(await oversight.findings({ ...ANY, state: "accepted" }, null, 9))).toEqual(idsOf([one]));
      expect((await oversight.tallies({ ...ANY, state: "accepted" })).map(({ count }) => count)).toEqual([1]);
    });
    it("holds when a job goes on, and when it is looked through again", async () => {
      await journal.oversight.appendFollowUp(said(finding(one), { is: "accepted" }));
      await journal.append(RECORDS["job-1"][90]!);
      await journal.refold("job-1");
      expect(await stateOf(one)).toBe("accepted");
    });
    it("leaves out who was erased: nobody finds them by name", async () => {
      const { oversight } = journal;
      const [by] = one.finding.by;
      const filter = { ...ANY, crew: NAMES["job-1"]![by!]! };
      expect((await oversight.findings(filter, null, 9)).length).toBeGreaterThan(0);
      await journal.eraseName("job-1", by!);
      expect(await oversight.findings(filter, null, 9)).toEqual([]);
    });
  });
}
