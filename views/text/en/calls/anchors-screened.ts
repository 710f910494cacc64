import type { CallTexts } from "../../call-text.ts";
import { whyShort } from "../load-reasons.ts";

const times = (percent: string | number | undefined): string =>
  `${(Number(percent) / 100).toLocaleString("en-US", { maximumFractionDigits: 2 })}`;

/** What the anchors were screened to, before and after the stakes are driven. */
export const anchorsScreened: CallTexts = {
  "screened.short": {
    say: (of) =>
      of.percent === undefined
        ? `Screening: ${of.station} is short. Pulls or the engineer's paper come after driving.`
        : `Screening: ${of.station} is short, ${of.orMore === undefined ? "" : "at least "}${times(of.percent)} times what its stakes may carry.`,
    why: "Worked out from wind, roof, strap and ground. It can say short; it can't say good.",
    wrong: "The stakes drove hard, so nobody minds the figure. The first squall draws the worst station, and its neighbors follow.",
    well: "Open the anchors page and look at that station. More stakes count only where the sheet allows them. Else plan the pulls now.",
  },
  "screened.sand": {
    say: () => "Screening: bare stakes don't hold in sand. Another anchor, or pulls along the straps.",
    why: "The published figures for stakes in sand are a twentieth of those in good clay.",
    wrong: "It's packed hard and damp, so it counts as dirt. By noon it's dry, and the stakes slide out by hand.",
    well: "Get the engineer on the line before anything is driven. Ask for an anchor that's made for sand, and its paper.",
  },
  "screened.notKnown": {
    say: (of) => `Screening: not known. ${whyShort(of.because)}`,
    why: "A guess could flatter the anchors. The sheet in its soil, or pulls, decide.",
    wrong: "Not known is heard as fine. Nobody tells the missing figure, and the crew finds out in the wind.",
    well: "Open the anchors page: it says what is missing and what to do instead. Enter it, or plan three pulls along the straps.",
  },
  "screened.notShort": {
    say: () => "Screening found nothing short. That opens nothing: the sheet or pulls do.",
    why: "It leaves out a lot: gusty cloth, soft spots, water on the roof.",
    wrong: "Nothing short is heard as passed, and the soil check gets a nod. The sheet's soil was never there.",
    well: "Carry on as if nobody had worked it out: the sheet's stakes in the sheet's soil, all the way around.",
  },
  "anchors.pulls": {
    say: (of) => `Pull three stakes along the strap, softest spot first. ${of.station} is short.`,
    ask: () => "Pounds held: softest, second, third?",
    why: "The lowest pull over the factor of safety is all that a stake counts for.",
    wrong: "Three handy ones get pulled, all by the gate. The wet corner never is, and that's the one that goes.",
    well: "Same stakes, same depth, along the strap. Walk the line for the softest spot first. Everybody off to the side; pull slowly, watch the ground, read the gauge when it moves.",
    ifNot: "Change the anchors with the sheet, or get the engineer's paper. Hang nothing on it.",
  },
  "anchors.noLoad": {
    say: (of) => `The anchors are short, and their load isn't known. ${whyShort(of.because)}`,
    ask: () => "Whose paper says these anchors hold?",
    why: "A pull proves nothing until it's known what it has to reach.",
    wrong: "The crew pulls until it feels strong. Nobody knows what a real blow will ask of it.",
    well: "Tell what's missing on the anchors page: then pulls have a figure to reach. Else the engineer, in writing.",
    ifNot: "Enter it on the anchors page, or get a licensed engineer's paper.",
  },
  "anchors.pulledBefore": {
    say: () => "These anchors rest on earlier pulls. After heavy rain, pull three again.",
    ask: () => "Pounds held: softest, second, third?",
    why: "Soaked ground may hold half of what it held dry.",
    wrong: "It pours overnight, and last week's pulls still count. The ground is soup, and the stakes lean by breakfast.",
    well: "Note where the softest spot was. After a downpour pull there first, along the strap, everybody off to the side.",
    ifNot: "Change the anchors with the sheet, or get the engineer's paper. Hang nothing on it.",
  },
};
