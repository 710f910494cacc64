import type { Step } from "../install/script.ts";
import { readNumber } from "./numbers.ts";

const SEAM = /^(?:(ridge )?seam(?: at)? ([\w-]+))(?:,? (\w+(?: \w)?) half)?,? (.+)$/i;

/**
 * Takes the place off the front of an answer: "seam two, north half, tied off". A seam's number, or its half by its edge,
 * must be the one that is asked; points of the compass are not in the plan, so the read-back names the half.
 */
export function placed(said: string, step: Step): { readonly rest: string; readonly elsewhere: boolean } {
  const found = SEAM.exec(said);
  if (!found) return { rest: said, elsewhere: false };
  const [, ridge, seam = "", half, rest = ""] = found;
  const named = ridge ? `R-${seam.toUpperCase()}` : `S${readNumber(seam)?.n ?? seam}`;
  const edge = half?.replaceAll(" ", "").toUpperCase();
  const otherHalf = edge !== undefined && /^(?:AB|BC|CD|DA)$/.test(edge) && edge !== step.of.toward;
  return { rest, elsewhere: named !== step.of.seam || otherHalf };
}
