/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The name of the entry in a rule pack, or of the rule.
 */
export type Name = string;
/**
 * The name of the one entry that is meant, where several entries of the rule apply; left out, any of them is.
 */
export type Name1 = string;
/**
 * The name of the one subject it is for.
 */
export type Sentence = string;
/**
 * Why the exception is right.
 */
export type Sentence1 = string;
/**
 * Who approved it.
 */
export type Sentence2 = string;
/**
 * The first day on which it applies.
 */
export type Date = string;
/**
 * The last day on which it applies.
 */
export type Date1 = string;

/**
 * Waivers: exceptions to one rule for one subject, each with a reason, an approver, dates and, better, a ceiling.
 */
export interface WaiversFile {
  /**
   * The waivers.
   */
  waivers: WaiverDeclaration[];
}
/**
 * One exception.
 */
export interface WaiverDeclaration {
  rule: Name;
  name?: Name1;
  subject: Sentence;
  /**
   * What kind of subject is meant, where two of different kinds share the name.
   */
  kind?:
    | 'estate'
    | 'site'
    | 'team'
    | 'label'
    | 'scope'
    | 'server'
    | 'volume'
    | 'volume-group'
    | 'file-system'
    | 'branch';
  /**
   * The most that the waiver covers, in the rule's own measure: a size such as 500 GiB, a monthly amount in quotes such as "150.00", or a number. Exactly this much is covered. `ullage rules NAME` says what the rule measures. Left out, the waiver covers what main had of it when it came, or what the first change that it let through brought, and no more.
   */
  'up-to'?: string | number;
  reason: Sentence1;
  'approved-by': Sentence2;
  from: Date;
  until: Date1;
}
