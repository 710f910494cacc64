import { Hono } from "hono";
import { scriptOf } from "../../machines/install/script.ts";
import { PROCEDURE } from "../../machines/install/version.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { checkSpec } from "../../machines/tent/spec.ts";
import { OtherwisePage, OtherwisePutPage } from "../../views/pages/discrepancy/view.tsx";
import { effectText } from "../../views/parts/effect.ts";
import { edge } from "../../views/text/en/errors.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import { formOfBrief } from "../input/brief-to-form.ts";
import { besideOtherwise, isOtherwise, OTHERWISE, otherwiseFrom } from "../input/discrepancy.ts";
import type { Fields } from "../input/form.ts";
import { Problem } from "../input/problem.ts";
import type { Desks, World } from "../jobs.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import { sayTo } from "./say.ts";
import { deviceOf, holderOf } from "./screen.ts";

/**
 * What the cloth or the site says otherwise than the plan, one thing at a time: rings, a pole, a corner. First what it
 * would change is shown; then it is put forward, as every amendment, for a second person to agree to.
 */
export function otherwiseRoutes(desks: Desks, { newId }: World) {
  const app = new Hono();
  const shown = (id: string, values: Fields, problems: Fields, message: string | null) => {
    const { job } = desks.load(id);
    return page(<OtherwisePage job={id} title={job.frozen.brief.title} plan={job.frozen.plan} {...{ values, problems, message }} />);
  };

  app.get("/jobs/:id{[\\w-]+}/otherwise", (c) => c.html(shown(c.req.param("id"), c.req.query(), {}, null)));
  app.post("/jobs/:id{[\\w-]+}/otherwise", async (c) => {
    const id = c.req.param("id");
    const { key, seen, put, ...fields } = await formBody(c);
    const { what } = fields;
    if (!isOtherwise(what)) throw new Problem(422, edge.oneOf(OTHERWISE), { what: edge.oneOf(OTHERWISE) });
    const { job, names } = desks.load(id);
    const { brief, plan } = job.frozen;
    const because = fields.because?.trim() ?? "";
    const checked = checkSpec(otherwiseFrom(what, fields, plan));
    const problems: Record<string, string> = because === "" ? { because: edge.empty } : {};
    if ("problems" in checked) for (const p of checked.problems) problems[besideOtherwise(p)] ??= edge.tent(p);
    if ("problems" in checked || because === "") return c.html(shown(id, fields, problems, edge.bodyShape), 422);
    if (put !== "yes") {
      const amended = { ...brief, tent: checked.spec };
      const to = { procedure: PROCEDURE, brief: amended, plan: planTent(checked.spec), script: scriptOf(amended, planTent(checked.spec)) };
      const effect = effectText(job, to, (person) => names[person] ?? person);
      const { turn } = job.snapshot.context;
      return c.html(
        page(<OtherwisePutPage job={id} title={brief.title} effect={effect} values={{ ...fields, key: newId(), seen: String(turn) }} />),
      );
    }
    const input = { ...briefFromForm(formOfBrief(brief, names)), tent: checked.spec };
    const body = { as: holderOf(c, id, desks) ?? "", key, seen: Number(seen), type: "amend", because, brief: input };
    const { reply } = sayTo(desks, id, body, { source: "press", device: deviceOf(c, newId) });
    return c.redirect(`/jobs/${id}?reply=${encodeURIComponent([...reply].slice(0, 500).join(""))}`, 303);
  });
  return app;
}
