/**
 * Builds what is installed: the library (`dist/index.js`) and the command (`dist/ullage.cjs`).
 *
 * The command is one small file that knows every command; what one runs is loaded from `dist/parts`, so that asking
 * for help costs next to nothing. It is CommonJS, because Node.js starts that sooner than a module.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, readdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type BuildOptions, build, type Plugin } from 'esbuild';

const top = join(import.meta.dirname, '..');
const source = join(top, 'src');
const dist = join(top, 'dist');

function buildLibrary(): void {
  execFileSync(process.execPath, [join(top, 'node_modules/typescript/bin/tsc'), '--project', source], {
    stdio: 'inherit',
  });
  // The validators are generated as JavaScript, which the compiler passes over.
  const generated = 'read/generated';
  for (const file of readdirSync(join(source, generated)).filter((name) => name.endsWith('.js'))) {
    copyFileSync(join(source, generated, file), join(dist, generated, file));
  }
}

const command = 'src/cli/ullage.ts';

const shared = {
  absWorkingDir: top,
  bundle: true,
  minify: true,
  platform: 'node',
  target: 'node20',
  logLevel: 'warning',
  legalComments: 'none',
} satisfies BuildOptions;

/** Builds every part that is loaded when it is wanted; gives the file of each by the path of its source. */
async function buildParts(): Promise<ReadonlyMap<string, string>> {
  const { metafile } = await build({
    ...shared,
    entryPoints: [command],
    outdir: join(dist, 'parts'),
    format: 'esm',
    splitting: true,
    metafile: true,
    entryNames: '[name]',
    chunkNames: '[name]-[hash]',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  const parts = new Map(
    Object.entries(metafile.outputs).flatMap(([file, { entryPoint }]) =>
      entryPoint === undefined ? [] : [[resolve(top, entryPoint), resolve(top, file)] as const],
    ),
  );
  // Built only to find the parts: the command itself is not a module.
  rmSync(parts.get(join(top, command)) ?? '');
  return parts;
}

/** What is imported when it is wanted lies in a part; its name, by what the part holds, becomes the start's own text. */
const inParts = (parts: ReadonlyMap<string, string>): Plugin => ({
  name: 'parts',
  setup({ onResolve }) {
    onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) => {
      const part = kind === 'dynamic-import' ? parts.get(resolve(resolveDir, path)) : undefined;
      return part === undefined
        ? undefined
        : { path: `./${part.slice(dist.length + 1).replaceAll('\\', '/')}`, external: true };
    });
  },
});

rmSync(dist, { recursive: true, force: true });
buildLibrary();
await build({
  ...shared,
  entryPoints: [command],
  outfile: join(dist, 'ullage.cjs'),
  format: 'cjs',
  plugins: [inParts(await buildParts())],
});
