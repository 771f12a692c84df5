/**
 * One comment a pull request, over the host's REST API: found again by a marker, updated in place, never a second
 * that stays.
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
  let waited = 0;
  const client = hostClient(api);
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await write(client, api.author, pullRequest, `${marker}\n${text}`);
    } catch (error) {
      if (!(error instanceof RequestFailed)) throw error;
      const { retryAfter, message } = error;
      const seconds = Math.max(retryAfter ?? 0, 2 ** (attempt - 1));
      waited += seconds;
      if (retryAfter === undefined || waited > longestWait || attempt === attempts) {
        return { kind: 'not written', why: message };
      }
      await wait(1000 * seconds);
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
  const thread = { owner, repo, issue_number: number };
  const author = await accountOf(client, usualAuthor);
  const ours = await findOurs(client, thread, author);
  if (ours.length > 0) {
    const settled = await settle(client, thread, ours, body);
    // Undefined where somebody deleted it in between.
    if (settled !== undefined) return settled;
  }
  const created = await client.request('POST /repos/{owner}/{repo}/issues/{issue_number}/comments', {
    ...thread,
    body,
  });
  const id = propertyOf(created.data, 'id');
  if (Number(created.status) !== 201 || typeof id !== 'number') {
    throw new RequestFailed(
      `the host answered ${created.status} to a new comment, ${typeof id === 'number' ? 'which is not 201' : 'and without the id of one'}`,
      { kind: 'unavailable', answered: created.status, retryAfter: 0 },
    );
  }
  const writer = commentIn(created.data)?.author;
  if (writer !== undefined && writer !== author) {
    return {
      kind: 'created',
      caution: `The comment is by ${writer} and not by ${author}: give the action comment-author: ${writer}, or the next run writes a second one.`,
    };
  }
  const gone = new Set(ours.map((each) => each.id));
  await leaveOne(client, thread, author, { body, gone });
  return { kind: 'created', caution: undefined };
}

/** Another run may have written one at the same time: of several the oldest stays, whichever run comes to see them. */
async function leaveOne(
  client: HostClient,
  thread: Thread,
  author: string,
  { body, gone }: { readonly body: string; readonly gone: ReadonlySet<number> },
): Promise<void> {
  try {
    // A list may still have what has been found to be gone.
    const ours = (await findOurs(client, thread, author)).filter(({ id }) => !gone.has(id));
    if (ours.length > 1) await settle(client, thread, ours, body);
  } catch (error) {
    // The comment is written; the next run settles what this one could not.
    if (!(error instanceof RequestFailed)) throw error;
  }
}

/** Brings the oldest of our comments up to date and deletes the others; undefined where the oldest is gone. */
async function settle(
  client: HostClient,
  { owner, repo }: Thread,
  ours: readonly Comment[],
  body: string,
): Promise<CommentOutcome | undefined> {
  const [oldest, ...others] = [...ours].sort((a, b) => a.id - b.id);
  if (oldest === undefined) return undefined;
  for (const { id } of others) {
    await unlessGone(
      client.request('DELETE /repos/{owner}/{repo}/issues/comments/{comment_id}', {
        owner,
        repo,
        comment_id: id,
      }),
    );
  }
  if (oldest.body === body) return { kind: 'unchanged' };
  const updated = await unlessGone(
    client.request('PATCH /repos/{owner}/{repo}/issues/comments/{comment_id}', {
      owner,
      repo,
      comment_id: oldest.id,
      body,
    }),
  );
  return updated ? { kind: 'updated', caution: undefined } : undefined;
}

/** Whether what was asked for was done; not, where the comment is gone. */
async function unlessGone(request: Promise<unknown>): Promise<boolean> {
  try {
    await request;
    return true;
  } catch (error) {
    if (!(error instanceof RequestFailed) || error.answered !== 404) throw error;
    return false;
  }
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

/** All of ours, on whatever page: two runs at once may have written one each. */
async function findOurs(client: HostClient, thread: Thread, author: string): Promise<readonly Comment[]> {
  const pages = client.paginate.iterator('GET /repos/{owner}/{repo}/issues/{issue_number}/comments', {
    ...thread,
    per_page: commentsAPage,
  });
  const ours: Comment[] = [];
  let page = 0;
  for await (const { data } of pages) {
    page += 1;
    if (page > commentPages) {
      throw new RequestFailed(`the pull request has more than ${commentPages * commentsAPage} comments`);
    }
    const comments: unknown = data;
    if (!Array.isArray(comments))
      throw new RequestFailed('the host answered with something other than a list of comments');
    for (const value of comments) {
      const comment = commentIn(value);
      // Without regard to case, as the host takes account names.
      const isOurs =
        comment?.author.toLowerCase() === author.toLowerCase() &&
        comment.body.replace(/\r\n/g, '\n').startsWith(marker);
      if (comment !== undefined && isOurs) ours.push(comment);
    }
  }
  return ours;
}

function commentIn(value: unknown): Comment | undefined {
  const id = propertyOf(value, 'id');
  const body = propertyOf(value, 'body');
  const author = propertyOf(propertyOf(value, 'user'), 'login');
  if (typeof id !== 'number' || typeof author !== 'string') return undefined;
  return { id, author, body: typeof body === 'string' ? body : '' };
}
