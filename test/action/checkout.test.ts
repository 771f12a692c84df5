import { spawn } from 'node:child_process';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { basename, dirname } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { toJudge } from '../../src/action/checkout.ts';
import { requestOf } from '../../src/action/events.ts';
import type { Remote } from '../../src/action/fetch.ts';
import {
  isolatedEnvironment,
  makeRepository,
  removeRepositories,
  type TestRepository,
} from '../repository.ts';
import { checkedOut, hosted, mergedBy, office, payloadOf, plates, pullRequestPayload } from './run.ts';

afterAll(removeRepositories, 60_000);

const remoteOf = ({ dir }: TestRepository, more: Partial<Remote> = {}): Remote => ({
  dir,
  environment: isolatedEnvironment(),
  token: undefined,
  serverUrl: 'https://github.com',
  ...more,
});

const nothing = { base: undefined, head: undefined, now: undefined };

async function found(
  checkout: TestRepository,
  name: string,
  payload: unknown,
  sha: string,
  more: Partial<Remote> = {},
) {
  const request = requestOf({ name, payload, sha }, nothing);
  if (!request.ok) throw new Error('the event is understood');
  return toJudge(remoteOf(checkout, more), request.value);
}

/** How much of its history a checkout holds. */
const commitsIn = (checkout: TestRepository): number =>
  Number(
    checkout
      .git('cat-file', '--batch-check', '--batch-all-objects')
      .split('\n')
      .filter((line) => line.includes(' commit ')).length,
  );

const refsOf = (checkout: TestRepository): string => checkout.git('for-each-ref');

describe('a pull request in a checkout of depth 1', () => {
  it('is judged against the first parent of the merge commit, and only that one is fetched', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, merge);
    const refs = refsOf(checkout);
    expect(commitsIn(checkout)).toBe(1);
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge);
    expect(result).toEqual({ ok: true, value: { base, head: merge, notes: [] } });
    expect(commitsIn(checkout)).toBe(2);
    expect(refsOf(checkout)).toBe(refs);
  });

  it('says which base was judged where main moved on before the merge commit was made', async () => {
    const { origin, base, head } = hosted(plates('60 GiB'));
    origin.write({ 'README.md': 'More about the storage.\n' });
    const moved = origin.commit('main moves on');
    const merge = mergedBy(origin, moved, head);
    const result = await found(
      checkedOut(origin, merge),
      'pull_request',
      pullRequestPayload({ base, head }),
      merge,
    );
    expect(result).toMatchObject({
      ok: true,
      value: { base: moved, head: merge, notes: [expect.stringContaining(base.slice(0, 12))] },
    });
  });

  it('says that main has moved on since, where the checkout knows', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    origin.write({ 'README.md': 'More about the storage.\n' });
    const moved = origin.commit('main moves on');
    const checkout = checkedOut(origin, merge, { depth: 0 });
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge);
    expect(result).toMatchObject({
      ok: true,
      value: { base, notes: [expect.stringContaining(moved.slice(0, 12))] },
    });
  });

  it('is not fooled by a merge commit of somebody else', async () => {
    const { origin, base, head, merge } = hosted(plates('5 GiB'));
    // A merge whose first parent is the proposal itself: judged against that, it would change nothing.
    origin.git('checkout', '--quiet', '--detach', head);
    const forged = origin.merge(merge);
    origin.checkout('main');
    const checkout = checkedOut(origin, forged);
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), forged);
    expect(result).toMatchObject({
      ok: true,
      value: { base, head, notes: [expect.stringContaining('is not a merge')] },
    });
  });

  it('of the branch itself is merged here, with as much history as that takes', async () => {
    const { origin, base, head } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, head, { ref: 'pull/2/head' });
    // The host makes none while there is a conflict; the payload's commit of the run is the branch then.
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), head);
    expect(result).toMatchObject({ ok: true, value: { base, head } });
  });

  it('is not judged where nothing can be fetched, with the setting to change', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, merge);
    checkout.git('remote', 'set-url', 'origin', 'file:///nowhere/at/all');
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge);
    expect(result).toMatchObject({
      ok: false,
      problems: expect.arrayContaining([
        expect.objectContaining({ advice: expect.stringContaining('fetch-depth: 0') }),
      ]),
    });
  });

  it('is fetched by ref from a remote that gives no single commits', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, merge);
    // Protocol version 0 gives only what a ref points at.
    checkout.git('config', 'protocol.version', '0');
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge);
    expect(result).toMatchObject({ ok: true, value: { base, head: merge } });
  });

  it('goes over no other way to the network than those allowed', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, merge);
    checkout.git('remote', 'set-url', 'origin', `ext::touch ${checkout.dir}/ran`);
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge);
    expect(result.ok).toBe(false);
    expect(checkout.git('status', '--porcelain')).toBe('');
  });
});

