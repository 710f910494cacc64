import { Temporal } from "temporal-polyfill";
import { PLACES } from "../../machines/install/facts.ts";
import type { WallTime } from "../../machines/install/ids.ts";
import { DEFAULTS } from "../../machines/install/limits.ts";
import { UTILITIES } from "../../machines/install/utilities.ts";
import type { Words } from "../../views/text/words.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import type { Fields } from "../input/form.ts";
import { typed } from "../input/typed.ts";
import { without } from "./belongs.ts";
import { crewRows } from "./crew-rows.ts";
import { partsEntered } from "./draft-parts.ts";
import { STAKE_SIZE, stakeSizeOf } from "./stake-size.ts";

/** What a field shows, and means, until somebody types in it: the zone of this machine, today there, and no answer of any utility. */
export function startingValues(f: Fields, now: WallTime): Fields {
  const zone = f.zone || zoneHere();
  const answers = Object.fromEntries(UTILITIES.map((kind) => [`ticket.utilities.${kind}`, "unanswered"]));
  return { zone, "ticket.validFrom": today(zone, now), "ticket.toleranceIn": String(DEFAULTS.toleranceIn.is), ...answers };
}

const zoneHere = () => new Intl.DateTimeFormat().resolvedOptions().timeZone;

/** The zone in which a draft's own days are told: the one that was typed, or that of this machine where that is none. */
export function zoneOf({ zone }: Fields): string {
  try {
    return new Intl.DateTimeFormat("en", { timeZone: zone || zoneHere() }).resolvedOptions().timeZone;
  } catch {
    return zoneHere();
  }
}

function today(zone: string, now: WallTime): string {
  const at = Temporal.Instant.fromEpochMilliseconds(now);
  try {
    return at.toZonedDateTimeISO(zone).toPlainDate().toString();
  } catch {
    return at.toZonedDateTimeISO("UTC").toPlainDate().toString();
  }
}

/** The fields of a draft as they stand on its pages. */
export const shownFields = (f: Fields, now: WallTime): Fields => ({ ...startingValues(f, now), [STAKE_SIZE]: stakeSizeOf(f), ...f });

/**
 * A draft as a brief, not checked yet. What its steps do not ask takes the stricter value: walls and hung loads are looked at,
 * papers asked for, and soil pulled on unless the sheet names one and the ground was said to be that.
 */
export function briefFromDraft(f: Fields, now: WallTime, words: Words) {
  const isThat = f["site.soilKnown"] === "yes" && !isUnknown(f, "sheet");
  const shown = shownFields(f, now);
  const all = {
    ...without(shown, (name) => leftOut(name, f)),
    "use.walls": "yes",
    "use.hungLoads": "yes",
    title: titleOf(f, words),
    rehearsal: "no",
    ...Object.fromEntries(PLACES.map((place) => [`unknown.${place}`, "yes"])),
    "site.soilKnown": isThat ? "yes" : "no",
  };
  return {
    ...briefFromForm(all),
    ...partsEntered(f),
    crew: crewRows(f).flatMap(({ name, role, on }) => (on ? [{ name, role }] : [])),
  };
}

/** Whether it was said of the whole sheet, or ticket, that nobody has it yet. */
export const isUnknown = (f: Fields, fact: "sheet" | "ticket"): boolean => f[`unknown.${fact}`] === "yes";

/** The crew is told in rows, and nothing of what the tent is used for; of a sheet or ticket that nobody has, nothing counts that was typed before. */
const leftOut = (name: string, f: Fields): boolean =>
  /^(?:crew|use)\./.test(name) || (["sheet", "ticket"] as const).some((fact) => name.startsWith(`${fact}.`) && isUnknown(f, fact));

/** What a draft is called. */
export const titleOf = (f: Fields, words: Words): string => f.title?.trim() || usualTitle(f, words);

const MAX_TITLE = 80;
/** What a job is called where nobody named it. */
function usualTitle(f: Fields, words: Words): string {
  const [widthFt, lengthFt] = [typed(f["tent.widthFt"], "ft"), typed(f["tent.lengthFt"], "ft")];
  const size = typeof widthFt === "number" && typeof lengthFt === "number" ? words.page.size(widthFt, lengthFt) : words.groups.tent;
  return words.draft.titleOf(size, f["site.address"]?.trim() ?? "").slice(0, MAX_TITLE);
}
