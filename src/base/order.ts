/** The one order of text: by code unit, the same whatever the machine's language. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
