import { loftRow, netAt, type SurfaceShape } from '../../surface/index.ts';
import type { PlateArch } from './archedPlate.ts';
import { plateShape } from './plateShape.ts';
import { footOn } from './smoothLine.ts';

/** A place of the treble half inside the channel, and what the surface is like there. */
export interface SurfaceProbe {
  readonly column: number;
  readonly row: number;
  readonly xMm: number;
  readonly yMm: number;
  /** From the channel's lowest line. */
  readonly insideMm: number;
  /** Share of the body width that x is: 0 on the centre line, 1 where the loft ends. */
  readonly share: number;
  /** Height of the long arch over the channel at this y. */
  readonly riseMm: number;
  /** What makes the loft fair here, without what draws it to measured heights. */
  readonly correctionMm: number;
  readonly shape: SurfaceShape;
}

/** The finished surface inside the channel, probed on an even grid of the treble half, row by row from the lower end. */
export function surfaceProbes(arch: PlateArch, stepMm: number): readonly SurfaceProbe[] {
  const probes: SurfaceProbe[] = [];
  const widestMm = Math.max(...arch.channel.line.points.map(({ x }) => x));
  const lastRow = Math.floor(arch.longArch.endMm / stepMm);
  for (let row = Math.ceil(arch.longArch.startMm / stepMm); row <= lastRow; row++) {
    const yMm = row * stepMm;
    const { widthMm, riseMm } = loftRow(arch.loft, yMm);
    for (let column = 0; column * stepMm < widestMm; column++) {
      const xMm = column * stepMm;
      const insideMm = footOn(arch.channel.line, xMm, yMm).distanceMm;
      if (!(insideMm > 0)) continue;
      const shape = plateShape(arch, xMm, yMm, 'finished');
      const pulledMm = arch.pull ? netAt(arch.pull.net, xMm, yMm).zMm : 0;
      const correctionMm = netAt(arch.correction, xMm, yMm).zMm - pulledMm;
      probes.push({ column, row, xMm, yMm, insideMm, share: xMm / widthMm, riseMm, correctionMm, shape });
    }
  }
  return probes;
}
