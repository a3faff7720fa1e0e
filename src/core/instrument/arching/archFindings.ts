import { atan, type Finding } from '../../base/index.ts';
import { fullnessGain } from '../../surface/index.ts';
import type { ArchStation, PlateArch } from './archedPlate.ts';
import { plateValueNames } from './archNumbers.ts';

/** q above which a cycloid is so near to its loop that the channel is a crack. */
const CAUTION_LOOP_RATIO = 0.6;

/** rad. Steeper than this is steeper than violins are built (our own judgement, from trial surfaces). */
const CAUTION_STEEP_RAD = 0.471;

/** mm for a body of 355 mm, and in proportion. A scraper cannot follow a tighter channel (our own judgement). */
const TIGHT_CHANNEL_MM = 8;

/**
 * Usual fullness; beyond, the arch looks dished or boxed (our own judgement, from trial surfaces). What lies beyond what can be
 * carved is told where contradictions are.
 */
const USUAL_FULLNESS = { least: -0.12, most: 0.1 };
const CARVED_FULLNESS = { least: -0.18, most: 0.15 };

/** What a maker should know of an arch that can be built all the same. */
export function archFindings(arch: Omit<PlateArch, 'findings'>): readonly Finding[] {
  return arch.stations.flatMap((station) => stationFindings(arch, station));
}

function stationFindings(arch: Omit<PlateArch, 'findings'>, station: ArchStation): readonly Finding[] {
  const findings: Finding[] = [];
  const { cycloid, fullness, name } = station;
  const at = plateValueNames(arch.plate).arch;
  const where = `${arch.plate}, ${name}`;
  const loop = cycloid.tracingRadiusMm / cycloid.rollingRadiusMm;
  if (loop > CAUTION_LOOP_RATIO)
    findings.push({
      weight: 'caution',
      code: 'arch.near-loop',
      at,
      found: `${where}: the rise is ${(100 * loop).toFixed(0)} % of what makes the cycloid loop`,
      need: `at most ${(100 * CAUTION_LOOP_RATIO).toFixed(0)} %`,
      remedy: 'lower the arch or widen the channel-to-channel width',
    });
  const steepRad = atan(Math.abs(cycloid.steepest.slope));
  if (steepRad > CAUTION_STEEP_RAD)
    findings.push({
      weight: 'caution',
      code: 'arch.steep',
      at,
      found: `${where}: the arch falls at ${((steepRad * 180) / Math.PI).toFixed(1)} degrees`,
      need: `at most ${((CAUTION_STEEP_RAD * 180) / Math.PI).toFixed(0)} degrees`,
      remedy: 'lower the arch, or move the channel nearer to the edge here',
    });
  const channelRadiusMm = cycloid.channelRadiusMm / fullnessGain(0, fullness);
  const tight = (TIGHT_CHANNEL_MM * arch.bodyLengthMm) / 355;
  if (channelRadiusMm < tight)
    findings.push({
      weight: 'caution',
      code: 'arch.tight-channel',
      at,
      found: `${where}: the arch leaves the channel with a radius of ${channelRadiusMm.toFixed(1)} mm`,
      need: `${tight.toFixed(1)} mm or more for a scraper to follow`,
      remedy: 'lower the arch, or make it less full here',
    });
  const isCarved = fullness >= CARVED_FULLNESS.least && fullness <= CARVED_FULLNESS.most;
  if (isCarved && (fullness < USUAL_FULLNESS.least || fullness > USUAL_FULLNESS.most))
    findings.push({
      weight: 'caution',
      code: 'arch.unusual-fullness',
      at: arch.numbers.fullnessFrom[name],
      found: `${where}: a fullness of ${fullness}`,
      need: `${USUAL_FULLNESS.least} to ${USUAL_FULLNESS.most}`,
      remedy: 'bring it nearer to 0 unless you measured it',
    });
  return findings;
}
