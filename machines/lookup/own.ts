/**
 * What an object has under a name itself; nothing where the name is only inherited, as `constructor` and `toString` are.
 * For names that come from outside.
 *
 * @example own({ gas: 1 }, "toString") // undefined
 */
export const own = <T>(record: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(record, name) ? record[name] : undefined;
