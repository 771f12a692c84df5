/**
 * One comment a pull request, over the host's REST API: found again by a marker, updated in place, never a second.
 *
 * Anybody can write the marker into a comment of their own, so only one by our own account is ever edited. A list
 * that cannot be read to its end is no proof that there is none, so then nothing is written. Nothing here can change
 * a verdict: what goes wrong is a sentence for the summary.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { clipped } from '../base/visible.ts';
import { version } from '../version.ts';
import type { PullRequest } from './events.ts';
import { commentPages, commentsAPage } from './limits.ts';

/** Invisible in Markdown; the first line of the comment. */
export const marker = '<!-- ullage gate: one comment a pull request -->';

export interface CommentApi {
  /** Such as https://api.github.com, without a slash at its end. */
  readonly url: string;
  readonly token: string;
  /** Who writes, where the token's own account cannot be asked for. */
  readonly author: string;
  /** Waits so many milliseconds; the clock's if left out. */
  readonly wait?: (milliseconds: number) => Promise<unknown>;
}

export type CommentOutcome =
  | { readonly kind: 'created' | 'updated'; readonly caution: string | undefined }
  | { readonly kind: 'unchanged' }
  | { readonly kind: 'not written'; readonly why: string };

interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly body: unknown;
}

/** How a request went wrong, and whether it may go better later. */
class RequestFailed extends Error {
  readonly retryAfter: number | undefined;
  readonly status: number;

  constructor(message: string, status: number, retryAfter: number | undefined) {
    super(message);
    this.status = status;
    this.retryAfter = retryAfter;
  }
}

const attempts = 3;
/** The longest single wait, in milliseconds: a job's time is paid for. */
const longestWait = 60_000;
const requestTimeout = 15_000;

/** Writes the comment, or tells why not. Each attempt begins by looking, for the one before may have been heard. */
export async function writeComment(
  api: CommentApi,
  pullRequest: PullRequest,
  text: string,
): Promise<CommentOutcome> {
  const wait = api.wait ?? sleep;
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await write(api, pullRequest, `${marker}\n${text}`);
    } catch (error) {
      if (!(error instanceof RequestFailed)) throw error;
      const { retryAfter, message } = error;
      if (retryAfter === undefined || retryAfter > longestWait || attempt === attempts) {
        return { kind: 'not written', why: message };
      }
      await wait(Math.max(retryAfter, 1000 * 2 ** (attempt - 1)));
    }
  }
}

async function write(
  api: CommentApi,
  { repository, number }: PullRequest,
  body: string,
): Promise<CommentOutcome> {
  const issues = `${api.url}/repos/${repository.split('/').map(encodeURIComponent).join('/')}/issues`;
  const author = await accountOf(api);
  const ours = await findOurs(api, `${issues}/${number}/comments`, author);
  if (ours?.body === body) return { kind: 'unchanged' };
  if (ours !== undefined) {
    try {
      await request(api, 'PATCH', `${issues}/comments/${ours.id}`, { body });
      return { kind: 'updated', caution: undefined };
    } catch (error) {
      // Somebody deleted it in between.
      if (!(error instanceof RequestFailed) || error.status !== 404) throw error;
    }
  }
  const created = await request(api, 'POST', `${issues}/${number}/comments`, { body });
  const writer = commentIn(created.body)?.author;
  const known = writer === undefined || writer === author;
  return {
    kind: 'created',
    caution: known
      ? undefined
      : `The comment is by ${writer} and not by ${author}: give the action comment-author: ${writer}, or the next run writes a second one.`,
  };
}

/** The account the token belongs to. The token of a workflow has none that can be asked for; then the input tells. */
async function accountOf(api: CommentApi): Promise<string> {
  try {
    const { body } = await request(api, 'GET', `${api.url}/user`);
    const login = propertyOf(body, 'login');
    return typeof login === 'string' ? login : api.author;
  } catch (error) {
    if (error instanceof RequestFailed && error.retryAfter === undefined) return api.author;
    throw error;
  }
}

interface Comment {
  readonly id: number;
  readonly author: string;
  readonly body: string;
}

