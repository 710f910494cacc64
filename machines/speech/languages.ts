import { own } from "../lookup/own.ts";
import { english } from "./en/english.ts";
import type { Language } from "./language.ts";

/** The languages that can be spoken to, by the code that pages name them with (BCP 47). */
const SPOKEN: Readonly<Record<string, Language>> = { en: english };

/** What a screen in a language is spoken to in; English where that language is only written. */
export const spokenOn = (lang: string): Language => own(SPOKEN, lang) ?? english;
