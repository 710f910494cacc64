import { type VoiceStatus, voice } from "../../text/en/voice.ts";
import { engineHere } from "../../voice/engine.ts";
import { settings } from "../../voice/settings.ts";

/** The part of the More page that only makes sense with scripts: whether this phone listens all the time, and speaks. */
export function offerVoice(): void {
  const part = document.getElementById("voice");
  if (!part) return;
  part.hidden = false;
  const status: VoiceStatus = !engineHere() ? "none" : window.isSecureContext ? "off" : "insecure";
  part.querySelector("[data-status]")!.textContent = status === "off" ? "" : voice.status[status];
  const show = () => {
    for (const button of part.querySelectorAll<HTMLButtonElement>("[data-setting]")) {
      const is = button.dataset.setting === "listens" ? settings.listens : settings.speaks;
      button.setAttribute("aria-pressed", String(is));
      const [off, on] = button.dataset.setting === "listens" ? [voice.listen, voice.stopListening] : [voice.speak, voice.beQuiet];
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
