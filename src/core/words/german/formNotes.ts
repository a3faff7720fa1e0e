import type { Catalogue } from '../catalogue.ts';

/** What is noted beside the pieces of the form and the ribs, sentence by sentence. */
export const formNotes: Catalogue = {
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
};
