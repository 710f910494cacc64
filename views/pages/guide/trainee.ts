import type { Screen } from "../../parts/say-form.tsx";

/** Whether a trainee looks: then each call shows unfolded what it is for. */
export const isTrainee = ({ guide: { people }, me }: Pick<Screen, "guide" | "me">): boolean =>
  people.some(({ id, role }) => id === me && role === "trainee");

/** Whether each call shows unfolded what it is for: to a trainee, and in a rehearsal that is not led without help. */
export const isUnfolded = (screen: Pick<Screen, "guide" | "me">): boolean =>
  screen.guide.site ? screen.guide.site.way === "walk" : screen.guide.rehearsal || isTrainee(screen);
