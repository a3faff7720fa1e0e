import { highStringSide } from '../design/index.ts';
import type { Instrument } from '../instrument/index.ts';
import { toFile } from './chainDocument.ts';

/** Strings and set-up for other programs, the highest string first. Millimetres, newtons, degrees, hertz, grams a metre. */
export function setUpRecords({ setUp, design }: Instrument) {
  const { strings, places, angles, load, crownCircle } = setUp;
  const across = (mm: number): number => toFile(highStringSide(design) * mm);
  return {
    strings: {
      tuningA: design.values.tuningA?.value,
      length: toFile(strings.lengthMm),
      spread: design.stringSpread ?? 'centres',
      strings: strings.strings.toReversed().map((string) => ({
        number: string.number,
        note: string.letter,
        frequency: toFile(string.soundsHz),
        diameter: string.diameterMm,
        gramsPerMetre: toFile(string.gramsPerMetre),
        tension: toFile(string.tensionN),
      })),
      totalTension: toFile(strings.totalN),
    },
    setup: {
      breakAngle: toFile(degrees(angles.breakAngleRad)),
      rearAngle: toFile(degrees(angles.rearAngleRad)),
      bridge: {
        height: toFile(setUp.crownHeightMm),
        feet: setUp.feetMm,
        crown: { radius: toFile(crownCircle.radius), across: across(crownCircle.x) },
        // Across in the frame of the body; bottoms of the slots, over the crest of the top at the bridge.
        slots: places.toReversed().map(({ atBridgeMm, bridgeUpMm }, index) => ({
          number: index + 1,
          at: [across(atBridgeMm), toFile(bridgeUpMm)],
        })),
        halvingLean: toFile(degrees(angles.halvingLeanRad)),
        load: {
          down: toFile(load.downN),
          downWithHalvedBreak: toFile(load.halvedDownN),
          towardBoard: toFile(load.towardBoardN),
          onBassFoot: toFile(load.lowFootN),
          onTrebleFoot: toFile(load.highFootN),
        },
      },
      nut: {
        strings: places.toReversed().map(({ atNutMm, nutUpMm, overNutMm }, index) => ({
          number: index + 1,
          at: [across(atNutMm), toFile(nutUpMm)],
          overBoard: toFile(overNutMm),
        })),
      },
      saddle: { fromBridge: toFile(setUp.saddle.fromBridgeMm), overEdge: toFile(setUp.saddle.overEdgeMm) },
      afterLength: toFile(setUp.afterLengthMm),
      longestTailpiece: toFile(setUp.tailpieceMostMm),
      // On the centre line; up counts from the edge of the ribs toward the back.
      endpinHole: {
        diameter: toFile(setUp.endpin.diameterMm),
        inside: toFile(setUp.endpin.insideMm),
        up: toFile(setUp.endpin.upMm),
        drill: toFile(setUp.endpin.drillMm),
      },
    },
  };
}

function degrees(rad: number): number {
  return (rad * 180) / Math.PI;
}
