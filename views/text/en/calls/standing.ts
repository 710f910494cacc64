import type { CallTexts } from "../../call-text.ts";

export const standing: CallTexts = {
  watch: {
    say: () => "Standing. Walk round it every day and after every blow: stakes, straps, poles, cloth.",
    ask: () => "Is all as it was handed over?",
    why: "Rain lets stakes go. Webbing creeps. People move things.",
    wrong: "The tent is looked at from the bar. A stake on the wet side has lifted, and the next blow takes that corner.",
    well: "Same way round each time, a palm on every strap, eyes from stake to pole top. Chalk stakes at the grass: creep then shows.",
    ifNot: "Put it right now, or make safe: everybody out.",
  },
  "watch.end": {
    say: () => "It is over. Agree with the customer's person that it comes down.",
    ask: () => "Is it agreed?",
    why: "Nobody takes a roof off people.",
    wrong: "The band has gone, so the crew starts on the walls. The caterers are still in there with the gas lit.",
    well: "Ask to their face, not by message. Then walk through once yourself before a hand goes to any strap.",
    ifNot: "Wait for them.",
  },
};
