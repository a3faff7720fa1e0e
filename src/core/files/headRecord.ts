import type { Instrument } from '../instrument/index.ts';
import { chainToDocument, toFile } from './chainDocument.ts';

/** The head for other programs: x behind the gluing face of the board, y from the nut toward the scroll, mm. */
export function headRecord({ head, design }: Instrument) {
  const { profile, widths, pegbox } = head;
  const { sizes, volute } = profile;
  const pair = ({ x, y }: { readonly x: number; readonly y: number }) => [toFile(x), toFile(y)];
  return {
    frame: 'head',
    ...(design.headFit && { fit: design.headFit }),
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
    widths: widths.stations.map(({ number, place, alongMm, at, widthMm }) => ({
      station: number,
      place,
      along: toFile(alongMm),
      at: pair(at),
      width: toFile(widthMm),
    })),
    pegbox: {
      cavity: chainToDocument(pegbox.cavity),
      opensFrom: toFile(pegbox.opensFromMm),
      opensTo: toFile(pegbox.opensToMm),
      floor: pegbox.sizes.floorMm,
      thinnestWall: toFile(pegbox.thinnestWall.mm),
    },
    pegs: head.pegs.map((peg) => ({
      peg: peg.number,
      at: pair(peg.centre),
      fromNut: peg.fromNutMm,
      large: toFile(peg.largeMm),
      small: toFile(peg.smallMm),
      front: toFile(peg.frontCoverMm),
      toFloor: toFile(peg.floorCoverMm),
    })),
    // From the nut to the peg; across counts to the right, looking at the front with the scroll up, as headOn does.
    strings: head.strings.map((path) => ({
      string: path.number,
      letter: path.letter,
      peg: path.peg,
      headOn: path.side < 0 ? 'left' : 'right',
      from: [...pair(path.from), toFile(path.acrossMm)],
      to: [...pair(path.to), toFile(path.toAcrossMm)],
      ...(path.leastRoom && { room: { besidePeg: path.leastRoom.peg, mm: toFile(path.leastRoom.mm) } }),
      wallRoom: toFile(path.wallRoomMm),
    })),
  };
}
