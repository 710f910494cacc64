/** The version of the procedure: calls, gates, limits and how they are judged. A job keeps the one it began with. */
export const PROCEDURE = "1";
