import type { Command } from "../install/commands.ts";
import type { Refusal } from "../install/refusals.ts";
import { keyOf } from "../install/thing.ts";
import { WARNING } from "../install/weather.ts";
import type { Verdict } from "./judge-move.ts";
import type { Scene } from "./scene.ts";
import { contradicted } from "./shadow.ts";
import { begunIn, blowing, lasts, type Stand } from "./stand.ts";
import type { World } from "./world.ts";

/** The scenes that something said was about, by id: those that it told, looked at or ended, and those that it was unsafe for. */
export function aboutOf(before: Stand, after: World, command: Command, verdict: Verdict): string[] {
  if (verdict.is === "unsafe" || verdict.is === "untrue" || verdict.is === "cautious") return [...verdict.scenes];
  const of = verdict.is === "caught" ? refusedFor(before, verdict.reasons, command.at) : dealtWith(before, after, command);
  return begunIn(before)
    .filter(of)
    .map(({ id }) => id);
}

type Of = (scene: Scene) => boolean;

function dealtWith(before: Stand, after: World, command: Command): Of {
  const { at } = command;
  const wrong = command.type === "back" ? contradicted(before, at).map(({ gate }) => gate) : [];
  const isOfWind = command.type === "makeSafe" || (command.type === "reading" && command.reading.kind === "wind");
  const blows = isOfWind ? blowing(before, at).scene?.id : undefined;
  return ({ id, brings }) => {
    if (after.told[id] !== undefined && before.world.told[id] === undefined) return true;
    switch (brings.kind) {
      case "look":
      case "tooFast":
        return wrong.includes(brings.gate) || after.looked[brings.gate] !== before.world.looked[brings.gate];
      case "wind":
        return id === blows;
      case "hold":
      case "hurt":
        return command.type === "carryOn" && (before.world.said[id] !== undefined || before.world.told[id] !== undefined);
      case "short":
        return command.type === "backInUse" && keyOf(command.thing) === keyOf(brings.thing);
      default:
        return false;
    }
  };
}

/** Those for which the guide refused something. */
function refusedFor(before: Stand, reasons: readonly Refusal[], at: number): Of {
  const gates = reasons.flatMap((reason) => ("gate" in reason && reason.gate !== undefined ? [reason.gate] : []));
  const things = reasons.flatMap((reason) => (reason.why === "outOfUse" ? reason.keys : []));
  const isHeld = reasons.some(({ why }) => why === "held");
  return (scene) => {
    const { brings } = scene;
    switch (brings.kind) {
      case "look":
      case "tooFast":
        return gates.includes(brings.gate);
      case "wind":
        return gates.some((gate) => gate.startsWith("wind.")) && lasts(before, scene, at);
      case "thunder":
        return gates.includes("thunder") && before.world.told[scene.id] !== undefined;
      case "warning":
        return gates.includes(WARNING) && lasts(before, scene, at);
      case "hold":
      case "hurt":
        return isHeld && lasts(before, scene, at);
      case "short":
        return things.includes(keyOf(brings.thing));
      default:
        return false;
    }
  };
}
