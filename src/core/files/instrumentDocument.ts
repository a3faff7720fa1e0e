import { type Instrument, type PurflingCorner, plateRecord, type RibLines } from '../instrument/index.ts';
import { dependsOn, originText } from '../quantity/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';
import { headRecord } from './headRecord.ts';
import { neckRecord } from './neckRecord.ts';
import { setUpRecords } from './setUpRecords.ts';

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

/** How the ribs meet; seams of the treble side, from the tip of the block outward. */
function ribJointRecord({ plan: { ribs } }: Instrument) {
  const degrees = (rad: number): number => toFile((rad * 180) / Math.PI);
  const corner = ({ seam, blockShowsMm, openingRad, bevelRad }: RibLines['joints']['lower']) => ({
    seam: seam ? chainToDocument(seam) : null,
    blockShows: toFile(blockShowsMm),
    openingDeg: degrees(openingRad),
    bevelDeg: { bout: degrees(bevelRad.bout), waist: degrees(bevelRad.waist) },
  });
  return {
    joint: ribs.choice.joint,
    lowerRib: ribs.choice.lowerRib,
    count: ribs.count,
    lower: corner(ribs.joints.lower),
    upper: corner(ribs.joints.upper),
  };
}

/** The linings of the treble side, each made four times; and the mortises in the treble corner blocks, at back and top. */
function liningRecords({ plan: { linings } }: Instrument) {
  const { thicknessMm, widthMm, stripWidthMm, choice } = linings;
  return {
    kind: choice.linings,
    letIn: choice.liningsLetIn,
    thickness: thicknessMm,
    height: widthMm,
    stripWidth: toFile(stripWidthMm),
    pieces: [linings.lower, linings.waist, linings.upper].map(
      ({ name, lengthMm, cutMm, from, to, plan }) => ({
        name,
        count: 4,
        length: toFile(lengthMm),
        cut: toFile(cutMm),
        ends: { from: endRecord(from), to: endRecord(to) },
        plan: chainToDocument(plan),
      }),
    ),
    mortises: linings.mortises.map(({ block, side, reachMm, widthMm: width, depthMm, plan }) => ({
      block,
      side,
      reach: toFile(reachMm),
      width,
      depth: depthMm,
      plan: chainToDocument(plan),
    })),
  };
}

/** Where a cut leaves the outer and the inner face, along the strip laid flat. */
function endRecord({ outerMm, innerMm }: RibLines['cBout']['piece']['from']) {
  return { outer: toFile(outerMm), inner: toFile(innerMm) };
}

/** The cauls in their own frame: face below, back level above. */
function caulRecords({ plan: { cauls } }: Instrument) {
  return {
    height: cauls.heightMm,
    facing: cauls.facingMm,
    pieces: cauls.cauls.map(({ name, count, piece, clamp }) => ({
      name,
      count,
      outline: chainToDocument(piece.outline),
      ...(clamp && { clampOpening: toFile(clamp.openingMm) }),
    })),
  };
}

function ribRecords({ plan }: Instrument) {
  const { heightNeckMm: neck, heightTailMm: tail } = plan.ribs;
  return [plan.ribs.lowerBout, plan.ribs.cBout, plan.ribs.upperBout].flatMap((rib, i) =>
    (['bass', 'treble'] as const).map((side) => ({
      name: `${['lower', 'waist', 'upper'][i]} rib, ${side} side`,
      length: toFile(rib.lengthMm),
      developed: toFile(rib.developed.lengthMm),
      // Along the middle of the thickness: from, to, and the radius inside the bend; null where it is straight.
      bends: rib.developed.stretches.map(({ fromMm, toMm, bends, insideRadiusMm }) => ({
        from: toFile(fromMm),
        to: toFile(toMm),
        bends,
        insideRadius: insideRadiusMm === null ? null : toFile(insideRadiusMm),
      })),
      // The edge that is not level with the other when the rib lies flat: along it, and height.
      edge: rib.developed.edge.map(({ x, y }) => [toFile(x), toFile(y)]),
      // Where the trimmed ends leave both faces, along the middle of the thickness.
      ends: { from: endRecord(rib.piece.from), to: endRecord(rib.piece.to) },
      heightNeck: neck,
      heightTail: tail,
    })),
  );
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
