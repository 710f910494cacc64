import { buzz } from "../pages/guide/client/buzz.ts";
import { SAY_ALOUD } from "../pages/guide/client/due.ts";
import { notice } from "../pages/guide/client/notice.ts";
import { saidHere, shownAt } from "../pages/guide/client/revisions.ts";
import { clientWords } from "../parts/client-words.ts";
import { regions } from "../regions.ts";
import { type Heard, Listener } from "./ear.ts";
import { browserEngine } from "./engine.ts";
import { byBrowser, byBrowserHere, byOwnEar, Engines, type Listening } from "./engines.ts";
import { languageHere } from "./languages.ts";
import { Speaker } from "./mouth.ts";
import type { OwnEar } from "./own/own-ear.ts";
import { earFiles, earOnPage } from "./own/phone-ear.ts";
import { settings } from "./settings.ts";
import { onlyChanged } from "./short-form.ts";
import type { VoiceStatus } from "./status.ts";
import { watchTalk } from "./talk-keys.ts";
import { keepAwake } from "./wake-lock.ts";

/** What moves the call is said in so few words. A call that moves after longer talk was moved by somebody else. */
const MOVES_IN_WORDS = 3;
/** A hold or an alarm that no answer came to is said again, with its key, so often and so many ms apart. */
const STOP_TRIES = 10;
const STOP_AGAIN_MS = 2500;

/** This page among all that ever were: with an utterance's id it is the key under which that utterance is done once. */
const page = Array.from(crypto.getRandomValues(new Uint8Array(12)), (b) => b.toString(16).padStart(2, "0")).join("");

type Htmx = { ajax: (verb: string, path: string, options: object) => Promise<void> };
const at = (id: string) => document.getElementById(id);

/** Voice on the guide's page: talk button, open listening, replies spoken. Without a recognizer nothing of it shows. */
export function useVoice(): void {
  const form = at(regions.ear) as HTMLFormElement | null;
  if (!form) return;
  const mouth = new Speaker();
  mouth.quiet = !settings.speaks;
  keepAwake(() => {
    document.body.dataset.goesDark = "yes";
    show((document.body.dataset.voice as VoiceStatus | undefined) ?? "off");
  });
  speakReplies(mouth, () => settings.listens);
  document.addEventListener(SAY_ALOUD, (event) => mouth.say((event as CustomEvent<string>).detail));
  document.addEventListener("pointerdown", () => mouth.open(), { once: true });
  const holder = form.querySelector<HTMLInputElement>('input[name="as"]')?.value ?? "";
  // Nobody holds this screen yet: there is nobody to hear.
  if (!window.isSecureContext || holder === "") return;
  void listenOn(form, mouth);
}

/**
 * Offers what this phone can listen with. Without any the talk button does not show. Where the browser's own listens on a press, this phone's
 * own ear is asked for with the first press: most pages are looked at and not spoken to.
 */
async function listenOn(form: HTMLFormElement, mouth: Speaker): Promise<void> {
  const browser = browserEngine();
  let own: OwnEar | null = null;
  const engines = new Engines(
    browser && (settings.browserStays ? byBrowserHere(browser, () => own?.phrases ?? []) : byBrowser(browser)),
    () => settings.ear,
  );
  const fetchOwn = async () => {
    const files = await earFiles();
    if (files === null) return;
    own = earOnPage(files, form.action.replace(/\/say$/, ""));
    engines.own = byOwnEar(own);
  };
  const isAtOnce = browser === null || settings.ear === "own" || settings.listens;
  if (isAtOnce) await fetchOwn();
  else {
    const awaited = new AbortController();
    const pressed = () => {
      awaited.abort();
      void fetchOwn();
    };
    for (const press of ["pointerdown", "keydown"]) document.addEventListener(press, pressed, { signal: awaited.signal });
  }
  if (engines.now(false) === null) return;
  const ear = new Listener(engines, {
    heard: (heard) => take(heard, mouth, form),
    status: (status) => {
      own?.how({ talk: status === "talking" });
      document.body.dataset.ear = ear.by ?? "";
      show(status);
    },
  });
  mouth.onSpeaking = (speaking) => own?.how({ speaking });
  document.body.classList.add("can-hear");
  // It is told before the first word, not after it.
  document.body.dataset.ear = engines.now(settings.listens)?.by ?? "";
  watchTalk(ear, () => mouth.hush());
  if (settings.listens) ear.start();
}

