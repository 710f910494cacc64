import { digest, type Hash } from "../digest/digest.ts";
import type { PersonId } from "../install/ids.ts";

/** What somebody is called, with what keeps it from being guessed: a salt that nobody else knows. */
export type Named = { readonly name: string; readonly salt: string };
/** The people of a job by their ids. They are kept beside the chain, and can be erased from there. */
export type People = Readonly<Record<PersonId, Named>>;
/** What stands in the chain in place of names: a name that was changed no longer fits, one that was erased leaves the chain whole. */
export type Commitments = Readonly<Record<PersonId, Hash>>;

/** A line of a record, for what it carries of people. */
type Bringing = { readonly entry: { readonly people?: Commitments } };

/** SHA-256 of a person's id, name and salt as canonical JSON: binding, and without the salt it says nothing of the name. */
export const commitmentTo = (person: PersonId, { name, salt }: Named): Hash => digest.of({ name, person, salt });

/** What an entry that brings people carries of them. */
export const commitmentsTo = (people: People): Commitments =>
  Object.fromEntries(Object.entries(people).map(([person, named]) => [person, commitmentTo(person, named)]));

/** The latest commitments of a record: an amendment may call somebody otherwise. */
export function commitmentsIn(entries: Iterable<Bringing>): Commitments {
  const all: Record<PersonId, Hash> = {};
  for (const { entry } of entries) Object.assign(all, entry.people);
  return all;
}

/** How the names that are kept beside a record stand to it. `strangers` are kept, and no entry knows them. */
export type NamesFound = {
  readonly changed: readonly PersonId[];
  readonly erased: readonly PersonId[];
  readonly strangers: readonly PersonId[];
};

/** Compares names with what the chain says of them. A record from before names were committed to says nothing: nothing is found. */
export function compareNames(entries: Iterable<Bringing>, people: People): NamesFound {
  const committed = commitmentsIn(entries);
  const known = Object.keys(committed);
  if (known.length === 0) return { changed: [], erased: [], strangers: [] };
  return {
    changed: known.filter((person) => Object.hasOwn(people, person) && commitmentTo(person, people[person]!) !== committed[person]),
    erased: known.filter((person) => !Object.hasOwn(people, person)),
    strangers: Object.keys(people).filter((person) => !Object.hasOwn(committed, person)),
  };
}
