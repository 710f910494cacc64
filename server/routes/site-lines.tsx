import { type Context, Hono } from "hono";
import { frameOfSite, SiteDrawing } from "../../views/drawing/site/site-drawing.tsx";
import { pressedAt } from "../../views/drawing/site/site-frame.ts";
import { EntryPage, PRESSED_WIDE_PX, type Telling } from "../../views/pages/site/entry.tsx";
import { isListed } from "../../views/pages/site/fields.ts";
import { LinesPage } from "../../views/pages/site/lines.tsx";
import { ThisSitePage } from "../../views/pages/site/view.tsx";
import type { Fields } from "../input/form.ts";
import { inWords, Problem } from "../input/problem.ts";
import { besideSiteFields, formOf, groupOf, oneTold, siteWith, toldOne } from "../input/site-form.ts";
import { readSiteModel } from "../input/site-model.ts";
import { pointsIn, pointsText, pointsTyped, withoutLast, withPoint } from "../input/site-points.ts";
import type { Dependencies } from "../jobs.ts";
import { repliedIn } from "./back-to.ts";
import { formBody } from "./body.ts";
import { page } from "./page.ts";
import type { DeskOf, SiteDesk } from "./site-desk.ts";

type Shown = { readonly values: Fields; readonly problem?: Problem };

/** A site on its pages: all that is worked out, what was entered, and the forms that say one part of it. */
export function siteLineRoutes(prefix: string, deskOf: DeskOf, { newId }: Pick<Dependencies, "newId">) {
  const app = new Hono();
  const shared = (c: Context, { state, hurt }: SiteDesk) => ({ state, hurt, words: c.get("words"), message: repliedIn(c) });
  const entry = (c: Context, desk: SiteDesk, telling: Telling, { values, problem }: Shown) => {
    const words = c.get("words");
    const before = telling.id === null && isListed(telling.group) ? null : toldOne(desk.state.site, telling.group, telling.id);
    const form = {
      ...telling,
      values,
      problems: inWords(problem?.fields ?? {}, words),
      formKey: newId(),
      drawn: pointsText(pointsTyped(values)),
      many: values.many === "yes" && before ? pointsCounted(before) : 0,
    };
    return page(c, <EntryPage {...shared(c, desk)} {...form} message={problem?.sentence(words) ?? null} />);
  };

  app.get(prefix, async (c) => c.html(page(c, <ThisSitePage {...shared(c, await deskOf(c))} />)));
  app.get(`${prefix}/drawing.svg`, async (c) => {
    const { state } = await deskOf(c);
    const drawn = { ...state, words: c.get("words"), points: pointsIn(c.req.query("p")), palette: AS_THE_SYSTEM, isFile: true };
    return c.body(String(await (<SiteDrawing {...drawn} />)), 200, { "content-type": "image/svg+xml; charset=utf-8" });
  });
  app.get(`${prefix}/lines`, async (c) => {
    const desk = await deskOf(c);
    const { of, id = null } = c.req.query();
    if (of === undefined) return c.html(page(c, <LinesPage {...shared(c, desk)} />));
    const telling = { group: groupOf(of), id };
    return c.html(entry(c, desk, telling, { values: formOf(desk.state.site, telling.group, id) }));
  });
  app.post(`${prefix}/lines`, async (c) => {
    const { key, of, id = null, go, drawn, ...typed } = await formBody(c);
    const telling = { group: groupOf(of), id };
    const desk = await deskOf(c);
    const pressed = pointPressed(desk, typed, drawn);
    const values: Fields = Object.fromEntries(Object.entries(typed).filter(([name]) => !/^(?:narrow|wide)\.[xy]$/.test(name)));
    if (pressed)
      return c.html(
        entry(c, desk, telling, {
          values: telling.group === "wanted" ? withPoint({ headingDeg: values.headingDeg ?? "" }, pressed) : withPoint(values, pressed),
        }),
      );
    if (go === "look") return c.html(entry(c, desk, telling, { values }));
    if (go === "takeOff") return c.html(entry(c, desk, telling, { values: withoutLast(values) }));
    try {
      return await told(c, desk, { ...telling, values, key, isGone: go === "remove" });
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      return c.html(entry(c, desk, telling, { values, problem: error }), error.status);
    }
  });
  return app;
}

type ToldForm = Telling & { readonly values: Fields; readonly key: string | undefined; readonly isGone: boolean };

/** What a form says, added at once, put forward or kept. Throws a Problem with what is wrong beside its fields. */
async function told(c: Context, { state: { site }, add, put }: SiteDesk, { group, id, values, key, isGone }: ToldForm): Promise<Response> {
  const { because, parts } = c.get("words").siteForms;
  const one = isGone ? null : oneTold(group, values, toldOne(site, group, id));
  const { input, path, name: named } = siteWith(site, group, { id, one });
  const name = isListed(group) ? named : parts[group];
  const read = readSiteModel(input);
  if ("wrong" in read) throw new Problem(422, (w) => w.siteForms.wrong, besideSiteFields(read.wrong, path, values));
  const isMore = isListed(group) && id === null;
  if (isMore && add) return add(group, one!, key);
  return put(input, { because: isGone ? because.removed(name) : isMore ? because.added(name) : because.changed(name), key });
}

/** Where the drawing was pressed, in whole feet of the site; `null` where it was not. */
function pointPressed({ state }: SiteDesk, typed: Fields, drawn: string | undefined) {
  const size = (["narrow", "wide"] as const).find((name) => typed[`${name}.x`] !== undefined);
  if (size === undefined) return null;
  const [x, y] = [Number(typed[`${size}.x`]), Number(typed[`${size}.y`])];
  if (!Number.isFinite(x) || !Number.isFinite(y)) return null;
  return pressedAt(frameOfSite({ ...state, points: pointsIn(drawn) }), [x, y], PRESSED_WIDE_PX[size]);
}

/** A picture in a page: as its system is set, and dark on light where nothing says so. */
const AS_THE_SYSTEM = { ink: "currentColor", ground: "var(--ground, #ffffff)" } as const;

function pointsCounted(one: Readonly<Record<string, unknown>>): number {
  const shape = (one.shape ?? {}) as Record<string, unknown>;
  const points = one.points ?? one.corners ?? shape.points ?? shape.corners;
  return Array.isArray(points) ? points.length : 0;
}
