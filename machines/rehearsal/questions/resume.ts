import type { PhaseId } from "../../install/step.ts";
import { choice, type Maker, type Shown, type Skills, worded } from "./question.ts";

/** Where going on starts again after making safe. Slips: where it was left, the call after, the phase's first. */
const resume =
  (phase: PhaseId, isIt: (id: string) => boolean): Maker =>
  ({ script }, random) => {
    const { steps } = script;
    const there = steps.filter((s) => s.phase === phase && isIt(s.id));
    if (there.length === 0) return null;
    const left = random.pick(there);
    const i = steps.indexOf(left);
    const right = steps.find((s) => s.id === (left.resumeFrom ?? left.id))!;
    const near = [left, steps[i + 1], steps[i - 1], steps.find((s) => s.phase === phase), steps[i + 2], steps[i - 2]];
    const shown = near.filter((s) => s !== undefined).map((s): Shown => ({ is: "call", ...worded(s) }));
    const made = choice(random, { is: "call", ...worded(right) }, shown);
    return made && { ask: "resume", about: worded(left), ...made, because: worded(right) };
  };

export const RESUMES: Skills = {
  "resume.cloth": ["sectionsJoined", resume("sectionsJoined", (id) => id.startsWith("lay.") || id === "damage")],
  "resume.perimeter": ["perimeterRaised", resume("perimeterRaised", (id) => /^raise\.[A-D]{2}$/.test(id))],
  "resume.lift": ["interiorRaised", resume("interiorRaised", (id) => id.startsWith("lift."))],
  "resume.watch": ["standing", resume("standing", (id) => id === "watch.end")],
};
