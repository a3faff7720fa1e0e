import {
  accept,
  atan2,
  type Checked,
  type Finding,
  type Point,
  point,
  refuse,
  sin,
} from '../../base/index.ts';
import { fitLine } from '../../numeric/index.ts';
import { type ContourRun, contourRuns, runBetween } from './contourRuns.ts';
import { inFrame, uprightFrame } from './profileFrame.ts';
import { noArch, noFace } from './profileTrouble.ts';
import type { ProfileOptions, ProfileScene, TracedProfile } from './tracedProfile.ts';
import { traceLine } from './traceLine.ts';
import { type ContourPlace, traceSilhouette } from './traceSilhouette.ts';

/** mm rms from a straight line. An edge that bows more is an arch, one that bows less is straight. */
const BOWED_MM = 0.5;
const STRAIGHT_MM = 0.25;
/** rad. The straight edge lies along the arch's chord within this. */
const ALONG_RAD = 0.2;
/** Share of the arch's length that the straight edge must have. */
const LEAST_FACE = 0.4;
/** mm. Fewer places than this length gives are no profile. */
const LEAST_LENGTH_MM = 20;

/**
 * The profile that lies on the sheet: the bowed edge of a card or a line drawn on paper, to a fraction of a pixel, in millimetres in a
 * frame of its own.
 *
 * Faults: those of {@link traceSilhouette} and {@link traceLine}; `profile.no-arch` (no bowed edge between two corners), `profile.no-face`
 * (no straight edge along it, where heights are to count from one).
 */
export function traceProfile(scene: ProfileScene, options: ProfileOptions): Checked<TracedProfile> {
  if (options.kind === 'line') {
    const line = traceLine(scene, options.ends);
    return line.ok ? accept(inOwnFrame(options, line.value, null)) : line;
  }
  const silhouette = traceSilhouette(scene.rectified, scene.ground);
  if (!silhouette.ok) return silhouette;
  const { contour } = silhouette.value;
  const runs = contourRuns(contour);
  const arch = options.ends
    ? runBetween(contour, options.ends)
    : longest(runs, (run) => run.bowMm > BOWED_MM);
  if (!arch || arch.lengthMm < LEAST_LENGTH_MM || arch.bowMm <= BOWED_MM) return refuse(noArch());
  if (options.base === 'ends') return accept(inOwnFrame(options, arch.places, null));
  const chordRad = fitLine(arch.places).headingRad;
  const face = longest(runs, (run) => {
    const turn = fitLine(run.places).headingRad - chordRad;
    return run.bowMm < STRAIGHT_MM && Math.abs(sin(turn)) < ALONG_RAD;
  });
  if (!face || face.lengthMm < LEAST_FACE * arch.lengthMm) return refuse(noFace());
  return accept(inOwnFrame(options, arch.places, face));
}

function longest(
  runs: readonly ContourRun<ContourPlace>[],
  fits: (run: ContourRun<ContourPlace>) => boolean,
): ContourRun<ContourPlace> | null {
  return runs
    .filter(fits)
    .reduce<ContourRun<ContourPlace> | null>(
      (best, run) => (best && best.lengthMm >= run.lengthMm ? best : run),
      null,
    );
}

function inOwnFrame(
  { kind, base }: ProfileOptions,
  places: readonly ContourPlace[],
  face: ContourRun<ContourPlace> | null,
): TracedProfile {
  const [first, last] = [places[0], places[places.length - 1]];
  const line = face
    ? lineThrough(face.places)
    : { through: first, headingRad: atan2(last.y - first.y, last.x - first.x) };
  const frame = uprightFrame(places, line);
  const own = places.map((place) => ({ ...inFrame(frame, place), sigmaMm: place.sigmaMm }));
  const upright = own.toSorted((a, b) => a.x - b.x);
  const ends: [Point<'scene'>, Point<'scene'>] =
    own[0].x <= own[own.length - 1].x ? [first, last] : [last, first];
  return { kind, base, places: upright, endsInScene: ends, findings: softFindings(places) };
}

function lineThrough(places: readonly ContourPlace[]) {
  const { middle, headingRad } = fitLine(places);
  return { through: point<'scene'>(middle.x, middle.y), headingRad };
}

/** Share of a profile that may be soft: a speck of dirt, a thumb's shade. */
const MOST_SOFT = 0.08;

/** What a soft edge means for whoever relies on it. Finding: `profile.soft-edge`. */
export function softFindings(places: readonly ContourPlace[]): readonly Finding[] {
  const share = places.filter(({ soft }) => soft).length / places.length;
  if (share <= MOST_SOFT) return [];
  return [
    {
      weight: 'caution',
      code: 'profile.soft-edge',
      at: 'photograph',
      found: `${(100 * share).toFixed(0)} % of the edge is soft, as the border of a shadow is`,
      need: 'a sharp edge all along',
      remedy:
        'light it from both sides or from a window in the shade, and focus on it; a coloured card is told from its shadow',
    },
  ];
}
