import type { Fault } from '../../base/index.ts';

/** Too little white is seen to know what light falls on the paper. */
export function paperFault(): Fault {
  return {
    code: 'shape.paper',
    at: 'photograph',
    found: 'hardly any bare paper of the calibration sheet',
    need: 'the white between its squares, in even light',
    remedy: 'lay the thing in the calm middle of the sheet and photograph the whole sheet again',
  };
}

export function nothingFault(): Fault {
  return {
    code: 'shape.nothing',
    at: 'photograph',
    found: 'nothing on the calm middle of the sheet that stands out from the paper',
    need: 'the thing to be measured, darker or of another colour than the paper',
    remedy: 'lay it on the sheet; if it is as white as paper, lay tinted paper inside the band under it',
  };
}

export function otherFault(name: string, overlap: number): Fault {
  return {
    code: 'shape.other',
    at: 'photograph',
    found: `something that covers the ${name} of this design to ${(100 * overlap).toFixed(0)} % only`,
    need: `the ${name}, whole, with nothing beside it that touches it`,
    remedy:
      'say with --part what lies there, clear the sheet round it, and see that the design is the right one',
  };
}

export function mistakenFault(name: string, other: string): Fault {
  return {
    code: 'shape.mistaken',
    at: 'photograph',
    found: `something that looks like the ${other} of this design, not like the ${name}`,
    need: `the ${name}`,
    remedy: `say --part for the ${other}, or photograph the ${name}`,
  };
}

export function sizeFault(name: string, growth: number): Fault {
  const percent = Math.abs(100 * growth).toFixed(0);
  return {
    code: 'shape.size',
    at: 'photograph',
    found: `something of this shape that is ${percent} % ${growth > 0 ? 'larger' : 'smaller'} than the ${name} of this design`,
    need: 'a thing made from this design',
    remedy: 'see that the design is the right one, and that what was printed was printed at 100 %',
  };
}

export function hiddenFault(name: string, seenShare: number): Fault {
  return {
    code: 'shape.hidden',
    at: 'photograph',
    found: `only ${(100 * seenShare).toFixed(0)} % of the edge of the ${name} can be measured`,
    need: 'half of it or more, on bare paper, with a plain edge',
    remedy: 'take away what lies over the edge, move the thing off the printed squares, and light it evenly',
  };
}

export function unsettledFault(name: string): Fault {
  return {
    code: 'shape.unsettled',
    at: 'photograph',
    found: `an edge on which the ${name} of this design comes to no rest`,
    need: 'an edge that can be seen most of the way round',
    remedy: 'photograph it again in even light, with nothing else on the sheet',
  };
}
