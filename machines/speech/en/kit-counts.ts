import type { LoadItem } from "../../tent/load.ts";
import type { Meaning } from "../meanings.ts";
import type { AnswerParser } from "./asked.ts";
import { numberInUnit } from "./number-in-unit.ts";

/** Names of the items on the truck. A bare "stakes", "plates", or "straps" is accepted only if the list has one kind of them. */
const CALLED: Readonly<Record<LoadItem, RegExp>> = {
  wholeTop: /^(?:whole )?tops?$/,
  endPiece: /^(?:end pieces?|ends?)$/,
  splitEndPiece: /^(?:split end pieces?|split ends?|half ends?)$/,
  midPiece: /^(?:mid pieces?|mids?|middles?)$/,
  centerPole: /^(?:cent(?:re|er) poles?|cent(?:re|er)s)$/,
  quarterPole: /^(?:quarter poles?|quarters)$/,
  sidePole: /^(?:side poles?|sides)$/,
  cornerPole: /^(?:corner poles?|corners)$/,
  perimeterStake: /^(?:perimeter |outside )?stakes?$/,
  stakePlate: /^(?:stake |perimeter )?plates?$/,
  perimeterStrap: /^(?:ratchet |perimeter |outside )?(?:straps?|ratchets)$/,
  interiorStake: /^(?:(?:interior|inside) )?stakes?$/,
  interiorStrap: /^(?:(?:interior|inside) )?straps?$/,
  polePlate: /^(?:pole |base )?plates?$/,
  firstAidKit: /^(?:first aid|first[- ]aid kits?|aid kits?)$/,
  waterCooler: /^(?:water )?(?:coolers?|jugs?)$|^waters?$/,
  horn: /^(?:air |signal )?horns?$/,
  windMeter: /^(?:wind meters?|wind gauges?|anemometers?)$/,
  hardHat: /^(?:hard ?hats?|hats?|helmets?)$/,
  whitePaint: /^(?:(?:cans? of |white )*paint(?: cans?)?|cans?)$/,
  tape300: /^(?:long |(?:300|three hundred)[- ](?:foot|feet|ft) )?tapes?$/,
  tape200: /^(?:long |(?:200|two hundred)[- ](?:foot|feet|ft) )?tapes?$/,
  tape100: /^(?:short |(?:100|a hundred|one hundred)[- ](?:foot|feet|ft) )?tapes?$/,
  pocketTape: /^(?:pocket|small) tapes?$|^tape measures?$/,
  layoutPin: /^(?:layout )?pins?$/,
  stringLine: /^(?:strings?|string lines?|mason'?s? lines?)$/,
  level: /^levels?$/,
  plumbBob: /^(?:plumb )?bobs?$|^plumbs?$/,
  caliper: /^calipers?$/,
  leanGauge: /^(?:lean |angle |stake )?gauges?$|^(?:angle|protractor) ?finders?$/,
  pullGauge: /^(?:pull |tension |load )?gauges?$|^load cells?$|^(?:pull |crane )?scales?$/,
  stakeDriver: /^(?:stake )?(?:drivers?|hammers?)$/,
  earMuff: /^(?:ear ?muffs?|muffs?|ear protect(?:ion|ors?)|hearing protect(?:ion|ors?)|ears)$/,
  goggles: /^(?:safety )?(?:goggles?|glasses)$|^(?:eye protect(?:ion|ors?)|eyes)$/,
  stakeCap: /^(?:stake )?caps?$/,
  groundCloth: /^(?:ground ?cloths?|drop ?cloths?|tarps?)$/,
  footRope: /^(?:foot |pole )?ropes?$/,
  strapFlag: /^(?:strap )?flags?$/,
  wallSet: /^(?:whole )?(?:walls?|(?:wall )?sets?)$/,
  exitSign: /^(?:exit )?signs?$/,
  extinguisher: /^(?:fire )?extinguishers?$/,
  ladder: /^(?:step ?)?ladders?$/,
  broom: /^(?:push )?brooms?$/,
  comeAlong: /^come[- ]?alongs?$|^hand winch(?:es)?$/,
  shovel: /^shovels?$/,
  ballastWeight: /^(?:ballast )?weights?$|^ballast$/,
  stakePuller: /^(?:stake )?pullers?$/,
};

/** Every item on a truck that goes by a name: "stakes" are outside or inside ones. */
export const itemsCalled = (name: string): LoadItem[] => (Object.keys(CALLED) as LoadItem[]).filter((item) => CALLED[item].test(name));

/** What stands before and after a line: "we've got eight hard hats", "seven hard hats came back". */
const BEFORE =
  /^(?:(?:okay|ok|uh|um|so|yeah|yep|all right|got it|only|just|and|that's|(?:we|i)(?:'ve)? (?:got|have)|there's|there are|the)[\s,]+)+/i;
const AFTER = /\s+(?:came back|are back|back|are on|on|loaded|here|are here)$/i;

/**
 * Counts of listed items: "eighty four stake plates", "stake plates 84", and several of them in a row. Where one of them is not
 * understood, none is.
 */
export const parseKitCounts: AnswerParser<"counts"> = (said, { items: listed }) => {
  const lines = linesIn(said, listed);
  const trouble = lines.find((line) => !("item" in line));
  if (trouble) return trouble as Meaning;
  const counted = lines as readonly Line[];
  const isTwice = new Set(counted.map(({ item }) => item)).size < counted.length;
  return isTwice ? { notUnderstood: true } : { kind: "counts", n: Object.fromEntries(counted.map(({ item, n }) => [item, n])) };
};

type Line = { readonly item: string; readonly n: number };

/** One line after the other; "a hundred and five caps" is one. */
function linesIn(said: string, listed: readonly string[]): readonly (Line | Meaning)[] {
  const whole = lineIn(said, listed);
  if ("item" in whole) return [whole];
  const words = said.replaceAll(/[,;]/g, " ").trim().split(/\s+/);
  // Ways to divide the words from each one on, from the last one back: at most two, because more would not tell more.
  const ways: (readonly (readonly Line[])[])[] = [];
  ways[words.length] = [[]];
  for (let at = words.length - 1; at >= 0; at--)
    ways[at] = Array.from({ length: Math.min(MAX_LINE, words.length - at) }, (_, i) => at + i + 1)
      .flatMap((end) => {
        const line = lineIn(words.slice(words[at] === "and" ? at + 1 : at, end).join(" "), listed);
        return "item" in line ? ways[end]!.map((rest) => [line, ...rest]) : [];
      })
      .slice(0, 2);
  return ways[0]!.length === 1 ? ways[0]![0]! : [whole];
}
/** More words than one line of the truck has. */
const MAX_LINE = 8;

function lineIn(said: string, listed: readonly string[]): Line | Meaning {
  const words = said.toLowerCase().trim().replace(BEFORE, "").replace(AFTER, "");
  for (const [, number, thing] of [...splits(words, "first"), ...splits(words, "last")]) {
    const items = listed.filter((item) => CALLED[item as LoadItem]?.test(thing!));
    const [item] = items;
    const read = /^(?:no|none)$/.test(number!) ? { n: 0 } : /^an?$/.test(number!) ? { n: 1 } : numberInUnit(number!, "count");
    if (item === undefined || "notUnderstood" in read) continue;
    if (items.length > 1) return { notUnderstood: true };
    if ("n" in read) return Number.isSafeInteger(read.n) && read.n >= 0 ? { item, n: read.n } : { notUnderstood: true };
    if ("ambiguous" in read) return read;
  }
  return { notUnderstood: true };
}

/** Every way to split a text into a number and an item, with the number first or last. */
function splits(words: string, number: "first" | "last"): [string, string, string][] {
  const parts = words.replaceAll(/[,:]/g, " ").trim().split(/\s+/);
  return parts.slice(1).map((_, i) => {
    const [head, tail] = [parts.slice(0, i + 1).join(" "), parts.slice(i + 1).join(" ")];
    return number === "first" ? [words, head, tail] : [words, tail, head];
  });
}
