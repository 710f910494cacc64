import type { TentPlan } from "../../../machines/tent/types.ts";

/** A tent of the list. `version` is `null` for an example, `plan` where a saved tent cannot be read any more. */
export type Tent = { readonly id: string; readonly name: string; readonly version: number | null; readonly plan: TentPlan | null };

/** What is seen of a tent at a glance. */
export type Glance = {
  readonly size: string;
  readonly ends: string;
  readonly stations: number;
  readonly stakes: number;
  readonly poles: string;
};
