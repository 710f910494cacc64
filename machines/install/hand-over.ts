import type { Brief, Role } from "./brief.ts";
import type { PersonId } from "./ids.ts";

/** To whom a lead may be handed over. */
export const MAY_LEAD: readonly Role[] = ["deputy", "competent"];

/** The same job under another lead; who led before is deputy. */
export const withLead = (brief: Brief, lead: PersonId): Brief => ({
  ...brief,
  crew: brief.crew.map((p) => (p.id === lead ? { ...p, role: "lead" } : p.role === "lead" ? { ...p, role: "deputy" } : p)),
});
