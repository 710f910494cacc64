import { THEME } from "./parts/theme.ts";
import type { Words } from "./text/words.ts";

/** By what they are for: as they are, or cut by the phone to a shape of its own. */
const ICONS = { any: "icon", maskable: "icon-maskable" } as const;
const SIZES_PX = [192, 512] as const;

/** What a phone has to know to keep the guide among its own programs (W3C, Web Application Manifest). */
export const manifest = ({ lang, page, home }: Words) => ({
  id: "/",
  name: page.name,
  short_name: page.name,
  description: home.intro,
  lang,
  start_url: "/",
  scope: "/",
  display: "standalone",
  theme_color: THEME.light,
  background_color: THEME.light,
  icons: [
    { src: "/assets/icon.svg", type: "image/svg+xml", sizes: "any", purpose: "any" },
    ...Object.entries(ICONS).flatMap(([purpose, name]) =>
      SIZES_PX.map((px) => ({ src: `/assets/${name}-${px}.png`, type: "image/png", sizes: `${px}x${px}`, purpose })),
    ),
  ],
});
