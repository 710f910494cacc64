import type { Hash } from "../../machines/digest/digest.ts";
import type { Instant } from "../../machines/install/ids.ts";

/** A saved tent as it lies in the file, not trusted yet: `spec` is `null` if it is no longer JSON, and so is `kit`, also if none was saved. */
export type SavedTent = {
  readonly id: string;
  readonly name: string;
  readonly spec: unknown;
  readonly kit: unknown;
  /** 1 when it is added, and one more with each change. */
  readonly version: number;
  readonly at: Instant;
};
export type TentBody = Pick<SavedTent, "name" | "spec" | "kit" | "at">;
/** The key of a write and the digest of what was asked with it, so that a repeat is told from a reuse. */
export type Write = { readonly key: string; readonly request: Hash };

/**
 * Tents kept for the next job. A write is done, on disk, when its promise is. Names are unique, upper and lower case being the
 * same. A key writes once; `written` tells what it wrote.
 */
export interface Catalog {
  /** By name. */
  tents(): Promise<SavedTent[]>;
  tent(id: string): Promise<SavedTent | null>;
  written(key: string): Promise<{ readonly request: Hash; readonly tent: string } | null>;
  /** Rejects with NameTaken, WriteRepeated. */
  add(id: string, body: TentBody, write: Write): Promise<void>;
  /** Replaces a tent that is still of this version. Rejects with Changed where it is not, or is gone; NameTaken, WriteRepeated. */
  change(id: string, version: number, body: TentBody, write: Write): Promise<void>;
  /** Takes a tent of this version out. Rejects with Changed where it is not, or is gone; WriteRepeated. */
  remove(id: string, version: number, write: Write): Promise<void>;
}

/** Another tent has the name. */
export class NameTaken extends Error {
  readonly by: string;
  constructor(by: string) {
    super(`the tent ${by} has this name`);
    this.name = "NameTaken";
    this.by = by;
  }
}
/** The tent or draft is of another version, or gone. */
export class Changed extends Error {
  constructor(id: string) {
    super(`${id} was changed or taken out meanwhile; read it again`);
    this.name = "Changed";
  }
}
/** The key wrote before. */
export class WriteRepeated extends Error {
  constructor(key: string) {
    super(`key ${key} was used before; answer with what it wrote`);
    this.name = "WriteRepeated";
  }
}

/** A name as it is compared: composed letters, one space between words, lower case. */
export const foldedName = (name: string): string => name.normalize("NFC").replaceAll(/\s+/g, " ").trim().toLowerCase();

/** The order of two texts by their code units, the same wherever they are kept. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
