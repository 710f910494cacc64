import { digest } from "../../machines/digest/digest.ts";
import type { Intent } from "../../machines/install/commands.ts";
import type { CommandEntry } from "../../machines/record/entry.ts";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief, testApp } from "./app.ts";
import { drive, goodAnswer, type Say } from "./crew-lead.ts";

/** A job of the application under test: driven as an office script does, or said to by whoever a test names. */
export async function openedJob(input: object = brief(), world = testApp()) {
  const { app, post, desks } = world;
  const answer = await post("/jobs", { key: `open-${digest.of(input).slice(0, 12)}`, brief: input });
  const { job } = (await answer.json()) as { job: string };
  const read = async () => (await (await app.request(`/jobs/${job}.json`)).json()) as GuideState;
  const post1: Say = async (body) => {
    const r = await post(`/jobs/${job}/say`, body);
    return { status: r.status, body: (await r.json()) as never };
  };
  let keys = 0;
  const from = (by: string, source: "press" | "talk", device: string, seen: number) => ({
    key: `said-${String(++keys).padStart(4, "0")}`,
    seen,
    as: by,
    source,
    device,
    heard: source === "talk" ? "as heard" : null,
    request: "0".repeat(64),
  });
  /** Said by somebody on a device: pressed, or spoken with the talk button held. */
  const say = (ask: Intent, by = "Ines", on: { source?: "press" | "talk"; device?: string } = {}): CommandEntry =>
    desks.say(job, ask, from(by, on.source ?? "press", on.device ?? `phone-of-${by}`, desks.load(job).entries.length)).entry;
  /** On to where a test begins, all gates answered well. */
  const to = async (stop: (state: GuideState) => boolean) => (await drive(read, post1, stop)).state;
  /** The gate that is asked now, answered well by whom it allows. */
  const answerWell = async (): Promise<CommandEntry> => {
    const state = await read();
    const good = goodAnswer(state.gate!, state);
    if ("wind" in good)
      return say({ type: "reading", reading: { kind: "wind", mph: 6, gustMph: 9, takenAt: world.desks.now(), place: null } });
    return say({ type: "answer", gate: state.gate!.id, value: good.value as never }, good.as);
  };
  return { ...world, job, read, say, to, answerWell, entries: () => desks.load(job).entries };
}
export type OpenedJob = Awaited<ReturnType<typeof openedJob>>;
