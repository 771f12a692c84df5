/**
 * Storage that is there already and is declared now: told by real repositories, and tried on any estate. The word
 * softens no rule, and nobody is told to make what is there.
 */
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import type { Judged } from '../../src/policy/judgement.ts';
import { questionSentence } from '../../src/report/model/question.ts';
import { rules } from '../../src/rules/registry.ts';
import { ullage } from '../cli/run.ts';
import {
  assembled,
  type Files,
  gannetPoint,
  judged,
  judgeFiles,
  settingsOf,
  today,
} from '../estate/builder.ts';
import { change, filesOf, model } from '../estate/random.ts';
import { makeRepository, removeRepositories } from '../repository.ts';

afterAll(removeRepositories);

/** Five servers that run, and the twelve volumes that they have. */
const office = `servers:
${[1, 2, 3, 4, 5].map((n) => `  scanner-${n}: { boot: root-${n}, guest: linux-lvm, type: small }\n`).join('')}volumes:
${[1, 2, 3, 4, 5].map((n) => `  root-${n}: { size: 50 GiB, tier: steady, file-system: { mount: /, type: ext4 } }\n`).join('')}${[1, 2, 3, 4, 5, 6, 7].map((n) => `  plates-${n}: { size: 40 GiB, tier: bulk }\n`).join('')}attachments:
${[1, 2, 3, 4, 5, 6, 7].map((n) => `  - { volume: plates-${n}, server: scanner-1 }\n`).join('')}volume-groups:
  plates:
    members: [plates-1, plates-2, plates-3, plates-4, plates-5, plates-6, plates-7]
    file-systems:
      /plates: { size: 200 GiB, type: xfs }
`;

const storage = 'storage/imagery.yaml';

async function gate(branch: Files, main: Files = gannetPoint, ...more: readonly string[]) {
  const repository = makeRepository({ files: main });
  repository.branch('adopt');
  repository.write(branch);
  repository.commit('Declare the office');
  const asked = ['--repo', repository.dir, '--base', 'main', '--now', today, ...more];
  const text = await ullage('gate', ...asked);
  const json = await ullage('gate', ...asked, '--format', 'json');
  return { ...text, judgement: JSON.parse(json.out) };
}

/** The procedures that look and do nothing. */
const looks = ['check-server-there', 'check-volume-there', 'check-layers'];

const makes = /^(Create|Attach|Reformat|Add|Put|Delete|Mount|Shut|Start) /;

describe('a newcomer declares five servers that run and twelve volumes', () => {
  it('without a word: is asked first whether they are new, and the steps begin with that', async () => {
    const { code, out, judgement } = await gate({ [storage]: office });
    expect(code).toBe(0);
    const [headline = '', ...lines] = out.split('\n');
    expect(headline).toMatch(/^pass/);
    const beforeSections = lines.slice(0, lines.indexOf(''));
    expect(beforeSections.join(' ').replace(/\s+/g, ' ')).toContain(
      'Question Main declares no server and no volume yet. Is what the branch brings new, or there already: 5 servers and 12 volumes? It does not say, so they are taken for new. Write `existing: true` on what is there already',
    );
    const steps = out.slice(out.indexOf('\nSteps, in order')).replace(/\s+/g, ' ');
    expect(steps).toMatch(
      /^ Steps, in order \(\d+\) These steps are for storage that does not exist yet: they create 5 servers and 12 volumes\. If any of that is there already, do not carry them out/,
    );
    expect(judgement.question).toMatchObject({
      firstEstate: true,
      servers: { length: 5 },
      volumes: { length: 12 },
    });
  });

  it('even then no server is told to make the file system that it starts from', async () => {
    const { judgement } = await gate({ [storage]: office });
    const steps: readonly { instruction: string }[] = judgement.runbook;
    expect(
      steps
        .filter(({ instruction }) => /file system.* root-/.test(instruction))
        .map((step) => step.instruction),
    ).toEqual([1, 2, 3, 4, 5].map((n) => `Check that the file system / on root-${n} is ext4, as declared.`));
  });

  it('with existing: true at the top of the file: nothing is made, and the cost is being paid already', async () => {
    const { code, out, judgement } = await gate({ [storage]: `existing: true\n${office}` });
    expect([code, judgement.question, out.includes('Question')]).toEqual([0, null, false]);
    const steps: readonly { at: string; server: string | null; instruction: string; losesData: boolean }[] =
      judgement.runbook;
    // One look at the provider for each server, and one in its guest.
    expect(steps.map(({ at, server }) => `${at} ${server}`).sort()).toEqual(
      [1, 2, 3, 4, 5].flatMap((n) => [`guest scanner-${n}`, `provider scanner-${n}`]).sort(),
    );
    for (const { instruction, losesData } of steps) {
      expect(instruction).toMatch(/^Check that /);
      expect(losesData).toBe(false);
    }
    const { cost } = judgement;
    expect(cost.alreadyPaid).toBe(cost.after);
    expect(cost.causes.filter((each: { difference: string }) => each.difference !== '0.00')).toEqual([
      { cause: 'adoption', difference: cost.after, exact: { difference: cost.exact.after } },
    ]);
    expect(out.replace(/\s+/g, ' ')).toContain(
      `Of this, ${cost.after} EUR a month is already being paid, for what is there and is only declared now.`,
    );
    expect(cost.after).toBe((await gate({ [storage]: office })).judgement.cost.after);
  });

  it('is over a limit as it would be with new ones', async () => {
    const limit = 'rules:\n  - { rule: max-monthly-spend, limit: "60.00" }\n';
    const main = { ...gannetPoint, 'policies/storage.yaml': limit };
    const fresh = await gate({ [storage]: office }, main);
    const there = await gate({ [storage]: `existing: true\n${office}` }, main);
    expect([fresh.code, there.code]).toEqual([1, 1]);
    expect(there.judgement.reasons).toEqual(fresh.judgement.reasons);
  });
});

