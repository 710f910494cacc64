import { type Context, Hono } from "hono";
import { DEFAULTS } from "../../machines/install/limits.ts";
import { siteState } from "../../views/pages/site/state.ts";
import { shownFields, titleOf } from "../draft/draft-brief.ts";
import { partField } from "../draft/draft-parts.ts";
import { siteOfDraft } from "../draft/draft-site.ts";
import { createLiveDrafts } from "../draft/drafts.ts";
import { unopened } from "../draft/unopened.ts";
import { previewOf } from "../input/preview.ts";
import { Problem } from "../input/problem.ts";
import { typed } from "../input/typed.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import type { Placing } from "../placing.ts";
import type { SiteDesk } from "./site-desk.ts";
import { siteImportRoutes } from "./site-import.tsx";
import { siteLineRoutes } from "./site-lines.tsx";
import { sitePlaceRoutes } from "./site-place.tsx";

const PREFIX = "/drafts/:id{[\\w-]+}/ground-plan";

/** The site of a job that is still told: kept with its draft, and part of the brief once that is opened. */
export function draftSiteRoutes(liveJobs: LiveJobs, world: Dependencies, placing: Placing) {
  const app = new Hono();
  const drafts = createLiveDrafts(world, liveJobs);
  const deskOf = async (c: Context): Promise<SiteDesk> => {
    const words = c.get("words");
    const draft = await unopened(drafts, c.req.param("id")!);
    const { preview } = previewOf(draft.fields, words);
    if (!("plan" in preview)) throw new Problem(409, (w) => w.thisSite.noPlan);
    const inches = typed(shownFields(draft.fields, drafts.now())["ticket.toleranceIn"], "in");
    const path = `/drafts/${draft.id}/ground-plan`;
    return {
      state: siteState({
        path,
        up: `/drafts/${draft.id}/site`,
        job: null,
        title: titleOf(draft.fields, words),
        rehearsal: false,
        plan: preview.plan,
        siteModel: siteOfDraft(draft.fields) ?? undefined,
        limits: {
          toleranceIn: typeof inches === "number" ? { is: inches, source: "brief" } : DEFAULTS.toleranceIn,
          separationFt: DEFAULTS.separationFt,
        },
        bearingDeg: undefined,
        screening: null,
        ballast: null,
        mayChange: true,
        mayAdd: true,
      }),
      hurt: null,
      put: async (site) => {
        await drafts.keepParts(draft.id, { siteModel: partField(site) });
        return c.redirect(path, 303);
      },
      add: null,
    };
  };
  app.route("/", siteLineRoutes(PREFIX, deskOf, world));
  app.route("/", siteImportRoutes(PREFIX, deskOf, world));
  app.route("/", sitePlaceRoutes(PREFIX, deskOf, { ...world, placing }));
  return app;
}
