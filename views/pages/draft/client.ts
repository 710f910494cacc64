/** What a device knows by itself. */
const KNOWN: Readonly<Record<string, () => string>> = {
  zone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,
  today: () => {
    const now = new Date();
    const two = (n: number) => String(n).padStart(2, "0");
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },
};

/** Puts the device's zone and its day into fields that nobody has typed in. They can be typed over. */
export function fillFromDevice(): void {
  for (const field of document.querySelectorAll<HTMLInputElement>("input[data-device]"))
    field.value = KNOWN[field.dataset.device ?? ""]?.() ?? field.value;
}
