import type { Role } from "./brief.ts";
import type { Did } from "./commands.ts";
import type { Refusal } from "./refusals.ts";
import { mayAsk } from "./rights.ts";
import type { Judged } from "./setup.ts";

/** The outcome of a candidate that does something. */
export const did = (what: Did) => ({ type: "did" as const, params: { what } });

/** A candidate that refuses for a reason known beforehand. */
export const refuse = (...reasons: Refusal[]) => ({ actions: { type: "refuse" as const, params: { reasons } } });

/** A candidate that refuses for reasons found in the state. */
export const refuseFor = (reasons: (judged: Judged) => Refusal[]) => ({
  actions: { type: "refuse" as const, params: (judged: Judged) => ({ reasons: reasons(judged) }) },
});

export const roleRefusal = (may: readonly Role[], event: Judged["event"]): Refusal[] =>
  "role" in event ? [{ why: "role", is: event.role, may }] : [];

/** A candidate that stands first in an event and refuses those who may not ask for it, as the table of rights says. */
export const refuseUnlessAllowed = { guard: "mayNotAsk" as const, ...refuseFor(({ event }) => roleRefusal(mayAsk(event.type), event)) };
export const refuseIfHeld = [
  { guard: "held" as const, ...refuseFor(({ context }) => [{ why: "held", by: context.heldBy }]) },
  { guard: "paused" as const, ...refuseFor(({ context }) => [{ why: "paused", by: context.heldBy }]) },
];
