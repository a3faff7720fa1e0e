import { type Finding, WRITE_MM } from '../base/index.ts';
import type { Design, ValueName } from '../design/index.ts';
import { findingOn, shown, valueOf } from './valueOf.ts';

/** Overhang, purfling and channel across the edge, and corner ends against the overhang. */
export function edgeFindings(design: Design): readonly Finding[] {
  return [
    ...overhangFindings(design),
    ...cornerFindings(design, 'upperCornerEnd'),
    ...cornerFindings(design, 'lowerCornerEnd'),
    ...channelFindings(design),
  ];
}

function overhangFindings(design: Design): readonly Finding[] {
  return (['overhang', 'cornerOverhang'] as const).flatMap((name) => {
    const overhang = valueOf(design, name);
    if (!(overhang < WRITE_MM)) return [];
    const [code, trouble] =
      overhang < 0
        ? ['check.overhang-negative', 'the ribs would stand out beyond the plate']
        : ['check.overhang-none', 'the plate would end flush with the ribs'];
    return [
      findingOn([name], 'contradiction', code, {
        found: `${shown(overhang)} mm: ${trouble}`,
        need: 'a length above zero',
        remedy: 'give the edge of the plate beyond the ribs as a positive length',
      }),
    ];
  });
}

/** No unit. Least width of the ribs' corner in rib thicknesses, below which their ends feather out; ours. */
const LEAST_CORNER_RIBS = 1.5;

/** Between the two overhangs a corner end leaves the corner of the ribs its width. */
function cornerFindings(design: Design, name: 'upperCornerEnd' | 'lowerCornerEnd'): readonly Finding[] {
  const end = valueOf(design, name);
  const overhang = valueOf(design, 'overhang');
  const least = LEAST_CORNER_RIBS * valueOf(design, 'ribThickness');
  const left = end - 2 * overhang;
  if (!(left < least)) return [];
  return [
    findingOn([name, 'overhang'], left <= 0 ? 'contradiction' : 'caution', 'check.corner-end', {
      found: `a corner end of ${shown(end)} mm with ${shown(overhang)} mm of overhang on both sides`,
      need: `at least ${shown(2 * overhang + least)} mm, so that the rib corner keeps ${shown(least)} mm`,
      remedy: 'widen the corner end, or let the plate overhang less',
    }),
  ];
}

function channelFindings(design: Design): readonly Finding[] {
  const findings: Finding[] = [];
  const waist = valueOf(design, 'waist');
  const channel = valueOf(design, 'channelAtWaist');
  if (2 * channel >= waist)
    findings.push(
      findingOn(['channelAtWaist', 'waist'], 'contradiction', 'check.channel-beyond-waist', {
        found: `a channel ${shown(channel)} mm from each edge of a waist of ${shown(waist)} mm`,
        need: `less than ${shown(waist / 2)} mm`,
        remedy: 'bring the channel nearer to the edge, or widen the waist',
      }),
    );
  const purfling = valueOf(design, 'purflingToEdge') + valueOf(design, 'purflingWidth');
  if (purfling >= waist / 2)
    findings.push(
      findingOn(['purflingToEdge', 'waist'], 'contradiction', 'check.purfling-beyond-waist', {
        found: `purfling ${shown(purfling)} mm from both edges of a waist of ${shown(waist)} mm`,
        need: `less than ${shown(waist / 2)} mm`,
        remedy: 'correct the distance of the purfling from the edge',
      }),
    );
  for (const name of ['channelAtBouts', 'channelAtWaist'] as const)
    if (purfling > valueOf(design, name))
      findings.push(purflingInside(name, purfling, valueOf(design, name)));
  const narrowest = Math.min(valueOf(design, 'channelAtBouts'), channel);
  const land = valueOf(design, 'edgeLand');
  if (land > narrowest) findings.push(landInside(land, narrowest));
  const crest = valueOf(design, 'edgeCrestInset');
  if (crest >= narrowest)
    findings.push(
      findingOn(
        ['edgeCrestInset', 'channelAtBouts', 'channelAtWaist'],
        'contradiction',
        'check.crest-inside',
        {
          found: `the crest of the edge ${shown(crest)} mm in, the channel ${shown(narrowest)} mm in`,
          need: 'the crest outside the channel',
          remedy: 'move the crest outwards, or the channel inwards',
        },
      ),
    );
  return findings;
}

function landInside(land: number, channel: number): Finding {
  return findingOn(['edgeLand', 'channelAtBouts', 'channelAtWaist'], 'caution', 'check.land-inside', {
    found: `a flat edge of ${shown(land)} mm, the channel ${shown(channel)} mm in`,
    need: 'the flat edge outside the lowest line of the channel',
    remedy: 'make the flat edge narrower, or move the channel inwards',
  });
}

function purflingInside(name: ValueName, purfling: number, channel: number): Finding {
  return findingOn(['purflingToEdge', 'purflingWidth', name], 'caution', 'check.purfling-inside', {
    found: `purfling that ends ${shown(purfling, 2)} mm from the edge, the channel ${shown(channel, 2)} mm in`,
    need: 'the purfling outside the lowest line of the channel',
    remedy: 'check the distance of the purfling from the edge, or move the channel inwards',
  });
}
