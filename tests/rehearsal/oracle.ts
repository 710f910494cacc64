import { meetsLimit } from "../../machines/install/checks/any-check.ts";
import { nextStep } from "../../machines/install/job.ts";
import { indexOf } from "../../machines/install/script-index.ts";
import type { Work } from "../../machines/install/step.ts";
import type { Scene } from "../../machines/rehearsal/scene.ts";
import type { Said } from "./play.ts";

const MINUTE = 60_000;
/** Mph in gusts from which cloth is not opened and nothing raised, and all stops, on the sheet of these tests; by hand. */
const RAISE_MPH = 20;
const STOP_MPH = 25;

/** What must not be begun with a thing untold, by hand. */
const NOT_IN_WIND: readonly (Work | null)[] = ["openCloth", "lift", "under", "ease"];
const NOT_UNDER_WARNING: readonly (Work | null)[] = ["openCloth", "lift", "under", "ease", "lower", "use"];

/**
 * Why something that the player did must be found unsafe; `null` where nobody need say so. Written by hand from what each
 * situation means, apart from how the program judges.
 */
export function mistakeIn({ command, outcome, before }: Said): string | null {
  if ("refused" in outcome) return null;
  for (const scene of before.scenes) {
    if (before.world.begun[scene.id] === undefined) continue;
    const found = mistakeAbout(scene, { command, outcome, before });
    if (found) return `${scene.is}: ${found}`;
  }
  return null;
}

function mistakeAbout(scene: Scene, { command, outcome, before }: Pick<Said, "command" | "outcome" | "before">): string | null {
  const { job, world } = before;
  const { brings, id } = scene;
  const { at } = command;
  const [begun, told] = [world.begun[id]!, world.told[id]];
  const moved = "did" in outcome && (outcome.did === "moved" || outcome.and === "moved");
  const to = moved ? nextStep(job) : null;
  const { answers, wind, thunderAt } = job.snapshot.context;
  switch (brings.kind) {
    case "thunder":
      // Another thunder that was told stops the work as well.
      return to?.work && told === undefined && at - begun < 30 * MINUTE && thunderAt === null ? "went to work under thunder" : null;
    case "warning": {
      const isOn = at < begun + brings.forS * 1000;
      const said = answers.warning?.value;
      const isTold = said?.kind === "yesNo" && !said.yes;
      if (isOn && command.type === "answer" && command.gate === "warning" && command.value.kind === "yesNo" && command.value.yes)
        return "said that none was out";
      return isOn && !isTold && to && NOT_UNDER_WARNING.includes(to.work) ? "went on under a warning" : null;
    }
    case "wind": {
      const { gustMph } = brings.wind;
      if (at >= begun + brings.forS * 1000 || (brings.lostS > 0 && !world.said[id])) return null;
      if (
        command.type === "reading" &&
        command.reading.kind === "wind" &&
        gustMph >= RAISE_MPH &&
        (command.reading.gustMph ?? 99) < RAISE_MPH
      )
        return "read less than blew";
      const known = wind?.gustMph ?? 0;
      if (to && gustMph >= RAISE_MPH && known < RAISE_MPH && NOT_IN_WIND.includes(to.work)) return "raised in wind";
      return to && gustMph >= STOP_MPH && known < STOP_MPH && to.work === "lower" ? "lowered in a storm" : null;
    }
    case "look":
    case "tooFast": {
      const left = brings.looks === "oneShort" ? 1 : brings.looks.length;
      if ((world.looked[brings.gate] ?? 0) >= left || command.type !== "answer" || command.gate !== brings.gate) return null;
      const gate = indexOf(job.frozen.script).gates.get(brings.gate)!;
      return meetsLimit(gate.check, command.value, job.snapshot.context) ? "said good of what was not" : null;
    }
    case "hold":
      return command.type === "carryOn" && world.said[id] && at < begun + brings.forS * 1000 ? "carried on too soon" : null;
    case "hurt":
      if (told === undefined) return moved ? "went on past somebody hurt" : null;
      return command.type === "carryOn" && at < told + brings.forS * 1000 ? "left somebody hurt" : null;
    case "short":
      if (told !== undefined || !to || brings.thing.is !== "kit") return null;
      return to.needs.includes(`kit.${brings.thing.item}`) ? "began what could not be finished" : null;
    default:
      return null;
  }
}
