/** Ids of the elements that a swap targets. */
export const regions = { strip: "strip", thread: "thread", dock: "dock", notice: "notice", live: "live" } as const;
