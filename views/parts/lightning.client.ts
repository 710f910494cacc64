/** What was counted from when: an element is counted on from what it came with, by this phone's own clock. */
const begun = new WeakMap<Element, { readonly of: string; readonly at: number }>();

/** Seconds since an element came with what it says; a swap that brings another number starts over. */
function since(element: Element, of: string): number {
  const known = begun.get(element);
  if (known?.of === of) return (Date.now() - known.at) / 1000;
  begun.set(element, { of, at: Date.now() });
  return 0;
}

const write = (element: Element, text: string) => {
  if (element.textContent !== text) element.textContent = text;
};

function count(): void {
  for (const one of document.querySelectorAll<HTMLElement>("[data-left-s]")) {
    const of = one.dataset.leftS!;
    const left = Math.max(0, Math.ceil(Number(of) - since(one, of)));
    write(one, `${Math.floor(left / 60)}:${String(left % 60).padStart(2, "0")}`);
  }
  for (const one of document.querySelectorAll<HTMLElement>("[data-ago-s]")) {
    const of = one.dataset.agoS!;
    write(one, String(Math.floor((Number(of) + since(one, of)) / 60)));
  }
}

/** Nobody hears thunder of so long ago, s: then the count is over. */
const MAX_COUNT_S = 300;

/** A press at the flash counts, the next one, at the bang, tells how many seconds it was. Without scripts the field beside it does. */
function countFlash(): void {
  document.addEventListener("click", (event) => {
    const button = (event.target as Element).closest<HTMLButtonElement>("[data-flash]");
    const field = button?.form?.elements.namedItem("seconds");
    if (!button || !(field instanceof HTMLInputElement)) return;
    const from = button.dataset.from;
    if (from === undefined) {
      button.dataset.from = String(Date.now());
      write(button, button.dataset.bang!);
      return;
    }
    delete button.dataset.from;
    const seconds = Math.round((Date.now() - Number(from)) / 1000);
    if (seconds > MAX_COUNT_S) return write(button, button.dataset.late!);
    field.value = String(seconds);
    button.form!.requestSubmit();
  });
}

/** Lightning clocks go on by themselves, and the count from flash to bang is pressed. */
export function useLightning(): void {
  countFlash();
  setInterval(count, 1000);
}
