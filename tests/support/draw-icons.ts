import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { findChromium } from "./chromium.ts";

/** Draws the icons that phones want in pixels from the two that are drawn by hand: `npx tsx tests/support/draw-icons.ts`. */
const browser = await chromium.launch({ executablePath: await findChromium(), args: ["--no-sandbox", "--disable-gpu"] });
for (const name of ["icon", "icon-maskable"])
  for (const size of [192, 512]) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const drawn = readFileSync(`views/assets/${name}.svg`, "utf8").replace("<svg ", `<svg width="${size}" height="${size}" `);
    await page.setContent(`<style>* { margin: 0 } svg { display: block }</style>${drawn}`);
    await page.screenshot({ path: `views/assets/${name}-${size}.png`, omitBackground: true });
  }
await browser.close();
