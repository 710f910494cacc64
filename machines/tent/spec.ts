import { createFieldReader, type FieldReader, fieldsOf } from "./reading.ts";
import { readAnchors, readLengths } from "./spec-anchors.ts";
import type { SpecInput } from "./spec-input.ts";
import { readOnSite } from "./spec-on-site.ts";
import { readChanges, readRidge, readRings } from "./spec-poles.ts";
import { readSize } from "./spec-size.ts";
import { SPACING_FT } from "./templates.ts";
import type { SpecProblem, TentSpec } from "./types.ts";

/** Bays between side poles, in feet. Common practice, no source. */
const MIN_SPACING_FT = 1;
const MAX_SPACING_FT = 20;

/**
 * Checks a tent: a spec that can be built, or every problem with it, each with the nearest value that works. Accepts any
 * value at all, because input may come from outside. Lengths in feet, rounded to a millionth.
 *
 * @example checkSpec({ ...spec, spacingFt: 25 }) // { problems: [{ field: "spacingFt", code: "spacingTooWide", value: 25, nearest: 20 }] }
 */
export function checkSpec(input: SpecInput): { readonly spec: TentSpec } | { readonly problems: readonly SpecProblem[] } {
  const read = createFieldReader();
  const fields = fieldsOf(input) as SpecInput;
  const size = readSize(fields, read);
  const spacingFt = readSpacing(fields.spacingFt, read);
  const quarterRings = readRings(fields, size, read);
  const ridge = size && readRidge(fields, size, read);
  const lengths = readLengths(fields, size?.widthFt, read);
  const anchors = readAnchors(fields, read);
  const pattern = size && ridge && quarterRings !== undefined ? { ...size, quarterRings, ridge } : undefined;
  const changes = pattern && readChanges(fields, pattern, read);
  if (!changes || !lengths || spacingFt === undefined) return { problems: read.problems };
  const spec = { ...pattern, spacingFt, ...changes, ...lengths, anchors };
  const onSite = readOnSite(fields, spec, read);
  return read.problems.length > 0 ? { problems: read.problems } : { spec: { ...spec, ...onSite } };
}

function readSpacing(value: unknown, read: FieldReader): number | undefined {
  const code = typeof value === "number" && value > MAX_SPACING_FT ? "spacingTooWide" : "spacingNotPositive";
  return read.withinRange("spacingFt", code, value, { from: MIN_SPACING_FT, to: MAX_SPACING_FT, fallback: SPACING_FT });
}
