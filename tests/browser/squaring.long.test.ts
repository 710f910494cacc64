import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, press, type World } from "../support/browser.ts";
import { drive } from "../support/crew-lead.ts";
import { leading } from "../support/shared-browser.ts";

let world: World;
beforeAll(async () => {
  world = await opened("squared");
});
afterAll(() => world.close());

const FIELD = ".answers .put-in input";
const RECORD = ".answers .pad button[type=submit]";
const asked = (page: Page) => page.locator(".answers input[name=length]").getAttribute("value");

/** The length that the page asks for next, keyed in with our own keys: feet, inches, eighths. */
async function key(page: Page, keys: readonly string[]): Promise<void> {
  for (const k of keys) await page.locator(`.keypad [data-key="${k}"]`).click();
  await press(page, RECORD);
}

describe("the corner marks, measured with gloves on", () => {
  it("six lengths are keyed in as the tape gives them; the one misread is named, put right, and the guide goes on", async () => {
    const page = await world.screen("p1");
    const found = page.locator(".gate .missing");
    for (const [next, keys] of [
      ["AB", ["1", "0", "0"]],
      ["BC", ["8", "0", "ft", "⅛"]],
      ["CD", ["1", "0", "0", "ft"]],
      ["DA", ["8", "1"]],
    ] as const) {
      expect(await asked(page)).toBe(next);
      await key(page, keys);
      expect(await page.inputValue(FIELD)).toBe("");
    }
    const stillToTape = "Still to measure: A to C, B to D. Five lengths fix the corners; six show a misread.";
    await page.locator("#notice", { hasText: stillToTape }).waitFor();
    await key(page, ["1", "2", "8", "ft", "½", "¼"]);
    expect(await found.textContent()).toMatch(/^Not square\. Hold A .* Five lengths cannot show a misread/);
    // What to do stands there first; the sixth is taped after a press.
    await page.click(".answers a.main");
    await page.click(".dock a.beside");
    await page.locator(".item", { hasText: "B to D" }).click();
    await key(page, ["1", "2", "8", "ft", "½", "¼"]);
    expect(await found.textContent()).toMatch(/^The six do not agree .* it is D to A: 81 ft read, about 80 ft/);
    const hand = await world.screen("p4");
    await hand.click(".answers a.main");
    expect(await asked(hand)).toBe("DA");
    await key(hand, ["8", "0"]);
    // For all that five lengths could show, a mark was moved: what was measured from it is measured again.
    const { step, gate, thread } = await world.state();
    expect([step, gate?.id, gate?.asked]).toEqual(["squared", "white.stakeLine", "again"]);
    expect(thread.at(-1)!.reply).toMatch(/^Square, and the six agree\. Asked again, a corner mark moved\./);
    expect((await drive(world.state, world.say, (s) => s.step === "marked")).state.step).toBe("marked");
  });

  it("without scripts the same: a form posts one length, and the page comes back with the next; the list leads to any of them", async () => {
    await world.say({ as: "p1", key: "back-00001", seen: (await world.state()).revision, type: "back" });
    const page = await world.screen("p1", { scripts: false });
    const press = (target: string, hasText?: string) => leading(page, () => page.locator(target, { hasText }).click());
    await press(".dock a.beside");
    await press(".item", "A to C");
    await page.fill(FIELD, `128' 3/4"`);
    await press(RECORD);
    expect(await page.locator("#notice").textContent()).toMatch(/^Still to measure: A to B, /);
    await press(".dock a.beside");
    expect(await page.locator(".item", { hasText: "A to C" }).textContent()).toMatch(/: 128 ft 3\/4 in\.$/);
    await press(".item", "B to D");
    await page.fill(FIELD, "over there");
    await press(RECORD);
    expect(await page.locator("main").textContent()).toContain(`"over there" is not a number`);
  });
});
