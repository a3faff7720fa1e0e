import type { Catalogue } from '../catalogue.ts';

/** What stands on pieces and beside them only where a maker chose another way: left-handed, other ribs and linings, other gauges. */
export const drawnChoices: Catalogue = {
  // Left-handed.
  'Bass side, seen from outside, neck up; turned over it is the treble one.':
    'Bassseite, von außen gesehen, Hals oben; gewendet ist es die Diskantseite.',
  'Bass side, neck up; turned over it is the treble one.':
    'Bassseite, Hals oben; gewendet ist es die Diskantseite.',
  'bass side, outside up': 'Bassseite, außen oben',
  'bass side, on the arch': 'Bassseite, auf der Wölbung',
  'turn over for the treble': 'für Diskant wenden',
  'right: from the bass side': 'rechts: von der Bassseite',
  'Rectangles: feet of the bridge, {} mm over both; long piece: the bar under the top, round one: the post, left-handed.':
    'Rechtecke: Stegfüße, {} mm über beide; langes Stück: der Balken unter der Decke, rundes: der Stimmstock, linkshändig.',
  'Heads of the pegs: G right, E left, D right, A left, looking at the front with the scroll up.':
    'Köpfe der Wirbel: G rechts, E links, D rechts, A links, von vorn gesehen, Schnecke oben.',
  'Heads of the pegs: C right, A left, G right, D left, looking at the front with the scroll up.':
    'Köpfe der Wirbel: C rechts, A links, G rechts, D links, von vorn gesehen, Schnecke oben.',
  'lower end to the left · this side to the edge · bevel in degrees over mm from the lower end':
    'unteres Ende links · diese Seite zum Rand · Schräge in Grad über mm vom unteren Ende',
  // Ribs.
  'Both ribs run past the corner and are bevelled by {}° each, half the opening of the corner, until they close on each other over the tip of the block; then both are trimmed to the end of the rib corner.':
    'Beide Zargen laufen über die Ecke hinaus und werden um je {}° abgeschrägt, die halbe Öffnung der Ecke, bis sie über der Spitze des Klotzes schließen; dann werden beide auf das Ende der Zargenecke gekürzt.',
  'As drawn the block reaches the end of the corner and shows between the ribs, {} mm at the lower corners and {} mm at the upper corners: pare its tip back by as much and draw the ends together in the clamp, or leave it.':
    'Wie gezeichnet reicht der Klotz bis ans Ende der Ecke und zeigt sich zwischen den Zargen, {} mm an den unteren und {} mm an den oberen Ecken: die Spitze um so viel zurückstechen und die Enden in der Zwinge zusammenziehen, oder es so lassen.',
  'Glue the upper and lower ribs first, their ends running past the corners.':
    'Zuerst Ober- und Unterzargen leimen, ihre Enden laufen über die Ecken hinaus.',
  'Pare each end flush with the face of the block on the waist side, so that it is bevelled by {}° and runs out to an edge; the waist ribs go over it, and all is trimmed to the end of the rib corner.':
    'Jedes Ende bündig mit der Fläche des Klotzes auf der Mittelbügelseite abstechen, so dass es um {}° abgeschrägt ist und in eine Kante ausläuft; die Mittelzargen gehen darüber, und alles wird auf das Ende der Zargenecke gekürzt.',
  'In one piece from corner to corner: bend its middle first, glue it to the lower block on the centre line, then work out to both corners.':
    'In einem Stück von Ecke zu Ecke: zuerst die Mitte biegen, auf der Mittellinie an den Unterklotz leimen, dann nach beiden Ecken hin arbeiten.',
  'In one piece from corner to corner: bend its middle first, glue it to the upper block on the centre line, then work out to both corners.':
    'In einem Stück von Ecke zu Ecke: zuerst die Mitte biegen, auf der Mittellinie an den Oberklotz leimen, dann nach beiden Ecken hin arbeiten.',
  'The mortise of the neck cuts it through later.': 'Die Halstasche durchschneidet sie später.',
  'lower rib, in one': 'Unterzarge, in einem Stück',
  'upper rib, in one': 'Oberzarge, in einem Stück',
  'LOWER RIB · IN ONE PIECE': 'UNTERZARGE · IN EINEM STÜCK',
  'UPPER RIB · IN ONE PIECE': 'OBERZARGE · IN EINEM STÜCK',
  'lower, half': 'Unterzarge, Hälfte',
  'upper, half': 'Oberzarge, Hälfte',
  strap: 'Band',
  'corner to corner {} mm, {} mm more at either end; {} high':
    'Ecke bis Ecke {} mm, an jedem Ende {} mm mehr; {} hoch',
  'seen from outside, treble side to the right; the lower edge is level':
    'von außen gesehen, Diskantseite rechts; die untere Kante ist gerade',
  'seen from outside, bass side to the right; the lower edge is level':
    'von außen gesehen, Bassseite rechts; die untere Kante ist gerade',
  'circle: hole of the end button, {} mm, its middle {} mm up from the back':
    'Kreis: Loch des Endknopfs, {} mm, Mitte {} mm über dem Boden',
  'slanting lines: sides of the mortise; {} mm (back) to {} mm (top) from the centre line go':
    'schräge Linien: Seiten der Halstasche; {} mm (Boden) bis {} mm (Decke) ab Mittellinie fallen weg',
  'lower: opens {}°, end {} wide, block between {}, plate {} out beside it; bevels: outer rib {}°, waist rib {}°':
    'unten: öffnet {}°, Ende {} breit, Klotz dazwischen {}, Platte daneben {} vor; Schrägen: äußere Zarge {}°, Mittelzarge {}°',
  'upper: opens {}°, end {} wide, block between {}, plate {} out beside it; bevels: outer rib {}°, waist rib {}°':
    'oben: öffnet {}°, Ende {} breit, Klotz dazwischen {}, Platte daneben {} vor; Schrägen: äußere Zarge {}°, Mittelzarge {}°',
  // Linings.
  'Kerfed: saw the strips from the inner side to about two thirds of their thickness every {} mm or so, on a jig with a stop; then they bend cold.':
    'Eingesägt: die Streifen von innen etwa alle {} mm auf rund zwei Drittel ihrer Stärke einsägen, in einer Vorrichtung mit Anschlag; dann biegen sie sich kalt.',
  'Kerfs count nothing in the length.': 'Die Sägeschnitte zählen nicht in der Länge.',
  'The lines behind the shaped sides are mortises for the linings, at the back and at the top: {} mm wide along the rib, {} mm deep from the edge of the ribs, let in at full thickness: bout side {} mm, waist side {} mm.':
    'Die Linien hinter den geformten Seiten sind Taschen für die Reifchen, am Boden und an der Decke: {} mm breit längs der Zarge, {} mm tief von der Zargenkante, in voller Stärke eingelassen: Bügelseite {} mm, Mittelbügelseite {} mm.',
  'The linings of the waist go in first, their ends into mortises in the corner blocks ({} mm at full thickness, drawn on the block sheets); those of the bouts are let in at the corner blocks too and end at the faces of upper and lower block.':
    'Die Reifchen des Mittelbügels kommen zuerst hinein, ihre Enden in Taschen der Eckklötze ({} mm in voller Stärke, auf den Klotzblättern gezeichnet); die der anderen Bügel sind an den Eckklötzen auch eingelassen und enden an den Flächen von Ober- und Unterklotz.',
  // Gauges.
  'Arching gauge, {}, {}, from the bench': 'Wölbungsschablone, {}, {}, von der Bank aus',
  'Arching gauge, {}, {}, finished edge, from the bench':
    'Wölbungsschablone, {}, {}, fertiger Rand, von der Bank aus',
  'Arching gauge, back, along the centre line, from the bench':
    'Wölbungsschablone, Boden, längs der Mittellinie, von der Bank aus',
  'Arching gauge, top, along the centre line, from the bench':
    'Wölbungsschablone, Decke, längs der Mittellinie, von der Bank aus',
  'Arching gauge, back, along the centre line, finished edge, from the bench':
    'Wölbungsschablone, Boden, längs der Mittellinie, fertiger Rand, von der Bank aus',
  'Arching gauge, top, along the centre line, finished edge, from the bench':
    'Wölbungsschablone, Decke, längs der Mittellinie, fertiger Rand, von der Bank aus',
  'Stands over the plate from the bench: lay the plate flat on its gluing face and stand both feet on the same surface, beside it; where the edge is still too thick the gauge rocks on it.':
    'Steht von der Bank aus über der Platte: die Platte flach auf die Leimfläche legen und beide Füße daneben auf dieselbe Fläche stellen; wo der Rand noch zu dick ist, wippt die Schablone auf ihm.',
  'Stands over the plate from the bench: lay the plate flat on its gluing face and stand both feet on the same surface, beside it; a gauge that rocks on the crest says that the edge is too thick.':
    'Steht von der Bank aus über der Platte: die Platte flach auf die Leimfläche legen und beide Füße daneben auf dieselbe Fläche stellen; wippt die Schablone auf dem Randwulst, ist der Rand zu dick.',
  'Touches the flat edge, {} mm thick, before the channel is cut: the arch is right when it comes down to the flat all along the gauge.':
    'Berührt den flachen Rand, {} mm dick, bevor die Hohlkehle gestochen ist: die Wölbung stimmt, wenn sie die ganze Schablone entlang auf den flachen Rand herunterkommt.',
  'Touches the crest of the finished edge, {} mm in from the edge and {} mm thick, and reaches down into the finished channel.':
    'Berührt den Wulst des fertigen Randes, {} mm vom Rand und {} mm dick, und reicht in die fertige Hohlkehle hinunter.',
  'At the neck end it steps over the button and stands beyond it.':
    'Am Halsende geht sie über das Zäpfchen hinweg und steht dahinter.',
  'Its edge stays square and clears the plate with its whole thickness: at the lettered face it stands off the finished wood by up to {} mm, on the centre line.':
    'Ihre Kante bleibt rechtwinklig und geht mit der ganzen Stärke frei: an der beschrifteten Fläche steht sie bis zu {} mm vom fertigen Holz ab, auf der Mittellinie.',
  'Its edge stays square and clears the plate with its whole thickness: at the lettered face it stands off the finished wood by up to {} mm, {} mm from the centre line.':
    'Ihre Kante bleibt rechtwinklig und geht mit der ganzen Stärke frei: an der beschrifteten Fläche steht sie bis zu {} mm vom fertigen Holz ab, {} mm neben der Mittellinie.',
  // Tailpiece.
  'From its fret to its end the tailpiece may be {} mm long; yours is {} mm, which leaves {} mm of gut before the saddle ({} to {} mm on a violin, from memory).':
    'Von seinem Sattel bis zum Ende darf der Saitenhalter {} mm lang sein; deiner hat {} mm, das lässt {} mm Hängesaite vor dem Untersattel ({} bis {} mm bei einer Geige, aus dem Gedächtnis).',
};
