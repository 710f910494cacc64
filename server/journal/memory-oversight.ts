import type { JobId } from "../../machines/record/entry.ts";
import { type SealedFollowUp, stateOf } from "../../machines/record/follow-up.ts";
import type { Finding } from "../../machines/record/oversight/finding.ts";
import type { Measure } from "../../machines/record/oversight/measure.ts";
import type { OverseenJob } from "../../machines/record/oversight/oversight.ts";
import type { People } from "../../machines/record/people.ts";
import { compareText } from "./catalog.ts";
import { isCalled } from "./finding-filter.ts";
import { type Cursor, type FindingFilter, type FindingId, FollowUpConflict, type KeptFinding, type Oversight } from "./oversight.ts";

/** A job with what was found in it, and the names of its people. */
export type SeenJob = { readonly job: JobId; readonly people: People; readonly overseen: OverseenJob | null };

const within = (day: string, { from, to }: FindingFilter): boolean => (from === null || day >= from) && (to === null || day <= to);
const isOrAny = (wanted: string | null, is: string): boolean => wanted === null || wanted === is;
/** Whether one of these people is called so. */
const isAmong = (name: string | null, ids: readonly (string | null)[], people: People): boolean =>
  name === null || ids.some((id) => id !== null && Object.hasOwn(people, id) && isCalled(people[id]!.name, name));

/** By number of sight: the newest last. */
const compare = (a: Cursor, b: Cursor): number =>
  a.at - b.at || compareText(a.job, b.job) || compareText(a.kind, b.kind) || a.entry - b.entry;
const cursorOf = ({ job, finding: { kind, entry, at } }: KeptFinding): Cursor => ({ job, kind, entry, at });

/** What is looked at over all jobs, for as long as the program lasts. */
export function memoryOversight(jobs: () => readonly SeenJob[]): Oversight {
  const followUps: SealedFollowUp[] = [];
  const about = ({ job, kind, entry }: FindingId) =>
    followUps
      .map(({ entry: said }) => said)
      .filter(({ finding }) => finding.job === job && finding.kind === kind && finding.entry === entry);
  const keptOf = (job: JobId, finding: Finding): KeptFinding => ({ job, finding, state: stateOf(about({ job, ...finding })) });
  const left = (filter: FindingFilter): KeptFinding[] =>
    jobs().flatMap(({ job, people, overseen }) =>
      (overseen?.findings ?? [])
        .map((finding) => keptOf(job, finding))
        .filter(
          ({ finding: { kind, phase, size, day, by, lead }, state }) =>
            isOrAny(filter.kind, kind) &&
            isOrAny(filter.phase, phase) &&
            isOrAny(filter.size, size) &&
            isOrAny(filter.state, state) &&
            within(day, filter) &&
            isAmong(filter.crew, by, people) &&
            isAmong(filter.lead, [lead], people),
        ),
    );
  const isLeft = ({ what, name, size, day, lead }: Measure, people: People, filter: FindingFilter): boolean =>
    (what === "job" || isOrAny(filter.phase, name)) &&
    isOrAny(filter.size, size) &&
    within(day, filter) &&
    isAmong(filter.crew, Object.keys(people), people) &&
    isAmong(filter.lead, [lead], people);

  return {
    findings: async (filter, before, most) =>
      left(filter)
        .filter((found) => before === null || compare(cursorOf(found), before) < 0)
        .sort((a, b) => compare(cursorOf(b), cursorOf(a)))
        .slice(0, most),
    finding: async (id) => {
      const found = jobs()
        .find(({ job }) => job === id.job)
        ?.overseen?.findings.find((f) => f.kind === id.kind && f.entry === id.entry);
      return found ? keptOf(id.job, found) : null;
    },
    tallies: async (filter) => counted(left(filter).map(({ finding: { kind, phase }, state }) => ({ kind, phase, state }))),
    measures: async (filter) =>
      counted(
        jobs().flatMap(({ people, overseen }) =>
          (overseen?.measures ?? []).filter((m) => isLeft(m, people, filter)).map(({ what, name, n }) => ({ what, name, n })),
        ),
      ),
    lastFollowUp: async () => followUps.at(-1) ?? null,
    keyedFollowUp: async (key) => followUps.find(({ entry }) => entry.key === key) ?? null,
    followUps: async (id) => about(id),
    appendFollowUp: async (next) => {
      const { no, prev, key } = next.entry;
      const last = followUps.at(-1);
      const follows = no === followUps.length + 1 && (last ? last.hash === prev : true);
      if (!follows || followUps.some(({ entry }) => entry.key === key)) throw new FollowUpConflict(no);
      followUps.push(next);
    },
  };
}

/** How many of each there are. */
function counted<T extends object>(all: readonly T[]): (T & { readonly count: number })[] {
  const counts = new Map<string, number>();
  for (const one of all) counts.set(JSON.stringify(one), (counts.get(JSON.stringify(one)) ?? 0) + 1);
  return [...counts].map(([one, count]) => ({ ...(JSON.parse(one) as T), count }));
}
