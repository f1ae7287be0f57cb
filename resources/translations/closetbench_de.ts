<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation>1 für eine Tür, 2 für ein Paar, an beiden Seiten angeschlagen</translation>
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation>Eine Handkreissäge an der Führungsschiene ist vorhanden</translation>
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation>Eine Tiefe aus dem Bruchteil wird auf ein Vielfaches hiervon abgerundet</translation>
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation>Ein fester Boden liegt darüber und folgt seiner Höhe</translation>
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation>Eine Tischkreissäge ist vorhanden</translation>
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation>Genauigkeitsklasse des Maßbands</translation>
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation>Quer durch das Feld oder in dessen Tiefe</translation>
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation>Zugabe zum Anpassen eines Endfrieses an die Wand</translation>
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation>Eine andere Zahl kann einen anderen Plan finden</translation>
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation>Fläche der Teile im Verhältnis zur Fläche der Platten, in Prozent</translation>
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation>Fläche der rechteckigen darunter, in m²</translation>
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation>Felder, für die es Objekte gab</translation>
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation>Bretter und Stäbe, die auf Länge geschnitten werden</translation>
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation>Lichte Breite; 0: teilt sich den Rest mit den anderen solchen Feldern</translation>
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation>Freiraum an jeder Seite</translation>
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation>Freiraum unter dem Boden darüber</translation>
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation>Spalten, die die Stückliste enthalten</translation>
  </message>
  <message>
   <source>Component and name</source>
   <translation>Bauteil und Name</translation>
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation>Aus einer Platte geschnitten, die von einem vorhandenen Möbel aufgehoben wird</translation>
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation>Schnitte je Platte, die der Handel ausführt; 0: beliebig viele</translation>
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation>Größte erlaubte Nuttiefe als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>Degrees to which the closet's own door opens</source>
   <translation>Grad, bis zu denen die eigene Tür des Schranks öffnet</translation>
  </message>
  <message>
   <source>Depth along the left wall</source>
   <translation>Tiefe an der linken Wand</translation>
  </message>
  <message>
   <source>Depth along the right wall</source>
   <translation>Tiefe an der rechten Wand</translation>
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation>Tiefe links, Leisten und Fronten eingeschlossen, Griffe nicht</translation>
  </message>
  <message>
   <source>Depth at the right; 0: not given</source>
   <translation>Tiefe rechts; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation>Tiefe eines Sacklochs</translation>
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation>Nuttiefe als Bruchteil der Dicke der Platte</translation>
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation>Tiefe aller Nuten; 0: nach dem Bruchteil</translation>
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation>Tiefe eines Einbauraums mit vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation>Tiefe der Nuten; 0: nach Regel</translation>
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation>Tiefe des größten lot- und waagerechten Quaders, der passt</translation>
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation>Tiefe des Schenkels an der hinteren Wand</translation>
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation>Tiefe des Schenkels an der Seitenwand</translation>
  </message>
  <message>
   <source>Diagonal from front left to back right; 0: not taken</source>
   <translation>Diagonale von vorn links nach hinten rechts; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Diagonal from front right to back left; 0: not taken</source>
   <translation>Diagonale von vorn rechts nach hinten links; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation>Durchmesser der Bohrung für einen Griff</translation>
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation>Durchmesser der Bohrungen für Bodenträger</translation>
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation>Durchmesser des vorhandenen Fräsers; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation>Richtung der ersten Schnitte an einer ganzen Platte</translation>
  </message>
  <message>
   <source>Edge band at the end</source>
   <translation>Kante am Ende</translation>
  </message>
  <message>
   <source>Edge band at the front</source>
   <translation>Kante vorn</translation>
  </message>
  <message>
   <source>Edge band at the rear</source>
   <translation>Kante hinten</translation>
  </message>
  <message>
   <source>Edge band at the start</source>
   <translation>Kante am Anfang</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation>Über die Länge der Ränder hinaus gekauftes Kantenband, als Bruchteil</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation>Kante der Vorderkanten der Böden oder ihrer Lippen: auto wie beim Korpus, leer für keine, oder ein Schlüssel des Katalogs</translation>
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Kante der sichtbaren Vorderkanten: auto für die des Materials, leer für keine, oder ein Schlüssel des Katalogs</translation>
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Kante: auto für die des Materials, leer für keine, oder ein Schlüssel des Katalogs</translation>
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation>Fehler der Wasserwaage oder des Lots auf einen Meter</translation>
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation>Datei mit eigenen Materialien und Preisen; leer: nur die des Programms</translation>
  </message>
  <message>
   <source>Findings about it</source>
   <translation>Zweifel daran</translation>
  </message>
  <message>
   <source>Findings about the design</source>
   <translation>Zweifel am Entwurf</translation>
  </message>
  <message>
   <source>Findings about the readings</source>
   <translation>Zweifel an den Messwerten</translation>
  </message>
  <message>
   <source>Finished length</source>
   <translation>Fertiglänge</translation>
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation>Fertiglänge, Kanten eingeschlossen</translation>
  </message>
  <message>
   <source>Finished width</source>
   <translation>Fertigbreite</translation>
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation>Fertigbreite, Kanten eingeschlossen</translation>
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation>Von einem festen Boden zum nächsten Loch</translation>
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation>Von Loch zu Loch eines Griffs mit zwei, 0 für einen Knopf mit einem</translation>
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation>Von naher Wand zu naher Wand</translation>
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation>Von einem Loch zum nächsten</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation>Von diesem Rand zur nahen Wange der ersten Nut</translation>
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation>Von der Korpusvorderkante zur Sockelvorderkante</translation>
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation>Von der Vorderkante zur vorderen Reihe</translation>
  </message>
  <message>
   <source>From the leaf's edge to the boring's, 0 takes the hinge's own</source>
   <translation>Von der Kante des Flügels zum Bohrungsrand, 0 nimmt den des Scharniers</translation>
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation>Von der Griffmitte zur freien Kante des Flügels</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation>Von den Hinterkanten zur Hinterfläche der Rückwand</translation>
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, 0 takes 305 mm or the middle</source>
   <translation>Von der Rückseite der Öffnung zur Stangenachse, 0 nimmt 305 mm oder die Mitte</translation>
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation>Von der Unterkante der Seiten zur Nut des Bodens</translation>
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation>Nuten enden vor einer bekanteten Vorderkante und laufen durch eine rohe durch</translation>
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation>Nuten, Bohrungen und Ausklinkungen in Worten</translation>
  </message>
  <message>
   <source>Height above the floor of the high readings</source>
   <translation>Höhe der hohen Messwerte über dem Boden</translation>
  </message>
  <message>
   <source>Height above the floor of the low readings</source>
   <translation>Höhe der tiefen Messwerte über dem Boden</translation>
  </message>
  <message>
   <source>Height above the floor of the mid readings</source>
   <translation>Höhe der mittleren Messwerte über dem Boden</translation>
  </message>
  <message>
   <source>Height at the back left</source>
   <translation>Höhe hinten links</translation>
  </message>
  <message>
   <source>Height at the back right</source>
   <translation>Höhe hinten rechts</translation>
  </message>
  <message>
   <source>Height at the front left</source>
   <translation>Höhe vorn links</translation>
  </message>
  <message>
   <source>Height at the front right</source>
   <translation>Höhe vorn rechts</translation>
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation>Höhe links, Füße und Platte eingeschlossen</translation>
  </message>
  <message>
   <source>Height at the right; 0: not given</source>
   <translation>Höhe rechts; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation>Höhe einer Tragleiste</translation>
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation>Höhe einer Leiste vor jedem festen Boden, 0 für keine</translation>
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation>Höhe eines Streifens vor jedem Boden; 0: keiner</translation>
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation>Höhe eines Einbauraums mit vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>Height of the base</source>
   <translation>Höhe des Sockels</translation>
  </message>
  <message>
   <source>Height of the baseboard</source>
   <translation>Höhe der Sockelleiste</translation>
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation>Höhe des unteren Querfrieses</translation>
  </message>
  <message>
   <source>Height of the boxes' sides, 0 takes all that the slide leaves</source>
   <translation>Höhe der Kastenseiten, 0 nimmt alles, was der Auszug lässt</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation>Höhe der Tragleisten an den Wänden</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation>Höhe der Tragleisten an den Wänden, 0 für keine</translation>
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation>Höhe der Füße, die entfernt werden</translation>
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation>Höhe des größten lot- und waagerechten Quaders, der passt</translation>
  </message>
  <message>
   <source>Height of the opening; 0: not taken</source>
   <translation>Höhe der Öffnung; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation>Höhe des Anschlags über dem Boden</translation>
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation>Höhe des oberen Querfrieses</translation>
  </message>
  <message>
   <source>Height of the wall over the opening; 0: not taken</source>
   <translation>Höhe der Wand über der Öffnung; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left (mm)</source>
   <translation>Höhen der Fronten von unten, eine davon 0 für den Rest (mm)</translation>
  </message>
  <message>
   <source>Hinges on each leaf, -1 takes what its height and weight ask for</source>
   <translation>Scharniere je Flügel, -1 nimmt so viele, wie Höhe und Gewicht verlangen</translation>
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation>Wie tief der Einbauraum höchstens gehen darf; 0: so tief wie der Raum</translation>
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation>Wie weit ein verstellbarer Boden hinter den Vorderkanten bleibt</translation>
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation>Wie weit eine Leiste mindestens auf dem Korpus aufliegt, 6 mm wie oben</translation>
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation>Wie weit eine Platte vor dem Nutgrund endet</translation>
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation>Wie weit ein Längsfries über die Korpusseite hinausreicht</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation>Wie weit über dem Boden des Fachs es beginnt</translation>
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, by rule by its kind</source>
   <translation>Wie weit eine aufliegende Front überdeckt, was ihre Öffnung begrenzt, nach Regel je nach Art</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation>Wie weit Nuten vor der Vorderkante enden; 0: laufen durch</translation>
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation>Wie weit sie an beiden Enden über das Gestell hinausreicht</translation>
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation>Wie weit seine Vorderseite hinter den Korpusvorderkanten bleibt</translation>
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation>Wie weit seine Unterkante nach rechts ansteigt</translation>
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation>Wie weit seine rechte Kante sich nach oben nach rechts neigt</translation>
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation>Wie weit seine Oberkante nach rechts ansteigt</translation>
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation>Wie weit der Rahmen über die Korpusoberkante hinausreicht</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation>Wie weit die Nuten vor der Vorderkante oder dem Anfang enden</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation>Wie weit die Nuten vor der Hinterkante oder dem Ende enden</translation>
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation>Wie weit die linke Kante der Öffnung einer einliegenden Front sich nach oben nach rechts neigt</translation>
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation>Wie weit die Leisten, die entfernt werden, an jeder Seite und vorn vorstehen</translation>
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation>Wie weit die Bankplatte vorn über Gestell und Blende hinausreicht</translation>
  </message>
  <message>
   <source>How far they come out</source>
   <translation>Wie weit sie herauskommen</translation>
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation>Wie Vorder- und Hinterstück eines Kastens an die Seiten anschließen</translation>
  </message>
  <message>
   <source>How high it is, 0 for all that is left</source>
   <translation>Wie hoch es ist, 0 für alles Übrige</translation>
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation>Wie wahrscheinlich die Freiräume eingehalten sind, nach den Messwerten</translation>
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation>Wie lange dann nach weniger Schnitten gesucht wird, je Material</translation>
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation>Wie lange nach weniger Platten gesucht wird, je Material</translation>
  </message>
  <message>
   <source>How many there are</source>
   <translation>Wie viele es sind</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation>Wie oft die Schnittrichtung wechseln darf, die erste mitgezählt; 0: keine Grenze</translation>
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation>Wie viel tiefer die Vorderseite eines Bodens liegt als seine Hinterseite</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation>Wie viel kürzer als sein Feld ein verstellbarer Boden ist</translation>
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation>Wie viel breiter eine Nut ist als die Platte darin</translation>
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation>Wie oft der Plan gezeichnet wurde</translation>
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation>Wie Texte Längen ausgeben</translation>
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation>Wie die Sockel auf dem Boden stehen</translation>
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation>Wie der Boden gehalten wird</translation>
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation>Wie die langen Rahmenhölzer liegen</translation>
  </message>
  <message>
   <source>How the members are joined</source>
   <translation>Wie die Rahmenteile verbunden sind</translation>
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation>Wie Ober- und Unterboden mit den Seiten verbunden sind</translation>
  </message>
  <message>
   <source>In kg, with its drawers; 0 where nobody has weighed it</source>
   <translation>In kg, mit den Schubladen; 0, wo niemand es gewogen hat</translation>
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation>Seine Felder von links nach rechts</translation>
  </message>
  <message>
   <source>Its depth, 0 takes the envelope's</source>
   <translation>Seine Tiefe, 0 nimmt die des Einbauraums</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation>Abstand seines linken Endes vom linken Rand des Einbauraums</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, by rule beside what stands there</source>
   <translation>Abstand seines linken Endes vom linken Rand des Einbauraums, nach Regel neben dem, was dort steht</translation>
  </message>
  <message>
   <source>Its right end's, 0 runs to the right wall</source>
   <translation>Der seines rechten Endes, 0 läuft bis zur rechten Wand</translation>
  </message>
  <message>
   <source>Its underside above the floor, 0 lies on the highest carcass</source>
   <translation>Seine Unterseite über dem Fußboden, 0 liegt auf dem höchsten Korpus</translation>
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation>Schlüssel einer Stabklasse</translation>
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation>Schlüssel einer Scharnierklasse</translation>
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation>Schlüssel einer Auszugsklasse</translation>
  </message>
  <message>
   <source>Key of its board</source>
   <translation>Schlüssel der Platte</translation>
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation>Schlüssel der Platte im Katalog</translation>
  </message>
  <message>
   <source>Key of its board, empty takes the shelf's</source>
   <translation>Schlüssel der Platte, leer nimmt die des Bodens</translation>
  </message>
  <message>
   <source>Key of its edge band, auto for the material's own, empty for none</source>
   <translation>Schlüssel der Kante, auto für die des Materials, leer für keine</translation>
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation>Schlüssel der Rückwandplatten; leer: nach Regel</translation>
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation>Schlüssel der Sockelplatten; leer: wie der Korpus</translation>
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation>Schlüssel der Platte im Katalog</translation>
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation>Schlüssel der Platten im Katalog</translation>
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation>Schlüssel der Bretter oder Platten, aus denen die Rahmenteile geschnitten werden</translation>
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation>Schlüssel der Platten, die in die Nuten kommen; leer: dieselben</translation>
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation>Schlüssel der Platte der Kastenböden</translation>
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation>Schlüssel der Platte der Kästen</translation>
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation>Schlüssel der Stabklasse im Katalog</translation>
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, auto for the material's own, empty for none</source>
   <translation>Schlüssel der Kante von Böden und Anschlägen, auto für die des Materials, leer für keine</translation>
  </message>
  <message>
   <source>Key of the edge band of their long edges, auto for the material's own, empty for none</source>
   <translation>Schlüssel der Kante ihrer Längskanten, auto für die des Materials, leer für keine</translation>
  </message>
  <message>
   <source>Key of the face's board, empty takes the top's</source>
   <translation>Schlüssel der Platte der Blende, leer nimmt die der Bankplatte</translation>
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation>Schlüssel des Holzes der Rahmenteile</translation>
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation>Schlüssel der Streifenplatten; leer: wie der Korpus</translation>
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation>Schlüssel der Platte der Bankplatte</translation>
  </message>
  <message>
   <source>Key of their board</source>
   <translation>Schlüssel ihrer Platte</translation>
  </message>
  <message>
   <source>Key of their board, empty takes the carcass's</source>
   <translation>Schlüssel ihrer Platte, leer nimmt die des Korpus</translation>
  </message>
  <message>
   <source>Key of their edge band, auto for the material's own, empty for none</source>
   <translation>Schlüssel ihrer Kante, auto für die des Materials, leer für keine</translation>
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation>Schlüssel der flachen Leisten und der Viertelstäbe für den Sockelfuß, aus denen gewählt wird; ohne Viertelstäbe bleibt der Fuß offen</translation>
  </message>
  <message>
   <source>Lean of the back wall at the left; positive where it leans into the closet on its way up</source>
   <translation>Neigung der Rückwand links; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>Lean of the back wall at the right; positive where it leans into the closet on its way up</source>
   <translation>Neigung der Rückwand rechts; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>Lean of the left wall at the back; positive where it leans into the closet on its way up</source>
   <translation>Neigung der linken Wand hinten; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>Lean of the left wall at the front; positive where it leans into the closet on its way up</source>
   <translation>Neigung der linken Wand vorn; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>Lean of the right wall at the back; positive where it leans into the closet on its way up</source>
   <translation>Neigung der rechten Wand hinten; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>Lean of the right wall at the front; positive where it leans into the closet on its way up</source>
   <translation>Neigung der rechten Wand vorn; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation>Mindestabstand von der Hinterkante zur hinteren Reihe</translation>
  </message>
  <message>
   <source>Least gap to keep at the back</source>
   <translation>Mindestspalt hinten</translation>
  </message>
  <message>
   <source>Least gap to keep at the floor</source>
   <translation>Mindestspalt am Boden</translation>
  </message>
  <message>
   <source>Least gap to keep at the left</source>
   <translation>Mindestspalt links</translation>
  </message>
  <message>
   <source>Least gap to keep at the right</source>
   <translation>Mindestspalt rechts</translation>
  </message>
  <message>
   <source>Least gap to keep at the top</source>
   <translation>Mindestspalt oben</translation>
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation>Zum Anpassen stehen gelassen, 6 mm (übliche Praxis, keine veröffentlichte Quelle)</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation>Abstand der linken Seite vom linken Rand des Einbauraums</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation>Abstand der linken Seite vom linken Rand des Einbauraums, wie gebaut</translation>
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation>Länge an der hinteren Wand</translation>
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation>Länge an der Seitenwand</translation>
  </message>
  <message>
   <source>Length of the slides, 0 takes the longest that fits</source>
   <translation>Länge der Auszüge, 0 nimmt die längste passende</translation>
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation>Vom Stab zu schneidende Länge</translation>
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation>Sägelänge, ohne die Kanten</translation>
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation>Name des Teils innerhalb seines Bauteils</translation>
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation>Schmalste und breiteste Passleiste: 20 mm (übliche Praxis, keine veröffentlichte Quelle) und 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, Ausgabe 1, 2009)</translation>
  </message>
  <message>
   <source>Number of adjustable shelves, loose on pins</source>
   <translation>Anzahl der verstellbaren Böden auf Bodenträgern</translation>
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation>Anzahl der Felder, jedes ein eigenes Objekt</translation>
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation>Anzahl der Schubladen gleicher Höhe</translation>
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation>Anzahl der festen Böden</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Anzahl der Nuten</translation>
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation>Anzahl seiner Schubladen, übereinander</translation>
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation>Anzahl der langen Rahmenhölzer, vorderes und hinteres eingeschlossen</translation>
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation>Anzahl der Öffnungen darunter, mit Pfosten dazwischen</translation>
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation>Anzahl der aus Platten zu schneidenden Teile</translation>
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation>Anzahl der Stücke, aus denen er gemacht ist, Ende an Ende</translation>
  </message>
  <message>
   <source>Number of shelves</source>
   <translation>Anzahl der Böden</translation>
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation>Der Sitzfläche über dem, worauf sie steht</translation>
  </message>
  <message>
   <source>Of strips, empty takes the carcass's</source>
   <translation>Der Streifen, leer nimmt die des Korpus</translation>
  </message>
  <message>
   <source>Of the pull's middle above the floor, 0 takes 1,000 mm or the nearest</source>
   <translation>Der Griffmitte über dem Fußboden, 0 nimmt 1000 mm oder das Nächste</translation>
  </message>
  <message>
   <source>Of the rod's axis above the floor, 0 by its use or as high as it can be</source>
   <translation>Der Stangenachse über dem Fußboden, 0 nach der Verwendung oder so hoch wie möglich</translation>
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation>Des Streifens, 0 für keinen</translation>
  </message>
  <message>
   <source>Of the upper of two rods, 0 by rule</source>
   <translation>Der oberen von zwei Stangen, 0 nach Regel</translation>
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation>Je so viele eine Reserveplatte eines Materials; 0: keine Reserve</translation>
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation>Außentiefe, wie gebaut</translation>
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation>Außentiefe; 0: die des Einbauraums</translation>
  </message>
  <message>
   <source>Outer diameter</source>
   <translation>Außendurchmesser</translation>
  </message>
  <message>
   <source>Outer height as built</source>
   <translation>Außenhöhe, wie gebaut</translation>
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation>Außenhöhe, Sockel eingeschlossen; 0: die des Einbauraums</translation>
  </message>
  <message>
   <source>Outer width as built</source>
   <translation>Außenbreite, wie gebaut</translation>
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation>Außenbreite; 0: was der Einbauraum lässt</translation>
  </message>
  <message>
   <source>Over its top, 0 takes what is left</source>
   <translation>Über seiner Oberseite, 0 nimmt den Rest</translation>
  </message>
  <message>
   <source>Over its top, 0 takes what is there; it stands at the rear</source>
   <translation>Über seiner Oberseite, 0 nimmt, was da ist; es steht hinten</translation>
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation>Platten, die vom Entfernten aufgehoben werden</translation>
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation>Teile wurden nach dem Planen von Hand verschoben</translation>
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation>Platz unter den Teilen seines Bauteils</translation>
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation>Griffe je Front, 0 für keine</translation>
  </message>
  <message>
   <source>Rabbet at the end</source>
   <translation>Falz am Ende</translation>
  </message>
  <message>
   <source>Rabbet at the front</source>
   <translation>Falz vorn</translation>
  </message>
  <message>
   <source>Rabbet at the rear</source>
   <translation>Falz hinten</translation>
  </message>
  <message>
   <source>Rabbet at the start</source>
   <translation>Falz am Anfang</translation>
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation>Anderswo genommene Messwerte, wie vom Aufmaßformular geschrieben</translation>
  </message>
  <message>
   <source>Return at the left of the opening; 0: not taken</source>
   <translation>Wandstück links der Öffnung; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Return at the right of the opening; 0: not taken</source>
   <translation>Wandstück rechts der Öffnung; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation>Ränder mit Kante, und welche</translation>
  </message>
  <message>
   <source>Rise of the floor from front to back at the left</source>
   <translation>Anstieg des Bodens von vorn nach hinten, links</translation>
  </message>
  <message>
   <source>Rise of the floor from left to right at the back</source>
   <translation>Anstieg des Bodens von links nach rechts, hinten</translation>
  </message>
  <message>
   <source>Rise of the floor from left to right at the front</source>
   <translation>Anstieg des Bodens von links nach rechts, vorn</translation>
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation>Zeilen, die die Stückliste enthalten</translation>
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation>Sägen anstelle all dieser, je ein JSON-Text</translation>
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation>Setzen, um bei der nächsten Neuberechnung neu zu planen</translation>
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation>Setzen, um die Stückliste bei der nächsten Neuberechnung neu zu schreiben</translation>
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation>Platten eines Materials, bis zu denen keine Reserve nötig ist</translation>
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation>Zu schneidende Platten</translation>
  </message>
  <message>
   <source>Smallest gap at the back</source>
   <translation>Kleinster Spalt hinten</translation>
  </message>
  <message>
   <source>Smallest gap at the floor</source>
   <translation>Kleinster Spalt am Boden</translation>
  </message>
  <message>
   <source>Smallest gap at the left</source>
   <translation>Kleinster Spalt links</translation>
  </message>
  <message>
   <source>Smallest gap at the right</source>
   <translation>Kleinster Spalt rechts</translation>
  </message>
  <message>
   <source>Smallest gap at the top</source>
   <translation>Kleinster Spalt oben</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Steht hinten in einem tieferen Einbauraum, sonst an dessen Vorderseite</translation>
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation>Steht neben dem vorigen Korpus, sonst bei X</translation>
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation>Längsfriese laufen bis zum Fußboden, sonst bis zur Unterkante des unteren Querfrieses</translation>
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation>Summe dessen, was einen Preis hat, in der Währung des Katalogs</translation>
  </message>
  <message>
   <source>Supports between the ends, -1 as many as the span asks for</source>
   <translation>Stützen zwischen den Enden, -1 so viele, wie die Spannweite verlangt</translation>
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation>Stützen halten den Deckel in jeder Höhe</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation>Von jeder Plattenkante abgenommen, bevor ein Teil geschnitten wird</translation>
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation>Das Feld nimmt seine Breite vom Möbel, wenn es keine eigene hat</translation>
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation>Das Feld, in dem es steht; leer: nach seiner Nummer</translation>
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation>Die Stückliste, deren Zeilen die Zellen enthalten</translation>
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation>Die Stückliste, je Zeile kommagetrennte Werte</translation>
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation>Die Währung des Katalogs</translation>
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation>Der Einbauschrank, aus dem es folgt</translation>
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation>Der Einbauschrank, für den die Stückliste ist</translation>
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation>Der Einbauschrank, dessen Teile geschnitten werden</translation>
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation>Das Bauteil, zu dem es gehört</translation>
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation>Der Zuschnittplan, dessen Platten gekauft werden; leer: noch nicht geplant</translation>
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation>Entwurf, Zuschnittplan oder Katalog haben sich seither geändert</translation>
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation>Der Boden des Einbauraums über der vorderen linken Raumecke</translation>
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation>Die Vorderseite des Einbauraums ab der vorderen linken Raumecke</translation>
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation>Die linke Seite des Einbauraums ab der vorderen linken Raumecke</translation>
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation>Die Fläche, in der die Nuten sind</translation>
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation>Die Datei, aus der sie zuletzt gelesen wurden, leer: keine</translation>
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation>Abstand der Vorderseite von der des Einbauraums, wie gebaut</translation>
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation>Die angeschlagene Kante einer einzelnen Tür</translation>
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation>Die linke oder die rechte hintere Ecke</translation>
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation>Die vorhandenen Reststücke, je ein JSON-Text</translation>
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation>Die vorhandenen Reststücke; leer: alles wird gekauft</translation>
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation>Teile, Katalog oder Einstellungen haben sich seither geändert</translation>
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation>Der Plan der Bretter und Stäbe, als Daten</translation>
  </message>
  <message>
   <source>The plan, as data</source>
   <translation>Der Plan, als Daten</translation>
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation>Die Fuge um eine einliegende Front und zwischen je zweien</translation>
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation>Der Rand, von dem aus die Nuten gemessen werden</translation>
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation>Der Schritt, auf den das Maßband abgelesen wurde</translation>
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation>Das Aufmaß, in dessen Einbauraum er steht</translation>
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation>Die Bankplatte ist ein Deckel, hinten an einen Streifen angeschlagen</translation>
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation>Die verglichenen Kaufmöglichkeiten, als Daten</translation>
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation>Dicke wie gemessen, sonst wie verkauft</translation>
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation>Gemessene Dicke in mm, nach Schlüssel des Materials</translation>
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation>Wanddicke eines Rohrs; 0: massiv</translation>
  </message>
  <message>
   <source>Thickness of the baseboard</source>
   <translation>Dicke der Sockelleiste</translation>
  </message>
  <message>
   <source>Thickness of the casing</source>
   <translation>Dicke der Bekleidung</translation>
  </message>
  <message>
   <source>Thickness of the closet's own door</source>
   <translation>Dicke der eigenen Tür des Schranks</translation>
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation>Dicke der entfernten Oberplatte</translation>
  </message>
  <message>
   <source>Thickness of the wall at the opening</source>
   <translation>Dicke der Wand an der Öffnung</translation>
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation>Jede Platte nach Besäumen beschneiden, nicht wie der Katalog sagt</translation>
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation>Zwei Öffnungen lassen bei geschlossenem Deckel Luft hinein</translation>
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation>Unterseite jedes festen Bodens über dem Feldboden in mm; leer: gleiche Abstände</translation>
  </message>
  <message>
   <source>Undersides above the floor (mm)</source>
   <translation>Unterseiten über dem Boden (mm)</translation>
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation>Gewicht in kg; 0: unbekannt</translation>
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation>Gewicht aller Teile in kg</translation>
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation>Gewicht des fertigen Stücks in kg</translation>
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation>Was die festen Böden trägt</translation>
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation>Was es vorn abschließt</translation>
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation>Was den Korpus hinten abschließt oder aussteift</translation>
  </message>
  <message>
   <source>What closes the opening</source>
   <translation>Was die Öffnung schließt</translation>
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation>Was in der Reihenfolge des Schranks davor kommt</translation>
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation>Was den Spalt dort abdeckt</translation>
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation>Was daran hängt; es bestimmt die Höhe</translation>
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation>Was die Enden einer quer laufenden Stange hält</translation>
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation>Was über den Ort und die Menschen bekannt ist, wie vom Formular geschrieben</translation>
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation>Worin oder wovor es steht</translation>
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation>Was zwischen Nuten Rücken an Rücken bleiben muss, als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation>Was frei bleiben muss, wie vom Aufmaßformular geschrieben</translation>
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation>Was unter einem Sackloch bleiben muss</translation>
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation>Was am Einbauraum am größten sein soll</translation>
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation>Worauf Texte Längen runden, in mm bei metrischen Formaten, sonst in Zoll</translation>
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation>Wofür die Stückliste geschrieben wurde</translation>
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation>Worauf der Korpus steht</translation>
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation>Woraus die Zellen gefüllt wurden</translation>
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation>Woraus der Einbauraum folgt: aus den Messwerten oder den vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation>Was das Stück im Einbauschrank ist</translation>
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation>Wofür der Plan gemacht wurde</translation>
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation>Woraus die Form gemacht wurde</translation>
  </message>
  <message>
   <source>What the store saws</source>
   <translation>Was der Händler sägt</translation>
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation>Wo Überschriften und Namen stehen</translation>
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation>Wo durchgeschraubt werden kann</translation>
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation>Wie die Faser läuft</translation>
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation>Wo der linke Längsfries endet</translation>
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation>Wo der rechte Längsfries endet</translation>
  </message>
  <message>
   <source>Where the top lies</source>
   <translation>Wo der Oberboden liegt</translation>
  </message>
  <message>
   <source>Where they lie</source>
   <translation>Wo sie liegen</translation>
  </message>
  <message>
   <source>Whether FrontLap is left to the rule</source>
   <translation>Ob FrontLap der Regel überlassen ist</translation>
  </message>
  <message>
   <source>Whether X is left to the rule</source>
   <translation>Ob X der Regel überlassen ist</translation>
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation>Ob etwas zu Kaufendes keinen Preis hat</translation>
  </message>
  <message>
   <source>Whether the lean of the right wall at the back was read</source>
   <translation>Ob die Neigung der rechten Wand hinten gemessen wurde</translation>
  </message>
  <message>
   <source>Whether the lean of the right wall at the front was read</source>
   <translation>Ob die Neigung der rechten Wand vorn gemessen wurde</translation>
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation>Welches seiner Felder, von links, 1 zuerst</translation>
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation>Welcher Raum zwischen den festen Böden, von unten, 1 zuerst</translation>
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation>Wie die Faser der Bankplatte läuft; von vorn nach hinten ist sie zwischen den Rahmenhölzern fest</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation>Größter lichter Abstand zwischen Querhölzern</translation>
  </message>
  <message>
   <source>Widest gap at the back</source>
   <translation>Breitester Spalt hinten</translation>
  </message>
  <message>
   <source>Widest gap at the floor</source>
   <translation>Breitester Spalt am Boden</translation>
  </message>
  <message>
   <source>Widest gap at the left</source>
   <translation>Breitester Spalt links</translation>
  </message>
  <message>
   <source>Widest gap at the right</source>
   <translation>Breitester Spalt rechts</translation>
  </message>
  <message>
   <source>Widest gap at the top</source>
   <translation>Breitester Spalt oben</translation>
  </message>
  <message>
   <source>Width at the back, high</source>
   <translation>Breite hinten, hoch</translation>
  </message>
  <message>
   <source>Width at the back, high up; 0: not given</source>
   <translation>Breite hinten, weit oben; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Width at the back, low</source>
   <translation>Breite hinten, tief</translation>
  </message>
  <message>
   <source>Width at the back, low down; 0: not given</source>
   <translation>Breite hinten, weit unten; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Width at the back, middle</source>
   <translation>Breite hinten, Mitte</translation>
  </message>
  <message>
   <source>Width at the front, high</source>
   <translation>Breite vorn, hoch</translation>
  </message>
  <message>
   <source>Width at the front, high up; 0: not given</source>
   <translation>Breite vorn, weit oben; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Width at the front, low</source>
   <translation>Breite vorn, tief</translation>
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation>Breite vorn, weit unten</translation>
  </message>
  <message>
   <source>Width at the front, middle</source>
   <translation>Breite vorn, Mitte</translation>
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation>Breite eines Einbauraums mit vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>Width of that strip</source>
   <translation>Breite dieses Streifens</translation>
  </message>
  <message>
   <source>Width of the casing</source>
   <translation>Breite der Bekleidung</translation>
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation>Breite des größten lot- und waagerechten Quaders, der passt</translation>
  </message>
  <message>
   <source>Width of the members as sawn, 0 takes the board's own</source>
   <translation>Breite der Rahmenteile wie gesägt, 0 nimmt die des Bretts</translation>
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation>Breite der Mittelfriese</translation>
  </message>
  <message>
   <source>Width of the opening; 0: not taken</source>
   <translation>Breite der Öffnung; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation>Breite des Sägeschnitts</translation>
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation>Breite der Längsfriese, am Ende zur Wand ohne das, was über die Seite hinausreicht</translation>
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation>Sägebreite, ohne die Kanten</translation>
  </message>
 </context>
 <context>
  <name>Closetbench</name>
  <message>
   <source>(-?[0-9]+(?:\.[0-9]+)?)(?: (to|and|x) (-?[0-9]+(?:\.[0-9]+)?))? mm\b</source>
   <translation>(-?[0-9]+(?:\.[0-9]+)?)(?: (to|and|x) (-?[0-9]+(?:\.[0-9]+)?))? mm\b</translation>
  </message>
  <message>
   <source>(?P&lt;carcass&gt;.+), bay (?P&lt;number&gt;\d+)</source>
   <translation>(?P&lt;carcass&gt;.+), bay (?P&lt;number&gt;\d+)</translation>
  </message>
  <message>
   <source>, offcut at hand: {}</source>
   <translation>, vorhandenes Reststück: {}</translation>
  </message>
  <message>
   <source>, sound part of {} x {}, its corner at {} and {}</source>
   <translation>, heiler Teil von {} x {}, seine Ecke bei {} und {}</translation>
  </message>
  <message>
   <source>, turned {}°</source>
   <translation>, um {}° gedreht</translation>
  </message>
  <message>
   <source>.pdf</source>
   <translation>.pdf</translation>
  </message>
  <message>
   <source>.png</source>
   <translation>.png</translation>
  </message>
  <message>
   <source>1 danger</source>
   <translation>1 Gefahr</translation>
  </message>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation>1 für eine Tür, 2 für ein Paar, an beiden Seiten angeschlagen</translation>
  </message>
  <message>
   <source>1 not checked</source>
   <translation>1 nicht geprüft</translation>
  </message>
  <message>
   <source>1 note</source>
   <translation>1 Hinweis</translation>
  </message>
  <message>
   <source>1 warning</source>
   <translation>1 Warnung</translation>
  </message>
  <message>
   <source>3 to 4</source>
   <translation>3 bis 4</translation>
  </message>
  <message>
   <source>5 to 8</source>
   <translation>5 bis 8</translation>
  </message>
  <message>
   <source>9 to 12</source>
   <translation>9 bis 12</translation>
  </message>
  <message>
   <source>; dangers in this closet: {}, see the checks</source>
   <translation>; Gefahren in diesem Schrank: {}, siehe Prüfungen</translation>
  </message>
  <message>
   <source>A bank of drawers in one compartment, with slides and fronts</source>
   <translation>Ein Satz Schubladen in einem Fach, mit Auszügen und Fronten</translation>
  </message>
  <message>
   <source>A baseboard that stays; 0 where there is none or it comes off.</source>
   <translation>Eine Sockelleiste, die bleibt; 0, wo keine ist oder sie entfernt wird.</translation>
  </message>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation>Eine Bank in einem Feld eines Korpus oder frei im Schrank</translation>
  </message>
  <message>
   <source>A door, or a pair, in front of one compartment</source>
   <translation>Eine Tür oder ein Paar vor einem Fach</translation>
  </message>
  <message>
   <source>A drawing for each part</source>
   <translation>Eine Zeichnung für jedes Teil</translation>
  </message>
  <message>
   <source>A drawing for each sheet</source>
   <translation>Eine Zeichnung für jede Platte</translation>
  </message>
  <message>
   <source>A few more, so that no single wrong reading stays unnoticed.</source>
   <translation>Ein paar mehr, damit kein einzelner falscher Messwert unbemerkt bleibt.</translation>
  </message>
  <message>
   <source>A file with boards, bands and prices of your own, laid over those that come along.</source>
   <translation>Eine Datei mit eigenen Platten, Kanten und Preisen, die denen des Programms vorgehen.</translation>
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation>Ein fester Boden liegt darüber und folgt seiner Höhe</translation>
  </message>
  <message>
   <source>A hanging rod, or two, in one compartment</source>
   <translation>Eine Kleiderstange oder zwei in einem Fach</translation>
  </message>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation>Eine wiederverwendete Kommode oder ein Schrank, unverändert eingebaut</translation>
  </message>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation>Ein Boden über den Korpussen, von Wand zu Wand</translation>
  </message>
  <message>
   <source>A spare sheet for every</source>
   <translation>Eine Reserveplatte je</translation>
  </message>
  <message>
   <source>A strip along its front edge</source>
   <translation>Ein Streifen an seiner Vorderkante</translation>
  </message>
  <message>
   <source>Above the floor as found, feet included</source>
   <translation>Über dem Boden im Bestand, Füße eingeschlossen</translation>
  </message>
  <message>
   <source>Accuracy class that is printed on the tape.</source>
   <translation>Genauigkeitsklasse, die auf dem Maßband aufgedruckt ist.</translation>
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation>Quer durch das Feld oder in dessen Tiefe</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <source>Add a bay</source>
   <translation>Feld hinzufügen</translation>
  </message>
  <message>
   <source>Add a place</source>
   <translation>Stelle hinzufügen</translation>
  </message>
  <message>
   <source>Add a reading</source>
   <translation>Messwert hinzufügen</translation>
  </message>
  <message>
   <source>Add an obstacle</source>
   <translation>Hindernis hinzufügen</translation>
  </message>
  <message>
   <source>Add one that is recommended</source>
   <translation>Einen empfohlenen hinzufügen</translation>
  </message>
  <message>
   <source>Adjustable</source>
   <translation>Verstellbar</translation>
  </message>
  <message>
   <source>Adjustable shelves, loose on pins.</source>
   <translation>Verstellbare Böden auf Bodenträgern.</translation>
  </message>
  <message>
   <source>Against back</source>
   <translation>Hinten an</translation>
  </message>
  <message>
   <source>Against the back</source>
   <translation>An der Rückwand</translation>
  </message>
  <message>
   <source>All pages</source>
   <translation>Alle Seiten</translation>
  </message>
  <message>
   <source>All sheets in one drawing</source>
   <translation>Alle Platten in einer Zeichnung</translation>
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation>Zugabe zum Anpassen eines Endfrieses an die Wand</translation>
  </message>
  <message>
   <source>Along back</source>
   <translation>Entlang hinten</translation>
  </message>
  <message>
   <source>Along side</source>
   <translation>Entlang der Seite</translation>
  </message>
  <message>
   <source>Along the left wall</source>
   <translation>Entlang der linken Wand</translation>
  </message>
  <message>
   <source>Along the right wall</source>
   <translation>Entlang der rechten Wand</translation>
  </message>
  <message>
   <source>Along the wall, from the front line to the back wall, on the floor.</source>
   <translation>An der Wand entlang, von der Vorderlinie bis zur Rückwand, auf dem Boden.</translation>
  </message>
  <message>
   <source>Another number may find another plan; the same one finds the same again.</source>
   <translation>Eine andere Zahl kann einen anderen Plan finden; dieselbe findet wieder denselben.</translation>
  </message>
  <message>
   <source>Another task is open: finish it with OK or Cancel first.</source>
   <translation>Eine andere Aufgabe ist offen: zuerst mit OK oder Abbrechen beenden.</translation>
  </message>
  <message>
   <source>App::Property</source>
   <translation>App::Property</translation>
  </message>
  <message>
   <source>As it will be written</source>
   <translation>So wird es geschrieben</translation>
  </message>
  <message>
   <source>Ask for the readings that point out a wrong one</source>
   <translation>Nach den Messwerten fragen, die einen falschen aufdecken</translation>
  </message>
  <message>
   <source>At</source>
   <translation>Bei</translation>
  </message>
  <message>
   <source>At an angle</source>
   <translation>Schräg</translation>
  </message>
  <message>
   <source>At height</source>
   <translation>In Höhe</translation>
  </message>
  <message>
   <source>At least {}: not everything has a price.</source>
   <translation>Mindestens {}: nicht alles hat einen Preis.</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Rückwand</translation>
  </message>
  <message>
   <source>Back inset</source>
   <translation>Rückwand-Einrückung</translation>
  </message>
  <message>
   <source>Back material</source>
   <translation>Material Rückwand</translation>
  </message>
  <message>
   <source>Back wall</source>
   <translation>Rückwand</translation>
  </message>
  <message>
   <source>Backs</source>
   <translation>Rückwände</translation>
  </message>
  <message>
   <source>Band</source>
   <translation>Kante</translation>
  </message>
  <message>
   <source>Band waste</source>
   <translation>Kantenverschnitt</translation>
  </message>
  <message>
   <source>Bands</source>
   <translation>Kanten</translation>
  </message>
  <message>
   <source>Bands at</source>
   <translation>Kanten an</translation>
  </message>
  <message>
   <source>Base</source>
   <translation>Sockel</translation>
  </message>
  <message>
   <source>Base height</source>
   <translation>Sockelhöhe</translation>
  </message>
  <message>
   <source>Base material</source>
   <translation>Material Sockel</translation>
  </message>
  <message>
   <source>Baseboard</source>
   <translation>Sockelleiste</translation>
  </message>
  <message>
   <source>Bay</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>Bays</source>
   <translation>Felder</translation>
  </message>
  <message>
   <source>Bays, from left to right</source>
   <translation>Felder, von links nach rechts</translation>
  </message>
  <message>
   <source>Bench</source>
   <translation>Bank</translation>
  </message>
  <message>
   <source>Benches</source>
   <translation>Bänke</translation>
  </message>
  <message>
   <source>Bench…</source>
   <translation>Bank…</translation>
  </message>
  <message>
   <source>Bill</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <source>Bill and papers</source>
   <translation>Stückliste und Papiere</translation>
  </message>
  <message>
   <source>Bill is up to date; drawings by DXF</source>
   <translation>Stückliste ist aktuell; Zeichnungen über DXF</translation>
  </message>
  <message>
   <source>BillPanel</source>
   <translation>BillPanel</translation>
  </message>
  <message>
   <source>Board that goes into the grooves: its measured thickness sets their width.</source>
   <translation>Platte, die in die Nuten kommt: ihre gemessene Dicke bestimmt deren Breite.</translation>
  </message>
  <message>
   <source>Boards as measured</source>
   <translation>Platten wie gemessen</translation>
  </message>
  <message>
   <source>Bottom</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>Bottom inset</source>
   <translation>Einrückung Boden</translation>
  </message>
  <message>
   <source>Bottom material</source>
   <translation>Material Kastenboden</translation>
  </message>
  <message>
   <source>Bottom rail</source>
   <translation>Unterer Querfries</translation>
  </message>
  <message>
   <source>Box height</source>
   <translation>Kastenhöhe</translation>
  </message>
  <message>
   <source>Box material</source>
   <translation>Material Kasten</translation>
  </message>
  <message>
   <source>Boxes of boards with sides, bays, shelves, back and base</source>
   <translation>Kästen aus Platten mit Seiten, Feldern, Böden, Rückwand und Sockel</translation>
  </message>
  <message>
   <source>By caliper</source>
   <translation>Mit Messschieber</translation>
  </message>
  <message>
   <source>By sizes; readings come later</source>
   <translation>Nach Maßen; Messwerte folgen später</translation>
  </message>
  <message>
   <source>CSV file</source>
   <translation>CSV-Datei</translation>
  </message>
  <message>
   <source>Cannot be built: {}</source>
   <translation>Kann nicht gebaut werden: {}</translation>
  </message>
  <message>
   <source>Cannot be right: {}</source>
   <translation>Kann nicht stimmen: {}</translation>
  </message>
  <message>
   <source>Carcass</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>CarcassPanel</source>
   <translation>CarcassPanel</translation>
  </message>
  <message>
   <source>Carcasses</source>
   <translation>Korpusse</translation>
  </message>
  <message>
   <source>Carcasses and shelves</source>
   <translation>Korpusse und Böden</translation>
  </message>
  <message>
   <source>Casing</source>
   <translation>Bekleidung</translation>
  </message>
  <message>
   <source>Casing and baseboard</source>
   <translation>Bekleidung und Sockelleiste</translation>
  </message>
  <message>
   <source>Catalogue of your own</source>
   <translation>Eigener Katalog</translation>
  </message>
  <message>
   <source>Ceiling</source>
   <translation>Decke</translation>
  </message>
  <message>
   <source>Changes of direction</source>
   <translation>Richtungswechsel</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Prüfungen</translation>
  </message>
  <message>
   <source>Choose</source>
   <translation>Wählen</translation>
  </message>
  <message>
   <source>Choose a line above to list what is damaged on it.</source>
   <translation>Oben eine Zeile wählen, um aufzulisten, was daran beschädigt ist.</translation>
  </message>
  <message>
   <source>Circular saw on a straightedge at home</source>
   <translation>Handkreissäge an der Führungsschiene vorhanden</translation>
  </message>
  <message>
   <source>Clear of shelves</source>
   <translation>Frei von Böden</translation>
  </message>
  <message>
   <source>Clear size of the opening, jamb to jamb and floor to lintel.</source>
   <translation>Lichtes Maß der Öffnung, von Laibung zu Laibung und vom Boden zum Sturz.</translation>
  </message>
  <message>
   <source>Clear width</source>
   <translation>Lichte Breite</translation>
  </message>
  <message>
   <source>Clear width of the bay. Left empty, it shares what the others leave.</source>
   <translation>Lichte Breite des Felds. Leer teilt es sich, was die anderen lassen.</translation>
  </message>
  <message>
   <source>Clear widths: {}</source>
   <translation>Lichte Breiten: {}</translation>
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation>Freiraum an jeder Seite</translation>
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation>Freiraum unter dem Boden darüber</translation>
  </message>
  <message>
   <source>Cleat</source>
   <translation>Tragleiste</translation>
  </message>
  <message>
   <source>Cleat height</source>
   <translation>Höhe Tragleiste</translation>
  </message>
  <message>
   <source>Click on a finding to see what it is about; double-click to edit that.</source>
   <translation>Befund anklicken, um zu sehen, worum es geht; doppelklicken, um das zu bearbeiten.</translation>
  </message>
  <message>
   <source>Click to add one</source>
   <translation>Klicken, um einen hinzuzufügen</translation>
  </message>
  <message>
   <source>Click to choose one</source>
   <translation>Klicken, um einen zu wählen</translation>
  </message>
  <message>
   <source>Click to plan the sheets</source>
   <translation>Klicken, um die Platten zu planen</translation>
  </message>
  <message>
   <source>Click to start a closet</source>
   <translation>Klicken, um einen Schrank anzulegen</translation>
  </message>
  <message>
   <source>Click to write the bill</source>
   <translation>Klicken, um die Stückliste zu schreiben</translation>
  </message>
  <message>
   <source>Close the checks and say what they have to know.</source>
   <translation>Prüfungen schließen und angeben, was sie wissen müssen.</translation>
  </message>
  <message>
   <source>Closet</source>
   <translation>Einbauschrank</translation>
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation>Werkstattpapiere zum Einbauschrank</translation>
  </message>
  <message>
   <source>Closet views</source>
   <translation>Ansichten des Einbauschranks</translation>
  </message>
  <message>
   <source>ClosetPanel</source>
   <translation>ClosetPanel</translation>
  </message>
  <message>
   <source>Closetbench</source>
   <translation>Closetbench</translation>
  </message>
  <message>
   <source>Closetbench help</source>
   <translation>Closetbench-Hilfe</translation>
  </message>
  <message>
   <source>ClosetbenchGuide</source>
   <translation>ClosetbenchGuide</translation>
  </message>
  <message>
   <source>ClosetbenchHelpWindow</source>
   <translation>ClosetbenchHelpWindow</translation>
  </message>
  <message>
   <source>ClosetbenchRoom</source>
   <translation>ClosetbenchRoom</translation>
  </message>
  <message>
   <source>Closetbench_Choice</source>
   <translation>Closetbench_Choice</translation>
  </message>
  <message>
   <source>Closets</source>
   <translation>Einbauschränke</translation>
  </message>
  <message>
   <source>Compartment</source>
   <translation>Fach</translation>
  </message>
  <message>
   <source>Component</source>
   <translation>Bauteil</translation>
  </message>
  <message>
   <source>Components</source>
   <translation>Bauteile</translation>
  </message>
  <message>
   <source>Corner</source>
   <translation>Ecke</translation>
  </message>
  <message>
   <source>Corner shelves</source>
   <translation>Eckböden</translation>
  </message>
  <message>
   <source>Corner shelves…</source>
   <translation>Eckböden…</translation>
  </message>
  <message>
   <source>CornerShelves</source>
   <translation>CornerShelves</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <source>Cup edge</source>
   <translation>Topfrand</translation>
  </message>
  <message>
   <source>Cut layout</source>
   <translation>Zuschnittplan</translation>
  </message>
  <message>
   <source>Cut open</source>
   <translation>Aufgeschnitten</translation>
  </message>
  <message>
   <source>CutLayout</source>
   <translation>CutLayout</translation>
  </message>
  <message>
   <source>Cuts through the widest bays, seen from the right.</source>
   <translation>Schnitt durch die breitesten Felder, von rechts gesehen.</translation>
  </message>
  <message>
   <source>Cuts: {} at the store, {} at home</source>
   <translation>Schnitte: {} beim Händler, {} zu Hause</translation>
  </message>
  <message>
   <source>Cuts: {} wide, {} deep</source>
   <translation>Schnitte: {} breit, {} tief</translation>
  </message>
  <message>
   <source>Damaged places</source>
   <translation>Beschädigte Stellen</translation>
  </message>
  <message>
   <source>Dangers: {}</source>
   <translation>Gefahren: {}</translation>
  </message>
  <message>
   <source>Dead space</source>
   <translation>Toter Raum</translation>
  </message>
  <message>
   <source>Defaults</source>
   <translation>Vorgaben</translation>
  </message>
  <message>
   <source>Depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>Depth at most</source>
   <translation>Tiefe höchstens</translation>
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation>Tiefe links, Leisten und Fronten eingeschlossen, Griffe nicht</translation>
  </message>
  <message>
   <source>Depth at the right</source>
   <translation>Tiefe rechts</translation>
  </message>
  <message>
   <source>Depth back</source>
   <translation>Tiefe hinten</translation>
  </message>
  <message>
   <source>Depth fraction</source>
   <translation>Tiefe als Bruchteil</translation>
  </message>
  <message>
   <source>Depth left</source>
   <translation>Tiefe links</translation>
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation>Tiefe des Schenkels an der hinteren Wand</translation>
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation>Tiefe des Schenkels an der Seitenwand</translation>
  </message>
  <message>
   <source>Depth right</source>
   <translation>Tiefe rechts</translation>
  </message>
  <message>
   <source>Depth side</source>
   <translation>Tiefe seitlich</translation>
  </message>
  <message>
   <source>Depth step</source>
   <translation>Tiefenschritt</translation>
  </message>
  <message>
   <source>Depths</source>
   <translation>Tiefen</translation>
  </message>
  <message>
   <source>Diagonal to the left</source>
   <translation>Diagonale nach links</translation>
  </message>
  <message>
   <source>Diagonal to the right</source>
   <translation>Diagonale nach rechts</translation>
  </message>
  <message>
   <source>Diameter</source>
   <translation>Durchmesser</translation>
  </message>
  <message>
   <source>Diameter of the bit at hand: the bill then gives the passes for each groove.</source>
   <translation>Durchmesser des vorhandenen Fräsers: die Stückliste nennt dann die Durchgänge je Nut.</translation>
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation>Durchmesser der Bohrung für einen Griff</translation>
  </message>
  <message>
   <source>Direction of the cuts that are made first on a whole sheet.</source>
   <translation>Richtung der Schnitte, die an einer ganzen Platte zuerst gemacht werden.</translation>
  </message>
  <message>
   <source>Distance of its left side from the left of the envelope. Left empty, it stands beside the carcass before it.</source>
   <translation>Abstand seiner linken Seite vom linken Rand des Einbauraums. Leer steht er neben dem vorigen Korpus.</translation>
  </message>
  <message>
   <source>Does it go in?</source>
   <translation>Geht es hinein?</translation>
  </message>
  <message>
   <source>Doors</source>
   <translation>Türen</translation>
  </message>
  <message>
   <source>Doors and lids are taken to turn about the edge that their hinges hold; look at the hinges' own drawing where it is close.</source>
   <translation>Türen und Deckel gelten als um die Kante drehend, die ihre Scharniere halten; wo es knapp ist, die Zeichnung des Scharniers selbst ansehen.</translation>
  </message>
  <message>
   <source>Doors…</source>
   <translation>Türen…</translation>
  </message>
  <message>
   <source>Doubtful: {}</source>
   <translation>Zweifelhaft: {}</translation>
  </message>
  <message>
   <source>Drawer boxes</source>
   <translation>Schubkästen</translation>
  </message>
  <message>
   <source>Drawers</source>
   <translation>Schubladen</translation>
  </message>
  <message>
   <source>Drawers, doors, rods, a bench, a reused piece, fillers</source>
   <translation>Schubladen, Türen, Stangen, eine Bank, ein vorhandenes Möbel, Passleisten</translation>
  </message>
  <message>
   <source>Drawers…</source>
   <translation>Schubladen…</translation>
  </message>
  <message>
   <source>Drawing page</source>
   <translation>Zeichnungsblatt</translation>
  </message>
  <message>
   <source>Drawings</source>
   <translation>Zeichnungen</translation>
  </message>
  <message>
   <source>Drawn by</source>
   <translation>Gezeichnet von</translation>
  </message>
  <message>
   <source>Drill</source>
   <translation>Bohren</translation>
  </message>
  <message>
   <source>Drop</source>
   <translation>Absenkung</translation>
  </message>
  <message>
   <source>Edge band</source>
   <translation>Kante</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims.</source>
   <translation>Über die Länge der Ränder hinaus gekauftes Kantenband.</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips. Automatic: as the carcass's.</source>
   <translation>Kante der Vorderkanten der Böden oder ihrer Lippen. Automatisch: wie beim Korpus.</translation>
  </message>
  <message>
   <source>Edit {}</source>
   <translation>{} bearbeiten</translation>
  </message>
  <message>
   <source>End clearance</source>
   <translation>Endspiel</translation>
  </message>
  <message>
   <source>Enter what was read.</source>
   <translation>Eingeben, was gemessen wurde.</translation>
  </message>
  <message>
   <source>Envelope: {} wide, {} deep, {} high</source>
   <translation>Einbauraum: {} breit, {} tief, {} hoch</translation>
  </message>
  <message>
   <source>Error of the level or the plumb line over one metre.</source>
   <translation>Fehler der Wasserwaage oder des Lots auf einen Meter.</translation>
  </message>
  <message>
   <source>Everything opens freely.</source>
   <translation>Alles lässt sich frei öffnen.</translation>
  </message>
  <message>
   <source>Exact.</source>
   <translation>Genau.</translation>
  </message>
  <message>
   <source>Examples: {} and {}</source>
   <translation>Beispiele: {} und {}</translation>
  </message>
  <message>
   <source>Existing</source>
   <translation>Vorhanden</translation>
  </message>
  <message>
   <source>Existing pieces</source>
   <translation>Vorhandene Möbel</translation>
  </message>
  <message>
   <source>Existing piece…</source>
   <translation>Vorhandenes Möbel…</translation>
  </message>
  <message>
   <source>Expected</source>
   <translation>Erwartet</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>Face frame</source>
   <translation>Vorsatzrahmen</translation>
  </message>
  <message>
   <source>Face frame…</source>
   <translation>Vorsatzrahmen…</translation>
  </message>
  <message>
   <source>Face material</source>
   <translation>Material Blende</translation>
  </message>
  <message>
   <source>FaceFrame</source>
   <translation>FaceFrame</translation>
  </message>
  <message>
   <source>Feet</source>
   <translation>Füße</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>Fillers</source>
   <translation>Passleisten</translation>
  </message>
  <message>
   <source>Fillers and mouldings</source>
   <translation>Passleisten und Abdeckleisten</translation>
  </message>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation>Passleisten, Anpassungen und Leisten, die die Spalte zu Wänden, Decke und Boden schließen</translation>
  </message>
  <message>
   <source>Fillers…</source>
   <translation>Passleisten…</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Befund</translation>
  </message>
  <message>
   <source>Finished size, edge bands included.</source>
   <translation>Fertigmaß, Kanten eingeschlossen.</translation>
  </message>
  <message>
   <source>First</source>
   <translation>Erste</translation>
  </message>
  <message>
   <source>First at</source>
   <translation>Erste bei</translation>
  </message>
  <message>
   <source>First cuts</source>
   <translation>Erste Schnitte</translation>
  </message>
  <message>
   <source>Fit</source>
   <translation>Passung</translation>
  </message>
  <message>
   <source>Fitted</source>
   <translation>Eingebaut</translation>
  </message>
  <message>
   <source>Fixed</source>
   <translation>Fest</translation>
  </message>
  <message>
   <source>Fixed at</source>
   <translation>Fest bei</translation>
  </message>
  <message>
   <source>Fixed shelves by</source>
   <translation>Feste Böden durch</translation>
  </message>
  <message>
   <source>Fixed shelves, let into the sides at equal clear heights.</source>
   <translation>Feste Böden, in gleichen lichten Höhen in die Seiten eingelassen.</translation>
  </message>
  <message>
   <source>Floor</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>Floor to ceiling, the tape plumb, close to the corner.</source>
   <translation>Vom Boden zur Decke, Maßband lotrecht, dicht an der Ecke.</translation>
  </message>
  <message>
   <source>Floor to the back</source>
   <translation>Boden nach hinten</translation>
  </message>
  <message>
   <source>Floor to the right</source>
   <translation>Boden nach rechts</translation>
  </message>
  <message>
   <source>Folder</source>
   <translation>Ordner</translation>
  </message>
  <message>
   <source>Folder for the drawings</source>
   <translation>Ordner für die Zeichnungen</translation>
  </message>
  <message>
   <source>Folder for the pictures</source>
   <translation>Ordner für die Bilder</translation>
  </message>
  <message>
   <source>Follows the formula {}</source>
   <translation>Folgt der Formel {}</translation>
  </message>
  <message>
   <source>For fewer cuts</source>
   <translation>Für weniger Schnitte</translation>
  </message>
  <message>
   <source>For fewer sheets</source>
   <translation>Für weniger Platten</translation>
  </message>
  <message>
   <source>For panels of</source>
   <translation>Für Platten von</translation>
  </message>
  <message>
   <source>Forget the last ones</source>
   <translation>Die letzten vergessen</translation>
  </message>
  <message>
   <source>Fraction of the thickness that must stay between two cuts that meet from both faces. ``least_skin``: mm that must stay under a blind hole</source>
   <translation>Bruchteil der Dicke, der zwischen zwei Einschnitten bleiben muss, die sich von beiden Flächen treffen. ``least_skin``: mm, die unter einem Sackloch bleiben müssen</translation>
  </message>
  <message>
   <source>Free</source>
   <translation>Frei</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>From an end the grooves run across the width, from an edge along the length.</source>
   <translation>Von einem Ende aus laufen die Nuten quer über die Breite, von einer Kante aus der Länge nach.</translation>
  </message>
  <message>
   <source>From floor</source>
   <translation>Vom Boden</translation>
  </message>
  <message>
   <source>From front</source>
   <translation>Von vorn</translation>
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation>Von Loch zu Loch eines Griffs mit zwei, 0 für einen Knopf mit einem</translation>
  </message>
  <message>
   <source>From its front edge</source>
   <translation>Von seiner Vorderkante</translation>
  </message>
  <message>
   <source>From near wall to near wall.</source>
   <translation>Von naher Wand zu naher Wand.</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove.</source>
   <translation>Von diesem Rand zur nahen Wange der ersten Nut.</translation>
  </message>
  <message>
   <source>From the front of the carcass to the kick board or the frame's front rail.</source>
   <translation>Von der Korpusvorderkante zur Sockelblende oder zum vorderen Sockelrahmenteil.</translation>
  </message>
  <message>
   <source>From the leaf's edge to the boring's, None takes the hinge's own</source>
   <translation>Von der Kante des Flügels zum Bohrungsrand, None nimmt den des Scharniers</translation>
  </message>
  <message>
   <source>From the left</source>
   <translation>Von links</translation>
  </message>
  <message>
   <source>From the left, 1 first.</source>
   <translation>Von links, 1 zuerst.</translation>
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation>Von der Griffmitte zur freien Kante des Flügels</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face: room to scribe to the wall.</source>
   <translation>Von den Hinterkanten zur Hinterfläche der Rückwand: Raum zum Anpassen an die Wand.</translation>
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, None takes 305 mm or the middle</source>
   <translation>Von der Rückseite der Öffnung zur Stangenachse, None nimmt 305 mm oder die Mitte</translation>
  </message>
  <message>
   <source>From the side wall to the jamb, inside.</source>
   <translation>Von der Seitenwand zur Laibung, innen.</translation>
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation>Von der Unterkante der Seiten zur Nut des Bodens</translation>
  </message>
  <message>
   <source>From the underside of the lintel to the ceiling, inside.</source>
   <translation>Von der Unterseite des Sturzes zur Decke, innen.</translation>
  </message>
  <message>
   <source>Front</source>
   <translation>Vorn</translation>
  </message>
  <message>
   <source>Front elevation with sizes</source>
   <translation>Vorderansicht mit Maßen</translation>
  </message>
  <message>
   <source>Front row at</source>
   <translation>Vordere Reihe bei</translation>
  </message>
  <message>
   <source>Fronts and doors, to be drilled</source>
   <translation>Fronten und Türen, zu bohren</translation>
  </message>
  <message>
   <source>Fronts, doors, face frames</source>
   <translation>Fronten, Türen, Vorsatzrahmen</translation>
  </message>
  <message>
   <source>Gap</source>
   <translation>Spalt</translation>
  </message>
  <message>
   <source>Gap above</source>
   <translation>Spalt darüber</translation>
  </message>
  <message>
   <source>Gaps kept with</source>
   <translation>Spalte eingehalten mit</translation>
  </message>
  <message>
   <source>Goes in</source>
   <translation>Geht hinein</translation>
  </message>
  <message>
   <source>Grain</source>
   <translation>Faser</translation>
  </message>
  <message>
   <source>Grain along</source>
   <translation>Faser längs</translation>
  </message>
  <message>
   <source>Grained</source>
   <translation>Mit Faserrichtung</translation>
  </message>
  <message>
   <source>Groove depth</source>
   <translation>Nuttiefe</translation>
  </message>
  <message>
   <source>Groove stop</source>
   <translation>Nutende</translation>
  </message>
  <message>
   <source>Groove wider than the panel in it, mm. ``end_clearance``: how far a tongue stays short of the bottom of its groove, mm. ``depth_fraction`` of the grooved panel's thickness, taken down to a multiple of ``depth_step`` (a router is set in steps), unless ``depth`` is given. ``most_fraction``: deepest groove allowed</source>
   <translation>Nut breiter als die Platte darin, mm. ``end_clearance``: wie weit eine Feder vor dem Nutgrund endet, mm. ``depth_fraction`` der Dicke der genuteten Platte, auf ein Vielfaches von ``depth_step`` abgerundet (eine Oberfräse wird in Schritten eingestellt), wenn ``depth`` nicht angegeben ist. ``most_fraction``: tiefste erlaubte Nut</translation>
  </message>
  <message>
   <source>Groove wider than the panel in it.</source>
   <translation>Nut breiter als die Platte darin.</translation>
  </message>
  <message>
   <source>GroovedPanel</source>
   <translation>GroovedPanel</translation>
  </message>
  <message>
   <source>GroovedPanelPanel</source>
   <translation>GroovedPanelPanel</translation>
  </message>
  <message>
   <source>Grooves</source>
   <translation>Nuten</translation>
  </message>
  <message>
   <source>Grooves and rabbets</source>
   <translation>Nuten und Falze</translation>
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation>Kleiderstange…</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>Height above the floor at which these readings are taken.</source>
   <translation>Höhe über dem Boden, in der diese Messwerte genommen werden.</translation>
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation>Höhe links, Füße und Platte eingeschlossen</translation>
  </message>
  <message>
   <source>Height at the right</source>
   <translation>Höhe rechts</translation>
  </message>
  <message>
   <source>Height left</source>
   <translation>Höhe links</translation>
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation>Höhe einer Leiste vor jedem festen Boden, 0 für keine</translation>
  </message>
  <message>
   <source>Height of a strip in front of each shelf, level with its upper face; 0 for none. It stiffens the shelf, which is that much less deep.</source>
   <translation>Höhe eines Streifens vor jedem Boden, bündig mit dessen Oberseite; 0 für keinen. Er versteift den Boden, der um so viel weniger tief ist.</translation>
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation>Höhe des unteren Querfrieses</translation>
  </message>
  <message>
   <source>Height of the boxes' sides, None takes all that the slide leaves</source>
   <translation>Höhe der Kastenseiten, None nimmt alles, was der Auszug lässt</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation>Höhe der Tragleisten an den Wänden</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation>Höhe der Tragleisten an den Wänden, 0 für keine</translation>
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation>Höhe der Füße, die entfernt werden</translation>
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation>Höhe des Anschlags über dem Boden</translation>
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation>Höhe des oberen Querfrieses</translation>
  </message>
  <message>
   <source>Height right</source>
   <translation>Höhe rechts</translation>
  </message>
  <message>
   <source>Heights</source>
   <translation>Höhen</translation>
  </message>
  <message>
   <source>Heights of the fixed shelves' undersides above the bay's floor, set apart by semicolons. Left empty, the clear heights are equal.</source>
   <translation>Höhen der Unterseiten der festen Böden über dem Feldboden, durch Semikolon getrennt. Leer sind die lichten Höhen gleich.</translation>
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left</source>
   <translation>Höhen der Fronten von unten, eine davon 0 für den Rest</translation>
  </message>
  <message>
   <source>Hide everything else</source>
   <translation>Alles andere ausblenden</translation>
  </message>
  <message>
   <source>High</source>
   <translation>Oben</translation>
  </message>
  <message>
   <source>Hinge</source>
   <translation>Scharnier</translation>
  </message>
  <message>
   <source>Hinged</source>
   <translation>Bandseite</translation>
  </message>
  <message>
   <source>Hinges</source>
   <translation>Scharniere</translation>
  </message>
  <message>
   <source>Hinges on each leaf, None takes what its height and weight ask for</source>
   <translation>Scharniere je Flügel, None nimmt so viele, wie Höhe und Gewicht verlangen</translation>
  </message>
  <message>
   <source>Holder</source>
   <translation>Halter</translation>
  </message>
  <message>
   <source>Hole depth</source>
   <translation>Lochtiefe</translation>
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation>Wie weit eine Leiste mindestens auf dem Korpus aufliegt, 6 mm wie oben</translation>
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation>Wie weit ein Längsfries über die Korpusseite hinausreicht</translation>
  </message>
  <message>
   <source>How far a tongue stays short of the bottom of its groove.</source>
   <translation>Wie weit eine Feder vor dem Nutgrund endet.</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation>Wie weit über dem Boden des Fachs es beginnt</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins.</source>
   <translation>Wie weit über dem Boden des Fachs es beginnt.</translation>
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, None by its kind</source>
   <translation>Wie weit eine aufliegende Front überdeckt, was ihre Öffnung begrenzt, None nach ihrer Art</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through. By rule: stopped behind a banded edge, through a bare one.</source>
   <translation>Wie weit Nuten vor der Vorderkante enden; 0: laufen durch. Nach Regel: enden hinter einer bekanteten Kante, laufen durch eine rohe durch.</translation>
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation>Wie weit sie an beiden Enden über das Gestell hinausreicht</translation>
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation>Wie weit seine Vorderseite hinter den Korpusvorderkanten bleibt</translation>
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation>Wie weit seine Unterkante nach rechts ansteigt</translation>
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation>Wie weit seine rechte Kante sich nach oben nach rechts neigt</translation>
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation>Wie weit seine Oberkante nach rechts ansteigt</translation>
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation>Wie weit der Rahmen über die Korpusoberkante hinausreicht</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rims that they run between; 0 runs through.</source>
   <translation>Wie weit die Nuten vor den Rändern enden, zwischen denen sie laufen; 0: laufen durch.</translation>
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation>Wie weit die linke Kante der Öffnung einer einliegenden Front sich nach oben nach rechts neigt</translation>
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation>Wie weit die Leisten, die entfernt werden, an jeder Seite und vorn vorstehen</translation>
  </message>
  <message>
   <source>How far the parts are pulled apart in the view; they stay where they are.</source>
   <translation>Wie weit die Teile in der Ansicht auseinandergezogen sind; sie bleiben, wo sie sind.</translation>
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation>Wie weit die Bankplatte vorn über Gestell und Blende hinausreicht</translation>
  </message>
  <message>
   <source>How far they come out</source>
   <translation>Wie weit sie herauskommen</translation>
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation>Wie Vorder- und Hinterstück eines Kastens an die Seiten anschließen</translation>
  </message>
  <message>
   <source>How high it is, None for all that is left</source>
   <translation>Wie hoch es ist, None für alles Übrige</translation>
  </message>
  <message>
   <source>How likely all least gaps are kept, given how well the room is known.</source>
   <translation>Wie wahrscheinlich alle Mindestspalte eingehalten sind, so gut der Raum bekannt ist.</translation>
  </message>
  <message>
   <source>How long to search, per material</source>
   <translation>Wie lange gesucht wird, je Material</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted as one.</source>
   <translation>Wie oft die Schnittrichtung wechseln darf, die erste mitgezählt.</translation>
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation>Wie viel tiefer die Vorderseite eines Bodens liegt als seine Hinterseite</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is.</source>
   <translation>Wie viel kürzer als sein Feld ein verstellbarer Boden ist.</translation>
  </message>
  <message>
   <source>How sure</source>
   <translation>Wie sicher</translation>
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation>Wie die Sockel auf dem Boden stehen</translation>
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation>Wie der Boden gehalten wird</translation>
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation>Wie die langen Rahmenhölzer liegen</translation>
  </message>
  <message>
   <source>How the members are joined</source>
   <translation>Wie die Rahmenteile verbunden sind</translation>
  </message>
  <message>
   <source>I</source>
   <translation>I</translation>
  </message>
  <message>
   <source>II</source>
   <translation>II</translation>
  </message>
  <message>
   <source>III</source>
   <translation>III</translation>
  </message>
  <message>
   <source>In</source>
   <translation>In</translation>
  </message>
  <message>
   <source>In all {}.</source>
   <translation>Insgesamt {}.</translation>
  </message>
  <message>
   <source>In front of</source>
   <translation>Vor</translation>
  </message>
  <message>
   <source>In front of each fixed and loose shelf, which is that much less deep;</source>
   <translation>Vor jedem festen und verstellbaren Boden, der um so viel weniger tief ist;</translation>
  </message>
  <message>
   <source>In kg, with its drawers; None where nobody has weighed it</source>
   <translation>In kg, mit den Schubladen; None, wo niemand es gewogen hat</translation>
  </message>
  <message>
   <source>In the 3D view</source>
   <translation>In der 3D-Ansicht</translation>
  </message>
  <message>
   <source>In the closet: {}</source>
   <translation>Im Einbauschrank: {}</translation>
  </message>
  <message>
   <source>In the face</source>
   <translation>In der Fläche</translation>
  </message>
  <message>
   <source>Inset</source>
   <translation>Einliegend</translation>
  </message>
  <message>
   <source>It stays where it was: {}</source>
   <translation>Es bleibt, wo es war: {}</translation>
  </message>
  <message>
   <source>Its cuts, at most</source>
   <translation>Schnitte daran, höchstens</translation>
  </message>
  <message>
   <source>Its depth, None takes the envelope's</source>
   <translation>Seine Tiefe, None nimmt die des Einbauraums</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation>Abstand seines linken Endes vom linken Rand des Einbauraums</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, None beside what stands there</source>
   <translation>Abstand seines linken Endes vom linken Rand des Einbauraums, None: neben dem, was dort steht</translation>
  </message>
  <message>
   <source>Its own door</source>
   <translation>Eigene Tür</translation>
  </message>
  <message>
   <source>Its right end's, None runs to the right wall</source>
   <translation>Der seines rechten Endes, None läuft bis zur rechten Wand</translation>
  </message>
  <message>
   <source>Its underside above the floor, None lies on the highest carcass</source>
   <translation>Seine Unterseite über dem Fußboden, None liegt auf dem höchsten Korpus</translation>
  </message>
  <message>
   <source>Its way in</source>
   <translation>Sein Weg hinein</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Verbindung</translation>
  </message>
  <message>
   <source>Joints, base and back</source>
   <translation>Verbindungen, Sockel und Rückwand</translation>
  </message>
  <message>
   <source>Keep for nobody</source>
   <translation>Für niemanden aufheben</translation>
  </message>
  <message>
   <source>Kept</source>
   <translation>Aufgehoben</translation>
  </message>
  <message>
   <source>Kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation>Schlüssel einer Stabklasse</translation>
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation>Schlüssel einer Scharnierklasse</translation>
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation>Schlüssel einer Auszugsklasse</translation>
  </message>
  <message>
   <source>Key of its board</source>
   <translation>Schlüssel der Platte</translation>
  </message>
  <message>
   <source>Key of its board, None takes the shelf's</source>
   <translation>Schlüssel der Platte, None nimmt die des Bodens</translation>
  </message>
  <message>
   <source>Key of its edge band, None for the material's own, "" for none</source>
   <translation>Schlüssel der Kante, None für die des Materials, "" für keine</translation>
  </message>
  <message>
   <source>Key of the band on the shelves' front edges, None as on the carcass's, "" none; a shelf behind a lip has none, and the lip has it on its long edges</source>
   <translation>Schlüssel der Kante an den Vorderkanten der Böden, None wie am Korpus, "" keine; ein Boden hinter einer Lippe hat keine, die Lippe trägt sie an ihren Längskanten</translation>
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation>Schlüssel der Bretter oder Platten, aus denen die Rahmenteile geschnitten werden</translation>
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation>Schlüssel der Platte der Kastenböden</translation>
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation>Schlüssel der Platte der Kästen</translation>
  </message>
  <message>
   <source>Key of the edge band for visible front edges; None takes the material's own, "" bands nothing. ``groove_stop``: how far grooves stay back from the front edge; None stops them 10 mm short where the front is banded and runs them through where not</source>
   <translation>Schlüssel der Kante für sichtbare Vorderkanten; None nimmt die des Materials, "" lässt alles roh. ``groove_stop``: wie weit Nuten vor der Vorderkante enden; None lässt sie 10 mm davor enden, wo die Vorderkante bekantet ist, und sonst durchlaufen</translation>
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, None for the material's own, "" for none</source>
   <translation>Schlüssel der Kante von Böden und Anschlägen, None für die des Materials, "" für keine</translation>
  </message>
  <message>
   <source>Key of the edge band of their long edges, None for the material's own, "" for none</source>
   <translation>Schlüssel der Kante ihrer Längskanten, None für die des Materials, "" für keine</translation>
  </message>
  <message>
   <source>Key of the face's board, None takes the top's</source>
   <translation>Schlüssel der Platte der Blende, None nimmt die der Bankplatte</translation>
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation>Schlüssel des Holzes der Rahmenteile</translation>
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation>Schlüssel der Platte der Bankplatte</translation>
  </message>
  <message>
   <source>Key of their board</source>
   <translation>Schlüssel ihrer Platte</translation>
  </message>
  <message>
   <source>Key of their board, None takes the carcass's</source>
   <translation>Schlüssel ihrer Platte, None nimmt die des Korpus</translation>
  </message>
  <message>
   <source>Key of their edge band, None for the material's own, "" for none</source>
   <translation>Schlüssel ihrer Kante, None für die des Materials, "" für keine</translation>
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation>Schlüssel der flachen Leisten und der Viertelstäbe für den Sockelfuß, aus denen gewählt wird; ohne Viertelstäbe bleibt der Fuß offen</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>Kind of file</source>
   <translation>Dateityp</translation>
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation>LED- oder Leuchtstofflampe, für Schrankräume gekennzeichnet</translation>
  </message>
  <message>
   <source>Lap</source>
   <translation>Überdeckung</translation>
  </message>
  <message>
   <source>Largest is</source>
   <translation>Größte ist</translation>
  </message>
  <message>
   <source>Lay</source>
   <translation>Lage</translation>
  </message>
  <message>
   <source>LayoutPanel</source>
   <translation>LayoutPanel</translation>
  </message>
  <message>
   <source>Lean left</source>
   <translation>Neigung links</translation>
  </message>
  <message>
   <source>Lean right</source>
   <translation>Neigung rechts</translation>
  </message>
  <message>
   <source>Least</source>
   <translation>Mindestens</translation>
  </message>
  <message>
   <source>Least gap</source>
   <translation>Mindestspalt</translation>
  </message>
  <message>
   <source>Least skin</source>
   <translation>Mindestrestdicke</translation>
  </message>
  <message>
   <source>Least web</source>
   <translation>Mindeststeg</translation>
  </message>
  <message>
   <source>Leave all readings blank</source>
   <translation>Alle Messwerte leer lassen</translation>
  </message>
  <message>
   <source>Leaves</source>
   <translation>Flügel</translation>
  </message>
  <message>
   <source>Left</source>
   <translation>Links</translation>
  </message>
  <message>
   <source>Left end at</source>
   <translation>Linkes Ende bei</translation>
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation>Zum Anpassen stehen gelassen, 6 mm (übliche Praxis, keine veröffentlichte Quelle)</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left, None: beside the carcass before</source>
   <translation>Abstand der linken Seite vom linken Rand des Einbauraums, None: neben dem vorigen Korpus</translation>
  </message>
  <message>
   <source>Left wall</source>
   <translation>Linke Wand</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation>Länge an der hinteren Wand</translation>
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation>Länge an der Seitenwand</translation>
  </message>
  <message>
   <source>Length of the slides, None takes the longest that fits</source>
   <translation>Länge der Auszüge, None nimmt die längste passende</translation>
  </message>
  <message>
   <source>Level offset of the floor: above 0 where it rises.</source>
   <translation>Höhenversatz des Bodens: über 0, wo er ansteigt.</translation>
  </message>
  <message>
   <source>Level, in a metre</source>
   <translation>Wasserwaage, je Meter</translation>
  </message>
  <message>
   <source>Levelling</source>
   <translation>Ausrichten</translation>
  </message>
  <message>
   <source>Lid</source>
   <translation>Deckel</translation>
  </message>
  <message>
   <source>Lid support</source>
   <translation>Deckelstütze</translation>
  </message>
  <message>
   <source>Limit</source>
   <translation>Grenze</translation>
  </message>
  <message>
   <source>Lip</source>
   <translation>Lippe</translation>
  </message>
  <message>
   <source>Lip material</source>
   <translation>Material Lippe</translation>
  </message>
  <message>
   <source>Loads, wall, damp, children, light</source>
   <translation>Lasten, Wand, Feuchte, Kinder, Licht</translation>
  </message>
  <message>
   <source>Loads, wall, damp, children, light…</source>
   <translation>Lasten, Wand, Feuchte, Kinder, Licht…</translation>
  </message>
  <message>
   <source>Loose</source>
   <translation>Verstellbar</translation>
  </message>
  <message>
   <source>Low</source>
   <translation>Unten</translation>
  </message>
  <message>
   <source>MDF</source>
   <translation>MDF</translation>
  </message>
  <message>
   <source>MDF 12 mm</source>
   <translation>MDF 12 mm</translation>
  </message>
  <message>
   <source>MDF 18 mm</source>
   <translation>MDF 18 mm</translation>
  </message>
  <message>
   <source>MDF 3/4 in</source>
   <translation>MDF 3/4 in</translation>
  </message>
  <message>
   <source>MDF 6 mm</source>
   <translation>MDF 6 mm</translation>
  </message>
  <message>
   <source>Make {}</source>
   <translation>{} anlegen</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Besäumung</translation>
  </message>
  <message>
   <source>Material</source>
   <translation>Material</translation>
  </message>
  <message>
   <source>Materials, kinds and figures as they come with the workbench, in the place of those that were last accepted</source>
   <translation>Materialien, Arten und Werte, wie sie mit dem Arbeitsbereich kommen, statt der zuletzt angenommenen</translation>
  </message>
  <message>
   <source>Mating</source>
   <translation>Gegenplatte</translation>
  </message>
  <message>
   <source>Measured from</source>
   <translation>Gemessen von</translation>
  </message>
  <message>
   <source>Member</source>
   <translation>Rahmenteil</translation>
  </message>
  <message>
   <source>Members every</source>
   <translation>Rahmenteile alle</translation>
  </message>
  <message>
   <source>Middle</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <source>Millimetres, as sawn and before banding. Depth and side of each cut are in the layers' names.</source>
   <translation>Millimeter, wie gesägt, vor dem Bekanten. Tiefe und Seite jedes Einschnitts stehen in den Layernamen.</translation>
  </message>
  <message>
   <source>More about the room</source>
   <translation>Mehr über den Raum</translation>
  </message>
  <message>
   <source>Most</source>
   <translation>Höchstens</translation>
  </message>
  <message>
   <source>Most fraction</source>
   <translation>Höchster Bruchteil</translation>
  </message>
  <message>
   <source>Moulding</source>
   <translation>Leiste</translation>
  </message>
  <message>
   <source>Mouldings</source>
   <translation>Leisten</translation>
  </message>
  <message>
   <source>Move {}</source>
   <translation>{} verschieben</translation>
  </message>
  <message>
   <source>Mullion</source>
   <translation>Mittelfries</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Name of the carcass or bench that it stands in</source>
   <translation>Name des Korpus oder der Bank, worin es steht</translation>
  </message>
  <message>
   <source>Name of the carcass that it stands in front of</source>
   <translation>Name des Korpus, vor dem er steht</translation>
  </message>
  <message>
   <source>Names of the parts</source>
   <translation>Namen der Teile</translation>
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation>Schmalste und breiteste Passleiste: 20 mm (übliche Praxis, keine veröffentlichte Quelle) und 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, Ausgabe 1, 2009)</translation>
  </message>
  <message>
   <source>Nearest hole to a fixed panel; ``depth`` of a blind hole; ``play``: how much shorter than its bay a loose shelf is (2 to 3 mm, common practice, no published source)</source>
   <translation>Nächstes Loch an einem festen Boden; ``depth`` eines Sacklochs; ``play``: wie viel kürzer als sein Feld ein verstellbarer Boden ist (2 bis 3 mm, übliche Praxis, keine veröffentlichte Quelle)</translation>
  </message>
  <message>
   <source>Needs a carcass</source>
   <translation>Braucht einen Korpus</translation>
  </message>
  <message>
   <source>Needs a closet</source>
   <translation>Braucht einen Einbauschrank</translation>
  </message>
  <message>
   <source>Needs a cut layout</source>
   <translation>Braucht einen Zuschnittplan</translation>
  </message>
  <message>
   <source>New components start as the last ones</source>
   <translation>Neue Bauteile beginnen wie die letzten</translation>
  </message>
  <message>
   <source>New components start with what comes with the workbench.</source>
   <translation>Neue Bauteile beginnen mit dem, was mit dem Arbeitsbereich kommt.</translation>
  </message>
  <message>
   <source>No box fits into the room as entered</source>
   <translation>Kein Quader passt in den Raum, wie eingegeben</translation>
  </message>
  <message>
   <source>No carcass that is up to 15 mm less deep would save a sheet.</source>
   <translation>Kein Korpus mit bis zu 15 mm weniger Tiefe würde eine Platte sparen.</translation>
  </message>
  <message>
   <source>Not checked does not mean safe; {}. Each figure is only as good as what was entered.</source>
   <translation>Nicht geprüft heißt nicht sicher; {}. Jede Zahl ist nur so gut wie die Eingaben.</translation>
  </message>
  <message>
   <source>Not planned yet.</source>
   <translation>Noch nicht geplant.</translation>
  </message>
  <message>
   <source>Not shown by this choice: {}.</source>
   <translation>In dieser Auswahl nicht gezeigt: {}.</translation>
  </message>
  <message>
   <source>Nothing can be checked: the closet cannot be built. {}</source>
   <translation>Nichts kann geprüft werden: der Einbauschrank kann nicht gebaut werden. {}</translation>
  </message>
  <message>
   <source>Nothing found</source>
   <translation>Nichts gefunden</translation>
  </message>
  <message>
   <source>Nothing is damaged.</source>
   <translation>Nichts ist beschädigt.</translation>
  </message>
  <message>
   <source>Nothing of this kind was found.</source>
   <translation>Nichts dieser Art wurde gefunden.</translation>
  </message>
  <message>
   <source>Nothing to cut yet</source>
   <translation>Noch nichts zu schneiden</translation>
  </message>
  <message>
   <source>Nothing was found.</source>
   <translation>Nichts wurde gefunden.</translation>
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation>Anzahl der Schubladen gleicher Höhe</translation>
  </message>
  <message>
   <source>Number of fixed shelves, spread to equal clear heights, unless ``heights`` gives the height of each one's underside above the bay's floor. ``adjustable``: number of loose shelves on pins, each put into the highest free space</source>
   <translation>Anzahl der festen Böden, auf gleiche lichte Höhen verteilt, wenn nicht ``heights`` die Höhe der Unterseite jedes Bodens über dem Feldboden angibt. ``adjustable``: Anzahl der verstellbaren Böden auf Bodenträgern, jeder in den höchsten freien Raum gesetzt</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Anzahl der Nuten</translation>
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation>Anzahl seiner Schubladen, übereinander</translation>
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation>Anzahl der langen Rahmenhölzer, vorderes und hinteres eingeschlossen</translation>
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation>Anzahl der Öffnungen darunter, mit Pfosten dazwischen</translation>
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation>Anzahl der Stücke, aus denen er gemacht ist, Ende an Ende</translation>
  </message>
  <message>
   <source>Number of shelves</source>
   <translation>Anzahl der Böden</translation>
  </message>
  <message>
   <source>Obstacles</source>
   <translation>Hindernisse</translation>
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation>Der Sitzfläche über dem, worauf sie steht</translation>
  </message>
  <message>
   <source>Of strips, None takes the carcass's</source>
   <translation>Der Streifen, None nimmt die des Korpus</translation>
  </message>
  <message>
   <source>Of the pull's middle above the floor, None takes 1,000 mm or the nearest</source>
   <translation>Der Griffmitte über dem Fußboden, None nimmt 1000 mm oder das Nächste</translation>
  </message>
  <message>
   <source>Of the rod's axis above the floor, None by its use or as high as it can be</source>
   <translation>Der Stangenachse über dem Fußboden, None nach der Verwendung oder so hoch wie möglich</translation>
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation>Des Streifens, 0 für keinen</translation>
  </message>
  <message>
   <source>Of the upper of two rods, None by rule</source>
   <translation>Der oberen von zwei Stangen, None nach Regel</translation>
  </message>
  <message>
   <source>Offcuts</source>
   <translation>Reststücke</translation>
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation>Vorhandene Reststücke</translation>
  </message>
  <message>
   <source>OffcutsPanel</source>
   <translation>OffcutsPanel</translation>
  </message>
  <message>
   <source>On one sheet. A piece that is too much for one person to carry is cut smaller at the store where it can be.</source>
   <translation>Auf einer Platte. Ein Stück, das für eine Person zu schwer ist, wird nach Möglichkeit beim Händler kleiner geschnitten.</translation>
  </message>
  <message>
   <source>On the floor, from the front corner to the back corner across.</source>
   <translation>Auf dem Boden, von der vorderen Ecke schräg hinüber zur hinteren Ecke.</translation>
  </message>
  <message>
   <source>Once a job is cut</source>
   <translation>Wenn ein Auftrag geschnitten ist</translation>
  </message>
  <message>
   <source>One after another, as they go together</source>
   <translation>Nacheinander, wie sie zusammengebaut werden</translation>
  </message>
  <message>
   <source>One sheet of a material more for each so many, where more than four are needed.</source>
   <translation>Je so viele eine Platte eines Materials mehr, wo mehr als vier gebraucht werden.</translation>
  </message>
  <message>
   <source>One step back</source>
   <translation>Ein Schritt zurück</translation>
  </message>
  <message>
   <source>One step on</source>
   <translation>Ein Schritt vor</translation>
  </message>
  <message>
   <source>Opening</source>
   <translation>Öffnung</translation>
  </message>
  <message>
   <source>Opening {} x {}, inside {} x {} x {}</source>
   <translation>Öffnung {} x {}, innen {} x {} x {}</translation>
  </message>
  <message>
   <source>Opens</source>
   <translation>Öffnet</translation>
  </message>
  <message>
   <source>Other shelves</source>
   <translation>Andere Böden</translation>
  </message>
  <message>
   <source>Out of date: the design has changed</source>
   <translation>Veraltet: der Entwurf hat sich geändert</translation>
  </message>
  <message>
   <source>Out of date: the parts or the settings have changed since; plan again.</source>
   <translation>Veraltet: Teile oder Einstellungen haben sich seither geändert; neu planen.</translation>
  </message>
  <message>
   <source>Outer size, base included. Left empty, it is what the envelope leaves.</source>
   <translation>Außenmaß, Sockel eingeschlossen. Leer ist es, was der Einbauraum lässt.</translation>
  </message>
  <message>
   <source>Outer: {} wide, {} high, {} deep</source>
   <translation>Außen: {} breit, {} hoch, {} tief</translation>
  </message>
  <message>
   <source>Over its top, None takes what is left</source>
   <translation>Über seiner Oberseite, None nimmt den Rest</translation>
  </message>
  <message>
   <source>Over its top, None takes what is there; it stands at the rear</source>
   <translation>Über seiner Oberseite, None nimmt, was da ist; es steht hinten</translation>
  </message>
  <message>
   <source>Over shelf</source>
   <translation>Boden über den Korpussen</translation>
  </message>
  <message>
   <source>OverShelf</source>
   <translation>OverShelf</translation>
  </message>
  <message>
   <source>Overhang</source>
   <translation>Überstand</translation>
  </message>
  <message>
   <source>Overhang ends</source>
   <translation>Überstand Enden</translation>
  </message>
  <message>
   <source>Overhang top</source>
   <translation>Überstand oben</translation>
  </message>
  <message>
   <source>Overlap</source>
   <translation>Überdeckung</translation>
  </message>
  <message>
   <source>Own catalogue</source>
   <translation>Eigener Katalog</translation>
  </message>
  <message>
   <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
   <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
  </message>
  <message>
   <source>PDF or SVG file</source>
   <translation>PDF- oder SVG-Datei</translation>
  </message>
  <message>
   <source>PDF, for the printer</source>
   <translation>PDF, für den Drucker</translation>
  </message>
  <message>
   <source>PNG, for the screen</source>
   <translation>PNG, für den Bildschirm</translation>
  </message>
  <message>
   <source>Pages A4; the name's ending says PDF, SVG or PNG.</source>
   <translation>Seiten A4; die Endung des Namens bestimmt PDF, SVG oder PNG.</translation>
  </message>
  <message>
   <source>Panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation>Platten, die vom Entfernten aufgehoben werden</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Papers print</source>
   <translation>Längen gedruckt in</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>Parts of</source>
   <translation>Teile von</translation>
  </message>
  <message>
   <source>Parts were moved by hand.</source>
   <translation>Teile wurden von Hand verschoben.</translation>
  </message>
  <message>
   <source>Pictures</source>
   <translation>Bilder</translation>
  </message>
  <message>
   <source>Piece</source>
   <translation>Stück</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Stücke</translation>
  </message>
  <message>
   <source>Pin holes</source>
   <translation>Bodenträgerlöcher</translation>
  </message>
  <message>
   <source>Pin pitch</source>
   <translation>Lochabstand</translation>
  </message>
  <message>
   <source>Pitch</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <source>Plan its sheets first.</source>
   <translation>Zuerst seine Platten planen.</translation>
  </message>
  <message>
   <source>Plan the sheets</source>
   <translation>Platten planen</translation>
  </message>
  <message>
   <source>Plan the sheets first.</source>
   <translation>Zuerst die Platten planen.</translation>
  </message>
  <message>
   <source>Plan, from above</source>
   <translation>Grundriss, von oben</translation>
  </message>
  <message>
   <source>Play</source>
   <translation>Spiel</translation>
  </message>
  <message>
   <source>Played back from apart to together it shows the order of assembly: from the floor up, then what goes in, then the fronts.</source>
   <translation>Von auseinander nach zusammen abgespielt zeigt es die Reihenfolge des Zusammenbaus: vom Boden aufwärts, dann die Einbauten, dann die Fronten.</translation>
  </message>
  <message>
   <source>Plumb</source>
   <translation>Lot</translation>
  </message>
  <message>
   <source>Plumb offset between the low and the high level: above 0 where the wall leans into the closet on its way up.</source>
   <translation>Lotversatz zwischen tiefer und hoher Ebene: über 0, wo die Wand sich nach oben in den Schrank neigt.</translation>
  </message>
  <message>
   <source>Position {} of {}</source>
   <translation>Stellung {} von {}</translation>
  </message>
  <message>
   <source>Print the page to a file</source>
   <translation>Die Seite in eine Datei drucken</translation>
  </message>
  <message>
   <source>Pull edge</source>
   <translation>Griff ab Kante</translation>
  </message>
  <message>
   <source>Pull height</source>
   <translation>Griffhöhe</translation>
  </message>
  <message>
   <source>Pull hole</source>
   <translation>Griffbohrung</translation>
  </message>
  <message>
   <source>Pull spacing</source>
   <translation>Griff-Lochabstand</translation>
  </message>
  <message>
   <source>Pulled apart</source>
   <translation>Auseinandergezogen</translation>
  </message>
  <message>
   <source>Pulls</source>
   <translation>Griffe</translation>
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation>Griffe je Front, 0 für keine</translation>
  </message>
  <message>
   <source>Rabbets</source>
   <translation>Falze</translation>
  </message>
  <message>
   <source>Rabbets at</source>
   <translation>Falze an</translation>
  </message>
  <message>
   <source>Rails</source>
   <translation>Querfriese</translation>
  </message>
  <message>
   <source>Read</source>
   <translation>Gemessen</translation>
  </message>
  <message>
   <source>Read a file…</source>
   <translation>Datei einlesen…</translation>
  </message>
  <message>
   <source>Read offcuts</source>
   <translation>Reststücke einlesen</translation>
  </message>
  <message>
   <source>Read to</source>
   <translation>Ablesung auf</translation>
  </message>
  <message>
   <source>Reading</source>
   <translation>Messwert</translation>
  </message>
  <message>
   <source>Readings taken elsewhere</source>
   <translation>Anderswo genommene Messwerte</translation>
  </message>
  <message>
   <source>Readings when this task is closed</source>
   <translation>Messwerte, wenn dieses Formular geschlossen ist</translation>
  </message>
  <message>
   <source>Readings: {} to look at</source>
   <translation>Messwerte: {} anzusehen</translation>
  </message>
  <message>
   <source>Rear</source>
   <translation>Hinten</translation>
  </message>
  <message>
   <source>Rear row at</source>
   <translation>Hintere Reihe bei</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Remove the place</source>
   <translation>Stelle entfernen</translation>
  </message>
  <message>
   <source>Remove this bay</source>
   <translation>Dieses Feld entfernen</translation>
  </message>
  <message>
   <source>Residual</source>
   <translation>Abweichung</translation>
  </message>
  <message>
   <source>Returns</source>
   <translation>Wandstücke</translation>
  </message>
  <message>
   <source>Right</source>
   <translation>Rechts</translation>
  </message>
  <message>
   <source>Right click: all commands of this step.</source>
   <translation>Rechtsklick: alle Befehle dieses Schritts.</translation>
  </message>
  <message>
   <source>Right end at</source>
   <translation>Rechtes Ende bei</translation>
  </message>
  <message>
   <source>Right wall</source>
   <translation>Rechte Wand</translation>
  </message>
  <message>
   <source>Rise above</source>
   <translation>Anstieg oben</translation>
  </message>
  <message>
   <source>Rise below</source>
   <translation>Anstieg unten</translation>
  </message>
  <message>
   <source>Rod</source>
   <translation>Stange</translation>
  </message>
  <message>
   <source>Rods</source>
   <translation>Stangen</translation>
  </message>
  <message>
   <source>Room</source>
   <translation>Raum</translation>
  </message>
  <message>
   <source>Room to leave</source>
   <translation>Freizulassender Raum</translation>
  </message>
  <message>
   <source>Rounds</source>
   <translation>Viertelstäbe</translation>
  </message>
  <message>
   <source>Router bit</source>
   <translation>Fräser</translation>
  </message>
  <message>
   <source>Rules</source>
   <translation>Regeln</translation>
  </message>
  <message>
   <source>Run</source>
   <translation>Verlauf</translation>
  </message>
  <message>
   <source>STEP file</source>
   <translation>STEP-Datei</translation>
  </message>
  <message>
   <source>SVG, to draw on</source>
   <translation>SVG, zum Weiterzeichnen</translation>
  </message>
  <message>
   <source>Sans Serif</source>
   <translation>Sans Serif</translation>
  </message>
  <message>
   <source>Saw and sheets</source>
   <translation>Säge und Platten</translation>
  </message>
  <message>
   <source>Saw: {} x {}, {} thick</source>
   <translation>Sägen: {} x {}, {} dick</translation>
  </message>
  <message>
   <source>Scale 1 : {}.</source>
   <translation>Maßstab 1 : {}.</translation>
  </message>
  <message>
   <source>Screws</source>
   <translation>Schrauben</translation>
  </message>
  <message>
   <source>Scribe</source>
   <translation>Anpassen</translation>
  </message>
  <message>
   <source>Search for fewer cuts</source>
   <translation>Nach weniger Schnitten suchen</translation>
  </message>
  <message>
   <source>Search for fewer sheets</source>
   <translation>Nach weniger Platten suchen</translation>
  </message>
  <message>
   <source>Searched in steps of {}, with as much to spare all round.</source>
   <translation>In Schritten von {} gesucht, mit ebenso viel Reserve ringsum.</translation>
  </message>
  <message>
   <source>Sections</source>
   <translation>Schnitte</translation>
  </message>
  <message>
   <source>Seed</source>
   <translation>Startzahl</translation>
  </message>
  <message>
   <source>Select the closet that this is for.</source>
   <translation>Den Einbauschrank wählen, für den dies ist.</translation>
  </message>
  <message>
   <source>Set back</source>
   <translation>Zurückgesetzt</translation>
  </message>
  <message>
   <source>Setback</source>
   <translation>Rücksprung</translation>
  </message>
  <message>
   <source>Severity</source>
   <translation>Schwere</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Platten</translation>
  </message>
  <message>
   <source>Sheets: {}</source>
   <translation>Platten: {}</translation>
  </message>
  <message>
   <source>Shelf above</source>
   <translation>Boden darüber</translation>
  </message>
  <message>
   <source>Shelf band</source>
   <translation>Kante der Böden</translation>
  </message>
  <message>
   <source>Shelf joint</source>
   <translation>Bodenverbindung</translation>
  </message>
  <message>
   <source>Shelf lip</source>
   <translation>Bodenlippe</translation>
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation>Boden über den Korpussen…</translation>
  </message>
  <message>
   <source>Shelf play</source>
   <translation>Bodenspiel</translation>
  </message>
  <message>
   <source>Shelf rail</source>
   <translation>Leiste vor Boden</translation>
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation>Böden aus einem Stück in einer hinteren Ecke</translation>
  </message>
  <message>
   <source>Shoe shelves</source>
   <translation>Schuhböden</translation>
  </message>
  <message>
   <source>Shoe shelves…</source>
   <translation>Schuhböden…</translation>
  </message>
  <message>
   <source>ShoeShelves</source>
   <translation>ShoeShelves</translation>
  </message>
  <message>
   <source>Shop figures</source>
   <translation>Werkstattwerte</translation>
  </message>
  <message>
   <source>Shop figures: grooves and shelf pins</source>
   <translation>Werkstattwerte: Nuten und Bodenträger</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>Show all</source>
   <translation>Alles zeigen</translation>
  </message>
  <message>
   <source>Show and hide</source>
   <translation>Ein- und ausblenden</translation>
  </message>
  <message>
   <source>Show casing and baseboard</source>
   <translation>Bekleidung und Sockelleiste zeigen</translation>
  </message>
  <message>
   <source>Show everything</source>
   <translation>Alles einblenden</translation>
  </message>
  <message>
   <source>Show it</source>
   <translation>Zeigen</translation>
  </message>
  <message>
   <source>Show larger</source>
   <translation>Größer zeigen</translation>
  </message>
  <message>
   <source>Show the ceiling of the room</source>
   <translation>Die Decke des Raums zeigen</translation>
  </message>
  <message>
   <source>Show the floor of the room</source>
   <translation>Den Boden des Raums zeigen</translation>
  </message>
  <message>
   <source>Show the readings also while the survey's task is closed</source>
   <translation>Die Messwerte auch zeigen, wenn das Aufmaßformular geschlossen ist</translation>
  </message>
  <message>
   <source>Show the wall around the opening</source>
   <translation>Die Wand um die Öffnung zeigen</translation>
  </message>
  <message>
   <source>Show the walls of the room</source>
   <translation>Die Wände des Raums zeigen</translation>
  </message>
  <message>
   <source>Show what must stay clear</source>
   <translation>Zeigen, was frei bleiben muss</translation>
  </message>
  <message>
   <source>Show what the wall around the opening hides</source>
   <translation>Zeigen, was die Wand um die Öffnung verdeckt</translation>
  </message>
  <message>
   <source>ShowReadings</source>
   <translation>ShowReadings</translation>
  </message>
  <message>
   <source>Side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>Side gap</source>
   <translation>Seitlicher Spalt</translation>
  </message>
  <message>
   <source>Single panels</source>
   <translation>Einzelne Platten</translation>
  </message>
  <message>
   <source>Slide</source>
   <translation>Auszug</translation>
  </message>
  <message>
   <source>Slide length</source>
   <translation>Auszugslänge</translation>
  </message>
  <message>
   <source>Sloped shelves for shoes in one compartment</source>
   <translation>Schräge Böden für Schuhe in einem Fach</translation>
  </message>
  <message>
   <source>Sold as {}</source>
   <translation>Verkauft als {}</translation>
  </message>
  <message>
   <source>Solids</source>
   <translation>Volumenkörper</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>Spacing</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>Spot</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>Spread</source>
   <translation>Streuung</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Steht hinten in einem tieferen Einbauraum, sonst an dessen Vorderseite</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front.</source>
   <translation>Steht hinten in einem tieferen Einbauraum, sonst an dessen Vorderseite.</translation>
  </message>
  <message>
   <source>Stands on</source>
   <translation>Steht auf</translation>
  </message>
  <message>
   <source>Start</source>
   <translation>Anfang</translation>
  </message>
  <message>
   <source>Start a closet, or look at an example first.</source>
   <translation>Einen Einbauschrank anlegen oder zuerst ein Beispiel ansehen.</translation>
  </message>
  <message>
   <source>Starts at</source>
   <translation>Beginnt bei</translation>
  </message>
  <message>
   <source>Step {} of {}: {}</source>
   <translation>Schritt {} von {}: {}</translation>
  </message>
  <message>
   <source>Steps</source>
   <translation>Schritte</translation>
  </message>
  <message>
   <source>Stile</source>
   <translation>Längsfries</translation>
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation>Längs- und Querfriese vor einem Korpus</translation>
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation>Längsfriese laufen bis zum Fußboden, sonst bis zur Unterkante des unteren Querfrieses</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Anschlag</translation>
  </message>
  <message>
   <source>Stop first</source>
   <translation>Ende zuerst</translation>
  </message>
  <message>
   <source>Stop last</source>
   <translation>Ende zuletzt</translation>
  </message>
  <message>
   <source>Stop: take the best so far</source>
   <translation>Anhalten: das bisher Beste nehmen</translation>
  </message>
  <message>
   <source>Stopped</source>
   <translation>Angehalten</translation>
  </message>
  <message>
   <source>Strip</source>
   <translation>Streifen</translation>
  </message>
  <message>
   <source>Strip widths</source>
   <translation>Passleistenbreiten</translation>
  </message>
  <message>
   <source>Supports</source>
   <translation>Stützen</translation>
  </message>
  <message>
   <source>Supports between the ends, None as many as the span asks for</source>
   <translation>Stützen zwischen den Enden, None so viele, wie die Spannweite verlangt</translation>
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation>Stützen halten den Deckel in jeder Höhe</translation>
  </message>
  <message>
   <source>Survey</source>
   <translation>Aufmaß</translation>
  </message>
  <message>
   <source>Survey sheet</source>
   <translation>Aufmaßblatt</translation>
  </message>
  <message>
   <source>SurveyPanel</source>
   <translation>SurveyPanel</translation>
  </message>
  <message>
   <source>Surveyed</source>
   <translation>Aufgemessen</translation>
  </message>
  <message>
   <source>TOML (*.toml)</source>
   <translation>TOML (*.toml)</translation>
  </message>
  <message>
   <source>Table saw at home</source>
   <translation>Tischkreissäge vorhanden</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut.</source>
   <translation>Von jeder Plattenkante abgenommen, bevor ein Teil geschnitten wird.</translation>
  </message>
  <message>
   <source>Tape, class</source>
   <translation>Maßband, Klasse</translation>
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation>Das Feld nimmt seine Breite vom Möbel, wenn es keine eigene hat</translation>
  </message>
  <message>
   <source>The bay that it stands in</source>
   <translation>Das Feld, in dem es steht</translation>
  </message>
  <message>
   <source>The bay that it stands in, None to stand free</source>
   <translation>Das Feld, in dem es steht, None: freistehend</translation>
  </message>
  <message>
   <source>The bill as CSV, drawings as DXF, solids as STEP</source>
   <translation>Die Stückliste als CSV, Zeichnungen als DXF, Volumenkörper als STEP</translation>
  </message>
  <message>
   <source>The bill is in {}</source>
   <translation>Die Stückliste ist in {}</translation>
  </message>
  <message>
   <source>The carcasses alone</source>
   <translation>Nur die Korpusse</translation>
  </message>
  <message>
   <source>The casing around the opening, on the room's side; 0 where there is none.</source>
   <translation>Die Bekleidung um die Öffnung, auf der Raumseite; 0, wo keine ist.</translation>
  </message>
  <message>
   <source>The closet has no parts yet: add a carcass or a panel first.</source>
   <translation>Der Einbauschrank hat noch keine Teile: zuerst einen Korpus oder eine Platte hinzufügen.</translation>
  </message>
  <message>
   <source>The closet has sizes only: they draw it, and every reading is left blank.</source>
   <translation>Der Einbauschrank hat nur Maße: nach ihnen wird er gezeichnet, und jeder Messwert bleibt leer.</translation>
  </message>
  <message>
   <source>The closet's own door, flush with the room's side of the wall.</source>
   <translation>Die eigene Tür des Schranks, bündig mit der Zimmerseite der Wand.</translation>
  </message>
  <message>
   <source>The component's name</source>
   <translation>Der Name des Bauteils</translation>
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again first.</source>
   <translation>Der Zuschnittplan ist veraltet: zuerst die Platten neu planen.</translation>
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again, or draw the parts alone.</source>
   <translation>Der Zuschnittplan ist veraltet: die Platten neu planen oder nur die Teile zeichnen.</translation>
  </message>
  <message>
   <source>The cutting order, as text and as pictures</source>
   <translation>Die Schnittfolge, als Text und als Bilder</translation>
  </message>
  <message>
   <source>The empty room</source>
   <translation>Der leere Raum</translation>
  </message>
  <message>
   <source>The envelope</source>
   <translation>Der Einbauraum</translation>
  </message>
  <message>
   <source>The fronts</source>
   <translation>Die Fronten</translation>
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation>Die angeschlagene Kante einer einzelnen Tür</translation>
  </message>
  <message>
   <source>The joinery of its laps</source>
   <translation>Die Art der Überblattung</translation>
  </message>
  <message>
   <source>The joinery of the boxes</source>
   <translation>Die Verbindungsart der Kästen</translation>
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation>Die linke oder die rechte hintere Ecke</translation>
  </message>
  <message>
   <source>The materials, joints and figures that were last accepted with OK for a component of the same kind. Sizes are those of the new place.</source>
   <translation>Die Materialien, Verbindungen und Werte, die für ein Bauteil derselben Art zuletzt mit OK angenommen wurden. Maße sind die des neuen Platzes.</translation>
  </message>
  <message>
   <source>The page that is there stays: delete it once the new one will do.</source>
   <translation>Das vorhandene Blatt bleibt: löschen, sobald das neue genügt.</translation>
  </message>
  <message>
   <source>The place and the people</source>
   <translation>Der Ort und die Menschen</translation>
  </message>
  <message>
   <source>The plan cuts around it.</source>
   <translation>Der Plan schneidet darum herum.</translation>
  </message>
  <message>
   <source>The plan uses the largest sound rectangle, {} x {}, from {} and {} on; it is cut out first.</source>
   <translation>Der Plan nutzt das größte heile Rechteck, {} x {}, ab {} und {}; es wird zuerst herausgeschnitten.</translation>
  </message>
  <message>
   <source>The readings agree with each other.</source>
   <translation>Die Messwerte stimmen miteinander überein.</translation>
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation>Die Fuge um eine einliegende Front und zwischen je zweien</translation>
  </message>
  <message>
   <source>The sheets</source>
   <translation>Die Platten</translation>
  </message>
  <message>
   <source>The sheets are not planned yet: lay them out first, or draw the parts alone.</source>
   <translation>Die Platten sind noch nicht geplant: zuerst einteilen oder nur die Teile zeichnen.</translation>
  </message>
  <message>
   <source>The sheets are not planned yet: the bill cannot count them.</source>
   <translation>Die Platten sind noch nicht geplant: die Stückliste kann sie nicht zählen.</translation>
  </message>
  <message>
   <source>The space between two fixed shelves, from the bottom, 1 first.</source>
   <translation>Der Raum zwischen zwei festen Böden, von unten, 1 zuerst.</translation>
  </message>
  <message>
   <source>The step to which the tape was read.</source>
   <translation>Der Schritt, auf den das Maßband abgelesen wurde.</translation>
  </message>
  <message>
   <source>The store saws</source>
   <translation>Der Händler sägt</translation>
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation>Die Bankplatte ist ein Deckel, hinten an einen Streifen angeschlagen</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>In diesem Dokument ist kein Einbauschrank: zuerst einen anlegen.</translation>
  </message>
  <message>
   <source>They are a list of their own in the document.</source>
   <translation>Sie sind eine eigene Liste im Dokument.</translation>
  </message>
  <message>
   <source>They are used before anything is bought, wherever that saves something. Without a width it is a length of a bar.</source>
   <translation>Sie werden vor jedem Kauf verwendet, wo das etwas spart. Ohne Breite ist es eine Stablänge.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>Thickness by caliper, in the middle of three edges. Grooves follow it.</source>
   <translation>Dicke mit dem Messschieber, in der Mitte dreier Kanten. Die Nuten richten sich danach.</translation>
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation>Dicke der entfernten Oberplatte</translation>
  </message>
  <message>
   <source>Thickness of the wall at the opening.</source>
   <translation>Dicke der Wand an der Öffnung.</translation>
  </message>
  <message>
   <source>Thickness, opens to (°)</source>
   <translation>Dicke, öffnet bis (°)</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>To be written: {}</source>
   <translation>Zu schreiben: {}</translation>
  </message>
  <message>
   <source>To floor</source>
   <translation>Bis zum Boden</translation>
  </message>
  <message>
   <source>To measure the closet afresh, whatever was read before.</source>
   <translation>Um den Schrank neu aufzumessen, was auch immer vorher gemessen wurde.</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Oben</translation>
  </message>
  <message>
   <source>Top and bottom by</source>
   <translation>Ober- und Unterboden durch</translation>
  </message>
  <message>
   <source>Top lies</source>
   <translation>Oberboden liegt</translation>
  </message>
  <message>
   <source>Top rail</source>
   <translation>Oberer Querfries</translation>
  </message>
  <message>
   <source>Top run</source>
   <translation>Verlauf Bankplatte</translation>
  </message>
  <message>
   <source>Travel</source>
   <translation>Auszugsweg</translation>
  </message>
  <message>
   <source>Tree only</source>
   <translation>Nur Baum</translation>
  </message>
  <message>
   <source>Trim</source>
   <translation>Besäumen</translation>
  </message>
  <message>
   <source>Turn the part</source>
   <translation>Das Teil drehen</translation>
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation>Zwei Öffnungen lassen bei geschlossenem Deckel Luft hinein</translation>
  </message>
  <message>
   <source>Undersides above the floor</source>
   <translation>Unterseiten über dem Boden</translation>
  </message>
  <message>
   <source>Upper</source>
   <translation>Obere</translation>
  </message>
  <message>
   <source>Usable length, along the grain if it has any</source>
   <translation>Nutzbare Länge, in Faserrichtung, wenn es eine hat</translation>
  </message>
  <message>
   <source>Usable width</source>
   <translation>Nutzbare Breite</translation>
  </message>
  <message>
   <source>Use</source>
   <translation>Verwendung</translation>
  </message>
  <message>
   <source>Use the offcuts at hand first</source>
   <translation>Vorhandene Reststücke zuerst verwenden</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>Vents</source>
   <translation>Lüftung</translation>
  </message>
  <message>
   <source>Waits until everything can be built</source>
   <translation>Wartet, bis alles gebaut werden kann</translation>
  </message>
  <message>
   <source>Wall around the opening</source>
   <translation>Wand um die Öffnung</translation>
  </message>
  <message>
   <source>Wall over it</source>
   <translation>Wand darüber</translation>
  </message>
  <message>
   <source>Wall thickness</source>
   <translation>Wanddicke</translation>
  </message>
  <message>
   <source>Wall to wall, the tape level.</source>
   <translation>Von Wand zu Wand, Maßband waagerecht.</translation>
  </message>
  <message>
   <source>Wall, end</source>
   <translation>Wand, Ende</translation>
  </message>
  <message>
   <source>Walls</source>
   <translation>Wände</translation>
  </message>
  <message>
   <source>Warnings: {}</source>
   <translation>Warnungen: {}</translation>
  </message>
  <message>
   <source>Ways are looked for in an empty closet, from a room before it that is free. The picture moves in steps of {} and {}° at most; nothing in the document moves.</source>
   <translation>Wege werden in einem leeren Schrank gesucht, aus einem freien Raum davor. Das Bild bewegt sich in Schritten von höchstens {} und {}°; im Dokument bewegt sich nichts.</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation>Was es vorn abschließt</translation>
  </message>
  <message>
   <source>What closes the opening: drawers and doors inside have to clear it.</source>
   <translation>Was die Öffnung schließt: Schubladen und Türen im Innern müssen daran vorbei.</translation>
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation>Was den Spalt dort abdeckt</translation>
  </message>
  <message>
   <source>What fits</source>
   <translation>Was passt</translation>
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation>Was daran hängt; es bestimmt die Höhe</translation>
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation>Was die Enden einer quer laufenden Stange hält</translation>
  </message>
  <message>
   <source>What is dangerous, doubtful or not checked</source>
   <translation>Was gefährlich, zweifelhaft oder nicht geprüft ist</translation>
  </message>
  <message>
   <source>What is not known is not checked, and the findings say so.</source>
   <translation>Was nicht bekannt ist, wird nicht geprüft, und die Befunde sagen das.</translation>
  </message>
  <message>
   <source>What it comes to</source>
   <translation>Was es ergibt</translation>
  </message>
  <message>
   <source>What it was</source>
   <translation>Was es war</translation>
  </message>
  <message>
   <source>What new closets and new cut layouts start with. Those that are there keep what they have.</source>
   <translation>Womit neue Einbauschränke und neue Zuschnittpläne beginnen. Vorhandene behalten, was sie haben.</translation>
  </message>
  <message>
   <source>What opens</source>
   <translation>Was sich öffnet</translation>
  </message>
  <message>
   <source>What the job took goes out of the list; what it leaves, and is large enough to keep, comes in.</source>
   <translation>Was der Auftrag verbraucht hat, geht aus der Liste; was er übrig lässt und groß genug zum Aufheben ist, kommt hinein.</translation>
  </message>
  <message>
   <source>What the readings say of each other</source>
   <translation>Was die Messwerte übereinander sagen</translation>
  </message>
  <message>
   <source>What the tape read, or the sizes of the closet</source>
   <translation>Was gemessen wurde, oder die Maße des Schranks</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Was zu tun ist</translation>
  </message>
  <message>
   <source>What would help: {}.</source>
   <translation>Was helfen würde: {}.</translation>
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation>Wo durchgeschraubt werden kann</translation>
  </message>
  <message>
   <source>Where it hangs</source>
   <translation>Wo es hängt</translation>
  </message>
  <message>
   <source>Where it stands</source>
   <translation>Wo es steht</translation>
  </message>
  <message>
   <source>Where the closet is cut.</source>
   <translation>Wo der Schrank aufgeschnitten ist.</translation>
  </message>
  <message>
   <source>Where the leaves lie, of which board, with which gaps and pulls</source>
   <translation>Wo die Flügel liegen, aus welcher Platte, mit welchen Spalten und Griffen</translation>
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation>Wo der linke Längsfries endet</translation>
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation>Wo der rechte Längsfries endet</translation>
  </message>
  <message>
   <source>Where they lie</source>
   <translation>Wo sie liegen</translation>
  </message>
  <message>
   <source>Whether its grain must run along a part's length</source>
   <translation>Ob seine Faser in der Länge eines Teils laufen muss</translation>
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation>Welches seiner Felder, von links, 1 zuerst</translation>
  </message>
  <message>
   <source>Which sheets to buy and how to cut them</source>
   <translation>Welche Platten zu kaufen und wie sie zu schneiden sind</translation>
  </message>
  <message>
   <source>Which side</source>
   <translation>Welche Seite</translation>
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation>Welcher Raum zwischen den festen Böden, von unten, 1 zuerst</translation>
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation>Wie die Faser der Bankplatte läuft; von vorn nach hinten ist sie zwischen den Rahmenhölzern fest</translation>
  </message>
  <message>
   <source>Who cuts what</source>
   <translation>Wer was schneidet</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members of a frame</source>
   <translation>Größter lichter Abstand zwischen den Querhölzern eines Rahmens</translation>
  </message>
  <message>
   <source>Widest clear distance between the cross members of a base frame.</source>
   <translation>Größter lichter Abstand zwischen den Querhölzern eines Sockelrahmens.</translation>
  </message>
  <message>
   <source>Width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>Width at the back, high up</source>
   <translation>Breite hinten, weit oben</translation>
  </message>
  <message>
   <source>Width at the back, low down</source>
   <translation>Breite hinten, weit unten</translation>
  </message>
  <message>
   <source>Width at the front, high up</source>
   <translation>Breite vorn, weit oben</translation>
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation>Breite vorn, weit unten</translation>
  </message>
  <message>
   <source>Width back high</source>
   <translation>Breite hinten hoch</translation>
  </message>
  <message>
   <source>Width back low</source>
   <translation>Breite hinten tief</translation>
  </message>
  <message>
   <source>Width first, or the volume, which matters under a slope.</source>
   <translation>Zuerst die Breite, oder das Volumen, das unter einer Schräge zählt.</translation>
  </message>
  <message>
   <source>Width front high</source>
   <translation>Breite vorn hoch</translation>
  </message>
  <message>
   <source>Width front low</source>
   <translation>Breite vorn tief</translation>
  </message>
  <message>
   <source>Width of that strip</source>
   <translation>Breite dieses Streifens</translation>
  </message>
  <message>
   <source>Width of the cut that the blade makes.</source>
   <translation>Breite des Schnitts, den das Sägeblatt macht.</translation>
  </message>
  <message>
   <source>Width of the members as sawn, None takes the board's own</source>
   <translation>Breite der Rahmenteile wie gesägt, None nimmt die des Bretts</translation>
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation>Breite der Mittelfriese</translation>
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation>Breite der Längsfriese, am Ende zur Wand ohne das, was über die Seite hinausreicht</translation>
  </message>
  <message>
   <source>Width, height</source>
   <translation>Breite, Höhe</translation>
  </message>
  <message>
   <source>Widths</source>
   <translation>Breiten</translation>
  </message>
  <message>
   <source>Workbench</source>
   <translation>Workbench</translation>
  </message>
  <message>
   <source>Write a file…</source>
   <translation>Datei schreiben…</translation>
  </message>
  <message>
   <source>Write offcuts</source>
   <translation>Reststücke schreiben</translation>
  </message>
  <message>
   <source>Write the bill</source>
   <translation>Stückliste schreiben</translation>
  </message>
  <message>
   <source>Write the names on the parts that can be seen.</source>
   <translation>Die Namen auf die sichtbaren Teile schreiben.</translation>
  </message>
  <message>
   <source>Write the solids</source>
   <translation>Volumenkörper schreiben</translation>
  </message>
  <message>
   <source>Write the survey sheet</source>
   <translation>Aufmaßblatt schreiben</translation>
  </message>
  <message>
   <source>Written: {}</source>
   <translation>Geschrieben: {}</translation>
  </message>
  <message>
   <source>Your boards, prices and slides, laid over those that are shipped.</source>
   <translation>Eigene Platten, Preise und Auszüge, die den mitgelieferten vorgehen.</translation>
  </message>
  <message>
   <source>a cheaper one may exist</source>
   <translation>es kann einen billigeren geben</translation>
  </message>
  <message>
   <source>a pair, hinged at both sides</source>
   <translation>ein Paar, beidseitig angeschlagen</translation>
  </message>
  <message>
   <source>across</source>
   <translation>quer</translation>
  </message>
  <message>
   <source>across the width</source>
   <translation>quer über die Breite</translation>
  </message>
  <message>
   <source>add a carcass for it to stand in first</source>
   <translation>zuerst einen Korpus hinzufügen, in dem es stehen kann</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>verstellbarer Boden</translation>
  </message>
  <message>
   <source>agrees</source>
   <translation>stimmt überein</translation>
  </message>
  <message>
   <source>all that is left</source>
   <translation>alles Übrige</translation>
  </message>
  <message>
   <source>along</source>
   <translation>längs</translation>
  </message>
  <message>
   <source>along the bench</source>
   <translation>längs der Bank</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>der Länge nach</translation>
  </message>
  <message>
   <source>aluminium tube</source>
   <translation>Aluminiumrohr</translation>
  </message>
  <message>
   <source>aluminium tube 30 x 1.5 mm</source>
   <translation>Aluminiumrohr 30 x 1.5 mm</translation>
  </message>
  <message>
   <source>anti-tip anchor, strap and brackets</source>
   <translation>Kippsicherung, Band und Winkel</translation>
  </message>
  <message>
   <source>any</source>
   <translation>beliebig</translation>
  </message>
  <message>
   <source>any number</source>
   <translation>beliebig viele</translation>
  </message>
  <message>
   <source>apart</source>
   <translation>auseinander</translation>
  </message>
  <message>
   <source>apron</source>
   <translation>Zarge</translation>
  </message>
  <message>
   <source>as the carcass</source>
   <translation>wie der Korpus</translation>
  </message>
  <message>
   <source>as the catalogue says</source>
   <translation>wie der Katalog sagt</translation>
  </message>
  <message>
   <source>assembled pieces</source>
   <translation>zusammengebaute Stücke</translation>
  </message>
  <message>
   <source>at front or start</source>
   <translation>vorn oder am Anfang</translation>
  </message>
  <message>
   <source>at midspan</source>
   <translation>in Feldmitte</translation>
  </message>
  <message>
   <source>at rear or end</source>
   <translation>hinten oder am Ende</translation>
  </message>
  <message>
   <source>at the free end</source>
   <translation>am freien Ende</translation>
  </message>
  <message>
   <source>at the rear wall</source>
   <translation>an der hinteren Wand</translation>
  </message>
  <message>
   <source>back</source>
   <translation>Rückwand</translation>
  </message>
  <message>
   <source>backs</source>
   <translation>Rückwände</translation>
  </message>
  <message>
   <source>band</source>
   <translation>Kante</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>Stab</translation>
  </message>
  <message>
   <source>base</source>
   <translation>Sockel</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>Sockelrahmen</translation>
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation>Sockelrahmen, an den Fußboden angepasst</translation>
  </message>
  <message>
   <source>bay</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>beech dowel 8 x 40 mm</source>
   <translation>Buchendübel 8 x 40 mm</translation>
  </message>
  <message>
   <source>behind the left return: {}, {} l</source>
   <translation>hinter dem linken Wandstück: {}, {} l</translation>
  </message>
  <message>
   <source>behind the right return: {}, {} l</source>
   <translation>hinter dem rechten Wandstück: {}, {} l</translation>
  </message>
  <message>
   <source>bench</source>
   <translation>Bank</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>Bankblende</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>Bankgestell</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>Bankplatte</translation>
  </message>
  <message>
   <source>benches</source>
   <translation>Bänke</translation>
  </message>
  <message>
   <source>beside the last</source>
   <translation>neben dem letzten</translation>
  </message>
  <message>
   <source>between the sides</source>
   <translation>zwischen den Seiten</translation>
  </message>
  <message>
   <source>bill</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <source>bill and papers</source>
   <translation>Stückliste und Papiere</translation>
  </message>
  <message>
   <source>birch plywood 12 mm</source>
   <translation>Birkensperrholz 12 mm</translation>
  </message>
  <message>
   <source>birch plywood 18 mm</source>
   <translation>Birkensperrholz 18 mm</translation>
  </message>
  <message>
   <source>books</source>
   <translation>Bücher</translation>
  </message>
  <message>
   <source>bottom</source>
   <translation>Unterboden</translation>
  </message>
  <message>
   <source>bottom-corner roller slide, three-quarter extension</source>
   <translation>Rollenauszug, unten an der Kastenecke, Teilauszug (drei Viertel)</translation>
  </message>
  <message>
   <source>box room (mm)</source>
   <translation>Abstellkammer (mm)</translation>
  </message>
  <message>
   <source>bracket that hangs a 1 1/4 in pole under a panel</source>
   <translation>Träger, der eine Holzstange 1 1/4 in unter eine Platte hängt</translation>
  </message>
  <message>
   <source>bracket that hangs a 27 mm rod under a panel</source>
   <translation>Träger, der eine Stange 27 mm unter eine Platte hängt</translation>
  </message>
  <message>
   <source>bracket that hangs a 30 mm rod under a panel</source>
   <translation>Träger, der eine Stange 30 mm unter eine Platte hängt</translation>
  </message>
  <message>
   <source>brick</source>
   <translation>Mauerziegel</translation>
  </message>
  <message>
   <source>budget</source>
   <translation>Zeitvorgabe</translation>
  </message>
  <message>
   <source>butt hinge 60 mm with its screws</source>
   <translation>Aufschraubscharnier 60 mm mit Schrauben</translation>
  </message>
  <message>
   <source>butt, screwed</source>
   <translation>stumpf, geschraubt</translation>
  </message>
  <message>
   <source>by its kind</source>
   <translation>nach seiner Art</translation>
  </message>
  <message>
   <source>by readings</source>
   <translation>nach Messwerten</translation>
  </message>
  <message>
   <source>by rule</source>
   <translation>nach Regel</translation>
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation>mit Schrauben oder Nägeln durch die Seiten</translation>
  </message>
  <message>
   <source>by sizes</source>
   <translation>nach Maßen</translation>
  </message>
  <message>
   <source>by the gap</source>
   <translation>nach dem Spalt</translation>
  </message>
  <message>
   <source>by the inside width</source>
   <translation>nach der Innenbreite</translation>
  </message>
  <message>
   <source>by the opening</source>
   <translation>nach der Öffnung</translation>
  </message>
  <message>
   <source>cancelled</source>
   <translation>abgebrochen</translation>
  </message>
  <message>
   <source>cannot be built</source>
   <translation>kann nicht gebaut werden</translation>
  </message>
  <message>
   <source>cannot be right</source>
   <translation>kann nicht stimmen</translation>
  </message>
  <message>
   <source>cantilever</source>
   <translation>Kragträger</translation>
  </message>
  <message>
   <source>carcass</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation>Bekleidung und Sockelleiste</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>Katalog</translation>
  </message>
  <message>
   <source>ceiling</source>
   <translation>Decke</translation>
  </message>
  <message>
   <source>centimetres, to 1 mm</source>
   <translation>Zentimeter, auf 1 mm</translation>
  </message>
  <message>
   <source>centre rail under the box</source>
   <translation>Mittelführung unter dem Kasten</translation>
  </message>
  <message>
   <source>cheapest</source>
   <translation>am billigsten</translation>
  </message>
  <message>
   <source>checks</source>
   <translation>Prüfungen</translation>
  </message>
  <message>
   <source>child's reach</source>
   <translation>Reichweite eines Kindes</translation>
  </message>
  <message>
   <source>children-unknown</source>
   <translation>children-unknown</translation>
  </message>
  <message>
   <source>chipboard screw 3.5 x 16 mm</source>
   <translation>Spanplattenschraube 3.5 x 16 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 20 mm</source>
   <translation>Spanplattenschraube 4 x 20 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 25 mm</source>
   <translation>Spanplattenschraube 4 x 25 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 30 mm</source>
   <translation>Spanplattenschraube 4 x 30 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 40 mm</source>
   <translation>Spanplattenschraube 4 x 40 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 50 mm</source>
   <translation>Spanplattenschraube 4 x 50 mm</translation>
  </message>
  <message>
   <source>choose a file</source>
   <translation>Datei wählen</translation>
  </message>
  <message>
   <source>choose a folder</source>
   <translation>Ordner wählen</translation>
  </message>
  <message>
   <source>clamped</source>
   <translation>eingespannt</translation>
  </message>
  <message>
   <source>cleat</source>
   <translation>Tragleiste</translation>
  </message>
  <message>
   <source>cleats</source>
   <translation>Tragleisten</translation>
  </message>
  <message>
   <source>clock</source>
   <translation>Uhr</translation>
  </message>
  <message>
   <source>closet</source>
   <translation>Einbauschrank</translation>
  </message>
  <message>
   <source>components</source>
   <translation>Bauteile</translation>
  </message>
  <message>
   <source>concealed hinge for a 35 mm cup, with its plate</source>
   <translation>Topfscharnier, Topf 35 mm, mit Montageplatte</translation>
  </message>
  <message>
   <source>concealed hinge, 35 mm cup, opens 110 degrees</source>
   <translation>Topfscharnier, Topf 35 mm, Öffnungswinkel 110 Grad</translation>
  </message>
  <message>
   <source>concealed undermount slide, full extension</source>
   <translation>verdeckter Unterflurauszug, Vollauszug</translation>
  </message>
  <message>
   <source>concealed wide-angle hinge for a 35 mm cup, with its plate</source>
   <translation>Weitwinkel-Topfscharnier, Topf 35 mm, mit Montageplatte</translation>
  </message>
  <message>
   <source>concealed wide-angle hinge, 35 mm cup, opens 165 degrees</source>
   <translation>Weitwinkel-Topfscharnier, Topf 35 mm, Öffnungswinkel 165 Grad</translation>
  </message>
  <message>
   <source>concrete</source>
   <translation>Beton</translation>
  </message>
  <message>
   <source>contents</source>
   <translation>Inhalt</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>Eckboden</translation>
  </message>
  <message>
   <source>crosscut</source>
   <translation>Querschnitt</translation>
  </message>
  <message>
   <source>cut from above</source>
   <translation>Schnitt von oben</translation>
  </message>
  <message>
   <source>cut from the front</source>
   <translation>Schnitt von vorn</translation>
  </message>
  <message>
   <source>cut from the left</source>
   <translation>Schnitt von links</translation>
  </message>
  <message>
   <source>cut from the right</source>
   <translation>Schnitt von rechts</translation>
  </message>
  <message>
   <source>cut layout</source>
   <translation>Zuschnittplan</translation>
  </message>
  <message>
   <source>cutting.txt; cutting/, {} pictures</source>
   <translation>cutting.txt; cutting/, {} Bilder</translation>
  </message>
  <message>
   <source>damaged place {}</source>
   <translation>beschädigte Stelle {}</translation>
  </message>
  <message>
   <source>danger</source>
   <translation>Gefahr</translation>
  </message>
  <message>
   <source>dangers</source>
   <translation>Gefahren</translation>
  </message>
  <message>
   <source>dangers and warnings</source>
   <translation>Gefahren und Warnungen</translation>
  </message>
  <message>
   <source>dead space</source>
   <translation>toter Raum</translation>
  </message>
  <message>
   <source>decimal inches, to 0.001</source>
   <translation>Zoll dezimal, auf 0.001</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation>Diagonale im Aufriss</translation>
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation>Diagonale im Grundriss</translation>
  </message>
  <message>
   <source>divider</source>
   <translation>Mittelseite</translation>
  </message>
  <message>
   <source>done</source>
   <translation>fertig</translation>
  </message>
  <message>
   <source>door</source>
   <translation>Tür</translation>
  </message>
  <message>
   <source>doors</source>
   <translation>Türen</translation>
  </message>
  <message>
   <source>double</source>
   <translation>doppelt</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>zweifelhaft</translation>
  </message>
  <message>
   <source>doubts</source>
   <translation>Zweifel</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>Dübel</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>Kastenhinterstück</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>Kastenboden</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>Kastenvorderstück</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>Kastenseite</translation>
  </message>
  <message>
   <source>drawer slide, 10 in, a pair</source>
   <translation>Schubladenauszug, 10 in, ein Paar</translation>
  </message>
  <message>
   <source>drawer slide, 24 in, a pair</source>
   <translation>Schubladenauszug, 24 in, ein Paar</translation>
  </message>
  <message>
   <source>drawer slide, 250 mm, a pair</source>
   <translation>Schubladenauszug, 250 mm, ein Paar</translation>
  </message>
  <message>
   <source>drawer slide, 600 mm, a pair</source>
   <translation>Schubladenauszug, 600 mm, ein Paar</translation>
  </message>
  <message>
   <source>drawers</source>
   <translation>Schubladen</translation>
  </message>
  <message>
   <source>drawings</source>
   <translation>Zeichnungen</translation>
  </message>
  <message>
   <source>drill</source>
   <translation>Bohrer</translation>
  </message>
  <message>
   <source>drilling</source>
   <translation>Bohren</translation>
  </message>
  <message>
   <source>drop</source>
   <translation>Absenkung</translation>
  </message>
  <message>
   <source>edge-glued pine panel 18 mm</source>
   <translation>Leimholzplatte Kiefer 18 mm</translation>
  </message>
  <message>
   <source>edge-glued pine panel 27 mm</source>
   <translation>Leimholzplatte Kiefer 27 mm</translation>
  </message>
  <message>
   <source>edit {} and give it a width that leaves room for another</source>
   <translation>{} bearbeiten und ihm eine Breite geben, die Platz für ein weiteres lässt</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>leer</translation>
  </message>
  <message>
   <source>end</source>
   <translation>Ende</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>Einbauraum</translation>
  </message>
  <message>
   <source>equal</source>
   <translation>gleich</translation>
  </message>
  <message>
   <source>everything</source>
   <translation>alles</translation>
  </message>
  <message>
   <source>everything, each part too</source>
   <translation>alles, auch jedes Teil</translation>
  </message>
  <message>
   <source>existing</source>
   <translation>vorhanden</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>vorhandenes Möbel</translation>
  </message>
  <message>
   <source>expected {}, give or take {}</source>
   <translation>erwartet {}, plus/minus {}</translation>
  </message>
  <message>
   <source>exploded</source>
   <translation>auseinandergezogen</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>Füße</translation>
  </message>
  <message>
   <source>fewest</source>
   <translation>am wenigsten</translation>
  </message>
  <message>
   <source>file</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>filler</source>
   <translation>Passleiste</translation>
  </message>
  <message>
   <source>filler strip</source>
   <translation>Passleistenstreifen</translation>
  </message>
  <message>
   <source>fillers</source>
   <translation>Passleisten</translation>
  </message>
  <message>
   <source>finishing nail 1.8 x 40 mm</source>
   <translation>Stauchkopfnagel 1.8 x 40 mm</translation>
  </message>
  <message>
   <source>finishing nail 2.0 x 50 mm</source>
   <translation>Stauchkopfnagel 2.0 x 50 mm</translation>
  </message>
  <message>
   <source>first</source>
   <translation>erste</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>fester Boden</translation>
  </message>
  <message>
   <source>flanges</source>
   <translation>Flansche</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>flach</translation>
  </message>
  <message>
   <source>floor</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>flush with the side</source>
   <translation>bündig mit der Seite</translation>
  </message>
  <message>
   <source>folder</source>
   <translation>Ordner</translation>
  </message>
  <message>
   <source>follows from readings in the room</source>
   <translation>folgt aus Messwerten im Raum</translation>
  </message>
  <message>
   <source>free</source>
   <translation>frei</translation>
  </message>
  <message>
   <source>free in the closet</source>
   <translation>frei im Einbauschrank</translation>
  </message>
  <message>
   <source>from above</source>
   <translation>von oben</translation>
  </message>
  <message>
   <source>from front to rear</source>
   <translation>von vorn nach hinten</translation>
  </message>
  <message>
   <source>from the front</source>
   <translation>von vorn</translation>
  </message>
  <message>
   <source>from the side</source>
   <translation>von der Seite</translation>
  </message>
  <message>
   <source>front</source>
   <translation>Front</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>vordere Lippe</translation>
  </message>
  <message>
   <source>front wall</source>
   <translation>vordere Wand</translation>
  </message>
  <message>
   <source>fronts</source>
   <translation>Fronten</translation>
  </message>
  <message>
   <source>ft-in</source>
   <translation>ft-in</translation>
  </message>
  <message>
   <source>full</source>
   <translation>voll</translation>
  </message>
  <message>
   <source>full overlay</source>
   <translation>aufliegend</translation>
  </message>
  <message>
   <source>general</source>
   <translation>allgemein</translation>
  </message>
  <message>
   <source>grain along</source>
   <translation>Faser längs</translation>
  </message>
  <message>
   <source>groove</source>
   <translation>Nut</translation>
  </message>
  <message>
   <source>guide</source>
   <translation>Leitfaden</translation>
  </message>
  <message>
   <source>half lap</source>
   <translation>Überblattung</translation>
  </message>
  <message>
   <source>half overlay</source>
   <translation>halb aufliegend</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>Kleiderstange</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 1 1/4 in pole</source>
   <translation>Stangenlager, geschlossen, für Holzstange 1 1/4 in</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 27 mm tube</source>
   <translation>Stangenlager, geschlossen, für Rohr 27 mm</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 30 mm tube</source>
   <translation>Stangenlager, geschlossen, für Rohr 30 mm</translation>
  </message>
  <message>
   <source>hanging rod socket for 1 1/4 in pole</source>
   <translation>Stangenlager für Holzstange 1 1/4 in</translation>
  </message>
  <message>
   <source>hanging rod support for 27 mm tube</source>
   <translation>Mittelträger für Rohr 27 mm</translation>
  </message>
  <message>
   <source>hanging rod support for 30 mm tube</source>
   <translation>Mittelträger für Rohr 30 mm</translation>
  </message>
  <message>
   <source>hanging rod, aluminium tube 30 x 1.5 mm, 2 m</source>
   <translation>Kleiderstange, Aluminiumrohr 30 x 1.5 mm, 2 m</translation>
  </message>
  <message>
   <source>hanging rod, oak pole 1 1/4 in, 8 ft</source>
   <translation>Kleiderstange, Eiche 1 1/4 in, 8 ft</translation>
  </message>
  <message>
   <source>hanging rod, pine pole 1 1/4 in, 8 ft</source>
   <translation>Kleiderstange, Kiefer 1 1/4 in, 8 ft</translation>
  </message>
  <message>
   <source>hanging rod, steel tube 27 x 1.2 mm, 2.5 m</source>
   <translation>Kleiderstange, Stahlrohr 27 x 1.2 mm, 2.5 m</translation>
  </message>
  <message>
   <source>hardboard</source>
   <translation>Hartfaserplatte</translation>
  </message>
  <message>
   <source>hardboard 3.2 mm</source>
   <translation>Hartfaserplatte 3.2 mm</translation>
  </message>
  <message>
   <source>hardboard 6 mm</source>
   <translation>Hartfaserplatte 6 mm</translation>
  </message>
  <message>
   <source>has sizes that I give</source>
   <translation>hat Maße, die ich angebe</translation>
  </message>
  <message>
   <source>height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>height of the opening</source>
   <translation>Höhe der Öffnung</translation>
  </message>
  <message>
   <source>height over the opening</source>
   <translation>Höhe über der Öffnung</translation>
  </message>
  <message>
   <source>heights</source>
   <translation>Höhen</translation>
  </message>
  <message>
   <source>help</source>
   <translation>Hilfe</translation>
  </message>
  <message>
   <source>hinged at the left</source>
   <translation>links angeschlagen</translation>
  </message>
  <message>
   <source>hinged at the right</source>
   <translation>rechts angeschlagen</translation>
  </message>
  <message>
   <source>hollow block</source>
   <translation>Hohlblockstein</translation>
  </message>
  <message>
   <source>home</source>
   <translation>zu Hause</translation>
  </message>
  <message>
   <source>icons</source>
   <translation>Symbole</translation>
  </message>
  <message>
   <source>in</source>
   <translation>in</translation>
  </message>
  <message>
   <source>in a groove all round</source>
   <translation>in umlaufender Nut</translation>
  </message>
  <message>
   <source>in grooves</source>
   <translation>in Nuten</translation>
  </message>
  <message>
   <source>in steps of</source>
   <translation>in Schritten von</translation>
  </message>
  <message>
   <source>in-frac</source>
   <translation>in-frac</translation>
  </message>
  <message>
   <source>index</source>
   <translation>index</translation>
  </message>
  <message>
   <source>inset</source>
   <translation>einliegend</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>Verbindung</translation>
  </message>
  <message>
   <source>just inside the front</source>
   <translation>knapp hinter der Vorderseite</translation>
  </message>
  <message>
   <source>kept for</source>
   <translation>aufgehoben für</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <source>layout</source>
   <translation>Zuschnittplan</translation>
  </message>
  <message>
   <source>lean</source>
   <translation>Neigung</translation>
  </message>
  <message>
   <source>left</source>
   <translation>links</translation>
  </message>
  <message>
   <source>left by</source>
   <translation>übrig von</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>length from</source>
   <translation>Länge von</translation>
  </message>
  <message>
   <source>let in under the back</source>
   <translation>unter der Rückwand eingelassen</translation>
  </message>
  <message>
   <source>levelling shim, tapered</source>
   <translation>Unterlegkeil</translation>
  </message>
  <message>
   <source>lid</source>
   <translation>Deckel</translation>
  </message>
  <message>
   <source>lid support that holds at any height, no adjustment</source>
   <translation>Deckelstütze, die in jeder Höhe hält, ohne Einstellung</translation>
  </message>
  <message>
   <source>light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>light-clearance</source>
   <translation>light-clearance</translation>
  </message>
  <message>
   <source>limit {}</source>
   <translation>Grenze {}</translation>
  </message>
  <message>
   <source>linen</source>
   <translation>Wäsche</translation>
  </message>
  <message>
   <source>long</source>
   <translation>lang</translation>
  </message>
  <message>
   <source>look</source>
   <translation>ansehen</translation>
  </message>
  <message>
   <source>lower</source>
   <translation>untere</translation>
  </message>
  <message>
   <source>material</source>
   <translation>Material</translation>
  </message>
  <message>
   <source>melamine iron-on band 0.4 mm</source>
   <translation>Melamin-Bügelkante 0.4 mm</translation>
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation>melaminbeschichtete Spanplatte</translation>
  </message>
  <message>
   <source>metres, to 1 mm</source>
   <translation>Meter, auf 1 mm</translation>
  </message>
  <message>
   <source>millimetres, to 0.1 mm</source>
   <translation>Millimeter, auf 0.1 mm</translation>
  </message>
  <message>
   <source>millimetres, to 1 mm</source>
   <translation>Millimeter, auf 1 mm</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <source>most</source>
   <translation>höchstens</translation>
  </message>
  <message>
   <source>moulding</source>
   <translation>Leiste</translation>
  </message>
  <message>
   <source>mullion</source>
   <translation>Mittelfries</translation>
  </message>
  <message>
   <source>must not be empty</source>
   <translation>darf nicht leer sein</translation>
  </message>
  <message>
   <source>nail</source>
   <translation>Nagel</translation>
  </message>
  <message>
   <source>nails</source>
   <translation>Nägel</translation>
  </message>
  <message>
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>next</source>
   <translation>nächste</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no carcass</source>
   <translation>kein Korpus</translation>
  </message>
  <message>
   <source>no choice costs less</source>
   <translation>keine Wahl kostet weniger</translation>
  </message>
  <message>
   <source>no choice takes less length; prices are lacking</source>
   <translation>keine Wahl braucht weniger Länge; Preise fehlen</translation>
  </message>
  <message>
   <source>no closet</source>
   <translation>kein Einbauschrank</translation>
  </message>
  <message>
   <source>no document</source>
   <translation>kein Dokument</translation>
  </message>
  <message>
   <source>no light</source>
   <translation>kein Licht</translation>
  </message>
  <message>
   <source>no limit</source>
   <translation>keine Grenze</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>mit keinem Plan ist weniger zu kaufen</translation>
  </message>
  <message>
   <source>no plan needs fewer</source>
   <translation>kein Plan braucht weniger</translation>
  </message>
  <message>
   <source>nobody named</source>
   <translation>niemand genannt</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>noch keine</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>nicht geprüft</translation>
  </message>
  <message>
   <source>not checked by others</source>
   <translation>nicht durch andere geprüft</translation>
  </message>
  <message>
   <source>not checked: {}</source>
   <translation>nicht geprüft: {}</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <source>not measured</source>
   <translation>nicht gemessen</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>nicht geplant</translation>
  </message>
  <message>
   <source>not proved: at least {}</source>
   <translation>nicht bewiesen: mindestens {}</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>not taken</source>
   <translation>nicht gemessen</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>nicht geschrieben</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>notes</source>
   <translation>Hinweise</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>nothing found</source>
   <translation>nichts gefunden</translation>
  </message>
  <message>
   <source>nothing to cut</source>
   <translation>nichts zu schneiden</translation>
  </message>
  <message>
   <source>oak pole</source>
   <translation>Eichen-Rundstab</translation>
  </message>
  <message>
   <source>oak pole 1 1/4 in</source>
   <translation>Eichen-Rundstab 1 1/4 in</translation>
  </message>
  <message>
   <source>obstacle {}</source>
   <translation>Hindernis {}</translation>
  </message>
  <message>
   <source>obstacles</source>
   <translation>Hindernisse</translation>
  </message>
  <message>
   <source>of the thickness</source>
   <translation>der Dicke</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>Reststück</translation>
  </message>
  <message>
   <source>offcuts</source>
   <translation>Reststücke</translation>
  </message>
  <message>
   <source>old-paint</source>
   <translation>old-paint</translation>
  </message>
  <message>
   <source>on cleats</source>
   <translation>auf Tragleisten</translation>
  </message>
  <message>
   <source>on pins</source>
   <translation>auf Bodenträgern</translation>
  </message>
  <message>
   <source>on top of its supports</source>
   <translation>auf seinen Stützen</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation>offene oder teilweise geschlossene Lampe, oder Pendelleuchte</translation>
  </message>
  <message>
   <source>others</source>
   <translation>andere</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>veraltet</translation>
  </message>
  <message>
   <source>over the lintel: {}, {} l</source>
   <translation>über dem Sturz: {}, {} l</translation>
  </message>
  <message>
   <source>over the sides</source>
   <translation>über den Seiten</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>Boden über den Korpussen</translation>
  </message>
  <message>
   <source>overhang</source>
   <translation>Überstand</translation>
  </message>
  <message>
   <source>overlap</source>
   <translation>Überdeckung</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>panel nail 1.6 x 25 mm</source>
   <translation>Rückwandnagel 1.6 x 25 mm</translation>
  </message>
  <message>
   <source>panel {}</source>
   <translation>Platte {}</translation>
  </message>
  <message>
   <source>panels</source>
   <translation>Platten</translation>
  </message>
  <message>
   <source>papers</source>
   <translation>Papiere</translation>
  </message>
  <message>
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>parts/, {} drawings</source>
   <translation>parts/, {} Zeichnungen</translation>
  </message>
  <message>
   <source>past the side</source>
   <translation>über die Seite hinaus</translation>
  </message>
  <message>
   <source>pictures</source>
   <translation>Bilder</translation>
  </message>
  <message>
   <source>pine board 1x4</source>
   <translation>Kiefernbrett 1x4</translation>
  </message>
  <message>
   <source>pine board 1x6</source>
   <translation>Kiefernbrett 1x6</translation>
  </message>
  <message>
   <source>pine pole</source>
   <translation>Kiefern-Rundstab</translation>
  </message>
  <message>
   <source>pine pole 1 1/4 in</source>
   <translation>Kiefern-Rundstab 1 1/4 in</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>planned</source>
   <translation>geplant</translation>
  </message>
  <message>
   <source>plaster on lath</source>
   <translation>Putz auf Latten</translation>
  </message>
  <message>
   <source>plastic band 0.5 mm</source>
   <translation>Kunststoffkante 0.5 mm</translation>
  </message>
  <message>
   <source>plastic band 1 mm</source>
   <translation>Kunststoffkante 1 mm</translation>
  </message>
  <message>
   <source>plastic band 2 mm</source>
   <translation>Kunststoffkante 2 mm</translation>
  </message>
  <message>
   <source>pocket screw 4 x 32 mm, coarse thread, washer head</source>
   <translation>Taschenschraube 4 x 32 mm, Grobgewinde, Bundkopf</translation>
  </message>
  <message>
   <source>pocket screws</source>
   <translation>Taschenschrauben</translation>
  </message>
  <message>
   <source>porch (inches)</source>
   <translation>Windfang (Zoll)</translation>
  </message>
  <message>
   <source>proved</source>
   <translation>bewiesen</translation>
  </message>
  <message>
   <source>pull or knob with its screws</source>
   <translation>Griff oder Knopf mit Schrauben</translation>
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation>ein Aufmaß in die Gruppe des Einbauschranks setzen</translation>
  </message>
  <message>
   <source>quarter round</source>
   <translation>Viertelstab</translation>
  </message>
  <message>
   <source>quarter round 12 mm, pine</source>
   <translation>Viertelstab 12 mm, Kiefer</translation>
  </message>
  <message>
   <source>quarter round 19 mm, pine</source>
   <translation>Viertelstab 19 mm, Kiefer</translation>
  </message>
  <message>
   <source>rabbet</source>
   <translation>Falz</translation>
  </message>
  <message>
   <source>rail</source>
   <translation>Querfries</translation>
  </message>
  <message>
   <source>readings that do not agree</source>
   <translation>Messwerte, die nicht übereinstimmen</translation>
  </message>
  <message>
   <source>rear</source>
   <translation>hinten</translation>
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation>eingelassene, geschlossene Lampe oder LED</translation>
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation>eingelassene Leuchtstofflampe</translation>
  </message>
  <message>
   <source>resources</source>
   <translation>Ressourcen</translation>
  </message>
  <message>
   <source>return beside the opening</source>
   <translation>Wandstück neben der Öffnung</translation>
  </message>
  <message>
   <source>right</source>
   <translation>rechts</translation>
  </message>
  <message>
   <source>rip</source>
   <translation>Längsschnitt</translation>
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation>Längs- und Querschnitte</translation>
  </message>
  <message>
   <source>rips only</source>
   <translation>nur Längsschnitte</translation>
  </message>
  <message>
   <source>rise</source>
   <translation>Anstieg</translation>
  </message>
  <message>
   <source>rods</source>
   <translation>Stangen</translation>
  </message>
  <message>
   <source>room</source>
   <translation>Raum</translation>
  </message>
  <message>
   <source>rules</source>
   <translation>Regeln</translation>
  </message>
  <message>
   <source>screw</source>
   <translation>Schraube</translation>
  </message>
  <message>
   <source>screw cover cap, self-adhesive, 12 mm</source>
   <translation>Schraubenabdeckung, selbstklebend, 12 mm</translation>
  </message>
  <message>
   <source>screws</source>
   <translation>Schrauben</translation>
  </message>
  <message>
   <source>scribe</source>
   <translation>Anpasszugabe</translation>
  </message>
  <message>
   <source>scribe moulding 20 x 6 mm, pine</source>
   <translation>Anpassleiste 20 x 6 mm, Kiefer</translation>
  </message>
  <message>
   <source>scribe moulding 32 x 6 mm, pine</source>
   <translation>Anpassleiste 32 x 6 mm, Kiefer</translation>
  </message>
  <message>
   <source>scribe moulding 45 x 8 mm, pine</source>
   <translation>Anpassleiste 45 x 8 mm, Kiefer</translation>
  </message>
  <message>
   <source>seconds</source>
   <translation>Sekunden</translation>
  </message>
  <message>
   <source>seeing</source>
   <translation>Ansehen</translation>
  </message>
  <message>
   <source>setback</source>
   <translation>Rücksprung</translation>
  </message>
  <message>
   <source>shared</source>
   <translation>gemeinsam</translation>
  </message>
  <message>
   <source>sheets</source>
   <translation>Platten</translation>
  </message>
  <message>
   <source>sheets/, {} drawings</source>
   <translation>sheets/, {} Zeichnungen</translation>
  </message>
  <message>
   <source>shelf pin 5 mm</source>
   <translation>Bodenträger 5 mm</translation>
  </message>
  <message>
   <source>shelf-use</source>
   <translation>shelf-use</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>Unterlage</translation>
  </message>
  <message>
   <source>shims</source>
   <translation>Unterlagen</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>Schuhboden</translation>
  </message>
  <message>
   <source>short</source>
   <translation>kurz</translation>
  </message>
  <message>
   <source>side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension</source>
   <translation>seitlicher Kugelauszug, Vollauszug</translation>
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension, inch lengths</source>
   <translation>seitlicher Kugelauszug, Vollauszug, Zoll-Längen</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 12 in</source>
   <translation>seitlicher Schubladen-Vollauszug, 12 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 14 in</source>
   <translation>seitlicher Schubladen-Vollauszug, 14 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 16 in</source>
   <translation>seitlicher Schubladen-Vollauszug, 16 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 18 in</source>
   <translation>seitlicher Schubladen-Vollauszug, 18 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 20 in</source>
   <translation>seitlicher Schubladen-Vollauszug, 20 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 22 in</source>
   <translation>seitlicher Schubladen-Vollauszug, 22 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 300 mm</source>
   <translation>seitlicher Schubladen-Vollauszug, 300 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 350 mm</source>
   <translation>seitlicher Schubladen-Vollauszug, 350 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 400 mm</source>
   <translation>seitlicher Schubladen-Vollauszug, 400 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 450 mm</source>
   <translation>seitlicher Schubladen-Vollauszug, 450 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 500 mm</source>
   <translation>seitlicher Schubladen-Vollauszug, 500 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 550 mm</source>
   <translation>seitlicher Schubladen-Vollauszug, 550 mm</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>frei aufliegend</translation>
  </message>
  <message>
   <source>sockets</source>
   <translation>Stangenlager</translation>
  </message>
  <message>
   <source>softwood stud 2x4 (38 x 89 mm)</source>
   <translation>Nadelholz-Kantholz 2x4 (38 x 89 mm)</translation>
  </message>
  <message>
   <source>solid lumber</source>
   <translation>Massivholz</translation>
  </message>
  <message>
   <source>spot</source>
   <translation>Stelle</translation>
  </message>
  <message>
   <source>stages</source>
   <translation>Stufen</translation>
  </message>
  <message>
   <source>start</source>
   <translation>Anfang</translation>
  </message>
  <message>
   <source>steel angle bracket 60 x 60 x 40 mm with its screws</source>
   <translation>Stahlwinkel 60 x 60 x 40 mm mit Schrauben</translation>
  </message>
  <message>
   <source>steel studs</source>
   <translation>Stahlständer</translation>
  </message>
  <message>
   <source>steel tube</source>
   <translation>Stahlrohr</translation>
  </message>
  <message>
   <source>steel tube 27 x 1.2 mm</source>
   <translation>Stahlrohr 27 x 1.2 mm</translation>
  </message>
  <message>
   <source>stiff</source>
   <translation>steif</translation>
  </message>
  <message>
   <source>stile</source>
   <translation>Längsfries</translation>
  </message>
  <message>
   <source>stop</source>
   <translation>Anschlag</translation>
  </message>
  <message>
   <source>store</source>
   <translation>Händler</translation>
  </message>
  <message>
   <source>strip</source>
   <translation>Leiste</translation>
  </message>
  <message>
   <source>studs-unknown</source>
   <translation>studs-unknown</translation>
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation>aufgesetzte, geschlossene Lampe oder LED</translation>
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation>aufgesetzte Leuchtstofflampe</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>Aufmaß</translation>
  </message>
  <message>
   <source>the material's own</source>
   <translation>die des Materials</translation>
  </message>
  <message>
   <source>the same board</source>
   <translation>dieselbe Platte</translation>
  </message>
  <message>
   <source>the whole closet</source>
   <translation>der ganze Schrank</translation>
  </message>
  <message>
   <source>there</source>
   <translation>dort</translation>
  </message>
  <message>
   <source>there is no sheet</source>
   <translation>dort ist keine Platte</translation>
  </message>
  <message>
   <source>tick one at least</source>
   <translation>mindestens eines ankreuzen</translation>
  </message>
  <message>
   <source>tidy</source>
   <translation>ordentlich</translation>
  </message>
  <message>
   <source>to</source>
   <translation>bis</translation>
  </message>
  <message>
   <source>to the wall</source>
   <translation>zur Wand</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>Sockelrücksprung</translation>
  </message>
  <message>
   <source>together</source>
   <translation>zusammen</translation>
  </message>
  <message>
   <source>tongue and groove</source>
   <translation>Nut und Feder</translation>
  </message>
  <message>
   <source>top</source>
   <translation>oben</translation>
  </message>
  <message>
   <source>translations</source>
   <translation>Übersetzungen</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation>zwei gleiche Lasten in den äußeren Viertelspunkten</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation>zwei gleiche Lasten in den äußeren Viertelspunkten, Durchbiegung an einer Last</translation>
  </message>
  <message>
   <source>two sliding panels</source>
   <translation>zwei Schiebeflügel</translation>
  </message>
  <message>
   <source>uniform</source>
   <translation>gleichmäßig</translation>
  </message>
  <message>
   <source>up</source>
   <translation>aufwärts</translation>
  </message>
  <message>
   <source>upper</source>
   <translation>obere</translation>
  </message>
  <message>
   <source>upright</source>
   <translation>hochkant</translation>
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation>Furniersperrholz</translation>
  </message>
  <message>
   <source>veneer-core plywood 1/2 in (15/32 category)</source>
   <translation>Furniersperrholz 1/2 in (Kategorie 15/32)</translation>
  </message>
  <message>
   <source>veneer-core plywood 1/4 in</source>
   <translation>Furniersperrholz 1/4 in</translation>
  </message>
  <message>
   <source>veneer-core plywood 12 mm</source>
   <translation>Furniersperrholz 12 mm</translation>
  </message>
  <message>
   <source>veneer-core plywood 18 mm</source>
   <translation>Furniersperrholz 18 mm</translation>
  </message>
  <message>
   <source>veneer-core plywood 3/4 in (23/32 category)</source>
   <translation>Furniersperrholz 3/4 in (Kategorie 23/32)</translation>
  </message>
  <message>
   <source>veneer-core plywood 6 mm</source>
   <translation>Furniersperrholz 6 mm</translation>
  </message>
  <message>
   <source>view</source>
   <translation>Ansicht</translation>
  </message>
  <message>
   <source>volume</source>
   <translation>Volumen</translation>
  </message>
  <message>
   <source>waiting</source>
   <translation>wartet</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>Wand</translation>
  </message>
  <message>
   <source>wall-not-computed</source>
   <translation>wall-not-computed</translation>
  </message>
  <message>
   <source>wall-unknown</source>
   <translation>wall-unknown</translation>
  </message>
  <message>
   <source>walls</source>
   <translation>Wände</translation>
  </message>
  <message>
   <source>warning</source>
   <translation>Warnung</translation>
  </message>
  <message>
   <source>warnings</source>
   <translation>Warnungen</translation>
  </message>
  <message>
   <source>washer 20 mm across, for screws to 6 mm</source>
   <translation>Unterlegscheibe 20 mm, für Schrauben bis 6 mm</translation>
  </message>
  <message>
   <source>what does not go in</source>
   <translation>was nicht hineingeht</translation>
  </message>
  <message>
   <source>what is not checked</source>
   <translation>was nicht geprüft ist</translation>
  </message>
  <message>
   <source>what is selected</source>
   <translation>was ausgewählt ist</translation>
  </message>
  <message>
   <source>what is shown</source>
   <translation>was gezeigt wird</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 16 mm</source>
   <translation>melaminbeschichtete Spanplatte, weiß, 16 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 18 mm</source>
   <translation>melaminbeschichtete Spanplatte, weiß, 18 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 19 mm</source>
   <translation>melaminbeschichtete Spanplatte, weiß, 19 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 3/4 in</source>
   <translation>melaminbeschichtete Spanplatte, weiß, 3/4 in</translation>
  </message>
  <message>
   <source>whole</source>
   <translation>ganz</translation>
  </message>
  <message>
   <source>width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>width first</source>
   <translation>zuerst die Breite</translation>
  </message>
  <message>
   <source>width from</source>
   <translation>Breite von</translation>
  </message>
  <message>
   <source>width of the opening</source>
   <translation>Breite der Öffnung</translation>
  </message>
  <message>
   <source>width that is left</source>
   <translation>übrige Breite</translation>
  </message>
  <message>
   <source>wood screw 5 x 70 mm</source>
   <translation>Holzschraube 5 x 70 mm</translation>
  </message>
  <message>
   <source>wood screw 5 x 90 mm</source>
   <translation>Holzschraube 5 x 90 mm</translation>
  </message>
  <message>
   <source>wood screw 6 x 100 mm</source>
   <translation>Holzschraube 6 x 100 mm</translation>
  </message>
  <message>
   <source>wood screw No. 10 x 3 in</source>
   <translation>Holzschraube Nr. 10 x 3 in</translation>
  </message>
  <message>
   <source>wood screw No. 8 x 1 1/4 in</source>
   <translation>Holzschraube Nr. 8 x 1 1/4 in</translation>
  </message>
  <message>
   <source>wood screw No. 8 x 2 in</source>
   <translation>Holzschraube Nr. 8 x 2 in</translation>
  </message>
  <message>
   <source>wood studs</source>
   <translation>Holzständer</translation>
  </message>
  <message>
   <source>wood veneer iron-on band 0.6 mm</source>
   <translation>Echtholz-Bügelkante 0.6 mm</translation>
  </message>
  <message>
   <source>wooden runner, box on wood</source>
   <translation>Holzlaufleiste, Kasten auf Holz</translation>
  </message>
  <message>
   <source>write no file</source>
   <translation>keine Datei schreiben</translation>
  </message>
  <message>
   <source>written</source>
   <translation>geschrieben</translation>
  </message>
  <message>
   <source>wrong</source>
   <translation>falsch</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>{} % of it is controlled by other readings; w = {}</source>
   <translation>{} % davon sind durch andere Messwerte geprüft; w = {}</translation>
  </message>
  <message>
   <source>{} behind what is met first</source>
   <translation>{} hinter dem, was zuerst getroffen wird</translation>
  </message>
  <message>
   <source>{} components, {} parts, {:.1f} kg</source>
   <translation>{} Bauteile, {} Teile, {:.1f} kg</translation>
  </message>
  <message>
   <source>{} dangers</source>
   <translation>{} Gefahren</translation>
  </message>
  <message>
   <source>{} does not go in: {}.</source>
   <translation>{} geht nicht hinein: {}.</translation>
  </message>
  <message>
   <source>{} drawings written to {}</source>
   <translation>{} Zeichnungen geschrieben nach {}</translation>
  </message>
  <message>
   <source>{} goes in: {}.</source>
   <translation>{} geht hinein: {}.</translation>
  </message>
  <message>
   <source>{} is cut</source>
   <translation>{} ist geschnitten</translation>
  </message>
  <message>
   <source>{} names are left out: their parts are hidden from here, or there is no room. Turn or zoom the view, or pull the parts apart.</source>
   <translation>{} Namen fehlen: ihre Teile sind von hier verdeckt, oder es ist kein Platz. Die Ansicht drehen oder zoomen oder die Teile auseinanderziehen.</translation>
  </message>
  <message>
   <source>{} not checked</source>
   <translation>{} nicht geprüft</translation>
  </message>
  <message>
   <source>{} notes</source>
   <translation>{} Hinweise</translation>
  </message>
  <message>
   <source>{} of {}</source>
   <translation>{} von {}</translation>
  </message>
  <message>
   <source>{} of {} cannot open all the way.</source>
   <translation>{} von {} können nicht ganz öffnen.</translation>
  </message>
  <message>
   <source>{} of {}: {}
{} x {}, yield {:.0%}</source>
   <translation>{} von {}: {}
{} x {}, Ausbeute {:.0%}</translation>
  </message>
  <message>
   <source>{} parts, {:.1f} kg</source>
   <translation>{} Teile, {:.1f} kg</translation>
  </message>
  <message>
   <source>{} pictures written to {}</source>
   <translation>{} Bilder geschrieben nach {}</translation>
  </message>
  <message>
   <source>{} solids, each with its name, where it stands; millimetres.</source>
   <translation>{} Volumenkörper, jeder mit Namen, wo er steht; Millimeter.</translation>
  </message>
  <message>
   <source>{} warnings</source>
   <translation>{} Warnungen</translation>
  </message>
  <message>
   <source>{} {} deep</source>
   <translation>{} {} tief</translation>
  </message>
  <message>
   <source>{}, by length: {} ({})</source>
   <translation>{}, nach Länge: {} ({})</translation>
  </message>
  <message>
   <source>{}: 1 sheet, yield {:.0%} ({})</source>
   <translation>{}: 1 Platte, Ausbeute {:.0%} ({})</translation>
  </message>
  <message>
   <source>{}: measured from the corner with the dot.</source>
   <translation>{}: gemessen von der Ecke mit dem Punkt.</translation>
  </message>
  <message>
   <source>{}: measured from the end with the dot.</source>
   <translation>{}: gemessen vom Ende mit dem Punkt.</translation>
  </message>
  <message>
   <source>{}: {count} sheets, yield {:.0%} ({})</source>
   <translation>{}: {count} Platten, Ausbeute {:.0%} ({})</translation>
  </message>
  <message>
   <source>{}: {} and {}</source>
   <translation>{}: {} und {}</translation>
  </message>
  <message>
   <source>{}: {} expected</source>
   <translation>{}: {} erwartet</translation>
  </message>
  <message>
   <source>{}: {} sheets so far, at least {} needed</source>
   <translation>{}: {} Platten bisher, mindestens {} nötig</translation>
  </message>
  <message>
   <source>{}: {} x {}, at {} and {}</source>
   <translation>{}: {} x {}, bei {} und {}</translation>
  </message>
  <message>
   <source>–</source>
   <translation>–</translation>
  </message>
  <message>
   <source>✓</source>
   <translation>✓</translation>
  </message>
  <message>
   <source>✓ yes</source>
   <translation>✓ ja</translation>
  </message>
  <message>
   <source>✗ no</source>
   <translation>✗ nein</translation>
  </message>
  <message>
   <source>✗ {}</source>
   <translation>✗ {}</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bay</name>
  <message>
   <source>Add a bay</source>
   <translation>Feld hinzufügen</translation>
  </message>
  <message>
   <source>Divide the selected carcass once more: a bay beside the selected one, or at the right</source>
   <translation>Den gewählten Korpus noch einmal teilen: ein Feld neben dem gewählten oder rechts</translation>
  </message>
  <message>
   <source>Select the carcass, or the bay beside which to divide it.</source>
   <translation>Den Korpus wählen, oder das Feld, neben dem er zu teilen ist.</translation>
  </message>
  <message>
   <source>There is no carcass in this document: add one first.</source>
   <translation>In diesem Dokument ist kein Korpus: zuerst einen hinzufügen.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bench</name>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation>Eine Bank in einem Feld eines Korpus oder frei im Schrank</translation>
  </message>
  <message>
   <source>Bench…</source>
   <translation>Bank…</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Blende</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Bankplatte</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bill</name>
  <message>
   <source>Bill of materials…</source>
   <translation>Stückliste…</translation>
  </message>
  <message>
   <source>Show and write the cut list, what to buy, the groove set-ups and the findings</source>
   <translation>Schnittliste, Einkauf, Nuteinstellungen und Befunde zeigen und schreiben</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_BillSheet</name>
  <message>
   <source>Bill as a spreadsheet</source>
   <translation>Stückliste als Tabelle</translation>
  </message>
  <message>
   <source>Keep the bill in the document as a spreadsheet that follows every change; formulas can use its cells</source>
   <translation>Die Stückliste im Dokument als Tabelle halten, die jeder Änderung folgt; Formeln können ihre Zellen verwenden</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_BoxRoom</name>
  <message>
   <source>Example: the box room at number nine</source>
   <translation>Beispiel: die Abstellkammer in Nummer neun</translation>
  </message>
  <message>
   <source>Open an example in millimetres; its readings and sizes are invented</source>
   <translation>Ein Beispiel in Millimetern öffnen; Messwerte und Maße sind erfunden</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Carcass</name>
  <message>
   <source>Add a carcass with its sides, dividers, shelves, back and base to the closet</source>
   <translation>Dem Schrank einen Korpus mit Seiten, Mittelseiten, Böden, Rückwand und Sockel hinzufügen</translation>
  </message>
  <message>
   <source>Carcass…</source>
   <translation>Korpus…</translation>
  </message>
  <message>
   <source>Select the closet that the carcass is for.</source>
   <translation>Den Einbauschrank wählen, für den der Korpus ist.</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>In diesem Dokument ist kein Einbauschrank: zuerst einen anlegen.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Checks</name>
  <message>
   <source>Checks…</source>
   <translation>Prüfungen…</translation>
  </message>
  <message>
   <source>See what is dangerous, doubtful or not checked in a closet, and what to do about it</source>
   <translation>Sehen, was in einem Einbauschrank gefährlich, zweifelhaft oder nicht geprüft ist, und was dagegen zu tun ist</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Contents</name>
  <message>
   <source>Contents</source>
   <translation>Inhalt</translation>
  </message>
  <message>
   <source>Put drawers, doors, rods and the like into a closet</source>
   <translation>Schubladen, Türen, Stangen und Ähnliches in einen Einbauschrank setzen</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_CornerShelves</name>
  <message>
   <source>Corner shelves…</source>
   <translation>Eckböden…</translation>
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation>Böden aus einem Stück in einer hinteren Ecke</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Doors</name>
  <message>
   <source>A door, or a pair, in front of one compartment</source>
   <translation>Eine Tür oder ein Paar vor einem Fach</translation>
  </message>
  <message>
   <source>Doors…</source>
   <translation>Türen…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Drawers</name>
  <message>
   <source>A bank of drawers in one compartment, with slides and fronts</source>
   <translation>Ein Satz Schubladen in einem Fach, mit Auszügen und Fronten</translation>
  </message>
  <message>
   <source>Drawers…</source>
   <translation>Schubladen…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Drawing</name>
  <message>
   <source>Drawing page…</source>
   <translation>Zeichnungsblatt…</translation>
  </message>
  <message>
   <source>Make a page to print with the front, the plan and sections of the closet and their sizes</source>
   <translation>Eine Druckseite mit Vorderansicht, Grundriss und Schnitten des Einbauschranks samt Maßen erstellen</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Duplicate</name>
  <message>
   <source>Copy the selected component into the next free place; a carcass comes with what is in it</source>
   <translation>Das gewählte Bauteil an den nächsten freien Platz kopieren; ein Korpus kommt mit dem, was darin ist</translation>
  </message>
  <message>
   <source>Duplicate</source>
   <translation>Duplizieren</translation>
  </message>
  <message>
   <source>Select the carcass, component or panel to copy, or a part of it.</source>
   <translation>Den Korpus, das Bauteil oder die Platte zum Kopieren wählen, oder ein Teil davon.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Dxf</name>
  <message>
   <source>Export DXF…</source>
   <translation>DXF exportieren…</translation>
  </message>
  <message>
   <source>Write drawings of the cut layout, of each sheet or of each part</source>
   <translation>Zeichnungen des Zuschnittplans, jeder Platte oder jedes Teils schreiben</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Examples</name>
  <message>
   <source>Examples</source>
   <translation>Beispiele</translation>
  </message>
  <message>
   <source>Open an example closet in a document of its own</source>
   <translation>Einen Beispielschrank in einem eigenen Dokument öffnen</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Existing</name>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation>Eine wiederverwendete Kommode oder ein Schrank, unverändert eingebaut</translation>
  </message>
  <message>
   <source>Existing piece…</source>
   <translation>Vorhandenes Möbel…</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Deckplatte</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_FaceFrame</name>
  <message>
   <source>Face frame…</source>
   <translation>Vorsatzrahmen…</translation>
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation>Längs- und Querfriese vor einem Korpus</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Fillers</name>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation>Passleisten, Anpassungen und Leisten, die die Spalte zu Wänden, Decke und Boden schließen</translation>
  </message>
  <message>
   <source>Fillers…</source>
   <translation>Passleisten…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_GoesIn</name>
  <message>
   <source>Does it go in…</source>
   <translation>Geht es hinein…</translation>
  </message>
  <message>
   <source>See whether the selected pieces, or all, come in through the opening, and play how</source>
   <translation>Sehen, ob die gewählten Stücke, oder alle, durch die Öffnung hineingehen, und abspielen, wie</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Guide</name>
  <message>
   <source>Show or close the list that says what is done, what is next and what is wrong</source>
   <translation>Das Fenster zeigen oder schließen, das sagt, was getan, was als Nächstes dran und was falsch ist</translation>
  </message>
  <message>
   <source>Steps of the work</source>
   <translation>Arbeitsschritte</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Help</name>
  <message>
   <source>Back</source>
   <translation>Zurück</translation>
  </message>
  <message>
   <source>Closet help</source>
   <translation>Hilfe zum Einbauschrank</translation>
  </message>
  <message>
   <source>Read what each command is for, what to enter and what comes out</source>
   <translation>Nachlesen, wozu jeder Befehl dient, was einzugeben ist und was herauskommt</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Language</name>
  <message>
   <source>en</source>
   <translation>de</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Layout</name>
  <message>
   <source>Lay out the sheets…</source>
   <translation>Platten einteilen…</translation>
  </message>
  <message>
   <source>Plan which sheets to buy and how to rip and crosscut them into the closet's parts</source>
   <translation>Planen, welche Platten zu kaufen sind und wie sie in Längs- und Querschnitten zu den Teilen des Schranks werden</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Look</name>
  <message>
   <source>Look inside…</source>
   <translation>Hineinsehen…</translation>
  </message>
  <message>
   <source>Pull the closet apart in the view, play its assembly, cut it open, hide kinds of parts or show their names</source>
   <translation>Den Schrank in der Ansicht auseinanderziehen, den Zusammenbau abspielen, aufschneiden, Arten von Teilen ausblenden oder ihre Namen zeigen</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Offcuts</name>
  <message>
   <source>List the offcuts that are at hand, to be used before anything is bought</source>
   <translation>Die vorhandenen Reststücke aufführen, die vor jedem Kauf verwendet werden</translation>
  </message>
  <message>
   <source>Offcuts at hand…</source>
   <translation>Vorhandene Reststücke…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Opens</name>
  <message>
   <source>Show the space that drawers, pull-outs, doors and lids open into, and what they hit</source>
   <translation>Den Raum zeigen, in den Schubladen, Auszüge, Türen und Deckel sich öffnen, und woran sie stoßen</translation>
  </message>
  <message>
   <source>What opens…</source>
   <translation>Was sich öffnet…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_OverShelf</name>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation>Ein Boden über den Korpussen, von Wand zu Wand</translation>
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation>Boden über den Korpussen…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Panel</name>
  <message>
   <source>Add a single panel with grooves, rabbets and edge bands</source>
   <translation>Ein einzelnes Plattenteil mit Nuten, Falzen und Kanten hinzufügen</translation>
  </message>
  <message>
   <source>Grooved panel…</source>
   <translation>Genutete Platte…</translation>
  </message>
  <message>
   <source>Select the closet that the panel is for.</source>
   <translation>Den Einbauschrank wählen, für den die Platte ist.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Papers</name>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <source>1 DANGER: read this before anything is cut, carried or filled; {0}</source>
   <translation>1 GEFAHR: dies lesen, bevor etwas geschnitten, getragen oder befüllt wird; {0}</translation>
  </message>
  <message>
   <source>1 sheet</source>
   <translation>1 Platte</translation>
  </message>
  <message>
   <source>A reading at a return or behind a baseboard is taken above it. Doubtful readings are found when all of them are entered; a reading taken twice by two people is found sooner.</source>
   <translation>Ein Messwert an einem Wandstück oder hinter einer Sockelleiste wird darüber genommen. Zweifelhafte Messwerte zeigen sich, wenn alle eingegeben sind; zweimal von zwei Personen gemessen, zeigen sie sich eher.</translation>
  </message>
  <message>
   <source>Anchor to the structure; local codes and a licensed professional come first.</source>
   <translation>Am Tragwerk verankern; örtliche Vorschriften und eine zugelassene Fachkraft gehen vor.</translation>
  </message>
  <message>
   <source>Cut by length</source>
   <translation>Auf Länge geschnitten</translation>
  </message>
  <message>
   <source>Cut from bars</source>
   <translation>Aus Stäben geschnitten</translation>
  </message>
  <message>
   <source>DANGER</source>
   <translation>GEFAHR</translation>
  </message>
  <message>
   <source>DANGER: {0}</source>
   <translation>GEFAHR: {0}</translation>
  </message>
  <message>
   <source>Each cut: its number, as on the picture of the sheet; the piece that is sawn; the fence, which is what stays between fence (or straightedge) and blade; what lies at the fence after the cut, and what is left.</source>
   <translation>Jeder Schnitt: seine Nummer wie auf dem Bild der Platte; das Stück, das gesägt wird; das Anschlagmaß, also was zwischen Anschlag (oder Führungsschiene) und Sägeblatt bleibt; was nach dem Schnitt am Anschlag liegt, und was übrig bleibt.</translation>
  </message>
  <message>
   <source>Fasten the work, wear eye and ear protection, feed against the bit's turn and take deep grooves in several steps of depth; the machine's own manual goes before this list.</source>
   <translation>Das Werkstück festspannen, Augen- und Gehörschutz tragen, gegen die Drehrichtung des Fräsers vorschieben und tiefe Nuten in mehreren Tiefenschritten fräsen; die Anleitung der Maschine geht dieser Liste vor.</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>First {0}: {1}.</source>
   <translation>Zuerst {0}: {1}.</translation>
  </message>
  <message>
   <source>Groove set-ups</source>
   <translation>Einstellungen zum Nuten</translation>
  </message>
  <message>
   <source>Materials</source>
   <translation>Materialien</translation>
  </message>
  <message>
   <source>Measure on site before anything is cut; exact sizes are in the bill.</source>
   <translation>Vor dem Zuschnitt vor Ort messen; genaue Maße stehen in der Stückliste.</translation>
  </message>
  <message>
   <source>NOTE: {0}</source>
   <translation>HINWEIS: {0}</translation>
  </message>
  <message>
   <source>One piece after the other from the same end; mark each one after the cut before it, then the kerf needs no arithmetic.</source>
   <translation>Ein Stück nach dem anderen vom selben Ende her; jedes erst nach dem Schnitt davor anreißen, dann braucht die Schnittfuge keine Rechnung.</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>Purchases</source>
   <translation>Einkauf</translation>
  </message>
  <message>
   <source>Reused</source>
   <translation>Wiederverwendet</translation>
  </message>
  <message>
   <source>Saw to the cut size; the finished size has the edge bands on, and positions are measured from the finished rims. Columns in mm are exact, those without are rounded.</source>
   <translation>Auf das Zuschnittmaß sägen; das Fertigmaß gilt mit den Kanten, und Positionen werden von den fertigen Rändern gemessen. Spalten in mm sind genau, die ohne sind gerundet.</translation>
  </message>
  <message>
   <source>Support the sheet on both sides of the cut, clamp the straightedge, set the blade just through; eyes, ears and lungs protected; the saw's own manual goes before this list. Mark a part from the one it must meet wherever you can, and check the first cut before the others.</source>
   <translation>Die Platte beiderseits des Schnitts unterstützen, die Führungsschiene festspannen, das Blatt nur knapp durchschneiden lassen; Augen, Ohren und Lunge geschützt; die Anleitung der Säge geht dieser Liste vor. Ein Teil, wo immer möglich, am Gegenstück anreißen und den ersten Schnitt vor den anderen prüfen.</translation>
  </message>
  <message>
   <source>Survey: {0}</source>
   <translation>Aufmaß: {0}</translation>
  </message>
  <message>
   <source>Then take the readings in the order of their numbers; read each to the tape's nearest step, and write down what you read, not what you expect.</source>
   <translation>Dann die Messwerte in der Reihenfolge ihrer Nummern nehmen; jeden auf den nächsten Strich des Maßbands ablesen und aufschreiben, was man abliest, nicht, was man erwartet.</translation>
  </message>
  <message>
   <source>WARNING: {0}</source>
   <translation>WARNUNG: {0}</translation>
  </message>
  <message>
   <source>Ways to buy</source>
   <translation>Möglichkeiten zu kaufen</translation>
  </message>
  <message>
   <source>What must stay clear (pipe, socket, beam), from the front left corner: x to the right, y into the depth, z up  ·  [[survey.obstacle]]  ·  Obstacles</source>
   <translation>Was frei bleiben muss (Rohr, Steckdose, Balken), von der vorderen linken Ecke: x nach rechts, y in die Tiefe, z nach oben  ·  [[survey.obstacle]]  ·  Obstacles</translation>
  </message>
  <message>
   <source>a cheaper choice may exist</source>
   <translation>eine billigere Wahl ist möglich</translation>
  </message>
  <message>
   <source>a plan with less may be possible</source>
   <translation>ein Plan mit weniger ist möglich</translation>
  </message>
  <message>
   <source>access</source>
   <translation>Erreichbarkeit</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>verstellbarer Boden</translation>
  </message>
  <message>
   <source>allows for the mitre at its end: mark the long point, {0}, at the wall</source>
   <translation>mit Zugabe für die Gehrung am Ende: die lange Spitze, {0}, an der Wand anreißen</translation>
  </message>
  <message>
   <source>allows for the mitre at its start and end: mark the long point, {0}, at the wall</source>
   <translation>mit Zugabe für die Gehrungen an Anfang und Ende: die lange Spitze, {0}, an der Wand anreißen</translation>
  </message>
  <message>
   <source>allows for the mitre at its start: mark the long point, {0}, at the wall</source>
   <translation>mit Zugabe für die Gehrung am Anfang: die lange Spitze, {0}, an der Wand anreißen</translation>
  </message>
  <message>
   <source>along the end</source>
   <translation>am Ende entlang</translation>
  </message>
  <message>
   <source>along the front</source>
   <translation>an der Vorderkante entlang</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>in Längsrichtung</translation>
  </message>
  <message>
   <source>along the rear</source>
   <translation>an der Hinterkante entlang</translation>
  </message>
  <message>
   <source>along the start</source>
   <translation>am Anfang entlang</translation>
  </message>
  <message>
   <source>along the width</source>
   <translation>in Querrichtung</translation>
  </message>
  <message>
   <source>any way</source>
   <translation>beliebig</translation>
  </message>
  <message>
   <source>arrow: grain</source>
   <translation>Pfeil: Faserrichtung</translation>
  </message>
  <message>
   <source>as it is: greatest width, depth and height</source>
   <translation>wie es ist: größte Breite, Tiefe und Höhe</translation>
  </message>
  <message>
   <source>at hand: {0}</source>
   <translation>vorhanden: {0}</translation>
  </message>
  <message>
   <source>at home</source>
   <translation>zu Hause</translation>
  </message>
  <message>
   <source>at least {0} needed</source>
   <translation>mindestens {0} nötig</translation>
  </message>
  <message>
   <source>at the fence then</source>
   <translation>dann am Anschlag</translation>
  </message>
  <message>
   <source>at the store</source>
   <translation>beim Händler</translation>
  </message>
  <message>
   <source>back</source>
   <translation>Rückwand</translation>
  </message>
  <message>
   <source>band end</source>
   <translation>Kante Ende</translation>
  </message>
  <message>
   <source>band front</source>
   <translation>Kante vorn</translation>
  </message>
  <message>
   <source>band rear</source>
   <translation>Kante hinten</translation>
  </message>
  <message>
   <source>band start</source>
   <translation>Kante Anfang</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>Stab</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>Sockelrahmen</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>Bankblende</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>Bankgestell</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>Bankplatte</translation>
  </message>
  <message>
   <source>best found</source>
   <translation>bester gefundener</translation>
  </message>
  <message>
   <source>bit mm</source>
   <translation>Fräser mm</translation>
  </message>
  <message>
   <source>blue: at the store; red: at home; fence: what stays between fence or straightedge and blade</source>
   <translation>blau: beim Händler; rot: zu Hause; Anschlagmaß: was zwischen Anschlag oder Führungsschiene und Sägeblatt bleibt</translation>
  </message>
  <message>
   <source>board</source>
   <translation>Brett</translation>
  </message>
  <message>
   <source>bottom</source>
   <translation>Unterboden</translation>
  </message>
  <message>
   <source>bought m²</source>
   <translation>gekaufte m²</translation>
  </message>
  <message>
   <source>bring to size first: {0}</source>
   <translation>zuerst auf Maß bringen: {0}</translation>
  </message>
  <message>
   <source>by</source>
   <translation>von</translation>
  </message>
  <message>
   <source>by length</source>
   <translation>auf Länge</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>Katalog</translation>
  </message>
  <message>
   <source>children</source>
   <translation>Kinder</translation>
  </message>
  <message>
   <source>cleat</source>
   <translation>Tragleiste</translation>
  </message>
  <message>
   <source>component</source>
   <translation>Bauteil</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>Eckboden</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <source>cost each</source>
   <translation>Stückpreis</translation>
  </message>
  <message>
   <source>count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <source>crosscut</source>
   <translation>Querschnitt</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <source>cut it out first, the saw on the damaged side: {0}, from the corner that the defects are measured from; the sizes below are of the sound part</source>
   <translation>zuerst herausschneiden, die Säge auf der beschädigten Seite: {0}, von der Ecke, von der aus die Schäden gemessen sind; die Maße darunter gelten für den gesunden Teil</translation>
  </message>
  <message>
   <source>cut length</source>
   <translation>Zuschnittlänge</translation>
  </message>
  <message>
   <source>cut length mm</source>
   <translation>Zuschnittlänge mm</translation>
  </message>
  <message>
   <source>cut width</source>
   <translation>Zuschnittbreite</translation>
  </message>
  <message>
   <source>cut width mm</source>
   <translation>Zuschnittbreite mm</translation>
  </message>
  <message>
   <source>date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>depth mm</source>
   <translation>Tiefe mm</translation>
  </message>
  <message>
   <source>divider</source>
   <translation>Mittelseite</translation>
  </message>
  <message>
   <source>door</source>
   <translation>Tür</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>Dübel</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>Kastenhinterstück</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>Kastenboden</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>Kastenvorderstück</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>Kastenseite</translation>
  </message>
  <message>
   <source>drawn by</source>
   <translation>gezeichnet</translation>
  </message>
  <message>
   <source>edge band</source>
   <translation>Kantenband</translation>
  </message>
  <message>
   <source>edge to be banded</source>
   <translation>zu bekantender Rand</translation>
  </message>
  <message>
   <source>end aslant: {0}</source>
   <translation>Ende schräg: {0}</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>Einbauraum</translation>
  </message>
  <message>
   <source>every line has a price</source>
   <translation>jede Zeile hat einen Preis</translation>
  </message>
  <message>
   <source>every {0} across the width</source>
   <translation>alle {0} quer über die Breite</translation>
  </message>
  <message>
   <source>every {0} along the length</source>
   <translation>alle {0} in Längsrichtung</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>vorhandenes Möbel</translation>
  </message>
  <message>
   <source>feet and inches</source>
   <translation>Fuß und Zoll</translation>
  </message>
  <message>
   <source>fence</source>
   <translation>Anschlagmaß</translation>
  </message>
  <message>
   <source>filler</source>
   <translation>Passleiste</translation>
  </message>
  <message>
   <source>findings</source>
   <translation>Befunde</translation>
  </message>
  <message>
   <source>first {0} from the start and {1} from the front</source>
   <translation>erstes {0} vom Anfang und {1} von der Vorderkante</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>fester Boden</translation>
  </message>
  <message>
   <source>from</source>
   <translation>aus</translation>
  </message>
  <message>
   <source>from {0} on</source>
   <translation>ab {0}</translation>
  </message>
  <message>
   <source>front</source>
   <translation>Front</translation>
  </message>
  <message>
   <source>front aslant: {0}</source>
   <translation>Vorderkante schräg: {0}</translation>
  </message>
  <message>
   <source>front elevation</source>
   <translation>Vorderansicht</translation>
  </message>
  <message>
   <source>front elevation, plan and sections; sizes between boards are clear</source>
   <translation>Vorderansicht, Grundriss, Schnitte; Maße zwischen Platten sind licht</translation>
  </message>
  <message>
   <source>front elevation; heights between shelves and widths of bays are clear</source>
   <translation>Vorderansicht; Höhen zwischen Böden und Breiten der Felder sind lichte Maße</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>vordere Lippe</translation>
  </message>
  <message>
   <source>fronts and doors as one faces them; distances are from the left and the lower edge of the rectangle around each</source>
   <translation>Fronten und Türen von vorn gesehen; Abstände gelten vom linken und unteren Rand des umschließenden Rechtecks</translation>
  </message>
  <message>
   <source>gap back,</source>
   <translation>Spalt hinten,</translation>
  </message>
  <message>
   <source>gap floor,</source>
   <translation>Spalt am Boden,</translation>
  </message>
  <message>
   <source>gap left,</source>
   <translation>Spalt links,</translation>
  </message>
  <message>
   <source>gap right,</source>
   <translation>Spalt rechts,</translation>
  </message>
  <message>
   <source>gap top,</source>
   <translation>Spalt oben,</translation>
  </message>
  <message>
   <source>grain</source>
   <translation>Faserrichtung</translation>
  </message>
  <message>
   <source>groove</source>
   <translation>Nut</translation>
  </message>
  <message>
   <source>groove for {0}: {1}</source>
   <translation>Nut für {0}: {1}</translation>
  </message>
  <message>
   <source>groove in the underside</source>
   <translation>Nut in der Unterseite</translation>
  </message>
  <message>
   <source>grooves</source>
   <translation>Nuten</translation>
  </message>
  <message>
   <source>hand saw or mitre saw</source>
   <translation>Handsäge oder Gehrungssäge</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>Kleiderstange</translation>
  </message>
  <message>
   <source>hardware</source>
   <translation>Beschläge</translation>
  </message>
  <message>
   <source>heaviest</source>
   <translation>schwerstes Teil</translation>
  </message>
  <message>
   <source>hole</source>
   <translation>Bohrung</translation>
  </message>
  <message>
   <source>hole for {0}</source>
   <translation>Bohrung für {0}</translation>
  </message>
  <message>
   <source>in the middle of the thickness</source>
   <translation>in der Mitte der Dicke</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>Zoll</translation>
  </message>
  <message>
   <source>keep clear of what is damaged, {0}: all from the same end</source>
   <translation>Beschädigtes aussparen, {0}: alles vom selben Ende her</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <source>kerf {0}</source>
   <translation>Schnittfuge {0}</translation>
  </message>
  <message>
   <source>left</source>
   <translation>Rest</translation>
  </message>
  <message>
   <source>left edge in by {0} below, {1} above</source>
   <translation>linker Rand eingerückt: unten {0}, oben {1}</translation>
  </message>
  <message>
   <source>left larger on purpose, the other side smaller by that: {0}</source>
   <translation>mit Absicht größer gelassen, die andere Seite um so viel kleiner: {0}</translation>
  </message>
  <message>
   <source>left whole: {0}</source>
   <translation>bleibt ganz: {0}</translation>
  </message>
  <message>
   <source>left whole: {0}, and {1} smaller</source>
   <translation>bleibt ganz: {0}, und {1} kleinere</translation>
  </message>
  <message>
   <source>left: {0}</source>
   <translation>Rest: {0}</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>length mm</source>
   <translation>Länge mm</translation>
  </message>
  <message>
   <source>lengths</source>
   <translation>Längen</translation>
  </message>
  <message>
   <source>lid</source>
   <translation>Deckel</translation>
  </message>
  <message>
   <source>light</source>
   <translation>Leuchte</translation>
  </message>
  <message>
   <source>limit</source>
   <translation>Grenze</translation>
  </message>
  <message>
   <source>limit {0}</source>
   <translation>Grenze {0}</translation>
  </message>
  <message>
   <source>load</source>
   <translation>Transport</translation>
  </message>
  <message>
   <source>lower edge in by {0} left, {1} right</source>
   <translation>unterer Rand eingerückt: links {0}, rechts {1}</translation>
  </message>
  <message>
   <source>lower face</source>
   <translation>untere Fläche</translation>
  </message>
  <message>
   <source>lower face up</source>
   <translation>untere Fläche oben</translation>
  </message>
  <message>
   <source>machining</source>
   <translation>Bearbeitung</translation>
  </message>
  <message>
   <source>material</source>
   <translation>Material</translation>
  </message>
  <message>
   <source>measured {0}</source>
   <translation>gemessen {0}</translation>
  </message>
  <message>
   <source>message</source>
   <translation>Befund</translation>
  </message>
  <message>
   <source>moulding</source>
   <translation>Leiste</translation>
  </message>
  <message>
   <source>mullion</source>
   <translation>Mittelfries</translation>
  </message>
  <message>
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>near side of the bit from the near wall, mm</source>
   <translation>nahe Fräserseite von der nahen Wange, mm</translation>
  </message>
  <message>
   <source>no bit chosen</source>
   <translation>kein Fräser gewählt</translation>
  </message>
  <message>
   <source>no choice costs less</source>
   <translation>keine Wahl kostet weniger</translation>
  </message>
  <message>
   <source>no choice takes less length; prices are lacking</source>
   <translation>keine Wahl braucht weniger Länge; es fehlen Preise</translation>
  </message>
  <message>
   <source>no findings</source>
   <translation>keine Befunde</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>kein Plan kauft weniger</translation>
  </message>
  <message>
   <source>no.</source>
   <translation>Nr.</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>not planned yet: plan the cutting to know how many</source>
   <translation>noch nicht geplant: den Zuschnitt planen, um die Anzahl zu kennen</translation>
  </message>
  <message>
   <source>notch at the end and front corner</source>
   <translation>Ausklinkung an der Ecke Ende und Vorderkante</translation>
  </message>
  <message>
   <source>notch at the end and rear corner</source>
   <translation>Ausklinkung an der Ecke Ende und Hinterkante</translation>
  </message>
  <message>
   <source>notch at the start and front corner</source>
   <translation>Ausklinkung an der Ecke Anfang und Vorderkante</translation>
  </message>
  <message>
   <source>notch at the start and rear corner</source>
   <translation>Ausklinkung an der Ecke Anfang und Hinterkante</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Hinweis</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>Reststück</translation>
  </message>
  <message>
   <source>offcut {0}</source>
   <translation>Reststück {0}</translation>
  </message>
  <message>
   <source>offcuts used</source>
   <translation>verwendete Reststücke</translation>
  </message>
  <message>
   <source>others: {0} parts, see the bill</source>
   <translation>andere: {0} Teile, siehe Stückliste</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>Boden über den Korpussen</translation>
  </message>
  <message>
   <source>pack of {0}</source>
   <translation>Packung zu {0}</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>passes</source>
   <translation>Durchgänge</translation>
  </message>
  <message>
   <source>piece</source>
   <translation>Stück</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>Stücke</translation>
  </message>
  <message>
   <source>plan, from above, without what lies over {0}; widths of bays are clear</source>
   <translation>Grundriss, von oben, ohne was über {0} liegt; Breiten der Felder sind lichte Maße</translation>
  </message>
  <message>
   <source>plan, without what lies over {0}</source>
   <translation>Grundriss, ohne was über {0} liegt</translation>
  </message>
  <message>
   <source>pocket</source>
   <translation>Taschenbohrung</translation>
  </message>
  <message>
   <source>proved to be the cheapest of these sizes</source>
   <translation>nachweislich am billigsten mit diesen Maßen</translation>
  </message>
  <message>
   <source>pull</source>
   <translation>Griff</translation>
  </message>
  <message>
   <source>pulled apart, parts and fittings before the carcasses</source>
   <translation>auseinandergezogen, Teile und Einbauten vor den Korpussen</translation>
  </message>
  <message>
   <source>rabbet</source>
   <translation>Falz</translation>
  </message>
  <message>
   <source>rabbet for {0}: {1}</source>
   <translation>Falz für {0}: {1}</translation>
  </message>
  <message>
   <source>rail</source>
   <translation>Querfries</translation>
  </message>
  <message>
   <source>range</source>
   <translation>Streuung</translation>
  </message>
  <message>
   <source>rear aslant: {0}</source>
   <translation>Hinterkante schräg: {0}</translation>
  </message>
  <message>
   <source>rest mm</source>
   <translation>Rest mm</translation>
  </message>
  <message>
   <source>right edge in by {0} below, {1} above</source>
   <translation>rechter Rand eingerückt: unten {0}, oben {1}</translation>
  </message>
  <message>
   <source>right through</source>
   <translation>ganz durch</translation>
  </message>
  <message>
   <source>rip</source>
   <translation>Längsschnitt</translation>
  </message>
  <message>
   <source>rip to {0}</source>
   <translation>längs auf {0} sägen</translation>
  </message>
  <message>
   <source>ripped to {0}</source>
   <translation>längs auf {0} gesägt</translation>
  </message>
  <message>
   <source>rod</source>
   <translation>Kleiderstange</translation>
  </message>
  <message>
   <source>roll</source>
   <translation>Rolle</translation>
  </message>
  <message>
   <source>room</source>
   <translation>Raum</translation>
  </message>
  <message>
   <source>rough, off by up to {0}: measure the first strip before the next is cut</source>
   <translation>grob, bis zu {0} Abweichung: den ersten Streifen messen, bevor der nächste geschnitten wird</translation>
  </message>
  <message>
   <source>rule</source>
   <translation>Regel</translation>
  </message>
  <message>
   <source>saw</source>
   <translation>Säge</translation>
  </message>
  <message>
   <source>sawn {0} wider to be scribed</source>
   <translation>{0} breiter gesägt, zum Anpassen</translation>
  </message>
  <message>
   <source>scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <source>section {0}–{0}</source>
   <translation>Schnitt {0}–{0}</translation>
  </message>
  <message>
   <source>severity</source>
   <translation>Schwere</translation>
  </message>
  <message>
   <source>sheet</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>sheets</source>
   <translation>Platten</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>Unterlage</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>Schuhboden</translation>
  </message>
  <message>
   <source>side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>size</source>
   <translation>Größe</translation>
  </message>
  <message>
   <source>sizes</source>
   <translation>Größen</translation>
  </message>
  <message>
   <source>sizes in</source>
   <translation>Maße in</translation>
  </message>
  <message>
   <source>sound part of {0}, its corner at {1} and {2}</source>
   <translation>gesunder Teil von {0}, seine Ecke bei {1} und {2}</translation>
  </message>
  <message>
   <source>source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>source: {0}</source>
   <translation>Quelle: {0}</translation>
  </message>
  <message>
   <source>start aslant: {0}</source>
   <translation>Anfang schräg: {0}</translation>
  </message>
  <message>
   <source>stile</source>
   <translation>Längsfries</translation>
  </message>
  <message>
   <source>stopped {0} from the end and squared with a chisel</source>
   <translation>{0} vor dem Ende abgesetzt und mit dem Stechbeitel ausgestochen</translation>
  </message>
  <message>
   <source>stopped {0} from the front and squared with a chisel</source>
   <translation>{0} vor der Vorderkante abgesetzt und mit dem Stechbeitel ausgestochen</translation>
  </message>
  <message>
   <source>stopped {0} from the rear and squared with a chisel</source>
   <translation>{0} vor der Hinterkante abgesetzt und mit dem Stechbeitel ausgestochen</translation>
  </message>
  <message>
   <source>stopped {0} from the start and squared with a chisel</source>
   <translation>{0} nach dem Anfang abgesetzt und mit dem Stechbeitel ausgestochen</translation>
  </message>
  <message>
   <source>strip widths</source>
   <translation>Streifenbreiten</translation>
  </message>
  <message>
   <source>subject</source>
   <translation>Gegenstand</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>Aufmaß</translation>
  </message>
  <message>
   <source>take home</source>
   <translation>nach Hause nehmen</translation>
  </message>
  <message>
   <source>the bit is wider than the groove: take one of at most {0} mm</source>
   <translation>der Fräser ist breiter als die Nut: einen von höchstens {0} mm nehmen</translation>
  </message>
  <message>
   <source>the bit stands over the rim</source>
   <translation>der Fräser steht über den Rand</translation>
  </message>
  <message>
   <source>the carcasses alone</source>
   <translation>die Korpusse allein</translation>
  </message>
  <message>
   <source>the fewest possible</source>
   <translation>so wenige wie möglich</translation>
  </message>
  <message>
   <source>the piece clamped; none of the saws can hold or reach it</source>
   <translation>das Stück eingespannt; keine der Sägen kann es halten oder erreichen</translation>
  </message>
  <message>
   <source>the room as measured, empty</source>
   <translation>der Raum wie gemessen, leer</translation>
  </message>
  <message>
   <source>thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>thickness mm</source>
   <translation>Dicke mm</translation>
  </message>
  <message>
   <source>title</source>
   <translation>Bezeichnung</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>Sockelblende</translation>
  </message>
  <message>
   <source>tongue</source>
   <translation>Feder</translation>
  </message>
  <message>
   <source>top</source>
   <translation>Oberboden</translation>
  </message>
  <message>
   <source>total</source>
   <translation>Summe</translation>
  </message>
  <message>
   <source>under each name: a table [[survey.extra]] in the job file  ·  a line of the survey's ExtraReadings in FreeCAD, “Readings taken elsewhere” in its panel</source>
   <translation>unter jedem Namen: eine Tabelle [[survey.extra]] der Auftragsdatei  ·  eine Zeile von ExtraReadings des Aufmaßes in FreeCAD, „Anderswo genommene Messwerte“ in seinem Formular</translation>
  </message>
  <message>
   <source>under each name: key in the job file  ·  property of the survey in FreeCAD</source>
   <translation>unter jedem Namen: Schlüssel in der Auftragsdatei  ·  Eigenschaft des Aufmaßes in FreeCAD</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>upper edge in by {0} left, {1} right</source>
   <translation>oberer Rand eingerückt: links {0}, rechts {1}</translation>
  </message>
  <message>
   <source>upper face</source>
   <translation>obere Fläche</translation>
  </message>
  <message>
   <source>upper face up</source>
   <translation>obere Fläche oben</translation>
  </message>
  <message>
   <source>used %</source>
   <translation>genutzt %</translation>
  </message>
  <message>
   <source>value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>Wand</translation>
  </message>
  <message>
   <source>waste</source>
   <translation>Verschnitt</translation>
  </message>
  <message>
   <source>weight each kg</source>
   <translation>Gewicht je Stück kg</translation>
  </message>
  <message>
   <source>weight kg</source>
   <translation>Gewicht kg</translation>
  </message>
  <message>
   <source>weight of sheets, boards and bars; hardware and edge band not counted</source>
   <translation>Gewicht von Platten, Brettern und Stangen; Beschläge und Kantenband nicht gezählt</translation>
  </message>
  <message>
   <source>what</source>
   <translation>Was</translation>
  </message>
  <message>
   <source>what to do</source>
   <translation>Was zu tun ist</translation>
  </message>
  <message>
   <source>width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>width mm</source>
   <translation>Breite mm</translation>
  </message>
  <message>
   <source>without 1 line that no price is known for</source>
   <translation>ohne 1 Zeile, deren Preis unbekannt ist</translation>
  </message>
  <message>
   <source>without {0} lines that no price is known for</source>
   <translation>ohne {0} Zeilen, deren Preise unbekannt sind</translation>
  </message>
  <message>
   <source>work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>{0} (width x depth x height)</source>
   <translation>{0} (Breite x Tiefe x Höhe)</translation>
  </message>
  <message>
   <source>{0} DANGERS: read this before anything is cut, carried or filled; {1}</source>
   <translation>{0} GEFAHREN: dies lesen, bevor etwas geschnitten, getragen oder befüllt wird; {1}</translation>
  </message>
  <message>
   <source>{0} above the lower face</source>
   <translation>{0} über der unteren Fläche</translation>
  </message>
  <message>
   <source>{0} across</source>
   <translation>{0} Durchmesser</translation>
  </message>
  <message>
   <source>{0} along the length, {1} along the width</source>
   <translation>{0} in der Länge, {1} in der Breite</translation>
  </message>
  <message>
   <source>{0} at the end</source>
   <translation>{0} am Ende</translation>
  </message>
  <message>
   <source>{0} at the end for {1}</source>
   <translation>{0} am Ende für {1}</translation>
  </message>
  <message>
   <source>{0} at the front</source>
   <translation>{0} an der Vorderkante</translation>
  </message>
  <message>
   <source>{0} at the front for {1}</source>
   <translation>{0} an der Vorderkante für {1}</translation>
  </message>
  <message>
   <source>{0} at the rear</source>
   <translation>{0} an der Hinterkante</translation>
  </message>
  <message>
   <source>{0} at the rear for {1}</source>
   <translation>{0} an der Hinterkante für {1}</translation>
  </message>
  <message>
   <source>{0} at the start</source>
   <translation>{0} am Anfang</translation>
  </message>
  <message>
   <source>{0} at the start for {1}</source>
   <translation>{0} am Anfang für {1}</translation>
  </message>
  <message>
   <source>{0} at {1}</source>
   <translation>{0} bei {1}</translation>
  </message>
  <message>
   <source>{0} by the plan, {1} to spare</source>
   <translation>{0} nach Plan, {1} als Reserve</translation>
  </message>
  <message>
   <source>{0} deep</source>
   <translation>{0} tief</translation>
  </message>
  <message>
   <source>{0} for {1}</source>
   <translation>{0} für {1}</translation>
  </message>
  <message>
   <source>{0} from behind</source>
   <translation>{0}, von hinten</translation>
  </message>
  <message>
   <source>{0} from the end</source>
   <translation>{0} vom Ende</translation>
  </message>
  <message>
   <source>{0} from the front</source>
   <translation>{0} von der Vorderkante</translation>
  </message>
  <message>
   <source>{0} from the rear</source>
   <translation>{0} von der Hinterkante</translation>
  </message>
  <message>
   <source>{0} from the start</source>
   <translation>{0} vom Anfang</translation>
  </message>
  <message>
   <source>{0} from the start and {1} from the front</source>
   <translation>{0} vom Anfang und {1} von der Vorderkante</translation>
  </message>
  <message>
   <source>{0} holes</source>
   <translation>{0} Bohrungen</translation>
  </message>
  <message>
   <source>{0} holes for {1}</source>
   <translation>{0} Bohrungen für {1}</translation>
  </message>
  <message>
   <source>{0} in the end for {1}</source>
   <translation>{0} im Ende für {1}</translation>
  </message>
  <message>
   <source>{0} in the front for {1}</source>
   <translation>{0} in der Vorderkante für {1}</translation>
  </message>
  <message>
   <source>{0} in the rear for {1}</source>
   <translation>{0} in der Hinterkante für {1}</translation>
  </message>
  <message>
   <source>{0} in the start for {1}</source>
   <translation>{0} im Anfang für {1}</translation>
  </message>
  <message>
   <source>{0} long</source>
   <translation>{0} lang</translation>
  </message>
  <message>
   <source>{0} m of rims and {1} for waste</source>
   <translation>{0} m Ränder und {1} für Verschnitt</translation>
  </message>
  <message>
   <source>{0} m of rims in {1} strips</source>
   <translation>{0} m Ränder in {1} Streifen</translation>
  </message>
  <message>
   <source>{0} needed</source>
   <translation>{0} nötig</translation>
  </message>
  <message>
   <source>{0} needed: {1}</source>
   <translation>{0} nötig: {1}</translation>
  </message>
  <message>
   <source>{0} of sheets, boards and bars to bring home; spares, hardware and edge band not counted</source>
   <translation>{0} an Platten, Brettern und Stangen nach Hause zu bringen; Reserve, Beschläge und Kantenband nicht gezählt</translation>
  </message>
  <message>
   <source>{0} of {1}</source>
   <translation>{0} von {1}</translation>
  </message>
  <message>
   <source>{0} of {1}, yield {2}, {3}</source>
   <translation>{0} × {1}, Ausbeute {2}, {3}</translation>
  </message>
  <message>
   <source>{0} off each end first</source>
   <translation>zuerst {0} an jedem Ende ab</translation>
  </message>
  <message>
   <source>{0} parts, seen from the right, no perspective</source>
   <translation>{0} Teile, von rechts gesehen, ohne Perspektive</translation>
  </message>
  <message>
   <source>{0} pockets</source>
   <translation>{0} Taschenbohrungen</translation>
  </message>
  <message>
   <source>{0} rest</source>
   <translation>{0} Rest</translation>
  </message>
  <message>
   <source>{0} sheets</source>
   <translation>{0} Platten</translation>
  </message>
  <message>
   <source>{0} to {1}</source>
   <translation>{0} bis {1}</translation>
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation>{0} Besäumung {1}</translation>
  </message>
  <message>
   <source>{0} used</source>
   <translation>{0} genutzt</translation>
  </message>
  <message>
   <source>{0} wide</source>
   <translation>{0} breit</translation>
  </message>
  <message>
   <source>{0} wide, {1} deep</source>
   <translation>{0} breit, {1} tief</translation>
  </message>
  <message>
   <source>{0}, front at the left</source>
   <translation>{0}, Vorderseite links</translation>
  </message>
  <message>
   <source>{0}, parts take {1} of {2} m²; parts lie as they are sawn, the machined face up</source>
   <translation>{0}, Teile nehmen {1} von {2} m² ein; Teile liegen wie gesägt, die bearbeitete Fläche oben</translation>
  </message>
  <message>
   <source>{0}, rounded to {1}</source>
   <translation>{0}, gerundet auf {1}</translation>
  </message>
  <message>
   <source>{0}, {1} of them at hand</source>
   <translation>{0}, davon {1} vorhanden</translation>
  </message>
  <message>
   <source>{0}: 1 part</source>
   <translation>{0}: 1 Teil</translation>
  </message>
  <message>
   <source>{0}: crosscut to {1}</source>
   <translation>{0}: quer auf {1}</translation>
  </message>
  <message>
   <source>{0}: rip to {1}</source>
   <translation>{0}: längs auf {1}</translation>
  </message>
  <message>
   <source>{0}: {1}</source>
   <translation>{0}: {1}</translation>
  </message>
  <message>
   <source>{0}: {1} parts</source>
   <translation>{0}: {1} Teile</translation>
  </message>
  <message>
   <source>{0}: {1}, yield {2}, {3}</source>
   <translation>{0}: {1}, Ausbeute {2}, {3}</translation>
  </message>
  <message>
   <source>{0}; {1} at the high level</source>
   <translation>{0}; {1} auf der oberen Höhe</translation>
  </message>
  <message>
   <source>{1} of {0}</source>
   <translation>{1} × {0}</translation>
  </message>
  <message>
   <source>± Lean, from the low to the high level: + where the wall comes into the closet on its way up. Rise: + where the floor goes up on the way named.</source>
   <translation>± Neigung, von der unteren zur oberen Höhe: + wo die Wand nach oben hin in den Schrank kommt. Anstieg: + wo der Fußboden auf dem genannten Weg steigt.</translation>
  </message>
  <message>
   <source>– {0} from below</source>
   <translation>– {0} von unten</translation>
  </message>
  <message>
   <source>– {0} from the left,</source>
   <translation>– {0} von links,</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Pictures</name>
  <message>
   <source>Draw the closet from the front with sizes, from above, at an angle and pulled apart, and save the pictures into a folder</source>
   <translation>Den Schrank von vorn mit Maßen, von oben, schräg und auseinandergezogen zeichnen und die Bilder in einem Ordner speichern</translation>
  </message>
  <message>
   <source>Save pictures…</source>
   <translation>Bilder speichern…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Porch</name>
  <message>
   <source>Example: the porch closet</source>
   <translation>Beispiel: der Schrank im Windfang</translation>
  </message>
  <message>
   <source>Open an example in inches; its readings and sizes are invented</source>
   <translation>Ein Beispiel in Zoll öffnen; Messwerte und Maße sind erfunden</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Rods</name>
  <message>
   <source>A hanging rod, or two, in one compartment</source>
   <translation>Eine Kleiderstange oder zwei in einem Fach</translation>
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation>Kleiderstange…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Said</name>
  <message>
   <source> ({0} alike)</source>
   <translation> ({0} gleiche)</translation>
  </message>
  <message>
   <source> and may break in time</source>
   <translation> und kann mit der Zeit brechen</translation>
  </message>
  <message>
   <source> and {0} in the middle</source>
   <translation> und {0} in der Mitte</translation>
  </message>
  <message>
   <source> of the {0} wall</source>
   <translation> der Wand {0}</translation>
  </message>
  <message>
   <source> of {0} x {1}</source>
   <translation> von {0} x {1}</translation>
  </message>
  <message>
   <source> offcut {0}</source>
   <translation> Reststück {0}</translation>
  </message>
  <message>
   <source> to the {0}</source>
   <translation> zu {0}</translation>
  </message>
  <message>
   <source>" in inch inches</source>
   <translation>" in inch inches</translation>
  </message>
  <message>
   <source>' ft foot feet</source>
   <translation>' ft foot feet</translation>
  </message>
  <message>
   <source>(0 runs through the edge band)</source>
   <translation>(0: läuft durch das Kantenband)</translation>
  </message>
  <message>
   <source>+ into the closet on its way up</source>
   <translation>+ in den Schrank hinein nach oben</translation>
  </message>
  <message>
   <source>+ inward</source>
   <translation>+ nach innen</translation>
  </message>
  <message>
   <source>+ where it rises</source>
   <translation>+ wo er ansteigt</translation>
  </message>
  <message>
   <source>, as do {0} others</source>
   <translation>, ebenso {0} weitere</translation>
  </message>
  <message>
   <source>, for which a weak board is not strong enough</source>
   <translation>, wofür ein schwaches Brett nicht fest genug ist</translation>
  </message>
  <message>
   <source>, for which it is too soft</source>
   <translation>, wofür es zu weich ist</translation>
  </message>
  <message>
   <source>, grain {0}</source>
   <translation>, Faser {0}</translation>
  </message>
  <message>
   <source>, its lip glued and screwed on</source>
   <translation>, seine Lippe angeleimt und angeschraubt</translation>
  </message>
  <message>
   <source>, or a reading is wrong: {0}</source>
   <translation>, oder ein Messwert ist falsch: {0}</translation>
  </message>
  <message>
   <source>, pines</source>
   <translation>, Kiefern</translation>
  </message>
  <message>
   <source>, wherever the studs are: survey the first</source>
   <translation>, wo immer die Ständer sind: zuerst aufmessen</translation>
  </message>
  <message>
   <source>, which pulls its screws out</source>
   <translation>, was seine Schrauben herauszieht</translation>
  </message>
  <message>
   <source>1 divider to carry it</source>
   <translation>1 Mittelseite zum Tragen</translation>
  </message>
  <message>
   <source>1 opening is</source>
   <translation>1 Öffnung ist</translation>
  </message>
  <message>
   <source>1 part weighs</source>
   <translation>1 Teil wiegt</translation>
  </message>
  <message>
   <source>1 strip</source>
   <translation>1 Streifen</translation>
  </message>
  <message>
   <source>16 CFR 1213, bunk beds, taken as a guide: nothing is published for closets</source>
   <translation>16 CFR 1213, Etagenbetten, als Richtwert; für Einbauschränke ist nichts veröffentlicht</translation>
  </message>
  <message>
   <source>2 or more, or none for no limit</source>
   <translation>2 oder mehr, oder leer für keine Grenze</translation>
  </message>
  <message>
   <source>2010 ADA Standards 308.2.1 and 308.3.1; homes are not bound by them</source>
   <translation>2010 ADA Standards 308.2.1 und 308.3.1; für Wohnungen nicht bindend</translation>
  </message>
  <message>
   <source>2010 ADA Standards, advisory 308.1, children's reach ranges</source>
   <translation>2010 ADA Standards, advisory 308.1, Reichweiten von Kindern</translation>
  </message>
  <message>
   <source>300 lb a person: International Residential Code Table R301.5 note c, stair treads; no standard for built-in benches was found</source>
   <translation>300 lb je Person: International Residential Code Table R301.5 note c, Treppenstufen; für eingebaute Bänke wurde keine Norm gefunden</translation>
  </message>
  <message>
   <source>: the kerf takes the next one</source>
   <translation>: die Schnittfuge nimmt das nächste weg</translation>
  </message>
  <message>
   <source>; a screw {0} thick and {1} deep in the face of its own board may hold {2} ({3})</source>
   <translation>; eine Schraube, {0} dick und {1} tief in der Fläche ihres eigenen Bretts, kann {2} halten ({3})</translation>
  </message>
  <message>
   <source>; a thicker bottom, or a batten under its middle</source>
   <translation>; ein dickerer Boden oder eine Leiste unter seiner Mitte</translation>
  </message>
  <message>
   <source>; each of its {0} pins carries {1}: the pins are not checked ({2})</source>
   <translation>; jeder seiner {0} Bodenträger trägt {1}: die Bodenträger sind nicht geprüft ({2})</translation>
  </message>
  <message>
   <source>; if its ends could not turn at all, {0}</source>
   <translation>; wenn seine Enden sich gar nicht drehen könnten, {0}</translation>
  </message>
  <message>
   <source>; measure the {0} next</source>
   <translation>; als Nächstes {0} messen</translation>
  </message>
  <message>
   <source>; positive where it leans into the closet on its way up</source>
   <translation>; positiv, wo sie sich nach oben in den Schrank neigt</translation>
  </message>
  <message>
   <source>; sag as you entered it</source>
   <translation>; Durchbiegung wie eingegeben</translation>
  </message>
  <message>
   <source>; take the {0} as well</source>
   <translation>; auch {0} messen</translation>
  </message>
  <message>
   <source>; the anchors must hold {0}</source>
   <translation>; die Verankerungen müssen {0} halten</translation>
  </message>
  <message>
   <source>; the heaviest that it is sold as weighs {0}</source>
   <translation>; das Schwerste, als das es verkauft wird, wiegt {0}</translation>
  </message>
  <message>
   <source>; the softest boards published would not pass</source>
   <translation>; die weichsten veröffentlichten Platten würden nicht bestehen</translation>
  </message>
  <message>
   <source>; whether the heads pull through this board is not published</source>
   <translation>; ob die Köpfe durch diese Platte gezogen werden, ist nicht veröffentlicht</translation>
  </message>
  <message>
   <source>; {0} strips then need {1} sheets, not {2}</source>
   <translation>; {0} Streifen brauchen dann {1} Platten, nicht {2}</translation>
  </message>
  <message>
   <source>; {0} would sag </source>
   <translation>; {0} würde durchhängen: </translation>
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation>Eine Handkreissäge an der Führungsschiene ist vorhanden</translation>
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation>Eine Tiefe aus dem Bruchteil wird auf ein Vielfaches hiervon abgerundet</translation>
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation>Eine Tischkreissäge ist vorhanden</translation>
  </message>
  <message>
   <source>ANSI A208.1 class M</source>
   <translation>ANSI A208.1 Klasse M</translation>
  </message>
  <message>
   <source>APA Panel Design Specification: 16 % moisture or more, 0.85 stiffness, 0.75 strength</source>
   <translation>APA Panel Design Specification: 16 % Feuchte oder mehr, 0.85 Steifigkeit, 0.75 Festigkeit</translation>
  </message>
  <message>
   <source>ASTM D245 as NDS uses it: 2.1 times the 875 psi x 1.1 that spruce-pine-fir No. 2 may carry laid flat (875 psi and 1.1 quoted; 2.1 from memory)</source>
   <translation>ASTM D245, wie NDS sie anwendet: das 2.1-Fache der 875 psi x 1.1, die spruce-pine-fir No. 2 flach liegend tragen darf (875 psi und 1.1 zitiert; 2.1 aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>ASTM F2057-23 as 16 CFR 1261 (test figures from memory)</source>
   <translation>ASTM F2057-23 wie 16 CFR 1261 (Prüfwerte aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>ASTM F963 4.27: no drop of more than 1/2 in (12 mm) from 2 in above closed to 60° (from memory); CPSC: 21 deaths 1973 to 1981</source>
   <translation>ASTM F963 4.27: kein Absinken um mehr als 1/2 in (12 mm) von 2 in über geschlossen bis 60° (aus dem Gedächtnis); CPSC: 21 Todesfälle 1973 bis 1981</translation>
  </message>
  <message>
   <source>ASTM F963 4.27: two openings, 2 in² together, 6 in apart, opened with 10 lbf (from memory, to be checked); ASTM F2598: from 1.1 ft³</source>
   <translation>ASTM F963 4.27: zwei Öffnungen, zusammen 2 in², 6 in auseinander, mit 10 lbf zu öffnen (aus dem Gedächtnis, zu prüfen); ASTM F2598: ab 1.1 ft³</translation>
  </message>
  <message>
   <source>AWS 2009 takes shelf rests of ANSI/BHMA A156.9 grade 1; ask the maker for the load</source>
   <translation>AWS 2009 nimmt Bodenträger nach ANSI/BHMA A156.9 grade 1; den Hersteller nach der Last fragen</translation>
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation>Genauigkeitsklasse des Maßbands</translation>
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation>Eine andere Zahl kann einen anderen Plan finden</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.21</source>
   <translation>Architectural Woodwork Standards, Ausgabe 1 (2009), 1.2.21</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.9</source>
   <translation>Architectural Woodwork Standards, Ausgabe 1 (2009), 1.2.9</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.16</source>
   <translation>Architectural Woodwork Standards, Ausgabe 1 (2009), 4.4.16</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.18</source>
   <translation>Architectural Woodwork Standards, Ausgabe 1 (2009), 4.4.18</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.4.5</source>
   <translation>Architectural Woodwork Standards, Ausgabe 1 (2009), 4.4.4.5</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details</source>
   <translation>Architectural Woodwork Standards, Ausgabe 1 (2009), Details von Wand zu Wand</translation>
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation>Fläche der Teile im Verhältnis zur Fläche der Platten, in Prozent</translation>
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation>Fläche der rechteckigen darunter, in m²</translation>
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation>Felder, für die es Objekte gab</translation>
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation>Bretter und Stäbe, die auf Länge geschnitten werden</translation>
  </message>
  <message>
   <source>CPSC advice on tip-over</source>
   <translation>CPSC-Empfehlung zum Umkippen</translation>
  </message>
  <message>
   <source>CSV</source>
   <translation>CSV</translation>
  </message>
  <message>
   <source>Class of this object in the workbench</source>
   <translation>Klasse dieses Objekts im Arbeitsbereich</translation>
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation>Lichte Breite; 0: teilt sich den Rest mit den anderen solchen Feldern</translation>
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation>Spalten, die die Stückliste enthalten</translation>
  </message>
  <message>
   <source>Component and name</source>
   <translation>Bauteil und Name</translation>
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation>Aus einer Platte geschnitten, die von einem vorhandenen Möbel aufgehoben wird</translation>
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation>Schnitte je Platte, die der Handel ausführt; 0: beliebig viele</translation>
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation>Größte erlaubte Nuttiefe als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>Degrees to which the closet's own door opens</source>
   <translation>Grad, bis zu denen die eigene Tür des Schranks öffnet</translation>
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation>Tiefe eines Sacklochs</translation>
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation>Nuttiefe als Bruchteil der Dicke der Platte</translation>
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation>Tiefe aller Nuten; 0: nach dem Bruchteil</translation>
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation>Tiefe eines Einbauraums mit vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation>Tiefe der Nuten; 0: nach Regel</translation>
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation>Tiefe des größten lot- und waagerechten Quaders, der passt</translation>
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation>Durchmesser der Bohrungen für Bodenträger</translation>
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation>Durchmesser des vorhandenen Fräsers; 0: nicht angegeben</translation>
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation>Richtung der ersten Schnitte an einer ganzen Platte</translation>
  </message>
  <message>
   <source>E of metal hardly scatters</source>
   <translation>E von Metall streut kaum</translation>
  </message>
  <message>
   <source>EN 14322 (from memory)</source>
   <translation>EN 14322 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 1995-1-1 Tables 2.3 and 3.1 (quoted)</source>
   <translation>EN 1995-1-1 Tables 2.3 und 3.1 (zitiert)</translation>
  </message>
  <message>
   <source>EN 1995-1-1 service class 1; EN 312, EN 622: boards for dry conditions</source>
   <translation>EN 1995-1-1 Nutzungsklasse 1; EN 312, EN 622: Platten für den Trockenbereich</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 13 to 20 mm</source>
   <translation>EN 312 Typ P2, über 13 bis 20 mm</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 20 to 25 mm (from memory)</source>
   <translation>EN 312 Typ P2, über 20 bis 25 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 25 to 32 mm (from memory)</source>
   <translation>EN 312 Typ P2, über 25 bis 32 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 32 to 40 mm (from memory)</source>
   <translation>EN 312 Typ P2, über 32 bis 40 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 40 mm (from memory)</source>
   <translation>EN 312 Typ P2, über 40 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 312, EN 622: boards for use in dry conditions</source>
   <translation>EN 312, EN 622: Platten für den Trockenbereich</translation>
  </message>
  <message>
   <source>EN 336 class 2, and PS 20-20 for green lumber</source>
   <translation>EN 336 Klasse 2 und PS 20-20 für frisches Schnittholz</translation>
  </message>
  <message>
   <source>EN 622-1, MDF (from memory)</source>
   <translation>EN 622-1, MDF (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 622-1, hardboard (from memory)</source>
   <translation>EN 622-1, Hartfaserplatte (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 622-5, over 12 to 19 mm</source>
   <translation>EN 622-5, über 12 bis 19 mm</translation>
  </message>
  <message>
   <source>EN 622-5, over 19 to 30 mm (from memory)</source>
   <translation>EN 622-5, über 19 bis 30 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 622-5, over 30 to 45 mm (from memory)</source>
   <translation>EN 622-5, über 30 bis 45 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EN 622-5, over 45 mm (from memory)</source>
   <translation>EN 622-5, über 45 mm (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>EPA 40 CFR 745 (renovation, repair and painting); 16 CFR 1303</source>
   <translation>EPA 40 CFR 745 (Renovierung, Reparatur und Anstrich); 16 CFR 1303</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation>Über die Länge der Ränder hinaus gekauftes Kantenband, als Bruchteil</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation>Kante der Vorderkanten der Böden oder ihrer Lippen: auto wie beim Korpus, leer für keine, oder ein Schlüssel des Katalogs</translation>
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Kante der sichtbaren Vorderkanten: auto für die des Materials, leer für keine, oder ein Schlüssel des Katalogs</translation>
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Kante: auto für die des Materials, leer für keine, oder ein Schlüssel des Katalogs</translation>
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation>Fehler der Wasserwaage oder des Lots auf einen Meter</translation>
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation>Datei mit eigenen Materialien und Preisen; leer: nur die des Programms</translation>
  </message>
  <message>
   <source>Findings about it</source>
   <translation>Zweifel daran</translation>
  </message>
  <message>
   <source>Findings about the design</source>
   <translation>Zweifel am Entwurf</translation>
  </message>
  <message>
   <source>Findings about the readings</source>
   <translation>Zweifel an den Messwerten</translation>
  </message>
  <message>
   <source>Finished length</source>
   <translation>Fertiglänge</translation>
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation>Fertiglänge, Kanten eingeschlossen</translation>
  </message>
  <message>
   <source>Finished width</source>
   <translation>Fertigbreite</translation>
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation>Fertigbreite, Kanten eingeschlossen</translation>
  </message>
  <message>
   <source>FreeCAD wrote only part of it</source>
   <translation>FreeCAD hat nur einen Teil davon geschrieben</translation>
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation>Von einem festen Boden zum nächsten Loch</translation>
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation>Von naher Wand zu naher Wand</translation>
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation>Von einem Loch zum nächsten</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation>Von diesem Rand zur nahen Wange der ersten Nut</translation>
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation>Von der Korpusvorderkante zur Sockelvorderkante</translation>
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation>Von der Vorderkante zur vorderen Reihe</translation>
  </message>
  <message>
   <source>From the left</source>
   <translation>Von links</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation>Von den Hinterkanten zur Hinterfläche der Rückwand</translation>
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation>Nuten enden vor einer bekanteten Vorderkante und laufen durch eine rohe durch</translation>
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation>Nuten, Bohrungen und Ausklinkungen in Worten</translation>
  </message>
  <message>
   <source>Height above the floor of the {0} readings</source>
   <translation>Höhe der Messwerte {0} über dem Boden</translation>
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation>Höhe einer Tragleiste</translation>
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation>Höhe eines Streifens vor jedem Boden; 0: keiner</translation>
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation>Höhe eines Einbauraums mit vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>Height of the base</source>
   <translation>Höhe des Sockels</translation>
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation>Höhe des größten lot- und waagerechten Quaders, der passt</translation>
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation>Wie tief der Einbauraum höchstens gehen darf; 0: so tief wie der Raum</translation>
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation>Wie weit ein verstellbarer Boden hinter den Vorderkanten bleibt</translation>
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation>Wie weit eine Platte vor dem Nutgrund endet</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation>Wie weit Nuten vor der Vorderkante enden; 0: laufen durch</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation>Wie weit die Nuten vor der Vorderkante oder dem Anfang enden</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation>Wie weit die Nuten vor der Hinterkante oder dem Ende enden</translation>
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation>Wie wahrscheinlich die Freiräume eingehalten sind, nach den Messwerten</translation>
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation>Wie lange dann nach weniger Schnitten gesucht wird, je Material</translation>
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation>Wie lange nach weniger Platten gesucht wird, je Material</translation>
  </message>
  <message>
   <source>How many there are</source>
   <translation>Wie viele es sind</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation>Wie oft die Schnittrichtung wechseln darf, die erste mitgezählt; 0: keine Grenze</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation>Wie viel kürzer als sein Feld ein verstellbarer Boden ist</translation>
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation>Wie viel breiter eine Nut ist als die Platte darin</translation>
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation>Wie oft der Plan gezeichnet wurde</translation>
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation>Wie Texte Längen ausgeben</translation>
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation>Wie Ober- und Unterboden mit den Seiten verbunden sind</translation>
  </message>
  <message>
   <source>International Residential Code R602: 16 or 24 in from centre to centre</source>
   <translation>International Residential Code R602: 16 oder 24 in von Mitte zu Mitte</translation>
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation>Seine Felder von links nach rechts</translation>
  </message>
  <message>
   <source>JSON</source>
   <translation>JSON</translation>
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation>Schlüssel der Platte im Katalog</translation>
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation>Schlüssel der Rückwandplatten; leer: nach Regel</translation>
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation>Schlüssel der Sockelplatten; leer: wie der Korpus</translation>
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation>Schlüssel der Platte im Katalog</translation>
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation>Schlüssel der Platten im Katalog</translation>
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation>Schlüssel der Platten, die in die Nuten kommen; leer: dieselben</translation>
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation>Schlüssel der Stabklasse im Katalog</translation>
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation>Schlüssel der Streifenplatten; leer: wie der Korpus</translation>
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation>LED- oder Leuchtstofflampe, für Schrankräume gekennzeichnet</translation>
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation>Mindestabstand von der Hinterkante zur hinteren Reihe</translation>
  </message>
  <message>
   <source>Least gap to keep at the {0}</source>
   <translation>Mindestspalt {0}</translation>
  </message>
  <message>
   <source>Left end at</source>
   <translation>Linkes Ende bei</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation>Abstand der linken Seite vom linken Rand des Einbauraums</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation>Abstand der linken Seite vom linken Rand des Einbauraums, wie gebaut</translation>
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation>Vom Stab zu schneidende Länge</translation>
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation>Sägelänge, ohne die Kanten</translation>
  </message>
  <message>
   <source>MDF: ANSI A208.2 least screw holding (from memory)</source>
   <translation>MDF: ANSI A208.2, geringster Schraubenhalt (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>NDS 12.2.2: 2850·G²·D lb per inch of thread, not in end grain</source>
   <translation>NDS 12.2.2: 2850·G²·D lb je Zoll Gewinde, nicht in Hirnholz</translation>
  </message>
  <message>
   <source>NDS 12.2.3: 1380·G^2.5·D lb per inch (quoted), not in end grain</source>
   <translation>NDS 12.2.3: 1380·G^2.5·D lb je Zoll (zitiert), nicht in Hirnholz</translation>
  </message>
  <message>
   <source>NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi quoted, 135 psi from memory)</source>
   <translation>NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi zitiert, 135 psi aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>NEC 300.4(A)(1): cables may lie 1-1/4 in (32 mm) behind a stud's face (quoted)</source>
   <translation>NEC 300.4(A)(1): Kabel dürfen 1-1/4 in (32 mm) hinter der Ständerfläche liegen (zitiert)</translation>
  </message>
  <message>
   <source>NEC 314.29 (quoted) and 240.24(D)</source>
   <translation>NEC 314.29 (zitiert) und 240.24(D)</translation>
  </message>
  <message>
   <source>NEC 410.16 and the closet storage space of NEC 410.2: 600 mm from sides and back up to 1.8 m or the highest rod, 300 mm or the shelf's depth above</source>
   <translation>NEC 410.16 und der Schrank-Lagerraum nach NEC 410.2: 600 mm von Seiten und Rückwand bis 1.8 m oder bis zur höchsten Stange, darüber 300 mm oder die Tiefe des Bodens</translation>
  </message>
  <message>
   <source>NEC 410.16(B)</source>
   <translation>NEC 410.16(B)</translation>
  </message>
  <message>
   <source>NIOSH 94-110, hands {0} ahead, {1} up, poor grip</source>
   <translation>NIOSH 94-110, Hände {0} vorgestreckt, {1} hoch, schlechter Griff</translation>
  </message>
  <message>
   <source>NIOSH 94-110, load constant; size: common practice, no published source</source>
   <translation>NIOSH 94-110, Lastkonstante; Größe: übliche Praxis, keine veröffentlichte Quelle</translation>
  </message>
  <message>
   <source>NIOSH 94-110, load constant; team lifting: HSE L23 (quoted)</source>
   <translation>NIOSH 94-110, Lastkonstante; Heben zu mehreren: HSE L23 (zitiert)</translation>
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation>Name des Teils innerhalb seines Bauteils</translation>
  </message>
  <message>
   <source>Number of adjustable shelves, loose on pins</source>
   <translation>Anzahl der verstellbaren Böden auf Bodenträgern</translation>
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation>Anzahl der Felder, jedes ein eigenes Objekt</translation>
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation>Anzahl der festen Böden</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Anzahl der Nuten</translation>
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation>Anzahl der aus Platten zu schneidenden Teile</translation>
  </message>
  <message>
   <source>OSHA 29 CFR 1910.213</source>
   <translation>OSHA 29 CFR 1910.213</translation>
  </message>
  <message>
   <source>OUT OF DATE: the closet has changed since; make the page again</source>
   <translation>VERALTET: der Schrank hat sich seither geändert; das Blatt neu erstellen</translation>
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation>Vorhandene Reststücke</translation>
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation>Je so viele eine Reserveplatte eines Materials; 0: keine Reserve</translation>
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation>Außentiefe, wie gebaut</translation>
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation>Außentiefe; 0: die des Einbauraums</translation>
  </message>
  <message>
   <source>Outer diameter</source>
   <translation>Außendurchmesser</translation>
  </message>
  <message>
   <source>Outer height as built</source>
   <translation>Außenhöhe, wie gebaut</translation>
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation>Außenhöhe, Sockel eingeschlossen; 0: die des Einbauraums</translation>
  </message>
  <message>
   <source>Outer width as built</source>
   <translation>Außenbreite, wie gebaut</translation>
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation>Außenbreite; 0: was der Einbauraum lässt</translation>
  </message>
  <message>
   <source>PS 1-19, unsanded, and EN 315, sanded</source>
   <translation>PS 1-19, ungeschliffen, und EN 315, geschliffen</translation>
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation>Teile wurden nach dem Planen von Hand verschoben</translation>
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation>Platz unter den Teilen seines Bauteils</translation>
  </message>
  <message>
   <source>Plan which sheets to take for a list of parts, and how to cut them.</source>
   <translation>Planen, welche Platten für eine Teileliste zu nehmen und wie sie zu schneiden sind.</translation>
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation>Anderswo genommene Messwerte, wie vom Aufmaßformular geschrieben</translation>
  </message>
  <message>
   <source>Right end at</source>
   <translation>Rechtes Ende bei</translation>
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation>Ränder mit Kante, und welche</translation>
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation>Zeilen, die die Stückliste enthalten</translation>
  </message>
  <message>
   <source>STEP file</source>
   <translation>STEP-Datei</translation>
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation>Sägen anstelle all dieser, je ein JSON-Text</translation>
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation>Setzen, um bei der nächsten Neuberechnung neu zu planen</translation>
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation>Setzen, um die Stückliste bei der nächsten Neuberechnung neu zu schreiben</translation>
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation>Platten eines Materials, bis zu denen keine Reserve nötig ist</translation>
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation>Zu schneidende Platten</translation>
  </message>
  <message>
   <source>Shelf pins</source>
   <translation>Bodenträger</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Steht hinten in einem tieferen Einbauraum, sonst an dessen Vorderseite</translation>
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation>Steht neben dem vorigen Korpus, sonst bei X</translation>
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation>Summe dessen, was einen Preis hat, in der Währung des Katalogs</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation>Von jeder Plattenkante abgenommen, bevor ein Teil geschnitten wird</translation>
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation>Das Feld, in dem es steht; leer: nach seiner Nummer</translation>
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation>Die Stückliste, deren Zeilen die Zellen enthalten</translation>
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation>Die Stückliste, je Zeile kommagetrennte Werte</translation>
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation>Die Währung des Katalogs</translation>
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation>Der Einbauschrank, aus dem es folgt</translation>
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation>Der Einbauschrank, für den die Stückliste ist</translation>
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation>Der Einbauschrank, dessen Teile geschnitten werden</translation>
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation>Das Bauteil, zu dem es gehört</translation>
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation>Der Zuschnittplan, dessen Platten gekauft werden; leer: noch nicht geplant</translation>
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation>Entwurf, Zuschnittplan oder Katalog haben sich seither geändert</translation>
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation>Der Boden des Einbauraums über der vorderen linken Raumecke</translation>
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation>Die Vorderseite des Einbauraums ab der vorderen linken Raumecke</translation>
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation>Die linke Seite des Einbauraums ab der vorderen linken Raumecke</translation>
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation>Die Fläche, in der die Nuten sind</translation>
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation>Die Datei, aus der sie zuletzt gelesen wurden, leer: keine</translation>
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation>Abstand der Vorderseite von der des Einbauraums, wie gebaut</translation>
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation>Die vorhandenen Reststücke, je ein JSON-Text</translation>
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation>Die vorhandenen Reststücke; leer: alles wird gekauft</translation>
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation>Teile, Katalog oder Einstellungen haben sich seither geändert</translation>
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation>Der Plan der Bretter und Stäbe, als Daten</translation>
  </message>
  <message>
   <source>The plan, as data</source>
   <translation>Der Plan, als Daten</translation>
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation>Der Rand, von dem aus die Nuten gemessen werden</translation>
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation>Der Schritt, auf den das Maßband abgelesen wurde</translation>
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation>Das Aufmaß, in dessen Einbauraum er steht</translation>
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation>Die verglichenen Kaufmöglichkeiten, als Daten</translation>
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation>Dicke wie gemessen, sonst wie verkauft</translation>
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation>Gemessene Dicke in mm, nach Schlüssel des Materials</translation>
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation>Wanddicke eines Rohrs; 0: massiv</translation>
  </message>
  <message>
   <source>Time-Saver Standards; double hang: common practice, no published source</source>
   <translation>Time-Saver Standards; zwei Stangen übereinander: übliche Praxis, keine veröffentlichte Quelle</translation>
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation>Jede Platte nach Besäumen beschneiden, nicht wie der Katalog sagt</translation>
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation>Unterseite jedes festen Bodens über dem Feldboden in mm; leer: gleiche Abstände</translation>
  </message>
  <message>
   <source>Version of this object's properties</source>
   <translation>Version der Eigenschaften dieses Objekts</translation>
  </message>
  <message>
   <source>W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping</source>
   <translation>W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping</translation>
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation>Gewicht in kg; 0: unbekannt</translation>
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation>Gewicht aller Teile in kg</translation>
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation>Gewicht des fertigen Stücks in kg</translation>
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation>Was die festen Böden trägt</translation>
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation>Was den Korpus hinten abschließt oder aussteift</translation>
  </message>
  <message>
   <source>What closes the opening</source>
   <translation>Was die Öffnung schließt</translation>
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation>Was in der Reihenfolge des Schranks davor kommt</translation>
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation>Was über den Ort und die Menschen bekannt ist, wie vom Formular geschrieben</translation>
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation>Worin oder wovor es steht</translation>
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation>Was zwischen Nuten Rücken an Rücken bleiben muss, als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation>Was frei bleiben muss, wie vom Aufmaßformular geschrieben</translation>
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation>Was unter einem Sackloch bleiben muss</translation>
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation>Was am Einbauraum am größten sein soll</translation>
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation>Worauf Texte Längen runden, in mm bei metrischen Formaten, sonst in Zoll</translation>
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation>Wofür die Stückliste geschrieben wurde</translation>
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation>Worauf der Korpus steht</translation>
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation>Woraus die Zellen gefüllt wurden</translation>
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation>Woraus der Einbauraum folgt: aus den Messwerten oder den vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation>Was das Stück im Einbauschrank ist</translation>
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation>Wofür der Plan gemacht wurde</translation>
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation>Woraus die Form gemacht wurde</translation>
  </message>
  <message>
   <source>What the store saws</source>
   <translation>Was der Händler sägt</translation>
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation>Wo Überschriften und Namen stehen</translation>
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation>Wie die Faser läuft</translation>
  </message>
  <message>
   <source>Where the top lies</source>
   <translation>Wo der Oberboden liegt</translation>
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation>Ob etwas zu Kaufendes keinen Preis hat</translation>
  </message>
  <message>
   <source>Whether the {0} was read</source>
   <translation>Ob {0} gemessen wurde</translation>
  </message>
  <message>
   <source>Whether {0} is left to the rule</source>
   <translation>Ob {0} der Regel überlassen ist</translation>
  </message>
  <message>
   <source>Who cuts</source>
   <translation>Wer schneidet</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation>Größter lichter Abstand zwischen Querhölzern</translation>
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation>Breite eines Einbauraums mit vorgegebenen Maßen</translation>
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation>Breite des größten lot- und waagerechten Quaders, der passt</translation>
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation>Breite des Sägeschnitts</translation>
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation>Sägebreite, ohne die Kanten</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 Table 5-6: coefficient of variation of E 22 % (from memory)</source>
   <translation>Wood Handbook FPL-GTR-190 Table 5-6: Variationskoeffizient von E 22 % (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 chapter 8 (from memory)</source>
   <translation>Wood Handbook FPL-GTR-190 chapter 8 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 eq. 13-2 and Table 13-5 (pine, from memory); moisture: common practice</source>
   <translation>Wood Handbook FPL-GTR-190 eq. 13-2 und Table 13-5 (Kiefer, aus dem Gedächtnis); Feuchte: übliche Praxis</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190, eq. 9-2 and Table 9-1</source>
   <translation>Wood Handbook FPL-GTR-190, eq. 9-2 und Table 9-1</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1 (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, MDF</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, MDF</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, Hartfaserplatte (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard, low end (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, Hartfaserplatte, unterer Wert (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, particleboard</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, Spanplatte</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, Sperrholz</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood, low end</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, Sperrholz, unterer Wert</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1; birch mill sheets</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1; Birke: Werksdatenblätter</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 5-3b, softwoods</source>
   <translation>Wood Handbook FPL-GTR-282 Table 5-3b, Nadelhölzer</translation>
  </message>
  <message>
   <source>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</source>
   <translation>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</translation>
  </message>
  <message>
   <source>a board's price is for one size</source>
   <translation>der Preis einer Platte gilt für eine Größe</translation>
  </message>
  <message>
   <source>a cheaper plan may exist</source>
   <translation>es kann einen billigeren Plan geben</translation>
  </message>
  <message>
   <source>a child of {0} years reaches {1} of {2} shelves and rods</source>
   <translation>ein Kind von {0} Jahren erreicht {1} von {2} Böden und Stangen</translation>
  </message>
  <message>
   <source>a child shut in gets no air: two openings that no wall, floor or contents can cover, and a lid that opens from inside, with no latch; {0}</source>
   <translation>ein eingeschlossenes Kind bekommt keine Luft: zwei Öffnungen, die weder Wand noch Boden noch Inhalt verdecken kann, und ein Deckel, der von innen aufgeht, ohne Riegel; {0}</translation>
  </message>
  <message>
   <source>a cleat glued and screwed under the rear edge</source>
   <translation>eine Tragleiste, unter die Hinterkante geleimt und geschraubt</translation>
  </message>
  <message>
   <source>a corner at {0}, {1} mm</source>
   <translation>eine Ecke bei {0}, {1} mm</translation>
  </message>
  <message>
   <source>a file with prices must state theirs</source>
   <translation>eine Datei mit Preisen muss ihre angeben</translation>
  </message>
  <message>
   <source>a fraction follows whole inches or feet only; {0}</source>
   <translation>ein Bruch folgt nur auf ganze Zoll oder Fuß; {0}</translation>
  </message>
  <message>
   <source>a fraction has one number above and one below the slash; {0}</source>
   <translation>ein Bruch hat je eine Zahl über und unter dem Bruchstrich; {0}</translation>
  </message>
  <message>
   <source>a fraction is read in inches or feet, not in {0}; mark it as inches (72 5/16") or type a decimal (1832.5 mm)</source>
   <translation>ein Bruch wird in Zoll oder Fuß gelesen, nicht in {0}; als Zoll kennzeichnen (72 5/16") oder eine Dezimalzahl eingeben (1832.5 mm)</translation>
  </message>
  <message>
   <source>a front lip</source>
   <translation>eine vordere Lippe</translation>
  </message>
  <message>
   <source>a joint between two of its pieces lies over no upright: put a batten under it, or make it in other pieces</source>
   <translation>ein Stoß zwischen zwei seiner Stücke liegt über keiner Stütze: eine Leiste daruntersetzen oder ihn anders teilen</translation>
  </message>
  <message>
   <source>a length of a bar has no width: give where it starts and ends</source>
   <translation>ein Stück einer Stange hat keine Breite: angeben, wo es beginnt und endet</translation>
  </message>
  <message>
   <source>a lighter or narrower leaf, hinges further apart, or longer screws into a doubled side; screws in a board near its edge need pilot holes</source>
   <translation>ein leichterer oder schmalerer Flügel, Scharniere weiter auseinander oder längere Schrauben in eine gedoppelte Seite; Schrauben nahe der Plattenkante brauchen Vorbohrungen</translation>
  </message>
  <message>
   <source>a new entry must state it; {0}</source>
   <translation>ein neuer Eintrag muss es angeben; {0}</translation>
  </message>
  <message>
   <source>a pair, hinged at both sides</source>
   <translation>ein Paar, beidseitig angeschlagen</translation>
  </message>
  <message>
   <source>a price must be 0 or more</source>
   <translation>ein Preis muss 0 oder mehr sein</translation>
  </message>
  <message>
   <source>a rail more under it, a thicker top, or its grain from rail to rail</source>
   <translation>ein Rahmenholz mehr darunter, eine dickere Bankplatte oder deren Faser von Holz zu Holz</translation>
  </message>
  <message>
   <source>a strip from cleat to cleat: lower bound theorem of plates; Wood Handbook Table 9-1</source>
   <translation>ein Streifen von Tragleiste zu Tragleiste: unterer Grenzwertsatz für Platten; Wood Handbook Table 9-1</translation>
  </message>
  <message>
   <source>a thicker or stiffer board, shorter legs, or a leg under its front</source>
   <translation>eine dickere oder steifere Platte, kürzere Schenkel oder ein Bein unter der Vorderseite</translation>
  </message>
  <message>
   <source>a weak board may break under {0} in time</source>
   <translation>eine schwache Platte kann unter {0} mit der Zeit brechen</translation>
  </message>
  <message>
   <source>a weak board may break under {0} in time{1}{2}</source>
   <translation>eine schwache Platte kann unter {0} mit der Zeit brechen{1}{2}</translation>
  </message>
  <message>
   <source>a whole sheet{0} {1}{2}</source>
   <translation>eine ganze Platte{0} {1}{2}</translation>
  </message>
  <message>
   <source>a {0} must state it</source>
   <translation>{0} muss es angeben</translation>
  </message>
  <message>
   <source>above 0</source>
   <translation>über 0</translation>
  </message>
  <message>
   <source>above the bay's floor</source>
   <translation>über dem Feldboden</translation>
  </message>
  <message>
   <source>above the bay's floor, clear of the {0} cleat</source>
   <translation>über dem Feldboden, frei von der Tragleiste {0}</translation>
  </message>
  <message>
   <source>above the bottom and its inset</source>
   <translation>über dem Boden und seiner Einrückung</translation>
  </message>
  <message>
   <source>above the floor</source>
   <translation>über dem Fußboden</translation>
  </message>
  <message>
   <source>above the floor, to lie on the door</source>
   <translation>über dem Fußboden, um auf der Tür zu liegen</translation>
  </message>
  <message>
   <source>above the floor, with room for its cleats</source>
   <translation>über dem Fußboden, mit Platz für die Tragleisten</translation>
  </message>
  <message>
   <source>above the floor, {0} mm below what lies above it</source>
   <translation>über dem Fußboden, {0} mm unter dem, was darüber liegt</translation>
  </message>
  <message>
   <source>across the width</source>
   <translation>quer über die Breite</translation>
  </message>
  <message>
   <source>add a larger sheet</source>
   <translation>eine größere Platte hinzufügen</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>verstellbarer Boden</translation>
  </message>
  <message>
   <source>adjustable shelves</source>
   <translation>verstellbare Böden</translation>
  </message>
  <message>
   <source>allowable lateral load, older NDS: screws C·D², nails C·D^1.5, end grain 2/3</source>
   <translation>zulässige Querlast, ältere NDS: Schrauben C·D², Nägel C·D^1.5, Hirnholz 2/3</translation>
  </message>
  <message>
   <source>allowed for the least strength of its standard; for the mean strengths published {0} to {1}</source>
   <translation>zulässig für die geringste Festigkeit seiner Norm; für die veröffentlichten mittleren Festigkeiten {0} bis {1}</translation>
  </message>
  <message>
   <source>allowed for the least yield of its grade, {0}</source>
   <translation>zulässig für die geringste Streckgrenze seiner Sorte, {0}</translation>
  </message>
  <message>
   <source>allowed for the weakest twentieth; clear wood bears {0} on average in a short test</source>
   <translation>zulässig für das schwächste Zwanzigstel; fehlerfreies Holz trägt im Kurzversuch durchschnittlich {0}</translation>
  </message>
  <message>
   <source>along the bench</source>
   <translation>längs der Bank</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>der Länge nach</translation>
  </message>
  <message>
   <source>aluminium 6063-T5: E 69 GPa; least yield 110 N/mm² (quoted) over 1.95 (from memory)</source>
   <translation>Aluminium 6063-T5: E 69 GPa; Mindeststreckgrenze 110 N/mm² (zitiert) durch 1.95 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>aluminium tube</source>
   <translation>Aluminiumrohr</translation>
  </message>
  <message>
   <source>an object by material</source>
   <translation>ein Objekt nach Material</translation>
  </message>
  <message>
   <source>anchor it; heavy things low; nothing tempting on top</source>
   <translation>verankern; Schweres nach unten; nichts Verlockendes obenauf</translation>
  </message>
  <message>
   <source>angle to which the closet's own door opens</source>
   <translation>Winkel, bis zu dem die eigene Tür des Schranks öffnet</translation>
  </message>
  <message>
   <source>another line has the same id; give the quantity instead</source>
   <translation>eine andere Zeile hat dieselbe Kennung; stattdessen die Menge angeben</translation>
  </message>
  <message>
   <source>another line prices the same</source>
   <translation>eine andere Zeile gibt für dasselbe einen Preis an</translation>
  </message>
  <message>
   <source>another line says something else of the same part</source>
   <translation>eine andere Zeile sagt über dasselbe Teil etwas anderes</translation>
  </message>
  <message>
   <source>another one has the same key</source>
   <translation>ein anderer hat denselben Schlüssel</translation>
  </message>
  <message>
   <source>anti-tip anchors</source>
   <translation>Kippsicherungen</translation>
  </message>
  <message>
   <source>anti-tip anchors made to ASTM F3096, 50 lbf each (quoted)</source>
   <translation>Kippsicherungen nach ASTM F3096, je 50 lbf (zitiert)</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in brick; old mortar and perforated brick hold less</source>
   <translation>Lasten in Mauerziegel beim Hersteller der Anker erfragen; alter Mörtel und Lochziegel halten weniger</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in concrete</source>
   <translation>Lasten in Beton beim Hersteller der Anker erfragen</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in hollow block</source>
   <translation>Lasten in Hohlblockstein beim Hersteller der Anker erfragen</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in this gauge of steel, or have plywood or lumber set between the studs behind the cleats</source>
   <translation>Lasten in dieser Blechdicke beim Hersteller der Anker erfragen oder hinter den Tragleisten Sperrholz oder Kantholz zwischen die Ständer setzen lassen</translation>
  </message>
  <message>
   <source>assemble it inside</source>
   <translation>innen zusammenbauen</translation>
  </message>
  <message>
   <source>assembled it {0}: assemble it where it stands, or tip it up with help, never alone</source>
   <translation>zusammengebaut {0}: dort zusammenbauen, wo es steht, oder mit Hilfe aufrichten, nie allein</translation>
  </message>
  <message>
   <source>at least {0}</source>
   <translation>mindestens {0}</translation>
  </message>
  <message>
   <source>at least {0} are needed</source>
   <translation>mindestens {0} sind nötig</translation>
  </message>
  <message>
   <source>at least {0}°</source>
   <translation>mindestens {0}°</translation>
  </message>
  <message>
   <source>at midspan</source>
   <translation>in Feldmitte</translation>
  </message>
  <message>
   <source>at most {0} pieces in all</source>
   <translation>höchstens {0} Stücke insgesamt</translation>
  </message>
  <message>
   <source>at most {0} without one</source>
   <translation>höchstens {0} ohne eine</translation>
  </message>
  <message>
   <source>at most {0}; measure what is sound and list that</source>
   <translation>höchstens {0}; messen, was heil ist, und das auflisten</translation>
  </message>
  <message>
   <source>at the free end</source>
   <translation>am freien Ende</translation>
  </message>
  <message>
   <source>at the rear wall</source>
   <translation>an der hinteren Wand</translation>
  </message>
  <message>
   <source>back</source>
   <translation>Rückwand</translation>
  </message>
  <message>
   <source>back baseboard</source>
   <translation>Sockelleiste hinten</translation>
  </message>
  <message>
   <source>back bow</source>
   <translation>Wölbung hinten</translation>
  </message>
  <message>
   <source>back bow up</source>
   <translation>Wölbung hinten aufwärts</translation>
  </message>
  <message>
   <source>back cleat {0}</source>
   <translation>hintere Tragleiste {0}</translation>
  </message>
  <message>
   <source>back lean</source>
   <translation>Neigung hinten</translation>
  </message>
  <message>
   <source>back skew</source>
   <translation>Schiefe hinten</translation>
  </message>
  <message>
   <source>back to dividers</source>
   <translation>Rückwand an Mittelseiten</translation>
  </message>
  <message>
   <source>back twist</source>
   <translation>Verwindung hinten</translation>
  </message>
  <message>
   <source>back wall</source>
   <translation>Rückwand</translation>
  </message>
  <message>
   <source>back {0}</source>
   <translation>Rückwand {0}</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>Stab</translation>
  </message>
  <message>
   <source>base cross member {0}</source>
   <translation>Sockel-Querholz {0}</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>Sockelrahmen</translation>
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation>Sockelrahmen, an den Fußboden angepasst</translation>
  </message>
  <message>
   <source>base front rail</source>
   <translation>vorderes Sockelrahmenholz</translation>
  </message>
  <message>
   <source>base height</source>
   <translation>Sockelhöhe</translation>
  </message>
  <message>
   <source>base rear rail</source>
   <translation>hinteres Sockelrahmenholz</translation>
  </message>
  <message>
   <source>base setback</source>
   <translation>Sockelrücksprung</translation>
  </message>
  <message>
   <source>bay</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>bay {0}</source>
   <translation>Feld {0}</translation>
  </message>
  <message>
   <source>bay {0} loose shelf {1}</source>
   <translation>Feld {0} verstellbarer Boden {1}</translation>
  </message>
  <message>
   <source>bay {0} rail {1}</source>
   <translation>Feld {0} Leiste {1}</translation>
  </message>
  <message>
   <source>bay {0} shelf {1}</source>
   <translation>Feld {0} Boden {1}</translation>
  </message>
  <message>
   <source>bay {0} {1} cleat</source>
   <translation>Feld {0} Tragleiste {1}</translation>
  </message>
  <message>
   <source>bays</source>
   <translation>Felder</translation>
  </message>
  <message>
   <source>beam</source>
   <translation>Balken</translation>
  </message>
  <message>
   <source>bearers to posts</source>
   <translation>Tragriegel an Pfosten</translation>
  </message>
  <message>
   <source>below the upper rod</source>
   <translation>unter der oberen Stange</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>Bankblende</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>Bankgestell</translation>
  </message>
  <message>
   <source>bench rails to trestles</source>
   <translation>Bank-Rahmenhölzer an Böcke</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>Bankplatte</translation>
  </message>
  <message>
   <source>bench top to rails</source>
   <translation>Bankplatte an Rahmenhölzer</translation>
  </message>
  <message>
   <source>beside what stands there</source>
   <translation>neben dem, was dort steht</translation>
  </message>
  <message>
   <source>between the sides</source>
   <translation>zwischen den Seiten</translation>
  </message>
  <message>
   <source>bill</source>
   <translation>Stückliste</translation>
  </message>
  <message>
   <source>bill and papers</source>
   <translation>Stückliste und Papiere</translation>
  </message>
  <message>
   <source>boards or bars that can be bought, whose parts have no width; may come again</source>
   <translation>Bretter oder Stäbe, die gekauft werden können und deren Teile keine Breite haben; mehrfach möglich</translation>
  </message>
  <message>
   <source>bottom and top to sides and dividers</source>
   <translation>Unter- und Oberboden an Seiten und Mittelseiten</translation>
  </message>
  <message>
   <source>bottom rail</source>
   <translation>unterer Querfries</translation>
  </message>
  <message>
   <source>bow of the back wall from left to right</source>
   <translation>Wölbung der Rückwand von links nach rechts</translation>
  </message>
  <message>
   <source>bow of the back wall on its way up</source>
   <translation>Wölbung der Rückwand nach oben</translation>
  </message>
  <message>
   <source>bow of the ceiling from left to right</source>
   <translation>Wölbung der Decke von links nach rechts</translation>
  </message>
  <message>
   <source>bow of the floor from left to right</source>
   <translation>Wölbung des Bodens von links nach rechts</translation>
  </message>
  <message>
   <source>bow of the left wall</source>
   <translation>Wölbung der linken Wand</translation>
  </message>
  <message>
   <source>bow of the right wall</source>
   <translation>Wölbung der rechten Wand</translation>
  </message>
  <message>
   <source>bow of the side walls</source>
   <translation>Wölbung der Seitenwände</translation>
  </message>
  <message>
   <source>box front</source>
   <translation>Kastenvorderstück</translation>
  </message>
  <message>
   <source>butt, screwed</source>
   <translation>stumpf, geschraubt</translation>
  </message>
  <message>
   <source>by readings</source>
   <translation>nach Messwerten</translation>
  </message>
  <message>
   <source>by rule</source>
   <translation>nach Regel</translation>
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation>mit Schrauben oder Nägeln durch die Seiten</translation>
  </message>
  <message>
   <source>by sizes</source>
   <translation>nach Maßen</translation>
  </message>
  <message>
   <source>by the gap</source>
   <translation>nach dem Spalt</translation>
  </message>
  <message>
   <source>by the inside width</source>
   <translation>nach der Innenbreite</translation>
  </message>
  <message>
   <source>by the opening</source>
   <translation>nach der Öffnung</translation>
  </message>
  <message>
   <source>cables and pipes run in walls: find them with a detector, switch the circuit off, and drive no screw deeper than it needs; {0}</source>
   <translation>in Wänden laufen Kabel und Rohre: mit einem Suchgerät orten, den Stromkreis abschalten und keine Schraube tiefer eindrehen als nötig; {0}</translation>
  </message>
  <message>
   <source>cannot be built</source>
   <translation>kann nicht gebaut werden</translation>
  </message>
  <message>
   <source>cannot be opened ({0})</source>
   <translation>kann nicht geöffnet werden ({0})</translation>
  </message>
  <message>
   <source>cannot be read from {0}; {1}</source>
   <translation>kann aus {0} nicht gelesen werden; {1}</translation>
  </message>
  <message>
   <source>cannot be right</source>
   <translation>kann nicht stimmen</translation>
  </message>
  <message>
   <source>cannot be written ({0}); see whether the folder may be written to and the disk has room</source>
   <translation>kann nicht geschrieben werden ({0}); prüfen, ob der Ordner beschreibbar ist und der Datenträger Platz hat</translation>
  </message>
  <message>
   <source>cannot come out: {0} in the way</source>
   <translation>kann nicht heraus: {0} im Weg</translation>
  </message>
  <message>
   <source>cannot stand open while {0} does</source>
   <translation>kann nicht offen stehen, während {0} offen steht</translation>
  </message>
  <message>
   <source>carcass</source>
   <translation>Korpus</translation>
  </message>
  <message>
   <source>carcass to base frame</source>
   <translation>Korpus an Sockelrahmen</translation>
  </message>
  <message>
   <source>carcasses</source>
   <translation>Korpusse</translation>
  </message>
  <message>
   <source>carry it upright between two, one hand under the lower edge and one on top, in gloves, and not in wind; stand it steeply against a wall, and chock it; or have it cut to the strips that you need where you buy it</source>
   <translation>aufrecht zu zweit tragen, eine Hand unter der Unterkante und eine oben, mit Handschuhen, nicht bei Wind; steil an eine Wand stellen und gegen Wegrutschen verkeilen; oder gleich beim Händler in die benötigten Streifen schneiden lassen</translation>
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation>Bekleidung und Sockelleiste</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>Katalog</translation>
  </message>
  <message>
   <source>ceiling bow</source>
   <translation>Wölbung Decke</translation>
  </message>
  <message>
   <source>ceiling twist</source>
   <translation>Verwindung Decke</translation>
  </message>
  <message>
   <source>cells</source>
   <translation>Zellen</translation>
  </message>
  <message>
   <source>centre</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <source>chi-squared test, 0.1 %</source>
   <translation>Chi-Quadrat-Test, 0.1 %</translation>
  </message>
  <message>
   <source>child's reach</source>
   <translation>Reichweite eines Kindes</translation>
  </message>
  <message>
   <source>children climb open shelves and drawers like a ladder: fasten everything to the wall before use, heavy things low, nothing tempting on top, nothing poisonous, sharp or small within reach; {0}</source>
   <translation>Kinder klettern an offenen Böden und Schubladen hoch wie an einer Leiter: alles vor Gebrauch an der Wand befestigen, Schweres nach unten, nichts Verlockendes obenauf, nichts Giftiges, Scharfes oder Kleines in Reichweite; {0}</translation>
  </message>
  <message>
   <source>circular saw along a straightedge</source>
   <translation>Handkreissäge an der Führungsschiene</translation>
  </message>
  <message>
   <source>circumstances</source>
   <translation>Umstände</translation>
  </message>
  <message>
   <source>clear height under the rails</source>
   <translation>lichte Höhe unter den Querfriesen</translation>
  </message>
  <message>
   <source>clear of the door</source>
   <translation>frei von der Tür</translation>
  </message>
  <message>
   <source>clearance above</source>
   <translation>Freiraum oben</translation>
  </message>
  <message>
   <source>clearance at each side</source>
   <translation>Freiraum an jeder Seite</translation>
  </message>
  <message>
   <source>clearances</source>
   <translation>Freiräume</translation>
  </message>
  <message>
   <source>cleat height</source>
   <translation>Höhe der Tragleiste</translation>
  </message>
  <message>
   <source>cleats of shoe shelves</source>
   <translation>Tragleisten der Schuhböden</translation>
  </message>
  <message>
   <source>cleats on the side walls, or a height at which it lies on a carcass</source>
   <translation>Tragleisten an den Seitenwänden, oder eine Höhe, in der er auf einem Korpus liegt</translation>
  </message>
  <message>
   <source>cleats to sides and dividers</source>
   <translation>Tragleisten an Seiten und Mittelseiten</translation>
  </message>
  <message>
   <source>cleats to the studs</source>
   <translation>Tragleisten an die Ständer</translation>
  </message>
  <message>
   <source>climate</source>
   <translation>Klima</translation>
  </message>
  <message>
   <source>closet</source>
   <translation>Einbauschrank</translation>
  </message>
  <message>
   <source>closet planning, as quoted: 24 in with the rod 12 in from the wall</source>
   <translation>Schrankplanung, wie zitiert: 24 in mit der Stange 12 in von der Wand</translation>
  </message>
  <message>
   <source>closetbench: {0}
</source>
   <translation>closetbench: {0}
</translation>
  </message>
  <message>
   <source>closets in the file</source>
   <translation>Einbauschränke in der Datei</translation>
  </message>
  <message>
   <source>clothes</source>
   <translation>Kleidung</translation>
  </message>
  <message>
   <source>clothes on hangers are deeper than the bay: they stand out at the front or rub against a door</source>
   <translation>Kleidung auf Bügeln ist tiefer als das Feld: sie steht vorn vor oder reibt an einer Tür</translation>
  </message>
  <message>
   <source>clothes on hangers are wider than the bay: they rub against its sides</source>
   <translation>Kleidung auf Bügeln ist breiter als das Feld: sie reibt an dessen Seiten</translation>
  </message>
  <message>
   <source>clothes on the {0}</source>
   <translation>Kleidung auf {0}</translation>
  </message>
  <message>
   <source>cm centimetre centimetres centimeter centimeters</source>
   <translation>cm centimetre centimetres centimeter centimeters</translation>
  </message>
  <message>
   <source>column</source>
   <translation>Spalte</translation>
  </message>
  <message>
   <source>comes out only after {0} is opened to {1}° or more</source>
   <translation>kommt erst heraus, wenn {0} auf {1}° oder mehr geöffnet ist</translation>
  </message>
  <message>
   <source>comes out with less than {0} to spare beside {1}: the tape knows it no better; move it away or measure there again</source>
   <translation>kommt mit weniger als {0} Luft heraus neben: {1}; genauer weiß es das Maßband nicht; wegrücken oder dort noch einmal messen</translation>
  </message>
  <message>
   <source>comes twice in one object; give it once</source>
   <translation>kommt in einem Objekt zweimal vor; einmal angeben</translation>
  </message>
  <message>
   <source>common practice, no published source</source>
   <translation>übliche Praxis, keine veröffentlichte Quelle</translation>
  </message>
  <message>
   <source>compartment</source>
   <translation>Fach</translation>
  </message>
  <message>
   <source>confidence</source>
   <translation>Sicherheit</translation>
  </message>
  <message>
   <source>contradict each other by {0} mm or more; measure these again</source>
   <translation>widersprechen einander um {0} mm oder mehr; diese neu messen</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>Eckboden</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <source>creep: NDS 3.5.2 (seasoned lumber 1.5), APA Panel Design Specification 4.5 (plywood 2), trade guide for MDF shelves (1.5), EN 1995-1-1 Table 3.2 (quoted) with four fifths of the load lasting</source>
   <translation>Kriechen: NDS 3.5.2 (trockenes Bauholz 1.5), APA Panel Design Specification 4.5 (Sperrholz 2), Branchenleitfaden für MDF-Böden (1.5), EN 1995-1-1 Table 3.2 (zitiert) mit vier Fünfteln der Last dauernd</translation>
  </message>
  <message>
   <source>currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <source>cut layout</source>
   <translation>Zuschnittplan</translation>
  </message>
  <message>
   <source>cut settings</source>
   <translation>Zuschnitteinstellungen</translation>
  </message>
  <message>
   <source>cuts</source>
   <translation>Schnitte</translation>
  </message>
  <message>
   <source>damp</source>
   <translation>feucht</translation>
  </message>
  <message>
   <source>dead space</source>
   <translation>toter Raum</translation>
  </message>
  <message>
   <source>deepest groove as a fraction of the thickness</source>
   <translation>größte Nuttiefe als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>defect</source>
   <translation>Mangel</translation>
  </message>
  <message>
   <source>defect {0}</source>
   <translation>Fehlstelle {0}</translation>
  </message>
  <message>
   <source>defects</source>
   <translation>Mängel</translation>
  </message>
  <message>
   <source>defects = [{0}]</source>
   <translation>defects = [{0}]</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>Tiefe</translation>
  </message>
  <message>
   <source>depth along the back</source>
   <translation>Tiefe entlang hinten</translation>
  </message>
  <message>
   <source>depth along the left wall</source>
   <translation>Tiefe an der linken Wand</translation>
  </message>
  <message>
   <source>depth along the right wall</source>
   <translation>Tiefe an der rechten Wand</translation>
  </message>
  <message>
   <source>depth along the side</source>
   <translation>Tiefe entlang der Seite</translation>
  </message>
  <message>
   <source>depth between front and rear post</source>
   <translation>Tiefe zwischen vorderem und hinterem Pfosten</translation>
  </message>
  <message>
   <source>depth for hangers</source>
   <translation>Tiefe für Bügel</translation>
  </message>
  <message>
   <source>depth in the middle, high</source>
   <translation>Tiefe in der Mitte, hoch</translation>
  </message>
  <message>
   <source>depth in the middle, low</source>
   <translation>Tiefe in der Mitte, tief</translation>
  </message>
  <message>
   <source>depth near the left wall, high</source>
   <translation>Tiefe nahe der linken Wand, hoch</translation>
  </message>
  <message>
   <source>depth near the right wall, high</source>
   <translation>Tiefe nahe der rechten Wand, hoch</translation>
  </message>
  <message>
   <source>diagonal at the back, rising to the left</source>
   <translation>Diagonale hinten, nach links steigend</translation>
  </message>
  <message>
   <source>diagonal at the back, rising to the right</source>
   <translation>Diagonale hinten, nach rechts steigend</translation>
  </message>
  <message>
   <source>diagonal at the front, rising to the left</source>
   <translation>Diagonale vorn, nach links steigend</translation>
  </message>
  <message>
   <source>diagonal at the front, rising to the right</source>
   <translation>Diagonale vorn, nach rechts steigend</translation>
  </message>
  <message>
   <source>diagonal from front left to back right</source>
   <translation>Diagonale von vorn links nach hinten rechts</translation>
  </message>
  <message>
   <source>diagonal from front left to back right, high</source>
   <translation>Diagonale von vorn links nach hinten rechts, hoch</translation>
  </message>
  <message>
   <source>diagonal from front right to back left</source>
   <translation>Diagonale von vorn rechts nach hinten links</translation>
  </message>
  <message>
   <source>diagonal from front right to back left, high</source>
   <translation>Diagonale von vorn rechts nach hinten links, hoch</translation>
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation>Diagonale im Aufriss</translation>
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation>Diagonale im Grundriss</translation>
  </message>
  <message>
   <source>distance</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>distance from a fixed panel</source>
   <translation>Abstand von einem festen Boden</translation>
  </message>
  <message>
   <source>distance from the front</source>
   <translation>Abstand von vorn</translation>
  </message>
  <message>
   <source>distance from the left</source>
   <translation>Abstand von links</translation>
  </message>
  <message>
   <source>distance of a pull's holes</source>
   <translation>Lochabstand eines Griffs</translation>
  </message>
  <message>
   <source>distance of the front row</source>
   <translation>Abstand der vorderen Reihe</translation>
  </message>
  <message>
   <source>distance of the pull from the free edge</source>
   <translation>Abstand des Griffs von der freien Kante</translation>
  </message>
  <message>
   <source>distance of the rear row</source>
   <translation>Abstand der hinteren Reihe</translation>
  </message>
  <message>
   <source>distance of the rod from the rear</source>
   <translation>Abstand der Stange von hinten</translation>
  </message>
  <message>
   <source>divider {0}</source>
   <translation>Mittelseite {0}</translation>
  </message>
  <message>
   <source>dividers with loose shelves on both sides are drilled right through; the pins of both bays share the holes</source>
   <translation>Mittelseiten mit verstellbaren Böden auf beiden Seiten werden durchgebohrt; die Bodenträger beider Felder teilen sich die Löcher</translation>
  </message>
  <message>
   <source>does not clear {0}, which stands before it when open: keep the pull-out farther from the hinges, or take hinges that throw the door clear</source>
   <translation>kommt nicht an {0} vorbei, das offen davor steht: den Auszug weiter von den Scharnieren weg setzen oder Scharniere nehmen, die die Tür freistellen</translation>
  </message>
  <message>
   <source>does not go in through the opening assembled ({0}), but its parts do: assemble it inside</source>
   <translation>geht zusammengebaut nicht durch die Öffnung ({0}), seine Teile aber schon: innen zusammenbauen</translation>
  </message>
  <message>
   <source>does not go in through the opening: {0}; {1}</source>
   <translation>geht nicht durch die Öffnung: {0}; {1}</translation>
  </message>
  <message>
   <source>does not go with {0} mm for the {1} of its kind: one was read in another unit; write the unit behind it</source>
   <translation>passt nicht zu {0} mm für {1} seiner Art: eines wurde in einer anderen Einheit gemessen; die Einheit dahinterschreiben</translation>
  </message>
  <message>
   <source>drawer</source>
   <translation>Schublade</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>Kastenhinterstück</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>Kastenboden</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>Kastenvorderstück</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>Kastenseite</translation>
  </message>
  <message>
   <source>drawer boxes</source>
   <translation>Schubkästen</translation>
  </message>
  <message>
   <source>drawer fronts and the boxes behind them</source>
   <translation>Schubladenfronten und die Kästen dahinter</translation>
  </message>
  <message>
   <source>drawer {0}</source>
   <translation>Schublade {0}</translation>
  </message>
  <message>
   <source>drilling masonry raises silica dust: drill with extraction and wear a respirator (OSHA limit 50 µg/m³, 29 CFR 1926.1153)</source>
   <translation>Bohren in Mauerwerk wirbelt Quarzstaub auf: mit Absaugung bohren und Atemschutz tragen (OSHA-Grenzwert 50 µg/m³, 29 CFR 1926.1153)</translation>
  </message>
  <message>
   <source>each of its {0} carries {1} on {2} x {3}</source>
   <translation>von seinen {0} trägt jedes Stück {1} auf {2} x {3}</translation>
  </message>
  <message>
   <source>edge band on the {0}</source>
   <translation>Kante an {0}</translation>
  </message>
  <message>
   <source>edge distance of the cups</source>
   <translation>Randabstand der Töpfe</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>leer</translation>
  </message>
  <message>
   <source>end clearance</source>
   <translation>Endspiel</translation>
  </message>
  <message>
   <source>end cleats</source>
   <translation>Endtragleisten</translation>
  </message>
  <message>
   <source>end cleats to sides and dividers</source>
   <translation>Endtragleisten an Seiten und Mittelseiten</translation>
  </message>
  <message>
   <source>ends</source>
   <translation>Enden</translation>
  </message>
  <message>
   <source>ends in the middle; {0}</source>
   <translation>endet in der Mitte; {0}</translation>
  </message>
  <message>
   <source>ends of hanging rods</source>
   <translation>Enden von Kleiderstangen</translation>
  </message>
  <message>
   <source>enter the kind of wall, and the studs' spacing and place</source>
   <translation>die Art der Wand sowie Abstand und Lage der Ständer eingeben</translation>
  </message>
  <message>
   <source>enter the readings, or a width, depth and height</source>
   <translation>die Messwerte oder Breite, Tiefe und Höhe eingeben</translation>
  </message>
  <message>
   <source>enter the use of the shelves: linen, general, books or stiff</source>
   <translation>die Verwendung der Böden eingeben: Wäsche, allgemein, Bücher oder steif</translation>
  </message>
  <message>
   <source>entry</source>
   <translation>Eintrag</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>Einbauraum</translation>
  </message>
  <message>
   <source>error of the level</source>
   <translation>Fehler der Wasserwaage</translation>
  </message>
  <message>
   <source>every one needs a key</source>
   <translation>jeder braucht einen Schlüssel</translation>
  </message>
  <message>
   <source>every part needs one</source>
   <translation>jedes Teil braucht eines</translation>
  </message>
  <message>
   <source>every plumb and level reading is 0, and 0 counts as read: take them with a level, or a wall that leans will not show</source>
   <translation>alle Lot- und Höhenwerte sind 0, und 0 gilt als gemessen: mit der Wasserwaage messen, sonst zeigt sich eine geneigte Wand nicht</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>vorhandenes Möbel</translation>
  </message>
  <message>
   <source>existing piece to the carcass</source>
   <translation>vorhandenes Möbel an den Korpus</translation>
  </message>
  <message>
   <source>extra readings</source>
   <translation>zusätzliche Messwerte</translation>
  </message>
  <message>
   <source>extra {0}</source>
   <translation>zusätzlich {0}</translation>
  </message>
  <message>
   <source>face frame to the carcass</source>
   <translation>Vorsatzrahmen an den Korpus</translation>
  </message>
  <message>
   <source>file</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>filler strip</source>
   <translation>Passleistenstreifen</translation>
  </message>
  <message>
   <source>fillers to carcasses</source>
   <translation>Passleisten an Korpusse</translation>
  </message>
  <message>
   <source>find out what the lath is nailed to, probe for the studs, and enter them as wood studs; the plaster and the lath carry nothing</source>
   <translation>herausfinden, woran die Latten genagelt sind, die Ständer ertasten und als Holzständer eingeben; Putz und Latten tragen nichts</translation>
  </message>
  <message>
   <source>first cut</source>
   <translation>erster Schnitt</translation>
  </message>
  <message>
   <source>first stud</source>
   <translation>erster Ständer</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>fester Boden</translation>
  </message>
  <message>
   <source>fixed shelves</source>
   <translation>feste Böden</translation>
  </message>
  <message>
   <source>fixed shelves to sides and dividers</source>
   <translation>feste Böden an Seiten und Mittelseiten</translation>
  </message>
  <message>
   <source>floor bow</source>
   <translation>Wölbung Boden</translation>
  </message>
  <message>
   <source>floor rise</source>
   <translation>Anstieg Boden</translation>
  </message>
  <message>
   <source>floor run</source>
   <translation>Verlauf Boden</translation>
  </message>
  <message>
   <source>floor twist</source>
   <translation>Verwindung Boden</translation>
  </message>
  <message>
   <source>flush with the side</source>
   <translation>bündig mit der Seite</translation>
  </message>
  <message>
   <source>folder</source>
   <translation>Ordner</translation>
  </message>
  <message>
   <source>foot</source>
   <translation>Fuß</translation>
  </message>
  <message>
   <source>for a {0}</source>
   <translation>für {0}</translation>
  </message>
  <message>
   <source>for hangers {0} mm wide on a rod {1}</source>
   <translation>für Bügel von {0} mm Breite an einer Stange {1}</translation>
  </message>
  <message>
   <source>for shoes; {0} mm are there for {1}</source>
   <translation>für Schuhe; {0} mm sind da für {1}</translation>
  </message>
  <message>
   <source>for the mean strengths published </source>
   <translation>für die veröffentlichten mittleren Festigkeiten </translation>
  </message>
  <message>
   <source>for the mean strengths published {0} to {1}</source>
   <translation>für die veröffentlichten mittleren Festigkeiten {0} bis {1}</translation>
  </message>
  <message>
   <source>free depth</source>
   <translation>freie Tiefe</translation>
  </message>
  <message>
   <source>frequency multiplier</source>
   <translation>Frequenzfaktor</translation>
  </message>
  <message>
   <source>from above</source>
   <translation>von oben</translation>
  </message>
  <message>
   <source>from front to rear</source>
   <translation>von vorn nach hinten</translation>
  </message>
  <message>
   <source>from the floor to the floor of the bays</source>
   <translation>vom Fußboden zum Boden der Felder</translation>
  </message>
  <message>
   <source>from the front, to clear the pins</source>
   <translation>von vorn, um an den Bodenträgern vorbeizukommen</translation>
  </message>
  <message>
   <source>from the side</source>
   <translation>von der Seite</translation>
  </message>
  <message>
   <source>from {0}</source>
   <translation>von {0}</translation>
  </message>
  <message>
   <source>from {0} to {1} mm</source>
   <translation>von {0} bis {1} mm</translation>
  </message>
  <message>
   <source>front</source>
   <translation>Front</translation>
  </message>
  <message>
   <source>front kick board</source>
   <translation>vordere Sockelblende</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>vordere Lippe</translation>
  </message>
  <message>
   <source>front post</source>
   <translation>vorderer Pfosten</translation>
  </message>
  <message>
   <source>front screws</source>
   <translation>Schrauben der Front</translation>
  </message>
  <message>
   <source>front wall</source>
   <translation>vordere Wand</translation>
  </message>
  <message>
   <source>fronts to drawer boxes</source>
   <translation>Fronten an Schubkästen</translation>
  </message>
  <message>
   <source>full of clothes it weighs more than its {0} may carry</source>
   <translation>voller Kleidung wiegt es mehr, als {0} daran tragen darf</translation>
  </message>
  <message>
   <source>full overlay</source>
   <translation>aufliegend</translation>
  </message>
  <message>
   <source>gap</source>
   <translation>Spalt</translation>
  </message>
  <message>
   <source>gap around the fronts</source>
   <translation>Spalt um die Fronten</translation>
  </message>
  <message>
   <source>general storage</source>
   <translation>allgemeine Lagerung</translation>
  </message>
  <message>
   <source>general storage with little sag</source>
   <translation>allgemeine Lagerung mit wenig Durchbiegung</translation>
  </message>
  <message>
   <source>geometry, hinges taken to turn about the edge of the leaf</source>
   <translation>Geometrie, Scharniere als um die Flügelkante drehend angenommen</translation>
  </message>
  <message>
   <source>geometry; ways that turn are searched with {0} mm to spare all round, the closet empty and its own door taken off</source>
   <translation>Geometrie; Wege mit Drehung werden mit {0} mm Luft ringsum gesucht, der Schrank leer und seine eigene Tür ausgehängt</translation>
  </message>
  <message>
   <source>given</source>
   <translation>vorgegeben</translation>
  </message>
  <message>
   <source>given twice</source>
   <translation>zweimal angegeben</translation>
  </message>
  <message>
   <source>glue the {0} as well, which then carries; or grooves</source>
   <translation>{0} zusätzlich leimen, der Leim trägt dann; oder Nuten</translation>
  </message>
  <message>
   <source>goes with no room that the other readings allow; about {0} mm was expected; measure it again</source>
   <translation>passt zu keinem Raum, den die anderen Messwerte zulassen; etwa {0} mm wurden erwartet; neu messen</translation>
  </message>
  <message>
   <source>grain</source>
   <translation>Faser</translation>
  </message>
  <message>
   <source>grain = {0}</source>
   <translation>Faser = {0}</translation>
  </message>
  <message>
   <source>greatest {0}</source>
   <translation>größte {0}</translation>
  </message>
  <message>
   <source>groove depth</source>
   <translation>Nuttiefe</translation>
  </message>
  <message>
   <source>groove depth as a fraction of the thickness</source>
   <translation>Nuttiefe als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>groove stop</source>
   <translation>Nutende</translation>
  </message>
  <message>
   <source>grooves and notches</source>
   <translation>Nuten und Ausklinkungen</translation>
  </message>
  <message>
   <source>grooves run through the edge band at the front; stop them short of it</source>
   <translation>Nuten laufen vorn durch die Kante; sie davor enden lassen</translation>
  </message>
  <message>
   <source>half lap</source>
   <translation>Überblattung</translation>
  </message>
  <message>
   <source>half overlay</source>
   <translation>halb aufliegend</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>Kleiderstange</translation>
  </message>
  <message>
   <source>hanging rods</source>
   <translation>Kleiderstangen</translation>
  </message>
  <message>
   <source>hanging rods between the ends</source>
   <translation>Kleiderstangen zwischen den Enden</translation>
  </message>
  <message>
   <source>hangs lower or higher than rods usually do (one rod about {0} to {1})</source>
   <translation>hängt tiefer oder höher als Stangen sonst (eine Stange etwa {0} bis {1})</translation>
  </message>
  <message>
   <source>hangs lower than rods for {0} things usually do, under what lies above it</source>
   <translation>hängt tiefer als Stangen für {0} sonst, unter dem, was darüber liegt</translation>
  </message>
  <message>
   <source>has been altered: its maker's label, its anti-tip kit and its test count no more; it is computed as new, and must be anchored; {0}</source>
   <translation>wurde verändert: Typenschild, Kippsicherung und Prüfung des Herstellers gelten nicht mehr; es ist wie neu gerechnet und muss verankert werden; {0}</translation>
  </message>
  <message>
   <source>has fewer hinges than its height asks for</source>
   <translation>hat weniger Scharniere, als seine Höhe verlangt</translation>
  </message>
  <message>
   <source>has no reserve for the {0} that furniture tests hang on rails</source>
   <translation>hat keine Reserve für die {0}, die Möbelprüfungen an Stangen hängen</translation>
  </message>
  <message>
   <source>have it halved at the store</source>
   <translation>beim Händler halbieren lassen</translation>
  </message>
  <message>
   <source>head casing</source>
   <translation>obere Bekleidung</translation>
  </message>
  <message>
   <source>heading</source>
   <translation>Überschrift</translation>
  </message>
  <message>
   <source>height</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <source>height above the floor</source>
   <translation>Höhe über dem Boden</translation>
  </message>
  <message>
   <source>height at the back left</source>
   <translation>Höhe hinten links</translation>
  </message>
  <message>
   <source>height at the back right</source>
   <translation>Höhe hinten rechts</translation>
  </message>
  <message>
   <source>height at the back, in the middle</source>
   <translation>Höhe hinten, in der Mitte</translation>
  </message>
  <message>
   <source>height at the front left</source>
   <translation>Höhe vorn links</translation>
  </message>
  <message>
   <source>height at the front right</source>
   <translation>Höhe vorn rechts</translation>
  </message>
  <message>
   <source>height at the front, in the middle</source>
   <translation>Höhe vorn, in der Mitte</translation>
  </message>
  <message>
   <source>height for each shelf</source>
   <translation>Höhe für jeden Boden</translation>
  </message>
  <message>
   <source>height of a door</source>
   <translation>Höhe einer Tür</translation>
  </message>
  <message>
   <source>height of a fixed shelf</source>
   <translation>Höhe eines festen Bodens</translation>
  </message>
  <message>
   <source>height of a front</source>
   <translation>Höhe einer Front</translation>
  </message>
  <message>
   <source>height of its centre</source>
   <translation>Höhe seiner Mitte</translation>
  </message>
  <message>
   <source>height of shelf {0}</source>
   <translation>Höhe von Boden {0}</translation>
  </message>
  <message>
   <source>height of the baseboard</source>
   <translation>Höhe der Sockelleiste</translation>
  </message>
  <message>
   <source>height of the bottom rail</source>
   <translation>Höhe des unteren Querfrieses</translation>
  </message>
  <message>
   <source>height of the box</source>
   <translation>Höhe des Kastens</translation>
  </message>
  <message>
   <source>height of the cleats</source>
   <translation>Höhe der Tragleisten</translation>
  </message>
  <message>
   <source>height of the feet</source>
   <translation>Höhe der Füße</translation>
  </message>
  <message>
   <source>height of the hands</source>
   <translation>Höhe der Hände</translation>
  </message>
  <message>
   <source>height of the lip</source>
   <translation>Höhe der Lippe</translation>
  </message>
  <message>
   <source>height of the opening</source>
   <translation>Höhe der Öffnung</translation>
  </message>
  <message>
   <source>height of the opening at the left jamb</source>
   <translation>Höhe der Öffnung an der linken Laibung</translation>
  </message>
  <message>
   <source>height of the pull</source>
   <translation>Höhe des Griffs</translation>
  </message>
  <message>
   <source>height of the shelf rails</source>
   <translation>Höhe der Leisten vor den Böden</translation>
  </message>
  <message>
   <source>height of the shelves' lip</source>
   <translation>Höhe der Bodenlippe</translation>
  </message>
  <message>
   <source>height of the stop</source>
   <translation>Höhe des Anschlags</translation>
  </message>
  <message>
   <source>height of the top rail</source>
   <translation>Höhe des oberen Querfrieses</translation>
  </message>
  <message>
   <source>height of the upper rod</source>
   <translation>Höhe der oberen Stange</translation>
  </message>
  <message>
   <source>height of the wall over the opening</source>
   <translation>Höhe der Wand über der Öffnung</translation>
  </message>
  <message>
   <source>height over the opening</source>
   <translation>Höhe über der Öffnung</translation>
  </message>
  <message>
   <source>heights</source>
   <translation>Höhen</translation>
  </message>
  <message>
   <source>heights of the fronts</source>
   <translation>Höhen der Fronten</translation>
  </message>
  <message>
   <source>hinge cup</source>
   <translation>Scharniertopf</translation>
  </message>
  <message>
   <source>hinge it on the other side, make it narrower or part it in two</source>
   <translation>an der anderen Seite anschlagen, schmaler machen oder in zwei teilen</translation>
  </message>
  <message>
   <source>hinge plate</source>
   <translation>Montageplatte</translation>
  </message>
  <message>
   <source>hinge strip</source>
   <translation>Scharnierleiste</translation>
  </message>
  <message>
   <source>hinged at the left</source>
   <translation>links angeschlagen</translation>
  </message>
  <message>
   <source>hinged at the right</source>
   <translation>rechts angeschlagen</translation>
  </message>
  <message>
   <source>holds back {0}</source>
   <translation>hält {0} zurück</translation>
  </message>
  <message>
   <source>hollow block</source>
   <translation>Hohlblockstein</translation>
  </message>
  <message>
   <source>in a groove all round</source>
   <translation>in umlaufender Nut</translation>
  </message>
  <message>
   <source>in grooves</source>
   <translation>in Nuten</translation>
  </message>
  <message>
   <source>in its compartment</source>
   <translation>in seinem Fach</translation>
  </message>
  <message>
   <source>in its lip; allowed for the least strength of that one's standard</source>
   <translation>in seiner Lippe; zulässig für die geringste Festigkeit von deren Norm</translation>
  </message>
  <message>
   <source>in the envelope</source>
   <translation>im Einbauraum</translation>
  </message>
  <message>
   <source>in this depth</source>
   <translation>in dieser Tiefe</translation>
  </message>
  <message>
   <source>in {0} mm of depth with {1} mm behind it</source>
   <translation>in {0} mm Tiefe mit {1} mm dahinter</translation>
  </message>
  <message>
   <source>inset of the back</source>
   <translation>Einrückung der Rückwand</translation>
  </message>
  <message>
   <source>is a board's key too; give the bar another</source>
   <translation>ist auch Schlüssel einer Platte; dem Stab einen anderen geben</translation>
  </message>
  <message>
   <source>is fastened to nothing: find where its sides can be screwed through to the carcass, or anchor it to the wall, before its drawers are used; {0}</source>
   <translation>ist an nichts befestigt: herausfinden, wo seine Seiten mit dem Korpus verschraubt werden können, oder an der Wand verankern, bevor seine Schubladen benutzt werden; {0}</translation>
  </message>
  <message>
   <source>is higher or lower than people sit well on</source>
   <translation>ist höher oder tiefer, als man gut sitzt</translation>
  </message>
  <message>
   <source>is made for dry, heated rooms; ask its maker for figures in damp air</source>
   <translation>ist für trockene, beheizte Räume gemacht; den Hersteller nach Werten in feuchter Luft fragen</translation>
  </message>
  <message>
   <source>is more than three people should lift by hand</source>
   <translation>ist mehr, als drei Personen von Hand heben sollten</translation>
  </message>
  <message>
   <source>is no key of this table; {0}</source>
   <translation>ist kein Schlüssel dieser Tabelle; {0}</translation>
  </message>
  <message>
   <source>is no table here; {0}</source>
   <translation>ist hier keine Tabelle; {0}</translation>
  </message>
  <message>
   <source>is not JSON ({0})</source>
   <translation>ist kein JSON ({0})</translation>
  </message>
  <message>
   <source>is not in the catalogue; {0}</source>
   <translation>ist nicht im Katalog; {0}</translation>
  </message>
  <message>
   <source>is not in the plan</source>
   <translation>ist nicht im Plan</translation>
  </message>
  <message>
   <source>is not in the table of load cases; give the loads one by one</source>
   <translation>ist nicht in der Tabelle der Lastfälle; die Lasten einzeln angeben</translation>
  </message>
  <message>
   <source>is not known; known: {0}</source>
   <translation>ist nicht bekannt; bekannt: {0}</translation>
  </message>
  <message>
   <source>is not there</source>
   <translation>ist nicht da</translation>
  </message>
  <message>
   <source>is there twice; give it once</source>
   <translation>ist zweimal da; einmal angeben</translation>
  </message>
  <message>
   <source>is thinner than rods are made</source>
   <translation>ist dünner, als Stangen gemacht werden</translation>
  </message>
  <message>
   <source>is too long and wide for one person to handle, though not too heavy</source>
   <translation>ist zu lang und breit für eine Person, wenn auch nicht zu schwer</translation>
  </message>
  <message>
   <source>is too narrow for two cuts: leave nothing, exactly a kerf of {0} mm to a neighbour, or more than two</source>
   <translation>ist zu schmal für zwei Schnitte: nichts lassen, genau eine Schnittfuge von {0} mm zum Nachbarn, oder mehr als zwei</translation>
  </message>
  <message>
   <source>is too near to what is stored: fire; move the shelf or the light; {0}</source>
   <translation>ist zu nah am Lagergut: Brandgefahr; den Boden oder die Leuchte versetzen; {0}</translation>
  </message>
  <message>
   <source>is too short</source>
   <translation>ist zu kurz</translation>
  </message>
  <message>
   <source>is too thin for the pocket screws in the list: they come out at the face</source>
   <translation>ist zu dünn für die Taschenschrauben der Liste: sie treten an der Fläche aus</translation>
  </message>
  <message>
   <source>is wider than the number of hinges is meant for: it sags and pulls on them; make a pair of it</source>
   <translation>ist breiter, als für diese Zahl von Scharnieren vorgesehen: sie senkt sich und zieht daran; ein Paar daraus machen</translation>
  </message>
  <message>
   <source>it cannot be made ({0})</source>
   <translation>kann nicht angelegt werden ({0})</translation>
  </message>
  <message>
   <source>it cannot be read ({0})</source>
   <translation>kann nicht gelesen werden ({0})</translation>
  </message>
  <message>
   <source>it cannot be read as TOML ({0})</source>
   <translation>kann nicht als TOML gelesen werden ({0})</translation>
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder is there and may be written to</source>
   <translation>kann nicht geschrieben werden ({0}); prüfen, ob der Ordner da und beschreibbar ist</translation>
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder may be written to, the disk is full or another program has the file open</source>
   <translation>kann nicht geschrieben werden ({0}); prüfen, ob der Ordner beschreibbar, der Datenträger voll oder die Datei in einem anderen Programm geöffnet ist</translation>
  </message>
  <message>
   <source>it carries {0} on {1} x {2}</source>
   <translation>trägt {0} auf {1} x {2}</translation>
  </message>
  <message>
   <source>it does not go straight through {0}</source>
   <translation>geht nicht gerade durch {0}</translation>
  </message>
  <message>
   <source>it gives {0} piece(s), {1} are named</source>
   <translation>ergibt {0} Stück, {1} sind benannt</translation>
  </message>
  <message>
   <source>it has neither cleats nor a back of {0} to screw through, and </source>
   <translation>hat weder Tragleisten noch eine Rückwand von {0} zum Durchschrauben, und </translation>
  </message>
  <message>
   <source>it is kept for that job</source>
   <translation>ist für diesen Auftrag aufgehoben</translation>
  </message>
  <message>
   <source>it is larger than the closet inside</source>
   <translation>ist größer als der Schrank innen</translation>
  </message>
  <message>
   <source>it leaves nothing of {0}; it must be less than {1}</source>
   <translation>lässt nichts von {0}; muss kleiner als {1} sein</translation>
  </message>
  <message>
   <source>it misses {0}</source>
   <translation>er verfehlt {0}</translation>
  </message>
  <message>
   <source>it must be 0 or more</source>
   <translation>muss 0 oder mehr sein</translation>
  </message>
  <message>
   <source>it must be 0 or more and leave something of {0}</source>
   <translation>muss 0 oder mehr sein und etwas von {0} lassen</translation>
  </message>
  <message>
   <source>it must be 0 or more, or none</source>
   <translation>muss 0 oder mehr sein, oder leer</translation>
  </message>
  <message>
   <source>it must be 2 or more (rips, then crosscuts), or none for no limit</source>
   <translation>muss 2 oder mehr sein (Längs-, dann Querschnitte), oder leer für keine Grenze</translation>
  </message>
  <message>
   <source>it must be a table</source>
   <translation>muss eine Tabelle sein</translation>
  </message>
  <message>
   <source>it must be more than 0</source>
   <translation>muss mehr als 0 sein</translation>
  </message>
  <message>
   <source>it must be text in UTF-8</source>
   <translation>muss Text in UTF-8 sein</translation>
  </message>
  <message>
   <source>it must lie within 0 to {0}, its start first</source>
   <translation>muss innerhalb von 0 bis {0} liegen, der Anfang zuerst</translation>
  </message>
  <message>
   <source>it stands {0} from the wall: set it at the rear or anchor it with brackets</source>
   <translation>steht {0} von der Wand: nach hinten setzen oder mit Winkeln verankern</translation>
  </message>
  <message>
   <source>item</source>
   <translation>Posten</translation>
  </message>
  <message>
   <source>its bottom sags {0} under {1} of clothes</source>
   <translation>sein Boden hängt unter {1} Kleidung {0} durch</translation>
  </message>
  <message>
   <source>its diagonal of {0} does not go up under {1}: put it on a base of its own</source>
   <translation>seine Diagonale von {0} geht nicht unter {1} hoch: auf einen eigenen Sockel setzen</translation>
  </message>
  <message>
   <source>its end stile is cut with an allowance: offer it up plumb, scribe it to the wall and plane it down before the frame is joined</source>
   <translation>sein Endfries ist mit Zugabe geschnitten: lotrecht anhalten, an die Wand anreißen und abhobeln, bevor der Rahmen verbunden wird</translation>
  </message>
  <message>
   <source>its fronts are tapered to an opening that is out of square, each its own way: mark them as they are cut, measure both diagonals once more before that, and {0}</source>
   <translation>seine Fronten sind einer unwinkligen Öffnung angepasst, jede anders: beim Schneiden kennzeichnen, vorher beide Diagonalen noch einmal messen und {0}</translation>
  </message>
  <message>
   <source>its hinges hold on to the face frame: take plates for frames, or pack the sides out flush with it; their holes are not drilled</source>
   <translation>seine Scharniere sitzen am Vorsatzrahmen: Montageplatten für Rahmen nehmen oder die Seiten bündig damit auffüttern; ihre Bohrungen werden nicht gebohrt</translation>
  </message>
  <message>
   <source>its lid is glued up of boards: screw two battens under it through slotted holes, or it cups</source>
   <translation>sein Deckel ist aus Brettern verleimt: zwei Leisten durch Langlöcher darunterschrauben, sonst schüsselt er</translation>
  </message>
  <message>
   <source>its lip may break under {0} in time, if it is a weak one; the shelf alone would not{1}</source>
   <translation>seine Lippe kann unter {0} mit der Zeit brechen, wenn sie schwach ist; der Boden allein würde es nicht{1}</translation>
  </message>
  <message>
   <source>its own {0} hang on {1} x {2}</source>
   <translation>sein Eigengewicht von {0} hängt an {1} x {2}</translation>
  </message>
  <message>
   <source>its rails may break in {0} under {1}</source>
   <translation>seine Rahmenhölzer können in {0} unter {1} brechen</translation>
  </message>
  <message>
   <source>its rails sag {0} under {1}</source>
   <translation>seine Rahmenhölzer hängen unter {1} {0} durch</translation>
  </message>
  <message>
   <source>its top hinge is pulled with {0} by its own {1}, and with {2} when somebody leans on it as in the test</source>
   <translation>am obersten Scharnier ziehen {0} durch die eigenen {1}, und {2}, wenn sich jemand wie in der Prüfung darauf stützt</translation>
  </message>
  <message>
   <source>join it from two parts</source>
   <translation>aus zwei Teilen verbinden</translation>
  </message>
  <message>
   <source>joinery</source>
   <translation>Verbindungsart</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>Verbindung</translation>
  </message>
  <message>
   <source>joints of the face frame</source>
   <translation>Verbindungen des Vorsatzrahmens</translation>
  </message>
  <message>
   <source>just inside the front</source>
   <translation>knapp hinter der Vorderseite</translation>
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for</source>
   <translation>hat unter {0} auf Jahre weniger Festigkeitsreserve, als die Bemessung im Bauwesen verlangt</translation>
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for; the weakest board of its kind would break at {1}{2}{3}</source>
   <translation>hat unter {0} auf Jahre weniger Festigkeitsreserve, als die Bemessung im Bauwesen verlangt; die schwächste Platte ihrer Art bräche bei {1}{2}{3}</translation>
  </message>
  <message>
   <source>kept panel</source>
   <translation>aufgehobene Platte</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>Schnittfuge</translation>
  </message>
  <message>
   <source>key</source>
   <translation>Schlüssel</translation>
  </message>
  <message>
   <source>key = {0}</source>
   <translation>Schlüssel = {0}</translation>
  </message>
  <message>
   <source>kick boards to sides</source>
   <translation>Sockelblenden an Seiten</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>known are {0}</source>
   <translation>bekannt sind {0}</translation>
  </message>
  <message>
   <source>known: {0}</source>
   <translation>bekannt: {0}</translation>
  </message>
  <message>
   <source>larger than every sheet of {0}; the nearest, {1}, gives {2} x {3} inside its trim: </source>
   <translation>größer als jede Platte von {0}; die nächste, {1}, ergibt {2} x {3} innerhalb der Besäumung: </translation>
  </message>
  <message>
   <source>lateral load</source>
   <translation>Querlast</translation>
  </message>
  <message>
   <source>lean of the back wall at the left</source>
   <translation>Neigung der Rückwand links</translation>
  </message>
  <message>
   <source>lean of the back wall at the left, half way up</source>
   <translation>Neigung der Rückwand links, halbe Höhe</translation>
  </message>
  <message>
   <source>lean of the back wall at the right</source>
   <translation>Neigung der Rückwand rechts</translation>
  </message>
  <message>
   <source>lean of the back wall at the right, half way up</source>
   <translation>Neigung der Rückwand rechts, halbe Höhe</translation>
  </message>
  <message>
   <source>lean of the left edge</source>
   <translation>Neigung der linken Kante</translation>
  </message>
  <message>
   <source>lean of the left wall at the back</source>
   <translation>Neigung der linken Wand hinten</translation>
  </message>
  <message>
   <source>lean of the left wall at the front</source>
   <translation>Neigung der linken Wand vorn</translation>
  </message>
  <message>
   <source>lean of the left wall at the front, half way up</source>
   <translation>Neigung der linken Wand vorn, halbe Höhe</translation>
  </message>
  <message>
   <source>lean of the opening</source>
   <translation>Neigung der Öffnung</translation>
  </message>
  <message>
   <source>lean of the right edge</source>
   <translation>Neigung der rechten Kante</translation>
  </message>
  <message>
   <source>lean of the right wall at the back</source>
   <translation>Neigung der rechten Wand hinten</translation>
  </message>
  <message>
   <source>lean of the right wall at the front</source>
   <translation>Neigung der rechten Wand vorn</translation>
  </message>
  <message>
   <source>lean of the right wall at the front, half way up</source>
   <translation>Neigung der rechten Wand vorn, halbe Höhe</translation>
  </message>
  <message>
   <source>least web as a fraction of the thickness</source>
   <translation>Mindeststeg als Bruchteil der Dicke</translation>
  </message>
  <message>
   <source>leave nothing sound; take it out of the list</source>
   <translation>lassen nichts Heiles übrig; aus der Liste nehmen</translation>
  </message>
  <message>
   <source>leaves a wide gap in its bay: let the bay follow it, or cover the gap with strips</source>
   <translation>lässt einen breiten Spalt im Feld: das Feld nach ihm richten oder den Spalt mit Streifen abdecken</translation>
  </message>
  <message>
   <source>leaves no box of {0} mm beside, below, above or in front of it; check its sizes, or move it</source>
   <translation>lässt daneben, darunter, darüber oder davor keinen Quader von {0} mm; Maße prüfen oder versetzen</translation>
  </message>
  <message>
   <source>left baseboard</source>
   <translation>Sockelleiste links</translation>
  </message>
  <message>
   <source>left bow</source>
   <translation>Wölbung links</translation>
  </message>
  <message>
   <source>left casing</source>
   <translation>Bekleidung links</translation>
  </message>
  <message>
   <source>left end</source>
   <translation>linkes Ende</translation>
  </message>
  <message>
   <source>left lean</source>
   <translation>Neigung links</translation>
  </message>
  <message>
   <source>left return</source>
   <translation>linkes Wandstück</translation>
  </message>
  <message>
   <source>left side</source>
   <translation>linke Seite</translation>
  </message>
  <message>
   <source>left skew</source>
   <translation>Schiefe links</translation>
  </message>
  <message>
   <source>left stile</source>
   <translation>linker Längsfries</translation>
  </message>
  <message>
   <source>left twist</source>
   <translation>Verwindung links</translation>
  </message>
  <message>
   <source>left wall</source>
   <translation>linke Wand</translation>
  </message>
  <message>
   <source>length</source>
   <translation>Länge</translation>
  </message>
  <message>
   <source>length = {0}</source>
   <translation>Länge = {0}</translation>
  </message>
  <message>
   <source>length along the back</source>
   <translation>Länge entlang hinten</translation>
  </message>
  <message>
   <source>length along the side</source>
   <translation>Länge entlang der Seite</translation>
  </message>
  <message>
   <source>length format</source>
   <translation>Längenformat</translation>
  </message>
  <message>
   <source>length of the rod</source>
   <translation>Länge der Stange</translation>
  </message>
  <message>
   <source>length step</source>
   <translation>Längenschritt</translation>
  </message>
  <message>
   <source>length {0} of {1}</source>
   <translation>Länge {0} von {1}</translation>
  </message>
  <message>
   <source>lengths</source>
   <translation>Längen</translation>
  </message>
  <message>
   <source>less than 0 mm</source>
   <translation>weniger als 0 mm</translation>
  </message>
  <message>
   <source>let in under the back</source>
   <translation>unter der Rückwand eingelassen</translation>
  </message>
  <message>
   <source>let its grain run the other way</source>
   <translation>seine Faser andersherum laufen lassen</translation>
  </message>
  <message>
   <source>level it with shims: </source>
   <translation>mit Unterlagen ausrichten: </translation>
  </message>
  <message>
   <source>levelling</source>
   <translation>Ausrichten</translation>
  </message>
  <message>
   <source>levelling {0}</source>
   <translation>Ausrichten {0}</translation>
  </message>
  <message>
   <source>levels</source>
   <translation>Ebenen</translation>
  </message>
  <message>
   <source>lid supports on both sides, no latch, a gap at the hinge under {0} or over {1}</source>
   <translation>Deckelstützen an beiden Seiten, kein Riegel, ein Spalt am Scharnier unter {0} oder über {1}</translation>
  </message>
  <message>
   <source>lies behind the {0} return: no drawer or pull-out there; shelves reached from the side and rods are at home there</source>
   <translation>liegt hinter dem Wandstück {0}: dort keine Schublade und kein Auszug; von der Seite erreichte Böden und Stangen passen dorthin</translation>
  </message>
  <message>
   <source>lies on no sheet; plan again</source>
   <translation>liegt auf keiner Platte; neu planen</translation>
  </message>
  <message>
   <source>lies on {0} uprights and cleats at its ends: it takes two or it comes down</source>
   <translation>liegt auf {0} Stützen und Tragleisten an seinen Enden: es braucht zwei, sonst fällt er herunter</translation>
  </message>
  <message>
   <source>lies too far between its supports</source>
   <translation>liegt zu weit zwischen seinen Stützen</translation>
  </message>
  <message>
   <source>lift</source>
   <translation>anheben</translation>
  </message>
  <message>
   <source>light clearance</source>
   <translation>Abstand zur Leuchte</translation>
  </message>
  <message>
   <source>limits of the tools listed</source>
   <translation>Grenzen der aufgeführten Werkzeuge</translation>
  </message>
  <message>
   <source>line {0}</source>
   <translation>Zeile {0}</translation>
  </message>
  <message>
   <source>linen and clothes</source>
   <translation>Wäsche und Kleidung</translation>
  </message>
  <message>
   <source>lines</source>
   <translation>Zeilen</translation>
  </message>
  <message>
   <source>link the bill that it shows</source>
   <translation>die gezeigte Stückliste verknüpfen</translation>
  </message>
  <message>
   <source>link the closet that the bill is for</source>
   <translation>den Einbauschrank verknüpfen, für den die Stückliste ist</translation>
  </message>
  <message>
   <source>link the closet whose parts are cut</source>
   <translation>den Einbauschrank verknüpfen, dessen Teile geschnitten werden</translation>
  </message>
  <message>
   <source>lips to shelves</source>
   <translation>Lippen an Böden</translation>
  </message>
  <message>
   <source>load</source>
   <translation>Last</translation>
  </message>
  <message>
   <source>load as you entered it; sag: </source>
   <translation>Last wie eingegeben; Durchbiegung: </translation>
  </message>
  <message>
   <source>load case</source>
   <translation>Lastfall</translation>
  </message>
  <message>
   <source>loaded beyond the ends of its cleats alone it pulls at the {0} x {1} that hold it down on them, at the corner with {2}</source>
   <translation>jenseits der Enden seiner Tragleisten belastet, zieht er an den {0} x {1}, die ihn darauf halten, an der Ecke mit {2}</translation>
  </message>
  <message>
   <source>loaded sideways</source>
   <translation>quer belastet</translation>
  </message>
  <message>
   <source>local codes and a licensed professional come first</source>
   <translation>örtliche Vorschriften und eine zugelassene Fachkraft gehen vor</translation>
  </message>
  <message>
   <source>longer or more of them, glue as well, or grooves</source>
   <translation>längere oder mehr davon, zusätzlich Leim, oder Nuten</translation>
  </message>
  <message>
   <source>longer than every clear stretch in stock; the longest is {0}: join it from two, or add a longer one</source>
   <translation>länger als jede fehlerfreie Länge im Bestand; die längste ist {0}: aus zwei verbinden oder eine längere hinzufügen</translation>
  </message>
  <message>
   <source>longer than {0} and larger than {1}</source>
   <translation>länger als {0} und größer als {1}</translation>
  </message>
  <message>
   <source>lower drawers, or a slide of a heavier class</source>
   <translation>niedrigere Schubladen oder ein Auszug einer stärkeren Klasse</translation>
  </message>
  <message>
   <source>lower rod</source>
   <translation>untere Stange</translation>
  </message>
  <message>
   <source>lower than the 27 in from which the rule applies</source>
   <translation>niedriger als die 27 in, ab denen die Regel gilt</translation>
  </message>
  <message>
   <source>m metre metres meter meters</source>
   <translation>m metre metres meter meters</translation>
  </message>
  <message>
   <source>make it smaller</source>
   <translation>kleiner machen</translation>
  </message>
  <message>
   <source>make it smaller by {0}</source>
   <translation>um {0} kleiner machen</translation>
  </message>
  <message>
   <source>make it with a hand saw or a mitre saw, the piece clamped</source>
   <translation>mit Handsäge oder Gehrungssäge schneiden, das Stück eingespannt</translation>
  </message>
  <message>
   <source>make its {0} {1} less</source>
   <translation>{0} davon {1} kleiner machen</translation>
  </message>
  <message>
   <source>make room for a copy first</source>
   <translation>zuerst Platz für eine Kopie schaffen</translation>
  </message>
  <message>
   <source>make them {0} wide or less</source>
   <translation>{0} breit oder schmaler machen</translation>
  </message>
  <message>
   <source>make these cuts at home, with help; or let the store show that its saw is better, and enter that</source>
   <translation>diese Schnitte zu Hause mit Hilfe machen; oder sich vom Händler zeigen lassen, dass seine Säge genauer ist, und das eintragen</translation>
  </message>
  <message>
   <source>makes nothing at the {0}: the stile in front of {1} reaches to the wall there</source>
   <translation>macht nichts {0}: der Längsfries vor {1} reicht dort bis zur Wand</translation>
  </message>
  <message>
   <source>mark the low, middle and high level all round with the level, from the floor in the front left corner</source>
   <translation>tiefe, mittlere und hohe Ebene mit der Wasserwaage ringsum anzeichnen, vom Boden in der vorderen linken Ecke aus</translation>
  </message>
  <message>
   <source>mass</source>
   <translation>Masse</translation>
  </message>
  <message>
   <source>mass and pitch</source>
   <translation>Masse und Abstand</translation>
  </message>
  <message>
   <source>mass of its drawers</source>
   <translation>Masse seiner Schubladen</translation>
  </message>
  <message>
   <source>material</source>
   <translation>Material</translation>
  </message>
  <message>
   <source>material = {0}</source>
   <translation>Material = {0}</translation>
  </message>
  <message>
   <source>material {0}</source>
   <translation>Material {0}</translation>
  </message>
  <message>
   <source>may come down: </source>
   <translation>kann herunterfallen: </translation>
  </message>
  <message>
   <source>may come down: {0}, and {1}</source>
   <translation>kann herunterfallen: {0}, und {1}</translation>
  </message>
  <message>
   <source>may tip off its cleats: {0}</source>
   <translation>kann von seinen Tragleisten kippen: {0}</translation>
  </message>
  <message>
   <source>measured</source>
   <translation>gemessen</translation>
  </message>
  <message>
   <source>measures {0}, outside the {1} of its standard: measure again</source>
   <translation>misst {0}, außerhalb der {1} seiner Norm: neu messen</translation>
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation>melaminbeschichtete Spanplatte</translation>
  </message>
  <message>
   <source>mill sheets</source>
   <translation>Werksdatenblätter</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <source>mixes metric and inch units; {0}</source>
   <translation>mischt metrische und Zoll-Einheiten; {0}</translation>
  </message>
  <message>
   <source>mm millimetre millimetres millimeter millimeters</source>
   <translation>mm millimetre millimetres millimeter millimeters</translation>
  </message>
  <message>
   <source>model</source>
   <translation>Modell</translation>
  </message>
  <message>
   <source>moisture</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>more are needed</source>
   <translation>es sind mehr nötig</translation>
  </message>
  <message>
   <source>more or longer nails, or glue</source>
   <translation>mehr oder längere Nägel, oder Leim</translation>
  </message>
  <message>
   <source>more stages than the settings allow</source>
   <translation>mehr Stufen, als die Einstellungen erlauben</translation>
  </message>
  <message>
   <source>more than {0} times</source>
   <translation>mehr als {0}-mal</translation>
  </message>
  <message>
   <source>mouldings</source>
   <translation>Leisten</translation>
  </message>
  <message>
   <source>mullion {0}</source>
   <translation>Mittelfries {0}</translation>
  </message>
  <message>
   <source>must be 0 or 1 on a door</source>
   <translation>muss an einer Tür 0 oder 1 sein</translation>
  </message>
  <message>
   <source>must be 0 or more</source>
   <translation>muss 0 oder mehr sein</translation>
  </message>
  <message>
   <source>must be 0 or more and leave some of the run of {0} mm</source>
   <translation>muss 0 oder mehr sein und etwas vom Verlauf von {0} mm lassen</translation>
  </message>
  <message>
   <source>must be 0 or more, downward</source>
   <translation>muss 0 oder mehr sein, nach unten</translation>
  </message>
  <message>
   <source>must be 0 or more, or none</source>
   <translation>muss 0 oder mehr sein, oder leer</translation>
  </message>
  <message>
   <source>must be 0 to 10 mm in a metre</source>
   <translation>muss 0 bis 10 mm auf einen Meter sein</translation>
  </message>
  <message>
   <source>must be 0 to 1000 mm</source>
   <translation>muss 0 bis 1000 mm sein</translation>
  </message>
  <message>
   <source>must be 0 to 20000 mm</source>
   <translation>muss 0 bis 20000 mm sein</translation>
  </message>
  <message>
   <source>must be 0 to 500 mm</source>
   <translation>muss 0 bis 500 mm sein</translation>
  </message>
  <message>
   <source>must be 0 to {0} mm</source>
   <translation>muss 0 bis {0} mm sein</translation>
  </message>
  <message>
   <source>must be 0 to {0} mm on a board {1} mm thick{2}</source>
   <translation>muss 0 bis {0} mm sein an einer Platte von {1} mm Dicke{2}</translation>
  </message>
  <message>
   <source>must be 0 unless fronts are inset: an overlay hides it</source>
   <translation>muss 0 sein, wenn Fronten nicht einliegen: eine aufliegende verdeckt es</translation>
  </message>
  <message>
   <source>must be 0.01 to 20 mm: the step to which the tape was read</source>
   <translation>muss 0.01 bis 20 mm sein: der Schritt, auf den das Maßband abgelesen wurde</translation>
  </message>
  <message>
   <source>must be 0.5 to 0.999</source>
   <translation>muss 0.5 bis 0.999 sein</translation>
  </message>
  <message>
   <source>must be 1</source>
   <translation>muss 1 sein</translation>
  </message>
  <message>
   <source>must be 1 or 2</source>
   <translation>muss 1 oder 2 sein</translation>
  </message>
  <message>
   <source>must be 1 or more</source>
   <translation>muss 1 oder mehr sein</translation>
  </message>
  <message>
   <source>must be 1 or more to have gaps beside</source>
   <translation>muss 1 oder mehr sein, um Spalte daneben zu haben</translation>
  </message>
  <message>
   <source>must be 1 to 10</source>
   <translation>muss 1 bis 10 sein</translation>
  </message>
  <message>
   <source>must be 1 to 10 mm, or a front rubs on its neighbour</source>
   <translation>muss 1 bis 10 mm sein, sonst reibt eine Front an der nächsten</translation>
  </message>
  <message>
   <source>must be 1 to {0} in {1}</source>
   <translation>muss 1 bis {0} sein in {1}</translation>
  </message>
  <message>
   <source>must be 1 to {0} in {1}, bay {2}</source>
   <translation>muss 1 bis {0} sein in {1}, Feld {2}</translation>
  </message>
  <message>
   <source>must be 2 or more and leave {0} mm from one cup to the next in a door {1} mm high</source>
   <translation>muss 2 oder mehr sein und von Topf zu Topf {0} mm lassen in einer Tür von {1} mm Höhe</translation>
  </message>
  <message>
   <source>must be 2 under a lid: what lies between is in the way</source>
   <translation>muss unter einem Deckel 2 sein: was dazwischen liegt, ist im Weg</translation>
  </message>
  <message>
   <source>must be 30 to 180 degrees</source>
   <translation>muss 30 bis 180 Grad sein</translation>
  </message>
  <message>
   <source>must be 6 to 14 %</source>
   <translation>muss 6 bis 14 % sein</translation>
  </message>
  <message>
   <source>must be MATERIAL=LENGTH[@COST]</source>
   <translation>muss MATERIAL=LENGTH[@COST] sein</translation>
  </message>
  <message>
   <source>must be MATERIAL=LENGTHxWIDTH[@COST]</source>
   <translation>muss MATERIAL=LENGTHxWIDTH[@COST] sein</translation>
  </message>
  <message>
   <source>must be [from, to] along the length, or from, to, from, to with its width, in mm, each start first</source>
   <translation>muss [von, bis] entlang der Länge sein, oder von, bis, von, bis mit der Breite, in mm, jeweils der Anfang zuerst</translation>
  </message>
  <message>
   <source>must be a finite decimal such as 0.5 or 0.01</source>
   <translation>muss eine endliche Dezimalzahl wie 0.5 oder 0.01 sein</translation>
  </message>
  <message>
   <source>must be a finite number of millimetres</source>
   <translation>muss eine endliche Zahl von Millimetern sein</translation>
  </message>
  <message>
   <source>must be a key of the catalogue</source>
   <translation>muss ein Schlüssel des Katalogs sein</translation>
  </message>
  <message>
   <source>must be a length</source>
   <translation>muss eine Länge sein</translation>
  </message>
  <message>
   <source>must be a list</source>
   <translation>muss eine Liste sein</translation>
  </message>
  <message>
   <source>must be a list of [from, to]</source>
   <translation>muss eine Liste von [from, to] sein</translation>
  </message>
  <message>
   <source>must be a list of [from, to], or [from, to, from, to]</source>
   <translation>muss eine Liste von [von, bis] oder [von, bis, von, bis] sein</translation>
  </message>
  <message>
   <source>must be a list of lengths</source>
   <translation>muss eine Liste von Längen sein</translation>
  </message>
  <message>
   <source>must be a list of numbers</source>
   <translation>muss eine Liste von Zahlen sein</translation>
  </message>
  <message>
   <source>must be a name such as EUR</source>
   <translation>muss ein Name wie EUR sein</translation>
  </message>
  <message>
   <source>must be a number</source>
   <translation>muss eine Zahl sein</translation>
  </message>
  <message>
   <source>must be a number of mm</source>
   <translation>muss eine Zahl in mm sein</translation>
  </message>
  <message>
   <source>must be a number of mm above 0</source>
   <translation>muss eine Zahl in mm über 0 sein</translation>
  </message>
  <message>
   <source>must be a number or a fraction</source>
   <translation>muss eine Zahl oder ein Bruch sein</translation>
  </message>
  <message>
   <source>must be a number or none</source>
   <translation>muss eine Zahl oder leer sein</translation>
  </message>
  <message>
   <source>must be a table of keys and values</source>
   <translation>muss eine Tabelle von Schlüsseln und Werten sein</translation>
  </message>
  <message>
   <source>must be a text</source>
   <translation>muss ein Text sein</translation>
  </message>
  <message>
   <source>must be a whole number</source>
   <translation>muss eine ganze Zahl sein</translation>
  </message>
  <message>
   <source>must be a whole number from {0} on</source>
   <translation>muss eine ganze Zahl ab {0} sein</translation>
  </message>
  <message>
   <source>must be above 0</source>
   <translation>muss über 0 sein</translation>
  </message>
  <message>
   <source>must be above 0 and at most 1000 kg</source>
   <translation>muss über 0 und höchstens 1000 kg sein</translation>
  </message>
  <message>
   <source>must be above 0 and at most as wide as the groove, {0} mm</source>
   <translation>muss über 0 und höchstens so breit wie die Nut sein, {0} mm</translation>
  </message>
  <message>
   <source>must be above 0 and at most {0}</source>
   <translation>muss über 0 und höchstens {0} sein</translation>
  </message>
  <message>
   <source>must be above 0 and at most {0} mm in a panel {1} mm thick</source>
   <translation>muss über 0 und höchstens {0} mm sein in einer Platte von {1} mm Dicke</translation>
  </message>
  <message>
   <source>must be above 0 and below 20 m</source>
   <translation>muss über 0 und unter 20 m sein</translation>
  </message>
  <message>
   <source>must be above 0 and below half of the {0} mm of a tube</source>
   <translation>muss über 0 und unter der Hälfte der {0} mm eines Rohrs sein</translation>
  </message>
  <message>
   <source>must be above 0 mm</source>
   <translation>muss über 0 mm sein</translation>
  </message>
  <message>
   <source>must be above 0: a load needs an area</source>
   <translation>muss über 0 sein: eine Last braucht eine Fläche</translation>
  </message>
  <message>
   <source>must be an object with named values</source>
   <translation>muss ein Objekt mit benannten Werten sein</translation>
  </message>
  <message>
   <source>must be as wide as thick, straight along its length and without edge bands</source>
   <translation>muss so breit wie dick sein, der Länge nach gerade und ohne Kanten</translation>
  </message>
  <message>
   <source>must be at least 20 mm; make the frame's members narrower</source>
   <translation>muss mindestens 20 mm sein; die Rahmenteile schmaler machen</translation>
  </message>
  <message>
   <source>must be at least {0} mm</source>
   <translation>muss mindestens {0} mm sein</translation>
  </message>
  <message>
   <source>must be at least {0} mm for a hole {1} mm across</source>
   <translation>muss mindestens {0} mm sein für ein Loch von {1} mm</translation>
  </message>
  <message>
   <source>must be at least {0} mm for a strip; give it more clearance or cover it with a moulding</source>
   <translation>muss mindestens {0} mm sein für einen Streifen; mehr Freiraum geben oder mit einer Leiste abdecken</translation>
  </message>
  <message>
   <source>must be at least {0} mm for the shortest slide, {1} mm, with {2} mm behind it</source>
   <translation>muss mindestens {0} mm sein für den kürzesten Auszug, {1} mm, mit {2} mm dahinter</translation>
  </message>
  <message>
   <source>must be at least {0} mm for two rows of holes under loose shelves</source>
   <translation>muss mindestens {0} mm sein für zwei Lochreihen unter verstellbaren Böden</translation>
  </message>
  <message>
   <source>must be at least {0} mm of {1} mm where grooves meet back to back; make them shallower or move one shelf</source>
   <translation>muss mindestens {0} mm von {1} mm sein, wo Nuten Rücken an Rücken liegen; flacher machen oder einen Boden versetzen</translation>
  </message>
  <message>
   <source>must be at least {0} mm to hold a shelf; {1} mm lie between the sides for {2} bays</source>
   <translation>muss mindestens {0} mm sein, um einen Boden zu halten; {1} mm liegen zwischen den Seiten für {2} Felder</translation>
  </message>
  <message>
   <source>must be at least {0} mm, and only {1} mm are there{2}</source>
   <translation>muss mindestens {0} mm sein, und nur {1} mm sind da{2}</translation>
  </message>
  <message>
   <source>must be at least {0} mm; check the readings and the clearances</source>
   <translation>muss mindestens {0} mm sein; Messwerte und Freiräume prüfen</translation>
  </message>
  <message>
   <source>must be at least {0} mm; the opening is {1} mm wide</source>
   <translation>muss mindestens {0} mm sein; die Öffnung ist {1} mm breit</translation>
  </message>
  <message>
   <source>must be at least {0} mm{1}</source>
   <translation>muss mindestens {0} mm sein{1}</translation>
  </message>
  <message>
   <source>must be at most {0} mm for a {1}</source>
   <translation>muss höchstens {0} mm sein für {1}</translation>
  </message>
  <message>
   <source>must be at most {0} mm, or drill right through {1} mm</source>
   <translation>muss höchstens {0} mm sein, oder {1} mm ganz durchbohren</translation>
  </message>
  <message>
   <source>must be at most {0} mm, {1} mm less {2} mm of clearance</source>
   <translation>muss höchstens {0} mm sein, {1} mm weniger {2} mm Freiraum</translation>
  </message>
  <message>
   <source>must be at most {0} to leave {1} mm between them in {2} mm</source>
   <translation>muss höchstens {0} sein, um {1} mm dazwischen zu lassen in {2} mm</translation>
  </message>
  <message>
   <source>must be at most {0} to lie side by side in this depth</source>
   <translation>muss höchstens {0} sein, um in dieser Tiefe nebeneinander zu liegen</translation>
  </message>
  <message>
   <source>must be at most {0} {1} for a {2}</source>
   <translation>muss höchstens {0} {1} sein für {2}</translation>
  </message>
  <message>
   <source>must be fewer: {0} mm of clear height with {1} usable holes leave less than {2} mm between shelves</source>
   <translation>müssen weniger sein: {0} mm lichte Höhe mit {1} nutzbaren Löchern lassen weniger als {2} mm zwischen den Böden</translation>
  </message>
  <message>
   <source>must be from {0} to {1} {2}</source>
   <translation>muss von {0} bis {1} {2} sein</translation>
  </message>
  <message>
   <source>must be given and must differ from every other's</source>
   <translation>muss angegeben sein und sich von jedem anderen unterscheiden</translation>
  </message>
  <message>
   <source>must be given by their heights: the lowest lies over {0}</source>
   <translation>müssen mit ihren Höhen angegeben werden: der unterste liegt über {0}</translation>
  </message>
  <message>
   <source>must be given once</source>
   <translation>muss einmal angegeben sein</translation>
  </message>
  <message>
   <source>must be given where no carcass carries it</source>
   <translation>muss angegeben sein, wo kein Korpus ihn trägt</translation>
  </message>
  <message>
   <source>must be given, one for each shelf</source>
   <translation>muss angegeben sein, einer je Boden</translation>
  </message>
  <message>
   <source>must be given: a {0} is hollow</source>
   <translation>muss angegeben sein: {0} ist hohl</translation>
  </message>
  <message>
   <source>must be groove, screws or nails; cleats carry shelves</source>
   <translation>muss Nut, Schrauben oder Nägel sein; Tragleisten tragen Böden</translation>
  </message>
  <message>
   <source>must be inset or an overlay</source>
   <translation>muss einliegend oder aufliegend sein</translation>
  </message>
  <message>
   <source>must be larger than the edge band, {0} mm thick</source>
   <translation>muss größer als die Kante sein, {0} mm dick</translation>
  </message>
  <message>
   <source>must be left open for {0} things, which hang on one rod</source>
   <translation>muss leer bleiben für {0}, die an einer Stange hängen</translation>
  </message>
  <message>
   <source>must be left open: it stands in {0}</source>
   <translation>muss leer bleiben: es steht in {0}</translation>
  </message>
  <message>
   <source>must be left out of a panel that is tapered or no flat board</source>
   <translation>muss bei einer Platte wegbleiben, die schräg oder kein flaches Brett ist</translation>
  </message>
  <message>
   <source>must be lengths above 0 mm, rising</source>
   <translation>müssen Längen über 0 mm sein, steigend</translation>
  </message>
  <message>
   <source>must be lengths from the front left corner, the first below the second</source>
   <translation>müssen Längen ab der vorderen linken Ecke sein, die erste kleiner als die zweite</translation>
  </message>
  <message>
   <source>must be less than half of {0} mm</source>
   <translation>muss weniger als die Hälfte von {0} mm sein</translation>
  </message>
  <message>
   <source>must be less than the depth of the groove, {0} mm</source>
   <translation>muss weniger als die Nuttiefe sein, {0} mm</translation>
  </message>
  <message>
   <source>must be less than the {0} kg of the whole</source>
   <translation>muss weniger als die {0} kg des Ganzen sein</translation>
  </message>
  <message>
   <source>must be less than the {0} mm across</source>
   <translation>muss weniger als die {0} mm quer sein</translation>
  </message>
  <message>
   <source>must be letters, digits, - and _ only</source>
   <translation>darf nur Buchstaben, Ziffern, - und _ haben</translation>
  </message>
  <message>
   <source>must be more than 0</source>
   <translation>muss mehr als 0 sein</translation>
  </message>
  <message>
   <source>must be more: nothing says where these are: {0}</source>
   <translation>müssen mehr sein: nichts sagt, wo diese sind: {0}</translation>
  </message>
  <message>
   <source>must be none, length or width, or free, along or across</source>
   <translation>muss none, length oder width sein, oder free, along oder across</translation>
  </message>
  <message>
   <source>must be one of {0}</source>
   <translation>muss eines von {0} sein</translation>
  </message>
  <message>
   <source>must be one of {0} mm</source>
   <translation>muss eines von {0} mm sein</translation>
  </message>
  <message>
   <source>must be one value or more above 0, rising</source>
   <translation>muss ein Wert oder mehrere über 0 sein, steigend</translation>
  </message>
  <message>
   <source>must be shares of its length, rising between 0 and 1</source>
   <translation>müssen Anteile seiner Länge sein, steigend zwischen 0 und 1</translation>
  </message>
  <message>
   <source>must be simply supported or clamped</source>
   <translation>muss frei aufliegend oder eingespannt sein</translation>
  </message>
  <message>
   <source>must be smaller than the panel, {0} x {1} mm</source>
   <translation>muss kleiner als die Platte sein, {0} x {1} mm</translation>
  </message>
  <message>
   <source>must be solid lumber for a rail</source>
   <translation>muss Massivholz sein für ein Rahmenholz</translation>
  </message>
  <message>
   <source>must be text in quotation marks</source>
   <translation>muss Text in Anführungszeichen sein</translation>
  </message>
  <message>
   <source>must be the only one there</source>
   <translation>muss dort das Einzige sein</translation>
  </message>
  <message>
   <source>must be the {0} mm between the sides, or leave one bay's width open</source>
   <translation>muss die {0} mm zwischen den Seiten sein, oder die Breite eines Felds leer lassen</translation>
  </message>
  <message>
   <source>must be there: gaps follow from its readings</source>
   <translation>muss da sein: Spalte folgen aus seinen Messwerten</translation>
  </message>
  <message>
   <source>must be three heights above the floor, rising</source>
   <translation>müssen drei Höhen über dem Boden sein, steigend</translation>
  </message>
  <message>
   <source>must be true or false</source>
   <translation>muss true oder false sein</translation>
  </message>
  <message>
   <source>must be within {0} mm</source>
   <translation>muss innerhalb von {0} mm liegen</translation>
  </message>
  <message>
   <source>must be {0}</source>
   <translation>muss {0} sein</translation>
  </message>
  <message>
   <source>must be {0} mm or more</source>
   <translation>muss {0} mm oder mehr sein</translation>
  </message>
  <message>
   <source>must be {0} mm together, or leave one of them 0 to take what is left</source>
   <translation>müssen zusammen {0} mm sein, oder eine davon 0 lassen für den Rest</translation>
  </message>
  <message>
   <source>must be {0} mm: a rod along the bay hangs {1} mm under what lies above; or leave it open</source>
   <translation>muss {0} mm sein: eine Stange längs des Felds hängt {1} mm unter dem, was darüber liegt; oder leer lassen</translation>
  </message>
  <message>
   <source>must be {0} to {1}</source>
   <translation>muss {0} bis {1} sein</translation>
  </message>
  <message>
   <source>must be {0} to {1} for the table of lateral loads</source>
   <translation>muss {0} bis {1} sein für die Tabelle der Querlasten</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm</source>
   <translation>muss {0} bis {1} mm sein</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm along the {2}</source>
   <translation>muss {0} bis {1} mm sein längs {2}</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm{2}</source>
   <translation>muss {0} bis {1} mm sein{2}</translation>
  </message>
  <message>
   <source>must be {0}, as heights</source>
   <translation>muss {0} sein, wie die Höhen</translation>
  </message>
  <message>
   <source>must be {0}, as the heights given</source>
   <translation>muss {0} sein, wie die angegebenen Höhen</translation>
  </message>
  <message>
   <source>must be {0}, the number of heights given, or leave the heights out</source>
   <translation>muss {0} sein, die Zahl der angegebenen Höhen, oder die Höhen weglassen</translation>
  </message>
  <message>
   <source>must come out of {0} x {1} mm side by side</source>
   <translation>müssen aus {0} x {1} mm nebeneinander herauskommen</translation>
  </message>
  <message>
   <source>must end at the left or at the right</source>
   <translation>muss links oder rechts enden</translation>
  </message>
  <message>
   <source>must hang on rods that run across</source>
   <translation>müssen an quer laufenden Stangen hängen</translation>
  </message>
  <message>
   <source>must have a name of its own</source>
   <translation>muss einen eigenen Namen haben</translation>
  </message>
  <message>
   <source>must have one that is {0} mm wide or more for the widest gap; name one, or leave less clearance</source>
   <translation>muss eine haben, die {0} mm oder breiter ist, für den breitesten Spalt; eine nennen oder weniger Freiraum lassen</translation>
  </message>
  <message>
   <source>must keep clear of other cuts</source>
   <translation>muss von anderen Einschnitten frei bleiben</translation>
  </message>
  <message>
   <source>must keep clear of the groove for {0}</source>
   <translation>muss von der Nut für {0} frei bleiben</translation>
  </message>
  <message>
   <source>must leave something of the sheet of {0}</source>
   <translation>muss etwas von der Platte von {0} lassen</translation>
  </message>
  <message>
   <source>must leave the hole inside the panel, {0} x {1} mm</source>
   <translation>muss das Loch innerhalb der Platte lassen, {0} x {1} mm</translation>
  </message>
  <message>
   <source>must leave the hole inside the taper</source>
   <translation>muss das Loch innerhalb der Schräge lassen</translation>
  </message>
  <message>
   <source>must leave the panel within {0} x {1} mm</source>
   <translation>muss die Platte innerhalb von {0} x {1} mm lassen</translation>
  </message>
  <message>
   <source>must lie below the ceiling, {0} mm; enter the heights that were read</source>
   <translation>muss unter der Decke liegen, {0} mm; die gemessenen Höhen eingeben</translation>
  </message>
  <message>
   <source>must lie within 0 and {0} mm</source>
   <translation>muss innerhalb von 0 und {0} mm liegen</translation>
  </message>
  <message>
   <source>must lie within 0 to {0}, its start first</source>
   <translation>muss innerhalb von 0 bis {0} liegen, der Anfang zuerst</translation>
  </message>
  <message>
   <source>must lie within 300 mm either way; enter the offset, not the distance</source>
   <translation>muss innerhalb von 300 mm in jeder Richtung liegen; den Versatz eingeben, nicht den Abstand</translation>
  </message>
  <message>
   <source>must lie within the span of {0} mm</source>
   <translation>muss innerhalb der Spannweite von {0} mm liegen</translation>
  </message>
  <message>
   <source>must not be negative</source>
   <translation>darf nicht negativ sein</translation>
  </message>
  <message>
   <source>must not be negative; {0}</source>
   <translation>darf nicht negativ sein; {0}</translation>
  </message>
  <message>
   <source>must not be wider than the closet behind it, {0} mm; measure between the jambs, and the width inside, again</source>
   <translation>darf nicht breiter sein als der Schrank dahinter, {0} mm; zwischen den Laibungen und die Breite innen neu messen</translation>
  </message>
  <message>
   <source>must not differ by more than a tenth; measure again</source>
   <translation>dürfen sich höchstens um ein Zehntel unterscheiden; neu messen</translation>
  </message>
  <message>
   <source>must not lie in a notch</source>
   <translation>darf nicht in einer Ausklinkung liegen</translation>
  </message>
  <message>
   <source>must not run into another notch</source>
   <translation>darf nicht in eine andere Ausklinkung laufen</translation>
  </message>
  <message>
   <source>must not run into each other</source>
   <translation>dürfen nicht ineinanderlaufen</translation>
  </message>
  <message>
   <source>must not run into each other; move one</source>
   <translation>dürfen nicht ineinanderlaufen; eines versetzen</translation>
  </message>
  <message>
   <source>must say what it is</source>
   <translation>muss sagen, was es ist</translation>
  </message>
  <message>
   <source>must say where it was read: {0}</source>
   <translation>muss sagen, wo gemessen wurde: {0}</translation>
  </message>
  <message>
   <source>name of a component</source>
   <translation>Name eines Bauteils</translation>
  </message>
  <message>
   <source>narrowest strip</source>
   <translation>schmalste Passleiste</translation>
  </message>
  <message>
   <source>nearest: {0}</source>
   <translation>nächste: {0}</translation>
  </message>
  <message>
   <source>nearly shut, its lid's weight turns it down with {0}, and as much more as lies on it: its supports must hold that together at every height; compare it with what they are made for</source>
   <translation>fast geschlossen dreht den Deckel sein Gewicht mit {0} nach unten, dazu kommt, was darauf liegt: seine Stützen müssen das zusammen in jeder Höhe halten; damit vergleichen, wofür sie gemacht sind</translation>
  </message>
  <message>
   <source>needs a base frame, but the {0} stands on the floor; use shims</source>
   <translation>braucht einen Sockelrahmen, aber {0} steht auf dem Fußboden; Unterlagen verwenden</translation>
  </message>
  <message>
   <source>needs one hole or more, a diameter above 0 and a pitch that leaves wood between</source>
   <translation>braucht ein Loch oder mehr, einen Durchmesser über 0 und einen Abstand, der Holz dazwischen lässt</translation>
  </message>
  <message>
   <source>no board of the catalogue, no lip and no {0} dividers do</source>
   <translation>keine Platte des Katalogs, keine Lippe und keine {0} Mittelseiten schaffen es</translation>
  </message>
  <message>
   <source>no carcass</source>
   <translation>kein Korpus</translation>
  </message>
  <message>
   <source>no closet</source>
   <translation>kein Einbauschrank</translation>
  </message>
  <message>
   <source>no document</source>
   <translation>kein Dokument</translation>
  </message>
  <message>
   <source>no formula is published for this board; glue the joint, let the shelf into grooves, or test a corner</source>
   <translation>keine Formel ist für diese Platte veröffentlicht; die Verbindung leimen, den Boden in Nuten einlassen oder eine Ecke erproben</translation>
  </message>
  <message>
   <source>no length is that long; {0}</source>
   <translation>so lang ist keine Länge; {0}</translation>
  </message>
  <message>
   <source>no length of it is in stock</source>
   <translation>keine Länge davon auf Lager</translation>
  </message>
  <message>
   <source>no light</source>
   <translation>kein Licht</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>mit keinem Plan ist weniger zu kaufen</translation>
  </message>
  <message>
   <source>no plan costs less</source>
   <translation>kein Plan kostet weniger</translation>
  </message>
  <message>
   <source>no plan takes less length; prices are lacking</source>
   <translation>kein Plan braucht weniger Länge; Preise fehlen</translation>
  </message>
  <message>
   <source>no plan was found for {0} parts of {1} m² on them; {2}: add sheets, or let the search take longer</source>
   <translation>kein Plan wurde gefunden für {0} Teile von {1} m² darauf; {2}: Platten hinzufügen oder länger suchen lassen</translation>
  </message>
  <message>
   <source>no published formula for screws loaded sideways in such boards</source>
   <translation>keine veröffentlichte Formel für quer belastete Schrauben in solchen Platten</translation>
  </message>
  <message>
   <source>no room for a cleat between the shelves near the middle of the bay</source>
   <translation>kein Platz für eine Tragleiste zwischen den Böden nahe der Feldmitte</translation>
  </message>
  <message>
   <source>no scatter is published ({0})</source>
   <translation>keine Streuung ist veröffentlicht ({0})</translation>
  </message>
  <message>
   <source>no screw of the catalogue holds in its fronts without coming out at their faces: add one to your catalogue, or take thicker fronts</source>
   <translation>keine Schraube des Katalogs hält in den Fronten, ohne an deren Fläche auszutreten: eine im eigenen Katalog hinzufügen oder dickere Fronten nehmen</translation>
  </message>
  <message>
   <source>no screw of the catalogue reaches through {0} of cleat, {1} of gap and {2} of lining far enough into a stud</source>
   <translation>keine Schraube des Katalogs reicht durch {0} Tragleiste, {1} Spalt und {2} Bekleidung weit genug in einen Ständer</translation>
  </message>
  <message>
   <source>no sheet of it is in stock (there is: {0})</source>
   <translation>keine Platte davon auf Lager (es gibt: {0})</translation>
  </message>
  <message>
   <source>no span passes</source>
   <translation>keine Spannweite besteht</translation>
  </message>
  <message>
   <source>no standard covers altered furniture; common practice</source>
   <translation>keine Norm erfasst veränderte Möbel; übliche Praxis</translation>
  </message>
  <message>
   <source>no stud is sure to lie behind it</source>
   <translation>dahinter liegt sicher kein Ständer</translation>
  </message>
  <message>
   <source>no stud is sure to lie behind its top cleat{0}, or anchor it with brackets</source>
   <translation>hinter seiner oberen Tragleiste liegt kein Ständer mit Sicherheit{0}, oder mit Winkeln verankern</translation>
  </message>
  <message>
   <source>no tool at hand makes cut {0} on {1} (fence {2})</source>
   <translation>kein vorhandenes Werkzeug macht Schnitt {0} an {1} (Anschlag {2})</translation>
  </message>
  <message>
   <source>no way in was found</source>
   <translation>kein Weg hinein wurde gefunden</translation>
  </message>
  <message>
   <source>no withdrawal is published; take no {0}'s hold</source>
   <translation>kein Ausziehwiderstand ist veröffentlicht; nicht den Halt von {0} annehmen</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>none for a drawer</source>
   <translation>keine für eine Schublade</translation>
  </message>
  <message>
   <source>none from {0} to {1}</source>
   <translation>keine von {0} bis {1}</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>noch keine</translation>
  </message>
  <message>
   <source>northern red oak: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation>Roteiche: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>not TOML</source>
   <translation>kein TOML</translation>
  </message>
  <message>
   <source>not alone</source>
   <translation>nicht allein</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>nicht geprüft</translation>
  </message>
  <message>
   <source>not checked by others</source>
   <translation>nicht durch andere geprüft</translation>
  </message>
  <message>
   <source>not checked: damp air; the shelves are taken to be in a dry, heated room</source>
   <translation>nicht geprüft: feuchte Luft; für die Böden wird ein trockener, beheizter Raum angenommen</translation>
  </message>
  <message>
   <source>not checked: how many screws find a stud, since their spacing is not known; find them and enter spacing and place; {0}</source>
   <translation>nicht geprüft: wie viele Schrauben einen Ständer treffen, da der Ständerabstand nicht bekannt ist; Ständer suchen und Abstand und Lage eingeben; {0}</translation>
  </message>
  <message>
   <source>not checked: its legs are too long for their depth to be carried from wall to wall; put a leg, a bracket or a side panel under the free end of each; {0}</source>
   <translation>nicht geprüft: seine Schenkel sind zu lang für ihre Tiefe, um von Wand zu Wand zu tragen; ein Bein, einen Winkel oder eine Seite unter das freie Ende jedes Schenkels setzen; {0}</translation>
  </message>
  <message>
   <source>not checked: no design values are published for rails of {0}; take solid lumber, or ask its maker</source>
   <translation>nicht geprüft: für Rahmenhölzer aus {0} sind keine Bemessungswerte veröffentlicht; Massivholz nehmen oder den Hersteller fragen</translation>
  </message>
  <message>
   <source>not checked: nobody is to sit on it, but somebody will; enter how many can</source>
   <translation>nicht geprüft: niemand soll darauf sitzen, aber jemand wird es tun; eingeben, wie viele es können</translation>
  </message>
  <message>
   <source>not checked: strength and stability of {0}; {1}</source>
   <translation>nicht geprüft: Festigkeit und Standsicherheit von {0}; {1}</translation>
  </message>
  <message>
   <source>not checked: what children reach and climb; say whether children live or visit here</source>
   <translation>nicht geprüft: was Kinder erreichen und beklettern; angeben, ob Kinder hier wohnen oder zu Besuch sind</translation>
  </message>
  <message>
   <source>not checked: what screws hold in {0}: {1}; {2}{3}</source>
   <translation>nicht geprüft: was Schrauben in {0} halten: {1}; {2}{3}</translation>
  </message>
  <message>
   <source>not checked: what the screws hold in, since the wall is not known; find out whether it is studs or masonry before you buy screws; {0}</source>
   <translation>nicht geprüft: worin die Schrauben halten, da die Wand nicht bekannt ist; vor dem Schraubenkauf herausfinden, ob es Ständer oder Mauerwerk ist; {0}</translation>
  </message>
  <message>
   <source>not checked: whether a child shut in gets air, since the closed volume is not given</source>
   <translation>nicht geprüft: ob ein eingeschlossenes Kind Luft bekommt, da das geschlossene Volumen nicht angegeben ist</translation>
  </message>
  <message>
   <source>not checked: whether a light in the closet keeps clear of what is stored; say what light there is and how far it is from the nearest storage space; {0}</source>
   <translation>nicht geprüft: ob eine Leuchte im Schrank Abstand zum Lagergut hat; angeben, welche Leuchte es ist und wie weit sie vom nächsten Lagerraum entfernt ist; {0}</translation>
  </message>
  <message>
   <source>not checked: whether drawers and doors clear the closet's own door, since its opening is not measured; read the width of the opening</source>
   <translation>nicht geprüft: ob Schubladen und Türen an der eigenen Tür des Schranks vorbeikommen, da seine Öffnung nicht gemessen ist; die Breite der Öffnung messen</translation>
  </message>
  <message>
   <source>not checked: whether it tips with its drawers open and whether what it stands on carries it; weigh it; {0}</source>
   <translation>nicht geprüft: ob es mit offenen Schubladen kippt und ob der Untergrund es trägt; wiegen; {0}</translation>
  </message>
  <message>
   <source>not checked: whether the closet covers outlets, junction boxes, registers or alarms; look before you fasten it; {0}</source>
   <translation>nicht geprüft: ob der Schrank Steckdosen, Abzweigdosen, Lüftungsgitter oder Melder verdeckt; vor dem Befestigen nachsehen; {0}</translation>
  </message>
  <message>
   <source>not checked: whether the shelves carry what you will put on them, since that is not known; say what they are for</source>
   <translation>nicht geprüft: ob die Böden tragen, was daraufkommt, da das nicht bekannt ist; angeben, wofür sie sind</translation>
  </message>
  <message>
   <source>not checked: whether walls, trim or a reused piece carry paint from before 1978, which may hold lead; {0}</source>
   <translation>nicht geprüft: ob Wände, Leisten oder ein wiederverwendetes Möbel Farbe von vor 1978 tragen, die Blei enthalten kann; {0}</translation>
  </message>
  <message>
   <source>not checked: who reaches it, since its height is not given</source>
   <translation>nicht geprüft: wer es erreicht, da seine Höhe nicht angegeben ist</translation>
  </message>
  <message>
   <source>not checked: {0} in the edges of {1}, for which nothing is published: glue it on as well, or screw it on through the sides</source>
   <translation>nicht geprüft: {0} in den Kanten von {1}, wofür nichts veröffentlicht ist: zusätzlich leimen oder durch die Seiten anschrauben</translation>
  </message>
  <message>
   <source>not checked: {0} is made for dry, heated rooms; ask its maker for figures in damp air, or take plywood or solid wood</source>
   <translation>nicht geprüft: {0} ist für trockene, beheizte Räume gemacht; den Hersteller nach Werten in feuchter Luft fragen oder Sperrholz oder Massivholz nehmen</translation>
  </message>
  <message>
   <source>not checked: {0}, and the wall is not known or not computed; {1}</source>
   <translation>nicht geprüft: {0}, und die Wand ist nicht bekannt oder nicht berechnet; {1}</translation>
  </message>
  <message>
   <source>not checked: {0}, and whether a stud lies behind it is not known: find one, and put every screw into it; {1}</source>
   <translation>nicht geprüft: {0}, und ob ein Ständer dahinter liegt, ist nicht bekannt: einen suchen und jede Schraube hineinsetzen; {1}</translation>
  </message>
  <message>
   <source>not checked: {0}: {1}</source>
   <translation>nicht geprüft: {0}: {1}</translation>
  </message>
  <message>
   <source>not checked: {0}: {1}; {2}</source>
   <translation>nicht geprüft: {0}: {1}; {2}</translation>
  </message>
  <message>
   <source>not measured, so taken for granted: {0}</source>
   <translation>nicht gemessen, daher vorausgesetzt: {0}</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>nicht geplant</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>nicht geschrieben</translation>
  </message>
  <message>
   <source>notch</source>
   <translation>Ausklinkung</translation>
  </message>
  <message>
   <source>nothing checks a reading, so that a wrong one would not show: {0}</source>
   <translation>nichts prüft einen Messwert, sodass ein falscher nicht auffiele: {0}</translation>
  </message>
  <message>
   <source>nothing found</source>
   <translation>nichts gefunden</translation>
  </message>
  <message>
   <source>nothing is there to be drilled</source>
   <translation>nichts ist zu bohren</translation>
  </message>
  <message>
   <source>nothing keeps the carcass square or takes the screws into the wall; add a back or cleats</source>
   <translation>nichts hält den Korpus winklig oder nimmt die Schrauben in die Wand auf; eine Rückwand oder Tragleisten hinzufügen</translation>
  </message>
  <message>
   <source>nothing to cut</source>
   <translation>nichts zu schneiden</translation>
  </message>
  <message>
   <source>number of fronts</source>
   <translation>Anzahl der Fronten</translation>
  </message>
  <message>
   <source>number of grooves</source>
   <translation>Anzahl der Nuten</translation>
  </message>
  <message>
   <source>number of hinges</source>
   <translation>Anzahl der Scharniere</translation>
  </message>
  <message>
   <source>number of leaves</source>
   <translation>Anzahl der Flügel</translation>
  </message>
  <message>
   <source>number of shelves</source>
   <translation>Anzahl der Böden</translation>
  </message>
  <message>
   <source>oak pole</source>
   <translation>Eichen-Rundstab</translation>
  </message>
  <message>
   <source>of bare lengths</source>
   <translation>an rohen Längen</translation>
  </message>
  <message>
   <source>of the length</source>
   <translation>der Länge</translation>
  </message>
  <message>
   <source>of the sheets given here</source>
   <translation>der hier angegebenen Platten</translation>
  </message>
  <message>
   <source>off by up to {0}</source>
   <translation>um bis zu {0} ungenau</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>Reststück</translation>
  </message>
  <message>
   <source>offcut {0}</source>
   <translation>Reststück {0}</translation>
  </message>
  <message>
   <source>offcuts</source>
   <translation>Reststücke</translation>
  </message>
  <message>
   <source>on carpet, a child on {0}</source>
   <translation>auf Teppich, ein Kind auf {0}</translation>
  </message>
  <message>
   <source>on cleats</source>
   <translation>auf Tragleisten</translation>
  </message>
  <message>
   <source>on pins</source>
   <translation>auf Bodenträgern</translation>
  </message>
  <message>
   <source>on top of its supports</source>
   <translation>auf seinen Stützen</translation>
  </message>
  <message>
   <source>one at hand</source>
   <translation>eines vorhanden</translation>
  </message>
  <message>
   <source>one of these must be wrong, and the readings do not say which: {0}; measure them again{1}. Until then they count for little</source>
   <translation>einer von diesen muss falsch sein, und die Messwerte sagen nicht, welcher: {0}; neu messen{1}. Bis dahin zählen sie wenig</translation>
  </message>
  <message>
   <source>only the smallest unit may have a fraction; {0}</source>
   <translation>nur die kleinste Einheit darf einen Bruch haben; {0}</translation>
  </message>
  <message>
   <source>open lamps and pendants set clothes on fire and are not allowed in closets: have an enclosed one fitted; {0}</source>
   <translation>offene Lampen und Pendelleuchten setzen Kleidung in Brand und sind in Schränken nicht erlaubt: eine geschlossene einbauen lassen; {0}</translation>
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation>offene oder teilweise geschlossene Lampe, oder Pendelleuchte</translation>
  </message>
  <message>
   <source>opening {0}, inside {1}</source>
   <translation>Öffnung {0}, innen {1}</translation>
  </message>
  <message>
   <source>opens only {0}°, then {1} is in the way</source>
   <translation>öffnet nur {0}°, dann ist {1} im Weg</translation>
  </message>
  <message>
   <source>option --length</source>
   <translation>Option --length</translation>
  </message>
  <message>
   <source>option --offcut</source>
   <translation>Option --offcut</translation>
  </message>
  <message>
   <source>option --sheet</source>
   <translation>Option --sheet</translation>
  </message>
  <message>
   <source>option --stages</source>
   <translation>Option --stages</translation>
  </message>
  <message>
   <source>option --{0}</source>
   <translation>Option --{0}</translation>
  </message>
  <message>
   <source>or put a leg under midspan</source>
   <translation>oder ein Bein unter die Feldmitte setzen</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>veraltet</translation>
  </message>
  <message>
   <source>outlets and boxes must stay within reach, no breaker panel may be in a clothes closet, and no register or alarm may be covered: cut the back out around them, or have them moved; {0}</source>
   <translation>Steckdosen und Dosen müssen erreichbar bleiben, in einem Kleiderschrank darf kein Stromverteiler sein, und kein Lüftungsgitter oder Melder darf verdeckt werden: die Rückwand darum ausschneiden oder sie versetzen lassen; {0}</translation>
  </message>
  <message>
   <source>over the opening</source>
   <translation>über der Öffnung</translation>
  </message>
  <message>
   <source>over the sides</source>
   <translation>über den Seiten</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>Boden über den Korpussen</translation>
  </message>
  <message>
   <source>overhang at the ends</source>
   <translation>Überstand an den Enden</translation>
  </message>
  <message>
   <source>overhang at the top</source>
   <translation>Überstand oben</translation>
  </message>
  <message>
   <source>overlap of a moulding</source>
   <translation>Überdeckung einer Leiste</translation>
  </message>
  <message>
   <source>overlay at the {0}</source>
   <translation>Auflage {0}</translation>
  </message>
  <message>
   <source>overlay of the fronts</source>
   <translation>Auflage der Fronten</translation>
  </message>
  <message>
   <source>pack out the gap behind it solidly, and put its screws into studs; or blocking between the studs, or a side panel under the shelf; {0}</source>
   <translation>den Spalt dahinter fest ausfüttern und die Schrauben in Ständer setzen; oder Querhölzer zwischen den Ständern, oder eine Seite unter dem Boden; {0}</translation>
  </message>
  <message>
   <source>paint from before 1978 may hold lead: have it tested before you sand, saw, scrape or heat it; keep children away; in a home that is let, certified firms only above 6 ft² a room; {0}</source>
   <translation>Farbe von vor 1978 kann Blei enthalten: prüfen lassen, bevor sie geschliffen, gesägt, geschabt oder erhitzt wird; Kinder fernhalten; in vermieteten Wohnungen ab mehr als 6 ft² je Raum nur zertifizierte Firmen; {0}</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>panel at the {0}</source>
   <translation>Platte {0}</translation>
  </message>
  <message>
   <source>panel {0}</source>
   <translation>Platte {0}</translation>
  </message>
  <message>
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <source>part list</source>
   <translation>Teileliste</translation>
  </message>
  <message>
   <source>part {0}</source>
   <translation>Teil {0}</translation>
  </message>
  <message>
   <source>part {0} is not on any sheet</source>
   <translation>Teil {0} ist auf keiner Platte</translation>
  </message>
  <message>
   <source>part {0} is not wanted</source>
   <translation>Teil {0} wird nicht gebraucht</translation>
  </message>
  <message>
   <source>part {0} is placed twice</source>
   <translation>Teil {0} ist zweimal gelegt</translation>
  </message>
  <message>
   <source>part {0} is placed {1} times</source>
   <translation>Teil {0} ist {1}-mal gelegt</translation>
  </message>
  <message>
   <source>particleboard: {0}</source>
   <translation>Spanplatte: {0}</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>parts {0} wide, {1}</source>
   <translation>Teile {0} breit, {1}</translation>
  </message>
  <message>
   <source>passes to {0} between supports</source>
   <translation>besteht bis {0} zwischen Stützen</translation>
  </message>
  <message>
   <source>past the side</source>
   <translation>über die Seite hinaus</translation>
  </message>
  <message>
   <source>piece {0}</source>
   <translation>Stück {0}</translation>
  </message>
  <message>
   <source>piece {0} is cut {1} times</source>
   <translation>Stück {0} wird {1}-mal geschnitten</translation>
  </message>
  <message>
   <source>piece {0} is not wanted</source>
   <translation>Stück {0} wird nicht gebraucht</translation>
  </message>
  <message>
   <source>piece {0} is on no stock length</source>
   <translation>Stück {0} liegt auf keiner Länge</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>Stücke</translation>
  </message>
  <message>
   <source>pine pole</source>
   <translation>Kiefern-Rundstab</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <source>place of a load</source>
   <translation>Ort einer Last</translation>
  </message>
  <message>
   <source>place of the {0}</source>
   <translation>Ort {0}</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>plan again with the wider kerf</source>
   <translation>mit der breiteren Schnittfuge neu planen</translation>
  </message>
  <message>
   <source>plan of lengths</source>
   <translation>Längenplan</translation>
  </message>
  <message>
   <source>plan the sheets again first</source>
   <translation>zuerst die Platten neu planen</translation>
  </message>
  <message>
   <source>plan the sheets first</source>
   <translation>zuerst die Platten planen</translation>
  </message>
  <message>
   <source>plaster on lath</source>
   <translation>Putz auf Latten</translation>
  </message>
  <message>
   <source>play of a loose shelf</source>
   <translation>Spiel eines verstellbaren Bodens</translation>
  </message>
  <message>
   <source>pocket screws</source>
   <translation>Taschenschrauben</translation>
  </message>
  <message>
   <source>ponderosa pine: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation>Gelbkiefer: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>position</source>
   <translation>Lage</translation>
  </message>
  <message>
   <source>price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <source>prices are invented: enter your own, with their currency, in your catalogue</source>
   <translation>Preise sind erfunden: eigene mit ihrer Währung im eigenen Katalog eingeben</translation>
  </message>
  <message>
   <source>pulls</source>
   <translation>Griffe</translation>
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation>ein Aufmaß in die Gruppe des Einbauschranks setzen</translation>
  </message>
  <message>
   <source>put it into the group of a closet</source>
   <translation>in die Gruppe eines Einbauschranks setzen</translation>
  </message>
  <message>
   <source>python3 -m closetbench layout</source>
   <translation>python3 -m closetbench layout</translation>
  </message>
  <message>
   <source>quantity</source>
   <translation>Menge</translation>
  </message>
  <message>
   <source>quarter round</source>
   <translation>Viertelstab</translation>
  </message>
  <message>
   <source>rail bearer</source>
   <translation>Querholzauflager</translation>
  </message>
  <message>
   <source>rail {0}</source>
   <translation>Querfries {0}</translation>
  </message>
  <message>
   <source>rails</source>
   <translation>Querfriese</translation>
  </message>
  <message>
   <source>reaches past the envelope at the {0}: take less overhang, or have the stile scribed to the wall</source>
   <translation>reicht {0} über den Einbauraum hinaus: weniger Überstand nehmen oder den Längsfries an die Wand anpassen</translation>
  </message>
  <message>
   <source>reaches {0} past the last thing that carries it: put a cleat or an upright under its end</source>
   <translation>reicht {0} über das Letzte hinaus, was ihn trägt: eine Tragleiste oder Stütze unter sein Ende setzen</translation>
  </message>
  <message>
   <source>readings</source>
   <translation>Messwerte</translation>
  </message>
  <message>
   <source>readings that do not agree</source>
   <translation>Messwerte, die nicht übereinstimmen</translation>
  </message>
  <message>
   <source>rear face of a loose shelf's lip</source>
   <translation>Hinterfläche der Lippe eines verstellbaren Bodens</translation>
  </message>
  <message>
   <source>rear kick board</source>
   <translation>hintere Sockelblende</translation>
  </message>
  <message>
   <source>rear post</source>
   <translation>hinterer Pfosten</translation>
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation>eingelassene, geschlossene Lampe oder LED</translation>
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation>eingelassene Leuchtstofflampe</translation>
  </message>
  <message>
   <source>reserved</source>
   <translation>reserviert</translation>
  </message>
  <message>
   <source>resolution</source>
   <translation>Auflösung</translation>
  </message>
  <message>
   <source>resolution of the readings</source>
   <translation>Auflösung der Messwerte</translation>
  </message>
  <message>
   <source>rest {0}</source>
   <translation>Rest {0}</translation>
  </message>
  <message>
   <source>return at the left of the opening</source>
   <translation>Wandstück links der Öffnung</translation>
  </message>
  <message>
   <source>return at the left of the opening, high</source>
   <translation>Wandstück links der Öffnung, hoch</translation>
  </message>
  <message>
   <source>return at the right of the opening</source>
   <translation>Wandstück rechts der Öffnung</translation>
  </message>
  <message>
   <source>return beside the opening</source>
   <translation>Wandstück neben der Öffnung</translation>
  </message>
  <message>
   <source>right baseboard</source>
   <translation>Sockelleiste rechts</translation>
  </message>
  <message>
   <source>right bow</source>
   <translation>Wölbung rechts</translation>
  </message>
  <message>
   <source>right casing</source>
   <translation>Bekleidung rechts</translation>
  </message>
  <message>
   <source>right end</source>
   <translation>rechtes Ende</translation>
  </message>
  <message>
   <source>right return</source>
   <translation>rechtes Wandstück</translation>
  </message>
  <message>
   <source>right side</source>
   <translation>rechte Seite</translation>
  </message>
  <message>
   <source>right skew</source>
   <translation>Schiefe rechts</translation>
  </message>
  <message>
   <source>right stile</source>
   <translation>rechter Längsfries</translation>
  </message>
  <message>
   <source>right twist</source>
   <translation>Verwindung rechts</translation>
  </message>
  <message>
   <source>right wall</source>
   <translation>rechte Wand</translation>
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation>Längs- und Querschnitte</translation>
  </message>
  <message>
   <source>rips only</source>
   <translation>nur Längsschnitte</translation>
  </message>
  <message>
   <source>rise of the floor from front left to back right</source>
   <translation>Anstieg des Bodens von vorn links nach hinten rechts</translation>
  </message>
  <message>
   <source>rise of the floor from front to back at the left</source>
   <translation>Anstieg des Bodens von vorn nach hinten, links</translation>
  </message>
  <message>
   <source>rise of the floor from front to back at the right</source>
   <translation>Anstieg des Bodens von vorn nach hinten, rechts</translation>
  </message>
  <message>
   <source>rise of the floor from left to right at the back</source>
   <translation>Anstieg des Bodens von links nach rechts, hinten</translation>
  </message>
  <message>
   <source>rise of the floor from left to right at the front</source>
   <translation>Anstieg des Bodens von links nach rechts, vorn</translation>
  </message>
  <message>
   <source>rise of the floor from left to the middle at the back</source>
   <translation>Anstieg des Bodens von links zur Mitte, hinten</translation>
  </message>
  <message>
   <source>rise of the floor from left to the middle at the front</source>
   <translation>Anstieg des Bodens von links zur Mitte, vorn</translation>
  </message>
  <message>
   <source>rise of the lower edge</source>
   <translation>Anstieg der Unterkante</translation>
  </message>
  <message>
   <source>rise of the upper edge</source>
   <translation>Anstieg der Oberkante</translation>
  </message>
  <message>
   <source>round section</source>
   <translation>Rundquerschnitt</translation>
  </message>
  <message>
   <source>rout with panel and straightedge clamped, against the bit's turn, in passes no deeper than half the bit's diameter; let the bit stop before you lift it; eyes and ears protected; the router's own manual comes first</source>
   <translation>fräsen mit eingespannter Platte und Führungsschiene, gegen die Drehrichtung des Fräsers, in Durchgängen nicht tiefer als der halbe Fräserdurchmesser; den Fräser auslaufen lassen, bevor er abgehoben wird; Augen und Ohren geschützt; die Anleitung der Oberfräse geht vor</translation>
  </message>
  <message>
   <source>router bit</source>
   <translation>Fräser</translation>
  </message>
  <message>
   <source>row</source>
   <translation>Reihe</translation>
  </message>
  <message>
   <source>sags</source>
   <translation>Durchbiegung</translation>
  </message>
  <message>
   <source>sags too much</source>
   <translation>hängt zu stark durch</translation>
  </message>
  <message>
   <source>sags too much:</source>
   <translation>hängt zu stark durch:</translation>
  </message>
  <message>
   <source>saw with the sheet held on both sides of the cut so that the kerf cannot close, the guard and the riving knife on, the blade just through, push sticks, nobody in line with the blade; eyes and ears protected; unplug before changing a blade; the saw's own manual comes first</source>
   <translation>sägen mit beidseits des Schnitts gehaltener Platte, damit sich die Schnittfuge nicht schließen kann, Schutzhaube und Spaltkeil montiert, das Blatt knapp durch die Platte, Schiebestöcke, niemand in der Linie des Blatts; Augen und Ohren geschützt; vor dem Blattwechsel den Stecker ziehen; die Anleitung der Säge geht vor</translation>
  </message>
  <message>
   <source>saw {0}</source>
   <translation>Säge {0}</translation>
  </message>
  <message>
   <source>say the unit of {0}; {1}</source>
   <translation>die Einheit von {0} angeben; {1}</translation>
  </message>
  <message>
   <source>say which board they are in</source>
   <translation>angeben, in welcher Platte sie sind</translation>
  </message>
  <message>
   <source>says no {0}: {1}</source>
   <translation>sagt kein {0}: {1}</translation>
  </message>
  <message>
   <source>screws through its cleats</source>
   <translation>Schrauben durch seine Tragleisten</translation>
  </message>
  <message>
   <source>scribe allowance</source>
   <translation>Anpasszugabe</translation>
  </message>
  <message>
   <source>scribed to the floor</source>
   <translation>an den Boden angepasst</translation>
  </message>
  <message>
   <source>search, for each material</source>
   <translation>Suche, je Material</translation>
  </message>
  <message>
   <source>seconds more for simpler cutting (as --seconds)</source>
   <translation>weitere Sekunden für einfacheren Zuschnitt (wie --seconds)</translation>
  </message>
  <message>
   <source>section</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <source>set the hinges so that their axis is plumb, or the door swings by itself</source>
   <translation>die Scharniere so setzen, dass ihre Achse lotrecht ist, sonst schwingt die Tür von selbst</translation>
  </message>
  <message>
   <source>set the rails upright ({0} high, not {1}), </source>
   <translation>die Rahmenhölzer hochkant setzen ({0} hoch, nicht {1}), </translation>
  </message>
  <message>
   <source>setback of a loose shelf</source>
   <translation>Rücksprung eines verstellbaren Bodens</translation>
  </message>
  <message>
   <source>shallower legs, longer screws, or a leg under its front</source>
   <translation>weniger tiefe Schenkel, längere Schrauben oder ein Bein unter der Vorderseite</translation>
  </message>
  <message>
   <source>sheet</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>sheet size</source>
   <translation>Plattengröße</translation>
  </message>
  <message>
   <source>sheet {0}</source>
   <translation>Platte {0}</translation>
  </message>
  <message>
   <source>sheet {0} is not in stock</source>
   <translation>Platte {0} ist nicht auf Lager</translation>
  </message>
  <message>
   <source>sheet {0} is used {1} times, there are {2}</source>
   <translation>Platte {0} ist {1}-mal verwendet, vorhanden sind {2}</translation>
  </message>
  <message>
   <source>sheet {0} of {1}</source>
   <translation>Platte {0} von {1}</translation>
  </message>
  <message>
   <source>sheet {0}, {1} wide, gives {2} of {3} and {4} are left{5}; at {6} or less it gives {7}{8}</source>
   <translation>Platte {0}, {1} breit, ergibt {2} von {3} und {4} bleiben übrig{5}; bei {6} oder weniger ergibt sie {7}{8}</translation>
  </message>
  <message>
   <source>sheets in stock</source>
   <translation>Platten auf Lager</translation>
  </message>
  <message>
   <source>sheets that can be bought</source>
   <translation>Platten, die gekauft werden können</translation>
  </message>
  <message>
   <source>shelf load</source>
   <translation>Bodenlast</translation>
  </message>
  <message>
   <source>shelf pin holes</source>
   <translation>Bodenträgerlöcher</translation>
  </message>
  <message>
   <source>shelf pins</source>
   <translation>Bodenträger</translation>
  </message>
  <message>
   <source>shelf {0}</source>
   <translation>Boden {0}</translation>
  </message>
  <message>
   <source>shelf {0} back cleat</source>
   <translation>Boden {0} hintere Tragleiste</translation>
  </message>
  <message>
   <source>shelf {0} side cleat</source>
   <translation>Boden {0} seitliche Tragleiste</translation>
  </message>
  <message>
   <source>shelves lie level on both sides, so the second cannot be fastened straight through the divider: let shelves into grooves, carry them on cleats or set them off</source>
   <translation>Böden liegen beidseits auf gleicher Höhe, sodass der zweite nicht gerade durch die Mittelseite befestigt werden kann: Böden in Nuten einlassen, auf Tragleisten legen oder versetzen</translation>
  </message>
  <message>
   <source>shelves to their cleats</source>
   <translation>Böden an ihre Tragleisten</translation>
  </message>
  <message>
   <source>shim the slides plumb and parallel</source>
   <translation>die Auszüge lotrecht und parallel unterlegen</translation>
  </message>
  <message>
   <source>shimmed under its cross members alone, each field of it carries {0} with all shelves full over {1}</source>
   <translation>nur unter den Querhölzern unterlegt, trägt jedes Feld davon {0} bei allen vollen Böden über {1}</translation>
  </message>
  <message>
   <source>shims under the rails between the cross members too, closer cross members, or a higher base</source>
   <translation>auch Unterlagen unter den Rahmenhölzern zwischen den Querhölzern, engere Querhölzer oder ein höherer Sockel</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>Schuhboden</translation>
  </message>
  <message>
   <source>shop</source>
   <translation>Werkstatt</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>frei aufliegend</translation>
  </message>
  <message>
   <source>sitters</source>
   <translation>Sitzende</translation>
  </message>
  <message>
   <source>size</source>
   <translation>Größe</translation>
  </message>
  <message>
   <source>sizes and grooves use the nominal {0}, but boards sold as that may be {1}: measure the sheets before cutting and enter the thickness</source>
   <translation>Maße und Nuten rechnen mit dem Nennmaß {0}, aber so verkaufte Platten können {1} sein: Platten vor dem Schneiden messen und die Dicke eingeben</translation>
  </message>
  <message>
   <source>skin under a blind hole</source>
   <translation>Restdicke unter einem Sackloch</translation>
  </message>
  <message>
   <source>slide bearer</source>
   <translation>Auszugsträger</translation>
  </message>
  <message>
   <source>slide length</source>
   <translation>Auszugslänge</translation>
  </message>
  <message>
   <source>small table saw</source>
   <translation>kleine Tischkreissäge</translation>
  </message>
  <message>
   <source>solid lumber</source>
   <translation>Massivholz</translation>
  </message>
  <message>
   <source>solid wood: it swells and shrinks by about {0} across the grain between winter and summer; fasten it firmly at one edge only and leave room at the other</source>
   <translation>Massivholz: es quillt und schwindet quer zur Faser zwischen Winter und Sommer um etwa {0}; nur an einer Kante fest befestigen und an der anderen Raum lassen</translation>
  </message>
  <message>
   <source>spacing of the base's cross members</source>
   <translation>Abstand der Sockel-Querhölzer</translation>
  </message>
  <message>
   <source>span over</source>
   <translation>Spannweite über</translation>
  </message>
  <message>
   <source>spans to {0} pass</source>
   <translation>Spannweiten bis {0} bestehen</translation>
  </message>
  <message>
   <source>specific gravity</source>
   <translation>Rohdichtezahl</translation>
  </message>
  <message>
   <source>split its {0} into pieces of {1} or less</source>
   <translation>{0} davon in Stücke von {1} oder weniger teilen</translation>
  </message>
  <message>
   <source>stages</source>
   <translation>Stufen</translation>
  </message>
  <message>
   <source>stands for none given; write another value</source>
   <translation>steht für keine Angabe; einen anderen Wert schreiben</translation>
  </message>
  <message>
   <source>stands in {0}</source>
   <translation>steht in {0}</translation>
  </message>
  <message>
   <source>stands out in front of the envelope: make the carcass shallower, or have it lie over the wall beside the opening on purpose</source>
   <translation>steht vor dem Einbauraum vor: den Korpus weniger tief machen oder ihn bewusst über die Wand neben der Öffnung liegen lassen</translation>
  </message>
  <message>
   <source>start above the compartment's floor</source>
   <translation>Beginn über dem Boden des Fachs</translation>
  </message>
  <message>
   <source>statics: the door's weight turns about its hinges, the top one is pulled; test load: ANSI/KCMA A161.1, 6.1 (as quoted)</source>
   <translation>Statik: das Gewicht der Tür dreht um ihre Scharniere, am obersten wird gezogen; Prüflast: ANSI/KCMA A161.1, 6.1 (wie zitiert)</translation>
  </message>
  <message>
   <source>statics; {0}</source>
   <translation>Statik; {0}</translation>
  </message>
  <message>
   <source>steel studs</source>
   <translation>Stahlständer</translation>
  </message>
  <message>
   <source>steel tube</source>
   <translation>Stahlrohr</translation>
  </message>
  <message>
   <source>steel: E 200 GPa; yield of soft tube 205 N/mm² over 1.67 (from memory)</source>
   <translation>Stahl: E 200 GPa; Streckgrenze von weichem Rohr 205 N/mm² durch 1.67 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>step of the groove depth</source>
   <translation>Schritt der Nuttiefe</translation>
  </message>
  <message>
   <source>stiffness</source>
   <translation>Steifigkeit</translation>
  </message>
  <message>
   <source>stock length</source>
   <translation>Lagerlänge</translation>
  </message>
  <message>
   <source>stock length {0}</source>
   <translation>Lagerlänge {0}</translation>
  </message>
  <message>
   <source>stock length {0} is taken {1} times, there are {2}</source>
   <translation>Länge {0} wird {1}-mal genommen, vorhanden sind {2}</translation>
  </message>
  <message>
   <source>stock lengths</source>
   <translation>Lagerlängen</translation>
  </message>
  <message>
   <source>stop {0}</source>
   <translation>Anschlag {0}</translation>
  </message>
  <message>
   <source>stops</source>
   <translation>Anschläge</translation>
  </message>
  <message>
   <source>stops to shoe shelves</source>
   <translation>Anschläge an Schuhböden</translation>
  </message>
  <message>
   <source>store cuts</source>
   <translation>Schnitte beim Händler</translation>
  </message>
  <message>
   <source>store panel saw</source>
   <translation>Plattensäge des Händlers</translation>
  </message>
  <message>
   <source>straight through the opening</source>
   <translation>gerade durch die Öffnung</translation>
  </message>
  <message>
   <source>straightedge saw</source>
   <translation>Säge mit Führungsschiene</translation>
  </message>
  <message>
   <source>strip behind the lid</source>
   <translation>Streifen hinter dem Deckel</translation>
  </message>
  <message>
   <source>stud spacing</source>
   <translation>Ständerabstand</translation>
  </message>
  <message>
   <source>style</source>
   <translation>Format</translation>
  </message>
  <message>
   <source>sum of the bay widths</source>
   <translation>Summe der Feldbreiten</translation>
  </message>
  <message>
   <source>supports</source>
   <translation>Stützen</translation>
  </message>
  <message>
   <source>supports at most {0} apart: {1} between the ends</source>
   <translation>Stützen höchstens {0} auseinander: {1} zwischen den Enden</translation>
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation>aufgesetzte, geschlossene Lampe oder LED</translation>
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation>aufgesetzte Leuchtstofflampe</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>Aufmaß</translation>
  </message>
  <message>
   <source>table</source>
   <translation>Tabelle</translation>
  </message>
  <message>
   <source>table saw</source>
   <translation>Tischkreissäge</translation>
  </message>
  <message>
   <source>take a second person along, or let the store cut more</source>
   <translation>eine zweite Person mitnehmen oder den Händler mehr schneiden lassen</translation>
  </message>
  <message>
   <source>take higher rails, </source>
   <translation>höhere Rahmenhölzer nehmen, </translation>
  </message>
  <message>
   <source>taken as heavy softwood: not known</source>
   <translation>als schweres Nadelholz angenommen: nicht bekannt</translation>
  </message>
  <message>
   <source>taken to be straight, since no reading would show it: no {0}; hold a straightedge to them, or take the readings half way that the survey sheet asks for</source>
   <translation>als gerade angenommen, da kein Messwert es zeigen würde: ohne {0}; eine Richtlatte anhalten oder die Messwerte auf halbem Weg nehmen, nach denen das Aufmaßblatt fragt</translation>
  </message>
  <message>
   <source>takes the place of the list's own</source>
   <translation>tritt an die Stelle des in der Liste stehenden</translation>
  </message>
  <message>
   <source>takes the same space as {0}: move one of them or make it smaller</source>
   <translation>nimmt denselben Raum ein wie {0}: eines davon versetzen oder kleiner machen</translation>
  </message>
  <message>
   <source>takes three people</source>
   <translation>braucht drei Personen</translation>
  </message>
  <message>
   <source>takes two people</source>
   <translation>braucht zwei Personen</translation>
  </message>
  <message>
   <source>taper of the {0}</source>
   <translation>Schräge {0}</translation>
  </message>
  <message>
   <source>tapers</source>
   <translation>Schrägen</translation>
  </message>
  <message>
   <source>text</source>
   <translation>Text</translation>
  </message>
  <message>
   <source>that is a folder; give a file's name</source>
   <translation>das ist ein Ordner; den Namen einer Datei angeben</translation>
  </message>
  <message>
   <source>that the summary is written in</source>
   <translation>in der die Zusammenfassung geschrieben wird</translation>
  </message>
  <message>
   <source>the back wall is plumb</source>
   <translation>die Rückwand ist lotrecht</translation>
  </message>
  <message>
   <source>the boring for the {0} is common practice: compare it with the sheet of the hinge in hand, and bore a trial piece first</source>
   <translation>die Bohrung für {0} ist übliche Praxis: mit dem Blatt des vorliegenden Scharniers vergleichen und zuerst ein Probestück bohren</translation>
  </message>
  <message>
   <source>the cleats are too small for the screws into the wall</source>
   <translation>die Tragleisten sind zu klein für die Schrauben in die Wand</translation>
  </message>
  <message>
   <source>the closet is as square in plan at the left as at the right</source>
   <translation>der Schrank ist im Grundriss links so winklig wie rechts</translation>
  </message>
  <message>
   <source>the closet's own door, open</source>
   <translation>die offene eigene Tür des Schranks</translation>
  </message>
  <message>
   <source>the comma can be read in two ways; type {0} or {1}</source>
   <translation>das Komma lässt sich auf zwei Arten lesen; {0} oder {1} eingeben</translation>
  </message>
  <message>
   <source>the design value is for the weakest twentieth of the grade, over 2.1 (ASTM D245)</source>
   <translation>der Bemessungswert gilt für das schwächste Zwanzigstel der Sorte, geteilt durch 2.1 (ASTM D245)</translation>
  </message>
  <message>
   <source>the drawers pull out {0} of {1}; the rear stays inside</source>
   <translation>die Schubladen kommen {0} von {1} heraus; der hintere Teil bleibt innen</translation>
  </message>
  <message>
   <source>the fence at {0} mm is not where the kerf is</source>
   <translation>der Anschlag bei {0} mm ist nicht, wo die Schnittfuge ist</translation>
  </message>
  <message>
   <source>the figures of the {0} are no maker's: enter the sheet of the slide in hand as a class of your own before cutting</source>
   <translation>die Werte von {0} sind von keinem Hersteller: das Blatt des vorliegenden Auszugs vor dem Zuschnitt als eigene Klasse eingeben</translation>
  </message>
  <message>
   <source>the file holds [[offcut]] tables only</source>
   <translation>die Datei enthält nur Tabellen [[offcut]]</translation>
  </message>
  <message>
   <source>the first line names the columns</source>
   <translation>die erste Zeile benennt die Spalten</translation>
  </message>
  <message>
   <source>the first names columns: {0}</source>
   <translation>die erste benennt Spalten: {0}</translation>
  </message>
  <message>
   <source>the floor falls too far to be shimmed: scribe the base frame to it</source>
   <translation>der Boden fällt zu stark ab, um zu unterlegen: den Sockelrahmen an ihn anpassen</translation>
  </message>
  <message>
   <source>the floor is level from front to back</source>
   <translation>der Boden ist von vorn nach hinten waagerecht</translation>
  </message>
  <message>
   <source>the floor is level from left to right</source>
   <translation>der Boden ist von links nach rechts waagerecht</translation>
  </message>
  <message>
   <source>the fraction after a whole number must be under 1; {0}</source>
   <translation>der Bruch nach einer ganzen Zahl muss unter 1 sein; {0}</translation>
  </message>
  <message>
   <source>the front edge of a shelf</source>
   <translation>die Vorderkante eines Bodens</translation>
  </message>
  <message>
   <source>the front edges show the raw core of {0}; choose an edge band</source>
   <translation>die Vorderkanten zeigen den rohen Kern von {0}; eine Kante wählen</translation>
  </message>
  <message>
   <source>the front of an open drawer</source>
   <translation>die Front einer offenen Schublade</translation>
  </message>
  <message>
   <source>the gap at the {0} is wider than a scribed filler usually covers</source>
   <translation>der Spalt {0} ist breiter, als eine angepasste Passleiste üblich abdeckt</translation>
  </message>
  <message>
   <source>the gap between the shelf and the walls is wider than the quarter rounds: scribe it to the walls, or name a larger one</source>
   <translation>der Spalt zwischen dem Boden und den Wänden ist breiter als die Viertelstäbe: an die Wände anpassen oder einen größeren nennen</translation>
  </message>
  <message>
   <source>the gap under the base is wider than the quarter rounds: scribe the base frame to the floor, or name a larger one</source>
   <translation>der Spalt unter dem Sockel ist breiter als die Viertelstäbe: den Sockelrahmen an den Fußboden anpassen oder einen größeren nennen</translation>
  </message>
  <message>
   <source>the heading has {0}</source>
   <translation>die Überschrift hat {0}</translation>
  </message>
  <message>
   <source>the holes for a {0}{1} cannot be drilled: {2}; move it or what is in its way</source>
   <translation>die Löcher für {0}{1} können nicht gebohrt werden: {2}; es oder das Hindernis versetzen</translation>
  </message>
  <message>
   <source>the layout reckons with a kerf of {0}, the {1} takes {2}: the last parts of a row come out small</source>
   <translation>der Zuschnittplan rechnet mit einer Schnittfuge von {0}, {1} nimmt {2}: die letzten Teile einer Reihe werden zu klein</translation>
  </message>
  <message>
   <source>the left return</source>
   <translation>das linke Wandstück</translation>
  </message>
  <message>
   <source>the left wall is plumb</source>
   <translation>die linke Wand ist lotrecht</translation>
  </message>
  <message>
   <source>the lid can fall on a child leaning in: fit supports that hold it at any height without adjustment, or make it a drawer; {0}</source>
   <translation>der Deckel kann auf ein Kind fallen, das sich hineinbeugt: Stützen anbringen, die ihn ohne Einstellen in jeder Höhe halten, oder eine Schublade daraus machen; {0}</translation>
  </message>
  <message>
   <source>the lines before say {0}</source>
   <translation>die Zeilen davor sagen {0}</translation>
  </message>
  <message>
   <source>the longest span that passes is {0}</source>
   <translation>die größte Spannweite, die besteht, ist {0}</translation>
  </message>
  <message>
   <source>the lower number of a fraction must not be 0; {0}</source>
   <translation>die untere Zahl eines Bruchs darf nicht 0 sein; {0}</translation>
  </message>
  <message>
   <source>the middle of the closet's sliding panels</source>
   <translation>die Mitte der Schiebeflügel des Schranks</translation>
  </message>
  <message>
   <source>the name must end in {0}</source>
   <translation>der Name muss auf {0} enden</translation>
  </message>
  <message>
   <source>the number must be {0}</source>
   <translation>die Zahl muss {0} sein</translation>
  </message>
  <message>
   <source>the opening is in the middle of the front</source>
   <translation>die Öffnung ist in der Mitte der Vorderseite</translation>
  </message>
  <message>
   <source>the part list, JSON or CSV</source>
   <translation>die Teileliste, JSON oder CSV</translation>
  </message>
  <message>
   <source>the plan takes it, but it is not at hand</source>
   <translation>der Plan nimmt es, aber es ist nicht vorhanden</translation>
  </message>
  <message>
   <source>the plan to write, JSON; else it is printed</source>
   <translation>der zu schreibende Plan, JSON; sonst wird er ausgegeben</translation>
  </message>
  <message>
   <source>the readings agree less well with flat walls than their tape allows; all sizes are less certain by this factor, and more readings would help</source>
   <translation>die Messwerte stimmen mit ebenen Wänden weniger gut überein, als ihr Maßband erlaubt; alle Maße sind um diesen Faktor unsicherer, und mehr Messwerte würden helfen</translation>
  </message>
  <message>
   <source>the readings show a {0}{1}</source>
   <translation>die Messwerte zeigen {0}{1}</translation>
  </message>
  <message>
   <source>the right return</source>
   <translation>das rechte Wandstück</translation>
  </message>
  <message>
   <source>the rule exempts units permanently attached to the building, and only those</source>
   <translation>die Regel nimmt dauerhaft am Gebäude befestigte Möbel aus, und nur diese</translation>
  </message>
  <message>
   <source>the same seed, the same plan</source>
   <translation>dieselbe Startzahl, derselbe Plan</translation>
  </message>
  <message>
   <source>the screws of its supports, each of which carries up to {0}</source>
   <translation>die Schrauben seiner Stützen; jede davon trägt bis zu {0}</translation>
  </message>
  <message>
   <source>the sizes of these hang on the {0}, and the sheet has nothing to spare for cutting them larger first: {1}</source>
   <translation>die Maße dieser Teile hängen von der Säge ab ({0}), und die Platte hat nichts übrig, um sie zuerst größer zu schneiden: {1}</translation>
  </message>
  <message>
   <source>the slides lie behind a face frame: pack them out by {0} at the left and {1} at the right, flush with the frame's edges</source>
   <translation>die Auszüge liegen hinter einem Vorsatzrahmen: links um {0} und rechts um {1} auffüttern, bündig mit den Rahmenkanten</translation>
  </message>
  <message>
   <source>the span that passes is {0}</source>
   <translation>die Spannweite, die besteht, ist {0}</translation>
  </message>
  <message>
   <source>the top gives way under one person between two rails</source>
   <translation>die Bankplatte gibt unter einer Person zwischen zwei Rahmenhölzern nach</translation>
  </message>
  <message>
   <source>the top may break under one person between two rails</source>
   <translation>die Bankplatte kann unter einer Person zwischen zwei Rahmenhölzern brechen</translation>
  </message>
  <message>
   <source>the wall above the opening</source>
   <translation>die Wand über der Öffnung</translation>
  </message>
  <message>
   <source>the wall is not known or not computed, so no screws for it are in the bill</source>
   <translation>die Wand ist nicht bekannt oder nicht berechnet, daher sind keine Schrauben dafür in der Stückliste</translation>
  </message>
  <message>
   <source>the {0}</source>
   <translation>{0}</translation>
  </message>
  <message>
   <source>the {0} cannot be right: {1} was read, {2} follows from the others; measure it again. The room is worked out without it</source>
   <translation>{0} kann nicht stimmen: {1} wurde gemessen, {2} folgt aus den anderen; neu messen. Der Raum ist ohne ihn berechnet</translation>
  </message>
  <message>
   <source>there already is a piece {0}</source>
   <translation>es gibt schon ein Stück {0}</translation>
  </message>
  <message>
   <source>there is no folder {0}; make it or choose another</source>
   <translation>es gibt keinen Ordner {0}; ihn anlegen oder einen anderen wählen</translation>
  </message>
  <message>
   <source>there is no piece {0} at this point</source>
   <translation>an dieser Stelle gibt es kein Stück {0}</translation>
  </message>
  <message>
   <source>there is no such offcut</source>
   <translation>ein solches Reststück gibt es nicht</translation>
  </message>
  <message>
   <source>there is nothing to write yet</source>
   <translation>noch ist nichts zu schreiben</translation>
  </message>
  <message>
   <source>there must be one of it</source>
   <translation>davon muss es eines geben</translation>
  </message>
  <message>
   <source>they do not give {0} pieces of {1} m in all; add some</source>
   <translation>sie ergeben nicht {0} Stücke von insgesamt {1} m; welche hinzufügen</translation>
  </message>
  <message>
   <source>they reach only {0} into a stud</source>
   <translation>sie reichen nur {0} in einen Ständer</translation>
  </message>
  <message>
   <source>thickness of a door</source>
   <translation>Dicke einer Tür</translation>
  </message>
  <message>
   <source>thickness of the baseboard</source>
   <translation>Dicke der Sockelleiste</translation>
  </message>
  <message>
   <source>thickness of the board</source>
   <translation>Dicke der Platte</translation>
  </message>
  <message>
   <source>thickness of the box's sides</source>
   <translation>Dicke der Kastenseiten</translation>
  </message>
  <message>
   <source>thickness of the casing</source>
   <translation>Dicke der Bekleidung</translation>
  </message>
  <message>
   <source>thickness of the closet's own door</source>
   <translation>Dicke der eigenen Tür des Schranks</translation>
  </message>
  <message>
   <source>thickness of the top</source>
   <translation>Dicke der Oberplatte</translation>
  </message>
  <message>
   <source>thickness of the wall at the opening</source>
   <translation>Dicke der Wand an der Öffnung</translation>
  </message>
  <message>
   <source>thing in the middle of a shelf</source>
   <translation>Gegenstand in der Mitte eines Bodens</translation>
  </message>
  <message>
   <source>tilted under the lintel</source>
   <translation>unter dem Sturz gekippt</translation>
  </message>
  <message>
   <source>tilted up</source>
   <translation>hochgekippt</translation>
  </message>
  <message>
   <source>title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <source>to be cut from a {0}</source>
   <translation>aus {0} zu schneiden</translation>
  </message>
  <message>
   <source>to carry slides</source>
   <translation>um Auszüge zu tragen</translation>
  </message>
  <message>
   <source>to cover the dividers' edges and leave an opening</source>
   <translation>um die Kanten der Mittelseiten zu decken und eine Öffnung zu lassen</translation>
  </message>
  <message>
   <source>to cover the shelf's edge, from {0}</source>
   <translation>um die Kante des Bodens zu decken, ab {0}</translation>
  </message>
  <message>
   <source>to cover the side's edge and leave an opening</source>
   <translation>um die Kante der Seite zu decken und eine Öffnung zu lassen</translation>
  </message>
  <message>
   <source>to cover the slide, with {0} mm above and {1} mm below</source>
   <translation>um den Auszug zu decken, mit {0} mm darüber und {1} mm darunter</translation>
  </message>
  <message>
   <source>to fit in</source>
   <translation>um hineinzupassen</translation>
  </message>
  <message>
   <source>to fit the envelope</source>
   <translation>um in den Einbauraum zu passen</translation>
  </message>
  <message>
   <source>to lie in the bay</source>
   <translation>um im Feld zu liegen</translation>
  </message>
  <message>
   <source>to lie in what is left of the side</source>
   <translation>um in dem zu liegen, was von der Seite bleibt</translation>
  </message>
  <message>
   <source>to the wall</source>
   <translation>zur Wand</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>Sockelrücksprung</translation>
  </message>
  <message>
   <source>tongue and groove</source>
   <translation>Nut und Feder</translation>
  </message>
  <message>
   <source>too many turns</source>
   <translation>zu viele Drehungen</translation>
  </message>
  <message>
   <source>too narrow for a strip to be scribed and fixed, and too wide for the mouldings: give it {0} more clearance</source>
   <translation>zu schmal für einen Streifen zum Anpassen und Befestigen, und zu breit für die Leisten: {0} mehr Freiraum geben</translation>
  </message>
  <message>
   <source>top rail</source>
   <translation>oberer Querfries</translation>
  </message>
  <message>
   <source>trim</source>
   <translation>Besäumung</translation>
  </message>
  <message>
   <source>trim the sheet less</source>
   <translation>die Platte weniger besäumen</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>Rohr</translation>
  </message>
  <message>
   <source>turned in plan</source>
   <translation>im Grundriss gedreht</translation>
  </message>
  <message>
   <source>turned in the opening and set upright behind it</source>
   <translation>in der Öffnung gedreht und dahinter aufgerichtet</translation>
  </message>
  <message>
   <source>turned past the jambs</source>
   <translation>an den Laibungen vorbeigedreht</translation>
  </message>
  <message>
   <source>turned up sideways</source>
   <translation>seitlich hochgedreht</translation>
  </message>
  <message>
   <source>turns over {0}</source>
   <translation>kippt mit {0}</translation>
  </message>
  <message>
   <source>twist of the back wall</source>
   <translation>Verwindung der Rückwand</translation>
  </message>
  <message>
   <source>twist of the ceiling</source>
   <translation>Verwindung der Decke</translation>
  </message>
  <message>
   <source>twist of the floor</source>
   <translation>Verwindung des Bodens</translation>
  </message>
  <message>
   <source>twist of the left wall</source>
   <translation>Verwindung der linken Wand</translation>
  </message>
  <message>
   <source>twist of the right wall</source>
   <translation>Verwindung der rechten Wand</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation>zwei gleiche Lasten in den äußeren Viertelspunkten</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation>zwei gleiche Lasten in den äußeren Viertelspunkten, Durchbiegung an einer Last</translation>
  </message>
  <message>
   <source>two sliding panels</source>
   <translation>zwei Schiebeflügel</translation>
  </message>
  <message>
   <source>unanchored it tips over {0}</source>
   <translation>unverankert kippt es {0}</translation>
  </message>
  <message>
   <source>unanchored it withstands {0} what turns it over {1}</source>
   <translation>unverankert widersteht es {0} dem, was es umkippt ({1})</translation>
  </message>
  <message>
   <source>under {0} ({1}) {2} of {3}{4}</source>
   <translation>unter {0} ({1}) {2} von {3}{4}</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>unreadable</source>
   <translation>nicht lesbar</translation>
  </message>
  <message>
   <source>upper rod</source>
   <translation>obere Stange</translation>
  </message>
  <message>
   <source>use</source>
   <translation>Verwendung</translation>
  </message>
  <message>
   <source>use every hole of the support, screws that bite at least two thirds of the panel, and through the panel into a stud or a cleat where you can</source>
   <translation>jedes Loch der Stütze nutzen, Schrauben, die mindestens zwei Drittel der Platte fassen, und wo möglich durch die Platte in einen Ständer oder eine Tragleiste</translation>
  </message>
  <message>
   <source>value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation>Furniersperrholz</translation>
  </message>
  <message>
   <source>vertical panel saw at the store</source>
   <translation>stehende Plattensäge beim Händler</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>Wand</translation>
  </message>
  <message>
   <source>ways in are looked for as if these were not there: {0}; see that the largest pieces pass them on their way</source>
   <translation>Wege hinein werden gesucht, als wären diese nicht da: {0}; prüfen, dass die größten Teile auf ihrem Weg daran vorbeikommen</translation>
  </message>
  <message>
   <source>ways to buy</source>
   <translation>Kaufmöglichkeiten</translation>
  </message>
  <message>
   <source>web between them</source>
   <translation>Steg dazwischen</translation>
  </message>
  <message>
   <source>weight of a cut</source>
   <translation>Gewicht eines Schnitts</translation>
  </message>
  <message>
   <source>weight of a door</source>
   <translation>Gewicht einer Tür</translation>
  </message>
  <message>
   <source>weight of a metre sawn</source>
   <translation>Gewicht eines gesägten Meters</translation>
  </message>
  <message>
   <source>weight of the offcut</source>
   <translation>Gewicht des Reststücks</translation>
  </message>
  <message>
   <source>weights</source>
   <translation>Gewichte</translation>
  </message>
  <message>
   <source>weights from memory</source>
   <translation>Gewichte aus dem Gedächtnis</translation>
  </message>
  <message>
   <source>what is bought is sound; say offcut for one at hand</source>
   <translation>was gekauft wird, ist heil; bei einem vorhandenen Stück offcut angeben</translation>
  </message>
  <message>
   <source>what its anti-tip anchors hold is for their maker to say, and needs a stud or masonry behind</source>
   <translation>was seine Kippsicherungen halten, muss ihr Hersteller sagen, und sie brauchen einen Ständer oder Mauerwerk dahinter</translation>
  </message>
  <message>
   <source>what the supports hold, by their maker</source>
   <translation>was die Stützen halten, laut ihrem Hersteller</translation>
  </message>
  <message>
   <source>wider than a filler usually is: make the carcass up to {0} larger</source>
   <translation>breiter, als eine Passleiste üblich ist: den Korpus bis zu {0} größer machen</translation>
  </message>
  <message>
   <source>width</source>
   <translation>Breite</translation>
  </message>
  <message>
   <source>width = {0}</source>
   <translation>Breite = {0}</translation>
  </message>
  <message>
   <source>width at the back, high</source>
   <translation>Breite hinten, hoch</translation>
  </message>
  <message>
   <source>width at the back, low</source>
   <translation>Breite hinten, tief</translation>
  </message>
  <message>
   <source>width at the back, middle</source>
   <translation>Breite hinten, Mitte</translation>
  </message>
  <message>
   <source>width at the front, high</source>
   <translation>Breite vorn, hoch</translation>
  </message>
  <message>
   <source>width at the front, low</source>
   <translation>Breite vorn, tief</translation>
  </message>
  <message>
   <source>width at the front, middle</source>
   <translation>Breite vorn, Mitte</translation>
  </message>
  <message>
   <source>width first</source>
   <translation>zuerst die Breite</translation>
  </message>
  <message>
   <source>width for hangers</source>
   <translation>Breite für Bügel</translation>
  </message>
  <message>
   <source>width of a door</source>
   <translation>Breite einer Tür</translation>
  </message>
  <message>
   <source>width of the box</source>
   <translation>Breite des Kastens</translation>
  </message>
  <message>
   <source>width of the casing</source>
   <translation>Breite der Bekleidung</translation>
  </message>
  <message>
   <source>width of the members</source>
   <translation>Breite der Rahmenteile</translation>
  </message>
  <message>
   <source>width of the mullions</source>
   <translation>Breite der Mittelfriese</translation>
  </message>
  <message>
   <source>width of the opening</source>
   <translation>Breite der Öffnung</translation>
  </message>
  <message>
   <source>width of the opening, high</source>
   <translation>Breite der Öffnung, hoch</translation>
  </message>
  <message>
   <source>width of the stiles</source>
   <translation>Breite der Längsfriese</translation>
  </message>
  <message>
   <source>with all drawers open and full</source>
   <translation>mit allen Schubladen offen und voll</translation>
  </message>
  <message>
   <source>with its doors open</source>
   <translation>mit offenen Türen</translation>
  </message>
  <message>
   <source>wood</source>
   <translation>Holz</translation>
  </message>
  <message>
   <source>wood and board dust harms lungs and may cause cancer: extraction at the tool, a respirator, sweep nothing dry; resin boards give off formaldehyde: air the room</source>
   <translation>Holz- und Plattenstaub schadet der Lunge und kann Krebs verursachen: Absaugung am Werkzeug, Atemschutz, nichts trocken kehren; kunstharzgebundene Platten geben Formaldehyd ab: den Raum lüften</translation>
  </message>
  <message>
   <source>wood studs</source>
   <translation>Holzständer</translation>
  </message>
  <message>
   <source>works loose in time: </source>
   <translation>löst sich mit der Zeit: </translation>
  </message>
  <message>
   <source>your own load</source>
   <translation>die eigene Last</translation>
  </message>
  <message>
   <source>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</source>
   <translation>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</translation>
  </message>
  <message>
   <source>{0} ({1}), {2} used</source>
   <translation>{0} ({1}), {2} genutzt</translation>
  </message>
  <message>
   <source>{0} ({1}), {2} used, {3} cuts</source>
   <translation>{0} ({1}), {2} genutzt, {3} Schnitte</translation>
  </message>
  <message>
   <source>{0} [material.{1}]</source>
   <translation>{0} [material.{1}]</translation>
  </message>
  <message>
   <source>{0} above the floor</source>
   <translation>{0} über dem Boden</translation>
  </message>
  <message>
   <source>{0} after {1} must be under {2}; carry the rest into {3}</source>
   <translation>{0} nach {1} muss unter {2} sein; den Rest in {3} übertragen</translation>
  </message>
  <message>
   <source>{0} along the sheet's {1}</source>
   <translation>{0} längs der {1} der Platte</translation>
  </message>
  <message>
   <source>{0} and {1}</source>
   <translation>{0} und {1}</translation>
  </message>
  <message>
   <source>{0} and {1} are closer than the kerf</source>
   <translation>{0} und {1} liegen näher als die Schnittfuge</translation>
  </message>
  <message>
   <source>{0} and {1} mm</source>
   <translation>{0} und {1} mm</translation>
  </message>
  <message>
   <source>{0} apart</source>
   <translation>{0} auseinander</translation>
  </message>
  <message>
   <source>{0} as carried from the store are too heavy, or too long and wide, for one person</source>
   <translation>{0} sind, wie beim Händler mitgenommen, zu schwer oder zu lang und breit für eine Person</translation>
  </message>
  <message>
   <source>{0} as carried from the store is too heavy, or too long and wide, for one person</source>
   <translation>{0} ist, wie beim Händler mitgenommen, zu schwer oder zu lang und breit für eine Person</translation>
  </message>
  <message>
   <source>{0} at each edge</source>
   <translation>{0} an jeder Kante</translation>
  </message>
  <message>
   <source>{0} at each side</source>
   <translation>{0} an jeder Seite</translation>
  </message>
  <message>
   <source>{0} at the {1}</source>
   <translation>{0} {1}</translation>
  </message>
  <message>
   <source>{0} at {1} across, {2} deep</source>
   <translation>{0} bei {1} quer, {2} tief</translation>
  </message>
  <message>
   <source>{0} back quarter round</source>
   <translation>{0} hinterer Viertelstab</translation>
  </message>
  <message>
   <source>{0} below it</source>
   <translation>{0} darunter</translation>
  </message>
  <message>
   <source>{0} between the ends of its cleats under {1}, reckoned as a strip, which is more than it will</source>
   <translation>{0} zwischen den Enden seiner Tragleisten unter {1}, als Streifen gerechnet, was mehr ist, als eintritt</translation>
  </message>
  <message>
   <source>{0} between the stiffest and the softest boards published ({1})</source>
   <translation>{0} zwischen der steifsten und der weichsten veröffentlichten Platte ({1})</translation>
  </message>
  <message>
   <source>{0} board {1}</source>
   <translation>{0} Platte {1}</translation>
  </message>
  <message>
   <source>{0} bottom</source>
   <translation>{0} Kastenboden</translation>
  </message>
  <message>
   <source>{0} bow</source>
   <translation>{0} Wölbung</translation>
  </message>
  <message>
   <source>{0} by the boards published ({1})</source>
   <translation>{0} nach den veröffentlichten Platten ({1})</translation>
  </message>
  <message>
   <source>{0} cannot follow {1}; {2}</source>
   <translation>{0} kann {1} nicht folgen; {2}</translation>
  </message>
  <message>
   <source>{0} cleat</source>
   <translation>{0} Tragleiste</translation>
  </message>
  <message>
   <source>{0} cm³ in common</source>
   <translation>{0} cm³ gemeinsam</translation>
  </message>
  <message>
   <source>{0} dividers to carry it</source>
   <translation>{0} Mittelseiten zum Tragen</translation>
  </message>
  <message>
   <source>{0} door</source>
   <translation>{0} Tür</translation>
  </message>
  <message>
   <source>{0} expected, give or take {1}</source>
   <translation>{0} erwartet, plus/minus {1}</translation>
  </message>
  <message>
   <source>{0} fault(s); the plan must not be used</source>
   <translation>{0} Fehler; der Plan darf nicht verwendet werden</translation>
  </message>
  <message>
   <source>{0} filler</source>
   <translation>{0} Passleiste</translation>
  </message>
  <message>
   <source>{0} front</source>
   <translation>{0} Front</translation>
  </message>
  <message>
   <source>{0} gap at the {1}</source>
   <translation>{0} Spalt {1}</translation>
  </message>
  <message>
   <source>{0} high enough for a small child's body and too low for its head, the lowest as given: make what a toddler reaches lower or higher, or close it; {1}</source>
   <translation>{0} hoch genug für den Körper eines kleinen Kindes und zu niedrig für seinen Kopf, die niedrigste wie angegeben: was ein Kleinkind erreicht, niedriger oder höher machen oder schließen; {1}</translation>
  </message>
  <message>
   <source>{0} holds a defect</source>
   <translation>{0} enthält einen Fehler</translation>
  </message>
  <message>
   <source>{0} in to {1} in</source>
   <translation>{0} in bis {1} in</translation>
  </message>
  <message>
   <source>{0} in {1}, bay {2}</source>
   <translation>{0} in {1}, Feld {2}</translation>
  </message>
  <message>
   <source>{0} is cut {1} long</source>
   <translation>{0} wird {1} lang geschnitten</translation>
  </message>
  <message>
   <source>{0} is no number; {1}</source>
   <translation>{0} ist keine Zahl; {1}</translation>
  </message>
  <message>
   <source>{0} is no unit of length here; {1}</source>
   <translation>{0} ist hier keine Längeneinheit; {1}</translation>
  </message>
  <message>
   <source>{0} is not of {1}</source>
   <translation>{0} ist nicht aus {1}</translation>
  </message>
  <message>
   <source>{0} is not sold {1} mm long as yet</source>
   <translation>{0} wird bisher nicht {1} mm lang verkauft</translation>
  </message>
  <message>
   <source>{0} is outside the trimmed length</source>
   <translation>{0} liegt außerhalb der besäumten Länge</translation>
  </message>
  <message>
   <source>{0} kept from {1}</source>
   <translation>{0} aufgehoben von {1}</translation>
  </message>
  <message>
   <source>{0} kg every {1} mm</source>
   <translation>{0} kg alle {1} mm</translation>
  </message>
  <message>
   <source>{0} kg of {1}</source>
   <translation>{0} kg ({1})</translation>
  </message>
  <message>
   <source>{0} kg, or {1} m² over {2}</source>
   <translation>{0} kg, oder {1} m² über {2}</translation>
  </message>
  <message>
   <source>{0} lap</source>
   <translation>{0} Überblattung</translation>
  </message>
  <message>
   <source>{0} lb of {1}</source>
   <translation>{0} lb ({1})</translation>
  </message>
  <message>
   <source>{0} lbf</source>
   <translation>{0} lbf</translation>
  </message>
  <message>
   <source>{0} lbf·ft</source>
   <translation>{0} lbf·ft</translation>
  </message>
  <message>
   <source>{0} lean</source>
   <translation>{0} Neigung</translation>
  </message>
  <message>
   <source>{0} left quarter round</source>
   <translation>{0} linker Viertelstab</translation>
  </message>
  <message>
   <source>{0} line {1}</source>
   <translation>{0} Zeile {1}</translation>
  </message>
  <message>
   <source>{0} lip</source>
   <translation>{0} Lippe</translation>
  </message>
  <message>
   <source>{0} litres</source>
   <translation>{0} Liter</translation>
  </message>
  <message>
   <source>{0} looks like a subtraction; {1}</source>
   <translation>{0} sieht nach einer Subtraktion aus; {1}</translation>
  </message>
  <message>
   <source>{0} mm at each end</source>
   <translation>{0} mm an jedem Ende</translation>
  </message>
  <message>
   <source>{0} mm in a metre</source>
   <translation>{0} mm auf einen Meter</translation>
  </message>
  <message>
   <source>{0} mm of {1} mm</source>
   <translation>{0} mm von {1} mm</translation>
  </message>
  <message>
   <source>{0} mm to {1} mm</source>
   <translation>{0} mm bis {1} mm</translation>
  </message>
  <message>
   <source>{0} mm wanted</source>
   <translation>{0} mm gewünscht</translation>
  </message>
  <message>
   <source>{0} more than one person should lift flat at arm's length: carry them upright and close, or by two</source>
   <translation>{0} mehr, als eine Person flach mit gestreckten Armen heben sollte: aufrecht und nah am Körper tragen, oder zu zweit</translation>
  </message>
  <message>
   <source>{0} moulding</source>
   <translation>{0} Leiste</translation>
  </message>
  <message>
   <source>{0} need the place of {1}</source>
   <translation>{0} brauchen den Platz von {1}</translation>
  </message>
  <message>
   <source>{0} of clothes</source>
   <translation>{0} Kleidung</translation>
  </message>
  <message>
   <source>{0} of nominal {1} measures {2} to {3} ({4}, and {5} for the reading); measure again, or enter the board as a material of its own with its own nominal</source>
   <translation>{0} mit Nennmaß {1} misst {2} bis {3} ({4}, und {5} für die Messung); neu messen oder die Platte als eigenes Material mit eigenem Nennmaß eingeben</translation>
  </message>
  <message>
   <source>{0} of the opening in {1}</source>
   <translation>{0} der Öffnung in {1}</translation>
  </message>
  <message>
   <source>{0} of travel</source>
   <translation>{0} Auszugsweg</translation>
  </message>
  <message>
   <source>{0} of {1} mm</source>
   <translation>{0} × {1} mm</translation>
  </message>
  <message>
   <source>{0} of {1} mm at {2} mm</source>
   <translation>{0} von {1} mm bei {2} mm</translation>
  </message>
  <message>
   <source>{0} of {1} shelves and rods lie outside the reach of somebody seated, the highest as given: keep what is used daily within it</source>
   <translation>{0} von {1} Böden und Stangen liegen außerhalb der Reichweite einer sitzenden Person, der höchste wie angegeben: täglich Benutztes innerhalb halten</translation>
  </message>
  <message>
   <source>{0} once it is stripped</source>
   <translation>{0} ohne die abgenommenen Teile</translation>
  </message>
  <message>
   <source>{0} openings are</source>
   <translation>{0} Öffnungen sind</translation>
  </message>
  <message>
   <source>{0} or {1}</source>
   <translation>{0} oder {1}</translation>
  </message>
  <message>
   <source>{0} parts weigh</source>
   <translation>{0} Teile wiegen</translation>
  </message>
  <message>
   <source>{0} psi</source>
   <translation>{0} psi</translation>
  </message>
  <message>
   <source>{0} quarter round</source>
   <translation>{0} Viertelstab</translation>
  </message>
  <message>
   <source>{0} rest</source>
   <translation>{0} Rest</translation>
  </message>
  <message>
   <source>{0} right quarter round</source>
   <translation>{0} rechter Viertelstab</translation>
  </message>
  <message>
   <source>{0} rise</source>
   <translation>{0} Anstieg</translation>
  </message>
  <message>
   <source>{0} run</source>
   <translation>{0} Verlauf</translation>
  </message>
  <message>
   <source>{0} sheets are named {1}</source>
   <translation>{0} Platten heißen {1}</translation>
  </message>
  <message>
   <source>{0} sheet{1}</source>
   <translation>{0} Platte{1}</translation>
  </message>
  <message>
   <source>{0} shim {1}</source>
   <translation>{0} Unterlage {1}</translation>
  </message>
  <message>
   <source>{0} skew</source>
   <translation>{0} Schiefe</translation>
  </message>
  <message>
   <source>{0} stands beside another number without a unit; {1}</source>
   <translation>{0} steht neben einer anderen Zahl ohne Einheit; {1}</translation>
  </message>
  <message>
   <source>{0} stile</source>
   <translation>{0} Längsfries</translation>
  </message>
  <message>
   <source>{0} stop</source>
   <translation>{0} Anschlag</translation>
  </message>
  <message>
   <source>{0} strips</source>
   <translation>{0} Streifen</translation>
  </message>
  <message>
   <source>{0} strips need {1} widths and {2} kerfs</source>
   <translation>{0} Streifen brauchen {1} Breiten und {2} Schnittfugen</translation>
  </message>
  <message>
   <source>{0} thick</source>
   <translation>{0} dick</translation>
  </message>
  <message>
   <source>{0} times</source>
   <translation>{0}-mal</translation>
  </message>
  <message>
   <source>{0} to the studs</source>
   <translation>{0} an die Ständer</translation>
  </message>
  <message>
   <source>{0} to the wall</source>
   <translation>{0} zur Wand</translation>
  </message>
  <message>
   <source>{0} to {1} by density</source>
   <translation>{0} bis {1} je nach Dichte</translation>
  </message>
  <message>
   <source>{0} to {1} by density ({2})</source>
   <translation>{0} bis {1} je nach Dichte ({2})</translation>
  </message>
  <message>
   <source>{0} to {1} by the density of its board</source>
   <translation>{0} bis {1} je nach Dichte seiner Platte</translation>
  </message>
  <message>
   <source>{0} to {1} by the density of its boards</source>
   <translation>{0} bis {1} je nach Dichte seiner Platten</translation>
  </message>
  <message>
   <source>{0} to {1} by the density published for the board</source>
   <translation>{0} bis {1} nach der für die Platte veröffentlichten Dichte</translation>
  </message>
  <message>
   <source>{0} to {1} by the density published for the boards</source>
   <translation>{0} bis {1} nach der für die Platten veröffentlichten Dichte</translation>
  </message>
  <message>
   <source>{0} to {1} in the lightest and the heaviest softwood studs</source>
   <translation>{0} bis {1} in den leichtesten und den schwersten Nadelholzständern</translation>
  </message>
  <message>
   <source>{0} to {1} long</source>
   <translation>{0} bis {1} lang</translation>
  </message>
  <message>
   <source>{0} to {1} mm</source>
   <translation>{0} bis {1} mm</translation>
  </message>
  <message>
   <source>{0} to {1} mm across</source>
   <translation>{0} bis {1} mm quer</translation>
  </message>
  <message>
   <source>{0} to {1} mm across, up to {2} mm high</source>
   <translation>{0} bis {1} mm quer, bis {2} mm hoch</translation>
  </message>
  <message>
   <source>{0} to {1} mm along its {2}</source>
   <translation>{0} bis {1} mm entlang: {2}</translation>
  </message>
  <message>
   <source>{0} to {1}, by the density of its boards</source>
   <translation>{0} bis {1}, je nach Dichte seiner Platten</translation>
  </message>
  <message>
   <source>{0} top filler</source>
   <translation>{0} obere Passleiste</translation>
  </message>
  <message>
   <source>{0} top moulding</source>
   <translation>{0} obere Leiste</translation>
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation>{0} Besäumung {1}</translation>
  </message>
  <message>
   <source>{0} twist</source>
   <translation>{0} Verwindung</translation>
  </message>
  <message>
   <source>{0} under {1}</source>
   <translation>{0} unter {1}</translation>
  </message>
  <message>
   <source>{0} was not pasted: {1}
</source>
   <translation>{0} wurde nicht eingefügt: {1}
</translation>
  </message>
  <message>
   <source>{0} without its edge bands</source>
   <translation>{0} ohne seine Kanten</translation>
  </message>
  <message>
   <source>{0} would hold {1} of that</source>
   <translation>{0} würde {1} davon halten</translation>
  </message>
  <message>
   <source>{0} x {1} in {2}</source>
   <translation>{0} × {1} in {2}</translation>
  </message>
  <message>
   <source>{0} x {1} mm</source>
   <translation>{0} x {1} mm</translation>
  </message>
  <message>
   <source>{0} x {1} through the top cleat, one into each stud, and as many through each other cleat, heads on washers{2}</source>
   <translation>{0} x {1} durch die obere Tragleiste, eine in jeden Ständer, und ebenso viele durch jede andere Tragleiste, Köpfe auf Unterlegscheiben{2}</translation>
  </message>
  <message>
   <source>{0} {1} at its top, each into a stud and, with a screw of its own, into the board{2}</source>
   <translation>{0} {1} an seiner Oberseite, jeder in einen Ständer und mit einer eigenen Schraube in die Platte{2}</translation>
  </message>
  <message>
   <source>{0} {1} cleat</source>
   <translation>{0} {1} Tragleiste</translation>
  </message>
  <message>
   <source>{0} {1} end cleat</source>
   <translation>{0} {1} Endtragleiste</translation>
  </message>
  <message>
   <source>{0} {1} under {2}</source>
   <translation>{0} {1} unter {2}</translation>
  </message>
  <message>
   <source>{0} {1} under {2}{3}{4}{5}; after years about {6} ({7})</source>
   <translation>{0} {1} unter {2}{3}{4}{5}; nach Jahren etwa {6} ({7})</translation>
  </message>
  <message>
   <source>{0}, bay {1}</source>
   <translation>{0}, Feld {1}</translation>
  </message>
  <message>
   <source>{0}, divider {1}</source>
   <translation>{0}, Mittelseite {1}</translation>
  </message>
  <message>
   <source>{0}, gap at the {1}</source>
   <translation>{0}, Spalt {1}</translation>
  </message>
  <message>
   <source>{0}, groove for {1}</source>
   <translation>{0}, Nut für {1}</translation>
  </message>
  <message>
   <source>{0}, grooves for {1} and {2}</source>
   <translation>{0}, Nuten für {1} und {2}</translation>
  </message>
  <message>
   <source>{0}, hole for {1} in the {2}</source>
   <translation>{0}, Loch für {1} in {2}</translation>
  </message>
  <message>
   <source>{0}, holes for {1}</source>
   <translation>{0}, Löcher für {1}</translation>
  </message>
  <message>
   <source>{0}, holes for {1} and {2}</source>
   <translation>{0}, Löcher für {1} und {2}</translation>
  </message>
  <message>
   <source>{0}, measured thickness</source>
   <translation>{0}, gemessene Dicke</translation>
  </message>
  <message>
   <source>{0}, part {1}</source>
   <translation>{0}, Teil {1}</translation>
  </message>
  <message>
   <source>{0}, pocket for {1}</source>
   <translation>{0}, Tasche für {1}</translation>
  </message>
  <message>
   <source>{0}, pulled at the edge</source>
   <translation>{0}, an der Kante gezogen</translation>
  </message>
  <message>
   <source>{0}, screw point {1}</source>
   <translation>{0}, Schraubpunkt {1}</translation>
  </message>
  <message>
   <source>{0}, shelf {1}</source>
   <translation>{0}, Boden {1}</translation>
  </message>
  <message>
   <source>{0}, spreadsheet</source>
   <translation>{0}, Tabelle</translation>
  </message>
  <message>
   <source>{0}, where it bends</source>
   <translation>{0}, wo es sich biegt</translation>
  </message>
  <message>
   <source>{0}, which reach only {1} into what holds them: no load is published for that</source>
   <translation>{0}, die nur {1} in das reichen, was sie hält: dafür ist keine Last veröffentlicht</translation>
  </message>
  <message>
   <source>{0}, {1} deep</source>
   <translation>{0}, {1} tief</translation>
  </message>
  <message>
   <source>{0}, {1} x {2} in {3}{4}</source>
   <translation>{0}, {1} x {2} in {3}{4}</translation>
  </message>
  <message>
   <source>{0}, {1}: empty or outside the trimmed sheet</source>
   <translation>{0}, {1}: leer oder außerhalb der besäumten Platte</translation>
  </message>
  <message>
   <source>{0}0 and {1}1</source>
   <translation>{0}0 and {1}1</translation>
  </message>
  <message>
   <source>{0}: bay {1}</source>
   <translation>{0}: Feld {1}</translation>
  </message>
  <message>
   <source>{0}: bill</source>
   <translation>{0}: Stückliste</translation>
  </message>
  <message>
   <source>{0}: cut layout</source>
   <translation>{0}: Zuschnittplan</translation>
  </message>
  <message>
   <source>{0}: made by another version of the workbench ({1} is unknown); it stays as it is
</source>
   <translation>{0}: von einer anderen Version des Arbeitsbereichs gemacht ({1} ist unbekannt); es bleibt, wie es ist
</translation>
  </message>
  <message>
   <source>{0}: no cuts are listed</source>
   <translation>{0}: keine Schnitte aufgeführt</translation>
  </message>
  <message>
   <source>{0}: not the sheet {1} of the stock</source>
   <translation>{0}: nicht die Platte {1} des Lagers</translation>
  </message>
  <message>
   <source>{0}: not the stock length {1}</source>
   <translation>{0}: nicht die Länge {1}</translation>
  </message>
  <message>
   <source>{0}: not to be sawn from edge to edge within the stages allowed</source>
   <translation>{0}: innerhalb der erlaubten Stufen nicht von Kante zu Kante zu sägen</translation>
  </message>
  <message>
   <source>{0}: not turned, its grain must run across the sheet</source>
   <translation>{0}: nicht gedreht, die Faser muss quer zur Platte laufen</translation>
  </message>
  <message>
   <source>{0}: of {1}, on a sheet of {2}</source>
   <translation>{0}: aus {1}, auf einer Platte aus {2}</translation>
  </message>
  <message>
   <source>{0}: outside the trimmed sheet</source>
   <translation>{0}: außerhalb der besäumten Platte</translation>
  </message>
  <message>
   <source>{0}: planned for a kerf of {1}, not {2}</source>
   <translation>{0}: für eine Schnittfuge von {1} geplant, nicht {2}</translation>
  </message>
  <message>
   <source>{0}: the bound {1} is above the sheets used</source>
   <translation>{0}: die Schranke {1} liegt über den verwendeten Platten</translation>
  </message>
  <message>
   <source>{0}: the cuts do not give part {1}</source>
   <translation>{0}: die Schnitte ergeben Teil {1} nicht</translation>
  </message>
  <message>
   <source>{0}: the cuts do not give {1}</source>
   <translation>{0}: die Schnitte ergeben {1} nicht</translation>
  </message>
  <message>
   <source>{0}: top</source>
   <translation>{0}: Oberboden</translation>
  </message>
  <message>
   <source>{0}: turned, its grain must run along the sheet</source>
   <translation>{0}: gedreht, die Faser muss längs der Platte laufen</translation>
  </message>
  <message>
   <source>{0}: {1} and {2} are closer than the kerf</source>
   <translation>{0}: {1} und {2} liegen enger als die Schnittfuge</translation>
  </message>
  <message>
   <source>{0}: {1} objects of the closet workbench had lost their program, as in a file saved without it; they can be edited again: {2}
</source>
   <translation>{0}: {1} Objekte des Schrank-Arbeitsbereichs hatten ihr Programm verloren, wie in einer ohne es gespeicherten Datei; sie können wieder bearbeitet werden: {2}
</translation>
  </message>
  <message>
   <source>{0}: {1} x {2} is not its size</source>
   <translation>{0}: {1} x {2} ist nicht seine Größe</translation>
  </message>
  <message>
   <source>{0}; 0: not taken</source>
   <translation>{0}; 0: nicht gemessen</translation>
  </message>
  <message>
   <source>{0}; EN 14749 (from memory)</source>
   <translation>{0}; EN 14749 (aus dem Gedächtnis)</translation>
  </message>
  <message>
   <source>{0}; a nail may be pulled with {1}, so glue it on where doors hang on it</source>
   <translation>{0}; ein Nagel darf mit {1} gezogen werden, also anleimen, wo Türen daran hängen</translation>
  </message>
  <message>
   <source>{0}; but look at the readings first: {1}</source>
   <translation>{0}; aber zuerst die Messwerte ansehen: {1}</translation>
  </message>
  <message>
   <source>{0}; changed in {1}</source>
   <translation>{0}; geändert in {1}</translation>
  </message>
  <message>
   <source>{0}; fasten it to the wall all the same</source>
   <translation>{0}; trotzdem an der Wand befestigen</translation>
  </message>
  <message>
   <source>{0}; limit: common practice, no published source</source>
   <translation>{0}; Grenze: übliche Praxis, keine veröffentlichte Quelle</translation>
  </message>
  <message>
   <source>{0}; load and limit: common practice, no published source</source>
   <translation>{0}; Last und Grenze: übliche Praxis, keine veröffentlichte Quelle</translation>
  </message>
  <message>
   <source>{0}; may come again</source>
   <translation>{0}; mehrfach möglich</translation>
  </message>
  <message>
   <source>{0}; or build it in place</source>
   <translation>{0}; oder an Ort und Stelle bauen</translation>
  </message>
  <message>
   <source>{0}; or one support more</source>
   <translation>{0}; oder eine Stütze mehr</translation>
  </message>
  <message>
   <source>{0}; sag: Composite Panel Association shelving bulletin (as quoted)</source>
   <translation>{0}; Durchbiegung: Composite Panel Association shelving bulletin (wie zitiert)</translation>
  </message>
  <message>
   <source>{0}; studs of specific gravity {1}</source>
   <translation>{0}; Ständer mit Rohdichtezahl {1}</translation>
  </message>
  <message>
   <source>{0}; {1}: not given</source>
   <translation>{0}; {1}: nicht angegeben</translation>
  </message>
  <message>
   <source>{0}; {1}; load: {2}</source>
   <translation>{0}; {1}; Last: {2}</translation>
  </message>
  <message>
   <source>{0}; {1}; statics</source>
   <translation>{0}; {1}; Statik</translation>
  </message>
  <message>
   <source>{0}; {1}; {2}; load: {3}</source>
   <translation>{0}; {1}; {2}; Last: {3}</translation>
  </message>
  <message>
   <source>{0}it would take {1} anchors of {2} each, but only {3} studs are sure to lie behind it{4}</source>
   <translation>{0}es wären {1} Anker mit je {2} nötig, aber nur {3} Ständer liegen sicher dahinter{4}</translation>
  </message>
  <message>
   <source>{0}{1}, and how it is fastened is not settled: {2}. Screw it into studs or masonry before anything is put into it</source>
   <translation>{0}{1}, und wie es befestigt wird, ist nicht geklärt: {2}. In Ständer oder Mauerwerk schrauben, bevor etwas hineinkommt</translation>
  </message>
  <message>
   <source>{0}{1}: fasten it before anything is put into it, with {2}, which makes it withstand {3} of that</source>
   <translation>{0}{1}: es befestigen, bevor etwas hineinkommt, mit {2}, womit es {3} dem widersteht</translation>
  </message>
  <message>
   <source>{0}{1}; load: {2}</source>
   <translation>{0}{1}; Last: {2}</translation>
  </message>
  <message>
   <source>{0}° open</source>
   <translation>{0}° offen</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_ShoeShelves</name>
  <message>
   <source>Shoe shelves…</source>
   <translation>Schuhböden…</translation>
  </message>
  <message>
   <source>Sloped shelves for shoes in one compartment</source>
   <translation>Schräge Böden für Schuhe in einem Fach</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Start</name>
  <message>
   <source>Start a closet from readings in the room or from its sizes</source>
   <translation>Einen Einbauschrank nach Messwerten im Raum oder nach seinen Maßen anlegen</translation>
  </message>
  <message>
   <source>Start a closet…</source>
   <translation>Einbauschrank anlegen…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Step</name>
  <message>
   <source>Export STEP…</source>
   <translation>STEP exportieren…</translation>
  </message>
  <message>
   <source>Write the parts of the closet, or those selected, as named solids for other programs</source>
   <translation>Die Teile des Schranks, oder die gewählten, als benannte Volumenkörper für andere Programme schreiben</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Survey</name>
  <message>
   <source>Back</source>
   <translation>Hinten</translation>
  </message>
  <message>
   <source>Enter the readings taken in the closet and see which plumb, level box fits</source>
   <translation>Die im Schrank genommenen Messwerte eingeben und sehen, welcher lot- und waagerechte Quader passt</translation>
  </message>
  <message>
   <source>Select the closet to survey.</source>
   <translation>Den aufzumessenden Einbauschrank wählen.</translation>
  </message>
  <message>
   <source>Survey…</source>
   <translation>Aufmaß…</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>In diesem Dokument ist kein Einbauschrank: zuerst einen anlegen.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_SurveySheet</name>
  <message>
   <source>Survey sheet…</source>
   <translation>Aufmaßblatt…</translation>
  </message>
  <message>
   <source>Write a sheet with drawings of the closet, numbered readings to take and blanks for them</source>
   <translation>Ein Blatt mit Zeichnungen des Schranks, nummerierten Messwerten und Leerstellen dafür schreiben</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Closet</source>
   <translation>Einbauschrank</translation>
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation>Werkstattpapiere zum Einbauschrank</translation>
  </message>
  <message>
   <source>Closet views</source>
   <translation>Ansichten des Einbauschranks</translation>
  </message>
 </context>
</TS>
