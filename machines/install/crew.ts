import type { Person, Role } from "./brief.ts";

/** Who may move the guide on. */
export const DRIVERS: readonly Role[] = ["lead", "deputy"];

/** Those who stand in the toolbox talk: all but the people who only watch, audit or own the ground. */
export const onSite = (crew: readonly Person[]): Person[] =>
  crew.filter((p) => p.role !== "manager" && p.role !== "watcher" && p.role !== "siteOwner");
