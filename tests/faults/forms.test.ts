import { describe, expect, it } from "vitest";
import { testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

const job = await openedJob();
const say = `/jobs/${job.job}/say`;
const send = (path: string, body: BodyInit, type?: string) =>
  job.app.request(path, {
    method: "POST",
    body,
    headers: { "sec-fetch-site": "same-origin", accept: "application/json", ...(type === undefined ? {} : { "content-type": type }) },
  });
const told = async (answer: Response) => [answer.status, ((await answer.json()) as { problem: string }).problem];
const notes = async () =>
  (await job.entries()).flatMap(({ entry }) => (entry.kind === "command" && "text" in entry.command ? [entry.command.text] : []));
let keys = 0;
const note = (text: string) => `as=p1&seen=1&key=form-${String(++keys).padStart(6, "0")}&type=note&text=${text}`;
const URLENCODED = "application/x-www-form-urlencoded";

describe("what is sent as a form", () => {
  it.each(["text/plain", "text/x-form", "application/x-form-data", "multipart/mixed; boundary=x", ""])(
    "and is none is refused in a sentence: %j",
    async (type) => {
      expect(await told(await send(say, new TextEncoder().encode(note("all+well")), type))).toEqual([
        415,
        "Send JSON, or a form from the page.",
      ]);
      expect(await notes()).not.toContain("all well");
    },
  );

  it.each(["multipart/form-data", "multipart/form-data; boundary=x"])("and did not come whole is refused in a sentence: %s", async (type) =>
    expect(await told(await send(say, "--y\r\nnothing", type))).toEqual([
      400,
      "The form did not come whole. Go back and send it again. Nothing was recorded.",
    ]),
  );

  it.each([
    ["in capitals, with a character set", note("in+capitals"), "Application/X-WWW-Form-URLEncoded; charset=UTF-8", "in capitals"],
    ["with a field twice, the last counts", `${note("first")}&text=last`, URLENCODED, "last"],
    ["with halves of percent signs", note("100%+%zz"), URLENCODED, "100% %zz"],
    [
      "with names that every object has",
      `${note("plain")}&__proto__=x&a.__proto__.b=x&constructor.prototype.as=p2&toString=x`,
      URLENCODED,
      "plain",
    ],
    ["with a group and a field of one name", `${note("both")}&text.x=1&as.y=2`, URLENCODED, "both"],
    ["with a field of very many names in one", `${note("deep")}&${"a.".repeat(5000)}a=1`, URLENCODED, "deep"],
    ["with very many fields", `${note("many")}&${Array.from({ length: 8000 }, (_, n) => `a${n}=`).join("&")}`, URLENCODED, "many"],
  ])("%s", async (_what, body, type, text) => {
    expect((await send(say, body, type)).status).toBe(303);
    expect((await notes()).at(-1)).toBe(text);
  });

  it("in parts is read as any other; a file in it is no text", async () => {
    const form = new FormData();
    for (const [name, value] of new URLSearchParams(note("in parts"))) form.set(name, value);
    expect((await send(say, form)).status).toBe(303);
    expect((await notes()).at(-1)).toBe("in parts");
    form.set("key", "form-a-file");
    form.set("text", new File(["all well"], "note.txt"));
    expect((await send(say, form)).status).toBe(422);
  });

  it("a brief with thousands of people and poles is answered, and opens nothing", async () => {
    const { app, journal } = testApp();
    const body = Array.from({ length: 1500 }, (_, n) => `crew.${n}.name=A&tent.add.${n}.xFt=1`).join("&");
    const answer = await app.request("/jobs", {
      method: "POST",
      body,
      headers: { "sec-fetch-site": "same-origin", "content-type": URLENCODED },
    });
    expect(answer.status).toBe(422);
    expect(await journal.jobs()).toEqual([]);
  });

  it("of more than anybody writes is refused", async () =>
    expect((await send(say, note("a".repeat(70_000)), URLENCODED)).status).toBe(413));
});
