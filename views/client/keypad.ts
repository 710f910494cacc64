/** Keys of our own for counts and measures: a phone's are too small for gloves. Without scripts the field does. */
const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3", ".", "0", "⌫"];
/** What a unit needs besides: fractions for a tape, a minus for a lean the other way. */
const BESIDES: Readonly<Record<string, readonly string[]>> = {
  in: ["½", "¼", "⅛"],
  ft: ["½", "¼", "⅛"],
  tape: ["ft", "in", "½", "¼", "⅛"],
  deg: ["-"],
};
const FRACTIONS: Readonly<Record<string, string>> = { "½": "1/2", "¼": "1/4", "⅛": "1/8" };

/** Fills the empty keypads. A swap leaves a filled one alone while its gate stays, so no key goes away under a thumb. */
export function addKeypads(root: ParentNode): void {
  for (const pad of root.querySelectorAll<HTMLElement>(".keypad:empty")) {
    const field = pad.closest("form")?.querySelector<HTMLInputElement>('input[name="value"]');
    if (!field) continue;
    // The phone's own keys stay away: ours are there.
    field.addEventListener("pointerdown", () => field.setAttribute("inputmode", "none"));
    for (const key of [...DIGITS, ...(BESIDES[pad.dataset.keypad ?? ""] ?? [])]) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = key;
      button.addEventListener("click", () => press(field, key));
      pad.append(button);
    }
  }
}

function press(field: HTMLInputElement, key: string): void {
  const fraction = FRACTIONS[key];
  if (key === "ft" || key === "in") field.value = `${field.value.trim()} ${key} `;
  else if (key === "⌫") field.value = field.value.trimEnd().replace(/ ?(?:ft|in|.)$/, "").replace(/[a-z]$/, "$& ");
  else if (fraction) field.value = `${field.value.replace(/ ?\d+\/\d+$/, "")} ${fraction}`.trim();
  else field.value += key;
}
