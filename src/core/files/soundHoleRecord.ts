import type { Instrument } from '../instrument/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';

/** The sound holes for other programs, in plan, body frame, mm. */
export function soundHoleRecord({ soundHoles }: Instrument) {
  const { hole, treble, bass, upperEye, lowerEye, innerNick, outerNick } = soundHoles;
  const pair = ({ x, y }: { readonly x: number; readonly y: number }) => [toFile(x), toFile(y)];
  const eye = ({ centre, diameterMm, toEdgeMm }: typeof upperEye) => ({
    centre: pair(centre),
    diameter: toFile(diameterMm),
    toEdge: toFile(toEdgeMm),
  });
  return {
    frame: 'body',
    treble: chainToDocument(treble),
    bass: chainToDocument(bass),
    bridgeLine: toFile(soundHoles.bridgeLineMm),
    nickLine: toFile(soundHoles.nickLineMm),
    // Treble side; the bass one is its mirror image.
    upperEye: eye(upperEye),
    lowerEye: eye(lowerEye),
    innerNick: pair(innerNick),
    outerNick: pair(outerNick),
    area: toFile(hole.areaMm2),
    perimeter: toFile(hole.perimeterMm),
    nearestEdge: { at: pair(soundHoles.nearestEdge.at), distance: toFile(soundHoles.nearestEdge.distanceMm) },
  };
}
