import { distanceBetween } from '../base/index.ts';
import { boundsOf, mirrorChain, nearestOn } from '../curve/index.ts';
import { areaChain, type Instrument } from '../instrument/index.ts';
import { type ShownLine, shownLine } from './shownLine.ts';
import type { ShownSpan } from './shownSpan.ts';

/** What a line of the top is, where its sound holes are in question. */
export type HoleKind =
  | 'edge'
  | 'purfling'
  | 'ribInside'
  | 'block'
  | 'bar'
  | 'post'
  | 'bridge'
  | 'stop'
  | 'hole';

/** The top from outside with its sound holes and what stands near them. Millimetres, y down from the upper end. */
export interface ShownHoles {
  readonly lengthMm: number;
  readonly widthMm: number;
  /** From the centre line to the edge at the waist. */
  readonly waistHalfMm: number;
  readonly lines: readonly ShownLine<HoleKind>[];
  /**
   * Lengths that a hand can be laid on: between the eyes, the stop, and of one hole its length, its lower eye to the edge, and from the
   * bridge line up to its nick. Those of one hole are told of the treble one.
   */
  readonly spans: readonly ShownSpan[];
}

const HOLE_ANSWERS = [
  'holeLength',
  'upperEyeDiameter',
  'lowerEyeDiameter',
  'holeStemWidth',
  'holeTipGap',
  'nickAboveStop',
  'lowerEyeToEdge',
  'soundHoles.area',
  'soundHoles.turn',
  'soundHoles.nearestEdge',
];

/** The sound holes of an instrument to be looked at. */
export function shownHoles(instrument: Instrument): ShownHoles {
  const { plan, soundHoles, hollows, design } = instrument;
  const { outline, purfling, ribs, blocks } = plan;
  const top = outline.bodyLengthMm;
  const value = (name: keyof typeof design.values): number => design.values[name]?.value ?? Number.NaN;
  const [feet, thick] = [value('bridgeFeet') / 2, value('bridgeFootThickness') / 2];
  const { treble, bass, bridgeLineMm } = soundHoles;
  const rectangle = {
    closed: true,
    vertices: [
      { x: -feet, y: bridgeLineMm - thick, bulge: 0 },
      { x: feet, y: bridgeLineMm - thick, bulge: 0 },
      { x: feet, y: bridgeLineMm + thick, bulge: 0 },
      { x: -feet, y: bridgeLineMm + thick, bulge: 0 },
    ],
  };
  const stop = {
    closed: false,
    vertices: [
      { x: -outline.waist.widthMm / 2 - 6, y: bridgeLineMm, bulge: 0 },
      { x: outline.waist.widthMm / 2 + 6, y: bridgeLineMm, bulge: 0 },
    ],
  };
  return {
    lengthMm: top,
    widthMm: outline.lowerBout.widthMm,
    waistHalfMm: outline.waist.widthMm / 2,
    lines: [
      shownLine('edge', outline.chain, top, ['outline']),
      shownLine('purfling', purfling.outer.chain, top),
      shownLine('purfling', purfling.inner.chain, top),
      shownLine('ribInside', ribs.inner.chain, top),
      ...blocks.parts.flatMap(({ outline: shape, count }) =>
        count === 2
          ? [shownLine('block' as const, shape, top), shownLine('block' as const, mirrorChain(shape), top)]
          : [shownLine('block' as const, shape, top)],
      ),
      shownLine('bar', areaChain(hollows.barAndPost.bar), top, ['barLength', 'barThickness', 'bar.atBridge']),
      shownLine('post', areaChain(hollows.barAndPost.post), top, ['postDiameter', 'post.fromCentre']),
      shownLine('bridge', rectangle, top, ['bridgeFeet', 'bridgeFootThickness']),
      shownLine('stop', stop, top, ['stop']),
      shownLine('hole', treble, top, HOLE_ANSWERS),
      shownLine('hole', bass, top, HOLE_ANSWERS),
    ],
    spans: spansOf(instrument),
  };
}

function spansOf({ plan, soundHoles }: Instrument): readonly ShownSpan[] {
  const { treble, sizes, stopMm, bridgeLineMm, nickLineMm, upperEye, lowerEye, stem } = soundHoles;
  const { chain, bodyLengthMm } = plan.outline;
  const at = (x: number, y: number) => [x, bodyLengthMm - y] as const;
  const { min, max } = boundsOf(treble);
  const half = sizes.upperEyesApartMm / 2;
  const { point: edge } = nearestOn(chain, lowerEye.centre);
  const far = distanceBetween(edge, lowerEye.centre);
  const toRim = lowerEye.diameterMm / 2 / far;
  return [
    {
      name: 'upperEyesApart',
      from: at(-half, upperEye.centre.y),
      to: at(half, upperEye.centre.y),
      valueMm: sizes.upperEyesApartMm,
    },
    { name: 'stop', from: at(0, bodyLengthMm), to: at(0, bridgeLineMm), valueMm: stopMm },
    { name: 'holeLength', from: at(max.x, min.y), to: at(max.x, max.y), valueMm: sizes.lengthMm },
    {
      name: 'lowerEyeToEdge',
      from: at(
        lowerEye.centre.x + toRim * (edge.x - lowerEye.centre.x),
        lowerEye.centre.y + toRim * (edge.y - lowerEye.centre.y),
      ),
      to: at(edge.x, edge.y),
      valueMm: lowerEye.toEdgeMm,
    },
    {
      name: 'nickAboveStop',
      from: at(stem.outer.x, bridgeLineMm),
      to: at(stem.outer.x, nickLineMm),
      valueMm: nickLineMm - bridgeLineMm,
    },
  ];
}
