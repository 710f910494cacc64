import { watchContact } from "./contact.ts";
import { addKeypads } from "./keypad.ts";
import { followPlan } from "./plan.ts";
import { watchPresses } from "./press.ts";
import { rememberTurns } from "./turns.ts";
import { offerVoice } from "./voice/choices.ts";
import { useVoice } from "./voice/voice.ts";

rememberTurns();
addKeypads(document);
new MutationObserver(() => addKeypads(document)).observe(document.body, { subtree: true, childList: true });
watchPresses();
watchContact();
followPlan();
useVoice();
offerVoice();
document.querySelector("article.call")?.scrollIntoView({ block: "start" });
