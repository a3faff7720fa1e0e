import { accept, type Checked, type Fault, refuse } from '../../base/index.ts';
import type { Drawing } from '../../drawing/index.ts';
import { writePdf, writePictureSvg } from '../../files/index.ts';
import { mapPages } from './mapPages.ts';
import { notAGarland } from './outlineFromGarland.ts';

/**
 * A map of deviations or of wear as the bytes of a file, SVG or PDF by the ending of its name.
 * Fault: `map.name` at the option that named the file.
 */
export async function mapFile(map: Drawing, path: string, option: string): Promise<Checked<Uint8Array>> {
  const faults = mapNameFaults(path, option);
  if (faults.length > 0) return refuse(...faults);
  if (/\.svg$/i.test(path)) {
    const svg = writePictureSvg(map);
    return svg.ok ? accept(new TextEncoder().encode(svg.value)) : svg;
  }
  const pages = mapPages(map);
  return pages.ok ? accept(await writePdf(pages.value)) : pages;
}

/** What is wrong with the name of a map's file, known before anything is drawn. Fault: `map.name`. */
export function mapNameFaults(path: string | undefined, option: string): readonly Fault[] {
  if (path === undefined || MAP_ENDING.test(path)) return [];
  return [
    {
      code: 'map.name',
      at: option,
      found: `"${path}"`,
      need: 'a file name that ends in .svg or .pdf',
      remedy: 'name it so',
    },
  ];
}

const MAP_ENDING = /\.(svg|pdf)$/i;

/** What is asked for beside a check and cannot be had, known before the photograph is read. Faults: `map.name`, `built.not-a-garland`. */
export function checkWishes(
  part: string | undefined,
  map: string | undefined,
  outline: string | undefined,
): readonly Fault[] {
  return [
    ...mapNameFaults(map, '--map'),
    ...(outline === undefined || part === undefined || part === 'garland' ? [] : [notAGarland(part)]),
  ];
}
