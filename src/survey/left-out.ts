/** What a server's tools showed and a survey does not keep. */
export interface LeftOut {
  /** Such as `loop3` or `/snap/core/17`. */
  readonly what: string;
  /** Such as `it is empty`: the end of a sentence. */
  readonly why: string;
}
