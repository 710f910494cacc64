import type { Answer } from "../../machines/install/gates.ts";
import type { Job } from "../../machines/install/job.ts";
import { PAPER } from "../support/answers.ts";
import { PEOPLE } from "./fixtures.ts";
import type { Tent } from "./tent.ts";

type Role = keyof typeof PEOPLE;
type PaperTry = { readonly as: string; readonly role: Role; readonly heardOn?: string };

/** The good paper at a gate, where nobody but its shower has seen it. */
export function shownAt({ snapshot }: Job, gate: string): Answer | null {
  const answer = snapshot.context.answers[gate];
  return answer && JSON.stringify(answer.value) === JSON.stringify(PAPER) && !answer.seen ? answer : null;
}

/** A paper in place of what is asked: shown by who answers, and looked at by those who may and may not. */
export function papersTo(tent: Tent, gate: string, { shown, by }: { readonly shown: Answer | null; readonly by: Role }): PaperTry[] {
  if (!tent.papers.has(gate)) return [{ as: "paper where none is taken, not allowed", role: by }];
  if (!shown)
    return [
      { as: "paper", role: by },
      { as: "paper shown by crew, not allowed", role: "crew" },
    ];
  const [own, other]: [Role, Role] = shown.by === PEOPLE.lead ? ["lead", "deputy"] : ["deputy", "lead"];
  return [
    { as: "paper seen by the one who showed it, not allowed", role: own },
    { as: "paper seen on the phone it was shown on, not allowed", role: other, heardOn: shown.device },
    { as: "paper seen by crew, not allowed", role: "crew" },
    { as: "paper seen by another", role: other },
    { as: "paper seen by a competent person", role: "competent" },
  ];
}
