import type { Catalogue } from '../catalogue.ts';

/** What is noted beside the pieces of the plates, sentence by sentence. */
export const plateNotes: Catalogue = {
  'Gouges, planes, scrapers, knives, routers and lasers can hurt: clamp the plate, keep both hands behind the edge, wear eye protection, draw off dust and fumes, and follow the manual of the machine.':
    'Hohleisen, Hobel, Ziehklingen, Messer, Fräsen und Laser können verletzen: die Platte spannen, beide Hände hinter der Schneide, Augenschutz tragen, Staub und Rauch absaugen, der Anleitung der Maschine folgen.',
  'The mitre lies {} mm inside the lower and {} mm inside the upper corner ends.':
    'Die Gehrung liegt {} mm innerhalb der unteren und {} mm innerhalb der oberen Eckenenden.',
  'The outer strips run on beyond it as a point, {} and {} mm long, that bends toward the waist: cut it with a knife, no wider than the outer strips together.':
    'Die äußeren Späne laufen darüber hinaus als Spitze, {} und {} mm lang, die sich zum Mittelbügel biegt: mit dem Messer schneiden, nicht breiter als die äußeren Späne zusammen.',
  'From memory; give stingLength and stingAside for another.':
    'Aus dem Gedächtnis; gib stingLength und stingAside für eine andere an.',
  'Lowest line of the channel: {} mm from the edge along the bouts and ends, {} mm at the waist, {} mm toward the corners.':
    'Tiefste Linie der Hohlkehle: {} mm vom Rand an Bügeln und Enden, {} mm am Mittelbügel, {} mm zu den Ecken hin.',
  'The groove goes {} mm down from the flat edge, before the channel is scooped.':
    'Der Graben geht {} mm vom flachen Rand hinab, bevor die Hohlkehle gestochen wird.',
  'Turn over for the other side; one plan serves both plates.':
    'Für die andere Seite wenden; ein Plan dient beiden Platten.',
  'Purfling markers, knives and chisels cut toward the hand that slips: clamp the plate, keep both hands behind the edge, cut the groove in several light passes, and wear eye protection; for a router follow the manual of the machine.':
    'Adergrabenreißer, Messer und Stechbeitel schneiden zur abrutschenden Hand: die Platte spannen, beide Hände hinter der Schneide, den Graben in mehreren leichten Zügen schneiden, Augenschutz tragen; mit der Fräse der Anleitung der Maschine folgen.',
  'The flat edge keeps the first.': 'Der flache Rand behält die erste.',
  'Everywhere {} mm and more is left over the arch, edge included; gouge and planes take it down to the gauges.':
    'Überall bleiben {} mm und mehr über der Wölbung stehen, der Rand inbegriffen; Hohleisen und Hobel nehmen sie bis auf die Schablonen ab.',
  'Levels count from the gluing face, depths from the upper face of a board planed level at {} mm.':
    'Höhen zählen von der Leimfläche, Tiefen von der Oberseite eines eben auf {} mm gehobelten Bretts.',
  'Lay the straight edge on the centre joint, prick the lines through, turn over for the other side.':
    'Die gerade Kante auf die Mittelfuge legen, die Linien durchstechen, für die andere Seite wenden.',
  'Leave the outline with its margin until the arch is roughed out.':
    'Den Umriss mit Zugabe lassen, bis die Wölbung roh ausgearbeitet ist.',
  'Saws, routers, drills and gouges can hurt badly: clamp the board, keep both hands out of the line of the cutter, wear eye and ear protection and a dust mask, tie back hair and sleeves, cut in shallow passes, and follow the manual of the machine.':
    'Sägen, Fräsen, Bohrer und Hohleisen können schwer verletzen: das Brett spannen, beide Hände aus der Bahn des Werkzeugs, Augen- und Gehörschutz und Staubmaske tragen, Haare und Ärmel binden, in flachen Zügen schneiden, der Anleitung der Maschine folgen.',
  'For a {} mm bit, point {} mm.': 'Für einen Bohrer von {} mm, Spitze {} mm.',
  'No part of it comes nearer than {} mm to the arch before the channel is cut.':
    'Kein Teil davon kommt der Wölbung vor dem Stechen der Hohlkehle näher als {} mm.',
  'A thicker bit, or one with a longer point, needs a chart of its own.':
    'Ein stärkerer Bohrer oder einer mit längerer Spitze braucht einen eigenen Plan.',
  'Depths count from the upper face of a board planed level at {} mm; the figures in brackets are what is left above the gluing face: set the stop of a pillar drill to them, with the tip over the bare table, and one setting serves all holes alike.':
    'Tiefen zählen von der Oberseite eines eben auf {} mm gehobelten Bretts; die Zahlen in Klammern sind, was über der Leimfläche bleibt: den Anschlag der Ständerbohrmaschine danach stellen, die Spitze über dem leeren Tisch, und eine Einstellung dient allen gleichen Löchern.',
  'Prick the marks through, turn over for the other side, drill the shallowest first and try the stop on waste.':
    'Die Marken durchstechen, für die andere Seite wenden, die flachsten zuerst bohren und den Anschlag an einem Rest prüfen.',
  'Gouge away until the bottoms of the holes just vanish.':
    'Mit dem Hohleisen abnehmen, bis die Böden der Löcher eben verschwinden.',
  'Pushed on from outside, square to the edge; the lower jaw goes under the overhang.':
    'Von außen aufgeschoben, rechtwinklig zum Rand; die untere Backe geht unter den Überstand.',
  'Rounded {} mm below and {} mm above, upright {} mm between; the crest stands {} mm over the gluing face, the channel is {} mm deep {} mm from the edge.':
    'Unten um {} mm und oben um {} mm gerundet, dazwischen {} mm lotrecht; der Kamm steht {} mm über der Leimfläche, die Hohlkehle ist {} mm tief, {} mm vom Rand.',
  'Before the channel is cut the edge stays flat over {} mm.':
    'Vor dem Stechen der Hohlkehle bleibt der Rand auf {} mm flach.',
  'For the sides of a corner; across its tip the channel runs out and the crest is followed by eye.':
    'Für die Seiten einer Ecke; über ihrer Spitze läuft die Hohlkehle aus, und dem Kamm folgt das Auge.',
  'Rests on the flat edge, {} mm thick, before the channel is cut: the arch is right when it comes down to the flat all along the gauge.':
    'Ruht auf dem flachen Rand, {} mm stark, vor dem Stechen der Hohlkehle: die Wölbung stimmt, wenn die Schablone überall bis zum Flachen hinabkommt.',
  'At least {} mm stays flat until the purfling is in.':
    'Mindestens {} mm bleiben flach, bis die Einlage sitzt.',
  'Made for stuff {} mm thick.': 'Für Material von {} mm Stärke.',
  'The lettered face stands on the station line, {} mm above the lower end; the stuff lies behind it.':
    'Die beschriftete Fläche steht auf der Linie der Stelle, {} mm über dem unteren Ende; das Material liegt dahinter.',
  'Its edge may stay square: nowhere within its thickness does the plate rise more than {} mm above the line.':
    'Die Kante darf rechtwinklig bleiben: nirgends in ihrer Stärke steigt die Platte mehr als {} mm über die Linie.',
  'Light under the gauge shows where the wood is already low; where it rides, wood is still to go.':
    'Licht unter der Schablone zeigt, wo das Holz schon zu tief ist; wo sie aufsitzt, muss noch Holz weg.',
  'Common practice.': 'Üblich.',
  'The stuff is bevelled off behind the working edge: left square it would ride on the wood behind its face by up to {} mm, on the centre line.':
    'Das Material wird hinter der Arbeitskante abgeschrägt: rechtwinklig säße es hinter seiner Fläche um bis zu {} mm auf, auf der Mittellinie.',
  'Near a corner the arch keeps to its formula over the inner {} % of its half width; outside, the gauge follows the surface of the plate.':
    'Nahe einer Ecke hält sich die Wölbung auf den inneren {} % der halben Breite an ihre Formel; außen folgt die Schablone der Fläche der Platte.',
  'Stands on the centre line.': 'Steht auf der Mittellinie.',
  'Thick stuff is bevelled off to one face, and that face is held on the line.':
    'Starkes Material wird auf eine Fläche hin abgeschrägt, und diese Fläche wird auf die Linie gehalten.',
  'Rests on the crest of the finished edge, {} mm in from the edge and {} mm thick, and reaches down into the finished channel.':
    'Ruht auf dem Kamm des fertigen Rands, {} mm vom Rand und {} mm stark, und reicht in die fertige Hohlkehle hinab.',
  'Lay the plate on its outside in a cradle; both feet rest on the gluing face and the gauge hangs into the hollow.':
    'Die Platte mit der Außenseite in eine Wiege legen; beide Füße ruhen auf der Leimfläche, die Schablone hängt in die Höhlung.',
  'Where it rides, wood is still to go; when the feet sit and no light shows under it, the plate has its thickness there.':
    'Wo sie aufsitzt, muss noch Holz weg; wenn die Füße sitzen und kein Licht darunter scheint, hat die Platte dort ihre Stärke.',
  'Never lower: measure the thickness with a calliper before the last cuts.':
    'Nie tiefer: die Stärke vor den letzten Schnitten mit dem Stärkenmesser messen.',
  'The inside is taken from the outside and its thickness, before bar and linings are in.':
    'Die Innenseite folgt aus der Außenseite und der Stärke, ohne Balken und Reifchen.',
  'Drill only after the outside is finished and its arch has been checked with the gauges: where the outside is lower than the design, every depth here is too deep.':
    'Erst bohren, wenn die Außenseite fertig und ihre Wölbung mit den Schablonen geprüft ist: wo sie niedriger ist als der Entwurf, ist hier jede Tiefe zu tief.',
  'No part of it comes nearer than {} mm to the finished inside.':
    'Kein Teil davon kommt der fertigen Innenseite näher als {} mm.',
  'A thicker bit, or one with a longer point, needs a chart of its own; never drill with one.':
    'Ein stärkerer Bohrer oder einer mit längerer Spitze braucht einen eigenen Plan; nie mit einem solchen bohren.',
  'The plate lies on its arched outside in a cradle cut to that arch, or on a padded bed that bears it under every place to be drilled, its gluing face level with the table of the drill, and is clamped so that it cannot tip or turn.':
    'Die Platte liegt mit der gewölbten Außenseite in einer danach ausgeformten Wiege oder auf einem gepolsterten Bett, das sie unter jeder Bohrstelle trägt, ihre Leimfläche gleichlaufend mit dem Bohrtisch, und ist gegen Kippen und Drehen gespannt.',
  'A plate that bears only on its crest rocks, and bends under the bit.':
    'Eine Platte, die nur auf dem Scheitel aufliegt, wackelt und biegt sich unter dem Bohrer.',
  'Depths count from the gluing face, or from a straight edge across it: touch that with the tip, and set the stop from there.':
    'Tiefen zählen von der Leimfläche oder einem Lineal quer darüber: mit der Spitze berühren und von dort den Anschlag stellen.',
  'The figures in brackets are what a calliper finds under the finished hole, {} mm at the least: measure the first holes, the shallowest, and stop where one has less.':
    'Die Zahlen in Klammern sind, was ein Stärkenmesser unter dem fertigen Loch findet, mindestens {} mm: die ersten, flachsten Löcher messen und aufhören, wo eines weniger hat.',
  'Prick the marks through, turn over for the other side, try the stop on waste, one setting for all holes alike.':
    'Die Marken durchstechen, für die andere Seite wenden, den Anschlag an einem Rest prüfen, eine Einstellung für alle gleichen Löcher.',
  'Gouge away until the bottoms of the holes just vanish; thumb plane, scraper and calliper take the rest.':
    'Mit dem Hohleisen abnehmen, bis die Böden der Löcher eben verschwinden; Daumenhobel, Ziehklinge und Stärkenmesser nehmen den Rest.',
  'Leave the slope up to linings and blocks to the gouge.':
    'Die Schräge zu Reifchen und Klötzen hinauf dem Hohleisen überlassen.',
  '{} mm under the bridge, {} mm in the bouts, {} mm at the sides of the waist, {} mm in the channel; from {} mm to {} mm in all.':
    '{} mm unter dem Steg, {} mm in den Bügeln, {} mm an den Seiten des Mittelbügels, {} mm in der Hohlkehle; insgesamt {} mm bis {} mm.',
  'Hold the thickness calliper square to the outside at each cross, the figure over it is what it must show.':
    'Den Stärkenmesser an jedem Kreuz rechtwinklig zur Außenseite halten, die Zahl darüber ist, was er zeigen muss.',
  'Crosses stand every {} mm from the centre line and from the bridge line: prick them through and mark them on the outside in pencil, or measure them off.':
    'Kreuze stehen alle {} mm von der Mittellinie und der Steglinie: durchstechen und außen mit Bleistift anzeichnen, oder abmessen.',
  'Along the dashed line, where the gluing face ends, the hollow comes down over {} mm: there the plate is thicker than the lines say.':
    'Längs der gestrichelten Linie, wo die Leimfläche endet, fällt die Höhlung über {} mm ab: dort ist die Platte stärker als die Linien sagen.',
  'Stop {} mm before the figure with the plane, scrape the rest, and measure after every few strokes: wood that is off stays off.':
    'Mit dem Hobel {} mm vor der Zahl aufhören, den Rest mit der Ziehklinge, und alle paar Züge messen: was ab ist, ist ab.',
  'Both halves are alike.': 'Beide Hälften sind gleich.',
  'Treble side, seen from outside, neck up; turned over it is the bass one.':
    'Diskantseite, von außen gesehen, Hals oben; gewendet ist es die Bassseite.',
  'In plan: {} mm² open, {} mm round, eyes {} mm apart.':
    'Im Grundriss: {} mm² offen, {} mm Umfang, Augen {} mm voneinander.',
  'For stiff stuff that is held level over the top, the line carried down square to the gluing face.':
    'Für steifes Material, das eben über die Decke gehalten wird; die Linie lotrecht zur Leimfläche hinabtragen.',
  'Stuff that bends onto the arch takes the other template, laid flat.':
    'Für Material, das sich auf die Wölbung biegt, dient die andere, abgewickelte Schablone.',
  'Laid flat, the stem is {} mm wider and the opening {} % larger; where it fits best the lines part by {} mm at most.':
    'Abgewickelt ist der Stamm {} mm breiter und die Öffnung {} % größer; bestmöglich aufgelegt weichen die Linien höchstens {} mm voneinander ab.',
  'The scored line is the bridge line; the outer nick lies higher than the inner one, as on the holes that the shape was fitted to.':
    'Die angerissene Linie ist die Steglinie; die äußere Kerbe liegt höher als die innere, wie an den Löchern, denen die Form angepasst wurde.',
  'Order, once the outside is finished and the top has its thickness, before the bar goes in: {}. draw both holes and prick the eyes; {}. look at both from the neck end, measure one against the other; {}. drill or bore the eyes from outside, {} mm small, a board pressed on the inside; {}. saw a millimetre inside the line, stem first, then each hook, and stop before the wing tips, where the hole is only {} mm wide; {}. cut to the line with a thin sharp knife, many light cuts, the wing tips from their points inward so that their short grain is not levered off; {}. nicks last.':
    'Reihenfolge, wenn die Außenseite fertig ist und die Decke ihre Stärke hat, vor dem Bassbalken: {}. beide Löcher zeichnen und die Augen anstechen; {}. beide vom Hals her ansehen und gegeneinander messen; {}. die Augen von außen bohren, {} mm zu klein, innen ein Brett angedrückt; {}. einen Millimeter innerhalb der Linie sägen, erst den Stamm, dann die Haken, und vor den Flügelspitzen aufhören, wo das Loch nur {} mm breit ist; {}. mit dünnem scharfem Messer auf die Linie schneiden, viele leichte Schnitte, die Flügelspitzen von der Spitze nach innen, damit die kurze Faser nicht abgehebelt wird; {}. zuletzt die Kerben.',
  'Knives and fret saws slip and drills grab thin spruce: clamp the top on a padded cradle, back it up where the drill comes out, both hands behind the edge, wear eye protection.':
    'Messer und Laubsägen rutschen, Bohrer haken in dünner Fichte: die Decke auf gepolsterter Wiege spannen, stützen, wo der Bohrer austritt, beide Hände hinter der Schneide, Augenschutz tragen.',
  'Laser and router: follow the manual of the machine, never leave a laser alone.':
    'Laser und Fräse: der Anleitung der Maschine folgen, einen Laser nie allein lassen.',
  'For card, film or thin sheet that bends onto the finished arch: left edge along the centre line, scored line on the bridge line, lettered side up.':
    'Für Karton, Folie oder dünnes Blech, das sich auf die fertige Wölbung biegt: linke Kante an der Mittellinie, angerissene Linie auf der Steglinie, beschriftete Seite oben.',
  'Treble side, neck up; turned over it is the bass one.':
    'Diskantseite, Hals oben; gewendet ist es die Bassseite.',
  'Hold it with bits of low-tack tape, not by hand.':
    'Mit Stückchen schwach haftenden Klebebands halten, nicht mit der Hand.',
  'Its left edge is straight.': 'Die linke Kante ist gerade.',
  'Against the plan: stem {} mm instead of {} mm, eyes {} mm apart, opening {} mm² instead of {}, centre line to inner nick {} mm instead of {} mm; laid on it as well as can be, no place is farther off than {} mm.':
    'Gegen den Grundriss: Stamm {} mm statt {} mm, Augen {} mm voneinander, Öffnung {} mm² statt {}, Mittellinie bis innere Kerbe {} mm statt {} mm; bestmöglich daraufgelegt ist keine Stelle weiter ab als {} mm.',
  'A sheet cannot follow an arch that bends both ways without some stretching: {} % at most, {} % on the whole.':
    'Ein Blatt kann einer doppelt gekrümmten Wölbung nicht ohne Dehnung folgen: höchstens {} %, im Ganzen {} %.',
  'Long score on the centre joint, cross score on the bridge line {} mm from the upper end; laid on the ridge of the finished top, lettered side up, and held level: over the upper eyes it stands {} mm off the wood, over the lower ones {} mm, so go down square to the plate with a thin drill or a long awl.':
    'Langer Riss auf der Mittelfuge, Querriss auf der Steglinie {} mm vom oberen Ende; auf den Scheitel der fertigen Decke gelegt, beschriftete Seite oben, und eben gehalten: über den oberen Augen steht es {} mm vom Holz ab, über den unteren {} mm, also rechtwinklig zur Platte hinabgehen, mit dünnem Bohrer oder langer Ahle.',
  'Prick through the four holes: middles of the eyes, {} mm and {} mm from the centre line, {} mm above and {} mm below the bridge line.':
    'Durch die vier Löcher stechen: Mitten der Augen, {} mm und {} mm von der Mittellinie, {} mm über und {} mm unter der Steglinie.',
  'Ticks: points of the inner nicks.': 'Striche: Spitzen der inneren Kerben.',
  'Eyes are bored to {} mm and {} mm, square to the gluing face; start {} mm small.':
    'Augen werden auf {} mm und {} mm gebohrt, rechtwinklig zur Leimfläche; {} mm zu klein anfangen.',
  'Check both sides against each other before any hole is opened.':
    'Beide Seiten gegeneinander prüfen, bevor ein Loch geöffnet wird.',
  'Crosses: middles of the eyes, {} mm and {} mm from the centre line.':
    'Kreuze: Mitten der Augen, {} mm und {} mm von der Mittellinie.',
  'Rectangles: feet of the bridge, {} mm over both; long piece: the bar under the top, round one: the post.':
    'Rechtecke: Stegfüße, {} mm über beide; langes Stück: der Balken unter der Decke, rundes: der Stimmstock.',
  'The holes are turned by {}° outward about the inner nick from how they are drafted, so that the lower eye lies {} mm from the nearest edge; nearest of all a hole comes to {} mm.':
    'Die Löcher sind um {}° nach außen um die innere Kerbe gedreht gegenüber ihrem Entwurf, so dass das untere Auge {} mm vom nächsten Rand liegt; am nächsten kommt ein Loch auf {} mm.',
  'The lower corner blocks, drawn as they stand in the form, reach {} mm under the holes: trim them to a hollow curve inside once the form is out, before the top goes on.':
    'Die unteren Eckklötze, gezeichnet wie in der Form, reichen {} mm unter die Löcher: sobald die Form heraus ist, innen hohl beschneiden, bevor die Decke aufkommt.',
  'Eyes {} mm apart, {} mm more than a published rule of dividers has ({} mm); its lower eyes lie {} mm from the centre line, here {} mm, and {} mm from the upper end, here {} mm.':
    'Augen {} mm voneinander, {} mm mehr als eine veröffentlichte Zirkelregel hat ({} mm); deren untere Augen liegen {} mm von der Mittellinie, hier {} mm, und {} mm vom oberen Ende, hier {} mm.',
  'It does not say where its pins stand: taken {} mm inside the ends of a {} body.':
    'Sie sagt nicht, wo ihre Stifte stehen: angenommen {} mm innerhalb der Enden eines Korpus von {} mm.',
  'One maker’s reading of old violins, not a law.':
    'Wie einer, der baut, alte Geigen gelesen hat, kein Gesetz.',
  'Look at both holes whole on this plan before anything is cut.':
    'Beide Löcher auf diesem Plan als Ganzes ansehen, bevor geschnitten wird.',
  'In plan: on the arch the lines lie a little farther out; transfer by the templates, not by pressing this sheet onto the wood.':
    'Im Grundriss: auf der Wölbung liegen die Linien etwas weiter außen; mit den Schablonen übertragen, nicht durch Andrücken dieses Blatts.',
  'True size, to lay the neck on before it is glued, and to see what the numbers mean.':
    'In wahrer Größe, um den Hals vor dem Leimen daraufzulegen und zu sehen, was die Zahlen bedeuten.',
  'Seen along the centre line: the long-dashed line is the middle of the board carried on to the bridge.':
    'Längs der Mittellinie gesehen: die lang gestrichelte Linie ist die Mitte des Griffbretts, bis zum Steg verlängert.',
  'Both sides alike.': 'Beide Seiten gleich.',
  'The upper edge is the gluing face of the fingerboard, planed flat first; from the nut to the edge of the top {} mm.':
    'Die obere Kante ist die Leimfläche des Griffbretts, zuerst eben gehobelt; vom Obersattel bis zum Deckenrand {} mm.',
  'The head goes on beyond the nut.': 'Über den Obersattel hinaus folgt der Kopf.',
  'The scored lines show the edge of the top, {} mm under the gluing face, and the end of the plates.':
    'Die Risse zeigen den Deckenrand, {} mm unter der Leimfläche, und das Ende der Platten.',
  'The root stands at {}° to the gluing face and goes {} mm deep at the edge of the top, {} mm at the back.':
    'Der Halsfuß steht mit {}° zur Leimfläche und geht am Deckenrand {} mm tief, am Boden {} mm.',
  'Leave {} to {} mm on its lower end until it is fitted on the button.':
    'Am unteren Ende {} bis {} mm stehen lassen, bis er auf dem Zäpfchen eingepasst ist.',
  'The heel turns round {} mm and runs down to the tip of the button; it is finished after the neck is set.':
    'Die Kehle rundet sich mit {} mm und läuft zur Spitze des Zäpfchens; fertig gemacht wird sie nach dem Einsetzen des Halses.',
  'Saws, knives, planes and rasps cut: clamp the neck, keep both hands behind the edge.':
    'Sägen, Messer, Hobel und Raspeln schneiden: den Hals spannen, beide Hände hinter der Schneide.',
  'Dust of ebony and rosewood irritates skin and lungs: draw it off, wear a mask, follow local rules.':
    'Staub von Ebenholz und Palisander reizt Haut und Lunge: absaugen, Maske tragen, örtliche Vorschriften beachten.',
  'Laser and router: follow the manual of the machine.':
    'Laser und Fräse: der Anleitung der Maschine folgen.',
  'The gluing face: {} mm wide at the nut, {} mm at the edge of the top, carried on straight into the mortise to {} mm.':
    'Die Leimfläche: {} mm breit am Obersattel, {} mm am Deckenrand, gerade in die Halstasche verlängert auf {} mm.',
  'Flush with the fingerboard; saw outside the line and finish neck and board together.':
    'Bündig mit dem Griffbrett; außerhalb der Linie sägen, Hals und Griffbrett zusammen fertigmachen.',
  'Pushed on from behind with the board glued, square to the gluing face, {} mm from the nut: when the round lies in it, its arms end level with the upper arrises of the board and their marks with the glue line.':
    'Von hinten aufgeschoben, das Griffbrett geleimt, rechtwinklig zur Leimfläche, {} mm vom Obersattel: liegt die Rundung darin, enden die Arme bündig mit den oberen Kanten des Griffbretts und ihre Marken an der Leimfuge.',
  'Neck and board together measure {} mm in the middle.':
    'Hals und Griffbrett zusammen messen in der Mitte {} mm.',
  'Laid on the end of the root with the bar level with the gluing face of the board and the line in the middle of the neck.':
    'Auf die Stirn des Halsfußes gelegt, der Balken bündig mit der Leimfläche des Griffbretts, die Linie in der Mitte des Halses.',
  'The line across is the edge of the top: {} mm wide there, {} mm under the gluing face along the root.':
    'Die Querlinie ist der Deckenrand: dort {} mm breit, {} mm unter der Leimfläche längs des Halsfußes.',
  'The lower end stands on the button; {} mm in all.':
    'Das untere Ende steht auf dem Zäpfchen; im Ganzen {} mm.',
};
