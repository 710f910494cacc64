/** Ids of the elements that a swap targets. */
export const regions = {
  hurt: "hurt",
  strip: "strip",
  thread: "thread",
  call: "call",
  said: "said",
  asked: "asked",
  desk: "desk",
  answers: "answers",
  dock: "dock",
  notice: "notice",
  heard: "heard",
  ear: "ear",
  alarm: "alarm",
  earStatus: "ear-status",
  live: "live",
  aside: "aside",
  present: "present",
  here: "here",
  tentStatus: "tent-status",
  tentPlan: "tent-plan",
  tentOn: "tent-on",
} as const;

/** Ids on the loading list. */
export const truckIds = { head: "truck-head", facts: "truck-facts", lines: "truck-lines", line: (item: string) => `line-${item}` } as const;

/** The place beside a field where what is wrong with it is said: `tent.widthFt` has `wrong-tent-widthFt`. */
export const wrongId = (field: string): string => `wrong-${field.replaceAll(".", "-")}`;

/** The words for our own script, as JSON. */
export const CLIENT_WORDS = "words";
