import type { Command } from "../install/commands.ts";
import { decide } from "../install/decide.ts";
import type { Instant, StepId } from "../install/ids.ts";
import { openJob } from "../install/job.ts";
import { type Entries, lookupIn } from "../record/entries.ts";
import { aboutOf } from "./about.ts";
import { judgeMove, type Verdict } from "./judge-move.ts";
import { type Move, rightMove } from "./right-move.ts";
import { isPlayed, type Scene } from "./scene.ts";
import { lineOf } from "./site.ts";
import type { Stand } from "./stand.ts";
import { storyOf } from "./story.ts";
import { untold } from "./untold.ts";
import { UNTOUCHED, worldAfter } from "./world.ts";

/** Something that the lead said, what is to be said of it, and what was right there; `null` where that is what was said. */
export type SaidThen = {
  readonly no: number;
  readonly at: Instant;
  readonly step: StepId;
  readonly command: Command;
  readonly verdict: Verdict;
  readonly right: Move | null;
};
/** One thing that happened, or something that was said where nothing had: what was said about it, and how it went. */
export type Moment = {
  readonly scene: Scene | null;
  readonly at: Instant;
  readonly step: StepId;
  readonly said: readonly SaidThen[];
  /** `left`: it was still untold when the rehearsal ended. */
  readonly went: "well" | "cautious" | "caught" | "untrue" | "unsafe" | "left";
};
export type LookBack = {
  readonly moments: readonly Moment[];
  /** Of what happened, how much of it went without anything unsafe. */
  readonly score: { readonly of: number; readonly safe: number; readonly unsafe: number; readonly untrue: number; readonly caught: number };
  /** Whether all of a raise was gone through, from its first call to a tent that is handed over. */
  readonly whole: boolean;
};

/**
 * A rehearsal gone over from its record: every moment, with what the lead said judged on the site as it was then. Plays the
 * record again, so it takes as long as that. Throws where its first entry is no opening.
 */
export function lookBack(entries: Entries): LookBack {
  const opening = entries.at(0)?.entry;
  if (opening?.kind !== "opening") throw new Error("the record of a rehearsal begins with no opening");
  const { opened: frozen } = opening;
  const { practice } = frozen.brief;
  const scenes = storyOf(frozen);
  const earlier = lookupIn(entries);
  let stand: Stand = { job: openJob(frozen, opening.at), world: UNTOUCHED, scenes, seed: practice?.seed ?? 0 };
  const said: (SaidThen & { readonly about: readonly string[] })[] = [];
  const places = new Map<string, StepId>();
  let stood = false;
  for (const { entry } of entries) {
    const line = lineOf(entry, earlier);
    const before = stand;
    if (entry.kind === "command") stand = { ...stand, job: decide(stand.job, entry.command)[0] };
    stand = { ...stand, world: worldAfter(before.world, scenes, line) };
    for (const id of newIn(before.world.begun, stand.world.begun)) places.set(id, entry.step);
    stood ||= entry.phase === "standing";
    if (entry.kind !== "command" || line.command === null || isPlayed(entry.command)) continue;
    const verdict = judgeMove(before, line.command, entry.outcome);
    const about = aboutOf(before, stand.world, line.command, verdict);
    if (about.length === 0 && verdict.is === "safe") continue;
    const right = verdict.is === "safe" ? null : rightMove(before, entry.at);
    said.push({
      no: entry.no,
      at: entry.at,
      step: earlier(entry.no - 1)?.step ?? entry.step,
      command: line.command,
      verdict,
      right,
      about,
    });
  }
  const happened = scenes.flatMap((scene): Moment[] => {
    const at = stand.world.begun[scene.id];
    if (at === undefined) return [];
    return [
      momentOf(
        scene,
        { at, step: places.get(scene.id)! },
        upToSettled(
          scene,
          said.filter(({ about }) => about.includes(scene.id)),
        ),
      ),
    ];
  });
  const hidden = untold(stand, entries.at(-1)!.entry.at).map(({ scene }) => scene);
  const faced = happened.map((moment) =>
    moment.went !== "unsafe" && hidden.some((scene) => scene === moment.scene) ? { ...moment, went: "left" as const } : moment,
  );
  const besides = said.flatMap((one) => (one.about.length === 0 ? [momentOf(null, one, [one])] : []));
  return {
    moments: [...faced, ...besides].sort((a, b) => a.at - b.at),
    score: {
      of: faced.filter(({ went }) => went !== "left").length,
      safe: faced.filter(({ went }) => went !== "left" && went !== "unsafe" && went !== "untrue").length,
      ...counted(said),
    },
    whole: practice?.from === frozen.script.steps[0]!.id && (stood || stand.job.snapshot.matches({ procedure: "closed" })),
  };
}

/** Of what was held for, what was said until it was carried on safely: what is carried on later was held for something else. */
function upToSettled<S extends SaidThen>({ brings }: Scene, said: readonly S[]): readonly S[] {
  if (brings.kind !== "hold" && brings.kind !== "hurt") return said;
  const settled = said.findIndex(({ command, verdict }) => command.type === "carryOn" && verdict.is === "safe");
  return settled < 0 ? said : said.slice(0, settled + 1);
}

const momentOf = (scene: Scene | null, { at, step }: { at: Instant; step: StepId }, said: readonly SaidThen[]): Moment => ({
  scene,
  at,
  step,
  said: said.map(({ no, at, step, command, verdict, right }) => ({ no, at, step, command, verdict, right })),
  went: wentOf(said),
});

function wentOf(said: readonly SaidThen[]): Moment["went"] {
  return (["unsafe", "untrue", "caught", "cautious"] as const).find((is) => said.some(({ verdict }) => verdict.is === is)) ?? "well";
}

const counted = (said: readonly SaidThen[]) => {
  const of = (is: Verdict["is"]) => said.filter(({ verdict }) => verdict.is === is).length;
  return { unsafe: of("unsafe"), untrue: of("untrue"), caught: of("caught") };
};

const newIn = (before: Readonly<Record<string, unknown>>, after: Readonly<Record<string, unknown>>): string[] =>
  Object.keys(after).filter((key) => !(key in before));
