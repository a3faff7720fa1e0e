import { type HoleDocument, pointsToDocument, type TraceDocument, toFile } from '../../files/index.ts';
import type { PlacedSoundHole } from '../../photo/index.ts';
import type { SeenLines } from './seenLines.ts';

/** Purfling and sound holes as a trace's document holds them; what was not seen is left out. */
export function linesDocument({
  purfling,
  soundHoles,
  centreJoint,
}: SeenLines): Pick<TraceDocument, 'purfling' | 'soundHoles' | 'centreJoint'> {
  const hasPurfling = purfling.bass.length + purfling.treble.length > 0;
  const [bass, treble] = [soundHoles?.bass, soundHoles?.treble];
  return {
    ...(hasPurfling && {
      purfling: {
        bass: pointsToDocument(purfling.bass),
        treble: pointsToDocument(purfling.treble),
        ...(purfling.widthMm !== null && { width: toFile(purfling.widthMm) }),
      },
    }),
    ...((bass || treble) && {
      soundHoles: {
        ...(soundHoles?.clearer && { drawnFrom: soundHoles.clearer }),
        ...(bass && { bass: holeDocument(bass) }),
        ...(treble && { treble: holeDocument(treble) }),
      },
    }),
    ...(centreJoint && {
      centreJoint: {
        ends: [spot(centreJoint.ends[0]), spot(centreJoint.ends[1])],
        offAxis: [toFile(centreJoint.offAxis.lowerMm), toFile(centreJoint.offAxis.upperMm)],
        plusMinus: toFile(centreJoint.offAxis.plusMinusMm),
      },
    }),
  };
}

function holeDocument(hole: PlacedSoundHole<'body'>): HoleDocument {
  const { contour, upperEye, lowerEye, innerNick, outerNick, height, heightEffect } = hole;
  return {
    contour: pointsToDocument(contour),
    doubtful: contour.flatMap(({ state }, place) => (state === 'doubtful' ? [place] : [])),
    bridged: contour.flatMap(({ state }, place) => (state === 'bridged' ? [place] : [])),
    ...(upperEye && { upperEye: eye(upperEye) }),
    ...(lowerEye && { lowerEye: eye(lowerEye) }),
    ...(innerNick && { innerNick: spot(innerNick) }),
    ...(outerNick && { outerNick: spot(outerNick) }),
    height: { value: toFile(height.heightMm), plusMinus: toFile(height.plusMinusMm) },
    plusMinus: toFile(heightEffect.movesMm),
  };
}

function eye({ centre, diameterMm }: NonNullable<PlacedSoundHole<'body'>['upperEye']>) {
  return { centre: spot(centre), diameter: toFile(diameterMm) };
}

function spot({ x, y }: { readonly x: number; readonly y: number }): [number, number] {
  return [toFile(x), toFile(y)];
}
