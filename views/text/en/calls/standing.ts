import type { CallTexts } from "../../call-text.ts";

export const standing: CallTexts = {
  "tension.again": {
    say: () => "Once more around: every strap, every inside tie.",
    ask: () => "Every strap and tie tight again?",
    why: "Webbing gives most in the first hour. Answered sooner, it's asked again then. Rain makes it give again.",
    wrong: "The crew is loaded up and gone. The first breeze finds the slack side, and the cloth starts to pump.",
    well: "Palm on each strap, opposite sides together, a click where it gave. Handle locked, pole top plumb, then the next.",
    ifNot: "Take it up before anybody goes in.",
  },
  open: {
    say: () => "Open it. Everything is good to go right now.",
    why: "It's open as long as weather, watch and plan are good. When one goes bad, everybody goes out.",
    wrong: "It's opened early because the line is long. The wind was never read, and nobody has the horn.",
    well: "Stand at the main exit, tell the customer's person it's theirs, and look up and around once more before the first guest.",
  },
  watch: {
    say: () => "Daily walk: straps and ties tight, no water on cloth, stakes not moved.",
    ask: () => "All good?",
    why: "Rain loosens stakes, webbing creeps, water gets heavy, and people move things.",
    wrong: "The tent gets a look from the bar. A stake on the wet side has lifted, and the next blow takes that corner.",
    well: "Same way around every time, and after every blow and rain. Palm on each strap, stake to pole top. A dab of white where stake meets grass: creep shows.",
    ifNot: "Fix it now, or make safe: everybody out. Push water off from outside, never from under.",
  },
  "watch.end": {
    say: () => "It's over. Agree with the customer's person that it comes down.",
    ask: () => "Agreed that it comes down?",
    why: "Nobody takes a roof off people.",
    wrong: "The band has gone, so the crew starts on the walls. The caterers are still in there with the gas lit.",
    well: "Ask face to face, not by text. Then walk through once yourself before a hand goes to any strap.",
    ifNot: "Wait for them.",
  },
};
