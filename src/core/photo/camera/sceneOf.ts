import { accept, type Checked, type Finding, hypot, point, refuse } from '../../base/index.ts';
import type { Sighting } from './adjustment.ts';
import type { SceneSolution, SceneTask } from './adjustScene.ts';
import type { Camera } from './camera.ts';
import {
  barsFault,
  cameraFindings,
  lensFault,
  notFlatFault,
  printingsFinding,
  ROLLED_LIFT_MM,
  steepFault,
} from './cameraTrouble.ts';
import { undistortedRadius } from './lens.ts';
import { rmsPxOf } from './residualSpread.ts';
import { ONE_PRINTING_SIGMA } from './sceneBeliefs.ts';
import {
  BOWS,
  bowSlot,
  cameraAt,
  cameraSlots,
  cardHeightSlot,
  cardSlot,
  placeSlot,
  printSlot,
  type SceneUnknowns,
} from './sceneUnknowns.ts';
import { covarianceOf, type SolvedCamera, type SolvedScene, standOf, tiltOf } from './solvedScene.ts';

/** A task with the solution that was found for it. */
export interface Solved {
  readonly task: SceneTask;
  readonly solution: SceneSolution;
  /** Lenses whose noted focal length was set aside. */
  readonly unnoted: ReadonlyMap<number, { readonly notedPx: number; readonly foundPx: number }>;
}

/** Spreads beyond which two sheets are not of one printing. */
const APART = 4;

/** The sheets whose print differs from the first one's by more than one printing can, with the share. */
export function printingsApart(unknowns: SceneUnknowns, { state, covariance }: SceneSolution) {
  const first = printSlot(unknowns, 0);
  return unknowns.sheetNumbers.flatMap((number, sheet) => {
    const slot = printSlot(unknowns, sheet);
    const share = state.values[slot] / state.values[first] - 1;
    const variance = covariance[slot][slot] + covariance[first][first] - 2 * covariance[slot][first];
    const allowed = APART * hypot(ONE_PRINTING_SIGMA, Math.sqrt(Math.max(0, variance)));
    return Math.abs(share) > allowed ? [{ number, share }] : [];
  });
}

const STEEPEST_RAD = Math.PI / 4;
/** mm. A flat, stiff sheet reads to a few hundredths; beyond this no millimetre in the picture can be trusted. */
const ROUGHEST_MM = 0.5;
/** Share of the half diagonal to which the lens model must hold. */
const REACH = 1.02;

/** The scene with everything that is said of it, or the faults that forbid it; those of `solveShots`. */
export function sceneOf(solved: Solved, printFindings: readonly Finding[]): Checked<SolvedScene> {
  const { task, solution } = solved;
  const { unknowns, prints } = task;
  const { state, covariance } = solution;
  const contradiction = barsFault(prints, unknowns, state);
  if (contradiction && task.options.beliefs !== 'open') return refuse(contradiction);
  const shots: SolvedCamera[] = [];
  for (const shot of unknowns.lensOfShot.keys()) {
    const one = shotOf(solved, shot);
    if (!one.ok) return one;
    shots.push(one.value);
  }
  const spread = (slot: number) => 2 * Math.sqrt(covariance[slot][slot]);
  const sheets = unknowns.sheetNumbers.map((number, sheet) => {
    const [print, place] = [printSlot(unknowns, sheet), placeSlot(unknowns, sheet)];
    return {
      number,
      at: point<'scene'>(state.values[place], state.values[place + 1]),
      turnRad: state.values[place + 2],
      printScale: { x: state.values[print], y: state.values[print + 1] },
      printPlusMinus: spread(print),
    };
  });
  const cards = unknowns.cardNumbers.map((number, card) => {
    const [place, height] = [cardSlot(unknowns, card), cardHeightSlot(unknowns, card)];
    return {
      number,
      at: point<'scene'>(state.values[place], state.values[place + 1]),
      turnRad: state.values[place + 2],
      heightMm: state.values[height],
      plusMinusMm: spread(height),
    };
  });
  const findings = [
    ...printFindings,
    ...(prints.some(({ rows }) => rows === null)
      ? printingsApart(unknowns, solution).map(printingsFinding)
      : []),
    ...shots.flatMap((shot) => shot.findings),
  ];
  return accept({ shots, sheets, cards, unknowns, covariance, findings });
}

function shotOf({ task, solution, unnoted }: Solved, shot: number): Checked<SolvedCamera> {
  const { unknowns, sightings: all, pictures } = task;
  const { state, covariance, sightings } = solution;
  const camera = cameraAt(unknowns, state, shot);
  const tiltRad = tiltOf(camera);
  if (tiltRad > STEEPEST_RAD) return refuse(steepFault(tiltRad));
  const lens = unknowns.lensOfShot[shot];
  if (!reachesCorners(camera, pictures[lens].diagonalPx)) return refuse(lensFault());
  const standMm = standOf(camera);
  const rmsPx = rmsPxOf(unknowns, state, sightings, shot);
  const rmsMm = (rmsPx * standMm) / camera.focalPx;
  const liftMm = liftOf(unknowns, solution);
  if (rmsMm > ROUGHEST_MM || liftMm > ROLLED_LIFT_MM) return refuse(notFlatFault(rmsMm, liftMm));
  const count = (list: readonly Sighting[]) =>
    list.filter((one) => one.shot === shot).reduce((sum, { pairs }) => sum + pairs.length, 0);
  const focal = unnoted.get(lens);
  const print = printSlot(unknowns, 0);
  return accept({
    camera,
    printScale: { x: state.values[print], y: state.values[print + 1] },
    trust: {
      covariance: covarianceOf(covariance, cameraSlots(unknowns, shot)),
      printPlusMinus: 2 * Math.sqrt(covariance[print][print]),
    },
    rmsPx,
    rmsMm,
    tiltRad,
    standMm,
    pointsUsed: count(sightings),
    findings: cameraFindings({
      rmsMm,
      bowMm: solution.togetherMm[shot],
      liftMm,
      dropped: count(all) - count(sightings),
      total: count(all),
      ...(focal && { focal }),
    }),
  });
}

/** mm. The largest lift of a sheet's rim that is surely there; nought where none is. */
function liftOf(unknowns: SceneUnknowns, { state, covariance }: SceneSolution): number {
  const lifts = unknowns.sheetNumbers.flatMap((_, sheet) =>
    Array.from({ length: BOWS }, (_one, bow) => {
      const slot = bowSlot(unknowns, sheet) + bow;
      const lift = Math.abs(state.values[slot]);
      return lift > 2 * Math.sqrt(covariance[slot][slot]) ? lift : 0;
    }),
  );
  return Math.max(...lifts);
}

function reachesCorners(camera: Camera, diagonalPx: number): boolean {
  return undistortedRadius((REACH * diagonalPx) / 2 / camera.focalPx, camera) !== null;
}
