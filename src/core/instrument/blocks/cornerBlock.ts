import { accept, Bug, type Checked, type Fault, type Point, refuse } from '../../base/index.ts';
import {
  type Chain,
  intersections,
  joinChains,
  lengthOf,
  type Place,
  placeAlong,
  pointAlong,
  segments,
  subChain,
} from '../../curve/index.ts';
import { type SectionLines, tipLine } from '../outline/sectionLines.ts';

/** A corner block in plan, treble side, as it fills its recess in the form. Body frame, mm. */
export interface CornerBlock {
  readonly which: 'lower' | 'upper';
  /** Closed, anticlockwise: two square faces in the recess, the rest the inner face of the ribs. */
  readonly outline: Chain<'body'>;
  /** The part of the outline that the ribs are glued to, going anticlockwise. */
  readonly shaped: Chain<'body'>;
  /** The two faces, from the end of `shaped` to its start. */
  readonly recess: Chain<'body'>;
  /** Where the two faces meet. */
  readonly recessCorner: Point<'body'>;
  /** Where the recess begins on the inner lines of waist and bout. */
  readonly onWaist: Place;
  readonly onBout: Place;
}

/**
 * A corner block: one face parallel to the centre line, from where the inner waist line is `alongWaistMm` from its
 * end, and one square to it, from where the inner bout line is `alongBoutMm` from its end.
 *
 * Square faces saw easily, and the block's thin end meets the waist rib at a fair angle.
 * Fault: `blocks.corner-reach` when the reaches leave no block or run over the whole section.
 */
export function cornerBlock(
  inner: SectionLines,
  which: 'lower' | 'upper',
  alongWaistMm: number,
  alongBoutMm: number,
): Checked<CornerBlock> {
  const waist = inner.sections.cBout;
  const bout = which === 'lower' ? inner.sections.lowerBout : inner.sections.upperBout;
  const waistMm = lengthOf(waist);
  const boutMm = lengthOf(bout);
  if (2 * alongWaistMm >= waistMm || alongBoutMm >= boutMm)
    return refuse(reachFault(which, `reaches of ${alongWaistMm} and ${alongBoutMm} mm`));
  const waistAt = which === 'lower' ? alongWaistMm : waistMm - alongWaistMm;
  const boutAt = which === 'lower' ? boutMm - alongBoutMm : alongBoutMm;
  const onWaist = placeAlong(waist, waistAt);
  const onBout = placeAlong(bout, boutAt);
  const waistPoint = pointAlong(waist, waistAt);
  const boutPoint = pointAlong(bout, boutAt);
  const recessCorner: Point<'body'> = { x: waistPoint.x, y: boutPoint.y };
  const towardsCorner = which === 'lower' ? waistPoint.y - boutPoint.y : boutPoint.y - waistPoint.y;
  if (waistPoint.x >= boutPoint.x || towardsCorner <= 0)
    return refuse(reachFault(which, 'faces that do not enclose a block'));
  const inWood =
    intersections(straight(waistPoint, recessCorner), waist).length === 1 &&
    intersections(straight(recessCorner, boutPoint), bout).length === 1;
  if (!inWood) return refuse(reachFault(which, 'a face that leaves the form and comes back'));
  const shaped =
    which === 'lower'
      ? joinChains(
          subChain(bout, onBout, endPlace(bout)),
          ...tipLine(inner.lowerCorner),
          subChain(waist, START, onWaist),
        )
      : joinChains(
          subChain(waist, onWaist, endPlace(waist)),
          ...tipLine(inner.upperCorner),
          subChain(bout, START, onBout),
        );
  return accept({
    which,
    outline: { closed: true, vertices: [...shaped.vertices, { ...recessCorner, bulge: 0 }] },
    shaped,
    recess: faces(shaped, recessCorner),
    recessCorner,
    onWaist,
    onBout,
  });
}

function straight(from: Point<'body'>, to: Point<'body'>): Chain<'body'> {
  return { closed: false, vertices: [from, to].map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

function faces(shaped: Chain<'body'>, corner: Point<'body'>): Chain<'body'> {
  const points = [...shaped.vertices.slice(-1), corner, ...shaped.vertices.slice(0, 1)];
  return { closed: false, vertices: points.map(({ x, y }) => ({ x, y, bulge: 0 })) };
}

/** The start of any chain. */
export const START: Place = { segment: 0, fraction: 0 };

/** The end of an open chain. */
export function endPlace(chain: Chain<'body'>): Place {
  const count = segments(chain).length;
  if (count === 0) throw new Bug('a section has no segment');
  return { segment: count - 1, fraction: 1 };
}

function reachFault(which: string, found: string): Fault {
  return {
    code: 'blocks.corner-reach',
    at: `${which}CornerBlockAlongWaist`,
    found,
    need: 'two square faces that meet inside the form, well short of the middle of the waist',
    remedy: `change the reach of the ${which} corner block along the waist or along the bout`,
  };
}
