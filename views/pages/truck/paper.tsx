import { kitName } from "../../text/en/names.ts";
import { pounds, truck } from "../../text/en/truck.ts";
import type { TruckLine, TruckState } from "./state.ts";

/** The list on one page, with boxes to tick by hand. Only printed; what was counted by then stands in its columns. */
export const TruckPaper = ({ state }: { state: TruckState }) => (
  <section class="paper" aria-hidden="true">
    <h1>{`${truck.title}: ${state.title}, ${state.size}`}</h1>
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
          <Row line={line} />
        ))}
      </tbody>
    </table>
    <p class="weight">{truck.weight(state.weight, state.lines.length)}</p>
    <div class="signs">
      {[truck.paper.loadedBy, truck.paper.checkedBy, truck.paper.backBy].map((who) => (
        <p>{who}</p>
      ))}
    </div>
  </section>
);

const Row = ({ line }: { line: TruckLine }) => (
  <tr>
    <td>{line.no}</td>
    <td class="box">{truck.mark.open}</td>
    <th scope="row">{kitName(line.item)}</th>
    <td>{line.need}</td>
    <td>{line.spares}</td>
    <td class="count">{line.count}</td>
    <td>{line.unitLb ?? truck.unknown}</td>
    <td>{line.lb === null ? truck.unknown : pounds(line.lb).replace(/ lb$/, "")}</td>
    <td class="written">{line.loaded ?? ""}</td>
    <td class="written">{line.back ?? ""}</td>
  </tr>
);
