import type { Point } from '../base/index.ts';
import { boundsOf, type Chain, mirrorChain, nearestOn } from '../curve/index.ts';
import { highStringSide } from '../design/index.ts';
import { areaChain, type Instrument } from '../instrument/index.ts';
import { captionBelow } from './caption.ts';
import { sizeChecks } from './cutCard.ts';
import type { Drawing, DrawnLine, Lettering } from './drawing.ts';
import { figure, mm, straightChain } from './neckPiece.ts';
import { drawnLine, letteringScale, onDrawing } from './outlineDrawingsMarks.ts';

/** mm at the usual size. */
const CROSS_MM = 2.2;
const TEXT_MM = 3;
const ABOVE_MM = 1.6;
/** mm. From the point of a nick to the line that points at it. */
const NICK_GAP_MM = 0.8;

/**
 * Where both sound holes lie on the top, at true size, seen square from above: the distances by which they are laid, and what
 * stands near them. Drawing frame: that of the body, looking at the outside of the top.
 */
export function holePlacementDrawing(instrument: Instrument): Drawing {
  const { plan, soundHoles, hollows, design } = instrument;
  const { treble, bass, bridgeLineMm, nearestEdge, lowerEye, upperEye, rule, hole, sizes } = soundHoles;
  const edge = onDrawing(plan.outline.chain);
  const box = boundsOf(edge);
  const scale = letteringScale(plan.outline.bodyLengthMm);
  const side = highStringSide(design);
  const rims = sizes.upperEyesApartMm / 2;
  const toEdge = wayToEdge(plan.outline.chain, lowerEye.centre, lowerEye.diameterMm / 2);
  const block = onDrawing(plan.blocks.lowerCorner.outline);
  const value = (name: 'bridgeFeet' | 'bridgeFootLength' | 'bridgeFootThickness'): number =>
    design.values[name]?.value ?? 0;
  const lines: readonly DrawnLine[] = [
    drawnLine('draw', edge),
    drawnLine('draw', onDrawing(treble)),
    drawnLine('draw', onDrawing(bass)),
    ...[block, mirrorChain(block)].map((chain) => drawnLine('draw', chain)),
    {
      ...drawnLine(
        'draw',
        straightChain(false, [
          [0, box.min.y],
          [0, box.max.y],
        ]),
      ),
      centreLine: true,
    },
    drawnLine('draw', level(bridgeLineMm, soundHoles.innerNick.x - NICK_GAP_MM)),
    drawnLine('draw', level(upperEye.centre.y, rims)),
    drawnLine('draw', toEdge),
    ...[hollows.barAndPost.bar, hollows.barAndPost.post].map((area) =>
      drawnLine('draw', onDrawing(areaChain(area))),
    ),
    ...[1, -1].map((way) =>
      drawnLine(
        'draw',
        foot(
          way,
          bridgeLineMm,
          value('bridgeFeet') / 2,
          value('bridgeFootLength'),
          value('bridgeFootThickness'),
        ),
      ),
    ),
    ...[upperEye, lowerEye].flatMap(({ centre }) =>
      [1, -1].flatMap((way) =>
        cross(way * centre.x, centre.y, CROSS_MM * scale).map((chain) => drawnLine('draw', chain)),
      ),
    ),
  ];
  const heightMm = TEXT_MM * scale;
  const word = (text: string, x: number, y: number, anchor: Lettering['anchor'] = 'middle'): Lettering => ({
    text,
    at: { x, y },
    heightMm,
    turnRad: 0,
    anchor,
  });
  const [from, to] = [toEdge.vertices[0], toEdge.vertices.at(-1)];
  const off = hole.eyesApartMm - rule.eyesApartMm;
  return {
    name: 'sound-holes-placed',
    title: 'Sound holes on the top',
    part: 'soundHoles',
    lines,
    lettering: [
      // Beside the centre line, the bar's side left free.
      word(figure(sizes.upperEyesApartMm), (side * rims) / 2, upperEye.centre.y + ABOVE_MM * scale),
      word(
        'bridge line',
        side * ABOVE_MM * scale,
        bridgeLineMm + value('bridgeFootThickness') / 2 + ABOVE_MM * scale,
        side > 0 ? 'start' : 'end',
      ),
      ...(from && to
        ? [word(figure(lowerEye.toEdgeMm), to.x + ABOVE_MM * scale, to.y + ABOVE_MM * scale, 'start')]
        : []),
      word(
        'bar',
        -side * (Math.abs(hollows.barAndPost.bar.from.x) + 7 * scale),
        box.min.y + 0.62 * bridgeLineMm,
      ),
      word(
        'post',
        side * (Math.abs(hollows.barAndPost.post.from.x) + 0.5 * scale),
        hollows.barAndPost.post.from.y - 9 * scale,
      ),
      ...captionBelow(
        [
          'SOUND HOLES · PLACE ON THE TOP',
          plan.name,
          `seen from outside, neck up; bridge line ${mm(soundHoles.stopMm)} from the upper end; dash-dotted: centre line`,
          `upper eyes ${mm(sizes.upperEyesApartMm)} apart, lower eye ${mm(lowerEye.toEdgeMm)} from the edge, hole ${mm(sizes.lengthMm)} long`,
        ],
        { x: box.min.x, y: box.min.y },
        { scale, mostMm: box.max.x - box.min.x },
      ),
    ],
    notes: [
      `Crosses: middles of the eyes, ${mm(upperEye.centre.x)} and ${mm(lowerEye.centre.x)} from the centre line. Rectangles: feet of the bridge, ${mm(value('bridgeFeet'))} over both; long piece: the bar under the top, round one: the post${design.leftHanded ? ', left-handed' : ''}. The holes are turned by ${((Math.abs(soundHoles.turnRad) * 180) / Math.PI).toFixed(1)}° ${soundHoles.turnRad >= 0 ? 'outward' : 'inward'} about the inner nick from how they are drafted, so that the lower eye lies ${mm(lowerEye.toEdgeMm)} from the nearest edge; nearest of all a hole comes to ${mm(nearestEdge.distanceMm)}.`,
      ...(soundHoles.cornerBlockUnderMm > 0
        ? [
            `The lower corner blocks, drawn as they stand in the form, reach ${mm(soundHoles.cornerBlockUnderMm)} under the holes: trim them to a hollow curve inside once the form is out, before the top goes on.`,
          ]
        : []),
      `Eyes ${mm(hole.eyesApartMm)} apart, ${mm(Math.abs(off))} ${off < 0 ? 'less' : 'more'} than a published rule of dividers has (${mm(rule.eyesApartMm)}); its lower eyes lie ${mm(rule.lowerXMm)} from the centre line, here ${mm(lowerEye.centre.x)}, and ${mm(rule.lowerFromTopMm)} from the upper end, here ${mm(plan.outline.bodyLengthMm - lowerEye.centre.y)}. It does not say where its pins stand: taken 4 mm inside the ends of a 355 body. One maker’s reading of old violins, not a law.`,
      'Look at both holes whole on this plan before anything is cut. In plan: on the arch the lines lie a little farther out; transfer by the templates, not by pressing this sheet onto the wood.',
    ],
    count: 1,
    routes: ['print'],
    checks: sizeChecks(box),
  };
}

