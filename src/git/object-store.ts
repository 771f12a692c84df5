/**
 * Git objects through one long-lived `git cat-file --batch-command`, for both revisions and all of history.
 *
 * Requests end in NUL (`-z`), which Git has had since 2.38, so that an older one is found out by the first of them.
 * They are pipelined: what is asked for in one turn of the event loop goes to git in one write, and answers
 * come back in the same order. An object's size is asked for before its content, so that a huge file is refused
 * without being unpacked.
 */
import type { ChildProcessWithoutNullStreams } from 'node:child_process';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { cannotRun, gitSaid } from './process.ts';

/** The largest file read, in bytes: 8 MiB. A storage file of ten thousand volumes has about one. */
export const largestFile = 8 * 1024 * 1024;

/** The largest folder read, in bytes: about a million names. */
const largestFolder = 64 * 1024 * 1024;

export type ObjectHeader =
  | { readonly kind: 'present'; readonly id: string; readonly type: string; readonly size: number }
  | { readonly kind: 'missing' };

interface Content {
  readonly header: ObjectHeader;
  readonly bytes: Uint8Array;
}

type Wanted =
  | { readonly kind: 'header'; readonly settle: (answer: Outcome<ObjectHeader>) => void }
  | { readonly kind: 'content'; readonly settle: (answer: Outcome<Content>) => void };

const objectId = /^(?:[0-9a-f]{40}|[0-9a-f]{64})$/;

export const isObjectId = (text: string): boolean => objectId.test(text);

/** What says that an object is not here, and how to get it. */
export const missingObject = (what: string): Problem => ({
  message: `${what} is not in this clone, which was made without all of its objects`,
  advice:
    'Fetch all of them with `git fetch --refetch --no-filter origin`; in CI, check out without a filter.',
});

const { advice: fetchAll } = missingObject('');

/** Whether it says that an object is not here. */
export const isMissing = ({ advice }: Pick<Problem, 'advice'>): boolean => advice === fetchAll;

/** How git is started, and what is known of why it stopped. */
export interface ObjectProcess {
  readonly start: (args: readonly string[]) => ChildProcessWithoutNullStreams;
  /** Whether the git itself is what is wrong, and how. */
  readonly gitProblem: () => Promise<Problem | undefined>;
}

export class ObjectStore {
  readonly #git: ObjectProcess;
  readonly #limit: number;
  #process: ChildProcessWithoutNullStreams | undefined;
  /** Why no more is answered. */
  #broken: Problem | undefined;
  #said = '';
  #unsent: string[] = [];
  /** Asked for and not answered yet, oldest first, from `#next` on. */
  #wanted: Wanted[] = [];
  #next = 0;
  #chunks: Buffer[] = [];
  #held = 0;
  /** The header of the content that is coming in. */
  #header: Extract<ObjectHeader, { kind: 'present' }> | undefined;

  constructor(git: ObjectProcess, limit: number = largestFile) {
    this.#git = git;
    this.#limit = limit;
  }

