/** The formats of files, and what their validators give: the right type, or what is wrong. */
import type { AuditRecord } from './generated/audit-record.ts';
import type { EstateFile } from './generated/estate.ts';
import type { GatheredFile } from './generated/gathered.ts';
import type { PriceListFile } from './generated/price-list.ts';
import type { ProcedureFile } from './generated/procedure.ts';
import type { ProviderSurveyFile } from './generated/provider-survey.ts';
import type { RulePackFile } from './generated/rule-pack.ts';
import type { SettingsFile } from './generated/settings.ts';
import type { SurveyFile } from './generated/survey.ts';
import type { WaiversFile } from './generated/waivers.ts';

/** Every format, and the type that a file of it has once it is valid. */
export interface Formats {
  'audit-record': AuditRecord;
  estate: EstateFile;
  gathered: GatheredFile;
  'price-list': PriceListFile;
  procedure: ProcedureFile;
  'provider-survey': ProviderSurveyFile;
  'rule-pack': RulePackFile;
  settings: SettingsFile;
  survey: SurveyFile;
  waivers: WaiversFile;
}

/** What ajv says of one failure; only what is used here. */
export interface SchemaError {
  readonly keyword: string;
  readonly schemaPath: string;
  readonly instancePath: string;
  readonly params: Readonly<Record<string, unknown>>;
  readonly parentSchema?: Readonly<Record<string, unknown>>;
  readonly data?: unknown;
  readonly propertyName?: string;
}
