/** The version that documents and the command line name; the same as in package.json, a test says. */
export const GARLAND_VERSION = '0.1.0';
