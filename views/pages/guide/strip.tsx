import { LightningShort } from "../../parts/lightning.tsx";
import { Present } from "../../parts/present.tsx";
import type { Screen } from "../../parts/say-form.tsx";
import { regions } from "../../regions.ts";

/** The wind, how far and who, in one slim strip: a press on the wind takes a reading, one on how far shows the tent and this call. */
export const Strip = ({ guide, me, access, words, words: { guide: text, page } }: Screen) => {
  const person = guide.people.find((p) => p.id === me);
  const at = (path: string) => `/jobs/${guide.job}/${path}`;
  // A clock that counts on is in no label: it is read as it stands.
  const { watched } = guide.weather;
  const takeWind = text.takeWind(guide.weather.reading, [guide.weather.words, ...(watched ? [watched.words] : [])].join(". "));
  return (
    <nav id={regions.strip} class={`strip weather-${guide.weather.is}`} aria-label={text.strip}>
      <a class="cell weather" href={at("wind")} {...(guide.weather.lightning ? { title: takeWind } : { "aria-label": takeWind })}>
        {guide.weather.reading}
        {watched && <small>{watched.short}</small>}
        {guide.weather.lightning && <LightningShort facts={guide.weather.lightning} words={words} />}
      </a>
      <a class="cell how-far" href={at("picture")}>
        {guide.rehearsal && <b class="rehearsal">{page.rehearsal}</b>}
        {access.trials && <b class="trials">{page.trials}</b>}
        <strong>{guide.toward}</strong>
        <span>{text.calls(guide.progress.at, guide.progress.of)}</span>
        <Milestones of={guide.milestones} />
      </a>
      <a class="cell holder" href={at("people")}>
        {person ? page.you(person.name, person.roleName) : text.nobodys}
        <Present present={access.present} words={words} />
      </a>
    </nav>
  );
};

/** A thin line of the milestones: reached, worked toward, ahead. Told in words beside it. */
const Milestones = ({ of }: { of: Screen["guide"]["milestones"] }) => (
  <span class="milestones" aria-hidden="true">
    {of.map(({ is }) => (
      <i class={is} />
    ))}
  </span>
);
