import type { WallTime } from "../machines/install/ids.ts";
import type { Clocks } from "../machines/install/moment.ts";
import { dayOf, type HouseStand, houseEntryAfter, isChanged, readHouse, standAfter } from "../machines/record/house.ts";
import type { Failure } from "../machines/record/storage.ts";
import { Conflict, type Journal, NotWritten } from "./journal/journal.ts";

type World = { readonly journal: Pick<Journal, "house">; readonly clock: () => Clocks };
/** What an entry is made for: the first look of a day, or the last one before the server stops. */
type Occasion = "day" | "stop";

/**
 * Keeps the house stream: an entry a day, and one more when the server stops and something was recorded since. It never rejects
 * and keeps nobody waiting: what the store does not take is told once with `complain`, and tried again at the next look.
 */
export function createHouse({ journal: { house }, clock }: World, complain: (failure: Failure) => void) {
  let stand: HouseStand | null = null;
  let told = false;
  let before = Promise.resolve();

  async function keep(occasion: Occasion): Promise<void> {
    const at = clock().wall;
    stand ??= readHouse(await house.lines()).stand;
    if (!(await isDue(stand, occasion, at))) return;
    const next = houseEntryAfter(stand, await house.tips(), at);
    await house.append(next);
    stand = standAfter(stand, next);
    told = false;
  }
  async function isDue({ days }: HouseStand, occasion: Occasion, at: WallTime): Promise<boolean> {
    if (!days.has(dayOf(at))) return true;
    return occasion === "stop" && isChanged(stand!, await house.tips());
  }
  async function attempt(occasion: Occasion): Promise<void> {
    try {
      await keep(occasion);
    } catch (error) {
      // Somebody else wrote to it: what is remembered of it is out of date.
      if (error instanceof Conflict) stand = null;
      else if (!(error instanceof NotWritten)) console.error(error);
      else if (!told) {
        told = true;
        complain(error.failure);
      }
    }
  }
  const inTurn = (occasion: Occasion) => {
    before = before.then(() => attempt(occasion));
    return before;
  };
  return {
    /** To be called now and then: makes the day's entry where there is none yet. */
    daily: () => inTurn("day"),
    /** To be called once nothing more is recorded. */
    beforeStop: () => inTurn("stop"),
  };
}
export type HouseKeeper = ReturnType<typeof createHouse>;
