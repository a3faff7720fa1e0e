import { type Instrument, type PurflingCorner, plateRecord } from '../instrument/index.ts';
import { dependsOn, originText } from '../quantity/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';
import { headRecord } from './headRecord.ts';
import { neckRecord } from './neckRecord.ts';
import { caulRecords, liningRecords, ribJointRecord, ribRecords } from './ribRecords.ts';
import { setUpRecords } from './setUpRecords.ts';
import { soundHoleRecord } from './soundHoleRecord.ts';

/** The derived instrument for other programs: every part that exists so far, and the register. Millimetres. */
export function instrumentDocument(instrument: Instrument) {
  const { plan, plates, register } = instrument;
  return {
    format: 'garland-instrument',
    version: 1,
    units: 'mm',
    name: plan.name,
    family: plan.family,
    outline: chainToDocument(plan.outline.chain),
    purfling: {
      outer: chainToDocument(plan.purfling.outer.chain),
      inner: chainToDocument(plan.purfling.inner.chain),
      centre: chainToDocument(plan.purfling.centre.chain),
      depth: instrument.design.values.purflingDepth?.value,
      corners: {
        lower: mitreRecord(plan.purfling.corners.lower),
        upper: mitreRecord(plan.purfling.corners.upper),
      },
    },
    form: {
      chain: chainToDocument(plan.form.outline),
      clampHoles: plan.form.clampHoles.map((hole) => ({ ...hole })),
      pinHoles: plan.form.pins.map((pin) => ({ ...pin })),
      width: toFile(plan.form.widthMm),
      length: toFile(plan.form.lengthMm),
      thickness: plan.form.thicknessMm,
    },
    ribOutline: chainToDocument(plan.ribs.outer.chain),
    innerOutline: chainToDocument(plan.ribs.inner.chain),
    ribs: ribRecords(instrument),
    ribJoints: ribJointRecord(instrument),
    linings: liningRecords(instrument),
    cauls: caulRecords(instrument),
    blocks: plan.blocks.parts.map(({ name, acrossMm, alongMm, blank }) => ({
      name,
      across: toFile(acrossMm),
      along: toFile(alongMm),
      blank: { across: toFile(blank.acrossMm), along: toFile(blank.alongMm), height: toFile(blank.heightMm) },
    })),
    plates: { back: roundedPlate(plates.back), top: roundedPlate(plates.top) },
    soundHoles: soundHoleRecord(instrument),
    ...setUpRecords(instrument),
    neck: neckRecord(instrument.neck),
    scroll: headRecord(instrument),
    register: register.entries.map((entry) => ({
      name: entry.name,
      value: entry.value,
      unit: entry.unit,
      origin: entry.origin.kind,
      source: originText(entry.origin),
      ...(entry.plusMinus !== undefined && { plusMinus: entry.plusMinus }),
      dependsOn: [...dependsOn(entry)],
    })),
  };
}

/** A mitre on the treble side; the bass one is its mirror image. */
function mitreRecord({ apex, outwardRad, sting, shape }: PurflingCorner) {
  return {
    apex: [toFile(apex.x), toFile(apex.y)],
    outwardDeg: toFile((outwardRad * 180) / Math.PI),
    stingLength: toFile(sting.lengthMm),
    stingAside: toFile(sting.asideMm),
    ...(shape && { sting: chainToDocument(shape) }),
  };
}

function roundedPlate(arch: Instrument['plates']['back']) {
  const record = plateRecord(arch);
  const pairs = (list: readonly (readonly [number, number])[]) =>
    list.map(([a, b]) => [toFile(a), toFile(b)]);
  return {
    channelZ: toFile(record.channelZ),
    archHeight: toFile(record.archHeight),
    stations: record.stations.map((station) => ({ ...station, profile: pairs(station.profile) })),
    longArch: pairs(record.longArch),
    ...(record.measuredHeights && { measuredHeights: record.measuredHeights }),
    // The lowest line of the channel, treble half, from the lower end up.
    channel: pairs(arch.channel.line.points.map(({ x, y }) => [x, y] as const)),
    edge: {
      height: arch.numbers.edgeHeightMm,
      land: arch.numbers.edgeLandMm,
      crestInset: arch.numbers.crestInsetMm,
      scoopDepth: arch.numbers.scoopDepthMm,
    },
  };
}
