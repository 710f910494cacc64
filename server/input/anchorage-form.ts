import type { Anchorage } from "../../machines/install/anchorage.ts";
import { ANCHORAGE_FIELDS, PULL_FIELDS } from "../../machines/install/anchorage-fields.ts";
import type { Fields } from "./form.ts";

const PREFIX = "anchorage.";
const MAX_ROWS = 250;
const typed = (fields: Fields, name: string): string => (fields[PREFIX + name] ?? "").trim();

/** Rows of pulls without those that are empty, one after the other: so nothing that was typed stands beside another row's trouble. */
export function closedUp(fields: Fields): Fields {
  const rest = Object.fromEntries(Object.entries(fields).filter(([name]) => !name.startsWith(`${PREFIX}pulls.`)));
  const rows = Array.from({ length: MAX_ROWS }, (_, i) => PULL_FIELDS.map((name) => typed(fields, `pulls.${i}.${name}`)));
  const filled = rows.filter((row) => row.some((text) => text !== ""));
  const named = filled.flatMap((row, i) => row.map((text, k) => [`${PREFIX}pulls.${i}.${PULL_FIELDS[k]}`, text]));
  return { ...rest, ...Object.fromEntries(named) };
}

/** An anchorage as its form was filled in, for `readAnchorage` to look at; `null` where nothing at all was typed. */
export function anchorageFromForm(form: Fields): object | null {
  const fields = closedUp(form);
  if (!Object.entries(fields).some(([name, text]) => name.startsWith(PREFIX) && text.trim() !== "")) return null;
  const value = (name: string) => fromTyped(typed(fields, name));
  const plain = ANCHORAGE_FIELDS.filter((name) => !name.includes("."));
  const pulls: object[] = [];
  for (let i = 0; fields[`${PREFIX}pulls.${i}.lbf`] !== undefined; i++)
    pulls.push(Object.fromEntries(PULL_FIELDS.map((name) => [name, value(`pulls.${i}.${name}`)])));
  const [coefficient, by] = [value("friction.coefficient"), value("friction.by")];
  return {
    ...Object.fromEntries(plain.map((name) => [name, value(name)])),
    sheetAllows: Object.fromEntries(["corner", "seamEnd", "side"].map((kind) => [kind, value(`sheetAllows.${kind}`)])),
    pulls,
    ...(coefficient === null && by === null ? {} : { friction: { coefficient, by } }),
  };
}

/** What was typed: nothing, yes or no, a number with its thousands apart or not, or a word that is looked at later. */
function fromTyped(text: string): string | number | boolean | null {
  if (text === "") return null;
  if (text === "yes" || text === "no") return text === "yes";
  const n = Number(text.replace(/(?<=\d),(?=\d{3})/g, ""));
  return Number.isNaN(n) ? text : n;
}

/** An anchorage as the fields of its form. */
export function anchorageToForm(anchorage: Anchorage | undefined): Fields {
  if (anchorage === undefined) return {};
  const of = (name: string): unknown =>
    name.split(".").reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], anchorage);
  const names = [...ANCHORAGE_FIELDS, ...anchorage.pulls.flatMap((_, i) => PULL_FIELDS.map((name) => `pulls.${i}.${name}`))];
  return Object.fromEntries(names.map((name) => [PREFIX + name, text(of(name))]));
}
const text = (value: unknown): string =>
  value === null || value === undefined ? "" : typeof value === "boolean" ? (value ? "yes" : "no") : String(value);
