import { watchContact } from "./pages/guide/client/contact.ts";
import { watchPresses } from "./pages/guide/client/press.ts";
import { rememberTurns } from "./pages/guide/client/turns.ts";
import { offerVoice } from "./pages/more/client.ts";
import { addKeypads } from "./parts/keypad.client.ts";
import { followPlan } from "./parts/tent-part.client.ts";
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
