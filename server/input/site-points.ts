import { offsetOf } from "../../machines/site/model.ts";
import { SITE_LIMITS } from "../../machines/site/site-limits.ts";
import type { Point } from "../../machines/tent/types.ts";
import { MAX_ROWS, rowsOf } from "../../views/pages/site/fields.ts";
import type { Fields } from "./form.ts";
import { typed } from "./typed.ts";

/** The points that were typed so far, in feet; those that are no numbers yet are left out. */
export const pointsTyped = (fields: Fields): Point[] =>
  rowsOf(fields).flatMap((no) => {
    const { alongFt, offFt } = offsetIn(fields, no);
    return typeof alongFt === "number" && typeof offFt === "number" ? [{ xFt: offFt, yFt: alongFt }] : [];
  });

/** A form with one more point after its last. */
export function withPoint(fields: Fields, { xFt, yFt }: Point): Fields {
  const no = (rowsOf(fields).at(-1) ?? 0) + 1;
  if (no > MAX_ROWS) return fields;
  return {
    ...fields,
    [`p.${no}.along`]: String(yFt),
    [`p.${no}.off`]: String(Math.abs(xFt)),
    [`p.${no}.side`]: xFt < 0 ? "left" : "right",
  };
}

/** A form without its last point. */
export function withoutLast(fields: Fields): Fields {
  const no = rowsOf(fields).at(-1);
  return no === undefined ? fields : Object.fromEntries(Object.entries(fields).filter(([name]) => !name.startsWith(`p.${no}.`)));
}

/** A row as an offset from the baseline; what cannot be read stays as it was typed. */
export function offsetIn(fields: Fields, no: number) {
  const along = typed(fields[`p.${no}.along`], "ft");
  const off = typed(fields[`p.${no}.off`], "ft") ?? 0;
  return { alongFt: along ?? "", offFt: typeof off === "number" && fields[`p.${no}.side`] === "left" ? -Math.abs(off) + 0 : off };
}

/** Points as an address carries them, and back: "12,8;90,-15", along before off. */
export const pointsText = (points: readonly Point[]): string =>
  points
    .map(offsetOf)
    .map(({ alongFt, offFt }) => `${alongFt},${offFt}`)
    .join(";");
export const pointsIn = (text: string | undefined): Point[] =>
  (text ?? "")
    .split(";")
    .slice(0, MAX_ROWS)
    .flatMap((pair) => {
      const [along, off, ...more] = pair.split(",").map(Number);
      return pair !== "" && more.length === 0 && isPlace(along) && isPlace(off) ? [{ xFt: off, yFt: along }] : [];
    });
const isPlace = (n: number | undefined): n is number => n !== undefined && Number.isFinite(n) && Math.abs(n) <= SITE_LIMITS.maxFt;
