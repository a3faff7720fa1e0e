import { cos, type Point, sin, tan } from '../../base/index.ts';
import type { Chain, Vertex } from '../chain.ts';
import type { HalfOutline } from '../halfOutline.ts';
import {
  type ArcRun,
  AT,
  C_RUN,
  headingRad,
  LOWER_RUN,
  type Numbers,
  UPPER_RUN,
  wayAlong,
  wayOver,
} from './arcRun.ts';

/** Where the three runs of a shape stand: the lower bout on (0, 0), the upper bout hung from (0, length). */
export interface LaidShape {
  readonly lowerTip: Point<'body'>;
  readonly cStart: Point<'body'>;
  readonly cEnd: Point<'body'>;
  readonly upperTip: Point<'body'>;
}

/** Lays the bouts from the ends and the waist from the lower corner; nothing makes the waist meet the upper corner. */
export function layShape(u: Numbers, lengthMm: number, lowerCornerEndMm: number): LaidShape {
  const lowerTip = wayOver(LOWER_RUN, u);
  const lean = u[AT.lowerEndHeading];
  const cStart = {
    x: lowerTip.x + lowerCornerEndMm * cos(lean),
    y: lowerTip.y + lowerCornerEndMm * sin(lean),
  };
  const over = wayOver(C_RUN, u);
  const down = wayOver(UPPER_RUN, u);
  return {
    lowerTip,
    cStart,
    cEnd: { x: cStart.x + over.x, y: cStart.y + over.y },
    upperTip: { x: down.x, y: lengthMm - down.y },
  };
}

/** The half outline of a shape whose waist starts at `cStart`: its corner ends join whatever stands at the corners. */
export function halfFromRuns(u: Numbers, lengthMm: number, cStart: Point<'body'>): HalfOutline {
  return {
    lowerBout: chainOf(LOWER_RUN, u, { x: 0, y: 0 }),
    cBout: chainOf(C_RUN, u, cStart),
    upperBout: turnedOver(chainOf(UPPER_RUN, u, { x: 0, y: 0 }), lengthMm),
  };
}

function chainOf(run: ArcRun, u: Numbers, start: Point<'body'>): Chain<'body'> {
  const arcs = run.turns.length;
  const vertices: Vertex<'body'>[] = [];
  for (let i = 0; i <= arcs; i += 1) {
    const way = i === 0 ? { x: 0, y: 0 } : wayAlong(run, u, i - 1, headingRad(run.headings[i], u));
    const sweep = i === arcs ? 0 : headingRad(run.headings[i + 1], u) - headingRad(run.headings[i], u);
    vertices.push({ x: start.x + way.x, y: start.y + way.y, bulge: tan(sweep / 4) });
  }
  return { closed: false, vertices };
}

/** The same curve seen upside down and run the other way: both turn the sense of an arc, so bulges stay. */
function turnedOver(chain: Chain<'body'>, lengthMm: number): Chain<'body'> {
  const last = chain.vertices.length - 1;
  return {
    closed: false,
    vertices: chain.vertices.map((_, i) => {
      const from = chain.vertices[last - i];
      return { x: from.x, y: lengthMm - from.y, bulge: i === last ? 0 : chain.vertices[last - i - 1].bulge };
    }),
  };
}
