import { holeLaidFlat, type Instrument } from '../instrument/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';

/** The sound holes for other programs, in plan, body frame, mm. */
export function soundHoleRecord(instrument: Instrument) {
  const { soundHoles } = instrument;
  const flat = holeLaidFlat(instrument);
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
    // The treble hole laid flat from the arch: x from the centre line, y from the bridge line.
    flat: flat && {
      treble: chainToDocument(flat.chain),
      centreLine: chainToDocument(flat.centreLine),
      area: toFile(flat.areaMm2),
      offPlan: toFile(flat.offPlanMm),
      strainMost: flat.strainMost,
      strainRms: flat.strainRms,
    },
    nearestEdge: { at: pair(soundHoles.nearestEdge.at), distance: toFile(soundHoles.nearestEdge.distanceMm) },
  };
}
