import type { Words } from "../../views/text/words.ts";

const folded = (text: string) => text.trim().toLowerCase();

/** The soil that a sheet names; empty where it says, in any of these languages, that it names none. */
export const namedSoil = (soil: string | undefined, languages: readonly Words[]): string =>
  languages.some(({ draft }) => folded(draft.soilNotNamed) === folded(soil ?? "")) ? "" : (soil ?? "").trim();
