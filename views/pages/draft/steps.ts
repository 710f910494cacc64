/** The steps in which a job is told, in their order. */
export const DRAFT_STEPS = ["tent", "sheet", "site", "ticket", "crew"] as const;
export type DraftStep = (typeof DRAFT_STEPS)[number];

/** The step that an address names; `null` where it names none. */
export const draftStep = (name: string): DraftStep | null => DRAFT_STEPS.find((step) => step === name) ?? null;

/** The step so far on from one; `null` before the first and after the last. */
export const stepFrom = (step: DraftStep, by: 1 | -1): DraftStep | null => DRAFT_STEPS[DRAFT_STEPS.indexOf(step) + by] ?? null;

/** The fields of each step, besides the utilities on the ticket and the rows of the crew. Never more than six. */
export const STEP_FIELDS = {
  tent: ["tent.widthFt", "tent.lengthFt", "tent.quarterRings", "title"],
  sheet: ["sheet.document", "sheet.stakeKind", "sheet.stakeDiameterIn", "sheet.stakeLengthIn", "sheet.embedmentIn", "sheet.raiseGustMph"],
  site: ["site.address", "site.rallyPoint", "site.stormShelter", "site.firstAid", "site.soil", "zone"],
  ticket: ["ticket.number", "ticket.validFrom", "ticket.validTo", "ticket.toleranceIn"],
  crew: [],
} as const satisfies Readonly<Record<DraftStep, readonly string[]>>;
