import type { FactName } from "../../../machines/install/facts.ts";

const FACT: Readonly<Record<FactName, string>> = {
  sheet: "the tent's sheet",
  ticket: "the locate ticket",
  rallyPoint: "the rally point",
  stormShelter: "the storm shelter",
  firstAid: "first aid",
};
/** What a job may be opened without, by its name. */
export const factName = (fact: FactName): string => FACT[fact];

/** Where what nobody knew is filled in. */
export const facts = {
  title: "Not known yet",
  intro: "Fill in what you know by now. It counts once a second person agrees.",
  stillUnknown: "Empty stays not known.",
  put: "Put it forward",
  fill: "Fill it in",
  because: "Known now.",
  none: "All of it is known.",
  nothingTyped: "Nothing is filled in. Fill in what you know, or go back.",
  oneAtATime: "Another change waits for a second person. Agree to it or discard it first.",
} as const;
