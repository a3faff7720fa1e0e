import { expect, test } from 'vitest';
import { instrumentOf, withValues } from '../../../../test/fixtures/heads.ts';
import { boundsOf, nearestOn, sampleChain } from '../../curve/index.ts';
import type { ValueName } from '../../design/index.ts';
import { deriveInstrument } from '../deriveInstrument.ts';
import { MOST_TURN_RAD } from './layHole.ts';
import type { SoundHoles } from './soundHoles.ts';

function holesWith(given: Partial<Record<ValueName, number>>): SoundHoles {
  const { design } = instrumentOf('violin', 355);
  const derived = deriveInstrument(withValues(design, given));
  if (!derived.ok) throw new Error(JSON.stringify(derived.faults));
  return derived.value.soundHoles;
}

test('turned to the edge, a hole keeps its length, its nick on the stop line, its eyes and its upper gap', () => {
  const turns = [9.5, 10.5, 12, 13.5, 15, 17].map((lowerEyeToEdge) => {
    const holes = holesWith({ lowerEyeToEdge });
    const { min, max } = boundsOf(holes.treble);
    expect(max.y - min.y).toBeCloseTo(73, 5);
    expect(holes.lowerEye.toEdgeMm).toBeCloseTo(lowerEyeToEdge, 6);
    expect(holes.stem.inner.y).toBeCloseTo(160, 6);
    expect(2 * holes.upperEye.centre.x - holes.upperEye.diameterMm).toBeCloseTo(42, 6);
    expect(holes.upperEye.diameterMm).toBeCloseTo(6.7, 6);
    return holes.turnRad;
  });
  // The farther from the edge, the less it is turned toward it.
  expect(turns).toEqual(turns.toSorted((a, b) => b - a));
});

test('a distance that no turn reaches is told of with the numbers, and the hole stays as near as it gets', () => {
  for (const [lowerEyeToEdge, turnRad] of [
    [4, MOST_TURN_RAD],
    [25, -MOST_TURN_RAD],
  ] as const) {
    const holes = holesWith({ lowerEyeToEdge });
    expect(holes.turnRad).toBeCloseTo(turnRad, 6);
    const finding = holes.findings.find(({ code }) => code === 'soundHoles.eye-to-edge');
    expect(finding?.weight).toBe('caution');
    expect(finding?.found).toContain(`${holes.lowerEye.toEdgeMm.toFixed(1)} mm`);
    expect(finding?.found).toContain('7.0°');
  }
});

test('the stem is as wide at its nicks as the number says, however wide', () => {
  for (const holeStemWidth of [5.5, 6.5, 7.5]) {
    const { hole } = holesWith({ holeStemWidth });
    // Independently of how it was drawn: the nearest place of the outer half of the whole line.
    const { foot } = hole.innerNick;
    const outer = sampleChain(hole.plain, 0.000_1).filter(({ x, y }) => x > foot.x + 2 && Math.abs(y) < 15);
    const wide = Math.min(...outer.map(({ x, y }) => Math.hypot(x - foot.x, y - foot.y)));
    expect(wide).toBeCloseTo(holeStemWidth, 2);
    expect(nearestOn(hole.plain, hole.acrossStem).distanceMm).toBeLessThan(0.000_001);
  }
});
