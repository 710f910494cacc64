/** Ids of people, as the record has them. No name may look like one: `as` means exactly one person. */
const PERSON_ID = /^p\d+$/i;
/** Letters that nobody sees, or that are no letters: controls, format characters, fillers, line ends, private use. */
const UNSEEN = /[\p{C}\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}\u2800]/u;

export const isPersonId = (text: string): boolean => PERSON_ID.test(text);

/** A name as it is kept: compatible and composed letters (NFKC), single spaces. */
export const cleanName = (name: string): string => name.normalize("NFKC").replaceAll(/ +/g, " ").trim();

/** A name as it is compared: José is José however it was typed, and so is JOSÉ. */
export const foldName = (name: string): string => cleanName(cleanName(name).toLowerCase());

/** Why a text is no name of a person; `null` where it is one. */
export function nameProblem(name: string): "unseen" | "noLetter" | "likeAnId" | null {
  if (UNSEEN.test(name)) return "unseen";
  if (!/[\p{L}\p{N}]/u.test(name)) return "noLetter";
  return isPersonId(cleanName(name)) ? "likeAnId" : null;
}
