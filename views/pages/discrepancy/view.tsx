import type { Child } from "hono/jsx";
import { CORNERS, EDGES, type TentPlan } from "../../../machines/tent/types.ts";
import { Changes } from "../../parts/changes.tsx";
import { Wrong } from "../../parts/fields.tsx";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import { wrongId } from "../../regions.ts";
import type { Words } from "../../text/words.ts";
import type { Effect } from "../guide/state.ts";

type Values = Readonly<Record<string, string>>;
type Job = { readonly job: string; readonly title: string; readonly hurt: HurtState | null };
type Filled = { readonly values: Values; readonly problems: Values; readonly words: Words };
type Props = Job & Filled & { readonly plan: TentPlan; readonly message: string | null };

/** What the cloth or the site says otherwise than the plan, one thing at a time. */
export const DiscrepancyPage = ({ job, title, hurt, plan, message, values, problems, words }: Props) => {
  const { discrepancy: text, page } = words;
  const on = (what: string) =>
    values.what === what ? { job, what, words, values, problems } : { job, what, words, values: {}, problems: {} };
  return (
    <Page words={words} title={text.title} where={{ on: null, job: { id: job, title } }} hurt={hurt} follows={job} hurtWay={job}>
      <main class="open discrepancy">
        <p class="small">{title}</p>
        <h1>{text.title}</h1>
        <p>{text.intro}</p>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        <a class="button" href={`/jobs/${job}`}>
          {page.guide}
        </a>
        <Kind {...on("rings")} title={text.rings} open={values.what}>
          <p>{plan.edges.map((e) => text.readAs(e.name, e.rings)).join(" ")}</p>
          <Choice name="edge" text={text.edge} options={EDGES.map((e) => [e, e])} {...on("rings")} />
          <Entry name="counted" text={text.counted} {...on("rings")} />
        </Kind>
        <Kind {...on("poleMore")} title={text.more} open={values.what}>
          <Choice
            name="kind"
            text={text.kind}
            options={[
              ["quarter", text.quarter],
              ["center", text.center],
            ]}
            {...on("poleMore")}
          />
          <Entry name="along" text={text.along} {...on("poleMore")} />
          <Entry name="across" text={text.across} {...on("poleMore")} />
        </Kind>
        <Kind {...on("poleFewer")} title={text.fewer} open={values.what}>
          <Choice name="pole" text={text.whichPole} options={plan.poles.map((p) => [p.id, text.pole(p.id, p)])} {...on("poleFewer")} />
        </Kind>
        <Kind {...on("corner")} title={text.corner} open={values.what}>
          <Choice name="corner" text={text.whichCorner} options={CORNERS.map((c) => [c, c])} {...on("corner")} />
          <Entry name="away" text={text.away} {...on("corner")} />
          <Entry name="toward" text={text.toward} {...on("corner")} />
        </Kind>
        <a class="button" href={`/jobs/${job}/amend`}>
          {text.else}
        </a>
      </main>
    </Page>
  );
};

type Proposed = Job & { readonly effect: Effect; readonly values: Values; readonly words: Words };

/** What it would change, before a second person is asked. */
export const ProposeDiscrepancyPage = ({ job, title, hurt, effect, values, words, words: { discrepancy: text, page } }: Proposed) => (
  <Page words={words} title={text.title} where={{ on: null, job: { id: job, title } }} hurt={hurt} follows={job} hurtWay={job}>
    <main class="open discrepancy">
      <p class="small">{title}</p>
      <h1>{text.title}</h1>
      <Changes {...effect} words={words} />
      <p>{text.versions}</p>
      {effect.changes.length > 0 && (
        <form method="post" action={`/jobs/${job}/discrepancy`} class="main">
          {Object.entries(values).map(([name, value]) => (
            <input type="hidden" name={name} value={value} />
          ))}
          <button type="submit" name="put" value="yes" class="main">
            {text.put}
          </button>
        </form>
      )}
      <a class="button" href={`/jobs/${job}/discrepancy?${new URLSearchParams(withoutKey(values))}`}>
        {text.change}
      </a>
      <a class="button" href={`/jobs/${job}`}>
        {page.guide}
      </a>
    </main>
  </Page>
);

const withoutKey = ({ key: _, seen: __, ...rest }: Values) => rest as Record<string, string>;

type KindProps = Filled & { job: string; what: string; title: string; open: string | undefined; children?: Child };

const Kind = ({ job, what, title, open, values, problems, words, words: { discrepancy: text }, children }: KindProps) => (
  <details open={open === what}>
    <summary>{title}</summary>
    <form method="post" action={`/jobs/${job}/discrepancy`}>
      <input type="hidden" name="what" value={what} />
      {children}
      <Entry name="because" text={text.because} what={what} values={values} problems={problems} words={words} />
      <button type="submit">{text.look}</button>
    </form>
  </details>
);

type FieldProps = Filled & { name: string; text: string; what: string };

const Entry = ({ name, text, what, values, problems }: FieldProps) => (
  <label>
    {text}
    <input
      name={name}
      value={values[name] ?? ""}
      maxlength={200}
      autocomplete="off"
      aria-invalid={problems[name] ? "true" : undefined}
      aria-describedby={wrongId(`${what}-${name}`)}
    />
    <Wrong name={`${what}-${name}`} problems={{ [`${what}-${name}`]: problems[name] ?? "" }} />
  </label>
);

const Choice = ({ name, text, what, options, values, problems }: FieldProps & { options: readonly (readonly [string, string])[] }) => (
  <label>
    {text}
    <select name={name}>
      {options.map(([value, shown]) => (
        <option value={value} selected={values[name] === value}>
          {shown}
        </option>
      ))}
    </select>
    <Wrong name={`${what}-${name}`} problems={{ [`${what}-${name}`]: problems[name] ?? "" }} />
  </label>
);
