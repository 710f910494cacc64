import type { Role } from "../../install/brief.ts";
import { DRIVERS } from "../../install/crew.ts";
import { COMPETENT, CREW } from "../../install/gates.ts";
import { mayAsk } from "../../install/rights.ts";
import { ROLES } from "../../install/roles.ts";
import type { PhaseId } from "../../install/step.ts";
import { choice, type Maker, type Shown, type Skills, worded } from "./question.ts";

const SETS: readonly (readonly Role[])[] = [COMPETENT, CREW, DRIVERS, ["lead"], ROLES, [...CREW, "manager"]];
const roles = (list: readonly Role[]): Shown => ({ is: "roles", roles: ROLES.filter((role) => list.includes(role)) });

/** Who may answer a gate of a phase. Slips: the whole crew, those who drive, the lead alone, anybody. */
const answers =
  (phase: PhaseId): Maker =>
  ({ script }, random) => {
    const asked = script.steps.filter((s) => s.phase === phase && s.gate !== null);
    if (asked.length === 0) return null;
    const step = random.pick(asked);
    const made = choice(random, roles(step.gate!.roles), random.shuffle(SETS).map(roles));
    return made && { ask: "who.answers", about: worded(step), ...made, because: null };
  };
/** Who may ask for something. */
const asks =
  (type: string): Maker =>
  (_, random) => {
    const made = choice(random, roles(mayAsk(type)), random.shuffle(SETS).map(roles));
    return made && { ask: `who.${type}`, ...made, because: null };
  };

export const WHO: Skills = {
  "who.next": ["utilitiesMarked", asks("next")],
  "who.hold": ["utilitiesMarked", asks("hold")],
  "who.carryOn": ["perimeterRaised", asks("carryOn")],
  "who.answers.utilitiesMarked": ["utilitiesMarked", answers("utilitiesMarked")],
  "who.answers.inspected": ["inspected", answers("inspected")],
};
