import { watchContact } from "./pages/guide/client/contact.ts";
import { watchPresses } from "./pages/guide/client/press.ts";
import { rememberRevisions } from "./pages/guide/client/revisions.ts";
import { offerVoice } from "./pages/more/client.ts";
import { addKeypads } from "./parts/keypad.client.ts";
import { followPlan } from "./parts/tent-part.client.ts";
import { useVoice } from "./voice/voice.ts";

rememberRevisions();
addKeypads(document);
new MutationObserver(() => addKeypads(document)).observe(document.body, { subtree: true, childList: true });
watchPresses();
watchContact();
followPlan();
useVoice();
offerVoice();
document.querySelector("article.call")?.scrollIntoView({ block: "start" });
