import { type Context, Hono } from "hono";
import { DraftAnchorsPage } from "../../views/pages/draft/anchors.tsx";
import type { Draft } from "../draft/draft.ts";
import { anchorageShown, anchorageTyped } from "../draft/draft-anchorage.ts";
import { titleOf } from "../draft/draft-brief.ts";
import { createLiveDrafts } from "../draft/drafts.ts";
import { closedUp } from "../input/anchorage-form.ts";
import type { Fields } from "../input/form.ts";
import { inWords, Problem, type Wrong } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

const PATH = "/drafts/:id{[\\w-]+}/anchors";

/** What the anchors of a job that is still told are screened by: kept with its draft, and part of the brief once that is opened. */
export function draftAnchorRoutes(liveJobs: LiveJobs, world: Dependencies) {
  const app = new Hono();
  const drafts = createLiveDrafts(world, liveJobs);
  const unopened = async (c: Context): Promise<Draft> => {
    const draft = await drafts.get(c.req.param("id")!);
    if (draft.opened) throw new Problem(409, (w) => w.draft.noDraft(draft.id));
    return draft;
  };
  const shown = (c: Context, { id, fields }: Draft, values: Fields, wrong: Wrong | null) => {
    const words = c.get("words");
    return page(
      c,
      <DraftAnchorsPage
        draft={id}
        title={titleOf(fields, words)}
        values={values}
        problems={inWords(wrong ?? {}, words)}
        message={wrong ? words.anchors.refused : null}
        words={words}
      />,
    );
  };

  app.get(PATH, async (c) => {
    const draft = await unopened(c);
    return c.html(shown(c, draft, anchorageShown(draft.fields), null));
  });
  app.post(PATH, async (c) => {
    const draft = await unopened(c);
    const form = closedUp(await formBody(c));
    const told = anchorageTyped(form);
    if ("wrong" in told) return c.html(shown(c, draft, form, told.wrong), 422);
    await drafts.tellAnchorage(draft.id, told.kept);
    return c.redirect(`/drafts/${draft.id}/sheet`, 303);
  });
  return app;
}
