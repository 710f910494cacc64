import type { Journal } from "../../server/journal/journal.ts";

/** A call that waits: its name, and the job or tent that it is about, where it is about one. */
type Call = { readonly name: string; readonly about: string | null };

/** A journal over another one whose calls are each done late: when they are let go, and the newest first. */
export function lateJournal(inner: Journal) {
  const waiting: (Call & { readonly go: () => void })[] = [];
  const late = <T extends object>(store: T): T =>
    new Proxy(store, {
      get: (target, name: keyof T & string) => {
        const known = target[name];
        if (typeof known !== "function" || name === "close") return known;
        return (...given: unknown[]) =>
          new Promise((resolve, reject) => {
            const go = () => void known.apply(target, given).then(resolve, reject);
            waiting.push({ name, about: aboutOf(given[0]), go });
          });
      },
    });
  const turn = () => new Promise((resolve) => setImmediate(resolve));
  /** Lets calls go, the newest first and one at a time, until what is waited for is there. Those named by `but` stay. */
  async function until<T>(wanted: Promise<T>, but: (call: Call) => boolean = () => false): Promise<T> {
    let there = false;
    const over = () => {
      there = true;
    };
    wanted.then(over, over);
    for (await turn(); !there; await turn()) {
      const at = waiting.findLastIndex((call) => !but(call));
      if (at >= 0) waiting.splice(at, 1)[0]!.go();
    }
    return wanted;
  }
  return { journal: late({ ...inner, catalog: late(inner.catalog) }), until };
}

const aboutOf = (first: unknown): string | null =>
  typeof first === "string" ? first : ((first as { entry?: { job: string } } | undefined)?.entry?.job ?? null);
