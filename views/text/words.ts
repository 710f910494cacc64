import type { en } from "./en/en.ts";

/** A language's own texts give way to any text; functions keep what they take, lists and tuples their shape. */
type Widened<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Text
    ? (...given: Given) => Widened<Text>
    : { readonly [K in keyof T]: Widened<T[K]> };

/**
 * Everything that a person reads or hears of us, in one language: page by page, then the sentences, names, numbers and
 * moments that pages share. English says what there is to say; every other language is an object of this type. A screen
 * carries the one that it is shown in, chosen for each request, and no component knows which.
 */
export interface Words extends Widened<typeof en> {}
