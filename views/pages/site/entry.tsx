import { BURIED_KINDS, HOW_TOLD, THING_KINDS } from "../../../machines/site/model.ts";
import { SITE_WIDE_PX } from "../../drawing/site/site-frame.ts";
import type { Filled } from "../../parts/fields.tsx";
import { Choice, type Choices, Entry } from "./entry-fields.tsx";
import { isListed, MAX_ROWS, rowsOf, type SiteGroup } from "./fields.ts";
import { SiteFrame, type SitePage } from "./frame.tsx";

/** What of a site is told: a group, and of a list which one; `null`: one more. */
export type Telling = { readonly group: SiteGroup; readonly id: string | null };

export type EntryProps = SitePage &
  Omit<Filled, "words"> &
  Telling & {
    /** Of the form, so that it is taken once. A prop called `key` is the library's own, and never arrives. */
    readonly formKey: string;
    /** The points that the drawing to press on is drawn with, as its address carries them. */
    readonly drawn: string;
    /** How many points a file's line has that are more than rows are for; 0 of any other. */
    readonly many: number;
  };

/** Shown at twice its size on a desk. */
const DESK_TIMES = 2;
export const PRESSED_WIDE_PX = { narrow: SITE_WIDE_PX, wide: SITE_WIDE_PX * DESK_TIMES } as const;

/** One line, thing, area, slope or place: as numbers, or pressed on the drawing and then corrected as numbers. */
export const EntryPage = (props: EntryProps) => {
  const { state, words, group, id, formKey, drawn, values, problems } = props;
  const { siteForms: text } = words;
  const { path } = state;
  const isMore = isListed(group) && id === null;
  const takesPoints = group !== "slope";
  const image = `${path}/drawing.svg?${new URLSearchParams({ p: drawn })}`;
  return (
    <SiteFrame {...props} title={id ?? text.groups[group]}>
      <form method="post" action={`${path}/lines`} class="site-form">
        <button type="submit" class="unpressed" name="go" value="look" tabindex={-1} aria-label={text.look}></button>
        <input type="hidden" name="key" value={formKey} />
        <input type="hidden" name="of" value={group} />
        {id !== null && <input type="hidden" name="id" value={id} />}
        <input type="hidden" name="drawn" value={drawn} />
        <Fields {...props} />
        {takesPoints && props.many === 0 && (
          <>
            <p>{text.press}</p>
            <div class="pressed">
              {(["narrow", "wide"] as const).map((size) => (
                <input type="image" class={size} name={size} src={image} width={PRESSED_WIDE_PX[size]} alt={text.pressAlt} />
              ))}
            </div>
            <Points {...props} />
            <button type="submit" name="go" value="look">
              {text.look}
            </button>
            <button type="submit" name="go" value="takeOff">
              {text.takeOff}
            </button>
          </>
        )}
        {props.many > 0 && (
          <>
            <p>{text.manyPoints(props.many)}</p>
            <input type="hidden" name="many" value="yes" />
          </>
        )}
        <p>{state.job === null ? "" : isMore ? text.addTold : text.putTold}</p>
        <button type="submit" class="main" name="go" value="on">
          {state.job === null ? text.keep : isMore ? text.addNow : text.put}
        </button>
        {(id !== null || (!isListed(group) && state.site[group] !== null)) && (
          <button type="submit" name="go" value="remove">
            {text.remove}
          </button>
        )}
        {Object.entries(problems)
          .filter(([name]) => !isShownField(name, values))
          .map(([, why]) => (
            <p class="wrong">{why}</p>
          ))}
      </form>
      <a class="button" href={`${path}/lines`}>
        {text.title}
      </a>
    </SiteFrame>
  );
};

const SHOWN = [
  "kind",
  "told",
  "widthIn",
  "toleranceIn",
  "errorFt",
  "kv",
  "lowestFt",
  "shape",
  "radiusFt",
  "percent",
  "downhillDeg",
  "headingDeg",
];
const isShownField = (name: string, values: Filled["values"]): boolean =>
  SHOWN.includes(name) || new RegExp(`^p\\.(?:${rowsShown(values).join("|")})\\.`).test(name);

/** The fields of each group beside its points. */
function Fields(props: EntryProps) {
  const { words, group } = props;
  const { siteForms: text, siteDrawing } = words;
  const named = (kinds: readonly string[], names: Readonly<Record<string, string>>): Choices =>
    kinds.map((kind) => [kind, names[kind] ?? kind]);
  switch (group) {
    case "buried":
      return (
        <>
          <Choice {...props} name="kind" text={text.kind} options={named(BURIED_KINDS, siteDrawing.buried)} />
          <Choice {...props} name="told" text={text.how} options={named(HOW_TOLD, text.hows)} />
          <Entry {...props} name="widthIn" text={text.widthIn} />
          <Entry {...props} name="toleranceIn" text={text.toleranceIn} />
          <Entry {...props} name="errorFt" text={text.errorFt} />
        </>
      );
    case "overhead":
      return (
        <>
          <Entry {...props} name="kv" text={text.kv} />
          <Entry {...props} name="lowestFt" text={text.lowestFt} />
          <Entry {...props} name="errorFt" text={text.errorFt} />
        </>
      );
    case "thing":
      return (
        <>
          <Choice {...props} name="kind" text={text.kind} options={named(THING_KINDS, siteDrawing.thing)} />
          <Choice {...props} name="shape" text={text.shape} options={named(["polygon", "circle", "path"], text.shapes)} />
          <Entry {...props} name="radiusFt" text={text.radiusFt} />
          <Entry {...props} name="errorFt" text={text.errorFt} />
        </>
      );
    case "ground":
    case "ticketArea":
      return <Entry {...props} name="errorFt" text={text.errorFt} />;
    case "slope":
      return (
        <>
          <Entry {...props} name="percent" text={text.percent} />
          <Entry {...props} name="downhillDeg" text={text.downhillDeg} />
        </>
      );
    case "wanted":
      return <Entry {...props} name="headingDeg" text={text.headingDeg} />;
  }
}

/** The rows that are shown: those in which something was typed, and two more, four at least; of a place one. */
function rowsShown(values: Filled["values"], group?: SiteGroup): number[] {
  const last = group === "wanted" ? 1 : Math.min(MAX_ROWS, Math.max(4, (rowsOf(values).at(-1) ?? 0) + 2));
  return Array.from({ length: last }, (_, i) => i + 1);
}

const Points = (props: EntryProps) => {
  const { group, words, values } = props;
  const { siteForms: text } = words;
  const sides: Choices = [["right", text.sides.right], ["left", text.sides.left]]; // biome-ignore format: one line reads best
  return (
    <fieldset>
      <legend>{group === "wanted" ? text.corner : text.points}</legend>
      {rowsShown(values, group).map((no) => (
        <div class="point">
          <Entry {...props} name={`p.${no}.along`} text={text.along(no)} />
          <Entry {...props} name={`p.${no}.off`} text={text.off(no)} />
          <Choice {...props} name={`p.${no}.side`} text={text.side(no)} options={sides} />
        </div>
      ))}
    </fieldset>
  );
};
