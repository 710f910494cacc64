import type { Marks } from "../../../machines/site/squaring.ts";
import { CORNERS } from "../../../machines/tent/types.ts";
import { Label } from "../label.tsx";
import { LETTER_PX } from "./around.tsx";
import { type SmallFrame, tenth } from "./small-frame.ts";

/** The letters of four corner marks, beside each. */
export function Letters({ want, frame, awayPx = 15 }: { want: Marks; frame: SmallFrame; awayPx?: number }) {
  return CORNERS.map((corner) => {
    const [x, y] = frame.at(want[corner]);
    const beside = x < frame.box.widePx / 2 ? -awayPx : awayPx;
    return <Label frame={frame} x={tenth(x + beside)} y={y} text={corner} px={LETTER_PX} bold />;
  });
}
