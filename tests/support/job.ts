import { digest } from "../../machines/digest/digest.ts";
import type { Intent } from "../../machines/install/commands.ts";
import type { CommandEntry } from "../../machines/record/entry.ts";
import { sayTo } from "../../server/routes/say.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { en } from "../../views/text/en/en.ts";
import { brief, testApp } from "./app.ts";
import { goodAnswer, type Say, walk } from "./crew-lead.ts";
import { type Stand, standOf } from "./stand.ts";

/** A key is done once, however often a job is opened again. */
let keys = 0;
const OFFICE = { source: "office", device: "office" } as const;
/** Anybody speaks as anybody: who comes in is what other tests are about. */
const speaks = () => "anything" as const;

/** A job of the application under test: driven as an office script does, or said to by whoever a test names. */
export async function openedJob(input: object = brief(), world = testApp()) {
  const { app, post, liveJobs } = world;
  const answer = await post("/jobs", { key: `open-${digest.of(input).slice(0, 12)}`, brief: input });
  const { job } = (await answer.json()) as { job: string };
  const read = async () => (await (await app.request(`/jobs/${job}.json`)).json()) as GuideState;
  /** As an office script says it, but for the wire. */
  const stand = async () => standOf(await liveJobs.load(job));
  const tell: Say = async (body, phone) => ({
    status: 200,
    body: (await sayTo(liveJobs, job, body, { ...(phone === undefined ? OFFICE : { source: "press", device: phone }), speaks }, en)).reply,
  });
  /** Said by somebody on a device: pressed, or spoken with the talk button held. */
  const say = async (ask: Intent, by = "Ines", on: { source?: "press" | "talk"; device?: string } = {}): Promise<CommandEntry> => {
    const { source = "press", device = `phone-of-${by}` } = on;
    const seen = (await liveJobs.load(job)).entries.length;
    const from = { key: `said-${String(++keys).padStart(4, "0")}`, seen, as: by, device, request: "0".repeat(64) };
    const said = await liveJobs.say<never>(job, from, () => ({ intent: ask, source, heard: source === "talk" ? "as heard" : null }));
    if (!("entry" in said)) throw new Error(`not recorded: ${JSON.stringify(ask)}`);
    return said.entry;
  };
  /** On to where a test begins, all gates answered well. Throws where the job never comes there. */
  const to = async (stop: (state: Stand) => boolean): Promise<GuideState> => {
    await walk(stand, tell, stop);
    return read();
  };
  /** The gate that is asked now, answered well by whom it allows. */
  const answerWell = async (): Promise<CommandEntry> => {
    const state = await read();
    const good = goodAnswer(state.gate!, state);
    if ("wind" in good)
      return say({
        type: "reading",
        reading: { kind: "wind", mph: 6, gustMph: 9, fromDeg: null, takenAt: (await liveJobs.load(job)).now.at, place: null },
      });
    return say({ type: "answer", gate: state.gate!.id, value: good.value as never }, good.as);
  };
  return { ...world, job, read, say, to, answerWell, entries: async () => (await liveJobs.load(job)).entries.slice() };
}
export type OpenedJob = Awaited<ReturnType<typeof openedJob>>;
