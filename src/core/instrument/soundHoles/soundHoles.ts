import { accept, type Checked, type Finding, type Point, point, refuse } from '../../base/index.ts';
import {
  mirrorChain,
  nearestOnSpans,
  placeChain,
  reverseChain,
  type Span,
  sampleChain,
  spansOf,
} from '../../curve/index.ts';
import { type Design, type ValueName } from '../../design/index.ts';
import { HOLE_SHAPE } from '../../knowledge/index.ts';
import { wrongLength } from '../wrongLength.ts';
import { dividerRule } from './dividerRule.ts';
import type { DraftedHole, HoleSizes } from './draftHole.ts';
import { layHole } from './layHole.ts';
import type { HoleSurroundings, PlacedEye, PlacedHoles } from './placedHoles.ts';
import { reachUnder } from './reachUnder.ts';
import { soundHoleFindings } from './soundHoleFindings.ts';

/** The sound holes of a top, and what is to be minded of them. */
export interface SoundHoles extends PlacedHoles {
  readonly findings: readonly Finding[];
}

const NAMES: readonly ValueName[] = [
  'holeLength',
  'upperEyesApart',
  'upperEyeDiameter',
  'lowerEyeDiameter',
  'holeStemWidth',
  'holeTipGap',
  'lowerEyeToEdge',
  'stop',
];

/**
 * The sound holes of a design on its outline, as {@link layHole} lays them: the inner nicks at the stop, the upper eyes at their
 * distance from each other, the lower eye at its distance from the edge.
 *
 * Faults: `soundHoles.value`, `soundHoles.off-body`, those of {@link draftHole}. Findings: those of {@link soundHoleFindings}.
 */
export function soundHolesOfDesign(design: Design, around: HoleSurroundings): Checked<SoundHoles> {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const wrong = NAMES.filter((name) => !(value(name) > 0 && Number.isFinite(value(name))));
  const nickMm = design.values.nickAboveStop?.value ?? Number.NaN;
  if (wrong.length > 0 || !Number.isFinite(nickMm))
    return refuse(
      ...wrong.map((name) => wrongLength('soundHoles.value', name, value(name))),
      ...(Number.isFinite(nickMm)
        ? []
        : [wrongLength('soundHoles.value', 'nickAboveStop', nickMm, 'a length, 0 at the stop')]),
    );
  const edge = spansOf(around.outline.chain);
  const stopMm = value('stop');
  const bridgeLineMm = around.outline.bodyLengthMm - stopMm;
  const nickLineMm = bridgeLineMm + nickMm;
  const sizes: HoleSizes = {
    lengthMm: value('holeLength'),
    upperEyesApartMm: value('upperEyesApart'),
    upperEyeMm: value('upperEyeDiameter'),
    lowerEyeMm: value('lowerEyeDiameter'),
    stemMm: value('holeStemWidth'),
    tipGapMm: value('holeTipGap'),
  };
  const shape = design.holeShape?.shape ?? HOLE_SHAPE;
  const lowerEyeToEdgeMm = value('lowerEyeToEdge');
  const laid = layHole({ sizes, shape, nickLineMm, lowerEyeToEdgeMm }, edge);
  if (!laid.ok) return laid;
  const { hole, way, onBody } = laid.value;
  const treble = placeChain<'body', 'section'>(hole.chain, way);
  const eye = (at: DraftedHole['upper']['eye']): PlacedEye => ({
    centre: onBody(at.centre),
    diameterMm: 2 * at.radiusMm,
    toEdgeMm: nearestOnSpans(edge, onBody(at.centre)).distanceMm - at.radiusMm,
  });
  const holes: PlacedHoles = {
    sizes,
    hole,
    turnRad: way.turnRad,
    treble,
    bass: reverseChain(mirrorChain(treble)),
    stopMm,
    bridgeLineMm,
    nickLineMm,
    upperEye: eye(hole.upper.eye),
    lowerEye: eye(hole.lower.eye),
    innerNick: onBody(hole.innerNick.apex),
    outerNick: onBody(hole.outerNick.apex),
    stem: { inner: onBody(hole.innerNick.foot), outer: onBody(hole.acrossStem) },
    nearestEdge: nearestOf(sampleChain(treble, FOLLOWED_MM), edge),
    cornerBlockUnderMm: reachUnder(treble, around.blocks.lowerCorner.outline),
    rule: dividerRule(around.outline.bodyLengthMm, (sizes.upperEyesApartMm + sizes.upperEyeMm) / 2),
  };
  const { faults, findings } = soundHoleFindings(design, holes, around);
  return faults.length > 0 ? refuse(...faults) : accept({ ...holes, findings });
}

/** mm. A hole is followed this finely where its distance from other things is looked for. */
const FOLLOWED_MM = 0.05;

function nearestOf(places: readonly Point<'body'>[], edge: readonly Span<'body'>[]) {
  let best = { at: places[0] ?? point<'body'>(0, 0), distanceMm: Infinity };
  for (const at of places) {
    const { distanceMm } = nearestOnSpans(edge, at, best.distanceMm);
    if (distanceMm < best.distanceMm) best = { at, distanceMm };
  }
  return best;
}
