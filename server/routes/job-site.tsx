import type { Context } from "hono";
import { Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { screenedOf } from "../../machines/install/anchor-screening.ts";
import { ballastOf } from "../../machines/install/ballast.ts";
import { turnedBearing } from "../../machines/site/north.ts";
import { siteState } from "../../views/pages/site/state.ts";
import { hurtState } from "../../views/parts/hurt-state.ts";
import { refuseIfClosed, refuseIfWaiting } from "../input/amendment.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import { Problem } from "../input/problem.ts";
import type { SiteInput } from "../input/site-form.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { Placing } from "../placing.ts";
import { backTo } from "./back-to.ts";
import { mayHere } from "./may-here.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf, speaksOf } from "./screen.ts";
import type { SiteChange, SiteDesk } from "./site-desk.ts";
import { siteImportRoutes } from "./site-import.tsx";
import { siteLineRoutes } from "./site-lines.tsx";
import { sitePlaceRoutes } from "./site-place.tsx";

const PREFIX = "/jobs/:id{[\\w-]+}/site";

/** The site of a job: shown with all that is worked out, added to at once, and corrected by an amendment that a second person agrees to. */
export function jobSiteRoutes(liveJobs: LiveJobs, world: Dependencies, placing: Placing) {
  const app = new Hono();
  const deskOf = async (c: Context): Promise<SiteDesk> => {
    const id = c.req.param("id")!;
    const live = await liveJobs.load(id);
    const words = c.get("words");
    const said = async (more: Readonly<Record<string, unknown>>, key: string | undefined, path: string) => {
      refuseIfClosed(live.job);
      const seen = live.job.snapshot.context.revision;
      const body = { as: holderOf(c, live) ?? "", key, seen, ...more };
      const { reply } = await sayTo(liveJobs, id, body, { source: "press", device: deviceOf(c), speaks: speaksOf(c) }, words);
      return backTo(c, path, reply.reply);
    };
    return {
      state: stateOf(c, live),
      hurt: hurtState(live, words),
      put: async (site, change) => {
        const now = await liveJobs.load(id);
        refuseIfWaiting(now, change.key);
        // A search takes a while: what was found on the site meanwhile would be taken off it unseen.
        if (now.job.frozen !== live.job.frozen) throw new Problem(409, (w) => w.siteForms.changed);
        return said({ type: "amend", because: change.because, brief: amended(live, c, site, change) }, change.key, `/jobs/${id}`);
      },
      add: (group, one, key) => said({ type: "found", what: { is: group, ...one } }, key, `/jobs/${id}/site`),
    };
  };
  app.route("/", siteLineRoutes(PREFIX, deskOf, world));
  app.route("/", siteImportRoutes(PREFIX, deskOf, world));
  app.route("/", sitePlaceRoutes(PREFIX, deskOf, { ...world, placing }));
  return app;
}

function stateOf(c: Context, live: LiveJob) {
  const { brief, plan, limits } = live.job.frozen;
  const id = c.req.param("id")!;
  return siteState({
    path: `/jobs/${id}/site`,
    up: `/jobs/${id}`,
    job: id,
    title: brief.title,
    rehearsal: brief.rehearsal === true,
    plan,
    siteModel: brief.siteModel,
    limits,
    bearingDeg: brief.site.baselineBearingDeg,
    screening: screenedOf(brief, plan)?.screening ?? null,
    ballast: ballastOf(brief, plan),
    mayChange: mayHere(c, live, "amend"),
    mayAdd: mayHere(c, live, "found"),
  });
}

/** The brief as it stands with another site. Where the tent turns, so does the bearing of its A–B. */
function amended({ job, names }: LiveJob, c: Context, siteModel: SiteInput, { turnDeg = 0 }: SiteChange): object {
  const { brief } = job.frozen;
  const input = briefFromForm(briefToForm(brief, names, c.get("words")));
  const bearing = brief.site.baselineBearingDeg;
  const site = bearing === undefined || turnDeg === 0 ? input.site : { ...input.site, baselineBearingDeg: turnedBearing(bearing, turnDeg) };
  return { ...input, site, siteModel };
}
