import type { KitRow } from "../../../machines/record/kit-counts.ts";
import type { LoadLine, LoadWeight } from "../../../machines/tent/load.ts";
import type { LineIs, TruckLine, TruckState, Way } from "../../pages/truck/state.ts";
import { kitName, number, things } from "./names.ts";

const pounds = (lb: number): string => `${number(lb)} lb`;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

const ALL: Readonly<Record<Way, string>> = { out: "all on", back: "all back" };
const WAY: Readonly<Record<Way, string>> = { out: "on", back: "back" };

const NOT_WEIGHED = "Walls, ground cloths and tools come on top.";

type Call = { readonly no: number; readonly say: string };
const quoted = ({ say }: Call) => say.replace(/\.$/, "");
type Progress = Pick<TruckState, "way" | "progress">;

/** Words of the loading list: the page, its paper, what is said to a tick. */
export const truck = {
  title: "The loading list",
  link: "The loading list",
  heading: { out: "Load the truck", back: "Count the truck back" } satisfies Record<Way, string>,
  order: {
    out: "In loading order: what is used first goes on last, by the tailgate.",
    back: "The same order as it went on: what went up last comes down first, and goes deepest.",
  } satisfies Record<Way, string>,
  tickedAt: (out: Call, back: Call) =>
    `Read-only for now. The list is ticked at call ${out.no}, "${quoted(out)}", and counted back at call ${back.no}, "${quoted(back)}".`,
  neverTicked: "Only to be read: this job was opened before lists were ticked here. The guide counts each thing back at the strike.",
  who: "Say who you are, then tick.",
  progress: ({ way, progress: { of, open, all, short, over } }: Progress): string => {
    const on = way === "out" ? all + over : all;
    if (on === of) return way === "out" ? `All ${of} lines on.` : `All ${of} lines back.`;
    const rest = [
      short > 0 ? `${short} short` : "",
      way === "back" && over > 0 ? `${over} over` : "",
      open > 0 ? `${open} to go` : "all counted",
    ].filter((t) => t !== "");
    return `${on} of ${of} lines ${WAY[way]}; ${rest.join("; ")}.`;
  },
  weight: ({ lb, unknown }: LoadWeight, lines: readonly Pick<TruckLine, "weighed" | "workedOut">[]): string => {
    const what = lines.some(({ workedOut }) => workedOut) ? "The tent and its weights" : "The tent";
    if (unknown.length === lines.filter(({ weighed }) => weighed).length)
      return "Weight not known: nobody has given what one of each part weighs.";
    if (unknown.length === 0) return `${what}: ${pounds(lb)}. ${NOT_WEIGHED}`;
    const kinds = unknown.length === 1 ? "1 kind of thing" : `${unknown.length} kinds of things`;
    return `${what}: at least ${pounds(lb)}; weight of ${kinds} not known. ${NOT_WEIGHED}`;
  },
  /** On the main button of a line. */
  all: ({ wanted, item }: Pick<TruckLine, "wanted" | "item">, way: Way) => `${things(wanted, item)}, ${ALL[way]}`,
  /** A line that is done or only read. */
  stands: ({ wanted, item }: Pick<TruckLine, "wanted" | "item">) => things(wanted, item),
  other: "Another number",
  mark: { open: "☐", all: "✓", short: "!", over: "+" } satisfies Record<LineIs, string>,
  /** How a line stands, in words. */
  is: ({ is, counted, wanted }: Pick<TruckLine, "is" | "counted" | "wanted">, way: Way): string => {
    if (counted === null) return "Not counted yet";
    if (is === "all") return capital(ALL[way]);
    return `${number(counted)} ${WAY[way]}: ${number(Math.abs(counted - wanted))} ${is === "short" ? "short of" : "over"} ${number(wanted)}`;
  },
  /** What is needed, what goes along besides, and by whose figure. */
  parts: ({ need, spares, share, shareBy }: Pick<LoadLine, "need" | "spares" | "share" | "shareBy">): string => {
    if (need === 0) return "No longer on the list: the plan was changed";
    const percent = `${Math.round(share * 1e4) / 1e2}%`;
    const whose = shareBy === "yard" ? `yard's ${percent}` : `usual ${percent}`;
    if (spares === 0) return shareBy === "yard" ? `${number(need)} needed, no spares (${whose})` : `${number(need)} needed, no spares`;
    return `${number(need)} needed + ${things(spares, "spares")} (${whose})`;
  },
  unknown: "unknown",
  lineWeight: ({ unitLb, lb, count, weighed, workedOut }: Pick<TruckLine, "unitLb" | "lb" | "count" | "weighed" | "workedOut">): string => {
    if (!weighed) return "Not weighed";
    if (unitLb === null || lb === null) return "Weight unknown";
    const told = count === 1 ? pounds(lb) : `${pounds(unitLb)} each, ${pounds(lb)}`;
    return workedOut ? `${told}: worked out` : told;
  },
  /** Where only a name stands beside a weight: that nobody weighed it. */
  workedOutShort: (item: string) => `${kitName(item)} (lb worked out)`,
  workedOutName: (item: string) => `${kitName(item)} (weight worked out: a screening figure, the sheet or an engineer governs)`,
  wentOut: (loaded: number | null) => (loaded === null ? "Not counted on the way out." : `${number(loaded)} went out.`),
  howMany: (item: string, way: Way) => `How many ${kitName(item)} are ${WAY[way]}?`,
  wanted: ({ wanted }: Pick<TruckLine, "wanted">) => `Wanted: ${number(wanted)}.`,
  toList: "Back to the list",
  notCount: (typed: string, { item, wanted }: Pick<TruckLine, "item" | "wanted">) =>
    typed.trim() === ""
      ? `No number was given. Count the ${kitName(item)}: 0 where there are none, ${number(wanted)} where all are there.`
      : `"${typed.trim().slice(0, 40)}" is no count of ${kitName(item)}. Give a whole number, like ${number(wanted)}.`,
  noSuchLine: (item: string) => `"${item.slice(0, 40)}" is not on this list, or is not asked for now. Look at the list.`,
  taken: (line: Pick<TruckLine, "item" | "counted" | "wanted" | "is">, way: Way): string => {
    const counted = `${capital(things(line.counted ?? 0, line.item))} ${WAY[way]}`;
    return line.is === "all" ? `${counted}.` : `${counted}: ${number(Math.abs((line.counted ?? 0) - line.wanted))} ${line.is}.`;
  },
  change: "Change spares and weights",
  asCsv: "As a table (CSV)",
  asJson: "As data (JSON)",
  print: "Print this page for a list to tick by hand.",
  otherOf: (item: string) => `Another number, ${kitName(item)}`,
  paper: {
    title: (title: string, size: string) => `The loading list: ${title}, ${size}`,
    pounds: number,
    columns: ["No.", "On", "Thing", "Need", "Spares", "Count", "lb each", "lb", "Loaded", "Back"],
    loadedBy: "Loaded by",
    checkedBy: "Checked by",
    backBy: "Counted back by",
  },
  columns: ["order", "item", "need", "spares", "count", "unit lb", "line lb", "loaded", "back", "difference"],
} as const;

