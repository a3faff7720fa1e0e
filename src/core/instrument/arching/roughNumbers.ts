import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import { type Design, VALUES, type ValueName } from '../../design/index.ts';
import type { PlateArch } from './archedPlate.ts';
import type { DrillBit } from './drillBit.ts';

/** What a plate is roughed out with, mm. Heights are above the gluing face. */
export interface RoughNumbers {
  /** Left on the arch, and on the flat edge. */
  readonly allowanceMm: number;
  readonly stepMm: number;
  /** Upper face of the board, level: from it depths are counted. */
  readonly boardMm: number;
  /** Left on the inside where it is drilled. */
  readonly insideAllowanceMm: number;
  readonly drill: DrillBit & { readonly pitchMm: number };
}

/** The value of the board's thickness, where the maker gives one. */
export function boardValueName(arch: PlateArch): ValueName {
  return arch.plate === 'back' ? 'blankHeightBack' : 'blankHeightTop';
}

/** Holes nearer than this share of a bit's diameter run into each other. No unit, chosen by us. */
const LEAST_PITCH = 1.2;

/**
 * The numbers for roughing out a plate; a board without a thickness of its own is as thick as the roughed-out arch.
 *
 * Faults, all at once: `rough.number` (missing, or not a size), `rough.pitch` (holes that run into each other),
 * `rough.board` (a board too thin for the arch).
 */
export function roughNumbers(values: Design['values'], arch: PlateArch): Checked<RoughNumbers> {
  const faults: Fault[] = [];
  const read = (name: ValueName, least: number): number => {
    const value = values[name]?.value ?? Number.NaN;
    if (!(value >= least && Number.isFinite(value))) faults.push(noSize(name, value));
    return value;
  };
  const allowanceMm = read('roughAllowance', 0);
  const stepMm = read('roughStep', LEAST_STEP_MM);
  const insideAllowanceMm = read('hollowAllowance', 0);
  const drill = {
    pitchMm: read('drillPitch', 0),
    diameterMm: read('drillDiameter', LEAST_STEP_MM),
    pointMm: read('drillPoint', 0),
  };
  const name = boardValueName(arch);
  const boardMm = values[name]?.value ?? arch.archHeightMm + allowanceMm;
  if (faults.length > 0) return refuse(...faults);
  if (!(drill.pitchMm >= LEAST_PITCH * drill.diameterMm)) faults.push(crowded(drill));
  if (!(boardMm >= arch.archHeightMm)) faults.push(thinBoard(name, boardMm, arch));
  return faults.length > 0
    ? refuse(...faults)
    : accept({ allowanceMm, stepMm, boardMm, insideAllowanceMm, drill });
}

/** mm. Finer steps than this are no terraces, finer bits no drills. */
const LEAST_STEP_MM = 0.5;

function noSize(name: ValueName, value: number): Fault {
  return {
    code: 'rough.number',
    at: name,
    found: Number.isFinite(value) ? `${value} mm` : 'no value',
    need: `the ${VALUES[name].says}, in mm`,
    remedy: 'give a size that can be cut, or leave it to the habits of the trade',
  };
}

function crowded({ pitchMm, diameterMm }: RoughNumbers['drill']): Fault {
  return {
    code: 'rough.pitch',
    at: 'drillPitch',
    found: `holes of ${diameterMm} mm every ${pitchMm} mm, which run into each other`,
    need: `at least ${(LEAST_PITCH * diameterMm).toFixed(1)} mm from hole to hole`,
    remedy: 'set the holes farther apart, or take a thinner bit',
  };
}

function thinBoard(name: ValueName, boardMm: number, arch: PlateArch): Fault {
  return {
    code: 'rough.board',
    at: name,
    found: `a board of ${boardMm} mm for an arch of ${arch.archHeightMm} mm`,
    need: 'a board at least as thick as the arch is high, edge included',
    remedy: 'take a thicker board, or lower the arch',
  };
}
