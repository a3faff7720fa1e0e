import { accept, type Checked, refuse } from '../../base/index.ts';
import type { Design } from '../../design/index.ts';
import type { RegisterEntry } from '../../quantity/index.ts';
import { chordCircleRadius, type LongArchForm } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { type Plate, plateValueNames } from './archNumbers.ts';
import type { ArchChoices } from './plateArch.ts';

/** A flat-topped long arch reaches this far to each side of the crest, as a share of the body length, unless said (ours). */
const FLAT_REACH_SHARE = 1 / 6;

/** And its larger circle has this many times the radius of the one through crest and channel ends (ours). */
const FLAT_RADIUS_RATIO = 2;

/**
 * What a design says of a plate's long arch, as choices for {@link plateArch}.
 *
 * Fault: `arch.flat` (a reach or a radius is given for a long arch that is not flat-topped).
 */
export function chosenLongArch(
  design: Design,
  plate: Plate,
): Checked<Pick<ArchChoices, 'longArch' | 'crestMm'>> {
  const choice = design.longArch?.[plate] ?? {};
  const crest = choice.crest === undefined ? {} : { crestMm: choice.crest };
  const form = choice.form ?? 'circle';
  if (form !== 'flat-topped' && (choice.flatReach !== undefined || choice.flatRadius !== undefined))
    return refuse({
      code: 'arch.flat',
      at: `longArch.${plate}`,
      found: `a flat reach or radius for a long arch in the form of a ${form}`,
      need: 'the form flat-topped, which alone has a flatter circle over the middle',
      remedy: 'add "form": "flat-topped", or leave reach and radius out',
    });
  if (form === 'circle') return accept(crest);
  return accept({ ...crest, longArch: form === 'cycloid' ? { kind: 'cycloid' } : flatTopped(design, plate) });
}

function flatTopped(design: Design, plate: Plate): LongArchForm {
  const choice = design.longArch?.[plate];
  const of = (name: keyof Design['values']): number => design.values[name]?.value ?? Number.NaN;
  const names = plateValueNames(plate);
  const chordMm = of('bodyLength') - 2 * of('channelAtBouts');
  const riseMm = of(names.arch) - of(names.edge) + of(names.scoop);
  return {
    kind: 'two-circles',
    filletMm: of('longArchFillet'),
    platformMm: choice?.flatReach ?? FLAT_REACH_SHARE * of('bodyLength'),
    platformRadiusMm: choice?.flatRadius ?? FLAT_RADIUS_RATIO * chordCircleRadius(chordMm, riseMm),
  };
}

/** Lines of the register on a plate's long arch: its crest, and what flattens it. */
export function chosenLongArchRegister(
  design: Design,
  { plate, longArch }: PlateArch,
): readonly RegisterEntry[] {
  const choice = design.longArch?.[plate];
  const line = (what: string, value: number, isChosen: boolean, how: string): RegisterEntry => ({
    name: `${plate}.longArch.${what}`,
    value,
    unit: 'mm',
    origin: isChosen
      ? { kind: 'chosen', why: how }
      : { kind: 'derived', from: ['outline', 'channelAtBouts'], how },
  });
  const { form } = longArch;
  return [
    line(
      'crest',
      longArch.crestMm,
      choice?.crest !== undefined,
      'highest place of the long arch, from the lower end',
    ),
    ...(form.kind === 'two-circles'
      ? [
          line(
            'flatReach',
            form.platformMm,
            choice?.flatReach !== undefined,
            'the larger circle, to each side of the crest',
          ),
          line(
            'flatRadius',
            form.platformRadiusMm,
            choice?.flatRadius !== undefined,
            'radius of the larger circle over the crest',
          ),
        ]
      : []),
  ];
}
