import { beginning } from "../lookup/beginning.ts";

/** Letters that are kept of what a warning says, until when, and of who put it out: as many as of why somebody makes safe. Common practice, no source. */
export const MAX_WARNING_LETTERS = 300;

/** A warning is never refused for its length: what is longer is kept up to there, and ends in "…" to say that it goes on. Text comes without halves of letters. */
export const warningText = (text: string): string =>
  text.length > MAX_WARNING_LETTERS ? `${beginning(text, MAX_WARNING_LETTERS - 1)}…` : text;
