import type { FactName } from "../../../machines/install/facts.ts";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import { StepField } from "../draft/field.tsx";
import type { StepProps } from "../draft/state.ts";
import { STEP_FIELDS, UTILITY_FIELDS } from "../draft/steps.ts";

type Props = Omit<StepProps, "draft" | "untyped"> & {
  readonly job: string;
  readonly unknown: readonly FactName[];
  readonly newKey: () => string;
  readonly hurt: HurtState | null;
};

const TICKET = STEP_FIELDS.ticket.flatMap(({ name }) => (name.startsWith("ticket.") ? [name] : []));
/** The fields that say each fact. */
const FIELDS: Readonly<Record<FactName, readonly string[]>> = {
  sheet: [...STEP_FIELDS.sheet.map(({ name }) => name), "sheet.soil"],
  ticket: TICKET,
  rallyPoint: ["site.rallyPoint"],
  stormShelter: ["site.stormShelter"],
  firstAid: ["site.firstAid"],
};

/** What nobody knew when the job was opened, to be filled in by now: only that, and as far as it is known. */
export const FactsPage = ({ job, unknown, newKey, hurt, message, ...filled }: Props) => {
  const { facts } = filled.words;
  const part: StepProps = { ...filled, message, draft: null, untyped: new Set() };
  return (
    <Page words={filled.words} title={facts.title} styles="draft" hurt={hurt} follows={job} hurtWay={job}>
      <main class="draft">
        <h1>{facts.title}</h1>
        {message !== null && (
          <p class="alarm" role="alert">
            {message}
          </p>
        )}
        <p>{unknown.length === 0 ? facts.none : facts.intro}</p>
        {unknown.length > 0 && (
          <form method="post" action={`/jobs/${job}/facts?of=${unknown.join("+")}`}>
            <input type="hidden" name="key" value={newKey()} />
            {unknown.map((fact) => (
              <fieldset>
                <legend>{filled.words.factName(fact)}</legend>
                <div class="fields-in">
                  {FIELDS[fact].map((name) => (
                    <StepField name={name} {...part} />
                  ))}
                </div>
                {fact === "ticket" && (
                  <div class="beside more">
                    {UTILITY_FIELDS.map(({ kind, name }) => (
                      <StepField name={name} text={filled.words.utilityName(kind)} {...part} />
                    ))}
                  </div>
                )}
              </fieldset>
            ))}
            <p>{facts.stillUnknown}</p>
            <button type="submit" class="main">
              {facts.put}
            </button>
          </form>
        )}
        <a class="button" href={`/jobs/${job}`}>
          {filled.words.page.guide}
        </a>
      </main>
    </Page>
  );
};
