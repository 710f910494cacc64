/** What can have become of the place where entries are kept, while it was in use. */
export type Loss = "deleted" | "replaced" | "cutShort";
export type Lost = { readonly why: "lost"; readonly place: string; readonly how: Loss };
/** Why a store took nothing: no room left on `place`, `place` lost, or what the system said. */
export type Failure =
  | { readonly why: "full"; readonly place: string }
  | Lost
  | { readonly why: "failed"; readonly place: string; readonly said: string };
/** There is room for some more entries, in `freeBytes`. */
export type LowSpace = { readonly place: string; readonly freeBytes: number };
