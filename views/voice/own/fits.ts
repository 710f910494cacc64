/** The engine that is built here, or the package's own, with a smaller model. */
export type EngineKind = "built" | "prebuilt";

/** How well sound has to fit, as the decoder tells it: better is more. */
export type Fits = {
  /** From it on sound is taken for the words that fit it best, for a hold, and for a hold picked out of other speech. */
  readonly words: number;
  readonly hold: number;
  readonly spotted: number;
  /** A hold that fits less than the best words by no more than this is what was said; and where those would let go of a hold. */
  readonly near: number;
  readonly nearRelease: number;
};

/**
 * Looked for on synthetic speech only (`npm run bench:voice`). A hold is heard generously: of sentences of the site none fits one better than
 * -45 with the engine that is built here. The package's own fits everything less well.
 */
export const FITS: Readonly<Record<EngineKind, Fits>> = {
  built: { words: -20, hold: -30, spotted: -8, near: 8, nearRelease: 20 },
  prebuilt: { words: -27, hold: -40, spotted: -8, near: 8, nearRelease: 20 },
};
