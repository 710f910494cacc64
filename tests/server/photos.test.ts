import { beforeEach, describe, expect, it } from "vitest";
import { hashOf } from "../../machines/digest/digest.ts";
import { MAX_PHOTO_BYTES, PHOTO_TYPES } from "../../machines/install/photo.ts";
import { photoEntries } from "../../machines/record/photos.ts";
import { memoryJournal } from "../../server/journal/memory.ts";
import { photos } from "../../views/text/en/photos.ts";
import { brief, testApp } from "../support/app.ts";
import { failingJournal } from "../support/failing-journal.ts";
import { type OpenedJob, openedJob } from "../support/job.ts";
import { fromCamera, MARKUP, PICTURES, photoForm, withTail } from "../support/photos.ts";
import { readCsv } from "../support/read-csv.ts";

const JPEG = PICTURES["image/jpeg"];
let disk: ReturnType<typeof failingJournal>;
let job: OpenedJob;
let keys = 0;
beforeEach(async () => {
  disk = failingJournal(memoryJournal());
  job = await openedJob(brief(), testApp(disk.journal));
});

type Told = { went: string; reply: string; entry: number; reasons: { why: string }[]; problem?: string; fields?: Record<string, string> };
const from = { origin: "http://localhost" };
const filled = (more: Readonly<Record<string, string>> = {}) => ({
  as: "p4",
  key: `photo-${String(++keys).padStart(4, "0")}`,
  seen: "1",
  gate: "",
  text: "",
  ...more,
});
/** Sent by the page's own script. */
async function send(photo: Uint8Array<ArrayBuffer> | null, fields = filled(), to = job) {
  const body = photoForm(photo, fields);
  const answer = await to.app.request(`/jobs/${to.job}/photo`, {
    method: "POST",
    body,
    headers: { ...from, accept: "application/json", cookie: "device=phone-of-jory" },
  });
  return { status: answer.status, body: (await answer.json()) as Told };
}
/** Sent by a browser without scripts. */
const post = async (photo: Uint8Array<ArrayBuffer> | null, fields = filled()) => {
  const answer = await job.app.request(`/jobs/${job.job}/photo`, {
    method: "POST",
    body: photoForm(photo, fields),
    headers: { ...from, cookie: `as-${job.job}=p4` },
  });
  return { status: answer.status, to: answer.headers.get("location"), html: await answer.text() };
};
const get = (path: string, headers = {}) => job.app.request(`/jobs/${job.job}${path}`, { headers });
const named = async () => photoEntries(await job.entries());
const served = async (hash: string) => new Uint8Array(await (await get(`/photos/${hash}`)).arrayBuffer());

describe("a photo of a job", () => {
  it.each(PHOTO_TYPES)("in %s is served without the place it was taken at, and is what the hash in the chain says", async (type) => {
    const { body } = await send(fromCamera(type), filled({ text: "loose plate at AB4" }));
    expect([body.went, body.reply]).toEqual(["done", "Photo kept."]);
    const [{ command }] = (await named()) as [Awaited<ReturnType<typeof named>>[number]];
    const bytes = await served(command.hash);
    expect([hashOf(bytes), bytes.length]).toEqual([command.hash, command.bytes]);
    expect(Buffer.from(bytes).toString("latin1")).not.toContain("44.5588");
    expect(command).toMatchObject({ mime: type, widthPx: 32, heightPx: 24, gate: null, text: "loose plate at AB4", by: "p4" });
  });
  it("is handed out as what it is, to be looked at and nothing else, and may be kept", async () => {
    await send(withTail(fromCamera("image/jpeg")));
    const answer = await get(`/photos/${(await named())[0]!.command.hash}`);
    expect(Object.fromEntries(answer.headers)).toMatchObject({
      "content-type": "image/jpeg",
      "content-security-policy": "default-src 'none'; sandbox",
      "x-content-type-options": "nosniff",
      "cache-control": "private, max-age=31536000, immutable",
    });
    expect(await answer.text()).not.toContain("script");
  });
  it("opens no gate and moves nothing: the call stands where it stood, whatever it is of", async () => {
    const before = await job.read();
    await send(JPEG, filled({ gate: before.gate!.id, as: "p1" }));
    const after = await job.read();
    expect([after.step, after.revision, after.gate!.status]).toEqual([before.step, before.revision, before.gate!.status]);
    expect(after.thread.at(-1)).toMatchObject({ said: "Photo", reply: "Photo kept.", to: expect.stringContaining(before.gate!.say) });
  });
  it("is taken while the work is on hold, against a screen of long ago, and from a job that is closed", async () => {
    await job.say({ type: "hold" }, "p5");
    expect((await send(JPEG)).body.went).toBe("done");
    await job.say({ type: "carryOn", became: null }, "p1");
    await job.say({ type: "standDown", because: "called off" }, "p1");
    expect((await job.read()).closed).toBe(true);
    expect((await send(fromCamera("image/jpeg", 6))).body.went).toBe("done");
    expect(await named()).toHaveLength(2);
  });
  it("twice under one key is one entry; under another two, and its bytes are there once", async () => {
    const fields = filled();
    const [first, again] = [await send(JPEG, fields), await send(JPEG, fields)];
    expect(again.body).toEqual(first.body);
    await send(fromCamera("image/jpeg"));
    const all = await named();
    expect(all.map(({ command }) => command.hash)).toEqual([hashOf(JPEG), hashOf(JPEG)]);
    expect((await send(PICTURES["image/png"], fields)).status).toBe(409);
  });
  it("is shown to nobody through another job", async () => {
    const other = await openedJob({ ...brief(), title: "Another" }, job);
    await send(JPEG);
    await send(PICTURES["image/png"], filled(), other);
    const path = `/jobs/${other.job}/photos`;
    expect((await job.app.request(`${path}/${hashOf(JPEG)}`)).status).toBe(404);
    expect((await job.app.request(`${path}/${hashOf(PICTURES["image/png"])}`)).status).toBe(200);
    // The bytes are there by then, and no entry of that job names them.
    await disk.journal.photos.put(other.job, hashOf(JPEG), { mime: "image/jpeg", bytes: JPEG });
    expect((await job.app.request(`${path}/${hashOf(JPEG)}`)).status).toBe(404);
  });
  it("is not taken from a trainee, nor of a gate that there is none; neither leaves bytes behind", async () => {
    expect((await send(JPEG, filled({ as: "p6" }))).body).toMatchObject({ went: "refused", reasons: [{ why: "role" }] });
    const { body } = await send(JPEG, filled({ gate: "__proto__" }));
    expect(body).toMatchObject({ went: "refused", reasons: [{ why: "noSuchGate" }], reply: expect.stringContaining('"__proto__"') });
    expect(await disk.journal.photos.get(job.job, hashOf(JPEG))).toBeNull();
    expect(await named()).toEqual([]);
  });
  it("that lies in the file as another one is not shown as this one", async () => {
    await send(JPEG);
    const bent = { ...disk.journal, photos: { ...disk.journal.photos, get: async () => ({ mime: "image/jpeg", bytes: JPEG.slice(1) }) } };
    const answer = await testApp(bent).app.request(`/jobs/${job.job}/photos/${hashOf(JPEG)}`);
    expect([answer.status, await answer.text()]).toEqual([404, expect.stringContaining(photos.missing)]);
  });
});

