import type { Words } from "../words.ts";

export const standing: Words = {
  watch: {
    say: () => "Standing. Walk round it every day and after every blow: stakes, straps, poles, cloth.",
    ask: () => "Is all as it was handed over?",
    why: "Rain lets stakes go. Webbing creeps. People move things.",
    ifNot: "Put it right now, or make safe: everybody out.",
  },
  "watch.end": {
    say: () => "It is over. Agree with the customer's person that it comes down.",
    ask: () => "Is it agreed?",
    why: "Nobody takes a roof off people.",
    ifNot: "Wait for them.",
  },
};
