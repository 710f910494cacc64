import { plain } from "../plain.ts";

/** Short forms as they are written, and in full. */
const IN_FULL: readonly (readonly [RegExp, string])[] = [
  [/\bcan't\b|\bcannot\b/g, "can not"],
  [/\bwon't\b/g, "will not"],
  [/\bain't\b/g, "is not"],
  [/n't\b/g, " not"],
  [/\bdont\b/g, "do not"],
  [/(?<![\p{L}])'em\b/gu, "them"],
  [/\bgotta\b/g, "got to"],
  [/\b(?:yessir|yes sir|yes ma'am)\b/g, "yes"],
  [/(?<=\p{L})'s\b/gu, " is"],
  [/(?<=\p{L})'re\b/gu, " are"],
  [/(?<=\p{L})'ve\b/gu, " have"],
  [/(?<=\p{L})'m\b/gu, " am"],
  [/(?<=\p{L})'ll\b/gu, " will"],
  [/(?<=\p{L})'d\b/gu, " would"],
  // No count: the worst of them, each of them.
  [
    /\b(every|each|worst|nearest|closest|thinnest|shortest|highest|tallest|narrowest|farthest|fewest|next|last|that|this|which|the) (?:last )?one\b/g,
    "$1",
  ],
];

/**
 * What was said, with its short forms in full and nothing but words and numbers.
 *
 * @example inFull("They're all tied.") // "they are all tied"
 */
export const inFull = (said: string): string =>
  IN_FULL.reduce((words, [short, full]) => words.replaceAll(short, full), plain(said))
    .replaceAll(/\s+/g, " ")
    .trim();

/** The words of a text in full; those with a hyphen are two. */
export const wordsOf = (text: string): string[] =>
  text
    .replaceAll(/(?<=\p{L})-(?=\p{L})/gu, " ")
    .split(" ")
    .filter((word) => word !== "");

/** What is said on its own, one after the other: "yep, all tied" is two. Commas inside numbers are none. */
export const clausesOf = (said: string): string[] =>
  said
    .split(/[,;:.!?…]+(?=\s|$)|\s[-–—]\s/)
    .map(inFull)
    .filter((clause) => clause !== "");

/** Set of words, as they are written here: with spaces between them. */
export const setOf = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter((word) => word !== ""));

/** Words that deny. */
export const NEGATIONS = setOf("no not none never nobody nothing neither without");
/** Words after which nothing is certain: doubt, a condition, an exception, what is yet to come. */
export const DOUBTS = setOf(
  "about around roughly maybe might probably almost nearly approximately like guess think hope hopefully if unless until till once when soon " +
    "but except besides or should supposed would could gonna going will later kind sort figure suppose whether least most more less than plus minus",
);
/** Small numbers: after "all" they are the whole of it, else a part. */
export const SMALL_NUMBERS = setOf("one two three four five six seven eight nine ten eleven twelve");
/** Words for a part of what was asked about. */
export const PARTS: ReadonlySet<string> = new Set([
  ...SMALL_NUMBERS,
  ...setOf("some few couple half most only just another other several"),
]);
/** What is wrong, at any gate. */
export const FAULTS = setOf(
  "off out loose gone missing bad wrong open short soft slack broken torn bent twisted swapped crooked moved slipped leaning lean leans upside down left unlocked untied damaged high",
);
/** Words that say neither: who, what, where, how. */
export const NEUTRAL = setOf(
  "it is are was were am be been being they them these those that this all every everybody everyone each both of the a an on in at to for with and so too " +
    "up there here now right nice nicely real really good we you i he she him her his their our my us me has have had got get do does did done just already " +
    "still yet sir guys man boss okay ok please again way whole entire everything anything any as can see look looks said says",
);

/** Words before an answer that say nothing: "okay", "uh". Not those that may be one, "yes" and "right" among them. */
export const LEAD_WORDS = setOf("okay ok alright uh um er so well hey now and then listen sorry please alrighty oh");
/** Phrases before an answer that say no more. */
export const LEAD_PHRASES = ["all right", "got it", "you know"] as const;
