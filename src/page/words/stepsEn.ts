/** The work at the bench, step by step; all of it common practice, in short. */
export const stepsEn = {
  count: (of: number) => `${of} steps on an inner form`,
  lead: 'In the usual order. What is ticked is kept with this sitting in the browser.',
  done: (day: string) => `done ${day}`,
  rests: (days: string) => days,
  doneToday: 'Done today',
  notAfterAll: 'Not done after all',
  measure: 'to measure on the way',
  pieces: 'pieces for this step',
  steps: {
    blocks: {
      name: 'blocks on the form',
      rests: 'then rests a day',
      says: [
        'Saw the form outside its line and file to it, square to the faces. Wax its edge, not the recesses.',
        'Shave the blocks to a sliding fit, grain upright, and glue them with a spot only: they come off the form again.',
        'Shape the blocks with the inner outline template and the block gauges.',
      ],
      care: 'Saw and chisel: clamp the work, both hands behind the edge. Follow the manual of a router or band saw.',
    },
    ribs: {
      name: 'ribs bent and glued',
      rests: 'then rests a day',
      says: [
        'Plane the strips to thickness and width, and bend the waist ribs first, wet, under a strap.',
        'Glue the waist ribs with their cauls, pare their ends with the block, then bend and glue the upper and lower ribs over them.',
        'Trim all four corners square across.',
      ],
      care: 'The iron burns long before it looks hot, and steam scalds. Stand it where nobody passes, and let it cool before it is touched.',
    },
    linings: {
      name: 'linings',
      rests: 'then rests a day',
      says: [
        'Cut the mortises in the corner blocks once the ribs are on.',
        'Bend the linings like the ribs and glue them in under many small clamps.',
      ],
      care: 'Hot glue and its pot scald. Thin strips split under knife and plane: cut against a stop.',
    },
    levelled: {
      name: 'garland levelled',
      rests: '',
      says: [
        'Rub both sides flat on a board with abrasive paper until the rib height gauges fit at neck and lower end.',
        'Check with a straight-edge across; the taper runs evenly.',
      ],
      care: 'Wood dust harms nose and lungs: wear a mask, draw the dust off.',
    },
    outline: {
      name: 'plates joined, outline cut',
      rests: 'then rests a day',
      says: [
        'Shoot the centre joint until no light shows, and glue it.',
        'Lay the garland on the plate and check the outline template against it: the overhang must come out even. Where the garland went its own way, the plate follows the garland.',
        'Saw outside the line and file to it, corners last.',
      ],
      care: 'Keep hands out of the line of the saw; clamp the plate.',
    },
    arching: {
      name: 'arching',
      rests: 'then rests two days',
      says: [
        'Rout or saw the terraces of the rough arching plan, or drill by its chart, never deeper than it says.',
        'Work with gouge, plane and scraper to the long gauge first, then to the five cross gauges for the arched state.',
        'Look along the plate under one low lamp: it shows what no gauge does.',
      ],
      care: 'Clamp the plate in its cradle, both hands behind the edge. Router: guard on, eyes and ears covered, shallow passes, the manual first.',
    },
    purfling: {
      name: 'purfling and edge',
      rests: 'then rests a day',
      says: [
        'Cut the groove in small passes with knife and pick, mitres last; try the purfling dry.',
        'Glue it in, then cut the channel to the finished gauges and round the edge to its steps.',
      ],
      care: 'The knife slips along the grain: cut away from the holding hand.',
    },
    hollowing: {
      name: 'hollowing and thickness',
      rests: '',
      says: [
        'Drill by the chart, stop well short, and gouge to the holes.',
        'Scrape to the thickness map with the calliper at its places; the inside gauges keep the shape.',
        'Weigh the plate now and then.',
      ],
      care: 'A gouge through the plate cannot be taken back: measure before every last cut. Dust: mask and extraction.',
    },
    holesAndBar: {
      name: 'sound holes and bar',
      rests: 'then rests a day',
      says: [
        'Prick the eyes through the template that was laid flat, drill them, saw inside the line and finish with the knife.',
        'Fit the bar with its curve until it stands without rocking, glue it, and trim it to height.',
      ],
      care: 'Knife and fret saw slip in thin spruce: pad and back the plate, both hands behind the edge.',
    },
    closed: {
      name: 'box closed',
      rests: 'then rests two days',
      says: [
        'Take the garland off the form, trim blocks and linings inside, and sign if you like.',
        'Glue the back, then the top with thinner glue, clamped all round; check that the overhang is even.',
      ],
      care: 'Lay all clamps ready before the glue is hot; it scalds.',
    },
    head: {
      name: 'head and neck carved',
      rests: '',
      says: [
        'Saw the side view from the template, mark the back and front with the wrap and the table of widths.',
        'Cut the turns step by step, hollow the pegbox last, bore and ream the pegs.',
      ],
      care: 'Carve away from the holding hand; clamp the head for boring and reaming.',
    },
    neck: {
      name: 'neck set',
      rests: 'then rests a day',
      says: [
        'Cut the mortise to plan and depth gauge, a little small.',
        'Pare until stop, overstand, projection and the middle line are right together, then glue.',
      ],
      care: 'Chisels: both hands behind the edge, the body held by a second person or a cradle.',
    },
    varnish: {
      name: 'varnish',
      rests: 'six weeks in all',
      says: [
        'Clean, wet and scrape the surfaces, ground and varnish in thin coats, each dry before the next.',
      ],
      care: 'Solvents and oily rags catch fire by themselves: lay rags flat outdoors or under water in a closed can. Air the room; heed the labels.',
    },
    setUp: {
      name: 'set-up',
      rests: 'settles for three weeks',
      says: [
        'Fit nut, saddle, pegs and post, then cut the bridge to its curve and height.',
        'Bring the strings up slowly, one by one, and look that the bridge stands upright.',
      ],
      care: 'A string can break: eyes out of its line. Ebony and bone dust harm the lungs.',
    },
  },
};
