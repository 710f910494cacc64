import type { CallTexts, WordParams } from "../../call-text.ts";
import { hurt } from "../hurt.ts";

const places = (of: WordParams) => `Rally: ${of.rallyPoint ?? hurt.notKnown}. Storm: ${of.stormShelter ?? hurt.notKnown}.`;

export const makingSafe: CallTexts = {
  "safe.tools": {
    say: () => "Stop. Tools down, drivers off.",
    why: "People first, then the rest.",
    wrong: "One more stake, one more click. That's the one that goes wrong, with everybody in a hurry.",
    well: "Shout it and lay the tool down where you stand, never throw it. Look for whoever hasn't heard, ears covered.",
  },
  "safe.cloth": {
    say: () => "Lightning: leave the cloth. Else strap it, fold it, weight it down.",
    why: "Loose cloth is a sail. In lightning nobody stays out for it.",
    wrong: "Somebody lies down on a flapping edge. The wind picks up both.",
    well: "Stay low, from the windward side, hands off the edge once it lifts. Lightning near, or it fights you: leave it.",
  },
  "safe.rallyPoint": {
    say: (of) => `Everybody out. ${places(of)}`,
    why: "There you can count them. In thunder or storm it's the building or hard-topped vehicle.",
    wrong: "Some go to their cars, one goes back for a phone. Then others go back to look for that one.",
    well: "Walk, and look behind you as you go. Never under a tree, never in a tent. The lead comes last, and nobody leaves before the count.",
  },
  "safe.pole": {
    say: () => "Pole in hand: stand and secure it, or lower it.",
    why: "Half up is the worst place to leave it.",
    wrong: "Everybody looks at the sky, and hands come off. It comes down by itself, across the way out.",
    well: "The caller says up or down, once. All hands on, eyes on its top, the foot held, until it's secured or lies flat.",
  },
  "safe.out": {
    say: () => "Everybody out from under. Shout it.",
    why: "Nobody goes back in for anything.",
    wrong: "It's said once, by somebody walking off. The one in back with ear protection on keeps working.",
    well: "Horn and voice together, an arm pointing at the way out. Drop what you carry, boots clear of ropes, straight out.",
  },
  "safe.restrain": {
    say: () => "Lightning: walk away. Else from outside: lock straps, hold feet.",
    why: "Only what can be done from outside. In lightning nobody holds steel.",
    wrong: "Somebody steps in just to reach one strap. That's when the pole falls.",
    well: "In pairs, outside the stake line, eyes on the pole tops. Any doubt, or any lightning: leave it and walk away.",
  },
  "safe.clear": {
    say: (of) => `Get well clear. ${places(of)}`,
    why: "It can come down any way, farther than it is tall. In lightning only the shelter will do.",
    wrong: "People stop at the stake line to film it. A stake comes out, and brings strap and plate with it.",
    well: "Walk on until no pole or strap can reach you, then turn and watch it. Thunder: straight to the shelter, never under a tree.",
  },
  "safe.people": {
    say: (of) => `Everybody out, calmly. ${places(of)}`,
    why: "Clear it while walking is still easy. Not into another tent.",
    wrong: "The music plays on, and everybody waits for somebody else to get up. Then they all want the same door.",
    well: "Music off, lights up, one calm voice. Somebody at every exit pointing out, and a hand for those who are slow.",
  },
  "safe.power": {
    say: () => "Power off at the source, if that's safe to reach.",
    why: "Cables and poles fall together.",
    wrong: "Somebody wades through the wet to the box. The cable lies under the cloth, and it's live.",
    well: "Only from outside, on dry ground, by somebody who knows the box. Otherwise stay off, and tell whoever runs the supply.",
  },
  "safe.headcount": {
    say: () => "Stand still. Count heads.",
    ask: () => "How many are here?",
    why: "Before anybody goes on, everybody is found.",
    wrong: "Somebody says all here without counting. One lies behind the tent, and nobody goes to look.",
    well: "Call each name and hear each one answer. Nobody answers for a friend, and the shelter gets counted too.",
    ifNot: "Find who's missing. Call for help. Nobody goes on.",
  },
  "safe.looked": {
    say: () => "From outside, look over stakes, straps, poles and cloth.",
    ask: () => "Everything still sound?",
    why: "Whatever made you stop may have broken something.",
    wrong: "The sun is out again, so they walk straight in. A pin is half out, and the first touch brings the pole down.",
    well: "Once around, well outside. Look for leaning poles, lifted stakes, slack straps, torn rings, water on the cloth. Doubt: ask the engineer.",
    ifNot: "Fix it from outside, or stand the job down.",
  },
};