/** The kit out and back in the record. */
export const outBack = {
  title: "Out and back",
  columns: { thing: "Thing", listed: "On the list", out: "Went out", back: "Came back", difference: "Difference" },
  not: "not counted",
  difference: (n: number | null) => (n === null ? "–" : n === 0 ? "none" : n > 0 ? `+${n}` : `−${-n}`),
  /** What is to be said about the kit, worst first. */
  words: (rows: readonly KitRow[]): string[] => {
    const off = (sign: 1 | -1) => rows.filter(({ difference }) => difference !== null && difference * sign > 0);
    const left = rows.filter(({ back, out, listed }) => back === null && (out ?? listed) > 0);
    if (left.length === rows.length) return ["Nothing has been counted back yet."];
    const told = [
      ...off(-1).map(({ item, out, difference }) =>
        out === null
          ? `${capital(things(-difference!, item))} fewer came back than the list has; nobody counted them out.`
          : `${capital(things(-difference!, item))} did not come back.`,
      ),
      ...off(1).map(({ item, out, difference }) =>
        out === null
          ? `${capital(things(difference!, item))} more came back than the list has; nobody counted them out.`
          : `${capital(things(difference!, item))} more came back than went out.`,
      ),
      ...(left.length > 0 ? [`Not counted back: ${left.map(({ item }) => kitName(item)).join(", ")}.`] : []),
    ];
    return told.length > 0 ? told : ["Everything that went out came back."];
  },
} as const;
