import type { Catalogue } from '../catalogue.ts';

/** What is noted beside the pieces of head, neck and set-up, sentence by sentence. */
export const neckNotes: Catalogue = {
  'Fit the cheeks of the mortise first, then the depth: a tenth of a millimetre at one cheek turns the end of the board by ten times as much.':
    'Zuerst die Wangen der Halstasche anpassen, dann die Tiefe: ein Zehntelmillimeter an einer Wange dreht das Ende des Griffbretts um das Zehnfache.',
  'Stands over the board on a flat bench, at the nut: when its legs touch the bench, width, sides, round and thickness are right.':
    'Steht über dem Griffbrett auf ebener Bank, am Obersattel: berühren die Beine die Bank, stimmen Breite, Seiten, Rundung und Dicke.',
  'Checked before the board is scooped; the round is a radius of {} mm.':
    'Geprüft vor dem Hohlzug; die Rundung hat einen Radius von {} mm.',
  'Stands over the board on a flat bench, {} mm from the nut: when its legs touch the bench, width, sides, round and thickness are right.':
    'Steht über dem Griffbrett auf ebener Bank, {} mm vom Obersattel: berühren die Beine die Bank, stimmen Breite, Seiten, Rundung und Dicke.',
  'Held under the end of the board with its shoulders on the flat underside.':
    'Unter das Ende des Griffbretts gehalten, die Schultern an der ebenen Unterseite.',
  'The hollow begins {} mm from the nut, beyond the edge of the top, and runs out there; {} mm stay in the middle.':
    'Die Aushöhlung beginnt {} mm vom Obersattel, jenseits des Deckenrands, und läuft dort aus; in der Mitte bleiben {} mm.',
  'Gouge toward the end, the board held in a cradle.':
    'Mit dem Hohleisen zum Ende hin, das Griffbrett in einer Wiege gehalten.',
  'As long as the board.': 'So lang wie das Griffbrett.',
  'Laid along the line of the lowest string from nut to end it touches all along when the board is hollowed by {} mm half way; turned over, along the highest string, by {} mm.':
    'Längs der tiefsten Saite vom Obersattel zum Ende gelegt, berührt es überall, wenn das Griffbrett auf halber Länge um {} mm hohl ist; gewendet, längs der höchsten Saite, um {} mm.',
  'Between them it changes evenly, {} mm in the middle; the round half way along is then R {}.':
    'Dazwischen ändert es sich gleichmäßig, {} mm in der Mitte; die Rundung auf halber Länge ist dann R {}.',
  'With the same round all along the middle would have {} mm.':
    'Mit überall gleicher Rundung hätte die Mitte {} mm.',
  'Scrape and plane with the grain; check with a true straight-edge too: paper is not straight to a tenth of a millimetre over this length, cut it from plywood or metal.':
    'Mit der Faser schaben und hobeln; auch mit einem guten Lineal prüfen: Papier ist auf diese Länge nicht auf ein Zehntel gerade, aus Sperrholz oder Metall schneiden.',
  'Laid on the back with both shoulders along the edge and the marks on the joint: draw round the button.':
    'Auf den Boden gelegt, beide Schultern am Rand, die Marken auf der Fuge: das Zäpfchen umreißen.',
  'The heel of the neck is finished flush with it.': 'Der Halsfuß wird bündig damit fertig gemacht.',
  'Laid on the top with its upper edge along the edge of the plate and the marks on the joint: knife round the notch, then saw inside the line and pare to it.':
    'Auf die Decke gelegt, die obere Kante am Rand der Platte, die Marken auf der Fuge: die Kerbe mit dem Messer umreißen, dann innerhalb der Linie sägen und auf sie stechen.',
  'It is a little wider at its floor than at its mouth, as the neck is: the root goes in from above.':
    'Sie ist am Grund etwas breiter als an der Mündung, wie der Hals: der Halsfuß kommt von oben hinein.',
  'Check against the root that was cut, not against the sheet: {} mm of play is too much.':
    'Am fertigen Halsfuß prüfen, nicht am Blatt: {} mm Spiel sind zu viel.',
  'The mortise narrows to {} mm at the back and deepens to {} mm; {} mm of the block stay behind it.':
    'Die Halstasche wird zum Boden hin auf {} mm schmaler und {} mm tief; {} mm des Klotzes bleiben dahinter.',
  'Stood on the button in the middle of the mortise: its slanting edge is the floor.':
    'In der Mitte der Halstasche auf das Zäpfchen gestellt: die schräge Kante ist der Grund.',
  'Lay a straight-edge along the edge of the top across the mortise; the floor is right when the line comes level with it and the upper edge with the edge of the top.':
    'Ein Lineal längs des Deckenrands über die Halstasche legen; der Grund stimmt, wenn die Linie bündig damit ist und die obere Kante mit dem Deckenrand.',
  'The floor leans {}° out of the square, deeper toward the back, so that the root at {}° brings the board to {}° over the edge.':
    'Der Grund steht {}° aus dem Winkel, zum Boden hin tiefer, so dass der Halsfuß mit {}° das Griffbrett auf {}° über dem Rand bringt.',
  'The long arm lies on the gluing face of the neck, the short one on the face of the root: {}° between them.':
    'Der lange Arm liegt auf der Leimfläche des Halses, der kurze auf der Stirn des Halsfußes: {}° dazwischen.',
  'With the neck at {}° it sinks the root from {} mm at the top to {} mm at the back; {}° would sink it alike.':
    'Mit dem Hals auf {}° geht der Halsfuß von {} mm an der Decke auf {} mm am Boden; {}° gäbe überall gleiche Tiefe.',
  'Stands across the top on the bridge line, {} mm from the upper end, the mark on the joint.':
    'Steht quer über der Decke auf der Steglinie, {} mm vom oberen Ende, die Marke auf der Fuge.',
  'A straight-edge along the middle of the board lies on the floor of the notch; each mark beside it is {} mm more or less.':
    'Ein Lineal längs der Mitte des Griffbretts liegt auf dem Grund der Kerbe; jede Marke daneben ist {} mm mehr oder weniger.',
  'It comes to a bridge {} mm high in the middle.': 'Das führt zu einem Steg von {} mm Höhe in der Mitte.',
  'Its foot is the finished arch of the top, {} mm over the edge.':
    'Ihr Fuß ist die fertige Wölbung der Decke, {} mm über dem Rand.',
  'Usual tolerance {} mm, from memory; the projection sinks by a few tenths once the strings pull.':
    'Übliche Abweichung {} mm, aus dem Gedächtnis; die Projektion sinkt um einige Zehntel, sobald die Saiten ziehen.',
  'Held flat against the side of neck and board, the lettered end toward the nut, its foot on the edge of the top beside the mortise with the outer side of the foot level with the end of the plate.':
    'Flach an die Seite von Hals und Griffbrett gehalten, das beschriftete Ende zum Obersattel, der Fuß neben der Halstasche auf dem Deckenrand, die Außenseite des Fußes bündig mit dem Ende der Platte.',
  'When its edge covers the glue line all along, overstand and angle are both right; {} mm either way is usual, from memory.':
    'Deckt ihre Kante überall die Leimfuge, stimmen Überstand und Winkel; {} mm hin oder her sind üblich, aus dem Gedächtnis.',
  'Turn it over for the other side.': 'Für die andere Seite wenden.',
  'Stands across the top against the end of the board, {} mm from the upper end of the body: the middle of the board comes level with its upper edge.':
    'Steht quer über der Decke am Ende des Griffbretts, {} mm vom oberen Ende des Korpus: die Mitte des Griffbretts ist bündig mit ihrer oberen Kante.',
  'It is what the projection brings; where it does not agree with the projection gauge, the board is bent or its thickness is off.':
    'Das folgt aus der Projektion; wo es nicht mit der Projektionslehre übereinstimmt, ist das Griffbrett krumm oder seine Dicke falsch.',
  'Stands on the edges of the top over the end of the board, {} mm from the upper end.':
    'Steht auf den Deckenrändern über dem Ende des Griffbretts, {} mm vom oberen Ende.',
  'With the neck right, the board fills its round, both feet stand, and the edges of the body come to the two lines alike: the neck is on centre, as high as it must be, and not twisted.':
    'Steht der Hals richtig, füllt das Griffbrett die Rundung, stehen beide Füße und kommen die Ränder des Korpus gleich an die zwei Linien: der Hals ist mittig, so hoch wie er sein muss und nicht verdreht.',
  'A light under one foot is twist.': 'Licht unter einem Fuß heißt Verdrehung.',
  'Lines {} mm apart.': 'Linien {} mm voneinander.',
  'One millimetre off the centre at the bridge is {}° at the root.':
    'Ein Millimeter neben der Mitte am Steg sind {}° am Halsfuß.',
  'Lay the straight edge of the neck on the planed gluing face of the fingerboard and the line on the nut line; draw round it and along the slots, prick the eye and the four peg holes.':
    'Die gerade Kante des Halses auf die gehobelte Leimfläche des Griffbretts legen, die Linie auf die Sattellinie; umreißen und durch die Schlitze zeichnen, das Auge und die vier Wirbellöcher anstechen.',
  'Turn it over on the same two lines for the other side: outlines must meet square across the block.':
    'Auf denselben zwei Linien für die andere Seite wenden: die Umrisse müssen sich quer über den Klotz rechtwinklig treffen.',
  'It shows the side that lies right as one looks at the front; the block needs {} mm of depth at the head.':
    'Es zeigt die Seite, die von vorn gesehen rechts liegt; der Klotz braucht am Kopf {} mm Tiefe.',
  'The numbered marks are the stations of the widths, the same as on the wrap template and in the table of widths.':
    'Die bezifferten Marken sind die Stellen der Breiten, dieselben wie auf der Wickelschablone und in der Tabelle der Breiten.',
  'Drill the peg holes small from both sides before the outline is sawn; saw outside the line and file to it, square across.':
    'Die Wirbellöcher klein von beiden Seiten bohren, bevor der Umriss gesägt wird; außerhalb der Linie sägen und auf sie feilen, rechtwinklig hindurch.',
  'The spiral is drawn through the slots; the bridges between them are joined by hand.':
    'Die Spirale wird durch die Schlitze gezeichnet; die Stege dazwischen von Hand verbinden.',
  'Saws, gouges, chisels and knives cut: clamp the neck block, keep both hands behind the edge, cut away from yourself.':
    'Sägen, Hohleisen, Stechbeitel und Messer schneiden: den Halsklotz spannen, beide Hände hinter der Schneide, vom Körper weg schneiden.',
  'Drill and reamer: clamp the head, wear eye protection, follow the manual.':
    'Bohrer und Reibahle: den Kopf spannen, Augenschutz tragen, der Anleitung folgen.',
  'Cut it from thin card or drawing film and bend it round the sawn head, its line on the centre line of the block: this end at the tip of the chin, up the back, over the top and down the front of the scroll to the throat, {} mm in all.':
    'Aus dünnem Karton oder Zeichenfolie schneiden und um den gesägten Kopf biegen, die Linie auf der Mittellinie des Klotzes: dieses Ende an der Kinnspitze, den Rücken hinauf, über den Scheitel und vorn die Schnecke hinab bis zur Kehle, im Ganzen {} mm.',
  'At every numbered mark it must meet that of the side template; where it creeps, card of {} mm gains about {} mm on the way, shift it back to the marks.':
    'An jeder bezifferten Marke muss sie die der Seitenschablone treffen; wo sie wandert – Karton von {} mm gewinnt unterwegs etwa {} mm –, auf die Marken zurückschieben.',
  'Draw along both edges.': 'An beiden Kanten anzeichnen.',
  'What lies farther in along the spiral is set off with the width comb, from the table of widths.':
    'Was weiter innen an der Spirale liegt, wird mit dem Breitenkamm abgetragen, nach der Tabelle der Breiten.',
  'Of thin card, laid on the sawn front edge of the pegbox its scored line where the nut ends, the short piece beyond it on the neck, its middle on the centre line: {} mm wide at the nut, {} mm at the throat, walls {} mm and {} mm.':
    'Aus dünnem Karton, auf die gesägte Vorderkante des Wirbelkastens gelegt, die angerissene Linie, wo der Obersattel endet, das kurze Stück jenseits davon auf dem Hals, die Mitte auf der Mittellinie: {} mm breit am Obersattel, {} mm an der Kehle, Wände {} mm und {} mm.',
  'Draw round it and round the opening.': 'Außen und in der Öffnung umreißen.',
  'The opening starts {} mm from the nut and ends {} mm of wood before the throat.':
    'Die Öffnung beginnt {} mm vom Obersattel und endet {} mm Holz vor der Kehle.',
  'To look at and to measure from.': 'Zum Ansehen und zum Abmessen.',
  'Left the front, right the back, as they are seen; the widths are held at the numbered stations and run evenly between them.':
    'Links von vorn, rechts von hinten gesehen; die Breiten gelten an den bezifferten Stellen und verlaufen dazwischen gleichmäßig.',
  'Along: on the line from the tip of the chin up the back, over the top and along the spiral; behind: the gluing face of the fingerboard; to eye: straight to its middle.':
    'Längs: auf der Linie von der Kinnspitze den Rücken hinauf, über den Scheitel und längs der Spirale; dahinter: hinter der Leimfläche des Griffbretts; zum Auge: gerade zu dessen Mitte.',
  'The first numbers belong to the pegbox’s back; its front has the width of its own template.':
    'Die ersten Nummern gehören zum Rücken des Wirbelkastens; die Vorderseite hat die Breite ihrer eigenen Schablone.',
  'Where it slips over with no play the wood is right; where it does not go on, wood is still to go.':
    'Wo er ohne Spiel darübergeht, stimmt das Holz; wo er nicht hinaufgeht, muss noch Holz weg.',
  'Laid into the opening with its grip toward the nut: the right tongue is the inside on the front, {} mm at the nut and {} mm at the throat, the left one at the floor, {} mm and {} mm.':
    'In die Öffnung gelegt, der Griff zum Obersattel: die rechte Zunge ist das Innere an der Vorderseite, {} mm am Obersattel und {} mm an der Kehle, die linke am Grund, {} mm und {} mm.',
  'Both walls are right when a tongue goes in up to the grip without play; the walls lean inward, {} mm each.':
    'Beide Wände stimmen, wenn eine Zunge bis zum Griff ohne Spiel hineingeht; die Wände neigen sich nach innen, je {} mm.',
  'Stands on its edge in the middle of the pegbox, its smaller end at the nut.':
    'Steht hochkant in der Mitte des Wirbelkastens, das kleinere Ende am Obersattel.',
  'When it touches the floor all along, its upper edge lies level with the front edges of the walls and {} mm of wood is left to the back.':
    'Berührt sie überall den Grund, liegt ihre obere Kante bündig mit den Vorderkanten der Wände, und hinten bleiben {} mm Holz.',
  'Where it rides, wood is still to go.': 'Wo sie aufsitzt, muss noch Holz weg.',
  'Measure the floor with a calliper before the last cuts.':
    'Den Grund vor den letzten Schnitten mit dem Stärkenmesser messen.',
  'To look at when the peg holes are drilled and the strings put on.':
    'Zum Ansehen beim Bohren der Wirbellöcher und Aufziehen der Saiten.',
  'A string is drawn straight from the top of the nut to the front of its peg; it is wound toward the side of the peg’s head, so that its last turns lie against the wall there.':
    'Eine Saite ist gerade von der Oberseite des Obersattels zur Vorderseite ihres Wirbels gezeichnet; sie wird zum Kopf des Wirbels hin gewickelt, so dass die letzten Windungen dort an der Wand liegen.',
  'Turn the head of each peg to the side that is lettered.':
    'Den Kopf jedes Wirbels zu der Seite drehen, die beschriftet ist.',
  'Room is counted between the string and the side of a peg that it passes.':
    'Platz zählt zwischen der Saite und der Seite eines Wirbels, an dem sie vorbeigeht.',
  'Where the list says that one touches, move the pegs before anything is drilled.':
    'Wo die Liste sagt, dass eine berührt, die Wirbel versetzen, bevor gebohrt wird.',
  'Hook it on the front edge at the nut, lay it on the outside of the wall and swing it until a hole lies over the height that the side template pricked: middle of each hole from the nut, straight.':
    'An der Vorderkante am Obersattel einhängen, außen an die Wand legen und schwenken, bis ein Loch auf der Höhe liegt, die die Seitenschablone angestochen hat: Mitte jedes Lochs vom Obersattel, gerade gemessen.',
  'Heads of the pegs: G left, E right, D left, A right, looking at the front with the scroll up.':
    'Köpfe der Wirbel: G links, E rechts, D links, A rechts, von vorn gesehen, Schnecke oben.',
  'Drill small and square to the middle of the head from both sides, then ream.':
    'Klein und rechtwinklig zur Mitte des Kopfs von beiden Seiten bohren, dann aufreiben.',
  'A finished peg pushed in sideways touches both edges all along: its taper is {} in {}, the same as the reamer’s.':
    'Ein fertiger Wirbel, seitlich eingeschoben, berührt beide Kanten überall: sein Konus ist {} auf {}, wie der der Reibahle.',
  'The figures are diameters.': 'Die Zahlen sind Durchmesser.',
  'At the outside of the wall on the side of its head each peg measures {} mm; at the other wall {}, {}, {}, {} mm, from the nut on.':
    'An der Außenseite der Wand auf der Seite seines Kopfs misst jeder Wirbel {} mm; an der anderen Wand {}, {}, {}, {} mm, vom Obersattel an.',
  'Read it against the reamer that you own: pegs, reamer and shaper must have one taper.':
    'Mit der eigenen Reibahle vergleichen: Wirbel, Reibahle und Wirbelschneider müssen denselben Konus haben.',
  'Its upper edge is the inside of the top along the middle of the bar: {} mm from the lowest to the highest place.':
    'Die obere Kante ist die Innenseite der Decke längs der Balkenmitte: {} mm von der tiefsten zur höchsten Stelle.',
  'Plane the blank to it, bevel the face by the table (it falls away toward the edge of the body), then fit it to the top itself by chalk.':
    'Den Rohling danach hobeln, die Fläche nach der Tabelle abschrägen (sie fällt zum Rand des Korpus hin), dann mit Kreide an die Decke selbst anpassen.',
  'Drawn without spring: two published notes on the bar advise against it.':
    'Ohne Spannung gezeichnet: zwei veröffentlichte Hinweise zum Bassbalken raten davon ab.',
  'Plane and knife cut: hold the bar in a vise or against a stop, both hands behind the edge.':
    'Hobel und Messer schneiden: den Balken im Schraubstock oder gegen einen Anschlag halten, beide Hände hinter der Schneide.',
  'Clamp glued work only as hard as closes the joint.':
    'Geleimtes nur so fest spannen, dass die Fuge schließt.',
  'Stood on the inside of the top beside the glued bar, the mark on the bridge line: its upper edge is the trimmed bar, {} mm high at the bridge and {} mm at its ends, {} mm long.':
    'Innen neben dem geleimten Balken auf die Decke gestellt, die Marke auf der Steglinie: die obere Kante ist der beschnittene Balken, {} mm hoch am Steg und {} mm an den Enden, {} mm lang.',
  'The fall between them is our choice (a quarter sine to the power {}); makers trim by tap and weight, so leave half a millimetre.':
    'Der Abfall dazwischen ist unsere Wahl (ein Viertelsinus hoch {}); beschnitten wird nach Klopfton und Gewicht, also einen halben Millimeter stehen lassen.',
  'Lower end to the left, when the lettering reads upright.':
    'Unteres Ende links, wenn die Beschriftung aufrecht steht.',
  'Laid into the hollow of the top, one long edge on the centre line, its line on the bridge line and its lower end {} mm above the lower end of the body: the bar stands along its other long edge, from end to end.':
    'In die Höhlung der Decke gelegt, eine lange Kante auf der Mittellinie, die Linie auf der Steglinie und das untere Ende {} mm über dem unteren Ende des Korpus: der Balken steht längs der anderen langen Kante, von Ende zu Ende.',
  'It lies {} mm from the centre line at its lower end and {} mm at its upper one.':
    'Er liegt am unteren Ende {} mm und am oberen {} mm von der Mittellinie.',
  'The post held against the card, its middle on the marks: cut both ends to the edges, on the left turned as it is seen from the tail, on the right from the side.':
    'Den Stimmstock an die Karte halten, die Mitte auf den Marken: beide Enden auf die Kanten schneiden, links vom Saitenhalter her gesehen, rechts von der Seite.',
  'Grain across the grain of the top; fitted when no light shows at either end and it just stays when the strings are slack (common practice).':
    'Jahre quer zu denen der Decke; eingepasst, wenn an keinem Ende Licht scheint und er bei lockeren Saiten eben steht (üblich).',
  'A knife that splits a post is sharp: cut away from the hand, on a board.':
    'Ein Messer, das einen Stimmstock spaltet, ist scharf: von der Hand weg schneiden, auf einem Brett.',
  'The post stands only by its fit: set it without force, and take the strings down slowly and one by one.':
    'Der Stimmstock steht nur durch seine Passung: ohne Kraft setzen, Saiten langsam und einzeln herunterlassen.',
  'Cut out of paper and wrapped round a post {} mm thick, lettering side out, its seam toward the neck: both edges are the cuts, {} mm apart in the middle.':
    'Aus Papier schneiden und um einen Stimmstock von {} mm Stärke wickeln, Beschriftung außen, die Naht zum Hals: beide Kanten sind die Schnitte, in der Mitte {} mm voneinander.',
  'One edge on the centre line, the rectangle on the treble foot of the bridge: the hole is the post, {} mm from the centre line and {} mm behind the bridge line, half a foot behind the foot.':
    'Eine Kante auf der Mittellinie, das Rechteck auf dem Diskantfuß des Stegs: das Loch ist der Stimmstock, {} mm von der Mittellinie und {} mm hinter der Steglinie, einen halben Fuß hinter dem Fuß.',
  'Turned over it shows the place from inside, on the top; turned over once more, on the back.':
    'Gewendet zeigt sie den Platz von innen, auf der Decke; noch einmal gewendet auf dem Boden.',
  'The shape on the card is the front of the nut, its foot on the gluing face of the neck, level with the shoulders of the card.':
    'Die Form auf der Karte ist die Vorderseite des Obersattels, ihr Fuß auf der Leimfläche des Halses, bündig mit den Schultern der Karte.',
  'Marks: slots, a third of each string deep; their bottoms are G {}, D {}, A {}, E {} mm over the board.':
    'Marken: Kerben, ein Drittel der Saite tief; ihre Gründe liegen G {}, D {}, A {}, E {} mm über dem Griffbrett.',
  'File toward the pegs, so that a string bears at the very edge of the board; leave the slots {} mm high until the strings are on.':
    'Zu den Wirbeln hin feilen, so dass die Saite genau an der Kante zum Griffbrett aufliegt; die Kerben {} mm hoch lassen, bis die Saiten aufgezogen sind.',
  'Knives, files, reamers and saws cut: hold small pieces in a vise, cut away from the hand.':
    'Messer, Feilen, Reibahlen und Sägen schneiden: kleine Stücke im Schraubstock halten, von der Hand weg schneiden.',
  'Dust of ebony, bone and rosewood harms the lungs: draw it off, wear a mask.':
    'Staub von Ebenholz, Bein und Palisander schadet der Lunge: absaugen, Maske tragen.',
  'Strings can break: tune slowly, eyes out of their line, wear eye protection.':
    'Saiten können reißen: langsam stimmen, Augen aus ihrer Richtung, Augenschutz tragen.',
  'The section through the middle of the nut, its foot level with the shoulders of the card.':
    'Der Schnitt durch die Mitte des Obersattels, der Fuß bündig mit den Schultern der Karte.',
  'Its front stands square against the end of the board; its top falls {}° toward the pegs (our choice) and is rounded by hand.':
    'Seine Vorderseite steht rechtwinklig am Ende des Griffbretts; die Oberseite fällt um {}° zu den Wirbeln (unsere Wahl) und wird von Hand gerundet.',
  'Each tongue is as thick as one string stands over the end of the board: pushed in from the side on its edge, it just touches board and string.':
    'Jede Zunge ist so dick, wie eine Saite über dem Ende des Griffbretts steht: hochkant von der Seite eingeschoben, berührt sie eben Griffbrett und Saite.',
  'G {} mm, D {} mm, A {} mm, E {} mm; gut lies about half a millimetre higher (from memory).':
    'G {} mm, D {} mm, A {} mm, E {} mm; Darm liegt etwa einen halben Millimeter höher (aus dem Gedächtnis).',
  'As long as the strings are between the back of the bridge and the fret of the tailpiece: a sixth of the string, common practice.':
    'So lang wie die Saiten zwischen der Rückseite des Stegs und dem Sattel des Saitenhalters: ein Sechstel der Saite, üblich.',
  'Draw the tailgut in or let it out until it fits.':
    'Die Hängesaite einziehen oder nachlassen, bis es passt.',
  'Held beside the strings, from the back of the bridge to the crest of the saddle, {} mm along the strings.':
    'Neben die Saiten gehalten, von der Rückseite des Stegs bis zum Scheitel des Untersattels, {} mm längs der Saiten.',
  'From its fret to its end the tailpiece may be {} mm long; measure the one that you have and give it as "tailpieceLength", which leaves {} mm of gut before the saddle ({} to {} mm on a violin, from memory).':
    'Von seinem Sattel bis zum Ende darf der Saitenhalter {} mm lang sein; miss den, den du hast, und gib ihn als „tailpieceLength“ an; das lässt {} mm Hängesaite vor dem Untersattel ({} bis {} mm bei einer Geige, aus dem Gedächtnis).',
  'Laid on the top with its lower edge on the edge of the top and the mark on the joint: the notch is what is cut out, {} mm deep from the edge on the centre line, down to ribs and block.':
    'Auf die Decke gelegt, die untere Kante am Deckenrand, die Marke auf der Fuge: die Kerbe wird ausgeschnitten, {} mm tief vom Rand auf der Mittellinie, bis auf Zargen und Klotz.',
  'It is {} mm longer at either end than a saddle of {} mm: spruce shrinks across its grain and would crack at the ends of a tight one.':
    'Sie ist an jedem Ende {} mm länger als ein Untersattel von {} mm: Fichte schwindet quer zur Faser und risse an den Enden eines strammen.',
  'Score both ends with a knife before anything is sawn; do not cut into the lower block beyond the seat.':
    'Beide Enden vor dem Sägen mit dem Messer einschneiden; nicht über den Sitz hinaus in den Unterklotz schneiden.',
  'The crest is polished, so that the tailgut does not cut in.':
    'Der Scheitel ist poliert, damit die Hängesaite nicht einschneidet.',
  'The pin goes into the slot with its thin end first; where no light shows along both sides, its taper is {}:{}, and the marks read its diameter.':
    'Der Knopf geht mit dem dünnen Ende zuerst in den Schlitz; wo an beiden Seiten kein Licht scheint, ist der Konus {}:{}, und die Marken zeigen seinen Durchmesser.',
  'At the ribs it is to be {} mm.': 'An den Zargen soll er {} mm haben.',
  'Ream the hole from outside, turning only forward, and try often.':
    'Das Loch von außen aufreiben, nur vorwärts drehen und oft probieren.',
  'What falls out is the blank of the bridge, the window its stencil; the cut-outs are carved to taste.':
    'Was herausfällt, ist der Rohling des Stegs, das Fenster seine Schablone; die Ausschnitte werden nach Geschmack geschnitten.',
  'Feet {} mm over their ends, {} mm thick, the top {} mm; the back, toward the tail, stays flat and stands square to the edge of the top.':
    'Füße über ihre Enden {} mm, {} mm dick, oben {} mm; die Rückseite, zum Saitenhalter, bleibt eben und steht rechtwinklig zum Deckenrand.',
  'The feet are the finished arch of the top at the stop: fit them to the real one by chalk.':
    'Die Füße sind die fertige Wölbung der Decke an der Mensur: mit Kreide an die wirkliche anpassen.',
  'Bottoms of the slots over the crest of the top: G {} ({} deep), D {} ({} deep), A {} ({} deep), E {} ({} deep); a slot takes a third of the string’s thickness (published for a cello’s nut, elsewhere from memory).':
    'Gründe der Kerben über dem Scheitel der Decke: G {} ({} tief), D {} ({} tief), A {} ({} tief), E {} ({} tief); eine Kerbe nimmt ein Drittel der Saitenstärke auf (für den Obersattel eines Cellos veröffentlicht, sonst aus dem Gedächtnis).',
  'Leave the crown a little high until the strings are on.':
    'Den Scheitel etwas zu hoch lassen, bis die Saiten aufgezogen sind.',
  'The strings pull with {} N together and press the bridge down with {} N.':
    'Die Saiten ziehen zusammen mit {} N und drücken den Steg mit {} N nieder.',
  'Never slacken all strings at once: the post may fall.':
    'Nie alle Saiten zugleich lockern: der Stimmstock kann fallen.',
  'The bridge is pushed in with its top first until its feet come level with the lower edge, where it is {} mm thick; at the top {} mm.':
    'Der Steg wird mit der Oberseite voran eingeschoben, bis die Füße bündig mit der unteren Kante sind, wo er {} mm dick ist; oben {} mm.',
  'Its back stays flat and stands square to the edge of the top; the front is planed round until it goes in.':
    'Die Rückseite bleibt eben und steht rechtwinklig zum Deckenrand; die Vorderseite wird rund gehobelt, bis er hineingeht.',
  'Leaning {}° toward the tail it would halve the break of the strings.':
    'Um {}° zum Saitenhalter geneigt würde er den Knick der Saiten halbieren.',
  'Laid on the top of the bridge from above.': 'Von oben auf den Steg gelegt.',
  'The curve passes every string, a third of its thickness let in; the circle nearest to it has its middle {} mm toward the lowest string, which lies higher over the board.':
    'Die Kurve geht durch alle Saiten, ein Drittel ihrer Stärke eingelassen; der nächste Kreis hat seine Mitte {} mm zur tiefsten Saite hin, die höher über dem Griffbrett liegt.',
  'Its upper edge is the finished outside of the top across the bridge line, {} mm from the upper end; the marks are the ends of both feet.':
    'Die obere Kante ist die fertige Außenseite der Decke quer an der Steglinie, {} mm vom oberen Ende; die Marken sind die Enden beider Füße.',
  'The feet are first cut to it, then fitted to the top itself, which falls away along the body too.':
    'Die Füße werden zuerst danach geschnitten, dann an die Decke selbst angepasst, die auch längs des Korpus abfällt.',
  'Middles of the strings, {} mm over the outer ones on the bridge and {} mm at the nut, equally far from middle to middle; seen with the neck away from the eye.':
    'Mitten der Saiten, {} mm über die äußeren am Steg und {} mm am Obersattel, von Mitte zu Mitte gleich weit; der Hals vom Auge weg gesehen.',
  'Strings at an A of {} Hz over {} mm: E {} N ({} mm), A {} N ({} mm), D {} N ({} mm), G {} N ({} mm); {} N together, break over the bridge {}°.':
    'Saiten bei einem A von {} Hz über {} mm: E {} N ({} mm), A {} N ({} mm), D {} N ({} mm), G {} N ({} mm); zusammen {} N, Knick über dem Steg {}°.',
  'The hole pricks the mitre, where the outer lines of the purfling meet; from it a line runs to the tip of its point: a slot would break out there, so prick its end through.':
    'Das Loch sticht die Gehrung an, wo sich die äußeren Linien der Einlage treffen; von dort läuft eine Linie zur Spitze der Einlage: ein Schlitz würde ausbrechen, also ihr Ende durchstechen.',
  'Eyes {} mm apart, {} mm less than a published rule of dividers has ({} mm); its lower eyes lie {} mm from the centre line, here {} mm, and {} mm from the upper end, here {} mm.':
    'Augen {} mm voneinander, {} mm weniger als eine veröffentlichte Zirkelregel hat ({} mm); deren untere Augen liegen {} mm von der Mittellinie, hier {} mm, und {} mm vom oberen Ende, hier {} mm.',
  'Its shoulders round it out from the neck, {} mm wide at the nut, over the first {} mm: saw them straight and cut them round with a knife when the neck has its width.':
    'Die Schultern runden es vom Hals her aus, {} mm breit am Obersattel, über die ersten {} mm: gerade sägen und mit dem Messer runden, wenn der Hals seine Breite hat.',
  'Heads of the pegs: C left, A right, G left, D right, looking at the front with the scroll up.':
    'Köpfe der Wirbel: C links, A rechts, G links, D rechts, von vorn gesehen, Schnecke oben.',
  'Marks: slots, a third of each string deep; their bottoms are C {}, G {}, D {}, A {} mm over the board.':
    'Marken: Kerben, ein Drittel der Saite tief; ihre Gründe liegen C {}, G {}, D {}, A {} mm über dem Griffbrett.',
  'C {} mm, G {} mm, D {} mm, A {} mm; gut lies about half a millimetre higher (from memory).':
    'C {} mm, G {} mm, D {} mm, A {} mm; Darm liegt etwa einen halben Millimeter höher (aus dem Gedächtnis).',
  'Bottoms of the slots over the crest of the top: C {} ({} deep), G {} ({} deep), D {} ({} deep), A {} ({} deep); a slot takes a third of the string’s thickness (published for a cello’s nut, elsewhere from memory).':
    'Gründe der Kerben über dem Scheitel der Decke: C {} ({} tief), G {} ({} tief), D {} ({} tief), A {} ({} tief); eine Kerbe nimmt ein Drittel der Saitenstärke auf (für den Obersattel eines Cellos veröffentlicht, sonst aus dem Gedächtnis).',
  'Strings at an A of {} Hz over {} mm: A {} N ({} mm), D {} N ({} mm), G {} N ({} mm), C {} N ({} mm); {} N together, break over the bridge {}°.':
    'Saiten bei einem A von {} Hz über {} mm: A {} N ({} mm), D {} N ({} mm), G {} N ({} mm), C {} N ({} mm); zusammen {} N, Knick über dem Steg {}°.',
  'For looking at, not for measuring: three times as large as the instrument.':
    'Zum Ansehen, nicht zum Messen: dreimal so groß wie das Instrument.',
  'Its left edge bows by {} mm, as the arch asks.':
    'Die linke Kante ist um {} mm gebogen, wie die Wölbung verlangt.',
  'The holes are turned by {}° inward about the inner nick from how they are drafted, so that the lower eye lies {} mm from the nearest edge; nearest of all a hole comes to {} mm.':
    'Die Löcher sind um {}° nach innen um die innere Kerbe gedreht gegenüber ihrem Entwurf, so dass das untere Auge {} mm vom nächsten Rand liegt; am nächsten kommt ein Loch auf {} mm.',
  'Held flat on top of the lower corner block with its curved edge against the bout face: one end at the tip of the block, the other {} mm over the edge of the form.':
    'Flach auf den unteren Eckklotz gehalten, die gebogene Kante an der Bügelfläche: ein Ende an der Spitze des Klotzes, das andere {} mm über dem Rand der Form.',
  'Held flat on top of the lower corner block with its curved edge against the waist face: one end at the tip of the block, the other {} mm over the edge of the form.':
    'Flach auf den unteren Eckklotz gehalten, die gebogene Kante an der Mittelbügelfläche: ein Ende an der Spitze des Klotzes, das andere {} mm über dem Rand der Form.',
  'Held flat on top of the upper corner block with its curved edge against the bout face: one end at the tip of the block, the other {} mm over the edge of the form.':
    'Flach auf den oberen Eckklotz gehalten, die gebogene Kante an der Bügelfläche: ein Ende an der Spitze des Klotzes, das andere {} mm über dem Rand der Form.',
  'Held flat on top of the upper corner block with its curved edge against the waist face: one end at the tip of the block, the other {} mm over the edge of the form.':
    'Flach auf den oberen Eckklotz gehalten, die gebogene Kante an der Mittelbügelfläche: ein Ende an der Spitze des Klotzes, das andere {} mm über dem Rand der Form.',
  'Lay it on the edge near the lower corners; turn over for the other side.':
    'An den unteren Ecken auf den Rand legen; für die andere Seite wenden.',
  'Lay it on the edge near the upper corners; turn over for the other side.':
    'An den oberen Ecken auf den Rand legen; für die andere Seite wenden.',
  'Outside each line the wood comes down to its level, the lowest last: {}.':
    'Außerhalb jeder Linie kommt das Holz auf deren Höhe herab, die tiefste zuletzt: {}.',
  '{} mm ({} mm down)': '{} mm ({} mm hinab)',
  'Each slot is as wide as the finished head at the station of its number: {} mm.':
    'Jeder Schlitz ist so breit wie der fertige Kopf an der Stelle seiner Nummer: {} mm.',
  'Ends slope {}° outward and {}° along under the top, {}° and {}° on the back. {} mm long in the middle, from the thickness maps and ribs as drawn: measure the closed body through the sound hole before the last cuts.':
    'Die Enden neigen sich unter der Decke {}° nach außen und {}° längs, am Boden {}° und {}°. In der Mitte {} mm lang, nach Stärken und Zargen wie gezeichnet: vor den letzten Schnitten den geschlossenen Korpus durch das F-Loch messen.',
  'The section through the middle of the saddle, its foot on ribs and block, level with the shoulders of the card; the line is the edge of the top. {} mm over the edge, {} mm long, its ends rounded down to the edge.':
    'Der Schnitt durch die Mitte des Untersattels, der Fuß auf Zargen und Klotz, bündig mit den Schultern der Karte; die Linie ist der Deckenrand. {} mm über dem Rand, {} mm lang, die Enden zum Rand hin gerundet.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end and the lower corners and the upper corners and the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende und an den unteren Ecken und an den oberen Ecken und am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end, {} mm at the lower corners and the upper corners and the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende, {} mm an den unteren Ecken und an den oberen Ecken und am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end and the lower corners, {} mm at the upper corners and the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende und an den unteren Ecken, {} mm an den oberen Ecken und am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end, {} mm at the lower corners, {} mm at the upper corners and the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende, {} mm an den unteren Ecken, {} mm an den oberen Ecken und am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end and the lower corners and the upper corners, {} mm at the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende und an den unteren Ecken und an den oberen Ecken, {} mm am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end, {} mm at the lower corners and the upper corners, {} mm at the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende, {} mm an den unteren Ecken und an den oberen Ecken, {} mm am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end and the lower corners, {} mm at the upper corners, {} mm at the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende und an den unteren Ecken, {} mm an den oberen Ecken, {} mm am Hals.',
  'Slide it over the standing ribs: it stops at the step of the height that they have. {} mm at the lower end, {} mm at the lower corners, {} mm at the upper corners, {} mm at the neck.':
    'Über die stehenden Zargen schieben: sie hält an der Stufe der Höhe an, die sie haben. {} mm am unteren Ende, {} mm an den unteren Ecken, {} mm an den oberen Ecken, {} mm am Hals.',
};
