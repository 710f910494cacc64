import { UTILITIES } from "../../../machines/install/utilities.ts";

/** The steps in which a job is told, in their order. */
export const DRAFT_STEPS = ["tent", "sheet", "site", "ticket", "crew"] as const;
export type DraftStep = (typeof DRAFT_STEPS)[number];

/** The step that an address names; `null` where it names none. */
export const draftStep = (name: string): DraftStep | null => DRAFT_STEPS.find((step) => step === name) ?? null;

/** The step so far on from one; `null` before the first and after the last. */
export const stepFrom = (step: DraftStep, by: 1 | -1): DraftStep | null => DRAFT_STEPS[DRAFT_STEPS.indexOf(step) + by] ?? null;

/** A field of a step. */
export type DraftField = {
  readonly name: string;
  /** Which keys a phone shows for it: letters where nothing is said, and for a fraction, as numbers alone have no "/" and no space. */
  readonly keys?: "decimal" | "fraction" | "date";
  /** What a device puts in where nobody has typed. */
  readonly device?: "zone" | "today";
  /** What can be chosen; the first is shown until somebody chooses. */
  readonly options?: readonly string[];
};

const text = (name: string): DraftField => ({ name });
const decimal = (name: string): DraftField => ({ name, keys: "decimal" });
const fraction = (name: string): DraftField => ({ name, keys: "fraction" });

/** The fields of each step, besides the utilities on the ticket and the rows of the crew. Never more than six. */
export const STEP_FIELDS: Readonly<Record<DraftStep, readonly DraftField[]>> = {
  tent: [decimal("tent.widthFt"), decimal("tent.lengthFt"), decimal("tent.quarterRings"), text("title")],
  sheet: [
    text("sheet.document"),
    text("sheet.stakeKind"),
    fraction("sheet.stakeSize"),
    fraction("sheet.embedmentIn"),
    decimal("sheet.raiseGustMph"),
    decimal("sheet.stopGustMph"),
  ],
  site: [
    text("site.address"),
    text("site.rallyPoint"),
    text("site.stormShelter"),
    text("site.firstAid"),
    text("sheet.soil"),
    { name: "site.soilKnown", options: ["no", "yes"] },
  ],
  ticket: [
    text("ticket.number"),
    { name: "ticket.validFrom", keys: "date", device: "today" },
    { name: "ticket.validTo", keys: "date" },
    { name: "zone", device: "zone" },
    decimal("ticket.toleranceIn"),
  ],
  crew: [],
};

/** What each utility of the ticket answered: nobody knows until somebody says so. */
export const UTILITY_FIELDS = UTILITIES.map((kind) => ({
  kind,
  name: `ticket.utilities.${kind}`,
  options: ["unanswered", "marked", "clear", "notOnTicket"],
}));

const TABLE = new Map<string, { readonly step: DraftStep; readonly field: DraftField }>([
  ...DRAFT_STEPS.flatMap((step) => STEP_FIELDS[step].map((field) => [field.name, { step, field }] as const)),
  ...UTILITY_FIELDS.map((field) => [field.name, { step: "ticket", field }] as const),
  // Typed in one field, kept as the figures that a sheet gives.
  ...["sheet.stakeDiameterIn", "sheet.stakeLengthIn"].map((name) => [name, { step: "sheet", field: fraction(name) }] as const),
]);

/** A field by its name; one that no step shows takes any text. */
export const draftField = (name: string): DraftField => TABLE.get(name)?.field ?? { name };

/** The step that shows a field; `null` where none does, as with the rows of the crew. */
export const stepShowing = (name: string): DraftStep | null => TABLE.get(name)?.step ?? null;
