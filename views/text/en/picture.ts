import type { Mark } from "../../../machines/picture/mark.ts";
import type { GustLimit, WindFacts } from "../../../machines/picture/picture.ts";
import type { LengthName } from "../../../machines/site/lengths.ts";
import type { Move } from "../../../machines/site/moves.ts";
import type { AlongTent } from "../../../machines/tent/along.ts";
import { CORNERS, EDGES, type EdgeName, type TentPlan } from "../../../machines/tent/types.ts";
import { edgeName } from "./layout.ts";
import { lineName, number, pieceName, seamName } from "./names.ts";
import { compassPoint } from "./said.ts";
import { far, lengthName, wayText } from "./squaring.ts";

/** Above this many of one kind, only the first and the last are told. */
const MAX_TOLD = 3;

/** Words of the drawing that stands with a call: what it points at, told to who cannot see it. No count is given away here. */
export const picture = {
  here: (marks: readonly Mark[], plan: TentPlan) => `Here: ${places(marks, plan)}.`,
  nowhere: "The tent from above. This call has no place on it.",
  done: (marks: readonly Mark[], plan: TentPlan) => `Done: ${places(marks, plan)}.`,
  next: (marks: readonly Mark[], plan: TentPlan) => `Next: ${places(marks, plan)}.`,
  turned: (edge: EdgeName) => `Seen from above, ${edgeName(edge)} on top.`,
  north: (deg: number) => `North is ${WAYS[Math.round(deg / 45) % WAYS.length]}.`,
  lines: (buried: number, overhead: number) => `Buried lines around it: ${buried}. Overhead lines: ${overhead}.`,
  street: (name: string, edge: EdgeName) => `${name} runs along ${edgeName(edge)}.`,
  setback: (length: string) => `${length} out`,

  /** Where a line of poles stands, in words, where there is no room for a drawing. */
  along: ({ kind, no, from, middle }: AlongTent) => {
    const row = kind === "center" ? "" : " row";
    if (middle) return `The middle ${row === "" ? "one" : "row"}.`;
    const end = `the ${edgeName(from)} end`;
    if (no === 1) return row === "" ? `Nearest ${end}.` : `The row nearest ${end}.`;
    return `${ORDINALS[no - 2] ?? `Number ${no}`}${row} from ${end}.`;
  },
  /** Corners that are worked by opposite pairs. */
  pairs: "First corners A and C, then B and D.",

  corners: "The corner marks",
  square: "Square",
  /** How much larger what is off is drawn than it is. */
  larger: (times: number) => (times === 1 ? "Errors drawn to scale" : `Errors drawn ${times} times too big`),
  way: (corner: Move["corner"], way: "across" | "along", byIn: number) => wayText(corner, way, byIn),
  again: "Tape again",
  off: (byIn: number) => `${far(byIn)} ${byIn > 0 ? "long" : "short"}`,
  taping: (name: LengthName) => `Now ${lengthName(name)}.`,

  /** Beside the arrow of the wind. */
  wind: "Wind",
  windBlows: (deg: number) => `The wind comes from ${compassPoint(deg)}.`,
  windTitle: (facts: WindFacts) => windTitle(facts),
  under: (mph: number) => `Under ${number(mph)}`,
  limitMark: (mph: number) => number(mph),
  windAgainst: ({ belowMph, limits }: WindFacts) =>
    `Needs a gust under ${number(belowMph)}. Limits: ${limits.map((l) => `${LIMIT[l.is]} ${number(l.mph)}`).join(", ")}.`,
  windFrom: (deg: number) => `From ${compassPoint(deg)}`,
  windSide: (edges: readonly EdgeName[]) => `Wind comes at ${edges.map(edgeName).join(" and ")}.`,
  fromNotSaid: "From ?",
  standing: { none: "No reading", over: "Too much", stale: "Too old", noGust: "No gust given", good: "Good" } satisfies Record<
    WindFacts["is"],
    string
  >,
  minAgo: (min: number) => (min < 1 ? "just now" : `${number(min)} min ago`),
  mph: "mph",
  reading: (mph: number, gustMph: number | null) => (gustMph === null ? number(mph) : `${number(mph)} gust ${number(gustMph)}`),
  limit: (is: GustLimit["is"], mph: number) => `${LIMIT[is]} ${number(mph)}`,
};

