import { counted } from '../base/wording.ts';
import { onHead } from '../change/place.ts';
import { type ChangeRule, everyDeclaredKind } from './rule.ts';

export const policyApart: ChangeRule<'policy-apart'> = {
  name: 'policy-apart',
  about: 'change',
  level: 'error',
  refuses: 'A looser policy and a change of storage in one branch.',
  why: 'Otherwise the storage is reviewed against limits that the same branch has just changed. In separate branches, each is reviewed for what it is.',
  advice: 'Split the branch: first the policy, reviewed by whoever is responsible for it, then the storage.',
  parameters: {},
  scope: [],
  needs: [],
  looksAt: () => everyDeclaredKind,
  examples: {
    fails: {
      story: 'A team raises its own limit and spends it in the same branch.',
      main: `team: imagery
volumes:
  plates-1: { size: 100 GiB, tier: bulk }
`,
      branch: `team: imagery
volumes:
  plates-1: { size: 900 GiB, tier: bulk }
`,
      entry: '{ rule: policy-apart }',
      altered: {
        main: '{ rule: max-monthly-spend, limit: "50.00" }',
        branch: '{ rule: max-monthly-spend, limit: "500.00" }',
      },
    },
    passes: {
      story: 'A tighter limit beside a change of storage is allowed.',
      main: `team: imagery
volumes:
  plates-1: { size: 100 GiB, tier: bulk }
`,
      branch: `team: imagery
volumes:
  plates-1: { size: 200 GiB, tier: bulk }
`,
      entry: '{ rule: policy-apart }',
      altered: {
        main: '{ rule: max-monthly-spend, limit: "50.00" }',
        branch: '{ rule: max-monthly-spend, limit: "40.00" }',
      },
    },
  },
  check: () =>
    function* ({ head, changes, policyChanges }) {
      // What cannot be told to be tighter is taken for looser: the gate fails closed.
      const looser = policyChanges.filter(
        ({ direction }) => direction === 'looser' || direction === 'unknown',
      );
      const [first] = looser;
      // A server whose own slots are the loosening is changed by it, and by nothing else that it could be apart from.
      // Where anything else is loosened besides, that change is as much beside it as any other.
      const ofServers = looser.every(({ of }) => of === 'server');
      const raised = new Set(ofServers ? looser.map(({ name }) => name) : []);
      const others = changes.filter(
        ({ kind, subject }) => kind !== 'server-edited' || !raised.has(subject.name),
      );
      if (first === undefined || others.length === 0) return;
      const names = [
        ...new Set(looser.map(({ name, key }) => (key === undefined ? name : `${name} (${key})`))),
      ];
      yield {
        subject: { kind: 'branch', name: 'head' },
        place: first.place ?? onHead(head.settings.place),
        message: `the branch changes storage (${counted(others.length, 'change')}) and loosens the policy that applies to it: ${names.join(', ')}`,
        // A server cannot come in another branch than what is written on it, but the figure on it can.
        ...(ofServers
          ? {
              advice: `Leave the attachment-slots of ${[...raised].join(', ')} as main has them in this branch, or out where the server is new, and raise them in a later one that changes nothing else.`,
            }
          : {}),
      };
    },
};
