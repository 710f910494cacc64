import { Temporal } from "temporal-polyfill";

/** Letters and digits that a paper's number has at least, one of them a digit: a stroke on a pad is no number. A design figure. */
const LEAST = 4;

/** Whether a text can be the number of a paper, or of a sheet. */
export const isPaperNumber = (text: string): boolean => (text.match(/[\p{L}\p{N}]/gu) ?? []).length >= LEAST && /\p{Nd}/u.test(text);

/** Whether a text is a day of the calendar, as 2026-06-01. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    return Temporal.PlainDate.from(text, { overflow: "reject" }).toString() === text;
  } catch {
    return false;
  }
}
