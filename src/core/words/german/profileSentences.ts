import type { Catalogue } from '../catalogue.ts';

/** What is found in photographs of arches and heads, and in arches as measured. */
export const profileSentences: Catalogue = {
  'too little bare paper round the {} to know how the light falls':
    'zu wenig blankes Papier rundum ({}), um zu wissen, wie das Licht fällt',
  'the white of the calibration sheet in view': 'das Weiß des Messblatts im Blick',
  'photograph again with the whole sheet in the picture':
    'Fotografier noch einmal mit dem ganzen Blatt im Bild',
  'nothing that stands out from the white middle of the sheet':
    'nichts, was sich von der weißen Mitte des Blatts abhebt',
  'the card, the drawing or the scroll inside the white middle':
    'die Karte, die Zeichnung oder die Schnecke in der weißen Mitte',
  'lay it inside the band, on white paper; a white card wants something dark under it or a dark edge':
    'Leg es innerhalb des Bands auf weißes Papier; eine weiße Karte braucht etwas Dunkles darunter oder eine dunkle Kante',
  'a white or grey thing that cannot be told from paper and its shadow':
    'ein weißes oder graues Ding, das sich von Papier und Schatten nicht unterscheiden lässt',
  'a card or wood of a colour of its own, or much darker than a shadow':
    'eine Karte oder Holz in eigener Farbe, oder viel dunkler als ein Schatten',
  'colour the card, or draw along its edge on white paper and trace the line':
    'Färb die Karte oder zeichne an ihrer Kante entlang auf weißes Papier und nimm die Linie ab',
  'a thing that reaches out of what the picture shows': 'ein Ding, das aus dem Bild hinausreicht',
  'the whole of it inside the sheet': 'alles davon innerhalb des Blatts',
  'lay it inside the band of squares, or use a larger sheet':
    'Leg es innerhalb des Bands von Feldern oder nimm ein größeres Blatt',
  'no dark line of some length on the white of the sheet':
    'keine dunkle Linie von einiger Länge auf dem Weiß des Blatts',
  'one line, drawn dark and without gaps, inside the band of squares':
    'eine Linie, dunkel und ohne Lücken gezeichnet, innerhalb des Bands von Feldern',
  'draw it again with a soft pencil or a fine pen, and nothing else dark beside it':
    'Zeichne sie noch einmal mit weichem Bleistift oder feiner Feder, und nichts anderes Dunkles daneben',
  'no bowed edge between two corners of the card': 'keine gebogene Kante zwischen zwei Ecken der Karte',
  'a card with one edge cut to the arch, its corners in view':
    'eine Karte mit einer nach der Wölbung geschnittenen Kante, ihre Ecken im Blick',
  'point at both ends of the arch, or cut the card square at its ends':
    'Zeig auf beide Enden der Wölbung oder schneid die Karte an den Enden rechtwinklig',
  'no straight edge along the arch': 'keine gerade Kante längs der Wölbung',
  'the straight edge of the card that was laid to the gluing face':
    'die gerade Kante der Karte, die an der Leimfläche lag',
  'count heights from end to end instead': 'Zähl die Höhen stattdessen von Ende zu Ende',
  '{} % of the edge is soft, as the border of a shadow is':
    '{} % der Kante sind weich wie der Rand eines Schattens',
  'a sharp edge all along': 'eine durchweg scharfe Kante',
  'light it from both sides or from a window in the shade, and focus on it; a coloured card is told from its shadow':
    'Beleuchte sie von beiden Seiten oder an einem Fenster im Schatten und stell auf sie scharf; eine farbige Karte unterscheidet sich von ihrem Schatten',
  'a thing as high at one end as at the other': 'ein Ding, das an einem Ende so hoch ist wie am anderen',
  'a scroll seen from its side, its turn clearly higher than the nut end':
    'eine Schnecke von der Seite, ihr Umgang deutlich höher als das Ende am Obersattel',
  'lay the head flat on its side, and cover or leave out the neck behind the nut':
    'Leg den Kopf flach auf die Seite und deck den Hals hinter dem Obersattel ab',
  'no hollow between the turn and the pegbox on either side':
    'auf keiner Seite eine Mulde zwischen Schnecke und Wirbelkasten',
  'a scroll seen from its side': 'eine Schnecke von der Seite',
  'lay the head flat on its side and photograph it from above':
    'Leg den Kopf flach auf die Seite und fotografier ihn von oben',
  '{}; {} of {} readings, {} mm rms, at most {} mm off':
    '{}; {} von {} Ablesungen, {} mm rms, höchstens {} mm daneben',
  'readings within {} mm rms of an arch of this form':
    'Ablesungen innerhalb von {} mm rms einer Wölbung dieser Art',
  'no action: this is what the readings give': 'Nichts: das ist, was die Ablesungen ergeben',
  'look at the residuals: read the worst places again, or draw the arch from your own numbers':
    'Sieh dir die Abweichungen an: lies die schlechtesten Stellen noch einmal ab oder zeichne die Wölbung aus eigenen Zahlen',
  'compare it with the instrument before wood is cut':
    'Vergleich sie mit dem Instrument, bevor Holz geschnitten wird',
  'a reading at {}, near none of the five stations; it was fitted, and not used':
    'eine Ablesung bei {}, nahe keiner der fünf Stellen; sie wurde eingepasst und nicht gebraucht',
  'a reading at {}': 'eine Ablesung bei {}',
  'name the station if it is one of them, or read the arch there':
    'Nenn die Stelle, wenn sie eine davon ist, oder lies die Wölbung dort ab',
  'fullness {} and {}; the design has one for both plates, and their mean is used':
    'Völligkeit {} und {}; der Entwurf hat eine für beide Platten, es gilt ihr Mittel',
  'readings within {}': 'Ablesungen innerhalb von {}',
  'draft a design for each plate, or give the fullness that you want':
    'Zeichne für jede Platte einen Entwurf oder gib die Völligkeit an, die du willst',
  '{} given, {} by the readings of the arch; the given one is used':
    '{} angegeben, {} nach den Ablesungen der Wölbung; die angegebene gilt',
  'the two within {}': 'beide innerhalb von {}',
  'measure it again, or leave the value out and the readings give it':
    'Miss noch einmal oder lass den Wert weg, dann geben ihn die Ablesungen',
  'the {} at the {} reads as a fullness of {}; not used':
    '{}, {}: gelesen wird eine Völligkeit von {}; nicht gebraucht',
  'a fullness between −{} and {}': 'eine Völligkeit zwischen −{} und {}',
  'check where the channel lies in these readings, or give halfWidth':
    'Prüf, wo die Hohlkehle in diesen Ablesungen liegt, oder gib halfWidth an',
  'no action: arch height and rise are met either way':
    'Nichts: Wölbungshöhe und Stich stimmen in beiden Fällen',
  'compare the long arch gauge with the instrument':
    'Vergleich die Schablone der Längswölbung mit dem Instrument',
  'the crest lies {} mm {} the middle of the long arch, {} ± {} mm from where the readings begin to count':
    'der Scheitel liegt {} mm {} der Mitte der Längswölbung, {} ± {} mm von dort, wo die Ablesungen zu zählen beginnen',
  'a crest in the middle, where the design has it': 'einen Scheitel in der Mitte, wo ihn der Entwurf hat',
  'no action, unless you want the asymmetry: it is not drawn':
    'Nichts, wenn du die Ungleichheit nicht willst: sie wird nicht gezeichnet',
  'the side of the head follows {} within {} mm (rms; most {}): {}; {} % of the traced line was used. Eye, turns and widths are not told from the side':
    'die Seite des Kopfes folgt {} auf {} mm (rms; höchstens {}): {}; {} % der abgenommenen Linie wurden gebraucht. Auge, Umgänge und Breiten sagt die Seite nicht',
  'nothing, if that is near enough': 'Nichts, wenn das nahe genug ist',
  'measure eye and widths on the original and give them': 'Miss Auge und Breiten am Original und gib sie an',
  'the drawn head leaves the original{}': 'der gezeichnete Kopf verlässt das Original{}',
  ' at: {}': ' bei: {}',
  ' by {} mm (rms)': ' um {} mm (rms)',
  '{} mm or less as a whole and {} mm at each stretch':
    '{} mm oder weniger im Ganzen und {} mm auf jedem Abschnitt',
  'look whether it is worn or broken there, or was not photographed square from the side':
    'Sieh nach, ob er dort abgenutzt oder gebrochen ist oder nicht genau von der Seite fotografiert wurde',
  'heights that do not count from the gluing face; the rise is known, the arch height is not':
    'Höhen, die nicht ab der Leimfläche zählen; der Stich ist bekannt, die Wölbungshöhe nicht',
  'heights that do not count from the gluing face': 'Höhen, die nicht ab der Leimfläche zählen',
  'the arch height over the gluing face': 'die Wölbungshöhe über der Leimfläche',
  'give {}, or read the heights from the gluing face': 'Gib {} an oder lies die Höhen ab der Leimfläche',
  'two places in the photograph, in pixels, such as "120,80 1320,84"':
    'zwei Stellen auf dem Foto, in Bildpunkten, etwa "120,80 1320,84"',
  'read them in a picture viewer': 'Lies sie in einem Bildbetrachter ab',
  'a cross arch without its place': 'eine Querwölbung ohne ihre Stelle',
  'say where on the plate the arch was taken': 'Sag, wo auf der Platte die Wölbung genommen wurde',
  'say what lies at the right of the profile as it is photographed':
    'Sag, was rechts vom Profil liegt, wie es fotografiert ist',
  'a cross arch without its place on the plate': 'eine Querwölbung ohne ihre Stelle auf der Platte',
  'trace it again with its station, or add it': 'Nimm sie mit ihrer Stelle noch einmal ab oder füg sie hinzu',
  'taken from {} mm, {} mm aside: up to {} mm of the side of a thing {} mm high show beyond its edge':
    'aufgenommen aus {} mm, {} mm seitlich: bis zu {} mm von der Seite eines {} mm hohen Dings sind jenseits seiner Kante zu sehen',
  'at most {} mm': 'höchstens {} mm',
  'photograph from straight above its middle and from farther away, or trace a thinner thing':
    'Fotografier von genau über der Mitte und aus größerer Entfernung oder nimm etwas Dünneres ab',
  'no arch was fitted: {}': 'keine Wölbung eingepasst: {}',
  '{} on the {}': '{}, {}',
  'the long arch is nearest to {} ({} mm rms); the design draws a circle':
    'die Längswölbung kommt {} am nächsten ({} mm rms); der Entwurf zeichnet einen Kreis',
  'a circle with end fillets': 'ein Kreis mit Ausrundungen an den Enden',
  'a flat top between falling circles': 'ein flacher Scheitel zwischen fallenden Kreisen',
  'a cycloid': 'eine Zykloide',
  'side of the head in {}': 'Seite des Kopfes in {}',
  'rise {} mm': 'Stich {} mm',
  'rise {} mm, half width {} mm, fullness {}': 'Stich {} mm, halbe Breite {} mm, Völligkeit {}',
  'cross arch at the waist': 'Querwölbung am Mittelbügel',
  '{} fitted to {}': '{}, eingepasst: {}',
  'edge less the channel of the arches fitted to {}': 'Rand weniger Hohlkehle der eingepassten Wölbungen: {}',
  'cross arch of the {} fitted to {}': 'Querwölbung, {}, eingepasst: {}',
  'crossArch or longArch: a scroll gives no arch':
    'Quer- oder Längswölbung: eine Schnecke gibt keine Wölbung',
  'the plate that it was taken from, top or back': 'die Platte, von der es genommen wurde, Decke oder Boden',
  'profile in {}': 'Profil in {}',
  'a closed line': 'eine geschlossene Linie',
};
