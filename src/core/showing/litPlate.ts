import { exp, log } from '../base/index.ts';
import { type Instrument, plateField } from '../instrument/index.ts';
import { lampLight } from '../surface/index.ts';

/** How a plate is lit: the lamp's direction clockwise from the neck end, its height over the plate, radians. */
export interface LampStand {
  readonly fromRad: number;
  readonly heightRad: number;
}

/**
 * Light on a plate, place by place: 255 is the most a picture shows, a level place stands at about 120; `inside` is 0 off the
 * plate. Row by row from the upper end down, `stepMm` apart; the middle column is the centre line.
 */
export interface LitPlate {
  readonly columns: number;
  readonly rows: number;
  readonly stepMm: number;
  readonly light: Uint8Array;
  readonly inside: Uint8Array;
}

/** Body lengths from the middle of the plate to the lamp; rad, half the lamp's width. */
const LAMP_DISTANCE = 2;
const LAMP_HALF_WIDTH_RAD = 0.03;
/** Light of a level place comes out as this share of what can be shown; stronger light nears the whole of it. */
const LEVEL_SHOWN = 0.5;

/** The outside of a plate under one lamp, its own shadows in it. */
export function litPlate(
  instrument: Instrument,
  plate: 'back' | 'top',
  state: 'arched' | 'finished',
  lamp: LampStand,
  stepMm: number,
): LitPlate {
  const arch = instrument.plates[plate];
  const field = plateField(arch, state, stepMm);
  const light = lampLight(field, {
    ...lamp,
    distanceMm: LAMP_DISTANCE * arch.bodyLengthMm,
    halfWidthRad: LAMP_HALF_WIDTH_RAD,
  });
  const { columns, rows } = field;
  const shown = new Uint8Array(columns * rows);
  const inside = new Uint8Array(columns * rows);
  const strength = -log(1 - LEVEL_SHOWN);
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const value = light[(rows - 1 - row) * columns + column] as number;
      if (Number.isNaN(value)) continue;
      const at = row * columns + column;
      inside[at] = 1;
      shown[at] = Math.round(255 * (1 - exp(-strength * value)));
    }
  return { columns, rows, stepMm, light: shown, inside };
}
