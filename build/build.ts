/**
 * Builds what is installed: the library (`dist/index.js`) and the command (`dist/ullage.cjs`).
 *
 * The command is one small file that knows every command; what one runs is loaded from `dist/parts`, so that asking
 * for help costs next to nothing. It is CommonJS, because Node.js starts that sooner than a module.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, readdirSync, rmSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
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

/**
 * Packages that few runs need, and what is taken from each. Each is bundled into a file of its own, which is loaded at
 * the first use of anything in it: together they take longer to load than a small estate takes to judge.
 */
const seldomUsed: Readonly<Record<string, readonly string[]>> = {
  'ajv/dist/2020.js': ['Ajv2020'],
  'csv-parse': ['CsvError', 'parse'],
  'csv-parse/sync': ['parse'],
  'csv-stringify/sync': ['stringify'],
  re2js: ['RE2JS', 'RE2JSException'],
  'string-width': ['default'],
};

async function buildSeldomUsed(): Promise<ReadonlyMap<string, string>> {
  const built = Object.entries(seldomUsed).map(async ([name, names]) => {
    const { metafile } = await build({
      ...shared,
      stdin: { contents: `export { ${names.join(', ')} } from '${name}';`, resolveDir: top },
      outdir: join(dist, 'parts'),
      format: 'cjs',
      outExtension: { '.js': '.cjs' },
      entryNames: `${name.replace(/\W+/g, '-')}-[hash]`,
      metafile: true,
    });
    const [file = ''] = Object.keys(metafile.outputs);
    return [name, basename(file)] as const;
  });
  return new Map(await Promise.all(built));
}

/** Puts a stand-in in the place of each package that is seldom used. */
const deferred = (files: ReadonlyMap<string, string>): Plugin => ({
  name: 'deferred',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^[\w@]/ }, ({ path }) =>
      files.has(path) ? { path, namespace: 'deferred' } : undefined,
    );
    onResolve({ filter: /^\.\/.*\.cjs$/ }, ({ path, namespace }) =>
      namespace === 'deferred' ? { path, external: true } : undefined,
    );
    onLoad({ filter: /.*/, namespace: 'deferred' }, ({ path }) => ({
      contents: [
        `const standIn = (name) => new Proxy(function () {}, {
          get: (_, key) => Reflect.get(require('./${files.get(path)}')[name], key),
          apply: (_, self, args) => Reflect.apply(require('./${files.get(path)}')[name], self, args),
          construct: (_, args) => Reflect.construct(require('./${files.get(path)}')[name], args),
        });`,
        ...(seldomUsed[path] ?? []).map((name) =>
          name === 'default'
            ? `export default standIn('default');`
            : `export const ${name} = standIn('${name}');`,
        ),
      ].join('\n'),
    }));
  },
});

/** Builds every part that is loaded when it is wanted; gives the file of each by the path of its source. */
async function buildParts(): Promise<ReadonlyMap<string, string>> {
  const { metafile } = await build({
    ...shared,
    entryPoints: [command],
    outdir: join(dist, 'parts'),
    format: 'esm',
    splitting: true,
    metafile: true,
    plugins: [deferred(await buildSeldomUsed())],
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
