import type { Screen } from "./say-form.tsx";

type Props = Pick<Screen, "words">;

/** In a pocket's lock this stands where nothing but Hold does; the press that then unlocks lies apart from it. */
export const Unlock = ({ words }: Props) => (
  <button type="button" class="unlock" data-unlock>
    {words.guide.unlock}
  </button>
);

/** The second press. It shows for a few seconds after the first. */
export const UnlockNow = ({ words }: Props) => (
  <button type="button" class="main unlock-now" data-unlock-now>
    {words.guide.unlockNow}
  </button>
);
