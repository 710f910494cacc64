import type { Preferred } from "./engines.ts";

/** What a phone remembers for its holder. Where nothing can be kept, everything is as it comes. */
const get = (name: string): string | null => {
  try {
    return localStorage.getItem(`ridgecall.${name}`);
  } catch {
    return null;
  }
};
const set = (name: string, value: string): void => {
  try {
    localStorage.setItem(`ridgecall.${name}`, value);
  } catch {
    // A private window keeps nothing: the setting lasts as long as the page.
  }
};

const PREFERRED: readonly Preferred[] = ["either", "own", "browser"];

export const settings = {
  get listens(): boolean {
    return get("listen") === "yes";
  },
  set listens(is: boolean) {
    set("listen", is ? "yes" : "no");
  },
  /** Who listens on this phone. */
  get ear(): Preferred {
    const kept = get("ear");
    return PREFERRED.find((is) => is === kept) ?? "either";
  },
  set ear(is: Preferred) {
    set("ear", is);
  },
  /** The browser was asked, and listens on the phone itself. */
  get browserStays(): boolean {
    return get("browser-stays") === "yes";
  },
  set browserStays(is: boolean) {
    set("browser-stays", is ? "yes" : "no");
  },
  get speaks(): boolean {
    return get("speak") !== "no";
  },
  set speaks(is: boolean) {
    set("speak", is ? "yes" : "no");
  },
};
