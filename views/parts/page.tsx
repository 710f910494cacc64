import type { Child } from "hono/jsx";
import { label } from "../text/en/page.ts";

/** A whole document. Everything on it works before any script has loaded. `style` is what a page wears besides what all do. */
export const Page = ({ title, style, children }: { title: string; style?: string; children?: Child }) => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <meta name="htmx-config" content='{"defaultTimeout":8000}' />
      <title>{`${title} · ${label.name}`}</title>
      <link rel="icon" href="/assets/icon.svg" />
      <link rel="stylesheet" href="/assets/ridgecall.css" />
      {style && <link rel="stylesheet" href={style} />}
      <script src="/assets/client.js" defer></script>
    </head>
    <body>{children}</body>
  </html>
);
