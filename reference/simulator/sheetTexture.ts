import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A printed page: how white it is at a place, mm from its lower left corner, 0 black to 1 paper. */
export interface SheetTexture {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly at: (x: number, y: number) => number;
}

const DOTS_PER_INCH = 300;
const MM_PER_DOT = 25.4 / DOTS_PER_INCH;

/** The first page of a print file as an independent program (pdftoppm) draws it at 300 dots an inch. */
export function sheetTexture(pdf: Uint8Array): SheetTexture {
  const folder = mkdtempSync(join(tmpdir(), 'simulated-sheet-'));
  try {
    const path = join(folder, 'sheet.pdf');
    writeFileSync(path, pdf);
    execFileSync('pdftoppm', [
      '-r',
      String(DOTS_PER_INCH),
      '-gray',
      '-f',
      '1',
      '-l',
      '1',
      '-singlefile',
      path,
      join(folder, 'page'),
    ]);
    return textureOf(readFileSync(join(folder, 'page.pgm')));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function textureOf(file: Buffer): SheetTexture {
  const [head, width, height] =
    /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 60).toString('latin1')) ?? [];
  if (head === undefined) throw new Error('pdftoppm gave no grey picture');
  const [columns, rows] = [Number(width), Number(height)];
  const grey = file.subarray(head.length);
  const at = (x: number, y: number) => {
    const u = Math.min(columns - 1.001, Math.max(0, x / MM_PER_DOT - 0.5));
    const v = Math.min(rows - 1.001, Math.max(0, rows - y / MM_PER_DOT - 0.5));
    const i = u | 0;
    const j = v | 0;
    const k = j * columns + i;
    const high = (grey[k] as number) * (1 - u + i) + (grey[k + 1] as number) * (u - i);
    const low = (grey[k + columns] as number) * (1 - u + i) + (grey[k + columns + 1] as number) * (u - i);
    return (high * (1 - v + j) + low * (v - j)) / 255;
  };
  return { widthMm: columns * MM_PER_DOT, heightMm: rows * MM_PER_DOT, at };
}
