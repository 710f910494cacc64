import { type Context, Hono, type MiddlewareHandler } from "hono";
import { compress } from "hono/compress";
import { csrf } from "hono/csrf";
import { HTTPException } from "hono/http-exception";
import { secureHeaders } from "hono/secure-headers";
import { ProblemPage } from "../views/pages/problem/view.tsx";
import { createAccess } from "./access/access.ts";
import { doorCheck } from "./access/door-check.tsx";
import { createEntrance } from "./access/entrance.ts";
import { createFirstLink } from "./access/first-link.ts";
import { bodyLimit } from "./body-limit.ts";
import { maxBytesOf, tooLargeText } from "./body-sizes.ts";
import type { SiteNetwork } from "./https/site.ts";
import { inWords, Problem } from "./input/problem.ts";
import { createLiveJobs, type Dependencies } from "./jobs.ts";
import { NotWritten } from "./journal/journal.ts";
import { createAsides } from "./learning/asides.ts";
import { createPlacing } from "./placing.ts";
import { createPresence } from "./presence.ts";
import { amendRoutes } from "./routes/amend.tsx";
import { anchorRoutes } from "./routes/anchors.tsx";
import { codeRoutes } from "./routes/codes.tsx";
import { discrepancyRoutes } from "./routes/discrepancy.tsx";
import { draftPartRoutes } from "./routes/draft-parts.tsx";
import { draftSiteRoutes } from "./routes/draft-site.tsx";
import { draftRoutes } from "./routes/drafts.tsx";
import { factRoutes } from "./routes/facts.tsx";
import { findingsRoutes } from "./routes/findings.tsx";
import { guideRoutes, screenOn } from "./routes/guide.tsx";
import { handWorkRoutes } from "./routes/hand-work.tsx";
import { createTurns } from "./routes/in-turns.ts";
import { jobSiteRoutes } from "./routes/job-site.tsx";
import { jobRoutes } from "./routes/jobs.tsx";
import { joinRoutes } from "./routes/join.tsx";
import { inLanguage } from "./routes/language.ts";
import { layoutRoutes } from "./routes/layout.tsx";
import { learnRoutes } from "./routes/learn.tsx";
import { learningRoutes } from "./routes/learning.tsx";
import { withLightning, withThunderElsewhere } from "./routes/lightning-on.ts";
import { manifestRoutes } from "./routes/manifest.ts";
import { nameRoutes } from "./routes/names.tsx";
import { officeRoutes } from "./routes/office.tsx";
import { page } from "./routes/page.ts";
import { phoneRoutes } from "./routes/phone.tsx";
import { photoRoutes } from "./routes/photos.tsx";
import { proofRoutes } from "./routes/proof.tsx";
import { recordRoutes } from "./routes/record.tsx";
import { rehearseRoutes } from "./routes/rehearse.tsx";
import { reportRoutes } from "./routes/report.tsx";
import { sayableRoutes } from "./routes/sayable.ts";
import { tentRoutes } from "./routes/tents.tsx";
import { timeRoutes } from "./routes/time.tsx";
import { truckRoutes } from "./routes/truck.tsx";
import { trustRoutes } from "./routes/trust.tsx";
import { weatherPlanRoutes } from "./routes/weather-plan.tsx";

/** A slip is read to its end, and answered; what is longer is no slip. */
const MAX_DRAIN_BYTES = 8 * 1024 * 1024;
/** What takes long to make where a site has many lines. */
const LONG_PAGES = [
  "/drafts/:id/ground-plan/*",
  "/jobs/:id/site/*",
  "/jobs/:id/layout",
  "/jobs/:id/layout.svg",
  "/jobs/:id/layout.dxf",
  "/jobs/:id/layout.json",
];

/** What pages load, and where phones find the server on the site's own network: without them pages name it, and it is not there. */
type Served = { readonly files?: Hono; readonly network?: SiteNetwork | null };

