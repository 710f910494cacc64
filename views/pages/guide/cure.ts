import type { Finding } from "../../../machines/install/checks/registry.ts";
import type { Gate } from "../../../machines/install/gates.ts";
import type { Status } from "../../../machines/install/refusals.ts";

/** Where the job is put right when the ground, the people or the paper are not as it says; `to` is a page of the job. */
export type Cure = { readonly fixes: "plan" | "crew" | "ticket" | "weather"; readonly to: string };

const CREW = /headcount$|^(?:strike\.)?under\.(?!hands)/;
const TICKET = /^locate\.(?:ticket|answers)$/;
const WEATHER = /^(?:forecast|storm)\./;
/** What is told there is read off that page. */
const READ_OFF = /^storm\./;
const TICKET_IS: readonly Status[] = ["outOfLimit", "early", "stale"];

/** What cures a gate that was answered truthfully and is not passed; `null` where only the work itself does. */
export function cureOf({ id }: Gate, is: Status, found: Finding | null): Cure | null {
  if (TICKET.test(id)) return TICKET_IS.includes(is) ? { fixes: "ticket", to: "amend?only=ticket" } : null;
  if (READ_OFF.test(id) && is !== "good") return { fixes: "weather", to: "weather-plan" };
  if (is !== "outOfLimit") return null;
  if (WEATHER.test(id)) return { fixes: "weather", to: "weather-plan" };
  if (CREW.test(id)) return { fixes: "crew", to: "amend?only=crew" };
  // Rings are what the cloth has, whatever the plan says.
  const off = (id === "marked" || id === "rings") && found?.kind === "figures" ? found.off[0] : undefined;
  return off ? { fixes: "plan", to: `discrepancy?what=rings&edge=${off.name}&counted=${off.n}` } : null;
}
