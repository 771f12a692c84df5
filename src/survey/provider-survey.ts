/** What the provider's list shows to be there, at one time: `surveys/provider.json`. */
import { err, type Outcome, ok, type Place } from '../base/problem.ts';
import { isTime } from '../estate/dates.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import type { ReadDocument } from '../read/document.ts';
import type { ProviderSurveyFile } from '../read/generated/provider-survey.ts';
import { validate } from '../read/validate.ts';

/** The version of the format that is written; what is read must say it. */
export const providerSurveyFormat = 'ullage-provider-survey-1';

export interface ProviderSurvey {
  /** RFC 3339, UTC, whole seconds. */
  readonly at: string;
  /** Of what the list does not list nothing is said to be missing. */
  readonly lists: ProviderSurveyFile['lists'];
  readonly volumes: readonly ProviderVolume[];
  readonly servers: readonly ProviderServer[];
  readonly place: Place;
}

export interface ProviderVolume {
  readonly id: string | undefined;
  readonly name: string | undefined;
  readonly size: Bytes;
  /** By the estate's own name for it, where the settings tell it; likewise the site. */
  readonly tier: string | undefined;
  readonly site: string | undefined;
  /** The ids or the names of the servers that it is attached to; undefined where the list does not say. */
  readonly servers: readonly string[] | undefined;
  readonly boot: boolean | undefined;
}

export interface ProviderServer {
  readonly id: string | undefined;
  readonly name: string | undefined;
  readonly site: string | undefined;
  readonly type: string | undefined;
  readonly power: 'running' | 'stopped' | undefined;
  /** The id or the name of the volume that it starts from. */
  readonly boot: string | undefined;
}

/** Reads `surveys/provider.json`. */
export function readProviderSurvey(text: ReadDocument): Outcome<ProviderSurvey> {
  const valid = validate('provider-survey', text);
  if (!valid.ok) return valid;
  const { value, problems, document } = valid.value;
  if (problems.length > 0) return { ok: false, problems };
  if (!isTime(value.at)) {
    return err({
      place: document.placeOfValue(['at']),
      message: `${value.at} is not a time in the calendar`,
      advice: 'Take the survey again.',
    });
  }
  return ok({
    at: value.at,
    lists: value.lists,
    volumes: value.volumes.map(({ id, name, size, tier, site, server, servers, boot }) => ({
      id,
      name,
      size: bytes(BigInt(size)),
      tier,
      site,
      servers: servers ?? (server === undefined ? undefined : [server]),
      boot,
    })),
    servers: value.servers.map(({ id, name, site, type, power, boot }) => ({
      id,
      name,
      site,
      type,
      power,
      boot,
    })),
    place: document.placeOfValue([]),
  });
}