/** The whole application: web standards only. */
export function createApp(world: Dependencies, { files = new Hono(), network = null }: Served = {}) {
  const liveJobs = createLiveJobs(world);
  const access = createAccess(world);
  const entrance = createEntrance(access, world.clock);
  const presence = createPresence();
  const asides = createAsides();
  const placing = createPlacing();
  const firstLink = createFirstLink(world.access.random);
  const turns = createTurns();
  const app = new Hono();
  app.use(turns.counted);
  // Passes over event streams, which have to arrive as they are sent, and what is compressed already.
  app.use(compress());
  app.use(withOwnPolicy);
  app.use(
    secureHeaders({
      strictTransportSecurity: false,
      // A form names where it comes from, and a problem leads back there. Without it, over plain http, no form would be taken.
      referrerPolicy: "same-origin",
      contentSecurityPolicy: { defaultSrc: ["'self'"], objectSrc: ["'none'"], baseUri: ["'none'"], frameAncestors: ["'none'"] },
      permissionsPolicy: { microphone: ["self"] },
    }),
  );
  app.route("/", files);
  app.use(...inLanguage(world.languages));
  app.use(csrf());
  app.use(
    bodyLimit({
      maxBytes: maxBytesOf,
      maxDrainBytes: MAX_DRAIN_BYTES,
      refuse: (c, bytes) => answer(c, new Problem(413, tooLargeText(c, bytes))),
    }),
  );
  app.use(doorCheck(access, liveJobs, world.newId));
  for (const path of LONG_PAGES) app.use(path, turns.lastInTurn);
  app.use("/jobs/*", withLightning(liveJobs));
  for (const path of ["/tents/*", "/office/*", "/drafts/*"]) app.use(path, withThunderElsewhere(world));
  app.route("/", manifestRoutes());
  app.route("/", trustRoutes(network));
  app.route("/", handWorkRoutes());
  app.route("/", joinRoutes(liveJobs, entrance));
  app.route("/", officeRoutes(access, entrance, firstLink, world.journal));
  app.route("/", nameRoutes(liveJobs, world.journal));
  app.route(
    "/",
    codeRoutes(liveJobs, entrance, { screenOf: screenOn({ ...world, presence }), siteAddress: () => network?.addresses[0] ?? null }),
  );
  app.route("/", jobRoutes(liveJobs, world));
  app.route("/", draftSiteRoutes(liveJobs, world, placing));
  app.route("/", draftPartRoutes(liveJobs, world));
  app.route("/", draftRoutes(liveJobs, world));
  app.route("/", factRoutes(liveJobs, world));
  app.route("/", weatherPlanRoutes(liveJobs, world));
  app.route("/", anchorRoutes(liveJobs, world));
  app.route("/", guideRoutes(liveJobs, world, presence, asides));
  app.route("/", sayableRoutes(liveJobs));
  app.route("/", phoneRoutes(liveJobs, world));
  app.route("/", photoRoutes(liveJobs, { ...world, presence }));
  app.route("/", amendRoutes(liveJobs, world));
  app.route("/", discrepancyRoutes(liveJobs, world));
  app.route("/", jobSiteRoutes(liveJobs, world, placing));
  app.route("/", layoutRoutes(liveJobs));
  app.route("/", recordRoutes(liveJobs, world));
  app.route("/", proofRoutes(liveJobs, world));
  app.route("/", reportRoutes(liveJobs, world));
  app.route("/", findingsRoutes(world));
  app.route("/", rehearseRoutes(liveJobs, world, screenOn({ ...world, presence })));
  app.route("/", learnRoutes(liveJobs, { ...world, presence, asides }));
  app.route("/", learningRoutes(world));
  app.route("/", timeRoutes(liveJobs, world));
  app.route("/", truckRoutes(liveJobs, world));
  app.route("/", tentRoutes(world));
  app.notFound((c) => answer(c, new Problem(404, (w) => w.errors.noPage(c.req.path))));
  app.onError((error, c) => {
    if (error instanceof Problem) return answer(c, error);
    if (error instanceof NotWritten) return answer(c, new Problem(503, (w) => w.notRecordedText(error.failure)));
    if (error instanceof HTTPException && error.status === 403) return answer(c, new Problem(403, (w) => w.errors.otherSite));
    if ("getResponse" in error && typeof error.getResponse === "function") return error.getResponse() as Response;
    console.error(error);
    return answer(c, new Problem(422, (w) => w.errors.oops), 500);
  });
  return { app, liveJobs, access, entrance, firstLink, connecting: turns.connecting };
}

/** A file that may do other things than a page says so itself. */
const withOwnPolicy: MiddlewareHandler = async (c, next) => {
  await next();
  const policy = c.get("policy");
  if (policy !== undefined) c.header("content-security-policy", policy);
};

/** A problem as JSON for a script, as a fragment for a swap, as a page for a person. */
async function answer(c: Context, problem: Problem, status: number = problem.status): Promise<Response> {
  const request = c.req.raw;
  const words = c.get("words");
  const title = problem.sentence(words);
  const fields = inWords(problem.fields, words);
  const url = new URL(request.url);
  const type = request.headers.get("content-type") ?? "";
  if (url.pathname.endsWith(".json") || type.includes("json") || request.headers.get("accept")?.includes("application/json"))
    return Response.json({ problem: title, fields }, { status });
  const partial = request.headers.get("hx-request-type") === "partial";
  const shown = <ProblemPage words={words} title={title} fields={fields} back={request.headers.get("referer") ?? "/"} partial={partial} />;
  const html = partial ? await shown.toString() : await page(c, shown);
  return new Response(html, { status, headers: { "content-type": "text/html; charset=utf-8" } });
}
