import { boundsOf, type Chain, circleChain, placeChain, reverseChain } from '../curve/index.ts';
import {
  type FlatHole,
  holeLaidFlat,
  type Instrument,
  MOST_STRAIN,
  plateHeight,
} from '../instrument/index.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { holePlacementDrawing } from './holePlacementDrawing.ts';
import { blockHeightMm, MARGIN_MM, mm, straightChain, textBlock } from './neckPiece.ts';
import { letteringScale } from './outlineDrawingsMarks.ts';
import { nameInLines, setupPiece } from './setupPiece.ts';

/** Stands wherever sound holes are drilled, sawn or cut. */
const HOLE_CAUTION =
  'Knives and fret saws slip and drills grab thin spruce: clamp the top on a padded cradle, back it up where the drill comes out, both hands behind the edge, wear eye protection. Laser and router: follow the manual of the machine, never leave a laser alone.';

/** The order of the work, as it is common practice. */
function order({ soundHoles }: Instrument): string {
  const tipMm = Math.min(soundHoles.hole.upper.tipGapMm, soundHoles.hole.lower.tipGapMm);
  return `Order, once the outside is finished and the top has its thickness, before the bar goes in: 1. draw both holes and prick the eyes; 2. look at both from the neck end, measure one against the other; 3. drill or bore the eyes from outside, ${mm(BORED_SMALL_MM)} small, a board pressed on the inside; 4. saw a millimetre inside the line, stem first, then each hook, and stop before the wing tips, where the hole is only ${mm(tipMm)} wide; 5. cut to the line with a thin sharp knife, many light cuts, the wing tips from their points inward so that their short grain is not levered off; 6. nicks last.`;
}

/** mm. What is left to the knife round a bored eye. */
const BORED_SMALL_MM = 0.3;

/** Which of the two holes lies right of the centre line, seen from outside, and which it is turned over. */
function sides({ design }: Instrument): { readonly drawn: string; readonly other: string } {
  return design.leftHanded ? { drawn: 'bass', other: 'treble' } : { drawn: 'treble', other: 'bass' };
}

/** mm on an ordinary violin. Stuff round the hole in a template. */
const ROUND_MM = 8;
/** mm. Hole that guides an awl or a small drill. */
const PRICK_MM = 1.6;

/** Templates of the sound holes in plan and laid flat, the plate that their eyes are drilled by, and their plan on the top. */
export function soundHoleDrawings(instrument: Instrument): readonly Drawing[] {
  const flat = holeLaidFlat(instrument);
  return [
    planTemplate(instrument, flat),
    ...(flat ? [flatTemplate(instrument, flat)] : []),
    drillPlate(instrument),
    holePlacementDrawing(instrument),
  ];
}

function scaleOf({ plan }: Instrument): number {
  return letteringScale(plan.outline.bodyLengthMm);
}

/** The treble hole with the bridge line at y = 0. */
function levelled({ soundHoles }: Instrument): Chain<'drawing'> {
  const { treble, bridgeLineMm } = soundHoles;
  return placeChain<'drawing', 'body'>(treble, { turnRad: 0, shift: [0, -bridgeLineMm] });
}

function planTemplate(instrument: Instrument, flat: FlatHole | null): Drawing {
  const hole = levelled(instrument);
  const scale = scaleOf(instrument);
  const box = boundsOf(hole);
  const round = ROUND_MM * scale;
  const [low, high, right] = [box.min.y - round, box.max.y + round, box.max.x + round];
  const { innerNick, outerNick, hole: drafted } = instrument.soundHoles;
  return setupPiece(
    'sound-hole-plan',
    'Sound hole, as seen from above',
    straightChain(true, [
      [0, low],
      [right, low],
      [right, high],
      [0, high],
    ]),
    {
      part: 'soundHoles',
      caution: HOLE_CAUTION,
      windows: [reverseChain(hole)],
      scored: bridgeMarks(innerNick.x, outerNick.x, right),
      lettering: words(
        [
          'SOUND HOLE · PLAN',
          ...named(instrument, innerNick.x),
          `${sides(instrument).drawn} side, outside up`,
          'left edge: centre line',
          `turn over for the ${sides(instrument).other}`,
        ],
        innerNick.x,
        scale,
      ).concat(neckEnd(high, box.min.x, scale)),
      notes: [
        `${capital(sides(instrument).drawn)} side, seen from outside, neck up; turned over it is the ${sides(instrument).other} one. In plan: ${mm(drafted.areaMm2, 0)}² open, ${mm(drafted.perimeterMm, 0)} round, eyes ${mm(drafted.eyesApartMm)} apart. For stiff stuff that is held level over the top, the line carried down square to the gluing face. Stuff that bends onto the arch takes the other template, laid flat.`,
        flat === null
          ? 'The hole comes so near to the edge that it cannot be laid flat from the arch: there is no template that hugs it.'
          : `Laid flat, the stem is ${mm(flat.stemMm - flat.planStemMm, 2)} wider and the opening ${(100 * (flat.areaMm2 / flat.planAreaMm2 - 1)).toFixed(1)} % larger; where it fits best the lines part by ${mm(flat.offPlanMm, 2)} at most.`,
        'The scored line is the bridge line; the outer nick lies higher than the inner one, as on the holes that the shape was fitted to.',
        order(instrument),
      ],
    },
  );
}