describe("what is no photo", () => {
  it.each<[string, Uint8Array<ArrayBuffer>, RegExp]>([
    ["a PDF", new TextEncoder().encode("%PDF-1.7"), /^A PDF came, not a photo\. Take one here/],
    ["an SVG", new TextEncoder().encode(`<svg xmlns="http://www.w3.org/2000/svg">${MARKUP}</svg>`), /^An SVG drawing came/],
    ["a text", new TextEncoder().encode("gate is open"), /^A text came/],
    ["a web page", new TextEncoder().encode(MARKUP), /^A web page came/],
    ["an empty file", new Uint8Array(), /^An empty file came/],
    ["a JPEG cut short", JPEG.slice(0, 250), /^That JPEG ends before its picture does/],
  ])("%s is refused in a sentence that names it, by an entry, and nothing of it is kept", async (_what, came, sentence) => {
    const { status, body } = await send(came, filled({ text: "the gate" }));
    expect([status, body.went, body.reply]).toEqual([200, "refused", expect.stringMatching(sentence)]);
    const last = (await job.entries()).at(-1)!.entry;
    expect(last).toMatchObject({
      command: { type: "unfitPhoto", text: "the gate", bytes: came.length },
      outcome: { refused: [{ why: "noPhoto" }] },
    });
    expect(await named()).toEqual([]);
    expect((await get("/record")).status).toBe(200);
  });
  it("comes back on the page with all that was filled in, where there are no scripts", async () => {
    const { id } = (await job.read()).gate!;
    const { status, html } = await post(new TextEncoder().encode("%PDF-1.7"), filled({ text: 'plate "AB4"', gate: id }));
    expect(status).toBe(422);
    expect(html).toContain("A PDF came, not a photo.");
    expect(html).toContain('value="plate &quot;AB4&quot;"');
    expect(html).toMatch(new RegExp(`<option value="${id}" selected`));
  });
  it("with none at all, too many letters or an unknown field it is told on the page, and nothing is recorded", async () => {
    const before = (await job.entries()).length;
    expect(await post(null)).toMatchObject({ status: 422, html: expect.stringContaining(photos.noFile) });
    const long = await post(JPEG, filled({ text: "x".repeat(5000) }));
    expect([long.status, long.html]).toEqual([422, expect.stringContaining("Too long. Keep it under 200 characters.")]);
    expect(long.html).toContain("x".repeat(5000));
    expect((await send(JPEG, filled({ hash: "0".repeat(64) }))).body.fields).toMatchObject({ hash: expect.stringContaining("not known") });
    expect((await send(JPEG, { ...filled(), key: "short" })).status).toBe(422);
    expect((await job.entries()).length).toBe(before);
  });
  it("too large it is told how large, and what to do; nothing is recorded", async () => {
    const large = new Uint8Array(MAX_PHOTO_BYTES + 1);
    large.set(JPEG);
    const { status, body } = await send(large);
    expect([status, body.problem]).toEqual([413, photos.tooLarge(large.length, MAX_PHOTO_BYTES)]);
    expect(body.problem).toMatch(/^That photo is 1\.6 MB, over the 1\.5 MB that go through\. .*makes it smaller/);
    const larger = await send(new Uint8Array(3_400_000));
    expect([larger.status, larger.body.problem]).toEqual([413, expect.stringMatching(/^That photo is 3\.5 MB, over/)]);
    expect(await post(large)).toMatchObject({ status: 413, html: expect.stringContaining("1.6 MB") });
    expect((await job.entries()).length).toBe(1);
    // Everything else is as bounded as before.
    expect((await job.post(`/jobs/${job.job}/say`, { note: "x".repeat(100_000) })).status).toBe(413);
  });
});

