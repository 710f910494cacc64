import { describe, expect, it } from "vitest";
import { brief, testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

type Told = { job: string; people: Record<string, string>; fields: Record<string, string>; problem?: string };
const world = testApp();
const withPeople = (...names: string[]) => ({ ...brief(), crew: [...brief().crew, ...names.map((name) => ({ name, role: "crew" }))] });
const open = async (...names: string[]) => {
  const told = await world.post("/jobs", { brief: withPeople(...names) });
  return { status: told.status, body: (await told.json()) as Told };
};

describe("two people whose names are the same to the eye are one name twice", () => {
  it.each([
    ["composed and decomposed", "José", "Jose\u0301"],
    ["upper and lower case", "Una", "UNA"],
    ["wide letters", "Una", "Ｕｎａ"],
    ["a space of another kind", "Una Berg", "Una\u00a0Berg"],
    ["two spaces", "Una Berg", "Una  Berg"],
    ["a ligature", "Steffi", "Ste\ufb03"],
  ])("%s", async (_what, one, other) => {
    const { status, body } = await open(one, other);
    expect([status, body.fields]).toEqual([422, { crew: "Two people have the same name. Add a letter." }]);
  });
});

describe("a name with what nobody sees is refused, and the letter is named", () => {
  it.each([
    ["a zero width space", "An\u200bn", "U+200B"],
    ["a zero width joiner", "An\u200dn", "U+200D"],
    ["a mark that turns the writing round", "An\u202en", "U+202E"],
    ["a soft hyphen", "An\u00adn", "U+00AD"],
    ["a control", "An\u0007n", "U+0007"],
    ["a line end", "An\nn", "U+000A"],
    ["a byte order mark", "An\ufeffn", "U+FEFF"],
    ["a filler", "An\u3164n", "U+3164"],
    ["a variation selector", "An\ufe0fn", "U+FE0F"],
    ["a tag", "An\u{e0041}n", "U+E0041"],
  ])("%s", async (_what, name, code) => {
    const { status, body } = await open(name);
    expect([status, body.fields]).toEqual([
      422,
      { "crew.7.name": `"${name.replace(/[^An]+/u, code)}" has a letter that nobody sees. Type the name again.` },
    ]);
  });
  it("in a form as well, beside the crew", async () => {
    const headers = { "content-type": "application/x-www-form-urlencoded", origin: "http://localhost" };
    const fields = { "crew.1.name": "An\u200bn", "crew.1.role": "lead" };
    const told = await world.app.request("/jobs", { method: "POST", headers, body: new URLSearchParams(fields) });
    expect([told.status, await told.text()]).toEqual([422, expect.stringContaining("AnU+200Bn&quot; has a letter that nobody sees")]);
  });
  it("a name of no letters is none", async () => {
    expect((await open("...")).body.fields).toEqual({ "crew.7.name": '"..." has no letter in it. Give a name.' });
  });
  it.each(["José", "Nguyễn Thị Ánh", "山田 太郎", "Zoë-Mae O'Neill", "Анна", "אנה", "2nd Mike"])("%s is a name", async (name) => {
    const { status, body } = await open(name);
    expect([status, Object.values(body.people).at(-1)]).toEqual([201, name.normalize("NFKC")]);
  });
});

describe("an id is never a name, and a name never an id", () => {
  it.each(["p2", "P2", "p14", "ｐ2"])("nobody can be called %s", async (name) => {
    const { status, body } = await open(name);
    expect([status, body.fields]).toEqual([422, { "crew.7.name": `"${name}" is how the record numbers people. Give the name itself.` }]);
  });
  it("p2 speaks for p2 and for nobody else", async () => {
    const job = await openedJob(withPeople("P two"));
    const told = await job.post(`/jobs/${job.job}/say`, { as: "p2", key: "people-0001", seen: 1, type: "hold" });
    expect([told.status, (await job.entries()).at(-1)!.entry]).toMatchObject([200, { command: { by: "p2" } }]);
  });
  it.each(["P2", "p02", "p99"])("%j is nobody", async (as) => {
    const job = await openedJob();
    const told = await job.post(`/jobs/${job.job}/say`, { as, key: "people-0001", seen: 1, type: "next" });
    expect([told.status, (await job.entries()).length]).toEqual([422, 1]);
  });
  it.each(["INES", " ines ", "Ｉｎｅｓ"])("%j is Ines", async (as) => {
    const job = await openedJob();
    await job.post(`/jobs/${job.job}/say`, { as, key: "people-0001", seen: 1, type: "hold" });
    expect((await job.entries()).at(-1)!.entry).toMatchObject({ command: { by: "p1" } });
  });
});

it("an amendment knows everybody again however their name is typed, and no name takes an id", async () => {
  const job = await openedJob(withPeople("José"));
  const changed = { ...withPeople("JOSE\u0301", "Una"), title: "Moved" };
  await job.post(`/jobs/${job.job}/say`, { as: "Ines", key: "people-0001", seen: 1, type: "amend", because: "moved", brief: changed });
  await job.post(`/jobs/${job.job}/say`, { as: "Maren", key: "people-0002", seen: 2, type: "agree", target: 2 });
  const { people } = await job.read();
  expect(people.slice(-2).map(({ id, name }) => [id, name])).toEqual([
    ["p8", "JOSÉ"],
    ["p9", "Una"],
  ]);
  const taken = { ...withPeople("p2"), title: "Moved on" };
  const told = await job.post(`/jobs/${job.job}/say`, {
    as: "Ines",
    key: "people-0003",
    seen: 3,
    type: "amend",
    because: "x",
    brief: taken,
  });
  expect(told.status).toBe(422);
});
