import { accept, Bug, type Checked, type Fault, refuse } from '../base/index.ts';
import { originText } from './origin.ts';
import { spreadDecimals } from './printSpread.ts';
import type { Quantity, RegisterEntry, Unit } from './quantity.ts';

/** Every number of one design or instrument, each once, in the order given. */
export interface Register {
  readonly entries: readonly RegisterEntry[];
}

/** The names that a quantity was worked out from; none for a given one. */
export function dependsOn(quantity: Quantity): readonly string[] {
  return quantity.origin.kind === 'derived' ? quantity.origin.from : [];
}

/**
 * A register whose names are unique, whose dependencies are all in it and never run in a circle.
 * Faults, all of them: `register.twice`, `register.unknown`, `register.circle`, `register.not-a-number`.
 */
export function makeRegister(entries: readonly RegisterEntry[]): Checked<Register> {
  const byName = new Map<string, RegisterEntry>();
  const faults: Fault[] = [];
  for (const entry of entries) {
    if (byName.has(entry.name)) faults.push(twice(entry.name));
    else byName.set(entry.name, entry);
    if (!Number.isFinite(entry.value)) faults.push(notANumber(entry));
  }
  for (const entry of entries)
    for (const name of dependsOn(entry)) if (!byName.has(name)) faults.push(unknown(entry.name, name));
  const circle = circleIn(byName);
  if (circle) faults.push(circleFault(circle));
  return faults.length > 0 ? refuse(...faults) : accept({ entries: [...entries] });
}

/** The names of everything that changes when `name` changes, near or far, in the register's order. */
export function dependentsOf(register: Register, name: string): readonly string[] {
  if (!register.entries.some((entry) => entry.name === name)) throw new Bug(`no ${name} in the register`);
  const touched = new Set<string>([name]);
  for (let before = -1; before !== touched.size; ) {
    before = touched.size;
    for (const entry of register.entries)
      if (dependsOn(entry).some((source) => touched.has(source))) touched.add(entry.name);
  }
  return register.entries.map((entry) => entry.name).filter((other) => other !== name && touched.has(other));
}

/** The register as a table in plain text: name, value, unit, ± and origin, one line each. */
export function registerText(register: Register): string {
  const rows = register.entries.map((entry) => [
    entry.name,
    printValue(entry),
    entry.unit === 'ratio' || entry.unit === 'count' ? '' : entry.unit,
    entry.plusMinus ? `±${entry.plusMinus.toFixed(spreadDecimals(entry.plusMinus))}` : '',
    originText(entry.origin),
  ]);
  const table = [['name', 'value', 'unit', '±', 'origin'], ...rows];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...table.map((row) => (row[column] ?? '').length)));
  return table.map((row) => row.map((cell, column) => pad(cell, column, widths)).join('  ')).join('\n');
}

function pad(cell: string, column: number, widths: readonly number[]): string {
  const width = widths[column] ?? 0;
  return column === 1 || column === 3 ? cell.padStart(width) : cell.padEnd(width);
}

/** No more digits than the number is good for. */
function printValue({ value, unit, plusMinus }: RegisterEntry): string {
  return plusMinus ? value.toFixed(spreadDecimals(plusMinus)) : print(value, DECIMALS[unit] ?? 3);
}

/** Of units that are known less finely than to a thousandth. */
const DECIMALS: Readonly<Partial<Record<Unit, number>>> = { mm: 2, N: 1, deg: 2, Hz: 2 };

function print(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)) + 0);
}

function circleIn(byName: ReadonlyMap<string, RegisterEntry>): readonly string[] | undefined {
  const done = new Set<string>();
  const route: string[] = [];
  const visit = (name: string): readonly string[] | undefined => {
    const entry = byName.get(name);
    if (!entry || done.has(name)) return undefined;
    const start = route.indexOf(name);
    if (start >= 0) return [...route.slice(start), name];
    route.push(name);
    for (const source of dependsOn(entry)) {
      const found = visit(source);
      if (found) return found;
    }
    route.pop();
    done.add(name);
    return undefined;
  };
  for (const name of byName.keys()) {
    const found = visit(name);
    if (found) return found;
  }
  return undefined;
}

function twice(name: string): Fault {
  return {
    code: 'register.twice',
    at: name,
    found: 'two numbers of this name',
    need: 'one number a name',
    remedy: 'rename one of them',
  };
}

function unknown(name: string, source: string): Fault {
  return {
    code: 'register.unknown',
    at: name,
    found: `derived from ${source}, which is not in the register`,
    need: 'names that the register holds',
    remedy: `add ${source}, or correct the name`,
  };
}

function notANumber(entry: RegisterEntry): Fault {
  return {
    code: 'register.not-a-number',
    at: entry.name,
    found: String(entry.value),
    need: 'a finite number',
    remedy: 'leave the entry out where there is no value',
  };
}

function circleFault(route: readonly string[]): Fault {
  return {
    code: 'register.circle',
    at: route[0] as string,
    found: `a circle: ${route.join(' from ')}`,
    need: 'every number worked out from others before it',
    remedy: 'give one of these numbers itself',
  };
}
