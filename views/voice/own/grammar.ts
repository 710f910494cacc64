import type { Pronunciations } from "./decoder.ts";

/** What is listened for: `open` through an open microphone, `talk` while the button is held. Phrases are as in `Sayable`. */
export type Phrases = { readonly open: readonly string[]; readonly talk: readonly string[] };

/**
 * What this phone's own engine listens for at a call: `always` and the call's own `answers`, apart, because the engine keeps what it was told
 * for good. `holds` are listened for at any time, and are in none of the others; `releases` are those that let go of a hold. `ways` is how all the
 * words are said.
 */
export type EarGrammar = {
  readonly always: Phrases;
  readonly answers: Phrases;
  readonly holds: readonly string[];
  readonly releases: readonly string[];
  readonly ways: Pronunciations;
};
