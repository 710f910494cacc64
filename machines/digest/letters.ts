/** Letters and digits that are not taken for each other, read or said: no 0 O 1 I L. */
export const LETTERS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
const GROUP = 3;

/** A code or a digest as people type it: in either case, with spaces and dashes wherever they are. */
export const readLetters = (typed: string): string =>
  typed
    .normalize("NFKC")
    .toUpperCase()
    .replaceAll(/[\s\p{Pd}]/gu, "");

/** The same as it is shown and said, in groups of three. */
export const shownLetters = (letters: string): string => letters.match(new RegExp(`.{1,${GROUP}}`, "g"))?.join("-") ?? "";
