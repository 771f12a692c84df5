/** `ullage headroom`: what room is left, layer by layer. */
import type { Command } from 'commander';
import { headroomOf } from '../capacity/headroom.ts';
import { ParsedFiles, readRevision } from '../policy/revision.ts';
import { found, refused } from '../read/problem.ts';
import { type HeadroomFormat, headroomFormats, reportHeadroom } from '../report/headroom.ts';
import { reportProblems } from '../report/problems.ts';
import { type Finished, terminal } from './edge.ts';
import { treeAt, withRepository } from './repository.ts';

interface HeadroomFlags {
  readonly repo: string;
  readonly at?: string;
  readonly format: HeadroomFormat;
}

export async function runHeadroom({ repo, at, format }: HeadroomFlags): Promise<Finished> {
  const rooms = await withRepository(repo, async (repository) => {
    const tree = await treeAt(repository, at);
    if (!tree.ok) return tree;
    const revision = await readRevision(tree.value, new ParsedFiles());
    if (!revision.ok) return revision;
    const { estate, settings } = revision.value;
    if (settings === undefined) {
      return refused({
        message: 'there is no ullage.yaml at the top of the repository',
        advice: '`ullage new` writes one to start from.',
      });
    }
    return found(headroomOf(estate, settings));
  });
  if (!rooms.ok)
    return {
      output: reportProblems(rooms.problems, terminal()),
      code: 2,
      reason: 'not judged: the estate cannot be read',
    };
  return { output: reportHeadroom(rooms.value, format, terminal()), code: 0 };
}

export const addHeadroom = (program: Command, finish: (finished: Finished) => void): Command =>
  program
    .command('headroom')
    .summary('what room is left, layer by layer')
    .description(
      'Show what is bought, taken and free at each layer: site quota, attachment slots, volume groups.',
    )
    .option('--repo <dir>', 'the repository', '.')
    .option('--at <ref>', 'a revision (default: the files as they are)')
    .addOption(
      program
        .createOption('--format <format>', 'what to print')
        .choices([...headroomFormats])
        .default('text'),
    )
    .addHelpText('after', '\nExamples:\n  ullage headroom\n  ullage headroom --at main --format json')
    .action(async (flags: HeadroomFlags) => finish(await runHeadroom(flags)));
