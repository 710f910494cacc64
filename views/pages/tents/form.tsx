import { own } from "../../../machines/lookup/own.ts";
import { Field, type Filled, type Values } from "../../parts/fields.tsx";
import { Page } from "../../parts/page.tsx";
import { type Preview, TentPart } from "../../parts/tent-part.tsx";
import type { Words } from "../../text/words.ts";

export type TentFormProps = Filled & {
  title: string;
  action: string;
  message: string | null;
  preview: Preview;
  newKey: () => string;
  /** The version that is edited; left out for a new tent. */
  version?: number;
  /** What somebody else stored meanwhile. */
  storedNow?: Values;
  /** Offers the usual tent of a size. */
  sizes?: boolean;
};

/** A tent of the list as a form: to add it, or to change it. Nothing typed is lost. */
export const TentFormPage = ({
  title,
  action,
  message,
  values,
  problems,
  preview,
  newKey,
  version,
  storedNow,
  sizes,
  ...rest
}: TentFormProps) => {
  const { words } = rest;
  const { fields, openJob, tents } = words;
  return (
    <Page words={words} title={title} styles="tent-form">
      <main class="open tent-form">
        <h1>{title}</h1>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        {storedNow && <Stored now={storedNow} typed={values} words={words} />}
        {sizes && (
          <form method="get" action="/tents/new" class="size">
            <h2>{tents.startSize}</h2>
            <label>
              {fields["tent.widthFt"]?.label}
              <input name="width" value={values["tent.widthFt"] ?? ""} required maxlength={20} autocomplete="off" />
            </label>
            <label>
              {fields["tent.lengthFt"]?.label}
              <input name="length" value={values["tent.lengthFt"] ?? ""} required maxlength={20} autocomplete="off" />
            </label>
            <button type="submit">{openJob.usual}</button>
          </form>
        )}
        <form method="post" action={action}>
          <input type="hidden" name="key" value={newKey()} />
          {version !== undefined && <input type="hidden" name="version" value={String(version)} />}
          <Field name="name" values={values} problems={problems} words={words} />
          <TentPart values={values} problems={problems} words={words} preview={preview} />
          <button type="submit" class="main">
            {tents.save}
          </button>
        </form>
        <a class="button" href={version === undefined ? "/tents" : action}>
          {version === undefined ? tents.back : tents.backTo}
        </a>
      </main>
    </Page>
  );
};

const said = (field: string, text: string | undefined, { choices, tents }: Words) =>
  text ? (own(choices, `${field}:${text}`) ?? own(choices, text) ?? text) : tents.empty;

/** Field by field what is stored now, where it is not what was typed. */
const Stored = ({ now, typed, words }: { now: Values; typed: Values; words: Words }) => {
  const { fieldName, tents } = words;
  const differ = Object.keys(now).filter((field) => (now[field] ?? "") !== (typed[field] ?? "").trim() && field !== "tent.ridge.kind");
  return (
    <section>
      <p>{tents.differs}</p>
      <table class="facts">
        <thead>
          <tr>
            <th scope="col">{tents.field}</th>
            <th scope="col">{tents.storedNow}</th>
            <th scope="col">{tents.typed}</th>
          </tr>
        </thead>
        <tbody>
          {differ.map((field) => (
            <tr>
              <th scope="row">{fieldName(field)}</th>
              <td>{said(field, now[field], words)}</td>
              <td>{said(field, typed[field], words)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
