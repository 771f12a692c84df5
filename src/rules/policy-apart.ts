import { counted } from '../base/wording.ts';
import { onHead } from '../change/place.ts';
import { type ChangeRule, everyDeclaredKind } from './rule.ts';

export const policyApart: ChangeRule<'policy-apart'> = {
  name: 'policy-apart',
  about: 'change',
  level: 'error',
  refuses: 'A looser policy and a change of storage in one branch.',
  why: 'Whoever reviews the storage then reviews it against limits that the same hand has just moved. Apart, each is seen for what it is.',
  advice: 'Split the branch: first the policy, by those who answer for it; then the storage.',
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
      story: 'A tighter limit beside a change of storage lets nothing through.',
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
      if (changes.length === 0) return;
      // What cannot be told to be tighter is taken for looser: the gate fails closed.
      const looser = policyChanges.filter(
        ({ direction }) => direction === 'looser' || direction === 'unknown',
      );
      const [first] = looser;
      if (first === undefined) return;
      const names = [
        ...new Set(looser.map(({ name, key }) => (key === undefined ? name : `${name} (${key})`))),
      ];
      yield {
        subject: { kind: 'branch', name: 'head' },
        place: first.place ?? onHead(head.settings.place),
        message: `the branch changes storage (${counted(changes.length, 'change')}) and makes the policy that judges it looser: ${names.join(', ')}`,
      };
    },
};
