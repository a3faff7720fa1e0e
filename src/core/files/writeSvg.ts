import { accept, type Checked } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { millimetres } from './millimetres.ts';
import { svgPath } from './svgPath.ts';
import { TOOL_ORDER, type ToolMeaning, toolPaths } from './toolPaths.ts';

/** mm. Free border, so that the outer half of a drawn line is not clipped. */
const BORDER_MM = 1;
/** mm. Thin enough that cutters read a line as a path, not as an area. */
const STROKE_MM = 0.1;

/** Common practice at laser cutters: red is cut, blue is cut first, black is marked. */
const COLOURS: Readonly<Record<ToolMeaning, string>> = {
  text: '#000000',
  score: '#000000',
  'cut-inside': '#0000ff',
  cut: '#ff0000',
};

/**
 * An SVG for a laser: millimetres, one user unit a millimetre, no transforms and no text. Groups `text`, `score`,
 * `cut-inside`, `cut` stand in working order and only where they hold something.
 *
 * Faults: `file.not-finite`, `file.nothing-to-cut`.
 */
export function writeSvg(drawing: Drawing): Checked<string> {
  const tools = toolPaths(drawing);
  if (!tools.ok) return tools;
  const { paths, box } = tools.value;
  const left = box.min.x - BORDER_MM;
  const top = box.max.y + BORDER_MM;
  const width = millimetres(box.max.x + BORDER_MM - left);
  const height = millimetres(top - (box.min.y - BORDER_MM));
  const groups = TOOL_ORDER.flatMap((meaning) => {
    const own = paths.filter((path) => path.meaning === meaning);
    if (own.length === 0) return [];
    return [
      `<g id="${meaning}" fill="none" stroke="${COLOURS[meaning]}" stroke-width="${STROKE_MM}">`,
      ...own.map((path) => `<path d="${svgPath(path.chain, left, top)}"/>`),
      '</g>',
    ];
  });
  return accept(
    [
      '<?xml version="1.0" encoding="UTF-8"?>',
      `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
      `<title>${escapeXml(drawing.title)}</title>`,
      ...groups,
      '</svg>',
      '',
    ].join('\n'),
  );
}

/** Text that cannot end an element or attribute of XML; control characters, which XML forbids, become spaces. */
export function escapeXml(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