async function findOurs(api: CommentApi, list: string, author: string): Promise<Comment | undefined> {
  let next: string | undefined = `${list}?per_page=${commentsAPage}`;
  for (let page = 1; next !== undefined; page += 1) {
    if (page > commentPages) {
      throw new RequestFailed(
        `the pull request has more than ${commentPages * commentsAPage} comments`,
        0,
        undefined,
      );
    }
    const { body, headers }: Answer = await request(api, 'GET', next);
    if (!Array.isArray(body))
      throw new RequestFailed('the host answered with no list of comments', 0, undefined);
    // Without regard to case, as the host takes account names.
    const ours = body
      .map(commentIn)
      .find(
        (each) =>
          each?.author.toLowerCase() === author.toLowerCase() &&
          each.body.replace(/\r\n/g, '\n').startsWith(marker),
      );
    if (ours !== undefined) return ours;
    next = nextPage(headers.get('link'), list);
  }
  return undefined;
}

/** The next page of a list, as RFC 8288 links it. The token goes to no other host than the one the list is on. */
function nextPage(link: string | null, list: string): string | undefined {
  const target = link === null ? undefined : /<([^<>]*)>\s*;[^,<]*\brel="?next\b/.exec(link)?.[1];
  if (target === undefined) return undefined;
  const url = new URL(target, list);
  if (url.origin === new URL(list).origin) return url.href;
  throw new RequestFailed('the host links the next page of comments on another host', 0, undefined);
}

function commentIn(value: unknown): Comment | undefined {
  const id = propertyOf(value, 'id');
  const body = propertyOf(value, 'body');
  const author = propertyOf(propertyOf(value, 'user'), 'login');
  if (typeof id !== 'number' || typeof author !== 'string') return undefined;
  return { id, author, body: typeof body === 'string' ? body : '' };
}

function propertyOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null
    ? Object.getOwnPropertyDescriptor(value, key)?.value
    : undefined;
}

async function request(api: CommentApi, method: string, url: string, body?: object): Promise<Answer> {
  let response: Response;
  let text: string;
  try {
    response = await fetch(url, {
      method,
      headers: {
        accept: 'application/vnd.github+json',
        authorization: `Bearer ${api.token}`,
        'user-agent': `ullage/${version}`,
        'x-github-api-version': '2022-11-28',
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      signal: AbortSignal.timeout(requestTimeout),
    });
    text = await response.text();
  } catch (error) {
    const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new RequestFailed(`the host cannot be reached (${clipped(reason, 200)})`, 0, 0);
  }
  const answer = { status: response.status, headers: response.headers, body: parsed(text) };
  if (!response.ok) throw failed(method, answer);
  return answer;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function failed(method: string, { status, headers, body }: Answer): RequestFailed {
  const said = propertyOf(body, 'message');
  const answer = `${method} answered ${status}${typeof said === 'string' ? `, ${clipped(said, 200)}` : ''}`;
  const limited = status === 429 || (status === 403 && isLimited(headers));
  if (limited)
    return new RequestFailed(`the host's rate limit is reached (${answer})`, status, waitOf(headers));
  if (status >= 500)
    return new RequestFailed(`the host is out of order (${answer})`, status, waitOf(headers));
  const why: Readonly<Record<number, string>> = {
    401: 'the token is not valid',
    403: 'the token may not write comments: the job needs `permissions: pull-requests: write`, and a run for a fork is never given it',
    404: 'the pull request is not there for this token',
    410: 'comments are turned off',
    422: 'the host refuses the comment',
  };
  return new RequestFailed(`${why[status] ?? 'the host refuses the request'} (${answer})`, status, undefined);
}

const isLimited = (headers: Headers): boolean =>
  headers.has('retry-after') || headers.get('x-ratelimit-remaining') === '0';

/** Milliseconds to wait, as the host asks for; RFC 9110 has it in seconds or as a date. */
function waitOf(headers: Headers): number {
  const after = headers.get('retry-after');
  if (after !== null)
    return /^\d+$/.test(after) ? Number(after) * 1000 : Math.max(0, Date.parse(after) - Date.now()) || 0;
  const reset = headers.get('x-ratelimit-reset');
  const limited = headers.get('x-ratelimit-remaining') === '0';
  return limited && reset !== null && /^\d+$/.test(reset)
    ? Math.max(0, Number(reset) * 1000 - Date.now())
    : 0;
}
