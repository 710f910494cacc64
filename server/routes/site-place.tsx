import { type Context, Hono } from "hono";
import { offsetOf } from "../../machines/site/model.ts";
import type { PlacementFound } from "../../machines/site/placement.ts";
import { cornerAOf } from "../../machines/site/stand.ts";
import { toldAs } from "../../machines/site/told-as.ts";
import { planTent } from "../../machines/tent/plan.ts";
import { PlacePage } from "../../views/pages/site/place.tsx";
import type { SiteState } from "../../views/pages/site/state.ts";
import { Problem } from "../input/problem.ts";
import type { SiteInput } from "../input/site-form.ts";
import type { Dependencies } from "../jobs.ts";
import type { Placing, Sighted } from "../placing.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import type { DeskOf, SiteDesk } from "./site-desk.ts";

/** Where a tent could stand: looked for with a press, drawn beside where it is wanted, and taken with another. */
export function sitePlaceRoutes(prefix: string, deskOf: DeskOf, { newId, placing }: Pick<Dependencies, "newId"> & { placing: Placing }) {
  const app = new Hono();
  const shown = (c: Context, { state, hurt }: SiteDesk, { sighted, problem }: { sighted: Sighted | null; problem?: Problem }) => {
    const words = c.get("words");
    return page(
      c,
      <PlacePage state={state} hurt={hurt} words={words} message={problem?.sentence(words) ?? null} formKey={newId()} sighted={sighted} />,
    );
  };
  /** Looked for as the sheet has the stakes: what slid for another place slides back first. */
  const lookFor = ({ plan, site: { fixes: _, ...site }, rules, place }: SiteState) =>
    placing({ plan: planTent(plan.spec), site, rules, place });

  app.get(`${prefix}/place`, async (c) => c.html(shown(c, await deskOf(c), { sighted: null })));
  app.post(`${prefix}/place`, async (c) => {
    const { go, by, key } = await formBody(c);
    const desk = await deskOf(c);
    try {
      const sighted = await lookFor(desk.state);
      if (go !== "take") return c.html(shown(c, desk, { sighted }));
      if (by !== sighted.by) throw new Problem(409, (w) => w.siteForms.changed);
      const { found } = sighted;
      if (found.is === "nowhere" || found.is === "asWanted") throw new Problem(409, (w) => w.siteForms.nothingToTake);
      const { because } = c.get("words").siteForms;
      return await desk.put(withPlace(desk.state, found), { because: because.place, key, turnDeg: found.shift.turnDeg });
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(shown(c, desk, { sighted: null, problem: error }), error.status);
    }
  });
  return app;
}

/** The site with the tent wanted where it was found, and what is done about its stakes there. */
function withPlace({ plan, site }: SiteState, found: Exclude<PlacementFound, { is: "nowhere" }>): SiteInput {
  const { fixes: _, ...told } = toldAs(site);
  const wanted = { cornerA: offsetOf(cornerAOf(plan, found.place)), headingDeg: upright(found.place.headingDeg) };
  return { ...told, wanted, ...(found.is === "leastBad" ? { fixes: found.fixes } : {}) };
}

/** A heading over -180 and up to 180. */
const upright = (deg: number): number => {
  const n = ((deg % 360) + 360) % 360;
  return n > 180 ? n - 360 : n;
};
