import { regions } from "../regions.ts";
import type { Words } from "../text/words.ts";

type Person = { readonly id: string; readonly name: string; readonly roleName: string };

/** How many people have a screen on the job now. It stands there empty too, so that a swap can fill it. */
export const Present = ({ present, words: { guide } }: { present: readonly string[]; words: Words }) => (
  <small id={regions.present}>{present.length > 0 && guide.here(present.length)}</small>
);

/** What a guide is sent when that changes. */
export const PresentLive = (props: { present: readonly string[]; words: Words }) => (
  <hx-partial hx-target={`#${regions.present}`} hx-swap="outerMorph">
    <Present {...props} />
  </hx-partial>
);

type HereProps = { readonly people: readonly Person[]; readonly present: readonly string[]; readonly words: Words };

/** Everybody on the job, those with a screen on it now first. */
export const Here = ({ people, present, words: { guide, page } }: HereProps) => {
  const isHere = ({ id }: Person) => present.includes(id);
  return (
    <ul id={regions.here} class="here">
      {[...people.filter(isHere), ...people.filter((p) => !isHere(p))].map((p) => (
        <li>
          {page.you(p.name, p.roleName)}: <b>{isHere(p) ? guide.onIt : guide.notOnIt}</b>
        </li>
      ))}
    </ul>
  );
};

/** What the page of the people is sent when that changes. */
export const HereLive = (props: HereProps) => (
  <hx-partial hx-target={`#${regions.here}`} hx-swap="outerMorph">
    <Here {...props} />
  </hx-partial>
);
