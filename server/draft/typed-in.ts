import { type DraftStep, STEP_FIELDS, stepShowing } from "../../views/pages/draft/steps.ts";
import type { Fields } from "../input/form.ts";
import { usualTent } from "../input/tent.ts";
import { isAnotherTent, typedOver, without, withoutSheet } from "./belongs.ts";
import { CREW_FIELD, crewRows } from "./crew-rows.ts";
import { ONE_GUST } from "./one-gust.ts";

/** What is kept of one field: enough to be told that it is too long. */
const MAX_CHARACTERS = 400;
const SIZE = ["tent.widthFt", "tent.lengthFt"] as const;

const belongsTo = (step: DraftStep, name: string): boolean => stepShowing(name) === step || (step === "crew" && CREW_FIELD.test(name));

/**
 * What was typed in a step, over what a draft says. A form tells with each field what it showed: a field that was left as it
 * was is not typed, so that two phones on one draft take nothing from each other but the field that both typed in.
 */
export function withTyped(fields: Fields, step: DraftStep, form: Fields): Fields {
  const typed = typedIn(step, form);
  if (step === "tent") return withTent(fields, typed);
  if (step === "crew") return withPeople(fields, typed, form);
  // The gust that came with an earlier sheet goes with the one that is asked for.
  if (typed[ONE_GUST.asked] !== undefined) typed[ONE_GUST.meant] = "";
  if (step === "site") Object.assign(typed, ground(fields, typed, form));
  const told = typedOver(fields, typed);
  const unknown = `unknown.${step}`;
  if (form.go === "unknown") return { ...told, [unknown]: "yes" };
  // Going back, or staying, says nothing of it; going on says that it is known.
  return isOn(form) && fields[unknown] ? { ...told, [unknown]: "" } : told;
}

/** Whether something that stood on the site's step, and was sent as it stood, went with what it belonged to. */
export const leftBehind = (fields: Fields, step: DraftStep, form: Fields): boolean =>
  step === "site" && Object.keys(form).some((name) => belongsTo(step, name) && !NOTHING_SAID.includes(form[name]!.trim()) && !fields[name]);
/** What a field of that step says in which nobody has said anything. */
const NOTHING_SAID = ["", ...STEP_FIELDS.site.flatMap(({ options }) => options?.[0] ?? [])];

const isOn = ({ go = "on" }: Fields) => go === "on";

/** The fields of a step that a form shows otherwise than it showed them. */
function typedIn(step: DraftStep, form: Fields): Record<string, string> {
  const sent = Object.keys(form).map((name) => name.replace(/^was\./, ""));
  const names = [...new Set(sent)].filter((name) => belongsTo(step, name));
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = (form[name] ?? "").slice(0, MAX_CHARACTERS);
      return value === form[`was.${name}`] ? [] : [[name, value]];
    }),
  );
}

/** What is said of the ground: nothing, where it was asked of a soil that is another by now, or the sheet is about to name another. */
function ground(fields: Fields, typed: Fields, form: Fields): Fields {
  if (form.go === "soil") return { "sheet.soil": "", "site.soilKnown": "" };
  const asked = form["asked.soil"];
  const isOther = asked !== undefined && typed["sheet.soil"] === undefined && asked !== (fields["sheet.soil"] ?? "");
  return isOther && typed["site.soilKnown"] !== undefined ? { "site.soilKnown": "" } : {};
}

/** Another tent has another sheet, and nobody said yet which. */
function withTent(fields: Fields, typed: Fields): Fields {
  const told = withSize(fields, typed);
  return isAnotherTent(fields, told) ? withoutSheet(told) : told;
}

/** Another size is another tent, the usual one of it; where nothing is usual, what was typed and nothing else of a tent. */
function withSize(fields: Fields, typed: Fields): Fields {
  if (SIZE.every((name) => typed[name] === undefined || typed[name] === fields[name])) return { ...fields, ...typed };
  const rest = without(fields, (name) => /^(?:tent|kit)\./.test(name));
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
