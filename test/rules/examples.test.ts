import { describe, expect, it } from 'vitest';
import type { Example } from '../../src/rules/example.ts';
import { rules } from '../../src/rules/registry.ts';
import { judgedBranch } from '../estate/builder.ts';

const judgedExample = ({ main, branch, entry, altered, readings }: Example) =>
  judgedBranch({
    ...(main === undefined ? {} : { main }),
    branch,
    entries: altered === undefined ? [entry] : [entry, altered.main],
    ...(altered === undefined ? {} : { branchEntries: [entry, altered.branch] }),
    ...(readings === undefined ? {} : { readings }),
  });

describe.each(Object.values(rules))('the examples of $name', (rule) => {
  it('has one that it refuses, and for nothing else', async () => {
    const { findings } = await judgedExample(rule.examples.fails);
    const own = findings.filter((finding) => finding.rule === rule.name);
    expect(own.map(({ baselineState }) => baselineState)).toEqual(own.map(() => 'new'));
    expect(own.length).toBeGreaterThan(0);
    // A rule that only warns by itself refuses nothing, so it is held to its own level.
    expect(own[0]?.level).toBe(rule.level);
  });

  it('has one that it lets pass, in which it had something to look at', async () => {
    const { passes, fails } = rule.examples;
    const { findings, verdict } = await judgedExample(passes);
    expect(findings.filter((finding) => finding.rule === rule.name)).toEqual([]);
    expect(verdict).toBe('pass');
    // The two differ in the estate or in what was altered, not in the rule's own entry: the rule is what tells them apart.
    expect(passes.entry).toBe(fails.entry);
  });

  it('are told in one sentence each', () => {
    for (const { story } of [rule.examples.fails, rule.examples.passes]) expect(story).toMatch(/^[A-Z].*\.$/);
  });
});
