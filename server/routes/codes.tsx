import { type Context, Hono } from "hono";
import type { LiveJob } from "../../machines/conversation/live-job.ts";
import { CodesPage } from "../../views/pages/join/codes.tsx";
import type { Screen } from "../../views/parts/say-form.tsx";
import type { Entrance } from "../access/entrance.ts";
import { isLoopback } from "../access/loopback.ts";
import type { LiveJobs } from "../jobs.ts";
import { page } from "./page.ts";

/** Where phones find this server: an address on the site's own network, or `null` where it has none. */
export type SiteAddress = () => string | null;
type Shown = { readonly screenOf: (c: Context, live: LiveJob) => Screen; readonly siteAddress: SiteAddress };

/** The codes of a job: shown to be scanned, and replaced. */
export function codeRoutes(liveJobs: LiveJobs, entrance: Entrance, { screenOf, siteAddress }: Shown) {
  const app = new Hono();
  app.get("/jobs/:id{[\\w-]+}/codes", async (c) => {
    const id = c.req.param("id");
    const live = await liveJobs.load(id);
    const here = new URL(c.req.url);
    const onlyHere = isLoopback(here.hostname) && siteAddress() === null;
    const address = (isLoopback(here.hostname) ? siteAddress() : null) ?? here.origin;
    const codes = await entrance.codesOf(id);
    const one = (code: string) => ({ code, link: `${address.replace(/\/$/, "")}/join?${new URLSearchParams({ job: id, code })}` });
    const shown = { crew: one(codes.crew), leads: one(codes.leads), address: address.replace(/\/$/, ""), onlyHere };
    return c.html(page(c, <CodesPage screen={screenOf(c, live)} {...shown} />));
  });
  app.post("/jobs/:id{[\\w-]+}/codes", async (c) => {
    const id = c.req.param("id");
    await liveJobs.load(id);
    await entrance.renewCodes(id, c.get("visitor"));
    return c.redirect(`/jobs/${id}/codes`, 303);
  });
  return app;
}
