/**
 * How a published figure came here: seen on the page that is named, in somebody's transcription of it, worked out from one of
 * those, or remembered. A figure from memory may warn or shut; it never opens anything.
 */
export type Seen = "read" | "secondHand" | "computed" | "memory";

/** A publication and the place in it. */
export type Published = { readonly title: string; readonly section: string; readonly seen: Seen };

/**
 * Where a figure of a calculation comes from: what was published; what follows from statics, geometry or statistics alone; common practice
 * without a source; or the job itself: its sheet, its brief, its plan, what was told or measured on the site.
 */
export type FigureSource = Published | "statics" | "geometry" | "statistics" | "practice" | "sheet" | "brief" | "plan" | "site";
