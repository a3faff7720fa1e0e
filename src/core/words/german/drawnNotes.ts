import type { Catalogue } from '../catalogue.ts';

/** What is noted beside a piece, sentence by sentence. */
export const drawnNotes: Catalogue = {
  'Sheet {} mm thick.': 'Platte {} mm stark.',
  'Cut outside the line and file to it, square to the faces.':
    'Außerhalb der Linie sägen und auf sie feilen, im rechten Winkel zu den Flächen.',
  'The whole form measures {} mm at the waist and {} mm at the widest lower bout.':
    'Die ganze Form misst {} mm am Mittelbügel und {} mm an der breitesten Stelle des Unterbügels.',
  'The recesses are the blocks exactly: shave the blocks to a sliding fit.':
    'Die Aussparungen sind genau die Klötze: die Klötze schiebend einpassen.',
  'A round cutter leaves the inside corners round: clear them with a chisel.':
    'Ein runder Fräser lässt die inneren Ecken rund: mit dem Stechbeitel ausstechen.',
  'The lines beyond the form at the corners show blocks, ribs and edge of the plate for reference; nothing is cut there.':
    'Die Linien außerhalb der Form an den Ecken zeigen Klötze, Zargen und Rand der Platte zum Vergleich; dort wird nichts geschnitten.',
  'Wax the edge of the form, but not the recesses, so that glue holds only where it is wanted.':
    'Den Rand der Form wachsen, die Aussparungen aber nicht, damit Leim nur dort hält, wo er soll.',
  'Saw, knife, router and laser can hurt: follow the manual of the machine, hold the work down, keep hands clear, wear eye protection, draw off dust and fumes, and never leave a laser alone.':
    'Säge, Messer, Fräse und Laser können verletzen: der Anleitung der Maschine folgen, das Werkstück festspannen, Hände fernhalten, Augenschutz tragen, Staub und Rauch absaugen, einen Laser nie allein lassen.',
  'Seen on the back of the form: treble and bass side change places.':
    'Auf die Rückseite der Form gesehen: Diskant- und Bassseite sind vertauscht.',
  'Lay the pin holes of this sheet on those of the form and prick or score the lines through.':
    'Die Stiftlöcher dieses Blatts auf die der Form legen und die Linien durchstechen oder anreißen.',
  'The straight edges lie exactly on the centre line: cut each half from its own piece.':
    'Die geraden Kanten liegen genau auf der Mittellinie: jede Hälfte aus einem eigenen Stück schneiden.',
  'If one blank is sawn in two, the width of the cut is lost: put a strip as thick as the cut between the halves.':
    'Wird ein Rohling in zwei gesägt, fehlt die Breite des Schnitts: einen Streifen in Schnittstärke zwischen die Hälften legen.',
  'Screw two battens across on the back side, where they are shown or where they clear the holes; take them off to draw the halves out of the ribs.':
    'Auf der Rückseite zwei Leisten quer aufschrauben, wo sie gezeigt sind oder die Löcher freilassen; zum Herausziehen der Hälften aus den Zargen abnehmen.',
  'For both plates.': 'Für beide Platten.',
  'On the back leave wood for the button at the upper end, and draw it with its own template before sawing.':
    'Am Boden oben Holz für das Zäpfchen stehen lassen und es vor dem Sägen mit seiner eigenen Schablone anzeichnen.',
  'Both pin holes lie on the centre line; drill {} mm and align with pins.':
    'Beide Stiftlöcher liegen auf der Mittellinie; mit {} mm bohren und mit Stiften ausrichten.',
  'Cut outside the line and file to it.': 'Außerhalb der Linie sägen und auf sie feilen.',
  'Station marks are for checking widths with a calliper.':
    'Die Marken der Stellen dienen zum Prüfen der Breiten mit dem Messschieber.',
  'Lay the straight edge on the centre line against two pins of {} mm, mark one side, turn over for the other: both sides come out alike.':
    'Die gerade Kante an der Mittellinie gegen zwei Stifte von {} mm legen, eine Seite anreißen, für die andere wenden: so werden beide Seiten gleich.',
  'Blank {} × {} mm and {} mm high; the grain stands upright, along the height of the ribs (the ring with a dot), and splits flat towards the ribs.':
    'Rohling {} × {} mm und {} mm hoch; die Jahre stehen aufrecht, längs der Zargenhöhe (Ring mit Punkt), und spalten flach zu den Zargen.',
  'The two faces in the recess are square to each other and to the faces of the form; the other sides are shaped after gluing, with the inner outline template.':
    'Die zwei Flächen in der Aussparung stehen rechtwinklig zueinander und zu den Flächen der Form; die anderen Seiten werden nach dem Leimen mit der Schablone des Innenumrisses geformt.',
  'The dashed lines are the hole of the end button, {} mm at the ribs, {} mm up from the edge of the ribs toward the back.':
    'Die gestrichelten Linien sind das Loch des Endknopfs, {} mm an den Zargen, {} mm über der Zargenkante am Boden.',
  'The hole of the end button is made when the body is closed: drill {} mm from outside, square to the ribs and level with the plates, the ribs backed up with tape or a block so that they do not splinter; then ream with the reamer of the pin, turning only forward, to {} mm at the ribs ({} mm inside).':
    'Das Loch des Endknopfs entsteht am geschlossenen Korpus: mit {} mm von außen bohren, rechtwinklig zu den Zargen und gleichlaufend mit den Platten, die Zargen mit Klebeband oder einem Klotz gegen Ausreißen gestützt; dann mit der Reibahle des Knopfs, nur vorwärts gedreht, auf {} mm an den Zargen aufreiben ({} mm innen).',
  'Clamp the body in padding, eyes protected, hands clear of the drill.':
    'Den Korpus gepolstert spannen, Augen schützen, Hände weg vom Bohrer.',
  'The lines behind the shaped sides are mortises for the linings, at the back and at the top: {} mm wide along the rib, {} mm deep from the edge of the ribs, let in at full thickness: waist side {} mm.':
    'Die Linien hinter den geformten Seiten sind Taschen für die Reifchen, am Boden und an der Decke: {} mm breit längs der Zarge, {} mm tief von der Zargenkante, in voller Stärke eingelassen: Mittelbügelseite {} mm.',
  'Cut them when the ribs are on: knife the sides to depth first, then chisel, both hands behind the edge and the block backed up.':
    'Schneide sie, wenn die Zargen sitzen: zuerst die Seiten mit dem Messer auf Tiefe, dann mit dem Stechbeitel, beide Hände hinter der Schneide und der Klotz gestützt.',
  'The two dashed notches are the mortise of the neck, at the top (wider) and at the back: {} mm of the block stay behind it.':
    'Die zwei gestrichelten Kerben sind die Halstasche, an der Decke (breiter) und am Boden: {} mm des Klotzes bleiben dahinter stehen.',
  'Do not cut it now: it is cut when the body is closed, from the root of the neck.':
    'Jetzt nicht schneiden: sie entsteht am geschlossenen Korpus, nach dem Halsfuß.',
  'Lengths run along the middle of the thickness, from the end toward the lower end of the body; the radius is that inside the bend, which a template or the iron is held to.':
    'Längen gelten für die Mitte der Stärke, vom Ende her, das zum unteren Ende des Korpus weist; der Radius ist der innen in der Biegung, an den Schablone oder Biegeeisen gehalten werden.',
  'Bend a little tighter than asked: wood springs back.':
    'Etwas enger biegen als verlangt: Holz federt zurück.',
  'Stretch of the outer fibre: up to {} % a hot iron alone, up to {} % with a metal strap against the outside; beyond, thin the rib there (from memory: try it on waste of the same wood).':
    'Dehnung der äußeren Faser: bis {} % genügt das heiße Eisen, bis {} % mit einem Metallband gegen die Außenseite; darüber die Zarge dort dünner machen (aus dem Gedächtnis: an einem Rest desselben Holzes versuchen).',
  'Glue the waist ribs first, their ends running past the corners.':
    'Zuerst die Mittelzargen leimen, ihre Enden laufen über die Ecken hinaus.',
  'Pare each end flush with the face of the block on the bout side, so that it is bevelled by {}° and runs out to an edge; the upper and lower ribs go over it, and all is trimmed to the end of the rib corner.':
    'Jedes Ende bündig mit der Fläche des Klotzes auf der Bügelseite abstechen, so dass es um {}° abgeschrägt ist und in eine Kante ausläuft; Ober- und Unterzarge gehen darüber, und alles wird auf das Ende der Zargenecke gekürzt.',
  'Beside the rib corners the plate stands out {} mm below and {} mm above: draw the edge there with the corner templates, not with the overhang marker.':
    'Neben den Zargenecken steht die Platte unten {} mm und oben {} mm vor: den Rand dort mit den Eckenschablonen anzeichnen, nicht mit dem Randüberstandsreißer.',
  'A bending iron burns wood and skin: wet the rib, try the heat on waste, keep fingers off the inside of the bend, let it cool before it is touched or left.':
    'Ein Biegeeisen verbrennt Holz und Haut: die Zarge nässen, die Hitze an einem Rest prüfen, Finger weg von der Innenseite der Biegung, vor dem Anfassen oder Weggehen abkühlen lassen.',
  'Steam scalds.': 'Dampf verbrüht.',
  'Follow the manual of the iron.': 'Der Anleitung des Eisens folgen.',
  'Thin strips split under plane and knife: plane them on a board against a stop, cut with both hands behind the edge.':
    'Dünne Streifen spalten unter Hobel und Messer: auf einem Brett gegen einen Anschlag hobeln, beim Schneiden beide Hände hinter der Schneide.',
  'Hot glue and its water bath scald: hide glue works at {} to {} °C and weakens above {} °C; set the pot where it cannot tip, keep water at hand, fit and clamp everything dry first, mind fingers in the clamps.':
    'Heißer Leim und sein Wasserbad verbrühen: Hautleim arbeitet bei {} bis {} °C und wird über {} °C schwächer; den Topf kippsicher stellen, Wasser bereithalten, zuerst alles trocken anpassen und spannen, auf die Finger in den Zwingen achten.',
  'With other glues follow the sheet that comes with them: gloves, fresh air, eyes.':
    'Bei anderen Leimen dem beiliegenden Blatt folgen: Handschuhe, frische Luft, Augen.',
  'Its length is that of the middle of its thickness, which bending leaves as it is.':
    'Ihre Länge ist die der Mitte ihrer Stärke, die das Biegen nicht ändert.',
  'Plane strips {} mm wide first; the tapered edge is planed to the line when the garland stands.':
    'Zuerst Streifen {} mm breit hobeln; die schräge Kante wird auf die Linie gehobelt, wenn der Zargenkranz steht.',
  'Turn the sheet over for the bass side.': 'Das Blatt für die Bassseite wenden.',
  'Two ribs meet on the centre line of the lower block: trim both square there on a shooting board, so that the joint closes without force.':
    'Zwei Zargen stoßen auf der Mittellinie des Unterklotzes zusammen: beide dort auf der Stoßlade rechtwinklig bestoßen, so dass die Fuge ohne Zwang schließt.',
  'Tightest bend {} mm, {} % stretch outside it: hold a metal strap against the outside (beyond {} %, from memory).':
    'Engste Biegung {} mm, außen {} % Dehnung: ein Metallband gegen die Außenseite halten (über {} %, aus dem Gedächtnis).',
  'The joint on the centre line of the upper block is cut away by the mortise of the neck: a gap there does not show, and each rib may end up to {} mm short of the centre line.':
    'Die Fuge auf der Mittellinie des Oberklotzes fällt der Halstasche zum Opfer: ein Spalt dort ist nicht zu sehen, und jede Zarge darf bis {} mm vor der Mittellinie enden.',
  'Do not cut the ribs along the mortise beforehand: it is knifed and sawn through top, ribs and block together, from the root of the neck that was cut.':
    'Die Zargen nicht vorher längs der Halstasche schneiden: sie wird durch Decke, Zargen und Klotz zusammen eingeschnitten und gesägt, nach dem fertigen Halsfuß.',
  'For looking at, not for measuring: five times as large as the instrument.':
    'Zum Ansehen, nicht zum Messen: fünfmal so groß wie das Instrument.',
  'The full lines are the cuts.': 'Die vollen Linien sind die Schnitte.',
  'No light between means that the rib will lie close.':
    'Kein Licht dazwischen heißt, dass die Zarge anliegen wird.',
  'Turn it over for the bass side.': 'Für die Bassseite wenden.',
  'The back is parallel to the straight line between both ends of the curve, the sides are square to it: with a small square on the back the face is checked upright.':
    'Der Rücken läuft gleich mit der geraden Linie zwischen beiden Enden der Kurve, die Seiten stehen rechtwinklig dazu: mit einem kleinen Winkel am Rücken wird geprüft, ob die Fläche lotrecht steht.',
  'Plain strips bent on the iron like the ribs: willow or spruce, grain along.':
    'Glatte Streifen, wie die Zargen am Eisen gebogen: Weide oder Fichte, Faser längs.',
  'Fit them dry to the ribs before glue.': 'Vor dem Leimen trocken in die Zargen einpassen.',
  'The linings of the waist go in first, their ends into mortises in the corner blocks ({} mm at full thickness, drawn on the block sheets); those of the bouts end close at the faces of all blocks.':
    'Die Reifchen des Mittelbügels kommen zuerst hinein, ihre Enden in Taschen der Eckklötze ({} mm in voller Stärke, auf den Klotzblättern gezeichnet); die der anderen Bügel enden dicht an den Flächen aller Klötze.',
  'Cut each a little long and trim until it springs in.':
    'Jedes etwas zu lang schneiden und kürzen, bis es hineinspringt.',
  'Let them stand over the ribs by a shaving and plane all level with the edge of the ribs, which may be tapered.':
    'Einen Span über die Zargen stehen lassen und alles bündig mit der Zargenkante hobeln, die schräg laufen kann.',
  'When the glue is dry pare the inner face from full thickness over {} mm at the edge down to about {} mm at the rib.':
    'Ist der Leim trocken, die Innenseite aus voller Stärke über {} mm am Rand auf etwa {} mm an der Zarge auslaufen lassen.',
  'The left tongue goes down into the mortise beside the rib until its shoulders rest on the edge: {} mm wide, {} mm deep.':
    'Die linke Zunge geht neben der Zarge in die Tasche, bis ihre Schultern auf der Kante aufsitzen: {} mm breit, {} mm tief.',
  'The right one, laid in along the rib from where the block holds the lining at its full thickness, is as long as the mortise reaches, {} mm.':
    'Die rechte, längs der Zarge eingelegt von dort, wo der Klotz das Reifchen in voller Stärke fasst, ist so lang wie die Tasche reicht, {} mm.',
  'Chisels slip: back the block up, cut away from the hand that holds, knife the sides before levering.':
    'Stechbeitel rutschen ab: den Klotz stützen, von der haltenden Hand weg schneiden, die Seiten vor dem Ausheben mit dem Messer einschneiden.',
  'Build it up from sheet to at most {} mm across the rib, so that both edges of the rib stay free for linings and glue.':
    'Aus Plattenmaterial auf höchstens {} mm quer zur Zarge aufbauen, so dass beide Zargenkanten für Reifchen und Leim frei bleiben.',
  'Glue {} mm of cork or leather on the curved face, which is drawn for it, and wax it or lay paper between: squeezed-out glue must not hold it.':
    '{} mm Kork oder Leder auf die gebogene Fläche leimen, die dafür gezeichnet ist, und sie wachsen oder Papier dazwischenlegen: ausgequetschter Leim darf sie nicht halten.',
  'Over the whole end block, with a clamp on either side of the centre line; the groove keeps off the joint of the ribs.':
    'Über den ganzen Endklotz, mit einer Zwinge beiderseits der Mittellinie; die Nut hält von der Zargenfuge ab.',
  'The clamp bears on the back at its mark and in the nearest hole of the form: its jaws open {} mm or more.':
    'Die Zwinge drückt an ihrer Marke auf den Rücken und in das nächste Loch der Form: sie öffnet {} mm oder mehr.',
  'Presses the rib on its face of the corner block; it stops short of the rib corner, where the joint is trimmed.':
    'Drückt die Zarge auf ihre Fläche des Eckklotzes; sie endet vor der Zargenecke, wo die Fuge beschnitten wird.',
  'One piece serves both sides, turned over; two let both be glued at once.':
    'Ein Stück dient gewendet beiden Seiten; mit zweien leimst du beide zugleich.',
  'Between the backs of both waist cauls {} mm are left for clamps: where that is too little, glue one corner after the other.':
    'Zwischen den Rücken beider Zulagen am Mittelbügel bleiben {} mm für Zwingen: wo das zu wenig ist, eine Ecke nach der anderen leimen.',
  'Holds the bent waist rib on the form between the blocks while it cools and dries; take it off before the blocks are glued, it stands in the way of their cauls.':
    'Hält die gebogene Mittelzarge zwischen den Klötzen an der Form, während sie abkühlt und trocknet; vor dem Leimen an den Klötzen abnehmen, sie steht deren Zulagen im Weg.',
  'Between them the edge is straight when a flat board lies on it, which is not a straight line on the rib laid flat.':
    'Dazwischen ist die Kante gerade, wenn ein ebenes Brett aufliegt, was auf der abgewickelten Zarge keine gerade Linie ist.',
  'The corner end is {} mm wide.': 'Das Eckenende ist {} mm breit.',
  'Where both scored lines meet is the mitre of the purfling: prick or drill it through there; a hole cut so near to the end would break out; from it a line runs to the tip of its point: a slot would break out there, so prick its end through.':
    'Wo sich beide angerissenen Linien treffen, ist die Gehrung der Einlage: dort durchstechen oder bohren; ein Loch so nah am Ende würde ausbrechen; von dort läuft eine Linie zur Spitze der Einlage: ein Schlitz würde ausbrechen, also ihr Ende durchstechen.',
  'The point reaches {} mm beyond the mitre and bends {} mm toward the waist.':
    'Die Spitze reicht {} mm über die Gehrung hinaus und biegt sich {} mm zum Mittelbügel.',
  'Held upright against the closed body, or against the ribs laid on a plate: the lower side on the rib, the step over the edge.':
    'Aufrecht an den geschlossenen Korpus gehalten oder an die auf eine Platte gelegten Zargen: die untere Seite an der Zarge, die Stufe über dem Rand.',
  'Both touch when the plate stands out {} mm along the bouts (left) and {} mm at the end of a corner (right).':
    'Beide berühren, wenn die Platte an den Bügeln {} mm (links) und am Ende einer Ecke {} mm (rechts) vorsteht.',
  'Lies on the plate with its round end against the rib, square to it; a scriber or the lead of a mechanical pencil through the hole draws the outline {} mm outside the rib along the bouts.':
    'Liegt auf der Platte, das runde Ende an der Zarge, rechtwinklig zu ihr; eine Reißnadel oder Bleimine durch das Loch zeichnet an den Bügeln den Umriss {} mm außerhalb der Zarge.',
  'The other end is for the end of the corners, {} mm; beside a corner, where the plate stands out more, the corner templates draw the edge.':
    'Das andere Ende ist für das Ende der Ecken, {} mm; neben einer Ecke, wo die Platte weiter vorsteht, zeichnen die Eckenschablonen den Rand.',
  'Cut it from thin sheet, card or metal of about {} mm.':
    'Aus dünnem Blech oder Karton von etwa {} mm schneiden.',
  'Thickness of the edge, at the crest: {} within {} mm.': 'Stärke des Rands am Kamm: {} auf {} mm genau.',
  'The left slot ({}) goes over it, the right one ({}) does not.':
    'Der linke Schlitz ({}) geht darüber, der rechte ({}) nicht.',
  'Depth of the finished channel: the straight foot rests on the crest, a tongue stands in the channel {} inside it.':
    'Tiefe der fertigen Hohlkehle: der gerade Fuß ruht auf dem Kamm, eine Zunge steht in der Hohlkehle {} innerhalb davon.',
  'With the left tongue ({}) the foot comes down on the crest, with the right one ({}) it does not.':
    'Mit der linken Zunge ({}) kommt der Fuß auf den Kamm, mit der rechten ({}) nicht.',
  'At the corners, where many makers leave the edge a little thicker, measure with a calliper.':
    'An den Ecken, wo viele den Rand etwas stärker lassen, mit dem Messschieber messen.',
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
