import type { TentPlan } from "../../machines/tent/types.ts";
import { LayoutDrawing } from "../../views/drawing/layout.tsx";
import { TentDrawing } from "../../views/drawing/tent.tsx";
import { en } from "../../views/text/en/en.ts";

/** Drawings as the text that a page sends. */
export const drawn = {
  layout: (plan: TentPlan): string => (<LayoutDrawing plan={plan} words={en} />).toString() as string,
  tent: (plan: TentPlan): string => (<TentDrawing plan={plan} words={en} />).toString() as string,
};
