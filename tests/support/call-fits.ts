import type { Page } from "playwright-core";
import { onTestFinished } from "vitest";
import { createAssets } from "../../server/assets.ts";
import type { Look } from "./every-call.tsx";
import { newPhone } from "./shared-browser.ts";

/** So many at a time go to the browser. */
const BATCH = 200;

/** A phone that shows guides one after the other, in their own style; the browser can listen, which leaves least room. */
export async function showing(size: { width: number; height: number }, text = ""): Promise<Page> {
  const page = await newPhone();
  onTestFinished(() => page.context().close());
  await page.setViewportSize(size);
  const style = await (await createAssets().request("/assets/guide.css")).text();
  await page.setContent('<!DOCTYPE html><html lang="en"><head></head><body class="can-hear"></body></html>');
  await page.addStyleTag({ content: `${style}${text}` });
  return page;
}

/** What is wrong with each: what does not stand whole, what is too small for a glove or too near, what lies over something. */
export async function troubles(page: Page, all: readonly Look[], whole: boolean): Promise<string[]> {
  const found: string[] = [];
  const once = [...new Map(all.map((look) => [layoutOf(look), look])).values()];
  for (let i = 0; i < once.length; i += BATCH) found.push(...(await page.evaluate(measure, { looks: once.slice(i, i + BATCH), whole })));
  return found.slice(0, 20);
}

/**
 * What is laid out: two guides that differ in digits, which are all of one width, in hidden fields, or in the drawing, which takes
 * the room that is left, are laid out the same.
 */
const layoutOf = ({ state, html }: Look): string =>
  `${state === "open"} ${html.replaceAll(/<svg.*?<\/svg>|<ol id="thread".*?<\/ol>|<input type="hidden"[^>]*>| (?:data-[\w-]+|id|href|action|hx-[\w-]+)="[^"]*"/gs, "").replaceAll(/\d/g, "0")}`;

/** Runs in the page. */
function measure({ looks, whole }: { looks: readonly Look[]; whole: boolean }): string[] {
  type Target = { name: string; box: DOMRect; least: number; key: boolean; scrolls: boolean };
  return looks.flatMap(({ call, state, html }) => {
    document.body.innerHTML = html;
    const shown = (of: string) =>
      [...document.querySelectorAll<HTMLElement>(of)].filter((e) => e.checkVisibility() && e.getBoundingClientRect().width > 1);
    const middle = document.querySelector(".middle")!;
    const view = middle.getBoundingClientRect();
    const targets = shown(
      ".answers :is(button, a.button, input, select), .dock :is(button, a.button), .strip a, .drawing a, .call .hurt a",
    ).map(
      (e): Target => ({
        name: (e.querySelector("svg title")?.textContent ?? (e.textContent || e.getAttribute("name") || "")).slice(0, 24),
        box: e.getBoundingClientRect(),
        least: e.matches("[data-key], .keypad select") ? 64 : e.closest(".main") && !e.matches("input") ? 96 : 72,
        key: e.closest(".keypad") !== null,
        scrolls: e.closest(".middle") !== null,
      }),
    );
    const texts = shown(".call > p, .call h1, .stop-first p, .gate p, .notice:not(:has(.said-above)), .read-back p, .call .hurt p").map(
      (e) => ({
        name: e.textContent!.slice(0, 24),
        box: e.getBoundingClientRect(),
      }),
    );
    const inside = ({ top, bottom, left, right }: DOMRect, of: DOMRect) =>
      top >= of.top - 0.5 && bottom <= of.bottom + 0.5 && left >= of.left - 0.5 && right <= of.right + 0.5;
    const gap = (a: DOMRect, b: DOMRect) =>
      Math.max(Math.max(a.left - b.right, b.left - a.right), Math.max(a.top - b.bottom, b.top - a.bottom));
    // A list of people is longer than a phone: what comes before it is seen all the same.
    if (state.includes("nobody"))
      return texts.filter(({ box }) => !inside(box, view)).map(({ name }) => `${call}, ${state}: cut off: ${name}`);
    const cut = whole
      ? [
          ...texts.filter(({ box }) => !inside(box, view)),
          ...targets.filter(({ box }) => !inside(box, new DOMRect(0, 0, innerWidth, innerHeight))),
        ].map(({ name }) => `cut off: ${name}`)
      : [];
    const scrolls = whole && document.querySelector<HTMLElement>(".stage")!.offsetHeight > middle.clientHeight ? ["scrolls"] : [];
    const small = targets
      .filter(({ box, least }) => Math.min(box.height, least === 96 ? box.height : box.width) < least - 0.5)
      .map(({ name, box }) => `small: ${name} ${Math.round(box.width)}×${Math.round(box.height)}`);
    const near = targets.flatMap((a, i) =>
      targets.slice(i + 1).flatMap((b) => {
        // What scrolls goes in under what does not.
        if (!whole && a.scrolls !== b.scrolls) return [];
        const least = !whole ? 0 : a.key && b.key ? 8 : 16;
        return gap(a.box, b.box) < least - 0.5 ? [`close: ${a.name} / ${b.name} ${Math.round(gap(a.box, b.box))}`] : [];
      }),
    );
    const over = texts.flatMap((text) =>
      targets.filter(({ box }) => gap(text.box, box) < -0.5 && inside(box, view)).map((t) => `${text.name} lies over ${t.name}`),
    );
    const spilt = shown(".answers button, .answers a.button, .dock button, .dock a.button")
      .filter((e) => e.scrollWidth > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + 1)
      .map((e) => `spills: ${e.textContent}`);
    const holding = document.querySelector(".dock .hold button");
    // Of what is stopped, asked or said only one is largest.
    const sizeOf = (e: Element) => Number.parseFloat(getComputedStyle(e).fontSize);
    const stop = document.querySelector(".stop-first p");
    const larger = stop
      ? shown(".call :is(h1, p):not(.stop-first p)")
          .filter((e) => sizeOf(e) >= sizeOf(stop))
          .map((e) => `as large as the stop: ${e.textContent}`)
      : [];
    const hold = holding?.getBoundingClientRect() ?? new DOMRect();
    // In the same place and of the same size at every call.
    const place = [hold.x, hold.y, hold.width, hold.height].map(Math.round).join();
    if (holding) document.documentElement.dataset.hold ??= place;
    const held =
      !holding || (inside(hold, new DOMRect(0, 0, innerWidth, innerHeight)) && place === document.documentElement.dataset.hold)
        ? []
        : [`hold at ${place}`];
    return [...cut, ...scrolls, ...small, ...near, ...over, ...spilt, ...larger, ...held].map((wrong) => `${call}, ${state}: ${wrong}`);
  });
}
