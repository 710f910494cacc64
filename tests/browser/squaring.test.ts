import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, press, type World } from "../support/browser.ts";
import { drive } from "../support/crew-lead.ts";

let world: World;
beforeAll(async () => {
  world = await opened("squared");
});
afterAll(() => world.close());

const FIELD = ".which input[name=value]";
const RECORD = ".gate form.number button[type=submit]";
const chosen = (page: Page) => page.locator(".which input[type=radio]:checked").getAttribute("value");

/** The length that the page asks for next, keyed in with our own keys: feet, inches, eighths. */
async function key(page: Page, keys: readonly string[]): Promise<void> {
  for (const k of keys) await page.locator(".keypad button", { hasText: new RegExp(`^${k === "." ? "\\." : k}$`) }).click();
  await press(page, RECORD);
}

describe("the corner marks, measured with gloves on", () => {
  it("six lengths are keyed in as the tape gives them; the one misread is named, put right, and the guide goes on", async () => {
    const page = await world.screen("p1");
    const found = page.locator(".found");
    for (const [next, keys] of [
      ["AB", ["1", "0", "0"]],
      ["BC", ["8", "0", "ft", "⅛"]],
      ["CD", ["1", "0", "0", "ft"]],
      ["DA", ["8", "1"]],
    ] as const) {
      expect(await chosen(page)).toBe(next);
      await key(page, keys);
      expect(await page.inputValue(FIELD)).toBe("");
    }
    expect(await found.textContent()).toBe("Still to measure: A to C, B to D. Five lengths fix the corners; six show a misread.");
    await key(page, ["1", "2", "8", "ft", "¾"]);
    expect(await found.textContent()).toMatch(/^Not square\. Hold A .* Five lengths cannot show a misread/);
    await key(page, ["1", "2", "8", "ft", "¾"]);
    expect(await found.textContent()).toMatch(/^The six do not agree .* it is D to A: 81 ft read, about 80 ft/);
    expect(await chosen(page)).toBe("DA");
    await press(page, ".dock .main button");
    expect(await page.locator(".notice").textContent()).toContain("Measure that one again.");
    const hand = await world.screen("p4");
    expect(await chosen(hand)).toBe("DA");
    await key(hand, ["8", "0"]);
    // For all that five lengths could show, a mark was moved: what was measured from it is measured again.
    const { step, gate, thread } = await world.state();
    expect([step, gate?.id, gate?.asked]).toEqual(["squared", "white.stakeLine", "again"]);
    expect(thread.at(-1)!.reply).toMatch(/^Square, and the six agree\. Asked again, a corner mark moved\./);
    expect((await drive(world.state, world.say, (s) => s.step === "marked")).state.step).toBe("marked");
  });

  it("a glove hits every target: at least 72 px a side on a screen of 360 by 640, and nothing runs off it", async () => {
    const page = await world.screen("p1");
    await page.goto(`${world.url}jobs/${world.job}/more?as=p1`);
    await page.locator("form:has(input[value=back]) button").click();
    await page.locator(".which").waitFor();
    const small = await page
      .locator(".which span, .keypad button, .gate button, .dock button:visible")
      .evaluateAll((targets) =>
        targets
          .map((t) => ({ text: t.textContent, ...(t.getBoundingClientRect().toJSON() as { width: number; height: number }) }))
          .filter(({ width, height }) => width < 72 || height < 72),
      );
    expect(small).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });

  it("without scripts the same: a form posts one length, and the page comes back with what it comes to", async () => {
    const page = await world.screen("p1", { scripts: false });
    await page.check(".which input[value=AC]");
    await page.fill(FIELD, `128' 3/4"`);
    await page.click(RECORD);
    expect(await page.locator(".found").textContent()).toMatch(/^Still to measure: A to B, /);
    expect(await page.locator(".lengths tr:has-text('A to C') td").last().textContent()).toBe("128 ft 3/4 in");
    await page.check(".which input[value=BD]");
    await page.fill(FIELD, "over there");
    await page.click(RECORD);
    expect(await page.locator("main").textContent()).toContain(`"over there" is not a number`);
  });
});
