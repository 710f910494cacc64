import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { buildTruckState } from "../../views/pages/truck/build-state.ts";
import { TruckCountPage } from "../../views/pages/truck/count.tsx";
import { truckRows } from "../../views/pages/truck/csv.ts";
import type { TruckScreen } from "../../views/pages/truck/line.tsx";
import type { TruckLine } from "../../views/pages/truck/state.ts";
import { TruckLive, TruckPage } from "../../views/pages/truck/view.tsx";
import { csv } from "../../views/parts/csv.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { lightningFacts } from "../../views/parts/lightning-state.ts";
import type { Words } from "../../views/text/words.ts";
import { type Fields, sayFromForm } from "../input/form.ts";
import { Problem, type Sentence } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { backTo, repliedIn } from "./back-to.ts";
import { formBody } from "./body.ts";
import { follow, followedJob } from "./follow.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";

const alarmsOf = (live: LiveJob, words: Words) => ({
  hurt: hurtState(live, words),
  lightning: lightningFacts(live.job, live.now.at, words),
});

/** The loading list of one job: read, ticked line by line, and taken along as a table or as data. */
export function truckRoutes(liveJobs: LiveJobs, { hub, newId }: Dependencies) {
  const app = new Hono();
  const idOf = (c: Context) => c.req.param("id")!;
  const loaded = (c: Context) => liveJobs.load(idOf(c));
  const stateOf = (c: Context, live: LiveJob) => buildTruckState(live, c.get("words"));
  const screenOf = (c: Context, live: LiveJob): TruckScreen => {
    const { job, names } = live;
    const words = c.get("words");
    const people = job.frozen.brief.crew.map((p) => ({ id: p.id, name: names[p.id] ?? p.id, roleName: words.roleName(p.role) }));
    return { state: stateOf(c, live), ...alarmsOf(live, words), me: holderOf(c, live), people, newKey: newId, words };
  };
  type Count = { line: TruckLine; typed: string; problem: string | null };
  const countPage = (c: Context, live: LiveJob, count: Count, status: 200 | 422 = 200) =>
    c.html(page(c, <TruckCountPage screen={screenOf(c, live)} {...count} />), status);
  const toList = (c: Context, reply: string, item: string) => backTo(c, `/jobs/${idOf(c)}/truck`, reply, `line-${item}`);

  app.get("/jobs/:id{[\\w-]+}/truck", async (c) => {
    const live = await loaded(c);
    const screen = screenOf(c, live);
    deviceOf(c);
    const asked = c.req.query("line");
    const line = asked === undefined ? null : screen.state.lines.find((l) => l.item === asked && l.asked);
    if (line && screen.me !== null) return countPage(c, live, { line, typed: "", problem: null });
    const notice = repliedIn(c) ?? (line === undefined ? screen.words.truck.noSuchLine(asked!) : null);
    return c.html(page(c, <TruckPage {...screen} notice={notice} />));
  });

  // A tick goes the way of everything said. A swap gets the head and its line; where it was refused, the whole list again.
  app.post("/jobs/:id{[\\w-]+}/truck", async (c) => {
    const fields = await formBody(c);
    const { item = "", value = "", as: by = "" } = fields;
    const partial = c.req.header("hx-request-type") === "partial";
    const live = await loaded(c);
    const before = stateOf(c, live).lines.find((l) => l.item === item);
    try {
      if (!before) throw new Problem(422, (w) => w.truck.noSuchLine(item));
      const { reply, live: after } = await tick(c, fields, before);
      const screen = screenOf(c, after);
      const line = screen.state.lines.find((l) => l.item === item)!;
      const done = reply.went === "done" && line.counted !== null;
      const told = done ? screen.words.truck.taken(line, screen.state.way) : reply.reply;
      if (partial) return c.html(await (<TruckLive {...screen} item={done ? item : null} notice={told} />).toString());
      return done || !line.asked || fields.from === "list"
        ? toList(c, told, item)
        : countPage(c, after, { line, typed: value, problem: told });
    } catch (error) {
      if (partial || !before?.asked || by === "" || !(error instanceof Problem) || error.status !== 422) throw error;
      return countPage(c, live, { line: before, typed: value, problem: error.sentence(c.get("words")) }, 422);
    }
  });

  app.get("/jobs/:id{[\\w-]+}/truck/live", async (c) => {
    const first = screenOf(c, await loaded(c));
    const list = followedJob(hub, idOf(c), async () => {
      const live = await loaded(c);
      const screen = { ...first, state: stateOf(c, live), ...alarmsOf(live, first.words) };
      return { entry: live.entries.at(-1)!.entry.no, html: await (<TruckLive {...screen} item={null} notice={null} />).toString() };
    });
    return follow(c, list);
  });
  app.get("/jobs/:id{[\\w-]+}/truck.json", async (c) => c.json(stateOf(c, await loaded(c))));
  app.get("/jobs/:id{[\\w-]+}/truck.csv", async (c) =>
    c.body(csv(truckRows(stateOf(c, await loaded(c)), c.get("words"))), 200, {
      "content-type": "text/csv; charset=utf-8; header=present",
      "content-disposition": `attachment; filename="truck-${idOf(c)}.csv"`,
    }),
  );
  return app;

  /** One line said to the job: its own item and no other. Throws a Problem where the number is none. */
  async function tick(c: Context, fields: Fields, line: TruckLine): ReturnType<typeof sayTo> {
    const { value = "", as: by, key, seen, gate } = fields;
    const notCount: Sentence = (w) => w.truck.notCount(value, line);
    const wrong = new Problem(422, notCount, { value: notCount });
    if (value.trim() === "") throw wrong;
    const said = { as: by, key, seen, type: "answer", gate, kind: "counts", [`n.${line.item}`]: value } as Fields;
    try {
      return await sayTo(
        liveJobs,
        idOf(c),
        sayFromForm(said),
        { source: "press", device: deviceOf(c), speaks: speaksOf(c) },
        c.get("words"),
      );
    } catch (error) {
      const named = error instanceof Problem && Object.keys(error.fields).some((field) => field.endsWith(`n.${line.item}`));
      throw named ? wrong : error;
    }
  }
}
