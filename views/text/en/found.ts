import type { Finding } from "../../../machines/install/checks/registry.ts";
import { CHECK_TEXT } from "./checks.ts";

/** What an answer comes to, in a sentence; `null` where that is no more than its value. */
export function foundText(finding: Finding | null): string | null {
  if (finding === null) return null;
  const text = CHECK_TEXT[finding.kind] as { found: (finding: Finding) => string };
  return text.found(finding);
}
