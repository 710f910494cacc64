import { givenParts, wantedParts } from "../install/checks/any-check.ts";
import type { Parts } from "../install/checks/check-kind.ts";
import type { JobState } from "../install/state.ts";
import type { Script } from "../install/step.ts";
import { ORDER_ON_SITE } from "../tent/load.ts";

/** The steps at which the kit is counted onto the truck, and back. */
export const KIT_OUT = "kit.loaded";
export const KIT_BACK = "back.kit";

/** One kind of item: how many are listed, how many were counted out and back, and the difference. */
export type KitRow = {
  readonly item: string;
  readonly listed: number;
  readonly out: number | null;
  readonly back: number | null;
  /** Back minus out, or minus listed if nobody counted them out. `null` until they are counted back. */
  readonly difference: number | null;
};

/**
 * The kit out and back, in order of use, from the current answers. Empty if the script has no loading list. Items that went
 * out but were dropped from the list by an amendment still have to come back, so they are included.
 */
export function kitCounts(script: Script, answers: JobState["answers"]): KitRow[] {
  const checkAt = (gate: string) => script.steps.find((s) => s.gate?.id === gate)?.gate?.check;
  const wanted = (gate: string): Parts => {
    const check = checkAt(gate);
    return check ? wantedParts(check, { answers: {} }) : {};
  };
  const counted = (gate: string): Parts => {
    const check = checkAt(gate);
    return check ? givenParts(check, answers[gate]?.value) : {};
  };
  const listed = { ...wanted(KIT_BACK), ...wanted(KIT_OUT) };
  const out = counted(KIT_OUT);
  const back = counted(KIT_BACK);
  const names = new Set([...ORDER_ON_SITE, ...Object.keys(listed), ...Object.keys(out), ...Object.keys(back)]);
  return [...names]
    .filter((item) => item in listed || item in out || item in back)
    .map((item) => rowOf(item, listed[item] ?? 0, out[item] ?? null, back[item] ?? null));
}

const rowOf = (item: string, listed: number, out: number | null, back: number | null): KitRow => ({
  item,
  listed,
  out,
  back,
  difference: back === null ? null : back - (out ?? listed),
});

/** Whether anything has been counted. */
export const isCounted = (rows: readonly KitRow[]): boolean => rows.some(({ out, back }) => out !== null || back !== null);
