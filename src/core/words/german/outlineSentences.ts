import type { Catalogue } from '../catalogue.ts';

/** What is found in the outline and in the parts of its plane: form, blocks, ribs, linings, cauls. */
export const outlineSentences: Catalogue = {
  'the {}, in mm': '{}, in mm',
  'give the value, or fill it from the habits of the family':
    'Gib den Wert an oder füll ihn aus dem Üblichen der Familie',
  'correct the {}': 'Berichtige: {}',
  'a length in mm above 0': 'eine Länge in mm über 0',
  'measure it again or leave it out': 'Miss noch einmal oder lass es weg',
  '{} for a {}': '{} bei dieser Familie ({})',
  'between {} and {}': 'zwischen {} und {}',
  'if it was taken in cm, give {}': 'Wenn in cm gemessen wurde, gib {} an',
  'check the unit and the family, and measure the body without its button':
    'Prüf die Einheit und die Familie, und miss den Korpus ohne sein Zäpfchen',
  'measure this width and the body length again; half a width is a common slip':
    'Miss diese Breite und die Korpuslänge noch einmal; die halbe Breite ist ein häufiges Versehen',
  'usually {}': 'üblich {}',
  'measure it again if you can; it is drawn as given':
    'Miss noch einmal, wenn du kannst; gezeichnet wird, was du angibst',
  '{} between upper corners {} wide': '{} zwischen oberen Ecken, die {} breit sind',
  'less than {}, so that the upper curves of the waist find room':
    'weniger als {}, damit die oberen Bögen der Mitte Platz finden',
  'measure the waist at its narrowest place and the upper bout at its widest':
    'Miss den Mittelbügel an seiner schmalsten und den Oberbügel an seiner breitesten Stelle',
  '{} above a lower bout of {}': '{} über einem Unterbügel von {}',
  'no more than {}': 'nicht mehr als {}',
  'check that upper and lower bout were not exchanged': 'Prüf, ob Ober- und Unterbügel vertauscht sind',
  '{}, wider than the lower bout': '{}, breiter als der Unterbügel',
  'usually about four fifths of the lower bout': 'üblich etwa vier Fünftel des Unterbügels',
  'less than {}': 'weniger als {}',
  'measure straight across from corner tip to corner tip, and the bout at its widest':
    'Miss gerade von Eckenspitze zu Eckenspitze, und den Bügel an seiner breitesten Stelle',
  'corners usually stand in from the widest place':
    'Ecken stehen üblicherweise hinter der breitesten Stelle zurück',
  'ask whether this part of the body was cut down; it is drawn as given':
    'Frag, ob dieser Teil des Korpus verkleinert wurde; gezeichnet wird, was du angibst',
  '{}, with {} {} {}': '{}, mit {} {} {}',
  'measure all heights from the lower end, along the centre line':
    'Miss alle Höhen vom unteren Ende, längs der Mittellinie',
  '{}, which cannot be joined to the other values by tangent arcs':
    '{}, das sich mit den anderen Werten nicht durch tangierende Bögen verbinden lässt',
  'near {}, where it comes to lie if it is left out': 'nahe {}, wo es zu liegen kommt, wenn man es weglässt',
  'values that leave a gap of {} in the outline': 'Werte, die im Umriss eine Lücke von {} lassen',
  'lengths that tangent arcs can join': 'Längen, die sich durch tangierende Bögen verbinden lassen',
  'measure the body length and the three widths again':
    'Miss die Korpuslänge und die drei Breiten noch einmal',
  'an outline whose {} strays {}': 'ein Umriss, dessen {} {} abweicht',
  'no more than {} times, from widths alone (lower bout {}, waist {}, upper bout {})':
    'nicht mehr als das {}-Fache, bei Breiten allein (Unterbügel {}, Mittelbügel {}, Oberbügel {})',
  'measure the widths again, or add the heights and widths of the corners if the body is really so':
    'Miss die Breiten noch einmal oder gib Höhen und Breiten der Ecken dazu, wenn der Korpus wirklich so ist',
  'drawn to the limit: {}': 'bis an die Grenze gezeichnet: {}',
  'some play left': 'etwas Spielraum',
  'look at the outline there; measure heights and widths of the corners to settle it':
    'Sieh dir den Umriss dort an; Höhen und Breiten der Ecken entscheiden es',
  '{} strays {}': '{} weicht {} ab',
  'usually within {} times': 'üblich höchstens das {}-Fache',
  '{}; measure again what you doubt': '{}; miss noch einmal, was du bezweifelst',
  '{} elsewhere, beyond the given {}': '{} an anderer Stelle, über die angegebenen {} hinaus',
  'the widest or narrowest place of its stretch': 'die breiteste oder schmalste Stelle seines Abschnitts',
  'measure the width and its height again': 'Miss die Breite und ihre Höhe noch einmal',
  'an outline that crosses itself {} above the lower end':
    'ein Umriss, der sich {} über dem unteren Ende kreuzt',
  'an outline without loops': 'einen Umriss ohne Schleifen',
  'measure the corners and the waist again': 'Miss die Ecken und den Mittelbügel noch einmal',
  'hardly any points on {}': 'kaum Stellen an: {}',
  'an edge seen at both bouts and at the waist':
    'einen Rand, der an beiden Bügeln und in der Mitte zu sehen ist',
  'take the picture so that the whole body is in it, or mark the missing edge by hand':
    'Nimm das Bild so auf, dass der ganze Korpus darauf ist, oder zeichne den fehlenden Rand von Hand ein',
  'points that tangent arcs do not settle on, {} off near x {}, y {}':
    'Stellen, auf die sich keine tangierenden Bögen legen lassen, {} daneben bei x {}, y {}',
  'the edge of a body with two bouts, a waist and four corners':
    'den Rand eines Korpus mit zwei Bügeln, einer Mitte und vier Ecken',
  'correct the edge there by hand, or leave that stretch out':
    'Berichtige den Rand dort von Hand oder lass den Abschnitt weg',
  'correct the edge near the corners by hand': 'Berichtige den Rand bei den Ecken von Hand',
  'two square faces that meet inside the form, well short of the middle of the waist':
    'zwei rechtwinklige Flächen, die sich in der Form treffen, deutlich vor der Mitte des Mittelbügels',
  'change the reach of the {} corner block along the waist or along the bout':
    'Ändere, wie weit der Eckklotz ({}) längs des Mittelbügels oder längs des Bügels reicht',
  'a block {} mm wide and {} mm deep whose sides miss the ribs':
    'ein Klotz von {} mm Breite und {} mm Tiefe, dessen Seiten die Zargen verfehlen',
  'sides that meet the ribs between the end of the body and the face of the block':
    'Seiten, die zwischen dem Ende des Korpus und der Klotzfläche auf die Zargen treffen',
  'make the {} block narrower or deeper': 'Mach den Klotz ({}) schmaler oder tiefer',
  'the nearest clamp hole {}° aside of the caul for the {}':
    'das nächste Zwingenloch steht {}° neben der Zulage ({})',
  'a hole behind it, or the clamp slides along the caul':
    'ein Loch dahinter, sonst rutscht die Zwinge an der Zulage',
  'bear the clamp on a wedge under the caul, or move the clamp holes':
    'Setz die Zwinge auf einen Keil unter der Zulage oder rück die Zwingenlöcher',
  'a bend too tight for the facing of the caul for the {}; it is left out':
    'eine Biegung, zu eng für den Belag der Zulage ({}); er fehlt',
  'a radius over 3 mm on the face of the caul': 'einen Radius über 3 mm auf der Fläche der Zulage',
  'take a thinner facing': 'Nimm einen dünneren Belag',
  'no room for a clamp hole of {} mm in the {}': 'kein Platz für ein Zwingenloch von {} mm: {}',
  '{} mm of wood round every hole': '{} mm Holz um jedes Loch',
  'take smaller clamp holes or a thinner wall': 'Nimm kleinere Zwingenlöcher oder weniger Holz daneben',
  'a form {} mm thick with room for {} mm between the linings':
    'eine Form von {} mm Dicke, zwischen den Reifchen sind {} mm Platz',
  'a form that comes out past the linings': 'eine Form, die an den Reifchen vorbei herausgeht',
  'glue in the linings of one side only while the form is in place, or take a thinner form':
    'Leim nur die Reifchen einer Seite ein, solange die Form steckt, oder nimm eine dünnere Form',
  '{} mm of wood left across the waist of the form': '{} mm Holz, die quer durch die Mitte der Form bleiben',
  'at least {} mm': 'mindestens {} mm',
  'take smaller clamp holes': 'Nimm kleinere Zwingenlöcher',
  'pin holes {} mm above the lower end': 'Stiftlöcher {} mm über dem unteren Ende',
  ' and ': ' und ',
  'places between the end blocks, {} to {} mm, clear of each other':
    'Stellen zwischen Ober- und Unterklotz, {} bis {} mm, frei voneinander',
  'move the pins, or make the end blocks shallower': 'Rück die Stifte oder mach Ober- und Unterklotz flacher',
  'recesses that run into each other': 'Aussparungen, die ineinander laufen',
  'wood of the form between all blocks': 'Holz der Form zwischen allen Klötzen',
  'make the blocks smaller': 'Mach die Klötze kleiner',
  'room for {} mm of lining in the {} corner block on the {} side':
    'Platz für {} mm Reifchen im Eckklotz ({}), Seite: {}',
  '{} mm, with wood left before the corner': '{} mm, mit Holz vor der Ecke',
  'let the linings in less far, or make the corner block longer':
    'Lass die Reifchen weniger weit ein oder mach den Eckklotz länger',
  'the {} lining bends to a radius of {} mm and stretches {} % there':
    'das Reifchen ({}) biegt sich auf einen Radius von {} mm und dehnt sich dort um {} %',
  'less than 7 %, even with a strap': 'weniger als 7 %, auch mit Biegeband',
  'thin it to {} mm at this place, or take kerfed linings':
    'Mach es an dieser Stelle {} mm dünn oder nimm eingesägte Reifchen',
  'a {} lining that misses the face of a block': 'ein Reifchen ({}), das die Fläche eines Klotzes verfehlt',
  'linings that end on the blocks at both ends': 'Reifchen, die an beiden Enden auf den Klötzen enden',
  'make the linings thinner, or the block deeper': 'Mach die Reifchen dünner oder den Klotz tiefer',
  'three open sections from (0, 0) up to the centre line at the upper end':
    'drei offene Abschnitte von (0, 0) hinauf zur Mittellinie am oberen Ende',
  'draft or trace the outline again': 'Zeichne den Umriss neu oder nimm ihn noch einmal ab',
  'an outline that crosses itself': 'ein Umriss, der sich selbst kreuzt',
  'one simple line round the body': 'eine einfache Linie um den Korpus',
  'look at the corners and the waist: two of the given sizes contradict each other':
    'Sieh dir die Ecken und die Mitte an: zwei der angegebenen Größen widersprechen sich',
  'no {} place between its ends': 'keine Stelle ({}) zwischen seinen Enden',
  'a {} place clear of the corners': 'eine Stelle ({}) frei von den Ecken',
  'check the width here against the width over the corners':
    'Prüf die Breite hier gegen die Breite über die Ecken',
  'parallel purfling lines {} mm from the edge would meet outside the {} corners':
    'parallele Einlagelinien {} mm vom Rand träfen sich außerhalb der Ecken ({})',
  'a mitre inside the corner': 'eine Gehrung innerhalb der Ecke',
  'their last {} mm are bent to meet {} mm inside the corner end; narrower corner ends or a smaller distance need no bend':
    'Ihre letzten {} mm sind gebogen, damit sie sich {} mm innerhalb des Eckenendes treffen; schmalere Eckenenden oder ein kleinerer Abstand brauchen keine Biegung',
  'no room in the {} corners for a point of the purfling {} mm long':
    'in den Ecken ({}) kein Platz für eine Spitze der Einlage von {} mm Länge',
  'wood between its tip and the edge': 'Holz zwischen ihrer Spitze und dem Rand',
  'it is drawn {} mm long': 'Sie ist {} mm lang gezeichnet',
  'none is drawn: end the purfling in its mitre':
    'Es ist keine gezeichnet: lass die Einlage in der Gehrung enden',
  'the lines {} mm inside the outline do not reach this corner':
    'die Linien {} mm innerhalb des Umrisses reichen nicht bis in diese Ecke',
  'two sides that run to the corner and open by at least 20°':
    'zwei Seiten, die zur Ecke laufen und sich um mindestens 20° öffnen',
  'look at the outline at this corner, or take a smaller distance from the edge':
    'Sieh dir den Umriss an dieser Ecke an oder nimm einen kleineren Abstand vom Rand',
  'at least {} mm, or the ribs run out to a feather': 'mindestens {} mm, sonst laufen die Zargen dünn aus',
  'raise the overhang at the corners, or lower the overhang along the bouts':
    'Mach den Überstand an den Ecken größer oder den an den Bügeln kleiner',
  "at most {} mm, three quarters of the plate's corner end":
    'höchstens {} mm, drei Viertel des Eckenendes der Platte',
  'lower the overhang at the corners, or raise the overhang along the bouts':
    'Mach den Überstand an den Ecken kleiner oder den an den Bügeln größer',
  'the block shows {} mm wide between the rib ends at the {} corners':
    'der Klotz zeigt sich {} mm breit zwischen den Zargenenden an den Ecken ({})',
  'ribs that meet on the tip of the block, or nearly':
    'Zargen, die sich auf der Spitze des Klotzes treffen, oder beinahe',
  'raise the overhang along the bouts by {} mm or lower the overhang at the corners':
    'Mach den Überstand an den Bügeln um {} mm größer oder den an den Ecken kleiner',
  'the ribs are drawn together over the {} corner blocks until the plate stands out {} mm beside them, {} mm along the bouts':
    'die Zargen sind über den Eckklötzen ({}) zusammengezogen, bis die Platte daneben {} mm übersteht, an den Bügeln {} mm',
  'at most {} mm, or the corners look heavy': 'höchstens {} mm, sonst wirken die Ecken schwer',
  'raise the overhang along the bouts, make the corner ends narrower, or keep it':
    'Mach den Überstand an den Bügeln größer, die Eckenenden schmaler, oder behalte es',
  'the {} bends to a radius of {} mm and stretches {} % there':
    '{}: biegt sich auf einen Radius von {} mm und dehnt sich dort um {} %',
  'thin it to {} mm at this place, or take a wider curve':
    'Mach sie an dieser Stelle {} mm dünn oder nimm eine weitere Kurve',
  '{} to {} on a body of {}': '{} bis {} bei einem Korpus von {}',
  '{}, the {} bout being {}': '{}, wobei der Bügel ({}) {} misst',
  'at most {}': 'höchstens {}',
  'given as': 'angegeben als',
  'keep it only if you measured it so': 'Behalte es nur, wenn du es so gemessen hast',
  'look at the outline there': 'Sieh dir den Umriss dort an',
  '{} times as far from the usual as instruments mostly do':
    '{}-mal so weit vom Üblichen wie die meisten Instrumente',
  'upper flank': 'obere Flanke',
  'where the end of the {} bout passes into its shoulder': 'Übergang vom Ende in die Schulter ({})',
  'where the shoulder of the {} bout passes into its flank': 'Übergang von der Schulter in die Flanke ({})',
  'where the flank of the {} bout passes into its upper flank':
    'Übergang von der Flanke in die obere Flanke ({})',
  'slope of the {} bout where it turns hollow': 'Neigung des Bügels, wo er hohl wird ({})',
  'direction of the {} bout at its corner': 'Richtung des Bügels an seiner Ecke ({})',
  'hollow before the corner': 'Hohlbogen vor der Ecke',
  'radius of the lower curve of the waist': 'Radius des unteren Bogens der Mitte',
  'radius of the middle of the waist': 'Radius der Mitte',
  'radius of the upper curve of the waist': 'Radius des oberen Bogens der Mitte',
  'hook of the waist at the lower corner': 'Haken der Mitte an der unteren Ecke',
  'slope where the lower curve of the waist ends': 'Neigung, wo der untere Bogen der Mitte endet',
  'slope where the upper curve of the waist begins': 'Neigung, wo der obere Bogen der Mitte beginnt',
  'hook of the waist at the upper corner': 'Haken der Mitte an der oberen Ecke',
  'the body': 'der Korpus',
  'along the rib height': 'längs der Zargenhöhe',
  'reaches of {} and {} mm': 'Reichweiten von {} und {} mm',
  'faces that do not enclose a block': 'Flächen, die keinen Klotz umschließen',
  'a face that leaves the form and comes back': 'eine Fläche, die die Form verlässt und zurückkommt',
  'at the nut': 'am Obersattel',
  'a line that is closed, empty or holds something that is no number':
    'eine Linie, die geschlossen oder leer ist oder etwas enthält, das keine Zahl ist',
  'a start at ({}, {})': 'ein Anfang bei ({}, {})',
  'an end at ({}, {})': 'ein Ende bei ({}, {})',
  'a line {} rad off level on the centre line': 'eine Linie, auf der Mittellinie {} rad aus der Waage',
  'a length of {} mm': 'eine Länge von {} mm',
  'a length of 0 mm or more': 'eine Länge von 0 mm oder mehr',
  'give 0 for none': 'Gib 0 an, wenn keine sein soll',
  'a point {} mm long that bends {} mm aside': 'eine Spitze von {} mm Länge, die {} mm zur Seite biegt',
  'at most {} mm to either side, or it turns back': 'höchstens {} mm nach jeder Seite, sonst kehrt sie um',
  'bend it less, or make it longer': 'Bieg sie weniger oder mach sie länger',
  'the rib corner ends {} mm wide at the {} corners': 'die Zargenecke endet {} mm breit an den Ecken ({})',
};
