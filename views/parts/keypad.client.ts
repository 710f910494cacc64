const EIGHTHS: Readonly<Record<string, number>> = { "½": 4, "¼": 2, "⅛": 1 };

/** Presses on our own keys, wherever a pad stands. They write into the form's field that was touched last; else into its first. */
export function useKeypads(): void {
  document.addEventListener("click", (event) => {
    const key = (event.target as Element).closest<HTMLElement>("[data-key]");
    const field = key && fieldOf(key);
    if (!key || !field) return;
    if (key.dataset.key === "⇄") turn(field);
    else field.value = typed(field.value, key.dataset.key!);
  });
  document.addEventListener("keydown", typeInto);
  // The phone's own keys stay away: ours are there.
  document.addEventListener("pointerdown", (event) => {
    const field = event.target as HTMLElement;
    if (!field.matches?.(FIELD) || !field.closest(FIELDS_OF_A_PAD)) return;
    field.setAttribute("inputmode", "none");
    touch(field as HTMLInputElement);
  });
}

const FIELDS_OF_A_PAD = "form:has(.keypad)";
/** What a number begins with. */
const DIGIT = /^[\d.-]$/;

/** Whoever has a keyboard types a number without going to its field first. */
function typeInto(event: KeyboardEvent): void {
  if (!DIGIT.test(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
  if ((event.target as Element).matches("input, select, textarea")) return;
  const forms = document.querySelectorAll(FIELDS_OF_A_PAD);
  // The character follows the focus.
  if (forms.length === 1) fieldOf(forms[0]!.querySelector(".keypad")!)?.focus();
}

/** A field with `data-own-keys` is left to the phone's: the pad and its key to the other field pass it by. */
const FIELD = "input:not([type=hidden]):not([type=radio]):not([data-own-keys])";
const fieldsIn = (form: Element | null) => [...(form?.querySelectorAll<HTMLInputElement>(FIELD) ?? [])];
const fieldOf = (key: Element) => {
  const fields = fieldsIn(key.closest("form"));
  return fields.find((field) => field.hasAttribute("data-touched")) ?? fields[0];
};

function touch(field: HTMLInputElement): void {
  for (const one of fieldsIn(field.form)) one.toggleAttribute("data-touched", one === field);
}

/** To the form's other field. */
function turn(field: HTMLInputElement): void {
  const fields = fieldsIn(field.form);
  touch(fields[(fields.indexOf(field) + 1) % fields.length]!);
}

/** What stands in a field after a key. */
export function typed(text: string, key: string): string {
  const before = text.trimEnd();
  if (key === "⌫") return before.replace(/ ?(?:ft|in|\d+\/\d+( in)?|.)$/, "").replace(/[a-z]$/, "$& ");
  if (key === "ft") return before.endsWith("ft") || before === "" ? text : `${before} ft `;
  const eighths = EIGHTHS[key];
  if (eighths === undefined) return key === "-" ? (before.startsWith("-") ? before.slice(1) : `-${before}`) : text + key;
  // A part of an inch stands after feet, and nothing after it.
  const [, whole = "", n, of] = /^(.*?) ?(?:(\d+)\/(\d+))?(?: in)?$/.exec(before)!;
  const sum = (n ? (Number(n) * 8) / Number(of) : 0) + eighths;
  if (sum >= 8) return text;
  const divisor = [8, 4, 2].find((d) => sum % d === 0) ?? 1;
  return `${whole} ${sum / divisor}/${8 / divisor}${whole.includes("ft") ? " in" : ""}`.trim();
}
