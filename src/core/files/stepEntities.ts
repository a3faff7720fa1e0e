/** The numbered entities of a STEP file (ISO 10303-21), one line each, in the order in which they were asked for. */
export interface StepEntities {
  /** Adds an entity as it is written behind its number; returns its reference, such as `#12`. */
  readonly add: (text: string) => string;
  readonly lines: readonly string[];
}

export function stepEntities(): StepEntities {
  const lines: string[] = [];
  const add = (text: string): string => {
    lines.push(`#${lines.length + 1}=${text};`);
    return `#${lines.length}`;
  };
  return { add, lines };
}

/** Decimals of a millimetre in a STEP file: less than a kernel tells apart. */
const DECIMALS = 8;

/** A number as STEP writes it, always with its point. */
export function stepNumber(value: number): string {
  const text = value.toFixed(DECIMALS).replace(/0+$/, '');
  return text === '-0.' ? '0.' : text;
}

/**
 * A text as the exchange structure writes it: apostrophes doubled, a reversed solidus too, and what lies beyond its own letters as
 * Unicode between \\X2\\ and \\X0\\ (ISO 10303-21).
 */
export function stepText(text: string): string {
  const written = text
    .replace(/\\/g, '\\\\')
    .replace(/'/g, "''")
    .replace(/[^\x20-\x7e]+/g, (run) => `\\X2\\${unicodeDigits(run)}\\X0\\`);
  return `'${written}'`;
}

/** Four digits of base sixteen for each unit of a text. */
function unicodeDigits(run: string): string {
  return Array.from({ length: run.length }, (_, at) =>
    run.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0'),
  ).join('');
}
