import type { People } from "../../machines/record/people.ts";

/** People by their names, each with a salt, as a journal keeps them. */
export const named = (names: Readonly<Record<string, string>>): People =>
  Object.fromEntries(Object.entries(names).map(([person, name]) => [person, { name, salt: `salt-of-${person}` }]));
