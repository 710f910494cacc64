import type { Words } from "../../text/words.ts";
import type { TruckState } from "./state.ts";

/** The list as rows of cells under a header, in loading order. A cell is empty where nothing was counted yet. */
export const truckRows = ({ lines }: Pick<TruckState, "lines">, { kitName, truck }: Words): (string | number)[][] => [
  [...truck.columns],
  ...lines.map((line) => [
    line.no,
    line.workedOut ? truck.workedOutName(line.item) : kitName(line.item),
    line.need,
    line.spares,
    line.count,
    line.weighed ? (line.unitLb ?? truck.unknown) : "",
    line.weighed ? (line.lb === null ? truck.unknown : Math.round(line.lb * 1e6) / 1e6) : "",
    line.loaded ?? "",
    line.back ?? "",
    line.difference ?? "",
  ]),
];
