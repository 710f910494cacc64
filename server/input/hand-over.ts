import type { LiveJob } from "../../machines/conversation/live-job.ts";
import type { Person } from "../../machines/install/brief.ts";
import type { Intent } from "../../machines/install/commands.ts";
import { freeze } from "../../machines/install/freeze.ts";
import { MAY_LEAD, withLead } from "../../machines/install/hand-over.ts";
import { foldName, isPersonId } from "../../machines/install/person-name.ts";
import type { Words } from "../../views/text/words.ts";
import { Problem, type Sentence } from "./problem.ts";

/**
 * The amendment that hands the lead over to somebody, by id or by name. It goes the way of every amendment: a second person
 * agrees. Throws a Problem where that somebody is not on the job, leads it already, or may not lead it.
 */
export function handOverIntent(live: LiveJob, to: string, words: Words): Intent {
  const { frozen } = live.job;
  const person = personCalled(live, to);
  const name = live.names[person.id] ?? person.id;
  if (person.role === "lead") throw refused((w) => w.handOver.isLead(name));
  if (!MAY_LEAD.includes(person.role)) throw refused((w) => w.handOver.mayNot(name, w.roleName(person.role)));
  return { type: "amend", because: words.handOver.because, to: freeze(withLead(frozen.brief, person.id)) };
}

/** By id, by name, or by a part of the name that nobody else on the job has. */
function personCalled({ job, names }: LiveJob, to: string): Person {
  const { crew } = job.frozen.brief;
  const called = ({ id }: Person) => foldName(names[id] ?? id);
  const exactly = crew.filter((p) => (isPersonId(to) ? p.id === to.toLowerCase() : called(p) === foldName(to)));
  const partly = isPersonId(to) ? [] : crew.filter((p) => called(p).split(" ").includes(foldName(to)));
  const [person, ...others] = exactly.length > 0 ? exactly : partly;
  if (person && others.length === 0) return person;
  const known = crew.map(({ id }) => names[id] ?? id).join(", ");
  throw refused((w) => w.errors.who(to, known));
}

const refused = (sentence: Sentence) => new Problem(422, sentence, { to: sentence });
