import type { CallTexts } from "../../call-text.ts";

export const makingSafe: CallTexts = {
  "safe.tools": {
    say: () => "Stop. Tools down, hammers down.",
    why: "First nobody gets hurt, then the rest.",
    wrong: "One more stake, one more click. That is the one that goes wrong, with everybody in a hurry.",
    well: "Shout it and lay the hammer down where you stand, never throw it. Look for whoever has not heard.",
  },
  "safe.cloth": {
    say: () => "Cloth on the ground: strap it, fold it, weigh it down.",
    why: "Loose cloth is a sail.",
    wrong: "Somebody lies down on a flapping edge. The wind picks up both.",
    well: "Stay low, from the windward side, hands off the edge once it lifts. Lightning near, or it fights you: leave it.",
  },
  "safe.rallyPoint": {
    say: (of) => `Everybody to ${of.rallyPoint}.`,
    why: "There you can count them. A tent is no shelter from lightning.",
    wrong: "Some go to their cars, one goes back for a phone. Then others go back to look for that one.",
    well: "Walk, and look behind you as you go. The lead comes last, and nobody leaves again before the count.",
  },
  "safe.pole": {
    say: () => "The pole in hand: finish it and restrain it, or lower it.",
    why: "Half up is the worst place to leave it.",
    wrong: "Everybody looks at the sky, and hands come off. It comes down by itself, across the way out.",
    well: "The caller says up or down, once. All hands on, eyes on its top, the foot held, until it is restrained or lies flat.",
  },
  "safe.out": {
    say: () => "Everybody out from under. Shout it.",
    why: "Nobody goes back in for anything.",
    wrong: "It is said once, by somebody walking off. The one at the back with ear defenders on works on.",
    well: "Horn and voice together, an arm pointing at the way out. Leave what you carry, boots clear of ropes, straight out.",
  },
  "safe.restrain": {
    say: () => "From outside, if there is time: straps locked, feet held, walls as the sheet says.",
    why: "Do only what can be done from outside.",
    wrong: "Somebody steps in just to reach one strap. That is when the pole falls.",
    well: "In twos, outside the stake line, eyes on the pole tops. In doubt, or in lightning, leave it and walk away.",
  },
  "safe.clear": {
    say: (of) => `Stay clear by more than the height. Muster at ${of.rallyPoint}.`,
    why: "It can come down any way. In lightning: a building or a car.",
    wrong: "People stop at the stake line to film it. A stake comes out, and brings strap and plate with it.",
    well: "Walk on until no pole or strap can reach you, then turn and watch it. Hold out your arms and keep others back.",
  },
  "safe.people": {
    say: (of) => `Everybody out by the exits, calmly, to ${of.rallyPoint}. Not into another tent.`,
    why: "Clear it while walking is still easy.",
    wrong: "The music plays on, and everybody waits for somebody else to get up. Then they all want the same door.",
    well: "Music off, lights up, one calm voice. Somebody at every exit pointing out, and a hand for those who are slow.",
  },
  "safe.power": {
    say: () => "Power off at the source, if that is safe to reach.",
    why: "Cables and poles fall together.",
    wrong: "Somebody wades through the wet to the box. The cable lies under the cloth, and it is live.",
    well: "Only from outside, on dry ground, by somebody who knows the box. Otherwise stay off, and tell whoever runs the supply.",
  },
  "safe.headcount": {
    say: (of) => `Count heads: ${of.crew}.`,
    ask: () => "How many are here?",
    why: "Before anybody goes on, everybody is found.",
    wrong: "Somebody says all here without counting. One lies behind the tent, and nobody goes to look.",
    well: "Stand them still, call each name, and hear each one answer. Nobody answers for a friend.",
    ifNot: "Find who is missing. Call for help. Nobody goes on.",
  },
  "safe.looked": {
    say: () => "Before going on: look over stakes, straps, poles and cloth from outside.",
    ask: () => "Is all that stands or lies sound?",
    why: "What made you stop may have broken something.",
    wrong: "The sun is out again, so they walk straight in. A pin is half out, and the first touch brings the pole down.",
    well: "Once round, well outside. Look for leaning poles, lifted stakes, slack straps, torn rings. In doubt, ask the engineer.",
    ifNot: "Mend it from outside, or stand the job down.",
  },
};
