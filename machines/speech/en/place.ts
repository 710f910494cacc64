import type { Step } from "../../install/step.ts";
import { readNumber } from "./numbers.ts";

const SEAM = /^(?:(ridge )?seam(?: at)? ([\w-]+))(?:,? (\w+(?: \w)?) half)?,? (.+)$/i;

const COMPASS = /^(?:north|south|east|west)$/i;

/**
 * Takes the place off the front of an answer: "seam two, north half, tied off". A seam's number, or its half by its edge,
 * must be the one that is asked; points of the compass are not in the plan, so the read-back names the half.
 */
export function stripPlace(said: string, step: Step): { readonly rest: string; readonly elsewhere: boolean } {
  const found = SEAM.exec(said);
  if (!found) return { rest: said, elsewhere: false };
  const [, ridge, seam = "", half, rest = ""] = found;
  const named = ridge ? `R-${seam.toUpperCase()}` : `S${readNumber(seam)?.n ?? seam}`;
  const letters = (text: string) => [...text.replaceAll(" ", "").toUpperCase()].sort().join("");
  const otherHalf = half !== undefined && !COMPASS.test(half) && letters(half) !== letters(String(step.params.toward));
  return { rest, elsewhere: named !== step.params.seam || otherHalf };
}
