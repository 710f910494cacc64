/** In a pocket only Hold works. What unlocks it are two presses that lie apart, the second within this long. */
const UNLOCK_MS = 5000;
const KEY = "ridgecall-locked";

const TARGETS = "a[href], button, input, select, textarea, summary";
/** What works in a pocket. */
const LEFT = ".hold *, [data-unlock], [data-unlock-now]";
/** A page of a job, which is not its guide. */
const OF_A_JOB = /^(\/jobs\/[\w-]+)\/./;

const isLocked = (): boolean => localStorage.getItem(KEY) !== null;
const hasUnlock = (): boolean => document.querySelector("[data-unlock]") !== null;

/** Makes all but Hold and what unlocks dead to fingers and keys, or alive again; what a swap brought too. */
function show(): void {
  const locked = isLocked() && hasUnlock();
  document.body.classList.toggle("locked", locked);
  for (const target of document.querySelectorAll<HTMLElement>(TARGETS)) {
    const inert = locked && !target.matches(LEFT);
    if (target.inert !== inert) target.inert = inert;
  }
}

/** The lock for a pocket: this phone's own, kept over a reload, on the guide and on the pages beside it. */
export function useLock(): void {
  const body = document.body.classList;
  let timer = 0;
  document.addEventListener("click", (event) => {
    const pressed = (name: string) => (event.target as Element).closest(`[data-${name}]`) !== null;
    if (pressed("lock")) {
      localStorage.setItem(KEY, "yes");
      show();
      location.assign(document.querySelector<HTMLAnchorElement>(".back-to-call")!.href);
    } else if (pressed("unlock")) {
      body.add("unlocking");
      clearTimeout(timer);
      timer = window.setTimeout(() => body.remove("unlocking"), UNLOCK_MS);
    } else if (pressed("unlock-now")) {
      localStorage.removeItem(KEY);
      body.remove("unlocking");
      show();
    }
  });
  const look = () => {
    const job = OF_A_JOB.exec(location.pathname);
    // A page of the job with no way to unlock it is no page for a pocket.
    if (isLocked() && !hasUnlock() && job) location.replace(job[1]!);
    show();
  };
  look();
  // A page that is gone back to stands as it was left; and another window of this phone may have locked it.
  window.addEventListener("pageshow", look);
  window.addEventListener("storage", look);
  new MutationObserver(() => body.contains("locked") && show()).observe(document.body, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ["inert", "href"],
  });
}
