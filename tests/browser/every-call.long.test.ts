import { beforeAll, describe, expect, it } from "vitest";
import { people } from "../proof/fixtures.ts";
import { briefFor } from "../support/briefs.ts";
import { showing, troubles } from "../support/call-fits.ts";
import { type Look, looksOf } from "../support/every-call.tsx";
import { PHONE } from "../support/shared-browser.ts";
import { eighty, hundred } from "../tent/tents.ts";

describe("every call in every state: open, refused, not good, read back, held, stopped, somebody hurt", () => {
  it("stands whole on a phone of 360 by 640, with every answer as a glove needs it, for a 100 by 200 too", async () => {
    const looks = await looksOf(briefFor(hundred, { crew: people }));
    expect(looks.length).toBeGreaterThan(1000);
    expect(await troubles(await showing(PHONE), looks, true)).toEqual([]);
  });

  describe("of the demo tent", () => {
    let looks: readonly Look[];
    beforeAll(async () => {
      looks = await looksOf(briefFor(eighty, { crew: people }));
    });

    it("lies over nothing and spills out of nothing with text at 200 %", async () => {
      const open = looks.filter(({ state }) => state === "open" || state === "read back");
      expect(await troubles(await showing(PHONE, "html { font-size: 200% }"), open, false)).toEqual([]);
    });

    it.each([
      { width: 640, height: 360 },
      { width: 320, height: 568 },
    ])("lies over nothing on $width by $height, where it may scroll", async (size) => {
      const open = looks.filter(({ state }) => state === "open" || state === "refused" || state === "hurt");
      expect(await troubles(await showing(size), open, false)).toEqual([]);
    });
  });
});
