import { clientWords } from "../../parts/client-words.ts";
import { browserEngine } from "../../voice/engine.ts";
import { earFiles } from "../../voice/own/phone-ear.ts";
import { settings } from "../../voice/settings.ts";
import type { VoiceStatus } from "../../voice/status.ts";

/** The part of the More page that only makes sense with scripts: whether this phone listens all the time, and speaks. */
export async function offerVoice(): Promise<void> {
  const part = document.getElementById("voice");
  if (!part) return;
  part.hidden = false;
  const text = clientWords();
  const status = await voiceHere();
  part.querySelector("[data-status]")!.textContent = status === "off" ? "" : text.status[status];
  const show = () => {
    for (const button of part.querySelectorAll<HTMLButtonElement>("[data-setting]")) {
      const is = button.dataset.setting === "listens" ? settings.listens : settings.speaks;
      button.setAttribute("aria-pressed", String(is));
      const [off, on] = button.dataset.setting === "listens" ? [text.listen, text.stopListening] : [text.speak, text.beQuiet];
      button.textContent = is ? on : off;
      button.hidden = button.dataset.setting === "listens" && status !== "off";
    }
  };
  part.addEventListener("click", (event) => {
    const setting = (event.target as HTMLElement).closest<HTMLElement>("[data-setting]")?.dataset.setting;
    if (setting === "listens") settings.listens = !settings.listens;
    else if (setting === "speaks") settings.speaks = !settings.speaks;
    show();
  });
  show();
}

/** What keeps this phone from listening, if anything does. */
async function voiceHere(): Promise<VoiceStatus> {
  if (!window.isSecureContext) return "insecure";
  return browserEngine() === null && (await earFiles()) === null ? "none" : "off";
}
