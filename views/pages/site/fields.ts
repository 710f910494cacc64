/** What can be told of a site, each with a form of its own. */
export const SITE_GROUPS = ["buried", "overhead", "thing", "ground", "ticketArea", "slope", "wanted"] as const;
export type SiteGroup = (typeof SITE_GROUPS)[number];
export const isGroup = (name: string): name is SiteGroup => SITE_GROUPS.some((group) => group === name);

/** Of the groups, those of which a site has many, each with a name. */
export const isListed = (group: SiteGroup): group is "buried" | "overhead" | "thing" =>
  group === "buried" || group === "overhead" || group === "thing";

/** So many points are typed in rows; a file may have more. */
export const MAX_ROWS = 24;

/** The numbers of the rows of a form in which something was typed, in order. */
export const rowsOf = (fields: Readonly<Record<string, string>>): number[] =>
  [
    ...new Set(
      Object.entries(fields).flatMap(([name, text]) => (text.trim() === "" ? [] : (/^p\.(\d{1,2})\.(?:along|off)$/.exec(name)?.[1] ?? []))),
    ),
  ]
    .map(Number)
    .filter((no) => no >= 1 && no <= MAX_ROWS)
    .sort((a, b) => a - b);
