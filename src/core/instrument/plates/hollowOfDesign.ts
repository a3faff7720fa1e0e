import { accept, type Checked, type Finding, point, refuse } from '../../base/index.ts';
import { type Chain, containsPoint } from '../../curve/index.ts';
import type { Design, ValueName } from '../../design/index.ts';
import type { PlateArch } from '../arching/index.ts';
import { type BarAndPost, barAndPost } from './barAndPost.ts';
import { type HollowPlate, hollowPlate } from './hollow.ts';
import { onOtherPlate, type PlateArea, type ThickArea } from './plateArea.ts';
import { thicknessMap } from './thicknessMap.ts';
import { thicknessNames } from './thicknessNames.ts';
import type { ThicknessNumbers } from './thicknessNumbers.ts';
import type { HollowTrouble, ThicknessSurvey, Zone } from './thicknessZones.ts';

/**
 * One plate of a design, hollowed: its thickness from the design's values, layout, points and areas; the middle stands under
 * the bridge. Faults: those of {@link thicknessMap} and {@link hollowPlate}.
 */
export function hollowOfDesign(
  design: Design,
  arch: PlateArch,
  outline: Chain<'body'>,
  formEdge: Chain<'body'>,
  areas: readonly PlateArea[],
): Checked<HollowPlate> {
  const value = (name: ValueName): number => design.values[name]?.value ?? Number.NaN;
  const names = thicknessNames(arch.plate);
  const layout = design.thickness?.[arch.plate] ?? {};
  const map = thicknessMap(
    arch,
    arch.bodyLengthMm - value('stop'),
    {
      middleMm: value(names.middleMm),
      boutsMm: value(names.boutsMm),
      flanksMm: value(names.flanksMm),
      channelMm: value(names.channelMm),
    },
    layout.pattern ?? 'concentric',
    (layout.points ?? []).map(([x, y, thicknessMm]) => ({ ...point<'body'>(x, y), thicknessMm })),
    (at) => containsPoint(outline, at),
    areas.map((area): ThickArea => {
      const wish = layout[area.name];
      return {
        ...area,
        extraMm: wish?.extra ?? 0,
        reachMm: wish?.reach ?? AREA_REACH_SHARE * arch.bodyLengthMm,
      };
    }),
  );
  return map.ok ? hollowPlate(arch, map.value, formEdge, value('liningThickness')) : map;
}

/** Share of the body length, 15 mm on a violin, over which the wood of post and bar fades into the map unless said (ours). */
const AREA_REACH_SHARE = 15 / 355;

/** Where a plate cannot be what its thicknesses ask for, in words. */
export function hollowFindings(plate: HollowPlate, survey: ThicknessSurvey): readonly Finding[] {
  return survey.troubles.map((trouble) => findingOf(plate, trouble));
}

function findingOf({ arch, thickness }: HollowPlate, trouble: HollowTrouble): Finding {
  const { kind, zone, x, y, askedMm, leftMm } = trouble;
  const where = `${y.toFixed(0)} mm above the lower end, ${Math.abs(x).toFixed(0)} mm from the centre line`;
  const isChannel = zone === 'channel';
  const pulled = thickness.points.length > 0 ? `, thickness.${arch.plate}.points` : '';
  const at = `${thicknessNames(arch.plate)[TOLD_BY[zone]]}${pulled}`;
  if (kind === 'too-round')
    return {
      code: 'thickness.too-round',
      weight: 'contradiction',
      at,
      found: `${askedMm.toFixed(1)} mm of ${arch.plate} under an outside that is rounder than that, ${where}`,
      need: 'an outside whose round is larger than the thickness',
      remedy: 'make the plate thinner there, or the arch less sharply rounded',
    };
  return {
    code: 'thickness.too-low',
    weight: 'caution',
    at,
    found: `the ${arch.plate} comes out ${leftMm.toFixed(1)} mm thick instead of ${askedMm.toFixed(1)} mm, ${where}: its outside lies so low there that the inside would go through the gluing face`,
    need: `an outside at least ${askedMm.toFixed(1)} mm over the gluing face`,
    remedy: isChannel
      ? 'make the plate thinner there, leave its edge thicker, or make the channel shallower'
      : 'make the plate thinner there, or its arch higher',
  };
}

/** The number that tells how thick a plate is in a part of it. */
const TOLD_BY: Readonly<Record<Zone, keyof ThicknessNumbers>> = {
  middle: 'middleMm',
  lowerBout: 'boutsMm',
  waist: 'flanksMm',
  upperBout: 'boutsMm',
  channel: 'channelMm',
  post: 'middleMm',
  bar: 'middleMm',
};

/** Both plates of a design hollowed, the post under both and the bar on the top, or every fault. */
export function hollowPlates(
  design: Design,
  arches: { readonly back: PlateArch; readonly top: PlateArch },
  outline: Chain<'body'>,
  formEdge: Chain<'body'>,
): Checked<{ readonly back: HollowPlate; readonly top: HollowPlate; readonly barAndPost: BarAndPost }> {
  const places = barAndPost(design, arches.top, outline);
  const { post, bar } = places.ok ? places.value : { post: null, bar: null };
  const back = hollowOfDesign(design, arches.back, outline, formEdge, post ? [onOtherPlate(post)] : []);
  const top = hollowOfDesign(design, arches.top, outline, formEdge, post && bar ? [post, bar] : []);
  if (!places.ok || !back.ok || !top.ok)
    return refuse(...[places, back, top].flatMap((part) => (part.ok ? [] : part.faults)));
  return accept({ back: back.value, top: top.value, barAndPost: places.value });
}
