/** Keys of our own for counts and measures: a phone's are too small for gloves. Without scripts the field does. */
const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "⌫"];
/** What a unit needs besides: fractions for a tape, a minus for a lean the other way. */
const BESIDES: Readonly<Record<string, readonly string[]>> = {
  in: ["½", "¼", "⅛"],
  ft: ["½", "¼", "⅛"],
  tape: ["ft", "in", "½", "¼", "¾", "⅛"],
  deg: ["-"],
};
const FRACTIONS: Readonly<Record<string, string>> = { "½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8" };

/** Fills the empty keypads. A swap leaves a filled one alone while its gate stays, so no key goes away under a thumb; its field may be a new one. */
export function addKeypads(root: ParentNode): void {
  for (const pad of root.querySelectorAll<HTMLElement>(".keypad")) {
    const field = fieldOf(pad);
    if (!field) continue;
    // The phone's own keys stay away: ours are there.
    field.addEventListener("pointerdown", () => field.setAttribute("inputmode", "none"));
    if (pad.childElementCount > 0) continue;
    for (const key of [...DIGITS, ...(BESIDES[pad.dataset.keypad ?? ""] ?? [])]) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = key;
      button.addEventListener("click", () => {
        const now = fieldOf(pad);
        if (now) press(now, key);
      });
      pad.append(button);
    }
  }
}

const fieldOf = (pad: HTMLElement) => pad.closest("form")?.querySelector<HTMLInputElement>('input[name="value"]') ?? null;

function press(field: HTMLInputElement, key: string): void {
  const typed = field.value.trimEnd();
  const fraction = FRACTIONS[key];
  if (key === "⌫") field.value = typed.replace(/ ?(?:ft|in|.)$/, "").replace(/[a-z]$/, "$& ");
  else if (key === "ft" || key === "in") field.value = typed.endsWith(key) ? typed : `${typed} ${key} `;
  // A part of an inch stands after feet, and nothing after it.
  else if (fraction) field.value = `${typed.replace(/ ?\d+\/\d+( in)?$/, "")} ${fraction}${/ft/.test(typed) ? " in" : ""}`.trim();
  else field.value += key;
}
