import type { Fault } from '../../base/index.ts';

export function noPaper(roundWhat: 'thing' | 'line'): Fault {
  return {
    code: 'profile.no-paper',
    at: 'photograph',
    found: `too little bare paper round the ${roundWhat} to know how the light falls`,
    need: 'the white of the calibration sheet in view',
    remedy: 'photograph again with the whole sheet in the picture',
  };
}

export function nothing(): Fault {
  return {
    code: 'profile.nothing',
    at: 'photograph',
    found: 'nothing that stands out from the white middle of the sheet',
    need: 'the card, the drawing or the scroll inside the white middle',
    remedy:
      'lay it inside the band, on white paper; a white card wants something dark under it or a dark edge',
  };
}

export function sameColour(): Fault {
  return {
    code: 'profile.colour',
    at: 'photograph',
    found: 'a white or grey thing that cannot be told from paper and its shadow',
    need: 'a card or wood of a colour of its own, or much darker than a shadow',
    remedy: 'colour the card, or draw along its edge on white paper and trace the line',
  };
}

export function offSheet(): Fault {
  return {
    code: 'profile.off-sheet',
    at: 'photograph',
    found: 'a thing that reaches out of what the picture shows',
    need: 'the whole of it inside the sheet',
    remedy: 'lay it inside the band of squares, or use a larger sheet',
  };
}

export function noLine(): Fault {
  return {
    code: 'profile.no-line',
    at: 'photograph',
    found: 'no dark line of some length on the white of the sheet',
    need: 'one line, drawn dark and without gaps, inside the band of squares',
    remedy: 'draw it again with a soft pencil or a fine pen, and nothing else dark beside it',
  };
}

export function noArch(): Fault {
  return {
    code: 'profile.no-arch',
    at: 'photograph',
    found: 'no bowed edge between two corners of the card',
    need: 'a card with one edge cut to the arch, its corners in view',
    remedy: 'point at both ends of the arch, or cut the card square at its ends',
  };
}

export function noFace(): Fault {
  return {
    code: 'profile.no-face',
    at: 'photograph',
    found: 'no straight edge along the arch',
    need: 'the straight edge of the card that was laid to the gluing face',
    remedy: 'count heights from end to end instead',
  };
}