  /** Type and size in bytes of an object. */
  header(id: string): Promise<Outcome<ObjectHeader>> {
    return new Promise((settle) => this.#ask('info', id, { kind: 'header', settle }));
  }

  /**
   * The commit that an object is or, being a tag, leads to; undefined where there is none.
   *
   * @param steps from there to another commit, in Git's revision syntax: `~2^1`
   */
  async commitAt(id: string, steps = ''): Promise<Outcome<string | undefined>> {
    if (!/^(?:[~^][0-9]*)*$/.test(steps)) return ok(undefined);
    const header = await new Promise<Outcome<ObjectHeader>>((settle) =>
      this.#ask('info', id, { kind: 'header', settle }, `${steps}^{commit}`),
    );
    if (!header.ok) return header;
    return ok(header.value.kind === 'present' ? header.value.id : undefined);
  }

  /**
   * An object's content.
   *
   * @param type what it must be: `blob`, `commit` or `tree`
   * @param what what it is called in a problem, such as a file's path
   */
  async read(id: string, type: string, what: string): Promise<Outcome<Uint8Array>> {
    const header = await this.header(id);
    if (!header.ok) return header;
    if (header.value.kind === 'missing') return err(missingObject(what));
    if (header.value.type !== type) {
      return err({
        message: `${what} is a ${header.value.type}, not a ${type}`,
        advice: 'Run `git fsck` in the repository.',
      });
    }
    const limit = type === 'tree' ? largestFolder : this.#limit;
    if (header.value.size > limit) return err(tooLarge(what, header.value.size, limit));
    const content = await new Promise<Outcome<Content>>((settle) =>
      this.#ask('contents', id, { kind: 'content', settle }),
    );
    if (!content.ok) return content;
    return content.value.header.kind === 'missing' ? err(missingObject(what)) : ok(content.value.bytes);
  }

  close(): void {
    this.#break({ message: 'the repository was closed while it was being read', advice: 'Try again.' });
    this.#process?.stdin.end();
    this.#process?.kill();
    this.#process = undefined;
  }

  #ask(command: 'info' | 'contents', id: string, wanted: Wanted, leadingTo = ''): void {
    // Anything but an id could be another command, or any other way of naming an object.
    if (!isObjectId(id)) {
      wanted.settle(
        err({
          message: `${JSON.stringify(id)} is not an object id`,
          advice: 'Run `git fsck` in the repository.',
        }),
      );
      return;
    }
    if (this.#broken !== undefined) {
      wanted.settle(err(this.#broken));
      return;
    }
    this.#wanted.push(wanted);
    this.#unsent.push(`${command} ${id}${leadingTo}\0`);
    if (this.#unsent.length === 1) setImmediate(() => this.#send());
  }

  #send(): void {
    if (this.#broken !== undefined || this.#unsent.length === 0) return;
    this.#process ??= this.#launch();
    this.#unsent.push('flush\0');
    this.#process.stdin.write(this.#unsent.join(''));
    this.#unsent = [];
  }

  #launch(): ChildProcessWithoutNullStreams {
    const child = this.#git.start(['cat-file', '--batch-command', '--buffer', '-z']);
    child.on('error', (error: NodeJS.ErrnoException) => this.#break(cannotRun(error.code ?? error.message)));
    // Writing to a git that has died; `close` says why it died.
    child.stdin.on('error', () => {});
    child.stderr.on('data', (chunk: Buffer) => {
      if (this.#said.length < 4096) this.#said += chunk.toString('utf8');
    });
    child.stdout.on('data', (chunk: Buffer) => this.#take(chunk));
    child.on('close', () => void this.#stopped());
    return child;
  }

  async #stopped(): Promise<void> {
    if (this.#broken !== undefined) return;
    const problem = await this.#git.gitProblem();
    this.#break(
      problem ?? {
        message: `git stopped while objects were being read: ${gitSaid(this.#said)}`,
        advice: 'Run `git fsck` in the repository and repair what it reports, or clone again.',
      },
    );
  }

  #break(problem: Problem): void {
    this.#broken ??= problem;
    const waiting = this.#wanted.slice(this.#next);
    this.#wanted = [];
    this.#next = 0;
    this.#unsent = [];
    for (const { settle } of waiting) settle(err(this.#broken));
  }

  #take(chunk: Buffer): void {
    this.#chunks.push(chunk);
    this.#held += chunk.length;
    // While a large content comes in there is nothing to look at, and joining each time would be quadratic.
    if (this.#header !== undefined && this.#held <= this.#header.size) return;
    let rest = this.#chunks.length === 1 ? chunk : Buffer.concat(this.#chunks, this.#held);
    for (;;) {
      const wanted = this.#wanted[this.#next];
      if (wanted === undefined) break;
      if (this.#header === undefined) {
        const end = rest.indexOf(0x0a);
        if (end === -1) break;
        const header = readHeader(rest.toString('latin1', 0, end));
        rest = rest.subarray(end + 1);
        if (header === undefined) {
          this.#break({
            message: 'git gave an answer that is not understood',
            advice: 'Run `git fsck` in the repository.',
          });
          return;
        }
        if (wanted.kind === 'header') {
          this.#answered();
          wanted.settle(ok(header));
        } else if (header.kind === 'missing') {
          this.#answered();
          wanted.settle(ok({ header, bytes: new Uint8Array() }));
        } else this.#header = header;
        continue;
      }
      const { size } = this.#header;
      if (rest.length <= size) break;
      const header = this.#header;
      this.#header = undefined;
      // A copy, so that one small file does not keep alive the whole chunk it came in.
      const bytes = Uint8Array.prototype.slice.call(rest, 0, size);
      rest = rest.subarray(size + 1);
      this.#answered();
      if (wanted.kind === 'content') wanted.settle(ok({ header, bytes }));
    }
    this.#chunks = rest.length === 0 ? [] : [rest];
    this.#held = rest.length;
  }

  #answered(): void {
    this.#next += 1;
    if (this.#next < 1024) return;
    this.#wanted = this.#wanted.slice(this.#next);
    this.#next = 0;
  }
}

export const tooLarge = (what: string, size: number, limit: number): Problem => ({
  message: `${what} has ${size} bytes, and a file of more than ${limit} is not read`,
  advice: 'Split it into several files, or move it out of the folders that ullage.yaml names.',
});

function readHeader(line: string): ObjectHeader | undefined {
  const [name = '', type = '', size, ...more] = line.split(' ');
  if (more.length > 0) return undefined;
  // What is missing is named as it was asked for.
  if (size === undefined) return type === 'missing' ? { kind: 'missing' } : undefined;
  return isObjectId(name) && /^\d+$/.test(size)
    ? { kind: 'present', id: name, type, size: Number(size) }
    : undefined;
}
