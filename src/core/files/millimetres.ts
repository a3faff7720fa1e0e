import { accept, Bug, type Checked, type Fault, type Frame, log, refuse, WRITE_MM } from '../base/index.ts';
import type { Chain } from '../curve/index.ts';
import type { Drawing } from '../drawing/index.ts';

/** Decimals that WRITE_MM stands for. */
const WRITTEN_DECIMALS = Math.round(-log(WRITE_MM) / Math.LN10);
/**
 * Decimals of a bulge. It moves an arc by half its chord times its error: on a chord of a metre this keeps to a
 * millionth of a millimetre; more digits would tell only how a turn was summed.
 */
const BULGE_DECIMALS = 9;

/** A length in millimetres as files hold it: a plain decimal without exponent, to WRITE_MM, no trailing noughts, no −0. */
export function millimetres(value: number): string {
  return decimal(value, WRITTEN_DECIMALS);
}

/** A bulge, or another pure number, as files hold it. */
export function pureNumber(value: number): string {
  return decimal(value, BULGE_DECIMALS);
}

/** The drawing, or a fault `file.not-finite` when a coordinate, bulge or lettering of it is no number. */
export function finiteDrawing(drawing: Drawing): Checked<Drawing> {
  const chains: readonly Chain<Frame>[] = [
    ...drawing.lines.map((line) => line.chain),
    ...(drawing.filled ?? []),
  ];
  const sound =
    chains.every((chain) =>
      chain.vertices.every((vertex) => Number.isFinite(vertex.x + vertex.y + vertex.bulge)),
    ) && drawing.lettering.every((one) => Number.isFinite(one.at.x + one.at.y + one.heightMm + one.turnRad));
  return sound ? accept(drawing) : refuse(notFinite(drawing.title));
}

function notFinite(title: string): Fault {
  return {
    code: 'file.not-finite',
    at: title,
    found: 'a coordinate that is not a number',
    need: 'finite millimetres',
    remedy: 'check the values that this piece is drawn from; nothing was written',
  };
}

function decimal(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new Bug(`the number ${value} reached a writer`);
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
