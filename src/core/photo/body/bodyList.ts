import { type Finding, type Point, point } from '../../base/index.ts';
import type { LabPicture } from '../picture/labPicture.ts';
import { AT_X, AT_Y, type BodyFit } from './bodySeat.ts';
import type { BodyPlace } from './bodyTrace.ts';
import { guessFace } from './faceGuess.ts';

/** A body with its place in the list that was given. */
export interface ListedBody {
  readonly index: number;
  readonly place: BodyPlace;
}

/** Fits of all bodies in order from left to right (or from above, where they lie one below the other), with words. */
export function listBodies(lab: LabPicture, fits: readonly BodyFit[], factor: number): readonly ListedBody[] {
  const xs = fits.map((fit) => fit[AT_X]);
  const ys = fits.map((fit) => fit[AT_Y]);
  const beside = Math.max(...xs) - Math.min(...xs) >= Math.max(...ys) - Math.min(...ys);
  return fits
    .map((fit, index) => ({ fit, index, order: beside ? fit[AT_X] : fit[AT_Y] }))
    .sort((a, b) => a.order - b.order)
    .map(({ fit, index }, at) => ({
      index,
      place: {
        number: at + 1,
        where: whereWords(at, fits.length, beside),
        face: guessFace(lab, fit),
        middle: inPhoto(fit, factor),
      },
    }));
}

function inPhoto(fit: BodyFit, factor: number): Point<'photo'> {
  return point((fit[AT_X] + 0.5) / factor - 0.5, (fit[AT_Y] + 0.5) / factor - 0.5);
}

function whereWords(at: number, count: number, beside: boolean): string {
  if (count === 1) return 'alone';
  const [first, last] = beside ? ['left', 'right'] : ['above', 'below'];
  if (at === 0) return first;
  if (at === count - 1) return last;
  return count === 3 ? 'in the middle' : `${at + 1} from ${beside ? 'the left' : 'above'}`;
}

/** The question which of several bodies is meant. */
export function severalBodies(bodies: readonly BodyPlace[]): Finding {
  const listed = bodies.map(({ number, where, face }) => `${number}: ${where}${faceWords(face)}`).join('; ');
  return {
    code: 'trace.several-bodies',
    at: 'photograph',
    found: `${bodies.length} bodies (${listed})`,
    need: 'one of them chosen',
    remedy: 'choose one by its number, or mark a place inside the one that is meant',
    weight: 'caution',
  };
}

function faceWords(face: BodyPlace['face']): string {
  if (face === null) return '';
  return face === 'top' ? ', a front' : ', a back';
}
