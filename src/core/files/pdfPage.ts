import { cos, type Frame, power, sin, tan } from '../base/index.ts';
import { arcOf, type Chain, type Segment, segments } from '../curve/index.ts';
import {
  type DrawnLine,
  letteringStrokes,
  marginTextWidthMm,
  type Page,
  type PageLine,
  type PageText,
  type PlacedDrawing,
  placedChain,
} from '../drawing/index.ts';
import { millimetres } from './millimetres.ts';
import { shortArcs } from './shortArcs.ts';
import { winAnsiHex } from './winAnsi.ts';

/** Layers of the print file in painting order: what a line means, and `page` for all that is not the piece. */
export const PDF_LAYERS = ['draw', 'score', 'cut-inside', 'cut', 'text', 'page'] as const;
export type PdfLayer = (typeof PDF_LAYERS)[number];

interface Stroke {
  readonly widthMm: number;
  /** 0 black to 1 white. */
  readonly grey: number;
  readonly dashMm: readonly number[];
}

/** Widths follow the steps of drawing practice (ISO 128-2, from memory): wide 0.25, narrow 0.13 and 0.18. */
const STROKES: Readonly<Record<PageLine['pen'] | 'centre-line' | 'text', Stroke>> = {
  cut: { widthMm: 0.25, grey: 0, dashMm: [] },
  'cut-inside': { widthMm: 0.25, grey: 0, dashMm: [] },
  score: { widthMm: 0.18, grey: 0.45, dashMm: [] },
  draw: { widthMm: 0.13, grey: 0.25, dashMm: [2.5, 1.2] },
  'centre-line': { widthMm: 0.13, grey: 0.25, dashMm: [8, 1.2, 0.6, 1.2] },
  text: { widthMm: 0.2, grey: 0.1, dashMm: [] },
  bar: { widthMm: 0.18, grey: 0, dashMm: [] },
  mark: { widthMm: 0.13, grey: 0, dashMm: [] },
  trim: { widthMm: 0.18, grey: 0.5, dashMm: [4, 2] },
  rule: { widthMm: 0.13, grey: 0.7, dashMm: [] },
  map: { widthMm: 0.13, grey: 0.15, dashMm: [] },
};
const TEXT_GREY = 0.4;
/** mm. How far a cubic may leave its arc, before rounding. */
const CUBIC_ERROR_MM = 0.00002;
/** A cubic over a quarter turn leaves the circle by this share of its radius; the share falls with the sixth power. */
const QUARTER_TURN_ERROR = 0.000273;

/** The content of a page in the page's own millimetres. */
export function pdfPageContent(page: Page): string {
  const parts: string[] = [];
  for (const layer of PDF_LAYERS) {
    const inside =
      layer === 'page' ? pageOwn(page) : page.placements.map((placed) => placedLayer(placed, layer)).join('');
    if (inside !== '') parts.push(`/OC /${layer} BDC\n${inside}EMC\n`);
  }
  return parts.join('');
}

function pageOwn(page: Page): string {
  const lines = page.lines.map((line) => stroke(STROKES[line.pen]) + pdfPath(line.chain) + paint(line.chain));
  return lines.join('') + page.texts.map(textRun).join('');
}

function placedLayer(placed: PlacedDrawing, layer: Exclude<PdfLayer, 'page'>): string {
  const { drawing, window } = placed;
  const chains: string[] = [];
  const add = (style: Stroke, chain: Chain<'drawing'>): void => {
    const onPage = placedChain(placed, chain);
    chains.push(stroke(style) + pdfPath(onPage) + paint(onPage));
  };
  for (const line of drawing.lines) if (line.meaning === layer) add(STROKES[styleOf(line)], line.chain);
  if (layer === 'text')
    for (const lettering of drawing.lettering)
      for (const chain of letteringStrokes(lettering)) add(STROKES.text, chain);
  if (layer === 'cut')
    for (const chain of drawing.filled ?? []) chains.push(`0 g\n${pdfPath(placedChain(placed, chain))}f\n`);
  if (chains.length === 0) return '';
  const clip = [window.min.x, window.min.y, window.max.x - window.min.x, window.max.y - window.min.y];
  return `q\n${clip.map(millimetres).join(' ')} re W n\n${chains.join('')}Q\n`;
}

function styleOf(line: DrawnLine): keyof typeof STROKES {
  return line.centreLine === true ? 'centre-line' : line.meaning;
}

function stroke(style: Stroke): string {
  return `${millimetres(style.widthMm)} w ${style.grey} G [${style.dashMm.join(' ')}] 0 d\n`;
}

function paint(chain: Chain<Frame>): string {
  return chain.closed ? 's\n' : 'S\n';
}

/** The path of a chain in PDF's own words, its arcs as cubics. */
export function pdfPath<F extends Frame>(chain: Chain<F>): string {
  const first = chain.vertices[0];
  if (!first) return '';
  const short = shortArcs(chain, cubicTurn);
  return `${millimetres(first.x)} ${millimetres(first.y)} m\n${segments(short).map(curve).join('')}`;
}

/** The turn that one cubic may take on a circle of this radius. */
function cubicTurn(radiusMm: number): number {
  const share = CUBIC_ERROR_MM / (QUARTER_TURN_ERROR * Math.max(radiusMm, CUBIC_ERROR_MM));
  return (Math.PI / 2) * Math.min(1, power(share, 1 / 6));
}

function curve<F extends Frame>(segment: Segment<F>): string {
  const { start, end } = segment;
  const arc = arcOf(segment);
  const to = `${millimetres(end.x)} ${millimetres(end.y)}`;
  if (arc === null) return `${to} l\n`;
  const reach = (4 / 3) * tan(arc.sweepRad / 4);
  const { centre } = arc;
  const controls = [
    start.x - reach * (start.y - centre.y),
    start.y + reach * (start.x - centre.x),
    end.x + reach * (end.y - centre.y),
    end.y - reach * (end.x - centre.x),
  ];
  return `${controls.map(millimetres).join(' ')} ${to} c\n`;
}

function textRun(text: PageText): string {
  const cosine = cos(text.turnRad);
  const sine = sin(text.turnRad);
  const back =
    { start: 0, middle: 0.5, end: 1 }[text.anchor] * marginTextWidthMm(text.text, text.sizeMm, text.bold);
  const place = [text.at.x - back * cosine, text.at.y - back * sine];
  const matrix = [cosine, sine, -sine, cosine, ...place].map(millimetres).join(' ');
  const face = text.bold ? 'Bold' : 'Plain';
  const tone = text.tone === 'black' ? 0 : TEXT_GREY;
  return `BT /${face} ${millimetres(text.sizeMm)} Tf ${tone} g ${matrix} Tm <${winAnsiHex(text.text)}> Tj ET\n`;
}
