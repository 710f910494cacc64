import type { ReadGeoJson } from "../../../machines/site/geo-json.ts";
import { SiteDrawing } from "../../drawing/site/site-drawing.tsx";
import type { Filled } from "../../parts/fields.tsx";
import { Wrong } from "../../parts/fields.tsx";
import { wrongId } from "../../regions.ts";
import { Choice, Entry } from "./entry-fields.tsx";
import { SiteFrame, type SitePage } from "./frame.tsx";
import { SiteKey } from "./key.tsx";
import type { SiteState } from "./state.ts";

/** What was read of a file, with the site as it would be. */
export type Imported = { readonly read: Extract<ReadGeoJson, { site: unknown }>; readonly state: SiteState };

type Props = SitePage &
  Omit<Filled, "words"> & {
    /** Of the form, so that it is taken once. A prop called `key` is the library's own, and never arrives. */
    readonly formKey: string;
    /** What all of a file may be said to be. */
    readonly meanings: readonly string[];
    readonly imported: Imported | null;
  };

/** Problems are shown up to this many: one that is everywhere is understood sooner. */
const MAX_SHOWN = 8;

/** A site read from a GeoJSON file: told where the baseline lies, shown as it was read, and only then put forward. */
export const ImportPage = (props: Props) => {
  const { state, words, formKey, values, problems, meanings, imported } = props;
  const { siteForms: text, siteDrawing } = words;
  const names: Readonly<Record<string, string>> = {
    ...siteDrawing.buried,
    ...siteDrawing.thing,
    overhead: siteDrawing.overhead,
    ground: text.groups.ground,
    ticketArea: text.groups.ticketArea,
  };
  const elsewhere = Object.entries(problems).filter(([name]) => !["lon", "lat", "bearing", "text"].includes(name));
  const replace = values.replace === "instead" ? "instead" : "beside";
  return (
    <SiteFrame {...props} title={text.importTitle}>
      {elsewhere.length > 0 && (
        <ul class="site-list">
          {elsewhere.slice(0, MAX_SHOWN).map(([name, why]) => (
            <li class="wrong">{text.at(name.replace(/^siteModel\.?/, ""), why)}</li>
          ))}
        </ul>
      )}
      {elsewhere.length > MAX_SHOWN && <p>{text.more(elsewhere.length - MAX_SHOWN)}</p>}
      {imported && <Read {...props} imported={imported} />}
      <form method="post" action={`${state.path}/import`} enctype="multipart/form-data" class="site-form">
        <p>{text.importIntro}</p>
        <input type="hidden" name="key" value={formKey} />
        <Entry name="lon" text={text.lon} {...{ values, problems, words }} />
        <Entry name="lat" text={text.lat} {...{ values, problems, words }} />
        <Entry name="bearing" text={text.bearing} {...{ values, problems, words }} />
        <Choice
          name="as"
          text={text.as}
          options={[["", text.asRead], ...meanings.map((one) => [one, names[one] ?? one] as const)]}
          {...{ values, problems, words }}
        />
        {state.isTold && (
          <Choice
            name="replace"
            text={text.replace}
            options={[
              ["beside", text.replaces.beside],
              ["instead", text.replaces.instead],
            ]}
            values={{ replace }}
            problems={problems}
            words={words}
          />
        )}
        <label for="f-file">
          <span>{text.file}</span>
          <input id="f-file" type="file" name="file" accept=".geojson,.json,application/geo+json,application/json" />
        </label>
        <label for="f-text">
          <span>{text.text}</span>
          <textarea id="f-text" name="text" rows={4} autocomplete="off" spellcheck={false} aria-describedby={wrongId("text")}>
            {values.text ?? ""}
          </textarea>
          <Wrong name="text" problems={problems} />
        </label>
        <button type="submit" class={imported ? "" : "main"} name="go" value="read">
          {text.read}
        </button>
        {imported && (
          <button type="submit" class="main" name="go" value="take">
            {state.job === null ? text.takeDraft : text.take}
          </button>
        )}
      </form>
      <a class="button" href={state.path}>
        {text.back}
      </a>
    </SiteFrame>
  );
};

const Read = ({ words, imported: { read, state } }: Props & { imported: Imported }) => {
  const { siteForms: text } = words;
  const { site, roundingErrorFt, projectionErrorFt } = read;
  const areas = [site.ground, site.ticketArea].filter((area) => area !== null).length;
  return (
    <section>
      <p>
        <b>{text.readTold({ buried: site.buried.length, overhead: site.overhead.length, things: site.things.length })}</b>{" "}
        {areas > 0 && text.areasRead(areas)}
      </p>
      <p>{text.errorTold(roundingErrorFt, projectionErrorFt)}</p>
      <div class="site-top">
        <figure class="site-figure">
          <SiteDrawing {...state} words={words} id="read" />
        </figure>
        <SiteKey site={state.site} isShort={state.clearances.neighbors.some((n) => n.short.length > 0)} words={words} />
      </div>
    </section>
  );
};
