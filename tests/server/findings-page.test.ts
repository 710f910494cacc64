import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { doubtsIn } from "../../machines/record/doubts/doubts.ts";
import type { Sealed } from "../../machines/record/entry.ts";
import { NO_ENTRY, seal } from "../../machines/record/entry.ts";
import { foldAll } from "../../machines/record/findings.ts";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { openJournal } from "../../server/journal/open-file.ts";
import { sqliteJournal } from "../../server/journal/sqlite.ts";
import type { FindingsState } from "../../views/pages/findings/state.ts";
import { PacedJob } from "../record/doubts-crew.ts";
import { testApp } from "../support/app.ts";
import { raisedFile } from "../support/recorded-raise.ts";
import { scratchFolder } from "../support/scratch.ts";
import { keep, recordOf } from "../support/seen-jobs.ts";

type World = ReturnType<typeof testApp>;
const page = async ({ app }: Pick<World, "app">, query = "") => (await app.request(`/findings${query}`)).text();
const data = async ({ app }: Pick<World, "app">, query = "") =>
  (await (await app.request(`/findings.json${query}`)).json()) as FindingsState;

/** A job that was played without a server, as lines of a record. */
function linesOf(job: string, { entries }: PacedJob): Sealed[] {
  const lines: Sealed[] = [];
  for (const entry of entries) lines.push(seal({ ...entry, job, key: `open-${job}`, prev: lines.at(-1)?.hash ?? NO_ENTRY } as never));
  return lines;
}

