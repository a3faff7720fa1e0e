import { cos, type Point, point, sin } from '../../base/index.ts';

/** A profile in a frame of its own: x along its base line from the middle between its ends, height from the base line up. */
export interface OwnFrame {
  readonly origin: Point<'scene'>;
  readonly headingRad: number;
}

/** The frame whose base runs through `through` with this heading, turned so that the profile stands upright over it. */
export function uprightFrame(
  places: readonly Point<'scene'>[],
  base: { readonly through: Point<'scene'>; readonly headingRad: number },
): OwnFrame {
  const heights = places.map(
    (place) => inFrame({ origin: base.through, headingRad: base.headingRad }, place).y,
  );
  const middle = heights.reduce((sum, height) => sum + height, 0) / Math.max(1, heights.length);
  const headingRad = middle >= 0 ? base.headingRad : base.headingRad + Math.PI;
  const turned = { origin: base.through, headingRad };
  const along = [places[0], places[places.length - 1]].map((place) => inFrame(turned, place).x);
  const shift = (along[0] + along[1]) / 2;
  return {
    origin: point(base.through.x + shift * cos(headingRad), base.through.y + shift * sin(headingRad)),
    headingRad,
  };
}

/** A place of the scene in a profile's own frame: turned, never mirrored. */
export function inFrame({ origin, headingRad }: OwnFrame, { x, y }: Point<'scene'>): Point<'section'> {
  const [cosine, sine] = [cos(headingRad), sin(headingRad)];
  const [dx, dy] = [x - origin.x, y - origin.y];
  return point(dx * cosine + dy * sine, dy * cosine - dx * sine);
}
