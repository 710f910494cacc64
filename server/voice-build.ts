import { buildEngine } from "./voice/build-engine.ts";
import { BUILT_FOLDER } from "./voice/engine-files.ts";

/** `npm run voice:build`: the better engine for listening without signal, from the installed package. */
try {
  await buildEngine();
  console.log(`The engine is in ${BUILT_FOLDER}.`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
