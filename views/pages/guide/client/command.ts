/** Whose it is, against which turn, and which press it is: what a form says is the rest. */
const APART: ReadonlySet<string> = new Set(["as", "seen", "key"]);

/** What a form would say, as one text: all that came with it, and what is to be put in, but not what was. */
export const commandOf = (form: HTMLFormElement): string =>
  [...form.querySelectorAll<HTMLInputElement>("input, select, textarea")]
    .filter(({ name }) => !APART.has(name))
    .map(({ id, name, type, value }) => `${name} ${type === "hidden" ? value : id}`)
    .join("\n");
