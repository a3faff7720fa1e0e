/** Builds the page into one file in the folder, and gives its path. */
export function buildPage(folder?: string): Promise<string>;
