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

/** Slow, as it comes, fast. */
export const RATES: readonly number[] = [0.8, 1, 1.3];

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
  /** Whether the key of a headset talks: for that something has to play. */
  get headset(): boolean {
    return get("headset") === "yes";
  },
  set headset(is: boolean) {
    set("headset", is ? "yes" : "no");
  },
  /** How fast it speaks, against the voice's own pace. */
  get rate(): number {
    const kept = Number(get("rate"));
    return RATES.includes(kept) ? kept : 1;
  },
  set rate(rate: number) {
    set("rate", String(rate));
  },
  /** The voice by its name; null for the phone's own choice. */
  get voice(): string | null {
    return get("voice") || null;
  },
  set voice(name: string | null) {
    set("voice", name ?? "");
  },
  /** Whether of a call only what changed is said. */
  get isShort(): boolean {
    return get("short") === "yes";
  },
  set isShort(is: boolean) {
    set("short", is ? "yes" : "no");
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
