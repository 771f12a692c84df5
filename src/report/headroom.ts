/** What room is left, as text with bars that need no colour, or as JSON. */
import { freeShare, type Layer, layers, type Room } from '../capacity/headroom.ts';
import { showMeasure, showShare } from './amounts.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import type { Section } from './sections.ts';

export const headroomFormats = ['text', 'json'] as const;

export type HeadroomFormat = (typeof headroomFormats)[number];

export const reportHeadroom = (rooms: readonly Room[], format: HeadroomFormat, screen: Screen): string =>
  format === 'json' ? headroomJson(rooms) : headroomText(rooms, atLeast(screen));

const titles: { readonly [L in Layer]: string } = {
  quota: 'Quota of each site',
  'attachment-slots': 'Attachment slots of each server',
  'volume-group': 'Volume groups',
  'file-system': 'File systems',
};

const barWidth = 20;

/** Full blocks for what is taken, dots for what is free; `over` where more is taken than there is. */
export function bar(room: Room): string {
  if (room.free < 0n) return `${'█'.repeat(barWidth)} over`;
  const taken =
    room.capacity === 0n
      ? barWidth
      : Number((room.taken * BigInt(barWidth) + room.capacity / 2n) / room.capacity);
  return `${'█'.repeat(taken)}${'·'.repeat(barWidth - taken)}`;
}

function headroomText(rooms: readonly Room[], screen: Screen): string {
  const tightest = [...rooms].sort((a, b) => freeShare(a) - freeShare(b))[0];
  const headline =
    tightest === undefined
      ? 'No layer has a bound to keep room to'
      : tightest.free < 0n
        ? `${tightest.subject.name} is asked for more than it has`
        : `The tightest is ${tightest.subject.name}, with ${showShare(tightest)} free`;
  const sections = layers.flatMap((layer): readonly Section[] => {
    const those = rooms.filter((room) => room.layer === layer);
    if (those.length === 0) return [];
    return [
      {
        title: titles[layer],
        blocks: [
          {
            kind: 'table',
            table: {
              columns: [
                { title: 'name', align: 'left' },
                { title: 'taken', align: 'right' },
                { title: 'of', align: 'right' },
                { title: 'free', align: 'right' },
                { title: 'share', align: 'right' },
                { title: '', align: 'left' },
              ],
              rows: those.map((room) => [
                room.subject.name,
                showMeasure(room.measure, room.taken),
                showMeasure(room.measure, room.capacity),
                showMeasure(room.measure, room.free),
                showShare(room),
                bar(room),
              ]),
            },
          },
        ],
      },
    ];
  });
  return `${[...drawHeadline(headline, 'plain', screen), ...drawSections(sections, screen)].join('\n')}\n`;
}

const headroomJson = (rooms: readonly Room[]): string =>
  `${JSON.stringify(
    rooms.map(({ layer, subject, measure, capacity, taken, free }) => ({
      layer,
      subject,
      measure,
      capacity: capacity.toString(),
      taken: taken.toString(),
      free: free.toString(),
    })),
    null,
    2,
  )}\n`;