/** The bridge line from the centre line to the hole and from the hole on, clear of both nicks. */
function bridgeMarks(innerX: number, outerX: number, rightX: number): readonly Chain<'drawing'>[] {
  return [
    straightChain(false, [
      [0, 0],
      [innerX - NICK_GAP_MM, 0],
    ]),
    straightChain(false, [
      [outerX + NICK_GAP_MM, 0],
      [rightX, 0],
    ]),
  ];
}

/** Says at the top of a template where the neck is. */
function neckEnd(highMm: number, roomMm: number, scale: number): readonly Lettering[] {
  return textBlock(['neck end'], { x: MARGIN_MM, y: highMm - MARGIN_MM * scale }, roomMm - MARGIN_MM, {
    scale,
  });
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** mm. From the point of a nick to the line that points at it. */
const NICK_GAP_MM = 0.8;

function named({ plan }: Instrument, roomMm: number): readonly string[] {
  return nameInLines(plan.name, roomMm - 2 * MARGIN_MM).slice(0, 2);
}

/** Lettering between centre line and stem, under the bridge line. */
function words(texts: readonly string[], innerX: number, scale: number): readonly Lettering[] {
  return textBlock(texts, { x: MARGIN_MM, y: -MARGIN_MM * scale }, innerX - 2 * MARGIN_MM, {
    scale,
  });
}

function flatTemplate(instrument: Instrument, flat: FlatHole): Drawing {
  const same = (chain: Chain<'section'>): Chain<'drawing'> =>
    placeChain<'drawing', 'section'>(chain, { turnRad: 0, shift: [0, 0] });
  const hole = same(flat.chain);
  const centre = same(flat.centreLine);
  const scale = scaleOf(instrument);
  const box = boundsOf(hole);
  const right = box.max.x + ROUND_MM * scale;
  const ends = { low: centre.vertices[0]?.y ?? 0, high: centre.vertices.at(-1)?.y ?? 0 };
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      { x: right, y: ends.low, bulge: 0 },
      { x: right, y: ends.high, bulge: 0 },
      ...reverseChain(centre).vertices,
    ],
  };
  const { innerNick, eyesApartMm, stemMm, planStemMm, areaMm2, planAreaMm2, offPlanMm } = flat;
  const bend = bent(flat.centreLine);
  const bridge = same(flat.bridgeLine);
  const upTo = innerNick.x - NICK_GAP_MM;
  return setupPiece('sound-hole-flat', 'Sound hole, laid flat from the arch', body, {
    part: 'soundHoles',
    caution: HOLE_CAUTION,
    windows: [reverseChain(hole)],
    scored: [
      {
        closed: false,
        vertices: [
          ...bridge.vertices.filter(({ x }) => x < upTo).map(({ x, y }) => ({ x, y, bulge: 0 })),
          { x: upTo, y: innerNick.y, bulge: 0 },
        ],
      },
      ...(flat.bridgeMark ? [same(flat.bridgeMark)] : []),
    ],
    lettering: words(
      [
        'SOUND HOLE · FLAT',
        ...named(instrument, innerNick.x),
        `${sides(instrument).drawn} side, on the arch`,
        'left edge: centre line',
        `turn over for the ${sides(instrument).other}`,
      ],
      innerNick.x,
      scale,
    ).concat(neckEnd(ends.high, box.min.x, scale)),
    notes: [
      `For card, film or thin sheet that bends onto the finished arch: left edge along the centre line, scored line on the bridge line, lettered side up. ${capital(sides(instrument).drawn)} side, neck up; turned over it is the ${sides(instrument).other} one. Hold it with bits of low-tack tape, not by hand. Its left edge ${bend < STRAIGHT_MM ? 'is straight' : `bows by ${mm(bend, 2)}, as the arch asks`}.`,
      `Against the plan: stem ${mm(stemMm, 2)} instead of ${mm(planStemMm, 2)}, eyes ${mm(eyesApartMm)} apart, opening ${areaMm2.toFixed(0)} mm² instead of ${planAreaMm2.toFixed(0)}, centre line to inner nick ${mm(innerNick.x, 2)} instead of ${mm(instrument.soundHoles.innerNick.x, 2)}; laid on it as well as can be, no place is farther off than ${mm(offPlanMm, 2)}.`,
      `A sheet cannot follow an arch that bends both ways without some stretching: ${(100 * flat.strainMost).toFixed(2)} % at most, ${(100 * flat.strainRms).toFixed(2)} % on the whole.${flat.strainMost > MOST_STRAIN ? ' That is more than 1 %: cut the template in two at the bridge line and lay each half by its own eye.' : ''}`,
      order(instrument),
    ],
  });
}

