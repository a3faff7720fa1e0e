import type { Catalogue } from '../catalogue.ts';

/** What is found where the numbers of a whole instrument are held against each other. */
export const checkSentences: Catalogue = {
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
  'a rise of {} mm over {} mm between the channels of the waist':
    'ein Stich von {} mm über {} mm zwischen den Hohlkehlen des Mittelbügels',
  'the ribs would stand out beyond the plate': 'die Zargen stünden über die Platte hinaus',
  'the plate would end flush with the ribs': 'die Platte endete bündig mit den Zargen',
  '{} to {}{}': '{} bis {}{}',
  'in the lower bout': 'im Unterbügel',
  'in the upper bout': 'im Oberbügel',
};
