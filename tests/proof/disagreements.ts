import type { Brief } from "../../machines/install/brief.ts";
import type { Condition, Frozen } from "../../machines/install/step.ts";
import { conditionsFor, tableFor } from "./gates.table.ts";
import { workByHand } from "./tent.ts";

/** Every gate, condition and kind of work that the script and the tables do not agree on. */
export function disagreements(frozen: Frozen, brief: Brief = frozen.brief): string[] {
  const all = [...frozen.script.steps, ...Object.values(frozen.script.escapes).flat()];
  const gates = new Map(all.flatMap((s) => (s.gate ? [[s.gate.id, s] as const] : [])));
  const rows = tableFor(brief, frozen.plan);
  const wrong = [...rows.values()].flatMap((r) => {
    const step = gates.get(r.gate);
    if (!step?.gate) return [`${r.gate} is not in the script`];
    if (step.phase !== r.phase) return [`${r.gate} stands in ${step.phase}, not in ${r.phase}`];
    if (step.gate.hard !== r.hard) return [`${r.gate} is ${step.gate.hard ? "hard" : "soft"}`];
    if (step.gate.secondPersonTo !== (r.notBy ?? null)) return [`${r.gate} is not checked by somebody other than ${r.notBy ?? "nobody"}`];
    return [];
  });
  const surplus = [...gates.keys()].filter((id) => !rows.has(id)).map((id) => `${id} is not in the table`);
  const work = all
    .filter((s) => s.work !== workByHand(s.id))
    .map((s) => `${s.id} is ${s.work ?? "no work"}, not ${workByHand(s.id) ?? "none"}`);
  return [...wrong, ...surplus, ...work, ...conditionsWrong(frozen.script.conditions, brief)];
}

function conditionsWrong(conditions: readonly Condition[], brief: Brief): string[] {
  const same = conditionsFor(brief).map(({ gate, over, notIn, goodForMin, session, below }) => {
    const is = conditions.find((c) => c.gate.id === gate);
    if (!is) return `the condition ${gate} is missing`;
    const { check, validForS, hard, session: lapses } = is.gate;
    const told = [
      [[...is.over].sort().join(), [...over].sort().join()],
      [is.notIn, notIn],
      [hard, true],
      [validForS, goodForMin === undefined ? null : goodForMin * 60],
      [lapses, session === true],
      [check.kind === "wind" ? check.belowMph : undefined, below],
    ];
    const off = told.find(([has, wants]) => has !== wants);
    return off ? `the condition ${gate} has ${off[0]}, not ${off[1]}` : null;
  });
  const surplus = conditions
    .filter((c) => !conditionsFor(brief).some((row) => row.gate === c.gate.id))
    .map((c) => `the condition ${c.gate.id} is not in the table`);
  return [...same.filter((trouble) => trouble !== null), ...surplus];
}
