import { type Context, Hono } from "hono";
import { ThrowAwayPage } from "../../views/pages/drafts/throw-away.tsx";
import { DraftsPage } from "../../views/pages/drafts/view.tsx";
import type { Draft } from "../draft/draft.ts";
import { titleOf, zoneOf } from "../draft/draft-brief.ts";
import type { LiveDrafts } from "../draft/drafts.ts";
import { DRAFT_DAYS } from "../draft/remove-old.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";

const THROW_AWAY = "/drafts/:id{[\\w-]+}/throw-away";

/** All drafts that have become no job yet, and throwing one away. */
export function draftListRoutes(drafts: LiveDrafts) {
  const app = new Hono();
  app.get("/drafts", async (c) => {
    const words = c.get("words");
    const left = (await drafts.all()).map(({ id, fields, at }) => ({
      id,
      title: titleOf(fields, words),
      typed: words.draft.lastTyped(zoneOf(fields), at),
    }));
    return c.html(page(c, <DraftsPage drafts={left} days={DRAFT_DAYS} words={words} />));
  });

  const asked = (c: Context, { id, fields, version }: Draft, changed: boolean) => {
    const words = c.get("words");
    const draft = { id, version, title: titleOf(fields, words) };
    return c.html(page(c, <ThrowAwayPage draft={draft} changed={changed} words={words} />), changed ? 409 : 200);
  };
  app.get(THROW_AWAY, async (c) => {
    const draft = await drafts.get(c.req.param("id"));
    return draft.opened ? c.redirect(`/drafts/${draft.id}/tent`, 303) : asked(c, draft, false);
  });
  app.post(THROW_AWAY, async (c) => {
    const id = c.req.param("id");
    const { version } = await formBody(c);
    if (await drafts.throwAway(id, Number(version))) return c.redirect("/drafts", 303);
    const draft = await drafts.get(id);
    return draft.opened ? c.redirect(`/drafts/${id}/tent`, 303) : asked(c, draft, true);
  });
  return app;
}
