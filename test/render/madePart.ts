/** The parts of our own example fiddle as they might have been made, photographed on the sheet. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Chain, sampleChain } from '../../src/core/curve/index.ts';
import { type Design, draftDesign, readMeasurements } from '../../src/core/design/index.ts';
import { deriveInstrument, type PlanParts } from '../../src/core/instrument/index.ts';
import { type CalibrationSheet, calibrationSheet, type Picture } from '../../src/core/photo/index.ts';
import { type MadeThing, photographThing, type ThingLens, type ThingLight } from './madeThing.ts';

const TABLE = resolve(import.meta.dirname, '..', '..', 'demo', 'fiddle.measurements.json');

export function fiddle(): { readonly design: Design; readonly plan: PlanParts } {
  const table = readMeasurements(JSON.parse(readFileSync(TABLE, 'utf8')));
  const drafted = table.ok ? draftDesign(table.value.measurements) : table;
  const derived = drafted.ok ? deriveInstrument(drafted.value.design) : drafted;
  if (!drafted.ok || !derived.ok) throw new Error('the example does not derive');
  return { design: drafted.value.design, plan: derived.value.plan };
}

type XY = { readonly x: number; readonly y: number };

/** How a thing left its design, and how it lies. */
export interface Made {
  readonly chain: Chain<'body'>;
  readonly inside?: Chain<'body'>;
  readonly heightMm: (yMm: number) => number;
  /** The true place of a place of the design, mm. */
  readonly bent?: (at: XY) => XY;
  readonly faceDown?: boolean;
  readonly turnRad?: number;
  /** Something laid over it: corners in the body frame. */
  readonly over?: readonly XY[];
  readonly upper?: MadeThing['upper'];
  readonly wall?: MadeThing['wall'];
  /** mm over the middle of the sheet. */
  readonly eye?: readonly [number, number, number];
  readonly light?: Partial<ThingLight>;
}

export const SHEET: CalibrationSheet = calibrationSheet('A3');

export function thingLens([x, y, z]: readonly [number, number, number]): ThingLens {
  const middle = [SHEET.widthMm / 2, SHEET.heightMm / 2] as const;
  return {
    widthPx: 1500,
    heightPx: 1080,
    focalPx: 3.05 * z,
    k1: -0.05,
    eye: [middle[0] + x, middle[1] + y, z],
    target: [middle[0], middle[1], 0],
    rollRad: 0.03,
  };
}

export const PLAIN_EYE = [60, -150, 900] as const;

export function photographMade(made: Made, bodyLengthMm: number): Picture {
  const turn = (made.turnRad ?? 0.03) - Math.PI / 2;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const flip = made.faceDown ? -1 : 1;
  const onSheet = ({ x, y }: XY): [number, number] => {
    const v = y - bodyLengthMm / 2;
    return [SHEET.widthMm / 2 + c * flip * x - s * v, SHEET.heightMm / 2 + s * flip * x + c * v];
  };
  const alongBody = (x: number, y: number): number =>
    bodyLengthMm / 2 - s * (x - SHEET.widthMm / 2) + c * (y - SHEET.heightMm / 2);
  const bent = made.bent ?? ((at: XY) => at);
  const ring = (chain: Chain<'body'>) => sampleChain(chain, 0.01).map((at) => onSheet(bent(at)));
  return photographThing(
    SHEET,
    {
      edge: ring(made.chain),
      ...(made.inside && { holes: [ring(made.inside)] }),
      heightMm: (x, y) => made.heightMm(alongBody(x, y)),
      upper: made.upper ?? [0.5, 0.34, 0.17],
      wall: made.wall ?? [0.3, 0.2, 0.1],
      ...(made.over && { over: { ring: made.over.map(onSheet), light: [0.05, 0.12, 0.4] as const } }),
    },
    thingLens(made.eye ?? PLAIN_EYE),
    {
      shadow: { x: 4, y: -3, softMm: 5, depth: 0.4 },
      noise: 1.5,
      blurPx: 0.8,
      grain: 0.1,
      seed: 3,
      ...made.light,
    },
  );
}
