import { existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { marker } from '../../src/action/comment.ts';
import { runGate } from '../../src/cli/gate.ts';
import type { Files } from '../repository.ts';
import {
  bundledAction,
  checkedOut,
  type Hosted,
  hosted,
  office,
  payloadOf,
  plates,
  pullRequestPayload,
  type Ran,
} from './run.ts';

const { step, onPullRequest } = bundledAction();

const tooDear = plates('60 GiB');
const cheap = plates('52 GiB');

/** The two that most tests are about, made once: a checkout of either never writes to it. */
const once = (make: () => Hosted): (() => Hosted) => {
  let made: Hosted | undefined;
  return () => {
    made ??= make();
    return made;
  };
};
const dear = once(() => hosted(tooDear));
const modest = once(() => hosted(cheap));

const named = (ran: Ran, name: string) => ran.commands.filter((command) => command.name === name);

describe('a pull request', () => {
  it('that is over a limit fails, at its line, in the summary and in the outputs', async () => {
    const ran = await onPullRequest(dear());
    expect(ran.code).toBe(1);
    expect(ran.errors).toBe('');
    expect(ran.outputs).toEqual({
      verdict: 'fail',
      before: '4.25',
      after: '4.70',
      difference: '0.45',
      currency: 'EUR',
      errors: '1',
      warnings: '0',
      notes: '0',
      reports: '',
    });
    expect(ran.summary).toContain('imagery');
    const [verdict, finding, ...more] = named(ran, 'error');
    expect(verdict?.message).toMatch(/^fail: /);
    expect(finding?.properties).toMatchObject({
      title: 'imagery-limit: error',
      file: 'storage/imagery.yaml',
    });
    expect(more).toEqual([]);
  });

  it('that is within its limits passes, and says what it costs', async () => {
    const ran = await onPullRequest(modest());
    expect(ran.code).toBe(0);
    expect(ran.outputs).toMatchObject({ verdict: 'pass', before: '4.25', after: '4.34', difference: '0.09' });
    expect(named(ran, 'error')).toEqual([]);
    expect(ran.summary).toContain('pass');
  });

  it('that cannot be read is not judged, and the line is shown', async () => {
    const ran = await onPullRequest(hosted(plates('60')));
    expect(ran.code).toBe(2);
    expect(ran.outputs).toEqual({ verdict: 'not judged', reports: '' });
    expect(named(ran, 'error').map(({ properties }) => properties.line)).toEqual([undefined, '7']);
    expect(ran.summary).toContain('storage/imagery.yaml');
  });

  it('gets the same JSON from the action as from the command line', async () => {
    for (const proposal of [tooDear, cheap, plates('60')]) {
      const pull = hosted(proposal);
      const checkout = checkedOut(pull.origin, pull.merge, { depth: 0 });
      const ran = await onPullRequest(pull, {
        checkout,
        inputs: { reports: 'json=out/gate.json\nsarif=out/gate.sarif\nhtml=out/gate.html' },
      });
      expect(ran.outputs.reports).toBe('out/gate.json\nout/gate.sarif\nout/gate.html');
      const { output, code } = await runGate({
        repo: checkout.dir,
        base: pull.base,
        head: pull.merge,
        format: 'json',
        report: [],
        failOn: 'error',
      });
      expect(readFileSync(join(checkout.dir, 'out/gate.json'), 'utf8')).toBe(output);
      // The same page as the command line writes, with the lines and the estate that the judgement does not hold.
      const page = await runGate({
        repo: checkout.dir,
        base: pull.base,
        head: pull.merge,
        format: 'html',
        report: [],
        failOn: 'error',
      });
      expect(readFileSync(join(checkout.dir, 'out/gate.html'), 'utf8')).toBe(page.output);
      expect(page.output.includes('class="estate"')).toBe(code !== 2);
      expect(ran.summary).toContain('`out/gate.html`');
      expect(ran.code).toBe(code);
      expect(ran.summary).toContain(ran.outputs.verdict);
    }
  });

  it('with warnings fails where the workflow is stricter', async () => {
    const policy = String(office['policies/storage.yaml']).replace(
      'limit: "4.50"',
      'limit: "9.00", warn-from: 0.5',
    );
    const pull = hosted(tooDear, { ...office, 'policies/storage.yaml': policy });
    expect((await onPullRequest(pull)).code).toBe(0);
    expect((await onPullRequest(pull, { inputs: { 'fail-on': 'warning' } })).code).toBe(1);
  });
});

describe('a pull request that would judge itself', () => {
  const policy = String(office['policies/storage.yaml']);
  const prices = String(office['prices/2026.yaml']);

  it.each<[string, Files]>([
    ['raises its own limit', { 'policies/storage.yaml': policy.replace('4.50', '450.00') }],
    ['drops the policy', { 'policies/storage.yaml': 'rules: []\n' }],
    ['makes what it buys cheap', { 'prices/2026.yaml': prices.replace('0.045', '0.001') }],
    [
      'brings its own waiver',
      {
        'waivers/mine.yaml':
          'waivers:\n  - { rule: imagery-limit, subject: imagery, reason: I say so, approved-by: me, from: 2026-01-01, until: 2099-01-01 }\n',
      },
    ],
  ])('%s and fails all the same', async (_, files) => {
    const ran = await onPullRequest(hosted({ ...tooDear, ...files }));
    expect(ran.code).toBe(1);
    expect(ran.outputs.verdict).toBe('fail');
  });

  // Main could judge nothing after such a merge, so that neither a pass nor a fail would be worth anything.
  it('moves the policy away, and is not judged', async () => {
    const away = { 'ullage.yaml': 'currency: EUR\npaths: { policies: elsewhere }\n' };
    const ran = await onPullRequest(hosted({ ...tooDear, ...away }));
    expect(ran.code).toBe(2);
    expect(ran.outputs.verdict).toBe('not judged');
    expect(ran.summary).toContain('the branch deletes the last rule pack');
  });

  it('edits the workflow’s inputs to another base, head and day, and fails all the same', async () => {
    const pull = dear();
    const ran = await onPullRequest(pull, {
      inputs: { base: pull.head, head: pull.base, now: '2001-01-01' },
    });
    expect(ran.code).toBe(1);
    for (const name of ['base', 'head', 'now'])
      expect(ran.summary).toContain(`The input ${name} has no effect`);
  });

  it('points the action at another repository, and is not judged', async () => {
    const other = modest();
    const checkout = checkedOut(other.origin, other.merge);
    const ran = await onPullRequest(dear(), { checkout });
    expect(ran.code).toBe(2);
  });

  it.each([{ 'fail-on': 'never' }, { reports: 'pdf=out/x.pdf' }])(
    'gives an input that is none, and is not judged: %j',
    async (inputs) => {
      const ran = await onPullRequest(modest(), { inputs });
      expect(ran.code).toBe(2);
      expect(ran.outputs.verdict).toBe('not judged');
      expect(named(ran, 'error').length).toBeGreaterThan(0);
    },
  );
});

describe('a pull request from a fork', () => {
  it('without a token gets its verdict in the summary and annotations, and its exit code', async () => {
    const pull = dear();
    const payload = pullRequestPayload(pull, {
      pull_request: { head: { repo: { full_name: 'somebody/storage' } } },
    });
    const ran = await onPullRequest(pull, { payload, inputs: { comment: 'true' } });
    expect(ran.code).toBe(1);
    expect(ran.outputs.verdict).toBe('fail');
    expect(named(ran, 'error')).toHaveLength(2);
    expect(ran.summary).toContain('imagery-limit');
    expect(ran.summary).toContain('the action was given no token');
  });
});

describe('the comment', () => {
  /** A host that answers every request with one status, or keeps what it is sent. */
  async function host(status: number | undefined) {
    const seen: {
      readonly method: string;
      readonly url: string;
      readonly body: string;
      readonly token: string;
    }[] = [];
    const server = createServer((request, response) => {
      let body = '';
      request.on('data', (chunk: Buffer) => {
        body += chunk.toString('utf8');
      });
      request.on('end', () => {
        const { method = '', url = '', headers } = request;
        seen.push({ method, url, body, token: headers.authorization ?? '' });
        const user = url === '/api/v3/user';
        const answer = user
          ? {}
          : method === 'GET'
            ? []
            : { id: 1, user: { login: 'github-actions[bot]' }, body };
        response.writeHead(status ?? (user ? 403 : method === 'POST' ? 201 : 200), {
          'content-type': 'application/json',
        });
        response.end(JSON.stringify(answer));
      });
    });
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    const address = server.address();
    if (address === null || typeof address === 'string') throw new Error('the server has a port');
    return { url: `http://127.0.0.1:${address.port}/api/v3`, seen, close: () => server.close() };
  }

  it('goes to the repository of the pull request, and the log never shows the token', async () => {
    const { url, seen, close } = await host(undefined);
    const inputs = { comment: 'true', token: 'a-secret-token' };
    const ran = await onPullRequest(dear(), { inputs, environment: { GITHUB_API_URL: url } });
    close();
    expect(ran.code).toBe(1);
    expect(seen.map(({ method, url: path }) => `${method} ${path}`)).toEqual([
      'GET /api/v3/user',
      'GET /api/v3/repos/Codertocat/Hello-World/issues/2/comments?per_page=100',
      'POST /api/v3/repos/Codertocat/Hello-World/issues/2/comments',
      'GET /api/v3/repos/Codertocat/Hello-World/issues/2/comments?per_page=100',
    ]);
    for (const { token } of seen) expect(token).toBe('token a-secret-token');
    const { body } = JSON.parse(seen[2]?.body ?? '{}');
    expect(body.startsWith(`${marker}\n## `)).toBe(true);
    expect(body).toContain('imagery-limit');
    expect(ran.summary).not.toContain('stands in for the comment');
    const log = ran.log.replaceAll(/^::add-mask::.*$/gm, '');
    expect(log).not.toContain('a-secret-token');
    expect(log).not.toContain(Buffer.from('x-access-token:a-secret-token').toString('base64'));
    expect(named(ran, 'add-mask')).toHaveLength(2);
    expect(ran.summary).not.toContain('a-secret-token');
  });

  it('that the token may not write says which permission is missing, as it is written', async () => {
    const { url, close } = await host(403);
    const inputs = { comment: 'true', token: 'a-secret-token' };
    const ran = await onPullRequest(modest(), { inputs, environment: { GITHUB_API_URL: url } });
    close();
    expect(ran.code).toBe(0);
    expect(ran.summary).toContain('the job needs `pull-requests: write` under `permissions:`, and a run');
  });

  // Each answer by itself is in comment.test.ts.
  it.each([404, 503])(
    'that a host refuses with %i changes no verdict, and the summary says so',
    async (status) => {
      const { url, close } = await host(status);
      const [failing, passing] = await Promise.all(
        [tooDear, cheap].map((files) =>
          onPullRequest(hosted(files), {
            inputs: { comment: 'true', token: 'a-secret-token' },
            environment: { GITHUB_API_URL: url },
          }),
        ),
      );
      close();
      expect([failing?.code, passing?.code]).toEqual([1, 0]);
      for (const ran of [failing, passing]) expect(ran?.summary).toContain('stands in for the comment');
    },
  );
});

describe('other events', () => {
  it('a push to main is judged from what main was', async () => {
    const { origin, base, merge } = dear();
    const checkout = checkedOut(origin, merge, { ref: 'origin/main' });
    const payload = payloadOf(
      'push',
      { ref: 'refs/heads/main', before: base, after: merge, repository: { default_branch: 'main' } },
      ({ ref }) => String(ref).startsWith('refs/heads/'),
    );
    const ran = await step({ workspace: checkout.dir, event: 'push', payload, sha: merge });
    expect(ran).toMatchObject({ code: 1, outputs: { verdict: 'fail', difference: '0.45' } });
  });

  it('a merge group is judged before it lands', async () => {
    const { origin, base, merge } = modest();
    const checkout = checkedOut(origin, merge, { ref: 'origin/queue' });
    const payload = payloadOf('merge_group', { merge_group: { base_sha: base, head_sha: merge } });
    const ran = await step({ workspace: checkout.dir, event: 'merge_group', payload, sha: merge });
    expect(ran).toMatchObject({ code: 0, outputs: { verdict: 'pass', difference: '0.09' } });
  });

  it('a run started by hand judges a branch as of a day', async () => {
    const { origin, base } = dear();
    const checkout = checkedOut(origin, base, { ref: 'origin/main' });
    const payload = payloadOf('workflow_dispatch', { ref: 'refs/heads/main' });
    const inputs = { head: 'proposal', now: '2026-11-20', reports: 'json=out/gate.json' };
    const ran = await step({
      workspace: checkout.dir,
      event: 'workflow_dispatch',
      payload,
      sha: base,
      inputs,
    });
    expect(ran.code).toBe(1);
    expect(readFileSync(join(checkout.dir, 'out/gate.json'), 'utf8')).toContain('"on": "2026-11-20"');
  });

  it.each([
    ['an event about no change', 'issues', payloadOf('issues')],
    ['a payload that is none', 'pull_request', 'nothing'],
    ['no event at all', '', {}],
  ])('%s is not judged', async (_, event, payload) => {
    const ran = await onPullRequest(modest(), { event, payload });
    expect(ran.code).toBe(2);
    expect(ran.outputs.verdict).toBe('not judged');
    expect(ran.log).not.toMatch(/^\s+at /m);
  });

  it('a checkout that is none is not judged', async () => {
    const ran = await onPullRequest(modest(), { inputs: { path: 'no/such/folder' } });
    expect(ran).toMatchObject({ code: 2, outputs: { verdict: 'not judged' } });
    expect(ran.errors).toBe('');
  });
});

describe('hostile input', () => {
  const bad = 'not: [an, estate\n';
  const names = [
    'storage/::error::owned.yaml',
    'storage/a\n::set-output name=verdict::pass.yaml',
    'storage/b\r::add-mask::e.yaml',
    'storage/%0A::stop-commands::x.yaml',
    'storage/##[error]owned.yaml',
    'storage/c,line=1,title=owned.yaml',
    'storage/\u202Elmay.yaml',
  ];

  it('in file names becomes no command, no output and no verdict', async () => {
    const files = Object.fromEntries(names.map((name) => [name, bad]));
    const ran = await onPullRequest(hosted({ ...tooDear, ...files }), {
      inputs: { reports: 'markdown=out/gate.md' },
    });
    expect(ran.code).toBe(2);
    expect(ran.outputs).toEqual({ verdict: 'not judged', reports: 'out/gate.md' });
    expect([...new Set(ran.commands.map(({ name }) => name))]).toEqual(['error']);
    // A name reaches the host whole, what cannot be seen in it spelt out.
    const spelt = (name: string): string =>
      name.replace(/[\n\r\u202E]/g, (each) => `\\u{${each.charCodeAt(0).toString(16)}}`);
    const annotated = named(ran, 'error').flatMap(({ properties }) => properties.file ?? []);
    expect(annotated.sort()).toEqual(names.map(spelt).sort());
    for (const { properties } of named(ran, 'error')) {
      expect(Object.keys(properties).every((key) => ['title', 'file', 'line', 'col'].includes(key))).toBe(
        true,
      );
    }
  });

  it('in the printed report would be no command even without the host told to stop', async () => {
    const files = Object.fromEntries(names.map((name) => [name, bad]));
    const ran = await onPullRequest(hosted({ ...tooDear, ...files }));
    const printed = /^::stop-commands::(.*)$/m.exec(ran.log)?.[1] ?? '';
    const between = ran.log.slice(
      ran.log.indexOf(printed) + printed.length,
      ran.log.lastIndexOf(`::${printed}::`),
    );
    expect(between).toContain('owned.yaml');
    expect(between.split(/[\r\n]/).filter((line) => line.trimStart().startsWith('::'))).toEqual([]);
    expect(between).not.toContain('##[');
  });

  it('in a commit’s own files writes no report through a link, nor out of the workspace', async () => {
    const pull = modest();
    for (const path of ['link/gate.json', 'gate.json', '../gate.json']) {
      const checkout = checkedOut(pull.origin, pull.merge);
      const outside = join(checkout.dir, '.git', 'outside');
      mkdirSync(outside);
      writeFileSync(join(outside, 'target'), 'as it was');
      symlinkSync(path.startsWith('link') ? '/var/tmp' : join(outside, 'target'), join(checkout.dir, 'link'));
      symlinkSync(join(outside, 'target'), join(checkout.dir, 'gate.json'));
      const ran = await onPullRequest(pull, { checkout, inputs: { reports: `json=${path}` } });
      expect(ran.code).toBe(2);
      expect(ran.outputs).toMatchObject({ verdict: 'pass', reports: '' });
      expect(readFileSync(join(outside, 'target'), 'utf8')).toBe('as it was');
      expect(existsSync('/var/tmp/gate.json')).toBe(false);
      expect(named(ran, 'error')[0]?.message).toContain('outside of the workspace');
    }
  });

  it('in the environment steers no git', async () => {
    const other = modest();
    const environment = {
      GIT_DIR: join(other.origin.dir, '.git'),
      GIT_CONFIG_COUNT: '1',
      GIT_CONFIG_KEY_0: 'core.sshCommand',
      GIT_CONFIG_VALUE_0: 'touch ran',
      GIT_EXTERNAL_DIFF: 'touch ran',
    };
    const pull = dear();
    const checkout = checkedOut(pull.origin, pull.merge);
    const ran = await onPullRequest(pull, { checkout, environment });
    expect(ran.code).toBe(1);
    expect(checkout.git('status', '--porcelain')).toBe('');
  });

  it('leaves the checkout as it was', async () => {
    const pull = dear();
    const checkout = checkedOut(pull.origin, pull.merge);
    const refs = checkout.git('for-each-ref');
    const fetched = join(checkout.dir, '.git', 'FETCH_HEAD');
    const before = readFileSync(fetched, 'utf8');
    await onPullRequest(pull, { checkout });
    expect(checkout.git('for-each-ref')).toBe(refs);
    expect(checkout.git('status', '--porcelain')).toBe('');
    expect(readFileSync(fetched, 'utf8')).toBe(before);
  });
});
