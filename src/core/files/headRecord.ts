import type { Instrument } from '../instrument/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';

/** The head for other programs: x behind the gluing face of the board, y from the nut toward the scroll, mm. */
export function headRecord({ head: { profile } }: Instrument) {
  const { sizes, volute } = profile;
  return {
    frame: 'head',
    length: sizes.lengthMm,
    fromNutToTop: sizes.topMm,
    depth: sizes.depthMm,
    side: chainToDocument(profile.outline),
    // From the tip of the chin up the back, over the top and along the spiral to the eye.
    spine: chainToDocument(profile.spine),
    spiral: volute.arcs.map(({ centre, radiusMm }, index) => ({
      quarter: index,
      centre: [toFile(centre.x), toFile(centre.y)],
      radius: toFile(radiusMm),
    })),
    backRadius: toFile(profile.backRadiusMm),
    frontRadius: toFile(profile.frontRadiusMm),
    throat: {
      centre: [toFile(profile.throat.centre.x), toFile(profile.throat.centre.y)],
      radius: profile.throat.radiusMm,
    },
  };
}
