import type { LiveJob } from "../../../machines/conversation/live-job.ts";
import { digest, type Hash } from "../../../machines/digest/digest.ts";
import type { Frozen } from "../../../machines/install/step.ts";
import type { Picture, WindFacts } from "../../../machines/picture/picture.ts";
import { pictureOf } from "../../../machines/picture/picture-of.ts";
import { windFacts } from "../../../machines/picture/wind-facts.ts";
import type { TentPlan } from "../../../machines/tent/types.ts";
import { groundAround } from "../site/ground-around.ts";
import type { Surroundings } from "./around.tsx";
import { TURNS, type Turn, usualTurn } from "./small-frame.ts";

/** All that a screen draws of a job: where its call is, the wind, the plan with what is around it, and which way it is turned. */
export type Drawn = {
  readonly picture: Picture;
  readonly wind: WindFacts;
  readonly plan: TentPlan;
  readonly surroundings: Surroundings;
  readonly turn: Turn;
  /** By how many quarters somebody turned it from how it lies best. */
  readonly quarters: number;
};

/** What a screen draws of a job as it is now; `quarters` is how often somebody turned the plan on it. */
export function drawnOf({ job, now }: LiveJob, quarters: number): Drawn {
  const { plan } = job.frozen;
  const usual = TURNS.indexOf(usualTurn(plan));
  const turn = TURNS[(usual + quarters) % TURNS.length]!;
  return { picture: pictureOf(job, now.at), wind: windFacts(job, now.at), plan, surroundings: surroundingsOf(job.frozen), turn, quarters };
}

/** What is around a tent: without lines it is what its brief says, and the same job gives the same one. */
function surroundingsOf(frozen: Frozen): Surroundings {
  const ground = groundAround(frozen);
  if (!ground) return frozen.brief.site;
  const known = withGround.get(frozen) ?? { ...frozen.brief.site, ground };
  withGround.set(frozen, known);
  return known;
}
const withGround = new WeakMap<Frozen, Surroundings>();

/** So many letters of a digest tell one drawing of a job from the next. */
const NAME_LETTERS = 12;

/** Plans and sites stay as they are until they are amended: each is digested once. */
const digests = new WeakMap<object, Hash>();
function digestOnce(part: object): Hash {
  const known = digests.get(part) ?? digest.of(part);
  digests.set(part, known);
  return known;
}

/** Names what is drawn: two drawings with the same name look the same. */
export const nameOf = ({ picture, plan, surroundings, turn }: Drawn): string =>
  digest.of({ picture, turn, plan: digestOnce(plan), surroundings: digestOnce(surroundings) }).slice(0, NAME_LETTERS);
