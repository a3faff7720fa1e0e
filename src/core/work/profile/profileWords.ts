import { accept, type Checked, type Fault, type Point, point, refuse } from '../../base/index.ts';
import { STATION_NAMES } from '../../instrument/index.ts';
import type { ArchProfileRequest } from './profileRequest.ts';

/** How an arch in a photograph is to be read, as typed. */
export interface ArchWords {
  readonly of: 'cross-arch' | 'long-arch';
  readonly station?: string;
  readonly rightIs?: string;
  /** The arch is a line drawn on paper, not the edge of a card. */
  readonly isDrawn?: boolean;
  /** Heights count from end to end, not from the card's straight edge. */
  readonly fromEnds?: boolean;
  /** Both ends in the photograph: `120,80 1320,84`. */
  readonly ends?: string;
  readonly leaveOut?: boolean;
}

const SIDES = {
  'cross-arch': ['treble', 'bass'],
  'long-arch': ['neck', 'lower-end'],
} as const;

/** What the words ask for. Faults: `profile.station`, `profile.right-is`, `profile.ends`. */
export function parseArchWords(
  words: ArchWords,
): Checked<Omit<ArchProfileRequest, 'name' | 'picture' | 'sheetBarMm' | 'heightMm' | 'face'>> {
  const station = STATION_NAMES.find((name) => name === words.station);
  const sides: readonly string[] = SIDES[words.of];
  const ends = words.ends === undefined ? accept(null) : parseEnds(words.ends);
  const faults: Fault[] = [];
  if (words.of === 'cross-arch' && station === undefined) faults.push(noStation(words.station));
  if (words.rightIs !== undefined && !sides.includes(words.rightIs))
    faults.push(noSide(words.rightIs, sides));
  if (!ends.ok) faults.push(...ends.faults);
  if (faults.length > 0 || !ends.ok) return refuse(...faults);
  return accept({
    of: words.of === 'cross-arch' ? 'crossArch' : 'longArch',
    kind: words.isDrawn ? 'line' : 'edge',
    base: words.fromEnds || words.isDrawn ? 'ends' : 'face',
    ...(ends.value && { ends: ends.value }),
    ...(words.of === 'cross-arch' && station && { station }),
    ...(words.rightIs !== undefined && {
      rightIs: words.rightIs as NonNullable<ArchProfileRequest['rightIs']>,
    }),
    ...(words.leaveOut && { leaveOut: true }),
  });
}

function parseEnds(text: string): Checked<readonly [Point<'photo'>, Point<'photo'>]> {
  const numbers = text
    .trim()
    .split(/[\s,;]+/)
    .map(Number);
  const [ax, ay, bx, by] = numbers;
  const isWhole = numbers.length === 4 && numbers.every(Number.isFinite);
  if (!isWhole || ax === undefined || ay === undefined || bx === undefined || by === undefined)
    return refuse({
      code: 'profile.ends',
      at: '--ends',
      found: `"${text}"`,
      need: 'two places in the photograph, in pixels, such as "120,80 1320,84"',
      remedy: 'read them in a picture viewer',
    });
  return accept([point(ax, ay), point(bx, by)]);
}

function noStation(found: string | undefined): Fault {
  return {
    code: 'profile.station',
    at: '--station',
    found: found === undefined ? 'a cross arch without its place' : `"${found}"`,
    need: `one of ${STATION_NAMES.join(', ')}`,
    remedy: 'say where on the plate the arch was taken',
  };
}

function noSide(found: string, sides: readonly string[]): Fault {
  return {
    code: 'profile.right-is',
    at: '--right-is',
    found: `"${found}"`,
    need: `one of ${sides.join(', ')}`,
    remedy: 'say what lies at the right of the profile as it is photographed',
  };
}
