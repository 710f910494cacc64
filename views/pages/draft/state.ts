import type { Hash } from "../../../machines/digest/digest.ts";
import type { Filled } from "../../parts/fields.tsx";
import type { Preview } from "../../parts/tent-part.tsx";
import type { Tent } from "../tents/state.ts";
import type { HeldForecast } from "../weather-plan/state.ts";

/** What every step of a draft shows; `draft` is `null` until something of it is kept. */
export type StepProps = Filled & {
  readonly draft: string | null;
  readonly message: string | null;
  /** Fields that nobody has typed in yet: the device may know better. */
  readonly untyped: ReadonlySet<string>;
};

/** A job that can be copied. */
export type Earlier = { readonly id: string; readonly title: string; readonly size: string };

/** What became of the tent that was picked: a sentence, and what is another figure now. */
export type TentNews = { readonly told: string; readonly rows: readonly string[]; readonly gone: boolean };

/** Of a tent that was told by its size: how many pieces it has with split ends, and with whole ones. */
export type EndsAsked = Readonly<Record<"split" | "whole", number>>;

export type TentStepProps = StepProps & {
  /** Names the draft that a form begins: sent twice, it is one. */
  readonly newKey: () => string;
  readonly preview: Preview;
  /** Names the drawing that stands on the page; `null` where there is none. */
  readonly drawn: string | null;
  /** Asked beside the drawing, where nobody said yet how the ends are cut. */
  readonly ends: EndsAsked | null;
  /** A tent of the list that is looked at and not taken yet. */
  readonly offered: { readonly id: string; readonly digest: Hash } | null;
  readonly news: TentNews | null;
  readonly tents: readonly Tent[];
  readonly earlier: readonly Earlier[];
};

/** Somebody on a draft, ticked or not, in a numbered row. */
export type PersonRow = { readonly row: number; readonly name: string; readonly role: string; readonly on: boolean };
export type CrewStepProps = StepProps & {
  readonly rows: readonly PersonRow[];
  readonly empty: readonly Pick<PersonRow, "row" | "role">[];
  /** What is forecast for the hire, held against the sheet: the last look before the job. `null` where nobody told it. */
  readonly forecast: HeldForecast | null;
  readonly zone: string;
};
