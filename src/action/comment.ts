/**
 * One comment a pull request, over the host's REST API: found again by a marker, updated in place, never a second.
 *
 * Anybody can write the marker into a comment of their own, so only one by our own account is ever edited. A list
 * that cannot be read to its end is no proof that there is none, so then nothing is written. Nothing here can change
 * a verdict: what goes wrong is a sentence for the summary.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import type { PullRequest } from './events.ts';
import {
  type HostApi,
  type HostClient,
  hostClient,
  longestWait,
  propertyOf,
  RequestFailed,
} from './host-api.ts';
import { commentPages, commentsAPage } from './limits.ts';

/** Invisible in Markdown; the first line of the comment. */
export const marker = '<!-- ullage gate: one comment a pull request -->';

export interface CommentApi extends HostApi {
  /** Who writes, where the token's own account cannot be asked for. */
  readonly author: string;
  /** Waits so many milliseconds; the clock's if left out. */
  readonly wait?: (milliseconds: number) => Promise<unknown>;
}

export type CommentOutcome =
  | { readonly kind: 'created' | 'updated'; readonly caution: string | undefined }
  | { readonly kind: 'unchanged' }
  | { readonly kind: 'not written'; readonly why: string };

const attempts = 3;

/** Writes the comment, or tells why not. Each attempt begins by looking, for the one before may have been heard. */
export async function writeComment(
  api: CommentApi,
  pullRequest: PullRequest,
  text: string,
): Promise<CommentOutcome> {
  const wait = api.wait ?? sleep;
  const client = hostClient(api);
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await write(client, api.author, pullRequest, `${marker}\n${text}`);
    } catch (error) {
      if (!(error instanceof RequestFailed)) throw error;
      const { retryAfter, message } = error;
      if (retryAfter === undefined || retryAfter > longestWait || attempt === attempts) {
        return { kind: 'not written', why: message };
      }
      await wait(1000 * Math.max(retryAfter, 2 ** (attempt - 1)));
    }
  }
}

async function write(
  client: HostClient,
  usualAuthor: string,
  { repository, number }: PullRequest,
  body: string,
): Promise<CommentOutcome> {
  const [owner = '', repo = ''] = repository.split('/');
  const author = await accountOf(client, usualAuthor);
  const ours = await findOurs(client, { owner, repo, issue_number: number }, author);
  if (ours?.body === body) return { kind: 'unchanged' };
  if (ours !== undefined) {
    try {
      await client.request('PATCH /repos/{owner}/{repo}/issues/comments/{comment_id}', {
        owner,
        repo,
        comment_id: ours.id,
        body,
      });
      return { kind: 'updated', caution: undefined };
    } catch (error) {
      // Somebody deleted it in between.
      if (!(error instanceof RequestFailed) || error.answered !== 404) throw error;
    }
  }
  const created = await client.request('POST /repos/{owner}/{repo}/issues/{issue_number}/comments', {
    owner,
    repo,
    issue_number: number,
    body,
  });
  const writer = commentIn(created.data)?.author;
  const known = writer === undefined || writer === author;
  return {
    kind: 'created',
    caution: known
      ? undefined
      : `The comment is by ${writer} and not by ${author}: give the action comment-author: ${writer}, or the next run writes a second one.`,
  };
}

/** The account the token belongs to. The token of a workflow has none that can be asked for; then the input tells. */
async function accountOf(client: HostClient, usual: string): Promise<string> {
  try {
    const { data } = await client.request('GET /user');
    const login = propertyOf(data, 'login');
    return typeof login === 'string' ? login : usual;
  } catch (error) {
    if (error instanceof RequestFailed && error.kind === 'refused') return usual;
    throw error;
  }
}

interface Comment {
  readonly id: number;
  readonly author: string;
  readonly body: string;
}

interface Thread {
  readonly owner: string;
  readonly repo: string;
  readonly issue_number: number;
}

async function findOurs(client: HostClient, thread: Thread, author: string): Promise<Comment | undefined> {
  const pages = client.paginate.iterator('GET /repos/{owner}/{repo}/issues/{issue_number}/comments', {
    ...thread,
    per_page: commentsAPage,
  });
  let page = 0;
  for await (const { data } of pages) {
    page += 1;
    if (page > commentPages) {
      throw new RequestFailed(`the pull request has more than ${commentPages * commentsAPage} comments`);
    }
    const comments: unknown = data;
    if (!Array.isArray(comments))
      throw new RequestFailed('the host answered with something other than a list of comments');
    // Without regard to case, as the host takes account names.
    const ours = comments
      .map(commentIn)
      .find(
        (each) =>
          each?.author.toLowerCase() === author.toLowerCase() &&
          each.body.replace(/\r\n/g, '\n').startsWith(marker),
      );
    if (ours !== undefined) return ours;
  }
  return undefined;
}

function commentIn(value: unknown): Comment | undefined {
  const id = propertyOf(value, 'id');
  const body = propertyOf(value, 'body');
  const author = propertyOf(propertyOf(value, 'user'), 'login');
  if (typeof id !== 'number' || typeof author !== 'string') return undefined;
  return { id, author, body: typeof body === 'string' ? body : '' };
}
