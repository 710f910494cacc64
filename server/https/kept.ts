import { readFileSync } from "node:fs";
import { start } from "../terminal.ts";

/** What is kept for https cannot be used. The message is one sentence for a person; no file was touched. */
export class CertificateUnusable extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = "CertificateUnusable";
  }
}

/** A certificate, or a certificate with all that is kept with it, and its key: both in PEM. */
export type Pair = { readonly certificate: string; readonly key: string };

/** The text of a kept file; null if there is none. Throws CertificateUnusable if it cannot be read. */
export function readKept(file: string): string | null {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    if (codeOf(error) === "ENOENT") return null;
    throw new CertificateUnusable(start.https.cannotRead(file, reasonOf(error)));
  }
}

/** Node's name of what went wrong, as "ENOENT". */
export const codeOf = (error: unknown): string | undefined => (error as { code?: string }).code;
/** What the system says, without its call and path: "EACCES: permission denied". */
export const reasonOf = (error: unknown): string => (error as Error).message.split(", ")[0]!;
