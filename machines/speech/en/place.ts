import type { Asked } from "../listening.ts";
import { readNumber } from "./numbers.ts";

const SEAM = /^(?:(ridge )?seam(?: at)? ([\w-]+))(?:,? (\w+(?: \w)?) half)?,? (.+)$/i;

const COMPASS = /^(?:north|south|east|west)$/i;

/**
 * Removes the place from the front of an answer: "seam two, north half, tied off". `elsewhere` is true if it names another seam,
 * or another half by its edge, than what is asked is about. Compass points are not in the plan and cannot be checked, so the
 * read-back names the half.
 */
export function stripPlace(said: string, { params }: Pick<Asked, "params">): { readonly rest: string; readonly elsewhere: boolean } {
  const found = SEAM.exec(said);
  if (!found) return { rest: said, elsewhere: false };
  const [, ridge, seam = "", half, rest = ""] = found;
  const named = ridge ? `R-${seam.toUpperCase()}` : `S${readNumber(seam)?.n ?? seam}`;
  const letters = (text: string) => [...text.replaceAll(" ", "").toUpperCase()].sort().join("");
  const otherHalf = half !== undefined && !COMPASS.test(half) && letters(half) !== letters(String(params.toward));
  return { rest, elsewhere: named !== params.seam || otherHalf };
}
