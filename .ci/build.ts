/**
 * Builds what is installed: the library (`dist/index.js`) and the command (`dist/ullage.cjs`).
 *
 * The command is one small file that knows every command, and each command one file in `dist/parts`, loaded when it is
 * run: asking for help costs next to nothing, and nothing is loaded for another command. They are CommonJS, which
 * Node.js starts sooner than modules, and the fewer files the sooner. Every file but the first is named by what it
 * holds, so that the first stands for all.
 */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { Extractor, ExtractorConfig, ExtractorLogLevel } from '@microsoft/api-extractor';
import { type BuildOptions, build, type Metafile, type Plugin } from 'esbuild';
import { dependencies, name } from '../package.json' with { type: 'json' };
import { apiPage } from './api-page.ts';
import { billOfMaterials, bundledIn, notices } from './bundled.ts';

const top = join(import.meta.dirname, '..');
const source = join(top, 'src');
const dist = join(top, 'dist');
const parts = join(dist, 'parts');

/**
 * The library as modules, with all that it needs in them but the packages whose values it hands out: those are the
 * installer's own. What only some reports need is in files of its own, loaded when they are written.
 */
async function buildLibrary() {
  const { metafile } = await build({
    absWorkingDir: top,
    bundle: true,
    minify: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    splitting: true,
    entryPoints: ['src/index.ts'],
    outdir: dist,
    chunkNames: 'library/[name]-[hash]',
    external: Object.keys(dependencies),
    define: { 'process.env.NODE_ENV': '"production"' },
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    legalComments: 'none',
    logLevel: 'warning',
    metafile: true,
  });
  return metafile;
}

/**
 * What may stay unnamed: how a change is told that loses data, the keys of every rule's entry, which the schema of rule
 * packs has, and lists whose members a type already names.
 */
const unnamed = /"(?:LosingChange|RuleEntry|layers|levels)"/;

/**
 * One file of declarations: what the library names, what that is made of, and nothing that is our own business. A type
 * that is named in it and not exported is told of, and is an error with `--strict`.
 */
function declareLibrary(): void {
  const declared = join(dist, 'declared');
  const tsconfig = join(source, 'tsconfig.json');
  const typescript = join(top, 'node_modules/typescript/bin/tsc');
  execFileSync(process.execPath, [typescript, '--project', tsconfig, '--outDir', declared], {
    stdio: 'inherit',
  });
  const silent = { logLevel: ExtractorLogLevel.None };
  const config = ExtractorConfig.prepare({
    configObject: {
      projectFolder: top,
      mainEntryPointFilePath: join(declared, 'index.d.ts'),
      newlineKind: 'lf',
      // It reads with a compiler of its own, which knows nothing of ours.
      compiler: {
        overrideTsconfig: {
          compilerOptions: {
            target: 'ES2023',
            lib: ['ES2023'],
            module: 'NodeNext',
            types: ['node'],
            strict: true,
            skipLibCheck: true,
          },
        },
      },
      docModel: { enabled: true, apiJsonFilePath: join(declared, 'api.json') },
      dtsRollup: { enabled: true, untrimmedFilePath: join(dist, 'index.d.ts') },
      messages: {
        extractorMessageReporting: {
          default: silent,
          'ae-forgotten-export': { logLevel: ExtractorLogLevel.Error },
        },
        tsdocMessageReporting: { default: silent },
      },
    },
    configObjectFullPath: undefined,
    packageJsonFullPath: join(top, 'package.json'),
  });
  const { succeeded } = Extractor.invoke(config, {
    messageCallback: (message) => {
      if (unnamed.test(message.text)) message.logLevel = ExtractorLogLevel.None;
      const isWrong = message.logLevel === ExtractorLogLevel.Error;
      message.handled = true;
      if (isWrong) console.error(message.text);
    },
  });
  bringApiPage(join(declared, 'api.json'));
  rmSync(declared, { recursive: true });
  if (!succeeded && process.argv.includes('--strict'))
    throw new Error('the library names what it does not export, or could not be declared');
}

/** The library's page is written with `--page`, and held against what it should be with `--strict`. */
function bringApiPage(model: string): void {
  const path = join(source, 'API.md');
  if (process.argv.includes('--page')) writeFileSync(path, apiPage(model));
  else if (process.argv.includes('--strict') && readFileSync(path, 'utf8') !== apiPage(model))
    throw new Error('src/API.md is not what the library exports; run npm run api');
}

/** What several commands need: in a file of its own, so that it is not in each of theirs. */
const inOwnFile = ['yaml', './src/read/generated/validators.js'];

/**
 * What few runs need, and the names that are taken from it: in a file of its own that is loaded when one of them is
 * first used. Together they take longer to load than a small estate takes to judge.
 */
const whenUsed: Readonly<Record<string, readonly string[]>> = {
  './src/report/page/document.ts': ['drawPage'],
  'ajv/dist/2020.js': ['Ajv2020'],
  'csv-parse': ['CsvError', 'parse'],
  'csv-parse/sync': ['parse'],
  'csv-stringify/sync': ['stringify'],
  re2js: ['RE2JS', 'RE2JSException'],
  'simple-statistics': ['linearRegression', 'medianSorted', 'probit'],
  'string-width': ['default'],
  'supports-hyperlinks': ['createSupportsHyperlinks'],
  xmlbuilder2: ['create'],
};

