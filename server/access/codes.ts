import { LETTERS } from "../../machines/digest/letters.ts";

/** So many characters has the code of a crew; 31 to the sixth is 887 million. */
export const CREW_CODE_LENGTH = 6;
/** So many has the code of those who lead. */
export const LEADS_CODE_LENGTH = 9;
/** So many has a passphrase that nobody chose: 74 bits. */
export const PASSPHRASE_LENGTH = 15;

/** Gives so many random bytes. */
export type RandomBytes = (count: number) => Uint8Array;

/** A code of so many characters, each as likely as any other. */
export function makeCode(length: number, random: RandomBytes): string {
  let code = "";
  // A byte beyond the last whole turn of the alphabet would make its first letters likelier.
  const fair = 256 - (256 % LETTERS.length);
  while (code.length < length)
    for (const byte of random(length)) if (byte < fair && code.length < length) code += LETTERS[byte % LETTERS.length];
  return code;
}
