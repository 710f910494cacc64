const ENTITIES: Readonly<Record<string, string>> = { amp: "&", quot: '"', "#39": "'", lt: "<", gt: ">" };
const plain = (text: string) => text.replaceAll(/&(amp|quot|#39|lt|gt);/g, (_, name: string) => ENTITIES[name]!);

/** Attributes that a person reads or hears; `data-name` is shown before its cell on a phone. */
const READ = /(?<= )(?:title|aria-label|placeholder|alt|data-name)="([^"]*)"/g;
/** What is no text: our own script's, and what somebody typed. */
const NO_TEXT = /<(script|style|textarea)\b[^>]*>.*?<\/\1>/gs;

/** Every text of a page or of a drawing as a person gets it: text nodes and attributes that are read. */
export function textsOf(html: string): string[] {
  const shown = html.replaceAll(NO_TEXT, "");
  const tags = [...shown.matchAll(/<[^>]*>/g)].flatMap(([tag]) => [...tag.matchAll(READ)].map((m) => m[1]!));
  return [...shown.split(/<[^>]*>/), ...tags].map((text) => plain(text).trim()).filter((text) => text !== "");
}

/** What our own script says on a page, as it came with it. */
export const scriptTexts = (html: string): string[] => {
  const [, json] = /<script type="application\/json" id="words">(.*?)<\/script>/s.exec(html) ?? [];
  return json === undefined ? [] : [...json.matchAll(/:"([^"]*)"/g)].map((m) => m[1]!);
};
