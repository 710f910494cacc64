import type { Role } from "../../machines/install/brief.ts";
import { foldName } from "../../machines/install/person-name.ts";
import type { Fields } from "../input/form.ts";
import type { KeptPerson } from "../journal/firm.ts";
import { without } from "./belongs.ts";

/** A field of a row of the crew: its number and what it says. */
export const CREW_FIELD = /^crew\.(\d{1,3})\.(name|role|on)$/;

/** Somebody on a draft, ticked or not. */
export type CrewRow = { readonly row: number; readonly name: string; readonly role: string; readonly on: boolean };

/** The rows in which somebody stands, in their order. */
export function crewRows(f: Fields): CrewRow[] {
  const rows = [...new Set(Object.keys(f).flatMap((name) => Number(CREW_FIELD.exec(name)?.[1] ?? Number.NaN)))];
  return rows
    .filter((row) => (f[`crew.${row}.name`] ?? "").trim() !== "")
    .sort((a, b) => a - b)
    .map((row) => ({
      row,
      name: f[`crew.${row}.name`]!,
      role: f[`crew.${row}.role`] ?? usualRole(row),
      on: f[`crew.${row}.on`] === "yes",
    }));
}

/** The role that an empty row starts with: every job has a lead and a second who may answer. */
export const usualRole = (row: number): Role => (row === 1 ? "lead" : row === 2 ? "deputy" : "crew");

/** The firm's people as rows, ticked as on the last job; those of an earlier job first, and ticked, where it is copied. */
export function rowsOf(kept: readonly KeptPerson[], copied: readonly { readonly name: string; readonly role: string }[] | null): Fields {
  const first = (copied ?? []).map((person) => ({ ...person, on: true }));
  const known = new Set(first.map(({ name }) => foldName(name)));
  const others = kept
    .filter(({ name }) => !known.has(foldName(name)))
    .map(({ onLast, ...person }) => ({ ...person, on: !copied && onLast }));
  // Who was there last comes first, and is seen without scrolling.
  const rows = [...first, ...others.filter(({ on }) => on), ...others.filter(({ on }) => !on)].slice(0, MAX_ROWS);
  return Object.fromEntries(
    rows.flatMap(({ name, role, on }, i) => [
      [`crew.${i + 1}.name`, name],
      [`crew.${i + 1}.role`, role],
      [`crew.${i + 1}.on`, on ? "yes" : ""],
    ]),
  );
}

/** So many of the firm's people are offered: a form of them can be sent, and there is room for new ones under three digits. */
const MAX_ROWS = 300;

/** A draft without somebody who is not on the job. Whoever is ticked stays: only their own press takes them off a job. */
export function withoutPerson(fields: Fields, name: string): Fields {
  const gone = crewRows(fields).filter((row) => !row.on && foldName(row.name) === foldName(name));
  return without(fields, (field) => gone.some(({ row }) => field.startsWith(`crew.${row}.`)));
}
