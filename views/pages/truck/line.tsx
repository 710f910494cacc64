import type { HurtState } from "../../parts/hurt-state.ts";
import type { LightningFacts } from "../../parts/lightning-facts.ts";
import { truckIds } from "../../regions.ts";
import type { Words } from "../../text/words.ts";
import type { TruckLine, TruckState, Way } from "./state.ts";

/** The list as one person's screen shows it. */
export type TruckScreen = {
  readonly state: TruckState;
  readonly hurt: HurtState | null;
  readonly lightning: LightningFacts | null;
  readonly me: string | null;
  readonly people: readonly { readonly id: string; readonly name: string; readonly roleName: string }[];
  readonly newKey: () => string;
  readonly words: Words;
};
type Props = { screen: TruckScreen; line: TruckLine };

/**
 * One line of the list. Its main part is as high before a press as after it: what stands below does not move under a
 * thumb. A tick sends its own item and nothing else, so that two people never undo each other's.
 */
export const Line = ({ screen, line }: Props) => {
  const { state, me, words } = screen;
  const { truck } = words;
  const ticks = line.asked && me !== null;
  return (
    <li id={truckIds.line(line.item)} class={`line ${line.is}${line.counted === null ? "" : " counted"}`}>
      {ticks && line.is !== "all" && (state.way === "back" || line.is !== "over") ? (
        <AllOn screen={screen} line={line} />
      ) : (
        <Stands screen={screen} line={line} />
      )}
      <div class="beside">
        <p>
          {truck.parts(line)}. {truck.lineWeight(line)}.{state.way === "back" && ` ${truck.wentOut(line.loaded)}`}
        </p>
        {ticks && (
          <a class="button other" href={`/jobs/${state.job}/truck?line=${line.item}`} aria-label={truck.otherOf(line.item)}>
            {truck.other}
          </a>
        )}
      </div>
    </li>
  );
};

const AllOn = ({ screen: { state, me, newKey, words }, line }: Props) => (
  <form
    method="post"
    action={`/jobs/${state.job}/truck`}
    hx-post={`/jobs/${state.job}/truck`}
    hx-swap="none"
    hx-sync="this:drop"
    class="all-on"
  >
    <Tick state={state} line={line} me={me} newKey={newKey} />
    <input type="hidden" name="value" value={line.wanted} />
    <input type="hidden" name="from" value="list" />
    <button type="submit">
      <Told line={line} text={words.truck.all(line, state.way)} way={state.way} words={words} />
    </button>
  </form>
);

/** What every tick is made from: who, against what, and which line. */
type TickProps = Pick<TruckScreen, "state" | "me" | "newKey"> & { line: Pick<TruckLine, "item"> };
export const Tick = ({ state, line, me, newKey }: TickProps) => (
  <>
    <input type="hidden" name="as" value={me ?? ""} />
    <input type="hidden" name="seen" value={state.revision} />
    <input type="hidden" name="key" value={newKey()} />
    <input type="hidden" name="gate" value={state.gate ?? ""} />
    <input type="hidden" name="item" value={line.item} />
  </>
);

const Stands = ({ screen: { state, words }, line }: Props) => (
  <p class="stands">
    <Told line={line} text={words.truck.stands(line)} way={state.way} words={words} />
  </p>
);

type ToldProps = { line: TruckLine; text: string; way: Way; words: Words };

/** A line's mark, how many of what, and how it stands. */
const Told = ({ line, text, way, words: { truck } }: ToldProps) => (
  <>
    <span class="mark" aria-hidden="true">
      {truck.mark[line.is]}
    </span>
    <b>{text}</b>
    <span class="is">{truck.is(line, way)}</span>
  </>
);
