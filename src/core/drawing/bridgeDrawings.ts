import { WELD_MM } from '../base/index.ts';
import { boundsOf, type Chain, heightOn, reverseChain } from '../curve/index.ts';
import { bridgeShape, SLOT_SHARE } from '../instrument/index.ts';
import { bridgeSideDrawing } from './bridgeSideDrawing.ts';
import type { Drawing, Lettering } from './drawing.ts';
import { blockHeightMm, corners, figure, MARGIN_MM, mm, straightChain, textBlock } from './neckPiece.ts';
import { handed, letter, nameInLines, type SetupSheet, setupPiece, tick } from './setupPiece.ts';

/** mm at the usual size: card round a bridge, beside and above it, a tick, a letter at it. */
const CARD_MM = { beside: 9, above: 9, below: 5, tick: 4, letter: 2.4, gap: 1.2 };

/** mm at the usual size. Least width of a card, and of gauge beside the curve that it carries. */
const LEAST_MM = 60;

/**
 * What a bridge is cut and checked with: its outline as a window in a card, its side, gauges for crown and feet, and a rule for the
 * places of the strings on bridge and nut.
 */
export function bridgeDrawings(sheet: SetupSheet): readonly Drawing[] {
  return [
    blankStencil(sheet),
    bridgeSideDrawing(sheet),
    crownGauge(sheet),
    footGauge(sheet),
    spacingRule(sheet),
  ];
}

function shapeOf({ instrument }: SetupSheet) {
  const { setUp, plan, plates, design } = instrument;
  const bridgeMm = plates.top.bodyLengthMm - (design.values.stop?.value ?? Number.NaN);
  return bridgeShape(setUp, plan.family, plates.top, bridgeMm);
}

/** Where the strings lie across on a drawing that is seen with the neck away from the eye, with their letters. */
function stringsAcross({ instrument, side }: SetupSheet, where: 'atBridgeMm' | 'atNutMm') {
  const { places, strings } = instrument.setUp;
  return places.map((place, index) => ({
    x: side * place[where],
    letter: strings.strings[index]?.letter ?? '',
    place,
  }));
}

function blankStencil(sheet: SetupSheet): Drawing {
  const { scale, side, instrument, name } = sheet;
  const { setUp, design } = instrument;
  const outline = handed(shapeOf(sheet).outline, side);
  const box = boundsOf(outline);
  const half = Math.max((box.max.x - box.min.x) / 2 + CARD_MM.beside * scale, LEAST_MM / 2);
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = [
    `BRIDGE · ${figure(setUp.crownHeightMm)} high`,
    ...nameInLines(name, roomMm),
    'back of the bridge, seen from the tail',
  ];
  const aboveMm = (CARD_MM.tick + CARD_MM.gap * 2 + CARD_MM.letter) * scale;
  const textFromY = box.max.y + aboveMm + blockHeightMm(texts.length);
  const topY = textFromY + MARGIN_MM;
  const bottomY = box.min.y - CARD_MM.below * scale;
  const crown = handed(setUp.crown, side);
  const strings = stringsAcross(sheet, 'atBridgeMm');
  const value = (of: 'bridgeFootThickness' | 'bridgeTopThickness'): number => design.values[of]?.value ?? 0;
  const slots = strings
    .map(
      ({ letter: of, place }) =>
        `${of} ${figure(place.bridgeUpMm, 1)} (${figure(SLOT_SHARE * place.diameterMm, 2)} deep)`,
    )
    .join(', ');
  return setupPiece(
    'bridge',
    'Bridge',
    straightChain(true, [
      [-half, bottomY],
      [half, bottomY],
      [half, topY],
      [-half, topY],
    ]),
    {
      windows: [reverseChain(outline)],
      scored: [
        // The middle, under the arch between the feet.
        tick(0, bottomY, archTopOf(outline) - CARD_MM.gap * scale),
        ...strings.map(({ x }) =>
          tick(
            x,
            heightOn(crown, x) + CARD_MM.gap * scale,
            heightOn(crown, x) + (CARD_MM.gap + CARD_MM.tick) * scale,
          ),
        ),
      ],
      lettering: [
        ...strings.map(
          ({ x, letter: of }): Lettering =>
            letter(
              of,
              x,
              heightOn(crown, x) + (CARD_MM.gap * 2 + CARD_MM.tick) * scale,
              CARD_MM.letter * scale,
            ),
        ),
        ...textBlock(texts, { x: -half + MARGIN_MM, y: textFromY }, roomMm),
      ],
      notes: [
        `What falls out is the blank of the bridge, the window its stencil; the cut-outs are carved to taste. Feet ${mm(setUp.feetMm)} over their ends, ${mm(value('bridgeFootThickness'), 2)} thick, the top ${mm(value('bridgeTopThickness'), 2)}; the back, toward the tail, stays flat and stands square to the edge of the top.`,
        `The feet are the finished arch of the top at the stop: fit them to the real one by chalk. Bottoms of the slots over the crest of the top: ${slots}; a slot takes a third of the string’s thickness (published for a cello’s nut, elsewhere from memory). Leave the crown a little high until the strings are on.`,
        `The strings pull with ${setUp.strings.totalN.toFixed(0)} N together and press the bridge down with ${setUp.load.downN.toFixed(0)} N. Never slacken all strings at once: the post may fall.`,
      ],
    },
  );
}

