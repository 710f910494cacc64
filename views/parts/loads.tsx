import { useContext } from "hono/jsx";
import type { Stylesheet } from "../stylesheets.ts";
import { Assets } from "./asset-paths.ts";
import { THEME } from "./theme.ts";

/** What a page loads besides itself, and what a phone that keeps it has to know. */
export const Loads = ({ styles }: { styles: Stylesheet }) => {
  const at = useContext(Assets);
  return (
    <>
      <link rel="icon" href="/assets/icon.svg" />
      <link rel="apple-touch-icon" href="/assets/icon-maskable-192.png" />
      <link rel="manifest" href="/manifest.webmanifest" />
      {(["light", "dark"] as const).map((scheme) => (
        <meta name="theme-color" media={`(prefers-color-scheme: ${scheme})`} content={THEME[scheme]} />
      ))}
      <link rel="stylesheet" href={at(`${styles}.css`)} />
      <script src={at("client.js")} defer></script>
    </>
  );
};
