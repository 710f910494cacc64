import { CLIENT_WORDS } from "../regions.ts";
import type { Words } from "../text/words.ts";

let known: Words["client"] | undefined;

/** What the page says by itself, in the language it came in. */
export function clientWords(): Words["client"] {
  known ??= JSON.parse(document.getElementById(CLIENT_WORDS)!.textContent!) as Words["client"];
  return known;
}
