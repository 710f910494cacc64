import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { MAX_PHOTO_BYTES } from "../../machines/install/photo.ts";
import { photoEntries } from "../../machines/record/photos.ts";
import { gateNow, gatesToShow, photosOf } from "../../views/pages/photos/build-state.ts";
import { PhotoPage } from "../../views/pages/photos/one.tsx";
import type { PhotoForm } from "../../views/pages/photos/state.ts";
import { PhotosPage } from "../../views/pages/photos/view.tsx";
import type { Fields } from "../input/form.ts";
import { readPhotoForm } from "../input/photo.ts";
import { inWords, Problem, type Sentence } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { StoredPhoto } from "../journal/photos.ts";
import { hashBeside } from "../photos/hash.ts";
import { readPhoto } from "../photos/read-photo.ts";
import type { Presence } from "../presence.ts";
import { addressOfReply, backTo, repliedIn } from "./back-to.ts";
import { formWithFile } from "./body.ts";
import { screenOn } from "./guide.tsx";
import { page } from "./page.ts";
import { askOf, type Told } from "./say.ts";
import { deviceOf, knownDevice, speaksOf } from "./screen.ts";

/** Nothing in a photo is run or loaded, whatever somebody made it look like. */
const ALONE = "default-src 'none'; sandbox";
/** Its address is the hash of its bytes: they never change. */
const FOR_GOOD = "private, max-age=31536000, immutable";

type Answered = Pick<PhotoForm, "message" | "problems"> & Partial<Pick<PhotoForm, "gate" | "text">>;

/** The photos of one job: taken, listed, looked at. */
export function photoRoutes(liveJobs: LiveJobs, world: Dependencies & { readonly presence: Presence }) {
  const app = new Hono();
  const screenOf = screenOn(world);
  const wantsJson = (c: Context) => (c.req.header("accept") ?? "").includes("application/json");

  const listed = (c: Context, live: LiveJob, { gate, text = "", message, problems }: Answered) => {
    const words = c.get("words");
    const form = { gate: gate ?? gateNow(live), text, message, problems };
    return page(c, <PhotosPage screen={screenOf(c, live)} shown={photosOf(live, words)} gates={gatesToShow(live, words)} form={form} />);
  };

  app.get("/jobs/:id{[\\w-]+}/photos", async (c) => {
    const live = await liveJobs.load(c.req.param("id"));
    const words = c.get("words");
    deviceOf(c);
    const no = c.req.query("entry");
    if (no === undefined) return c.html(listed(c, live, { message: repliedIn(c), problems: {} }));
    const photo = photosOf(live, words).find((one) => String(one.no) === no);
    if (!photo) throw new Problem(404, (w) => w.photos.noSuch(no));
    return c.html(page(c, <PhotoPage screen={screenOf(c, live)} photo={photo} />));
  });
  app.get("/jobs/:id{[\\w-]+}/photos.json", async (c) =>
    c.json({ photos: photosOf(await liveJobs.load(c.req.param("id")), c.get("words")) }),
  );

  app.get("/jobs/:id{[\\w-]+}/photos/:hash{[0-9a-f]{64}}", async (c) => {
    const { id, hash } = c.req.param();
    const { entries } = await liveJobs.load(id);
    const named = photoEntries(entries).find(({ command }) => command.hash === hash);
    if (!named) throw new Problem(404, (w) => w.photos.noSuchFile);
    const stored = await world.journal.photos.get(id, hash);
    const bytes = stored?.bytes.slice();
    if (!bytes || (await hashBeside(bytes)) !== hash) throw new Problem(404, (w) => w.photos.missing);
    c.set("policy", ALONE);
    // Of which kind it is stands in the entry, under its hash.
    return c.body(bytes, 200, { "content-type": named.command.mime, "cache-control": FOR_GOOD });
  });

  // A script gets JSON; a page is sent back to the photos, or comes whole again with what was filled in.
  app.post("/jobs/:id{[\\w-]+}/photo", async (c) => {
    const id = c.req.param("id");
    const { fields, file } = await formWithFile(c, "photo");
    try {
      const { reply } = await take(c, fields, file);
      if (wantsJson(c)) return c.json({ ...reply, to: addressOfReply(c, `/jobs/${id}/photos`, reply.reply) });
      if (reply.went === "done") return backTo(c, `/jobs/${id}/photos`, reply.reply);
      return await again(c, fields, { message: reply.reply, problems: {} });
    } catch (error) {
      if (wantsJson(c) || !(error instanceof Problem) || (error.status !== 422 && error.status !== 413)) throw error;
      const words = c.get("words");
      return again(c, fields, { message: error.sentence(words), problems: inWords(error.fields, words) }, error.status);
    }
  });
  return app;

  /** The page once more, with all that can be filled in again: a browser keeps a file to itself. */
  async function again(c: Context, { gate, text }: Fields, answered: Answered, status: 413 | 422 = 422): Promise<Response> {
    const live = await liveJobs.load(c.req.param("id")!);
    return c.html(
      listed(c, live, { ...answered, ...(gate === undefined ? {} : { gate }), ...(text === undefined ? {} : { text }) }),
      status,
    );
  }

  /** One photo said to the job: stored without what it does not show, and named by an entry; what is none is refused by one. */
  async function take(c: Context, fields: Fields, file: File | null): Promise<{ readonly reply: Told }> {
    const { as, key, seen, gate, text } = readPhotoForm(fields);
    const noFile: Sentence = (w) => w.photos.noFile;
    if (!file) throw new Problem(422, noFile, { photo: noFile });
    if (file.size > MAX_PHOTO_BYTES) throw new Problem(413, (w) => w.photos.tooLarge(file.size, MAX_PHOTO_BYTES));
    const bytes = new Uint8Array(await file.arrayBuffer());
    const { intent, photo } = await meant(bytes, { gate, text });
    const request = { as, key, seen, type: "photo", gate, text, photo: await hashBeside(bytes) };
    const known = { as, key, seen, intent, request, ...(photo ? { photo } : {}) };
    const device = wantsJson(c) ? knownDevice(c) : deviceOf(c);
    const from = device === null ? ({ source: "office", device: "office" } as const) : ({ source: "press", device } as const);
    return askOf(liveJobs, c.req.param("id")!, known, { ...from, speaks: speaksOf(c), words: c.get("words") });
  }
}

type Of = Pick<Extract<Intent, { type: "photo" }>, "gate" | "text">;
type Meant = { readonly intent: Intent; readonly photo: StoredPhoto | null };

/** What somebody asks for who sends these bytes as a photo. */
async function meant(came: Uint8Array, of: Of): Promise<Meant> {
  const read = readPhoto(came);
  if ("unfit" in read) return { intent: { type: "unfitPhoto", ...of, unfit: read.unfit, bytes: came.length }, photo: null };
  const { bytes, mime, widthPx, heightPx } = read.photo;
  const hash = await hashBeside(bytes);
  return { intent: { type: "photo", ...of, hash, mime, bytes: bytes.length, widthPx, heightPx }, photo: { mime, bytes } };
}
