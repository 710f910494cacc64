/** What fills the words in: the call's own values. */
export type WordParams = Readonly<Record<string, string | number>>;
/** The words of one call: what the guide says, what its gate asks, why, how it goes wrong, how it is done well, and what to do when it cannot be met. */
export type CallText = {
  readonly say: (of: WordParams) => string;
  readonly ask?: (of: WordParams) => string;
  readonly why: string;
  /** What goes wrong when it is skipped or hurried: the mistake as it really happens on a site, and what it leads to. */
  readonly wrong: string;
  /** How an experienced hand does it: the movement, the order, where to stand, what to look at, how to check. */
  readonly well: string;
  readonly ifNot?: string;
  /** The call with its answer in one short sentence, for the thread. */
  readonly told?: (of: WordParams, value: string) => string;
  /** Where "none" is an answer: asked once more before it counts. */
  readonly none?: string;
};
export type CallTexts = Readonly<Record<string, CallText>>;
