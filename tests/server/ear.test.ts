import { createHash } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { allSteps } from "../../machines/install/job.ts";
import { english } from "../../machines/speech/en/english.ts";
import { sayableAt } from "../../machines/speech/en/sayable.ts";
import type { Sayable } from "../../machines/speech/sayable.ts";
import { createAssets } from "../../server/assets.ts";
import { earGrammar, heardAlways } from "../../server/routes/sayable.ts";
import type { EarGrammar } from "../../views/voice/own/grammar.ts";
import type { EarFiles } from "../../views/voice/own/messages.ts";
import { frozenOf, middleBrief } from "../proof/fixtures.ts";
import { testApp } from "../support/app.ts";
import { openedJob } from "../support/job.ts";

describe("the files of this phone's own ear", () => {
  const { app } = testApp(undefined, undefined, undefined, createAssets());
  let files: EarFiles;
  beforeAll(async () => {
    files = (await (await app.request("/assets/ear.json")).json()) as EarFiles;
  });

  it("each is as long as it is said to be, with the hash that it is said to have, compressed or not", async () => {
    expect(files.files.length).toBeGreaterThanOrEqual(2);
    for (const { path, bytes, sha256 } of files.files) {
      const body = Buffer.from(await (await app.request(path)).arrayBuffer());
      expect([path, body.length, createHash("sha256").update(body).digest("hex")]).toEqual([path, bytes, sha256]);
      const zipped = await app.request(path, { headers: { "accept-encoding": "gzip" } });
      expect(zipped.headers.get("content-encoding")).toBe("gzip");
    }
  });
  it("are kept for good under the name of their version; under another there is nothing", async () => {
    const { headers } = await app.request(files.worker);
    expect(headers.get("cache-control")).toContain("immutable");
    expect((await app.request(files.worker.replace(files.version, "000000000000"))).status).toBe(404);
  });
  it("only the worker may run what is compiled; no page, no other script may", async () => {
    const policyOf = async (path: string) => (await app.request(path)).headers.get("content-security-policy");
    expect(await policyOf(files.worker)).toContain("'wasm-unsafe-eval'");
    expect((await policyOf(files.worker))?.includes("'unsafe-eval'")).toBe(files.is === "prebuilt");
    for (const path of ["/", "/phone", files.worklet, files.engine, "/assets/client.js"])
      expect([path, await policyOf(path)]).toEqual([path, expect.not.stringContaining("eval")]);
  });
});

describe("what a phone's own ear listens for", () => {
  const { script } = frozenOf(middleBrief());
  const heardAt = (sayable: Sayable, wakeWord: string) => earGrammar(heardAlways(sayable, english, wakeWord), sayable.answers, wakeWord);
  const at = (id: string) => heardAt(sayableAt({ step: allSteps(script).find((step) => step.id === id)!, asks: null }), "albatross");

  it("through an open microphone every answer wants the wake word first; with the button none does", () => {
    const { answers } = at("drive.AB");
    expect(answers.open.every((phrase) => phrase.startsWith("albatross "))).toBe(true);
    expect(answers.talk).toContain("# inches");
  });
  it("a hold and a question to the guide want none", () => {
    const { always, holds } = at("drive.AB");
    for (const phrase of ["hold", "freeze"]) expect(holds).toContain(phrase);
    expect(always.open).toContain("what's left");
    expect(always.open).not.toContain("keep going");
  });
  it("what lets go of a hold wants the wake word or the button: it sounds like one", () => {
    const { always, releases } = at("drive.AB");
    expect(always.open).not.toContain("carry on");
    for (const phrase of ["carry on", "albatross carry on", "carry on everybody"]) expect(releases).toContain(phrase);
    for (const phrase of ["next", "correct"]) expect(releases).not.toContain(phrase);
  });
  it("what is the same at every call is told once", () => expect(at("drive.AB").always).toEqual(at("lace.S1.AB").always));
  it("a wake word that no dictionary has leaves the button", () => {
    const { always, answers, ways } = heardAt(sayableAt({ step: null, asks: null }), "xyzzyx");
    expect(answers.open).toEqual([]);
    expect(always.talk.join(" ")).not.toContain("xyzzyx");
    expect(ways.xyzzyx).toBeUndefined();
  });
  it("follows the job", async () => {
    const { app, job } = await openedJob();
    const grammar = (await (await app.request(`/jobs/${job}/sayable.json`)).json()) as EarGrammar;
    expect(grammar.holds).toContain("hold");
    expect(Object.keys(grammar.ways).length).toBeGreaterThan(100);
  });
});

it("a phone is tried with the wake word, or with one that is known where no dictionary has that", async () => {
  const { app } = testApp();
  const grammar = (await (await app.request("/phone/sayable.json")).json()) as EarGrammar;
  expect(grammar.always.talk).toContain("albatross");
  expect(await (await app.request("/phone")).text()).toContain("albatross");
  expect(((await (await app.request("/phone/clock.json")).json()) as { now: number }).now).toBeGreaterThan(0);
});
