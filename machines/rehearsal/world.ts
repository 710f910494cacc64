import type { Command } from "../install/commands.ts";
import type { GateId, Instant, StepId } from "../install/ids.ts";
import type { Outcome } from "../install/refusals.ts";
import { keyOf } from "../install/thing.ts";
import { isSameValue } from "./same-value.ts";
import { isPlayed, type Scene } from "./scene.ts";

/** What became of the site so far: what has begun, what was seen and answered so, what was said about it. */
export type World = {
  /** When each scene began. */
  readonly begun: Readonly<Record<string, Instant>>;
  /** When each was told to the guide. */
  readonly told: Readonly<Record<string, Instant>>;
  /** How many looks of a gate were answered as they were. */
  readonly looked: Readonly<Record<GateId, number>>;
  /** Scenes in which somebody of the crew said what they say. */
  readonly said: Readonly<Record<string, true>>;
};
export const UNTOUCHED: World = { begun: {}, told: {}, looked: {}, said: {} };

/** A line of a rehearsal's record, as the site sees it: what was said, what came of it, the call that it stood at then. */
export type Line = { readonly command: Command | null; readonly outcome: Outcome | null; readonly step: StepId; readonly at: Instant };

/** The site after a line of the record. `command` is as it counts: what was read back and confirmed, itself. */
export function worldAfter(world: World, scenes: readonly Scene[], { command, outcome, step, at }: Line): World {
  const after = command && outcome && "did" in outcome ? saidTo(world, scenes, withTotal(command, outcome)) : world;
  const begins = scenes.filter((scene) => scene.at === step && after.begun[scene.id] === undefined);
  if (begins.length === 0) return after;
  return { ...after, begun: { ...after.begun, ...Object.fromEntries(begins.map(({ id }) => [id, at])) } };
}

/** An answer in parts as what it came to with those before. */
const withTotal = (command: Command, { total }: Extract<Outcome, { did: unknown }>): Command =>
  command.type === "answer" && total ? { ...command, value: total } : command;

function saidTo(world: World, scenes: readonly Scene[], command: Command): World {
  return scenes.reduce((after, scene) => (after.begun[scene.id] === undefined ? after : toldOf(after, scene, command)), world);
}

function toldOf(world: World, { id, brings }: Scene, command: Command): World {
  const told = (): World => (world.told[id] === undefined ? { ...world, told: { ...world.told, [id]: command.at } } : world);
  const said = (): World => ({ ...world, said: { ...world.said, [id]: true } });
  switch (brings.kind) {
    case "look":
    case "tooFast":
      return command.type === "answer" && command.gate === brings.gate ? lookedAt(world, { id, brings }, command) : world;
    case "thunder":
    case "warning":
    case "rain":
      return command.type === "reading" && command.reading.kind === brings.kind ? told() : world;
    case "hurt":
      return command.type === "hurt" || command.type === "hold" ? told() : world;
    case "hold":
      return command.type === "hold" && command.by === brings.by ? said() : world;
    case "short":
      return command.type === "outOfUse" && keyOf(command.thing) === keyOf(brings.thing) ? told() : world;
    case "wind":
      return brings.lostS > 0 && command.type === "note" && isPlayed(command) ? said() : world;
  }
}

type Looking = { readonly id: string; readonly brings: Extract<Scene["brings"], { kind: "look" | "tooFast" }> };

/** What was answered as it was to be seen is put right after that. */
function lookedAt(world: World, { id, brings }: Looking, command: Extract<Command, { type: "answer" }>): World {
  const n = world.looked[brings.gate] ?? 0;
  const { looks } = brings;
  const next = { ...world, looked: { ...world.looked, [brings.gate]: n + 1 } };
  if (looks === "oneShort") return n === 0 ? next : world;
  if (brings.kind === "tooFast" && !world.said[id]) return { ...world, said: { ...world.said, [id]: true } };
  return looks[n] !== undefined && isSameValue(looks[n], command.value) ? next : world;
}
