import { foldName } from "../../../machines/install/person-name.ts";
import { warned, weatherAt } from "../../../machines/install/weather.ts";
import { FLAGS, type Flag, type Fold, MAKING_SAFE } from "../../../machines/record/findings.ts";
import type { LastWord } from "../../../machines/record/glance.ts";
import { thunderUntil } from "../../parts/thunder-elsewhere.tsx";
import { dateFormats } from "../../text/date-formats.ts";
import type { Words } from "../../text/words.ts";
import { placeName } from "../record/lines.ts";
import type { HomeState, ListedJob } from "./state.ts";

type Names = Readonly<Record<string, string>>;
/** What is kept of a job; its fold is null where its entries cannot be read, and then it is not listed. */
type Kept = { readonly job: string; readonly entries: number; readonly fold: Fold | null };
/** What the list is made of besides the words: all jobs, newest first, who is called what on each, and the wall clock. */
type Known = { readonly kept: readonly Kept[]; readonly names: ReadonlyMap<string, Names>; readonly wall: number };

/** The longest that is looked for; what is longer is cut. */
export const MAX_QUERY = 80;

/**
 * The jobs that are looked for: those of today first, in each case the newest first. Every word of `q` has to be in a job's
 * title, size, place, lead or phase, however it is written.
 */
export function buildHome({ kept, names, wall }: Known, asked: string, words: Words): HomeState {
  const q = asked.trim().slice(0, MAX_QUERY);
  const wanted = foldName(q).split(" ");
  const jobs = kept
    .flatMap(({ job, entries, fold }) => (fold ? [listed({ fold, entries, names: names.get(job) ?? {}, wall }, words)] : []))
    .filter((job) => wanted.every((word) => searched(job).includes(word)));
  return { q, jobs: [...jobs.filter((job) => job.today), ...jobs.filter((job) => !job.today)] };
}

const searched = ({ title, size, address, lead, toward }: ListedJob): string => foldName([title, size, address, lead, toward].join(" "));

type One = { readonly fold: Fold; readonly entries: number; readonly names: Names; readonly wall: number };

function listed({ fold, entries, names, wall }: One, words: Words): ListedJob {
  const { glance, zone, lastWall, counts, phase } = fold;
  const name = (id: string) => names[id] ?? id;
  const day = dayIn(zone);
  const today = day(lastWall) === day(wall);
  const marks = GRAVEST_FIRST.flatMap((mark) => (counts[mark] > 0 ? [{ mark, name: words.markName(mark), count: counts[mark] }] : []));
  return {
    id: fold.job,
    title: fold.title,
    size: words.page.size(fold.widthFt, fold.lengthFt),
    address: glance.address,
    phase,
    phaseName: placeName(phase, words),
    toward: towardText(phase, words),
    entries,
    rehearsal: fold.rehearsal,
    today,
    lead: glance.lead === null ? null : name(glance.lead),
    weather: phase === "closed" ? null : weatherOf(fold, wall, words),
    last: {
      at: lastWall,
      clock: clockOf(lastWall, { zone, wall }, words),
      by: glance.lastWord && name(glance.lastWord.by),
      said: saidOf(glance.lastWord, words),
    },
    hurt: glance.hurt,
    held: fold.worked.held,
    findings: marks.reduce((sum, { count }) => sum + count, 0),
    marks,
    mismatch: fold.mismatch,
  };
}

/** What could hurt somebody, before what only took longer. */
const GRAVEST_FIRST: readonly Flag[] = [...FLAGS].sort((a, b) => graveness(a) - graveness(b));
function graveness(mark: Flag): number {
  return ["loosened", "takenBack", "paper", "waived", "outOfLimit", "amended", "clockJumped", "wentBack", "refused"].indexOf(mark);
}

function towardText(phase: string, { guide, phaseName }: Words): string {
  if (phase === MAKING_SAFE) return guide.makingSafe;
  return phase === "closed" ? phaseName(phase) : guide.toward(phase, phaseName(phase));
}

/** By the wall clock, which is all that a list has; where that went back, a reading is of an unknown age. */
function weatherOf(fold: Fold, wall: number, words: Words): ListedJob["weather"] {
  const { glance, zone, lastAt, lastWall } = fold;
  const state = { ...glance.weather, lastAt };
  const aheadMs = lastWall - lastAt;
  const at = wall - aheadMs;
  const { wind } = state;
  const is = weatherAt(state, at);
  const lightningUntil = thunderUntil(fold, wall);
  const readAt = wind && wind.takenAt + aheadMs;
  return {
    is,
    words: words.weatherListed({ is, zone, wind, stops: { lightningUntil, warning: warned(state) } }),
    reading: wind && readAt !== null ? words.readingListed(clockOf(readAt, { zone, wall }, words), wind) : null,
    readAt,
  };
}

function saidOf(word: LastWord | null, { home, saidText }: Words): string {
  if (word === null) return home.opened;
  const said = word.heard === null ? saidText(word.gist) : home.heard(word.heard);
  return word.refused ? home.refused(said) : said;
}

/** A moment by the site's clock; with its day where that is another one. */
function clockOf(at: number, { zone, wall }: { zone: string; wall: number }, { when }: Words): string {
  const day = dayIn(zone);
  return day(at) === day(wall) ? when.clock(zone, at) : when.dayAndClock(zone, at);
}

const date = dateFormats("en", { day: { year: "numeric", month: "numeric", day: "numeric" } });
const dayIn = (zone: string) => (at: number) => date("day", zone, at);
