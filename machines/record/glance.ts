import type { BindingGist, BindingIntent, Command, Gist } from "../install/commands.ts";
import type { PersonId } from "../install/ids.ts";
import { type WeatherState, withReading } from "../install/reading.ts";
import { indexOf } from "../install/script-index.ts";
import type { Frozen } from "../install/step.ts";
import { AGREED, WARNING, weatherLimits } from "../install/weather.ts";
import { answerValue, effectiveCommandBy } from "./effective-command.ts";
import type { EntryLookup } from "./entries.ts";
import type { CommandEntry } from "./entry.ts";

/** The last thing that somebody said: in their own words where they spoke, and what it was taken as. */
export type LastWord = {
  readonly by: PersonId;
  readonly heard: string | null;
  readonly gist: Gist;
  readonly refused: boolean;
};

/** What a list of jobs says of one, besides what stands out. Facts without an age: how old they are is for whoever reads them. */
export type Glance = {
  readonly address: string;
  /** Who leads; `null` where nobody does. Names are kept elsewhere, to be erased there. */
  readonly lead: PersonId | null;
  /** What the weather is judged by; of the answers only those that it takes. */
  readonly weather: WeatherState;
  readonly hurt: boolean;
  /** `null` where nobody has said anything yet. */
  readonly lastWord: LastWord | null;
};

/** Gates whose answers say what the weather allows, or what is too much of it. */
const WEATHER_GATES: readonly string[] = [WARNING, ...Object.values(AGREED)];

/** Of a job that was just opened. */
export const openGlance = (opened: Frozen): Glance => ({
  ...headOf(opened),
  weather: { limits: weatherLimits(opened.limits), wind: null, thunderAt: null, answers: {} },
  hurt: false,
  lastWord: null,
});

/** With one more entry; `changed` is what it put in force, if anything. */
export function glanceAfter(before: Glance, entry: CommandEntry, changed: Frozen | null, earlier: EntryLookup): Glance {
  const command = effectiveCommandBy(entry, earlier);
  const { outcome } = entry;
  const weather = weatherAfter(before.weather, { entry, command, earlier });
  return {
    ...before,
    ...(changed ? headOf(changed) : {}),
    ...("did" in outcome && outcome.did === "tookLead" ? { lead: command.by } : {}),
    weather: changed ? judgedBy(weather, changed) : weather,
    hurt: hurtAfter(before.hurt, entry),
    lastWord: { by: command.by, heard: entry.command.heard, gist: gistOf(command), refused: "refused" in outcome },
  };
}

/** Until the lead carries on. */
function hurtAfter(before: boolean, { outcome }: CommandEntry): boolean {
  if (!("did" in outcome)) return before;
  return outcome.did === "hurt" || (before && outcome.did !== "carriedOn");
}

type Said = { readonly entry: CommandEntry; readonly command: Command; readonly earlier: EntryLookup };

/** The chart's own rules for what a reading changes, and the few answers that count as weather. */
function weatherAfter(before: WeatherState, { entry, command, earlier }: Said): WeatherState {
  const { outcome, no } = entry;
  if ("refused" in outcome || outcome.did === "readBack") return before;
  if (command.type === "reading") return withReading(before, { ...command, entry: no });
  if (command.type !== "answer" || outcome.did !== "answered" || !WEATHER_GATES.includes(command.gate)) return before;
  const { gate, by, device, at } = command;
  const value = answerValue(entry, earlier) ?? command.value;
  return { ...before, answers: { ...before.answers, [gate]: { gate, value, by, device, at, entry: no } } };
}

/** Under another plan: its limits, and the answers that it still asks for. */
function judgedBy(weather: WeatherState, { limits, script }: Frozen): WeatherState {
  const { gates } = indexOf(script);
  const answers = Object.fromEntries(Object.entries(weather.answers).filter(([gate]) => gates.has(gate)));
  return { ...weather, limits: weatherLimits(limits), answers };
}

const headOf = ({ brief: { site, crew } }: Frozen): Pick<Glance, "address" | "lead"> => ({
  address: site.address,
  lead: crew.find(({ role }) => role === "lead")?.id ?? null,
});

/** What was asked for alone. A plan that was put forward stands in the record, and is not kept twice. */
export function gistOf(command: Command): Gist {
  const { key, seen, source, heard, by, role, device, entry, at, wall, doubtMs, ...intent } = command;
  if (intent.type === "readBack") return { ...intent, intent: bindingGist(intent.intent) };
  if (intent.type !== "amend") return intent.type === "found" ? bindingGist(intent) : intent;
  const { to, ...gist } = intent;
  return gist;
}

function bindingGist(intent: BindingIntent): BindingGist {
  if (intent.type !== "found") return intent;
  const { to, ...gist } = intent;
  return gist;
}
