import { BODY_LENGTH_MM, EDGE_HEIGHT_MM, foundHole, foundOutline, unwornOutline } from '../villageFiddle.ts';
import { distanceField } from './field.ts';
import type { Face, Scene } from './scene.ts';
import { fromBytes, noise, scaleTone, type Tone } from './tone.ts';

/** Paper with a printed pattern on it: 0 black to 1 white at a point of the sheet, undefined beside it. */
export type SheetTone = (x: number, y: number) => number | undefined;

const PAPER = fromBytes(238, 236, 230);
const INK = fromBytes(34, 33, 34);
const BENCH = fromBytes(120, 98, 78);

/** The fiddle on its sheet on the bench of the music school, one face up. World origin: the sheet's lower left. */
export function fiddleScene(face: Face, sheetTone: SheetTone, widthMm: number, heightMm: number): Scene {
  const turnRad = -Math.PI / 2 + (face === 'top' ? 0.021 : -0.015);
  const middle = BODY_LENGTH_MM / 2;
  const at: [number, number] = [
    widthMm / 2 + (face === 'top' ? 1.5 : -2.2) + Math.sin(turnRad) * middle,
    heightMm / 2 + (face === 'top' ? -3 : 1) - Math.cos(turnRad) * middle,
  ];
  return {
    face,
    body: {
      found: distanceField(foundOutline(0.3)),
      unworn: distanceField(unwornOutline(0.3)),
      holes: (['bass', 'treble'] as const).map((side) => distanceField(foundHole(side, 0.1))),
      lengthMm: BODY_LENGTH_MM,
    },
    edgeHeightMm: EDGE_HEIGHT_MM,
    at,
    turnRad,
    ground: (x, y): Tone => {
      const ink = sheetTone(x, y);
      if (ink === undefined)
        return scaleTone(BENCH, 0.8 + 0.25 * noise(x / 2.1, y / 70, 31) + 0.1 * noise(x / 50, y / 50, 37));
      const tone = [0, 1, 2].map((k) => INK[k] + (PAPER[k] - INK[k]) * ink) as unknown as Tone;
      return scaleTone(tone, 0.97 + 0.03 * noise(x / 80, y / 80, 41));
    },
  };
}
