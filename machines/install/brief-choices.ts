/** Which inside poles go up first. The first is taken where the sheet does not say. */
export const INTERIOR_ORDERS = ["quartersFirst", "centersFirst"] as const;

/** Whether a paper is required. The first is taken where nobody says: it is asked on the site. */
export const PAPERWORK = ["unknown", "required", "notRequired"] as const;

/** When inside poles are tied down: each line before the next goes up, or all when they stand. */
export const INTERIOR_TIES = ["byLine", "afterAll"] as const;
