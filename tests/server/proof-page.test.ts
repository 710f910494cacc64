import { beforeEach, describe, expect, it } from "vitest";
import { shownDigest } from "../../machines/digest/short-digest.ts";
import { houseEntryAfter, NO_HOUSE } from "../../machines/record/house.ts";
import { createHouse } from "../../server/house.ts";
import type { Journal } from "../../server/journal/journal.ts";
import type { ProofState } from "../../views/pages/proof/state.ts";
import { testApp } from "../support/app.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";

const NEW_DAY_S = 24 * 3600;
let job: OpenedJob;
beforeEach(async () => {
  job = await openedJob();
  for (let n = 2; n <= 5; n++) await job.say({ type: "note", text: `note ${n}` });
});
const keepHouse = () => createHouse({ journal: job.journal, clock: () => ({ wall: job.now(), elapsedMs: 0 }) }, () => {}).daily();
const reader = (journal: Partial<Journal> = {}) => testApp({ ...job.journal, ...journal }).app;
const text = async (path: string, app = job.app) =>
  (await (await app.request(`/jobs/${job.job}${path}`)).text())
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ");
const proof = async (app = job.app) => (await (await app.request(`/jobs/${job.job}/proof.json`)).json()) as ProofState;
const outcomes = ({ checks }: ProofState) => Object.fromEntries(checks.map(({ name, is }) => [name, is]));
const told = ({ checks }: ProofState, name: string) => checks.find((check) => check.name === name)!.told.join(" ");
const spoiled = (no: number, spoil: (line: Awaited<ReturnType<Journal["read"]>>[number]) => object) => ({
  read: async (id: string) => (await job.journal.read(id)).map((line) => (line.no === no ? { ...line, ...spoil(line) } : line)),
});

describe("what proves a record", () => {
  it("says in plain words what was checked, and that it holds", async () => {
    await keepHouse();
    expect(outcomes(await proof())).toEqual({
      hash: "holds",
      chain: "holds",
      replay: "holds",
      names: "holds",
      photos: "none",
      house: "holds",
      houseJob: "holds",
    });
    const page = await text("/proof");
    for (const part of [
      "Everything that can be checked here holds: 5 entries.",
      "Each entry is as it was written Entries 1 to 5.",
      "Names are those that were written 7 names of this job.",
      "On 2026-06-02 it stood at entry 5, and up to there it still is the same.",
    ])
      expect(page).toContain(part);
  });
  it("says what it does not show: what came after the last day of the house stream, and what people said", async () => {
    await keepHouse();
    await job.say({ type: "note", text: "later" });
    const page = await text("/proof");
    expect(page).toContain(
      "What came after the house stream's last look, on 2026-06-02: if entries after 5 were cut off at the end, nothing in this file shows it.",
    );
    expect(page).toContain("That what people said was true.");
    expect(page).toContain("A digest on paper, or a copy kept elsewhere, shows that.");
  });
  it("says where there is no house stream yet, or none of this job, that a missing end would not show", async () => {
    expect(outcomes(await proof())).toMatchObject({ house: "none", houseJob: "none" });
    expect(await text("/proof")).toContain("The end: if entries after 5 were cut off, nothing in this file shows it.");
    const first = houseEntryAfter(NO_HOUSE, [], job.now());
    await job.journal.house.append(first);
    expect(outcomes(await proof())).toMatchObject({ house: "holds", houseJob: "none" });
  });
  it.each<[string, number, (line: { bytes: Uint8Array }) => object, string, string]>([
    ["was changed", 3, () => ({ bytes: new Uint8Array() }), "hash", "Entry 3 is not as it was written."],
    ["is missing", 3, () => ({ no: 4 }), "chain", "Entry 3 is missing, or stands in the wrong place."],
    ["is filed under another key", 4, () => ({ filed: { prev: "0".repeat(64), key: "x" } }), "chain", "Entry 4 is filed otherwise"],
  ])("an entry that %s: what does not hold, up to where the rest does, and what to do", async (_what, no, spoil, name, sentence) => {
    const app = reader(spoiled(no, spoil));
    const state = await proof(app);
    expect(state.holds).toBe(false);
    expect(outcomes(state)).toMatchObject({ [name]: "broken", replay: "holds", names: "unchecked" });
    expect(told(state, name)).toContain(sentence);
    expect(told(state, "replay")).toBe(`Entries 1 to ${no - 1}.`);
    const page = await text("/proof", app);
    expect(page).toContain("Something here does not hold.");
    expect(page).toContain("Don't go on writing. Stop the server.");
  });
  it("a name that was changed does not hold; one that was erased does, and is told", async () => {
    const people = await job.journal.people(job.job);
    const renamed = { ...people, p1: { ...people.p1!, name: "Jo" } };
    const state = await proof(reader({ people: async () => renamed }));
    expect([state.holds, told(state, "names")]).toEqual([false, "The name of p1 is not the one that was written."]);
    await job.journal.eraseName(job.job, "p3");
    const after = await proof();
    expect([after.holds, told(after, "names")]).toEqual([
      true,
      "6 names of this job. 1 name erased since, on purpose: the entries stay whole without.",
    ]);
  });
  it("a job that is shorter than the house stream says, with its hashes whole: its end is missing", async () => {
    await keepHouse();
    const app = reader({ read: async (id) => (await job.journal.read(id)).slice(0, 3) });
    const state = await proof(app);
    expect([state.holds, outcomes(state)]).toEqual([
      false,
      expect.objectContaining({ hash: "holds", replay: "holds", houseJob: "broken" }),
    ]);
    expect(told(state, "houseJob")).toBe("Its end is missing. On 2026-06-02 it had 5 entries, and 3 are left.");
  });
  it("a house stream that somebody changed does not hold", async () => {
    await keepHouse();
    const house = {
      ...job.journal.house,
      lines: async () => (await job.journal.house.lines()).map((l) => ({ ...l, hash: "0".repeat(64) })),
    };
    const state = await proof(reader({ house }));
    expect([outcomes(state).house, told(state, "house")]).toEqual(["broken", "Its entry 1 is not as it was written."]);
  });
  it("leads to the check of a digest, the record and the report, and is led to from the record", async () => {
    const html = await (await job.app.request(`/jobs/${job.job}/proof`)).text();
    for (const path of ["check", "record", "report"]) expect(html).toContain(`href="/jobs/${job.job}/${path}"`);
    const record = await (await job.app.request(`/jobs/${job.job}/record`)).text();
    for (const path of ["check", "proof", "report"]) expect(record).toContain(`href="/jobs/${job.job}/${path}"`);
  });
  it("is 404 with a sentence for a job that is not there", async () => {
    const r = await job.app.request("/jobs/no-such/proof");
    expect([r.status, await r.text()]).toEqual([404, expect.stringContaining("There is no job no-such")]);
  });
});

