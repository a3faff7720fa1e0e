import { accept, type Checked } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { heavyPolyline, lightPolyline } from './dxfChains.ts';
import { type DxfGroup, dxfHandles, dxfText } from './dxfGroups.ts';
import { DXF_COLOURS, dxfBlocks, dxfObjects, dxfTables, MODEL_SPACE } from './dxfSections.ts';
import { millimetres } from './millimetres.ts';
import { TOOL_ORDER, type ToolPaths, toolPaths } from './toolPaths.ts';

/** `R2000` keeps arcs as bulges of light polylines; `R12` is for older machines, with the older polyline. */
export type DxfRelease = 'R2000' | 'R12';

/** Handles below this belong to the tables. */
const FIRST_ENTITY_HANDLE = 0x100;

/**
 * A DXF for a laser or router: millimetres declared, layers `text`, `score`, `cut-inside`, `cut` all declared,
 * closed polylines with bulges in working order, lettering in strokes. The same drawing gives the same text.
 *
 * Faults: `file.not-finite`, `file.nothing-to-cut`.
 */
export function writeDxf(drawing: Drawing, release: DxfRelease = 'R2000'): Checked<string> {
  const tools = toolPaths(drawing);
  if (!tools.ok) return tools;
  const groups = release === 'R12' ? release12(drawing, tools.value) : release2000(drawing, tools.value);
  return accept(dxfText(groups));
}

function release2000(drawing: Drawing, tools: ToolPaths): DxfGroup[] {
  const handle = dxfHandles(FIRST_ENTITY_HANDLE);
  const entities = tools.paths.flatMap(({ meaning, chain }) =>
    lightPolyline(chain, meaning, handle(), MODEL_SPACE),
  );
  const seed = handle();
  return [
    comment(drawing),
    ...section('HEADER', header('AC1015', tools, [['$HANDSEED', [5, seed]]])),
    ...section('CLASSES', []),
    ...section('TABLES', dxfTables(TOOL_ORDER)),
    ...section('BLOCKS', dxfBlocks()),
    ...section('ENTITIES', entities),
    ...section('OBJECTS', dxfObjects()),
    [0, 'EOF'],
  ];
}

function release12(drawing: Drawing, tools: ToolPaths): DxfGroup[] {
  const layers = ['0', ...TOOL_ORDER];
  const tables: DxfGroup[] = [
    [0, 'TABLE'],
    [2, 'LTYPE'],
    [70, 1],
    [0, 'LTYPE'],
    [2, 'CONTINUOUS'],
    [70, 0],
    [3, 'Solid line'],
    [72, 65],
    [73, 0],
    [40, '0'],
    [0, 'ENDTAB'],
    [0, 'TABLE'],
    [2, 'LAYER'],
    [70, layers.length],
    ...layers.flatMap((layer): DxfGroup[] => [
      [0, 'LAYER'],
      [2, layer],
      [70, 0],
      [62, DXF_COLOURS[layer] ?? 7],
      [6, 'CONTINUOUS'],
    ]),
    [0, 'ENDTAB'],
  ];
  return [
    comment(drawing),
    ...section('HEADER', header('AC1009', tools, [])),
    ...section('TABLES', tables),
    ...section(
      'ENTITIES',
      tools.paths.flatMap(({ meaning, chain }) => heavyPolyline(chain, meaning)),
    ),
    [0, 'EOF'],
  ];
}

function comment(drawing: Drawing): DxfGroup {
  return [999, `${drawing.title} - millimetres, scale 1:1`];
}

/** Unit 4 is the millimetre; release 12 has no such variable, but the programs that look for it find it there too. */
function header(
  version: string,
  tools: ToolPaths,
  more: readonly (readonly [string, DxfGroup])[],
): DxfGroup[] {
  const { min, max } = tools.box;
  const variable = (name: string, ...values: readonly DxfGroup[]): DxfGroup[] => [[9, name], ...values];
  return [
    ...variable('$ACADVER', [1, version]),
    ...variable('$DWGCODEPAGE', [3, 'ANSI_1252']),
    ...variable('$INSUNITS', [70, 4]),
    ...variable('$MEASUREMENT', [70, 1]),
    ...variable('$EXTMIN', [10, millimetres(min.x)], [20, millimetres(min.y)], [30, '0']),
    ...variable('$EXTMAX', [10, millimetres(max.x)], [20, millimetres(max.y)], [30, '0']),
    ...more.flatMap(([name, value]) => variable(name, value)),
  ];
}

function section(name: string, groups: readonly DxfGroup[]): DxfGroup[] {
  return [[0, 'SECTION'], [2, name], ...groups, [0, 'ENDSEC']];
}
