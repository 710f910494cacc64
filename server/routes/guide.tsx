import { type Context, Hono } from "hono";
import { getCookie, setCookie } from "hono/cookie";
import { streamSSE } from "hono/streaming";
import { GuidePage, Live } from "../../views/guide.tsx";
import { guideOf } from "../../views/guide-of.ts";
import { MorePage } from "../../views/more.tsx";
import { OpenJobPage } from "../../views/open-job.tsx";
import type { Desks, World } from "../command.ts";
import { besidesForm, formOfBrief } from "../edge/brief-form.ts";
import { briefFromForm, saidFromForm } from "../edge/form.ts";
import { Problem } from "../edge/problem.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";

/** How often a live screen hears that the server is still there, in ms. */
const BEAT_MS = 15_000;

/** The guide of one job: page, JSON, commands, and the stream that keeps a second screen up to date. */
export function guideRoutes(desks: Desks, { hub, now, newId }: World) {
  const app = new Hono();
  const guide = (id: string, on: string | null = null) => guideOf(desks.load(id), now(), on);
  const device = (c: Context): string => {
    const known = getCookie(c, "device");
    if (known && /^[\w-]{8,64}$/.test(known)) return known;
    const fresh = newId();
    setCookie(c, "device", fresh, { httpOnly: true, sameSite: "Lax", path: "/", maxAge: 400 * 24 * 3600 });
    return fresh;
  };
  /** Who holds this screen: named in the address, or remembered for this job. */
  const holder = (c: Context, id: string): string | null => {
    const { crew } = desks.load(id).job.frozen.brief;
    const named = c.req.query("as");
    const me = crew.find((p) => p.id === named)?.id ?? crew.find((p) => p.id === getCookie(c, `as-${id}`))?.id ?? null;
    if (named && me === named)
      setCookie(c, `as-${id}`, me, { httpOnly: true, sameSite: "Lax", path: `/jobs/${id}`, maxAge: 30 * 24 * 3600 });
    return me;
  };

  app.get("/jobs/:file{[\\w-]+\\.json}", (c) =>
    c.json(guide(c.req.param("file").slice(0, -".json".length), getCookie(c, "device") ?? null)),
  );
  app.get("/jobs/:id{[\\w-]+}", (c) => {
    const id = c.req.param("id");
    return c.html(page(<GuidePage guide={guide(id, device(c))} me={holder(c, id)} newKey={newId} notice={c.req.query("reply") ?? null} />));
  });
  app.get("/jobs/:id{[\\w-]+}/more", (c) => {
    const id = c.req.param("id");
    return c.html(page(<MorePage guide={guide(id)} me={holder(c, id)} newKey={newId} wakeWord={desks.wakeWord} />));
  });
  app.get("/jobs/:id{[\\w-]+}/amend", (c) => {
    const id = c.req.param("id");
    const { job, names } = desks.load(id);
    return c.html(
      page(
        <OpenJobPage
          values={formOfBrief(job.frozen.brief, names)}
          problems={{}}
          message={null}
          action={`/jobs/${id}/amend`}
          newKey={newId}
          amending
        />,
      ),
    );
  });
  app.post("/jobs/:id{[\\w-]+}/amend", async (c) => {
    const id = c.req.param("id");
    const fields = await formBody(c);
    try {
      const me = holder(c, id);
      const brief = briefFromForm(fields);
      const tent = { ...besidesForm(desks.load(id).job.frozen.brief.tent), ...brief.tent };
      const body = {
        as: me ?? "",
        key: fields.key,
        seen: guide(id).turn,
        type: "amend",
        because: fields.because,
        brief: { ...brief, tent },
      };
      const reply = sayTo(desks, id, body, { source: "press", device: device(c) });
      return c.redirect(`/jobs/${id}?reply=${encodeURIComponent(reply.reply)}`, 303);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(
        page(
          <OpenJobPage
            values={fields}
            problems={error.fields}
            message={error.message}
            action={`/jobs/${id}/amend`}
            newKey={newId}
            amending
          />,
        ),
        error.status,
      );
    }
  });
  // A swap gets the three regions as partials; a script its JSON; a page without scripts is sent back to the guide.
  app.post("/jobs/:id{[\\w-]+}/say", async (c) => {
    const id = c.req.param("id");
    if (wantsJson(c)) return c.json(sayTo(desks, id, await jsonBody(c), { source: "office", device: getCookie(c, "device") ?? "office" }));
    const fields = await formBody(c);
    const reply = sayTo(desks, id, saidFromForm(fields), { source: "press", device: device(c) });
    if (c.req.header("hx-request-type") === "partial")
      return c.html(
        await (
          <Live
            guide={guide(id, device(c))}
            me={holder(c, id)}
            newKey={newId}
            notice={reply.reply}
            cue={{ went: reply.went, heard: reply.heard, no: newId() }}
          />
        ).toString(),
      );
    return c.redirect(`/jobs/${id}?reply=${encodeURIComponent([...reply.reply].slice(0, 500).join(""))}`, 303);
  });
  app.get("/jobs/:id{[\\w-]+}/now", async (c) => {
    const id = c.req.param("id");
    return c.html(await (<Live guide={guide(id, device(c))} me={holder(c, id)} newKey={newId} notice={null} />).toString());
  });
  app.get("/jobs/:id{[\\w-]+}/live", (c) => {
    const id = c.req.param("id");
    const me = holder(c, id);
    const on = device(c);
    desks.load(id);
    return streamSSE(c, async (stream) => {
      let wake = () => {};
      let changed = true;
      const leave = hub.listen(id, () => {
        changed = true;
        wake();
      });
      stream.onAbort(() => wake());
      while (!stream.aborted) {
        if (changed) {
          changed = false;
          const state = guide(id, on);
          await stream.writeSSE({
            id: String(state.entry),
            data: (await (<Live guide={state} me={me} newKey={newId} notice={null} />).toString()).replaceAll("\n", " "),
          });
        } else {
          await new Promise<void>((resolve) => {
            wake = resolve;
            setTimeout(resolve, BEAT_MS).unref?.();
          });
          if (!stream.aborted && !changed) await stream.writeSSE({ event: "beat", data: "" });
        }
      }
      leave();
    });
  });
  return app;
}
