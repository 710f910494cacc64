/** Keeps the screen on while the page is looked at. `refused` is told where the phone does not let it. */
export function keepAwake(refused: () => void): void {
  if (!("wakeLock" in navigator)) {
    refused();
    return;
  }
  const ask = () => {
    if (document.visibilityState === "visible") navigator.wakeLock.request("screen").catch(refused);
  };
  document.addEventListener("visibilitychange", ask);
  ask();
}
