import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened, press, type World } from "../support/browser.ts";
import { listen, sayInto, speak, tongue } from "../support/scripted-ear.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

describe("somebody is hurt", () => {
  it("is heard while the guide speaks, is said again until it is answered, and stands on every screen with what to say to 911", async () => {
    const [page, other] = [await world.screen("p1", { ear: "good" }), await world.screen("p5")];
    await listen(page);
    await tongue(page, true);
    await speak(page, "why");
    let sent = 0;
    await page.route("**/say", (route) => (sent++ === 0 ? route.abort() : route.continue()));
    await sayInto(page, { alternatives: ["somebody's hurt"] });
    await page.clock.fastForward(3000);
    for (const screen of [page, other]) await screen.locator(".call .hurt .address").waitFor();
    expect(sent).toBeGreaterThan(1);
    expect((await world.state()).hurt).toMatchObject({ said: "somebody's hurt" });
    await page.unroute("**/say");
    await page.fill(".answers .became input[name=became]", "a bruise, back at work");
    await press(page, ".answers .main button");
    expect((await world.state()).hurt).toBeNull();
    await page.locator(".call .hurt").waitFor({ state: "detached" });
  });

  it("what is being typed of it stays while the screen follows the job", async () => {
    const page = await world.screen("p1");
    await page.goto(`${world.url}jobs/${world.job}/more`);
    await page.locator(".hurt-one button").click();
    await page.locator(".answers .became").waitFor();
    await page.fill(".answers .became input[name=became]", "cut hand");
    const said = { as: "p4", key: "note-00001", seen: (await world.state()).revision, type: "note", text: "the gate is open" };
    await world.say(said);
    await page.locator(".earlier", { hasText: "the gate is open" }).waitFor();
    expect(await page.inputValue(".answers .became input[name=became]")).toBe("cut hand");
    await press(page, ".answers .main button");
  });

  it("comes up by itself on pages that stay as they are otherwise, and what is typed there stays", async () => {
    // What was cut off above on purpose.
    world.troubles.splice(0);
    const amend = await world.show(`jobs/${world.job}/amend`);
    // One window for several: a browser holds no more than six connections to a program.
    const tab = async (path: string) => {
      const tab = await amend.context().newPage();
      await tab.goto(`${world.url}jobs/${world.job}/${path}`);
      return tab;
    };
    const tabs = await Promise.all(["more", "plan", "layout", "time"].map(tab));
    const others = await Promise.all(["record", "discrepancy"].map((path) => world.show(`jobs/${world.job}/${path}`)));
    const pages = [amend, ...tabs, ...others];
    await amend.fill("input[name=because]", "a new sheet");
    const seen = async () => ({ as: "p4", seen: (await world.state()).revision });
    await world.say({ ...(await seen()), key: "hurt-00001", type: "hurt", words: "his hand" });
    for (const page of pages) await page.locator(".hurt .address").waitFor();
    expect(await amend.inputValue("input[name=because]")).toBe("a new sheet");
    await world.say({ ...(await seen()), as: "p1", key: "carry-00001", type: "carryOn", became: "a bruise" });
    for (const page of pages) await page.locator(".hurt").waitFor({ state: "detached" });
    for (const tab of tabs) await tab.close();
    expect(world.troubles).toEqual([]);
  });
});
