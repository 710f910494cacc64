/**
 * Kinds of dates and times of a locale, in whatever zone: `format("clock", "Europe/Paris", at)`. Each formatter is made
 * once, as making one takes longer than using it.
 */
export function dateFormats<K extends string>(locale: string, kinds: Readonly<Record<K, Intl.DateTimeFormatOptions>>) {
  const made = new Map<string, Intl.DateTimeFormat>();
  return (kind: K, timeZone: string, at: number): string => {
    const key = `${kind} ${timeZone}`;
    const known = made.get(key) ?? new Intl.DateTimeFormat(locale, { ...kinds[kind], timeZone });
    made.set(key, known);
    return known.format(at);
  };
}
