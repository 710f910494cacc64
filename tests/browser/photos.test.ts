import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import type { PhotoShown } from "../../views/pages/photos/state.ts";
import { en } from "../../views/text/en/en.ts";
import { opened, type World } from "../support/browser.ts";
import { fromCamera, PLACE, photoForm } from "../support/photos.ts";

let world: World;
beforeAll(async () => {
  world = await opened();
});
afterAll(() => world.close());

const photos = async () => ((await (await fetch(`${world.url}jobs/${world.job}/photos.json`)).json()) as { photos: PhotoShown[] }).photos;

/** A picture as large as a phone's, held upright: it lies on its side, and says so beside the place. */
async function large(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [2400, 1800];
    const context = canvas.getContext("2d")!;
    for (let n = 0; n < 400; n++) {
      context.fillStyle = `hsl(${n} 50% ${n % 80}%)`;
      context.fillRect((n * 397) % 2400, (n * 211) % 1800, 300, 200);
    }
    return canvas.toDataURL("image/jpeg", 0.95).split(",")[1]!;
  });
  return Buffer.from(fromCamera("image/jpeg", 6, new Uint8Array(Buffer.from(base64, "base64"))));
}

it("a photo is made smaller and upright on the phone, kept while there is no contact, and stored once without its place", async () => {
  const page = await world.screen("p4");
  await page.goto(`${world.url}jobs/${world.job}/photos`);
  const camera = await large(page);
  await page.setInputFiles("input[type=file]", { name: "IMG_1.jpg", mimeType: "image/jpeg", buffer: camera });
  await page.locator(".take-photo canvas").waitFor();
  const status = (text: string | RegExp) => page.locator("[data-photo-status]", { hasText: text }).waitFor();
  await status(new RegExp(`^${en.client.photo.ready} \\d+ kB$`));
  await page.fill("input[name=text]", "plate AB4");
  await page.context().setOffline(true);
  await page.click(".take-photo button.main");
  await status(en.client.photo.notSent);
  expect(await photos()).toEqual([]);
  await page.context().setOffline(false);
  await page.click(".take-photo button.main");
  await page.waitForURL(/reply=/);
  expect(await page.locator(".alarm").textContent()).toBe("Photo kept.");
  const [photo, ...more] = await photos();
  expect(more).toEqual([]);
  expect(photo).toMatchObject({ mime: "image/jpeg", widthPx: 1200, heightPx: 1600, text: "plate AB4", by: "Jory" });
  expect(photo!.bytes).toBeLessThan(camera.length / 2);
  const stored = Buffer.from(await (await fetch(`${world.url}jobs/${world.job}/photos/${photo!.hash}`)).arrayBuffer());
  expect(stored.toString("latin1")).not.toContain(PLACE);
  expect(stored.length).toBe(photo!.bytes);
});

/** Kinds that browsers turn by what is written in them. */
const TURNED = ["image/jpeg", "image/png"] as const;

it("one that came without scripts from a phone held upright stands upright", async () => {
  for (const [i, type] of TURNED.entries()) {
    const body = photoForm(fromCamera(type, 6), { as: "p4", key: `upright-0${i}`, gate: "", text: type });
    const answer = await fetch(`${world.url}jobs/${world.job}/photo`, {
      method: "POST",
      body,
      headers: { origin: world.url.slice(0, -1) },
    });
    expect(answer.status).toBe(200);
  }
  const page = await world.screen("p4");
  await page.goto(`${world.url}jobs/${world.job}/photos`);
  for (const type of TURNED) {
    const picture = page.locator(".shot", { hasText: type }).locator("img");
    await picture.scrollIntoViewIfNeeded();
    const sides = await picture.evaluate(async (img: HTMLImageElement) => {
      await img.decode();
      return [img.naturalWidth, img.naturalHeight];
    });
    expect([type, sides]).toEqual([type, [24, 32]]);
  }
});

it("went without trouble, but for the contact that was lost", () =>
  expect(world.troubles.filter((trouble) => !trouble.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]));
