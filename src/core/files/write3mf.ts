import { strToU8, type Zippable, zipSync } from 'fflate';
import type { Mesh } from '../solid/index.ts';
import { escapeXml } from './writeSvg.ts';

/** Steps of a millimetre that are written: five decimals. */
const STEPS = 100_000;

/** The first time that a zip can name, wherever it is written: the same mesh gives the same bytes. */
const NO_DATE = '1980-01-01T00:00:00';

/**
 * A mesh as a 3MF file, its title in a language (a tag of BCP 47), the unit declared as millimetres (3D Manufacturing Format, core specification 1.3: one object, one
 * item to build).
 */
export function write3mf(title: string, mesh: Mesh, language = 'en'): Uint8Array {
  const files = {
    '[Content_Types].xml': CONTENT_TYPES,
    '_rels/.rels': RELATIONS,
    '3D/3dmodel.model': model(title, mesh, language),
  };
  const packed: Zippable = {};
  for (const [path, text] of Object.entries(files))
    packed[path] = [strToU8(text), { mtime: NO_DATE, level: 4 }];
  return zipSync(packed);
}

const HEAD = '<?xml version="1.0" encoding="UTF-8"?>\n';
const CONTENT_TYPES = `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>\n`;
const RELATIONS = `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>\n`;

function model(title: string, { positions, triangles }: Mesh, language: string): string {
  const lines: string[] = [
    `${HEAD}<model unit="millimeter" xml:lang="${language}" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">`,
    `<metadata name="Title">${escapeXml(title)}</metadata>`,
    `<resources><object id="1" type="model" name="${escapeXml(title)}"><mesh><vertices>`,
  ];
  const number = (value: number | undefined): string => String(Math.round((value ?? 0) * STEPS) / STEPS || 0);
  for (let at = 0; at < positions.length; at += 3)
    lines.push(
      `<vertex x="${number(positions[at])}" y="${number(positions[at + 1])}" z="${number(positions[at + 2])}"/>`,
    );
  lines.push('</vertices><triangles>');
  for (let at = 0; at < triangles.length; at += 3)
    lines.push(`<triangle v1="${triangles[at]}" v2="${triangles[at + 1]}" v3="${triangles[at + 2]}"/>`);
  lines.push('</triangles></mesh></object></resources><build><item objectid="1"/></build></model>\n');
  return lines.join('\n');
}
