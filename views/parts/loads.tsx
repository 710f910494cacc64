import { useContext } from "hono/jsx";
import type { Stylesheet } from "../stylesheets.ts";
import { Assets } from "./asset-paths.ts";

/** What a page loads besides itself. */
export const Loads = ({ styles }: { styles: Stylesheet }) => {
  const at = useContext(Assets);
  return (
    <>
      <link rel="icon" href="/assets/icon.svg" />
      <link rel="stylesheet" href={at(`${styles}.css`)} />
      <script src={at("client.js")} defer></script>
    </>
  );
};