/** mm. A line that bows by less is as good as straight. */
const STRAIGHT_MM = 0.05;

/** How far a line leaves the straight one between its ends. */
function bent({ vertices }: Chain<'section'>): number {
  return Math.max(...vertices.map(({ x }) => Math.abs(x)));
}

function drillPlate(instrument: Instrument): Drawing {
  const { upperEye, lowerEye, bridgeLineMm, innerNick } = instrument.soundHoles;
  const scale = scaleOf(instrument);
  const round = ROUND_MM * scale;
  const right = lowerEye.centre.x + round;
  const [low, high] = [lowerEye.centre.y - bridgeLineMm - round, upperEye.centre.y - bridgeLineMm + round];
  const pricks = [upperEye, lowerEye].flatMap(({ centre }) =>
    [1, -1].map((side) =>
      circleChain<'drawing'>({ x: side * centre.x, y: centre.y - bridgeLineMm }, PRICK_MM / 2, true),
    ),
  );
  const nick = (side: 1 | -1): Chain<'drawing'> =>
    straightChain(false, [
      [side * innerNick.x, -NICK_TICK_MM * scale],
      [side * innerNick.x, NICK_TICK_MM * scale],
    ]);
  const roomMm = innerNick.x - 2 * MARGIN_MM;
  const texts = [
    'EYES · BASS AND TREBLE',
    ...nameInLines(instrument.plan.name, roomMm).slice(0, 2),
    'neck up',
  ];
  return setupPiece(
    'sound-hole-eyes',
    'Sound holes, eyes and nicks',
    straightChain(true, [
      [-right, low],
      [right, low],
      [right, high],
      [-right, high],
    ]),
    {
      part: 'soundHoles',
      caution: HOLE_CAUTION,
      windows: pricks,
      scored: [
        straightChain(false, [
          [0, low],
          [0, high],
        ]),
        straightChain(false, [
          [-right, 0],
          [right, 0],
        ]),
        nick(1),
        nick(-1),
      ],
      lettering: [
        ...textBlock(texts, { x: MARGIN_MM, y: -MARGIN_MM * scale }, roomMm, { scale }),
        ...textBlock(
          [`upper eye ${mm(upperEye.diameterMm)}`, `lower eye ${mm(lowerEye.diameterMm)}`],
          { x: MARGIN_MM, y: MARGIN_MM * scale + blockHeightMm(2, scale) },
          roomMm,
          { scale },
        ),
        ...textBlock(
          [`${sides(instrument).other} side`],
          { x: MARGIN_MM - right, y: MARGIN_MM * scale + blockHeightMm(1, scale) },
          roomMm,
          { scale },
        ),
        ...textBlock(
          [`${sides(instrument).drawn} side`],
          { x: innerNick.x + MARGIN_MM, y: MARGIN_MM * scale + blockHeightMm(1, scale) },
          right - innerNick.x - 2 * MARGIN_MM,
          { scale },
        ),
      ],
      notes: [
        `Long score on the centre joint, cross score on the bridge line ${mm(instrument.soundHoles.stopMm)} from the upper end; laid on the ridge of the finished top, lettered side up, and held level: over the upper eyes it stands ${mm(dropTo(instrument, upperEye.centre))} off the wood, over the lower ones ${mm(dropTo(instrument, lowerEye.centre))}, so go down square to the plate with a thin drill or a long awl. Prick through the four holes: middles of the eyes, ${mm(upperEye.centre.x)} and ${mm(lowerEye.centre.x)} from the centre line, ${mm(upperEye.centre.y - bridgeLineMm)} above and ${mm(bridgeLineMm - lowerEye.centre.y)} below the bridge line. Ticks: points of the inner nicks.`,
        `Eyes are bored to ${mm(upperEye.diameterMm)} and ${mm(lowerEye.diameterMm)}, square to the gluing face; start ${mm(BORED_SMALL_MM)} small. Check both sides against each other before any hole is opened.`,
      ],
    },
  );
}

/** mm at the usual size. */
const NICK_TICK_MM = 3;

/** How far a place of the top lies below its ridge at the bridge line, mm. */
function dropTo(
  { plates, soundHoles }: Instrument,
  { x, y }: { readonly x: number; readonly y: number },
): number {
  return (
    plateHeight(plates.top, 0, soundHoles.bridgeLineMm, 'finished') -
    plateHeight(plates.top, x, y, 'finished')
  );
}
