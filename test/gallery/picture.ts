import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { boundsOf, type Chain } from '../../src/core/curve/index.ts';
import { type Drawing, letteringStrokes } from '../../src/core/drawing/index.ts';
import { escapeXml, svgPath } from '../../src/core/files/index.ts';

const BORDER_MM = 5;
export const STYLES = {
  draw: 'stroke="#777" stroke-width=".13" stroke-dasharray="2.5 1.2"',
  score: 'stroke="#888" stroke-width=".18"',
  'cut-inside': 'stroke="#000" stroke-width=".25"',
  cut: 'stroke="#000" stroke-width=".25"',
  text: 'stroke="#222" stroke-width=".2"',
} as const;

/** A drawing as a picture for reviewers: every line by its meaning, numbers to three decimals. */
export function drawingPicture(drawing: Drawing): string {
  const strokes = drawing.lettering.flatMap(letteringStrokes);
  const of = (meaning: keyof typeof STYLES): Chain<'drawing'>[] =>
    meaning === 'text'
      ? strokes
      : drawing.lines.filter((line) => line.meaning === meaning).map((line) => line.chain);
  const filled = drawing.filled ?? [];
  const boxes = [...drawing.lines.map((line) => line.chain), ...strokes, ...filled].map((chain) =>
    boundsOf(chain),
  );
  const left = Math.min(...boxes.map((box) => box.min.x)) - BORDER_MM;
  const top = Math.max(...boxes.map((box) => box.max.y)) + BORDER_MM;
  const width = (Math.max(...boxes.map((box) => box.max.x)) + BORDER_MM - left).toFixed(3);
  const height = (top - Math.min(...boxes.map((box) => box.min.y)) + BORDER_MM).toFixed(3);
  const path = (chain: Chain<'drawing'>): string => `<path d="${threeDecimals(svgPath(chain, left, top))}"/>`;
  const groups = (Object.keys(STYLES) as (keyof typeof STYLES)[]).flatMap((meaning) => {
    const chains = of(meaning);
    return chains.length === 0
      ? []
      : [`<g id="${meaning}" fill="none" ${STYLES[meaning]}>`, ...chains.map(path), '</g>'];
  });
  const areas = filled.length === 0 ? [] : ['<g id="filled">', ...filled.map(path), '</g>'];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escapeXml(drawing.title)}</title>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...areas,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

/** A picture for reviewers, by the path and name that it has in the gallery. */
export interface GalleryPicture {
  readonly name: string;
  readonly svg: string;
}

/**
 * What differs between these pictures and those in a folder, a sentence each; empty when nothing does. A changed
 * picture is written beside the old as `*.new.svg`; a missing one is written, and is a fault where `CI` is set.
 */
export function galleryChanges(folder: string, pictures: readonly GalleryPicture[]): string[] {
  return pictures.flatMap(({ name, svg }) => {
    const path = join(folder, `${name}.svg`);
    const fresh = join(folder, `${name}.new.svg`);
    if (!existsSync(path)) {
      if (process.env.CI) return [`${name}: no picture in the gallery`];
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, svg);
      return [];
    }
    if (readFileSync(path, 'utf8') === svg) {
      rmSync(fresh, { force: true });
      return [];
    }
    writeFileSync(fresh, svg);
    return [`${name}: the picture changed; look at ${fresh} and move it over the old one if it is right`];
  });
}

/** A text with its numbers at three decimals. */
export function threeDecimals(text: string): string {
  return text.replace(/-?\d+\.\d+/g, (number) => String(Number(Number(number).toFixed(3)) + 0));
}
