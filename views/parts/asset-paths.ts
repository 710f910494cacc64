import { createContext } from "hono/jsx";
import type { Stylesheet } from "../stylesheets.ts";
import type { LightningFacts } from "./lightning-facts.ts";

/** What a page loads that is built from our sources, by its plain name. */
export type AssetName = "client.js" | `${Stylesheet}.css`;

/** Where a page finds what it loads. */
export type AssetPaths = (name: AssetName) => string;

/** By plain names, where nobody who serves them says otherwise. */
export const plainPaths: AssetPaths = (name) => `/assets/${name}`;

/** Whether the server is one for trials, which every page says. */
export const Trials = createContext(false);

/** The lightning clock of the job that a page is of; `null` while there is none. */
export const Thunder = createContext<LightningFacts | null>(null);

/** Provided around a whole page, so that no page hands it on. */
export const Assets = createContext(plainPaths);
