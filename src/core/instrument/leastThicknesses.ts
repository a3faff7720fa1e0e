import type { Finding } from '../base/index.ts';
import type { Design } from '../design/index.ts';
import { BACK_ZONES, leastThickness, THICKNESS_ZONES } from '../knowledge/index.ts';
import { chosen, originText, type Quantity, type RegisterEntry } from '../quantity/index.ts';
import type { BodyOutline } from './outline/bodyOutline.ts';
import { placeWords } from './placeWords.ts';
import type { ThicknessSurvey, Zone, ZoneThickness } from './plates/index.ts';

type Plate = 'back' | 'top';

/** Words for a zone. */
const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  middle: 'round the middle',
  lowerBout: 'in the lower bout',
  waist: 'at the flanks of the waist',
  upperBout: 'in the upper bout',
  channel: 'in the channel',
  post: 'under the post',
  bar: 'under the bar',
};

/** mm that a map may fall short unnoticed: half of what a thickness calliper is read to. */
const UNNOTICED_MM = 0.05;

/** The least thickness of a zone: the maker's own, else what is usual for a body of this length. */
function leastOf(design: Design, plate: Plate, zone: Zone): Quantity {
  const own = design.thickness?.[plate]?.least?.[zone];
  if (own !== undefined) return { value: own, unit: 'mm', origin: chosen('in the design') };
  return leastThickness(design.family, plate, zone, design.values.bodyLength?.value ?? Number.NaN);
}

/** The least thickness of every zone, with its origin, for the register. */
export function leastEntries(design: Design): readonly RegisterEntry[] {
  const entries = (plate: Plate, zones: readonly Zone[]): readonly RegisterEntry[] =>
    zones.map((zone) => ({ name: entryName(plate, zone), ...leastOf(design, plate, zone) }));
  return [...entries('back', BACK_ZONES), ...entries('top', THICKNESS_ZONES)];
}

/**
 * Where the map of a plate falls below the least thickness of a zone, and by how much: `thickness.least`. Looked at is the
 * wood that the map leaves; bar and post are not counted as wood.
 */
export function leastFindings(
  design: Design,
  outline: BodyOutline,
  surveys: Readonly<Record<Plate, ThicknessSurvey>>,
): readonly Finding[] {
  return (['back', 'top'] as const).flatMap((plate) =>
    surveys[plate].zones.flatMap((zone) => shortOf(design, outline, plate, zone, surveys[plate].halves)),
  );
}

function shortOf(
  design: Design,
  outline: BodyOutline,
  plate: Plate,
  { zone, leastMm, x, y }: ZoneThickness,
  halves: 'alike' | 'apart',
): readonly Finding[] {
  const least = leastOf(design, plate, zone);
  const shortMm = least.value - leastMm;
  if (!(shortMm > UNNOTICED_MM)) return [];
  const apart = zone === 'bar' || zone === 'post' ? 'apart' : halves;
  // Looking at the outside of a back, the treble side is the left one.
  const where = placeWords(outline, plate === 'back' ? -x : x, y, apart);
  return [
    {
      code: 'thickness.least',
      weight: 'caution',
      at: entryName(plate, zone),
      found: `the ${plate} comes down to ${leastMm.toFixed(2)} mm ${ZONE_WORDS[zone]}, ${shortMm.toFixed(2)} mm short (${where})`,
      need: `${least.value} mm or more there (${originText(least.origin)})`,
      remedy: `leave it thicker there, or set ${entryName(plate, zone)} in the design if so little is meant`,
    },
  ];
}

function entryName(plate: Plate, zone: Zone): string {
  return `thickness.${plate}.least.${zone}`;
}
