import { accept, type Checked, type Fault, type Finding, refuse } from '../base/index.ts';
import { fitHalfOutline, type HalfOutline } from '../curve/index.ts';
import {
  type Design,
  draftDesign,
  halfOf,
  type Measurements,
  readMeasurements,
  type Traced,
} from '../design/index.ts';
import { chainFromDocument, documentText, readTrace, type TraceDocument } from '../files/index.ts';
import { bodyOutline } from '../instrument/index.ts';
import { type Family, familyOfLength, outlineHabit } from '../knowledge/index.ts';
import { measured, type Quantity } from '../quantity/index.ts';
import { type HeadOfScroll, headFromScroll } from './profile/headFromScroll.ts';
import { type KeptReadings, keptHeights } from './profile/keptHeights.ts';
import { measuredArches } from './profile/measuredArches.ts';
import { type ReadingsOfPlate, readProfile } from './profile/readProfile.ts';
import { readScrollSide, type ScrollReading } from './profile/scrollReading.ts';
import { holeOfTrace } from './tracedHole.ts';

/** A document to draft from, by the name of its file. */
export interface DraftInput {
  readonly name: string;
  readonly json: unknown;
}

/** A design and what is to be known about it. */
export interface Drafted {
  readonly design: Design;
  readonly findings: readonly Finding[];
}

/**
 * A design from measurements, from a trace, or from both: what the trace measured stands for the outline, the
 * measurements for everything else; profiles traced from photographs beside them give arch height and fullness, or the side of the head. The outline is solved once, so that sizes that cannot be drafted are refused here.
 * Faults: `draft.inputs`, those of reading the documents, of drafting and of the outline.
 */
export function draft(inputs: readonly DraftInput[]): Checked<Drafted> {
  const sorted = sortInputs(inputs);
  if (!sorted.ok) return sorted;
  const { table, trace, profiles, scroll } = sorted.value;
  const family = table?.measurements.family ?? (trace && familyOf(trace)) ?? 'violin';
  const taken = trace && tracedValues(trace, family, table?.measurements.values.stop?.value);
  if (taken && !taken.ok) return taken;
  const read: Measurements = table?.measurements ?? {
    family,
    name: trace?.name?.replace(/\.[^.]+$/, '') ?? 'Traced instrument',
    values: {},
  };
  const arches = measuredArches(read, profiles);
  if (!arches.ok) return arches;
  const measurements: Measurements = { ...read, values: { ...read.values, ...arches.value.values } };
  const plain = draftDesign(measurements, taken?.value);
  if (!plain.ok) return plain;
  const head = scroll && headFromScroll(plain.value.design, scroll);
  if (head && !head.ok) return head;
  const drafted = head ? withHead(measurements, taken?.value, head.value) : plain;
  if (!drafted.ok) return drafted;
  const solved = halfOf(drafted.value.design);
  if (!solved.ok) return solved;
  const design = withKeptHeights(drafted.value.design, solved.value.half, arches.value.kept);
  if (!design.ok) return design;
  return accept({
    design: design.value,
    findings: [
      ...(table?.findings ?? []),
      ...arches.value.findings,
      ...(head?.value.findings ?? []),
      ...(taken?.value.findings ?? []),
      ...(table === undefined && trace ? [familyFinding(family, trace)] : []),
      ...drafted.value.findings,
      ...solved.value.findings,
    ],
  });
}

/** Drafted again with what the photograph of a head tells; what the table gives itself stands. */
function withHead(
  measurements: Measurements,
  traced: Parameters<typeof draftDesign>[1],
  head: HeadOfScroll,
): ReturnType<typeof draftDesign> {
  const values = { ...head.values, ...measurements.values };
  const drafted = draftDesign({ ...measurements, values }, traced);
  if (!drafted.ok) return drafted;
  return accept({ ...drafted.value, design: { ...drafted.value.design, headFit: head.fit } });
}

/** The design with the heights that its surfaces are to be drawn to; those that the table gives itself come first. */
function withKeptHeights(design: Design, half: HalfOutline, kept: readonly KeptReadings[]): Checked<Design> {
  let drawn = design;
  for (const readings of kept) {
    const { plate } = readings;
    const found = keptHeights(design, half, readings);
    if (!found.ok) return found;
    if (found.value === null) continue;
    const own = drawn.measuredHeights?.[plate];
    const heights = own
      ? { ...found.value, ...own, heights: [...own.heights, ...found.value.heights] }
      : found.value;
    drawn = { ...drawn, measuredHeights: { ...drawn.measuredHeights, [plate]: heights } };
  }
  return accept(drawn);
}

/** A design as the text of its file. */
export function designText(design: Design): string {
  return documentText(design);
}

interface Sorted {
  readonly table?: { readonly measurements: Measurements; readonly findings: readonly Finding[] };
  readonly trace?: TraceDocument;
  /** Arches traced from photographs; as many as there are. */
  readonly profiles: readonly ReadingsOfPlate[];
  readonly scroll?: ScrollReading;
}

