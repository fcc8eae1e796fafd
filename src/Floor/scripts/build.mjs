// Builds the floor's pages into dist: packages where the lock file changed, pages where a source changed, else nothing.
// Two builds at once (Debug and Release) take turns, and whoever comes second finds the work done.
import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { cp, mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

const root = fileURLToPath(new URL("..", import.meta.url));
const dist = join(root, "dist");
const lock = join(root, "node_modules.lock");
const compressible = /\.(html|js|css|svg|json|webmanifest|txt)$/;

try {
  await withLock(buildWhereNeeded);
} catch (failure) {
  console.error(failure.message);
  process.exitCode = 1;
}

async function buildWhereNeeded() {
  await installWhereNeeded();
  const version = await sourcesVersion();
  if ((await textOf(join(dist, "version.txt"))) === version) {
    // So that a build tool that compares times sees that this is current.
    await utimes(join(dist, "version.txt"), new Date(), new Date());
    return;
  }
  await build(version);
}

async function build(version) {
  await import("./contracts.mjs");
  await run("tsc", ["--noEmit"]);
  await run("tsc", ["--noEmit", "-p", "src/worker"]);
  process.env.SLANTWISE_FLOOR_VERSION = version;
  const vite = await import("vite");
  const made = join(root, `dist.${process.pid}`);
  await rm(made, { recursive: true, force: true });
  try {
    await vite.build({ root, logLevel: "warn", build: { outDir: made, emptyOutDir: true } });
    const packages = join(root, "node_modules", "@fontsource", "atkinson-hyperlegible-next");
    await cp(join(packages, "LICENSE"), join(made, "assets", "atkinson-hyperlegible-next.LICENCE.txt"));
    const kept = (await filesIn(made)).filter((f) => !f.endsWith(".txt") && f !== "index.html");
    await vite.build({
      root,
      configFile: false,
      logLevel: "warn",
      publicDir: false,
      define: { __VERSION__: JSON.stringify(version), __FILES__: JSON.stringify(["./", ...kept.map((f) => f.split(sep).join("/"))]) },
      build: {
        outDir: made,
        emptyOutDir: false,
        copyPublicDir: false,
        target: ["chrome87", "safari14", "firefox85"],
        rolldownOptions: { input: join(root, "src/worker/sw.ts"), output: { format: "iife", entryFileNames: "sw.js" } },
      },
    });
    for (const file of await filesIn(made)) if (compressible.test(file)) await compress(join(made, file));
    await writeFile(join(made, "version.txt"), version);
    await rm(dist, { recursive: true, force: true });
    await rename(made, dist);
  } finally {
    await rm(made, { recursive: true, force: true });
  }
}

async function compress(path) {
  const bytes = await readFile(path);
  const brotli = await promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length } });
  await writeFile(`${path}.br`, brotli);
  await writeFile(`${path}.gz`, await promisify(gzip)(bytes, { level: 9 }));
}

async function installWhereNeeded() {
  const stamp = join(root, "node_modules", ".slantwise-lock");
  const wanted = createHash("sha256").update(await readFile(join(root, "package-lock.json"))).digest("hex");
  if ((await textOf(stamp)) === wanted) return;
  const npm = process.platform === "win32" ? "npm.cmd" : "npm";
  await run(npm, ["ci", "--prefer-offline", "--no-audit", "--no-fund", "--loglevel=error"], false);
  await writeFile(stamp, wanted);
}

/** What the sources say, as 12 digits: the same sources make the same version anywhere. */
async function sourcesVersion() {
  const hash = createHash("sha256");
  const files = [];
  for (const part of ["src", "public", "scripts"]) files.push(...(await filesIn(join(root, part))).map((f) => join(part, f)));
  files.push("index.html", "package.json", "package-lock.json", "contracts.schema.json", "tsconfig.json", "vite.config.ts");
  for (const file of files.map((f) => f.split(sep).join("/")).filter((f) => f !== "src/contracts.ts").sort()) {
    hash.update(`${file}\n`).update(await readFile(join(root, file)));
  }
  return hash.digest("hex").slice(0, 12);
}

async function filesIn(folder) {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
  return entries.filter((e) => e.isFile()).map((e) => relative(folder, join(e.parentPath ?? e.path, e.name))).sort();
}

async function run(command, args, isLocal = true) {
  const path = isLocal ? join(root, "node_modules", ".bin", process.platform === "win32" ? `${command}.cmd` : command) : command;
  try {
    await promisify(execFile)(path, args, { cwd: root, maxBuffer: 1 << 26, shell: process.platform === "win32" });
  } catch (failure) {
    console.error(`${failure.stdout ?? ""}${failure.stderr ?? failure.message}`);
    throw new Error(`${command} ${args[0]} did not succeed.`);
  }
}

async function textOf(path) {
  return readFile(path, "utf8").catch(() => "");
}

/** A folder is a lock that every system makes for one only. One left behind by a build that died is taken over after ten minutes. */
async function withLock(work) {
  for (let tries = 0; ; tries++) {
    try {
      await mkdir(lock);
      break;
    } catch {
      const age = Date.now() - (await stat(lock).then((s) => s.mtimeMs, () => Date.now()));
      if (age > 600_000 || (await isOrphan())) await rm(lock, { recursive: true, force: true });
      else await new Promise((done) => setTimeout(done, 200));
      if (tries > 6000) throw new Error("Another build of the floor's pages has not ended for twenty minutes.");
    }
  }
  try {
    await writeFile(join(lock, "pid"), String(process.pid));
    await work();
  } finally {
    await rm(lock, { recursive: true, force: true });
  }
}

async function isOrphan() {
  const pid = Number(await textOf(join(lock, "pid")));
  if (!pid) return false;
  try {
    process.kill(pid, 0);
    return false;
  } catch (failure) {
    return failure.code === "ESRCH";
  }
}
