import type { Hono } from "hono";
import { all, type Element, ofClass, readXml, textOf } from "./xml.ts";

/** A form as it stands on a page: where it goes, what it sends untouched, and which of its fields wait to be filled in. */
export type Form = {
  readonly action: string;
  readonly fields: Readonly<Record<string, string>>;
  readonly open: readonly string[];
};

/** A browser without scripts, as far as it takes to send forms: one page, and what the server had it remember. */
export function plainBrowser(app: Pick<Hono, "request">) {
  const cookies = new Map<string, string>();
  let page: Element = { name: "html", attributes: {}, children: [] };
  const ask = async (path: string, init: RequestInit = {}): Promise<void> => {
    const cookie = [...cookies].map(([name, value]) => `${name}=${value}`).join("; ");
    const answer = await app.request(path, { ...init, headers: { ...init.headers, cookie, origin: "http://localhost" } });
    for (const set of answer.headers.getSetCookie()) {
      const [, name, value] = /^([^=]+)=([^;]*)/.exec(set)!;
      cookies.set(name!, value!);
    }
    if (answer.status === 303) return ask(answer.headers.get("location")!);
    const text = await answer.text();
    if (answer.status !== 200) throw new Error(`${path}: ${answer.status} ${text.slice(0, 300)}`);
    page = readXml(text.replace(/^<!DOCTYPE html>/, ""));
  };
  return {
    open: ask,
    /** The words in an element of a class; empty where there is none. */
    text: (name: string) => ofClass(page, name).map(textOf).join(" "),
    /** The forms in every element of a class, in their order on the page. */
    forms: (name: string) => ofClass(page, name).flatMap(all).filter(isForm).map(formOf),
    /** Sends a form filled in with what it waits for, and shows the page that comes back. */
    send: ({ action, fields, open }: Form, filled: Readonly<Record<string, string>> = {}) => {
      const unknown = Object.keys(filled).filter((name) => !open.includes(name));
      if (unknown.length > 0) throw new Error(`there is no field ${unknown.join(", ")} to fill in`);
      const headers = { "content-type": "application/x-www-form-urlencoded" };
      return ask(action, { method: "POST", headers, body: new URLSearchParams({ ...fields, ...filled }).toString() });
    },
  };
}
export type PlainBrowser = ReturnType<typeof plainBrowser>;

const isForm = ({ name, attributes }: Element) => name === "form" && attributes.method === "post";

function formOf(form: Element): Form {
  const inputs = all(form).filter(({ name, attributes }) => name === "input" && attributes.name);
  const selects = all(form).filter(({ name, attributes }) => name === "select" && attributes.name);
  const sent = inputs.filter(({ attributes: a }) => (TICKED.includes(a.type ?? "") ? "checked" in a : a.type === "hidden" || a.value));
  return {
    action: form.attributes.action!.split("#")[0]!,
    fields: Object.fromEntries([
      ...sent.map(({ attributes }) => [attributes.name!, attributes.value ?? ""]),
      ...selects.map((select) => [select.attributes.name!, chosenIn(select)]),
    ]) as Record<string, string>,
    open: [
      ...inputs.filter(({ attributes }) => attributes.type !== "hidden").map(({ attributes }) => attributes.name!),
      ...selects.map(({ attributes }) => attributes.name!),
      ...all(form).flatMap(({ name, attributes }) => (name === "button" && attributes.name ? [attributes.name] : [])),
    ],
  };
}
const TICKED = ["radio", "checkbox"];

/** What a choice says until somebody chooses: the option that is selected, or the first. */
function chosenIn(select: Element): string {
  const options = all(select).filter(({ name }) => name === "option");
  return (options.find(({ attributes }) => "selected" in attributes) ?? options[0])?.attributes.value ?? "";
}
