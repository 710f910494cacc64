/** An element of a document, with what stands in it. */
export type Element = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Element | string)[];
};

const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Reads a document of one root element, strictly: throws on whatever is not well-formed (XML 1.0, of the parts that drawings use). */
export function readXml(text: string): Element {
  let at = /^(?:<\?xml [^?]*\?>\s*)?/.exec(text)![0].length;
  const fail = (what: string): never => {
    throw new Error(`${what} at ${at}: ${JSON.stringify(text.slice(at, at + 40))}`);
  };
  const take = (form: RegExp, what: string): RegExpExecArray => {
    const sticky = new RegExp(form.source, "y");
    sticky.lastIndex = at;
    const found = sticky.exec(text) ?? fail(what);
    at += found[0].length;
    return found;
  };
  const words = (raw: string) =>
    raw.replace(/&(?:#(\d+)|(\w+));|&/g, (_, code, name) =>
      code ? String.fromCodePoint(Number(code)) : (NAMED[name] ?? fail(`a bare & or unknown &${name};`)),
    );
  const element = (): Element => {
    const name = take(/<([A-Za-z][\w:-]*)/, "no element")[1]!;
    const attributes: Record<string, string> = {};
    while (!/\s*\/?>/y.test(text.slice(at, at + 3))) {
      const [, key, value] = take(/\s+([A-Za-z_][\w:.-]*)="([^"<]*)"/, "no attribute");
      if (key! in attributes) fail(`${key} twice`);
      attributes[key!] = words(value!);
    }
    if (take(/\s*(\/?)>/, "a tag that does not end")[1]) return { name, attributes, children: [] };
    const children: (Element | string)[] = [];
    while (!text.startsWith("</", at)) children.push(text[at] === "<" ? element() : words(take(/[^<]+/, "no end")[0]));
    take(new RegExp(`</${name}\\s*>`), `no end of ${name}`);
    return { name, attributes, children };
  };
  const root = element();
  if (text.slice(at).trim() !== "") fail("more than one root");
  return root;
}

/** The element and all in it. */
export const all = (e: Element): Element[] => [e, ...e.children.flatMap((c) => (typeof c === "string" ? [] : all(c)))];

/** The words in an element, in order. */
export const textOf = (e: Element): string => e.children.map((c) => (typeof c === "string" ? c : textOf(c))).join("");

/** Those of a class, in order. */
export const ofClass = (e: Element, name: string): Element[] => all(e).filter((x) => (x.attributes.class ?? "").split(" ").includes(name));
