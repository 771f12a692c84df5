/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * What `ullage survey compare --format json` prints: what is there beside what is declared. Where it could not be told it prints the judgement (judgement.json), which is not judged.
 */
export interface SurveyComparisonReport {
  /**
   * The version of this format. With the same number keys may be added; none is taken away, and none changes its meaning.
   */
  format: 'ullage-survey-comparison-1';
  /**
   * The day of the comparison (RFC 3339 full-date).
   */
  on: string;
  /**
   * `same` where nothing differs, `different` where something does, `undetermined` where it could not be told.
   */
  outcome: 'same' | 'different' | 'undetermined';
  /**
   * Of the monthly costs (ISO 4217); null where there is none.
   */
  currency: string | null;
  /**
   * The surveys that were compared, and how many days old each is.
   */
  surveys: {
    /**
     * The server; null for the provider's list.
     */
    server: string | null;
    /**
     * When it was taken (RFC 3339).
     */
    at: string;
    /**
     * Its age in days.
     */
    days: number;
    /**
     * What could not be seen.
     */
    unseen: string[];
  }[];
  /**
   * Every difference, by server.
   */
  differences: {
    /**
     * Where they differ.
     */
    layer:
      'provider' | 'device' | 'physical volume' | 'volume group' | 'logical volume' | 'file system' | 'mount';
    /**
     * `not declared` and there; declared and `not there`; or `other`: there, and otherwise than declared.
     */
    kind: 'not declared' | 'not there' | 'other';
    /**
     * What it is about.
     */
    subject: {
      kind: string;
      name: string;
    };
    /**
     * The server whose survey shows it; null where the provider's list does.
     */
    server: string | null;
    /**
     * What differs, one sentence.
     */
    message: string;
    /**
     * What that means.
     */
    meaning: string | null;
    /**
     * What is declared, as people write it.
     */
    declared: string | null;
    /**
     * What is there, as people write it.
     */
    surveyed: string | null;
    /**
     * What it costs a month, exactly, where it is not declared and its tier is known.
     */
    monthly: string | null;
  }[];
  /**
   * Declared volumes that cannot be told among the disks, or the provider's volumes, that each may be, or of which it cannot be told who holds them.
   */
  untold: {
    volume: string;
    /**
     * Servers that the provider's list names as holding the volume, where nothing tells whether they are those that are declared to.
     */
    holders?: string[];
    candidates: {
      server: string;
      disk: string;
      /**
       * In bytes.
       */
      size: string;
    }[];
    /**
     * Volumes of the provider's list.
     */
    rows: {
      id: string | null;
      name: string | null;
      /**
       * In bytes.
       */
      size: string;
    }[];
  }[];
  /**
   * Servers that are declared to run, and have no survey.
   */
  notSurveyed: string[];
}
