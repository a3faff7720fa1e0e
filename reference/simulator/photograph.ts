import type { Spot } from './bentLine.ts';
import type { Chance } from './chance.ts';
import { type Development, develop, type PlainPicture } from './develop.ts';
import type { Instrument } from './instrument.ts';
import { intoRoom } from './light.ts';
import type { Pinhole } from './pinhole.ts';
import { render, type Scene } from './render.ts';

/** What is true of one instrument in a photograph. `Px` places are in the picture, pixel centres whole numbers. */
export interface BodyTruth {
  readonly body: Instrument;
  /** The near plate's edge as it is today, closed, from the lower end up the right side: in its frame and in the picture. */
  readonly worn: readonly Spot[];
  readonly wornPx: readonly Spot[];
  /** The symmetric outline that was meant, likewise. */
  readonly meant: readonly Spot[];
  readonly meantPx: readonly Spot[];
  /** The middle line from the lower to the upper end, in the room at the height of the edge, and in the picture. */
  readonly axisRoom: readonly [Spot, Spot];
  readonly axisPx: readonly [Spot, Spot];
  /** px for a 355th of the body length. */
  readonly pxPerMm: number;
}

export interface Photographed {
  readonly picture: PlainPicture;
  readonly camera: Pinhole;
  readonly truth: readonly BodyTruth[];
}

/** A photograph of a scene with what is true of it. The same scene may be photographed by several cameras. */
export async function photograph(
  scene: Scene,
  camera: Pinhole,
  how: Development,
  chance: Chance,
): Promise<Photographed> {
  const light = render(scene, camera);
  const picture = await develop(light, camera.widthPx, camera.heightPx, how, chance);
  return { picture, camera, truth: scene.standing.map(({ body }) => truthOf(body, camera)) };
}

/** What is true of an instrument, seen by a camera. */
export function truthOf(body: Instrument, camera: Pinhole): BodyTruth {
  const { meant, near, edgeHeightMm } = body;
  const seen = ({ x, y }: Spot): Spot => {
    const [u, v] = intoRoom(body, x, y);
    const [px, py] = camera.project([u, v, edgeHeightMm]);
    return { x: px, y: py };
  };
  const worn = closed(near.right, near.left);
  const whole = closed(
    meant.half,
    meant.half.map(({ x, y }) => ({ x: -x, y })),
  );
  const ends = [
    { x: 0, y: 0 },
    { x: 0, y: meant.lengthMm },
  ] as const;
  const [low, high] = ends.map(({ x, y }) => intoRoom(body, x, y)).map(([x, y]) => ({ x, y })) as [
    Spot,
    Spot,
  ];
  const axisPx = ends.map(seen) as [Spot, Spot];
  return {
    body,
    worn,
    wornPx: worn.map(seen),
    meant: whole,
    meantPx: whole.map(seen),
    axisRoom: [low, high],
    axisPx,
    pxPerMm: Math.hypot(axisPx[1].x - axisPx[0].x, axisPx[1].y - axisPx[0].y) / 355,
  };
}

function closed(right: readonly Spot[], left: readonly Spot[]): Spot[] {
  return [...right, ...left.slice(1, -1).reverse()];
}
