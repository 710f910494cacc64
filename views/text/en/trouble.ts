import type { Stop } from "../../../machines/conversation/stops.ts";
import type { Thing } from "../../../machines/install/thing.ts";
import { kitName, pieceName, seamName, things } from "./names.ts";

/** The most words of a refusal: it is heard with a maul in hand. */
const MAX_WORDS = 20;

const sentence = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A thing by its name: mid 1, 4 ratchet straps. */
const thingText = (thing: Thing): string => (thing.is === "piece" ? pieceName(thing.id) : things(thing.short, thing.item));

const wordsOf = (text: string): string[] => text.split(/\s+/);
/** A reason in so many words; a longer one is cut short. */
function inShort(because: string, most: number): string {
  const words = wordsOf(because.replace(/[.!?,;:\s]+$/, ""));
  return words.length > most ? `${words.slice(0, most).join(" ")}…` : `${words.join(" ")}.`;
}

/** A thing that was taken out of use, as it reads in thread and record. */
export const outText = (thing: Thing, because: string): string =>
  thing.is === "piece" ? `${sentence(pieceName(thing.id))} is out of use: ${because}` : `${thingText(thing)} short`;

/** A thing that is back. */
export const backText = (thing: Thing, because: string): string =>
  thing.is === "piece" ? `${sentence(pieceName(thing.id))} is back: ${because}` : `${thingText(thing)} came`;

/** What the next call lacks, and what to do. The first one is told, and how many there are besides. */
export function lackedText(lacked: readonly { readonly thing: Thing; readonly because: string }[]): string {
  const [{ thing, because }] = lacked as [(typeof lacked)[number]];
  const more = lacked.length > 1 ? ` And ${lacked.length - 1} more.` : "";
  if (thing.is === "kit")
    return `${thingText(thing)} short. Get ${thing.short === 1 ? "it, then say it's" : "them, then say they're"} here.${more}`;
  const front = `${sentence(pieceName(thing.id))} is out of use:`;
  const end = `Mend or swap it, then say it's back.${more}`;
  return `${front} ${inShort(because, MAX_WORDS - wordsOf(`${front} ${end}`).length)} ${end}`;
}

/** A piece or a kit line that the job does not have, with those that it has. */
export const unknownText = (thing: Thing, has: readonly string[]): string =>
  thing.is === "piece"
    ? `This top has no ${pieceName(thing.id)}. It has: ${has.map(pieceName).join(", ")}.`
    : `No ${kitName(thing.item)} on this job. The list has: ${has.map(kitName).join(", ")}.`;

export const notOutText = (thing: Thing): string =>
  thing.is === "piece" ? `${sentence(pieceName(thing.id))} isn't out of use.` : `${sentence(kitName(thing.item))} aren't short.`;

const STOPS = { laying: "laying it", raising: "raising", driving: "driving stakes", strapping: "strapping" } as const;

/** What waits: "seams 1 and 2, and raising". Calls without a name of their own go together. */
function stopsText(stops: readonly Stop[]): string {
  const seams = stops.flatMap((stop) => (stop.is === "seam" ? [seamName(stop.seam)] : []));
  const named = [...new Set(stops.flatMap((stop) => (stop.is === "seam" || stop.is === "call" ? [] : [STOPS[stop.is]])))];
  const calls = stops.some((stop) => stop.is === "call") ? ["the call that needs it"] : [];
  const all = [...named.filter((name) => name === STOPS.laying), ...seams, ...named.filter((name) => name !== STOPS.laying), ...calls];
  return new Intl.ListFormat("en-US", { type: "conjunction" }).format(all);
}

/** Damage and shortage. */
export const trouble = {
  title: "Damaged or short",
  /** The reply to a report. */
  stops: (thing: Thing, stops: readonly Stop[]): string => {
    const out = thing.is === "piece" ? `${sentence(pieceName(thing.id))} is out of use.` : `${thingText(thing)} short.`;
    return `${out} ${stops.length === 0 ? "Nothing ahead needs it." : `Waiting for ${thing.is === "piece" || thing.short === 1 ? "it" : "them"}: ${stopsText(stops)}.`}`;
  },
  back: (thing: Thing, left: number): string => {
    if (thing.is === "piece") return `${sentence(pieceName(thing.id))} is back.`;
    return left === 0 ? `No more ${kitName(thing.item)} short.` : `Still short: ${things(left, thing.item)}.`;
  },
  /** The line on the guide, in full. */
  line: (thing: Thing, because: string, by: string): string =>
    thing.is === "piece" ? `OUT OF USE: ${pieceName(thing.id)}, ${because} (${by})` : `SHORT: ${thingText(thing)} (${by})`,
  piece: "Which piece",
  item: "What is short",
  howMany: "How many short",
  whatIsWrong: "What's wrong with it",
  counted: "Counted on site",
  takeOut: "Take it out of use",
  reportShort: "Report it short",
  putBack: (thing: Thing): string => (thing.is === "piece" ? `Back in use: ${pieceName(thing.id)}` : `They're here: ${thingText(thing)}`),
  how: "Mended, swapped or brought by whom",
} as const;
