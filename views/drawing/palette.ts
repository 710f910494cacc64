/** The colors of a drawing, as SVG takes them: `ink` on `ground`. They come from whoever shows it. */
export type Palette = { readonly ink: string; readonly ground: string };

/** On a page: the color of its text, on its own ground, also at night and where the system sets the colors. */
export const ON_PAGE: Palette = { ink: "currentColor", ground: "Canvas" };

/**
 * What marks and labels are drawn with: colors, and how long so many px are in the units of the drawing. `fills` is the name of
 * the drawing that its patterns begin with, where it has any.
 */
export type Pen = Palette & { readonly px: (n: number) => number; readonly fills?: string };
