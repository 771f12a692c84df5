/** Whose code is in a bundle: the packages that esbuild took in, their licences, and a bill of materials. */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Metafile } from 'esbuild';

const top = join(import.meta.dirname, '..');

export interface Bundled {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  /** The texts of its licence files, as it ships them. */
  readonly texts: readonly string[];
}

/** The packages that a build took anything from, by name and version; each once. */
export function bundledIn(...metafiles: readonly Metafile[]): readonly Bundled[] {
  const folders = new Set(
    metafiles.flatMap(({ inputs }) =>
      Object.keys(inputs).flatMap((path) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []),
    ),
  );
  const found = new Map([...folders].map((folder) => bundledFrom(resolve(top, folder))));
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, bundled]) => bundled);
}

function bundledFrom(folder: string): readonly [key: string, bundled: Bundled] {
  const about: unknown = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const { name, version, license } = Object.fromEntries(Object.entries(about ?? {}));
  if (typeof license !== 'string') throw new Error(`${folder} does not say its licence`);
  const texts = readdirSync(folder)
    .filter((file) => /^(?:licen[cs]e|copying|notice)/i.test(file))
    .sort()
    .map((file) => readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim());
  return [`${name}@${version}`, { name: String(name), version: String(version), license, texts }];
}

/** What is to go with a bundle: each package with its licence, as the licences ask. */
export const notices = (packages: readonly Bundled[]): string =>
  [
    'The bundles in this folder hold code of the packages below, each under its own licence.\n',
    ...packages.map(({ name, version, license, texts }) =>
      [`${name} ${version} (${license})`, ...(texts.length > 0 ? texts : [noText])].join('\n\n'),
    ),
  ]
    .join(`\n${'-'.repeat(80)}\n\n`)
    .concat('\n');

const noText = 'The package ships no licence text; the identifier above is what it declares (SPDX).';

interface Component {
  readonly 'bom-ref': string;
  readonly properties: readonly { readonly name: string }[];
}

interface Bom {
  readonly metadata: { readonly component: Component; readonly tools: unknown; readonly lifecycles: unknown };
  readonly components: readonly Component[];
  readonly dependencies: readonly { readonly ref: string; readonly dependsOn: readonly string[] }[];
}

/**
 * npm's own bill of materials (CycloneDX) for what is bundled and what is installed beside it. npm takes what is
 * bundled for a tool of development, lists every tool, and names the project by its folder; a number and a time of the
 * run are left out, so that the same sources give the same bytes.
 */
export function billOfMaterials(
  packages: readonly Bundled[],
  { name, installed }: { readonly name: string; readonly installed: readonly string[] },
): string {
  const args = ['sbom', '--package-lock-only', '--sbom-format', 'cyclonedx'];
  // On Windows npm is a script, which only a shell starts; nothing of anybody's is among the arguments.
  const options = { cwd: top, encoding: 'utf8', shell: process.platform === 'win32' } as const;
  const { serialNumber: _, ...bom } = JSON.parse(execFileSync('npm', args, options));
  const { metadata, components, dependencies, ...rest }: Bom = bom;
  const { component, lifecycles, tools } = metadata;
  const own = component['bom-ref'];
  const names = new Set(packages.map((each) => `${each.name}@${each.version}`));
  const isIn = (ref: string): boolean =>
    ref === own || names.has(ref) || installed.some((each) => ref.startsWith(`${each}@`));
  const asBundled = (each: Component) =>
    names.has(each['bom-ref'])
      ? { ...each, scope: 'required', properties: [{ name: 'cdx:npm:package:bundled', value: 'true' }] }
      : each;
  const kept = {
    ...rest,
    metadata: { lifecycles, tools, component: { ...component, name } },
    components: components.filter((each) => isIn(each['bom-ref'])).map(asBundled),
    dependencies: dependencies
      .filter(({ ref }) => isIn(ref))
      .map(({ ref, dependsOn }) => ({ ref, dependsOn: dependsOn.filter(isIn) })),
  };
  return `${JSON.stringify(kept, null, 2)}\n`;
}
