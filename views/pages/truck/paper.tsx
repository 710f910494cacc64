import { RecordDigest } from "../../parts/digests.tsx";
import type { Words } from "../../text/words.ts";
import type { TruckLine, TruckState } from "./state.ts";
import { TruckWeight } from "./weight.tsx";

/** The list on one page, with boxes to tick by hand. Only printed; what was counted by then stands in its columns. */
export const TruckPaper = ({ state, words, words: { truck } }: { state: TruckState; words: Words }) => (
  <section class="paper" aria-hidden="true">
    <h1>{truck.paper.title(state.title, state.size)}</h1>
    <p>{truck.order.out}</p>
    <table>
      <thead>
        <tr>
          {truck.paper.columns.map((name) => (
            <th scope="col">{name}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {state.lines.map((line) => (
          <Row line={line} words={words} />
        ))}
      </tbody>
    </table>
    <TruckWeight state={state} words={words} />
    <div class="signs">
      {[truck.paper.loadedBy, truck.paper.checkedBy, truck.paper.backBy].map((who) => (
        <p>{who}</p>
      ))}
    </div>
    <RecordDigest record={state.record} words={words} />
  </section>
);

const Row = ({ line, words: { kitName, truck } }: { line: TruckLine; words: Words }) => (
  <tr>
    <td>{line.no}</td>
    <td class="box">{truck.mark.open}</td>
    <th scope="row">{line.workedOut ? truck.workedOutShort(line.item) : kitName(line.item)}</th>
    <td>{line.need}</td>
    <td>{line.spares}</td>
    <td class="count">{line.count}</td>
    <td>{line.weighed ? (line.unitLb === null ? truck.unknown : truck.paper.pounds(line.unitLb)) : ""}</td>
    <td>{line.weighed ? (line.lb === null ? truck.unknown : truck.paper.pounds(line.lb)) : ""}</td>
    <td class="written">{line.loaded ?? ""}</td>
    <td class="written">{line.back ?? ""}</td>
  </tr>
);
