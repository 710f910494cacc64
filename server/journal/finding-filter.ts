import { foldName } from "../../machines/install/person-name.ts";
import type { FindingFilter } from "./oversight.ts";

/** A part of a query with what fills it in. */
export type Where = { readonly sql: string; readonly given: readonly (string | number)[] };

/** Somebody by name: the whole of it, or its first words. A space is followed by "!" in the order of letters. */
const calledSo = (name: string): Where => {
  const folded = foldName(name);
  return { sql: "(folded = ? OR (folded > ? AND folded < ?))", given: [folded, `${folded} `, `${folded}!`] };
};
/** The same of a name as it is kept. */
export const isCalled = (kept: string, name: string): boolean => {
  const [folded, asked] = [foldName(kept), foldName(name)];
  return folded === asked || folded.startsWith(`${asked} `);
};

const equal = (column: string, value: string | null): Where[] => (value === null ? [] : [{ sql: `${column} = ?`, given: [value] }]);
const days = ({ from, to }: FindingFilter): Where[] => [
  ...(from === null ? [] : [{ sql: "day >= ?", given: [from] }]),
  ...(to === null ? [] : [{ sql: "day <= ?", given: [to] }]),
];
/** Rows of a table with somebody so called: found from their jobs, as a name is on few of them. */
const withSomebody = (table: string, name: string | null, isThem: string): Where[] => {
  if (name === null) return [];
  const { sql, given } = calledSo(name);
  return [{ sql: `rowid IN (SELECT t.rowid FROM names n CROSS JOIN ${table} t ON t.job = n.job${isThem} WHERE ${sql})`, given }];
};

const all = (parts: readonly Where[]): Where => ({
  sql: parts.length === 0 ? "" : `WHERE ${parts.map(({ sql }) => sql).join(" AND ")}`,
  given: parts.flatMap(({ given }) => given),
});

/** Which findings a filter leaves, and a further part of the query. */
export const findingsWhere = (filter: FindingFilter, more: readonly Where[] = []): Where =>
  all([
    ...withSomebody("findings", filter.crew, " AND instr(t.people, ' ' || n.person || ' ')"),
    ...withSomebody("findings", filter.lead, " AND t.lead = n.person"),
    ...equal("kind", filter.kind),
    ...equal("phase", filter.phase),
    ...equal("state", filter.state),
    ...equal("size", filter.size),
    ...days(filter),
    ...more,
  ]);

/** Which numbers it leaves: those of jobs that somebody is on or leads. Of a job itself no phase is asked. */
export const measuresWhere = (filter: FindingFilter): Where =>
  all([
    ...withSomebody("measures", filter.crew, ""),
    ...withSomebody("measures", filter.lead, " AND t.lead = n.person"),
    ...(filter.phase === null ? [] : [{ sql: "(name = ? OR what = 'job')", given: [filter.phase] }]),
    ...equal("size", filter.size),
    ...days(filter),
  ]);

/** Whether all that is asked is told by the counts that are kept: those of findings are by kind, phase and state, those of numbers by phase. */
export const isCounted = ({ crew, lead, size, from, to }: FindingFilter): boolean =>
  crew === null && lead === null && size === null && from === null && to === null;
