import { isAlarm } from "../../machines/speech/en/alarms.ts";
import { isEchoOf } from "../../machines/speech/en/echo.ts";
import { holdsInside, isHold, isPartOf } from "../../machines/speech/en/holds.ts";
import { aloud } from "../text/en/spoken.ts";

/** What the browser has to know of a language: what it listens for, what stops the work at once, how a text is said aloud. */
type SpokenLanguage = {
  /** What a recognizer is asked for (BCP 47). */
  readonly listens: string;
  /** What stands for a hold that is lost in a flood of words. */
  readonly held: string;
  readonly isHold: (heard: string) => boolean;
  readonly holdsInside: (heard: string) => boolean;
  /** What can only stop work besides a hold: thunder, a warning, somebody hurt, everybody out. */
  readonly isAlarm: (heard: string) => boolean;
  readonly isEchoOf: (heard: string, said: string) => boolean;
  readonly isPartOf: (heard: string, said: string) => boolean;
  readonly aloud: (text: string) => string;
};

const en: SpokenLanguage = { listens: "en-US", held: "stop stop", isHold, holdsInside, isAlarm, isEchoOf, isPartOf, aloud };
const LANGUAGES: Readonly<Record<string, SpokenLanguage>> = { en };

/** The page's language. One that nobody can speak to it in is spoken as English is: its hold words are the least there is. */
export const languageHere = (): SpokenLanguage => LANGUAGES[document.documentElement.lang] ?? en;
