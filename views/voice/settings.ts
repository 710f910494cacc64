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

export const settings = {
  get listens(): boolean {
    return get("listen") === "yes";
  },
  set listens(is: boolean) {
    set("listen", is ? "yes" : "no");
  },
  get speaks(): boolean {
    return get("speak") !== "no";
  },
  set speaks(is: boolean) {
    set("speak", is ? "yes" : "no");
  },
};