describe('the question', () => {
  const main = { [storage]: 'volumes:\n  old: { size: 1 GiB, tier: bulk }\n' };
  const added = (count: number, rest = '', top = ''): Files => ({
    [storage]: `${top}${main[storage]}${Array.from({ length: count }, (_, n) => `  new-${n}: { size: 1 GiB, tier: bulk${rest} }\n`).join('')}`,
  });
  const asked = async (before: Files, after: Files) => (await judged(before, after)).question;

  it('is put from six things at once, and not for what somebody adds by hand', async () => {
    expect(await asked(main, added(5))).toBeUndefined();
    expect(await asked(main, added(6))).toMatchObject({ first: false, volumes: { length: 6 } });
    expect(await asked({}, added(1))).toMatchObject({ first: true });
  });

  it('is answered either way, thing by thing or at the top of the file', async () => {
    for (const answer of ['true', 'false']) {
      expect(await asked(main, added(6, `, existing: ${answer}`))).toBeUndefined();
      expect(await asked(main, added(6, '', `existing: ${answer}\n`))).toBeUndefined();
    }
    expect(await asked({}, added(6, '', 'existing: false\n'))).toBeUndefined();
  });

  it('is put for a single thing in a file whose answer was for others', async () => {
    const marked = { [storage]: `existing: true\n${main[storage]}` };
    const question = await asked(marked, added(1, '', 'existing: true\n'));
    expect(question).toEqual({ first: false, servers: [], volumes: ['new-0'], spent: [storage] });
    expect(question && questionSentence(question)).toBe(
      `Is what the branch brings new, or there already: 1 volume? \`existing: true\` at the top of ${storage} was for what it was merged with and is not for what is added since, so it is taken for new. If it is new, delete that line, which is no longer needed. If not, write \`existing: true\` on it: nothing of it is created then.`,
    );
    // The line alone is deleted, and nothing else comes of that.
    const { changes } = await judged({ ...gannetPoint, ...marked }, added(1));
    expect(changes.map(({ kind }) => kind)).toEqual(['volume-created']);
    expect(await asked(marked, added(1))).toBeUndefined();
  });

  it('is told in every form', async () => {
    const repository = makeRepository({ files: gannetPoint });
    repository.branch('adopt');
    repository.write({ [storage]: office });
    repository.commit('Declare the office');
    const asked = ['--repo', repository.dir, '--base', 'main', '--now', today, '--format'];
    const sarif = JSON.parse((await ullage('gate', ...asked, 'sarif')).out);
    const [invocation] = sarif.runs[0].invocations;
    const [{ descriptor, level, message }] = invocation.toolExecutionNotifications;
    expect([invocation.executionSuccessful, descriptor, level]).toEqual([
      true,
      { id: 'new-or-existing', index: 2 },
      'warning',
    ]);
    expect(sarif.runs[0].tool.driver.notifications[2].id).toBe('new-or-existing');
    for (const text of [
      message.text,
      (await ullage('gate', ...asked, 'junit')).out,
      (await ullage('gate', ...asked, 'markdown')).out,
    ])
      expect(text.replace(/\s+/g, ' ')).toContain('new, or there already: 5 servers and 12 volumes?');
  });

  it('alters no verdict', async () => {
    const { verdict, findings } = await judged({}, added(6), { failOn: 'warning' });
    expect([verdict, findings.some(({ message }) => /new, or/.test(message))]).toEqual(['fail', false]);
  });
});

const marked = (files: Files): Files =>
  Object.fromEntries(
    Object.entries(files).map(([file, text]) => [
      file,
      JSON.stringify({ existing: true, ...JSON.parse(text) }),
    ]),
  );

