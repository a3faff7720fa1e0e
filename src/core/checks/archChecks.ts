import type { Finding } from '../base/index.ts';
import type { Design, ValueName } from '../design/index.ts';
import { findingOn, shown, valueOf } from './valueOf.ts';

type Plate = 'Back' | 'Top';

/** Arch, edge, scoop and long arch of both plates, and the fullness of every station. */
export function archFindings(design: Design): readonly Finding[] {
  return [...plateFindings(design, 'Back'), ...plateFindings(design, 'Top'), ...fullnessFindings(design)];
}

function plateFindings(design: Design, plate: Plate): readonly Finding[] {
  const arch = `archHeight${plate}` as const;
  const edge = `edgeHeight${plate}` as const;
  const scoop = `scoopDepth${plate}` as const;
  const archMm = valueOf(design, arch);
  const edgeMm = valueOf(design, edge);
  const scoopMm = valueOf(design, scoop);
  const findings: Finding[] = [];
  if (scoopMm >= edgeMm)
    findings.push(
      findingOn([scoop, edge], 'contradiction', 'check.scoop-through', {
        found: `a scoop ${shown(scoopMm)} mm deep in an edge of ${shown(edgeMm)} mm`,
        need: 'wood left under the channel',
        remedy: 'make the scoop shallower, or the edge thicker',
      }),
    );
  if (archMm <= edgeMm)
    return [
      ...findings,
      findingOn([arch, edge], 'contradiction', 'check.arch-below-edge', {
        found: `an arch of ${shown(archMm)} mm, edge included, with an edge of ${shown(edgeMm)} mm`,
        need: 'the arch higher than the edge',
        remedy: 'give the height of the arch from the gluing face, the edge included',
      }),
    ];
  const riseMm = archMm - (edgeMm - scoopMm);
  return [...findings, ...loopFindings(design, arch, riseMm), ...longArchFindings(design, arch, riseMm)];
}

/** No unit. From this nearness to a loop on a scraper no longer follows the channel; chosen by us. */
const NEAR_LOOP = 0.6;

/**
 * The waist's own cycloid: there the plate is narrowest and nearly at its full rise, so no station is nearer
 * to a loop. It loops when the rise reaches the width between the channels over π.
 */
function loopFindings(design: Design, arch: ValueName, riseMm: number): readonly Finding[] {
  const widthMm = valueOf(design, 'waist') - 2 * valueOf(design, 'channelAtWaist');
  const nearness = (Math.PI * riseMm) / widthMm;
  if (!(widthMm > 0) || !(nearness > NEAR_LOOP)) return [];
  const loops = nearness >= 1;
  const words = `a rise of ${shown(riseMm)} mm over ${shown(widthMm)} mm between the channels of the waist`;
  return [
    findingOn([arch, 'waist', 'channelAtWaist'], loops ? 'contradiction' : 'caution', 'check.arch-loop', {
      found: loops ? `${words}: the cycloid would loop` : `${words}: a steep arch with a very tight channel`,
      need: loops
        ? `a rise below ${shown(widthMm / Math.PI)} mm`
        : `a rise up to ${shown((NEAR_LOOP * widthMm) / Math.PI)} mm for a channel that a scraper can follow`,
      remedy: 'lower the arch, bring the channel nearer to the edge, or widen the waist',
    }),
  ];
}

/** The long arch is one circle of radius (c² + s²) / 2s less its end fillet, c half the chord, s the rise. */
function longArchFindings(design: Design, arch: ValueName, riseMm: number): readonly Finding[] {
  const halfChord = valueOf(design, 'bodyLength') / 2 - valueOf(design, 'channelAtBouts');
  const most = (halfChord ** 2 + riseMm ** 2) / (2 * riseMm);
  const fillet = valueOf(design, 'longArchFillet');
  if (halfChord <= 0) return [channelBeyondLength(design)];
  if (!(fillet >= most)) return [];
  return [
    findingOn(['longArchFillet', arch], 'contradiction', 'check.long-arch-fillet', {
      found: `end fillets of ${shown(fillet)} mm`,
      need: `less than ${shown(most)} mm, the radius of the whole long arch`,
      remedy: 'use a smaller fillet',
    }),
  ];
}

function channelBeyondLength(design: Design): Finding {
  return findingOn(['channelAtBouts', 'bodyLength'], 'contradiction', 'check.channel-beyond-length', {
    found: `a channel ${shown(valueOf(design, 'channelAtBouts'))} mm from each end`,
    need: 'less than half the body length',
    remedy: 'bring the channel nearer to the edge',
  });
}

/** No unit. Beyond this the arch is no longer monotone enough to carve; chosen by us. */
const FULLNESS = { low: -0.18, high: 0.15 };

function fullnessFindings(design: Design): readonly Finding[] {
  const names = (['UpperBout', 'UpperCorner', 'Waist', 'LowerCorner', 'LowerBout'] as const).flatMap(
    (station) => [`fullness${station}`, `fullnessTop${station}`] as const,
  );
  return names
    .filter((name) => valueOf(design, name) < FULLNESS.low || valueOf(design, name) > FULLNESS.high)
    .map((name) =>
      findingOn([name], 'contradiction', 'check.fullness', {
        found: `a fullness of ${shown(valueOf(design, name), 3)}`,
        need: `${FULLNESS.low} to ${FULLNESS.high}; 0 is the cycloid itself`,
        remedy: 'bring it nearer to 0',
      }),
    );
}
