import { wantedParts } from "../install/checks/any-check.ts";
import type { FigureLimit } from "../install/checks/figures.ts";
import type { Check } from "../install/checks/registry.ts";
import type { Gate, Value } from "../install/gates.ts";
import type { JobState } from "../install/state.ts";
import { LENGTHS, lengthFt } from "../site/lengths.ts";
import { type Seeded, seeded } from "./seeded.ts";

type Of<K extends Check["kind"]> = Extract<Check, { kind: K }>;

/** Parts of an inch, a foot, a degree that a crew reads; of a foot, an eighth of an inch. */
const QUARTERS = 4;
const EIGHTHS_OF_A_FOOT = 96;
/** Over a limit that has no other side by so much at most, as a share of it. */
const BEYOND = 0.5;

/** The paper of somebody made up, where only a paper opens a gate. */
const PAPER: Value = { kind: "paper", by: "Pat Example", document: "EX-1204", dated: "2020-01-02" };

/** What is to be seen at a gate where nothing is wrong: the same for the same seed. What was counted before comes to as many again. */
export function orderly(gate: Gate, state: Pick<JobState, "answers">, seed: number): Value {
  const { check } = gate;
  const stream = () => seeded(seed, "orderly", gate.id);
  switch (check.kind) {
    case "yesNo":
      return { kind: "yesNo", yes: check.good };
    case "count":
      return { kind: "count", n: countIn(check, stream()) };
    case "sameCount":
      return { kind: "count", n: countedAt(check.as, state) };
    case "measure":
      return { kind: "measure", unit: check.unit, n: figureIn(check, check.unit, stream()) };
    case "lengths":
      return { kind: "lengths", ft: tapedFt(check) };
    case "counts":
      return { kind: "counts", n: wantedParts(check, state) };
    case "figures": {
      const random = stream();
      return { kind: "figures", unit: check.unit, n: byName(check.names, (name) => figureIn(check.want[name]!, check.unit, random)) };
    }
    case "each":
      return { kind: "each", yes: byName(check.names, () => true) };
    case "document":
      return { kind: "document", named: check.expected ?? `EX-${stream().int(1000, 9999)}` };
    default:
      return PAPER;
  }
}

/** How many were counted at a gate; none where nobody was. */
export function countedAt(gate: string, { answers }: Pick<JobState, "answers">): number {
  const value = answers[gate]?.value;
  return value?.kind === "count" ? value.n : 0;
}

/** What a tape says between marks that lie where they are wanted, to the eighth of an inch. */
export const tapedFt = ({ want }: Of<"lengths">) =>
  Object.fromEntries(LENGTHS.map((name) => [name, Math.round(lengthFt(want, name) * EIGHTHS_OF_A_FOOT) / EIGHTHS_OF_A_FOOT]));

const byName = <T>(names: readonly string[], of: (name: string) => T): Readonly<Record<string, T>> =>
  Object.fromEntries(names.map((name) => [name, of(name)]));

const countIn = ({ from, to }: Of<"count">, random: Seeded): number => random.int(from, Math.min(to ?? from + 1, from + 1));

/** Within a limit, to a quarter; a gust that is agreed on is the limit itself. */
function figureIn({ from, to }: FigureLimit, unit: string, random: Seeded): number {
  if (unit === "count") return from ?? to ?? 0;
  if (unit === "mph") return to ?? from ?? 0;
  const low = from ?? 0;
  const high = to ?? low * (1 + BEYOND) + 1;
  const [first, last] = [Math.ceil(low * QUARTERS), Math.floor(high * QUARTERS)];
  return first > last ? low : random.int(first, first + Math.floor((last - first) * 0.75)) / QUARTERS;
}
