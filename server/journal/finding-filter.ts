import { foldName } from "../../machines/install/person-name.ts";
import type { FindingFilter } from "./oversight.ts";

/** A part of a query with what fills it in. */
export type Part = { readonly sql: string; readonly given: readonly (string | number)[] };

/** Somebody by name: the whole of it, or its first words. A space is followed by "!" in the order of letters. */
const calledSo = (names: string, name: string): Part => {
  const folded = foldName(name);
  return {
    sql: `(${names}.folded = ? OR (${names}.folded > ? AND ${names}.folded < ?))`,
    given: [folded, `${folded} `, `${folded}!`],
  };
};
/** The same of a name as it is kept. */
export const isCalled = (kept: string, name: string): boolean => {
  const [folded, asked] = [foldName(kept), foldName(name)];
  return folded === asked || folded.startsWith(`${asked} `);
};

/** Rows of a table, called `t`, that a filter leaves: what stands behind FROM. Who led is found from the jobs that they led. */
function rowsOf(table: "findings" | "measures", { lead }: FindingFilter, parts: readonly Part[]): Part {
  const led = lead === null ? [] : [calledSo("n", lead)];
  const from = lead === null ? `${table} t` : `names n CROSS JOIN ${table} t ON t.job = n.job AND t.lead = n.person`;
  const all = [...led, ...parts];
  const where = all.length === 0 ? "" : ` WHERE ${all.map(({ sql }) => sql).join(" AND ")}`;
  return { sql: from + where, given: all.flatMap(({ given }) => given) };
}

const equal = (column: string, value: string | null): Part[] => (value === null ? [] : [{ sql: `t.${column} = ?`, given: [value] }]);
const days = ({ from, to }: FindingFilter): Part[] => [
  ...(from === null ? [] : [{ sql: "t.day >= ?", given: [from] }]),
  ...(to === null ? [] : [{ sql: "t.day <= ?", given: [to] }]),
];
/** Of jobs with somebody on them who is called so. */
const withSomebody = (name: string | null): Part[] => {
  if (name === null) return [];
  const { sql, given } = calledSo("c", name);
  return [{ sql: `t.job IN (SELECT c.job FROM names c WHERE ${sql})`, given }];
};
/** Whose doing it is: one of those people. */
const bySomebody = (name: string | null): Part[] => {
  if (name === null) return [];
  const { sql, given } = calledSo("c", name);
  const is = `EXISTS (SELECT 1 FROM names c WHERE c.job = t.job AND ${sql} AND instr(t.people, ' ' || c.person || ' '))`;
  return [{ sql: is, given }];
};

/** Findings that a filter leaves, with a further part of the query. */
export const findingsLeft = (filter: FindingFilter, more: readonly Part[] = []): Part =>
  rowsOf("findings", filter, [
    ...withSomebody(filter.crew),
    ...bySomebody(filter.crew),
    ...equal("kind", filter.kind),
    ...equal("phase", filter.phase),
    ...equal("state", filter.state),
    ...equal("size", filter.size),
    ...days(filter),
    ...more,
  ]);

/** Numbers that it leaves: those of jobs that somebody is on or leads. Of a job itself no phase is asked. */
export const measuresLeft = (filter: FindingFilter): Part =>
  rowsOf("measures", filter, [
    ...withSomebody(filter.crew),
    ...(filter.phase === null ? [] : [{ sql: "(t.name = ? OR t.what = 'job')", given: [filter.phase] }]),
    ...equal("size", filter.size),
    ...days(filter),
  ]);

/** Whether all that is asked is told by the counts that are kept: those of findings are by kind, phase and state, those of numbers by phase. */
export const isCounted = ({ crew, lead, size, from, to }: FindingFilter): boolean =>
  crew === null && lead === null && size === null && from === null && to === null;
