import { beforeEach, describe, expect, it } from "vitest";
import { verifyChain } from "../../machines/record/verify-chain.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { brief, testApp } from "../support/app.ts";
import { lateJournal } from "../support/late-journal.ts";

type Told = { job: string; entry: number; outcome: object; reasons: { why: string }[] };

let late: ReturnType<typeof lateJournal>;
let world: ReturnType<typeof testApp>;
let job: string;
let other: string;

beforeEach(async () => {
  late = lateJournal(memoryJournal());
  world = testApp(late.journal);
  [job, other] = [(await late.until(open("opened-1"))).job, (await late.until(open("opened-2"))).job];
});

const post = async (path: string, body: object): Promise<Told> => (await world.post(path, body)).json() as Promise<Told>;
const open = (key: string) => post("/jobs", { key, brief: brief() });
const say = (to: string, key: string, body: object = { type: "note", text: key }) =>
  post(`/jobs/${to}/say`, { as: "Ines", key, seen: 1, ...body });
const record = async (of: string) => verifyChain(await late.until(late.journal.read(of)));

describe("with a journal whose calls are done late, the newest first", () => {
  it("what is said to a job at one moment is recorded one by one, in the order it came", async () => {
    const keys = ["note-0001", "note-0002", "note-0003", "note-0004"];
    const told = await late.until(Promise.all(keys.map((key) => say(job, key))));
    expect(told.map(({ entry }) => entry)).toEqual([2, 3, 4, 5]);
    const chain = await record(job);
    expect([chain.holds, chain.entries.map(({ entry }) => (entry.kind === "command" ? entry.command.key : ""))]).toEqual([
      true,
      ["", ...keys],
    ]);
  });
  it("two phones that say next at one moment go on once", async () => {
    const sheet = { type: "answer", gate: "sheet.atHand", value: { kind: "document", named: "RC-80100 rev C" } };
    // Of somebody who may not say next, so that the answer alone does not go on.
    await late.until(say(job, "answer-01", { ...sheet, as: "Maren" }));
    const next = { type: "next", seen: 2 };
    const told = await late.until(Promise.all([say(job, "next-0001", next), say(job, "next-0002", next)]));
    expect(told.map(({ outcome }) => outcome)).toEqual([{ did: "moved" }, { refused: [expect.objectContaining({ why: "movedOn" })] }]);
  });
  it("one key that comes twice at one moment is done once, and answered twice alike", async () => {
    const [one, two] = await late.until(Promise.all([say(job, "note-0001"), say(job, "note-0001")]));
    expect([one.entry, two]).toEqual([2, one]);
    expect((await record(job)).entries).toHaveLength(2);
  });
  it("one opening key that comes twice at one moment opens one job", async () => {
    const [one, two] = await late.until(Promise.all([open("opened-3"), open("opened-3")]));
    expect(one.job).toBe(two.job);
    expect(await late.until(late.journal.jobs())).toHaveLength(3);
  });
  it("one key that saves a tent twice at one moment saves one", async () => {
    const tent = { key: "tent-0001", name: "Old blue", spec: brief().tent };
    const saved = await late.until(Promise.all([post("/tents", tent), post("/tents", tent)]));
    expect(saved[0]).toEqual(saved[1]);
    expect(await late.until(late.journal.catalog.tents())).toHaveLength(1);
  });
  it("a job does not wait for another job's entry", async () => {
    const stuck = say(other, "note-0001");
    const told = await late.until(say(job, "note-0002"), ({ name, about }) => name === "append" && about === other);
    expect(told.entry).toBe(2);
    expect((await late.until(stuck)).entry).toBe(2);
  });
  it("a job that many ask for at once is read once", async () => {
    const asked: string[] = [];
    const counting = new Proxy(late.journal, {
      get: (journal, name: keyof typeof late.journal) => {
        asked.push(name);
        return journal[name];
      },
    });
    const again = testApp(counting);
    const pages = await late.until(Promise.all(Array.from({ length: 5 }, () => again.app.request(`/jobs/${job}`))));
    expect(pages.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
    expect(asked.filter((name) => name === "read")).toEqual(["read"]);
  });
});

it("what was refused by the journal leaves the job as it was, and the next command is decided on that", async () => {
  const journal = memoryJournal();
  let broken = false;
  const app = testApp({ ...journal, append: async (entry) => (broken ? Promise.reject(new Error("no")) : journal.append(entry)) });
  const { job: id } = (await (await app.post("/jobs", { key: "opened-1", brief: brief() })).json()) as Told;
  const note = (key: string) => app.post(`/jobs/${id}/say`, { as: "Ines", key, seen: 1, type: "note", text: key });
  broken = true;
  expect((await note("note-0001")).status).toBe(500);
  broken = false;
  expect(await (await note("note-0002")).json()).toMatchObject({ entry: 2 });
  expect(verifyChain(await journal.read(id))).toMatchObject({ holds: true, entries: { length: 2 } });
});
