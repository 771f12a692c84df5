/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The name of the entry in a rule pack, or of the rule.
 */
export type Name = string;
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
 * Waivers: exceptions to one rule for one subject, each with a reason, an approver and dates.
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
  reason: Sentence1;
  'approved-by': Sentence2;
  from: Date;
  until: Date1;
}
