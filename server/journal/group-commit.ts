type Waiting = { readonly write: () => void; readonly done: () => void; readonly failed: (error: unknown) => void };

/**
 * Writes that come in the same turn of the event loop, in one transaction and so with one flush to disk, which takes longer than
 * all else. `commit` runs its argument in a transaction, on disk or not at all. Where a group fails each of its writes is done
 * again alone, so that one which cannot be done spoils no other. None is acknowledged before it is on disk.
 */
export function groupCommit(commit: (write: () => void) => void) {
  let waiting: Waiting[] = [];

  function flush() {
    const group = waiting;
    waiting = [];
    const together = () => {
      for (const { write } of group) write();
    };
    if (group.length > 1 && attempt(() => commit(together))) {
      for (const { done } of group) done();
      return;
    }
    for (const { write, done, failed } of group) {
      try {
        commit(write);
        done();
      } catch (error) {
        failed(error);
      }
    }
  }
  const run = (write: () => void): Promise<void> =>
    new Promise((done, failed) => {
      if (waiting.push({ write, done, failed }) === 1) setImmediate(flush);
    });
  /** Whatever waits is written now. */
  return { run, flush };
}

function attempt(go: () => void): boolean {
  try {
    go();
    return true;
  } catch {
    return false;
  }
}
