import type { Mark } from "../../../machines/picture/mark.ts";
import type { Station, TentPlan } from "../../../machines/tent/types.ts";
import type { PlacedLabel } from "./labels.ts";
import { ACROSS_A_PHONE, type SmallFrame, tenth } from "./small-frame.ts";

/** In a box of the phone's own size these would only crowd; a larger one is shown larger. */
const NAME_PX = 10;
const ROOM_PX = 17;

/** The names of poles and the numbers of stations, where a box has room for them; not those that are written large. */
export function namesOf(plan: TentPlan, frame: SmallFrame, about: readonly Mark[]): PlacedLabel[] {
  if (frame.box.widePx <= ACROSS_A_PHONE.widePx) return [];
  const large = new Set(about.flatMap((m) => (m.is === "poles" ? m.ids : [])));
  const poles = plan.poles
    .filter(({ id }) => !large.has(id))
    .map((pole): PlacedLabel => {
      const [x, y] = frame.at(pole);
      return { text: pole.id, at: [tenth(x + 11), tenth(y - 9)], px: NAME_PX };
    });
  const roomy = Math.min(...plan.edges.flatMap((e) => e.baysFt)) * frame.pxPerFt >= ROOM_PX;
  const numbered = plan.stations.filter(({ kind }) => kind === "seamEnd" || (kind === "side" && roomy));
  return [...poles, ...numbered.map((station) => numberOf(station, frame))];
}

/** Inside the edge, level with the station. */
function numberOf(station: Station, frame: SmallFrame): PlacedLabel {
  const [x, y] = frame.at(station);
  const [outX, outY] = frame.out(station.edge);
  return { text: station.id.slice(2), at: [tenth(x - outX * 11), tenth(y - outY * 11)], px: NAME_PX };
}
