/** Stands for a number in what may be said. */
export const NUMBER = "#";

/**
 * What may be said at a call, for engines that have to be told their words and for people who ask. `answers`, the likeliest first,
 * answer what is asked; `orders` are commands and replies to a read-back; `holds` stop work. `NUMBER` stands for any number.
 */
export type Sayable = {
  readonly answers: readonly string[];
  readonly orders: readonly string[];
  readonly questions: readonly string[];
  readonly holds: readonly string[];
};
