import { cos, exp, log, point, power, sin } from '../base/index.ts';
import { boundsOf, type Chain, circleChain } from '../curve/index.ts';
import type { Lettering } from '../drawing/index.ts';
import { type HeightField, type Lamp, lampLight } from '../surface/index.ts';
import { fieldBox, fieldRaster } from './fieldRaster.ts';
import type { Colour, InkedLettering, PictureSheet } from './pictureSheet.ts';
import { asDrawn } from './plateMap.ts';

/** A plate under one lamp: its surface as a field, its outline, and words for the foot. */
export interface RakingLightPlan {
  readonly title: string;
  readonly says: string;
  readonly field: HeightField;
  readonly outline: Chain<'body'>;
  readonly lamp: Lamp;
}

/** The room behind the plate, and what is written on it. */
const DARK: Colour = [22, 20, 19];
/** The edge in a thin dark line, so that it is one line. */
const EDGE: Colour = [46, 41, 37];
const DIM: Colour = [150, 141, 128];
const LAMP_INK: Colour = [255, 224, 160];

/** The plate as it looks with one lamp low in a dark room: bare wood, shadows that it casts on itself, and what the wall throws back. */
export function rakingLight({ title, says, field, outline: edge, lamp }: RakingLightPlan): PictureSheet {
  const outline = asDrawn(edge);
  const light = lampLight(field, lamp);
  const wall = lampLight(field, wallOpposite(lamp));
  const places = field.zMm.map((z, index) => (Number.isNaN(z) ? Number.NaN : index));
  const wood = (index: number): Colour => woodUnder(light[index] ?? 0, wall[index] ?? 0);
  const { min, max } = boundsOf(outline);
  const size = (max.y - min.y) / LETTERED_FOR_MM;
  const margin = MARGIN_MM * size;
  const footMm = FOOT_MM * size;
  const box = {
    min: point<'drawing'>(min.x - margin, min.y - margin - footMm),
    max: point<'drawing'>(max.x + margin, max.y + margin),
  };
  const write = (text: string, line: number, heightMm: number): InkedLettering => ({
    lettering: {
      text,
      at: point((min.x + max.x) / 2, min.y - margin - line * LINE_MM * size),
      heightMm: heightMm * size,
      turnRad: 0,
      anchor: 'middle',
    } satisfies Lettering,
    ink: DIM,
  });
  return {
    title,
    box,
    ground: DARK,
    rasters: [{ raster: fieldRaster(field, places, wood, DARK), box: fieldBox(field), within: outline }],
    lines: [...lampMark(outline, lamp, size), { chain: outline, ink: EDGE, widthMm: 0.6 * size }],
    lettering: [write(title, 0, TITLE_MM), write(says, 1, WORDS_MM)],
  };
}

/** mm on an instrument of this length; others are scaled. */
const LETTERED_FOR_MM = 355;
const MARGIN_MM = 16;
const FOOT_MM = 12;
const LINE_MM = 7.5;
const TITLE_MM = 4;
const WORDS_MM = 3;

/** Light of a level place comes out as this share of what a picture can show; stronger light nears the whole of it. */
const LEVEL_SHOWN = 0.32;
const STRENGTH = -log(1 - LEVEL_SHOWN);
/** What the wall opposite the lamp throws back, as a share of its light: shadows still have a shape. */
const WALL_SHARE = 0.06;
/** Bare wood under the lamp and under the light of the wall: linear red, green and blue. */
const WOOD = [1, 0.89, 0.76] as const;
const SHADE = [0.86, 0.9, 1] as const;

/** The wall of the room as a second, weak lamp, high and broad. */
function wallOpposite({ fromRad, distanceMm }: Lamp): Lamp {
  return { heightRad: Math.PI / 4, fromRad: fromRad + Math.PI, distanceMm, halfWidthRad: Math.PI / 8 };
}

/** Colour of bare wood, 1 being what falls on a level place from the lamp, and from the wall. */
function woodUnder(light: number, wall: number): Colour {
  const lit = 1 - exp(-STRENGTH * light);
  const thrown = LEVEL_SHOWN * WALL_SHARE * wall;
  const channel = (index: 0 | 1 | 2): number =>
    Math.round(255 * encoded(Math.min(1, lit * WOOD[index] + thrown * SHADE[index])));
  return [channel(0), channel(1), channel(2)];
}

/** Linear light as eight-bit sRGB holds it (IEC 61966-2-1). */
function encoded(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * power(linear, 1 / 2.4) - 0.055;
}

/** A small sun at the rim of the picture where the lamp stands. */
function lampMark(outline: Chain<'drawing'>, lamp: Lamp, size: number): PictureSheet['lines'] {
  const { min, max } = boundsOf(outline);
  const [dx, dy] = [sin(lamp.fromRad), cos(lamp.fromRad)];
  const halfWidth = (max.x - min.x) / 2 + LAMP_OFF_MM * size;
  const halfHeight = (max.y - min.y) / 2 + LAMP_OFF_MM * size;
  const way = Math.min(
    dx === 0 ? Number.POSITIVE_INFINITY : halfWidth / Math.abs(dx),
    dy === 0 ? Number.POSITIVE_INFINITY : halfHeight / Math.abs(dy),
  );
  const centre = point<'drawing'>((min.x + max.x) / 2 + way * dx, (min.y + max.y) / 2 + way * dy);
  const rays = Array.from({ length: RAYS }, (_, index) => {
    const turn = (2 * Math.PI * index) / RAYS;
    const at = (far: number) => ({
      x: centre.x + far * size * cos(turn),
      y: centre.y + far * size * sin(turn),
      bulge: 0,
    });
    return { closed: false, vertices: [at(2.6), at(4)] };
  });
  const disc = circleChain<'drawing'>(centre, 1.7 * size, false);
  return [
    { chain: disc, ink: LAMP_INK, widthMm: 0, fill: LAMP_INK },
    ...rays.map((chain) => ({ chain, ink: LAMP_INK, widthMm: 0.5 * size })),
  ];
}

const LAMP_OFF_MM = 8;
const RAYS = 8;
