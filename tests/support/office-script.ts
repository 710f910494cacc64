import { expect } from "vitest";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { testApp } from "./app.ts";
import type { Say } from "./crew-lead.ts";

/** A job that an office script opened, and speaks to over the wire. */
export async function openedByScript(input: object) {
  const { app, post, clock, journal } = testApp();
  const answer = await post("/jobs", { key: "office-open-1", brief: input });
  expect(answer.status).toBe(201);
  const { job } = (await answer.json()) as { job: string };
  const read = async () => (await app.request(`/jobs/${job}.json`)).json() as Promise<GuideState>;
  const say: Say = async (body) => {
    const r = await post(`/jobs/${job}/say`, body);
    return { status: r.status, body: (await r.json()) as never };
  };
  return { app, job, read, say, post, clock, journal };
}
