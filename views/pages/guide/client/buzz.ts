/** Felt through a glove: short for on, twice for no, a flutter for a question, long for stop. In ms. */
export const BUZZES = { moved: [60], refused: [120, 80, 120], readBack: [40, 40, 40, 40, 40], hold: [500] } as const;
/** Before anybody has touched the page a browser lets nothing buzz. */
export function buzz(kind: keyof typeof BUZZES): void {
  if (navigator.userActivation?.hasBeenActive !== false) navigator.vibrate?.([...BUZZES[kind]]);
}
