import { describe, expect, test } from 'vitest';
import { defaultInstrument } from '../../../reference/made/defaultInstruments.ts';
import { letteringFaults } from '../../../test/laws/lettering.ts';
import { drawingFaults } from '../../../test/laws/parts.ts';
import { arcOf, boundsOf, segments } from '../curve/index.ts';
import { boardThickness, plateHeight } from '../instrument/index.ts';
import { boardDrawings } from './boardDrawings.ts';
import type { Drawing } from './drawing.ts';
import { mortiseDrawings } from './mortiseDrawings.ts';
import { neckDrawings } from './neckDrawings.ts';
import { neckElevationDrawing } from './neckElevationDrawing.ts';
import { neckSetDrawings } from './neckSetDrawings.ts';

describe.each(['violin', 'viola', 'cello'] as const)('the gauges of a %s', (family) => {
  const { plan, plates, neck } = defaultInstrument(family);
  const parts = { plan, neck, top: plates.top };
  const set = neckSetDrawings(parts);
  if (!set.ok) throw new Error(JSON.stringify(set.faults));
  const drawings = [...neckDrawings(parts), ...boardDrawings(parts), ...mortiseDrawings(parts), ...set.value];
  const body = (name: string) => {
    const chain = drawings.find((drawing) => drawing.name === name)?.lines[0]?.chain;
    if (!chain) throw new Error(`no ${name}`);
    return chain;
  };
  const ys = (name: string, x: number) =>
    body(name)
      .vertices.filter((at) => Math.abs(at.x - x) < 1e-6)
      .map(({ y }) => y);

  test('are pieces that can be cut, lettered on themselves, each of its own name, each with a caution', () => {
    expect(drawings.flatMap((one: Drawing) => [...drawingFaults(one), ...letteringFaults(one)])).toEqual([]);
    expect(new Set(drawings.map(({ name }) => name)).size).toBe(19);
    for (const { notes } of drawings) expect(notes.join(' ')).toContain('clamp the neck');
  });

  test('keep to a root of its own width beyond the end of the plates', () => {
    const { root } = neck.shape;
    const wide = { ...root, topWidthMm: root.topWidthMm + 3, edgeWidthMm: root.edgeWidthMm + 3 };
    const own = { ...parts, neck: { ...neck, shape: { ...neck.shape, root: wide } } };
    const drawn = [...neckDrawings(own), ...mortiseDrawings(own)];
    expect(drawn.flatMap((one) => [...drawingFaults(one), ...letteringFaults(one)])).toEqual([]);
    const outline = drawn.find(({ name }) => name === 'neck-plan')?.lines[0]?.chain;
    expect(outline?.vertices.length).toBe(6);
    expect(boundsOf(outline ?? body('neck-plan')).max.y).toBeCloseTo(wide.topWidthMm / 2, 9);
  });

  test('go with a picture of the whole from the side: bridge, board’s end and root where the set has them', () => {
    const elevation = neckElevationDrawing(parts);
    if (!elevation.ok) throw new Error(JSON.stringify(elevation.faults));
    const { lines, lettering, routes } = elevation.value;
    expect(routes).toEqual(['print']);
    expect(lettering.length).toBeGreaterThan(6);
    const places = lines.flatMap(({ chain }) => chain.vertices);
    const near = (x: number, y: number) =>
      Math.min(...places.map((place) => Math.hypot(place.x - x, place.y - y)));
    const { set, sizes, mortise, bodyHeightMm } = neck;
    expect(near(sizes.bodyStopMm, set.bridgeOverEdgeMm)).toBeLessThan(1e-9);
    expect(near(set.boardEndFromTopEndMm, set.boardEndOverEdgeMm)).toBeLessThan(1e-9);
    expect(near(mortise.depthAtBackMm, -bodyHeightMm)).toBeLessThan(1e-9);
    expect(near(-neck.button.heightMm, -bodyHeightMm)).toBeLessThan(1e-9);
  });

  test('bring the notch of the projection as high over the arch as the projection', () => {
    const { archHeightMm } = plates.top;
    const crown = plateHeight(plates.top, 0, plan.outline.bodyLengthMm - neck.sizes.bodyStopMm, 'finished');
    const floor = Math.max(
      ...ys('projection-gauge', 6).filter((y) => y < boundsOf(body('projection-gauge')).max.y),
    );
    expect(crown).toBeLessThanOrEqual(archHeightMm);
    expect(Math.abs(floor - crown - neck.sizes.projectionMm)).toBeLessThan(0.01);
  });

  test('bring the upper edge of the gauge of the board’s end over the arch there', () => {
    const at = plan.outline.bodyLengthMm - neck.set.boardEndFromTopEndMm;
    const crown = plateHeight(plates.top, 0, at, 'finished');
    const high = boundsOf(body('board-end-gauge')).max.y;
    expect(Math.abs(high - crown - neck.set.boardEndOverTopMm)).toBeLessThan(0.01);
  });

  test('let the foot of the overstand gauge down to the edge, square to it, at the neck angle', () => {
    const [, , outer, inner] = body('overstand-gauge').vertices;
    if (!outer || !inner) throw new Error('no foot');
    expect(Math.atan2(outer.y - inner.y, inner.x - outer.x)).toBeCloseTo(neck.set.neckAngleRad, 9);
    // The glue line over the edge: as far above the foot, measured square to the edge, as the overstand.
    const [sin, cos] = [Math.sin(neck.set.neckAngleRad), Math.cos(neck.set.neckAngleRad)];
    expect(-outer.x * sin - outer.y * cos).toBeCloseTo(neck.sizes.overstandMm, 9);
  });

  test('have the angle of the root between the arms of its gauge', () => {
    const { vertices } = body('root-angle');
    const [end, , , down] = vertices;
    if (!end || !down) throw new Error('no arms');
    const angle = Math.abs(Math.atan2(down.y, down.x) - Math.atan2(end.y, end.x) - 0);
    expect(Math.min(angle, 2 * Math.PI - angle)).toBeCloseTo(neck.rootAngleRad, 6);
  });

  test('give the scoop as arcs as deep as it is', () => {
    const box = boundsOf(body('board-scoop'));
    expect(-box.min.y).toBeCloseTo(neck.scoop.bassMm, 6);
    expect(box.max.y - 24).toBeCloseTo(neck.scoop.trebleMm, 6);
  });

  test('stand over the board with its round and thickness', () => {
    const { board } = neck.sizes;
    const arc = segments(body('board-section-end'))
      .map(arcOf)
      .find((one) => one !== null);
    expect(arc?.radiusMm).toBeCloseTo(board.radiusMm, 9);
    expect((arc?.centre.y ?? 0) + board.radiusMm).toBeCloseTo(boardThickness(board, board.lengthMm), 9);
  });
});
