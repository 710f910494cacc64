import type { AnswerParser } from "./asked.ts";

/** A document by its number. Spaces and dashes are ignored, because the recognizer adds its own; the expected spelling is kept. */
export const parseDocument: AnswerParser<"document"> = (said, { expected }) => {
  const bare = (text: string) => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, "");
  const named = said.replace(/^(?:ticket number|number|ticket|sheet|paper) /i, "");
  if (expected !== null && bare(named) === bare(expected)) return { kind: "document", named: expected };
  // Documents have numbers; words without one are talk.
  const talk = said.split(" ").length > 5 || /\b(?:no|not|wrong|give|me|it's|is|us)\b|n't\b/i.test(said);
  return said.length <= 80 && /\d/.test(said) && !talk ? { kind: "document", named: said } : { notUnderstood: true };
};
