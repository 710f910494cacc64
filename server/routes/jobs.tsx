import { Hono } from "hono";
import { templateFor } from "../../machines/tent/templates.ts";
import { HomePage } from "../../views/home.tsx";
import { OpenJobPage } from "../../views/open-job.tsx";
import { PlanPage } from "../../views/plan.tsx";
import { placeName } from "../../views/record-lines.ts";
import { record } from "../../views/text/en/record.ts";
import { type Desks, requestDigest, type World } from "../command.ts";
import { readBrief } from "../edge/brief.ts";
import { briefFromForm } from "../edge/form.ts";
import { Problem } from "../edge/problem.ts";
import { formBody, jsonBody, wantsJson } from "./body.ts";
import { page } from "./page.ts";

/** The list of jobs, opening one, and its plan. Each page has its facts as JSON on the same path with `.json`. */
export function jobRoutes(desks: Desks, { journal, newId }: World) {
  const app = new Hono();
  // From what is kept of each: to read every opening would keep a hold waiting.
  const listed = () =>
    journal.folds().flatMap(({ job, entries, fold }) =>
      fold
        ? [
            {
              id: job,
              title: fold.title,
              size: record.size(fold.widthFt, fold.lengthFt),
              phase: fold.phase,
              phaseName: placeName(fold.phase),
              entries,
              rehearsal: fold.rehearsal,
            },
          ]
        : [],
    );
  const plan = (id: string) => {
    const { job } = desks.load(id);
    return { job: { id, title: job.frozen.brief.title, rehearsal: job.frozen.brief.rehearsal === true }, plan: job.frozen.plan };
  };

  app.get("/", (c) => c.html(page(<HomePage jobs={listed()} />)));
  app.get("/jobs.json", (c) => c.json({ jobs: listed() }));
  app.get("/jobs/new", (c) =>
    c.html(
      page(
        <OpenJobPage
          values={usualTent(c.req.query("width"), c.req.query("length"))}
          problems={{}}
          message={null}
          action="/jobs"
          newKey={newId}
        />,
      ),
    ),
  );
  app.get("/jobs/:id{[\\w-]+}/plan.json", (c) => c.json(plan(c.req.param("id"))));
  app.get("/jobs/:id{[\\w-]+}/plan", (c) => c.html(page(<PlanPage {...plan(c.req.param("id"))} />)));
  app.post("/jobs", async (c) => {
    if (wantsJson(c)) {
      const body = await jsonBody(c);
      const { key, brief } =
        typeof body === "object" && body !== null && "brief" in body
          ? (body as { key?: unknown; brief: unknown })
          : { key: undefined, brief: body };
      const id = desks.open(readBrief(brief), typeof key === "string" ? key : newId(), requestDigest(brief));
      const { job } = desks.load(id);
      return c.json({ job: id, title: job.frozen.brief.title, people: desks.load(id).names, entry: 1 }, 201);
    }
    const fields = await formBody(c);
    try {
      const { key, ...rest } = fields;
      const id = desks.open(readBrief(briefFromForm(fields)), key ?? newId(), requestDigest(rest));
      return c.redirect(`/jobs/${id}`, 303);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(
        page(<OpenJobPage values={fields} problems={error.fields} message={error.message} action="/jobs" newKey={newId} />),
        error.status,
      );
    }
  });
  return app;
}

/** The usual tent of a size, to start the form with. Where nothing is usual the field stays empty, and is asked. */
function usualTent(width: string | undefined, length: string | undefined): Record<string, string> {
  const [widthFt, lengthFt] = [Number(width), Number(length)];
  if (!width || !length || !(widthFt >= 20 && widthFt <= 120 && lengthFt >= widthFt && lengthFt <= 400)) return {};
  const t = templateFor(widthFt, lengthFt);
  const text = (n: number | null) => (n === null ? "" : String(n));
  return {
    "tent.widthFt": width,
    "tent.lengthFt": length,
    "tent.midsFt": t.midsFt.join(", "),
    "tent.onePiece": t.onePiece ? "yes" : "no",
    "tent.splitEnds": t.splitEnds ? "yes" : "no",
    "tent.spacingFt": text(t.spacingFt),
    "tent.quarterRings": text(t.quarterRings),
    "tent.centrePoleFt": text(t.centrePoleFt),
    "tent.sidePoleFt": text(t.sidePoleFt),
    "tent.setbackFt": text(t.setbackFt),
  };
}
