import { notice } from "../../pages/guide/client/notice.ts";
import { clientWords } from "../../parts/client-words.ts";
import type { EarGrammar } from "./grammar.ts";
import type { Unheard } from "./hearing.ts";
import type { EarFiles } from "./messages.ts";
import { OwnEar, type SoundLevel } from "./own-ear.ts";

/** So much over the noise is shown as full. */
const FULL_DB = 40;

/** What the ear of this phone is made of, as the server names it; `null` where it can't be asked. */
export async function earFiles(): Promise<EarFiles | null> {
  const response = await fetch("/assets/ear.json").catch(() => null);
  return response?.ok ? ((await response.json().catch(() => null)) as EarFiles | null) : null;
}

/** This phone's own ear on a page of a job: it knows what can be said at each call, and shows how loud it is. */
export function earOnPage(files: EarFiles, job: string): OwnEar {
  const ear = new OwnEar(files, { loudness: showLoudness, nothing: sayNothingHeard });
  followCall(ear, job);
  return ear;
}

/** Each call has words of its own. */
function followCall(ear: OwnEar, job: string): void {
  let told = "";
  const tell = async () => {
    const call = document.querySelector<HTMLElement>("article.call");
    const now = call?.dataset.revision ?? "";
    if (now === told || !ear.isUsed) return;
    told = now;
    const response = await fetch(`${job}/sayable.json`).catch(() => null);
    const grammar = response?.ok ? ((await response.json().catch(() => null)) as EarGrammar | null) : null;
    // Without it the words of the call before are listened for; it is asked again with the next change.
    if (grammar === null) told = "";
    else ear.expect(grammar);
  };
  ear.onUsed = () => void tell();
  new MutationObserver(() => void tell()).observe(document.body, { subtree: true, childList: true, attributeFilter: ["data-revision"] });
}

function showLoudness({ levelDb, floorDb }: SoundLevel): void {
  const share = Math.max(0, Math.min(1, (levelDb - floorDb) / FULL_DB));
  document.body.style.setProperty("--over-noise", share.toFixed(2));
}

/** Nothing is said of what may have been talk among the crew. */
function sayNothingHeard(why: Unheard): void {
  const isTalking = document.body.dataset.voice === "talking";
  if (why === "tooLoud") notice(clientWords().tooLoud);
  else if (isTalking) notice(why === "tooLong" ? clientWords().tooLong : clientWords().unheard);
}
