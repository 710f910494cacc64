/** What draws codes is loaded when the first is asked for. */
const drawer = async () => (await import("qrcode")).default;

/** The address as a QR code in lines of a terminal: in colors of its own, or in the terminal's where it takes none. */
export const codeForTerminal = async (url: string, inColor: boolean): Promise<string> =>
  (await drawer()).toString(url, inColor ? { type: "terminal", small: true } : { type: "utf8" });

/** The same as a drawing of black on white, whatever the colors around it: SVG with attributes only, which our policy allows. */
export const codeForPage = async (url: string): Promise<string> => (await drawer()).toString(url, { type: "svg" });