function level(y: number, halfMm: number): Chain<'drawing'> {
  return straightChain(false, [
    [-halfMm, y],
    [halfMm, y],
  ]);
}

/** From the rim of an eye to the nearest place of the edge. */
function wayToEdge(edge: Chain<'body'>, eye: Point<'body'>, radiusMm: number): Chain<'drawing'> {
  const { point, distanceMm } = nearestOn(edge, eye);
  const share = radiusMm / distanceMm;
  return straightChain(false, [
    [eye.x + share * (point.x - eye.x), eye.y + share * (point.y - eye.y)],
    [point.x, point.y],
  ]);
}

function foot(way: number, y: number, outMm: number, longMm: number, thickMm: number): Chain<'drawing'> {
  const [a, b] = way > 0 ? [outMm - longMm, outMm] : [-outMm, longMm - outMm];
  return straightChain(true, [
    [a, y - thickMm / 2],
    [b, y - thickMm / 2],
    [b, y + thickMm / 2],
    [a, y + thickMm / 2],
  ]);
}

function cross(x: number, y: number, halfMm: number): readonly Chain<'drawing'>[] {
  return [
    straightChain(false, [
      [x - halfMm, y],
      [x + halfMm, y],
    ]),
    straightChain(false, [
      [x, y - halfMm],
      [x, y + halfMm],
    ]),
  ];
}
