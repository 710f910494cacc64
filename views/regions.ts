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
} as const;