describe("a disk that takes nothing", () => {
  const FULL = { why: "full", place: "/data/ridgecall.db" } as const;
  it("takes no photo and no entry of it, says so, and takes both once there is room, under the same key", async () => {
    disk.state.failure = FULL;
    const fields = filled();
    expect((await send(JPEG, fields)).status).toBe(503);
    expect((await job.entries()).length).toBe(1);
    disk.state.failure = null;
    expect((await send(JPEG, fields)).body.went).toBe("done");
  });
  it("that fills up between the two leaves a photo that no entry names: it is not shown, and taken again it is there", async () => {
    const put = disk.journal.photos.put.bind(disk.journal.photos);
    disk.journal.photos.put = async (...photo) => {
      await put(...photo);
      disk.state.failure = FULL;
    };
    const fields = filled();
    expect((await send(JPEG, fields)).status).toBe(503);
    expect((await get(`/photos/${hashOf(JPEG)}`)).status).toBe(404);
    disk.state.failure = null;
    disk.journal.photos.put = put;
    expect((await send(JPEG, fields)).body.went).toBe("done");
    expect((await get(`/photos/${hashOf(JPEG)}`)).status).toBe(200);
  });
});

describe("on its pages", () => {
  it("a plain form takes it: the gate that is asked stands first, and the page comes back with the photo, who, when and which call", async () => {
    const { gate, call } = await job.read();
    const form = await (await get("/photos?as=p4")).text();
    expect(form).toContain('enctype="multipart/form-data"');
    expect(/<option value="([^"]*)" selected/.exec(form)?.[1]).toBe(gate!.id);
    const sent = await post(JPEG, filled({ gate: gate!.id, text: "<b>bent</b> hook" }));
    expect([sent.status, sent.to]).toEqual([303, expect.stringContaining(`/jobs/${job.job}/photos?reply=Photo%20kept.&seal=`)]);
    const page = await (await get(sent.to!.replace(`/jobs/${job.job}`, ""))).text();
    expect(page).toContain("Photo kept.");
    expect(page).toContain(`src="/jobs/${job.job}/photos/${hashOf(JPEG)}"`);
    expect(page).toContain("&lt;b&gt;bent&lt;/b&gt; hook");
    expect(page).toMatch(/Jory, Tue,? 2 Jun \d\d:\d\d/);
    expect(page).toContain(call!.say);
    const one = await (await get("/photos?entry=2")).text();
    expect(one).toContain("32 × 24 px, 1 kB");
    expect((await get("/photos?entry=1")).status).toBe(404);
  });
  it("asks whose screen it is, and lets a trainee look", async () => {
    expect(await (await get("/photos")).text()).not.toContain("data-photo");
    const trainee = await (await get("/photos?as=p6")).text();
    expect([trainee.includes("data-photo"), trainee.includes(photos.notTrainee)]).toEqual([false, true]);
  });
  it("a gate that was just answered can still be chosen", async () => {
    const { gate } = await job.read();
    await job.answerWell();
    expect((await job.read()).gate?.id).not.toBe(gate!.id);
    expect(await (await get("/photos?as=p1")).text()).toContain(`<option value="${gate!.id}">`);
  });
  it("the record shows it with its hash, as a page, a table and data", async () => {
    await send(JPEG, filled({ gate: "sheet.atHand", text: "the sheet" }));
    const hash = hashOf(JPEG);
    const page = await (await get("/record")).text();
    expect(page).toContain(`<a href="/jobs/${job.job}/photos/${hash}">`);
    expect(page).toContain("Photo: the sheet");
    const [head, , line] = readCsv(await (await get("/record.csv")).text());
    expect(line![head!.indexOf("photo")]).toBe(hash);
    const { entries } = (await (await get("/record.json")).json()) as { entries: { command?: object }[] };
    expect(entries[1]!.command).toMatchObject({ type: "photo", hash, gate: "sheet.atHand" });
    const list = (await (await get("/photos.json")).json()) as { photos: object[] };
    expect(list.photos).toMatchObject([{ no: 2, by: "Jory", hash, text: "the sheet", gate: "sheet.atHand" }]);
  });
});
