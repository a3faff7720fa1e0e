import type { Catalogue } from '../catalogue.ts';

/** What is found in what a maker gives: numbers, units, tables, designs. */
export const designSentences: Catalogue = {
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
  'a length above 0 mm': 'eine Länge über 0 mm',
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
  'neither a table of measurements nor a trace nor a profile': 'weder Maßtabelle noch Abnahme noch Profil',
  'a second one of its kind': 'eine zweite ihrer Art',
  'a second head': 'einen zweiten Kopf',
  'a profile alone': 'ein Profil allein',
  'trace of {}': 'Abnahme von {}',
  'sound hole, {} side': 'F-Loch, Seite: {}',
  '{} sound hole of a trace': 'F-Loch einer Abnahme, Seite: {}',
  '{} sound hole of the trace of {}': 'F-Loch ({}) der Abnahme von {}',
  '{} {} rms, {} at most': '{} {} rms, höchstens {}',
  'by us': 'von uns',
  high: 'hoch',
  low: 'tief',
  'no cross arch higher than the crest, to {} mm':
    'keine Querwölbung, die höher ist als der Scheitel, auf {} mm',
  'fullness {} and {}': 'Völligkeit {} und {}',
  'both within {} to be drawn alike; each plate is drawn with its own':
    'beide innerhalb von {}, um gleich gezeichnet zu werden; jede Platte wird mit ihrer eigenen gezeichnet',
  'compare both with the instrument, or give the fullness that you want':
    'Vergleich beide mit dem Instrument oder gib die Völligkeit an, die du willst',
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
  'families of pieces where only solids are made': 'Arten von Teilen, wo nur Körper gemacht werden',
  'print or laser among the kinds that are made': 'Papier oder Laser unter dem, was gemacht wird',
  'leave --parts out, or ask for print or laser too': 'Lass --parts weg oder nimm Papier oder Laser dazu',
};
