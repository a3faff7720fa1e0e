/** Readings of calibration sheets and height cards as cameras with a known truth would give them. */
import { point, seededNormal } from '../../src/core/base/index.ts';
import { laidOut, type TrueCamera, truePhoto, type Vector } from './simulatedShots.ts';

export interface Lies {
  readonly x: number;
  readonly y: number;
  readonly turnRad: number;
  readonly ratioX: number;
  readonly ratioY: number;
  readonly z: number;
}

/** A sheet where the scene begins, flat on the table and printed true. */
export const AT_ORIGIN: Lies = { x: 0, y: 0, turnRad: 0, ratioX: 1, ratioY: 1, z: 0 };

/** Saddles of a height card, mm on the card. */
export const CARD_PLAN = [13, 23, 33, 43].flatMap((x) => [17, 27].map((y) => ({ x, y })));

/** Level camera settings of 12 megapixels about a metre over an A3 sheet, looking down aslant by some degrees. */
export function cameraOver(tiltDeg: number, wayDeg: number, changes: Partial<TrueCamera> = {}): TrueCamera {
  const target: Vector = [210, 148, 0];
  const away = 980 * Math.tan((tiltDeg * Math.PI) / 180);
  const way = (wayDeg * Math.PI) / 180;
  return {
    widthPx: 4032,
    heightPx: 3024,
    focalPx: 7000,
    offsetPx: [12, -9],
    bending: [-0.08, 0.05, 0.0004, -0.0003, 0],
    eye: [target[0] + away * Math.cos(way), target[1] + away * Math.sin(way), 980],
    target,
    rollRad: 0.05,
    ...changes,
  };
}

/** The pairs of a plan's points, each photo point moved by noise; `lift` raises places off a flat sheet, mm. */
export function pairsSeen(
  camera: TrueCamera,
  plan: readonly { readonly x: number; readonly y: number }[],
  {
    lies = AT_ORIGIN,
    noisePx = 0,
    random = () => 0,
    lift = () => 0,
  }: {
    readonly lies?: Lies;
    readonly noisePx?: number;
    readonly random?: () => number;
    readonly lift?: (x: number, y: number) => number;
  } = {},
) {
  return plan.map(({ x, y }) => {
    const [px, py, pz] = laidOut({ x, y }, lies);
    const at = truePhoto(camera, [px, py, pz + lift(x, y)]);
    const moved = (coordinate: number) =>
      noisePx > 0 ? coordinate + noisePx * seededNormal(random) : coordinate;
    return {
      sheet: point<'sheet'>(x, y),
      photo: point<'photo'>(moved(at.x), moved(at.y)),
      sigmaPx: 0.05,
    };
  });
}
