import type { Brief } from "./brief.ts";

/** What a job may be opened without. It is asked at the first call that needs it, and known once an amendment says it. */
export const FACTS = ["sheet", "ticket", "rallyPoint", "stormShelter", "firstAid"] as const;
export type FactName = (typeof FACTS)[number];

/** The places among them: where everybody gathers, shelters and is helped. */
export const PLACES = ["rallyPoint", "stormShelter", "firstAid"] as const satisfies readonly FactName[];

/** What nobody knows yet of a job. */
export const unknownIn = ({ sheet, ticket, site }: Brief): FactName[] =>
  FACTS.filter((fact) => ({ sheet, ticket, ...placesOf(site) })[fact] === null);

/** What a change would no longer know. */
export const forgotten = (from: Brief, to: Brief): FactName[] => {
  const before = unknownIn(from);
  return unknownIn(to).filter((fact) => !before.includes(fact));
};

/** Those of some facts that are known, to fill in the words of a call: what is missing there is not known. */
export const knownOf = (facts: Readonly<Record<string, string | null>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(facts).filter((fact): fact is [string, string] => fact[1] !== null));

const placesOf = ({ rallyPoint, stormShelter, firstAid }: Brief["site"]) => ({ rallyPoint, stormShelter, firstAid });
