import { UTILITIES } from "../../machines/install/utilities.ts";
import { type DraftStep, STEP_FIELDS } from "../../views/pages/draft/steps.ts";
import type { Fields } from "../input/form.ts";
import { usualTent } from "../input/tent.ts";
import { CREW_FIELD, crewRows } from "./crew-rows.ts";

/** What is kept of one field: enough to be told that it is too long. */
const MAX_CHARACTERS = 400;
const SIZE = ["tent.widthFt", "tent.lengthFt"] as const;

const belongsTo = (step: DraftStep, name: string): boolean =>
  (STEP_FIELDS[step] as readonly string[]).includes(name) ||
  (step === "ticket" && UTILITIES.some((kind) => name === `ticket.utilities.${kind}`)) ||
  (step === "crew" && CREW_FIELD.test(name));

/**
 * What was typed in a step, over what a draft says. A form tells with each field what it showed: a field that was left as it
 * was is not typed, so that two phones on one draft take nothing from each other but the field that both typed in.
 */
export function withTyped(fields: Fields, step: DraftStep, form: Fields): Fields {
  const sent = Object.keys(form).map((name) => name.replace(/^was\./, ""));
  const names = [...new Set(sent)].filter((name) => belongsTo(step, name));
  const typed = Object.fromEntries(
    names.flatMap((name) => {
      const value = (form[name] ?? "").slice(0, MAX_CHARACTERS);
      return value === form[`was.${name}`] ? [] : [[name, value]];
    }),
  );
  if (step === "tent") return withSize(fields, typed);
  if (step === "crew") return withPeople(fields, typed, form);
  const unknown = `unknown.${step}`;
  // One gust is asked for and means both: the one that came with an earlier sheet goes with it.
  if (typed["sheet.raiseGustMph"] !== undefined) typed["sheet.stopGustMph"] = "";
  if (form.go === "unknown") return { ...fields, ...typed, [unknown]: "yes" };
  // Going back says nothing of it; going on says that it is known.
  return { ...fields, ...typed, ...(form.go !== "back" && fields[unknown] ? { [unknown]: "" } : {}) };
}

/** Another size is another tent, the usual one of it; where nothing is usual, what was typed and nothing else of a tent. */
function withSize(fields: Fields, typed: Fields): Fields {
  if (SIZE.every((name) => typed[name] === undefined || typed[name] === fields[name])) return { ...fields, ...typed };
  const rest = Object.fromEntries(Object.entries(fields).filter(([name]) => !/^(?:tent|kit)\./.test(name)));
  const size = Object.fromEntries(SIZE.map((name) => [name, typed[name] ?? fields[name] ?? ""]));
  return { ...rest, ...size, ...usualTent(size["tent.widthFt"], size["tent.lengthFt"]), ...typed };
}

/** Whoever is named in an empty row is on the job, with the role beside the name; in a row that filled meanwhile, in the next one. */
function withPeople(fields: Fields, typed: Fields, form: Fields): Fields {
  const all: Record<string, string> = { ...fields };
  for (const [name, value] of Object.entries(typed)) {
    const [, row, what] = CREW_FIELD.exec(name)!;
    const isNew = (form[`was.crew.${row}.name`] ?? "") === "" && (form[`crew.${row}.name`] ?? "").trim() !== "";
    if (!isNew) all[name] = value;
    else if (what === "name") {
      const taken = (fields[name] ?? "") !== "" && fields[name] !== value;
      const at = taken ? Math.max(0, ...crewRows(all).map((r) => r.row)) + 1 : row;
      Object.assign(all, {
        [`crew.${at}.name`]: value,
        [`crew.${at}.role`]: form[`crew.${row}.role`] ?? "crew",
        [`crew.${at}.on`]: "yes",
      });
    }
  }
  return all;
}