describe('a merge group', () => {
  const group = (base: string, head: string) =>
    payloadOf('merge_group', {
      merge_group: { base_sha: base, head_sha: head, base_ref: 'refs/heads/main' },
    });

  it('that merges is judged against the base it was made on', async () => {
    const { origin, base, merge } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, merge, { ref: 'origin/gh-readonly-queue/main/pr-2' });
    expect(await found(checkout, 'merge_group', group(base, merge), merge)).toEqual({
      ok: true,
      value: { base, head: merge, notes: [] },
    });
  });

  it('that squashes several pull requests fetches the history between', async () => {
    const { origin, base } = hosted(plates('60 GiB'));
    origin.branch('queue');
    origin.write(plates('55 GiB'));
    origin.commit('the first, squashed');
    origin.write(plates('60 GiB'));
    const head = origin.commit('the second, squashed');
    const checkout = checkedOut(origin, head, { ref: 'origin/queue' });
    expect(await found(checkout, 'merge_group', group(base, head), head)).toMatchObject({
      ok: true,
      value: { base, head },
    });
    expect(() => checkout.git('merge-base', '--is-ancestor', base, head)).not.toThrow();
  });

  it('that does not hold its base is not judged', async () => {
    const { origin, base } = hosted(plates('60 GiB'));
    const before = origin.git('rev-parse', `${base}^`);
    const checkout = checkedOut(origin, base, { ref: 'origin/checked-out', depth: 0 });
    const result = await found(checkout, 'merge_group', group(base, before), before);
    expect(result).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringContaining('does not contain') }],
    });
  });
});

describe('a push to main', () => {
  const push = (before: string, after: string) =>
    payloadOf(
      'push',
      { ref: 'refs/heads/main', before, after, created: false, repository: { default_branch: 'main' } },
      ({ ref }) => String(ref).startsWith('refs/heads/'),
    );

  it('of several commits is judged from what main was, in a checkout of depth 1', async () => {
    const origin = makeRepository({ files: office });
    const before = origin.git('rev-parse', 'HEAD');
    for (const size of ['51 GiB', '52 GiB', '53 GiB']) {
      origin.write(plates(size));
      origin.commit(size);
    }
    const after = origin.git('rev-parse', 'HEAD');
    const checkout = checkedOut(origin, after, { ref: 'origin/main' });
    expect(await found(checkout, 'push', push(before, after), after)).toMatchObject({
      ok: true,
      value: { base: before, head: after },
    });
  });

  it('that takes commits back is not judged, though the host calls it no forced push', async () => {
    const origin = makeRepository({ files: office });
    const after = origin.git('rev-parse', 'HEAD');
    origin.write(plates('60 GiB'));
    const before = origin.commit('grown');
    const checkout = checkedOut(origin, after, { ref: 'origin/checked-out', depth: 0 });
    const result = await found(checkout, 'push', push(before, after), after);
    expect(result).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringContaining('rewritten') }],
    });
  });
});

describe('a run started by hand', () => {
  it('judges its branch against main, which a checkout of depth 1 does not hold', async () => {
    const { origin, base, head } = hosted(plates('60 GiB'));
    const checkout = checkedOut(origin, head, { ref: 'origin/proposal' });
    const payload = payloadOf('workflow_dispatch', { ref: 'refs/heads/proposal' });
    expect(await found(checkout, 'workflow_dispatch', payload, head)).toMatchObject({
      ok: true,
      value: { base, head },
    });
  });

  it.each(['proposal', 'origin/proposal'])(
    'finds a branch by the name a person gives it: %s',
    async (name) => {
      const { origin, base, head } = hosted(plates('60 GiB'));
      const checkout = checkedOut(origin, base, { ref: 'origin/main' });
      const payload = payloadOf('workflow_dispatch', { ref: 'refs/heads/main' });
      const request = requestOf(
        { name: 'workflow_dispatch', payload, sha: base },
        { ...nothing, head: name },
      );
      if (!request.ok) throw new Error('the event is understood');
      expect(await toJudge(remoteOf(checkout), request.value)).toMatchObject({
        ok: true,
        value: { base, head },
      });
    },
  );

  it.each(['--upload-pack=touch ran', '-x', 'a..b', '$(touch ran)', 'no-such-branch'])(
    'takes no option for a branch: %s',
    async (name) => {
      const { origin, base } = hosted(plates('60 GiB'));
      const checkout = checkedOut(origin, base, { ref: 'origin/main' });
      const payload = payloadOf('workflow_dispatch', { ref: 'refs/heads/main' });
      const request = requestOf(
        { name: 'workflow_dispatch', payload, sha: base },
        { ...nothing, head: name },
      );
      if (!request.ok) throw new Error('the event is understood');
      expect((await toJudge(remoteOf(checkout), request.value)).ok).toBe(false);
      expect(checkout.git('status', '--porcelain')).toBe('');
    },
  );
});

