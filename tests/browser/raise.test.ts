import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, play, press, type World } from "../support/browser.ts";
import { PHASES } from "../support/phases.ts";

describe("the demo job on a phone", () => {
  let world: World;
  beforeAll(async () => {
    world = await opened();
  });
  afterAll(() => world.close());

  it("goes up and comes down by pressing: held from a second screen, made safe, amended, refused in every phase", async () => {
    const page = await world.screen("p1");
    const refused = new Set<string>();
    await play(page, world, (s) => s.phase === "anchorsSet", refused);

    const second = await world.screen("p5");
    await press(second, ".dock .hold button");
    await page.locator(".alarm", { hasText: "HELD by Pia" }).waitFor();
    await press(page, ".dock .main button");
    expect((await world.state()).held).toBeNull();

    await page.goto(`${world.url}jobs/${world.job}/amend`);
    await page.fill("input[name=because]", "muster point moved");
    await page.fill('input[name="site.rallyPoint"]', "the barn door");
    await page.click("button.main");
    await page.locator(".alarm", { hasText: "muster point moved" }).waitFor();
    await page.goto(`${world.url}jobs/${world.job}?as=p3`);
    await press(page, ".alarm button");
    expect((await world.state()).step).toBe("talk.rallyPoint");
    await page.goto(`${world.url}jobs/${world.job}?as=p1`);

    await play(page, world, (s) => s.step === "feet.quarters.line-1", refused);
    await page.click("text=More");
    await page.locator("main.more .safe button").click();
    await page.locator('article.call[data-step^="safe.up"]').waitFor();
    expect((await world.state()).phase).toBe("up");
    await play(page, world, (s) => !s.makingSafe, refused);
    expect((await world.state()).step).toBe("gust.quarters.line-1");

    const { state } = await play(page, world, () => false, refused);
    expect(state.closed).toBe(true);
    expect([...refused].filter((p) => p !== "up").sort()).toEqual(PHASES);
    expect(world.troubles).toEqual([]);
  });
});