/** What was heard goes to the server with what the screen showed when it began. What can only stop goes past everything that waits. */
function take({ id, alternatives, began, talk, tooLong }: Heard, mouth: Speaker, form: HTMLFormElement): void {
  if (tooLong) {
    notice(talk ? clientWords().tooLong : "");
    return;
  }
  if (!talk && mouth.isOwn(began, alternatives)) return;
  const { holdsInside, isAlarm, isHold } = languageHere();
  const hold = alternatives.some(isHold);
  const alarm = isAlarm(alternatives[0] ?? "");
  if (hold || alarm || holdsInside(alternatives[0] ?? "")) {
    mouth.hush();
    buzz("hold");
    if (hold) notice(clientWords().hold);
  }
  const stops = hold || alarm;
  const source = stops ? (at(regions.alarm) as HTMLFormElement) : form;
  const { revision, readBack } = shownAt(began);
  if (talk || (alternatives[0] ?? "").split(" ").length <= MOVES_IN_WORDS) saidHere();
  const values = {
    seen: revision ?? "0",
    readBack: readBack ?? "",
    key: `said-${page}-${id}`,
    alternatives: alternatives.join("\n"),
    talk: talk ? "yes" : "no",
  };
  const send = () => (window as unknown as { htmx: Htmx }).htmx.ajax("POST", form.action, { source, values, swap: "none" });
  send().catch(() => notice(clientWords().notSent));
  if (stops) sendUntilAnswered(send);
}

/** The same words with the same key are done once: they are said again until this phone is answered. */
function sendUntilAnswered(send: () => Promise<void>, tries = STOP_TRIES): void {
  const before = at(regions.heard)?.dataset.reply;
  window.setTimeout(() => {
    if (tries === 0 || at(regions.heard)?.dataset.reply !== before) return;
    send().catch(() => notice(clientWords().notSent));
    sendUntilAnswered(send, tries - 1);
  }, STOP_AGAIN_MS);
}

/** Speaks what the screen shows, and nothing else: the answer to this phone's own words, then the call where it moved. */
function speakReplies(mouth: Speaker, listens: () => boolean): void {
  const step = () => document.querySelector<HTMLElement>("article.call")?.dataset.step;
  const heard = () => at(regions.heard)?.dataset.reply;
  let last = heard();
  let told = step();
  /** The last call as it was said, whole. */
  let call = "";
  new MutationObserver(() => {
    const mine = heard() !== last;
    last = heard();
    const went = at(regions.heard)?.dataset.went;
    if (mine && went === "readBack") buzz("readBack");
    if (mine && (went === "refused" || went === "notUnderstood")) buzz("refused");
    const moved = step() !== told;
    if (!(mine || (moved && listens())) || (mine && went === "leftAlone")) return;
    told = step();
    const text = (selector: string) => document.querySelector(selector)?.textContent?.trim() ?? "";
    // What was said here is answered with the call that it led to; a call that somebody else moved is read out.
    const parts = [
      mine ? text(`#${regions.notice}`) : moved ? text("article.call h1") : "",
      moved ? text("article.call .site") : "",
      moved ? text(".gate .ask") || text(".gate .missing") : "",
    ];
    const said = parts.filter((part) => part !== "").join(" ");
    mouth.say(moved && settings.isShort ? onlyChanged(said, call) : said);
    if (moved) call = said;
  }).observe(document.body, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-reply", "data-step"] });
}

function show(status: VoiceStatus): void {
  document.body.dataset.voice = status;
  const line = at(regions.earStatus);
  const dark = document.body.dataset.goesDark === "yes" && (status === "listening" || status === "talking");
  const words = clientWords();
  const by = words.hears[document.body.dataset.ear as Listening["by"]];
  const isOn = status === "listening" || status === "talking";
  // The talk button says who listens, too: where there is something else to say, there is no room for it here.
  const parts = [words.status[status], dark ? words.goesDark : isOn ? by : ""];
  if (line) line.textContent = status === "off" ? "" : parts.filter((part) => part).join(" ");
}
