/**
 * The host's REST API through the host's own client. It waits out limits and tries again what only reads; what writes
 * is tried once, since only who looks again can know whether the attempt before was heard. The token goes to the
 * API's own origin and to no other: not by a link to a next page, not by a redirect.
 */
import { randomUUID } from 'node:crypto';
import { Octokit } from '@octokit/core';
import { paginateRest } from '@octokit/plugin-paginate-rest';
import { retry } from '@octokit/plugin-retry';
import { throttling } from '@octokit/plugin-throttling';
import { clipped } from '../base/visible.ts';
import { version } from '../version.ts';

export interface HostApi {
  /** Such as https://api.github.com, without a slash at its end. */
  readonly url: string;
  readonly token: string;
  /** What counts as a second, in milliseconds: 1000 if left out. A test need not wait. */
  readonly second?: number;
}

/** How a request went wrong, in the reader's words. */
export class RequestFailed extends Error {
  /** Whether the host has answered for good, or may answer otherwise later. */
  readonly kind: 'refused' | 'unavailable';
  /** The status of the answer; undefined where there was none. */
  readonly answered: number | undefined;
  /** After how many seconds it may go better, where somebody looks first; undefined where waiting is of no use. */
  readonly retryAfter: number | undefined;

  constructor(
    message: string,
    {
      kind = 'refused',
      answered,
      retryAfter,
    }: Partial<Pick<RequestFailed, 'kind' | 'answered' | 'retryAfter'>> = {},
  ) {
    super(message);
    this.kind = kind;
    this.answered = answered;
    this.retryAfter = retryAfter;
  }
}

/** The longest wait for limits, one or all together, in seconds: a job's time is paid for. */
export const longestWait = 60;

/** How often a read that failed is tried again. */
const readRetries = 2;

/**
 * Seconds after which a request that is not answered is given up, and after which all of them together are. With the
 * waits before another attempt (1 and 4 seconds for what reads, 1 and 2 for what writes) that is 20 seconds at most.
 */
const longestSilence = { one: 8, together: 12 };

/** Seconds that an answer may take before the rest counts as silence; else a host that dawdles would be waited for. */
const promptly = 1;

const Client = Octokit.plugin(retry, throttling, paginateRest);

export type HostClient = InstanceType<typeof Client>;

/** A client for one conversation, of which every part answers within bounds. */
export function hostClient({ url, token, second = 1000 }: HostApi): HostClient {
  const goOn = (retryAfter: number, { method }: { readonly method?: unknown }, _: unknown, retries: number) =>
    method === 'GET' && retryAfter <= longestWait && retries < readRetries;
  const client = new Client({
    auth: token,
    baseUrl: url,
    userAgent: `ullage/${version}`,
    // What a host says of itself is no line of the job's log.
    log: { debug: ignore, info: ignore, warn: ignore, error: ignore },
    request: { fetch: withinBounds(url, second) },
    // A 429 is for the limits; of the others a second attempt would be refused as well.
    retry: {
      doNotRetry: [400, 401, 403, 404, 410, 422, 429, 451],
      retries: readRetries,
      retryAfterBaseValue: second,
    },
    throttle: {
      id: randomUUID(),
      retryAfterBaseValue: second,
      onRateLimit: goOn,
      onSecondaryRateLimit: goOn,
    },
  });
  client.hook.before('request', (options) => {
    options.headers['x-github-api-version'] = '2022-11-28';
    if (options.method !== 'GET') options.request.retries = 0;
  });
  // A list of nothing is `[]`. An answer that is empty otherwise, the client would take for one.
  client.hook.after('request', ({ data }, { method }) => {
    if (method === 'GET' && (typeof data !== 'object' || data === null)) {
      throw new RequestFailed('the host answered with something other than JSON');
    }
  });
  client.hook.error('request', (error, { method }) => {
    throw failed(error, method);
  });
  return client;
}

const ignore = (): void => {};

/** The statuses of a redirect that asks for the same request again, or, where it only reads, for another. */
const isRedirect = (status: number, method: string | undefined): boolean =>
  status === 307 || status === 308 || ((status === 301 || status === 302) && method === 'GET');

const mostRedirects = 5;

