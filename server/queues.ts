/** Does tasks one after the other under each name; tasks under different names do not wait for one another. */
export function createQueues() {
  const last = new Map<string, Promise<unknown>>();
  /** What the task gives, once those before it under this name are over, however they went. */
  return function inTurn<T>(name: string, task: () => Promise<T>): Promise<T> {
    const before = last.get(name) ?? Promise.resolve();
    const mine = before.then(task);
    const over = mine
      .catch(() => {})
      .then(() => {
        if (last.get(name) === over) last.delete(name);
      });
    last.set(name, over);
    return mine;
  };
}
