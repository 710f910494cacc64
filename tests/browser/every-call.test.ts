import { expect, it } from "vitest";
import { people } from "../proof/fixtures.ts";
import { briefFor } from "../support/briefs.ts";
import { showing, troubles } from "../support/call-fits.ts";
import { looksOf } from "../support/every-call.tsx";
import { PHONE } from "../support/shared-browser.ts";
import { eighty } from "../tent/tents.ts";

it("every call of the demo tent, in every state, stands whole on a phone of 360 by 640, with every answer as a glove needs it", async () => {
  const looks = await looksOf(briefFor(eighty, { crew: people }));
  expect(looks.length).toBeGreaterThan(1000);
  expect(await troubles(await showing(PHONE), looks, true)).toEqual([]);
});
