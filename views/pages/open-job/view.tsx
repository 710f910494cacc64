import { INTERIOR_ORDERS, INTERIOR_TIES, PAPERWORK } from "../../../machines/install/brief-choices.ts";
import { FACTS } from "../../../machines/install/facts.ts";
import { ROLES } from "../../../machines/install/roles.ts";
import { UTILITIES } from "../../../machines/install/utilities.ts";
import { EDGES } from "../../../machines/tent/types.ts";
import { Changes } from "../../parts/changes.tsx";
import { Field, type Filled, Wrong } from "../../parts/fields.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import type { Where } from "../../parts/page-header.tsx";
import { type Preview, TentPart } from "../../parts/tent-part.tsx";
import type { Effect } from "../guide/state.ts";

export type OpenJobProps = Filled & {
  preview: Preview;
  message: string | null;
  action: string;
  newKey: () => string;
  /** The job that is changed; none where one is opened. */
  amending?: string;
  /** Only a part of it is changed; the rest stays as it stands and is not shown. */
  only?: AmendedPart | null;
  /** What an amendment would change, where that was asked. */
  effect?: Effect;
  hurt?: HurtState | null;
};

/** Parts of a brief that are changed by themselves: a call that refuses leads straight to the one it means. */
export const AMENDED_PARTS = ["crew", "ticket"] as const;
export type AmendedPart = (typeof AMENDED_PARTS)[number];

const OPTIONS: Readonly<Record<string, readonly string[]>> = {
  rehearsal: ["no", "yes"],
  "sheet.interiorOrder": INTERIOR_ORDERS,
  "sheet.interiorTies": INTERIOR_TIES,
  "site.soilKnown": ["no", "yes"],
  "site.street.edge": ["", ...EDGES],
  "use.permit": PAPERWORK,
  "use.fabricCertificate": PAPERWORK,
  "use.walls": ["yes", "no"],
  "use.hungLoads": ["no", "yes"],
};
const MIN_ROWS = 12;
/** Rows enough for everybody who is on the crew, and two more. */
const crewRows = (values: Filled["values"]): number =>
  Math.max(MIN_ROWS, ...Object.keys(values).flatMap((name) => (/^crew\.(\d+)\.name$/.exec(name) ?? []).slice(1).map((n) => Number(n) + 2)));

const Group = ({ title, names, values, problems, words }: Filled & { title: string; names: readonly string[] }) => (
  <fieldset>
    <legend>{title}</legend>
    {names.map((name) => (
      <Field name={name} values={values} problems={problems} words={words} options={OPTIONS[name]} />
    ))}
  </fieldset>
);

const namesIn = (group: string, fields: Filled["words"]["fields"]) => Object.keys(fields).filter((f) => f.startsWith(`${group}.`));

const Ticket = (part: Filled) => {
  const { values, problems, words } = part;
  // Of a ticket that is there, what is not on it is not; of one that is yet to come, nobody knows.
  const answers = values["ticket.number"]
    ? ["notOnTicket", "unanswered", "marked", "clear"]
    : ["unanswered", "marked", "clear", "notOnTicket"];
  return (
    <fieldset>
      <legend>{words.groups.ticket}</legend>
      {values["ticket.order"] && <input type="hidden" name="ticket.order" value={values["ticket.order"]} />}
      {namesIn("ticket", words.fields).map((name) => (
        <Field name={name} {...part} />
      ))}
      {UTILITIES.map((u) => (
        <Field name={`ticket.utilities.${u}`} text={words.utilityName(u)} options={answers} {...part} />
      ))}
      <Wrong name="ticket.utilities" problems={problems} />
    </fieldset>
  );
};

const Crew = ({ values, problems, words }: Filled) => (
  <fieldset>
    <legend>{words.groups.crew}</legend>
    <Wrong name="crew" problems={problems} />
    {Array.from({ length: crewRows(values) }, (_, i) => i + 1).map((n) => (
      <div class="person">
        <input
          name={`crew.${n}.name`}
          value={values[`crew.${n}.name`] ?? ""}
          maxlength={60}
          aria-label={words.openJob.person(n)}
          autocomplete="off"
        />
        <select name={`crew.${n}.role`} aria-label={words.openJob.person(n)}>
          {ROLES.map((r) => (
            <option value={r} selected={(values[`crew.${n}.role`] ?? (n === 1 ? "lead" : n === 2 ? "deputy" : "crew")) === r}>
              {words.roleName(r)}
            </option>
          ))}
        </select>
      </div>
    ))}
  </fieldset>
);

/** A change is a page of its job. */
const whereOf = (amending: string | undefined, { title = "" }: Filled["values"]): Where =>
  amending === undefined ? { on: null } : { on: null, job: { id: amending, title } };

/** The brief as one form: to open a job, or to change one. What was wrong stands beside its field; nothing typed is lost. */
export const OpenJobPage = ({ values, problems, words, preview, message, action, newKey, amending, only, effect, hurt }: OpenJobProps) => {
  const part = { values, problems, words };
  const { fields, groups, openJob: text } = words;
  const named = (group: string) => namesIn(group, fields);
  return (
    <Page
      words={words}
      title={amending ? text.amend : text.open}
      where={whereOf(amending, values)}
      styles="open-job"
      hurt={hurt}
      follows={amending}
      hurtWay={amending}
    >
      <main class="open tent-form">
        <h1>{only ? text.amendOnly[only] : amending ? text.amend : text.open}</h1>
        {amending && values.rehearsal === "yes" && <p class="rehearsal">{words.page.notReal}</p>}
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        {effect && <Changes {...effect} words={words} />}
        <form method="post" action={action}>
          <input type="hidden" name="key" value={newKey()} />
          {FACTS.filter((fact) => values[`unknown.${fact}`] === "yes").map((fact) => (
            <input type="hidden" name={`unknown.${fact}`} value="yes" />
          ))}
          {amending && <input type="hidden" name="rehearsal" value={values.rehearsal ?? "no"} />}
          {amending && <Field name="because" {...part} />}
          {!only && (
            <>
              <Group title={groups.job} names={amending ? ["title", "zone"] : ["title", "zone", "rehearsal"]} {...part} />
              <TentPart preview={preview} {...part} />
              <Group title={groups.sheet} names={named("sheet")} {...part} />
              <Group title={groups.site} names={named("site")} {...part} />
            </>
          )}
          {only !== "crew" && <Ticket {...part} />}
          {!only && <Group title={groups.use} names={named("use")} {...part} />}
          {only !== "ticket" && <Crew {...part} />}
          {amending && (
            <button type="submit" name="show" value="changes">
              {text.look}
            </button>
          )}
          <button type="submit" class="main">
            {amending ? text.amend : text.open}
          </button>
        </form>
      </main>
    </Page>
  );
};
