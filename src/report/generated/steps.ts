/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The day of the judgement.
 */
export type Date = string;
export type Id = string;
/**
 * A full date as RFC 3339 writes it, such as 2026-11-20.
 */
export type Date1 = string;
export type Number = number;
/**
 * A full date as RFC 3339 writes it, such as 2026-11-20.
 */
export type Date2 = string;

/**
 * What `ullage steps --format json` prints. Where nothing could be judged it prints the judgement (judgement.json).
 */
export interface StepsReport {
  /**
   * The version of this format. With the same number keys may be added; none is taken away, and none changes its meaning.
   */
  format: 'ullage-steps-1';
  /**
   * Where it is `fail` the steps are not to be carried out.
   */
  verdict: 'pass' | 'fail';
  base: Commit;
  head: Commit1;
  on: Date;
  /**
   * Of every amount, ISO 4217.
   */
  currency: string;
  /**
   * The ids of the steps that are done. Add those that you have done, and give the file back with --done.
   */
  done: Id[];
  /**
   * By the id of a step that is done, the day on which it was, where that is known: a survey that was taken before shows nothing of it. Left out before there were days.
   */
  doneOn?: {
    [k: string]: Date1;
  };
  /**
   * Of which main and which branch the lists are that ticks were given in, as far as they say. Left out before lists said so.
   */
  ticksOf?: {
    /**
     * The commit of main.
     */
    base: string;
    /**
     * The commit of the branch.
     */
    head: string;
    /**
     * Whether that is the main of this report. Ticks of another are to be made sure of first, and count as soon as the list is printed anew.
     */
    main: 'this' | 'another';
  }[];
  /**
   * The steps that nothing holds up now: none as long as something speaks against the ticks.
   */
  next: Number[];
  /**
   * What surveys show against the ticks; empty where no ticks were given.
   */
  surveyed: {
    /**
     * The number of the step.
     */
    number: number;
    /**
     * In which way; the last is of a step that is not ticked, and of which is shown what no step of this change begins or ends with.
     */
    kind: 'ticked and not so' | 'so and not ticked' | 'neither as before nor as after';
    /**
     * The server whose survey shows it; null for the provider's list.
     */
    server: string | null;
    on?: Date2;
    /**
     * What it shows.
     */
    message: string;
  }[];
  /**
   * What is wrong with the ticks, and where; `done` has what of them holds.
   */
  problems: ProblemReport[];
  /**
   * The longest chain of steps in which each waits for the one before it.
   */
  longest: Number[];
  /**
   * The steps turn by turn: those of one turn can be done side by side.
   */
  turns: Number[][];
  /**
   * The servers that stand still, and from which step to which.
   */
  standing: {
    /**
     * Its name.
     */
    server: string;
    /**
     * The step that shuts it down.
     */
    from: number;
    /**
     * The step that starts it again; null where none does.
     */
    to: Number | null;
  }[];
  /**
   * The steps that are asked for, in order.
   */
  steps: {
    step: StepReport;
    /**
     * Whether it is done.
     */
    done: boolean;
    /**
     * Whether nothing takes it back.
     */
    final: boolean;
    /**
     * The step with which the way back from it ends; null where it never does.
     */
    until: Number | null;
    /**
     * Whether it comes after a step that nothing takes back.
     */
    past: boolean;
    /**
     * What billing does from it on; null where it sees nothing.
     */
    billing: {
      /**
       * What it does.
       */
      kind: 'begins' | 'changes' | 'ends' | 'goes on';
      /**
       * Of which server or volume.
       */
      name: string;
      /**
       * What it costs a month until then; null where it does not change.
       */
      from: string | null;
      /**
       * What it costs a month: from then on, or until then where it ends.
       */
      monthly: string;
    } | null;
  }[];
}
/**
 * Main.
 */
export interface Commit {
  /**
   * A commit, or `worktree`, or `nothing`.
   */
  commit: string;
}
/**
 * What main would be after the merge.
 */
export interface Commit1 {
  /**
   * A commit, or `worktree`, or `nothing`.
   */
  commit: string;
}
/**
 * One problem.
 */
export interface ProblemReport {
  /**
   * What is wrong.
   */
  message: string;
  /**
   * What to do.
   */
  advice: string;
  /**
   * Where; null where the whole revision is meant.
   */
  place: PlaceReport | null;
  /**
   * The source line; null where there is none.
   */
  excerpt: string | null;
}
/**
 * A place in a file of a revision.
 */
export interface PlaceReport {
  /**
   * Which revision the file is of; null where that is not known. What the head no longer has is shown at its place on the base.
   */
  revision: 'base' | 'head' | null;
  /**
   * The file, from the root of the repository, with `/`.
   */
  file: string;
  /**
   * The line, from 1.
   */
  line: number;
  /**
   * The column in UTF-16 units, from 1.
   */
  column: number;
}
/**
 * The step.
 */
export interface StepReport {
  /**
   * Its place in the order, from 1.
   */
  number: number;
  /**
   * What it is ticked off by: the same as long as the same is to be done, whatever its number.
   */
  id: string;
  /**
   * Where it is done: at the provider, inside the server's guest, or by making sure of something.
   */
  at: 'provider' | 'guest' | 'check';
  /**
   * The server that it is about, or in whose guest it is done; null where there is none.
   */
  server: string | null;
  subject: SubjectReport;
  /**
   * What to do.
   */
  instruction: string;
  /**
   * Why it is needed; null where that goes without saying.
   */
  why: string | null;
  /**
   * What is to be seen once it is done; null where nothing is.
   */
  seen: string | null;
  /**
   * How to step back; null where there is nothing to take back.
   */
  stepBack: string | null;
  /**
   * Whether the step loses data that only a backup can restore.
   */
  losesData: boolean;
  /**
   * What to make sure of first; never empty where the step loses data.
   */
  cautions: string[];
  /**
   * How it is done from a command line, as examples: names that are known are filled in and quoted for a POSIX shell, and what is in capitals has to be replaced. Check each before it is run.
   */
  examples: ExampleReport[];
  /**
   * The numbers of the steps that must be done first.
   */
  after: number[];
  /**
   * Which of `changes`, counted from 0, are carried out once this step is done.
   */
  carriesOut: number[];
}
/**
 * What it is done to.
 */
export interface SubjectReport {
  /**
   * The kind of thing.
   */
  kind:
    | 'estate'
    | 'site'
    | 'team'
    | 'label'
    | 'scope'
    | 'server'
    | 'volume'
    | 'volume-group'
    | 'file-system'
    | 'branch';
  /**
   * Its name.
   */
  name: string;
}
/**
 * A command, as an example.
 */
export interface ExampleReport {
  /**
   * The command.
   */
  command: string;
  /**
   * Where it comes from, such as a manual page and its version; `memory` where it was not looked up.
   */
  source: string;
}
