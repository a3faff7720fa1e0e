import type { Catalogue } from '../catalogue.ts';

/** How numbers are derived. */
export const derivedOrigins: Catalogue = {
  '{} or more': '{} oder mehr',
  '{} at the post': '{} am Stimmstock',
  '{} beside a fingerboard of {}': '{} neben einem Griffbrett von {}',
  '{} to {} once it is trimmed': '{} bis {}, wenn er beschnitten ist',
  '{} to {} into the corner blocks, the thin end of the block counted':
    '{} bis {} in die Eckklötze, das dünne Ende des Klotzes mitgezählt',
  'European spruce, {} to {}; one published range of tone wood is {} to {}':
    'Fichte, {} bis {}; veröffentlicht für Tonholz ist {} bis {}',
  'sycamore maple, {} to {}': 'Bergahorn, {} bis {}',
  'the traced outline': 'abgenommener Umriss',
  '{} of the lower': '{} des unteren',
  '{} is printed between the ends of the wings; {} % less along the centre line, as measured on four violins':
    '{} ist zwischen den Flügelenden angegeben; längs der Mittellinie {} % weniger, wie an vier Geigen gemessen',
  'from memory': 'aus dem Gedächtnis',
  'published: {}': 'veröffentlicht: {}',
  '{} mm on the sides to be shaped, common practice': '{} mm auf den Seiten, die geformt werden, üblich',
  'Mersenne’s law; {} kg': 'Gesetz von Mersenne; {} kg',
  'a middle string over the line of its neighbours, the least of both':
    'eine mittlere Saite über der Linie ihrer Nachbarn, das Kleinere von beiden',
  'a sixth of the string, common practice': 'ein Sechstel der Saite, üblich',
  'above the lower end of the body': 'über dem unteren Ende des Korpus',
  'all four; {} kg': 'alle vier; {} kg',
  'all six ribs along their outer faces': 'alle sechs Zargen längs ihrer Außenflächen',
  'along the gluing face': 'längs der Leimfläche',
  'along the outer face of the rib': 'längs der Außenfläche der Zarge',
  'along the spiral from the top to the eye': 'längs der Spirale von oben bis zum Auge',
  'arch height less channel height': 'Wölbungshöhe weniger Höhe der Hohlkehle',
  'back of the neck under the chin behind the gluing face, before it is shaped':
    'Halsrücken unter dem Kinn hinter der Leimfläche, vor dem Formen',
  'behind the gluing face: midway between front and floor, or moved from there to clear the strings':
    'hinter der Leimfläche: mitten zwischen Vorderkante und Grund, oder von dort verschoben, damit die Saiten frei gehen',
  'beside the post, which carries it to the back': 'neben dem Stimmstock, der ihn zum Boden trägt',
  'between both parts over the bridge': 'zwischen beiden Teilen über dem Steg',
  'bottom of the slot of string {} over the top’s crest, {} mm from the middle':
    'Grund der Kerbe der {}. Saite über dem Scheitel der Decke, {} mm von der Mitte',
  'bridge line to the middle of the lower eye, along': 'Steglinie bis Mitte des unteren Auges, längs',
  'bridge line to the middle of the upper eye, along': 'Steglinie bis Mitte des oberen Auges, längs',
  'bridge line to the point of the outer nick, along; it lies higher than the inner one on the holes measured':
    'Steglinie bis zur Spitze der äußeren Kerbe, längs; sie liegt an den gemessenen Löchern höher als die innere',
  'by the rule of pitch and wall': 'nach der Regel von Abstand und Holz',
  'by which a hole is turned about its inner nick from how it is drawn, its lower eye toward the edge':
    'um so viel ist ein Loch um seine innere Kerbe gedreht, das untere Auge zum Rand',
  'centre line to the middle of the lower eye by the same rule':
    'Mittellinie bis Mitte des unteren Auges nach derselben Regel',
  'centre line to the middle of the lower eye, from its distance to the edge':
    'Mittellinie bis Mitte des unteren Auges, aus seinem Abstand zum Rand',
  'centre line to the middle of the upper eye': 'Mittellinie bis Mitte des oberen Auges',
  'centre line to the point of the inner nick': 'Mittellinie bis zur Spitze der inneren Kerbe',
  'centre line to the point of the inner nick, over the arch':
    'Mittellinie bis zur Spitze der inneren Kerbe, über die Wölbung',
  'centre of mass': 'Schwerpunkt',
  'channel end to channel end': 'Ende bis Ende der Hohlkehle',
  'channel to channel': 'Hohlkehle zu Hohlkehle',
  'check width of the form at the lower bout': 'Prüfbreite der Form am Unterbügel',
  'check width of the form at the waist': 'Prüfbreite der Form am Mittelbügel',
  'circle nearest to the four strings (rms {} mm), its middle {} mm toward the lowest':
    'der Kreis, der den vier Saiten am nächsten kommt (rms {} mm), seine Mitte {} mm zur tiefsten hin',
  'circle over the crest, tangent to what brings it level into the channel':
    'Kreis über dem Scheitel, tangierend an das, was ihn waagrecht in die Hohlkehle führt',
  'circle through both channel ends and the crest': 'Kreis durch beide Enden der Hohlkehle und den Scheitel',
  'closed body less blocks and linings; bar, post and neck not counted':
    'geschlossener Korpus ohne Klötze und Reifchen; Balken, Stimmstock und Hals nicht gezählt',
  'crown in the middle of the bridge, over the top, from each string’s own height':
    'Rundung in der Stegmitte über der Decke, aus der Höhe jeder Saite',
  'crown of the board over the top': 'Rundung des Griffbretts über der Decke',
  'crown of the board’s end over the edge': 'Rundung des Griffbrettendes über dem Rand',
  'crown of the strings over the top at the stop': 'Rundung der Saiten über der Decke an der Mensur',
  'depth of the mitre of the inner line inside the corner end':
    'Tiefe der Gehrung der inneren Linie hinter dem Eckenende',
  'depth of the mortise at the back': 'Tiefe der Halstasche am Boden',
  'diameter of the hole at the wall opposite the peg’s head':
    'Durchmesser des Lochs in der Wand gegenüber dem Wirbelgriff',
  'diameter of the reamed hole at the inside of the lower block':
    'Durchmesser des geriebenen Lochs innen am Unterklotz',
  'distance of the eyes by a published rule of dividers ({}), pins {} mm of {} inside the ends':
    'Abstand der Augen nach einer veröffentlichten Zirkelregel ({}), Stifte {} mm von {} innerhalb der Enden',
  'edge height less scoop depth': 'Randhöhe weniger Tiefe der Kehle',
  'edge of the plate to inner outline': 'Plattenrand bis Innenumriss',
  'edge to edge': 'Rand zu Rand',
  'end of the outer rib, from its own face; {} where it goes over uncut':
    'Ende der äußeren Zarge, ab ihrer eigenen Fläche; {}, wo sie ungeschnitten darübergeht',
  'end of the waist rib, from its own face; {} where it goes over uncut':
    'Ende der Mittelzarge, ab ihrer eigenen Fläche; {}, wo sie ungeschnitten darübergeht',
  'end on the back: how it rises outward from the centre line':
    'Ende am Boden: wie es von der Mittellinie nach außen steigt',
  'end on the back: how it rises toward the neck': 'Ende am Boden: wie es zum Hals hin steigt',
  'end under the top: how it rises outward from the centre line':
    'Ende unter der Decke: wie es von der Mittellinie nach außen steigt',
  'end under the top: how it rises toward the neck': 'Ende unter der Decke: wie es zum Hals hin steigt',
  'finished, across the body': 'fertig, quer zum Korpus',
  'finished, along the centre line': 'fertig, längs der Mittellinie',
  'flat edge of the roughed-out plate': 'flacher Rand der roh gewölbten Platte',
  'flat hole off the plan one at most, laid on it to fit best':
    'abgewickeltes Loch höchstens neben dem Grundriss, bestmöglich aufgelegt',
  'floor of the mortise out of the square to the edge, deeper toward the back':
    'Grund der Halstasche aus dem Winkel zum Rand, zum Boden hin tiefer',
  'for clamps, between the backs of both cauls of the waist':
    'für Zwingen, zwischen den Rücken beider Mittelzulagen',
  'found on the channel line, from the lower end': 'auf der Linie der Hohlkehle gefunden, vom unteren Ende',
  'fret to end, so that its gap before the saddle is left':
    'vom Sättelchen bis zum Ende, sodass seine Lücke vor dem Untersattel bleibt',
  'from end to end on the centre line': 'von Ende zu Ende auf der Mittellinie',
  'from inside to inside along its middle, before its ends are cut to the slopes':
    'von innen zu innen längs seiner Mitte, bevor die Enden schräg geschnitten werden',
  'from midway toward the back': 'aus der Mitte zum Boden hin',
  'from the centre line to the inner face, the same share of the half width at both bouts':
    'von der Mittellinie bis zur Innenfläche, an beiden Bügeln derselbe Anteil der halben Breite',
  'glue face across the bar, falling away outward': 'Leimfläche quer zum Balken, nach außen fallend',
  'glue face, from its lowest to its highest place': 'Leimfläche, von der tiefsten zur höchsten Stelle',
  'gluing face of the board to that of the back, along the face of the root':
    'Leimfläche des Griffbretts bis zu der des Bodens, längs der Fläche des Halsfußes',
  'gluing face of the board to the plane of the edge': 'Leimfläche des Griffbretts zur Ebene des Rands',
  'greatest length of the form': 'größte Länge der Form',
  'greatest rib height and {} mm, common practice': 'größte Zargenhöhe und {} mm, üblich',
  'greatest width of the form': 'größte Breite der Form',
  'half a foot behind the treble foot': 'einen halben Fuß hinter dem Diskantfuß',
  'height and {} mm, common practice': 'Höhe und {} mm, üblich',
  'height of the long arch above the channel': 'Höhe der Längswölbung über der Hohlkehle',
  'height of the narrowest place': 'Höhe der schmalsten Stelle',
  'height of the outermost tip': 'Höhe der äußersten Spitze',
  'height of the widest place': 'Höhe der breitesten Stelle',
  'highest at the bridge, falling to both ends as it is trimmed':
    'am höchsten am Steg, zu beiden Enden fallend, wie er beschnitten ist',
  'highest place of the long arch, from the lower end': 'höchste Stelle der Längswölbung, vom unteren Ende',
  'how both ribs open at the corner': 'wie sich beide Zargen an der Ecke öffnen',
  'how far the block holds the lining at full thickness, with wood left before the corner':
    'wie weit der Klotz das Reifchen in voller Stärke hält, mit Holz vor der Ecke',
  'how far the lower corner block reaches under a hole until it is trimmed inside':
    'wie weit der untere Eckklotz unter ein Loch reicht, bis er innen beschnitten ist',
  'how far the upper ribs may stop short of the centre line: {} mm inside the mortise, common practice':
    'wie weit die Oberzargen vor der Mittellinie enden dürfen: {} mm innerhalb der Halstasche, üblich',
  'in one piece across the centre line, {} mm at each end, common practice':
    'in einem Stück über die Mittellinie, {} mm an jedem Ende, üblich',
  'in the middle, over the edge of the top': 'in der Mitte, über dem Deckenrand',
  'inside the edge of the plate': 'innerhalb des Plattenrands',
  'jaws of the clamp, open from the back of the caul to the edge of the clamp hole':
    'Backen der Zwinge, offen vom Rücken der Zulage bis zum Rand des Zwingenlochs',
  'laid flat, along the middle of its thickness': 'abgewickelt, längs der Mitte ihrer Stärke',
  'laid flat, from end to end': 'abgewickelt, von Ende zu Ende',
  'leaning so far toward the tail it would halve the break; by habit its back stands square to the edge':
    'so weit nach unten geneigt, halbierte er den Knick; üblich steht sein Rücken rechtwinklig zum Rand',
  'least distance from a hole to the edge of the top': 'kleinster Abstand eines Lochs zum Deckenrand',
  'least room of the {} string beside peg {}, on its way to peg {}':
    'kleinster Platz der {}-Saite neben Wirbel {}, auf dem Weg zu Wirbel {}',
  'least wood round the clamp holes': 'geringstes Holz um die Zwingenlöcher',
  'length laid flat and {} mm at each end, common practice':
    'abgewickelte Länge und {} mm an jedem Ende, üblich',
  'length of the point beyond the mitre, as far as the corner has room':
    'Länge der Spitze über die Gehrung hinaus, soweit die Ecke Platz hat',
  'lower end of the body to the golden mean between both golden means of its length ({})':
    'unteres Ende des Korpus bis zum goldenen Schnitt zwischen beiden goldenen Schnitten seiner Länge ({})',
  'lowest rib less {} mm, so that both edges stay free; from memory':
    'niedrigste Zarge weniger {} mm, damit beide Kanten frei bleiben; aus dem Gedächtnis',
  'mean of both sides, half way along': 'Mittel beider Seiten, auf halbem Weg',
  'meets what is given of the set as nearly as one straight board can':
    'kommt dem Angegebenen so nahe, wie ein gerades Griffbrett kann',
  'middle of the eye behind the gluing face': 'Mitte des Auges hinter der Leimfläche',
  'middle of the hole over the edge of the ribs toward the back: half way up, common practice':
    'Mitte des Lochs über der Zargenkante zum Boden: auf halber Höhe, üblich',
  'middle of the post, under the highest string’s side':
    'Mitte des Stimmstocks, auf der Seite der höchsten Saite',
  'middle of the upper to middle of the lower eye': 'Mitte des oberen bis Mitte des unteren Auges',
  'middle to middle of the eyes, laid flat': 'Mitte zu Mitte der Augen, abgewickelt',
  'narrowest place, exact on the arcs': 'schmalste Stelle, genau auf den Bögen',
  'neck with board {} mm from the nut, where a gauge stands':
    'Hals mit Griffbrett {} mm vom Obersattel, wo eine Schablone steht',
  'no board is given: arch and allowance': 'kein Brett angegeben: Wölbung und Zugabe',
  'nut to bridge along the crown of the strings': 'Obersattel bis Steg längs der Saitenrundung',
  'nut to the end of the inside on the front': 'Obersattel bis zum Ende des Inneren, vorn',
  'nut to the end of the throat, straight': 'Obersattel bis zum Ende der Kehle, gerade',
  'nut to the face of the root, along the gluing face':
    'Obersattel bis zur Fläche des Halsfußes, längs der Leimfläche',
  'nut to the inside of the pegbox, straight': 'Obersattel bis ins Innere des Wirbelkastens, gerade',
  'nut to the middle of the eye': 'Obersattel bis Mitte des Auges',
  'nut to the upper end of the top': 'Obersattel bis oberes Ende der Decke',
  'of the root at the edge of the top': 'des Halsfußes am Deckenrand',
  'of the root at the gluing face: as given, or flush with the board carried on':
    'des Halsfußes an der Leimfläche: wie angegeben, oder bündig mit dem verlängerten Griffbrett',
  'of the top’s wood': 'aus dem Holz der Decke',
  'of the upper, tighter arc of the heel': 'des oberen, engeren Bogens am Halsfuß',
  'on the top, the bridge square to the edge': 'auf die Decke, der Steg rechtwinklig zum Rand',
  'opening at the tip of the lower wing, in proportion to the upper':
    'Öffnung an der Spitze des unteren Flügels, im Verhältnis zum oberen',
  'opening beside the lower eye': 'Öffnung neben dem unteren Auge',
  'opening beside the upper eye': 'Öffnung neben dem oberen Auge',
  'opening of one hole laid flat from the arch, with its nicks':
    'Öffnung eines von der Wölbung abgewickelten Lochs, mit seinen Kerben',
  'opening of one hole, without its nicks, in plan': 'Öffnung eines Lochs, ohne seine Kerben, im Grundriss',
  'over the bar': 'über dem Balken',
  'over the outermost tips': 'über die äußersten Spitzen',
  'overhang of the plate beside the end of the rib corner, square to its sides':
    'Überstand der Platte neben dem Ende der Zargenecke, rechtwinklig zu ihren Seiten',
  'perimeter; the shape is solved from these with the habit of the family':
    'Umfang; die Form folgt daraus mit dem Üblichen der Familie',
  'radius across the crest': 'Radius quer über den Scheitel',
  'radius across, half way along, once it is scooped': 'Radius quer, auf halbem Weg, mit Hohlzug',
  'radius inside the bend': 'Radius innen an der Biegung',
  'radius of the quarter circle of the spiral that starts at the {}':
    'Radius des Viertelkreises der Spirale, der hier beginnt: {}',
  'bottom, by the throat': 'unten, an der Kehle',
  'radius with which the arch leaves the channel': 'Radius, mit dem die Wölbung die Hohlkehle verlässt',
  'rim of the lower eye to the nearest place of the edge':
    'Rand des unteren Auges bis zur nächsten Stelle des Randes',
  'room from the hole to the floor': 'Platz vom Loch bis zum Grund',
  'root into the block itself, at the back': 'Halsfuß im Klotz selbst, am Boden',
  'root into the block itself, at the top': 'Halsfuß im Klotz selbst, an der Decke',
  'root to gluing face that would sink the root alike all the way':
    'Winkel zur Leimfläche, bei dem der Halsfuß überall gleich tief säße',
  'round of the back behind the scroll': 'Rundung des Rückens hinter der Schnecke',
  'round of the front edge of the pegbox': 'Rundung der Vorderkante des Wirbelkastens',
  'round one hole, without its nicks, in plan': 'um ein Loch, ohne seine Kerben, im Grundriss',
  'round the edge of the plate': 'um den Rand der Platte',
  'side and rise of the round, in the middle': 'Flanke und Stich der Rundung, in der Mitte',
  'slope of the strings before the bridge': 'Neigung der Saiten vor dem Steg',
  'slope of the strings behind the bridge, toward the saddle':
    'Neigung der Saiten hinter dem Steg, zum Untersattel',
  'slope of the top under a hole at its steepest': 'Neigung der Decke unter einem Loch, am steilsten',
  'sound holes not counted': 'F-Löcher nicht gezählt',
  'station {}, along the back and the spiral from the tip of the chin':
    'Stelle {}, längs Rücken und Spirale ab der Spitze des Kinns',
  'steepest slope of the cycloid before fullness': 'steilste Neigung der Zykloide vor der Völligkeit',
  'stem at its nicks, laid flat': 'Schaft an seinen Kerben, abgewickelt',
  'stretching left in the flat template, at most': 'Dehnung, die in der flachen Schablone bleibt, höchstens',
  'the {} string, equal steps': 'die {}-Saite, gleichschwebend',
  'the same with legs alike, where the bridge halves the break':
    'dasselbe bei gleichen Schenkeln, wo der Steg den Knick halbiert',
  'thinnest place, {} mm above the lower end, {} mm from the centre line':
    'dünnste Stelle, {} mm über dem unteren Ende, {} mm von der Mittellinie',
  'thinnest wall beside the floor, {} mm from the nut': 'dünnste Wand neben dem Grund, {} mm vom Obersattel',
  'tip of the chin over the top to the throat': 'Spitze des Kinns über oben bis zur Kehle',
  'tip to tip': 'Spitze zu Spitze',
  'to the inner face, under the lowest string’s side':
    'bis zur Innenfläche, auf der Seite der tiefsten Saite',
  'top over its edge, at the bridge': 'Decke über ihrem Rand, am Steg',
  'turns behind against the front': 'Umgänge hinten gegen vorn',
  'two on every bout': 'zwei an jedem Bügel',
  'under the end, in the middle': 'unter dem Ende, in der Mitte',
  'upper end of the body to the line of the lower eyes by the same rule':
    'oberes Ende des Korpus bis zur Linie der unteren Augen nach derselben Regel',
  'upper end of the top to the board’s end, along the body':
    'oberes Ende der Decke bis zum Griffbrettende, längs des Korpus',
  'volume times density': 'Volumen mal Dichte',
  'what its packet’s pull says, at {} Hz': 'was der Zug auf der Packung sagt, bei {} Hz',
  'what pulls the top of a square bridge toward the board; its feet must hold it by friction':
    'was die Oberkante eines rechtwinkligen Stegs zum Griffbrett zieht; seine Füße müssen es durch Reibung halten',
  'what the middle has where the round is the same all along':
    'was die Mitte hat, wo die Rundung überall gleich ist',
  'what the mortise takes of an upper rib that runs to the centre line, laid flat, at its edge toward the back':
    'was die Halstasche einer Oberzarge nimmt, die bis zur Mittellinie läuft, abgewickelt, an der Kante zum Boden',
  'what the mortise takes of an upper rib that runs to the centre line, laid flat, at its edge toward the top':
    'was die Halstasche einer Oberzarge nimmt, die bis zur Mittellinie läuft, abgewickelt, an der Kante zur Decke',
  'where the hollow begins; from memory {} mm beyond the edge on a violin':
    'wo die Aushöhlung beginnt; aus dem Gedächtnis {} mm hinter dem Rand bei der Geige',
  'where the outer lines meet, inside the corner end':
    'wo sich die äußeren Linien treffen, hinter dem Eckenende',
  'widest place, exact on the arcs': 'breiteste Stelle, genau auf den Bögen',
  'width at station {}, {}': 'Breite an Stelle {}, {}',
  chin: 'Kinn',
  'over the ears': 'über die Ohren',
  'width of the block between both rib ends; {} where they meet on it':
    'Breite des Klotzes zwischen beiden Zargenenden; {}, wo sie sich auf ihm treffen',
  'width of the rib corner': 'Breite der Zargenecke',
  'wood in front of the hole': 'Holz vor dem Loch',
  'wood of the block behind the mortise, where it is least':
    'Holz des Klotzes hinter der Halstasche, wo es am wenigsten ist',
  'wood of the block on either side of the mortise, at the top':
    'Holz des Klotzes auf jeder Seite der Halstasche, an der Decke',
  'wood of the finished plate, sound holes and bar not counted':
    'Holz der fertigen Platte, F-Löcher und Balken nicht gezählt',
  'wood under the groove, before the channel is cut':
    'Holz unter dem Graben, bevor die Hohlkehle geschnitten ist',
  'wood under the middle of the bar at the bridge, the bar not counted':
    'Holz unter der Balkenmitte am Steg, ohne den Balken',
  'wood under the middle of the post, square to the outside':
    'Holz unter der Mitte des Stimmstocks, rechtwinklig zur Außenseite',
  '{}, printed for the channel of the waist': '{}, für die Hohlkehle des Mittelbügels genannt',
  '{}, printed for the post': '{}, für den Stimmstock genannt',
  'author not named, no year given': 'ohne Verfasser, ohne Jahr',
};
