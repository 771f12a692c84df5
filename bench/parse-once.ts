/** The yardstick: a YAML library reads every file of a folder once, and does nothing else. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from 'js-yaml';
import { parse } from 'yaml';

const [library, folder = '.'] = process.argv.slice(2);
const read = library === 'js-yaml' ? load : parse;
let keys = 0;
for (const name of readdirSync(folder)) {
  keys += Object.keys(Object(read(readFileSync(join(folder, name), 'utf8')))).length;
}
console.log(keys);
