import sharp from 'sharp';
import { fiddleScene } from '../../demo/painter/fiddleScene.ts';
import { makeLens } from '../../demo/painter/lens.ts';
import { paint } from '../../demo/painter/paint.ts';

const [WIDTH_PX, HEIGHT_PX] = [1125, 1500];
/** mm. The camera stands over the middle of this. */
const PAPER_MM = [420, 297] as const;

/** The picture kept as `fiddle-without-sheet.jpg`: the demo's fiddle on plain paper, from straight above. */
export function paintFiddleWithoutSheet(): Promise<Buffer> {
  const scene = fiddleScene('top', () => 1, PAPER_MM[0], PAPER_MM[1]);
  const middle = [PAPER_MM[0] / 2, PAPER_MM[1] / 2] as const;
  const lens = makeLens({
    widthPx: WIDTH_PX,
    heightPx: HEIGHT_PX,
    focalPx: 3000,
    centreOffsetPx: [0, 0],
    k1: 0,
    k2: 0,
    eye: [...middle, 1165],
    target: [...middle, 0],
    rollRad: -1.552,
  });
  const { rgb } = paint(scene, lens, WIDTH_PX, HEIGHT_PX, 2);
  return sharp(rgb, { raw: { width: WIDTH_PX, height: HEIGHT_PX, channels: 3 } })
    .jpeg({ quality: 92 })
    .toBuffer();
}
