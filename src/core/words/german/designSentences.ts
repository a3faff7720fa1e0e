import type { Catalogue } from '../catalogue.ts';

export const designSentences: Catalogue = {
  'a scoop {} mm deep in an edge of {} mm': 'eine Kehle, {} mm tief, in einem Rand von {} mm',
  'wood left under the channel': 'Holz unter der Hohlkehle',
  'make the scoop shallower, or the edge thicker': 'Mach die Kehle flacher oder den Rand dicker',
  'an arch of {} mm, edge included, with an edge of {} mm':
    'eine Wölbung von {} mm samt Rand, bei einem Rand von {} mm',
  'the arch higher than the edge': 'eine Wölbung, die höher ist als der Rand',
  'give the height of the arch from the gluing face, the edge included':
    'Gib die Höhe der Wölbung ab der Leimfläche an, den Rand mitgezählt',
  '{}: the cycloid would loop': '{}: die Zykloide würde eine Schleife schlagen',
  '{}: a steep arch with a very tight channel': '{}: eine steile Wölbung mit sehr enger Hohlkehle',
  'a rise below {} mm': 'einen Stich unter {} mm',
  'a rise up to {} mm for a channel that a scraper can follow':
    'einen Stich bis {} mm, damit eine Ziehklinge der Hohlkehle folgen kann',
  'lower the arch, bring the channel nearer to the edge, or widen the waist':
    'Mach die Wölbung niedriger, leg die Hohlkehle näher an den Rand oder mach den Mittelbügel breiter',
  'end fillets of {} mm': 'Ausrundungen an den Enden von {} mm',
  'less than {} mm, the radius of the whole long arch':
    'weniger als {} mm, den Radius der ganzen Längswölbung',
  'use a smaller fillet': 'Nimm eine kleinere Ausrundung',
  'a channel {} mm from each end': 'eine Hohlkehle, {} mm von beiden Enden',
  'less than half the body length': 'weniger als die halbe Korpuslänge',
  'bring the channel nearer to the edge': 'Leg die Hohlkehle näher an den Rand',
  'a fullness of {}': 'eine Völligkeit von {}',
  '{} to {}; 0 is the cycloid itself': '{} bis {}; 0 ist die Zykloide selbst',
  'bring it nearer to 0': 'Bring sie näher an 0',
  'a flat spot of {} mm² {}': 'eine ebene Stelle von {} mm² {}',
  'an arch that is bent everywhere, at least one way':
    'eine Wölbung, die überall gekrümmt ist, wenigstens in einer Richtung',
  'change the fullness at the nearest stations, or the long arch':
    'Ändere die Völligkeit an den nächsten Stellen oder die Längswölbung',
  'a hollow of {} mm², dished both ways, {}': 'eine Mulde von {} mm², in beiden Richtungen hohl, {}',
  'no dish greater than {} mm² away from the channel': 'abseits der Hohlkehle keine Mulde über {} mm²',
  'make the arch fuller at the nearest station': 'Mach die Wölbung an der nächsten Stelle voller',
  'the arch {} by {} mm between its stations {}': 'die Wölbung {} um {} mm zwischen ihren Stellen {}',
  sags: 'sackt durch',
  'stands out': 'steht vor',
  'at most {} mm there': 'dort höchstens {} mm',
  'bring the fullness of neighbouring stations nearer to each other, or lower it at the corners':
    'Bring die Völligkeit benachbarter Stellen einander näher oder mach sie an den Ecken kleiner',
  'the arch bends with a radius of only {} mm {}, which looks like a crease':
    'die Wölbung biegt sich mit einem Radius von nur {} mm {}, was wie ein Knick aussieht',
  '{} mm or more inside the channel': '{} mm oder mehr innerhalb der Hohlkehle',
  'bring the fullness of neighbouring stations nearer to each other, or leave out measured heights that stand off':
    'Bring die Völligkeit benachbarter Stellen einander näher oder lass gemessene Höhen weg, die abstehen',
  'the slope along the body turns round {} times by half a degree or more, quickest {}: ripples under a low lamp':
    'das Gefälle längs kehrt {} Mal um ein halbes Grad oder mehr um, am raschesten {}: Wellen unter einer tiefen Lampe',
  '{} times or fewer': '{} Mal oder weniger',
  'say a larger plusMinus for the measured heights, or leave out those that stand off':
    'Gib für die gemessenen Höhen ein größeres ± an oder lass die weg, die abstehen',
  'bring the fullness of neighbouring stations nearer to each other':
    'Bring die Völligkeit benachbarter Stellen einander näher',
  'the arch falls at {} degrees {}': 'die Wölbung fällt mit {} Grad {}',
  'at most {} degrees': 'höchstens {} Grad',
  'lower the arch, or bring the channel nearer to the edge there':
    'Mach die Wölbung niedriger oder leg die Hohlkehle dort näher an den Rand',
  'the arch lies {} mm below its channel {}': 'die Wölbung liegt {} mm unter ihrer Hohlkehle {}',
  'the channel as the lowest line of the arch': 'die Hohlkehle als tiefste Linie der Wölbung',
  'make the arch fuller at the nearest station, or the channel narrower there':
    'Mach die Wölbung an der nächsten Stelle voller oder die Hohlkehle dort schmaler',
  'the highest place is {} mm high, {}': 'die höchste Stelle ist {} mm hoch, {}',
  '{} mm on the centre line, {} mm from the lower end': '{} mm auf der Mittellinie, {} mm vom unteren Ende',
  'give {} as the measured heights have it': 'Gib {} so an, wie die gemessenen Höhen es haben',
  'make the arch less full beside the crest': 'Mach die Wölbung neben dem Scheitel weniger voll',
  '{} mm: {}': '{} mm: {}',
  'a length above zero': 'eine Länge über null',
  'give the edge of the plate beyond the ribs as a positive length':
    'Gib den Randüberstand als positive Länge an',
  'a corner end of {} mm with {} mm of overhang on both sides':
    'ein Eckenende von {} mm mit {} mm Überstand auf beiden Seiten',
  'at least {} mm, so that the rib corner keeps {} mm': 'mindestens {} mm, damit die Zargenecke {} mm behält',
  'widen the corner end, or let the plate overhang less':
    'Mach das Eckenende breiter oder lass die Platte weniger überstehen',
  'a channel {} mm from each edge of a waist of {} mm':
    'eine Hohlkehle, {} mm von jedem Rand, bei einem Mittelbügel von {} mm',
  'less than {} mm': 'weniger als {} mm',
  'bring the channel nearer to the edge, or widen the waist':
    'Leg die Hohlkehle näher an den Rand oder mach den Mittelbügel breiter',
  'purfling {} mm from both edges of a waist of {} mm':
    'eine Einlage, {} mm von beiden Rändern, bei einem Mittelbügel von {} mm',
  'correct the distance of the purfling from the edge': 'Berichtige den Abstand der Einlage vom Rand',
  'the crest of the edge {} mm in, the channel {} mm in':
    'der Randwulst {} mm innen, die Hohlkehle {} mm innen',
  'the crest outside the channel': 'den Randwulst außerhalb der Hohlkehle',
  'move the crest outwards, or the channel inwards':
    'Rück den Randwulst nach außen oder die Hohlkehle nach innen',
  'a flat edge of {} mm, the channel {} mm in': 'ein flacher Rand von {} mm, die Hohlkehle {} mm innen',
  'the flat edge outside the lowest line of the channel':
    'den flachen Rand außerhalb der tiefsten Linie der Hohlkehle',
  'make the flat edge narrower, or move the channel inwards':
    'Mach den flachen Rand schmaler oder rück die Hohlkehle nach innen',
  'purfling that ends {} mm from the edge, the channel {} mm in':
    'eine Einlage, die {} mm vom Rand endet, die Hohlkehle {} mm innen',
  'the purfling outside the lowest line of the channel':
    'die Einlage außerhalb der tiefsten Linie der Hohlkehle',
  'check the distance of the purfling from the edge, or move the channel inwards':
    'Prüf den Abstand der Einlage vom Rand oder rück die Hohlkehle nach innen',
  'a stop of {} mm on a body of {} mm': 'eine Korpusmensur von {} mm bei einem Korpus von {} mm',
  'a stop shorter than the body': 'eine Korpusmensur, die kürzer ist als der Korpus',
  'correct the stop, or the body length': 'Berichtige die Korpusmensur oder die Korpuslänge',
  'a stop of {} of the body': 'eine Korpusmensur von {} des Korpus',
  '{} to {} of it (the bridge stands near 0.55)': '{} bis {} davon (der Steg steht nahe 0,55)',
  'measure the stop again from the upper end of the top to the bridge line':
    'Miss die Korpusmensur noch einmal, vom oberen Ende der Decke bis zur Steglinie',
  'neck stop to body stop as {} to {} mm, {}': 'Halsmensur zu Korpusmensur wie {} zu {} mm, {}',
  'about {}, which is {} mm of neck': 'etwa {}, das sind {} mm Hals',
  'change the neck stop, or keep it if the player wants it so':
    'Ändere die Halsmensur oder behalte sie, wenn der Spieler sie so will',
  'no value': 'kein Wert',
  'a value, as every design has': 'einen Wert, wie ihn jeder Entwurf hat',
  'add it, or draft the design again': 'Füg ihn hinzu oder zeichne den Entwurf neu',
  '{} mm': '{} mm',
  'not a number': 'keine Zahl',
  'zero or more': 'null oder mehr',
  'correct it': 'Berichtige es',
  '{}{}, outside what is usual': '{}{}, außerhalb des Üblichen',
  'usually {} ({})': 'üblich {} ({})',
  'keep it if it is meant, or check the number': 'Behalte es, wenn es so gemeint ist, oder prüf die Zahl',
  'a form of {} mm in ribs of {} mm': 'eine Form von {} mm in Zargen von {} mm',
  'a form thinner than the lowest rib': 'eine Form, die dünner ist als die niedrigste Zarge',
  'use a thinner form': 'Nimm eine dünnere Form',
  'a form of {} mm between linings of {} mm': 'eine Form von {} mm zwischen Reifchen von {} mm',
  '{} mm or less, if both linings go in with the form in place':
    '{} mm oder weniger, wenn beide Reifchen eingesetzt werden, solange die Form steckt',
  'use a thinner form, or put in the second linings after the form is out':
    'Nimm eine dünnere Form oder setz die zweiten Reifchen ein, wenn die Form heraus ist',
  'ribs of {} mm at the neck and {} mm at the lower end': 'Zargen von {} mm am Hals und {} mm unten',
  'ribs as high at the lower end as at the neck, or higher':
    'Zargen, die unten so hoch sind wie am Hals oder höher',
  'check whether the two were exchanged': 'Prüf, ob die beiden vertauscht sind',
  'a pin {} mm from the end, a block that reaches {} mm in':
    'ein Stift {} mm vom Ende, ein Klotz, der {} mm hineinreicht',
  'the pin hole in the form, clear of the recess': 'das Stiftloch in der Form, frei von der Aussparung',
  'move the pins further in': 'Rück die Stifte weiter nach innen',
  '{} mm in the values, {} mm on the traced outline': '{} mm in den Werten, {} mm am abgenommenen Umriss',
  'the two within {} mm: a traced outline does not follow its values':
    'beide innerhalb von {} mm: ein abgenommener Umriss folgt seinen Werten nicht',
  'set the value back, or draft the outline from the values instead':
    'Setz den Wert zurück oder zeichne den Umriss aus den Werten',
  'no body length': 'keine Korpuslänge',
  'the length of the body without the button': 'die Länge des Korpus ohne Zäpfchen',
  'measure it, or give a photograph with a known length':
    'Miss sie oder gib ein Foto mit einer bekannten Länge',
  "{} in the table, {} mm on the photograph; the photograph's is used":
    '{} in der Tabelle, {} mm auf dem Foto; die des Fotos gilt',
  'the two within {} mm': 'beide innerhalb von {} mm',
  'measure it again, or draft from the table alone': 'Miss noch einmal oder zeichne aus der Tabelle allein',
  nothing: 'nichts',
  'a value, to draft the outline from': 'einen Wert, aus dem der Umriss gezeichnet wird',
  'add it to the design': 'Füg ihn dem Entwurf hinzu',
  'write it like {}': 'Schreib es wie {}',
  'a size above zero': 'eine Größe über null',
  'correct it, or leave it out and it is filled from the family':
    'Berichtige es oder lass es weg, dann wird es aus der Familie gefüllt',
  'an entry that this Garland does not read': 'ein Eintrag, den dieses Garland nicht liest',
  'one of {}': 'eines von {}',
  'check its spelling, or leave it: nothing was taken from it':
    'Prüf die Schreibweise oder lass ihn stehen: daraus wurde nichts genommen',
  '{} of your own, where the map “{}” has {}; yours is used':
    '{} von dir, wo der Plan „{}“ {} hat; deines gilt',
  'one of the two': 'eines von beiden',
  'keep it, or remove the value for the map to fill':
    'Behalte ihn oder entfern den Wert, damit der Plan ihn füllt',
  '“{}”, thicknesses for a {} body of {}, on a {} of {}; they are used as they stand':
    '„{}“, Stärken für einen Korpus ({}) von {}, auf einem Entwurf ({}) von {}; sie gelten, wie sie stehen',
  'thicknesses of this size, unless others are meant': 'Stärken dieser Größe, wenn nicht andere gemeint sind',
  'keep it if it is meant, or name the map of a nearer size':
    'Behalte ihn, wenn er gemeint ist, oder nenn den Plan einer näheren Größe',
  'a traced half that does not run from the origin to the centre line on the treble side':
    'eine abgenommene Hälfte, die nicht vom Ursprung zur Mittellinie auf der Diskantseite läuft',
  'a half outline from (0, 0) to (0, body length) with x not below zero':
    'einen halben Umriss von (0, 0) bis (0, Korpuslänge), x nicht unter null',
  'trace the photograph again; the file was changed or damaged':
    'Nimm das Foto noch einmal ab; die Datei wurde verändert oder beschädigt',
  'a value that this Garland does not know; it is kept and not used':
    'ein Wert, den dieses Garland nicht kennt; er bleibt erhalten und wird nicht gebraucht',
  'a known name, for it to be used': 'einen bekannten Namen, damit er gebraucht wird',
  'a known name, such as “{}”': 'einen bekannten Namen, etwa „{}“',
  'correct its name, or leave it': 'Berichtige den Namen oder lass ihn stehen',
  "no {} and {} more in the document, which an older Garland saved; the family's habits are used":
    'kein {} und {} weitere in der Datei, die ein älteres Garland gespeichert hat; es gilt das Übliche der Familie',
  'values of its own': 'eigene Werte',
  'keep them, or set them; derive lists each, and they are saved with the design':
    'Behalte sie oder setz sie; jeder wird mit dem Entwurf gespeichert',
  "no value in the document; {} is used, the family's habit":
    'kein Wert in der Datei; {} gilt, das Übliche der Familie',
  'a value of its own': 'einen eigenen Wert',
  'keep it, or set it; it is saved with the design':
    'Behalte ihn oder setz ihn; er wird mit dem Entwurf gespeichert',
  'add it': 'Füg es hinzu',
  'a name that is not known, “{}”': 'ein unbekannter Name, „{}“',
  'one of the known names': 'einen der bekannten Namen',
  'remove it, or look the name up in the schema': 'Entfern ihn oder schlag ihn im Schema nach',
  'write {}, or remove it': 'Schreib {} oder entfern ihn',
  '{}, {} than any {}': '{}, {} als jede Größe dieser Familie ({})',
  'a {} body of {} to {} mm': 'einen Korpus ({}) von {} bis {} mm',
  '{}, {} than usual for a {}': '{}, {} als üblich ({})',
  'a {} body of {} to {} mm, as makers have them':
    'einen Korpus ({}) von {} bis {} mm, wie Geigenbauer sie haben',
  'check whether it was taken over the arch, with the button, or whether it is not a {}':
    'Prüf, ob über die Wölbung oder mit dem Zäpfchen gemessen wurde, oder ob es etwas anderes ist ({})',
  '{} on a body where about {} mm is usual': '{} bei einem Korpus, wo etwa {} mm üblich sind',
  'between {} and {} mm': 'zwischen {} und {} mm',
  'if these are {}, write the value with its unit': 'Wenn das {} sind, schreib den Wert mit seiner Einheit',
  'read the number again, or leave it out and it is filled from the family':
    'Lies die Zahl noch einmal ab oder lass sie weg, dann wird sie aus der Familie gefüllt',
  'not said whether {} was taken straight or over the arch; read as straight':
    'nicht gesagt, ob {} gerade oder über die Wölbung gemessen wurde; als gerade gelesen',
  'to be known: a tape over the arch would read about {} mm more':
    'dass man es weiß: ein Band über die Wölbung läse etwa {} mm mehr',
  'set taken.bodyLength to straight or over-arch': 'Setz taken.bodyLength auf straight oder over-arch',
  'not said whether widths go from edge to edge or over the purfling; read as edge to edge':
    'nicht gesagt, ob Breiten von Rand zu Rand oder über die Einlage gehen; als Rand zu Rand gelesen',
  'to be known: over the purfling they are two borders less':
    'dass man es weiß: über die Einlage sind es zwei Ränder weniger',
  'set taken.widths to edge or purfling': 'Setz taken.widths auf edge oder purfling',
  'an angle in degrees and decimals': 'einen Winkel in Grad, dezimal',
  'a pull in newtons, kilograms or pounds': 'einen Zug in Newton, Kilogramm oder Pfund',
  'a frequency in hertz': 'eine Frequenz in Hertz',
  'a mass in grams a metre': 'eine Masse in Gramm je Meter',
  'a density in kg/m³': 'eine Dichte in kg/m³',
  'a plain number without a unit': 'eine bloße Zahl ohne Einheit',
  'the character "{}", which our stroke letters do not hold':
    'das Zeichen „{}“, das unsere Strichschrift nicht hat',
  'Latin letters, figures and common signs': 'lateinische Buchstaben, Ziffern und übliche Zeichen',
  'the piece shows a box in its place; spell the word another way':
    'Auf dem Stück steht ein Kästchen an seiner Stelle; schreib das Wort anders',
  '{} mm where the sheet says {} mm': '{} mm, wo das Blatt {} mm sagt',
  'a length within 15 % of it': 'eine Länge, die höchstens 15 % davon abweicht',
  'print at actual size (100 %) with no fitting to the page, and measure again':
    'Druck in wahrer Größe (100 %), ohne Anpassen an die Seite, und miss noch einmal',
  'the character "{}", which the type in the margins does not hold':
    'das Zeichen „{}“, das die Schrift in den Rändern nicht hat',
  'letters of western Europe and common signs': 'westeuropäische Buchstaben und übliche Zeichen',
  'it prints without its accent or as a question mark; nothing on the piece changes':
    'Es wird ohne seinen Akzent oder als Fragezeichen gedruckt; am Stück ändert sich nichts',
  'no line to print': 'keine Linie zu drucken',
  'at least one drawing with a line': 'mindestens eine Zeichnung mit einer Linie',
  'choose other parts': 'Wähl andere Teile',
  'a coordinate that is not a number': 'eine Koordinate, die keine Zahl ist',
  'finite millimetres': 'endliche Millimeter',
  'check the values that this piece is drawn from': 'Prüf die Werte, aus denen dieses Stück gezeichnet wird',
  'a finite number': 'eine endliche Zahl',
  'the {} comes down to {} mm {}, {} mm short ({})': '{}: kommt auf {} mm herunter, {}, {} mm zu wenig ({})',
  '{} mm or more there ({})': 'dort {} mm oder mehr ({})',
  'leave it thicker there, or set {} in the design if so little is meant':
    'Lass es dort dicker oder setz {} im Entwurf, wenn so wenig gemeint ist',
  'the {}, in mm': '{}, in mm',
  'give the value, or fill it from the habits of the family':
    'Gib den Wert an oder füll ihn aus dem Üblichen der Familie',
  'a length above 0 mm': 'eine Länge über 0 mm',
  'correct the {}': 'Berichtige: {}',
  'a festooned outline, with more curves than two bouts and a waist':
    'ein geschweifter Umriss mit mehr Bögen als zwei Bügeln und einer Mitte',
  'trace it from a photograph by hand; it cannot be drafted from widths':
    'Nimm ihn von Hand von einem Foto ab; aus Breiten lässt er sich nicht zeichnen',
  'a body without corners': 'ein Korpus ohne Ecken',
  'it cannot be drafted from widths with corners added that it never had':
    'Aus Breiten lässt er sich nicht zeichnen, mit Ecken, die er nie hatte',
  'a viol body: sloping shoulders, flat back, wide corners':
    'ein Gambenkorpus: abfallende Schultern, flacher Boden, breite Ecken',
  'it lies outside what is drawn here': 'Er liegt außerhalb dessen, was hier gezeichnet wird',
  'a bass': 'ein Bass',
  'an inner form: its widths are those of the line inside the ribs':
    'eine Innenform: ihre Breiten sind die der Linie innen an den Zargen',
  'widths of the plate': 'Breiten der Platte',
  'add twice the overhang and twice the rib thickness to each width, and to the length':
    'Zähl zu jeder Breite und zur Länge zweimal den Überstand und zweimal die Zargenstärke hinzu',
  'a pocket instrument, whose body is seldom that of a small violin':
    'ein Tascheninstrument, dessen Korpus selten der einer kleinen Geige ist',
  'look whether it has four corners before using the outline':
    'Sieh nach, ob es vier Ecken hat, bevor du den Umriss brauchst',
  'a viola d’amore, which mostly has a viol’s body': 'eine Viola d’amore, die meist einen Gambenkorpus hat',
  'look at its corners and shoulders before using the outline':
    'Sieh dir Ecken und Schultern an, bevor du den Umriss brauchst',
  'not an instrument that is drawn here': 'kein Instrument, das hier gezeichnet wird',
  'say which of the three it is': 'Sag, welches der drei es ist',
  'two numbers of this name': 'zwei Zahlen dieses Namens',
  'one number a name': 'eine Zahl je Name',
  'rename one of them': 'Benenn eine davon um',
  'derived from {}, which is not in the register': 'aus {} hergeleitet, das nicht im Verzeichnis steht',
  'names that the register holds': 'Namen, die im Verzeichnis stehen',
  'add {}, or correct the name': 'Füg {} hinzu oder berichtige den Namen',
  'leave the entry out where there is no value': 'Lass den Eintrag weg, wo kein Wert ist',
  'a circle: {}': 'ein Kreis: {}',
  ' from ': ' aus ',
  'every number worked out from others before it': 'jede Zahl aus anderen vor ihr ausgerechnet',
  'give one of these numbers itself': 'Gib eine dieser Zahlen selbst an',
  'a width of {} mm from channel to channel': 'eine Breite von {} mm von Hohlkehle zu Hohlkehle',
  'a width above 0 mm': 'eine Breite über 0 mm',
  'bring the channel nearer to the edge, or check the width of the body':
    'Leg die Hohlkehle näher an den Rand oder prüf die Breite des Korpus',
  'a rise of {} mm above the channel': 'ein Stich von {} mm über der Hohlkehle',
  'a rise of 0 mm or more': 'einen Stich von 0 mm oder mehr',
  'raise the arch, or make the channel deeper': 'Mach die Wölbung höher oder die Hohlkehle tiefer',
  'a rise of {} mm over {} mm from channel to channel, at which a cycloid loops':
    'ein Stich von {} mm über {} mm von Hohlkehle zu Hohlkehle, wo eine Zykloide eine Schleife schlägt',
  'a rise below {} mm, which is the width divided by π':
    'einen Stich unter {} mm, das ist die Breite durch π',
  'lower the arch, or give this place a wider channel-to-channel width':
    'Mach die Wölbung niedriger oder gib dieser Stelle mehr Breite von Hohlkehle zu Hohlkehle',
  'conditions that no smooth curve meets together': 'Bedingungen, die keine glatte Kurve zugleich erfüllt',
  'places that differ': 'Stellen, die verschieden sind',
  'move the stations apart': 'Rück die Stellen auseinander',
  'a crest {} mm above the lower end': 'ein Scheitel {} mm über dem unteren Ende',
  'a place between the ends of the channel, {} and {} mm':
    'eine Stelle zwischen den Enden der Hohlkehle, {} und {} mm',
  'move the crest into the body, or leave it out for the middle':
    'Rück den Scheitel in den Korpus oder lass ihn weg, dann liegt er in der Mitte',
  'change the end fillet, the arch height or the form of the long arch':
    'Ändere die Ausrundung der Enden, die Wölbungshöhe oder die Art der Längswölbung',
  '{} places read': '{} Stellen abgelesen',
  'reading {} is not a number': 'Ablesung {} ist keine Zahl',
  '{} readings or more in millimetres, from channel to channel':
    '{} Ablesungen oder mehr in Millimetern, von Hohlkehle zu Hohlkehle',
  'read the arch again, every 5 to 10 mm': 'Lies die Wölbung noch einmal ab, alle 5 bis 10 mm',
  'readings that fall from the crest to one end only':
    'Ablesungen, die vom Scheitel nur nach einem Ende fallen',
  'both ends of the arch': 'beide Enden der Wölbung',
  'read from channel to channel': 'Lies von Hohlkehle zu Hohlkehle ab',
  'neither circle, flat top nor cycloid comes near these readings':
    'weder Kreis noch flacher Scheitel noch Zykloide kommen diesen Ablesungen nahe',
  'heights that rise from the channel at one end to a crest and fall to the channel at the other':
    'Höhen, die von der Hohlkehle am einen Ende zum Scheitel steigen und zur Hohlkehle am anderen fallen',
  'check the order and the units of the readings, or read the arch again':
    'Prüf Reihenfolge und Einheiten der Ablesungen oder lies die Wölbung noch einmal ab',
  '{}; left out of the fit': '{}; beim Einpassen weggelassen',
  'no action: the arch is drawn as it stood without it':
    'nichts: die Wölbung ist so gezeichnet, wie sie ohne sie stand',
  'look at the residuals, and keep it in the fit if it belongs to the design':
    'Sieh dir die Abweichungen an und behalte es, wenn es zum Entwurf gehört',
  '{}; kept in the fit, which it draws aside': '{}; beim Einpassen behalten, was es verzieht',
  'a decision whether it belongs to the design': 'eine Entscheidung, ob es zum Entwurf gehört',
  'agree to leave it out (leaveOut) if it came with age and load':
    'Stimm zu, es wegzulassen (leaveOut), wenn es von Alter und Last kommt',
  'read the arch again, every 2 to 5 mm': 'Lies die Wölbung noch einmal ab, alle 2 bis 5 mm',
  'readings that fall from the crest to one side only':
    'Ablesungen, die vom Scheitel nur nach einer Seite fallen',
  'both sides, or one side with the centre line marked and the reading level':
    'beide Seiten, oder eine Seite mit bezeichneter Mittellinie und waagrechter Ablesung',
  'read from channel to channel, or give the centre line':
    'Lies von Hohlkehle zu Hohlkehle ab oder gib die Mittellinie an',
  'readings end {} mm from the centre line, and the channel lies about {} mm from it':
    'die Ablesungen enden {} mm von der Mittellinie, und die Hohlkehle liegt etwa {} mm von ihr',
  'readings into the channel on both sides, or the width from channel to channel':
    'Ablesungen bis in die Hohlkehle auf beiden Seiten, oder die Breite von Hohlkehle zu Hohlkehle',
  'read farther out, or measure where the channel is lowest and give that width':
    'Lies weiter nach außen ab oder miss, wo die Hohlkehle am tiefsten ist, und gib diese Breite an',
  'no arch between two channels comes near these readings':
    'keine Wölbung zwischen zwei Hohlkehlen kommt diesen Ablesungen nahe',
  'heights that rise from a channel to a crest and fall to a channel again':
    'Höhen, die von einer Hohlkehle zum Scheitel steigen und wieder zu einer Hohlkehle fallen',
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
  '{}: the rise is {} % of what makes the cycloid loop':
    '{}: der Stich ist {} % dessen, wobei die Zykloide eine Schleife schlägt',
  'at most {} %': 'höchstens {} %',
  'lower the arch or widen the channel-to-channel width':
    'Mach die Wölbung niedriger oder die Breite von Hohlkehle zu Hohlkehle größer',
  '{}: the arch falls at {} degrees': '{}: die Wölbung fällt mit {} Grad',
  'lower the arch, or move the channel nearer to the edge here':
    'Mach die Wölbung niedriger oder rück die Hohlkehle hier näher an den Rand',
  '{}: the arch leaves the channel with a radius of {} mm':
    '{}: die Wölbung verlässt die Hohlkehle mit einem Radius von {} mm',
  '{} mm or more for a scraper to follow': '{} mm oder mehr, damit eine Ziehklinge folgen kann',
  'lower the arch, or make it less full here': 'Mach die Wölbung niedriger oder hier weniger voll',
  '{}: a fullness of {}': '{}: eine Völligkeit von {}',
  '{} to {}': '{} bis {}',
  'bring it nearer to 0 unless you measured it': 'Bring sie näher an 0, wenn du sie nicht gemessen hast',
  'a number, to draw the arching': 'eine Zahl, um die Wölbung zu zeichnen',
  'give it, or draft the design again so that it is filled from the habits of the trade':
    'Gib sie an oder zeichne den Entwurf neu, damit sie aus dem Üblichen gefüllt wird',
  'an arch of {} over an edge of {}': 'eine Wölbung von {} über einem Rand von {}',
  'an arch higher than the edge; both are counted from the gluing face':
    'eine Wölbung, die höher ist als der Rand; beide zählen ab der Leimfläche',
  'raise the arch, or check whether it was measured without the edge':
    'Mach die Wölbung höher oder prüf, ob ohne den Rand gemessen wurde',
  'a channel {} deep in an edge of {}': 'eine Hohlkehle, {} tief, in einem Rand von {}',
  'a depth from 0 mm to less than the edge': 'eine Tiefe von 0 mm bis weniger als der Rand',
  'make the channel shallower': 'Mach die Hohlkehle flacher',
  'from the edge inwards: crest {}, flat land {}, channel {}':
    'vom Rand nach innen: Randwulst {}, flacher Rand {}, Hohlkehle {}',
  'the crest inside the edge and no farther in than its height, then the end of the land, then the channel':
    'den Randwulst innerhalb des Randes und nicht weiter innen als dessen Höhe, dann das Ende des flachen Rands, dann die Hohlkehle',
  'make the land narrower, or move the channel farther in':
    'Mach den flachen Rand schmaler oder rück die Hohlkehle weiter nach innen',
  'a channel that runs once round inside the edge':
    'eine Hohlkehle, die einmal rundum innerhalb des Randes läuft',
  'bring the channel nearer to the edge, make its rounding in the corners smaller, or check the outline':
    'Leg die Hohlkehle näher an den Rand, mach ihre Ausrundung in den Ecken kleiner oder prüf den Umriss',
  'a flat reach or radius for a long arch in the form of a {}':
    'eine flache Strecke oder ein Radius für eine Längswölbung der Art {}',
  'the form flat-topped, which alone has a flatter circle over the middle':
    'die Art „flat-topped“, die allein einen flacheren Kreis über der Mitte hat',
  'add "form": "flat-topped", or leave reach and radius out':
    'Füg "form": "flat-topped" hinzu oder lass Strecke und Radius weg',
  'roundings of {} mm below and {} mm above on an edge of {} mm, {}':
    'Abrundungen von {} mm unten und {} mm oben an einem Rand von {} mm, {}',
  'two roundings that fit on the edge': 'zwei Abrundungen, die auf den Rand passen',
  'make the lower one smaller, or the crest less far in':
    'Mach die untere kleiner oder den Randwulst weniger weit innen',
  'stations and a channel that no smooth surface joins':
    'Stellen und eine Hohlkehle, die keine glatte Fläche verbindet',
  'stations that stand apart, and a channel inside the edge':
    'Stellen, die auseinander liegen, und eine Hohlkehle innerhalb des Randes',
  'a gauge of the {} at {} mm above the lower end': 'eine Schablone ({}) bei {} mm über dem unteren Ende',
  'a height at which the arch stands out above the edge; the channel ends at {} and {} mm':
    'eine Höhe, in der die Wölbung über den Rand ragt; die Hohlkehle endet bei {} und {} mm',
  'name a height farther from the ends of the body': 'Nenn eine Höhe weiter weg von den Enden des Korpus',
  '{}: {}, {} mm rms off the arch of the numbers, {} mm off the surface drawn to them; it moved by {} mm at most, at {}{}':
    '{}: {}, {} mm rms neben der Wölbung der Zahlen, {} mm neben der danach gezogenen Fläche; sie hat sich höchstens {} mm bewegt, bei {}{}',
  'a look at the contours before wood is cut to them':
    'einen Blick auf die Höhenlinien, bevor danach geschnitten wird',
  'look with garland picture --of contours; take the heights out of the design to have the arch of its numbers again':
    'Sieh dir die Höhenlinien an; nimm die Höhen aus dem Entwurf, um wieder die Wölbung der Zahlen zu haben',
  '{}: {} not inside the channel, which {} nothing':
    '{}: {} nicht innerhalb der Hohlkehle, ohne Wirkung ({})',
  draws: 'zieht',
  draw: 'ziehen',
  'heights of the arch inside the channel': 'Höhen der Wölbung innerhalb der Hohlkehle',
  'see whether they count up from the lower end; edge and channel have values of their own':
    'Sieh nach, ob sie vom unteren Ende aufwärts zählen; Rand und Hohlkehle haben eigene Werte',
  '{}: heights that scatter by {} mm about any smooth surface, known to ± {} mm as they say':
    '{}: Höhen, die um {} mm um jede glatte Fläche streuen, bekannt auf ± {} mm, wie angegeben',
  'a scatter of {} mm': 'eine Streuung von {} mm',
  'leave out what is worn, sunk or pushed up by post and bar, or say a larger plusMinus':
    'Lass weg, was abgenutzt, eingesunken oder von Stimmstock und Balken hochgedrückt ist, oder gib ein größeres ± an',
  '; and {} more': '; und {} weitere',
  'heights within {} mm of what their neighbours say':
    'Höhen innerhalb von {} mm dessen, was ihre Nachbarn sagen',
  'read them again, or leave them out where the wood has moved':
    'Lies sie noch einmal ab oder lass sie weg, wo das Holz sich bewegt hat',
  '{} {}, none at a place inside the channel': '{} {}, keine an einer Stelle innerhalb der Hohlkehle',
  height: 'Höhe',
  heights: 'Höhen',
  'places across from the centre line and up from the lower end, inside the channel':
    'Stellen quer ab der Mittellinie und aufwärts ab dem unteren Ende, innerhalb der Hohlkehle',
  'count up from the lower end of the body, and give the heights of the arch, not of the edge':
    'Zähl aufwärts ab dem unteren Ende des Korpus und gib die Höhen der Wölbung an, nicht die des Randes',
  'a gauge for the inside of the {} at {}': 'eine Schablone für innen ({}) bei {}',
  'a place where the plate is hollowed out': 'eine Stelle, wo die Platte ausgehöhlt ist',
  'name a height farther from the blocks': 'Nenn eine Höhe weiter weg von den Klötzen',
  'a {} so thick that its inside has no shape in places':
    '{}: so dick, dass ihr Inneres stellenweise keine Form hat',
  'a thickness less than the outside is rounded': 'eine Stärke, die kleiner ist als die Rundung außen',
  'make it thinner there': 'Mach es dort dünner',
  '{}: an arch {} mm above a channel {} mm deep':
    '{}: eine Wölbung {} mm über einer Hohlkehle von {} mm Tiefe',
  'an arch that rises above the edge at every station':
    'eine Wölbung, die an jeder Stelle über den Rand steigt',
  'raise the arch, make the channel shallower, or move the station toward the middle':
    'Mach die Wölbung höher, die Hohlkehle flacher oder rück die Stelle zur Mitte',
  'a fullness between −{} and {}, outside which the arch turns back on its way up':
    'eine Völligkeit zwischen −{} und {}; außerhalb kehrt die Wölbung im Steigen um',
  'an arch so high for the width at {} mm above the lower end that a cycloid loops there':
    'eine Wölbung, die bei {} mm über dem unteren Ende für ihre Breite so hoch ist, dass dort eine Zykloide eine Schleife schlägt',
  'a rise below the width divided by π everywhere': 'überall einen Stich unter der Breite durch π',
  'lower the arch, or bring the channel nearer to the edge':
    'Mach die Wölbung niedriger oder leg die Hohlkehle näher an den Rand',
  'a purfling groove {} mm deep, which leaves {} mm of the edge of the {}':
    'ein Einlagegraben von {} mm Tiefe, der {} mm des Randes lässt ({})',
  'a purfling groove {} mm deep, which goes through the edge of the {}':
    'ein Einlagegraben von {} mm Tiefe, der durch den Rand geht ({})',
  'at least {} mm of wood under it': 'mindestens {} mm Holz darunter',
  'make the groove shallower, or the edge thicker': 'Mach den Graben flacher oder den Rand dicker',
  'give a size that can be cut, or leave it to the habits of the trade':
    'Gib eine Größe an, die sich schneiden lässt, oder überlass sie dem Üblichen',
  'holes of {} mm every {} mm, which run into each other':
    'Löcher von {} mm alle {} mm, die ineinander laufen',
  'at least {} mm from hole to hole': 'mindestens {} mm von Loch zu Loch',
  'set the holes farther apart, or take a thinner bit':
    'Setz die Löcher weiter auseinander oder nimm einen dünneren Bohrer',
  'a board of {} mm for an arch of {} mm': 'ein Brett von {} mm für eine Wölbung von {} mm',
  'a board at least as thick as the arch is high, edge included':
    'ein Brett, das mindestens so dick ist, wie die Wölbung hoch ist, Rand mitgezählt',
  'take a thicker board, or lower the arch': 'Nimm ein dickeres Brett oder mach die Wölbung niedriger',
  'stations at {} mm above the lower end': 'Stellen bei {} mm über dem unteren Ende',
  'five heights on the plate, each above the one before': 'fünf Höhen auf der Platte, jede über der vorigen',
  'move the stations back between the ends of the plate':
    'Rück die Stellen zwischen die Enden der Platte zurück',
  'the station at {} mm stands where the channel runs away into a corner':
    'die Stelle bei {} mm steht, wo die Hohlkehle in eine Ecke ausläuft',
  'a station where the channel runs nearly along the body':
    'eine Stelle, wo die Hohlkehle nahezu längs des Korpus läuft',
  'move it out of the corner; until then the arch there follows the neighbouring stations':
    'Rück sie aus der Ecke; bis dahin folgt die Wölbung dort den Nachbarstellen',
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
  'a silhouette of {} places of which {} lie near the side of a head':
    'eine Silhouette aus {} Stellen, von denen {} nahe der Seite eines Kopfes liegen',
  'the whole side of a head, seen square on': 'die ganze Seite eines Kopfes, senkrecht gesehen',
  'trace it again with the head flat on its side, and look at the traced line':
    'Nimm sie noch einmal ab, den Kopf flach auf der Seite, und sieh dir die Linie an',
  'the {} string {} the {} peg from the nut on its way to its own':
    'die {}-Saite {} den {}-Wirbel, vom Obersattel auf dem Weg zu ihrem eigenen',
  '{} or more between them': '{} oder mehr dazwischen',
  'move these pegs farther apart, or take thinner ones':
    'Setz diese Wirbel weiter auseinander oder nimm dünnere',
  'the {} string {} the wall of the pegbox': 'die {}-Saite {} die Wand des Wirbelkastens',
  'a string clear of the wall': 'eine Saite frei von der Wand',
  'widen the pegbox, thin its walls, or bring the strings closer together at the nut':
    'Mach den Wirbelkasten breiter, seine Wände dünner oder rück die Saiten am Obersattel zusammen',
  'a peg hole {} mm from the nut': 'ein Wirbelloch {} mm vom Obersattel',
  'a place inside the pegbox, {} to {} mm from the nut':
    'eine Stelle im Wirbelkasten, {} bis {} mm vom Obersattel',
  'correct it, or lengthen the head': 'Berichtige sie oder mach den Kopf länger',
  '{} turns; {} are drawn': '{} Umgänge; {} werden gezeichnet',
  'whole quarters, as the spiral is made of quarter circles':
    'ganze Viertel, denn die Spirale besteht aus Viertelkreisen',
  'give the nearest quarter': 'Gib das nächste Viertel an',
  'a number': 'eine Zahl',
  'a number above 0': 'eine Zahl über 0',
  'correct it: the {}': 'Berichtige: {}',
  'a back {} behind the gluing face, where the spiral leaves at {}':
    'ein Rücken {} hinter der Leimfläche, wo die Spirale bei {} abgeht',
  'a back farther behind than the place where it leaves the spiral':
    'einen Rücken, der weiter hinten liegt als die Stelle, wo er die Spirale verlässt',
  'check headDepth, scrollHeight, scrollFront and backLeaveAngle':
    'Prüf headDepth, scrollHeight, scrollFront und backLeaveAngle',
  'a hollow of {} and a chin {} behind the gluing face, {} {} the straight back carried on':
    'eine Mulde von {} und ein Kinn {} hinter der Leimfläche, {} {} dem verlängerten geraden Rücken',
  behind: 'hinter',
  before: 'vor',
  'a straight back that runs through a hollow into the tip of the chin':
    'einen geraden Rücken, der durch eine Mulde in die Spitze des Kinns läuft',
  'raise backHollow or backLeanAngle, or check chinBehind and headLength':
    'Mach backHollow oder backLeanAngle größer oder prüf chinBehind und headLength',
  'a front edge turning {}° back under a scroll {} high whose top is {} from the nut':
    'eine Vorderkante, die {}° unter eine {} hohe Schnecke zurückläuft, deren oberste Stelle {} vom Obersattel liegt',
  'a front edge that passes under the scroll in one long round':
    'eine Vorderkante, die in einem langen Bogen unter der Schnecke hindurchgeht',
  'change pegboxFrontAngle, or check headTop, scrollHeight and scrollFront':
    'Ändere pegboxFrontAngle oder prüf headTop, scrollHeight und scrollFront',
  'a throat {} wide ending in a round of {}': 'eine Kehle, {} weit, die in einer Rundung von {} endet',
  'a round at least half as large as the throat is wide, ending under the outer turn':
    'eine Rundung, mindestens halb so groß wie die Kehle weit, die unter dem äußeren Umgang endet',
  'raise throatRadius or lower throatGap': 'Mach throatRadius größer oder throatGap kleiner',
  'a chin whose tip lies {} below the nut and {} behind the gluing face, and a neck {} thick at {}':
    'ein Kinn, dessen Spitze {} unter dem Obersattel und {} hinter der Leimfläche liegt, und ein Hals von {} Dicke bei {}',
  'a chin that stands out behind the back of the neck, and above where it runs into it':
    'ein Kinn, das hinter dem Halsrücken vorsteht und über der Stelle, wo es in ihn läuft',
  'check chinBehind, headLength, headTop and chinReach': 'Prüf chinBehind, headLength, headTop und chinReach',
  'a head {} wide at its top and {} over the ears, whose turns widen by {} on the front alone':
    'ein Kopf, oben {} und über die Ohren {} breit, dessen Umgänge allein vorn um {} breiter werden',
  'ears wider than top and turns together': 'Ohren, breiter als oben und Umgänge zusammen',
  'widen scrollEars, or make outerTurnAngle, middleTurnAngle or innerTurnAngle smaller':
    'Mach scrollEars breiter oder outerTurnAngle, middleTurnAngle oder innerTurnAngle kleiner',
  'ears {} apart, for which the turns widen {} behind than on the front':
    'Ohren {} auseinander, wofür die Umgänge hinten {} breiter werden als vorn',
  'far slower': 'viel langsamer',
  'far faster': 'viel schneller',
  'turns that widen about evenly all the way round': 'Umgänge, die rundum etwa gleichmäßig breiter werden',
  'widen scrollEars, or make the angles of the turns smaller':
    'Mach scrollEars breiter oder die Winkel der Umgänge kleiner',
  'narrow scrollEars, or make the angles of the turns larger':
    'Mach scrollEars schmaler oder die Winkel der Umgänge größer',
  'an end sloping in by {} mm under the nut and {} mm of wood before the throat, which leave no inside':
    'ein Ende, das unter dem Obersattel um {} mm einläuft, und {} mm Holz vor der Kehle, die kein Inneres lassen',
  'a pegbox that is open between its ends': 'einen Wirbelkasten, der zwischen seinen Enden offen ist',
  'make pegboxWeb or pegboxEndSlope smaller': 'Mach pegboxWeb oder pegboxEndSlope kleiner',
  'walls of {} to {} mm, {} mm more at the floor, in a pegbox {} to {} mm wide':
    'Wände von {} bis {} mm, am Grund {} mm mehr, in einem Wirbelkasten von {} bis {} mm Breite',
  'room between the walls, down to the floor': 'Platz zwischen den Wänden, bis zum Grund',
  'thin the walls, or widen the pegbox': 'Mach die Wände dünner oder den Wirbelkasten breiter',
  'a floor {} mm inside the back of the head': 'ein Grund {} mm innerhalb des Kopfrückens',
  'a floor thinner than the round of the back': 'einen Grund, dünner als die Rundung des Rückens',
  'lower pegboxFloor, or check headDepth': 'Mach pegboxFloor kleiner oder prüf headDepth',
  '{} turns from the throat to the eye': '{} Umgänge von der Kehle bis zum Auge',
  'half a turn to {}': 'einen halben Umgang bis {}',
  'count them from the throat inward; most scrolls have two and a half':
    'Zähl sie von der Kehle nach innen; die meisten Schnecken haben zweieinhalb',
  'a scroll {} mm high with an eye of {} mm and {} turns':
    'eine Schnecke, {} mm hoch, mit einem Auge von {} mm und {} Umgängen',
  'a spiral whose turns grow smaller from the outside to the eye':
    'eine Spirale, deren Umgänge von außen bis zum Auge kleiner werden',
  'check scrollHeight, scrollEye, scrollTurns and scrollQuickening':
    'Prüf scrollHeight, scrollEye, scrollTurns und scrollQuickening',
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
  'a heel that begins {} mm before the tip of the button and is {} mm high':
    'ein Halsfuß, der {} mm vor der Spitze des Zäpfchens beginnt und {} mm hoch ist',
  'room for a hollow curve from the back of the neck down to the button':
    'Platz für eine hohle Kurve vom Halsrücken hinunter zum Zäpfchen',
  'let the heel begin further from the body, or make the button shorter':
    'Lass den Halsfuß weiter weg vom Korpus beginnen oder mach das Zäpfchen kürzer',
  '{}: {} {} over a body stop of {}{}': '{}: {} {} bei einer Korpusmensur von {}{}',
  '; or ': '; oder ',
  'cannot all hold': 'können nicht alle stimmen',
  'hardly hold together': 'passen kaum zusammen',
  ', and more than one of them is off': ', und mehr als eines davon ist falsch',
  'numbers that one straight board can have; the nearest are {}':
    'Zahlen, die ein gerades Griffbrett haben kann; die nächsten sind {}',
  'measure {} again, or leave one of these out; until then the nearest numbers are drawn':
    'Miss {} noch einmal oder lass eines davon weg; bis dahin sind die nächsten Zahlen gezeichnet',
  'all of them': 'sie alle',
  'the {}': '{}',
  '{} follows from {}; the habit of {} is not used': '{} folgt aus {}; das Übliche für {} gilt nicht',
  'its own figure, or what {} {} for': 'die eigene Zahl oder die, die dafür gilt ({} {})',
  ask: 'fragen',
  asks: 'fragt',
  'keep it, or give {} yourself': 'Behalte es oder gib {} selbst an',
  '{} {}, outside what is usual': '{} {}, außerhalb des Üblichen',
  'usually {} to {} ({})': 'üblich {} bis {} ({})',
  'keep it if it is meant; projection, overstand, arch and length of the board decide it':
    'Behalte es, wenn es so gemeint ist; Projektion, Überhöhung, Wölbung und Länge des Griffbretts entscheiden es',
  'a mortise {} deep at the top and {} at the back that does not go through overhang and rib everywhere':
    'eine Halstasche, oben {} und am Boden {} tief, die nicht überall durch Überstand und Zarge geht',
  'a root that is glued into the block': 'einen Halsfuß, der in den Klotz geleimt ist',
  'make the mortise deeper, or check the angle of the root':
    'Mach die Halstasche tiefer oder prüf den Winkel des Halsfußes',
  '{} of the upper block behind the mortise, of {}': '{} Oberklotz hinter der Halstasche, von {}',
  'half of the block or more (chosen by us)': 'die Hälfte des Klotzes oder mehr (von uns gewählt)',
  'make the upper block deeper, the mortise shallower, or the angle of the root smaller':
    'Mach den Oberklotz tiefer, die Halstasche flacher oder den Winkel des Halsfußes kleiner',
  '{} of the upper block beside a root {} wide': '{} Oberklotz neben einem Halsfuß von {} Breite',
  'a tenth of the block or more on either side (chosen by us)':
    'auf jeder Seite ein Zehntel des Klotzes oder mehr (von uns gewählt)',
  'make the upper block wider, or check the widths of the fingerboard':
    'Mach den Oberklotz breiter oder prüf die Breiten des Griffbretts',
  'a root at {} to the fingerboard: the mortise gets shallower toward the back':
    'ein Halsfuß bei {} zum Griffbrett: die Halstasche wird zum Boden hin flacher',
  '{} or more, so that the pull of the strings closes the joint':
    '{} oder mehr, damit der Zug der Saiten die Fuge schließt',
  'make the angle of the root larger': 'Mach den Winkel des Halsfußes größer',
  'a heel that turns round {}': 'ein Halsfuß, der mit {} rundet',
  '{} or more, for the thumb (from memory)': '{} oder mehr, für den Daumen (aus dem Gedächtnis)',
  'let the heel begin further from the body': 'Lass den Halsfuß weiter weg vom Korpus beginnen',
  '{} from the end of the fingerboard to the bridge': '{} vom Ende des Griffbretts bis zum Steg',
  '{} or more, for the bow (chosen by us)': '{} oder mehr, für den Bogen (von uns gewählt)',
  'make the fingerboard shorter, or check its length': 'Mach das Griffbrett kürzer oder prüf seine Länge',
  'a fingerboard {} thick at its end, no thicker than the wood to be left':
    'ein Griffbrett, am Ende {} dick, nicht dicker als das Holz, das bleiben soll',
  'a thicker end, for a hollow under it': 'ein dickeres Ende, für eine Aushöhlung darunter',
  'leave it solid, or make its sides higher': 'Lass es voll oder mach seine Seiten höher',
  'a round of {}, twice what is usual': 'eine Rundung von {}, das Doppelte des Üblichen',
  'a radius, usually {} to {} ({})': 'einen Radius, üblich {} bis {} ({})',
  'halve it if it is the diameter; a flatter board is thinner in the middle and changes the projection':
    'Halbier sie, wenn es der Durchmesser ist; ein flacheres Griffbrett ist in der Mitte dünner und ändert die Projektion',
  'a button {} mm wide and a root {} mm wide at the edge of the top':
    'ein Zäpfchen von {} mm und ein Halsfuß von {} mm Breite am Deckenrand',
  'both narrower than the upper end of the body': 'beide schmaler als das obere Ende des Korpus',
  'correct the width of the button, or those of the fingerboard that the root follows':
    'Berichtige die Breite des Zäpfchens oder die des Griffbretts, denen der Halsfuß folgt',
  'measure it again': 'Miss noch einmal',
  'a round of {} mm under a board that would be {} mm wide at the bridge':
    'eine Rundung von {} mm unter einem Griffbrett, das am Steg {} mm breit wäre',
  'a radius above {} mm': 'einen Radius über {} mm',
  'measure the round of the board again; it is a radius, not a diameter':
    'Miss die Rundung des Griffbretts noch einmal; sie ist ein Radius, kein Durchmesser',
  'a height that a straight board over this stop can reach':
    'eine Höhe, die ein gerades Griffbrett über diese Mensur erreichen kann',
  'check projection, overstand and body stop': 'Prüf Projektion, Überhöhung und Korpusmensur',
  'a board whose end lies {} mm over the top, {} mm from its upper end':
    'ein Griffbrett, dessen Ende {} mm über der Decke liegt, {} mm von ihrem oberen Ende',
  'an end above the top and before the bridge': 'ein Ende über der Decke und vor dem Steg',
  'check the length of the board, the projection and the arch under the end of the board':
    'Prüf die Länge des Griffbretts, die Projektion und die Wölbung unter seinem Ende',
  'strings that do not rise from the nut to the bridge':
    'Saiten, die vom Obersattel zum Steg nicht ansteigen',
  'strings that rise over the fingerboard and pass over the top at the bridge':
    'Saiten, die über dem Griffbrett ansteigen und am Steg über der Decke liegen',
  'check the projection, the overstand and the heights of the strings':
    'Prüf die Projektion, die Überhöhung und die Saitenhöhen',
  'a neck that leaves {} mm of wood under the fingerboard':
    'ein Hals, der {} mm Holz unter dem Griffbrett lässt',
  'a thickness that counts the fingerboard in, and more than it has':
    'eine Dicke, die das Griffbrett mitzählt, und mehr, als es hat',
  'measure neck and fingerboard together, in the middle': 'Miss Hals und Griffbrett zusammen, in der Mitte',
  'a heel that begins {} mm from the edge of the top, with a button of {} mm':
    'ein Halsfuß, der {} mm vom Deckenrand beginnt, mit einem Zäpfchen von {} mm',
  'a heel that begins between the nut and the tip of the button':
    'einen Halsfuß, der zwischen Obersattel und Spitze des Zäpfchens beginnt',
  'check where the heel begins, and the height of the button':
    'Prüf, wo der Halsfuß beginnt, und die Höhe des Zäpfchens',
  'a saddle {} mm over the edge, {} mm behind a bridge whose top is {} mm over it':
    'ein Untersattel {} mm über dem Rand, {} mm hinter einem Steg, dessen Oberkante {} mm darüber liegt',
  'strings that come down from the bridge to the saddle': 'Saiten, die vom Steg zum Untersattel abfallen',
  'check the height of the saddle, the projection and the body stop':
    'Prüf die Höhe des Untersattels, die Projektion und die Korpusmensur',
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
  'no number': 'keine Zahl',
  'a {} that would stand off the plate': '{}: stünde neben der Platte',
  'under half of {} mm, less {} mm, a {} of {} mm would stand across the centre line':
    'Unter der Hälfte von {} mm, weniger {} mm, stünde ein {} von {} mm über der Mittellinie',
  'check these three numbers': 'Prüf diese drei Zahlen',
  'a {} on its own half of the top, under a foot of the bridge':
    '{} auf der eigenen Hälfte der Decke, unter einem Stegfuß',
  'check the body stop, the width of the bridge feet, and the sizes of bar and post':
    'Prüf die Korpusmensur, die Breite der Stegfüße und die Größen von Balken und Stimmstock',
  'a bar that runs over block or lining at its {} end':
    'ein Balken, der am Ende ({}) über Klotz oder Reifchen läuft',
  'a bar that ends inside the hollow of the top': 'einen Balken, der in der Höhlung der Decke endet',
  'shorten it': 'Mach ihn kürzer',
  'linings {} mm thick': 'Reifchen von {} mm Stärke',
  'a thickness above 0 mm that leaves room inside them': 'eine Stärke über 0 mm, die innen Platz lässt',
  '{} mm of {} under an outside that is rounder than that, {}':
    '{} mm {} unter einer Außenseite, die enger gerundet ist, {}',
  'an outside whose round is larger than the thickness':
    'eine Außenseite, deren Rundung größer ist als die Stärke',
  'make the plate thinner there, or the arch less sharply rounded':
    'Mach die Platte dort dünner oder die Wölbung weniger eng gerundet',
  'the {} comes out {} mm thick instead of {} mm, {}: its outside lies so low there that the inside would go through the gluing face':
    '{}: wird {} mm dick statt {} mm, {}: die Außenseite liegt dort so tief, dass das Innere durch die Leimfläche ginge',
  'an outside at least {} mm over the gluing face': 'eine Außenseite, mindestens {} mm über der Leimfläche',
  'leave the edge thicker, make the channel shallower, or thin the plate less there':
    'Lass den Rand dicker, mach die Hohlkehle flacher oder die Platte dort weniger dünn',
  'a thickness of {} mm': 'eine Stärke von {} mm',
  'a thickness above 0 mm': 'eine Stärke über 0 mm',
  'give it in millimetres': 'Gib sie in Millimetern an',
  '{} mm in the channel, with {} in the middle, {} in the bouts and {} at the flanks':
    '{} mm in der Hohlkehle, bei {} in der Mitte, {} in den Bügeln und {} an den Flanken',
  'a channel no thicker than the rest': 'eine Hohlkehle, die nicht dicker ist als der Rest',
  'make the channel thinner, or ask for more at single places with points':
    'Mach die Hohlkehle dünner oder verlang an einzelnen Stellen mehr, mit Punkten',
  '{} mm more at the {} over {} mm, on a plate of {} mm at its thinnest':
    '{} mm mehr: {}, auf {} mm, bei einer Platte von {} mm an der dünnsten Stelle',
  'wood left everywhere: if thinner, then by less than the plate is thick, over a reach above 0 mm':
    'überall bleibendes Holz: wenn dünner, dann um weniger, als die Platte dick ist, auf einer Reichweite über 0 mm',
  'correct extra and reach': 'Berichtige Zugabe und Reichweite',
  '{} mm at {}, {}': '{} mm bei {}, {}',
  'a thickness above 0 mm at a place on the plate, across from the centre line and up from the lower end':
    'eine Stärke über 0 mm an einer Stelle auf der Platte, quer ab der Mittellinie und aufwärts ab dem unteren Ende',
  'two thicknesses at {}, {}, or at that place on both sides':
    'zwei Stärken bei {}, {}, oder an dieser Stelle auf beiden Seiten',
  'one thickness at a place; both halves are alike': 'eine Stärke je Stelle; beide Hälften sind gleich',
  'leave one of them out': 'Lass eine davon weg',
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
  'strings that lie in a hollow over the bridge, so that none can be bowed alone':
    'Saiten, die über dem Steg in einer Mulde liegen, sodass keine allein zu streichen ist',
  'strings that lie on a round': 'Saiten, die auf einer Rundung liegen',
  'check the round of the board and the heights of the strings over its end':
    'Prüf die Rundung des Griffbretts und die Saitenhöhen über seinem Ende',
  'a higher projection or a lower saddle makes the break sharper and presses harder on the top':
    'Eine höhere Projektion oder ein niedrigerer Untersattel macht den Knick schärfer und drückt stärker auf die Decke',
  'keep it if lighter or heavier strings are meant, or check pulls, masses and tuning':
    'Behalte es, wenn leichtere oder schwerere Saiten gemeint sind, oder prüf Züge, Massen und Stimmung',
  'the projection decides it almost one to one': 'Die Projektion entscheidet es fast eins zu eins',
  'the {} string pulls with {} N': 'die {}-Saite zieht mit {} N',
  'usually {} to {} N ({}); far below it is slack, far over it may break':
    'üblich {} bis {} N ({}); weit darunter ist sie schlaff, weit darüber kann sie reißen',
  'check its mass or pull, its gauge and density, the tuning and the length of string':
    'Prüf ihre Masse oder ihren Zug, ihren Durchmesser und ihre Dichte, die Stimmung und die schwingende Länge',
  'the middle strings stand {} mm over the line of their neighbours on the bridge, the mean of both':
    'die mittleren Saiten stehen am Steg {} mm über der Linie ihrer Nachbarn, im Mittel beider',
  '{} mm or more, or the bow touches two (from memory)':
    '{} mm oder mehr, sonst berührt der Bogen zwei (aus dem Gedächtnis)',
  'use a rounder board, or spread the strings more':
    'Nimm ein runderes Griffbrett oder setz die Saiten weiter auseinander',
  'a bow on the {} string passes {} mm over the edge at the waist':
    'ein Bogen auf der {}-Saite geht {} mm über dem Rand am Mittelbügel vorbei',
  '{} mm or more': '{} mm oder mehr',
  'make the waist narrower, the bridge higher or the crown of the strings rounder':
    'Mach den Mittelbügel schmaler, den Steg höher oder die Saitenrundung stärker',
  '{} mm of string behind the bridge, {} mm before the saddle':
    '{} mm Saite hinter dem Steg, {} mm vor dem Untersattel',
  'room for a tailpiece between them': 'Platz für einen Saitenhalter dazwischen',
  'shorten the after-length, or check the body stop': 'Mach die Nachlänge kürzer oder prüf die Korpusmensur',
  'a tailpiece of {} mm from its fret to its end, {} mm before the saddle':
    'ein Saitenhalter von {} mm vom Sättelchen bis zu seinem Ende, {} mm vor dem Untersattel',
  'at most {} mm, for {} mm of gut over the saddle and {} mm of string behind the bridge':
    'höchstens {} mm, für {} mm Hängesaite über den Untersattel und {} mm Saite hinter dem Steg',
  'take a shorter tailpiece, or a shorter after-length':
    'Nimm einen kürzeren Saitenhalter oder eine kürzere Nachlänge',
  'an end button {} mm thick at the ribs that tapers to nothing inside the lower block':
    'ein Endknopf von {} mm an den Zargen, der im Unterklotz zu nichts ausläuft',
  'a pin that comes through ribs and block': 'einen Knopf, der durch Zargen und Klotz geht',
  'correct its diameter or its taper: 17 stands for 1 mm of diameter in 17 mm of length':
    'Berichtige seinen Durchmesser oder seinen Kegel: 17 heißt 1 mm Durchmesser auf 17 mm Länge',
  '{} mm of the lower block on either side of a hole of {} mm':
    '{} mm Unterklotz auf jeder Seite eines Lochs von {} mm',
  'half of its diameter or more (chosen by us), or the block splits when the pin is pressed in':
    'die Hälfte seines Durchmessers oder mehr (von uns gewählt), sonst spaltet der Klotz, wenn der Knopf eingedrückt wird',
  'make the lower block wider, or the end button thinner':
    'Mach den Unterklotz breiter oder den Endknopf dünner',
  'a saddle let in {} mm over a block that ends {} mm inside the edge':
    'ein Untersattel, {} mm eingelassen, über einem Klotz, der {} mm innerhalb des Randes endet',
  'a saddle that rests on ribs and block': 'einen Untersattel, der auf Zargen und Klotz ruht',
  'let it in less, or make the block deeper': 'Lass ihn weniger ein oder mach den Klotz tiefer',
  'a saddle {} mm wide over a lower block of {} mm':
    'ein Untersattel von {} mm über einem Unterklotz von {} mm',
  'a block as wide as the seat, or its ends stand on the ribs and linings alone':
    'einen Klotz, so breit wie der Sitz, sonst stehen seine Enden nur auf Zargen und Reifchen',
  'make the saddle narrower or the block wider, or keep it':
    'Mach den Untersattel schmaler oder den Klotz breiter, oder behalte es',
  'the crest of a saddle {} mm in from the edge, the saddle let in {} mm':
    'der Grat eines Untersattels {} mm vom Rand, der Untersattel {} mm eingelassen',
  'a crest on the saddle': 'einen Grat auf dem Untersattel',
  'correct one of them': 'Berichtige eines von beiden',
  'an eye of {} mm in the {} end of a hole {} mm long':
    'ein Auge von {} mm am Ende ({}) eines Lochs von {} mm Länge',
  'an eye that leaves a hook round it': 'ein Auge, um das ein Haken bleibt',
  'make the eye smaller, or the hole longer': 'Mach das Auge kleiner oder das Loch länger',
  'a stem whose edge has no room for the {} hook':
    'ein Schaft, dessen Kante keinen Platz für den Haken hat ({})',
  'eyes to both sides of the stem': 'Augen zu beiden Seiten des Schafts',
  'check the width of the stem against the length of the hole and its eyes':
    'Prüf die Breite des Schafts gegen die Länge des Lochs und seine Augen',
  'a sound hole whose line crosses itself': 'ein F-Loch, dessen Linie sich selbst kreuzt',
  'one opening': 'eine Öffnung',
  'check its length, both eyes, the stem and the opening at the tips of the wings':
    'Prüf seine Länge, beide Augen, den Schaft und die Öffnung an den Flügelspitzen',
  'a sound hole so near to the edge that it cannot be laid flat from the arch: no template hugs it':
    'ein F-Loch, das so nahe am Rand liegt, dass es sich nicht von der Wölbung abwickeln lässt: keine Schablone schmiegt sich an',
  'wood of the arch all round the hole': 'Holz der Wölbung rund um das Loch',
  'use the template in plan, or bring the hole farther from the edge':
    'Nimm die Schablone im Grundriss oder rück das Loch weiter vom Rand',
  'a flat template of the sound hole that must give by {} % to lie on the arch':
    'eine abgewickelte Schablone des F-Lochs, die um {} % nachgeben muss, um auf der Wölbung zu liegen',
  '{} % or less (from memory)': '{} % oder weniger (aus dem Gedächtnis)',
  'cut it in two at the bridge line and lay each half by its own eye, or lower the arch':
    'Schneid sie an der Steglinie entzwei und leg jede Hälfte nach ihrem eigenen Auge auf, oder mach die Wölbung niedriger',
  'an arch that slopes by {}° under the sound hole': 'eine Wölbung, die unter dem F-Loch um {}° geneigt ist',
  '30° or less (chosen by us)': '30° oder weniger (von uns gewählt)',
  'lower the arch, or bring the hole nearer to the centre line':
    'Mach die Wölbung niedriger oder rück das Loch näher zur Mittellinie',
  'a sound hole that runs over the edge of the top or over the centre line':
    'ein F-Loch, das über den Deckenrand oder über die Mittellinie läuft',
  'each hole on its own half of the top': 'jedes Loch auf seiner eigenen Hälfte der Decke',
  'check the length of the holes, the distance between the upper eyes and the body stop':
    'Prüf die Länge der Löcher, den Abstand der oberen Augen und die Korpusmensur',
  'a sound hole {} mm from the edge of the top, {} mm {} its nicks':
    'ein F-Loch {} mm vom Deckenrand, {} mm {} seinen Kerben',
  below: 'unter',
  above: 'über',
  '{} mm or more (from memory): less breaks out, and leaves the glue joint no room':
    '{} mm oder mehr (aus dem Gedächtnis): weniger bricht aus und lässt der Leimfuge keinen Platz',
  'shorten the hole, bring the upper eyes nearer together, or give a larger lowerEyeToEdge':
    'Mach das Loch kürzer, rück die oberen Augen zusammen oder gib lowerEyeToEdge größer an',
  '{} mm from the lower eye to the edge; the hole turned {} comes to {} mm, and farther it is not turned':
    '{} mm vom unteren Auge bis zum Rand; das Loch, {} gedreht, kommt auf {} mm, und weiter wird es nicht gedreht',
  'a distance that goes with the length of the hole and the distance between the upper eyes on this outline':
    'einen Abstand, der bei diesem Umriss zur Länge des Lochs und zum Abstand der oberen Augen passt',
  'give {} mm, or {}': 'Gib {} mm an, oder {}',
  'set the upper eyes farther apart or make the hole longer':
    'setz die oberen Augen weiter auseinander oder mach das Loch länger',
  'set the upper eyes nearer together or make the hole shorter':
    'setz die oberen Augen näher zusammen oder mach das Loch kürzer',
  'the lower eye {} mm from the nearest place of the edge':
    'das untere Auge {} mm von der nächsten Stelle des Randes',
  'usually {} to {} mm ({}); none of these says to which place it is measured':
    'üblich {} bis {} mm ({}); keine davon sagt, bis zu welcher Stelle gemessen ist',
  'keep it if it is meant; for another lowerEyeToEdge the hole is turned about its inner nick':
    'Behalte es, wenn es so gemeint ist; für ein anderes lowerEyeToEdge wird das Loch um seine innere Kerbe gedreht',
  'inner nicks {} mm {} the bridge line, {} mm from the upper end':
    'innere Kerben {} mm {} der Steglinie, {} mm vom oberen Ende',
  'nicks at the stop, {} mm: whoever sets up the bridge goes by them':
    'Kerben an der Mensur, {} mm: danach richtet sich, wer den Steg aufstellt',
  'keep it only if it copies an instrument; the bridge line, post and bar stay at the stop':
    'Behalte es nur, wenn es ein Instrument nachbildet; Steglinie, Stimmstock und Balken bleiben an der Mensur',
  'the lower corner block, as it stands in the form, reaches {} mm under the sound hole':
    'der untere Eckklotz, wie er in der Form steht, reicht {} mm unter das F-Loch',
  '{} mm or less, which comes off when the block is trimmed inside (chosen by us)':
    '{} mm oder weniger, die abfallen, wenn der Klotz innen beschnitten wird (von uns gewählt)',
  'make the block shorter along the waist, or trim its inside well back once the form is out, before the top goes on':
    'Mach den Klotz längs des Mittelbügels kürzer oder nimm ihn innen weit zurück, wenn die Form heraus ist und bevor die Decke aufkommt',
  'a sound hole that runs over {}': 'ein F-Loch, das über Folgendes läuft: {}',
  'an opening clear of blocks and linings': 'eine Öffnung frei von Klötzen und Reifchen',
  'shorten the hole, bring it nearer to the centre line, or make linings and corner blocks smaller':
    'Mach das Loch kürzer, rück es näher zur Mittellinie oder mach Reifchen und Eckklötze kleiner',
  'a sound hole that runs {} mm over the {}': 'ein F-Loch, das {} mm über Folgendes läuft: {}',
  'a sound hole {} mm beside the {}': 'ein F-Loch {} mm daneben: {}',
  '{} mm free or more (from memory)': '{} mm frei oder mehr (aus dem Gedächtnis)',
  'set the upper eyes farther apart, or make the feet of the bridge narrower':
    'Setz die oberen Augen weiter auseinander oder mach die Stegfüße schmaler',
  'a bridge {} mm over its feet, upper eyes {} mm apart':
    'ein Steg, über die Füße {} mm, obere Augen {} mm auseinander',
  'feet no wider than between the upper eyes, as is published and usual':
    'Füße, nicht breiter als zwischen den oberen Augen, wie veröffentlicht und üblich',
  'use a narrower bridge, or set the eyes farther apart':
    'Nimm einen schmaleren Steg oder setz die Augen weiter auseinander',
  'an opening of {} mm beside an eye': 'eine Öffnung von {} mm neben einem Auge',
  '{} mm or more for a saw blade and the knife (from memory)':
    '{} mm oder mehr für ein Sägeblatt und das Messer (aus dem Gedächtnis)',
  'make that eye smaller, or the hole longer': 'Mach dieses Auge kleiner oder das Loch länger',
  'an opening of {} mm at the tip of a wing': 'eine Öffnung von {} mm an der Spitze eines Flügels',
  '{} mm or more; chosen by us after holes measured on photographs':
    '{} mm oder mehr; von uns gewählt nach Löchern, die an Fotos gemessen sind',
  'widen it, or saw only as far as the tips and finish with the knife':
    'Mach sie weiter oder säg nur bis zu den Spitzen und vollende mit dem Messer',
  'middles of the eyes {} mm apart': 'die Mitten der Augen {} mm auseinander',
  '{} mm by {}': '{} mm nach {}',
  'keep it if it is meant; a longer or shorter hole changes it':
    'Behalte es, wenn es so gemeint ist; ein längeres oder kürzeres Loch ändert es',
  'the lower eye {} mm from the centre line, {} mm from the edge':
    'das untere Auge {} mm von der Mittellinie, {} mm vom Rand',
  '{} mm from the centre line by {}: on this outline that would leave {} mm to the edge, so both cannot be met':
    '{} mm von der Mittellinie nach {}: bei diesem Umriss ließe das {} mm bis zum Rand, beides zugleich geht also nicht',
  'keep it: the distance to the edge comes first; or give lowerEyeToEdge {} to go by the rule':
    'Behalte es: der Abstand zum Rand geht vor; oder gib lowerEyeToEdge {} an, um der Regel zu folgen',
  'a number above 0, in {}': 'eine Zahl über 0, in {}',
  'a string of {} g/m, which its gauge and density make {} g/m':
    'eine Saite von {} g/m, die Durchmesser und Dichte zu {} g/m machen',
  'one mass; a wound string has no density to be worked out with':
    'eine Masse; eine umsponnene Saite hat keine Dichte, aus der sie sich ausrechnen ließe',
  'leave the density out where the string is wound, or correct one of them; the mass is used':
    'Lass die Dichte weg, wo die Saite umsponnen ist, oder berichtige eines von beiden; es gilt die Masse',
  'a length such as 355.5 or 14 1/8 in': 'eine Länge wie 355,5 oder 14 1/8 in',
  'type the length': 'Gib die Länge ein',
  'mm, cm, m or inches': 'mm, cm, m oder Zoll',
  'feet are not read: give the whole length in inches or mm':
    'Fuß werden nicht gelesen: gib die ganze Länge in Zoll oder mm an',
  'one number and one unit': 'eine Zahl und eine Einheit',
  'write it like 355.5, 35.6 cm or 14 1/8 in': 'Schreib es wie 355,5, 35,6 cm oder 14 1/8 in',
  'mm, cm, m, in or "': 'mm, cm, m, in oder "',
  'write the unit as one of these instead of “{}”': 'Schreib die Einheit so statt „{}“',
  'a number such as 0.05': 'eine Zahl wie 0,05',
  'type it again': 'Gib sie noch einmal ein',
  'a whole number and one fraction': 'eine ganze Zahl und ein Bruch',
  'write it like 14 1/8 in': 'Schreib es wie 14 1/8 in',
  'a fraction not over zero': 'einen Bruch, der nicht durch null teilt',
  'correct the fraction': 'Berichtige den Bruch',
  'a fraction below one after the whole number': 'nach der ganzen Zahl einen Bruch unter eins',
  'a unit after the fraction': 'eine Einheit nach dem Bruch',
  'write in for inches, or mm': 'Schreib in für Zoll, oder mm',
  'the {} at {}°': '{}: {}°',
  'the strings break over the bridge at {}°': 'die Saiten knicken über dem Steg mit {}°',
  'usually {} to {}° ({})': 'üblich {} bis {}° ({})',
  'from memory: one published table has {}': 'aus dem Gedächtnis: eine veröffentlichte Tabelle hat {}',
  'a rise of {} mm over {} mm between the channels of the waist':
    'ein Stich von {} mm über {} mm zwischen den Hohlkehlen des Mittelbügels',
  'the ribs would stand out beyond the plate': 'die Zargen stünden über die Platte hinaus',
  'the plate would end flush with the ribs': 'die Platte endete bündig mit den Zargen',
  '{} to {}{}': '{} bis {}{}',
  'seven tenths': 'sieben Zehntel',
  'two thirds': 'zwei Drittel',
  '{} of the body stop': '{} der Korpusmensur',
  'proportion of the {} {}': 'Verhältnis: {} {}',
  'as on the {} {}': 'wie bei: {} {}',
  'a number in mm, or a text with its unit such as "14 1/8 in"':
    'eine Zahl in mm oder ein Text mit seiner Einheit, etwa "14 1/8 in"',
  'a number in mm, a text with its unit, or { "value", "plusMinus" }':
    'eine Zahl in mm, ein Text mit seiner Einheit oder { "value", "plusMinus" }',
  'a {} document': 'eine Datei der Art {}',
  'choose another file': 'Wähl eine andere Datei',
  'version {}, made by a newer Garland': 'Fassung {}, von einem neueren Garland',
  'version {} or older': 'Fassung {} oder älter',
  'open it with the Garland that made it, or a newer one; the file is left as it is':
    'Öffne sie mit dem Garland, das sie gemacht hat, oder einem neueren; die Datei bleibt, wie sie ist',
  'a list': 'eine Liste',
  'an object': 'ein Objekt',
  'a value of type {}': 'einen Wert der Art {}',
  'one of the forms that the schema gives': 'eine der Formen, die das Schema nennt',
  'tenths of a millimetre': 'Zehntelmillimeter',
  'a length multiplied by 25.4 once too often': 'eine Länge, die einmal zu oft mit 25,4 malgenommen ist',
  'say family {} if it is one, or read the number again':
    'Gib die Familie {} an, wenn es eine ist, oder lies die Zahl noch einmal ab',
  'read the number again': 'Lies die Zahl noch einmal ab',
  '{}: {} over the arch, less {} mm for a rise of {} mm ({})':
    '{}: {} über die Wölbung, weniger {} mm für einen Stich von {} mm ({})',
  'habit of the family': 'das Übliche der Familie',
  '{}: {} over the purfling, and twice the border of {} ({})':
    '{}: {} über die Einlage, und zweimal der Rand von {} ({})',
  'arch of the back as given': 'Wölbung des Bodens wie angegeben',
  'arch of the back as the family has it': 'Wölbung des Bodens wie in der Familie üblich',
  'round the middle': 'um die Mitte',
  'in the lower bout': 'im Unterbügel',
  'at the flanks of the waist': 'an den Flanken des Mittelbügels',
  'in the upper bout': 'im Oberbügel',
  'in the channel': 'in der Hohlkehle',
  'under the post': 'unter dem Stimmstock',
  'under the bar': 'unter dem Balken',
  'in the design': 'im Entwurf',
  'a body of a violin, viola or cello with four corners':
    'einen Korpus einer Geige, Bratsche oder eines Cellos mit vier Ecken',
  'at most one point or comma': 'höchstens einen Punkt oder ein Komma',
  'leave out the separator of the thousands, so that one sign for the decimals is left':
    'Lass das Tausenderzeichen weg, damit nur ein Dezimalzeichen bleibt',
  'one meaning: this can be decimals or thousands':
    'eine Bedeutung: dies können Dezimalen oder Tausender sein',
  'write {} for thousands, or {}0 for decimals': 'Schreib {} für Tausender oder {}0 für Dezimalen',
  'a {} for the decimals, as set': 'ein {} für die Dezimalen, wie eingestellt',
  'use the {}, or change the setting': 'Nimm {} oder ändere die Einstellung',
  'channel ends at {} and {} mm': 'Enden der Hohlkehle bei {} und {} mm',
  'the second above the first': 'das zweite über dem ersten',
  'a rise of {} mm over {} mm from the crest to the channel':
    'ein Stich von {} mm auf {} mm vom Scheitel bis zur Hohlkehle',
  'a rise above 0 and below that length': 'einen Stich über 0 und unter dieser Länge',
  'an end fillet of {} mm': 'eine Ausrundung am Ende von {} mm',
  'a radius of 0 mm or more': 'einen Radius von 0 mm oder mehr',
  'a flatter circle of radius {} mm to {} mm each side':
    'ein flacherer Kreis mit Radius {} mm bis {} mm nach jeder Seite',
  'a radius greater than its reach, and a reach inside the arch':
    'einen Radius, größer als seine Reichweite, und eine Reichweite innerhalb der Wölbung',
  'no falling circle between crest and an end fillet of {} mm':
    'kein fallender Kreis zwischen Scheitel und einer Ausrundung von {} mm',
  'room for a circle between them': 'Platz für einen Kreis dazwischen',
  'a platform that reaches into the end fillet': 'ein flacher Scheitel, der in die Ausrundung reicht',
  'a shorter platform': 'einen kürzeren flachen Scheitel',
  'right of the centre': 'rechts der Mitte',
  'left of the centre': 'links der Mitte',
  '{} mm from the centre line, {}': '{} mm von der Mittellinie, {}',
  '{} mm wide, {}': '{} mm breit, {}',
  'a swelling of the crest': 'eine Schwellung des Scheitels',
  'a sag of the crest': 'eine Senkung des Scheitels',
  'a bulge where the post presses, {}': 'eine Beule, wo der Stimmstock drückt, {}',
  'a ridge over the bar, {}': 'ein Grat über dem Balken, {}',
  'a sag at the bar, {}': 'eine Senkung am Balken, {}',
  'a swelling, {}': 'eine Schwellung, {}',
  'a hollow, {}': 'eine Mulde, {}',
  '{} mm {} the crest': '{} mm {} dem Scheitel',
  ', as the load of the strings leaves it': ', wie die Last der Saiten sie hinterlässt',
  'a swelling': 'eine Schwellung',
  'a sag': 'eine Senkung',
  'a hollow': 'eine Mulde',
  'over {} mm, {}': 'auf {} mm, {}',
  '{} mm {} the fitted arch': '{} mm {} der eingepassten Wölbung',
  'two numbers in millimetres a reading': 'zwei Zahlen in Millimetern je Ablesung',
  '{} or more, from channel to channel': '{} oder mehr, von Hohlkehle zu Hohlkehle',
  'readings of one height': 'Ablesungen einer Höhe',
  'heights that rise to a crest': 'Höhen, die zu einem Scheitel steigen',
  'a half width of {} mm': 'eine halbe Breite von {} mm',
  'neither a table of measurements nor a trace nor a profile': 'weder Maßtabelle noch Abnahme noch Profil',
  'a second one of its kind': 'eine zweite ihrer Art',
  'a second head': 'einen zweiten Kopf',
  'a profile alone': 'ein Profil allein',
  'trace of {}': 'Abnahme von {}',
  'sound hole, {} side': 'F-Loch, Seite: {}',
  '{} sound hole of a trace': 'F-Loch einer Abnahme, Seite: {}',
  '{} sound hole of the trace of {}': 'F-Loch ({}) der Abnahme von {}',
  '{} {} rms, {} at most': '{} {} rms, höchstens {}',
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
  'a channel distance or rounding that is not above 0 mm':
    'ein Abstand oder eine Ausrundung der Hohlkehle, nicht über 0 mm',
  'an outline without a widest place in each bout and a narrowest waist':
    'ein Umriss ohne breiteste Stelle in jedem Bügel und schmalste in der Mitte',
  'a corner in which the channel cannot be rounded':
    'eine Ecke, in der sich die Hohlkehle nicht ausrunden lässt',
  'a channel that folds over itself inside a round bout':
    'eine Hohlkehle, die sich in einem runden Bügel überschlägt',
  'the larger circle, to each side of the crest': 'der größere Kreis, nach jeder Seite des Scheitels',
  'radius of the larger circle over the crest': 'Radius des größeren Kreises über dem Scheitel',
  '; the shape of {} whole {} is carried along the body':
    '; die Form von {} ganzen {} ist längs des Korpus mitgeführt',
  '{} at {} stands {} mm too {}': '{} bei {} steht {} mm zu {}',
  '{} mm beside the centre line, {} mm up': '{} mm neben der Mittellinie, {} mm hoch',
  '{} measured {}': '{} gemessene {}',
  'the centre line': 'die Mittellinie',
  'along the rib height': 'längs der Zargenhöhe',
  'reaches of {} and {} mm': 'Reichweiten von {} und {} mm',
  'faces that do not enclose a block': 'Flächen, die keinen Klotz umschließen',
  'a face that leaves the form and comes back': 'eine Fläche, die die Form verlässt und zurückkommt',
  'at the nut': 'am Obersattel',
  'at the throat': 'an der Kehle',
  'beside the floor, {} mm from the nut': 'neben dem Grund, {} mm vom Obersattel',
  'walls of the pegbox {} thick {}': 'Wände des Wirbelkastens, {} dick {}',
  '{} or more, or they split at the pegs': '{} oder mehr, sonst spalten sie an den Wirbeln',
  'raise pegboxWallLean or pegboxFloor, or widen the back of the head':
    'Mach pegboxWallLean oder pegboxFloor größer oder den Kopfrücken breiter',
  'make them thicker, or widen the pegbox': 'Mach sie dicker oder den Wirbelkasten breiter',
  'a floor of the pegbox {} thick': 'ein Grund des Wirbelkastens von {} Dicke',
  'raise pegboxFloor': 'Mach pegboxFloor größer',
  'in front of it': 'davor',
  'between it and the floor': 'zwischen ihm und dem Grund',
  '{} peg hole from the nut with {} {}': 'Wirbelloch ({} vom Obersattel) mit {} {}',
  'move the peg along, thin the floor, or deepen the head':
    'Rück den Wirbel, mach den Grund dünner oder den Kopf tiefer',
  '{} peg hole from the nut with {} to the end of the pegbox':
    'Wirbelloch ({} vom Obersattel) mit {} bis zum Ende des Wirbelkastens',
  '{} or more, for the windings of the string': '{} oder mehr, für die Windungen der Saite',
  'move the peg along': 'Rück den Wirbel',
  '{} and {} peg hole {} apart': 'Wirbellöcher {} und {}, {} auseinander',
  '{} or more, for fingers and for the wood between':
    '{} oder mehr, für die Finger und für das Holz dazwischen',
  'move one of them along': 'Rück einen davon',
  'comes within {} of': 'kommt auf {} heran an',
  first: 'erstes',
  second: 'zweites',
  third: 'drittes',
  fourth: 'viertes',
  'neck stop': 'Halsmensur',
  'body stop': 'Korpusmensur',
  'neck angle': 'Halswinkel',
  'height of the board’s end': 'Höhe des Griffbrettendes',
  'bridge height': 'Steghöhe',
  'string length': 'Saitenlänge',
  '{} {} where the others need {} ({} off)': '{} {}, wo die anderen {} brauchen ({} daneben)',
  '{} and {}': '{} und {}',
  'end of the fingerboard over the top': 'Griffbrettende über der Decke',
  'bridge over the top': 'Steg über der Decke',
  'by us': 'von uns',
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
  'in the design: thicker there than the map': 'im Entwurf: dort dicker als der Plan',
  'beyond it that fades into the map; 15 mm on a violin unless said':
    'darüber hinaus geht es in den Plan über; 15 mm bei der Geige, wenn nichts gesagt ist',
  '{} mm above the lower end, {} mm from the centre line':
    '{} mm über dem unteren Ende, {} mm von der Mittellinie',
  '{}, channel': '{}, Hohlkehle',
  '{}, thickness point {}': '{}, Stärkenpunkt {}',
  '{}, thickness points': '{}, Stärkenpunkte',
  'the rib corner ends {} mm wide at the {} corners': 'die Zargenecke endet {} mm breit an den Ecken ({})',
  'toward the edge': 'zum Rand',
  'toward the centre line': 'zur Mittellinie',
  'the {} lining': 'das Reifchen ({})',
  'a published rule of dividers (A. T. King, 2004), one maker’s reading of old violins':
    'einer veröffentlichten Zirkelregel (A. T. King, 2004), wie ein Geigenbauer alte Geigen liest',
  'a length, 0 at the stop': 'eine Länge, 0 an der Mensur',
  'too high': 'zu hoch',
  'too low': 'zu tief',
  high: 'hoch',
  low: 'tief',
  'the strings pull with {} N together': 'die Saiten ziehen zusammen mit {} N',
  'the bridge comes out {} mm high': 'der Steg wird {} mm hoch',
  'the spread of twelve holes of six old instruments, measured on photographs':
    'die Spanne von zwölf Löchern sechs alter Instrumente, an Fotos gemessen',
  '{}, upperCorner: {}': '{}, obere Ecken: {}',
  NaN: 'keine Zahl',
  '{} of the calibration sheet': '{} des Messblatts',
  'end of the fingerboard over the top {}, outside what is usual':
    'Griffbrettende über der Decke {}, außerhalb des Üblichen',
  'bridge over the top {}, outside what is usual': 'Steg über der Decke {}, außerhalb des Üblichen',
  'a pegbox that stands out {} on either side of the neck at the nut, without shoulders':
    'ein Wirbelkasten, der am Obersattel auf jeder Seite {} über den Hals vorsteht, ohne Schultern',
  'shoulders that round it out from the neck, or a pegbox hardly wider than the neck':
    'Schultern, die ihn vom Hals aus runden, oder einen Wirbelkasten, der kaum breiter als der Hals ist',
  'give pegboxShoulder, about {} for a quarter circle':
    'Gib pegboxShoulder an, etwa {} für einen Viertelkreis',
  'shoulders on a pegbox {} wide at the nut, no wider than the neck of {}':
    'Schultern an einem Wirbelkasten, der am Obersattel {} breit ist, nicht breiter als der Hals mit {}',
  'a pegbox wider than the neck': 'einen Wirbelkasten, der breiter als der Hals ist',
  'widen the pegbox at the nut, or set pegboxShoulder to 0':
    'Mach den Wirbelkasten am Obersattel breiter oder setz pegboxShoulder auf 0',
  'shoulders {} long on a pegbox of {}': 'Schultern, {} lang, an einem Wirbelkasten von {}',
  '{} or less, or they are a taper and no shoulders':
    'höchstens {}, sonst sind es keine Schultern, sondern eine Verjüngung',
  'correct it: it is the length from the nut over which the pegbox rounds out':
    'Berichtige es: die Länge vom Obersattel an, über die sich der Wirbelkasten rundet',
  'pegs {} mm thick: number {} from the nut would run out at the front or through the floor of the pegbox':
    'Wirbel, {} mm dick: Nummer {} vom Obersattel aus bräche vorn oder durch den Grund des Wirbelkastens',
  'pegs that fit between its front and its floor':
    'Wirbel, die zwischen seine Vorderkante und seinen Grund passen',
  'correct their diameter, or the places of the pegs':
    'Berichtige ihren Durchmesser oder die Stellen der Wirbel',
  'a mortise {} deep from the edge, through an upper block that ends {} from it':
    'ein Halseinschnitt, vom Rand aus {} tief, durch einen Oberklotz, der {} vom Rand endet',
  'a mortise that ends inside the block': 'einen Einschnitt, der im Klotz endet',
  'correct its depth, the depth of the block, or the angle of the root':
    'Berichtige seine Tiefe, die Tiefe des Klotzes oder den Winkel des Halsfußes',
  'an A of {} Hz, {} half steps from the usual one': 'ein A von {} Hz, {} Halbtöne neben dem üblichen',
  'the A that the instrument is tuned to, {} to {} Hz (415 to 443 in use)':
    'das A, auf das gestimmt wird, {} bis {} Hz (gebräuchlich 415 bis 443)',
  'correct it; until then every pull of a string is wrong':
    'Berichtige es; bis dahin stimmt kein Zug einer Saite',
  'an end button {} mm thick in a lower block {} mm wide':
    'ein Endknopf, {} mm dick, in einem Unterklotz von {} mm Breite',
  'a hole that the block has wood around': 'ein Loch, um das der Klotz noch Holz hat',
  'correct the diameter of the end button or the width of the block':
    'Berichtige den Durchmesser des Endknopfs oder die Breite des Klotzes',
  'move the crest nearer to the middle of the body, or lower the arch':
    'Rück den Scheitel näher an die Mitte des Korpus oder mach die Wölbung niedriger',
  'make the flatter circle reach less far, or its radius larger':
    'Lass den flacheren Kreis weniger weit reichen oder mach seinen Radius größer',
  'use a smaller fillet, or move the crest nearer to the middle of the body':
    'Nimm eine kleinere Ausrundung oder rück den Scheitel näher an die Mitte des Korpus',
  'make the plate thinner there, leave its edge thicker, or make the channel shallower':
    'Mach die Platte dort dünner, lass ihren Rand dicker oder die Hohlkehle flacher',
  'make the plate thinner there, or its arch higher': 'Mach die Platte dort dünner oder ihre Wölbung höher',
  'no cross arch higher than the crest, to {} mm':
    'keine Querwölbung, die höher ist als der Scheitel, auf {} mm',
  'fullness {} and {}': 'Fülle {} und {}',
  'both within {} to be drawn alike; each plate is drawn with its own':
    'beide innerhalb von {}, um gleich gezeichnet zu werden; jede Platte wird mit ihrer eigenen gezeichnet',
  'compare both with the instrument, or give the fullness that you want':
    'Vergleich beide mit dem Instrument oder gib die Fülle an, die du willst',
  'the {} read a second time, with a crest of {} mm where the first reading has {} mm; the second one is used':
    '{}, ein zweites Mal abgelesen, mit einem Scheitel von {} mm, wo die erste Ablesung {} mm hat; die zweite gilt',
  'both within {} mm': 'beide innerhalb von {} mm',
  'leave one of the readings out, or read the arch there again':
    'Lass eine der Ablesungen weg oder lies die Wölbung dort noch einmal ab',
  'the {} read {} mm high, {} {} mm at its crest': '{}, {} mm hoch abgelesen, {} {} mm am Scheitel',
  'read both again from the same level, or leave the wrong one out':
    'Lies beide noch einmal von derselben Höhe ab oder lass die falsche weg',
  '{} mm of the back, edge and channel finished': '{} mm des Bodens, Rand und Hohlkehle fertig',
  '{} mm of the top, edge and channel finished': '{} mm der Decke, Rand und Hohlkehle fertig',
  'highest {} mm, {} mm from the start; steepest inside the edge {}°':
    'am höchsten {} mm, {} mm vom Anfang; innerhalb des Randes am steilsten {}°',
  'families of pieces where only solids are made': 'Arten von Teilen, wo nur Körper gemacht werden',
  'print or laser among the kinds that are made': 'Papier oder Laser unter dem, was gemacht wird',
  'leave --parts out, or ask for print or laser too': 'Lass --parts weg oder nimm Papier oder Laser dazu',
};
