import { hypot, type Point, point } from '../../base/index.ts';
import type { EdgePoint } from '../body/bodyTrace.ts';
import type { OutlineSection } from '../body/templateStations.ts';

/** Where an outline is expected in a picture, by side, section and the share of the way up along the section. */
export type ExpectedPlace = (
  side: EdgePoint['side'],
  section: OutlineSection,
  share: number,
) => Point<'photo'>;

/** mm. One standard deviation of a place that is only expected. */
const EXPECTED_SIGMA_MM = 1;
/** Share of a section to either side over which its direction is taken. */
const BESIDE = 0.004;

/**
 * The stations of a traced edge where an outline is expected, each with the normal of the expected line: bridged,
 * until the picture is looked at there.
 */
export function expectedEdge(
  edge: readonly EdgePoint[],
  placeOf: ExpectedPlace,
  pxPerMm: number,
): readonly EdgePoint[] {
  const reach = sectionReach(edge);
  const laid = edge.map((place) => {
    const { side, section, along } = place;
    const [from, to] = reach.get(section) as readonly [number, number];
    const share = to > from ? (along - from) / (to - from) : 0.5;
    const before = placeOf(side, section, Math.max(0, share - BESIDE));
    const after = placeOf(side, section, Math.min(1, share + BESIDE));
    const [dx, dy] = [after.x - before.x, after.y - before.y];
    const long = hypot(dx, dy) || 1;
    return { place, at: placeOf(side, section, share), nx: dy / long, ny: -dx / long };
  });
  // Outward lies on one hand of the way up along a side: on the same as on the traced edge by and large.
  const hand = (name: EdgePoint['side']): number =>
    Math.sign(
      laid.reduce(
        (sum, { place, nx, ny }) =>
          sum + (place.side === name ? nx * place.normal.x + ny * place.normal.y : 0),
        0,
      ),
    );
  const hands = { bass: hand('bass'), treble: hand('treble') };
  return laid.map(({ place, at, nx, ny }): EdgePoint => {
    const sign = hands[place.side];
    return {
      ...place,
      point: at,
      normal: point(sign * nx, sign * ny),
      state: 'bridged',
      sigmaPx: EXPECTED_SIGMA_MM * pxPerMm,
    };
  });
}

function sectionReach(edge: readonly EdgePoint[]): Map<OutlineSection, readonly [number, number]> {
  const reach = new Map<OutlineSection, readonly [number, number]>();
  for (const { section, along } of edge) {
    const [from, to] = reach.get(section) ?? [along, along];
    reach.set(section, [Math.min(from, along), Math.max(to, along)]);
  }
  return reach;
}
