import { accept, type Checked, distanceBetween, type Keeper, refuse } from '../../base/index.ts';
import { type Family, outlineHabit } from '../../knowledge/index.ts';
import {
  edgeInScene,
  joinedEdges,
  type MeantWishes,
  purflingPlane,
  type RestoredOutline,
  restoreOutline,
  type SeenPurfling,
  type View,
  viewMap,
} from '../../photo/index.ts';
import { type SeenBody, sceneWay } from './seenBody.ts';
import type { TraceRequest } from './traceRequest.ts';

/** The outline as meant from the bodies of all photographs, and how far these lay apart. */
export interface RestoredFromAll {
  readonly outline: RestoredOutline;
  readonly apart: { readonly rmsMm: number; readonly maxMm: number } | null;
}

/** The seen edges brought to the scene, joined and restored, all views stretched alike. Faults: those of restoring. */
export function restoreSeen(
  all: readonly [SeenBody, ...SeenBody[]],
  stretch: View['stretch'] | null,
  face: 'top' | 'back',
  meant: TraceRequest['meant'],
  keeper: Keeper,
): Checked<RestoredFromAll> {
  const [first, ...others] = all;
  const anew = () => restoredAnew(all, stretch, face, meant);
  return others.length > 0
    ? anew()
    : keeper(first.trace, 'restored', [first.view, stretch, face, meant], anew);
}

/** A rough outline of one body to look again from, where restoring it refused for arcs that cross at a corner not seen. */
export function restoreRoughly(
  seen: SeenBody,
  face: 'top' | 'back',
  meant: TraceRequest['meant'],
): Checked<RestoredFromAll> {
  return restoredAnew([seen], null, face, meant, true);
}

function restoredAnew(
  all: readonly [SeenBody, ...SeenBody[]],
  stretch: View['stretch'] | null,
  face: 'top' | 'back',
  meant: TraceRequest['meant'],
  isRough = false,
): Checked<RestoredFromAll> {
  const [first, ...others] = all;
  const start = placed(first, stretch, face);
  const joined = joinedEdges([start.edge, ...others.map((one) => placed(one, stretch, face).edge)]);
  const found = restoreOutline(
    joined.edge,
    start.start,
    outlineHabit(familyOfSeen(first)),
    face,
    wishesOf(meant),
    purflingInScene(first, stretch),
    isRough,
  );
  return found.ok
    ? accept({ outline: found.value, apart: joined.apart })
    : refuse(...found.faults.map((fault) => ({ ...fault, at: 'photograph' })));
}

function wishesOf(meant: TraceRequest['meant']): MeantWishes {
  if (!meant) return {};
  const { slow, asymmetry, stretches, cornerEnd } = meant;
  return {
    ...(slow && { slow }),
    ...(asymmetry && { asymmetry }),
    ...(cornerEnd && {
      cornerEndMm: {
        ...(cornerEnd.upper !== undefined && { upper: cornerEnd.upper }),
        ...(cornerEnd.lower !== undefined && { lower: cornerEnd.lower }),
      },
    }),
    ...(stretches && {
      overrides: stretches.map(({ side, from, to, take }) => ({ side, fromMm: from, toMm: to, take })),
    }),
  };
}

function purflingInScene(seen: SeenBody, stretch: View['stretch'] | null): SeenPurfling {
  const way = sceneWay(seen, viewMap(purflingPlane(stretched(seen, stretch))).toScene);
  const side = (name: 'bass' | 'treble') =>
    (seen.purfling?.places ?? [])
      .filter((place) => place.side === name)
      .map(({ point: at, sigmaPx, section, along }) => ({
        ...way(at),
        sigmaMm: sigmaPx * seen.mmPerPixel,
        section,
        alongMm: along,
      }));
  return { bass: side('bass'), treble: side('treble') };
}

function stretched(seen: SeenBody, stretch: View['stretch'] | null): View {
  return stretch ? { ...seen.view, stretch } : seen.view;
}

function placed(seen: SeenBody, stretch: View['stretch'] | null, face: 'top' | 'back') {
  const way = sceneWay(seen, viewMap(stretched(seen, stretch)).toScene);
  return edgeInScene(seen.trace, way, seen.mmPerPixel, face);
}

/** Which family's habit helps the fit, by the body's length as it was traced. */
export function familyOfSeen(seen: SeenBody): Family {
  const { lowerEnd, upperEnd } = seen.trace.pose;
  const lengthMm = distanceBetween(lowerEnd, upperEnd) * seen.mmPerPixel;
  return lengthMm < VIOLINS_BELOW_MM ? 'violin' : lengthMm < VIOLAS_BELOW_MM ? 'viola' : 'cello';
}

/** mm. Between the largest violins and the smallest violas, and so on. */
const VIOLINS_BELOW_MM = 374;
const VIOLAS_BELOW_MM = 520;
