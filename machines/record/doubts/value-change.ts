import { givenParts } from "../../install/checks/any-check.ts";
import type { Check, Value } from "../../install/gates.ts";
import type { Doubt } from "./doubt.ts";

/**
 * What changed from one answer at a gate to the next: `was` and `is`, with `unit` where they are in one, and with `name` where
 * it is the first of several figures that is another one now.
 */
export function changeOf(check: Check, was: Value, is: Value): Doubt["facts"] {
  const unit = unitOf(check);
  const [before, after] = [givenParts(check, was), givenParts(check, is)];
  const name = Object.keys(after).find((part) => before[part] !== after[part]);
  if (name === undefined) return { was: told(was), is: told(is), ...unit };
  const part = (n: number | undefined): number | string => (check.kind === "each" ? (n === 1 ? "yes" : "no") : (n ?? "none"));
  return { name, was: part(before[name]), is: part(after[name]), ...unit };
}

function unitOf(check: Check): Doubt["facts"] {
  if (check.kind === "lengths") return { unit: "ft" };
  return "unit" in check && check.unit !== "count" ? { unit: check.unit } : {};
}

function told(value: Value): number | string {
  switch (value.kind) {
    case "yesNo":
      return value.yes ? "yes" : "no";
    case "count":
    case "measure":
      return value.n;
    case "document":
      return value.named;
    default:
      return value.kind;
  }
}
