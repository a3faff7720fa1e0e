import type { DxfGroup } from './dxfGroups.ts';

/** Handles of the fixed objects that every file of the 2000 format needs. */
const HANDLE = {
  viewportTable: '8',
  linetypeTable: '5',
  layerTable: '2',
  styleTable: '3',
  viewTable: '6',
  ucsTable: '7',
  appIdTable: '9',
  dimStyleTable: 'A',
  blockRecordTable: '1',
  rootDictionary: 'C',
  groupDictionary: 'D',
  byBlock: '14',
  byLayer: '15',
  continuous: '16',
  style: '11',
  appId: '12',
  dimStyle: '27',
  modelSpace: '1F',
  paperSpace: '1B',
  modelBlock: '20',
  modelBlockEnd: '21',
  paperBlock: '1C',
  paperBlockEnd: '1D',
  viewport: '29',
} as const;
const FIRST_LAYER_HANDLE = 0x40;

/** The owner of every entity. */
export const MODEL_SPACE = HANDLE.modelSpace;

/** Colour numbers by layer: red is cut, blue is cut first, 7 (black on white) is marked. Common practice. */
export const DXF_COLOURS: Readonly<Record<string, number>> = {
  '0': 7,
  text: 7,
  score: 7,
  'cut-inside': 5,
  cut: 1,
};

/** The tables section of the 2000 format with these layers declared. */
export function dxfTables(layers: readonly string[]): DxfGroup[] {
  return [
    ...table('VPORT', HANDLE.viewportTable, [viewport()]),
    ...table('LTYPE', HANDLE.linetypeTable, [
      linetype('ByBlock', HANDLE.byBlock, ''),
      linetype('ByLayer', HANDLE.byLayer, ''),
      linetype('Continuous', HANDLE.continuous, 'Solid line'),
    ]),
    ...table(
      'LAYER',
      HANDLE.layerTable,
      ['0', ...layers].map((name, index) => layerRecord(name, index)),
    ),
    ...table('STYLE', HANDLE.styleTable, [textStyle()]),
    ...table('VIEW', HANDLE.viewTable, []),
    ...table('UCS', HANDLE.ucsTable, []),
    ...table('APPID', HANDLE.appIdTable, [
      record('APPID', HANDLE.appId, HANDLE.appIdTable, 'AcDbRegAppTableRecord', 'ACAD'),
    ]),
    ...dimStyles(),
    ...table('BLOCK_RECORD', HANDLE.blockRecordTable, [
      blockRecord('*Model_Space', HANDLE.modelSpace),
      blockRecord('*Paper_Space', HANDLE.paperSpace),
    ]),
  ];
}

export function dxfBlocks(): DxfGroup[] {
  return [
    ...block('*Model_Space', HANDLE.modelSpace, HANDLE.modelBlock, HANDLE.modelBlockEnd),
    ...block('*Paper_Space', HANDLE.paperSpace, HANDLE.paperBlock, HANDLE.paperBlockEnd),
  ];
}

export function dxfObjects(): DxfGroup[] {
  return [
    [0, 'DICTIONARY'],
    [5, HANDLE.rootDictionary],
    [330, '0'],
    [100, 'AcDbDictionary'],
    [281, 1],
    [3, 'ACAD_GROUP'],
    [350, HANDLE.groupDictionary],
    [0, 'DICTIONARY'],
    [5, HANDLE.groupDictionary],
    [330, HANDLE.rootDictionary],
    [100, 'AcDbDictionary'],
    [281, 1],
  ];
}

function table(name: string, handle: string, records: readonly DxfGroup[][]): DxfGroup[] {
  return [
    [0, 'TABLE'],
    [2, name],
    [5, handle],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, records.length],
    ...records.flat(),
    [0, 'ENDTAB'],
  ];
}

function record(kind: string, handle: string, owner: string, mark: string, name: string): DxfGroup[] {
  return [
    [0, kind],
    [5, handle],
    [330, owner],
    [100, 'AcDbSymbolTableRecord'],
    [100, mark],
    [2, name],
    [70, 0],
  ];
}

function linetype(name: string, handle: string, description: string): DxfGroup[] {
  return [
    ...record('LTYPE', handle, HANDLE.linetypeTable, 'AcDbLinetypeTableRecord', name),
    [3, description],
    [72, 65],
    [73, 0],
    [40, '0'],
  ];
}

function layerRecord(name: string, index: number): DxfGroup[] {
  const handle = (FIRST_LAYER_HANDLE + index).toString(16).toUpperCase();
  return [
    ...record('LAYER', handle, HANDLE.layerTable, 'AcDbLayerTableRecord', name),
    [62, DXF_COLOURS[name] ?? 7],
    [6, 'Continuous'],
    [370, -3],
  ];
}

function textStyle(): DxfGroup[] {
  return [
    ...record('STYLE', HANDLE.style, HANDLE.styleTable, 'AcDbTextStyleTableRecord', 'Standard'),
    [40, '0'],
    [41, '1'],
    [50, '0'],
    [71, 0],
    [42, '2.5'],
    [3, 'txt'],
    [4, ''],
  ];
}

function viewport(): DxfGroup[] {
  return [
    ...record('VPORT', HANDLE.viewport, HANDLE.viewportTable, 'AcDbViewportTableRecord', '*Active'),
    [10, '0'],
    [20, '0'],
    [11, '1'],
    [21, '1'],
    [12, '0'],
    [22, '0'],
    [40, '300'],
    [41, '1.5'],
  ];
}

/** Dimension styles carry their handle under another code than all other tables. */
function dimStyles(): DxfGroup[] {
  return [
    [0, 'TABLE'],
    [2, 'DIMSTYLE'],
    [5, HANDLE.dimStyleTable],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, 1],
    [100, 'AcDbDimStyleTable'],
    [0, 'DIMSTYLE'],
    [105, HANDLE.dimStyle],
    [330, HANDLE.dimStyleTable],
    [100, 'AcDbSymbolTableRecord'],
    [100, 'AcDbDimStyleTableRecord'],
    [2, 'Standard'],
    [70, 0],
    [0, 'ENDTAB'],
  ];
}

function blockRecord(name: string, handle: string): DxfGroup[] {
  return [
    [0, 'BLOCK_RECORD'],
    [5, handle],
    [330, HANDLE.blockRecordTable],
    [100, 'AcDbSymbolTableRecord'],
    [100, 'AcDbBlockTableRecord'],
    [2, name],
  ];
}

function block(name: string, owner: string, begin: string, end: string): DxfGroup[] {
  const paper: DxfGroup[] = name === '*Paper_Space' ? [[67, 1]] : [];
  return [
    [0, 'BLOCK'],
    [5, begin],
    [330, owner],
    [100, 'AcDbEntity'],
    ...paper,
    [8, '0'],
    [100, 'AcDbBlockBegin'],
    [2, name],
    [70, 0],
    [10, '0'],
    [20, '0'],
    [30, '0'],
    [3, name],
    [1, ''],
    [0, 'ENDBLK'],
    [5, end],
    [330, owner],
    [100, 'AcDbEntity'],
    ...paper,
    [8, '0'],
    [100, 'AcDbBlockEnd'],
  ];
}
