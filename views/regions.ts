/** Ids of the elements that a swap targets. */
export const regions = {
  strip: "strip",
  thread: "thread",
  dock: "dock",
  notice: "notice",
  heard: "heard",
  ear: "ear",
  alarm: "alarm",
  earStatus: "ear-status",
  live: "live",
  tentStatus: "tent-status",
  tentPlan: "tent-plan",
} as const;

/** The place beside a field where what is wrong with it is said: `tent.widthFt` has `wrong-tent-widthFt`. */
export const wrongId = (field: string): string => `wrong-${field.replaceAll(".", "-")}`;
