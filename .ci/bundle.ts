/**
 * Bundles the CI action into one file, which runs on a runner that has nothing but Node.js and git. `--check` writes
 * nothing, and fails where the bundle that is there is not of these sources.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { bundledIn, notices } from './bundled.ts';

const top = join(import.meta.dirname, '..');
const bundle = join(top, '.github/action/index.mjs');

/**
 * The toolkit signs in to other services with an HTTP client of its own, which no action here does; it is most of what
 * the toolkit loads.
 */
const noSignIn: Plugin = {
  name: 'no-sign-in',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\.\/oidc-utils\.js$/ }, ({ importer }) =>
      /[\\/]@actions[\\/]core[\\/]/.test(importer)
        ? { path: 'no-sign-in', namespace: 'no-sign-in' }
        : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'no-sign-in' }, () => ({ contents: 'export class OidcClient {}' }));
  },
};

const options = (outfile: string) =>
  ({
    absWorkingDir: top,
    entryPoints: ['src/action/main.ts'],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    charset: 'utf8',
    logLevel: 'warning',
    legalComments: 'none',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    plugins: [noSignIn],
  }) satisfies BuildOptions;

export async function bundleAction(outfile: string): Promise<void> {
  await build(options(outfile));
}

/** What is to lie in the action's folder: the bundle, and the licences of what is in it. */
async function wanted(): Promise<ReadonlyMap<string, Uint8Array>> {
  const { outputFiles, metafile } = await build({ ...options(bundle), write: false, metafile: true });
  return new Map([
    ...outputFiles.map(({ path, contents }) => [path, contents] as const),
    [join(dirname(bundle), 'THIRD-PARTY-NOTICES.txt'), Buffer.from(notices(bundledIn(metafile)))],
  ]);
}

if (argv[1] === fileURLToPath(import.meta.url)) {
  for (const [path, content] of await wanted()) {
    if (!argv.includes('--check')) await writeFile(path, content);
    else if (!(await readFile(path).catch(() => Buffer.of())).equals(content)) {
      console.error(`${relative(top, path)} is not current: npm run bundle`);
      process.exitCode = 1;
    }
  }
}
