import { type Finding, log } from '../../base/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import {
  LEAST_STRING_CROWN_MM,
  lengthOf,
  ordinarySize,
  type Range,
  rangeFor,
  SETUP_RANGES,
  type SetupRanges,
} from '../../knowledge/index.ts';
import { originText } from '../../quantity/index.ts';
import type { SetNeck } from '../neck/neckOfDesign.ts';
import type { TunedString } from '../strings/stringSet.ts';
import type { SetUp } from './setUp.ts';
import { bowingRoomsMm, bowOverEdgeMm } from './stringPlaces.ts';

/** mm. A bow on an outer string passes the edge of a violin's top by this at least; chosen by us, in proportion on others. */
const LEAST_OVER_EDGE_SHARE = 10 / 355;

/** What is to be minded of a set-up: where it leaves what is usual, and what cannot be bowed, hung or seated. */
export function setupFindings(
  design: Design,
  neck: SetNeck,
  setUp: Omit<SetUp, 'findings'>,
  edgeHeightMm: number,
): readonly Finding[] {
  return [
    ...usualFindings(design, setUp),
    ...bowFindings(design, neck, setUp),
    ...tailpieceFindings(design, setUp),
    ...seatFindings(design, edgeHeightMm),
    ...endpinFindings(setUp),
  ];
}

function usualFindings(design: Design, setUp: Omit<SetUp, 'findings'>): readonly Finding[] {
  const scale = (design.values.bodyLength?.value ?? Number.NaN) / lengthOf(ordinarySize(design.family));
  const breakDeg = (setUp.angles.breakAngleRad * 180) / Math.PI;
  return [
    ...unusual(design, 'breakAngle', breakDeg, 1, {
      code: 'setup.break-angle',
      at: 'projection, saddleHeight',
      says: `the strings break over the bridge at ${breakDeg.toFixed(1)}°`,
      unit: '°',
      remedy: 'a higher projection or a lower saddle makes the break sharper and presses harder on the top',
    }),
    ...unusual(
      design,
      'totalPull',
      isTuned(design) ? setUp.strings.totalN : SETUP_RANGES[design.family].totalPull.low,
      scale ** 2,
      {
        code: 'strings.total-pull',
        at: 'string1Pull, string2Pull, string3Pull, string4Pull',
        says: `the strings pull with ${setUp.strings.totalN.toFixed(0)} N together`,
        unit: ' N',
        remedy: 'keep it if lighter or heavier strings are meant, or check pulls, masses and tuning',
      },
    ),
    // One wrong tuning would be told of every string.
    ...(isTuned(design)
      ? setUp.strings.strings.flatMap((string) => pullFindings(design, string))
      : [untuned(design)]),
    ...unusual(design, 'bridgeHeight', setUp.crownHeightMm, scale, {
      code: 'setup.bridge-height',
      at: 'projection',
      says: `the bridge comes out ${setUp.crownHeightMm.toFixed(1)} mm high`,
      unit: ' mm',
      remedy: 'the projection decides it almost one to one',
    }),
  ];
}

/** Hz of the A that players have ever tuned to, with room: lower and higher ones are slips. From memory. */
const TUNINGS_HZ = [370, 500] as const;

function isTuned({ values }: Design): boolean {
  const hz = values.tuningA?.value ?? Number.NaN;
  return hz >= TUNINGS_HZ[0] && hz <= TUNINGS_HZ[1];
}

function untuned({ values }: Design): Finding {
  const hz = values.tuningA?.value ?? Number.NaN;
  return {
    code: 'strings.tuning',
    weight: 'contradiction',
    at: 'tuningA',
    found: `an A of ${hz} Hz, ${Math.abs((12 * log(hz / 440)) / Math.LN2).toFixed(0)} half steps from the usual one`,
    need: `the A that the instrument is tuned to, ${TUNINGS_HZ[0]} to ${TUNINGS_HZ[1]} Hz (415 to 443 in use)`,
    remedy: 'correct it; until then every pull of a string is wrong',
  };
}

/** No unit. A string that pulls by more than this beside what is usual is slack, or near to breaking; chosen by us. */
const PULL_BESIDE = 0.25;