describe("a digest", () => {
  const digestAt = async (no: number) => shownDigest((await job.entries())[no - 1]!.hash);

  it("stands at the head and the foot of the record, of its last entry", async () => {
    const line = `Record so far: entry 5, digest ${await digestAt(5)}`;
    expect((await text("/record")).split(line)).toHaveLength(3);
  });
  it.each(["/report", "/truck", "/layout"])("stands on %s, for paper", async (path) => {
    expect(await text(path)).toContain(`Record so far: entry 5, digest ${await digestAt(5)}`);
  });
  it("of the house stream stands in the office, and on the report", async () => {
    expect(await (await job.app.request("/office")).text()).toContain("The house stream has no entry yet.");
    await keepHouse();
    const house = shownDigest((await job.journal.house.lines()).at(-1)!.hash);
    expect(await (await job.app.request("/office")).text()).toContain(`House stream up to 2026-06-02, digest <code>${house}</code>`);
    expect(await text("/report")).toContain(`House stream up to 2026-06-02, digest ${house}`);
  });
});

describe("a digest typed off paper", () => {
  const digestAt = async (no: number) => shownDigest((await job.entries())[no - 1]!.hash);
  const check = async (typed: string, app = job.app) => text(`/check?digest=${encodeURIComponent(typed)}`, app);

  it("says which entry it stands for, when that was, and that everything up to there is as it was", async () => {
    const page = await check((await digestAt(3)).toLowerCase());
    expect(page).toMatch(/It stands for entry 3 of this record, of 2026-06-02 07:00:\d\d\. Everything up to there is as it was/);
    expect(page).toContain("2 entries came after it.");
    expect(await check(await digestAt(5))).toContain("It is the last entry: nothing came after it.");
  });
  it("of the house stream says the day, and up to where this job is as it was then", async () => {
    await keepHouse();
    job.clock.pass(NEW_DAY_S);
    await job.say({ type: "note", text: "next day" });
    await keepHouse();
    const [first, second] = await job.journal.house.lines();
    const page = await check(shownDigest(first!.hash));
    expect(page).toContain("It is the house stream's, of 2026-06-02: every job as it stood then.");
    expect(page).toContain("This job stood at entry 5 on 2026-06-02, and up to there it is as it was.");
    expect(await check(shownDigest(second!.hash))).toContain("This job stood at entry 6 on 2026-06-03");
  });
  it("misread at a letter says which, and that it is the wrong record if it was read right", async () => {
    const right = await digestAt(4);
    const page = await check(`${right[0] === "A" ? "B" : "A"}${right.slice(1)}`);
    expect(page).toContain(`One comes to ${right}: it differs at letter 1. Read the paper again.`);
    expect(page).toContain("this is not the record that it was written from");
  });
  it.each([
    [
      "of another record",
      "ABC-DEF-GHJ-KMN-PQR",
      "No entry of this record comes to it. Misread? Compare letter by letter: no 0 O 1 I L in it.",
    ],
    ["with letters that are in none", "OBC-DEF-GHJ-KMN-PQ1", "No digest has O or 1 in it"],
    ["too short", "ABC-DEF", "That has 6 letters, and a digest has 15."],
    ["that is none at all", "<script>", "No digest has"],
  ])("%s says so", async (_what, typed, sentence) => expect(await check(typed)).toContain(sentence));
  it("of an entry that no longer is there finds nothing, and says up to where the record holds", async () => {
    const digest = await digestAt(5);
    const app = reader(spoiled(4, () => ({ bytes: new Uint8Array() })));
    const page = await check(digest, app);
    expect(page).toContain("No entry of this record comes to it.");
    expect(page).toContain("Only entries 1 to 3 of this record hold.");
  });
  it("is asked for by a plain form, and stays in its field", async () => {
    const html = await (await job.app.request(`/jobs/${job.job}/check?digest=abc`)).text();
    expect(html).toMatch(/<form method="get"/);
    expect(html).toMatch(/name="digest" value="abc"/);
  });
});
