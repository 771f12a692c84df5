/** A branch told in YAML, judged by one entry or more: for tests of rules. */

import type { Outcome, Problem } from '../../src/base/problem.ts';
import { summariseReadings } from '../../src/capacity/readings.ts';
import { usageOf } from '../../src/capacity/usage.ts';
import { assemble } from '../../src/estate/assemble.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { readSettings } from '../../src/estate/settings.ts';
import { judge } from '../../src/policy/judge.ts';
import type { Finding, Judged } from '../../src/policy/judgement.ts';
import { gatherRules, readRulePack } from '../../src/policy/pack.ts';
import type { Policy } from '../../src/policy/policy.ts';
import { readPriceList } from '../../src/price/price-list.ts';
import { type ReadDocument, readDocument } from '../../src/read/document.ts';
import { exampleDay, examplePrices, exampleSettings } from '../../src/rules/example.ts';

export interface Branch {
  /** One estate file; where main's is left out, nothing is declared there. */
  readonly main?: string;
  readonly branch: string;
  /** Entries of the rule pack on main, each in YAML's flow or block style. */
  readonly entries: readonly string[];
  /** Entries of the branch's own pack, where they differ. */
  readonly branchEntries?: readonly string[];
  readonly readings?: string;
  readonly prices?: string;
  readonly settings?: string;
  readonly on?: string;
}

export const value = <T>(outcome: Outcome<T>): T => {
  if (outcome.ok) return outcome.value;
  const said = outcome.problems.map(
    ({ place, message }) => `${place?.file}:${place?.line}:${place?.column} ${message}`,
  );
  throw new Error(said.join('\n'));
};

const document = (text: string, file: string): ReadDocument => value(readDocument(text, file));

/** A pack of entries as text; an entry of several lines is set in. */
export const packOf = (entries: readonly string[]): string =>
  `rules:\n${entries.map((entry) => `  - ${entry.trim().replaceAll('\n', '\n    ')}\n`).join('')}`;

export const readPack = (text: string, file = 'policies/storage.yaml') => readRulePack(document(text, file));

export const settingsOf = (text = exampleSettings) => value(readSettings(document(text, 'ullage.yaml')));

export const pricesOf = (text = examplePrices) => value(readPriceList(document(text, 'prices/2026.yaml')));

export const estateOf = (text: string | undefined, settings = settingsOf()): Estate =>
  value(
    assemble(
      text === undefined ? [] : [value(readEstatePart(document(text, 'storage/imagery.yaml')))],
      settings,
    ),
  );

export const policyOf = (
  entries: readonly string[],
  more: { prices?: string; settings?: string } = {},
): Policy => ({
  settings: settingsOf(more.settings),
  priceLists: [pricesOf(more.prices)],
  rules: value(gatherRules([value(readPack(packOf(entries)))])),
  waivers: [],
});

/** Judges the branch as the gate would. */
export async function judged(told: Branch): Promise<Judged> {
  const { main, branch, entries, branchEntries = entries, readings, on = exampleDay } = told;
  const policy = policyOf(entries, told);
  const base = estateOf(main, policy.settings);
  const measured =
    readings === undefined
      ? policy
      : {
          ...policy,
          usage: usageOf(
            base,
            (await summariseReadings([{ file: 'readings/2026.csv', chunks: [readings] }])).fileSystems,
          ),
        };
  const judgement = judge(
    { label: { commit: 'main' }, estate: base, policy: measured },
    {
      label: { commit: 'branch' },
      estate: estateOf(branch, policy.settings),
      policy:
        branchEntries === entries ? measured : { ...measured, rules: policyOf(branchEntries, told).rules },
    },
    measured,
    { on },
  );
  if (judgement.verdict === 'not judged') {
    throw new Error(judgement.problems.map(({ message }) => message).join('\n'));
  }
  return judgement;
}

/** What was found, in order: `error new plates-1: message`. */
export const said = ({ findings }: { readonly findings: readonly Finding[] }): readonly string[] =>
  findings.map(
    ({ level, baselineState, subject, message }) => `${level} ${baselineState} ${subject.name}: ${message}`,
  );

/** What a pack of these entries is refused for: `line:column message`. */
export function refusedFor(...entries: readonly string[]): readonly string[] {
  const pack = readPack(packOf(entries));
  return pack.ok
    ? []
    : pack.problems.map(({ place, message }: Problem) => `${place?.line}:${place?.column} ${message}`);
}
