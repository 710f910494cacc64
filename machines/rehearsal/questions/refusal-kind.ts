import type { Refusal } from "../../install/refusals.ts";

/** Why the guide refused, as a question tells it. */
export type RefusalKind =
  | Refusal["why"]
  | "open"
  | "outOfLimit"
  | "stale"
  | "samePerson"
  | "early"
  | "windTooOld"
  | "tooMuchWind"
  | "thunder";

/** The chart's own reason, told apart as far as a crew does: a gate by how it stands. */
export function refusalKind(refusal: Refusal): RefusalKind {
  if (refusal.why !== "gate") return refusal.why;
  const { gate, status } = refusal;
  if (gate === "thunder") return "thunder";
  if (gate.startsWith("wind.")) return status === "outOfLimit" ? "tooMuchWind" : status === "stale" ? "windTooOld" : "open";
  switch (status) {
    case "outOfLimit":
    case "stale":
    case "samePerson":
    case "early":
      return status;
    default:
      return "open";
  }
}
