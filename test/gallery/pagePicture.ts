import type { Frame } from '../../src/core/base/index.ts';
import type { Chain } from '../../src/core/curve/index.ts';
import { letteringStrokes, type Page, type PagePen, placedChain } from '../../src/core/drawing/index.ts';
import { escapeXml, svgPath } from '../../src/core/files/index.ts';
import { STYLES, threeDecimals } from './picture.ts';

const PENS: Readonly<Record<PagePen, string>> = {
  ...STYLES,
  bar: 'stroke="#000" stroke-width=".18"',
  mark: 'stroke="#000" stroke-width=".13"',
  trim: 'stroke="#888" stroke-width=".18" stroke-dasharray="4 2"',
  rule: 'stroke="#bbb" stroke-width=".13"',
  map: 'stroke="#333" stroke-width=".13"',
};

/** A page of the print file as a picture for reviewers; its margin type is whatever sans-serif the viewer has. */
export function pagePicture(page: Page): string {
  const path = <F extends Frame>(chain: Chain<F>, style: string): string =>
    `<path fill="none" ${style} d="${threeDecimals(svgPath(chain, 0, page.heightMm))}"/>`;
  const placed = page.placements.flatMap((one, index) => {
    const { min, max } = one.window;
    const box = { x: min.x, y: page.heightMm - max.y, width: max.x - min.x, height: max.y - min.y };
    const sides = Object.entries(box).map(([name, mm]) => `${name}="${threeDecimals(mm.toFixed(6))}"`);
    return [
      `<clipPath id="window${index}"><rect ${sides.join(' ')}/></clipPath>`,
      `<g clip-path="url(#window${index})">`,
      ...one.drawing.lines.map((line) => path(placedChain(one, line.chain), STYLES[line.meaning])),
      ...one.drawing.lettering
        .flatMap(letteringStrokes)
        .map((chain) => path(placedChain(one, chain), STYLES.text)),
      '</g>',
    ];
  });
  const texts = page.texts.map(({ text, at, sizeMm, bold, tone, anchor, turnRad }) => {
    const place = `translate(${at.x.toFixed(3)} ${(page.heightMm - at.y).toFixed(3)}) rotate(${((-turnRad * 180) / Math.PI).toFixed(3)})`;
    const look = `font-size="${sizeMm}" text-anchor="${anchor}" fill="${tone === 'black' ? '#000' : '#666'}"`;
    return `<text transform="${place}" ${look}${bold ? ' font-weight="bold"' : ''}>${escapeXml(text)}</text>`;
  });
  const size = `width="${page.widthMm}mm" height="${page.heightMm}mm" viewBox="0 0 ${page.widthMm} ${page.heightMm}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} font-family="Helvetica, Arial, sans-serif">`,
    `<title>${escapeXml(page.title)}</title>`,
    `<rect width="${page.widthMm}" height="${page.heightMm}" fill="#fff"/>`,
    ...placed,
    ...page.lines.map((line) => path(line.chain, PENS[line.pen])),
    ...texts,
    '</svg>',
    '',
  ].join('\n');
}
