import type { Condition, PhaseId, Step } from "../../install/step.ts";
import type { Seeded } from "../seeded.ts";
import { choice, isSame, type Maker, type Shown, type Skills, worded } from "./question.ts";

/** What has to be so before a call is begun. Slips: conditions of work that comes later, gates of phases that come later. */
const before =
  (phase: PhaseId, isIt: (wordsKey: string) => boolean): Maker =>
  (frozen, random: Seeded) => {
    const { steps } = frozen.script;
    const step = steps.find((s) => s.phase === phase && s.work !== null && isIt(s.wordsKey));
    if (!step) return null;
    const over = frozen.script.conditions.filter((c) => c.over.includes(step.work!) && c.notIn !== phase);
    // Of a dormant one nobody hears until something happens, and lightning is over all.
    const needed = over.filter((c) => !c.gate.dormant && c.gate.id !== "thunder");
    // A wind under a higher limit is so, too, where it has to be under a lower one.
    const lowest = Math.min(...over.map(belowOf));
    // What an earlier call asked or needed has to be so, too.
    const at = steps.indexOf(step);
    const wasSaid = (s: Step) => steps.slice(0, at).some((before) => isSame({ is: "call", ...worded(before) }, { is: "call", ...worded(s) })); // biome-ignore format: one line reads best
    const wasNeeded = ({ gate, over: works }: Condition) => steps.slice(0, at).some((s) => s.gate?.id === gate.id || (s.work !== null && works.includes(s.work))); // biome-ignore format: one line reads best
    const elsewhere = frozen.script.conditions.filter((c) => !over.includes(c) && !c.gate.dormant && !isImplied(belowOf(c), lowest) && !wasNeeded(c)); // biome-ignore format: one line reads best
    const phaseEnd = steps.findLastIndex((s) => s.phase === phase);
    const isLast = phaseEnd === steps.length - 1;
    const later = steps
      .slice(isLast ? at + 1 : phaseEnd + 1)
      .filter((s) => s.gate !== null && (isLast || s.phase !== "struck") && !wasSaid(s));
    if (needed.length === 0) return null;
    const right = random.pick(needed);
    const shown = (q: (typeof over)[number] | (typeof later)[number]): Shown => ({ is: "asked", ...worded(q) });
    const [one] = random.shuffle(elsewhere);
    const slips = [...(one ? [one] : []), ...random.shuffle(later), ...random.shuffle(elsewhere)].map(shown);
    const made = choice(random, shown(right), slips, over.map(shown));
    return made && { ask: "before", about: worded(step), ...made, because: worded(right) };
  };

/** The wind that a condition wants it under; none where it is about something else. */
const belowOf = ({ gate: { check } }: Condition): number => (check.kind === "wind" ? check.belowMph : Number.POSITIVE_INFINITY);
const isImplied = (below: number, lowest: number): boolean => Number.isFinite(below) && below >= lowest;

export const BEFORE: Skills = {
  "before.driving": ["anchorsSet", before("anchorsSet", (key) => key === "drive.edge")],
  "before.cloth": ["sectionsJoined", before("sectionsJoined", (key) => key === "lay.piece")],
  "before.raise": ["perimeterRaised", before("perimeterRaised", (key) => key === "raise.firstCorner")],
  "before.under.in": ["interiorRaised", before("interiorRaised", (key) => key === "under.in")],
  "before.use": ["standing", before("standing", (key) => key === "open")],
  "before.ease": ["struck", before("struck", (key) => key === "strike.ease")],
  "before.lower": ["struck", before("struck", (key) => key.startsWith("lower.") || key === "strike.sides.pair")],
};
