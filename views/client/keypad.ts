/** Keys of our own for counts and measures: a phone's are too small for gloves. Without scripts the field does. */
const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "⌫"];
/** What a unit needs besides: fractions for a tape, a minus for a lean the other way. */
const BESIDES: Readonly<Record<string, readonly string[]>> = { in: ["½", "¼", "⅛"], ft: ["½", "¼", "⅛"], deg: ["-"] };
const FRACTIONS: Readonly<Record<string, string>> = { "½": "1/2", "¼": "1/4", "⅛": "1/8" };

/** Puts a keypad under every field that asks for one and has none yet. */
export function addKeypads(root: ParentNode): void {
  for (const field of root.querySelectorAll<HTMLInputElement>("input[data-keypad]")) {
    const label = field.closest("label");
    if (!label || label.nextElementSibling?.classList.contains("keypad")) continue;
    field.setAttribute("inputmode", "none");
    const pad = document.createElement("div");
    pad.className = "keypad";
    for (const key of [...DIGITS, ...(BESIDES[field.dataset.keypad ?? ""] ?? [])]) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = key;
      button.addEventListener("click", () => press(field, key));
      pad.append(button);
    }
    label.after(pad);
  }
}

function press(field: HTMLInputElement, key: string): void {
  const fraction = FRACTIONS[key];
  if (key === "⌫") field.value = field.value.slice(0, -1);
  else if (fraction) field.value = `${field.value.replace(/ ?\d+\/\d+$/, "")} ${fraction}`.trim();
  else field.value += key;
}
