import { describe, expect, it } from "vitest";
import { Engines, type Listening, type Preferred } from "../../views/voice/engines.ts";

const listening = (by: Listening["by"]): Listening => ({ by, engine: class {} as never, startMs: 1 });
const [browser, own] = [listening("browser"), listening("own")];
/** A phone that has both. */
function phone(preferred: Preferred): Engines {
  const engines = new Engines(browser, () => preferred);
  engines.own = own;
  return engines;
}

describe("who listens", () => {
  it("where this phone itself was chosen, no sound goes to the browser when its ear gives up", () => {
    const engines = phone("own");
    expect(engines.now(true)).toBe(own);
    expect(engines.giveUp(own, true)).toBe(false);
    expect(engines.now(true)).toBe(own);
    expect(new Engines(browser, () => "own").now(true)).toBeNull();
  });
  it("where the browser was chosen, this phone's own ear takes over when it gives up", () => {
    const engines = phone("browser");
    expect(engines.now(false)).toBe(browser);
    expect(engines.giveUp(browser, false)).toBe(true);
    expect(engines.now(false)).toBe(own);
  });
});
