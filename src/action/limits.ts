/** What the CI host takes of one step, with where each figure is from. */

/**
 * Annotations of each level a step. The host's toolkit, docs/problem-matchers.md: 10 warning, 10 error and 10 notice
 * annotations a step, 50 a job. What is over is dropped without a word. One step of ours stays under both; other
 * steps of the job have their share of the 50.
 */
export const annotationsOfALevel = 10;

/**
 * Bytes of a step's summary. The runner's own message when it refuses one: "upload aborted, supports content up to a
 * size of 1024k".
 */
export const summaryBytes = 1024 * 1024;

/**
 * Characters of a comment. The host's own message when it refuses one: "body is too long (maximum is 65536
 * characters)". It is kept in bytes, of which there are never fewer.
 */
export const commentBytes = 65_536;

/** Comments on one page of a list: the most that the host's REST API gives (from memory). */
export const commentsAPage = 100;

/** Pages of comments that are read before giving up; ours. */
export const commentPages = 100;
