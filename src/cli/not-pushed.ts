/** Which main was taken, where somebody may believe that it was the other one. */
import { counted } from '../base/wording.ts';
import type { RevisionPair } from '../git/compare.ts';

export function notPushedRemark({ baseRef, notPushed }: RevisionPair): readonly string[] {
  if (notPushed === undefined) return [];
  const { branch, commits } = notPushed;
  const [are, them] = commits === 1 ? ['is', 'it'] : ['are', 'them'];
  return [
    `Judged against ${baseRef}, which is main as it was last fetched. The branch ${branch} of this clone has ${counted(commits, 'commit')} that ${are} not on it: push ${them}, or give \`--base ${branch}\`.`,
  ];
}
