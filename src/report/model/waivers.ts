/** Waivers that somebody should review: outgrown, about to end unused, expired, or for a rule that there is not. */
import { counted } from '../../base/wording.ts';
import type { Finding, Judged } from '../../policy/judgement.ts';
import type { WaiverUse } from '../../policy/waiver.ts';
import { at, entries, line, sentence } from './blocks.ts';
import { isUnmeasured } from './coverage.ts';
import type { Entry, Section } from './model.ts';

/** An expired waiver is of interest where its subject or the policy is touched; elsewhere they are only counted. */
export function waiverSection({ waivers, findings, changes, policyChanges }: Judged): readonly Section[] {
  const subjects = new Set([...findings, ...changes].map(({ subject }) => subject.name));
  const isQuiet = ({ state, waiver }: WaiverUse): boolean =>
    state === 'expired' && policyChanges.length === 0 && !subjects.has(waiver.subject);
  const quiet = waivers.filter(isQuiet);
  const refused = findings.filter(({ fails }) => fails);
  // One that waits is merged ahead of its change, as it has to be; it is named where somebody may take it for this one's.
  const isElsewhere = ({ state, waiver, written }: WaiverUse): boolean =>
    state === 'waiting' &&
    written === undefined &&
    !refused.some(({ rule, entry }) => [rule, entry].includes(waiver.rule));
  const shown = waivers
    .filter((use) => !isQuiet(use) && !isElsewhere(use))
    .flatMap((use) => waiverEntry(use, findings));
  const more = shown.length === 0 ? 'waiver' : 'more waiver';
  const blocks = [
    ...(shown.length === 0 ? [] : [entries(shown)]),
    ...(quiet.length === 0
      ? []
      : [
          sentence(
            `${counted(quiet.length, `${more} has`, `${more}s have`)} expired; see ${folderOf(quiet.map(({ waiver }) => waiver.place.file))}.`,
          ),
        ]),
  ];
  return blocks.length === 0 ? [] : [{ title: 'Waivers to review', blocks }];
}

function waiverEntry(use: WaiverUse, findings: readonly Finding[]): readonly Entry[] {
  const said = waiverState(use, findings);
  const { rule, subject, place } = use.waiver;
  const { written } = use;
  return said === undefined
    ? []
    : [
        {
          tag: { word: said.word, tone: 'caution' },
          text: `the waiver of ${rule} for ${subject} ${said.text}`,
          fields: [
            at(place),
            ...(written === undefined
              ? []
              : [
                  line(
                    'written otherwise',
                    `If it is meant for the ${written.subject.kind.replace('-', ' ')} ${written.subject.name}, write it so: ${written.line}`,
                  ),
                ]),
          ],
        },
      ];
}

function waiverState(
  { state, waiver }: WaiverUse,
  findings: readonly Finding[],
): { readonly word: string; readonly text: string } | undefined {
  switch (state) {
    case 'used':
    case 'not yet':
      return undefined;
    case 'waiting':
      return {
        word: 'waiting',
        text: `covers nothing here: it is for ${waiver.kind === undefined ? '' : `the ${waiver.kind.replace('-', ' ')} `}${waiver.subject}${waiver.name === undefined ? '' : ` and the entry ${waiver.name}`} alone`,
      };
    case 'outgrown':
      if (findings.every((each) => each.outgrown !== waiver || isUnmeasured(waiver, each)))
        return {
          word: 'no effect',
          text: 'has a ceiling in which nothing is measured here, so that it covers nothing; have it approved without up-to, or with a ceiling that fits',
        };
      return {
        word: 'outgrown',
        text:
          waiver.upTo === undefined
            ? 'has no ceiling and is outgrown; remain within what it first covered, or have a ceiling (up-to) approved'
            : `covers up to ${waiver.upTo.written} and is outgrown; remain within it, or have a higher ceiling approved`,
      };
    case 'unused':
      return {
        word: 'unused',
        text: `covers nothing here and ends on ${waiver.until}; remove it if its change is merged, or have it approved for longer if its change is still to come`,
      };
    case 'expired':
      return { word: 'expired', text: `expired on ${waiver.until}; remove it, or have it approved again` };
    case 'unknown rule':
      return { word: 'unknown rule', text: 'names a rule that the policy does not have; correct the name' };
  }
}

/** The folder that all of some files lie in; the files themselves where there is none. */
function folderOf(files: readonly string[]): string {
  const [first = '', ...others] = files;
  const steps = first.split('/').slice(0, -1);
  const shared = steps.filter((_, depth) => {
    const upTo = `${steps.slice(0, depth + 1).join('/')}/`;
    return others.every((file) => file.startsWith(upTo));
  });
  return shared.length === 0 ? [...new Set(files)].join(', ') : `${shared.join('/')}/`;
}
