import type { Catalogue } from '../catalogue.ts';

/** What is found in neck, board, set-up and strings. */
export const neckSentences: Catalogue = {
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
  'a number above 0, in {}': 'eine Zahl über 0, in {}',
  'a string of {} g/m, which its gauge and density make {} g/m':
    'eine Saite von {} g/m, die Durchmesser und Dichte zu {} g/m machen',
  'one mass; a wound string has no density to be worked out with':
    'eine Masse; eine umsponnene Saite hat keine Dichte, aus der sie sich ausrechnen ließe',
  'leave the density out where the string is wound, or correct one of them; the mass is used':
    'Lass die Dichte weg, wo die Saite umsponnen ist, oder berichtige eines von beiden; es gilt die Masse',
  'the strings break over the bridge at {}°': 'die Saiten knicken über dem Steg mit {}°',
  'usually {} to {}° ({})': 'üblich {} bis {}° ({})',
  'from memory: one published table has {}': 'aus dem Gedächtnis: eine veröffentlichte Tabelle hat {}',
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
};
