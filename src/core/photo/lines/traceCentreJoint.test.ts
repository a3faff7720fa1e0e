import { expect, test } from 'vitest';
import { type PaintedPlate, paintPlate } from '../../../../test/fixtures/paintedPlate.ts';
import { traceCentreJoint } from './traceCentreJoint.ts';

const PX_PER_MM = 4;

function paintJoint(strength: number): PaintedPlate {
  return paintPlate({
    pxPerMm: PX_PER_MM,
    box: [-14, -8, 14, 363],
    joint: { lower: 0.8, upper: -0.5, strength },
  });
}

function traceIn(plate: PaintedPlate) {
  return traceCentreJoint(plate.picture, {
    lowerEnd: plate.toPhoto([0.3, 0]),
    upperEnd: plate.toPhoto([-0.3, 355]),
    axisAngleRad: 0,
    pxPerMm: PX_PER_MM,
    skew: 0,
    keystonePerMm: 0,
  });
}

test('a joint plainer than the grain is found within 0.1 mm at both ends and within its own interval', () => {
  const plate = paintJoint(0.6);
  const { joint } = traceIn(plate);
  expect(joint).not.toBeNull();
  if (joint === null) return;
  const ends = [plate.toBody(joint.lower)[0] - 0.8, plate.toBody(joint.upper)[0] + 0.5];
  for (const off of ends) expect(Math.abs(off)).toBeLessThan(0.1);
  expect(Math.abs(ends[0])).toBeLessThan(joint.plusMinusPx.lower / PX_PER_MM);
  expect(Math.abs(ends[1])).toBeLessThan(joint.plusMinusPx.upper / PX_PER_MM);
});

test.each([0, 0.15])('a joint of strength %s among plainer grain is said not to be seen', (strength) => {
  const { joint, findings } = traceIn(paintJoint(strength));
  expect(joint).toBeNull();
  expect(findings.map(({ code }) => code)).toEqual(['joint.not-seen']);
});
