/** What the guide says to what it heard. */
export const voice = {
  sayFirst: (wakeWord: string) => `For that, say "${wakeWord}" first, or hold Talk.`,
  or: ", or ",
  sayCorrect: 'Say "correct", or "wrong".',
} as const;
