const clocks = new Map<string, (at: number) => string>();

/** The time of day on a clock of a zone: "14:05". One formatter a zone: making one takes longer than using it. */
export function clock(zone: string): (at: number) => string {
  const known = clocks.get(zone);
  if (known) return known;
  const format = new Intl.DateTimeFormat("en-GB", { timeZone: zone, hour: "2-digit", minute: "2-digit" });
  const text = (at: number) => format.format(at);
  clocks.set(zone, text);
  return text;
}
