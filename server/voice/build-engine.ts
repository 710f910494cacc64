import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { basename, join } from "node:path";
import { BUILT_FOLDER, enginePackage } from "./engine-files.ts";

/** Loops over sound in vectors; a float that fits no integer gives some integer, where the package's own build stops. */
const COMPILED = ["-O3", "-msimd128", "-mnontrapping-fptoint", "-DHAVE_CONFIG_H", '-DMODELDIR=""', "-w"];
const LINKED = [
  "--bind",
  ...[
    "ALLOW_MEMORY_GROWTH=1",
    "INITIAL_MEMORY=33554432",
    // No page allows functions made from text.
    "DYNAMIC_EXECUTION=0",
    "FORCE_FILESYSTEM=1",
    "EXPORTED_RUNTIME_METHODS=FS,FS_createPath,FS_createDataFile",
    "ENVIRONMENT=web,worker,node",
  ].flatMap((setting) => ["-s", setting]),
];
const INCLUDED = [
  "sphinxbase/src/libsphinxbase/fe",
  "sphinxbase/src/libsphinxbase/feat",
  "sphinxbase/src/libsphinxbase/lm",
  "sphinxbase/src/libsphinxbase/util",
  "sphinxbase/include",
  "platform/include",
  "pocketsphinx/src/libpocketsphinx",
  "pocketsphinx/include",
];

/** The C files of the engine, as its package lists them for its own build. */
function sources(): string[] {
  const list = readFileSync(join(enginePackage, "CMakeLists.txt"), "utf8");
  const folders: Readonly<Record<string, string>> = {
    fe: "sphinxbase/src/libsphinxbase/fe",
    feat: "sphinxbase/src/libsphinxbase/feat",
    util: "sphinxbase/src/libsphinxbase/util",
    lm: "sphinxbase/src/libsphinxbase/lm",
    pocketsphinx: "pocketsphinx/src/libpocketsphinx",
  };
  return [...list.matchAll(/set\((\w+)_src_files ([^)]+)\)/g)].flatMap(([, part = "", files = ""]) =>
    files
      .trim()
      .split(/\s+/)
      .map((file) => join(enginePackage, folders[part]!, file)),
  );
}

/** Runs the compiler; throws with what it said where it fails, or is not there. */
function compiler(program: "emcc" | "em++", args: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    // Debian keeps a package that the linker loads where Node does not look.
    const env = { ...process.env, NODE_PATH: ["/usr/share/nodejs", process.env.NODE_PATH].filter(Boolean).join(":") };
    const child = spawn(program, args, { env, stdio: ["ignore", "ignore", "pipe"] });
    let said = "";
    child.stderr.on("data", (data: Buffer) => {
      said += data;
    });
    child.once("error", () => reject(new Error(`${program} is not there. On Debian: apt-get install emscripten node-acorn.`)));
    child.once("exit", (code) => (code === 0 ? resolve() : reject(new Error(`${program} ended with ${code}: ${said.slice(-2000)}`))));
  });
}

/** Builds the engine from the installed package's sources: two minutes on two cores. Throws where there is no compiler. */
export async function buildEngine(): Promise<void> {
  const objects = join(BUILT_FOLDER, "objects");
  rmSync(BUILT_FOLDER, { recursive: true, force: true });
  mkdirSync(objects, { recursive: true });
  // The package makes this file from a template that embeds a model; ours is given one when it starts.
  writeFileSync(join(objects, "pocketsphinxjs-config.h"), "");
  const included = [objects, ...INCLUDED.map((folder) => join(enginePackage, folder))].flatMap((folder) => ["-I", folder]);
  const recognizer = join(enginePackage, "src/psRecognizer.cpp");
  const left = [...sources(), recognizer];
  const made: string[] = [];
  const work = async () => {
    for (let source = left.pop(); source !== undefined; source = left.pop()) {
      const object = join(objects, `${basename(source)}.o`);
      made.push(object);
      const isCpp = source === recognizer;
      await compiler(isCpp ? "em++" : "emcc", [...COMPILED, ...(isCpp ? ["--bind"] : []), ...included, "-c", source, "-o", object]);
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, work));
  await compiler("em++", ["-O3", "-msimd128", "-mnontrapping-fptoint", ...LINKED, ...made.sort(), "-o", join(BUILT_FOLDER, "engine.js")]);
  rmSync(objects, { recursive: true });
}
