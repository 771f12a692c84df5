/** A path as a relative URI (RFC 3986): every segment percent-encoded, a half of a surrogate pair as U+FFFD. */
export const uriOf = (path: string): string =>
  path
    .split('/')
    .map((segment) => encodeURIComponent(segment.replaceAll(/\p{Cs}/gu, '\ufffd')))
    .join('/');
