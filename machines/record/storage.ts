/** What can become of the place where entries are kept, while it is in use. */
export type Loss = "deleted" | "replaced" | "cutShort";
/** Entries are kept at `place` no more: nothing is written there, and what can still be read of it vouches for nothing. */
export type LostStorage = { readonly why: "lost"; readonly place: string; readonly how: Loss };
/** Why an entry could not be written: `place` is lost, has no room left, or what the system says of it. */
export type StorageFailure =
  | LostStorage
  | { readonly why: "full"; readonly place: string }
  | { readonly why: "failed"; readonly place: string; readonly said: string };
/** There is room for some more entries only. */
export type LowStorage = { readonly place: string; readonly freeBytes: number };
