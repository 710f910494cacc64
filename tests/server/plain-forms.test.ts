import { expect, it } from "vitest";
import type { GuideState } from "../../views/pages/guide/state.ts";
import { goodAnswer } from "../support/crew-lead.ts";
import { openedJob } from "../support/job.ts";
import { PHASES } from "../support/phases.ts";
import { type Form, type PlainBrowser, plainBrowser } from "../support/plain-forms.ts";

it("the demo job goes up and comes down by nothing but the forms on its pages; in each phase the first open gate is refused", async () => {
  const job = await openedJob();
  const browser = plainBrowser(job.app);
  const refused = new Set<string>();
  const next = () => browser.send(browser.forms("main")[0]!);
  for (let state = await job.read(); !state.closed; state = await job.read()) {
    const { step, phase, gate } = state;
    const lead = state.people.find((p) => p.role === "lead")!.id;
    await hold(browser, state, lead);
    if (gate && gate.status !== "good") {
      if (!refused.has(phase)) {
        await next();
        expect((await job.read()).step).toBe(step);
        if (browser.text("refused") !== "") refused.add(phase);
      }
      await answer(browser, state);
      await hold(browser, state, lead);
    }
    await next();
    expect((await job.read()).step, browser.text("notice")).not.toBe(step);
  }
  expect([...refused].sort()).toEqual(PHASES);
});

/** The guide, on the screen of somebody: as it is, where it is theirs. */
async function hold(browser: PlainBrowser, { job, people }: GuideState, person: string): Promise<void> {
  const { name, roleName } = people.find((p) => p.id === person)!;
  if (!browser.text("strip").includes(`${name}, ${roleName}`)) await browser.open(`/jobs/${job}?as=${person}`);
}

/** Answers the gate on the page by the form for that kind of answer, on the screen of whom it allows. */
async function answer(browser: PlainBrowser, state: GuideState): Promise<void> {
  const good = goodAnswer(state.gate!, state);
  if ("wind" in good) return browser.send(browser.forms("wind")[0]!, { mph: "6", gustMph: "9" });
  await hold(browser, state, good.as);
  const value = good.value as { kind: string; yes?: boolean; n?: number; ft?: Record<string, number>; named?: string };
  const formFor = (fits: (form: Form) => boolean) => browser.forms("gate").find((f) => f.fields.kind === value.kind && fits(f))!;
  if (value.kind === "yesNo") return browser.send(formFor(({ fields }) => fields.value === (value.yes ? "yes" : "no")));
  if (value.kind === "counts") {
    await browser.open(`/jobs/${state.job}/truck`);
    for (let [tick] = browser.forms("all-on"); tick; [tick] = browser.forms("all-on")) await browser.send(tick);
    return;
  }
  if (value.kind !== "lengths")
    return browser.send(
      formFor(({ open }) => open.includes("value")),
      { value: String(value.n ?? value.named) },
    );
  // One at a time, as the tape gives them.
  for (const [length, ft] of Object.entries(value.ft!))
    await browser.send(
      formFor(({ open }) => open.includes("value")),
      { length, value: `${ft} ft` },
    );
}
