import type { FactName } from "../../../machines/install/facts.ts";
import { UTILITIES } from "../../../machines/install/utilities.ts";
import type { HurtState } from "../../parts/hurt-state.ts";
import { Page } from "../../parts/page.tsx";
import { StepField } from "../draft/field.tsx";
import type { StepProps } from "../draft/state.ts";
import { STEP_FIELDS } from "../draft/steps.ts";
import { ANSWERS } from "../draft/ticket.tsx";

type Props = Omit<StepProps, "draft" | "untyped"> & {
  readonly job: string;
  readonly unknown: readonly FactName[];
  readonly newKey: () => string;
  readonly hurt: HurtState | null;
};

/** The fields that say each fact. */
const FIELDS: Readonly<Record<FactName, readonly string[]>> = {
  sheet: [...STEP_FIELDS.sheet, "sheet.soil"],
  ticket: STEP_FIELDS.ticket,
  rallyPoint: ["site.rallyPoint"],
  stormShelter: ["site.stormShelter"],
  firstAid: ["site.firstAid"],
};

const KEYS: Readonly<Record<string, "date">> = { "ticket.validFrom": "date", "ticket.validTo": "date" };

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
                    <StepField name={name} keys={KEYS[name] ?? (/(?:In|Mph)$/.test(name) ? "decimal" : "text")} {...part} />
                  ))}
                </div>
                {fact === "ticket" && (
                  <div class="beside more">
                    {UTILITIES.map((kind) => (
                      <StepField name={`ticket.utilities.${kind}`} text={filled.words.utilityName(kind)} options={ANSWERS} {...part} />
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
