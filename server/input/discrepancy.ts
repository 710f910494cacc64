import { own } from "../../machines/lookup/own.ts";
import { nearlyEqual } from "../../machines/tent/grid.ts";
import type { SpecInput } from "../../machines/tent/spec-input.ts";
import type { Corner, EdgeName, Point, SpecProblem, TentPlan } from "../../machines/tent/types.ts";
import type { Fields } from "./form.ts";
import { typed } from "./typed.ts";

/** What cloth or site can say otherwise. */
export const DISCREPANCIES = ["rings", "poleMore", "poleFewer", "corner"] as const;
export type Discrepancy = (typeof DISCREPANCIES)[number];
export const isDiscrepancy = (what: string | undefined): what is Discrepancy => DISCREPANCIES.some((o) => o === what);

/** The tent with what was found on the site, not checked yet. What cannot be read stays as it was typed, for `checkSpec` to name. */
export function specWithDiscrepancy(what: Discrepancy, f: Fields, { spec, poles }: Pick<TentPlan, "spec" | "poles">): SpecInput {
  const given = (name: string, unit: "ft" | "in" | "count") => typed(f[name], unit) as number | null;
  switch (what) {
    case "rings":
      return { ...spec, rings: { ...spec.rings, [f.edge as EdgeName]: given("counted", "count") ?? ("" as never) } };
    case "poleMore":
      return { ...spec, add: [...spec.add, { kind: f.kind as "center", xFt: given("across", "ft")!, yFt: given("along", "ft")! }] };
    case "poleFewer": {
      const pole = poles.find((p) => p.id === f.pole);
      const added = pole && spec.add.findIndex((a) => a.kind === pole.kind && nearlyEqual(a.xFt, pole.xFt) && nearlyEqual(a.yFt, pole.yFt));
      if (added !== undefined && added >= 0) return { ...spec, add: spec.add.filter((_, i) => i !== added) };
      return { ...spec, leaveOut: [...spec.leaveOut, f.pole ?? ""] };
    }
    case "corner": {
      const corner = f.corner as Corner;
      const was = own<Point>(spec.shifted ?? {}, corner) ?? { xFt: 0, yFt: 0 };
      const by = (name: string, from: number) => {
        const inches = given(name, "in") ?? 0;
        return typeof inches === "number" ? from + inches / 12 : inches;
      };
      return { ...spec, shifted: { ...spec.shifted, [corner]: { xFt: by("away", was.xFt), yFt: by("toward", was.yFt) } } };
    }
  }
}

/** The field of the page that a problem of the spec stands beside. */
export function fieldOfProblem({ field }: Pick<SpecProblem, "field">): string {
  if (field.startsWith("rings.")) return "counted";
  if (field.startsWith("shifted.")) return field.endsWith("yFt") ? "toward" : "away";
  if (field.startsWith("add[")) return field.endsWith("xFt") ? "across" : field.endsWith("kind") ? "kind" : "along";
  return field === "leaveOut" ? "pole" : field;
}
