import type { Chain } from '../curve/index.ts';
import type { Neck, PlanParts, PlateArch } from '../instrument/index.ts';
import { cutCard, type OnCard } from './cutCard.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { letteringWidthMm } from './lettering.ts';

/** What the pieces of neck and fingerboard are drawn from. */
export interface NeckPlan {
  readonly plan: PlanParts;
  readonly top: PlateArch;
  readonly neck: Neck;
}

/** Stands wherever neck or fingerboard is cut to a gauge. */
export const NECK_CAUTION =
  'Saws, knives, planes and rasps cut: clamp the neck, keep both hands behind the edge. Dust of ebony and rosewood irritates skin and lungs: draw it off, wear a mask, follow local rules. Laser and router: follow the manual of the machine.';

/** mm. Letter heights on a card. */
const TITLE_MM = 3.4;
const TEXT_MM = 2.8;
/** Base line to base line, in letter heights. */
const SPACING = 1.6;

/** mm. From the edge of a card to its lettering. */
export const MARGIN_MM = 3.5;

/** mm. A card that is narrower leaves no room for the name of an instrument. */
export const LEAST_CARD_MM = 46;

/** A card of neck or fingerboard. */
export function neckPiece(name: string, title: string, body: Chain<'drawing'>, on: OnCard): Drawing {
  return cutCard({ name, title, part: 'neck' }, body, on, NECK_CAUTION);
}

/** Lines under one another from a place down, the first larger; a line too long for its room is written smaller. */
export function textBlock(
  texts: readonly string[],
  top: Lettering['at'],
  roomMm: number,
  { anchor = 'start', scale = 1 }: { readonly anchor?: Lettering['anchor']; readonly scale?: number } = {},
): readonly Lettering[] {
  let y = top.y;
  return texts.map((text, index) => {
    const wished = (index === 0 ? TITLE_MM : TEXT_MM) * scale;
    const widthMm = letteringWidthMm({ text, heightMm: wished });
    const heightMm = widthMm > roomMm ? (wished * roomMm) / widthMm : wished;
    y -= wished;
    const line: Lettering = { text, at: { x: top.x, y }, heightMm, turnRad: 0, anchor };
    y -= (SPACING - 1) * wished;
    return line;
  });
}

/** How far {@link textBlock} reaches down at most. */
export function blockHeightMm(lines: number, scale = 1): number {
  return scale * SPACING * (TITLE_MM + (lines - 1) * TEXT_MM);
}

/** A straight line or a polygon. */
export function straightChain(
  closed: boolean,
  points: readonly (readonly [x: number, y: number])[],
): Chain<'drawing'> {
  return { closed, vertices: points.map(([x, y]) => ({ x, y, bulge: 0 })) };
}

/** Vertices of straight edges, to be put between others. */
export function corners(
  ...points: readonly (readonly [x: number, y: number])[]
): Chain<'drawing'>['vertices'] {
  return points.map(([x, y]) => ({ x, y, bulge: 0 }));
}

/** A chain that ends in the next one: its vertices but the last. */
export function upToLast({ vertices }: Chain<'drawing'>): Chain<'drawing'>['vertices'] {
  return vertices.slice(0, -1);
}

/** mm or degrees for a sentence. */
export function mm(value: number, digits = 1): string {
  return `${Number(value.toFixed(digits))} mm`;
}

export function figure(value: number, digits = 1): string {
  return String(Number(value.toFixed(digits)));
}

export function degrees(rad: number): string {
  return `${((rad * 180) / Math.PI).toFixed(1)}°`;
}
