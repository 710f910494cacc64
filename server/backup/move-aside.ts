import { isTaken, move } from "./place.ts";

/** All that may belong to a data file, itself first: while only a log has its old name, no server starts there. */
const PARTS = ["", "-journal", "-wal", "-shm"] as const;

/** What was moved: the name of the data file now, and the way back, which never replaces anything. */
export type Aside = { readonly name: string; readonly moveBack: () => void };

/**
 * Moves a data file and what lies beside it to the first free name of `FILE.replaced-1`, `FILE.replaced-2` and so on. null where
 * nothing is there. All of it or nothing; throws what the system says.
 */
export function moveAside(file: string): Aside | null {
  const there = PARTS.filter((part) => isTaken(file + part));
  if (there.length === 0) return null;
  const name = freeName(file);
  const moved: string[] = [];
  const moveBack = () => {
    // The log first, for the same reason.
    while (moved.length > 0) {
      const part = moved.at(-1)!;
      move(name + part, file + part);
      moved.pop();
    }
  };
  try {
    for (const part of there) {
      move(file + part, name + part);
      moved.push(part);
    }
  } catch (error) {
    moveBack();
    throw error;
  }
  return { name, moveBack };
}

function freeName(file: string): string {
  for (let n = 1; ; n++) {
    const name = `${file}.replaced-${n}`;
    if (!PARTS.some((part) => isTaken(name + part))) return name;
  }
}
