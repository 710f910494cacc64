import type { Words } from "../../text/words.ts";
import type { RecordState } from "./state.ts";

/** A record as rows of cells under a header: what a spreadsheet gets. */
export const rowsOf = ({ phases, zone }: RecordState, { markName, record, sourceName }: Words): (string | number)[][] => [
  [...record.columns],
  ...phases.flatMap((phase) =>
    phase.calls.flatMap((call) =>
      call.lines.map((line) => [
        line.no,
        line.time.local,
        zone,
        line.time.utc,
        phase.name,
        call.say,
        line.who ?? "",
        line.roleName ?? "",
        line.phone?.label ?? "",
        line.phone?.firstBy ?? "",
        line.source === null ? "" : sourceName(line.source),
        line.heard ?? "",
        line.taken,
        line.reply,
        line.flags.map((flag) => markName(flag)).join("; "),
        line.photo?.hash ?? "",
        line.hash,
      ]),
    ),
  ),
];
