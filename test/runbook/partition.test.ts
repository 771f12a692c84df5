/** What lies in a partition, or in an encrypted mapping, grows once that has: growpart(1), cloud-utils 0.33. */
import { expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import { readSurvey } from '../../src/survey/survey.ts';
import { documentOf, estateOf, valueIn } from '../estate/builder.ts';
import { gib } from '../survey/kept.ts';

const plates = (gibibytes: number) =>
  estateOf(`servers: { scan: { power: running, guest: linux } }
volumes: { plates-1: { size: ${gibibytes} GiB, tier: bulk, file-system: { mount: /plates, type: ext4 } } }
attachments: [{ volume: plates-1, server: scan }]
`);

/** What lies between the disk and its file system, if anything. */
const grown = (between: object | undefined, device: string): readonly string[] => {
  const survey = valueIn(
    readSurvey(
      documentOf(
        JSON.stringify({
          format: 'ullage-survey-1',
          server: 'scan',
          at: '2026-11-20T06:00:00Z',
          tools: {},
          unseen: [],
          devices: [
            { name: 'vdb', type: 'disk', size: gib(40) },
            ...(between === undefined ? [] : [between]),
          ],
          'volume-groups': [],
          'file-systems': [
            { device, type: 'ext4', mounts: ['/plates'], 'in-fstab': '/plates', size: gib(39) },
          ],
        }),
        'surveys/scan.json',
      ),
    ),
  );
  const [base, head] = [plates(40), plates(60)];
  return runbookOf(compareEstates(base, head), base, head, { surveys: [survey] }).map(
    ({ procedure }) => procedure,
  );
};

it('the partition, or the mapping, of a volume that grows is grown before what lies on it, and there is none to grow otherwise', () => {
  const whole = ['grow-volume', 'see-size', 'grow-mounted'];
  expect(grown(undefined, 'vdb')).toEqual(whole);
  const layered = ['grow-volume', 'see-size', 'grow-partition', 'grow-mounted'];
  expect(grown({ name: 'vdb1', type: 'part', on: ['vdb'], size: gib(39) }, 'vdb1')).toEqual(layered);
  expect(grown({ name: 'mapper/p', type: 'crypt', on: ['vdb'], size: gib(39) }, 'mapper/p')).toEqual(layered);
});
