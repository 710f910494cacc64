import { Temporal } from "temporal-polyfill";
import type { WallTime } from "../../machines/install/ids.ts";
import { DEFAULTS } from "../../machines/install/limits.ts";
import type { Words } from "../../views/text/words.ts";
import { briefFromForm } from "../input/brief-from-form.ts";
import type { Fields } from "../input/form.ts";
import { typed } from "../input/typed.ts";
import { crewRows } from "./crew-rows.ts";

/** What a field shows, and means, until somebody types in it: the zone of this machine, and today there. */
export function startingValues(f: Fields, now: WallTime): Fields {
  const zone = f.zone || new Intl.DateTimeFormat().resolvedOptions().timeZone;
  return { zone, "ticket.validFrom": today(zone, now), "ticket.toleranceIn": String(DEFAULTS.toleranceIn.is) };
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
export const shownFields = (f: Fields, now: WallTime): Fields => ({ ...startingValues(f, now), ...f });

/**
 * A draft as a brief, not checked yet. What its steps do not ask takes the stricter value: walls and hung loads are looked at,
 * papers asked for, and soil pulled on unless it was named.
 */
export function briefFromDraft(f: Fields, now: WallTime, words: Words) {
  const soil = f["site.soil"]?.trim() ?? "";
  const all = {
    "use.walls": "yes",
    "use.hungLoads": "yes",
    ...Object.fromEntries(Object.entries(shownFields(f, now)).filter(([name]) => !/^crew\./.test(name))),
    title: f.title?.trim() || usualTitle(f, words),
    rehearsal: "no",
    "site.soilKnown": soil === "" ? "no" : "yes",
    "sheet.soil": soil || f["sheet.soil"]?.trim() || words.draft.soilNotNamed,
    ...gusts(f),
  };
  return { ...briefFromForm(all), crew: crewRows(f).flatMap(({ name, role, on }) => (on ? [{ name, role }] : [])) };
}

/** Where one gust is told it is the sheet's lowest: it stops raising, and all other lifting and lowering with it. */
function gusts(f: Fields): Fields {
  const raise = f["sheet.raiseGustMph"] ?? "";
  return typeof typed(raise, "mph") === "number" && !f["sheet.stopGustMph"] ? { "sheet.stopGustMph": raise } : {};
}

const MOST = 80;
/** What a job is called where nobody named it. */
export function usualTitle(f: Fields, words: Words): string {
  const [widthFt, lengthFt] = [typed(f["tent.widthFt"], "ft"), typed(f["tent.lengthFt"], "ft")];
  const size = typeof widthFt === "number" && typeof lengthFt === "number" ? words.page.size(widthFt, lengthFt) : words.groups.tent;
  return words.draft.titleOf(size, f["site.address"]?.trim() ?? "").slice(0, MOST);
}
