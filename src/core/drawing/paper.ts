/** Sizes of paper, upright, in millimetres. Source: ISO 216 (A2 to A4); ANSI sizes of letter and tabloid from memory. */
export const PAPERS = {
  A4: { widthMm: 210, heightMm: 297 },
  A3: { widthMm: 297, heightMm: 420 },
  A2: { widthMm: 420, heightMm: 594 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
  Tabloid: { widthMm: 279.4, heightMm: 431.8 },
} as const;

export type PaperName = keyof typeof PAPERS;

export function isPaperName(name: string): name is PaperName {
  return Object.hasOwn(PAPERS, name);
}
