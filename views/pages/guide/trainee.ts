import type { Screen } from "../../parts/say-form.tsx";

/** Whether a trainee looks: then each call shows unfolded what it is for. */
export const isTrainee = ({ guide: { people }, me }: Pick<Screen, "guide" | "me">): boolean =>
  people.some(({ id, role }) => id === me && role === "trainee");
