import { browserEngine, worksHere } from "../../voice/engine.ts";
import { languageHere } from "../../voice/languages.ts";
import { Speaker } from "../../voice/mouth.ts";
import type { EarGrammar } from "../../voice/own/grammar.ts";
import type { HeardWords, Unheard } from "../../voice/own/hearing.ts";
import { OwnEar } from "../../voice/own/own-ear.ts";
import { earFiles } from "../../voice/own/phone-ear.ts";
import { settings } from "../../voice/settings.ts";

/** A phone that is further off than this is told so. */
const MAX_CLOCK_MS = 30_000;
/** So long the word is waited for. */
const WORD_MS = 15_000;
const BUZZ_MS = 400;

const row = (check: string) => document.querySelector<HTMLElement>(`[data-check="${check}"]`)!;

/** What a check came to: the page has the words for it. */
function came(check: string, is: string): void {
  const at = row(check);
  at.dataset.is = is;
  for (const outcome of at.querySelectorAll<HTMLElement>("[data-outcome]")) outcome.hidden = outcome.dataset.outcome !== is;
}

/** The page that tells whether a phone is fit for the job. */
export function usePhoneCheck(): void {
  const start = document.querySelector<HTMLButtonElement>("[data-check-phone]");
  if (!start) return;
  start.hidden = false;
  start.addEventListener("click", async () => {
    start.disabled = true;
    for (const at of document.querySelectorAll<HTMLElement>("[data-check]")) came(at.dataset.check!, "");
    await checkAll();
    start.disabled = false;
  });
  document.addEventListener("click", (event) => {
    const answer = (event.target as Element).closest<HTMLElement>("[data-answer]");
    if (answer) came(answer.closest<HTMLElement>("[data-check]")!.dataset.check!, answer.dataset.answer === "yes" ? "good" : "bad");
  });
  chooseEar();
  chooseSpeech();
}

async function checkAll(): Promise<void> {
  // Speaking and buzzing want the press that began it.
  speak();
  came("buzz", navigator.vibrate?.(BUZZ_MS) ? "waits" : "none");
  came("secure", window.isSecureContext ? "good" : "bad");
  came("storage", (await keeps()) ? "good" : "bad");
  came("clock", await clockIs());
  came("awake", (await staysAwake()) ? "good" : "bad");
  if (window.isSecureContext) await listen();
}

function speak(): void {
  const mouth = new Speaker();
  mouth.say(whatItSays());
  came("speaker", "speechSynthesis" in window ? "waits" : "none");
}

async function keeps(): Promise<boolean> {
  try {
    localStorage.setItem("ridgecall.check", "kept");
    const kept = localStorage.getItem("ridgecall.check") === "kept";
    localStorage.removeItem("ridgecall.check");
    return kept && (!("caches" in window) || (await caches.open("ridgecall-check").then(() => caches.delete("ridgecall-check"))));
  } catch {
    return false;
  }
}

/** Against the server's, by what its answer says when it was sent. */
async function clockIs(): Promise<string> {
  const before = Date.now();
  const response = await fetch("/phone/clock.json", { cache: "no-store" }).catch(() => null);
  const told = response?.ok ? ((await response.json().catch(() => null)) as { now: number } | null) : null;
  if (told === null) return "none";
  const [early, late] = [told.now - Date.now(), told.now - before];
  return late > -MAX_CLOCK_MS && early < MAX_CLOCK_MS ? "good" : "bad";
}

async function staysAwake(): Promise<boolean> {
  const lock = await navigator.wakeLock?.request("screen").catch(() => null);
  await lock?.release();
  return lock != null;
}

/** The microphone, this phone's own ear, and one word through both. */
async function listen(): Promise<void> {
  const microphone = await microphoneIs();
  came("microphone", microphone);
  const files = await earFiles();
  came("ear", "waits");
  const grammar = await fetch("/phone/sayable.json").then(
    (r) => (r.ok ? (r.json() as Promise<EarGrammar>) : null),
    () => null,
  );
  if (!files || !grammar) return came("ear", "bad");
  const nothing = (why: Unheard) => why === "tooLoud" && row("word").dataset.is === "waits" && came("word", "loud");
  const ear = new OwnEar(files, { loudness: () => {}, nothing });
  const loaded = await ear.load().then(
    () => true,
    () => false,
  );
  came("ear", loaded ? (files.is === "built" ? "good" : "prebuilt") : "bad");
  if (loaded && microphone === "good") came("word", await oneWord(ear, grammar));
  ear.end();
}

