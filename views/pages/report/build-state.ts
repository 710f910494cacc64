import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import type { Brief, Role } from "../../../machines/install/brief.ts";
import type { Instant } from "../../../machines/install/ids.ts";
import { PHASES } from "../../../machines/install/step.ts";
import { effectiveCommandBy } from "../../../machines/record/effective-command.ts";
import { lookupIn } from "../../../machines/record/entries.ts";
import type { CommandEntry } from "../../../machines/record/entry.ts";
import { FLAGS, foldAll } from "../../../machines/record/findings.ts";
import { overseeAll } from "../../../machines/record/oversight/oversight.ts";
import { commitmentsIn } from "../../../machines/record/people.ts";
import { groundAround } from "../../drawing/site/ground-around.ts";
import type { Words } from "../../text/words.ts";
import { cardOf } from "../findings/card-state.ts";
import { photosOf } from "../photos/build-state.ts";
import type { Digests } from "../proof/state.ts";
import { kitOf, timesOf } from "../record/build-state.ts";
import { placeName } from "../record/lines.ts";
import { factGroups } from "./facts.ts";
import { gatesOf, inForce, type Telling } from "./gates.ts";
import type { FindingShown, ReadingShown, ReportPerson, ReportState, Word } from "./state.ts";

/** A job's report as it stands. Entries that nobody can vouch for are not among those it is given. `house` is the stream's last entry. */
export function buildReport(live: LiveJob, house: Digests["house"], words: Words): ReportState {
  const { entries, names, readOnly, now } = live;
  const frozen = inForce(live);
  const { brief, plan } = frozen;
  const { fold, each } = foldAll(entries);
  const last = entries.at(-1)!;
  const wordOf = ({ command, no, wall }: CommandEntry): Word => ({
    who: names[command.by] ?? command.by,
    time: words.when.dayAndClock(brief.zone, wall),
    no,
  });
  const telling: Telling = { live, words, wordOf };
  const reached = new Set(PHASES.slice(0, fold.phase === "closed" ? PHASES.length : reachedIn(live)));
  return {
    job: fold.job,
    title: brief.title,
    size: words.page.size(plan.widthFt, plan.lengthFt),
    rehearsal: fold.rehearsal,
    zone: brief.zone,
    opened: words.when.second(brief.zone, fold.openedAt),
    last: words.when.second(brief.zone, fold.lastWall),
    made: words.when.second(brief.zone, now.wall),
    standsAt: placeName(fold.phase, words),
    problem: readOnly && words.notRecordedText(readOnly),
    entries: entries.length,
    digests: { record: { no: last.entry.no, hash: last.hash }, house },
    facts: factGroups(frozen, words),
    plan,
    site: brief.site,
    around: groundAround(frozen),
    people: peopleOf(live, brief.crew, words),
    gates: gatesOf(telling, each, reached),
    ahead: PHASES.filter((phase) => !reached.has(phase)).map((phase) => placeName(phase, words)),
    readings: readingsOf(telling),
    times: timesOf(fold, words),
    counts: FLAGS.map((flag) => ({ name: words.markName(flag), count: fold.counts[flag] })),
    findings: findingsOf(live, words),
    kit: kitOf(live),
    photos: photosOf(live, words),
  };
}

/** How many phases the job has come to, in order: the farthest that any entry stood in. */
const reachedIn = ({ entries }: LiveJob): number =>
  [...entries].reduce((far, { entry }) => Math.max(far, (PHASES as readonly string[]).indexOf(entry.phase) + 1), 0);

/** Who is on the job, and who was. */
function peopleOf({ entries, names }: LiveJob, crew: Brief["crew"], { report, roleName }: Words): ReportPerson[] {
  const person = (id: string, role: Role | null): ReportPerson => ({
    name: names[id] ?? id,
    role: role === null ? report.wasOn : roleName(role),
    erased: names[id] === undefined,
  });
  const known = new Set(crew.map(({ id }) => id));
  const spoke = [...entries].flatMap(({ entry }) => (entry.kind === "command" ? [entry.command.by] : []));
  const former = new Set([...Object.keys(commitmentsIn(entries)), ...spoke].filter((id) => !known.has(id)));
  return [...crew.map(({ id, role }) => person(id, role)), ...[...former].map((id) => person(id, null))];
}

/** Every reading of wind and weather, when it was taken, by the clock on the wall. */
function readingsOf({ live: { job, entries }, words, wordOf }: Telling): ReadingShown[] {
  const earlier = lookupIn(entries);
  return [...entries].flatMap(({ entry }): ReadingShown[] => {
    if (entry.kind === "opening") return [];
    const command = effectiveCommandBy(entry, earlier);
    if (command.type !== "reading") return [];
    const { reading } = command;
    const takenAt = (at: Instant) => entry.wall - Math.max(0, entry.at - at);
    const place = reading.kind === "wind" ? reading.place : null;
    return [
      {
        ...wordOf(entry),
        time: words.when.dayAndClock(job.frozen.brief.zone, takenAt(reading.takenAt)),
        text: words.report.reading(words.intentText({ type: "reading", reading }), place),
        refused: "refused" in entry.outcome,
      },
    ];
  });
}

/** What a manager should look at, in order, in the words of the findings' own page. A rehearsal has none. */
function findingsOf({ job, entries, names }: LiveJob, words: Words): FindingShown[] {
  const { title, zone } = job.frozen.brief;
  const of = { job: entries.at(0)!.entry.job, title, zone, names, state: "open", followUps: [] } as const;
  return overseeAll(entries).findings.map((finding) => {
    const card = cardOf({ ...of, finding }, words);
    return { title: card.title, what: card.what, entries: words.report.inEntries(finding.entries) };
  });
}
