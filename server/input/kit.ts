import * as v from "valibot";
import { type KitCatalog, type KitNote, ORDER_OF_USE } from "../../machines/tent/load.ts";
import type { KitItem } from "../../machines/tent/types.ts";
import type { Fields } from "./form.ts";
import { saidOf, saysOf, wrongKindOf } from "./issue.ts";
import type { Sentence, Wrong } from "./problem.ts";
import { noFields, recordOf, strict } from "./strict.ts";
import { typed } from "./typed.ts";

/** Limits against slips of the pen: nothing of a tent that one lifts weighs more than 5,000 lb. Common practice, no source. */
const MIN_LB = 0.1;
const MAX_LB = 5000;
/** Kept to a ten-thousandth of a percent and a millionth of a pound. */
const grid = (n: number) => Math.round(n * 1e6) / 1e6 + 0;

const note = strict({
  spare: v.nullish(
    v.pipe(
      v.number(saysOf(({ errors }, given) => errors.spareNotNumber(given))),
      v.check(
        (n) => n >= 0 && n <= 1,
        saysOf(({ errors }, given) => errors.spare(given)),
      ),
      v.transform(grid),
    ),
  ),
  unitLb: v.nullish(
    v.pipe(
      v.number(saysOf(({ errors }, given) => errors.weightNotNumber(given))),
      v.check(
        (n) => n >= MIN_LB && n <= MAX_LB,
        saysOf(({ errors }, given) => errors.weight(MIN_LB, MAX_LB, given)),
      ),
      v.transform(grid),
    ),
  ),
});

/** The yard's notes on the kit: by item the share of spares (0.05 is 5 %) and the weight of one in lb, each where it is known. */
export const kitSchema = recordOf(ORDER_OF_USE, note);

/** The notes that say something, or nothing at all where none does. */
export function kitOf(read: v.InferOutput<typeof kitSchema> | null | undefined): KitCatalog | undefined {
  const told = ORDER_OF_USE.flatMap((item): [KitItem, KitNote][] => {
    const { spare, unitLb } = read?.[item] ?? {};
    const noted = {
      ...(spare === undefined || spare === null ? {} : { spare }),
      ...(unitLb === undefined || unitLb === null ? {} : { unitLb }),
    };
    return Object.keys(noted).length > 0 ? [[item, noted]] : [];
  });
  return told.length > 0 ? (Object.fromEntries(told) as KitCatalog) : undefined;
}

/** Kit notes from outside: what they say, or each field that is wrong, named as in a brief. */
export function readKit(input: unknown): { readonly kit: KitCatalog | undefined } | { readonly problems: Wrong } {
  const read = v.safeParse(v.nullish(kitSchema), input);
  if (read.success) return { kit: kitOf(read.output) };
  const problems = noFields<Sentence>();
  for (const issue of read.issues) problems[`kit.${v.getDotPath(issue) ?? ""}`.replace(/\.$/, "")] ??= saidOf(issue) ?? wrongKindOf(issue);
  return { problems };
}

/** The kit's fields of a form, not checked yet; nothing where none is filled in. Spares are typed in percent. */
export function kitFromForm(f: Fields): unknown {
  const told = ORDER_OF_USE.flatMap((item) => {
    const percent = typed(f[`kit.${item}.spare`]?.replace(/\s*%\s*$/, ""), "count");
    const unitLb = typed(f[`kit.${item}.unitLb`], "lbf");
    const spare = typeof percent === "number" ? grid(percent / 100) : percent;
    return spare === null && unitLb === null
      ? []
      : [[item, { ...(spare === null ? {} : { spare }), ...(unitLb === null ? {} : { unitLb }) }]];
  });
  return told.length > 0 ? Object.fromEntries(told) : undefined;
}

export function kitToForm(kit: KitCatalog | null | undefined): Fields {
  return Object.fromEntries(
    ORDER_OF_USE.flatMap((item) => {
      const { spare, unitLb } = kit?.[item] ?? {};
      return [
        [`kit.${item}.spare`, spare === undefined ? "" : String(percentOf(spare))],
        [`kit.${item}.unitLb`, unitLb === undefined ? "" : String(unitLb)],
      ];
    }),
  );
}

const percentOf = (share: number) => Math.round(share * 1e6) / 1e4;
