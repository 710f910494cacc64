import { kitName } from "./names.ts";
import { fields } from "./page.ts";

/** What is seen of a tent at a glance. */
export type Glance = {
  readonly size: string;
  readonly ends: string;
  readonly stations: number;
  readonly stakes: number;
  readonly poles: string;
};

/** Words of the list of tents, and of the tent's part of every form. */
export const tents = {
  title: "Tents",
  intro: "Tents as your sheets give them, kept for the next job. The examples show usual sizes.",
  saved: "Saved",
  none: "None saved yet. Start from a size or from an example.",
  examples: "Examples",
  example: "Example, not your tent's sheet",
  exampleName: (widthFt: number, lengthFt: number, ends: string) => `${widthFt} × ${lengthFt} ft, ${ends}`,
  twoRings: "two rings of quarter poles",
  add: "Add a tent",
  addTitle: "Add a tent",
  editTitle: (name: string) => `Edit ${name}`,
  back: "All tents",
  backTo: "Back to the tent",
  name: "Name of the tent",
  copyOf: (name: string) => `Copy of ${name}`,
  save: "Save the tent",
  show: "Show the plan",
  useIt: "Open a job with it",
  copy: "Copy it",
  edit: "Edit it",
  remove: "Take it out of the list",
  removeTitle: (name: string) => `Take ${name} out of the list?`,
  removeTold: "Jobs that were opened with it keep their own tent. The list no longer has it.",
  keep: "Keep it",
  asData: "As data, to take along",
  paste: "Bring in a tent",
  pasteText: "Its data",
  pasteHint: "What another list gave as data: name, spec and, where there is one, kit.",
  pasteIt: "Bring it in",
  pasteName: "Another name for it",
  pasteNameHint: "empty: the name in the data",
  startSize: "Start from a size",
  unreadable: "This tent cannot be read any more. Take it out of the list, and add it anew.",
  unreadableShort: "cannot be read",
  facts: "At a glance",
  kit: "Kit, without spares",
  plan: "The plan of what is typed",
  noPlan: "No drawing",
  noPlanWhy: "What is typed is no tent that can be planned, so none is drawn:",
  notYet: "Nothing is drawn yet.",
  wanted: (names: readonly string[]) => `Still wanted: ${names.join(", ")}.`,
  old: "Typed since: the plan on the page is that of before.",
  oldNoScripts: "After a change press Show the plan again.",
  drawn: (g: Glance) => `Drawn: ${g.size}, ${g.ends}. ${g.stations} stations, ${g.stakes} stakes, ${g.poles}.`,
  notDrawn: "No drawing: something typed cannot be planned.",
  yard: "Notes of the yard on its kit",
  groups: {
    poles: "Poles inside, where they are not the usual ones",
    anchors: "Plates and stakes, where the sheet gives them",
    anchorsHint: "Empty: the planning minimum.",
    onSite: "Where the cloth or the site says otherwise",
    ringsHint: "Rings counted along an edge, both corners included. Empty: as the spacing gives.",
    shiftedHint: "How far a corner stands out of its place. Across: + to the C–D side. Along: + to the B–C end. 3 1/2 in will do.",
    add: "Extra poles",
    kit: "Spares and weights of the yard",
    kitHint: "Empty spares: the usual. Empty weight: not known, and never guessed.",
  },
  added: {
    kind: (n: number) => `Extra pole ${n}`,
    xFt: (n: number) => `Extra pole ${n}: from A–B, ft`,
    yFt: (n: number) => `Extra pole ${n}: from D–A, ft`,
  },
  kitTable: { item: "Item", spare: "Spares, %", weight: "One weighs, lb", usual: (percent: number) => `usual: ${percent} %` },
  spareOf: (item: string) => `${kitName(item)}: spares, percent`,
  weightOf: (item: string) => `${kitName(item)}: weight of one, lb`,
  ends: { onePiece: "one piece", whole: "whole ends", split: "split ends" },
  fact: {
    size: "Size",
    ends: "Ends",
    pieces: "Pieces",
    seams: "Seams",
    stations: "Stations",
    stakes: "Stakes round it",
    poles: "Poles inside",
    sidePoles: "Side and corner poles",
    diagonal: "Diagonal A–C",
  },
  poles: (center: number, quarter: number) =>
    `${center} center ${center === 1 ? "pole" : "poles"}${quarter === 0 ? "" : `, ${quarter} quarter poles`}`,
  glance: (g: Glance) => `${g.stations} stations · ${g.stakes} stakes · ${g.poles}`,
  note: (percent: number, lb: number | null) => `${percent} % spares, ${lb === null ? "weight not known" : `${lb} lb each`}`,
  differs: "Saving again puts yours in its place. What is stored now, where it is not the same:",
  field: "Field",
  storedNow: "Stored now",
  typed: "In this form",
  empty: "empty",
} as const;

/** A field of a tent's form as it is called on the page. */
export function fieldName(field: string): string {
  const added = /^tent\.add\.(\d+)\.(kind|xFt|yFt)$/.exec(field);
  if (added) return tents.added[added[2] as "kind"](Number(added[1]));
  const kit = /^kit\.(\w+)\.(spare|unitLb)$/.exec(field);
  if (kit) return kit[2] === "spare" ? tents.spareOf(kit[1]!) : tents.weightOf(kit[1]!);
  return field === "name" ? tents.name : (fields[field]?.label ?? field);
}
