import { type Context, Hono } from "hono";
import { DraftWeatherPage } from "../../views/pages/draft/weather.tsx";
import type { Draft } from "../draft/draft.ts";
import { titleOf, zoneOf } from "../draft/draft-brief.ts";
import { heldOnDraft, weatherShown, weatherTyped } from "../draft/draft-weather.ts";
import { createLiveDrafts } from "../draft/drafts.ts";
import type { Fields } from "../input/form.ts";
import { inWords, Problem, type Wrong } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

const PATH = "/drafts/:id{[\\w-]+}/weather-plan";

/** The weather plan and the forecast of a job that is still told: kept with its draft, and part of the brief once that is opened. */
export function draftWeatherRoutes(liveJobs: LiveJobs, world: Dependencies) {
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
      <DraftWeatherPage
        draft={id}
        title={titleOf(fields, words)}
        forecast={heldOnDraft(fields)}
        zone={zoneOf(fields)}
        values={values}
        problems={inWords(wrong ?? {}, words)}
        message={wrong ? words.draft.wrong : null}
        words={words}
      />,
    );
  };

  app.get(PATH, async (c) => {
    const draft = await unopened(c);
    return c.html(shown(c, draft, weatherShown(draft.fields), null));
  });
  app.post(PATH, async (c) => {
    const draft = await unopened(c);
    const form = await formBody(c);
    const told = weatherTyped(form, draft.fields);
    if ("wrong" in told) return c.html(shown(c, draft, form, told.wrong), 422);
    await drafts.tellWeather(draft.id, told.fields);
    return c.redirect(`/drafts/${draft.id}/crew`, 303);
  });
  return app;
}