/** Asks the API's own origin and no other, and waits for answers no longer than a job should. */
function withinBounds(api: string, second: number): typeof fetch {
  const { origin } = new URL(api);
  let left = longestSilence.together * second;
  return async (input, init) => {
    let target = new URL(String(input));
    for (let redirects = 0; ; redirects += 1) {
      if (target.origin !== origin) {
        throw new RequestFailed(`the host refers to another host, ${clipped(target.origin, 200)}`);
      }
      if (left <= 0) throw new RequestFailed('the host does not answer', { kind: 'unavailable' });
      const begun = performance.now();
      let response: Response;
      let body: ArrayBuffer;
      try {
        const signal = AbortSignal.timeout(Math.ceil(Math.min(left, longestSilence.one * second)));
        response = await fetch(target, { ...init, redirect: 'manual', signal });
        body = await response.arrayBuffer();
      } catch (error) {
        left -= performance.now() - begun;
        throw error;
      }
      left -= Math.max(0, performance.now() - begun - promptly * second);
      const location = isRedirect(response.status, init?.method) ? response.headers.get('location') : null;
      if (location === null || redirects === mostRedirects) {
        const { status, headers } = response;
        return new Response(body.byteLength === 0 ? null : body, { status, headers });
      }
      target = new URL(location, target);
    }
  };
}

/** What a value holds under a name; undefined where it holds nothing of its own under it. */
export const propertyOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null
    ? Object.getOwnPropertyDescriptor(value, key)?.value
    : undefined;

const whys: Readonly<Record<number, string>> = {
  401: 'the token is not valid',
  403: 'the token may not write comments; the job needs `pull-requests: write` under `permissions:`, and a run for a fork is never given it',
  404: 'this token cannot see the pull request',
  410: 'comments are turned off',
  422: 'the host refuses the comment',
};

function failed(error: unknown, method: string): RequestFailed {
  if (error instanceof RequestFailed) return error;
  if (error instanceof Error && error.cause instanceof RequestFailed) return error.cause;
  const response = propertyOf(error, 'response');
  const status = propertyOf(response, 'status');
  const reads = method === 'GET';
  const retryAfterWrite = (seconds: number): number | undefined => (reads ? undefined : seconds);
  if (typeof status !== 'number') {
    const reason = clipped(error instanceof Error ? error.message : String(error), 200);
    return new RequestFailed(`the host cannot be reached (${reason})`, {
      kind: 'unavailable',
      retryAfter: retryAfterWrite(0),
    });
  }
  const said = propertyOf(propertyOf(response, 'data'), 'message');
  const answer = `${method} answered ${status}${typeof said === 'string' ? `, ${clipped(said, 200).replace(/\.$/, '')}` : ''}`;
  const header = (name: string): string | undefined => {
    const value = propertyOf(propertyOf(response, 'headers'), name);
    return value === undefined ? undefined : String(value);
  };
  const usedUp = header('x-ratelimit-remaining') === '0';
  const toldInWords = /\brate limit/i.test(String(said));
  if (status === 429 || (status === 403 && (usedUp || toldInWords || header('retry-after') !== undefined))) {
    // What the client knows for a limit it has waited for, where waiting is of use.
    const waitedFor = usedUp || /\bsecondary rate\b/i.test(String(said));
    const isTimed = usedUp || header('retry-after') !== undefined;
    const seconds = isTimed || !toldInWords ? secondsToWait(header) : untimedWait;
    return new RequestFailed(`the host's rate limit is reached (${answer})`, {
      kind: 'unavailable',
      answered: status,
      retryAfter: waitedFor ? retryAfterWrite(seconds) : seconds,
    });
  }
  if (status === 403 && isLocked(said)) {
    return new RequestFailed(
      `the conversation of the pull request is locked, and this token may not comment on it; unlock it, or read the summary (${answer})`,
      { answered: status },
    );
  }
  if (status >= 500) {
    return new RequestFailed(`the host has a fault (${answer})`, {
      kind: 'unavailable',
      answered: status,
      retryAfter: retryAfterWrite(secondsToWait(header)),
    });
  }
  return new RequestFailed(`${whys[status] ?? 'the host refuses the request'} (${answer})`, {
    answered: status,
  });
}

/**
 * Seconds to wait for a limit that is told in words alone. The host's documentation of its REST API, on rate limits:
 * without a header to go by, wait for at least one minute.
 */
const untimedWait = 60;

/** The host's own message, as programs have reported it: "Unable to create comment because issue is locked." */
const isLocked = (said: unknown): boolean => /\bis locked\b/i.test(String(said));

/** Seconds to wait, as the host asks for; RFC 9110 has it in seconds or as a date. */
function secondsToWait(header: (name: string) => string | undefined): number {
  const after = header('retry-after');
  const reset = header('x-ratelimit-reset') ?? '';
  const until = (milliseconds: number): number => Math.max(0, (milliseconds - Date.now()) / 1000) || 0;
  if (after !== undefined) return /^\d+$/.test(after) ? Number(after) : until(Date.parse(after));
  return header('x-ratelimit-remaining') === '0' && /^\d+$/.test(reset) ? until(Number(reset) * 1000) : 0;
}
