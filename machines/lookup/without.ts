/**
 * A record less some of its names; the same record where it has none of them.
 *
 * @example without({ a: 1, b: 2 }, ["a"]) // { b: 2 }
 */
export const without = <T>(record: Readonly<Record<string, T>>, ids: readonly string[]): Readonly<Record<string, T>> =>
  ids.some((id) => id in record) ? Object.fromEntries(Object.entries(record).filter(([id]) => !ids.includes(id))) : record;
