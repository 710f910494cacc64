import type { Instant } from "../../machines/install/ids.ts";
import { compareText, foldedName } from "./catalog.ts";
import type { Firm, ForNextJob, KeptPerson } from "./firm.ts";

/** What the firm keeps, for as long as the program lasts. */
export function memoryFirm(): Firm {
  const people = new Map<string, KeptPerson & { readonly at: Instant }>();
  const sheets = new Map<string, NonNullable<ForNextJob["sheet"]>>();
  return {
    people: async () => [...people].sort(([a], [b]) => compareText(a, b)).map(([, { name, role, onLast }]) => ({ name, role, onLast })),
    sheet: async (tent, digest) => {
      const kept = sheets.get(tent);
      return kept?.digest === digest ? structuredClone(kept.sheet) : null;
    },
    keep: async (job) => {
      for (const [folded, person] of people) people.set(folded, { ...person, onLast: false });
      for (const { name, role } of job.people) people.set(foldedName(name), { name, role, onLast: true, at: job.at });
      if (job.sheet) sheets.set(job.sheet.tent, structuredClone(job.sheet));
    },
    forget: async (name) => void people.delete(foldedName(name)),
    forgetBefore: async (at) => {
      for (const [folded, person] of people) if (person.at < at) people.delete(folded);
    },
  };
}
