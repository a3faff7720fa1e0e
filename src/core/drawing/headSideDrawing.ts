import { cos, distanceBetween, type Point, point, sin } from '../base/index.ts';
import {
  type Chain,
  closeChain,
  headingOn,
  nearestOn,
  placeChain,
  pointOn,
  segments,
} from '../curve/index.ts';
import {
  EYE_PRICK_MM,
  type Head,
  type HeadProfile,
  PRICK_MM,
  voluteSlots,
  type WidthStation,
} from '../instrument/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { type HeadPlan, headPiece, headScale, holeAt, withName } from './headPiece.ts';
import { letteringWidthMm } from './lettering.ts';
import { mm, straightChain } from './neckPiece.ts';

/** mm on a head of 107 mm: neck left below where the chin runs into it, the mark at the nut, marks of stations. */
const NECK_MM = 12;
const NUT_MARK_MM = 6;
const TICK_MM = 2.2;
const NUMBER_MM = 1.7;
const TITLE_MM = 2.6;
const TEXT_MM = 2.1;
/** mm from the straight back of the pegbox to the nearest base line, and from line to line. */
const FROM_BACK_MM = 6;
const LINE_MM = 3.3;
/** mm from the top to the base line of the title. */
const FROM_TOP_MM = 9;
/** mm. What a laser can burn and an eye can read. */
const LEAST_MM = 1.2;
/** mm. */
const PEG_PRICK_MM = 1;

/**
 * The side template of the head: cut round, slotted along the spiral, with the places of the pegs and the stations of the
 * widths. Drawing frame: that of the head, seen from the treble side.
 */
export function headSideDrawing({ head, plan }: HeadPlan): Drawing {
  const { profile, widths, pegs } = head;
  const scale = headScale(head);
  const body = templateOutline(profile, scale);
  const { slots, pricks, eye, rest } = voluteSlots(profile);
  const stations = widths.stations.filter(({ alongMm }) => alongMm > 0 && alongMm <= widths.bottomMm);
  const { sizes } = profile;
  return headPiece('head-side', 'Head, side', body, {
    windows: [
      ...slots.map(onDrawing),
      ...pricks.map((at) => holeAt(at, PRICK_MM)),
      holeAt(eye, EYE_PRICK_MM),
      ...pegs.map(({ centre }) => holeAt(centre, PEG_PRICK_MM)),
    ],
    scored: [
      ...(rest ? [onDrawing(rest)] : []),
      straightChain(false, [
        [0, 0],
        [NUT_MARK_MM * scale, 0],
      ]),
      ...stations.map((station) => tick(profile, station, scale)),
    ],
    lettering: [
      ...sideLettering(head, plan.name, scale),
      ...stations.map((station) => stationNumber(profile, station, scale)),
    ],
    notes: [
      `Lay the straight edge of the neck on the planed gluing face of the fingerboard and the line on the nut line; draw round it and along the slots, prick the eye and the four peg holes. Turn it over on the same two lines for the other side: outlines must meet square across the block. It shows the side that lies right as one looks at the front; the block needs ${mm(sizes.depthMm + BLOCK_SPARE_MM)} of depth at the head.`,
      'The numbered marks are the stations of the widths, the same as on the wrap template and in the table of widths. Drill the peg holes small from both sides before the outline is sawn; saw outside the line and file to it, square across. The spiral is drawn through the slots; the bridges between them are joined by hand.',
    ],
  });
}

/** mm of block beyond the back of the head, for the saw. */
const BLOCK_SPARE_MM = 2;

/** The head's outline with a piece of neck, closed, anticlockwise. */
function templateOutline({ outline, sizes }: HeadProfile, scale: number): Chain<'drawing'> {
  const bottom = -sizes.chinReachMm - NECK_MM * scale;
  const corners = [
    { x: 0, y: bottom },
    { x: sizes.neckBehindMm, y: bottom },
  ].map((at) => ({ ...at, bulge: 0 }));
  return onDrawing(closeChain({ closed: false, vertices: [...outline.vertices, ...corners] }));
}

function onDrawing(chain: Chain<'head'>): Chain<'drawing'> {
  return placeChain<'drawing', 'head'>(chain, { turnRad: 0, shift: [0, 0] });
}

/** Into the wood at a station, square to the outline. */
function inward(profile: HeadProfile, { at }: WidthStation, lengthMm: number): Point<'drawing'> {
  const nearest = nearestOn(profile.spine, at);
  const segment = segments(profile.spine)[nearest.segment];
  if (!segment) return point(at.x, at.y);
  // Wood lies to the left of the spine.
  const leftRad = headingOn(segment, nearest.fraction) + Math.PI / 2;
  return point(at.x + lengthMm * cos(leftRad), at.y + lengthMm * sin(leftRad));
}

function tick(profile: HeadProfile, station: WidthStation, scale: number): Chain<'drawing'> {
  const end = inward(profile, station, TICK_MM * scale);
  return straightChain(false, [
    [station.at.x, station.at.y],
    [end.x, end.y],
  ]);
}

function stationNumber(profile: HeadProfile, station: WidthStation, scale: number): Lettering {
  const heightMm = Math.max(LEAST_MM, NUMBER_MM * scale);
  const at = inward(profile, station, TICK_MM * scale + heightMm);
  return {
    text: `${station.number}`,
    at: { x: at.x, y: at.y - heightMm / 2 },
    heightMm,
    turnRad: 0,
    anchor: 'middle',
  };
}

/** Title under the top; name and sizes along the straight back of the pegbox, read with the scroll to the right. */
function sideLettering({ profile, widths }: Head, name: string, scale: number): readonly Lettering[] {
  const { spine, sizes } = profile;
  const top = widths.stations.find(({ place }) => place === 'top')?.at ?? point<'head'>(0, 0);
  const title: Lettering = {
    text: 'HEAD',
    at: { x: top.x, y: top.y - FROM_TOP_MM * scale },
    heightMm: TITLE_MM * scale,
    turnRad: 0,
    anchor: 'middle',
  };
  const [, straight] = segments(spine);
  if (!straight) return [title];
  const from = pointOn(straight, 0);
  const roomMm = distanceBetween(from, straight.end);
  const turnRad = Math.PI / 2 - sizes.leanRad;
  const texts = [
    withName(name, TEXT_MM * scale, roomMm),
    `side · ${sizes.lengthMm.toFixed(1)} long, ${sizes.depthMm.toFixed(1)} deep`,
  ];
  const lines = texts.flatMap((text, index): Lettering[] => {
    const inMm = (FROM_BACK_MM + (texts.length - 1 - index) * LINE_MM) * scale;
    const wished = TEXT_MM * scale;
    const heightMm = Math.min(wished, (wished * roomMm) / letteringWidthMm({ text, heightMm: wished }));
    if (heightMm < LEAST_MM) return [];
    const at = { x: from.x - inMm * sin(turnRad), y: from.y + inMm * cos(turnRad) };
    return [{ text, at, heightMm, turnRad, anchor: 'start' }];
  });
  return [title, ...lines];
}