/** Where the arch between the feet is highest. */
function archTopOf({ vertices }: Chain<'drawing'>): number {
  return Math.min(...vertices.filter(({ x, y }) => Math.abs(x) < WELD_MM && y > 0).map(({ y }) => y));
}

function crownGauge(sheet: SetupSheet): Drawing {
  const { scale, side, instrument, name } = sheet;
  const crown = handed(instrument.setUp.crown, side);
  const box = boundsOf(crown);
  const half = Math.max(box.max.x + CARD_MM.beside * scale, LEAST_MM / 2);
  const [left, right] = [-1, 1].map((way) => heightOn(crown, way * box.max.x));
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const { crownCircle } = instrument.setUp;
  const texts = [
    `CROWN · radius ${figure(crownCircle.radius)}`,
    ...nameInLines(name, roomMm),
    'seen from the tail',
  ];
  const lettersY = box.max.y + (CARD_MM.tick + CARD_MM.gap) * scale;
  const textFromY = lettersY + (CARD_MM.letter + CARD_MM.gap) * scale + blockHeightMm(texts.length);
  const topY = textFromY + MARGIN_MM;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-half, left ?? 0]),
      ...crown.vertices,
      ...corners([half, right ?? 0], [half, topY], [-half, topY]),
    ],
  };
  const strings = stringsAcross(sheet, 'atBridgeMm');
  return setupPiece('bridge-crown', 'Crown of the bridge', body, {
    scored: strings.map(({ x }) => tick(x, heightOn(crown, x), lettersY - CARD_MM.gap * scale)),
    lettering: [
      ...strings.map(({ x, letter: of }) => letter(of, x, lettersY, CARD_MM.letter * scale)),
      ...textBlock(texts, { x: -half + MARGIN_MM, y: textFromY }, roomMm),
    ],
    notes: [
      `Laid on the top of the bridge from above. The curve passes every string, a third of its thickness let in; the circle nearest to it has its middle ${mm(Math.abs(crownCircle.x))} toward the lowest string, which lies higher over the board.`,
    ],
  });
}

