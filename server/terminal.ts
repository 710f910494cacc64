import { LANGUAGES } from "../views/text/languages.ts";

/** What is said to whoever starts the program or verifies, copies or restores a file: a terminal asks for no language, so it is the first. */
export const [{ start, verify, backup, restore, copying }] = LANGUAGES;
