/** In a pocket only Hold works. What unlocks it are two presses that lie apart, the second within this long. */
const UNLOCK_MS = 5000;
const KEY = "ridgecall-locked";

/** The lock for a pocket: this phone's own, kept over a reload. */
export function useLock(): void {
  const body = document.body.classList;
  const is = () => localStorage.getItem(KEY) !== null;
  const show = () => body.toggle("locked", is());
  let timer = 0;
  document.addEventListener("click", (event) => {
    const pressed = (name: string) => (event.target as Element).closest(`[data-${name}]`) !== null;
    if (pressed("lock")) {
      localStorage.setItem(KEY, "yes");
      document.querySelector<HTMLElement>(".back-to-call")?.click();
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
  show();
}
