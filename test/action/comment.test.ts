import { createServer } from 'node:http';
import { afterEach, describe, expect, it } from 'vitest';
import { type CommentApi, marker, writeComment } from '../../src/action/comment.ts';

interface Seen {
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>;
  readonly body: unknown;
}

interface Answer {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: unknown;
}

interface Stored {
  readonly id: number;
  readonly user: { readonly login: string };
  body: string;
}

const bot = 'github-actions[bot]';
const servers: (() => void)[] = [];
afterEach(() => {
  for (const close of servers.splice(0)) close();
});

/**
 * A local stand-in for the host's API, after its published reference: it keeps comments, gives them in pages with a
 * Link header, and answers as it is told to where a test has something to go wrong.
 */
async function host(
  comments: Stored[] = [],
  {
    pageSize = 100,
    login,
    wrong = () => undefined,
  }: {
    readonly pageSize?: number;
    /** The token's own account; a workflow's token has none that can be asked for. */
    readonly login?: string;
    readonly wrong?: (seen: Seen, count: number) => Answer | 'hang up' | 'say nothing' | undefined;
  } = {},
) {
  const seen: Seen[] = [];
  let origin = '';
  let made = comments.length;
  const answerTo = ({ method, path, body }: Seen): Answer => {
    const url = new URL(path, origin);
    const text = (): string => String((body as { body?: unknown }).body);
    if (url.pathname === '/user') {
      return login === undefined
        ? { status: 403, body: { message: 'Resource not accessible by integration' } }
        : { body: { login } };
    }
    if (method === 'GET') {
      const page = Number(url.searchParams.get('page') ?? '1');
      const more = page * pageSize < comments.length;
      const next = `${origin}${url.pathname}?per_page=100&page=${page + 1}`;
      return {
        body: comments.slice((page - 1) * pageSize, page * pageSize),
        headers: more ? { link: `<${origin}/last>; rel="last", <${next}>; rel="next"` } : {},
      };
    }
    if (method === 'POST') {
      made += 1;
      const one = { id: 999 + made, user: { login: login ?? bot }, body: text() };
      comments.push(one);
      return { status: 201, body: one };
    }
    if (method === 'DELETE') {
      const at = comments.findIndex(({ id }) => url.pathname.endsWith(`/comments/${id}`));
      return at === -1
        ? { status: 404, body: { message: 'Not Found' } }
        : { status: comments.splice(at, 1).length && 204 };
    }
    const edited = comments.find(({ id }) => url.pathname.endsWith(`/comments/${id}`));
    if (edited === undefined) return { status: 404, body: { message: 'Not Found' } };
    edited.body = text();
    return { body: edited };
  };
  const server = createServer((request, response) => {
    let text = '';
    request.on('data', (chunk: Buffer) => {
      text += chunk.toString('utf8');
    });
    request.on('end', () => {
      const { method = '', url = '', headers } = request;
      const one = { method, path: url, headers, body: text === '' ? undefined : JSON.parse(text) };
      seen.push(one);
      const answer = wrong(one, seen.length) ?? answerTo(one);
      if (answer === 'say nothing') return;
      if (answer === 'hang up') {
        request.socket.destroy();
        return;
      }
      response.writeHead(answer.status ?? 200, { 'content-type': 'application/json', ...answer.headers });
      if (answer.status === 204) response.end();
      else response.end(typeof answer.body === 'string' ? answer.body : JSON.stringify(answer.body ?? {}));
    });
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  servers.push(() => {
    server.closeAllConnections();
    server.close();
  });
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has a port');
  origin = `http://127.0.0.1:${address.port}`;
  const waits: number[] = [];
  const api: CommentApi = {
    url: origin,
    token: 'a-token',
    author: bot,
    second: 100,
    wait: async (milliseconds) => waits.push(milliseconds),
  };
  const calls = () => seen.map(({ method, path }) => `${method} ${path}`);
  return { api, seen, calls, comments, waits, origin };
}

const pull = { repository: 'gannet-point/storage', number: 42, fromFork: false };
const list = '/repos/gannet-point/storage/issues/42/comments';

const said = (id: number, login: string, body: string): Stored => ({ id, user: { login }, body });

describe('the comment on a pull request', () => {
  it('is written once, with the marker on top', async () => {
    const { api, seen, calls } = await host();
    expect(await writeComment(api, pull, 'pass')).toEqual({ kind: 'created', caution: undefined });
    expect(calls()).toEqual([
      'GET /user',
      `GET ${list}?per_page=100`,
      `POST ${list}`,
      `GET ${list}?per_page=100`,
    ]);
    expect(seen[2]?.body).toEqual({ body: `${marker}\npass` });
    for (const { headers } of seen) {
      expect(headers).toMatchObject({
        authorization: 'token a-token',
        accept: 'application/vnd.github.v3+json',
        'x-github-api-version': '2022-11-28',
        'user-agent': expect.stringContaining('ullage/'),
      });
    }
    expect(seen[2]?.headers['content-type']).toMatch(/^application\/json\b/);
  });

  it('is updated in place, never written a second time', async () => {
    const { api, calls, comments, seen } = await host();
    await writeComment(api, pull, 'pass');
    expect(await writeComment(api, pull, 'fail')).toEqual({ kind: 'updated', caution: undefined });
    expect(comments.map(({ body }) => body)).toEqual([`${marker}\nfail`]);
    expect(calls().at(-1)).toBe('PATCH /repos/gannet-point/storage/issues/comments/1000');
    expect(seen.at(-1)?.body).toEqual({ body: `${marker}\nfail` });
    const before = calls().length;
    expect(await writeComment(api, pull, 'fail')).toEqual({ kind: 'unchanged' });
    expect(calls().slice(before)).toEqual(['GET /user', `GET ${list}?per_page=100`]);
  });

  it('is found on the last of many pages', async () => {
    const others = Array.from({ length: 250 }, (_, index) => said(index + 1, 'avery', `remark ${index}`));
    const { api, calls, comments } = await host([...others, said(900, bot, `${marker}\npass`)]);
    expect(await writeComment(api, pull, 'fail')).toMatchObject({ kind: 'updated' });
    expect(calls()).toEqual([
      'GET /user',
      `GET ${list}?per_page=100`,
      `GET ${list}?per_page=100&page=2`,
      `GET ${list}?per_page=100&page=3`,
      'PATCH /repos/gannet-point/storage/issues/comments/900',
    ]);
    expect(comments).toHaveLength(251);
  });

  it('is never somebody else’s, though it carries the marker', async () => {
    const bait = said(5, 'mallory', `${marker}\nI approve of this`);
    const { api, comments, calls } = await host([bait]);
    expect(await writeComment(api, pull, 'fail')).toMatchObject({ kind: 'created' });
    expect(comments[0]?.body).toBe(`${marker}\nI approve of this`);
    expect(calls().some((call) => call.startsWith('PATCH'))).toBe(false);
  });

  it('is not one of ours that only quotes the marker', async () => {
    const { api, comments } = await host([said(5, bot, `Somebody wrote:\n> ${marker}`)]);
    await writeComment(api, pull, 'fail');
    expect(comments).toHaveLength(2);
  });

  it('is known again after the host made its line ends its own', async () => {
    const { api, comments } = await host([said(5, bot, `${marker}\r\npass`)]);
    expect(await writeComment(api, pull, 'fail')).toMatchObject({ kind: 'updated' });
    expect(comments).toHaveLength(1);
  });

  it('of a person’s token is looked for under that person’s name', async () => {
    const { api, comments } = await host([said(5, 'avery', `${marker}\npass`)], { login: 'avery' });
    expect(await writeComment(api, pull, 'fail')).toMatchObject({ kind: 'updated' });
    expect(comments).toHaveLength(1);
  });

  it('of an app’s token says how not to write a second one', async () => {
    const wrong = ({ method }: Seen): Answer | undefined =>
      method === 'POST' ? { status: 201, body: said(9, 'gannet[bot]', '') } : undefined;
    const { api } = await host([], { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({
      kind: 'created',
      caution: expect.stringContaining('comment-author: gannet[bot]'),
    });
  });

  it('that was deleted in the middle is written anew', async () => {
    const wrong = ({ method }: Seen): Answer | undefined =>
      method === 'PATCH' ? { status: 404, body: { message: 'Not Found' } } : undefined;
    const { api, calls } = await host([said(5, bot, `${marker}\npass`)], { wrong });
    expect(await writeComment(api, pull, 'fail')).toMatchObject({ kind: 'created' });
    expect(calls().filter((call) => !call.startsWith('GET'))).toEqual([
      'PATCH /repos/gannet-point/storage/issues/comments/5',
      `POST ${list}`,
    ]);
  });
});

describe('two runs at once', () => {
  it.each([
    ['before', 3, 'DELETE'],
    ['after', 5000, 'DELETE'],
  ] as const)('of which the other wrote its comment just %s leave the older', async (_, other, deleted) => {
    const comments: Stored[] = [];
    const wrong = ({ method }: Seen): undefined => {
      if (method === 'POST') comments.push(said(other, bot, `${marker}\nfail`));
    };
    const { api, calls } = await host(comments, { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'created' });
    expect(comments.map(({ body }) => body)).toEqual([`${marker}\npass`]);
    expect(comments[0]?.id).toBe(Math.min(other, 1000));
    expect(calls().filter((call) => call.startsWith(deleted))).toHaveLength(1);
  });

  it('end with one comment, however they interleave', async () => {
    for (const runs of [2, 3, 4]) {
      const { api, comments } = await host();
      const outcomes = await Promise.all(
        Array.from({ length: runs }, (_, run) => writeComment(api, pull, `run ${run}`)),
      );
      expect(outcomes.filter(({ kind }) => kind === 'not written')).toEqual([]);
      expect(comments).toHaveLength(1);
    }
  });

  it('that left two behind are settled by the next', async () => {
    const comments = [
      said(8, bot, `${marker}\nb`),
      said(5, bot, `${marker}\na`),
      said(6, 'avery', `${marker}\nc`),
    ];
    const { api } = await host(comments);
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'updated' });
    expect(comments.map(({ id, body }) => [id, body])).toEqual([
      [5, `${marker}\npass`],
      [6, `${marker}\nc`],
    ]);
  });
});

describe('a comment counts as written', () => {
  it('only when the host answers 201 with an id', async () => {
    const answers: readonly Answer[] = [
      { status: 200, body: { id: 9, user: { login: bot } } },
      { status: 202, body: { id: 9, user: { login: bot } } },
      { status: 201, body: {} },
      { status: 201, body: '' },
    ];
    const outcomes = await Promise.all(
      answers.map(async (answer) => {
        const wrong = ({ method }: Seen): Answer | undefined => (method === 'POST' ? answer : undefined);
        const { api } = await host([], { wrong });
        return writeComment(api, pull, 'pass');
      }),
    );
    for (const outcome of outcomes) {
      const why = expect.stringContaining('to a new comment');
      expect(outcome).toMatchObject({ kind: 'not written', why });
    }
  });

  it('when the host answers otherwise and has kept it all the same: it is looked for, and found', async () => {
    const comments: Stored[] = [];
    const wrong = ({ method, body }: Seen): Answer | undefined => {
      if (method !== 'POST') return undefined;
      comments.push(said(9, bot, String((body as { body: string }).body)));
      return { status: 200, body: {} };
    };
    const { api } = await host(comments, { wrong });
    expect(await writeComment(api, pull, 'pass')).toEqual({ kind: 'unchanged' });
    expect(comments).toHaveLength(1);
  });
});

describe('a host that refuses', () => {
  const atList = (answer: Answer) => (seen: Seen) => (seen.path.startsWith(list) ? answer : undefined);
  const atPost = (answer: Answer) => (seen: Seen) => (seen.method === 'POST' ? answer : undefined);

  it.each([
    [401, atList, 'token is not valid'],
    [403, atPost, 'pull-requests: write'],
    [404, atList, 'this token cannot see'],
    [410, atPost, 'turned off'],
    [422, atPost, 'refuses the comment'],
  ] as const)('with %i is asked no second time', async (status, where, why) => {
    const wrong = where({ status, body: { message: 'No.\n::error::no' } });
    const { api, waits, calls } = await host([], { wrong });
    const outcome = await writeComment(api, pull, 'pass');
    expect(outcome).toMatchObject({ kind: 'not written', why: expect.stringContaining(why) });
    expect(JSON.stringify(outcome)).not.toContain('::error');
    expect(waits).toEqual([]);
    expect(calls().filter((call) => call.startsWith('POST')).length).toBeLessThanOrEqual(1);
  });

  it('with 429 is waited for as long as it asks', async () => {
    let refused = 0;
    const wrong = ({ method }: Seen): Answer | undefined => {
      if (method !== 'POST' || refused > 0) return undefined;
      refused += 1;
      return { status: 429, headers: { 'retry-after': '7' } };
    };
    const { api, waits, comments } = await host([], { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'created' });
    expect(waits).toEqual([7000]);
    expect(comments).toHaveLength(1);
  });

  // Source of the two sentences: the host's documentation of rate limits, and what clients report of them.
  it.each([
    'API rate limit exceeded for installation ID 7.',
    'You have exceeded a secondary rate limit. Please wait a few minutes before you try again.',
  ])(
    'with 403 and its rate limit in words alone (%s) is asked again after a minute, and once',
    async (message) => {
      const { api, waits } = await host([], { wrong: atPost({ status: 403, body: { message } }) });
      expect(await writeComment(api, pull, 'pass')).toMatchObject({
        kind: 'not written',
        why: expect.stringContaining('rate limit is reached'),
      });
      expect(waits).toEqual([60_000]);
    },
  );

  it('with 403 for a locked conversation says so', async () => {
    const message = 'Unable to create comment because issue is locked.';
    const { api, waits } = await host([], { wrong: atPost({ status: 403, body: { message } }) });
    const outcome = await writeComment(api, pull, 'pass');
    expect(outcome).toMatchObject({ kind: 'not written', why: expect.stringContaining('is locked') });
    expect(JSON.stringify(outcome)).not.toContain('permissions');
    expect(waits).toEqual([]);
  });

  it('with 429 for an hour is not waited for', async () => {
    const wrong = atPost({ status: 429, headers: { 'retry-after': '3600' } });
    const { api, waits } = await host([], { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({
      kind: 'not written',
      why: expect.stringContaining('rate limit'),
    });
    expect(waits).toEqual([]);
  });

  it('with 403 for its rate limit is asked again when the limit is reset, and given up', async () => {
    const wrong = atList({
      status: 403,
      headers: { 'x-ratelimit-remaining': '0', 'x-ratelimit-reset': '1' },
    });
    const { api, calls } = await host([], { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({
      kind: 'not written',
      why: expect.stringContaining('rate limit'),
    });
    expect(calls().filter((call) => call.includes(list))).toHaveLength(3);
  });

  it.each([500, 502, 503])('with %i again and again is given up', async (status) => {
    const { api, calls } = await host([], { wrong: atList({ status }) });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({
      kind: 'not written',
      why: expect.stringContaining(String(status)),
    });
    expect(calls().filter((call) => call.includes(list))).toHaveLength(3);
  });

  it('with 502 to a comment that it had kept gets no second one', async () => {
    let first = true;
    const kept: Stored[] = [];
    const wrong = ({ method, body }: Seen): Answer | undefined => {
      if (method !== 'POST' || !first) return undefined;
      first = false;
      kept.push(said(77, bot, String((body as { body: string }).body)));
      return { status: 502 };
    };
    const { api, comments } = await host(kept, { wrong });
    expect(await writeComment(api, pull, 'pass')).toEqual({ kind: 'unchanged' });
    expect(comments).toHaveLength(1);
  });

  it('by hanging up is given up', async () => {
    const { api, calls } = await host([], { wrong: () => 'hang up' });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({
      kind: 'not written',
      why: expect.stringContaining('cannot be reached'),
    });
    expect(calls()).toHaveLength(3);
  });

  it('to answer at all costs the job no more than twenty seconds', async () => {
    const { api, calls, waits } = await host([], { wrong: () => 'say nothing' });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({
      kind: 'not written',
      why: expect.stringMatching(/cannot be reached|does not answer/),
    });
    // One call is given up after 8 seconds, the next after 4, with waits of 1 and 4 between; a third is not made.
    expect([calls().length, waits]).toEqual([2, []]);
  });

  it('to answer what writes is looked at again, and given up', async () => {
    const { api, calls, comments } = await host([], {
      wrong: ({ method }) => (method === 'POST' ? 'say nothing' : undefined),
    });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'not written' });
    expect(calls().slice(0, 6)).toEqual([
      'GET /user',
      `GET ${list}?per_page=100`,
      `POST ${list}`,
      'GET /user',
      `GET ${list}?per_page=100`,
      `POST ${list}`,
    ]);
    expect(calls().filter((call) => call.startsWith('POST'))).toHaveLength(2);
    expect(comments).toEqual([]);
  });

  it.each([
    ['with nothing', { body: '' }],
    ['with 409', { status: 409, body: { message: 'Conflict' } }],
    ['with no JSON', { body: '[' }],
  ] as const)('%s in place of a list writes nothing', async (_, answer) => {
    const { api, calls } = await host([], { wrong: atList({ ...answer }) });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'not written' });
    expect(calls().some((call) => call.startsWith('POST'))).toBe(false);
  });

  it('by sending the token to another host is not obeyed', async () => {
    const elsewhere = await host();
    for (const status of [301, 302, 307, 308]) {
      const wrong = atList({ status, headers: { location: `${elsewhere.origin}/steal` } });
      const { api } = await host([], { wrong });
      expect(await writeComment(api, pull, 'pass')).toMatchObject({
        kind: 'not written',
        why: expect.stringContaining('another host'),
      });
    }
    const posted = await host([], {
      wrong: atPost({ status: 307, headers: { location: `${elsewhere.origin}/steal` } }),
    });
    expect(await writeComment(posted.api, pull, 'pass')).toMatchObject({ kind: 'not written' });
    expect(elsewhere.seen).toEqual([]);
  });

  it('because the repository was renamed is followed on its own ground', async () => {
    const wrong = (seen: Seen): Answer | undefined =>
      seen.path.startsWith(list)
        ? {
            status: seen.method === 'GET' ? 301 : 307,
            headers: { location: seen.path.replace('storage', 'estate') },
          }
        : undefined;
    const { api, comments, seen } = await host([], { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'created' });
    expect(comments).toHaveLength(1);
    const posted = seen.filter(({ method }) => method === 'POST');
    expect(posted.at(-1)).toMatchObject({ body: { body: `${marker}\npass` } });
  });

  it('with a list that is none writes nothing, for there may be a comment already', async () => {
    const { api, calls } = await host([], { wrong: atList({ body: { not: 'a list' } }) });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'not written' });
    expect(calls().some((call) => call.startsWith('POST'))).toBe(false);
  });

  it('with a next page on another host is not followed there with the token', async () => {
    const elsewhere = await host();
    const wrong = atList({ body: [], headers: { link: `<${elsewhere.origin}/steal>; rel="next"` } });
    const { api } = await host([], { wrong });
    expect(await writeComment(api, pull, 'pass')).toMatchObject({ kind: 'not written' });
    expect(elsewhere.seen).toEqual([]);
  });

  it('with pages without end is given up', async () => {
    let origin = '';
    const wrong = ({ path }: Seen): Answer | undefined =>
      path.startsWith(list)
        ? { body: [], headers: { link: `<${origin}${list}?page=1>; rel="next"` } }
        : undefined;
    const started = await host([], { wrong });
    origin = started.origin;
    expect(await writeComment(started.api, pull, 'pass')).toMatchObject({ kind: 'not written' });
    expect(started.seen.length).toBeLessThan(110);
  });
});
