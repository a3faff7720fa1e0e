import { cos, type Finding, sin, tan } from '../base/index.ts';
import { boundsOf, type Chain, type Vertex } from '../curve/index.ts';
import type { Lettering } from './drawing.ts';
import { CAPITAL_UNITS, STROKE_ACCENTS, STROKE_GLYPHS, STROKE_TAILS } from './strokeGlyphs.ts';

const SPACE_UNITS = 6.5;
const GAP_UNITS = 3;
const SMALL_LETTER_TOP = 10;
const UNKNOWN = '0,0 8,0 8,14 0,14 z';
const QUARTER = tan(Math.PI / 8);

/** Signs that are written with others: typographic forms and fractions. */
const SPELT: readonly (readonly [RegExp, string])[] = [
  [/[‘’′]/g, "'"],
  [/[“”″]/g, '"'],
  [/[−‒]/g, '–'],
  [/…/g, '...'],
  [/½/g, '1/2'],
  [/¼/g, '1/4'],
  [/¾/g, '3/4'],
  [/⅛/g, '1/8'],
  [/⅜/g, '3/8'],
  [/⅝/g, '5/8'],
  [/⅞/g, '7/8'],
  [/[•∙⋅]/g, '·'],
  [/[\s\u00a0]/g, ' '],
];

interface Glyph {
  readonly strokes: readonly Chain<'drawing'>[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/**
 * The strokes that write a lettering: open and closed chains, drawing frame, millimetres.
 *
 * Written left to right and glyph by glyph. A character that the letters do not hold is written as an
 * upright box; {@link letteringFindings} names it.
 */
export function letteringStrokes(lettering: Lettering): Chain<'drawing'>[] {
  const scale = lettering.heightMm / CAPITAL_UNITS;
  const width = letteringWidthMm(lettering);
  const start = { start: 0, middle: -width / 2, end: -width }[lettering.anchor];
  const cosine = cos(lettering.turnRad);
  const sine = sin(lettering.turnRad);
  return set(lettering.text).flatMap(({ glyph, at }) =>
    glyph.strokes.map((stroke) => ({
      closed: stroke.closed,
      vertices: stroke.vertices.map((vertex) => {
        const x = start + (at + vertex.x) * scale;
        const y = vertex.y * scale;
        return {
          x: lettering.at.x + x * cosine - y * sine,
          y: lettering.at.y + x * sine + y * cosine,
          bulge: vertex.bulge,
        };
      }),
    })),
  );
}

/** The width of the ink of a lettering along its base line, in millimetres. */
export function letteringWidthMm(lettering: Pick<Lettering, 'text' | 'heightMm'>): number {
  const last = set(lettering.text).at(-1);
  return last === undefined ? 0 : ((last.at + last.glyph.right) * lettering.heightMm) / CAPITAL_UNITS;
}

/** One caution for each character of the letterings that has no strokes; none when every one can be written. */
export function letteringFindings(letterings: readonly Lettering[]): Finding[] {
  const unknown = new Map<string, string>();
  for (const { text } of letterings)
    for (const cluster of clusters(text))
      if (cluster !== ' ' && strokesOf(cluster) === undefined && !unknown.has(cluster))
        unknown.set(cluster, text);
  return [...unknown].map(([character, text]) => ({
    code: 'lettering.unknown-character',
    weight: 'caution' as const,
    at: text,
    found: `the character "${character}", which our stroke letters do not hold`,
    need: 'Latin letters, figures and common signs',
    remedy: 'the piece shows a box in its place; spell the word another way',
  }));
}

function set(text: string): { readonly glyph: Glyph; readonly at: number }[] {
  const line: { glyph: Glyph; at: number }[] = [];
  let pen = 0;
  let space = 0;
  for (const cluster of clusters(text)) {
    if (cluster === ' ') {
      space += SPACE_UNITS;
      continue;
    }
    const glyph = strokesOf(cluster) ?? glyphOf(UNKNOWN);
    const at = line.length === 0 ? -glyph.left : pen + space - glyph.left;
    line.push({ glyph, at });
    pen = at + glyph.right + GAP_UNITS;
    space = 0;
  }
  return line;
}

function clusters(text: string): string[] {
  const spelt = SPELT.reduce((line, [sign, letters]) => line.replace(sign, letters), text);
  return spelt.normalize('NFD').match(/\P{M}\p{M}*/gu) ?? [];
}

function strokesOf(cluster: string): Glyph | undefined {
  const [letter = '', ...marks] = [...cluster];
  const topped = marks.some((mark) => mark in STROKE_ACCENTS);
  const dotless = topped && letter === 'i' ? 'ı' : topped && letter === 'j' ? 'ȷ' : letter;
  const written = own(STROKE_GLYPHS, dotless);
  if (written === undefined) return undefined;
  const base = glyphOf(written);
  const middle = (base.left + base.right) / 2;
  const strokes = [...base.strokes];
  for (const mark of marks) {
    const accent = own(STROKE_ACCENTS, mark);
    const form = accent ?? own(STROKE_TAILS, mark);
    if (form === undefined) return undefined;
    const lift = accent === undefined ? 0 : Math.max(0, base.top - SMALL_LETTER_TOP);
    strokes.push(...glyphOf(form).strokes.map((stroke) => shifted(stroke, middle, lift)));
  }
  return { ...base, strokes };
}

function own(table: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}

function shifted(stroke: Chain<'drawing'>, x: number, y: number): Chain<'drawing'> {
  return {
    closed: stroke.closed,
    vertices: stroke.vertices.map((vertex) => ({ ...vertex, x: vertex.x + x, y: vertex.y + y })),
  };
}

function glyphOf(written: string): Glyph {
  const strokes = written.split(' | ').map(strokeOf);
  const boxes = strokes.map((stroke) => boundsOf(stroke));
  return {
    strokes,
    left: Math.min(...boxes.map((box) => box.min.x)),
    right: Math.max(...boxes.map((box) => box.max.x)),
    top: Math.max(...boxes.map((box) => box.max.y)),
  };
}

function strokeOf(written: string): Chain<'drawing'> {
  const words = written.split(' ');
  const closed = words.at(-1) === 'z';
  const vertices = (closed ? words.slice(0, -1) : words).map((word): Vertex<'drawing'> => {
    const [place = '', turn = '0'] = word.split('~');
    const [x = '', y = ''] = place.split(',');
    return { x: Number(x), y: Number(y), bulge: bulgeOf(turn) };
  });
  return { closed, vertices };
}

function bulgeOf(turn: string): number {
  const sign = turn.startsWith('-') ? -1 : 1;
  const size = turn.replace('-', '');
  return sign * (size === 'h' ? 1 : size === 'q' ? QUARTER : Number(size));
}
