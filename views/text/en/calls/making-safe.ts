import type { Words } from "../words.ts";

export const makingSafe: Words = {
  "safe.tools": { say: () => "Stop. Tools down, hammers down.", why: "First nobody gets hurt, then the rest." },
  "safe.cloth": { say: () => "Cloth on the ground: strap it, fold it, weigh it down.", why: "Loose cloth is a sail." },
  "safe.muster": { say: (of) => `Everybody to ${of.muster}.`, why: "There you can count them. A tent is no shelter from lightning." },
  "safe.pole": { say: () => "The pole in hand: finish it and restrain it, or lower it.", why: "Half up is the worst place to leave it." },
  "safe.out": { say: () => "Everybody out from under. Shout it.", why: "Nobody goes back in for anything." },
  "safe.restrain": {
    say: () => "From outside, if there is time: straps locked, feet held, walls as the sheet says.",
    why: "Do only what can be done from outside.",
  },
  "safe.clear": {
    say: (of) => `Stay clear by more than the height. Muster at ${of.muster}.`,
    why: "It can come down any way. In lightning: a building or a car.",
  },
  "safe.people": {
    say: (of) => `Everybody out by the exits, calmly, to ${of.muster}. Not into another tent.`,
    why: "Clear it while walking is still easy.",
  },
  "safe.power": { say: () => "Power off at the source, if that is safe to reach.", why: "Cables and poles fall together." },
  "safe.headcount": {
    say: (of) => `Count heads: ${of.crew}.`,
    ask: () => "How many are here?",
    why: "Before anybody goes on, everybody is found.",
    ifNot: "Find who is missing. Call for help. Nobody goes on.",
  },
  "safe.looked": {
    say: () => "Before going on: look over stakes, straps, poles and cloth from outside.",
    ask: () => "Is all that stands or lies sound?",
    why: "What made you stop may have broken something.",
    ifNot: "Mend it from outside, or stand the job down.",
  },
};
