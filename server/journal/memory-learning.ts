import { foldName } from "../../machines/install/person-name.ts";
import type { JobId } from "../../machines/record/entry.ts";
import { Changed, compareText } from "./catalog.ts";
import type { KeptCard, KeptRound, Learner, LearnerId, Learning, Rehearsed } from "./learning.ts";

type Known = { readonly learner: Learner; readonly cards: Map<string, KeptCard> };

/** What people learn, for as long as the program lasts; `jobGone` lets go of what is kept of a job that is removed. */
export function memoryLearning(): Learning & { readonly jobGone: (job: JobId) => void } {
  const known = new Map<LearnerId, Known>();
  const rounds = new Map<string, KeptRound>();
  const rehearsals = new Map<JobId, Rehearsed>();
  const called = (name: string) => [...known.values()].find(({ learner }) => learner.folded === foldName(name))?.learner ?? null;
  const dropWhere = <V>(kept: Map<string, V>, is: (value: V) => boolean) => {
    for (const [id, value] of kept) if (is(value)) kept.delete(id);
  };
  return {
    learner: async (name, id) => {
      const before = called(name);
      if (before) return before;
      const learner = { id, name, folded: foldName(name) };
      known.set(id, { learner, cards: new Map() });
      return learner;
    },
    learnerCalled: async (name) => called(name),
    learners: async () => [...known.values()].map(({ learner }) => learner).sort((a, b) => compareText(a.folded, b.folded)),
    forget: async (name) => {
      const learner = called(name)?.id;
      if (learner === undefined) return;
      known.delete(learner);
      dropWhere(rounds, (round) => round.learner === learner);
      dropWhere(rehearsals, (row) => row.learner === learner);
    },
    cards: async (learner) => structuredClone([...(known.get(learner)?.cards.values() ?? [])].sort((a, b) => compareText(a.item, b.item))),
    round: async (id) => structuredClone(rounds.get(id) ?? null),
    lastRound: async (learner, job) =>
      structuredClone(
        [...rounds.values()]
          .filter((round) => round.learner === learner && round.job === job)
          .sort((a, b) => a.at - b.at)
          .at(-1) ?? null,
      ),
    saveRound: async (round, card) => {
      if ((rounds.get(round.id)?.version ?? 0) !== round.version - 1) throw new Changed(round.id);
      rounds.set(round.id, structuredClone(round));
      if (card) known.get(round.learner)?.cards.set(card.item, structuredClone(card));
    },
    startRehearsal: async (row) => void rehearsals.set(row.job, structuredClone(row)),
    endRehearsal: async (job, result) => {
      const row = rehearsals.get(job);
      if (row) rehearsals.set(job, { ...row, over: structuredClone(result) });
    },
    rehearsalsOf: async (learner) => [...rehearsals.values()].filter((row) => row.learner === learner).sort((a, b) => b.at - a.at),
    rehearsalOf: async (job) => rehearsals.get(job) ?? null,
    jobGone: (job) => dropWhere(rounds, (round) => round.job === job),
  };
}
