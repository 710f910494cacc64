/** What fills the words in: the call's own values. */
export type Of = Readonly<Record<string, string | number>>;
/** The words of one call: what the guide says, what its gate asks, why, and what to do when it cannot be met. */
export type CallWords = {
  readonly say: (of: Of) => string;
  readonly ask?: (of: Of) => string;
  readonly why: string;
  readonly ifNot?: string;
};
export type Words = Readonly<Record<string, CallWords>>;
