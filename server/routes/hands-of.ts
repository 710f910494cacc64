import { handWorkAt } from "../../machines/picture/hand-work.ts";
import type { Question } from "../../machines/rehearsal/questions/question.ts";

/** The first drawing of the hand work that belongs to what a question is about; `null` where none does. */
export const handsOf = ({ about, because }: Question): string | null =>
  [about, because].flatMap((call) => (call ? handWorkAt(call.wordsKey) : []))[0] ?? null;
