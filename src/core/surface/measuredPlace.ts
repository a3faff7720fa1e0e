import type { Finding } from '../base/index.ts';
import type { ArchDeviation } from './measuredDeviation.ts';

/** Which plate a reading was taken on, and where. */
export interface ReadingPlace {
  readonly face?: 'top' | 'back';
  /** What the station is called in words, such as `waist`. */
  readonly station?: string;
  /** False where it is not known which side of the reading is which: then no side is named. */
  readonly sidesKnown?: boolean;
}

/** What a deviation of an arch most likely is. */
export type DeviationName =
  | 'postBulge'
  | 'barSag'
  | 'barRidge'
  | 'crestSag'
  | 'crestSwelling'
  | 'hollow'
  | 'swelling';

/** A deviation with its likely cause and its place in words. */
export interface NamedDeviation extends ArchDeviation {
  readonly name: DeviationName;
  readonly words: string;
}

/** Share of the half width from the centre line within which a deviation is one of the crest. */
const CREST_SHARE = 0.12;
/** Share of the half width at the waist between which post and bar press: under the feet of the bridge and a little round them. */
const FEET_SHARE = { from: 0.12, to: 0.75 };

/**
 * Names a deviation of a cross arch. Frame section, x from the crest, positive to the right as one looks at the outside
 * with the neck up: the treble side of a top, the bass side of a back.
 *
 * The post presses outwards on the treble side of both plates, and the wood beside the bar of a top sinks on the bass
 * side (common practice). Away from bridge and bar nothing is laid to them.
 */
export function nameAcross(
  deviation: ArchDeviation,
  fromCrestMm: number,
  halfWidthMm: number,
  { face, station, sidesKnown }: ReadingPlace,
): NamedDeviation {
  const up = deviation.sizeMm > 0;
  const away = Math.abs(fromCrestMm);
  const side =
    face === undefined || sidesKnown === false
      ? undefined
      : fromCrestMm > 0 === (face === 'top')
        ? 'treble side'
        : 'bass side';
  const where = side ?? (fromCrestMm > 0 ? 'right of the centre' : 'left of the centre');
  const place = `${away.toFixed(0)} mm from the centre line, ${where}`;
  const reach = `${(deviation.toMm - deviation.fromMm).toFixed(0)} mm wide, ${sizeWords(deviation.sizeMm)}`;
  const named = (name: DeviationName, what: string): NamedDeviation => ({
    ...deviation,
    name,
    words: `${what}, ${reach}`,
  });
  if (away < CREST_SHARE * halfWidthMm)
    return up ? named('crestSwelling', 'a swelling of the crest') : named('crestSag', 'a sag of the crest');
  const underFeet = away > FEET_SHARE.from * halfWidthMm && away < FEET_SHARE.to * halfWidthMm;
  const nearBridge = station === undefined || station === 'waist' || station === 'bridge';
  if (underFeet && up && side === 'treble side' && nearBridge)
    return named('postBulge', `a bulge where the post presses, ${place}`);
  if (underFeet && face === 'top' && side === 'bass side')
    return up
      ? named('barRidge', `a ridge over the bar, ${place}`)
      : named('barSag', `a sag at the bar, ${place}`);
  return up ? named('swelling', `a swelling, ${place}`) : named('hollow', `a hollow, ${place}`);
}

/** Names a deviation of a long arch; `fromCrestMm` is counted along the body, up positive. */
export function nameAlong(
  deviation: ArchDeviation,
  fromCrestMm: number,
  chordMm: number,
  { face, sidesKnown }: ReadingPlace,
): NamedDeviation {
  const up = deviation.sizeMm > 0;
  const atCrest = Math.abs(fromCrestMm) < ALONG_CREST_SHARE * chordMm;
  const direction = sidesKnown === false ? 'from' : fromCrestMm > 0 ? 'above' : 'below';
  const where = `${Math.abs(fromCrestMm).toFixed(0)} mm ${direction} the crest`;
  const name = atCrest ? (up ? 'crestSwelling' : 'crestSag') : up ? 'swelling' : 'hollow';
  const cause = atCrest && !up && face === 'top' ? ', as the load of the strings leaves it' : '';
  const what = { crestSwelling: 'a swelling', crestSag: 'a sag', swelling: 'a swelling', hollow: 'a hollow' }[
    name
  ];
  const reach = `over ${(deviation.toMm - deviation.fromMm).toFixed(0)} mm, ${sizeWords(deviation.sizeMm)}`;
  return { ...deviation, name, words: `${what} ${where}${cause}, ${reach}` };
}

/** Share of the chord round the crest within which a dip is a sag under the bridge. */
const ALONG_CREST_SHARE = 0.15;

function sizeWords(sizeMm: number): string {
  return `${Math.abs(sizeMm).toFixed(2)} mm ${sizeMm > 0 ? 'above' : 'below'} the fitted arch`;
}

/** What the maker is told of a deviation: left out of the fit, or kept and how to leave it out. */
export function deviationFinding(deviation: NamedDeviation, at: string, leftOut: boolean): Finding {
  return leftOut
    ? {
        weight: 'remark',
        code: 'arch.deviation-left-out',
        at,
        found: `${deviation.words}; left out of the fit`,
        need: 'no action: the arch is drawn as it stood without it',
        remedy: 'look at the residuals, and keep it in the fit if it belongs to the design',
      }
    : {
        weight: 'caution',
        code: 'arch.deviation',
        at,
        found: `${deviation.words}; kept in the fit, which it draws aside`,
        need: 'a decision whether it belongs to the design',
        remedy: 'agree to leave it out (leaveOut) if it came with age and load',
      };
}