function pullFindings(
  { family, values }: Design,
  { number, letter, tensionN }: TunedString,
): readonly Finding[] {
  const range = rangeFor(family, `string${number}Pull`, values.bodyLength?.value ?? Number.NaN);
  if (!range) return [];
  const [low, high] = [range.low * (1 - PULL_BESIDE), range.high * (1 + PULL_BESIDE)];
  if (tensionN >= low && tensionN <= high) return [];
  return [
    {
      code: 'strings.pull',
      weight: 'caution',
      at: `string${number}Pull, string${number}Mass`,
      found: `the ${letter} string pulls with ${tensionN.toFixed(0)} N`,
      need: `usually ${range.low.toFixed(0)} to ${range.high.toFixed(0)} N (${originText(range.origin)}); far below it is slack, far over it may break`,
      remedy: 'check its mass or pull, its gauge and density, the tuning and the length of string',
    },
  ];
}

interface UsualWords {
  readonly code: string;
  readonly at: string;
  readonly says: string;
  readonly unit: string;
  readonly remedy: string;
}

/** A range holds for the ordinary size: it is widened toward other sizes, never shifted whole. */
function unusual(
  { family }: Design,
  name: keyof SetupRanges,
  value: number,
  scale: number,
  { code, at, says, unit, remedy }: UsualWords,
): readonly Finding[] {
  const range: Range = SETUP_RANGES[family][name];
  const [low, high] = [range.low * Math.min(1, scale), range.high * Math.max(1, scale)];
  // As it is printed: what rounds to the end of the range is in it.
  const printed = Number(value.toFixed(1));
  if (printed >= Number(low.toFixed(1)) && printed <= Number(high.toFixed(1))) return [];
  const digits = Math.abs(high) < 200 ? 1 : 0;
  const usual = `${Number(low.toFixed(digits))} to ${Number(high.toFixed(digits))}${unit}`;
  return [
    {
      code,
      weight: 'remark',
      at,
      found: says,
      need: `usually ${usual} (${originText(range.origin)})`,
      remedy,
    },
  ];
}

function bowFindings(
  design: Design,
  { sizes }: SetNeck,
  { places }: Omit<SetUp, 'findings'>,
): readonly Finding[] {
  const findings: Finding[] = [];
  const least = LEAST_STRING_CROWN_MM[design.family];
  const rooms = bowingRoomsMm(places);
  const room = rooms.reduce((sum, mm) => sum + mm, 0) / rooms.length;
  const scale = (design.values.stringSpacingBridge?.value ?? 0) / usualSpacing(design);
  if (room < least * Math.min(1, scale))
    findings.push({
      code: 'setup.bowing-room',
      weight: 'caution',
      at: 'boardRadius, stringEndBass, stringEndTreble',
      found: `the middle strings stand ${room.toFixed(1)} mm over the line of their neighbours on the bridge, the mean of both`,
      need: `${(least * Math.min(1, scale)).toFixed(1)} mm or more, or the bow touches two (from memory)`,
      remedy: 'use a rounder board, or spread the strings more',
    });
  const bodyMm = design.values.bodyLength?.value ?? Number.NaN;
  const halfMm = (design.values.waist?.value ?? Number.NaN) / 2;
  for (const side of ['lowest', 'highest'] as const) {
    const overMm = bowOverEdgeMm(places, side, halfMm) + sizes.archAtBridgeMm;
    if (overMm < LEAST_OVER_EDGE_SHARE * bodyMm)
      findings.push({
        code: 'setup.bow-over-edge',
        weight: 'caution',
        at: 'waist, projection',
        found: `a bow on the ${side} string passes ${overMm.toFixed(0)} mm over the edge at the waist`,
        need: `${(LEAST_OVER_EDGE_SHARE * bodyMm).toFixed(0)} mm or more`,
        remedy: 'make the waist narrower, the bridge higher or the crown of the strings rounder',
      });
  }
  return findings;
}

function usualSpacing({ family }: Design): number {
  return ordinarySize(family).values.stringSpacingBridge?.value ?? Number.NaN;
}

