import type { CallTexts, WordParams } from "../../call-text.ts";
import { when } from "../when.ts";

const at = (of: WordParams, moment: string) => when.dayAndClock(String(of.zone ?? "UTC"), Number(of[moment] ?? 0));

/** What is forecast, and what is agreed for wind and storm. */
export const weatherPlanCalls: CallTexts = {
  "forecast.over": {
    say: (of) => `Forecast ${of.gustMph} over the limit of ${of.limitMph}, from ${at(of, "fromAt")}.`,
    ask: () => "Customer's person informed, and the hour agreed?",
    why: "The tent will be empty in that wind. Better agreed now than shouted then.",
    wrong: "Everybody hopes that it comes later. It comes during dinner, with two hundred people under it.",
    well: "Call the customer's person before anything comes off the truck. Forecast, limit, and the hour by which it's empty: all three, and they say them back.",
    ifNot: "Agree on an earlier hour, another day, or no tent. Nobody can agree to more wind.",
  },
  "forecast.raising": {
    say: (of) => `Forecast ${of.gustMph} over the ${of.limitMph} for raising, from ${at(of, "fromAt")}.`,
    why: "Poles go up before it or after it. Half up is the worst shape for a tent.",
    wrong: "The crew starts late and means to beat it. It gets there with the sides up and the middle down.",
    well: "Count back from that hour: how long to the last tie, and an hour to spare. If it doesn't fit, start another day.",
  },
  "forecast.fresh": {
    say: () => "Get the newest forecast, to the hour the tent comes down.",
    ask: () => "Highest gust in it, in mph?",
    why: "This morning's forecast is old by now, and from tonight the tent stands without you.",
    wrong: "It was fine when the truck was loaded, so nobody looks again. The evening run has a front in it.",
    well: "Read it off the official forecast, out loud. The gust, not the average, and the worst hour of the rental, nights too.",
    ifNot: "Agree on an hour to be empty by, in the weather plan, or get the engineer's paper.",
  },
  "forecast.clearBy": {
    say: (of) => `Forecast is over the limit. Everybody out by ${at(of, "clearBy")}.`,
    ask: () => "Does the customer's person agree to that?",
    why: "An hour that was agreed is kept. A look at the sky is argued about.",
    wrong: "The hour is on paper and the band has never heard of it. They play one more set, then another.",
    well: "Have them write it down and tell the band, the caterers and the bar. Count back how long it takes to clear.",
    ifNot: "It stays closed until they do. An earlier hour is fine.",
  },
  "storm.plan": {
    say: () => "Go through the weather plan with the customer's person, out loud.",
    ask: () => "Went through all of it?",
    why: "When it blows there's no time to look up who does what.",
    wrong: "The plan is handed over in an envelope. It's still shut when the walls begin to snap.",
    well: "Who watches, where warnings come from, the three gusts and what happens at each, where people go. Point at the way out and at the shelter.",
    ifNot: "Fill in the weather plan, then go through it with them.",
  },
  "storm.agreed": {
    say: () => "Somebody else: ask the customer's person if they agree to the plan.",
    ask: () => "Do they agree?",
    why: "Whoever explained it hears a yes in every nod.",
    wrong: "They said sure, and were counting chairs. At the first gust they ask who decided that.",
    well: "Ask what they'll do at each gust and where people go. Their own words, not yes or no.",
    ifNot: "Change the plan until they do. Without a yes it isn't handed over.",
  },
};
