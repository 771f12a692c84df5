/**
 * `check TAG`: holds a tag against the version of the package and against CHANGELOG.md. `notes TAG`: prints what the
 * changelog says of that version.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { argv } from 'node:process';
import { readChangelog } from './changelog.ts';

const top = join(import.meta.dirname, '..');
const { version }: { readonly version: string } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
const { releases, faults } = readChangelog(readFileSync(join(top, 'CHANGELOG.md'), 'utf8'));
const [, , what, tag] = argv;
const release = releases.find((each) => `v${each.version}` === tag);

const problems = [
  ...(what === 'check' || what === 'notes' ? [] : ['say check or notes, and a tag']),
  ...(tag === `v${version}` ? [] : [`the tag is ${tag}, and package.json has the version ${version}`]),
  ...(release !== undefined && release.text !== '' ? [] : [`CHANGELOG.md says nothing of ${tag}`]),
  ...faults.map((fault) => `CHANGELOG.md: ${fault}`),
];
for (const problem of problems) console.error(`The release: ${problem}.`);
if (problems.length > 0) process.exitCode = 1;
else if (what === 'notes') console.log(release?.text);
