import { type Context, Hono } from "hono";
import type { Child } from "hono/jsx";
import { DraftAnchorsPage } from "../../views/pages/draft/anchors.tsx";
import type { PartProps } from "../../views/pages/draft/part.tsx";
import type { DraftStep } from "../../views/pages/draft/steps.ts";
import { DraftWeatherPage } from "../../views/pages/draft/weather.tsx";
import type { Words } from "../../views/text/words.ts";
import type { Draft } from "../draft/draft.ts";
import { anchorageShown, anchorageTyped } from "../draft/draft-anchorage.ts";
import { titleOf, zoneOf } from "../draft/draft-brief.ts";
import type { PartFields } from "../draft/draft-parts.ts";
import { heldOnDraft, weatherShown, weatherTyped } from "../draft/draft-weather.ts";
import { createLiveDrafts } from "../draft/drafts.ts";
import { unopened } from "../draft/unopened.ts";
import { closedUp } from "../input/anchorage-form.ts";
import type { Fields } from "../input/form.ts";
import { inWords, type Wrong } from "../input/problem.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

/** The page of a part of the brief: what its form shows of a draft, what is kept of it, and the step that it goes back to. */
type PartPage = {
  readonly path: "anchors" | "weather-plan";
  readonly step: DraftStep;
  readonly refused: (words: Words) => string;
  readonly shown: (fields: Fields) => Fields;
  /** A form as it is read and shown again. */
  readonly form: (sent: Fields) => Fields;
  readonly typed: (form: Fields, fields: Fields) => { readonly fields: PartFields } | { readonly wrong: Wrong };
  readonly view: (props: PartProps, fields: Fields) => Child;
};

const PAGES: readonly PartPage[] = [
  {
    path: "anchors",
    step: "sheet",
    refused: ({ anchors }) => anchors.refused,
    shown: anchorageShown,
    form: closedUp,
    typed: anchorageTyped,
    view: (props) => <DraftAnchorsPage {...props} />,
  },
  {
    path: "weather-plan",
    step: "crew",
    refused: ({ draft }) => draft.wrong,
    shown: weatherShown,
    form: (sent) => sent,
    typed: weatherTyped,
    view: (props, fields) => <DraftWeatherPage {...props} forecast={heldOnDraft(fields)} zone={zoneOf(fields)} />,
  },
];

/** Parts of a brief that have a page of their own, before the job is opened: kept with its draft, and part of the brief from then on. */
export function draftPartRoutes(liveJobs: LiveJobs, world: Dependencies) {
  const app = new Hono();
  const drafts = createLiveDrafts(world, liveJobs);
  for (const part of PAGES) {
    const path = `/drafts/:id{[\\w-]+}/${part.path}`;
    const shown = (c: Context, { id, fields }: Draft, values: Fields, wrong: Wrong | null) => {
      const words = c.get("words");
      const title = titleOf(fields, words);
      const told = { values, problems: inWords(wrong ?? {}, words), message: wrong && part.refused(words), words };
      return page(c, part.view({ draft: id, title, ...told }, fields));
    };
    app.get(path, async (c) => {
      const draft = await unopened(drafts, c.req.param("id")!);
      return c.html(shown(c, draft, part.shown(draft.fields), null));
    });
    app.post(path, async (c) => {
      const draft = await unopened(drafts, c.req.param("id")!);
      const form = part.form(await formBody(c));
      const typed = part.typed(form, draft.fields);
      if ("wrong" in typed) return c.html(shown(c, draft, form, typed.wrong), 422);
      await drafts.keepParts(draft.id, typed.fields);
      return c.redirect(`/drafts/${draft.id}/${part.step}`, 303);
    });
  }
  return app;
}
