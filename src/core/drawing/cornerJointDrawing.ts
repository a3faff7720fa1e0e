import {
  boundsOf,
  type Chain,
  chainThrough,
  lengthOf,
  placeAlong,
  placeChain,
  subChain,
} from '../curve/index.ts';
import type { CornerJoint, PlanParts } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';
import { ribJointNote } from './ribNotes.ts';

/** How much larger than true size the corners are shown: of a large instrument less, so that they fit a sheet. */
const enlargedBy = (scale: number): number => (scale > 1.5 ? 3 : 5);

/** mm of the instrument, at the usual size, that is shown to both sides of a corner. */
const SHOWN_MM = 11;

/** mm. The caption needs so much. */
const LEAST_WIDTH_MM = 110;

/** mm on the sheet: between both corners and round them, and height of the words. */
const GAP_MM = 12;
const WORD_MM = 2.6;

/** Both treble corners enlarged: edge of the plate, both ribs with their ends, the seam between them, the block. */
export function cornerJointDrawing(parts: PlanParts): Drawing {
  const scale = letteringScale(parts.outline.bodyLengthMm);
  const times = enlargedBy(scale) === 3 ? 'three' : 'five';
  const lower = corner(parts, 'lower', scale);
  const upper = corner(parts, 'upper', scale);
  const [lowBox, upBox] = [boxOf(lower), boxOf(upper)];
  const stackedMm = lowBox.max.y - upBox.min.y + GAP_MM * scale;
  const pictures = [lower, upper.map((line) => moved(line, 0, stackedMm))];
  const all = pictures.flat();
  const box = boxOf(all);
  const edgeMm = GAP_MM * scale;
  const caption = captionBelow(
    [
      `RIB CORNERS, ${times.toUpperCase()} TIMES TRUE SIZE`,
      parts.name,
      'upper and lower treble corner, seen from the top; from outside in: edge of the plate, ribs, block',
      ...(['lower', 'upper'] as const).map((which) => cornerText(parts, which)),
    ],
    { x: box.min.x, y: box.min.y },
    { scale: 1, mostMm: Math.max(LEAST_WIDTH_MM, box.max.x - box.min.x) },
  );
  const names = pictures.map((lines, index) => nameOf(index === 0 ? 'lower corner' : 'upper corner', lines));
  const bottom = Math.min(...caption.map(({ at }) => at.y)) - edgeMm / 2;
  const right =
    Math.max(box.min.x + LEAST_WIDTH_MM, ...names.map(rightOf), ...caption.map(rightOf)) + edgeMm / 2;
  const frame = chainThrough<'drawing'>(
    [
      { x: box.min.x - edgeMm / 2, y: bottom },
      { x: right, y: bottom },
      { x: right, y: box.max.y + edgeMm / 2 },
      { x: box.min.x - edgeMm / 2, y: box.max.y + edgeMm / 2 },
    ],
    true,
  );
  const around = boundsOf(frame);
  return {
    name: 'rib-corners',
    title: `Rib corners, ${times} times true size`,
    part: 'ribs',
    lines: [
      { meaning: 'draw', chain: frame },
      ...all.map(({ chain, isSeam }): DrawnLine => ({ meaning: isSeam ? 'score' : 'draw', chain })),
    ],
    lettering: [...caption, ...names],
    notes: [
      `For looking at, not for measuring: ${times} times as large as the instrument. The full lines are the cuts.`,
      ribJointNote(parts.ribs),
    ],
    count: 1,
    routes: ['print'],
    checks: sizeChecks(around),
  };
}

interface PictureLine {
  readonly chain: Chain<'drawing'>;
  readonly isSeam?: true;
}

