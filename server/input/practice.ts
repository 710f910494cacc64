import { isWithin } from "../../machines/install/bounds.ts";
import { type Practice, SEED_BOUNDS, TROUBLES, WAYS } from "../../machines/install/practice.ts";
import { PHASES, type Script } from "../../machines/install/step.ts";
import { Problem } from "./problem.ts";

type Fields = Readonly<Record<string, string | undefined>>;

/**
 * How somebody wants to rehearse a job, from a form's fields: `way`, `trouble`, `seed`, and in `from` the phase that it begins
 * with. What is left out is the gentlest; a seed that is left out is drawn. Throws a Problem for what is none of these.
 */
export function readPractice(fields: Fields, script: Script, drawn: number): Practice {
  const oneOf = <T extends string>(field: string, among: readonly T[]): T => {
    const text = fields[field];
    if (text === undefined || text === "") return among[0]!;
    const found = among.find((is) => is === text);
    if (!found) throw new Problem(422, (w) => w.rehearsal.noSuch(text, among), { [field]: (w) => w.rehearsal.noSuch(text, among) });
    return found;
  };
  const phase = oneOf("from", PHASES);
  const from = script.steps.find((step) => step.phase === phase)!.id;
  return { way: oneOf("way", WAYS), trouble: oneOf("trouble", TROUBLES), seed: seedIn(fields.seed, drawn), from };
}

function seedIn(text: string | undefined, drawn: number): number {
  const typed = (text ?? "").trim();
  if (typed === "") return drawn;
  const seed = /^\d{1,9}$/.test(typed) ? Number(typed) : Number.NaN;
  if (!isWithin(seed, SEED_BOUNDS))
    throw new Problem(422, (w) => w.rehearsal.noSeed(typed, SEED_BOUNDS), { seed: (w) => w.rehearsal.noSeed(typed, SEED_BOUNDS) });
  return seed;
}

/** A seed from an id of any kind: within its bounds, the same for the same one. */
export function seedFrom(id: string): number {
  let sum = 0;
  for (const letter of id) sum = (sum * 31 + letter.charCodeAt(0)) % SEED_BOUNDS.to;
  return sum + SEED_BOUNDS.from;
}
