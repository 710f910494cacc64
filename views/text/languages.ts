import { en } from "./en/en.ts";
import type { Words } from "./words.ts";

/** Languages to choose from; the first is for whoever asks for none of them. */
export type Languages = readonly [Words, ...Words[]];

/** All the languages there are. */
export const LANGUAGES: Languages = [en];