function corner(parts: PlanParts, which: 'lower' | 'upper', scale: number): readonly PictureLine[] {
  const { ribs, outline } = parts;
  const [reach, enlarged] = [SHOWN_MM * scale, enlargedBy(scale)];
  const joint = ribs.joints[which];
  const [from, to] =
    which === 'lower' ? (['lowerBout', 'cBout'] as const) : (['cBout', 'upperBout'] as const);
  const near = [outline.half, ribs.outer.sections, ribs.inner.sections].flatMap((sections) => [
    lastOf(sections[from], reach),
    firstOf(sections[to], reach),
  ]);
  const plate = outline[`${which}Corner`];
  const ends = which === 'lower' ? [plate.boutTip, plate.waistTip] : [plate.waistTip, plate.boutTip];
  const tip = which === 'lower' ? ribs.inner.lowerCorner : ribs.inner.upperCorner;
  const at = { x: (tip.from.x + tip.to.x) / 2, y: (tip.from.y + tip.to.y) / 2 };
  const place = (chain: Chain<'body'>): Chain<'drawing'> =>
    placeChain<'drawing', 'body'>(chain, {
      turnRad: 0,
      shift: [-enlarged * at.x, -enlarged * at.y],
      scale: enlarged,
    });
  const cuts = cutsOf(joint, tip.kind === 'flat' ? chainThrough([tip.from, tip.to], false) : undefined);
  return [
    ...near.map((chain) => ({ chain: place(chain) })),
    { chain: place(chainThrough(ends, false)) },
    ...cuts.map((chain) => ({ chain: place(chain), isSeam: true as const })),
  ].filter(({ chain }) => chain.vertices.length > 1);
}

/** Every cut once: the seam, the ends of both ribs up to it, and the end of the block between them. */
function cutsOf(joint: CornerJoint, blockEnd: Chain<'body'> | undefined): readonly Chain<'body'>[] {
  if (!joint.seam) return [joint.arrivingEnd, joint.leavingEnd, ...(blockEnd ? [blockEnd] : [])];
  // Both ends run along the seam last; what goes before it is the end of the corner.
  const before = [joint.arrivingEnd, joint.leavingEnd].map(({ vertices }) => ({
    closed: false,
    vertices: vertices.slice(0, -1),
  }));
  return [joint.seam, ...before];
}

function cornerText({ ribs }: PlanParts, which: 'lower' | 'upper'): string {
  const { bevelRad, openingRad, blockShowsMm } = ribs.joints[which];
  const end = ribs.outer[`${which}Corner`].widthMm;
  const bevels = `bevels: outer rib ${degrees(bevelRad.bout)}, waist rib ${degrees(bevelRad.waist)}`;
  const block = blockShowsMm > 0 ? `, block between ${blockShowsMm.toFixed(1)}` : '';
  const beside = `plate ${ribs.besideCornerMm[which].toFixed(1)} out beside it`;
  return `${which}: opens ${degrees(openingRad)}, end ${end.toFixed(1)} wide${block}, ${beside}; ${bevels}`;
}

/** The name of a corner, beside it. */
function nameOf(text: string, lines: readonly PictureLine[]): Lettering {
  const box = boxOf(lines);
  const at = { x: box.max.x + 2, y: (box.min.y + box.max.y) / 2 };
  return { text, at, heightMm: WORD_MM, turnRad: 0, anchor: 'start' };
}

function rightOf(lettering: Lettering): number {
  return lettering.at.x + letteringWidthMm(lettering);
}

function moved({ chain, isSeam }: PictureLine, x: number, y: number): PictureLine {
  const at = placeChain<'drawing', 'drawing'>(chain, { turnRad: 0, shift: [x, y] });
  return isSeam ? { chain: at, isSeam } : { chain: at };
}

function boxOf(lines: readonly PictureLine[]) {
  const boxes = lines.map(({ chain }) => boundsOf(chain));
  return {
    min: {
      x: Math.min(...boxes.map(({ min }) => min.x)),
      y: Math.min(...boxes.map(({ min }) => min.y)),
    },
    max: {
      x: Math.max(...boxes.map(({ max }) => max.x)),
      y: Math.max(...boxes.map(({ max }) => max.y)),
    },
  };
}

function lastOf(line: Chain<'body'>, lengthMm: number): Chain<'body'> {
  const whole = lengthOf(line);
  return subChain(line, placeAlong(line, Math.max(0, whole - lengthMm)), placeAlong(line, whole));
}

function firstOf(line: Chain<'body'>, lengthMm: number): Chain<'body'> {
  return subChain(line, placeAlong(line, 0), placeAlong(line, Math.min(lengthOf(line), lengthMm)));
}

function degrees(rad: number): string {
  return `${((rad * 180) / Math.PI).toFixed(0)}°`;
}
