import type { AnswerParser } from "./asked.ts";

/** A paper by its number. Spaces and dashes are the recognizer's own: the expected number is taken as it is written. */
export const parseDocument: AnswerParser<"document"> = (said, { expected }) => {
  const bare = (text: string) => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
  const named = said.replace(/^(?:ticket number|number|ticket|sheet|paper) /i, "");
  if (expected !== null && bare(named) === bare(expected)) return { kind: "document", named: expected };
  // Papers have numbers; without one it is talk.
  const talk = said.split(" ").length > 5 || /\b(?:no|not|wrong|give|me|it's|is|us)\b|n't\b/i.test(said);
  return said.length <= 80 && /\d/.test(said) && !talk ? { kind: "document", named: said } : { notUnderstood: true };
};
