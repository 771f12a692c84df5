/**
 * Shows what would be published and how large it is, and fails where that is more than is stated here. It looks at what
 * is built: `npm run build` first.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const top = join(import.meta.dirname, '..');
const megabyte = 1_000_000;

/** What an install fetches, and what it takes on the disk. More is a decision, taken here. */
const most = { packed: 4 * megabyte, unpacked: 13 * megabyte };

/** Everything that a package is for; anything else is there by mistake. */
const wanted: readonly RegExp[] = [
  /^(?:package\.json|README\.md|LICENSE|CHANGELOG\.md|DEVELOPERS\.md)$/,
  /^dist\/(?:index\.js|index\.d\.ts|ullage\.cjs|THIRD-PARTY-NOTICES\.txt|sbom\.cdx\.json)$/,
  /^dist\/library\/[\w-]+\.js$/,
  /^dist\/parts\/[\w.-]+\.cjs$/,
  /^schema\/(?:[\w-]+\.json|README\.md)$/,
  /^src\/(?:API|cli\/README)\.md$/,
  /^src\/survey\/gather\.sh$/,
  /^\.github\/(?:SECURITY|action\/README)\.md$/,
  /^policies\/[\w-]+\.(?:yaml|md)$/,
  /^procedures\/[\w./-]+\.yaml$/,
];

interface Packed {
  readonly size: number;
  readonly unpackedSize: number;
  readonly files: readonly { readonly path: string; readonly size: number }[];
}

const args = ['pack', '--dry-run', '--json', '--ignore-scripts'];
const output = execFileSync('npm', args, {
  cwd: top,
  encoding: 'utf8',
  stdio: ['ignore', 'pipe', 'ignore'],
  // On Windows npm is a script, which only a shell starts; nothing of anybody's is among the arguments.
  shell: process.platform === 'win32',
});
const parsed: readonly Packed[] | Readonly<Record<string, Packed>> = JSON.parse(output);
const [packed] = Object.values(parsed);
if (packed === undefined) throw new Error('npm pack says nothing of what it would pack');

const shown = (bytes: number): string => `${(bytes / megabyte).toFixed(2)} MB`;
for (const { path, size } of packed.files) console.log(`${String(size).padStart(9)} ${path}`);
console.log(
  `${packed.files.length} files, ${shown(packed.size)} packed, ${shown(packed.unpackedSize)} unpacked`,
);

const paths = packed.files.map(({ path }) => path.replaceAll('\\', '/'));
const { bin }: { readonly bin: Readonly<Record<string, string>> } = JSON.parse(
  readFileSync(join(top, 'package.json'), 'utf8'),
);
const faults = [
  ...(packed.size > most.packed ? [`packed it is larger than ${shown(most.packed)}`] : []),
  ...(packed.unpackedSize > most.unpacked ? [`unpacked it is larger than ${shown(most.unpacked)}`] : []),
  ...paths
    .filter((path) => !wanted.some((pattern) => pattern.test(path)))
    .map((path) => `${path} is not wanted in it`),
  ...[
    ...Object.values(bin),
    'dist/index.js',
    'dist/index.d.ts',
    'dist/THIRD-PARTY-NOTICES.txt',
    'dist/sbom.cdx.json',
  ]
    .filter((path) => !paths.includes(path))
    .map((path) => `${path} is missing`),
];
for (const fault of faults) console.error(`The package: ${fault}.`);
if (faults.length > 0) process.exitCode = 1;
