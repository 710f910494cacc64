import type { testApp } from "./app.ts";

/** The plain forms of an application under test, as somebody's phone sends and reads them. */
export const formsOf = (world: () => ReturnType<typeof testApp>) => ({
  send: (path: string, fields: Readonly<Record<string, string>>, device = "phone-of-ines") =>
    world().app.request(path, {
      method: "POST",
      body: new URLSearchParams(fields),
      headers: { origin: "http://localhost", cookie: `device=${device}` },
    }),
  html: async (path: string) => (await (await world().app.request(path)).text()).replaceAll("&#39;", "'").replaceAll("&quot;", '"'),
});

/** Where an answer leads. */
export const toOf = (answer: Response): string | null => answer.headers.get("location");