const shared = {
  absWorkingDir: top,
  bundle: true,
  minify: true,
  platform: 'node',
  target: 'node20',
  format: 'cjs',
  supported: { 'dynamic-import': false },
  outExtension: { '.js': '.cjs' },
  define: { 'import.meta.url': 'moduleUrl' },
  logLevel: 'warning',
  legalComments: 'none',
} satisfies BuildOptions;

interface OwnFile {
  /** What it is imported as. */
  readonly name: string;
  readonly file: string;
  readonly metafile: Metafile;
}

/** The file in `dist/parts` that holds a package or a module. */
async function ownFile(name: string): Promise<OwnFile> {
  const { metafile } = await build({
    ...shared,
    stdin: { contents: `module.exports = require('${name}');`, resolveDir: top },
    outdir: parts,
    entryNames: `${basename(name, '.js').replace(/\W+/g, '-')}-[hash]`,
    metafile: true,
  });
  return { name, file: basename(Object.keys(metafile.outputs)[0] ?? ''), metafile };
}

const filesByName = (files: readonly OwnFile[]) => new Map(files.map(({ name, file }) => [name, file]));

/** Sends imports to the files of their own. What is loaded when used has a stand-in that loads it. */
const apart = (always: ReadonlyMap<string, string>, seldom: ReadonlyMap<string, string>): Plugin => ({
  name: 'apart',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^[\w@.]/ }, ({ path, resolveDir, namespace }) => {
      if (namespace === 'stand-in') return { path, external: true };
      const name = path.startsWith('.')
        ? `.${resolve(resolveDir, path).slice(top.length).replaceAll('\\', '/')}`
        : path;
      const file = always.get(name);
      if (file !== undefined) return { path: `./${file}`, external: true };
      return seldom.has(name) ? { path: name, namespace: 'stand-in' } : undefined;
    });
    onLoad({ filter: /.*/, namespace: 'stand-in' }, ({ path }) => {
      const real = `require('./${seldom.get(path)}')`;
      const standIn = (name: string): string => `new Proxy(function () {}, {
        get: (_, key) => Reflect.get(${real}.${name}, key),
        apply: (_, self, args) => Reflect.apply(${real}.${name}, self, args),
        construct: (_, args) => Reflect.construct(${real}.${name}, args),
      })`;
      const exported = (name: string): string =>
        name === 'default' ? `export default ${standIn(name)};` : `export const ${name} = ${standIn(name)};`;
      return { contents: (whenUsed[path] ?? []).map(exported).join('\n') };
    });
  },
});

/** The modules that the tables of commands import when they are wanted: the commands. */
async function commands(): Promise<readonly string[]> {
  const { metafile } = await build({
    ...shared,
    entryPoints: [...tables],
    outdir: parts,
    write: false,
    metafile: true,
  });
  const imports = tables.flatMap((table) => metafile.inputs[table]?.imports ?? []);
  return [...new Set(imports.filter(({ kind }) => kind === 'dynamic-import').map(({ path }) => path))];
}

const start = 'src/cli/ullage.ts';
const tables = readdirSync(join(source, 'cli'))
  .filter((file) => /(?:^|-)commands\.ts$/.test(file))
  .map((file) => `src/cli/${file}`);

rmSync(dist, { recursive: true, force: true });
declareLibrary();
const library = await buildLibrary();

const ownFilesOf = (names: readonly string[]) => Promise.all(names.map(ownFile));
const always = await ownFilesOf(inOwnFile);
const seldom = await ownFilesOf(Object.keys(whenUsed));
const { metafile } = await build({
  ...shared,
  entryPoints: [...(await commands())],
  outdir: parts,
  entryNames: '[name]-[hash]',
  metafile: true,
  plugins: [apart(filesByName(always), filesByName(seldom))],
  banner: { js: "const moduleUrl = require('node:url').pathToFileURL(__filename).href;" },
});
const partOf = new Map(
  Object.entries(metafile.outputs).map(([file, { entryPoint = '' }]) => [
    resolve(top, entryPoint),
    basename(file),
  ]),
);
const { metafile: first } = await build({
  ...shared,
  entryPoints: [start],
  outfile: join(dist, 'ullage.cjs'),
  metafile: true,
  plugins: [
    {
      name: 'parts',
      setup({ onResolve }) {
        onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) => {
          if (kind !== 'dynamic-import') return undefined;
          const part = partOf.get(resolve(resolveDir, path));
          return part === undefined
            ? { errors: [{ text: `${path} would be loaded for every command: its table is not among them` }] }
            : { path: `./parts/${part}`, external: true };
        });
      },
    },
  ],
});

const bundled = bundledIn(library, metafile, first, ...[...always, ...seldom].map((each) => each.metafile));
const installed = Object.keys(dependencies);
writeFileSync(join(dist, 'THIRD-PARTY-NOTICES.txt'), notices(bundled));
writeFileSync(join(dist, 'sbom.cdx.json'), billOfMaterials(bundled, { name, installed }));
