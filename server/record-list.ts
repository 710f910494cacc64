import type { Entries } from "../machines/record/entries.ts";
import type { Sealed } from "../machines/record/entry.ts";

/**
 * A record that grows without being copied. What comes after shares the same array and sees more of it; this one stays as
 * long as it is, however the record goes on.
 */
export class RecordList implements Entries {
  readonly length: number;
  readonly #shared: Sealed[];

  constructor(shared: Sealed[], length = shared.length) {
    this.#shared = shared;
    this.length = length;
  }
  at(index: number): Sealed | undefined {
    const from = index < 0 ? this.length + index : index;
    return from < this.length ? this.#shared[from] : undefined;
  }
  slice(from = 0, to = this.length): Sealed[] {
    const whole = (index: number) => Math.min(this.length, index < 0 ? Math.max(0, this.length + index) : index);
    return this.#shared.slice(whole(from), whole(to));
  }
  *[Symbol.iterator](): ArrayIterator<Sealed> {
    for (let i = 0; i < this.length; i++) yield this.#shared[i]!;
  }
  /** The record with one entry more. */
  with(next: Sealed): RecordList {
    // Where another entry came after this one already, the two go separate ways.
    if (this.#shared.length > this.length) return new RecordList([...this, next]);
    this.#shared.push(next);
    return new RecordList(this.#shared);
  }
}
