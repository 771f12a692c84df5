/** What a branch changes, as JSON holds it: the change, and the thing before and after it. */
import { type Change, isAttachmentChange } from '../change/change.ts';
import { describeChange, destroys } from '../change/kinds.ts';
import type { RevisionPlace } from '../change/place.ts';
import type { Declaration, Subject, Volume } from '../estate/estate.ts';
import type { AttachmentReport, ChangeReport, PlaceReport, ThingReport } from './generated/judgement.ts';

export const subjectReport = ({ kind, name }: Subject): Subject => ({ kind, name });

export const placeReport = ({ revision, file, line, column }: RevisionPlace): PlaceReport => ({
  revision,
  file,
  line,
  column,
});

export const changeReport = (change: Change): ChangeReport => ({
  kind: change.kind,
  subject: subjectReport(change.subject),
  place: placeReport(change.place),
  description: describeChange(change),
  losesData: destroys(change),
  ...thingsOf(change),
});

function thingsOf(change: Change): Pick<ChangeReport, 'before' | 'after'> {
  if (!isAttachmentChange(change)) {
    return {
      before: 'before' in change ? thingReport(change.before) : null,
      after: 'after' in change ? thingReport(change.after) : null,
    };
  }
  switch (change.kind) {
    case 'attached':
    case 'attachment-adopted':
      return { before: null, after: attachmentReport(change.volume, change.server) };
    case 'detached':
      return { before: attachmentReport(change.volume, change.server), after: null };
    case 'handed-over':
      return {
        before: attachmentReport(change.volume, change.from),
        after: attachmentReport(change.volume, change.to),
      };
  }
}

function thingReport(thing: Declaration): ThingReport {
  const { kind, name } = thing;
  const site = thing.site ?? null;
  const team = thing.team ?? null;
  switch (kind) {
    case 'server':
      return {
        kind,
        name,
        id: thing.id ?? null,
        power: thing.power,
        boot: thing.boot ?? null,
        type: thing.type ?? null,
        site,
        team,
      };
    case 'volume':
      return {
        kind,
        name,
        id: thing.id ?? null,
        size: thing.size.toString(),
        tier: thing.tier,
        protected: thing.protected,
        site,
        team,
        retainUntil: thing.retainUntil ?? null,
      };
    case 'volume-group':
      return {
        kind,
        name,
        extent: thing.extent.toString(),
        members: [...thing.members],
        layout: thing.layout.kind,
        site,
        team,
      };
    case 'file-system':
      return { kind, name, mount: thing.mount, type: thing.type, size: thing.size.toString() };
  }
}

const attachmentReport = ({ name }: Volume, server: string): AttachmentReport => ({
  kind: 'attachment',
  volume: name,
  server,
});
