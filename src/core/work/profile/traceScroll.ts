import { accept, type Checked } from '../../base/index.ts';
import {
  type MarkerFinder,
  type ScrollSide,
  softFindings,
  traceScrollSide,
  traceSilhouette,
} from '../../photo/index.ts';
import { type ProfileDocument, pairsOf, pointPlusMinus } from './profileDocument.ts';
import type { ProfileRequest } from './profileRequest.ts';
import { scaleShare, seeOnPaper, sideFindings } from './seeOnPaper.ts';
import type { ProfileOutcome } from './traceArchProfile.ts';

/**
 * The side view of a scroll from a photograph of it lying on the calibration sheet: closed contour and key places in millimetres, from
 * the nut end along the head, the front up. Faults: those of the sheet, the camera, the silhouette and `traceScrollSide`.
 */
export function traceScroll(request: ProfileRequest, finder: MarkerFinder): Checked<ProfileOutcome> {
  const seen = seeOnPaper(request, finder);
  if (!seen.ok) return seen;
  const { scene, view, findings } = seen.value;
  const silhouette = traceSilhouette(scene.rectified, scene.ground);
  if (!silhouette.ok) return silhouette;
  const side = traceScrollSide(silhouette.value);
  if (!side.ok) return side;
  const { contour } = silhouette.value;
  const across = contour[contour.length >> 1];
  return accept({
    document: {
      format: 'garland-profile',
      version: 1,
      units: 'mm',
      of: 'scrollSide',
      name: request.name,
      points: pairsOf(side.value.contour),
      plusMinus: { point: pointPlusMinus(side.value.contour), scale: scaleShare(view, [contour[0], across]) },
      places: placesOf(side.value),
      mirrored: side.value.mirrored,
    },
    findings: [...findings, ...softFindings(contour), ...sideFindings(view, contour, request.heightMm ?? 0)],
  });
}

function placesOf(side: ScrollSide): NonNullable<ProfileDocument['places']> {
  const { nutEnd, crest, eyeGuess, throat, backLine } = side;
  const told = {
    nutBack: nutEnd.back,
    nutFront: nutEnd.front,
    crest,
    throat,
    backFrom: { at: backLine.from, plusMinusMm: nutEnd.back.plusMinusMm },
    backTo: { at: backLine.to, plusMinusMm: nutEnd.back.plusMinusMm },
  };
  const plain = Object.entries(told).map(
    ([name, { at, plusMinusMm }]) => [name, { at: pairsOf([at])[0], plusMinus: plusMinusMm }] as const,
  );
  return {
    ...Object.fromEntries(plain),
    eyeGuess: {
      at: pairsOf([eyeGuess.at])[0],
      plusMinus: eyeGuess.plusMinusMm,
      radius: eyeGuess.turnRadiusMm,
    },
  };
}
