import { nearlyEqual, toGrid } from "./grid.ts";
import { patternOf, polesOf } from "./poles.ts";
import { clamp, type FieldReader, fieldsOf, listOf } from "./reading.ts";
import { ridgeEndsFt } from "./ridge.ts";
import type { SpecInput } from "./spec-input.ts";
import type { Size } from "./spec-size.ts";
import { MIN_POLE_SPACING_FT, usualRidgePoles, usualRings } from "./templates.ts";
import type { PatternSpec, Point, RidgePattern, TentSpec } from "./types.ts";

/** Rings of quarter poles. Only the tent's sheet knows: where it is silent, ask. */
export function readRings(input: SpecInput, size: Size | undefined, read: FieldReader): 0 | 1 | 2 | undefined {
  const rings = input.quarterRings;
  const known = ([0, 1, 2] as const).find((n) => n === rings);
  if (known !== undefined) return known;
  const given = typeof rings === "number" && Number.isFinite(rings);
  const nearest = given ? clamp(Math.round(rings), 0, 2) : size ? usualRings(size.widthFt) : null;
  return read.refuse("quarterRings", "ringsNotKnown", rings, nearest);
}

/** Where the center poles stand: at the seams, for a one-piece top evenly, unless it is given. */
export function readRidge(input: SpecInput, size: Size, read: FieldReader): RidgePattern | undefined {
  const usual = usualRidgePoles(size.widthFt, size.lengthFt);
  if (input.ridge === undefined || input.ridge === null) return size.onePiece ? { kind: "evenly", count: usual } : { kind: "atSeams" };
  const { kind, count, fromNearEndFt } = fieldsOf(input.ridge);
  if (kind === "atSeams" && !size.onePiece) return { kind };
  if (kind === "given") return readGiven(listOf(fromNearEndFt), size, read);
  if (kind !== "evenly") return read.refuse("ridge", "ridgeOutside", kind ?? input.ridge, size.onePiece ? "evenly" : "atSeams");
  const most = Math.floor((size.lengthFt - size.widthFt) / MIN_POLE_SPACING_FT) + 1;
  const n = read.withinRange("ridge.count", "ridgeOutside", count, { from: 1, to: most, whole: true, fallback: usual });
  return n === undefined ? undefined : { kind, count: n };
}

function readGiven(given: readonly unknown[], size: Size, read: FieldReader): RidgePattern | undefined {
  const { fromFt, toFt } = ridgeEndsFt(size);
  if (given.length === 0) return read.refuse("ridge.fromNearEndFt", "noCenterPole", "", [toGrid((fromFt + toFt) / 2)]);
  const problems = read.problems.length;
  const places = given.map((ft, i) => read.withinRange(`ridge.fromNearEndFt[${i}]`, "ridgeOutside", ft, { from: fromFt, to: toFt }));
  if (read.problems.length > problems) return undefined;
  const inOrder = (places as number[]).sort((a, b) => a - b);
  const apart = inOrder.filter(
    (ft, i) => i === 0 || ft - inOrder[i - 1]! >= MIN_POLE_SPACING_FT || nearlyEqual(ft - inOrder[i - 1]!, MIN_POLE_SPACING_FT),
  );
  if (apart.length < inOrder.length) return read.refuse("ridge.fromNearEndFt", "poleTwice", inOrder.join(", "), apart);
  return { kind: "given", fromNearEndFt: inOrder };
}

/** Poles of the pattern that are left out, and others that are added; checked against the pattern itself. */
export function readChanges(input: SpecInput, pattern: PatternSpec, read: FieldReader): Pick<TentSpec, "leaveOut" | "add"> {
  const ids = patternOf(pattern).poles.map((p) => p.id);
  for (const field of ["leaveOut", "add"] as const) {
    if (!Array.isArray(input[field] ?? [])) read.refuse(field, "poleUnknown", input[field]);
  }
  const leaveOut = [...new Set(listOf(input.leaveOut))].filter((id): id is string => {
    if (typeof id === "string" && ids.includes(id)) return true;
    read.refuse("leaveOut", "poleUnknown", id, nearestId(id, ids));
    return false;
  });
  const standing: Point[] = [...polesOf({ ...pattern, leaveOut, add: [] }).poles];
  const add = listOf(input.add).flatMap((value, i) => {
    const pole = readAdded(value, `add[${i}]`, standing, pattern, read);
    if (pole) standing.push(pole);
    return pole ? [pole] : [];
  });
  const changed = { leaveOut, add };
  const centers = polesOf({ ...pattern, ...changed }).poles.filter((p) => p.kind === "center").length;
  if (centers === 0) read.refuse("leaveOut", "noCenterPole", leaveOut.join(", "));
  return changed;
}

type Added = TentSpec["add"][number];

function readAdded(
  value: unknown,
  field: string,
  standing: readonly Point[],
  { widthFt, lengthFt }: PatternSpec,
  read: FieldReader,
): Added | undefined {
  const pole = fieldsOf(value);
  const xFt = read.finiteNumber(`${field}.xFt`, pole.xFt);
  const yFt = read.finiteNumber(`${field}.yFt`, pole.yFt);
  const kind = (["center", "quarter"] as const).find((k) => k === pole.kind);
  if (kind === undefined) read.refuse(`${field}.kind`, "poleUnknown", pole.kind, "quarter");
  if (xFt === undefined || yFt === undefined || kind === undefined) return undefined;
  if (xFt <= 0 || yFt <= 0 || xFt >= widthFt || yFt >= lengthFt) {
    const inside = [
      clamp(xFt, MIN_POLE_SPACING_FT, widthFt - MIN_POLE_SPACING_FT),
      clamp(yFt, MIN_POLE_SPACING_FT, lengthFt - MIN_POLE_SPACING_FT),
    ];
    return read.refuse(field, "poleOutside", `${xFt}, ${yFt}`, inside);
  }
  if (standing.some((p) => (p.xFt - xFt) ** 2 + (p.yFt - yFt) ** 2 < MIN_POLE_SPACING_FT ** 2)) {
    return read.refuse(field, "poleTwice", `${xFt}, ${yFt}`);
  }
  return { kind, xFt, yFt };
}

/** The pole of the same kind with the nearest number; if the kind has no pole, the first of the pattern. */
function nearestId(id: unknown, ids: readonly string[]): string | null {
  const [letter, number] = typeof id === "string" ? [id.charAt(0).toUpperCase(), Number(id.slice(1))] : ["", 0];
  const alike = ids.filter((other) => other.startsWith(letter));
  const offBy = (other: string) => Math.abs(Number(other.slice(1)) - (Number.isFinite(number) ? number : 0));
  return [...(alike.length > 0 ? alike : ids)].sort((a, b) => offBy(a) - offBy(b))[0] ?? null;
}
