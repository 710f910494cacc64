import type { CallTexts } from "../../call-text.ts";

/** What kinds of work need for as long as they last: asked before one begins, and again whenever it is missing. */
export const conditions: CallTexts = {
  thunder: {
    say: () => "Thunder or lightning: stop work, everybody to the storm shelter.",
    ask: () => "Quiet for long enough?",
    why: "If you hear it, it can reach you. Poles and wet cloth make good targets.",
    wrong: "The rain quits, so they walk back out. The last bolt of a storm comes out of blue sky.",
    well: "A building or a hard-topped vehicle, windows up, never a tree, never a tent. Every new rumble starts the wait over.",
    ifNot: "Stay in the shelter and wait it out. Every new rumble starts it over.",
  },
  warning: {
    say: () => "Check the official weather warnings for this place.",
    ask: () => "Warnings clear until this is done?",
    why: "This can't be stopped quickly. Start nothing you can't finish.",
    wrong: "The sky is blue, so nobody looks. The storm is behind the hill, and gets here before the last pole is held.",
    well: "Open the official warnings and read them out loud. Look as far ahead as the last strap of today, or the last guest of tonight.",
    ifNot: "Wait until it's lifted. Strap down what lies out, make safe what stands.",
  },
  paint: {
    say: () => "Look at the locate paint and flags where you'll drive.",
    ask: () => "Paint and flags still there?",
    why: "They were checked earlier, and rain, feet and mowers take them away.",
    wrong: "It was all there yesterday, so nobody looks again. Half the paint washed off, and that's the half they drive in.",
    well: "Walk to where the first stake goes, and look down. No paint, no flag, any doubt: the driver stays on the truck.",
    ifNot: "No driving. Have it marked again through the one-call center.",
  },
  earsAndEyes: {
    say: () => "Ears and eyes on. Nobody holds a stake for the driver.",
    ask: () => "Ears and eyes on?",
    why: "Chips fly, and a missed swing breaks a hand.",
    wrong: "A friend steadies the stake with a boot. The hammer glances off the head, and it's the shin.",
    well: "Feet apart, nobody in front of the swing or behind it. See that the head sits tight. Tools are handed over, never thrown.",
    ifNot: "No gear, no driver. Swap people.",
  },
  hats: {
    say: () => "Hard hats on, everybody near the tent.",
    ask: () => "Hard hats on?",
    why: "What falls here is steel.",
    wrong: "The hat stays in the truck for just this one pole. A pin drops out of a joint above, and there's no time to dodge.",
    well: "Strap done up, so that it stays on when you look up. Look around at every face before the first pole moves.",
    ifNot: "No hat: outside the stake line.",
  },
  caller: {
    say: () => "Name one caller. Nobody else calls.",
    ask: () => "Does everybody know who calls?",
    why: "Two callers lift at two times.",
    wrong: "The lead shouts, and so does somebody's boss. Half the hands lift, half wait, and the pole goes off sideways.",
    well: "The caller stands where all can see and touches nothing. Try the lift word, the stop word and the hand signals; with radios, one channel.",
    ifNot: "Name one, out loud, and ask again.",
  },
  wayOut: {
    say: () => "Show the way out from under, clear of ropes.",
    ask: () => "Way out clear, and everybody knows it?",
    why: "When it goes wrong there's no time to look.",
    wrong: "Tools and a coil of rope lie across it. On the shout everybody runs, and the first one down blocks the rest.",
    well: "Walk it yourself, from the pole to the open. Carry out whatever lies there, and have each one point at it before going in.",
    ifNot: "Clear it before anybody goes under.",
  },
  wind: {
    say: () => "Read the wind, out in the open.",
    ask: () => "What's the wind, and the gust?",
    why: "Half up or half down is the worst shape for a tent when it blows.",
    wrong: "It's read behind the truck, where it's calm. The gust that was there all along comes with poles in people's hands.",
    well: "Walk out clear of trees and trucks and face it, meter over your head. Wait through several gusts, then say the worst of them.",
    ifNot: "Wait and read again. Secure or lower what's up, strap down what lies out.",
  },
};
