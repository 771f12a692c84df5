import { describe, expect, it } from 'vitest';
import { readRulePack } from '../../src/policy/pack.ts';
import { readDocument } from '../../src/read/document.ts';

function problems(entry: string): readonly string[] {
  const document = readDocument(`rules:\n  - ${entry}\n`, 'policies/storage.yaml');
  if (!document.ok) throw new Error('the test does not parse');
  const pack = readRulePack(document.value);
  return pack.ok
    ? []
    : pack.problems.map(({ place, message }) => `${place?.line}:${place?.column} ${message}`);
}

describe('whom a rule is for', () => {
  it('cannot be said in a way that matches nobody: the rule would be off, and nobody told', () => {
    expect(problems('{ rule: boot-volume-stays, where: { tiers: [brisk] } }')).toEqual([
      expect.stringMatching(/^2:\d+ the rule boot-volume-stays cannot be narrowed by tiers$/),
    ]);
    expect(problems('{ rule: policy-apart, where: { teams: [ledger] } }')).toHaveLength(1);
  });

  it('can be said by what the rule knows of its subjects', () => {
    expect(problems('{ rule: boot-volume-stays, where: { teams: [ledger] } }')).toEqual([]);
    expect(problems('{ rule: growth-step, times: 4, where: { tiers: [brisk] } }')).toEqual([]);
  });
});
