import type { Page } from "playwright-core";

/**
 * Targets under 72 px a side or less than 16 px apart, in the dock or in what scrolls beside it, keys of a pad under 64 and 8; and a
 * page wider than its screen, or one that does not say what it should of somebody hurt. Every call is measured in tests of its own.
 */
export const targetTroubles = (page: Page, isHurt: boolean): Promise<string[]> =>
  page.evaluate((isHurt) => {
    const hurt = document.querySelector(".hurt")?.checkVisibility() ?? false;
    const targets = [...document.querySelectorAll<HTMLElement>("button, a.button, input:not([type=hidden]), select, summary")]
      .filter((e) => e.checkVisibility() && e.getBoundingClientRect().width > 0)
      .map((e) => ({
        name: (e.textContent || e.getAttribute("name") || "").slice(0, 30),
        box: e.getBoundingClientRect(),
        foot: e.closest(".dock"),
        key: e.closest(".keypad") !== null,
      }));
    const small = targets
      .filter(({ box, key }) => Math.min(box.width, box.height) < (key ? 63.5 : 71.5))
      .map(({ name }) => `small: ${name}`);
    const close = targets.flatMap((a, i) =>
      targets.slice(i + 1).flatMap((b) => {
        const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right);
        const down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom);
        return a.foot === b.foot && Math.max(across, down) < (a.key && b.key ? 7.5 : 15.5) ? [`close: ${a.name} / ${b.name}`] : [];
      }),
    );
    return [
      ...small,
      ...close,
      ...(document.documentElement.scrollWidth > innerWidth ? ["wider than the screen"] : []),
      ...(hurt === isHurt ? [] : [`somebody hurt: ${hurt}`]),
    ];
  }, isHurt);
