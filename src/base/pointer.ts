/** JSON Pointers (RFC 6901): the way from a value to a part of it. */

/** The steps of a pointer, from the whole inwards. */
export const stepsOfPointer = (pointer: string): string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));

export const pointerOf = (steps: readonly (string | number)[]): string =>
  steps.map((step) => `/${`${step}`.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** The steps of a pointer as the fragment of a reference holds it (section 6); undefined where it is no such thing. */
export function stepsOfFragment(reference: string): readonly string[] | undefined {
  try {
    return stepsOfPointer(decodeURIComponent(reference.replace(/^#/, '')));
  } catch {
    return undefined;
  }
}
