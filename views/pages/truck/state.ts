import type { Weights, WeightsNotKnown } from "../../../machines/install/ballast.ts";
import type { LoadLine, LoadWeight } from "../../../machines/tent/load.ts";
import type { Digests } from "../proof/state.ts";

/** Onto the truck before the raise, or back after the strike. */
export type Way = "out" | "back";

/** How a line stands the way it is counted now. More than the list on the way out is no fault. */
export type LineIs = "open" | "all" | "short" | "over";

/** One line of the list. */
export type TruckLine = Omit<LoadLine, "item"> & {
  /** Its place in loading order, from 1. */
  readonly no: number;
  readonly item: string;
  /** Part of the tent, whose weight the yard may give, or a weight at a strap; walls, ground cloths and tools are not weighed. */
  readonly weighed: boolean;
  /** Its weight is worked out, and nobody weighed it: a screening figure, of what it has to weigh at least. */
  readonly workedOut: boolean;
  readonly loaded: number | null;
  readonly back: number | null;
  /** Back less loaded, or less the list's figure where nobody counted them on. */
  readonly difference: number | null;
  /** As many as are wanted, and what was counted, the way it is counted now. */
  readonly wanted: number;
  readonly counted: number | null;
  readonly is: LineIs;
  /** Whether the guide asks for it now. */
  readonly asked: boolean;
};

/** The loading list of a job as a screen shows it: lines in loading order, used first last. */
export type TruckState = {
  readonly job: string;
  readonly title: string;
  readonly size: string;
  readonly rehearsal: boolean;
  /** What a tick is made against. */
  readonly revision: number;
  /** Which way the list is counted, or was counted last. */
  readonly way: Way;
  /** The gate that asks for it now; `null` where the list is only read. */
  readonly gate: string | null;
  /** Why it cannot be ticked now, and when it is. */
  readonly readOnly: string | null;
  readonly lines: readonly TruckLine[];
  readonly progress: { readonly of: number } & Readonly<Record<LineIs, number>>;
  /** Of the tent and of the weights at its straps. */
  readonly weight: LoadWeight;
  /** What those weights have to weigh, or why that is not known and none is listed; `null` where none is used. */
  readonly ballast: Weights | WeightsNotKnown | null;
  /** The last entry of the record that the list stands in. */
  readonly record: Digests["record"];
};
