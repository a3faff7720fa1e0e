import { accept, Bug, type Checked, refuse } from '../../base/index.ts';
import { type Chain, intersections, joinChains, type Place, subChain } from '../../curve/index.ts';
import { closeAcrossCentre } from '../outline/halfLine.ts';
import type { SectionLines } from '../outline/sectionLines.ts';
import { endPlace, START } from './cornerBlock.ts';

/** The upper or the lower block in plan. Body frame, mm. */
export interface EndBlock {
  readonly which: 'lower' | 'upper';
  /** Closed, anticlockwise, symmetric. */
  readonly outline: Chain<'body'>;
  /** The part of the outline that the ribs are glued to, going anticlockwise. */
  readonly shaped: Chain<'body'>;
  readonly halfWidthMm: number;
  /** Height above the lower end of the flat face towards the inside of the body. */
  readonly faceStationMm: number;
  /** Treble half of the recess: from the centre line along the face, then along the side to the ribs. */
  readonly recess: Chain<'body'>;
  /** Where the side of the block meets the inner line of its bout. */
  readonly onBout: Place;
}

/**
 * An end block: a rectangle `depthMm` deep from the inner line on the centre line, shaped to the ribs outside.
 *
 * Fault: `blocks.end-block` when the inner line curves away past the block's face before the half width is reached.
 */
export function endBlock(
  inner: SectionLines,
  which: 'lower' | 'upper',
  widthMm: number,
  depthMm: number,
): Checked<EndBlock> {
  const bout = which === 'lower' ? inner.sections.lowerBout : inner.sections.upperBout;
  const onCentre = bout.vertices.at(which === 'lower' ? 0 : -1);
  if (onCentre === undefined) throw new Bug('a section has no vertex');
  const inward = which === 'lower' ? 1 : -1;
  const faceStationMm = onCentre.y + inward * depthMm;
  const halfWidthMm = widthMm / 2;
  const side = sideLine(halfWidthMm, onCentre.y - inward * depthMm, faceStationMm);
  const hit = intersections(bout, side)[0];
  if (hit === undefined)
    return refuse({
      code: 'blocks.end-block',
      at: `${which}BlockWidth`,
      found: `a block ${widthMm} mm wide and ${depthMm} mm deep whose sides miss the ribs`,
      need: 'sides that meet the ribs between the end of the body and the face of the block',
      remedy: `make the ${which} block narrower or deeper`,
    });
  const face: Chain<'body'> = {
    closed: false,
    vertices: [
      { x: 0, y: faceStationMm, bulge: 0 },
      { x: halfWidthMm, y: faceStationMm, bulge: 0 },
      { x: hit.point.x, y: hit.point.y, bulge: 0 },
    ],
  };
  const half =
    which === 'lower'
      ? joinChains(subChain(bout, START, hit.a), { closed: false, vertices: face.vertices.toReversed() })
      : joinChains(face, subChain(bout, hit.a, endPlace(bout)));
  const outline = closeAcrossCentre(half);
  return accept({
    which,
    outline,
    shaped: shapedPart(outline, which),
    halfWidthMm,
    faceStationMm,
    recess: face,
    onBout: hit.a,
  });
}

/** From side to side round the end: the outline without its face and its two sides. */
function shapedPart(outline: Chain<'body'>, which: 'lower' | 'upper'): Chain<'body'> {
  const count = outline.vertices.length;
  const treble = which === 'lower' ? count / 2 - 2 : 1;
  const bass = count - 1 - treble;
  const [from, to] = which === 'lower' ? [bass, treble] : [treble, bass];
  return subChain(
    outline,
    { segment: from, fraction: 0 },
    { segment: (to - 1 + count) % count, fraction: 1 },
  );
}

function sideLine(xMm: number, fromMm: number, toMm: number): Chain<'body'> {
  const vertices = [
    { x: xMm, y: fromMm, bulge: 0 },
    { x: xMm, y: toMm, bulge: 0 },
  ];
  return { closed: false, vertices };
}
