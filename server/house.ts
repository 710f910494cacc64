import type { WallTime } from "../machines/install/ids.ts";
import type { Clocks } from "../machines/install/moment.ts";
import type { JobId } from "../machines/record/entry.ts";
import { dayOf, type HouseStand, houseEntryAfter, isChanged, readHouse, standAfter } from "../machines/record/house.ts";
import type { Failure } from "../machines/record/storage.ts";
import { Conflict, type Journal, NotWritten } from "./journal/journal.ts";
import { yieldTurn } from "./routes/stream.ts";

type World = { readonly journal: Pick<Journal, "house">; readonly clock: () => Clocks };
/** What an entry is made for: the first look of a day, the last one before the server stops, or jobs that are to be taken away. */
type Occasion = "day" | "stop" | { readonly removed: readonly JobId[] };

/**
 * Keeps the house stream: an entry a day, and one more when the server stops and something was recorded since. It never rejects
 * and keeps nobody waiting: what the store does not take is told once with `complain`, and tried again at the next look.
 */
export function createHouse({ journal: { house }, clock }: World, complain: (failure: Failure) => void) {
  let stand: HouseStand | null = null;
  let told = false;
  let before: Promise<unknown> = Promise.resolve();

  async function keep(occasion: Occasion): Promise<void> {
    const at = clock().wall;
    stand ??= readHouse(await house.lines()).stand;
    if (!(await isDue(stand, occasion, at))) return;
    // Of ten thousand jobs each of these takes some 60 ms: a hold does not wait for all of them.
    await yieldTurn();
    const tips = await house.tips();
    await yieldTurn();
    const next = houseEntryAfter(stand, tips, at, typeof occasion === "object" ? occasion.removed : []);
    await house.append(next);
    stand = standAfter(stand, next);
    told = false;
  }
  async function isDue({ days }: HouseStand, occasion: Occasion, at: WallTime): Promise<boolean> {
    if (typeof occasion === "object" || !days.has(dayOf(at))) return true;
    return occasion === "stop" && isChanged(stand!, await house.tips());
  }
  /** Whether all that was to be kept is. */
  async function attempt(occasion: Occasion): Promise<boolean> {
    try {
      await keep(occasion);
      return true;
    } catch (error) {
      // Somebody else wrote to it: what is remembered of it is out of date.
      if (error instanceof Conflict) stand = null;
      else if (!(error instanceof NotWritten)) console.error(error);
      else if (!told) {
        told = true;
        complain(error.failure);
      }
      return false;
    }
  }
  const inTurn = (occasion: Occasion): Promise<boolean> => {
    const mine = before.then(() => attempt(occasion));
    before = mine;
    return mine;
  };
  return {
    /** To be called now and then: writes the day's entry if it is missing. */
    daily: () => inTurn("day"),
    /** To be called once nothing more is recorded. */
    beforeStop: () => inTurn("stop"),
    /** To be called before jobs are taken away on purpose. Where it is false that is not noted, and they have to stay. */
    takeAway: (removed: readonly JobId[]) => inTurn({ removed }),
  };
}
export type HouseKeeper = ReturnType<typeof createHouse>;
