import { expect, it } from "vitest";
import type { Value } from "../../machines/install/gates.ts";
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
        await browser.open(`/jobs/${state.job}/words`);
        await browser.send(browser.forms("in-words")[0]!, { heard: "next" });
        expect((await job.read()).step).toBe(step);
        if (browser.text("refused") !== "") refused.add(phase);
      }
      await answer(browser, state);
      // A good answer went on, or showed what is asked now.
      const { step: there, gate: asked } = await job.read();
      expect([there, asked?.id, asked?.status], browser.text("notice")).not.toEqual([step, gate.id, gate.status]);
      continue;
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
  const value = good.value as Value;
  const found = (fits: (form: Form) => boolean) => browser.forms("answers").find((f) => f.fields.kind === value.kind && fits(f));
  const formFor = (fits: (form: Form) => boolean) => found(fits)!;
  if (value.kind === "yesNo") return browser.send(formFor(({ fields }) => fields.value === (value.yes ? "yes" : "no")));
  if (value.kind === "counts") {
    await browser.open(`/jobs/${state.job}/truck`);
    for (let [tick] = browser.forms("all-on"); tick; [tick] = browser.forms("all-on")) await browser.send(tick);
    return;
  }
  const asked = () => found(({ fields }) => fields.gate === state.gate!.id);
  const yes = () => found(({ fields }) => fields.gate === state.gate!.id && fields.value === "yes");
  const field = () => formFor(({ open }) => open.includes("value"));
  switch (value.kind) {
    // One at a time, as the page asks for them. It goes on as soon as there are enough.
    case "lengths":
      for (let form = asked(); form; form = asked()) await browser.send(form, { value: `${value.ft[form.fields.length!]} ft` });
      return;
    case "figures":
      for (let form = asked(); form; form = asked()) await browser.send(form, { value: String(value.n[form.fields.name!]) });
      return;
    case "each":
      for (let form = yes(); form; form = yes()) await browser.send(form);
      return;
    case "document":
      return browser.send(field(), { value: value.named });
    case "count":
    case "measure":
      return browser.send(field(), { value: String(value.n) });
    default:
      throw new Error(`no form is known for ${value.kind}`);
  }
}
