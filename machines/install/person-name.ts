import { UNSEEN } from "../lookup/unseen.ts";

/** Ids of people, as the record has them. No name may look like one: `as` means exactly one person. */
const PERSON_ID = /^p\d+$/i;

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