function sortInputs(inputs: readonly DraftInput[]): Checked<Sorted> {
  const kinds = inputs.map(({ json }) => kindOf(json));
  const traces = inputs.filter((_, i) => kinds[i] === 'garland-trace');
  const tables = inputs.filter((_, i) => kinds[i] === 'garland-measurements');
  const traced = inputs.filter((_, i) => kinds[i] === 'garland-profile');
  const faults: Fault[] = inputs
    .filter((_, i) => !KINDS.includes(kinds[i]))
    .map(({ name }) => wrongInput(name, 'neither a table of measurements nor a trace nor a profile'));
  for (const list of [traces, tables])
    if (list[1]) faults.push(wrongInput(list[1].name, 'a second one of its kind'));
  const trace = traces[0] && readTrace(traces[0].json);
  const table = tables[0] && readMeasurements(tables[0].json);
  if (traces[0] && trace && !trace.ok) faults.push(...inFile(traces[0].name, trace.faults));
  if (tables[0] && table && !table.ok) faults.push(...inFile(tables[0].name, table.faults));
  const profiles: ReadingsOfPlate[] = [];
  const scrolls = traced.filter(({ json }) => isScroll(json));
  if (scrolls[1]) faults.push(wrongInput(scrolls[1].name, 'a second head'));
  const scroll = scrolls[0] && readScrollSide(scrolls[0].json);
  if (scrolls[0] && scroll && !scroll.ok) faults.push(...inFile(scrolls[0].name, scroll.faults));
  for (const { name, json } of traced.filter((one) => !scrolls.includes(one))) {
    const profile = readProfile(json);
    if (profile.ok) profiles.push(profile.value);
    else faults.push(...inFile(name, profile.faults));
  }
  if (traces.length + tables.length === 0 && traced[0])
    faults.push(wrongInput(traced[0].name, 'a profile alone'));
  if (faults.length > 0) return refuse(...faults);
  return accept({
    profiles,
    ...(scroll?.ok && { scroll: scroll.value }),
    ...(trace?.ok && { trace: trace.value }),
    ...(table?.ok && { table: table.value }),
  });
}

const KINDS: readonly unknown[] = ['garland-trace', 'garland-measurements', 'garland-profile'];

function isScroll(json: unknown): boolean {
  return (json as { readonly of?: unknown } | null)?.of === 'scrollSide';
}

/** A table may leave its format out: one with a family is a table. */
function kindOf(json: unknown): unknown {
  const { format, family } = (json ?? {}) as { readonly format?: unknown; readonly family?: unknown };
  return format === undefined && family !== undefined ? 'garland-measurements' : format;
}

/** The same faults with the file they lie in before each place. */
function inFile(name: string, faults: readonly Fault[]): Fault[] {
  return faults.map((fault) => ({ ...fault, at: `${name}, ${fault.at}` }));
}

function wrongInput(name: string, found: string): Fault {
  return {
    code: 'draft.inputs',
    at: name,
    found,
    need: 'one table of measurements, one trace, or one of each; profiles of arches and the side of a head beside them',
    remedy: 'give MEASUREMENTS.json, TRACE.json, or both',
  };
}

/** The traced outline and the values that it gives, with their half intervals; a sound hole where one was traced. */
function tracedValues(
  trace: TraceDocument,
  family: Family,
  stopMm: number | undefined,
): Checked<Traced & { readonly findings: readonly Finding[] }> {
  const half = halfOfTrace(trace, family);
  if (!half.ok) return half;
  const outline = bodyOutline(half.value);
  if (!outline.ok) return outline;
  const plusMinusMm = trace.bodyLength?.plusMinus ?? UNTOLD_MM;
  const origin = measured(trace.name === undefined ? 'trace' : `trace of ${trace.name}`);
  const of = (value: number): Quantity => ({ value, unit: 'mm', origin, plusMinus: plusMinusMm });
  const { bodyLengthMm, lowerBout, waist, upperBout, lowerCorner, upperCorner } = outline.value;
  const hole = holeOfTrace(trace, outline.value, stopMm);
  return accept({
    outline: {
      kind: 'traced',
      half: half.value,
      fitRmsMm: trace.fit?.rms ?? 0,
      fitMaxMm: trace.fit?.max ?? 0,
      plusMinusMm,
      ...(trace.request && { request: trace.request }),
    },
    values: {
      bodyLength: of(bodyLengthMm),
      lowerBout: of(lowerBout.widthMm),
      waist: of(waist.widthMm),
      upperBout: of(upperBout.widthMm),
      lowerCornerEnd: of(lowerCorner.endWidthMm),
      upperCornerEnd: of(upperCorner.endWidthMm),
      ...hole.values,
    },
    holeShape: hole.holeShape,
    findings: hole.findings,
  });
}

/** mm, k = 2. For a trace that does not say how good it is (chosen by us: a careful photograph). */
const UNTOLD_MM = 0.5;

/** The arcs that a trace holds, or arcs fitted to its outline where it holds points only. */
function halfOfTrace({ arcs, outline }: TraceDocument, family: Family): Checked<HalfOutline> {
  if (arcs)
    return accept({
      lowerBout: chainFromDocument(arcs.lowerBout),
      cBout: chainFromDocument(arcs.cBout),
      upperBout: chainFromDocument(arcs.upperBout),
    });
  const points = outline.map(([x, y]) => ({ x: Math.abs(x), y, weight: 1 }));
  const fitted = fitHalfOutline(points, outlineHabit(family));
  return fitted.ok ? accept(fitted.value.half) : fitted;
}

function familyOf({ bodyLength, outline }: TraceDocument): Family {
  const ys = outline.map(([, y]) => y);
  return familyOfLength(bodyLength?.value ?? Math.max(...ys) - Math.min(...ys));
}

function familyFinding(family: Family, trace: TraceDocument): Finding {
  return {
    weight: 'remark',
    code: 'draft.family',
    at: trace.name ?? 'trace',
    found: `no table says what instrument it is; by its length it is taken for a ${family}`,
    need: 'the family, so that the right habits fill what was not measured',
    remedy: 'give a table of measurements with the family beside the trace, if it is another',
  };
}
