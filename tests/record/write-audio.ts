/** Speaks again what tests play into a phone's microphone, with Debian's flite and sox: `npx tsx tests/record/write-audio.ts`. Synthetic speech only. */
import { execFileSync } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { AUDIO, SPOKEN, spokenFile } from "../support/spoken.ts";

const raw = join(AUDIO, "raw.wav");
for (const [name, text] of Object.entries(SPOKEN)) {
  execFileSync("flite", ["-voice", "slt", "-t", text, "-o", raw]);
  execFileSync("sox", [raw, "-r", "16000", "-c", "1", "-b", "16", spokenFile(name), "norm", "-9"]);
}
rmSync(raw);
