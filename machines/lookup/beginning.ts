/**
 * The beginning of a text, of at most so many letters. Half of a letter that is written as two would be no letter: it goes too.
 *
 * @example beginning("gas main", 3) // "gas"
 */
export const beginning = (text: string, letters: number): string => text.slice(0, letters).replace(/[\uD800-\uDBFF]$/, "");
