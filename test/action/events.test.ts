import { describe, expect, it } from 'vitest';
import { requestOf } from '../../src/action/events.ts';
import { payloadOf } from './run.ts';

// The payloads are the CI host's published examples, as @octokit/webhooks-examples carries them.

const sha = 'a'.repeat(40);
const nothing = { base: undefined, head: undefined, now: undefined };

describe('a pull request', () => {
  const example = payloadOf('pull_request', {}, ({ action }) => action === 'synchronize');

  it('is judged as the merge that the host made, or else against the tip of its base branch', () => {
    const request = requestOf({ name: 'pull_request', payload: example, sha }, nothing);
    expect(request).toMatchObject({
      ok: true,
      value: {
        base: {
          kind: 'tip',
          ref: 'refs/heads/master',
          otherwise: 'f95f852bd8fca8fcc58a9a2d6c842781e32a215e',
        },
        head: { kind: 'commit', commit: 'ec26c3e57ca3a959ca5aad62de7213c562f8c821', ref: 'refs/pull/2/head' },
        merge: { commit: sha, ref: 'refs/pull/2/merge', second: 'ec26c3e57ca3a959ca5aad62de7213c562f8c821' },
        pullRequest: { repository: 'Codertocat/Hello-World', number: 2, fromFork: false },
      },
    });
  });

  it('from a fork is told from one of the repository', () => {
    const fork = { pull_request: { head: { repo: { full_name: 'somebody/storage' } } } };
    const payload = payloadOf('pull_request', fork);
    expect(requestOf({ name: 'pull_request', payload, sha }, nothing)).toMatchObject({
      ok: true,
      value: { pullRequest: { repository: 'Codertocat/Hello-World', fromFork: true } },
    });
  });

  it('whose fork was deleted is from a fork', () => {
    const payload = payloadOf('pull_request', { pull_request: { head: { repo: null } } });
    expect(requestOf({ name: 'pull_request', payload, sha }, nothing)).toMatchObject({
      value: { pullRequest: { fromFork: true } },
    });
  });

  it('cannot choose its own base, head or day', () => {
    const chosen = { base: 'my-branch', head: 'main', now: '2020-01-01' };
    const free = requestOf({ name: 'pull_request', payload: example, sha }, nothing);
    const bent = requestOf({ name: 'pull_request', payload: example, sha }, chosen);
    if (!free.ok || !bent.ok) throw new Error('both are known events');
    expect({ ...bent.value, ignored: [] }).toEqual(free.value);
    expect(bent.value.ignored).toEqual(['base', 'head', 'now']);
  });

  it('run for the base branch is not taken for the merge', () => {
    expect(requestOf({ name: 'pull_request_target', payload: example, sha }, nothing)).toMatchObject({
      ok: true,
      value: { merge: undefined },
    });
  });

  it('of which each published example is understood', () => {
    for (const action of ['opened', 'reopened', 'synchronize', 'ready_for_review', 'labeled', 'closed']) {
      const payload = payloadOf('pull_request', {}, (example) => example.action === action);
      expect(requestOf({ name: 'pull_request', payload, sha }, nothing).ok).toBe(true);
    }
  });
});

describe('a merge group', () => {
  it('is judged from its own base to its own head, whatever the inputs say', () => {
    const chosen = { base: 'other', head: undefined, now: undefined };
    expect(requestOf({ name: 'merge_group', payload: payloadOf('merge_group'), sha }, chosen)).toMatchObject({
      ok: true,
      value: {
        base: { kind: 'commit', commit: '380387fbc80638b734a49e1be1c4dfec1c01b33c', ref: 'refs/heads/main' },
        head: { kind: 'commit', commit: '2ffea6db159f6b6c47a24e778fb9ef40cf6b1c7d' },
        headIs: 'the same branch',
        ignored: ['base'],
      },
    });
  });
});

describe('a push', () => {
  const toBranch = ({ ref }: { ref?: unknown }): boolean => String(ref).startsWith('refs/heads/');
  const before = 'b'.repeat(40);

  it('to main is judged from what main was', () => {
    const payload = payloadOf('push', { before, created: false }, toBranch);
    expect(requestOf({ name: 'push', payload, sha }, nothing)).toMatchObject({
      ok: true,
      value: {
        base: { kind: 'commit', commit: before },
        head: { kind: 'commit', commit: '6113728f27ae82c7b1a177c8d03f9e96e0adf246' },
        headIs: 'the same branch',
      },
    });
  });

  it('that makes main has nothing to be held against', () => {
    const payload = payloadOf('push', {}, toBranch);
    const request = requestOf({ name: 'push', payload, sha }, nothing);
    expect(request).toMatchObject({ ok: false, problems: [{ message: expect.stringContaining('is new') }] });
  });

  it('of a new branch is judged against main', () => {
    const payload = payloadOf('push', { ref: 'refs/heads/grow-plates' }, toBranch);
    expect(requestOf({ name: 'push', payload, sha }, nothing)).toMatchObject({
      ok: true,
      value: { base: { kind: 'tip', ref: 'refs/heads/master' }, headIs: 'another branch' },
    });
  });

  it('that rewrites main is not judged, for it is the merge of nothing', () => {
    const payload = payloadOf('push', { before, forced: true }, toBranch);
    expect(requestOf({ name: 'push', payload, sha }, nothing).ok).toBe(false);
  });

  it('of a tag, or of a deletion, is not judged', () => {
    const tag = payloadOf('push', {}, ({ created }) => created === true);
    const deletion = payloadOf('push', {}, ({ deleted }) => deleted === true);
    expect(requestOf({ name: 'push', payload: tag, sha }, nothing)).toMatchObject({
      problems: [{ message: expect.stringContaining('is not a branch') }],
    });
    expect(requestOf({ name: 'push', payload: deletion, sha }, nothing)).toMatchObject({
      problems: [{ message: expect.stringContaining('deleted') }],
    });
  });
});

describe('a run started by hand', () => {
  const payload = payloadOf('workflow_dispatch');

  it('judges its own branch against main', () => {
    expect(requestOf({ name: 'workflow_dispatch', payload, sha }, nothing)).toMatchObject({
      ok: true,
      value: {
        base: { kind: 'tip', ref: 'refs/heads/main' },
        head: { kind: 'commit', commit: sha },
        now: undefined,
      },
    });
  });

  it('may name what is judged, and the day', () => {
    const chosen = { base: 'v1', head: 'grow-plates', now: '2026-11-20' };
    expect(requestOf({ name: 'workflow_dispatch', payload, sha }, chosen)).toMatchObject({
      ok: true,
      value: {
        base: { kind: 'name', name: 'v1' },
        head: { kind: 'name', name: 'grow-plates' },
        now: '2026-11-20',
      },
    });
  });
});

describe('what is no change', () => {
  it('an event about something else is not judged', () => {
    const request = requestOf({ name: 'issues', payload: payloadOf('issues'), sha }, nothing);
    expect(request).toMatchObject({
      ok: false,
      problems: [{ advice: expect.stringContaining('pull_request') }],
    });
  });

  it.each([
    null,
    [],
    'text',
    7,
    { pull_request: null },
    JSON.parse('{"pull_request":{"__proto__":{"base":1}}}'),
  ])('a payload that is none is not judged: %j', (payload) => {
    for (const name of ['pull_request', 'merge_group', 'push', 'workflow_dispatch']) {
      expect(requestOf({ name, payload, sha }, nothing).ok).toBe(false);
    }
  });
});
