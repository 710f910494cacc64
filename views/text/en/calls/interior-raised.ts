import type { CallTexts } from "../../call-text.ts";
import { lineName } from "../names.ts";
import { placesText } from "../worked-out.ts";

export const interiorRaised: CallTexts = {
  "poles.pinned": {
    say: () => "Put the inside poles together. Pin every joint.",
    ask: () => "How many with every joint pinned?",
    why: "An unpinned joint folds under load.",
    wrong: "The joint is snug, so the pin is left for later. Halfway up the pole breaks in the middle, over people.",
    well: "Pole on the ground, holes lined up by eye, never with a finger. Pin through, clip on, twist the joint, then the next.",
    ifNot: "Pin it. A bent pin or hole: that pole stays down.",
  },
  "under.hands": {
    say: () => "Name the hands for each pole. With a machine: operator and spotter.",
    ask: () => "Fewest people on any pole?",
    why: "Short of hands, a pole comes back down on the ones who are there.",
    wrong: "One is off moving the truck, and they start anyway. The pole stalls halfway, on arms that are giving out.",
    well: "Give each a place by name: pole, foot, rope. As many as the maker's manual wants; a machine moves on its spotter's word.",
    ifNot: "Nobody goes under. Wait for hands, or a machine with operator and spotter.",
  },
  "under.ties": {
    say: () => "Inside ties: count people in.",
    ask: () => "How many went under?",
    why: "Nothing in there is tied yet. Whoever goes in has to come out.",
    wrong: "All the poles stand, so everybody wanders in. A gust lifts the roof, and nobody knows who is under which pole.",
    well: "One way in, past you, one by one, each with a stake, a strap and a place. Say the number out loud.",
    ifNot: "Caller and counter stay outside. Send back whoever is over, or add crew.",
  },
  "under.in": {
    say: (of) => `${lineName(of)}: count people in.`,
    ask: () => "How many went under?",
    why: "Whoever goes in has to come out. The caller and whoever counts them out stay outside.",
    wrong: "Somebody slips in at the side to help, after the count. By the number everybody is out, and one is still in there.",
    well: "Stand at the way in and let them pass one by one. Touch a shoulder, say the number, and let nobody follow.",
    ifNot: "Only people counted today go under. Send the rest back out.",
  },
  "lift.quarters": {
    say: (of) => `${lineName(of)}: on the call, lean in, stand. Hands on till secured.`,
    ask: () => "Every foot on its plate, at its dot, secured?",
    why: "Hands off first, and the foot kicks out. Nobody stands in line with a foot.",
    wrong: "They seem to stand by themselves, and everybody looks for a strap at once. The cloth breathes, and a pole walks.",
    well: "Tops into their rings, feet walked in to their plates, short steps on one voice. One kneels beside each foot and fixes it as the maker shows; a tug, a loud yes.",
    ifNot: "Keep hands on. Secure it, or lower the pole.",
  },
  "lift.center": {
    say: (of) => `${lineName(of)}: on the call, lean in, stand. Hands on till secured.`,
    ask: () => "Foot on its plate, at its dot, secured?",
    why: "It's the heaviest pole and the most cloth. Nobody stands in line with its foot.",
    wrong: "The foot is left free for a moment with the top in its ring. The cloth shifts, and it sweeps somebody's legs away.",
    well: "Beside the pole, hands on it, eyes on its top, boots out of every loop of rope. Foot kept low and walked in to its plate; on the stop word it stays where it is.",
    ifNot: "Keep hands on. Secure the foot, or lower the pole.",
  },
  "under.out": {
    say: () => "Out from under. Somebody else counts them.",
    ask: () => "How many came out?",
    why: "Nobody stays under a tent that's being moved.",
    wrong: "The one who counted them in counts them out, in a hurry. The one tying off at the back gets missed.",
    well: "Stand at the way out, clear of ropes, and count faces. Say your number before you hear theirs, then look in once.",
    ifNot: "Nothing moves. Fewer: find who's missing. More: count again.",
  },
  "tied.quarters": {
    say: (of) =>
      of.anchored === undefined
        ? `${lineName(of)}: drive at white dots, off the paint. Strap each.`
        : `${lineName(of)}: drive at white dots, not ${placesText(String(of.anchored).split(" "), 1)}. Strap each.`,
    ask: () => "All tied? Worst stake: how many inches sticking up?",
    why: "Uplift takes the weight off a pole, and then it falls.",
    wrong: "The evening is still, so it's left for the morning. A gust lifts the roof, the pole hangs for a moment, and drops.",
    well: "Look for locate paint before each stake; ears and eyes on. A stake already in where the sheet wants it? Strap to that. Slack out, one good pull.",
    ifNot: "Drive it down. Won't go, paint in doubt, dot gone? Lower the line, or the engineer's paper.",
  },
  "tied.center": {
    say: (of) =>
      of.anchored === undefined
        ? `${lineName(of)}: drive at its white dot, off the paint. Strap it.`
        : `${lineName(of)}: drive nothing. Strap it to the engineer's anchor.`,
    ask: (of) => (of.anchored === undefined ? "Tied? How many inches sticking up?" : "Tied? Nothing's driven, so zero inches?"),
    why: "When the roof lifts, the center pole hangs, and comes down last and hardest.",
    wrong: "The strap goes to the nearest stake instead of its own. It pulls the foot sideways, and the pole leans with the load on.",
    well: "Drive at the mark, off the locate paint, or use one already driven where the sheet wants it. Strap as the sheet shows, slack out, pull once.",
    ifNot: "Drive it down. Won't go, paint in doubt, dot gone? Lower the pole, or the engineer's paper.",
  },
  "groundCloth.out": {
    say: () => "Ground cloths out, pulled from outside, on the call.",
    ask: () => "Every ground cloth out?",
    why: "It trips people, and no ground cloth is worth one person alone under there.",
    wrong: "Somebody ducks in to free a corner that caught. The cloth comes with a jerk, and takes a pole's foot along.",
    well: "Both hands on the edge, low and slow, eyes on the nearest pole foot. When it snags, stop pulling and go around.",
    ifNot: "Pull it out another side. Still snagged? Every pole stands tied: two go in and cut it free.",
  },
};
