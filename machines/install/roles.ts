/**
 * Everybody who can be on a job. `competent` is somebody named by the firm for wind, anchors, overhead lines and "who is
 * under". `watcher` looks after the standing tent, often the customer's person; `siteOwner` answers for private lines.
 */
export const ROLES = ["lead", "deputy", "competent", "crew", "trainee", "manager", "watcher", "siteOwner"] as const;