/** Every rule that ships, as strict as it ships. */
const strict: Files = {
  ...gannetPoint,
  'ullage.yaml':
    'currency: EUR\nsites: { north-quay: { quota: { volumes: 4, size: 4 TiB }, attachment-slots: 2 }, south-quay: {} }\n',
  'policies/storage.yaml': `use: [strict]
rules:
  - { name: spend, rule: max-monthly-spend, limit: "90.00" }
  - { name: each-team, rule: max-monthly-spend, limit: "40.00", each: team }
  - { name: room, rule: minimum-headroom, of: volume-group, share: 0.1 }
  - { name: quota, rule: minimum-headroom, of: quota, count: 0, size: 1 GiB }
  - { name: slots, rule: minimum-headroom, of: attachment-slots, count: 0 }
  - { name: names, rule: naming, volume: 'v[0-3]' }
  - { name: creations, rule: shape, of: change, kinds: [volume-created], schema: { properties: { after: { properties: { tier: { const: bulk } } } } } }
`,
};

async function judgedOrNot(base: Files, head: Files): Promise<Judged | undefined> {
  const judgement = await judgeFiles({ ...strict, ...base }, { ...strict, ...head }, { on: today });
  return judgement.verdict === 'not judged' ? undefined : judgement;
}

const roomsOf = ({ headroom }: Judged) =>
  headroom.map(({ after }) => [
    after?.layer,
    after?.subject.name,
    after?.measure,
    after?.capacity,
    after?.taken,
  ]);

/**
 * An error in short: the message of a change names its kind, which is the one thing that differs. What is there already
 * is brought about by no steps, in whatever order.
 */
const errorsOf = ({ findings }: Judged): readonly string[] =>
  findings
    .filter(({ fails, entry }) => fails && entry !== rules['order-of-steps'].name)
    .map(
      ({ entry, subject, message }) =>
        `${entry}: ${subject.name}: ${message.replace('-adopted', '-created')}`,
    )
    .sort();

describe('any estate that is there already', () => {
  it('is declared without a step that makes anything, at the same cost, and with every finding that it would have as new', async () => {
    let failing = 0;
    await fc.assert(
      fc.asyncProperty(model, async (estate) => {
        const files = filesOf(estate);
        fc.pre(assembled(files, settingsOf(strict['ullage.yaml'])).ok);
        const fresh = await judgedOrNot({}, files);
        const there = await judgedOrNot({}, marked(files));
        expect(fresh === undefined).toBe(there === undefined);
        if (fresh === undefined || there === undefined) return;
        expect(there.changes.map(({ kind }) => kind).filter((kind) => !kind.endsWith('-adopted'))).toEqual(
          [],
        );
        expect(there.changes).toHaveLength(fresh.changes.length);
        for (const { procedure, destroys, does } of there.runbook) {
          expect([procedure, destroys, makes.test(does)]).toEqual([expect.toBeOneOf(looks), false, false]);
        }
        expect(there.question).toBeUndefined();
        expect(there.cost.after.toFixed()).toBe(fresh.cost.after.toFixed());
        expect(there.cost.adopted.toFixed()).toBe(there.cost.after.toFixed());
        expect(there.cost.teams).toEqual(fresh.cost.teams);
        expect(there.limits).toEqual(fresh.limits);
        expect(roomsOf(there)).toEqual(roomsOf(fresh));
        // On an empty main nothing can be overwritten, so that no finding is about creating alone.
        expect(errorsOf(there)).toEqual(errorsOf(fresh));
        if (errorsOf(there).length > 0) failing++;
      }),
      { numRuns: 120 },
    );
    expect(failing).toBeGreaterThan(10);
  });

  it('beside what main has: loses nothing more, and every error stays that is not about writing over it', async () => {
    let compared = 0;
    await fc.assert(
      fc.asyncProperty(change, async ([before, after]) => {
        const [base, head] = [filesOf(before), filesOf(after)];
        fc.pre(assembled(base).ok && assembled(head).ok);
        const fresh = await judgedOrNot(base, head);
        const there = await judgedOrNot(base, marked(head));
        expect(fresh === undefined).toBe(there === undefined);
        if (fresh === undefined || there === undefined) return;
        expect(there.cost.after.toFixed()).toBe(fresh.cost.after.toFixed());
        const errors = new Set(errorsOf(there));
        const overwriting = new Set(
          fresh.changes.flatMap((each) =>
            (each.kind === 'group-created' ||
              each.kind === 'file-system-created' ||
              each.kind === 'member-joined') &&
            each.wipes.length > 0
              ? [each.subject.name]
              : [],
          ),
        );
        const lost = fresh.findings.filter(
          ({ fails, subject, entry, message }) =>
            fails &&
            !overwriting.has(subject.name) &&
            // How many losses there are is counted, and what is written over is one.
            entry !== rules['destructive-changes-few'].name &&
            entry !== rules['order-of-steps'].name &&
            !errors.has(`${entry}: ${subject.name}: ${message}`),
        );
        expect(lost.map(({ entry, message }) => `${entry}: ${message}`)).toEqual([]);
        compared += fresh.findings.filter(({ fails }) => fails).length;
      }),
      { numRuns: 120 },
    );
    expect(compared).toBeGreaterThan(50);
  });
});