function tailpieceFindings(design: Design, setUp: Omit<SetUp, 'findings'>): readonly Finding[] {
  const { afterLengthMm, bridgeToSaddleMm, tailpieceMostMm } = setUp;
  const lengthMm = design.values.tailpieceLength?.value;
  const roomMm = bridgeToSaddleMm - afterLengthMm;
  if (!(tailpieceMostMm > 0))
    return [
      {
        code: 'setup.after-length',
        weight: 'contradiction',
        at: 'afterLength, stop',
        found: `${afterLengthMm.toFixed(1)} mm of string behind the bridge, ${bridgeToSaddleMm.toFixed(1)} mm before the saddle`,
        need: 'room for a tailpiece between them',
        remedy: 'shorten the after-length, or check the body stop',
      },
    ];
  if (lengthMm === undefined || lengthMm <= tailpieceMostMm) return [];
  const name = (needed: ValueName): number => design.values[needed]?.value ?? Number.NaN;
  return [
    {
      code: 'setup.tailpiece',
      weight: lengthMm > roomMm ? 'contradiction' : 'caution',
      at: 'tailpieceLength',
      found: `a tailpiece of ${lengthMm.toFixed(1)} mm from its fret to its end, ${(roomMm - lengthMm).toFixed(1)} mm before the saddle`,
      need: `at most ${tailpieceMostMm.toFixed(1)} mm, for ${name('tailGutGap').toFixed(1)} mm of gut over the saddle and ${afterLengthMm.toFixed(1)} mm of string behind the bridge`,
      remedy: 'take a shorter tailpiece, or a shorter after-length',
    },
  ];
}

/** No unit. Least wood of the lower block on either side of the hole of the end button, over its diameter; chosen by us. */
const BESIDE_ENDPIN = 0.5;

function endpinFindings({ endpin }: Omit<SetUp, 'findings'>): readonly Finding[] {
  const { diameterMm, insideMm, besideMm } = endpin;
  const findings: Finding[] = [];
  if (!(insideMm > 0))
    findings.push({
      code: 'setup.endpin-taper',
      weight: 'contradiction',
      at: 'endpinDiameter, endpinTaper',
      found: `an end button ${diameterMm.toFixed(1)} mm thick at the ribs that tapers to nothing inside the lower block`,
      need: 'a pin that comes through ribs and block',
      remedy: 'correct its diameter or its taper: 17 stands for 1 mm of diameter in 17 mm of length',
    });
  if (!(besideMm > 0))
    return [
      ...findings,
      {
        code: 'setup.endpin-block',
        weight: 'contradiction',
        at: 'endpinDiameter, lowerBlockWidth',
        found: `an end button ${diameterMm.toFixed(1)} mm thick in a lower block ${(diameterMm + 2 * besideMm).toFixed(1)} mm wide`,
        need: 'a hole that the block has wood around',
        remedy: 'correct the diameter of the end button or the width of the block',
      },
    ];
  if (besideMm < BESIDE_ENDPIN * diameterMm)
    findings.push({
      code: 'setup.endpin-block',
      weight: 'caution',
      at: 'endpinDiameter, lowerBlockWidth',
      found: `${besideMm.toFixed(1)} mm of the lower block on either side of a hole of ${diameterMm.toFixed(1)} mm`,
      need: 'half of its diameter or more (chosen by us), or the block splits when the pin is pressed in',
      remedy: 'make the lower block wider, or the end button thinner',
    });
  return findings;
}

/** The saddle must rest on the lower block, and stand out over the edge. */
function seatFindings(design: Design, edgeHeightMm: number): readonly Finding[] {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const blockMm = value('overhang') + value('ribThickness') + value('lowerBlockDepth');
  const findings: Finding[] = [];
  if (value('saddleDepth') > blockMm)
    findings.push({
      code: 'setup.saddle-seat',
      weight: 'caution',
      at: 'saddleDepth, lowerBlockDepth',
      found: `a saddle let in ${value('saddleDepth').toFixed(1)} mm over a block that ends ${blockMm.toFixed(1)} mm inside the edge`,
      need: 'a saddle that rests on ribs and block',
      remedy: 'let it in less, or make the block deeper',
    });
  if (value('saddleWidth') + 2 * value('saddleGap') > value('lowerBlockWidth'))
    findings.push({
      code: 'setup.saddle-width',
      weight: 'remark',
      at: 'saddleWidth, lowerBlockWidth',
      found: `a saddle ${value('saddleWidth').toFixed(1)} mm wide over a lower block of ${value('lowerBlockWidth').toFixed(1)} mm`,
      need: 'a block as wide as the seat, or its ends stand on the ribs and linings alone',
      remedy: 'make the saddle narrower or the block wider, or keep it',
    });
  if (!(value('saddleCrest') < value('saddleDepth')) || !(edgeHeightMm > 0))
    findings.push({
      code: 'setup.saddle-crest',
      weight: 'contradiction',
      at: 'saddleCrest, saddleDepth',
      found: `the crest of a saddle ${value('saddleCrest').toFixed(1)} mm in from the edge, the saddle let in ${value('saddleDepth').toFixed(1)} mm`,
      need: 'a crest on the saddle',
      remedy: 'correct one of them',
    });
  return findings;
}
