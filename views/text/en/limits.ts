import type { Finding } from "../../../machines/install/checks/registry.ts";
import type { Gate, Source, Value } from "../../../machines/install/gates.ts";
import { CHECK_TEXT, VALUE_TEXT } from "./checks.ts";

/** What a gate takes as good. */
export function limitText({ check }: Pick<Gate, "check">): string {
  const text = CHECK_TEXT[check.kind] as { limit: (check: Gate["check"]) => string };
  return text.limit(check);
}

/** An answer as it was given. */
export function valueText(value: Value): string {
  const text = VALUE_TEXT[value.kind] as (value: Value) => string;
  return text(value);
}

/** What an answer comes to: which mark to move, what is short. */
export function findingText(finding: Finding): string {
  const text = CHECK_TEXT[finding.kind] as { found: (finding: Finding) => string };
  return text.found(finding);
}

const SOURCES: Readonly<Record<Extract<Source, string>, string>> = {
  practice: "common practice, no source",
  memory: "from memory",
  sheet: "this tent's sheet",
  brief: "this job's brief",
};
/** A published title stays in the language that it was published in. */
export const sourceText = (source: Source): string => (typeof source === "string" ? SOURCES[source] : `${source.title}, ${source.section}`);
