import { Hono } from "hono";
import { freeze } from "../../machines/install/freeze.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { DiscrepancyPage, ProposeDiscrepancyPage } from "../../views/pages/discrepancy/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { errors } from "../../views/text/en/errors.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { briefToForm } from "../input/brief-to-form.ts";
import { DISCREPANCIES, fieldOfProblem, isDiscrepancy, specWithDiscrepancy } from "../input/discrepancy.ts";
import type { Fields } from "../input/form.ts";
import { Problem } from "../input/problem.ts";
import { noFields } from "../input/strict.ts";
import type { Dependencies, LiveJobs } from "../jobs.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf } from "./screen.ts";

/**
 * What the cloth or the site says otherwise than the plan, one thing at a time: rings, a pole, a corner. First what it
 * would change is shown; then it is put forward, as every amendment, for a second person to agree to.
 */
export function discrepancyRoutes(desks: LiveJobs, { newId }: Dependencies) {
  const app = new Hono();
  const shown = (id: string, values: Fields, problems: Fields, message: string | null) => {
    const { job } = desks.load(id);
    return page(<DiscrepancyPage job={id} title={job.frozen.brief.title} plan={job.frozen.plan} {...{ values, problems, message }} />);
  };

  app.get("/jobs/:id{[\\w-]+}/discrepancy", (c) => c.html(shown(c.req.param("id"), c.req.query(), {}, null)));
  app.post("/jobs/:id{[\\w-]+}/discrepancy", async (c) => {
    const id = c.req.param("id");
    const { key, seen, put, ...fields } = await formBody(c);
    const { what } = fields;
    if (!isDiscrepancy(what)) throw new Problem(422, errors.oneOf(DISCREPANCIES), { what: errors.oneOf(DISCREPANCIES) });
    const { job, names } = desks.load(id);
    const { brief, plan } = job.frozen;
    const because = fields.because?.trim() ?? "";
    const checked = checkSpec(specWithDiscrepancy(what, fields, plan));
    const problems = noFields();
    if (because === "") problems.because = errors.empty;
    if ("problems" in checked) for (const p of checked.problems) problems[fieldOfProblem(p)] ??= errors.tent(p);
    if ("problems" in checked || because === "") return c.html(shown(id, fields, problems, errors.bodyShape), 422);
    if (put !== "yes") {
      const to = freeze({ ...brief, tent: checked.spec });
      const effect = effectText(job, to, (person) => names[person] ?? person);
      const { revision } = job.snapshot.context;
      return c.html(
        page(
          <ProposeDiscrepancyPage
            job={id}
            title={brief.title}
            effect={effect}
            values={{ ...fields, key: newId(), seen: String(revision) }}
          />,
        ),
      );
    }
    const input = { ...briefFromForm(briefToForm(brief, names)), tent: checked.spec };
    const body = { as: holderOf(c, id, desks) ?? "", key, seen: Number(seen), type: "amend", because, brief: input };
    const { reply } = sayTo(desks, id, body, { source: "press", device: deviceOf(c, newId) });
    return c.redirect(`/jobs/${id}?reply=${encodeURIComponent([...reply].slice(0, 500).join(""))}`, 303);
  });
  return app;
}