describe("a raise and a strike in twenty seconds", () => {
  let world: World;
  beforeAll(async () => {
    world = testApp();
    await keep(world.journal, linesOf("hurried", PacedJob.playedBy(80)), { lena: "Lena", david: "David" });
  });
  it("stands there with all that cannot be true of it, by kind", async () => {
    const { kinds } = await data(world);
    expect(kinds.map(({ title }) => title)).toEqual([
      "Second look, too quick",
      "Walked too fast",
      "Stakes in too fast",
      "Answered without reading",
      "Whole phase too fast",
    ]);
  });
  it("says of each what, where, why it matters and what would explain it, with a link to an entry that is there", async () => {
    const html = await page(world, "?kind=tooFastDriving&from=2026-06-01&to=2026-06-01&lead=lena");
    const [card] = /<article.*?<\/article>/s.exec(html)!;
    const text = card.replaceAll(/<[^>]*>/g, " ").replaceAll(/\s+/g, " ");
    expect(text).toContain("22 stakes in 0.1 s. 5 people with a driver for every two take 3 min at the very least.");
    expect(text).toContain("Anchors set, 2026-06-01");
    expect(text).toMatch(/Why it matters What isn&#39;t driven yet .* What would explain it They were in already/);
    const [, entry] = /href="\/jobs\/hurried\/record#e(\d+)"/.exec(card)!;
    expect(doubtsIn(PacedJob.playedBy(80).record).some(({ entries }) => entries.includes(Number(entry)))).toBe(true);
  });
  it("comes in pages of fifty, the newest first, each finding once", async () => {
    const [first, all] = [await data(world), doubtsIn(PacedJob.playedBy(80).record)];
    const second = await data(world, `?before=${first.next}`);
    const ids = [...first.cards, ...second.cards].map(({ id }) => id);
    expect([first.found, first.cards.length, new Set(ids).size, second.next]).toEqual([all.length, 50, all.length, null]);
    expect(await page(world)).toContain(`href="/findings?before=${first.next!.replaceAll("~", "%7E")}"`);
  });
  it("names people as they are called, and by their id once a name is erased", async () => {
    expect((await data(world, "?kind=quickSecond")).cards[0]!.people).toEqual(["Lena", "David"]);
    await world.journal.eraseName("hurried", "david");
    expect((await data(world, "?kind=quickSecond")).cards[0]!.people).toEqual(["Lena", "david"]);
    expect((await data(world, "?crew=David")).found).toBe(0);
  });
});

describe("what is looked for", () => {
  let world: World;
  beforeAll(async () => {
    world = testApp();
    await keep(world.journal, recordOf("job-1", { entries: 80 }), { p1: "Ines", p2: "Maren" });
    await keep(world.journal, recordOf("job-2", { days: 9, lengthFt: 40, entries: 80 }), { p1: "Jo" });
    await keep(world.journal, recordOf("practice", { rehearsal: true, entries: 50 }), { p1: "Ines" });
  });
  it.each([
    ["nothing in particular", "", ["job-1", "job-2"], 2],
    ["one who led", "?lead=ines", ["job-1"], 1],
    ["one of the crew", "?crew=Maren", ["job-1"], 1],
    ["a tent", "?tent=20x40", ["job-2"], 1],
    ["days", "?from=2026-06-10&to=2026-06-12", ["job-2"], 1],
    ["somebody unknown", "?lead=Nobody", [], 0],
    ["something that is not there", "?kind=takenBack", [], 2],
  ])("leaves of all jobs those with it: %s", async (_what, query, jobs, counted) => {
    const { cards, found, jobs: looked, phases, kinds } = await data(world, query);
    expect([[...new Set(cards.map(({ job }) => job))].sort(), looked]).toEqual([jobs, counted]);
    const sums = [phases, kinds].map((rows) => rows.reduce((sum, { count }) => sum + count, 0));
    expect([found, ...sums]).toEqual([cards.length, cards.length, cards.length]);
  });
  it("stands in the form again, with the tents that there are to choose from", async () => {
    const html = await page(world, "?lead=Ines&tent=20x40&phase=anchorsSet");
    expect(html).toContain('name="lead" type="text" value="Ines"');
    expect(html).toMatch(/<option value="20x40" selected="">20 × 40 ft<\/option>/);
    expect(html).toContain('<option value="anchorsSet" selected="">');
  });
  it.each([
    ["a kind that is none", "?kind=songs", "kind", '"songs" is not one of: quickSecond,'],
    ["a phase that is none", "?phase=lunch", "phase", '"lunch" is not one of:'],
    ["a day that is none", "?from=soon", "from", '"soon" is not a date.'],
    ["days the wrong way round", "?from=2026-06-02&to=2026-06-01", "to", "The last day is before the first."],
    ["a tent that has no size", "?tent=large", "tent", "is not what belongs here."],
    ["a name as long as a page", `?crew=${"x".repeat(90)}`, "crew", "Too long."],
    ["a place that is none", "?before=here", "before", "That is no place in the list."],
  ])("is refused in a sentence: %s", async (_what, query, field, sentence) => {
    const answer = await world.app.request(`/findings.json${query}`);
    const { fields } = (await answer.json()) as { fields: Record<string, string> };
    expect([answer.status, fields[field]]).toEqual([422, expect.stringContaining(sentence)]);
    expect((await world.app.request(`/findings${query}`)).status).toBe(422);
  });
  it("is asked of what is kept: no record is read, and no job that is not on the page", async () => {
    const asked: string[] = [];
    const counting = new Proxy(world.journal, {
      get: (journal, name: keyof Journal) => {
        asked.push(name);
        return journal[name];
      },
    });
    const { app } = testApp(counting);
    asked.length = 0;
    await page({ app }, "?tent=20x40");
    expect([...new Set(asked)].sort()).toEqual(["fold", "names"]);
  });
});

describe("the numbers of a few recorded jobs", () => {
  const folder = scratchFolder("numbers");
  const file = join(folder, "data.db");
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  it("in the drawings are those of a plain recount, rehearsals left out", async () => {
    await raisedFile(file, ["stakes.bent", "sides.laid", "closed"]);
    const journal = openJournal(file);
    await keep(journal, recordOf("golden", { entries: 400 }));
    await keep(journal, recordOf("practice", { rehearsal: true, entries: 60 }));
    await keep(journal, linesOf("hurried", PacedJob.playedBy(80)));
    const state = await data({ app: testApp(journal).app });
    const kept = await journal.folds();
    const real = kept.flatMap(({ job, fold }) => (fold && !fold.rehearsal ? [job] : []));
    const records = await Promise.all(real.map(async (job) => verifyChain(await journal.read(job)).entries));
    await journal.close();

    const doubts = records.flatMap((entries) => doubtsIn(entries));
    for (const { kind, count } of state.kinds.filter(({ kind: k }) => doubts.some(({ kind }) => kind === k)))
      expect([kind, count]).toEqual([kind, doubts.filter((doubt) => doubt.kind === kind).length]);
    const folds = records.map((entries) => foldAll(entries).fold);
    expect(state.jobs).toBe(folds.length);
    for (const flag of ["waived", "outOfLimit", "paper", "takenBack", "loosened", "clockJumped"] as const)
      expect([flag, state.kinds.find(({ kind }) => kind === flag)?.count ?? 0]).toEqual([
        flag,
        folds.reduce((sum, { counts }) => sum + counts[flag], 0),
      ]);

    for (const { phase, jobs, low, middle, high } of state.times) {
      const through = folds.filter((fold) => fold.phase !== phase && fold.phaseMs[phase] !== undefined);
      const seconds = through.map((fold) => fold.phaseMs[phase]! / 1000).sort((a, b) => a - b);
      expect([phase, jobs]).toEqual([phase, seconds.length]);
      for (const [share, quartile] of [[0.25, low] as const, [0.5, middle] as const, [0.75, high] as const]) {
        const exact = seconds[Math.ceil(share * seconds.length) - 1]!;
        expect(Math.abs(quartile - exact)).toBeLessThanOrEqual(Math.max(0.5, exact * 0.05));
      }
    }
    const often = doubts.filter(({ kind }) => kind === "refusedBeforeAnswer").map(({ facts }) => Number(facts.count));
    const drawn = state.refusals.filter(({ from }) => from >= 3).reduce((sum, { answers }) => sum + answers, 0);
    expect([drawn, often.length > 0, state.times.length >= 9]).toEqual([often.length, true, true]);
  });
});

it("where there is nothing to look at, the page says so", async () => {
  const html = await page({ app: testApp(sqliteJournal(":memory:")).app });
  expect(html).toContain("0 findings. 0 jobs looked through.");
  expect(html.match(/No numbers yet\./g)).toHaveLength(3);
});
