import { describe, expect, it } from "vitest";
import { createPresence } from "../../server/presence.ts";
import { testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

/** What waits is called when the test says so. */
function presenceInHand() {
  const waiting: (() => void)[] = [];
  const announce = () => {
    for (const call of waiting.splice(0)) call();
  };
  return { presence: createPresence((call) => waiting.push(call)), announce, waiting };
}

describe("who is on a job with a screen", () => {
  it("is each once, however many screens they have, who came first first", () => {
    const { presence } = presenceInHand();
    const leave = [
      presence.arrive("job-1", "p4"),
      presence.arrive("job-1", "p1"),
      presence.arrive("job-1", "p4"),
      presence.arrive("job-1", null),
    ];
    presence.arrive("job-2", "p7");
    expect(presence.here("job-1")).toEqual(["p4", "p1"]);
    leave[0]!();
    expect(presence.here("job-1")).toEqual(["p1", "p4"]);
    for (const go of leave) go();
    expect([presence.here("job-1"), presence.here("job-2")]).toEqual([[], ["p7"]]);
  });
  it("is told of once, when a whole crew's screens come back together", () => {
    const { presence, announce, waiting } = presenceInHand();
    let woken = 0;
    const stop = presence.listen("job-1", () => woken++);
    for (let n = 1; n <= 7; n++) presence.arrive("job-1", `p${n}`);
    expect(waiting).toHaveLength(1);
    announce();
    stop();
    presence.arrive("job-1", "p8");
    announce();
    expect(woken).toBe(1);
  });
});

/** What a stream has sent until it holds some text. */
async function until(stream: Response, text: string): Promise<string> {
  const reader = stream.body!.pipeThrough(new TextDecoderStream()).getReader();
  let sent = "";
  while (!sent.includes(text)) {
    const { value, done } = await reader.read();
    if (done) throw new Error(`the stream ended without ${text}`);
    sent += value;
  }
  await reader.cancel();
  return sent;
}

describe("a screen that follows a job", () => {
  it("is told who else has one, and so is the page of the people", async () => {
    const job = await openedJob();
    const as = (person: string) => ({ headers: { cookie: `device=phone-of-${person}; as-${job.job}=${person}` } });
    const lead = await job.app.request(`/jobs/${job.job}/live`, as("p1"));
    const hand = await job.app.request(`/jobs/${job.job}/live`, as("p4"));
    const people = await job.app.request(`/jobs/${job.job}/people/live`, as("p5"));
    expect(await until(lead, "3 on it")).toContain("<small");
    expect(await until(people, "on it now")).toMatch(/Jory, crew: <b>on it now/);
    await hand.body!.cancel();
  });
  it("that slept is told how much it missed, and one that missed nothing is not", async () => {
    const job = await openedJob();
    for (let n = 0; n < 3; n++) await job.say({ type: "note", text: `note ${n}` });
    const missedAfter = async (entry: string) =>
      until(await job.app.request(`/jobs/${job.job}/live`, { headers: { "last-event-id": entry } }), 'hx-target="#call"');
    expect(await missedAfter("1")).toContain("3 things happened while this phone slept.");
    expect(await missedAfter("3")).toContain("1 thing happened");
    for (const entry of ["4", "9", "", "-1", "1e9", "nonsense"]) expect(await missedAfter(entry)).not.toContain("while this phone slept");
  });
});

describe("screens that are alike", () => {
  it("show the same, each with keys of its own", async () => {
    const job = await openedJob(undefined, testApp());
    const shown = async (device: string) =>
      until(
        await job.app.request(`/jobs/${job.job}/live`, { headers: { cookie: `device=${device}; as-${job.job}=p4` } }),
        'hx-target="#call"',
      );
    const [one, other] = [await shown("phone-one"), await shown("phone-two")];
    const keys = (html: string) => [...html.matchAll(/name="key" value="([^"]+)"/g)].map(([, key]) => key);
    expect(keys(one).length).toBeGreaterThan(2);
    expect(keys(one).filter((key) => keys(other).includes(key))).toEqual([]);
    expect([...keys(one), ...keys(other)].every((key) => /^[\w.-]{8,80}$/.test(key!))).toBe(true);
    expect(new Set(keys(one)).size).toBe(keys(one).length);
  });
});
