import type { Words } from "../../views/text/words.ts";

/** Something to be said, in whatever language it is answered in. */
export type Sentence = (words: Words) => string;
/** What is wrong, by field. */
export type Wrong = Readonly<Record<string, Sentence>>;

/** What is wrong with a request, by field, and the status it is answered with. It is put into words where it is answered. */
export class Problem extends Error {
  readonly status: 400 | 403 | 404 | 409 | 413 | 415 | 422 | 429 | 503;
  readonly sentence: Sentence;
  readonly fields: Wrong;
  constructor(status: Problem["status"], sentence: Sentence, fields: Wrong = {}) {
    super(`answered with ${status}`);
    this.name = "Problem";
    this.status = status;
    this.sentence = sentence;
    this.fields = fields;
  }
}

/** What is wrong with each field, in words. */
export const inWords = (wrong: Wrong, words: Words): Record<string, string> =>
  Object.fromEntries(Object.entries(wrong).map(([field, sentence]) => [field, sentence(words)]));
