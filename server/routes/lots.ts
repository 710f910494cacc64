/** Entries or jobs that are put on a page at a time; between two lots whoever else has something to say is answered. */
const LOT = 100;

/** Items in lots of about so much weight. */
export function* lots<T>(items: readonly T[], weightOf: (item: T) => number): Generator<readonly T[]> {
  let lot: T[] = [];
  let weight = 0;
  for (const item of items) {
    lot.push(item);
    weight += weightOf(item);
    if (weight < LOT) continue;
    yield lot;
    lot = [];
    weight = 0;
  }
  yield lot;
}

/** What can be put on a page. */
export type Rendered = { toString: () => string | Promise<string> };

/** A lot of items, each as it is viewed. */
export const rendered = async <T>(items: readonly T[], view: (item: T) => Rendered): Promise<string> =>
  (await Promise.all(items.map((item) => view(item).toString()))).join("");
