import {
  accept,
  type Checked,
  type Fault,
  type Finding,
  type Point,
  point,
  refuse,
} from '../../base/index.ts';
import {
  mirrorChain,
  nearestOnSpans,
  placeChain,
  reverseChain,
  type Span,
  sampleChain,
  spansOf,
} from '../../curve/index.ts';
import { type Design, VALUES, type ValueName } from '../../design/index.ts';
import { HOLE_SHAPE, type HoleShapeHabit } from '../../knowledge/index.ts';
import { dividerRule } from './dividerRule.ts';
import { type DraftedHole, draftHole, type HoleSizes } from './draftHole.ts';
import type { HoleSurroundings, PlacedEye, PlacedHoles } from './placedHoles.ts';
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
  'stop',
];

/**
 * The sound holes of a design on its outline.
 *
 * The inner nicks stand at the stop, the upper eyes at their distance from each other; the lower eye lies where the shape has
 * it, or at its distance from the edge where that is given.
 * Faults: `soundHoles.value`, `soundHoles.off-body`, `soundHoles.eye-to-edge`, those of {@link draftHole}. Findings: those of {@link soundHoleFindings}.
 */
export function soundHolesOfDesign(design: Design, around: HoleSurroundings): Checked<SoundHoles> {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const wrong = NAMES.concat(design.values.lowerEyeToEdge ? ['lowerEyeToEdge'] : []).filter(
    (name) => !(value(name) > 0 && Number.isFinite(value(name))),
  );
  const nickMm = design.values.nickAboveStop?.value ?? Number.NaN;
  if (wrong.length > 0 || !Number.isFinite(nickMm))
    return refuse(
      ...wrong.map((name) => noLength(name, value(name), 'a length above 0 mm')),
      ...(Number.isFinite(nickMm) ? [] : [noLength('nickAboveStop', nickMm, 'a length, 0 at the stop')]),
    );
  const edge = spansOf(around.outline.chain);
  const stopMm = value('stop');
  const bridgeLineMm = around.outline.bodyLengthMm - stopMm;
  const nickLineMm = bridgeLineMm + nickMm;
  const asked: HoleSizes = {
    lengthMm: value('holeLength'),
    upperEyesApartMm: value('upperEyesApart'),
    upperEyeMm: value('upperEyeDiameter'),
    lowerEyeMm: value('lowerEyeDiameter'),
    stemMm: value('holeStemWidth'),
    tipGapMm: value('holeTipGap'),
  };
  const shape = design.holeShape?.shape ?? HOLE_SHAPE;
  const free = draftHole(asked, shape);
  if (!free.ok) return free;
  const toEdgeMm = design.values.lowerEyeToEdge?.value;
  const eyeXMm =
    toEdgeMm === undefined
      ? free.value.lower.eye.centre.x
      : eyeAtEdge(edge, nickLineMm + free.value.lower.eye.centre.y, asked.lowerEyeMm / 2 + toEdgeMm);
  if (eyeXMm === undefined) return refuse(noEyePlace(toEdgeMm ?? Number.NaN));
  const { hole, sizes } =
    toEdgeMm === undefined
      ? { hole: free.value, sizes: asked }
      : draftToward(asked, shape, free.value, eyeXMm);
  const onBody = ({ x, y }: Point<'section'>): Point<'body'> => point(x, y + nickLineMm);
  const treble = placeChain<'body', 'section'>(hole.chain, { turnRad: 0, shift: [0, nickLineMm] });
  const nearestEdge = nearestOf(sampleChain(treble, FOLLOWED_MM), edge);
  const eye = (at: DraftedHole['upper']['eye']): PlacedEye => ({
    centre: onBody(at.centre),
    diameterMm: 2 * at.radiusMm,
    toEdgeMm: nearestOnSpans(edge, onBody(at.centre)).distanceMm - at.radiusMm,
  });
  const holes: PlacedHoles = {
    sizes,
    hole,
    treble,
    bass: reverseChain(mirrorChain(treble)),
    stopMm,
    bridgeLineMm,
    nickLineMm,
    upperEye: eye(hole.upper.eye),
    lowerEye: eye(hole.lower.eye),
    innerNick: onBody(hole.innerNick.apex),
    outerNick: onBody(hole.outerNick.apex),
    nearestEdge,
    rule: dividerRule(around.outline.bodyLengthMm, asked.upperEyesApartMm / 2 + asked.upperEyeMm / 2),
  };
  const { faults, findings } = soundHoleFindings(design, holes, around);
  return faults.length > 0 ? refuse(...faults) : accept({ ...holes, findings });
}

/** Halvings of the way that a lower eye is moved, where the whole of it leaves no hole. */
const EYE_HALVINGS = 12;

/** The hole with its lower eye moved to a place across, or as far toward it as leaves a hole. */
function draftToward(
  asked: HoleSizes,
  shape: HoleShapeHabit,
  free: DraftedHole,
  eyeXMm: number,
): { readonly hole: DraftedHole; readonly sizes: HoleSizes } {
  const whole = { ...asked, lowerEyeXMm: eyeXMm };
  const moved = draftHole(whole, shape);
  if (moved.ok) return { hole: moved.value, sizes: whole };
  let best = { hole: free, sizes: asked };
  let [low, high] = [free.lower.eye.centre.x, eyeXMm];
  for (let halving = 0; halving < EYE_HALVINGS; halving++) {
    const lowerEyeXMm = (low + high) / 2;
    const sizes = { ...asked, lowerEyeXMm };
    const tried = draftHole(sizes, shape);
    if (tried.ok) best = { hole: tried.value, sizes };
    if (tried.ok) low = lowerEyeXMm;
    else high = lowerEyeXMm;
  }
  return best;
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

/** Halvings until the place of an eye is settled to less than a micrometre. */
const HALVINGS = 32;

/** How far from the centre line a place of this level lies this far inside the edge; nothing where the plate is too narrow. */
function eyeAtEdge(edge: readonly Span<'body'>[], y: number, insetMm: number): number | undefined {
  const room = (x: number): number => nearestOnSpans(edge, point<'body'>(x, y)).distanceMm;
  let [low, high] = [0, room(0)];
  if (!(high > insetMm)) return undefined;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (room(middle) > insetMm) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function noLength(name: ValueName, value: number, need: string): Fault {
  return {
    code: 'soundHoles.value',
    at: name,
    found: Number.isFinite(value) ? `${value} mm` : 'no value',
    need,
    remedy: `correct it: the ${VALUES[name].says}`,
  };
}

function noEyePlace(toEdgeMm: number): Fault {
  return {
    code: 'soundHoles.eye-to-edge',
    at: 'lowerEyeToEdge',
    found: `a lower eye ${toEdgeMm} mm from the edge`,
    need: 'a distance that leaves the eye on its own half of the top',
    remedy: 'give the distance from the rim of the eye to the nearest place of the edge',
  };
}
