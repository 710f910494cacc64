/** The ground that a page stands on, by color scheme, for what is drawn around it: `--ground` in tokens.css. */
export const THEME = { light: "#fbfaf5", dark: "#0e1411" } as const;
