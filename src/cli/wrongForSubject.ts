import type { Fault } from '../core/index.ts';

/** Words that only an outline hears, only an arch, and only a cross arch; all others serve whatever is traced. */
const OF_OUTLINE = [
  'known',
  'hints',
  'scan',
  'scanBar',
  'body',
  'follow',
  'keepAsymmetry',
  'cornerEnd',
  'stretch',
  'as',
  'wearMap',
] as const;
const OF_ARCH = ['rightIs', 'drawn', 'fromEnds', 'ends', 'leaveOut'] as const;
const OF_CROSS_ARCH = ['station'] as const;

/** Options that were given and would be passed over for what is traced. Fault each: `option.misplaced`. */
export function wrongForSubject(
  subject: 'outline' | 'cross-arch' | 'long-arch' | 'scroll',
  options: Readonly<Record<string, unknown>>,
): readonly Fault[] {
  const isArch = subject === 'cross-arch' || subject === 'long-arch';
  const deaf = [
    ...(subject === 'outline' ? [] : OF_OUTLINE),
    ...(isArch ? [] : OF_ARCH),
    ...(subject === 'cross-arch' ? [] : OF_CROSS_ARCH),
  ];
  return deaf.filter((name) => isGiven(options[name])).map((name) => misplaced(name, subject));
}

function isGiven(value: unknown): boolean {
  return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== false;
}

function misplaced(name: string, subject: string): Fault {
  const option = `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
  return {
    code: 'option.misplaced',
    at: option,
    found: `it says nothing of ${subject === 'outline' ? 'an outline' : `a ${subject.replace('-', ' ')}`}`,
    need: 'options that belong to what is traced',
    remedy: `leave it out, or say with --of what the photograph shows`,
  };
}
