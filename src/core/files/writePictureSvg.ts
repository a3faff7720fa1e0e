import { accept, type Checked, refuse } from '../base/index.ts';
import { boundsOf, type Chain } from '../curve/index.ts';
import { type Drawing, letteringStrokes, type Meaning } from '../drawing/index.ts';
import { finiteDrawing, millimetres } from './millimetres.ts';
import { svgPath } from './svgPath.ts';
import { escapeXml } from './writeSvg.ts';

/** mm of white round the drawing. */
const BORDER_MM = 4;

type Layer = Meaning | 'centre' | 'text';

/** How each kind of line looks on paper and screens: what it is for shows in weight, not in colour alone. */
const LOOKS: Readonly<Record<Layer, string>> = {
  draw: 'stroke="#8a8378" stroke-width="0.2"',
  centre: 'stroke="#8a8378" stroke-width="0.2" stroke-dasharray="8 1.5 1.5 1.5"',
  score: 'stroke="#1d4e89" stroke-width="0.3"',
  'cut-inside': 'stroke="#2b2620" stroke-width="0.4"',
  cut: 'stroke="#2b2620" stroke-width="0.5"',
  text: 'stroke="#2b2620" stroke-width="0.25"',
};

/**
 * A drawing as an SVG to look at, at true size on white: reference lines, lettering and all. It is not for tools, which
 * would cut every line of it. Faults: `file.not-finite`, `file.nothing-drawn`.
 */
export function writePictureSvg(drawing: Drawing): Checked<string> {
  const finite = finiteDrawing(drawing);
  if (!finite.ok) return finite;
  const layers = layersOf(drawing);
  const boxes = [...layers.values()].flat().map((chain) => boundsOf(chain));
  if (boxes.length === 0) return refuse(nothingDrawn(drawing.title));
  const left = Math.min(...boxes.map(({ min }) => min.x)) - BORDER_MM;
  const top = Math.max(...boxes.map(({ max }) => max.y)) + BORDER_MM;
  const width = millimetres(Math.max(...boxes.map(({ max }) => max.x)) + BORDER_MM - left);
  const height = millimetres(top - Math.min(...boxes.map(({ min }) => min.y)) + BORDER_MM);
  const groups = [...layers].flatMap(([layer, chains]) => [
    `<g id="${layer}" fill="none" stroke-linecap="round" stroke-linejoin="round" ${LOOKS[layer]}>`,
    ...chains.map((chain) => `<path d="${svgPath(chain, left, top)}"/>`),
    '</g>',
  ]);
  return accept(
    [
      '<?xml version="1.0" encoding="UTF-8"?>',
      `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
      `<title>${escapeXml(drawing.title)}</title>`,
      `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
      ...groups,
      '</svg>',
      '',
    ].join('\n'),
  );
}

/** Chains by how they look, the faintest first; only layers that hold something. */
function layersOf(drawing: Drawing): ReadonlyMap<Layer, readonly Chain<'drawing'>[]> {
  const layers = new Map<Layer, Chain<'drawing'>[]>();
  const put = (layer: Layer, chain: Chain<'drawing'>) => {
    if (chain.vertices.length > 1) layers.set(layer, [...(layers.get(layer) ?? []), chain]);
  };
  for (const { meaning, chain, centreLine } of drawing.lines) put(centreLine ? 'centre' : meaning, chain);
  for (const lettering of drawing.lettering)
    for (const stroke of letteringStrokes(lettering)) put('text', stroke);
  const order: readonly Layer[] = ['draw', 'centre', 'score', 'cut-inside', 'cut', 'text'];
  return new Map(order.flatMap((layer) => (layers.has(layer) ? [[layer, layers.get(layer) ?? []]] : [])));
}

function nothingDrawn(at: string) {
  return {
    code: 'file.nothing-drawn',
    at,
    found: 'no line at all',
    need: 'at least one',
    remedy: 'leave this drawing out',
  };
}