function footGauge(sheet: SetupSheet): Drawing {
  const { scale, side, instrument, name } = sheet;
  const { setUp, plates } = instrument;
  const under = handed(shapeOf(sheet).underFeet, side);
  const box = boundsOf(under);
  const half = Math.max(box.max.x, LEAST_MM / 2);
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = ['BRIDGE FEET · arch at the stop', ...nameInLines(name, roomMm)];
  const markY = box.min.y - CARD_MM.tick * scale;
  const textFromY = markY - CARD_MM.gap;
  const bottomY = textFromY - blockHeightMm(texts.length) - MARGIN_MM;
  const [left, right] = [under.vertices[0], under.vertices.at(-1)];
  const beyond = half > box.max.x + CARD_MM.gap;
  const body: Chain<'drawing'> = {
    closed: true,
    vertices: [
      ...corners([-half, bottomY], [half, bottomY]),
      ...(beyond ? corners([half, right?.y ?? 0]) : []),
      ...reverseChain(under).vertices,
      ...(beyond ? corners([-half, left?.y ?? 0]) : []),
    ],
  };
  const halfFeet = setUp.feetMm / 2;
  const marks = [halfFeet, halfFeet - setUp.footLengthMm].flatMap((x) => [-x, x]);
  return setupPiece('bridge-feet', 'Feet of the bridge', body, {
    scored: [0, ...marks].map((x) => tick(x, markY, heightOn(under, x))),
    lettering: textBlock(texts, { x: -half + MARGIN_MM, y: textFromY }, roomMm),
    notes: [
      `Its upper edge is the finished outside of the top across the bridge line, ${mm(plates.top.bodyLengthMm - bridgeFromLower(sheet))} from the upper end; the marks are the ends of both feet. The feet are first cut to it, then fitted to the top itself, which falls away along the body too.`,
    ],
  });
}

function bridgeFromLower({ instrument }: SetupSheet): number {
  return instrument.plates.top.bodyLengthMm - (instrument.design.values.stop?.value ?? 0);
}

function spacingRule(sheet: SetupSheet): Drawing {
  const { scale, instrument, name } = sheet;
  const { setUp, design } = instrument;
  const [bridge, nut] = [stringsAcross(sheet, 'atBridgeMm'), stringsAcross(sheet, 'atNutMm')];
  const reach = Math.max(...bridge.map(({ x }) => Math.abs(x)));
  const half = Math.max(reach + MARGIN_MM * 2, LEAST_MM / 2);
  const roomMm = 2 * half - 2 * MARGIN_MM;
  const texts = ['STRINGS · bridge above, nut below', ...nameInLines(name, roomMm)];
  const bandMm = (CARD_MM.tick + CARD_MM.letter + 2 * CARD_MM.gap) * scale;
  const highMm = 2 * bandMm + blockHeightMm(texts.length) + MARGIN_MM;
  const letterMm = CARD_MM.letter * scale;
  const tickMm = CARD_MM.tick * scale;
  const gapMm = CARD_MM.gap * scale;
  const pulls = setUp.strings.strings
    .toReversed()
    .map(
      ({ letter: of, tensionN, diameterMm }) =>
        `${of} ${tensionN.toFixed(0)} N (${figure(diameterMm, 2)} mm)`,
    )
    .join(', ');
  return setupPiece(
    'string-spacing',
    'Places of the strings',
    straightChain(true, [
      [-half, 0],
      [half, 0],
      [half, highMm],
      [-half, highMm],
    ]),
    {
      scored: [
        ...bridge.map(({ x }) => tick(x, highMm - tickMm, highMm)),
        ...nut.map(({ x }) => tick(x, 0, tickMm)),
      ],
      lettering: [
        ...bridge.map(({ x, letter: of }) => letter(of, x, highMm - tickMm - gapMm - letterMm, letterMm)),
        ...nut.map(({ x, letter: of }) => letter(of, x, tickMm + gapMm, letterMm)),
        ...textBlock(texts, { x: -half + MARGIN_MM, y: highMm - bandMm - gapMm }, roomMm),
      ],
      notes: [
        `Middles of the strings, ${mm(design.values.stringSpacingBridge?.value ?? 0)} over the outer ones on the bridge and ${mm(design.values.stringSpacingNut?.value ?? 0)} at the nut, ${design.stringSpread === 'edges' ? 'with equal gaps between their edges' : 'equally far from middle to middle'}; seen with the neck away from the eye.`,
        `Strings at an A of ${figure(design.values.tuningA?.value ?? 0)} Hz over ${mm(setUp.strings.lengthMm)}: ${pulls}; ${setUp.strings.totalN.toFixed(0)} N together, break over the bridge ${degreesOf(setUp.angles.breakAngleRad)}.`,
      ],
    },
  );
}

function degreesOf(rad: number): string {
  return `${((rad * 180) / Math.PI).toFixed(1)}°`;
}
