import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { ballastOf } from "../../../machines/install/ballast.ts";
import { wantedParts } from "../../../machines/install/checks/any-check.ts";
import { currentStep, type Job, questionAt } from "../../../machines/install/job.ts";
import { truckLoadOf } from "../../../machines/install/truck-load.ts";
import { KIT_BACK, KIT_OUT, type KitRow, kitCounts } from "../../../machines/record/kit-counts.ts";
import { isTentPart, type LoadLine, loadingOrder, weightOf } from "../../../machines/tent/load.ts";
import { sayText } from "../../text/replies.ts";
import type { Words } from "../../text/words.ts";
import type { LineIs, TruckLine, TruckState, Way } from "./state.ts";

/** The loading list of a job as it stands: what goes along, and what was counted onto the truck and back. */
export function buildTruckState({ job, entries, readOnly }: LiveJob, words: Words): TruckState {
  const { brief, plan, limits, script } = job.frozen;
  const asked = readOnly === null ? askedNow(job) : null;
  const rows = kitCounts(script, job.snapshot.context.answers);
  const way: Way = asked?.id === KIT_BACK || (asked === null && rows.some(({ back }) => back !== null)) ? "back" : "out";
  const load = truckLoadOf(brief, plan, limits);
  const lines = loadingOrder(rows.length > 0 ? rows : load.map(uncounted)).map((row, i) => lineOf(row, i + 1, load, way, asked));
  const count = (is: LineIs) => lines.filter((line) => line.is === is).length;
  return {
    job: entries.at(0)!.entry.job,
    title: brief.title,
    size: words.page.size(plan.widthFt, plan.lengthFt),
    rehearsal: brief.rehearsal === true,
    revision: job.snapshot.context.revision,
    way,
    gate: asked?.id ?? null,
    readOnly: asked === null ? (readOnly ? words.notRecordedText(readOnly) : whenAsked(job, words)) : null,
    lines,
    progress: { of: lines.length, open: count("open"), all: count("all"), short: count("short"), over: count("over") },
    weight: weightOf(lines.filter((line) => line.weighed)),
    ballast: ballastOf(brief, plan),
    record: { no: entries.at(-1)!.entry.no, hash: entries.at(-1)!.hash },
  };
}

type Asked = { readonly id: string; readonly wanted: Readonly<Record<string, number>> };

/** What the guide asks to be counted: at its own call, and wherever it is asked again. `null` where it asks for something else. */
function askedNow(job: Job): Asked | null {
  const again = questionAt(job, job.snapshot.context.lastAt)?.gate;
  const gate = [currentStep(job)?.gate, again].find((g) => g?.id === KIT_OUT || g?.id === KIT_BACK);
  if (!gate) return null;
  return { id: gate.id, wanted: wantedParts(gate.check, job.snapshot.context) };
}

/** The script's figure stands over one that is worked out again: an open job keeps the list it was opened with. */
function lineOf(row: KitRow, no: number, load: readonly LoadLine[], way: Way, asked: Asked | null): TruckLine {
  const { item, listed, out, back, difference } = row;
  const { need = 0, share = 0, shareBy = "usual", unitLb = null } = load.find((line) => line.item === item) ?? {};
  const wanted = asked?.wanted[item] ?? (way === "back" ? (out ?? listed) : listed);
  const counted = way === "back" ? back : out;
  return {
    no,
    item,
    need,
    spares: listed - need,
    count: listed,
    share,
    shareBy,
    unitLb,
    lb: unitLb === null ? null : unitLb * listed,
    weighed: isTentPart(item) || unitLb !== null,
    workedOut: !isTentPart(item) && unitLb !== null,
    loaded: out,
    back,
    difference,
    wanted,
    counted,
    is: counted === null ? "open" : counted < wanted ? "short" : counted > wanted ? "over" : "all",
    asked: asked?.wanted[item] !== undefined,
  };
}

const uncounted = ({ item, count }: LoadLine): KitRow => ({ item, listed: count, out: null, back: null, difference: null });

/** At which calls the list is ticked, for a guide that stands somewhere else. */
function whenAsked({ frozen }: Job, words: Words): string {
  const { truck } = words;
  const at = (id: string) => frozen.script.steps.findIndex((s) => s.gate?.id === id);
  const [out, back] = [at(KIT_OUT), at(KIT_BACK)];
  if (out < 0 || back < 0) return truck.neverTicked;
  const say = (index: number) => {
    const step = frozen.script.steps[index]!;
    return sayText(step, words);
  };
  return truck.tickedAt({ no: out + 1, say: say(out) }, { no: back + 1, say: say(back) });
}
