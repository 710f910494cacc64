import { expect, it } from "vitest";
import { onlyChanged } from "../../views/voice/short-form.ts";

it.each([
  ["Lace seam 2, A–B half. Ring to edge.", "Lace seam 1, A–B half. Ring to edge.", "Lace seam 2,"],
  ["Drive C to D. 6 in showing, at most.", "Drive B to C. 6 in showing, at most.", "Drive C to D."],
  ["All straps choked? 24 wanted.", "All straps choked? 36 wanted.", "24 wanted."],
  ["Nobody under. Lower it.", "Raise the corners.", "Nobody under. Lower it."],
  ["Call it again.", "Call it again.", "Call it again."],
  ["12.5 ft, level.", "12.5 ft, level tape.", "level."],
  ["First call.", "", "First call."],
])("%s after %s is %s", (text, before, said) => expect(onlyChanged(text, before)).toBe(said));
