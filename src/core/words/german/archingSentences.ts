import type { Catalogue } from '../catalogue.ts';

/** What is found in the arches and their surface. */
export const archingSentences: Catalogue = {
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
  below: 'unter',
  above: 'über',
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
  'move the crest nearer to the middle of the body, or lower the arch':
    'Rück den Scheitel näher an die Mitte des Korpus oder mach die Wölbung niedriger',
  'make the flatter circle reach less far, or its radius larger':
    'Lass den flacheren Kreis weniger weit reichen oder mach seinen Radius größer',
  'use a smaller fillet, or move the crest nearer to the middle of the body':
    'Nimm eine kleinere Ausrundung oder rück den Scheitel näher an die Mitte des Korpus',
  'highest {} mm, {} mm from the start; steepest inside the edge {}°':
    'am höchsten {} mm, {} mm vom Anfang; innerhalb des Randes am steilsten {}°',
};
