import type { Value } from "../../../../machines/install/checks/registry.ts";
import type { TileInput } from "../../../../machines/install/checks/tile-input.ts";
import type { Screen } from "../../../parts/say-form.tsx";
import { toAgreeTo } from "../agree.tsx";
import { askedNow, isNonePicked, picked } from "../asked.ts";
import type { GateState } from "../state.ts";
import { stopsFirst } from "../stop-first.tsx";
import { isTrainee } from "../trainee.ts";

/** What stands in the dock; at a stop the way out; the gate only while it is to be answered, or somebody asked to; nothing to press for who watches. */
export type AnswerKind = "nobody" | "watching" | "readBack" | "hurt" | "closed" | "stop" | "held" | "agree" | "seen" | "gate" | "next";

export function answerKind(screen: Screen): AnswerKind {
  const kind = kindForAll(screen);
  return isTrainee(screen) && isOthers(kind, screen.guide.gate) ? "watching" : kind;
}

/** What a trainee has no say in: all but the way out, and what is no longer so of what the work needs, which only stops it. */
const isOthers = (kind: AnswerKind, gate: GateState | null): boolean =>
  kind === "gate" ? gate?.asked !== "before" || gate.check.kind !== "yesNo" : ["hurt", "held", "agree", "seen", "next"].includes(kind);

function kindForAll({ guide, me, pick }: Screen): AnswerKind {
  const { gate } = guide;
  if (me === null) return "nobody";
  if (guide.readBack) return "readBack";
  if (guide.hurt) return "hurt";
  if (guide.closed) return "closed";
  if (gate && picked(gate, pick) !== null) return "gate";
  if (stopsFirst({ guide })) return "stop";
  if (guide.held) return "held";
  if (toAgreeTo({ guide, me })) return "agree";
  if (gate?.shown) return "seen";
  return gate && gate.status !== "good" && gate.status !== "waived" ? "gate" : "next";
}

/** Whether the gate waits for an answer that is given here. */
export const isAskedHere = (gate: GateState | null): boolean =>
  gate !== null && gate.status !== "good" && gate.status !== "waived" && gate.tile.input !== "none";

/** Whether a pad takes the room under the call. */
export function hasPad(screen: Screen): boolean {
  const { gate } = screen.guide;
  if (!gate || answerKind(screen) !== "gate") return false;
  return PADS.has(gate.tile.input) && !isNonePicked(gate, screen.pick) && !askedNow(gate, screen.pick, screen.words).settled;
}
const PADS: ReadonlySet<TileInput<Value>["input"]> = new Set(["number", "readings", "figures", "wind"]);
