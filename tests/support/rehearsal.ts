import type { GuideState } from "../../views/pages/guide/state.ts";
import { brief, testApp } from "./app.ts";

/** What a player says: a form's fields. */
export type Fields = Readonly<Record<string, string>>;

/** A page as it is read. */
export const textOf = async (answer: Response): Promise<string> => (await answer.text()).replaceAll("&#39;", "'").replaceAll("&quot;", '"');

/** A job with a rehearsal of it: `player` is the phone that it is led on. */
export async function rehearsalSite(how: Fields = {}, site = testApp()) {
  const { app, post } = site;
  const { job } = (await (await post("/jobs", { key: "open-0001", brief: brief() })).json()) as { job: string };

  /** A phone, with the cookies that it keeps. */
  function phone() {
    const cookies = new Map<string, string>();
    const send = async (path: string, fields?: Fields) => {
      const headers: Record<string, string> = { origin: "http://localhost", cookie: [...cookies].map((c) => c.join("=")).join("; ") };
      const form = {
        method: "POST",
        body: new URLSearchParams(fields),
        headers: { ...headers, "content-type": "application/x-www-form-urlencoded" },
      };
      const answer = await app.request(path, fields ? form : { headers });
      for (const line of answer.headers.getSetCookie()) {
        const [, name = "", value = ""] = /^([^=]+)=([^;]*)/.exec(line) ?? [];
        cookies.set(name, value);
      }
      return answer;
    };
    return { send, text: async (path: string) => textOf(await send(path)) };
  }

  const state = async (id: string) => (await (await app.request(`/jobs/${id}.json`)).json()) as GuideState;
  const player = phone();
  let keys = 0;
  const key = () => `said-${String(++keys).padStart(6, "0")}`;
  const rehearse = async (fields: Fields = how, from = player) => {
    const answer = await from.send(`/jobs/${job}/rehearse`, { key: key(), ...fields });
    return { answer, id: answer.headers.get("location")?.split(/[/?]/)[2] ?? "" };
  };
  const { id } = await rehearse();
  const say = async (fields: Fields, from = player) =>
    from.send(`/jobs/${id}/say`, { as: "p1", seen: String((await state(id)).revision), key: key(), ...fields });
  const wait = async (minutes: string, from = player) =>
    from.send(`/jobs/${id}/wait`, { as: "p1", seen: String((await state(id)).revision), key: key(), minutes });
  return { ...site, job, id, phone, player, rehearse, say, wait, state: () => state(id), stateOf: state, key };
}
