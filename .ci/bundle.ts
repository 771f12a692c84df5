/**
 * Bundles the CI action into one file, which runs on a runner that has nothing but Node.js and git. `--check` writes
 * nothing, and fails where the bundle that is there is not of these sources.
 */
import { readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build, type Plugin } from 'esbuild';

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

async function isCurrent(): Promise<boolean> {
  const { outputFiles } = await build({ ...options(bundle), write: false });
  const there = await readFile(bundle);
  return outputFiles[0] !== undefined && there.equals(outputFiles[0].contents);
}

if (argv[1] === fileURLToPath(import.meta.url)) {
  if (!argv.includes('--check')) await bundleAction(bundle);
  else if (!(await isCurrent())) {
    console.error(`${relative(top, bundle)} is not current: npm run bundle`);
    process.exitCode = 1;
  }
}
