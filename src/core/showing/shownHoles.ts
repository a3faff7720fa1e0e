import { mirrorChain } from '../curve/index.ts';
import { areaChain, type Instrument } from '../instrument/index.ts';
import { type ShownLine, shownLine } from './shownLine.ts';

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
  readonly lines: readonly ShownLine<HoleKind>[];
  /** Of the bridge line, above the lower end. */
  readonly bridgeLineMm: number;
  /** Of the upper eyes, above the lower end; and how far apart their rims are. */
  readonly upperEyesMm: number;
  readonly upperEyesApartMm: number;
}

const HOLE_ANSWERS = [
  'holeLength',
  'upperEyeDiameter',
  'lowerEyeDiameter',
  'holeStemWidth',
  'holeTipGap',
  'nickAboveStop',
  'lowerEyeToEdge',
];

/** The sound holes of an instrument to be looked at. */
export function shownHoles(instrument: Instrument): ShownHoles {
  const { plan, soundHoles, hollows, design } = instrument;
  const { outline, purfling, ribs, blocks } = plan;
  const top = outline.bodyLengthMm;
  const value = (name: keyof typeof design.values): number => design.values[name]?.value ?? Number.NaN;
  const [feet, thick] = [value('bridgeFeet') / 2, value('bridgeFootThickness') / 2];
  const { treble, bass, bridgeLineMm, upperEye } = soundHoles;
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
      shownLine('bar', areaChain(hollows.barAndPost.bar), top, ['barLength', 'barThickness']),
      shownLine('post', areaChain(hollows.barAndPost.post), top, ['postDiameter', 'post.fromCentre']),
      shownLine('bridge', rectangle, top, ['bridgeFeet', 'bridgeFootThickness']),
      shownLine('stop', stop, top, ['stop']),
      shownLine('hole', treble, top, HOLE_ANSWERS),
      shownLine('hole', bass, top, HOLE_ANSWERS),
    ],
    bridgeLineMm,
    upperEyesMm: upperEye.centre.y,
    upperEyesApartMm: value('upperEyesApart'),
  };
}
