import type { Catalogue } from '../catalogue.ts';

/** What stands on pictures of a plate, and is said of two designs that are compared. */
export const pictureWords: Catalogue = {
  'Contours of the back': 'Höhenlinien des Bodens',
  'Contours of the top': 'Höhenlinien der Decke',
  'curvature of the back': 'Krümmung des Bodens',
  'curvature of the top': 'Krümmung der Decke',
  'thickness of the back': 'Stärken des Bodens',
  'thickness of the top': 'Stärken der Decke',
  'Section of the back': 'Schnitt durch den Boden',
  'Section of the top': 'Schnitt durch die Decke',
  'Heights of the back: alike to {} mm everywhere.': 'Höhen des Bodens: überall auf {} mm gleich.',
  'Heights of the top: alike to {} mm everywhere.': 'Höhen der Decke: überall auf {} mm gleich.',
  'Heights of the back: {} mm apart on average (rms).':
    'Höhen des Bodens: im Mittel {} mm auseinander (quadratisch).',
  'Heights of the top: {} mm apart on average (rms).':
    'Höhen der Decke: im Mittel {} mm auseinander (quadratisch).',
  'Thickness of the back: alike to {} mm everywhere.': 'Stärken des Bodens: überall auf {} mm gleich.',
  'Thickness of the top: alike to {} mm everywhere.': 'Stärken der Decke: überall auf {} mm gleich.',
  '{} mm of the back, arched, channel not yet cut':
    '{} mm des Bodens, gewölbt, Hohlkehle noch nicht geschnitten',
  '{} mm of the top, arched, channel not yet cut':
    '{} mm der Decke, gewölbt, Hohlkehle noch nicht geschnitten',
  '{}, heights above the gluing face': '{}, Höhen über der Leimfläche',
  'a line every {} mm, edge and channel finished': 'alle {} mm eine Linie, Rand und Hohlkehle fertig',
  'a line every {} mm, arched, channel not yet cut':
    'alle {} mm eine Linie, gewölbt, Hohlkehle noch nicht geschnitten',
  'highest {}, edge {}, channel {} mm': 'höchste Stelle {}, Rand {}, Hohlkehle {} mm',
  '{}, heights above the gluing face: a line every {} mm, edge and channel finished; highest {}, edge {}, channel {} mm.':
    '{}, Höhen über der Leimfläche: alle {} mm eine Linie, Rand und Hohlkehle fertig; höchste Stelle {}, Rand {}, Hohlkehle {} mm.',
  '{}, heights above the gluing face: a line every {} mm, arched, channel not yet cut; highest {}, edge {}, channel {} mm.':
    '{}, Höhen über der Leimfläche: alle {} mm eine Linie, gewölbt, Hohlkehle noch nicht geschnitten; höchste Stelle {}, Rand {}, Hohlkehle {} mm.',
  'Seen from the outside, neck end up. Both halves are alike.':
    'Von außen gesehen, der Hals oben. Beide Hälften sind gleich.',
  'For looking and comparing: gauges are cut from their own sheets.':
    'Zum Anschauen und Vergleichen: Schablonen werden nach ihren eigenen Blättern geschnitten.',
  'lamp {}° above the plate, {}° clockwise from the neck end':
    'Lampe {}° über der Platte, {}° im Uhrzeigersinn vom Hals aus',
  flat: 'flach',
  'radius, mm': 'Radius, mm',
  finished: 'fertig',
  arched: 'gewölbt',
  'mean curvature': 'mittlere Krümmung',
  'stronger curvature': 'stärkere Krümmung',
  'rust: domed; blue: hollow; the heavy line is where the two make even':
    'Rost: gewölbt; Blau: hohl; auf der dicken Linie heben sich beide auf',
  'of the two ways in which a surface bends the tighter one':
    'von den zwei Richtungen, in denen sich eine Fläche krümmt, die engere',
  '{} under the bridge, {} in the bouts, {} at the sides of the waist, {} in the channel':
    '{} unter dem Steg, {} in den Bügeln, {} an den Seiten des Mittelbügels, {} in der Hohlkehle',
  'measured square to the outside, inside the gluing face; seen from the outside':
    'rechtwinklig zur Außenseite gemessen, innerhalb der Leimfläche; von außen gesehen',
  'dashed: {} under the middle of the post, {} under the middle of the bar':
    'gestrichelt: {} unter der Mitte der Stimme, {} unter der Mitte des Balkens',
  'dashed: {} under the middle of the post': 'gestrichelt: {} unter der Mitte der Stimme',
  'rust: the other is higher; blue: lower; dashed: the other outline':
    'Rost: der andere ist höher; Blau: niedriger; gestrichelt: der andere Umriss',
  '{}: {} less {}': '{}: {} minus {}',
  'The other is {} mm higher: {}.': 'Der andere ist {} mm höher: {}.',
  'The other is {} mm lower: {}.': 'Der andere ist {} mm niedriger: {}.',
  'The other is {} mm thicker at most: {}.': 'Der andere ist höchstens {} mm stärker: {}.',
  'The other is {} mm thinner at most: {}.': 'Der andere ist höchstens {} mm dünner: {}.',
  'The other outline lies {} mm outside at most: {}.':
    'Der andere Umriss liegt höchstens {} mm außerhalb: {}.',
  'The other outline lies {} mm inside at most: {}.':
    'Der andere Umriss liegt höchstens {} mm innerhalb: {}.',
  'Outlines: alike to {} mm.': 'Umrisse: auf {} mm gleich.',
  '{}: {}, in the other {}.': '{}: {}, im anderen {}.',
  'not given': 'nicht angegeben',
  '{} more numbers differ; compare what garland derive lists of both.':
    'Noch {} Zahlen sind verschieden; vergleiche, was garland derive von beiden auflistet.',
  'heights above the gluing face, ways along the line, mm':
    'Höhen über der Leimfläche, Wege längs der Linie, mm',
  'in brackets: wood from the inside straight up, thicker on a slope than square to it':
    'in Klammern: Holz von der Innenseite gerade hinauf, am Hang stärker als rechtwinklig dazu',
  'along {} to {}': 'längs {} bis {}',
};