async function microphoneIs(): Promise<string> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    for (const track of stream.getTracks()) track.stop();
    return "good";
  } catch (error) {
    const { name } = error as Error;
    return name === "NotAllowedError" ? "denied" : name === "NotFoundError" ? "none" : "bad";
  }
}

/** Asks for the word and waits for it; only that word can be heard. */
function oneWord(ear: OwnEar, grammar: EarGrammar): Promise<string> {
  ear.expect(grammar);
  ear.how({ talk: true });
  const wanted = row("word").querySelector(".said")!.textContent!;
  return new Promise((resolve) => {
    const end = (is: string) => {
      clearTimeout(late);
      ear.close(told);
      resolve(is);
    };
    const late = window.setTimeout(() => end(row("word").dataset.is === "loud" ? "loud" : "bad"), WORD_MS);
    const told = {
      began: () => {},
      heard: ({ words }: HeardWords) => words.includes(wanted) && end("good"),
      cut: () => {},
      gone: () => end("bad"),
      trouble: () => end("bad"),
    };
    ear.open(told).then(
      () => came("word", "waits"),
      () => end("bad"),
    );
  });
}

/** Who listens on this phone, and whether the browser's own can do it here. */
function chooseEar(): void {
  const part = document.querySelector<HTMLElement>(".who-listens");
  if (!part) return;
  part.hidden = false;
  const browser = browserEngine();
  const show = () => {
    for (const button of part.querySelectorAll<HTMLElement>("[data-ear]"))
      button.setAttribute("aria-pressed", String(button.dataset.ear === settings.ear));
    part.querySelector("[data-headset]")!.setAttribute("aria-pressed", String(settings.headset));
  };
  const ask = part.querySelector<HTMLButtonElement>("[data-ask-browser]")!;
  ask.hidden = !browser || !("available" in browser);
  ask.addEventListener("click", async () => {
    settings.browserStays = browser !== null && (await worksHere(browser, languageHere().listens));
    for (const line of part.querySelectorAll<HTMLElement>("[data-browser]"))
      line.hidden = (line.dataset.browser === "stays") !== settings.browserStays;
  });
  const headset = part.querySelector<HTMLElement>("[data-headset]")!;
  headset.addEventListener("click", () => {
    settings.headset = !settings.headset;
    show();
  });
  part.addEventListener("click", (event) => {
    const ear = (event.target as Element).closest<HTMLElement>("[data-ear]")?.dataset.ear;
    if (ear === "either" || ear === "own" || ear === "browser") settings.ear = ear;
    show();
  });
  show();
}

/** How fast it speaks, in which voice, and how much of a call. */
function chooseSpeech(): void {
  const part = document.querySelector<HTMLElement>(".speech");
  if (!part || !("speechSynthesis" in window)) return;
  part.hidden = false;
  const voices = part.querySelector<HTMLSelectElement>("[data-voice-name]")!;
  const show = () => {
    const is = (name: "rate" | "short", value: string) => {
      for (const button of part.querySelectorAll<HTMLElement>(`[data-${name}]`))
        button.setAttribute("aria-pressed", String(button.dataset[name] === value));
    };
    is("rate", String(settings.rate));
    is("short", settings.isShort ? "yes" : "no");
  };
  const offerVoices = () => {
    const spoken = speechSynthesis.getVoices().filter(({ lang }) => lang.startsWith(document.documentElement.lang));
    voices.replaceChildren(voices.options[0]!, ...spoken.map(({ name }) => new Option(name, name, false, name === settings.voice)));
  };
  voices.addEventListener("change", () => {
    settings.voice = voices.value || null;
  });
  part.addEventListener("click", (event) => {
    const { rate, short } = (event.target as Element).closest("button")?.dataset ?? {};
    if (rate !== undefined) settings.rate = Number(rate);
    if (short !== undefined) settings.isShort = short === "yes";
    show();
  });
  const mouth = new Speaker();
  part.querySelector("[data-try]")!.addEventListener("click", () => mouth.say(whatItSays()));
  speechSynthesis.addEventListener?.("voiceschanged", offerVoices);
  offerVoices();
  show();
}

/** What it says to be tried. */
const whatItSays = (): string => document.querySelector<HTMLElement>("[data-speaks]")!.dataset.speaks!;
