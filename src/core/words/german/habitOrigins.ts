import type { Catalogue } from '../catalogue.ts';

/** Where the numbers that a maker may give come from. */
export const habitOrigins: Catalogue = {
  '{}; weak': '{}; schwach belegt',
  weak: 'schwach belegt',
  '{} to {}, up to {}': '{} bis {}, höchstens {}',
  '{} to {}; {}': '{} bis {}; {}',
  '{} to {}, {}': '{} bis {}, {}',
  '{} on a violin, a little more': '{} bei der Geige, etwas mehr',
  'as on a violin': 'wie bei der Geige',
  'a playing card in a book of 1902': 'eine Spielkarte in einem Buch von 1902',
  'a book of 1902 has {}': 'ein Buch von 1902 hat {}',
  'a little less at the throat': 'an der Kehle etwas weniger',
  'many boards are flat under the lowest string, which is not drawn':
    'viele Griffbretter sind unter der tiefsten Saite flach, was nicht gezeichnet ist',
  'a third of its length': 'ein Drittel seiner Länge',
  'a twist drill of {} mm with a point of {}°': 'ein Spiralbohrer von {} mm mit einer Spitze von {}°',
  'about {} on each side': 'etwa {} auf jeder Seite',
  'as along the bouts': 'wie an den Bügeln',
  'as much wider than at the nut as on a violin; weak':
    'um so viel breiter als am Obersattel wie bei der Geige; schwach belegt',
  'as wide as between the upper eyes': 'so breit wie zwischen den oberen Augen',
  'between middle and bouts; weak': 'zwischen Mitte und Bügeln; schwach belegt',
  'in proportion to the ears; weak': 'im Verhältnis zu den Ohren; schwach belegt',
  'one published drawing has {}': 'eine veröffentlichte Zeichnung hat {}',
  'published figures run from {} to {}': 'veröffentlichte Zahlen reichen von {} bis {}',
  'sheet cork of {} to {}': 'Korkplatte von {} bis {}',
  'taken off the lower arris': 'von der unteren Kante weggenommen',
  'the full size, scaled': 'die volle Größe, verkleinert',
  'the full-size cello': 'das ganze Cello',
  'the full-size violin': 'die ganze Geige',
  'the inner nicks mark the stop': 'die inneren Kerben zeigen die Mensur',
  'the medium viola; packets for all violas state one length':
    'die mittlere Bratsche; Packungen nennen für alle Bratschen eine Länge',
  'the thinnest that plates of this family are left': 'so dünn, wie Platten dieser Familie höchstens werden',
  'the violin, a little more': 'die Geige, etwas mehr',
  'the violin, enlarged': 'die Geige, vergrößert',
  'the violin, scaled': 'die Geige, umgerechnet',
  'the violin, scaled, less since cork evens out': 'die Geige, umgerechnet, weniger, weil Kork ausgleicht',
  'twice the violin’s': 'das Doppelte der Geige',
  'under bridge and post': 'unter Steg und Stimmstock',
  'what the corner has room for; weak': 'wofür die Ecke Platz hat; schwach belegt',
  'with the board; a published table prints {} to {} and does not say':
    'mit Griffbrett; eine veröffentlichte Tabelle nennt {} bis {} und sagt es nicht',
  'with the board; a published table prints {} and does not say':
    'mit Griffbrett; eine veröffentlichte Tabelle nennt {} und sagt es nicht',
  'the table of measurements': 'Maßtabelle',
  'a common drill and nail': 'ein üblicher Bohrer und Nagel',
  'a file takes the rest once the neck is shaped': 'den Rest nimmt die Feile, wenn der Hals geformt ist',
  'a little more than on a violin': 'etwas mehr als bei der Geige',
  'a little more than the highest string has': 'etwas mehr, als die höchste Saite hat',
  'a thumb plane and a scraper take the rest': 'den Rest nehmen Daumenhobel und Ziehklinge',
  'between the published {}° and {}°': 'zwischen den veröffentlichten {}° und {}°',
  'between two old heads measured on photographs; a published rule has a {}th, {}th, {}th and {}th of the string':
    'zwischen zwei alten Köpfen, an Fotos gemessen; eine veröffentlichte Regel hat ein {}., {}., {}. und {}. der Saite',
  'brings the board to a usual thickness in the middle':
    'gibt dem Griffbrett in der Mitte eine übliche Dicke',
  'edge to beyond the purfling': 'vom Rand bis hinter die Einlage',
  'eight holes a side': 'acht Löcher je Seite',
  'ten holes a side': 'zehn Löcher je Seite',
  'few enough terraces to cut, small enough steps to gouge away':
    'wenige genug Terrassen zum Schneiden, kleine genug Stufen zum Ausstechen',
  'fits the side views of two old violin heads, measured on photographs':
    'passt zu den Seitenansichten zweier alter Geigenköpfe, an Fotos gemessen',
  'fits the side views of two old violin heads, measured on photographs, which leave it anywhere between {}° and {}°':
    'passt zu den Seitenansichten zweier alter Geigenköpfe, an Fotos gemessen, die es zwischen {}° und {}° offen lassen',
  'fits the side views of two old violin heads, measured on photographs; {}':
    'passt zu den Seitenansichten zweier alter Geigenköpfe, an Fotos gemessen; {}',
  'a published average is {}, one old head {}': 'ein veröffentlichtes Mittel ist {}, ein alter Kopf {}',
  'an even spiral draws its inner turn far too small':
    'eine gleichmäßige Spirale zeichnet den inneren Umgang viel zu klein',
  'half the published angle of the second turn': 'der halbe veröffentlichte Winkel des zweiten Umgangs',
  'half-inch plywood': 'Sperrholz von einem halben Zoll',
  'half-inch plywood; the table prints {}': 'Sperrholz von einem halben Zoll; die Tabelle nennt {}',
  'its round begins at the edge': 'seine Rundung beginnt am Rand',
  'keeps the arch from creasing at the corners': 'hält die Wölbung an den Ecken ohne Knick',
  'keeps the arch from creasing at the corners; less for a low arch':
    'hält die Wölbung an den Ecken ohne Knick; weniger bei niedriger Wölbung',
  'keeps the arch from creasing at the corners; more would dish a low arch':
    'hält die Wölbung an den Ecken ohne Knick; mehr gäbe einer niedrigen Wölbung eine Mulde',
  'leaves no paper-thin feather on the block': 'lässt am Klotz keine papierdünne Kante',
  'leaves the heel a round that a thumb finds room in':
    'lässt dem Halsfuß eine Rundung, in der ein Daumen Platz hat',
  'leaves wood over the chin, where a neck breaks': 'lässt Holz über dem Kinn, wo ein Hals bricht',
  'level into the channel': 'waagrecht in die Hohlkehle',
  'middle of twelve holes of six old instruments, measured on photographs':
    'Mitte von zwölf Löchern sechs alter Instrumente, an Fotos gemessen',
  'more than a chisel breaks through': 'mehr, als ein Stechbeitel durchbricht',
  'more than half the string, which one published rule asks for; weak':
    'mehr als die halbe Saite, die eine veröffentlichte Regel verlangt; schwach belegt',
  'room for the figures between the holes': 'Platz für die Zahlen zwischen den Löchern',
  'square to the edge less the angle of a usual neck, and {}° more; {}° as on a violin would sink it far too deep':
    'rechtwinklig zum Rand, weniger den Winkel eines üblichen Halses, und {}° mehr; {}° wie bei der Geige säße viel zu tief',
  'stays straight under two clamps': 'bleibt unter zwei Zwingen gerade',
  'the violin’s head, enlarged; none of this kind was measured, weak':
    'der Kopf der Geige, vergrößert; keiner dieser Art wurde gemessen, schwach belegt',
  'the violin’s hole, enlarged; none of this kind was measured, weak':
    'das Loch der Geige, vergrößert; keines dieser Art wurde gemessen, schwach belegt',
  'the violin’s, enlarged; weak': 'das der Geige, vergrößert; schwach belegt',
  'the violin’s, for a longer and thicker string; weak':
    'das der Geige, für eine längere und dickere Saite; schwach belegt',
  'thin plywood as laser shops stock it': 'dünnes Sperrholz, wie Laserwerkstätten es haben',
  'two layers of half-inch plywood; {} to {} from memory':
    'zwei Lagen Sperrholz von einem halben Zoll; {} bis {} aus dem Gedächtnis',
  'wood enough for a clamp to bear on': 'genug Holz, dass eine Zwinge aufliegt',
  '{} to {} in use: {} and {} for older music, {} and {} in orchestras':
    '{} bis {} in Gebrauch: {} und {} für ältere Musik, {} und {} in Orchestern',
  'a gouge takes the rest': 'den Rest nimmt das Hohleisen',
  'a third of the edge from its outside': 'ein Drittel des Rands von außen',
  'from the throat to the eye': 'von der Kehle bis zum Auge',
  'the cycloid itself': 'die Zykloide selbst',
  'scaled from the {}, there {}': 'umgerechnet von „{}“, dort {}',
  'viola large': 'Bratsche, groß',
  'viola medium': 'Bratsche, mittel',
  'viola small': 'Bratsche, klein',
  'violin 3/4': 'Geige 3/4',
  'violin 4/4': 'Geige 4/4',
  'cello 4/4': 'Cello 4/4',
  'chosen by us: {}': 'von uns gewählt: {}',
  'common practice: {}': 'üblich: {}',
  'from memory: {}': 'aus dem Gedächtnis: {}',
  'no wider than between the upper eyes': 'nicht breiter als zwischen den oberen Augen',
  'seven tenths of the body stop': 'sieben Zehntel der Korpusmensur',
  'two thirds of the body stop': 'zwei Drittel der Korpusmensur',
  'hardly wider than the neck': 'kaum breiter als der Hals',
  'a violin’s head with small shoulders; some violas have a cello’s, twice as long on a wider pegbox; weak':
    'ein Geigenkopf mit kleinen Schultern; manche Bratschen haben die eines Cellos, doppelt so lang an breiterem Wirbelkasten; schwach',
  'rounded out from the neck in about a quarter circle; weak':
    'vom Hals aus in etwa einem Viertelkreis gerundet; schwach',
};