describe('a private repository over HTTP', () => {
  const servers: (() => void)[] = [];
  afterEach(() => {
    for (const close of servers.splice(0)) close();
  });

  /** Git's own server program behind a sign-in, as a host has it. */
  async function serve(origin: TestRepository, expected: string) {
    const seen: (string | undefined)[] = [];
    const server = createServer((request: IncomingMessage, response: ServerResponse) => {
      seen.push(request.headers.authorization);
      if (request.headers.authorization !== expected) {
        response.writeHead(401, { 'www-authenticate': 'Basic realm="git"' }).end();
        return;
      }
      const url = new URL(request.url ?? '/', 'http://localhost');
      const child = spawn('git', ['http-backend'], {
        env: {
          ...isolatedEnvironment(),
          GIT_PROJECT_ROOT: dirname(origin.dir),
          GIT_HTTP_EXPORT_ALL: '1',
          PATH_INFO: url.pathname,
          QUERY_STRING: url.search.slice(1),
          REQUEST_METHOD: request.method ?? 'GET',
          CONTENT_TYPE: request.headers['content-type'] ?? '',
          HTTP_CONTENT_ENCODING: request.headers['content-encoding'] ?? '',
          GIT_PROTOCOL: String(request.headers['git-protocol'] ?? ''),
        },
      });
      request.pipe(child.stdin);
      const chunks: Buffer[] = [];
      child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk));
      child.on('close', () => {
        const answer = Buffer.concat(chunks);
        const end = answer.indexOf('\r\n\r\n');
        for (const line of answer.subarray(0, end).toString('latin1').split('\r\n')) {
          const [name = '', ...value] = line.split(': ');
          if (name.toLowerCase() === 'status') response.statusCode = Number.parseInt(value.join(': '), 10);
          else response.setHeader(name, value.join(': '));
        }
        response.end(answer.subarray(end + 4));
      });
    });
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    servers.push(() => server.close());
    const address = server.address();
    if (address === null || typeof address === 'string') throw new Error('the server has a port');
    const url = `http://127.0.0.1:${address.port}`;
    return { url, remote: `${url}/${basename(origin.dir)}/.git`, seen };
  }

  const basic = (token: string): string =>
    `basic ${Buffer.from(`x-access-token:${token}`).toString('base64')}`;

  it('is fetched with the credentials that the checkout step left in the settings', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const { url, remote } = await serve(origin, basic('left-by-the-checkout'));
    const checkout = checkedOut(origin, merge);
    checkout.git('remote', 'set-url', 'origin', remote);
    checkout.git('config', `http.${url}/.extraheader`, `AUTHORIZATION: ${basic('left-by-the-checkout')}`);
    expect(await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge)).toMatchObject({
      ok: true,
      value: { base, head: merge },
    });
  });

  it('is fetched with the token where the checkout left none, or one that has run out', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const { url, remote } = await serve(origin, basic('the-token'));
    for (const left of [undefined, 'run-out']) {
      const checkout = checkedOut(origin, merge);
      checkout.git('remote', 'set-url', 'origin', remote);
      if (left !== undefined) {
        checkout.git('config', `http.${url}/.extraheader`, `AUTHORIZATION: ${basic(left)}`);
      }
      const more = { token: 'the-token', serverUrl: url };
      expect(
        await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge, more),
      ).toMatchObject({
        ok: true,
        value: { base, head: merge },
      });
    }
  });

  it('is never sent the token of another server', async () => {
    const { origin, base, head, merge } = hosted(plates('60 GiB'));
    const { remote, seen } = await serve(origin, basic('the-token'));
    const checkout = checkedOut(origin, merge);
    checkout.git('remote', 'set-url', 'origin', remote);
    const more = { token: 'the-token', serverUrl: 'https://git.gannet-point.example' };
    const result = await found(checkout, 'pull_request', pullRequestPayload({ base, head }), merge, more);
    expect(result.ok).toBe(false);
    expect(seen.filter((header) => header !== undefined)).toEqual([]);
    expect(JSON.stringify(result)).not.toContain('the-token');
  });
});
