import type { CheckKind } from "./check-kind.ts";
import type { PaperValue, UnknownValue } from "./common-values.ts";
import { type ComputedCheck, computed } from "./computed.ts";
import { type CountCheck, type CountValue, count } from "./count.ts";
import { type CountsCheck, type CountsFinding, type CountsValue, counts } from "./counts.ts";
import { type DocumentCheck, type DocumentValue, namedDocument } from "./document.ts";
import { type EachCheck, type EachFinding, type EachValue, each } from "./each.ts";
import { type FiguresCheck, type FiguresFinding, type FiguresValue, figures } from "./figures.ts";
import { type LengthsCheck, type LengthsFinding, type LengthsValue, lengths } from "./lengths.ts";
import { type MeasureCheck, type MeasureValue, measure, type NoneValue } from "./measure.ts";
import { type NotKnownCheck, notKnown } from "./not-known.ts";
import { type PaperOnlyCheck, paperOnly } from "./paper-only.ts";
import { type QuietCheck, quiet } from "./quiet.ts";
import { type SameCountCheck, sameCount } from "./same-count.ts";
import { type WindCheck, wind } from "./wind.ts";
import { type YesNoCheck, type YesNoValue, yesNo } from "./yes-no.ts";

/** The kind of answer that a gate takes, with its limit. */
export type Check =
  | YesNoCheck
  | CountCheck
  | SameCountCheck
  | MeasureCheck
  | LengthsCheck
  | CountsCheck
  | FiguresCheck
  | EachCheck
  | DocumentCheck
  | WindCheck
  | QuietCheck
  | PaperOnlyCheck
  | NotKnownCheck
  | ComputedCheck;

/** An answer. */
export type Value =
  | YesNoValue
  | CountValue
  | MeasureValue
  | NoneValue
  | LengthsValue
  | CountsValue
  | FiguresValue
  | EachValue
  | DocumentValue
  | UnknownValue
  | PaperValue;

/** What an answer comes to, where that is more than its value. */
export type Finding = LengthsFinding | CountsFinding | FiguresFinding | EachFinding;

/** Every kind of check, under its name. */
export const CHECKS = {
  yesNo,
  count,
  sameCount,
  measure,
  lengths,
  counts,
  figures,
  each,
  document: namedDocument,
  wind,
  quiet,
  paperOnly,
  notKnown,
  computed,
} as const satisfies { readonly [K in Check["kind"]]: { readonly kind: K } };

/** The kind of a check, by the check. What reaches it has to be an `ownValue` of that check. */
export const kindOf = (check: Check): CheckKind<Check, Value, Finding> =>
  // Each kind stands under its own name, so it meets its own checks: an index cannot tell TypeScript that.
  CHECKS[check.kind] as unknown as CheckKind<Check, Value, Finding>;

/** A value as one that this kind of check is made for. */
export const ownValue = (check: Check, value: Value | undefined): Value | undefined =>
  value !== undefined && kindOf(check).values.some((form) => form.kind === value.kind) ? value : undefined;
