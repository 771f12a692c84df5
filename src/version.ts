/** The version of Ullage, as package.json gives it; a test holds the two together. */
export const version = '0.1.0';