/** From the second on. */
const ORDINALS = ["Second", "Third", "Fourth", "Fifth", "Sixth"];

const LIMIT: Readonly<Record<GustLimit["is"], string>> = { raise: "raise", stop: "stop", evacuate: "out", walls: "walls", most: "most" };

const WAYS = ["up", "up and right", "right", "down and right", "down", "down and left", "left", "up and left"] as const;

const SAID_AS: Readonly<Record<WindFacts["is"], string>> = {
  none: "",
  over: ", too much",
  stale: ", too old",
  noGust: ", no gust given",
  good: "",
};

function windTitle({ reading, is }: WindFacts): string {
  if (reading === null) return "No wind reading yet";
  const gust = reading.gustMph === null ? "" : ` gusting ${number(reading.gustMph)}`;
  return `Wind ${number(reading.mph)}${gust} mph, ${number(reading.minAgo)} min ago${SAID_AS[is]}`;
}

/** Things of the plan, those of a kind together. */
function places(marks: readonly Mark[], plan: TentPlan): string {
  const kinds = [...new Set(marks.map((m) => m.is))];
  return listed(
    kinds.flatMap((kind) =>
      ofKind(
        marks.filter((m) => m.is === kind),
        plan,
      ),
    ),
  );
}

function ofKind(marks: readonly Mark[], plan: TentPlan): string[] {
  const [first, last] = [marks[0]!, marks.at(-1)!];
  const all = allOf(first, marks.length, plan);
  if (all !== null) return [all];
  return marks.length > MAX_TOLD ? [`${place(first)} through ${place(last)}`] : marks.map(place);
}

/** What all of a kind are called together; `null` where there are fewer, or but one. */
function allOf({ is }: Mark, n: number, { pieces, seams, rows }: TentPlan): string | null {
  if (n < 2) return null;
  const halves = seams.reduce((sum, { halves }) => sum + halves.length, 0);
  const lines = rows.reduce((sum, { quarters, centers }) => sum + (quarters.length > 0 ? 1 : 0) + centers.length, 0);
  if (is === "corner" && n === CORNERS.length) return "every corner";
  if (is === "edge" && n === EDGES.length) return "all around, along the edges";
  if (is === "stakeLine" && n === EDGES.length) return "all around, on the stake line";
  if (is === "piece" && n === pieces.length) return "every piece";
  if (is === "half" && n === halves) return "every seam";
  return is === "poles" && n === lines ? "every inside pole" : null;
}

function place(mark: Mark): string {
  switch (mark.is) {
    case "piece":
      return pieceName(mark.id);
    case "half": {
      const [seam = "", toward] = mark.id.split(".");
      return `${seamName(seam)}${seam.startsWith("R-") ? "" : `, ${toward} half`}`;
    }
    case "corner":
      return `corner ${mark.corner}`;
    case "station":
      return `station ${mark.id}`;
    case "edge":
      return `along ${edgeName(mark.edge)}`;
    case "stakeLine":
      return `the stake line ${edgeName(mark.edge)}`;
    case "poles":
      return lineName({ kind: mark.ids.length === 1 && mark.ids[0]!.startsWith("C") ? "center" : "quarters", poles: mark.ids.join(" ") });
    case "length":
      return `the line ${lengthName(mark.name)}`;
    case "angle":
      return `the right angle at A, ${mark.alongFt} ft toward B, ${mark.acrossFt} ft toward D, ${mark.diagonalFt} ft across`;
    case "setback":
      return "from the edge out to it";
    case "ground":
      return "everything under the top";
  }
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join("; ")}; and ${names.at(-1)}`;
