import type { Fault } from '../../base/index.ts';
import type { Picture } from '../picture/picture.ts';
import type { TraceOptions } from './bodyTrace.ts';
import type { Confidence } from './confidence.ts';
import type { FitScore } from './fitScore.ts';

type KnownLength = NonNullable<TraceOptions['lengthPx']>;

/** px. With a shorter side than this no outline is to be found. */
export const LEAST_SIDE_PX = 80;

export function tooSmall(picture: Picture): Fault {
  return {
    code: 'trace.too-small',
    at: 'photograph',
    found: `${picture.widthPx} × ${picture.heightPx} pixels`,
    need: `at least ${LEAST_SIDE_PX} pixels a side, better 2000 along the body`,
    remedy: 'use the original photograph, not a preview',
  };
}

export function noLength({ value, sigma }: KnownLength): Fault {
  return {
    code: 'trace.known-length',
    at: 'known body length in the photograph',
    found: `${value} px with a spread of ${sigma} px`,
    need: 'a length and a spread that are both above zero',
    remedy: 'give the length with its standard deviation, or leave it out',
  };
}

export function noBody(): Fault {
  return {
    code: 'trace.no-body',
    at: 'photograph',
    found: 'no body of a violin, viola or cello seen from the front or the back',
    need: 'the whole body, square to the camera, on a calm ground',
    remedy: 'photograph it lying flat on a plain ground, or draw the outline by hand',
  };
}

export function unsolved(): Fault {
  return {
    code: 'trace.unsolved',
    at: 'photograph',
    found: 'no outline for which the equations of the fit have a finite solution',
    need: 'a picture and hints that agree, and a known length with a spread as large as it really is',
    remedy: 'leave the known length and the hints out, and add them again one by one',
  };
}

export function uncertain(final: FitScore, confidence: Confidence): Fault {
  return {
    code: 'trace.uncertain',
    at: 'photograph',
    found: `only ${Math.round(100 * final.support)} % of the likeliest outline shows an edge (worst: ${confidence.worstZone.name})`,
    need: 'an edge on 55 % at least',
    remedy:
      'use a plainer ground, more even light or a squarer view, or set a few points on the edge by hand',
  };
}

export function noSuchBody(asked: number, count: number): Fault {
  return {
    code: 'trace.no-such-body',
    at: 'chosen body',
    found: `body ${asked}, where ${count === 1 ? 'one is' : `${count} are`} found`,
    need: `a whole number from 1 to ${count}`,
    remedy: 'trace without a choice to see the list of bodies',
  };
}

export function isLength({ value, sigma }: KnownLength): boolean {
  return value > 0 && sigma > 0 && Number.isFinite(value) && Number.isFinite(sigma);
}
