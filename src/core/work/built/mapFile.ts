import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import { type Drawing, layoutWholeSheet } from '../../drawing/index.ts';
import { writePdf, writeSvg } from '../../files/index.ts';
import { notAGarland } from './outlineFromGarland.ts';

/** A map of deviations as the bytes of a file, SVG or PDF by the ending of its name. Fault: `built.map`. */
export async function mapFile(map: Drawing, path: string): Promise<Checked<Uint8Array>> {
  if (/\.svg$/i.test(path)) {
    const svg = writeSvg(map);
    return svg.ok ? accept(new TextEncoder().encode(svg.value)) : svg;
  }
  if (!MAP_ENDING.test(path)) return refuse(mapFault(path));
  const pages = layoutWholeSheet(map, { paper: 'A4', title: map.title });
  return pages.ok ? accept(await writePdf(pages.value)) : pages;
}

/** What is asked for beside a check and cannot be had, known before the photograph is read. Faults: `built.map`, `built.not-a-garland`. */
export function checkWishes(
  part: string | undefined,
  map: string | undefined,
  outline: string | undefined,
): readonly Fault[] {
  return [
    ...(map === undefined || MAP_ENDING.test(map) ? [] : [mapFault(map)]),
    ...(outline === undefined || part === undefined || part === 'garland' ? [] : [notAGarland(part)]),
  ];
}

const MAP_ENDING = /\.(svg|pdf)$/i;

function mapFault(path: string): Fault {
  return {
    code: 'built.map',
    at: '--map',
    found: `“${path}”`,
    need: 'a file name that ends in .svg or .pdf',
    remedy: 'name it so',
  };
}
