import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { digest } from "../../machines/digest/digest.ts";
import { screenedOf } from "../../machines/install/anchor-screening.ts";
import type { Frozen } from "../../machines/install/step.ts";
import { lookupIn } from "../../machines/record/entries.ts";
import { frozeIn } from "../../machines/record/in-force.ts";
import { diagonalsOf, edgeTapes, stakeLines } from "../../machines/tent/tape.ts";
import { groundAround } from "../../views/drawing/site/ground-around.ts";
import { UNITS, type Units } from "../../views/drawing/units.ts";
import { markRows } from "../../views/pages/layout/csv.ts";
import { layoutDxf } from "../../views/pages/layout/dxf.ts";
import { type LayoutState, PAPERS, type Paper } from "../../views/pages/layout/state.ts";
import { standalone } from "../../views/pages/layout/svg.tsx";
import { LayoutPage } from "../../views/pages/layout/view.tsx";
import { csv } from "../../views/parts/csv.ts";
import { Problem, type Sentence } from "../input/problem.ts";
import type { LiveJobs } from "../jobs.ts";
import { hurtOn } from "./hurt-on.ts";
import { page } from "./page.ts";

/** The layout sheet of one job, and the same to take along: as a drawing, as a table of marks, as data. */
export function layoutRoutes(liveJobs: LiveJobs) {
  const app = new Hono();
  const stateOf = async (c: Context): Promise<LayoutState> => {
    const id = c.req.param("id")!;
    const desk = await liveJobs.load(id);
    const version = versionIn(c, desk);
    const frozen = version?.frozen ?? desk.job.frozen;
    const { brief, plan } = frozen;
    const last = desk.entries.at(-1)!;
    return {
      job: { id, title: brief.title, rehearsal: brief.rehearsal === true },
      plan,
      site: brief.site,
      ratios: screenedOf(brief, plan)?.screening.stations,
      around: groundAround(frozen),
      version: version?.no ?? null,
      record: { no: last.entry.no, hash: last.hash },
    };
  };
  const file = (c: Context, name: string) => ({
    "content-disposition": `attachment; filename="${name.replace(".", `-${c.req.param("id")}.`)}"`,
  });

  app.get("/jobs/:id{[\\w-]+}/layout", async (c) => {
    const state = await stateOf(c);
    const told = { units: unitsIn(c), paper: paperIn(c), hurt: await hurtOn(c, liveJobs), words: c.get("words") };
    return c.html(page(c, <LayoutPage state={state} {...told} />));
  });
  app.get("/jobs/:id{[\\w-]+}/layout.svg", async (c) => {
    const { plan, site, ratios, around } = await stateOf(c);
    const { baselineBearingDeg: north, street } = site;
    const drawing = standalone({ plan, north, street, ratios, around, units: unitsIn(c), words: c.get("words") });
    return c.body(drawing, 200, { "content-type": "image/svg+xml; charset=utf-8", ...file(c, "layout.svg") });
  });
  app.get("/jobs/:id{[\\w-]+}/layout.dxf", async (c) =>
    c.body(layoutDxf(await stateOf(c), unitsIn(c), c.get("words")), 200, {
      "content-type": "image/vnd.dxf; charset=utf-8",
      ...file(c, "layout.dxf"),
    }),
  );
  app.get("/jobs/:id{[\\w-]+}/marks.csv", async (c) =>
    c.body(csv(markRows((await stateOf(c)).plan, c.get("words"))), 200, {
      "content-type": "text/csv; charset=utf-8; header=present",
      ...file(c, "marks.csv"),
    }),
  );
  app.get("/jobs/:id{[\\w-]+}/layout.json", async (c) => {
    const { job, plan, site } = await stateOf(c);
    const { widthFt, lengthFt, stations, plates, poles, pieces, seams } = plan;
    const { baselineBearingDeg = null, street = null } = site;
    const tapes = { edges: edgeTapes(plan), stakeLines: stakeLines(plan), diagonalsFt: diagonalsOf(plan) };
    const { setbackFt } = plan.spec;
    return c.json({ job, widthFt, lengthFt, setbackFt, baselineBearingDeg, street, ...tapes, stations, plates, poles, pieces, seams });
  });
  return app;
}

const unitsIn = (c: Context): Units => chosen(c, "units", UNITS, "ft", (given) => (w) => w.layout.badUnits(given));
const paperIn = (c: Context): Paper => chosen(c, "paper", PAPERS, "a4", (given) => (w) => w.layout.badPaper(given));

/** An earlier plan, or one that was only put forward, by the entry that holds it; `null` for the plan in force. */
function versionIn(c: Context, { job, entries }: LiveJob): { no: number; frozen: Frozen } | null {
  const asked = c.req.query("entry");
  if (asked === undefined) return null;
  const entry = lookupIn(entries)(Number(asked));
  const frozen = frozeIn(entry);
  if (!entry || !frozen) throw new Problem(404, (w) => w.layout.noVersion(asked));
  return digest.of(frozen) === digest.of(job.frozen) ? null : { no: entry.no, frozen };
}

/** One of the values that a query may have; left out, the usual one. Throws a `Problem` with what is wrong. */
function chosen<T extends string>(c: Context, name: string, from: readonly T[], usual: T, wrong: (given: string) => Sentence): T {
  const given = c.req.query(name);
  if (given === undefined) return usual;
  const found = from.find((value) => value === given);
  if (!found) throw new Problem(400, (w) => w.layout.badLook, { [name]: wrong(given) });
  return found;
}
