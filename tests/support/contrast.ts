import type { Page } from "playwright-core";

/** The least contrast of any text on a page (WCAG 2.2, 1.4.3: relative luminance), and the text that has it. */
export async function leastContrast(page: Page): Promise<{ ratio: number; text: string }> {
  // A press may have led to it, and its style sheet may be on its way.
  await page.waitForLoadState();
  return page.evaluate(() => {
    const rgba = (color: string) => color.match(/[\d.]+/g)!.map(Number);
    const luminance = (color: string) => {
      const [r, g, b] = rgba(color)
        .slice(0, 3)
        .map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4)) as [number, number, number];
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const behind = (e: Element | null): string => {
      if (!e) return "rgb(255, 255, 255)";
      const color = getComputedStyle(e).backgroundColor;
      return rgba(color)[3] === 0 ? behind(e.parentElement) : color;
    };
    let least = { ratio: 99, text: "" };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement!;
      if (node.textContent!.trim() === "" || parent.getClientRects().length === 0) continue;
      const [a, b] = [luminance(getComputedStyle(parent).color), luminance(behind(parent))].sort((x, y) => y - x) as [number, number];
      const ratio = (a + 0.05) / (b + 0.05);
      if (ratio < least.ratio) least = { ratio, text: node.textContent!.slice(0, 40) };
    }
    return least;
  });
}
