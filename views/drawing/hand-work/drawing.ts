import type { Child } from "hono/jsx";
import type { Words } from "../../text/words.ts";

/** One frame of a drawing, in the words of whoever looks at it. */
export type DrawFrame = (words: Words) => Child;

/** Its frames in order; narrow ones stand two abreast on a phone. */
export type Drawing = { readonly frames: readonly DrawFrame[]; readonly narrow?: true };
