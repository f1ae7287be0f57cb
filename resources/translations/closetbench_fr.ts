<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation>1 pour une porte, 2 pour une paire ferrée des deux côtés</translation>
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation>Une scie circulaire guidée par une règle est à la maison</translation>
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation>Une profondeur donnée par la fraction est arrondie vers le bas à un multiple de ceci</translation>
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation>Une étagère fixe se trouve au-dessus et suit sa hauteur</translation>
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation>Une scie sur table est à la maison</translation>
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation>Classe de précision du mètre</translation>
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation>En travers de la travée ou dans sa profondeur</translation>
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation>Marge pour ajuster au mur un montant d'extrémité</translation>
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation>Un autre nombre peut trouver un autre plan</translation>
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation>Surface des pièces sur surface des panneaux bruts, en pour cent</translation>
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation>Surface de ceux qui sont rectangulaires, en m²</translation>
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation>Travées qui avaient des objets</translation>
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation>Planches et barres à couper à longueur</translation>
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation>Largeur libre ; 0 partage le reste avec les autres travées de ce genre</translation>
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation>Jeu gardé de chaque côté</translation>
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation>Jeu gardé sous l'étagère du dessus</translation>
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation>Colonnes qui contiennent la nomenclature</translation>
  </message>
  <message>
   <source>Component and name</source>
   <translation>Composant et nom</translation>
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation>Débité dans un panneau conservé d'un meuble existant</translation>
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation>Coupes par panneau brut faites au magasin ; 0 : sans limite</translation>
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation>Rainure la plus profonde permise, en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>Degrees to which the closet's own door opens</source>
   <translation>Degrés jusqu'où s'ouvre la porte du placard lui-même</translation>
  </message>
  <message>
   <source>Depth along the left wall</source>
   <translation>Profondeur le long du mur de gauche</translation>
  </message>
  <message>
   <source>Depth along the right wall</source>
   <translation>Profondeur le long du mur de droite</translation>
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation>Profondeur à gauche, moulures et façades comprises, sans les poignées</translation>
  </message>
  <message>
   <source>Depth at the right; 0: not given</source>
   <translation>Profondeur à droite ; 0 : non donnée</translation>
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation>Profondeur d'un trou borgne</translation>
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation>Profondeur d'une rainure en fraction de l'épaisseur du panneau</translation>
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation>Profondeur de toutes les rainures ; 0 : par la fraction</translation>
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation>Profondeur d'un volume utile de dimensions données</translation>
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation>Profondeur des rainures ; 0 : par règle</translation>
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation>Profondeur de la plus grande boîte d'aplomb et de niveau qui entre</translation>
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation>Profondeur de la branche le long du mur du fond</translation>
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation>Profondeur de la branche le long du mur latéral</translation>
  </message>
  <message>
   <source>Diagonal from front left to back right; 0: not taken</source>
   <translation>Diagonale de l'avant gauche au fond droit ; 0 : non prise</translation>
  </message>
  <message>
   <source>Diagonal from front right to back left; 0: not taken</source>
   <translation>Diagonale de l'avant droit au fond gauche ; 0 : non prise</translation>
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation>Diamètre du trou pour une poignée</translation>
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation>Diamètre des trous de taquets</translation>
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation>Diamètre de la fraise disponible ; 0 : non indiqué</translation>
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation>Sens des premières coupes sur un panneau brut entier</translation>
  </message>
  <message>
   <source>Edge band at the end</source>
   <translation>Chant à la fin</translation>
  </message>
  <message>
   <source>Edge band at the front</source>
   <translation>Chant à l'avant</translation>
  </message>
  <message>
   <source>Edge band at the rear</source>
   <translation>Chant à l'arrière</translation>
  </message>
  <message>
   <source>Edge band at the start</source>
   <translation>Chant au début</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation>Chant acheté en plus de la longueur des rives, en fraction</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation>Chant des bords avant des étagères, ou de leurs retombées : auto comme le caisson, vide pour aucun, ou une clé du catalogue</translation>
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Chant des bords avant visibles : auto pour celui du matériau, vide pour aucun, ou une clé du catalogue</translation>
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Chant : auto pour celui du matériau, vide pour aucun, ou une clé du catalogue</translation>
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation>Erreur du niveau ou du fil à plomb sur un mètre</translation>
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation>Fichier avec vos matériaux et prix ; vide : seulement ceux fournis</translation>
  </message>
  <message>
   <source>Findings about it</source>
   <translation>Doutes à son sujet</translation>
  </message>
  <message>
   <source>Findings about the design</source>
   <translation>Doutes sur la conception</translation>
  </message>
  <message>
   <source>Findings about the readings</source>
   <translation>Doutes sur les mesures</translation>
  </message>
  <message>
   <source>Finished length</source>
   <translation>Longueur finie</translation>
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation>Longueur finie, chants compris</translation>
  </message>
  <message>
   <source>Finished width</source>
   <translation>Largeur finie</translation>
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation>Largeur finie, chants compris</translation>
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation>D'un panneau fixe au trou le plus proche</translation>
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation>Entraxe des trous d'une poignée à deux trous, 0 pour un bouton à un trou</translation>
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation>De mur proche à mur proche</translation>
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation>D'un trou au suivant</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation>De cette rive à la paroi proche de la première rainure</translation>
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation>De l'avant du caisson à l'avant du socle</translation>
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation>Du bord avant à la rangée avant</translation>
  </message>
  <message>
   <source>From the leaf's edge to the boring's, 0 takes the hinge's own</source>
   <translation>Du bord du vantail à celui du perçage, 0 prend la valeur de la charnière</translation>
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation>Du milieu de la poignée au bord libre du vantail</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation>Des bords arrière à la face arrière du dos</translation>
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, 0 takes 305 mm or the middle</source>
   <translation>De l'arrière de l'ouverture à l'axe de la tringle, 0 prend 305 mm ou le milieu</translation>
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation>Du bord inférieur des côtés à la rainure du fond</translation>
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation>Les rainures s'arrêtent avant un bord avant plaqué et traversent un bord nu</translation>
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation>Rainures, trous et entailles en toutes lettres</translation>
  </message>
  <message>
   <source>Height above the floor of the high readings</source>
   <translation>Hauteur au-dessus du sol des mesures hautes</translation>
  </message>
  <message>
   <source>Height above the floor of the low readings</source>
   <translation>Hauteur au-dessus du sol des mesures basses</translation>
  </message>
  <message>
   <source>Height above the floor of the mid readings</source>
   <translation>Hauteur au-dessus du sol des mesures médianes</translation>
  </message>
  <message>
   <source>Height at the back left</source>
   <translation>Hauteur au fond à gauche</translation>
  </message>
  <message>
   <source>Height at the back right</source>
   <translation>Hauteur au fond à droite</translation>
  </message>
  <message>
   <source>Height at the front left</source>
   <translation>Hauteur à l'avant à gauche</translation>
  </message>
  <message>
   <source>Height at the front right</source>
   <translation>Hauteur à l'avant à droite</translation>
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation>Hauteur à gauche, pieds et dessus compris</translation>
  </message>
  <message>
   <source>Height at the right; 0: not given</source>
   <translation>Hauteur à droite ; 0 : non donnée</translation>
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation>Hauteur d'un tasseau</translation>
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation>Hauteur d'une traverse devant chaque étagère fixe, 0 pour aucune</translation>
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation>Hauteur d'une bande devant chaque étagère ; 0 : aucune</translation>
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation>Hauteur d'un volume utile de dimensions données</translation>
  </message>
  <message>
   <source>Height of the base</source>
   <translation>Hauteur du socle</translation>
  </message>
  <message>
   <source>Height of the baseboard</source>
   <translation>Hauteur de la plinthe du mur</translation>
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation>Hauteur de la traverse basse</translation>
  </message>
  <message>
   <source>Height of the boxes' sides, 0 takes all that the slide leaves</source>
   <translation>Hauteur des côtés de caisse, 0 prend tout ce que la coulisse laisse</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation>Hauteur des tasseaux aux murs</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation>Hauteur des tasseaux aux murs, 0 pour aucun</translation>
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation>Hauteur des pieds qui sont déposés</translation>
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation>Hauteur de la plus grande boîte d'aplomb et de niveau qui entre</translation>
  </message>
  <message>
   <source>Height of the opening; 0: not taken</source>
   <translation>Hauteur de l'ouverture ; 0 : non prise</translation>
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation>Hauteur de la butée au-dessus de l'étagère</translation>
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation>Hauteur de la traverse haute</translation>
  </message>
  <message>
   <source>Height of the wall over the opening; 0: not taken</source>
   <translation>Hauteur du mur au-dessus de l'ouverture ; 0 : non prise</translation>
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left (mm)</source>
   <translation>Hauteurs des façades depuis le bas, l'une à 0 pour prendre le reste (mm)</translation>
  </message>
  <message>
   <source>Hinges on each leaf, -1 takes what its height and weight ask for</source>
   <translation>Charnières par vantail, -1 prend ce que demandent sa hauteur et son poids</translation>
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation>Profondeur maximale du volume utile ; 0 : celle de la pièce</translation>
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation>Retrait d'une étagère réglable derrière les bords avant</translation>
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation>Appui minimal d'une moulure sur le caisson, 6 mm comme ci-dessus</translation>
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation>De combien un panneau reste en deçà du fond de sa rainure</translation>
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation>De combien un montant dépasse le côté du caisson</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation>Départ au-dessus du plancher de la case</translation>
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, by rule by its kind</source>
   <translation>Recouvrement d'une façade en applique sur ce qui borde son ouverture, par règle selon son type</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation>Retrait des rainures depuis le bord avant ; 0 les fait traverser</translation>
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation>Débord sur le cadre aux deux extrémités</translation>
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation>Retrait de son avant derrière les bords avant du caisson</translation>
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation>Montée de son bord inférieur vers la droite</translation>
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation>Dévers de son bord droit vers la droite, en montant</translation>
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation>Montée de son bord supérieur vers la droite</translation>
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation>De combien le cadre dépasse le dessus du caisson</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation>De combien les rainures restent à l'écart de l'avant ou du début</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation>De combien les rainures restent à l'écart de l'arrière ou de la fin</translation>
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation>Dévers du bord gauche de l'ouverture d'une façade encastrée vers la droite, en montant</translation>
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation>Saillie, de chaque côté et devant, des moulures qui sont déposées</translation>
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation>Débord du dessus sur le cadre et sa face à l'avant</translation>
  </message>
  <message>
   <source>How far they come out</source>
   <translation>De combien ils sortent</translation>
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation>Assemblage de l'avant et de l'arrière d'une caisse avec ses côtés</translation>
  </message>
  <message>
   <source>How high it is, 0 for all that is left</source>
   <translation>Sa hauteur, 0 pour tout le reste</translation>
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation>Probabilité que les jeux soient tenus, vu les mesures</translation>
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation>Durée de la recherche de moins de coupes ensuite, par matériau</translation>
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation>Durée de la recherche de moins de panneaux bruts, par matériau</translation>
  </message>
  <message>
   <source>How many there are</source>
   <translation>Combien il y en a</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation>Combien de fois le débit peut changer de sens, le premier compté ; 0 : sans limite</translation>
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation>De combien l'avant d'une étagère est plus bas que son arrière</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation>De combien une étagère réglable est plus courte que sa travée</translation>
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation>De combien une rainure est plus large que le panneau qu'elle reçoit</translation>
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation>Nombre de fois que le plan a été dessiné</translation>
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation>Écriture des longueurs dans les textes</translation>
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation>Contact des socles avec le sol</translation>
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation>Maintien du fond</translation>
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation>Pose des longues traverses</translation>
  </message>
  <message>
   <source>How the members are joined</source>
   <translation>Assemblage des éléments</translation>
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation>Assemblage du dessus et du fond bas avec les côtés</translation>
  </message>
  <message>
   <source>In kg, with its drawers; 0 where nobody has weighed it</source>
   <translation>En kg, avec ses tiroirs ; 0 si personne ne l'a pesé</translation>
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation>Ses travées de gauche à droite</translation>
  </message>
  <message>
   <source>Its depth, 0 takes the envelope's</source>
   <translation>Sa profondeur, 0 prend celle du volume utile</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation>Distance de son bout gauche à la gauche du volume utile</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, by rule beside what stands there</source>
   <translation>Distance de son bout gauche à la gauche du volume utile, par règle à côté de ce qui s'y trouve</translation>
  </message>
  <message>
   <source>Its right end's, 0 runs to the right wall</source>
   <translation>Celle de son bout droit, 0 va jusqu'au mur de droite</translation>
  </message>
  <message>
   <source>Its underside above the floor, 0 lies on the highest carcass</source>
   <translation>Son dessous au-dessus du sol, 0 pose sur le caisson le plus haut</translation>
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation>Clé d'une classe de barre</translation>
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation>Clé d'une classe de charnière</translation>
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation>Clé d'une classe de coulisse</translation>
  </message>
  <message>
   <source>Key of its board</source>
   <translation>Clé de son panneau</translation>
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation>Clé de son panneau dans le catalogue</translation>
  </message>
  <message>
   <source>Key of its board, empty takes the shelf's</source>
   <translation>Clé de son panneau, vide prend celui de l'étagère</translation>
  </message>
  <message>
   <source>Key of its edge band, auto for the material's own, empty for none</source>
   <translation>Clé de son chant, auto pour celui du matériau, vide pour aucun</translation>
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation>Clé des panneaux du dos ; vide : par règle</translation>
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation>Clé des panneaux du socle ; vide : comme le caisson</translation>
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation>Clé du panneau dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation>Clé des panneaux dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation>Clé des planches ou panneaux bruts où ses éléments sont débités</translation>
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation>Clé des panneaux qui entrent dans les rainures ; vide : le même</translation>
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation>Clé du panneau des fonds</translation>
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation>Clé du panneau des caisses</translation>
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation>Clé de la classe de barre dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, auto for the material's own, empty for none</source>
   <translation>Clé du chant des étagères et butées, auto pour celui du matériau, vide pour aucun</translation>
  </message>
  <message>
   <source>Key of the edge band of their long edges, auto for the material's own, empty for none</source>
   <translation>Clé du chant de leurs bords longs, auto pour celui du matériau, vide pour aucun</translation>
  </message>
  <message>
   <source>Key of the face's board, empty takes the top's</source>
   <translation>Clé du panneau de la face, vide prend celui du dessus</translation>
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation>Clé du bois des éléments</translation>
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation>Clé des panneaux des bandes ; vide : comme le caisson</translation>
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation>Clé du panneau du dessus</translation>
  </message>
  <message>
   <source>Key of their board</source>
   <translation>Clé de leur panneau</translation>
  </message>
  <message>
   <source>Key of their board, empty takes the carcass's</source>
   <translation>Clé de leur panneau, vide prend celui du caisson</translation>
  </message>
  <message>
   <source>Key of their edge band, auto for the material's own, empty for none</source>
   <translation>Clé de leur chant, auto pour celui du matériau, vide pour aucun</translation>
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation>Clés des moulures plates et des quarts-de-rond pour le pied du socle, au choix ; sans quarts-de-rond le pied reste ouvert</translation>
  </message>
  <message>
   <source>Lean of the back wall at the left; positive where it leans into the closet on its way up</source>
   <translation>Dévers du mur du fond à gauche ; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>Lean of the back wall at the right; positive where it leans into the closet on its way up</source>
   <translation>Dévers du mur du fond à droite ; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>Lean of the left wall at the back; positive where it leans into the closet on its way up</source>
   <translation>Dévers du mur de gauche au fond ; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>Lean of the left wall at the front; positive where it leans into the closet on its way up</source>
   <translation>Dévers du mur de gauche à l'avant ; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>Lean of the right wall at the back; positive where it leans into the closet on its way up</source>
   <translation>Dévers du mur de droite au fond ; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>Lean of the right wall at the front; positive where it leans into the closet on its way up</source>
   <translation>Dévers du mur de droite à l'avant ; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation>Distance minimale du bord arrière à la rangée arrière</translation>
  </message>
  <message>
   <source>Least gap to keep at the back</source>
   <translation>Jeu minimal à garder au fond</translation>
  </message>
  <message>
   <source>Least gap to keep at the floor</source>
   <translation>Jeu minimal à garder au sol</translation>
  </message>
  <message>
   <source>Least gap to keep at the left</source>
   <translation>Jeu minimal à garder à gauche</translation>
  </message>
  <message>
   <source>Least gap to keep at the right</source>
   <translation>Jeu minimal à garder à droite</translation>
  </message>
  <message>
   <source>Least gap to keep at the top</source>
   <translation>Jeu minimal à garder en haut</translation>
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation>Laissé pour l'ajustage au mur, 6 mm (usage courant, sans source publiée)</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation>Distance du côté gauche à la gauche du volume utile</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation>Distance du côté gauche à la gauche du volume utile, tel que construit</translation>
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation>Longueur le long du mur du fond</translation>
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation>Longueur le long du mur latéral</translation>
  </message>
  <message>
   <source>Length of the slides, 0 takes the longest that fits</source>
   <translation>Longueur des coulisses, 0 prend la plus longue qui entre</translation>
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation>Longueur à couper dans la barre</translation>
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation>Longueur à scier, sans les chants</translation>
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation>Nom de la pièce dans son composant</translation>
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation>Bande la plus étroite et la plus large : 20 mm (usage courant, sans source publiée) et 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, édition 1, 2009)</translation>
  </message>
  <message>
   <source>Number of adjustable shelves, loose on pins</source>
   <translation>Nombre d'étagères réglables sur taquets</translation>
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation>Nombre de travées, chacune un objet à part</translation>
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation>Nombre de tiroirs de même hauteur</translation>
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation>Nombre d'étagères fixes</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Nombre de rainures</translation>
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation>Nombre de ses tiroirs, superposés</translation>
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation>Nombre de longues traverses, avant et arrière comprises</translation>
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation>Nombre d'ouvertures dessous, poteaux entre elles</translation>
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation>Nombre de pièces à débiter dans des panneaux</translation>
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation>Nombre de morceaux dont il est fait, bout à bout</translation>
  </message>
  <message>
   <source>Number of shelves</source>
   <translation>Nombre d'étagères</translation>
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation>De son assise au-dessus de ce qui le porte</translation>
  </message>
  <message>
   <source>Of strips, empty takes the carcass's</source>
   <translation>Des bandes, vide prend celui du caisson</translation>
  </message>
  <message>
   <source>Of the pull's middle above the floor, 0 takes 1,000 mm or the nearest</source>
   <translation>Du milieu de la poignée au-dessus du sol, 0 prend 1 000 mm ou le plus proche</translation>
  </message>
  <message>
   <source>Of the rod's axis above the floor, 0 by its use or as high as it can be</source>
   <translation>De l'axe de la tringle au-dessus du sol, 0 selon son usage ou aussi haut que possible</translation>
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation>De la bande, 0 pour aucune</translation>
  </message>
  <message>
   <source>Of the upper of two rods, 0 by rule</source>
   <translation>De la plus haute de deux tringles, 0 par règle</translation>
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation>Un panneau brut de réserve pour autant d'un matériau ; 0 : aucune réserve</translation>
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation>Profondeur extérieure telle que construite</translation>
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation>Profondeur extérieure ; 0 : celle du volume utile</translation>
  </message>
  <message>
   <source>Outer diameter</source>
   <translation>Diamètre extérieur</translation>
  </message>
  <message>
   <source>Outer height as built</source>
   <translation>Hauteur extérieure telle que construite</translation>
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation>Hauteur extérieure, socle compris ; 0 : celle du volume utile</translation>
  </message>
  <message>
   <source>Outer width as built</source>
   <translation>Largeur extérieure telle que construite</translation>
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation>Largeur extérieure ; 0 : ce que laisse le volume utile</translation>
  </message>
  <message>
   <source>Over its top, 0 takes what is left</source>
   <translation>Sur son dessus, 0 prend le reste</translation>
  </message>
  <message>
   <source>Over its top, 0 takes what is there; it stands at the rear</source>
   <translation>Sur son dessus, 0 prend ce qu'il y a ; il se place à l'arrière</translation>
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation>Panneaux conservés de ce qui en est déposé</translation>
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation>Des pièces ont été déplacées à la main depuis le plan</translation>
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation>Rang parmi les pièces de son composant</translation>
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation>Poignées par façade, 0 pour aucune</translation>
  </message>
  <message>
   <source>Rabbet at the end</source>
   <translation>Feuillure à la fin</translation>
  </message>
  <message>
   <source>Rabbet at the front</source>
   <translation>Feuillure à l'avant</translation>
  </message>
  <message>
   <source>Rabbet at the rear</source>
   <translation>Feuillure à l'arrière</translation>
  </message>
  <message>
   <source>Rabbet at the start</source>
   <translation>Feuillure au début</translation>
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation>Mesures prises ailleurs, telles qu'écrites par le formulaire du relevé</translation>
  </message>
  <message>
   <source>Return at the left of the opening; 0: not taken</source>
   <translation>Retour de mur à gauche de l'ouverture ; 0 : non pris</translation>
  </message>
  <message>
   <source>Return at the right of the opening; 0: not taken</source>
   <translation>Retour de mur à droite de l'ouverture ; 0 : non pris</translation>
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation>Rives avec un chant, et lequel</translation>
  </message>
  <message>
   <source>Rise of the floor from front to back at the left</source>
   <translation>Montée du sol de l'avant au fond à gauche</translation>
  </message>
  <message>
   <source>Rise of the floor from left to right at the back</source>
   <translation>Montée du sol de gauche à droite au fond</translation>
  </message>
  <message>
   <source>Rise of the floor from left to right at the front</source>
   <translation>Montée du sol de gauche à droite à l'avant</translation>
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation>Lignes qui contiennent la nomenclature</translation>
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation>Scies à la place de toutes celles-ci, un texte JSON chacune</translation>
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation>À activer pour replanifier au prochain recalcul</translation>
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation>À activer pour réécrire la nomenclature au prochain recalcul</translation>
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation>Nombre de panneaux bruts d'un matériau jusqu'auquel aucun n'est en réserve</translation>
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation>Panneaux bruts à débiter</translation>
  </message>
  <message>
   <source>Smallest gap at the back</source>
   <translation>Plus petit jeu au fond</translation>
  </message>
  <message>
   <source>Smallest gap at the floor</source>
   <translation>Plus petit jeu au sol</translation>
  </message>
  <message>
   <source>Smallest gap at the left</source>
   <translation>Plus petit jeu à gauche</translation>
  </message>
  <message>
   <source>Smallest gap at the right</source>
   <translation>Plus petit jeu à droite</translation>
  </message>
  <message>
   <source>Smallest gap at the top</source>
   <translation>Plus petit jeu en haut</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Se place à l'arrière d'un volume utile plus profond, sinon à l'avant</translation>
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation>Se place à côté du caisson précédent, sinon à X</translation>
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation>Les montants descendent jusqu'au sol, sinon jusqu'au bord inférieur de la traverse basse</translation>
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation>Somme de ce qui a un prix, dans la monnaie du catalogue</translation>
  </message>
  <message>
   <source>Supports between the ends, -1 as many as the span asks for</source>
   <translation>Supports entre les extrémités, -1 autant que la portée en demande</translation>
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation>Des compas tiennent l'abattant à toute hauteur</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation>Enlevé sur chaque rive d'un panneau brut avant de débiter une pièce</translation>
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation>La travée prend la largeur du meuble, sauf si elle a la sienne</translation>
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation>La travée où il se trouve ; vide : par son numéro</translation>
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation>La nomenclature dont les cellules contiennent les lignes</translation>
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation>La nomenclature, une ligne de valeurs séparées par des virgules chacune</translation>
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation>La monnaie du catalogue</translation>
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation>Le placard dont il découle</translation>
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation>Le placard que concerne la nomenclature</translation>
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation>Le placard dont les pièces sont débitées</translation>
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation>Le composant auquel elle appartient</translation>
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation>Le plan de débit dont les panneaux bruts sont achetés ; aucun : pas encore planifié</translation>
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation>La conception, le plan de débit ou le catalogue a changé depuis</translation>
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation>Le bas du volume utile au-dessus de l'angle avant gauche de la pièce</translation>
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation>La face avant du volume utile depuis l'angle avant gauche de la pièce</translation>
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation>La face gauche du volume utile depuis l'angle avant gauche de la pièce</translation>
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation>La face qui porte les rainures</translation>
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation>Le dernier fichier lu, aucun si vide</translation>
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation>Distance de l'avant à l'avant du volume utile, tel que construit</translation>
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation>Le bord ferré d'une porte simple</translation>
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation>L'angle du fond, gauche ou droit</translation>
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation>Les chutes disponibles, un texte JSON chacune</translation>
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation>Les chutes disponibles ; aucune : tout est acheté</translation>
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation>Les pièces, le catalogue ou les réglages ont changé depuis</translation>
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation>Le plan des planches et barres, en données</translation>
  </message>
  <message>
   <source>The plan, as data</source>
   <translation>Le plan, en données</translation>
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation>Le jeu autour d'une façade encastrée et entre deux façades</translation>
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation>La rive depuis laquelle les rainures sont mesurées</translation>
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation>Le pas de lecture du mètre</translation>
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation>Le relevé dont il occupe le volume utile</translation>
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation>Le dessus est un abattant, ferré sur une bande à l'arrière</translation>
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation>Les façons d'acheter comparées, en données</translation>
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation>Épaisseur mesurée, sinon telle que vendue</translation>
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation>Épaisseur en mm mesurée, par clé du matériau</translation>
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation>Épaisseur de paroi d'un tube ; 0 : plein</translation>
  </message>
  <message>
   <source>Thickness of the baseboard</source>
   <translation>Épaisseur de la plinthe du mur</translation>
  </message>
  <message>
   <source>Thickness of the casing</source>
   <translation>Épaisseur du chambranle</translation>
  </message>
  <message>
   <source>Thickness of the closet's own door</source>
   <translation>Épaisseur de la porte du placard lui-même</translation>
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation>Épaisseur du dessus qui est déposé</translation>
  </message>
  <message>
   <source>Thickness of the wall at the opening</source>
   <translation>Épaisseur du mur à l'ouverture</translation>
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation>Affranchir chaque panneau brut selon Affranchissement, non selon le catalogue</translation>
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation>Deux ouvertures laissent entrer l'air, abattant fermé</translation>
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation>Dessous de chaque étagère fixe au-dessus du plancher de la travée en mm ; aucun : espaces égaux</translation>
  </message>
  <message>
   <source>Undersides above the floor (mm)</source>
   <translation>Dessous au-dessus du sol (mm)</translation>
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation>Poids en kg ; 0 : inconnu</translation>
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation>Poids de toutes les pièces en kg</translation>
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation>Poids de la pièce finie en kg</translation>
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation>Ce qui porte les étagères fixes</translation>
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation>Ce qui le ferme à l'avant</translation>
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation>Ce qui ferme ou contrevente le caisson à l'arrière</translation>
  </message>
  <message>
   <source>What closes the opening</source>
   <translation>Ce qui ferme l'ouverture</translation>
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation>Ce qui le précède dans l'ordre du placard</translation>
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation>Ce qui couvre le jeu à cet endroit</translation>
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation>Ce qu'on y pend, qui fixe sa hauteur</translation>
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation>Ce qui tient les bouts d'une tringle en travers</translation>
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation>Ce qui est connu du lieu et des personnes, tel qu'écrit par son formulaire</translation>
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation>Dans quoi ou devant quoi il se trouve</translation>
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation>Ce qui doit rester entre rainures dos à dos, en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation>Ce qui doit rester dégagé, tel qu'écrit par le formulaire du relevé</translation>
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation>Ce qui doit rester sous un trou borgne</translation>
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation>Ce qui doit être le plus grand dans le volume utile</translation>
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation>Arrondi des longueurs dans les textes, en mm pour les styles métriques, sinon en pouces</translation>
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation>Pour quoi la nomenclature a été écrite</translation>
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation>Ce sur quoi repose le caisson</translation>
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation>De quoi les cellules ont été remplies</translation>
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation>D'où découle le volume utile : les mesures, ou les dimensions données</translation>
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation>Ce qu'est la pièce dans le placard</translation>
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation>Pour quoi le plan a été fait</translation>
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation>De quoi la forme a été faite</translation>
  </message>
  <message>
   <source>What the store saws</source>
   <translation>Ce que le magasin scie</translation>
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation>Où sont les titres et les noms</translation>
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation>Où l'on peut visser à travers</translation>
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation>Sens du fil</translation>
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation>Où finit le montant gauche</translation>
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation>Où finit le montant droit</translation>
  </message>
  <message>
   <source>Where the top lies</source>
   <translation>Où se trouve le dessus</translation>
  </message>
  <message>
   <source>Where they lie</source>
   <translation>Où ils se trouvent</translation>
  </message>
  <message>
   <source>Whether FrontLap is left to the rule</source>
   <translation>Si FrontLap est laissé à la règle</translation>
  </message>
  <message>
   <source>Whether X is left to the rule</source>
   <translation>Si X est laissé à la règle</translation>
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation>Si un achat n'a pas de prix</translation>
  </message>
  <message>
   <source>Whether the lean of the right wall at the back was read</source>
   <translation>Si le dévers du mur de droite au fond a été lu</translation>
  </message>
  <message>
   <source>Whether the lean of the right wall at the front was read</source>
   <translation>Si le dévers du mur de droite à l'avant a été lu</translation>
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation>Laquelle de ses travées, depuis la gauche, 1 d'abord</translation>
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation>Quel espace entre les étagères fixes, depuis le bas, 1 d'abord</translation>
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation>Sens du fil du dessus ; d'avant en arrière il est résistant entre traverses</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation>Plus grande distance libre entre entretoises</translation>
  </message>
  <message>
   <source>Widest gap at the back</source>
   <translation>Plus grand jeu au fond</translation>
  </message>
  <message>
   <source>Widest gap at the floor</source>
   <translation>Plus grand jeu au sol</translation>
  </message>
  <message>
   <source>Widest gap at the left</source>
   <translation>Plus grand jeu à gauche</translation>
  </message>
  <message>
   <source>Widest gap at the right</source>
   <translation>Plus grand jeu à droite</translation>
  </message>
  <message>
   <source>Widest gap at the top</source>
   <translation>Plus grand jeu en haut</translation>
  </message>
  <message>
   <source>Width at the back, high</source>
   <translation>Largeur au fond, haut</translation>
  </message>
  <message>
   <source>Width at the back, high up; 0: not given</source>
   <translation>Largeur au fond, en haut ; 0 : non donnée</translation>
  </message>
  <message>
   <source>Width at the back, low</source>
   <translation>Largeur au fond, bas</translation>
  </message>
  <message>
   <source>Width at the back, low down; 0: not given</source>
   <translation>Largeur au fond, en bas ; 0 : non donnée</translation>
  </message>
  <message>
   <source>Width at the back, middle</source>
   <translation>Largeur au fond, milieu</translation>
  </message>
  <message>
   <source>Width at the front, high</source>
   <translation>Largeur à l'avant, haut</translation>
  </message>
  <message>
   <source>Width at the front, high up; 0: not given</source>
   <translation>Largeur à l'avant, en haut ; 0 : non donnée</translation>
  </message>
  <message>
   <source>Width at the front, low</source>
   <translation>Largeur à l'avant, bas</translation>
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation>Largeur à l'avant, en bas</translation>
  </message>
  <message>
   <source>Width at the front, middle</source>
   <translation>Largeur à l'avant, milieu</translation>
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation>Largeur d'un volume utile de dimensions données</translation>
  </message>
  <message>
   <source>Width of that strip</source>
   <translation>Largeur de cette bande</translation>
  </message>
  <message>
   <source>Width of the casing</source>
   <translation>Largeur du chambranle</translation>
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation>Largeur de la plus grande boîte d'aplomb et de niveau qui entre</translation>
  </message>
  <message>
   <source>Width of the members as sawn, 0 takes the board's own</source>
   <translation>Largeur des éléments tels que sciés, 0 prend celle de la planche</translation>
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation>Largeur des montants centraux</translation>
  </message>
  <message>
   <source>Width of the opening; 0: not taken</source>
   <translation>Largeur de l'ouverture ; 0 : non prise</translation>
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation>Largeur du trait de la scie</translation>
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation>Largeur des montants ; contre le mur, sans ce qui dépasse le côté</translation>
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation>Largeur à scier, sans les chants</translation>
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
   <translation>, chute disponible : {}</translation>
  </message>
  <message>
   <source>, sound part of {} x {}, its corner at {} and {}</source>
   <translation>, partie saine de {} x {}, son coin à {} et {}</translation>
  </message>
  <message>
   <source>, turned {}°</source>
   <translation>, tourné de {}°</translation>
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
   <translation>1 danger</translation>
  </message>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation>1 pour une porte, 2 pour une paire ferrée des deux côtés</translation>
  </message>
  <message>
   <source>1 not checked</source>
   <translation>1 non vérifié</translation>
  </message>
  <message>
   <source>1 note</source>
   <translation>1 remarque</translation>
  </message>
  <message>
   <source>1 warning</source>
   <translation>1 avertissement</translation>
  </message>
  <message>
   <source>3 to 4</source>
   <translation>3 à 4</translation>
  </message>
  <message>
   <source>5 to 8</source>
   <translation>5 à 8</translation>
  </message>
  <message>
   <source>9 to 12</source>
   <translation>9 à 12</translation>
  </message>
  <message>
   <source>; dangers in this closet: {}, see the checks</source>
   <translation>; dangers dans ce placard : {}, voir les contrôles</translation>
  </message>
  <message>
   <source>A bank of drawers in one compartment, with slides and fronts</source>
   <translation>Un bloc de tiroirs dans une case, avec coulisses et façades</translation>
  </message>
  <message>
   <source>A baseboard that stays; 0 where there is none or it comes off.</source>
   <translation>Une plinthe du mur qui reste ; 0 s'il n'y en a pas ou si elle est déposée.</translation>
  </message>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation>Un banc dans une travée d'un caisson, ou libre dans le placard</translation>
  </message>
  <message>
   <source>A door, or a pair, in front of one compartment</source>
   <translation>Une porte, ou une paire, devant une case</translation>
  </message>
  <message>
   <source>A drawing for each part</source>
   <translation>Un dessin par pièce</translation>
  </message>
  <message>
   <source>A drawing for each sheet</source>
   <translation>Un dessin par panneau brut</translation>
  </message>
  <message>
   <source>A few more, so that no single wrong reading stays unnoticed.</source>
   <translation>Quelques-unes de plus, pour qu'aucune mesure fausse ne passe inaperçue.</translation>
  </message>
  <message>
   <source>A file with boards, bands and prices of your own, laid over those that come along.</source>
   <translation>Un fichier avec vos panneaux, chants et prix, superposés à ceux fournis.</translation>
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation>Une étagère fixe se trouve au-dessus et suit sa hauteur</translation>
  </message>
  <message>
   <source>A hanging rod, or two, in one compartment</source>
   <translation>Une tringle, ou deux, dans une case</translation>
  </message>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation>Un coffre ou meuble de réemploi, intégré tel quel</translation>
  </message>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation>Une étagère au-dessus des caissons, de mur à mur</translation>
  </message>
  <message>
   <source>A spare sheet for every</source>
   <translation>Un panneau brut de réserve tous les</translation>
  </message>
  <message>
   <source>A strip along its front edge</source>
   <translation>Une bande le long de son bord avant</translation>
  </message>
  <message>
   <source>Above the floor as found, feet included</source>
   <translation>Au-dessus du sol en l'état, pieds compris</translation>
  </message>
  <message>
   <source>Accuracy class that is printed on the tape.</source>
   <translation>Classe de précision imprimée sur le mètre ruban.</translation>
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation>En travers de la travée ou dans sa profondeur</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Ajouter</translation>
  </message>
  <message>
   <source>Add a bay</source>
   <translation>Ajouter une travée</translation>
  </message>
  <message>
   <source>Add a place</source>
   <translation>Ajouter un endroit</translation>
  </message>
  <message>
   <source>Add a reading</source>
   <translation>Ajouter une mesure</translation>
  </message>
  <message>
   <source>Add an obstacle</source>
   <translation>Ajouter un obstacle</translation>
  </message>
  <message>
   <source>Add one that is recommended</source>
   <translation>Ajouter une mesure conseillée</translation>
  </message>
  <message>
   <source>Adjustable</source>
   <translation>Réglables</translation>
  </message>
  <message>
   <source>Adjustable shelves, loose on pins.</source>
   <translation>Étagères réglables sur taquets.</translation>
  </message>
  <message>
   <source>Against back</source>
   <translation>Contre dos</translation>
  </message>
  <message>
   <source>Against the back</source>
   <translation>Contre le dos</translation>
  </message>
  <message>
   <source>All pages</source>
   <translation>Toutes les pages</translation>
  </message>
  <message>
   <source>All sheets in one drawing</source>
   <translation>Tous les panneaux bruts sur un dessin</translation>
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation>Marge pour ajuster au mur un montant d'extrémité</translation>
  </message>
  <message>
   <source>Along back</source>
   <translation>Le long du fond</translation>
  </message>
  <message>
   <source>Along side</source>
   <translation>Le long du côté</translation>
  </message>
  <message>
   <source>Along the left wall</source>
   <translation>Le long du mur de gauche</translation>
  </message>
  <message>
   <source>Along the right wall</source>
   <translation>Le long du mur de droite</translation>
  </message>
  <message>
   <source>Along the wall, from the front line to the back wall, on the floor.</source>
   <translation>Le long du mur, de la ligne avant au mur du fond, au sol.</translation>
  </message>
  <message>
   <source>Another number may find another plan; the same one finds the same again.</source>
   <translation>Un autre nombre peut trouver un autre plan ; le même retrouve le même.</translation>
  </message>
  <message>
   <source>Another task is open: finish it with OK or Cancel first.</source>
   <translation>Une autre tâche est ouverte : la terminer d'abord par OK ou Annuler.</translation>
  </message>
  <message>
   <source>App::Property</source>
   <translation>App::Property</translation>
  </message>
  <message>
   <source>As it will be written</source>
   <translation>Tel qu'il sera écrit</translation>
  </message>
  <message>
   <source>Ask for the readings that point out a wrong one</source>
   <translation>Demander les mesures qui révèlent une mesure fausse</translation>
  </message>
  <message>
   <source>At</source>
   <translation>À</translation>
  </message>
  <message>
   <source>At an angle</source>
   <translation>En biais</translation>
  </message>
  <message>
   <source>At height</source>
   <translation>À la hauteur</translation>
  </message>
  <message>
   <source>At least {}: not everything has a price.</source>
   <translation>Au moins {} : tout n'a pas de prix.</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Dos</translation>
  </message>
  <message>
   <source>Back inset</source>
   <translation>Retrait du dos</translation>
  </message>
  <message>
   <source>Back material</source>
   <translation>Matériau du dos</translation>
  </message>
  <message>
   <source>Back wall</source>
   <translation>Mur du fond</translation>
  </message>
  <message>
   <source>Backs</source>
   <translation>Dos</translation>
  </message>
  <message>
   <source>Band</source>
   <translation>Chant</translation>
  </message>
  <message>
   <source>Band waste</source>
   <translation>Perte de chant</translation>
  </message>
  <message>
   <source>Bands</source>
   <translation>Chants</translation>
  </message>
  <message>
   <source>Bands at</source>
   <translation>Chants sur</translation>
  </message>
  <message>
   <source>Base</source>
   <translation>Socle</translation>
  </message>
  <message>
   <source>Base height</source>
   <translation>Hauteur du socle</translation>
  </message>
  <message>
   <source>Base material</source>
   <translation>Matériau du socle</translation>
  </message>
  <message>
   <source>Baseboard</source>
   <translation>Plinthe du mur</translation>
  </message>
  <message>
   <source>Bay</source>
   <translation>Travée</translation>
  </message>
  <message>
   <source>Bays</source>
   <translation>Travées</translation>
  </message>
  <message>
   <source>Bays, from left to right</source>
   <translation>Travées, de gauche à droite</translation>
  </message>
  <message>
   <source>Bench</source>
   <translation>Banc</translation>
  </message>
  <message>
   <source>Benches</source>
   <translation>Bancs</translation>
  </message>
  <message>
   <source>Bench…</source>
   <translation>Banc…</translation>
  </message>
  <message>
   <source>Bill</source>
   <translation>Nomenclature</translation>
  </message>
  <message>
   <source>Bill and papers</source>
   <translation>Nomenclature et documents</translation>
  </message>
  <message>
   <source>Bill is up to date; drawings by DXF</source>
   <translation>Nomenclature à jour ; dessins par DXF</translation>
  </message>
  <message>
   <source>BillPanel</source>
   <translation>BillPanel</translation>
  </message>
  <message>
   <source>Board that goes into the grooves: its measured thickness sets their width.</source>
   <translation>Panneau qui entre dans les rainures : son épaisseur mesurée fixe leur largeur.</translation>
  </message>
  <message>
   <source>Boards as measured</source>
   <translation>Panneaux tels que mesurés</translation>
  </message>
  <message>
   <source>Bottom</source>
   <translation>Fond</translation>
  </message>
  <message>
   <source>Bottom inset</source>
   <translation>Retrait du fond</translation>
  </message>
  <message>
   <source>Bottom material</source>
   <translation>Matériau du fond</translation>
  </message>
  <message>
   <source>Bottom rail</source>
   <translation>Traverse basse</translation>
  </message>
  <message>
   <source>Box height</source>
   <translation>Hauteur de la caisse</translation>
  </message>
  <message>
   <source>Box material</source>
   <translation>Matériau de la caisse</translation>
  </message>
  <message>
   <source>Boxes of boards with sides, bays, shelves, back and base</source>
   <translation>Caissons en panneaux avec côtés, travées, étagères, dos et socle</translation>
  </message>
  <message>
   <source>By caliper</source>
   <translation>Au pied à coulisse</translation>
  </message>
  <message>
   <source>By sizes; readings come later</source>
   <translation>Par dimensions ; les mesures viendront plus tard</translation>
  </message>
  <message>
   <source>CSV file</source>
   <translation>Fichier CSV</translation>
  </message>
  <message>
   <source>Cannot be built: {}</source>
   <translation>Irréalisable : {}</translation>
  </message>
  <message>
   <source>Cannot be right: {}</source>
   <translation>Impossible : {}</translation>
  </message>
  <message>
   <source>Carcass</source>
   <translation>Caisson</translation>
  </message>
  <message>
   <source>CarcassPanel</source>
   <translation>CarcassPanel</translation>
  </message>
  <message>
   <source>Carcasses</source>
   <translation>Caissons</translation>
  </message>
  <message>
   <source>Carcasses and shelves</source>
   <translation>Caissons et étagères</translation>
  </message>
  <message>
   <source>Casing</source>
   <translation>Chambranle</translation>
  </message>
  <message>
   <source>Casing and baseboard</source>
   <translation>Chambranle et plinthe du mur</translation>
  </message>
  <message>
   <source>Catalogue of your own</source>
   <translation>Catalogue personnel</translation>
  </message>
  <message>
   <source>Ceiling</source>
   <translation>Plafond</translation>
  </message>
  <message>
   <source>Changes of direction</source>
   <translation>Changements de sens</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Contrôles</translation>
  </message>
  <message>
   <source>Choose</source>
   <translation>Choisir</translation>
  </message>
  <message>
   <source>Choose a line above to list what is damaged on it.</source>
   <translation>Choisir une ligne ci-dessus pour indiquer ce qui y est abîmé.</translation>
  </message>
  <message>
   <source>Circular saw on a straightedge at home</source>
   <translation>Scie circulaire sur règle à la maison</translation>
  </message>
  <message>
   <source>Clear of shelves</source>
   <translation>À l'écart des étagères</translation>
  </message>
  <message>
   <source>Clear size of the opening, jamb to jamb and floor to lintel.</source>
   <translation>Dimensions libres de l'ouverture, de tableau à tableau et du sol au linteau.</translation>
  </message>
  <message>
   <source>Clear width</source>
   <translation>Largeur libre</translation>
  </message>
  <message>
   <source>Clear width of the bay. Left empty, it shares what the others leave.</source>
   <translation>Largeur libre de la travée. Laissée vide, elle partage ce que les autres laissent.</translation>
  </message>
  <message>
   <source>Clear widths: {}</source>
   <translation>Largeurs libres : {}</translation>
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation>Jeu gardé de chaque côté</translation>
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation>Jeu gardé sous l'étagère du dessus</translation>
  </message>
  <message>
   <source>Cleat</source>
   <translation>Tasseau</translation>
  </message>
  <message>
   <source>Cleat height</source>
   <translation>Hauteur du tasseau</translation>
  </message>
  <message>
   <source>Click on a finding to see what it is about; double-click to edit that.</source>
   <translation>Cliquer sur un constat pour voir ce qu'il concerne ; double-cliquer pour le modifier.</translation>
  </message>
  <message>
   <source>Click to add one</source>
   <translation>Cliquer pour en ajouter un</translation>
  </message>
  <message>
   <source>Click to choose one</source>
   <translation>Cliquer pour en choisir un</translation>
  </message>
  <message>
   <source>Click to plan the sheets</source>
   <translation>Cliquer pour planifier les panneaux bruts</translation>
  </message>
  <message>
   <source>Click to start a closet</source>
   <translation>Cliquer pour commencer un placard</translation>
  </message>
  <message>
   <source>Click to write the bill</source>
   <translation>Cliquer pour écrire la nomenclature</translation>
  </message>
  <message>
   <source>Close the checks and say what they have to know.</source>
   <translation>Fermer les contrôles et indiquer ce qu'ils doivent savoir.</translation>
  </message>
  <message>
   <source>Closet</source>
   <translation>Placard</translation>
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation>Documents d'atelier du placard</translation>
  </message>
  <message>
   <source>Closet views</source>
   <translation>Vues du placard</translation>
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
   <translation>Aide de Closetbench</translation>
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
   <translation>Placards</translation>
  </message>
  <message>
   <source>Compartment</source>
   <translation>Case</translation>
  </message>
  <message>
   <source>Component</source>
   <translation>Composant</translation>
  </message>
  <message>
   <source>Components</source>
   <translation>Composants</translation>
  </message>
  <message>
   <source>Corner</source>
   <translation>Angle</translation>
  </message>
  <message>
   <source>Corner shelves</source>
   <translation>Étagères d'angle</translation>
  </message>
  <message>
   <source>Corner shelves…</source>
   <translation>Étagères d'angle…</translation>
  </message>
  <message>
   <source>CornerShelves</source>
   <translation>CornerShelves</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Nombre</translation>
  </message>
  <message>
   <source>Cup edge</source>
   <translation>Bord de cuvette</translation>
  </message>
  <message>
   <source>Cut layout</source>
   <translation>Plan de débit</translation>
  </message>
  <message>
   <source>Cut open</source>
   <translation>Coupe</translation>
  </message>
  <message>
   <source>CutLayout</source>
   <translation>CutLayout</translation>
  </message>
  <message>
   <source>Cuts through the widest bays, seen from the right.</source>
   <translation>Coupe les travées les plus larges, vue de droite.</translation>
  </message>
  <message>
   <source>Cuts: {} at the store, {} at home</source>
   <translation>Coupes : {} au magasin, {} à la maison</translation>
  </message>
  <message>
   <source>Cuts: {} wide, {} deep</source>
   <translation>Entailles : {} de large, {} de profondeur</translation>
  </message>
  <message>
   <source>Damaged places</source>
   <translation>Endroits abîmés</translation>
  </message>
  <message>
   <source>Dangers: {}</source>
   <translation>Dangers : {}</translation>
  </message>
  <message>
   <source>Dead space</source>
   <translation>Espace perdu</translation>
  </message>
  <message>
   <source>Defaults</source>
   <translation>Valeurs de départ</translation>
  </message>
  <message>
   <source>Depth</source>
   <translation>Profondeur</translation>
  </message>
  <message>
   <source>Depth at most</source>
   <translation>Profondeur maximale</translation>
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation>Profondeur à gauche, moulures et façades comprises, sans les poignées</translation>
  </message>
  <message>
   <source>Depth at the right</source>
   <translation>Profondeur à droite</translation>
  </message>
  <message>
   <source>Depth back</source>
   <translation>Profondeur au fond</translation>
  </message>
  <message>
   <source>Depth fraction</source>
   <translation>Fraction de profondeur</translation>
  </message>
  <message>
   <source>Depth left</source>
   <translation>Profondeur à gauche</translation>
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation>Profondeur de la branche le long du mur du fond</translation>
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation>Profondeur de la branche le long du mur latéral</translation>
  </message>
  <message>
   <source>Depth right</source>
   <translation>Profondeur à droite</translation>
  </message>
  <message>
   <source>Depth side</source>
   <translation>Profondeur côté</translation>
  </message>
  <message>
   <source>Depth step</source>
   <translation>Pas de profondeur</translation>
  </message>
  <message>
   <source>Depths</source>
   <translation>Profondeurs</translation>
  </message>
  <message>
   <source>Diagonal to the left</source>
   <translation>Diagonale vers la gauche</translation>
  </message>
  <message>
   <source>Diagonal to the right</source>
   <translation>Diagonale vers la droite</translation>
  </message>
  <message>
   <source>Diameter</source>
   <translation>Diamètre</translation>
  </message>
  <message>
   <source>Diameter of the bit at hand: the bill then gives the passes for each groove.</source>
   <translation>Diamètre de la fraise disponible : la nomenclature donne alors les passes de chaque rainure.</translation>
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation>Diamètre du trou pour une poignée</translation>
  </message>
  <message>
   <source>Direction of the cuts that are made first on a whole sheet.</source>
   <translation>Sens des premières coupes sur un panneau brut entier.</translation>
  </message>
  <message>
   <source>Distance of its left side from the left of the envelope. Left empty, it stands beside the carcass before it.</source>
   <translation>Distance de son côté gauche à la gauche du volume utile. Laissée vide, il se place à côté du caisson précédent.</translation>
  </message>
  <message>
   <source>Does it go in?</source>
   <translation>Est-ce que ça entre ?</translation>
  </message>
  <message>
   <source>Doors</source>
   <translation>Portes</translation>
  </message>
  <message>
   <source>Doors and lids are taken to turn about the edge that their hinges hold; look at the hinges' own drawing where it is close.</source>
   <translation>Portes et abattants sont supposés tourner autour du bord tenu par leurs charnières ; consulter le dessin des charnières quand c'est juste.</translation>
  </message>
  <message>
   <source>Doors…</source>
   <translation>Portes…</translation>
  </message>
  <message>
   <source>Doubtful: {}</source>
   <translation>Douteux : {}</translation>
  </message>
  <message>
   <source>Drawer boxes</source>
   <translation>Caisses de tiroir</translation>
  </message>
  <message>
   <source>Drawers</source>
   <translation>Tiroirs</translation>
  </message>
  <message>
   <source>Drawers, doors, rods, a bench, a reused piece, fillers</source>
   <translation>Tiroirs, portes, tringles, banc, meuble de réemploi, fileurs</translation>
  </message>
  <message>
   <source>Drawers…</source>
   <translation>Tiroirs…</translation>
  </message>
  <message>
   <source>Drawing page</source>
   <translation>Page de dessin</translation>
  </message>
  <message>
   <source>Drawings</source>
   <translation>Dessins</translation>
  </message>
  <message>
   <source>Drawn by</source>
   <translation>Dessiné par</translation>
  </message>
  <message>
   <source>Drill</source>
   <translation>Perçage</translation>
  </message>
  <message>
   <source>Drop</source>
   <translation>Dénivelé</translation>
  </message>
  <message>
   <source>Edge band</source>
   <translation>Chant</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims.</source>
   <translation>Chant acheté en plus de la longueur des rives.</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips. Automatic: as the carcass's.</source>
   <translation>Chant des bords avant des étagères, ou de leurs retombées. Automatique : comme le caisson.</translation>
  </message>
  <message>
   <source>Edit {}</source>
   <translation>Modifier {}</translation>
  </message>
  <message>
   <source>End clearance</source>
   <translation>Jeu en bout</translation>
  </message>
  <message>
   <source>Enter what was read.</source>
   <translation>Saisir ce qui a été lu.</translation>
  </message>
  <message>
   <source>Envelope: {} wide, {} deep, {} high</source>
   <translation>Volume utile : {} de large, {} de profondeur, {} de haut</translation>
  </message>
  <message>
   <source>Error of the level or the plumb line over one metre.</source>
   <translation>Erreur du niveau ou du fil à plomb sur un mètre.</translation>
  </message>
  <message>
   <source>Everything opens freely.</source>
   <translation>Tout s'ouvre librement.</translation>
  </message>
  <message>
   <source>Exact.</source>
   <translation>Exact.</translation>
  </message>
  <message>
   <source>Examples: {} and {}</source>
   <translation>Exemples : {} et {}</translation>
  </message>
  <message>
   <source>Existing</source>
   <translation>Existant</translation>
  </message>
  <message>
   <source>Existing pieces</source>
   <translation>Meubles existants</translation>
  </message>
  <message>
   <source>Existing piece…</source>
   <translation>Meuble existant…</translation>
  </message>
  <message>
   <source>Expected</source>
   <translation>Attendu</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Face</translation>
  </message>
  <message>
   <source>Face frame</source>
   <translation>Cadre de façade</translation>
  </message>
  <message>
   <source>Face frame…</source>
   <translation>Cadre de façade…</translation>
  </message>
  <message>
   <source>Face material</source>
   <translation>Matériau de face</translation>
  </message>
  <message>
   <source>FaceFrame</source>
   <translation>FaceFrame</translation>
  </message>
  <message>
   <source>Feet</source>
   <translation>Pieds</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Fichier</translation>
  </message>
  <message>
   <source>Fillers</source>
   <translation>Fileurs</translation>
  </message>
  <message>
   <source>Fillers and mouldings</source>
   <translation>Fileurs et moulures</translation>
  </message>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation>Fileurs, ajustages et moulures qui ferment les jeux avec murs, plafond et sol</translation>
  </message>
  <message>
   <source>Fillers…</source>
   <translation>Fileurs…</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Constat</translation>
  </message>
  <message>
   <source>Finished size, edge bands included.</source>
   <translation>Dimension finie, chants compris.</translation>
  </message>
  <message>
   <source>First</source>
   <translation>Premier</translation>
  </message>
  <message>
   <source>First at</source>
   <translation>Premier à</translation>
  </message>
  <message>
   <source>First cuts</source>
   <translation>Premières coupes</translation>
  </message>
  <message>
   <source>Fit</source>
   <translation>Jeu de rainure</translation>
  </message>
  <message>
   <source>Fitted</source>
   <translation>Ajusté</translation>
  </message>
  <message>
   <source>Fixed</source>
   <translation>Fixe</translation>
  </message>
  <message>
   <source>Fixed at</source>
   <translation>Fixes à</translation>
  </message>
  <message>
   <source>Fixed shelves by</source>
   <translation>Étagères fixes par</translation>
  </message>
  <message>
   <source>Fixed shelves, let into the sides at equal clear heights.</source>
   <translation>Étagères fixes, encastrées dans les côtés à hauteurs libres égales.</translation>
  </message>
  <message>
   <source>Floor</source>
   <translation>Sol</translation>
  </message>
  <message>
   <source>Floor to ceiling, the tape plumb, close to the corner.</source>
   <translation>Du sol au plafond, mètre d'aplomb, près de l'angle.</translation>
  </message>
  <message>
   <source>Floor to the back</source>
   <translation>Sol vers le fond</translation>
  </message>
  <message>
   <source>Floor to the right</source>
   <translation>Sol vers la droite</translation>
  </message>
  <message>
   <source>Folder</source>
   <translation>Dossier</translation>
  </message>
  <message>
   <source>Folder for the drawings</source>
   <translation>Dossier des dessins</translation>
  </message>
  <message>
   <source>Folder for the pictures</source>
   <translation>Dossier des images</translation>
  </message>
  <message>
   <source>Follows the formula {}</source>
   <translation>Suit la formule {}</translation>
  </message>
  <message>
   <source>For fewer cuts</source>
   <translation>Pour moins de coupes</translation>
  </message>
  <message>
   <source>For fewer sheets</source>
   <translation>Pour moins de panneaux bruts</translation>
  </message>
  <message>
   <source>For panels of</source>
   <translation>Pour panneaux de</translation>
  </message>
  <message>
   <source>Forget the last ones</source>
   <translation>Oublier les derniers</translation>
  </message>
  <message>
   <source>Fraction of the thickness that must stay between two cuts that meet from both faces. ``least_skin``: mm that must stay under a blind hole</source>
   <translation>Fraction de l'épaisseur qui doit rester entre deux coupes se rejoignant depuis les deux faces. ``least_skin`` : mm qui doivent rester sous un trou borgne</translation>
  </message>
  <message>
   <source>Free</source>
   <translation>Libre</translation>
  </message>
  <message>
   <source>From</source>
   <translation>De</translation>
  </message>
  <message>
   <source>From an end the grooves run across the width, from an edge along the length.</source>
   <translation>Depuis un bout, les rainures vont en travers ; depuis une rive, en long.</translation>
  </message>
  <message>
   <source>From floor</source>
   <translation>Depuis le sol</translation>
  </message>
  <message>
   <source>From front</source>
   <translation>Depuis l'avant</translation>
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation>Entraxe des trous d'une poignée à deux trous, 0 pour un bouton à un trou</translation>
  </message>
  <message>
   <source>From its front edge</source>
   <translation>Depuis son bord avant</translation>
  </message>
  <message>
   <source>From near wall to near wall.</source>
   <translation>De mur proche à mur proche.</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove.</source>
   <translation>De cette rive à la paroi proche de la première rainure.</translation>
  </message>
  <message>
   <source>From the front of the carcass to the kick board or the frame's front rail.</source>
   <translation>De l'avant du caisson à la plinthe ou à la traverse avant du cadre.</translation>
  </message>
  <message>
   <source>From the leaf's edge to the boring's, None takes the hinge's own</source>
   <translation>Du bord du vantail à celui du perçage, None prend la valeur de la charnière</translation>
  </message>
  <message>
   <source>From the left</source>
   <translation>De la gauche</translation>
  </message>
  <message>
   <source>From the left, 1 first.</source>
   <translation>Depuis la gauche, 1 d'abord.</translation>
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation>Du milieu de la poignée au bord libre du vantail</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face: room to scribe to the wall.</source>
   <translation>Des bords arrière à la face arrière du dos : place pour ajuster au mur.</translation>
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, None takes 305 mm or the middle</source>
   <translation>De l'arrière de l'ouverture à l'axe de la tringle, None prend 305 mm ou le milieu</translation>
  </message>
  <message>
   <source>From the side wall to the jamb, inside.</source>
   <translation>Du mur latéral au tableau, à l'intérieur.</translation>
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation>Du bord inférieur des côtés à la rainure du fond</translation>
  </message>
  <message>
   <source>From the underside of the lintel to the ceiling, inside.</source>
   <translation>Du dessous du linteau au plafond, à l'intérieur.</translation>
  </message>
  <message>
   <source>Front</source>
   <translation>Avant</translation>
  </message>
  <message>
   <source>Front elevation with sizes</source>
   <translation>Élévation de face avec cotes</translation>
  </message>
  <message>
   <source>Front row at</source>
   <translation>Rangée avant à</translation>
  </message>
  <message>
   <source>Fronts and doors, to be drilled</source>
   <translation>Façades et portes, à percer</translation>
  </message>
  <message>
   <source>Fronts, doors, face frames</source>
   <translation>Façades, portes, cadres de façade</translation>
  </message>
  <message>
   <source>Gap</source>
   <translation>Jeu</translation>
  </message>
  <message>
   <source>Gap above</source>
   <translation>Jeu au-dessus</translation>
  </message>
  <message>
   <source>Gaps kept with</source>
   <translation>Jeux tenus avec</translation>
  </message>
  <message>
   <source>Goes in</source>
   <translation>Entre</translation>
  </message>
  <message>
   <source>Grain</source>
   <translation>Fil</translation>
  </message>
  <message>
   <source>Grain along</source>
   <translation>Fil selon</translation>
  </message>
  <message>
   <source>Grained</source>
   <translation>Veiné</translation>
  </message>
  <message>
   <source>Groove depth</source>
   <translation>Profondeur de rainure</translation>
  </message>
  <message>
   <source>Groove stop</source>
   <translation>Arrêt de rainure</translation>
  </message>
  <message>
   <source>Groove wider than the panel in it, mm. ``end_clearance``: how far a tongue stays short of the bottom of its groove, mm. ``depth_fraction`` of the grooved panel's thickness, taken down to a multiple of ``depth_step`` (a router is set in steps), unless ``depth`` is given. ``most_fraction``: deepest groove allowed</source>
   <translation>Surlargeur de la rainure sur le panneau qu'elle reçoit, mm. ``end_clearance`` : de combien une languette reste en deçà du fond de sa rainure, mm. ``depth_fraction`` de l'épaisseur du panneau rainuré, arrondie vers le bas à un multiple de ``depth_step`` (une défonceuse se règle par pas), sauf si ``depth`` est donnée. ``most_fraction`` : rainure la plus profonde permise</translation>
  </message>
  <message>
   <source>Groove wider than the panel in it.</source>
   <translation>Surlargeur de la rainure sur le panneau qu'elle reçoit.</translation>
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
   <translation>Rainures</translation>
  </message>
  <message>
   <source>Grooves and rabbets</source>
   <translation>Rainures et feuillures</translation>
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation>Tringle…</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Hauteur</translation>
  </message>
  <message>
   <source>Height above the floor at which these readings are taken.</source>
   <translation>Hauteur au-dessus du sol où ces mesures sont prises.</translation>
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation>Hauteur à gauche, pieds et dessus compris</translation>
  </message>
  <message>
   <source>Height at the right</source>
   <translation>Hauteur à droite</translation>
  </message>
  <message>
   <source>Height left</source>
   <translation>Hauteur à gauche</translation>
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation>Hauteur d'une traverse devant chaque étagère fixe, 0 pour aucune</translation>
  </message>
  <message>
   <source>Height of a strip in front of each shelf, level with its upper face; 0 for none. It stiffens the shelf, which is that much less deep.</source>
   <translation>Hauteur d'une bande devant chaque étagère, au ras de sa face supérieure ; 0 pour aucune. Elle raidit l'étagère, moins profonde d'autant.</translation>
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation>Hauteur de la traverse basse</translation>
  </message>
  <message>
   <source>Height of the boxes' sides, None takes all that the slide leaves</source>
   <translation>Hauteur des côtés de caisse, None prend tout ce que la coulisse laisse</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation>Hauteur des tasseaux aux murs</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation>Hauteur des tasseaux aux murs, 0 pour aucun</translation>
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation>Hauteur des pieds qui sont déposés</translation>
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation>Hauteur de la butée au-dessus de l'étagère</translation>
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation>Hauteur de la traverse haute</translation>
  </message>
  <message>
   <source>Height right</source>
   <translation>Hauteur à droite</translation>
  </message>
  <message>
   <source>Heights</source>
   <translation>Hauteurs</translation>
  </message>
  <message>
   <source>Heights of the fixed shelves' undersides above the bay's floor, set apart by semicolons. Left empty, the clear heights are equal.</source>
   <translation>Hauteurs du dessous des étagères fixes au-dessus du plancher de la travée, séparées par des points-virgules. Laissé vide : hauteurs libres égales.</translation>
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left</source>
   <translation>Hauteurs des façades depuis le bas, l'une à 0 pour prendre le reste</translation>
  </message>
  <message>
   <source>Hide everything else</source>
   <translation>Masquer tout le reste</translation>
  </message>
  <message>
   <source>High</source>
   <translation>Haut</translation>
  </message>
  <message>
   <source>Hinge</source>
   <translation>Charnière</translation>
  </message>
  <message>
   <source>Hinged</source>
   <translation>Côté charnières</translation>
  </message>
  <message>
   <source>Hinges</source>
   <translation>Charnières</translation>
  </message>
  <message>
   <source>Hinges on each leaf, None takes what its height and weight ask for</source>
   <translation>Charnières par vantail, None prend ce que demandent sa hauteur et son poids</translation>
  </message>
  <message>
   <source>Holder</source>
   <translation>Support</translation>
  </message>
  <message>
   <source>Hole depth</source>
   <translation>Profondeur de trou</translation>
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation>Appui minimal d'une moulure sur le caisson, 6 mm comme ci-dessus</translation>
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation>De combien un montant dépasse le côté du caisson</translation>
  </message>
  <message>
   <source>How far a tongue stays short of the bottom of its groove.</source>
   <translation>De combien une languette reste en deçà du fond de sa rainure.</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation>Départ au-dessus du plancher de la case</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins.</source>
   <translation>Départ au-dessus du plancher de la case.</translation>
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, None by its kind</source>
   <translation>Recouvrement d'une façade en applique sur ce qui borde son ouverture, None selon son type</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through. By rule: stopped behind a banded edge, through a bare one.</source>
   <translation>Retrait des rainures depuis le bord avant ; 0 les fait traverser. Par règle : arrêtées derrière un bord plaqué, traversantes sur un bord nu.</translation>
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation>Débord sur le cadre aux deux extrémités</translation>
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation>Retrait de son avant derrière les bords avant du caisson</translation>
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation>Montée de son bord inférieur vers la droite</translation>
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation>Dévers de son bord droit vers la droite, en montant</translation>
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation>Montée de son bord supérieur vers la droite</translation>
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation>De combien le cadre dépasse le dessus du caisson</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rims that they run between; 0 runs through.</source>
   <translation>De combien les rainures restent à l'écart des rives entre lesquelles elles courent ; 0 traverse.</translation>
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation>Dévers du bord gauche de l'ouverture d'une façade encastrée vers la droite, en montant</translation>
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation>Saillie, de chaque côté et devant, des moulures qui sont déposées</translation>
  </message>
  <message>
   <source>How far the parts are pulled apart in the view; they stay where they are.</source>
   <translation>Écartement des pièces dans la vue ; elles restent à leur place.</translation>
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation>Débord du dessus sur le cadre et sa face à l'avant</translation>
  </message>
  <message>
   <source>How far they come out</source>
   <translation>De combien ils sortent</translation>
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation>Assemblage de l'avant et de l'arrière d'une caisse avec ses côtés</translation>
  </message>
  <message>
   <source>How high it is, None for all that is left</source>
   <translation>Sa hauteur, None pour tout le reste</translation>
  </message>
  <message>
   <source>How likely all least gaps are kept, given how well the room is known.</source>
   <translation>Probabilité que tous les jeux minimaux soient tenus, vu la connaissance de la pièce.</translation>
  </message>
  <message>
   <source>How long to search, per material</source>
   <translation>Durée de la recherche, par matériau</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted as one.</source>
   <translation>Combien de fois le débit peut changer de sens, le premier compté pour un.</translation>
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation>De combien l'avant d'une étagère est plus bas que son arrière</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is.</source>
   <translation>De combien une étagère réglable est plus courte que sa travée.</translation>
  </message>
  <message>
   <source>How sure</source>
   <translation>Certitude</translation>
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation>Contact des socles avec le sol</translation>
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation>Maintien du fond</translation>
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation>Pose des longues traverses</translation>
  </message>
  <message>
   <source>How the members are joined</source>
   <translation>Assemblage des éléments</translation>
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
   <translation>Dans</translation>
  </message>
  <message>
   <source>In all {}.</source>
   <translation>En tout {}.</translation>
  </message>
  <message>
   <source>In front of</source>
   <translation>Devant</translation>
  </message>
  <message>
   <source>In front of each fixed and loose shelf, which is that much less deep;</source>
   <translation>Devant chaque étagère fixe et réglable, moins profonde d'autant ;</translation>
  </message>
  <message>
   <source>In kg, with its drawers; None where nobody has weighed it</source>
   <translation>En kg, avec ses tiroirs ; None si personne ne l'a pesé</translation>
  </message>
  <message>
   <source>In the 3D view</source>
   <translation>Dans la vue 3D</translation>
  </message>
  <message>
   <source>In the closet: {}</source>
   <translation>Dans le placard : {}</translation>
  </message>
  <message>
   <source>In the face</source>
   <translation>Dans la face</translation>
  </message>
  <message>
   <source>Inset</source>
   <translation>Retrait</translation>
  </message>
  <message>
   <source>It stays where it was: {}</source>
   <translation>Il reste où il était : {}</translation>
  </message>
  <message>
   <source>Its cuts, at most</source>
   <translation>Ses coupes, au plus</translation>
  </message>
  <message>
   <source>Its depth, None takes the envelope's</source>
   <translation>Sa profondeur, None prend celle du volume utile</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation>Distance de son bout gauche à la gauche du volume utile</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, None beside what stands there</source>
   <translation>Distance de son bout gauche à la gauche du volume utile, None à côté de ce qui s'y trouve</translation>
  </message>
  <message>
   <source>Its own door</source>
   <translation>Sa propre porte</translation>
  </message>
  <message>
   <source>Its right end's, None runs to the right wall</source>
   <translation>Celle de son bout droit, None va jusqu'au mur de droite</translation>
  </message>
  <message>
   <source>Its underside above the floor, None lies on the highest carcass</source>
   <translation>Son dessous au-dessus du sol, None pose sur le caisson le plus haut</translation>
  </message>
  <message>
   <source>Its way in</source>
   <translation>Son chemin d'entrée</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Assemblage</translation>
  </message>
  <message>
   <source>Joints, base and back</source>
   <translation>Assemblages, socle et dos</translation>
  </message>
  <message>
   <source>Keep for nobody</source>
   <translation>Ne garder pour personne</translation>
  </message>
  <message>
   <source>Kept</source>
   <translation>Conservé</translation>
  </message>
  <message>
   <source>Kerf</source>
   <translation>Trait de scie</translation>
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation>Clé d'une classe de barre</translation>
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation>Clé d'une classe de charnière</translation>
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation>Clé d'une classe de coulisse</translation>
  </message>
  <message>
   <source>Key of its board</source>
   <translation>Clé de son panneau</translation>
  </message>
  <message>
   <source>Key of its board, None takes the shelf's</source>
   <translation>Clé de son panneau, None prend celui de l'étagère</translation>
  </message>
  <message>
   <source>Key of its edge band, None for the material's own, "" for none</source>
   <translation>Clé de son chant, None pour celui du matériau, "" pour aucun</translation>
  </message>
  <message>
   <source>Key of the band on the shelves' front edges, None as on the carcass's, "" none; a shelf behind a lip has none, and the lip has it on its long edges</source>
   <translation>Clé du chant des bords avant des étagères, None comme sur le caisson, "" aucun ; une étagère derrière une retombée n'en a pas, et la retombée le porte sur ses bords longs</translation>
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation>Clé des planches ou panneaux bruts où ses éléments sont débités</translation>
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation>Clé du panneau des fonds</translation>
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation>Clé du panneau des caisses</translation>
  </message>
  <message>
   <source>Key of the edge band for visible front edges; None takes the material's own, "" bands nothing. ``groove_stop``: how far grooves stay back from the front edge; None stops them 10 mm short where the front is banded and runs them through where not</source>
   <translation>Clé du chant des bords avant visibles ; None prend celui du matériau, "" ne plaque rien. ``groove_stop`` : retrait des rainures depuis le bord avant ; None les arrête à 10 mm si l'avant est plaqué et les fait traverser sinon</translation>
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, None for the material's own, "" for none</source>
   <translation>Clé du chant des étagères et butées, None pour celui du matériau, "" pour aucun</translation>
  </message>
  <message>
   <source>Key of the edge band of their long edges, None for the material's own, "" for none</source>
   <translation>Clé du chant de leurs bords longs, None pour celui du matériau, "" pour aucun</translation>
  </message>
  <message>
   <source>Key of the face's board, None takes the top's</source>
   <translation>Clé du panneau de la face, None prend celui du dessus</translation>
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation>Clé du bois des éléments</translation>
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation>Clé du panneau du dessus</translation>
  </message>
  <message>
   <source>Key of their board</source>
   <translation>Clé de leur panneau</translation>
  </message>
  <message>
   <source>Key of their board, None takes the carcass's</source>
   <translation>Clé de leur panneau, None prend celui du caisson</translation>
  </message>
  <message>
   <source>Key of their edge band, None for the material's own, "" for none</source>
   <translation>Clé de leur chant, None pour celui du matériau, "" pour aucun</translation>
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation>Clés des moulures plates et des quarts-de-rond pour le pied du socle, au choix ; sans quarts-de-rond le pied reste ouvert</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Type</translation>
  </message>
  <message>
   <source>Kind of file</source>
   <translation>Type de fichier</translation>
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation>LED ou fluorescent identifié pour l'usage en rangement de placard</translation>
  </message>
  <message>
   <source>Lap</source>
   <translation>Recouvrement</translation>
  </message>
  <message>
   <source>Largest is</source>
   <translation>Le plus grand</translation>
  </message>
  <message>
   <source>Lay</source>
   <translation>Pose</translation>
  </message>
  <message>
   <source>LayoutPanel</source>
   <translation>LayoutPanel</translation>
  </message>
  <message>
   <source>Lean left</source>
   <translation>Dévers gauche</translation>
  </message>
  <message>
   <source>Lean right</source>
   <translation>Dévers droit</translation>
  </message>
  <message>
   <source>Least</source>
   <translation>Minimum</translation>
  </message>
  <message>
   <source>Least gap</source>
   <translation>Jeu minimal</translation>
  </message>
  <message>
   <source>Least skin</source>
   <translation>Épaisseur restante</translation>
  </message>
  <message>
   <source>Least web</source>
   <translation>Âme minimale</translation>
  </message>
  <message>
   <source>Leave all readings blank</source>
   <translation>Laisser toutes les mesures vides</translation>
  </message>
  <message>
   <source>Leaves</source>
   <translation>Vantaux</translation>
  </message>
  <message>
   <source>Left</source>
   <translation>Gauche</translation>
  </message>
  <message>
   <source>Left end at</source>
   <translation>Bout gauche à</translation>
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation>Laissé pour l'ajustage au mur, 6 mm (usage courant, sans source publiée)</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left, None: beside the carcass before</source>
   <translation>Distance du côté gauche à la gauche du volume utile, None : à côté du caisson précédent</translation>
  </message>
  <message>
   <source>Left wall</source>
   <translation>Mur de gauche</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Longueur</translation>
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation>Longueur le long du mur du fond</translation>
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation>Longueur le long du mur latéral</translation>
  </message>
  <message>
   <source>Length of the slides, None takes the longest that fits</source>
   <translation>Longueur des coulisses, None prend la plus longue qui entre</translation>
  </message>
  <message>
   <source>Level offset of the floor: above 0 where it rises.</source>
   <translation>Écart de niveau du sol : au-dessus de 0 s'il monte.</translation>
  </message>
  <message>
   <source>Level, in a metre</source>
   <translation>Niveau, sur un mètre</translation>
  </message>
  <message>
   <source>Levelling</source>
   <translation>Mise à niveau</translation>
  </message>
  <message>
   <source>Lid</source>
   <translation>Abattant</translation>
  </message>
  <message>
   <source>Lid support</source>
   <translation>Compas d'abattant</translation>
  </message>
  <message>
   <source>Limit</source>
   <translation>Limite</translation>
  </message>
  <message>
   <source>Lip</source>
   <translation>Retombée</translation>
  </message>
  <message>
   <source>Lip material</source>
   <translation>Matériau de retombée</translation>
  </message>
  <message>
   <source>Loads, wall, damp, children, light</source>
   <translation>Charges, mur, humidité, enfants, éclairage</translation>
  </message>
  <message>
   <source>Loads, wall, damp, children, light…</source>
   <translation>Charges, mur, humidité, enfants, éclairage…</translation>
  </message>
  <message>
   <source>Loose</source>
   <translation>Réglables</translation>
  </message>
  <message>
   <source>Low</source>
   <translation>Bas</translation>
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
   <translation>Faire {}</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Marge</translation>
  </message>
  <message>
   <source>Material</source>
   <translation>Matériau</translation>
  </message>
  <message>
   <source>Materials, kinds and figures as they come with the workbench, in the place of those that were last accepted</source>
   <translation>Matériaux, genres et valeurs tels qu'ils viennent avec l'atelier, à la place des derniers acceptés</translation>
  </message>
  <message>
   <source>Mating</source>
   <translation>Emboîté</translation>
  </message>
  <message>
   <source>Measured from</source>
   <translation>Mesuré depuis</translation>
  </message>
  <message>
   <source>Member</source>
   <translation>Élément</translation>
  </message>
  <message>
   <source>Members every</source>
   <translation>Éléments tous les</translation>
  </message>
  <message>
   <source>Middle</source>
   <translation>Milieu</translation>
  </message>
  <message>
   <source>Millimetres, as sawn and before banding. Depth and side of each cut are in the layers' names.</source>
   <translation>Millimètres, tel que scié et avant placage des chants. Profondeur et face de chaque usinage sont dans les noms des calques.</translation>
  </message>
  <message>
   <source>More about the room</source>
   <translation>Plus sur la pièce</translation>
  </message>
  <message>
   <source>Most</source>
   <translation>Maximum</translation>
  </message>
  <message>
   <source>Most fraction</source>
   <translation>Fraction maximale</translation>
  </message>
  <message>
   <source>Moulding</source>
   <translation>Moulure</translation>
  </message>
  <message>
   <source>Mouldings</source>
   <translation>Moulures</translation>
  </message>
  <message>
   <source>Move {}</source>
   <translation>Déplacer {}</translation>
  </message>
  <message>
   <source>Mullion</source>
   <translation>Montant central</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Nom</translation>
  </message>
  <message>
   <source>Name of the carcass or bench that it stands in</source>
   <translation>Nom du caisson ou banc où il se trouve</translation>
  </message>
  <message>
   <source>Name of the carcass that it stands in front of</source>
   <translation>Nom du caisson devant lequel il se trouve</translation>
  </message>
  <message>
   <source>Names of the parts</source>
   <translation>Noms des pièces</translation>
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation>Bande la plus étroite et la plus large : 20 mm (usage courant, sans source publiée) et 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, édition 1, 2009)</translation>
  </message>
  <message>
   <source>Nearest hole to a fixed panel; ``depth`` of a blind hole; ``play``: how much shorter than its bay a loose shelf is (2 to 3 mm, common practice, no published source)</source>
   <translation>Trou le plus proche d'un panneau fixe ; ``depth`` d'un trou borgne ; ``play`` : de combien une étagère réglable est plus courte que sa travée (2 à 3 mm, usage courant, sans source publiée)</translation>
  </message>
  <message>
   <source>Needs a carcass</source>
   <translation>Demande un caisson</translation>
  </message>
  <message>
   <source>Needs a closet</source>
   <translation>Demande un placard</translation>
  </message>
  <message>
   <source>Needs a cut layout</source>
   <translation>Demande un plan de débit</translation>
  </message>
  <message>
   <source>New components start as the last ones</source>
   <translation>Les nouveaux composants commencent comme les derniers</translation>
  </message>
  <message>
   <source>New components start with what comes with the workbench.</source>
   <translation>Les nouveaux composants commencent avec ce qui vient avec l'atelier.</translation>
  </message>
  <message>
   <source>No box fits into the room as entered</source>
   <translation>Aucune boîte n'entre dans la pièce telle que saisie</translation>
  </message>
  <message>
   <source>No carcass that is up to 15 mm less deep would save a sheet.</source>
   <translation>Aucun caisson jusqu'à 15 mm moins profond n'épargnerait un panneau brut.</translation>
  </message>
  <message>
   <source>Not checked does not mean safe; {}. Each figure is only as good as what was entered.</source>
   <translation>Non vérifié ne veut pas dire sûr ; {}. Chaque valeur ne vaut que ce qui a été saisi.</translation>
  </message>
  <message>
   <source>Not planned yet.</source>
   <translation>Pas encore planifié.</translation>
  </message>
  <message>
   <source>Not shown by this choice: {}.</source>
   <translation>Non montré par ce choix : {}.</translation>
  </message>
  <message>
   <source>Nothing can be checked: the closet cannot be built. {}</source>
   <translation>Rien ne peut être vérifié : le placard est irréalisable. {}</translation>
  </message>
  <message>
   <source>Nothing found</source>
   <translation>Rien trouvé</translation>
  </message>
  <message>
   <source>Nothing is damaged.</source>
   <translation>Rien n'est abîmé.</translation>
  </message>
  <message>
   <source>Nothing of this kind was found.</source>
   <translation>Rien de ce genre n'a été trouvé.</translation>
  </message>
  <message>
   <source>Nothing to cut yet</source>
   <translation>Encore rien à couper</translation>
  </message>
  <message>
   <source>Nothing was found.</source>
   <translation>Rien n'a été trouvé.</translation>
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation>Nombre de tiroirs de même hauteur</translation>
  </message>
  <message>
   <source>Number of fixed shelves, spread to equal clear heights, unless ``heights`` gives the height of each one's underside above the bay's floor. ``adjustable``: number of loose shelves on pins, each put into the highest free space</source>
   <translation>Nombre d'étagères fixes, réparties à hauteurs libres égales, sauf si ``heights`` donne la hauteur du dessous de chacune au-dessus du plancher de la travée. ``adjustable`` : nombre d'étagères réglables sur taquets, chacune mise dans l'espace libre le plus haut</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Nombre de rainures</translation>
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation>Nombre de ses tiroirs, superposés</translation>
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation>Nombre de longues traverses, avant et arrière comprises</translation>
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation>Nombre d'ouvertures dessous, poteaux entre elles</translation>
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation>Nombre de morceaux dont il est fait, bout à bout</translation>
  </message>
  <message>
   <source>Number of shelves</source>
   <translation>Nombre d'étagères</translation>
  </message>
  <message>
   <source>Obstacles</source>
   <translation>Obstacles</translation>
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation>De son assise au-dessus de ce qui le porte</translation>
  </message>
  <message>
   <source>Of strips, None takes the carcass's</source>
   <translation>Des bandes, None prend celui du caisson</translation>
  </message>
  <message>
   <source>Of the pull's middle above the floor, None takes 1,000 mm or the nearest</source>
   <translation>Du milieu de la poignée au-dessus du sol, None prend 1 000 mm ou le plus proche</translation>
  </message>
  <message>
   <source>Of the rod's axis above the floor, None by its use or as high as it can be</source>
   <translation>De l'axe de la tringle au-dessus du sol, None selon son usage ou aussi haut que possible</translation>
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation>De la bande, 0 pour aucune</translation>
  </message>
  <message>
   <source>Of the upper of two rods, None by rule</source>
   <translation>De la plus haute de deux tringles, None par règle</translation>
  </message>
  <message>
   <source>Offcuts</source>
   <translation>Chutes</translation>
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation>Chutes disponibles</translation>
  </message>
  <message>
   <source>OffcutsPanel</source>
   <translation>OffcutsPanel</translation>
  </message>
  <message>
   <source>On one sheet. A piece that is too much for one person to carry is cut smaller at the store where it can be.</source>
   <translation>Sur un panneau brut. Un morceau trop lourd pour une seule personne est recoupé au magasin quand c'est possible.</translation>
  </message>
  <message>
   <source>On the floor, from the front corner to the back corner across.</source>
   <translation>Au sol, de l'angle avant à l'angle opposé du fond.</translation>
  </message>
  <message>
   <source>Once a job is cut</source>
   <translation>Une fois un travail débité</translation>
  </message>
  <message>
   <source>One after another, as they go together</source>
   <translation>L'une après l'autre, dans l'ordre du montage</translation>
  </message>
  <message>
   <source>One sheet of a material more for each so many, where more than four are needed.</source>
   <translation>Un panneau brut d'un matériau en plus pour autant, s'il en faut plus de quatre.</translation>
  </message>
  <message>
   <source>One step back</source>
   <translation>Un pas en arrière</translation>
  </message>
  <message>
   <source>One step on</source>
   <translation>Un pas en avant</translation>
  </message>
  <message>
   <source>Opening</source>
   <translation>Ouverture</translation>
  </message>
  <message>
   <source>Opening {} x {}, inside {} x {} x {}</source>
   <translation>Ouverture {} x {}, intérieur {} x {} x {}</translation>
  </message>
  <message>
   <source>Opens</source>
   <translation>S'ouvre</translation>
  </message>
  <message>
   <source>Other shelves</source>
   <translation>Autres étagères</translation>
  </message>
  <message>
   <source>Out of date: the design has changed</source>
   <translation>Périmé : la conception a changé</translation>
  </message>
  <message>
   <source>Out of date: the parts or the settings have changed since; plan again.</source>
   <translation>Périmé : les pièces ou les réglages ont changé depuis ; replanifier.</translation>
  </message>
  <message>
   <source>Outer size, base included. Left empty, it is what the envelope leaves.</source>
   <translation>Dimension extérieure, socle compris. Laissée vide, c'est ce que laisse le volume utile.</translation>
  </message>
  <message>
   <source>Outer: {} wide, {} high, {} deep</source>
   <translation>Extérieur : {} de large, {} de haut, {} de profondeur</translation>
  </message>
  <message>
   <source>Over its top, None takes what is left</source>
   <translation>Sur son dessus, None prend le reste</translation>
  </message>
  <message>
   <source>Over its top, None takes what is there; it stands at the rear</source>
   <translation>Sur son dessus, None prend ce qu'il y a ; il se place à l'arrière</translation>
  </message>
  <message>
   <source>Over shelf</source>
   <translation>Étagère du dessus</translation>
  </message>
  <message>
   <source>OverShelf</source>
   <translation>OverShelf</translation>
  </message>
  <message>
   <source>Overhang</source>
   <translation>Débord</translation>
  </message>
  <message>
   <source>Overhang ends</source>
   <translation>Débord en bout</translation>
  </message>
  <message>
   <source>Overhang top</source>
   <translation>Débord en haut</translation>
  </message>
  <message>
   <source>Overlap</source>
   <translation>Recouvrement</translation>
  </message>
  <message>
   <source>Own catalogue</source>
   <translation>Catalogue personnel</translation>
  </message>
  <message>
   <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
   <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
  </message>
  <message>
   <source>PDF or SVG file</source>
   <translation>Fichier PDF ou SVG</translation>
  </message>
  <message>
   <source>PDF, for the printer</source>
   <translation>PDF, pour l'imprimante</translation>
  </message>
  <message>
   <source>PNG, for the screen</source>
   <translation>PNG, pour l'écran</translation>
  </message>
  <message>
   <source>Pages A4; the name's ending says PDF, SVG or PNG.</source>
   <translation>Pages A4 ; la fin du nom dit PDF, SVG ou PNG.</translation>
  </message>
  <message>
   <source>Panel</source>
   <translation>Panneau</translation>
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation>Panneaux conservés de ce qui en est déposé</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Papers print</source>
   <translation>Impression des documents</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Pièce</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <source>Parts of</source>
   <translation>Pièces de</translation>
  </message>
  <message>
   <source>Parts were moved by hand.</source>
   <translation>Des pièces ont été déplacées à la main.</translation>
  </message>
  <message>
   <source>Pictures</source>
   <translation>Images</translation>
  </message>
  <message>
   <source>Piece</source>
   <translation>Élément</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Éléments</translation>
  </message>
  <message>
   <source>Pin holes</source>
   <translation>Trous de taquets</translation>
  </message>
  <message>
   <source>Pin pitch</source>
   <translation>Pas des taquets</translation>
  </message>
  <message>
   <source>Pitch</source>
   <translation>Pas</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Place</translation>
  </message>
  <message>
   <source>Plan its sheets first.</source>
   <translation>Planifier d'abord ses panneaux bruts.</translation>
  </message>
  <message>
   <source>Plan the sheets</source>
   <translation>Planifier les panneaux bruts</translation>
  </message>
  <message>
   <source>Plan the sheets first.</source>
   <translation>Planifier d'abord les panneaux bruts.</translation>
  </message>
  <message>
   <source>Plan, from above</source>
   <translation>Plan, vu de dessus</translation>
  </message>
  <message>
   <source>Play</source>
   <translation>Jeu</translation>
  </message>
  <message>
   <source>Played back from apart to together it shows the order of assembly: from the floor up, then what goes in, then the fronts.</source>
   <translation>Joué d'éclaté à assemblé, il montre l'ordre du montage : du sol vers le haut, puis l'intérieur, puis les façades.</translation>
  </message>
  <message>
   <source>Plumb</source>
   <translation>Aplomb</translation>
  </message>
  <message>
   <source>Plumb offset between the low and the high level: above 0 where the wall leans into the closet on its way up.</source>
   <translation>Écart d'aplomb entre le niveau bas et le niveau haut : au-dessus de 0 si le mur penche vers l'intérieur du placard en montant.</translation>
  </message>
  <message>
   <source>Position {} of {}</source>
   <translation>Position {} sur {}</translation>
  </message>
  <message>
   <source>Print the page to a file</source>
   <translation>Imprimer la page dans un fichier</translation>
  </message>
  <message>
   <source>Pull edge</source>
   <translation>Bord de poignée</translation>
  </message>
  <message>
   <source>Pull height</source>
   <translation>Hauteur de poignée</translation>
  </message>
  <message>
   <source>Pull hole</source>
   <translation>Trou de poignée</translation>
  </message>
  <message>
   <source>Pull spacing</source>
   <translation>Entraxe de poignée</translation>
  </message>
  <message>
   <source>Pulled apart</source>
   <translation>Éclaté</translation>
  </message>
  <message>
   <source>Pulls</source>
   <translation>Poignées</translation>
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation>Poignées par façade, 0 pour aucune</translation>
  </message>
  <message>
   <source>Rabbets</source>
   <translation>Feuillures</translation>
  </message>
  <message>
   <source>Rabbets at</source>
   <translation>Feuillures sur</translation>
  </message>
  <message>
   <source>Rails</source>
   <translation>Traverses</translation>
  </message>
  <message>
   <source>Read</source>
   <translation>Lu</translation>
  </message>
  <message>
   <source>Read a file…</source>
   <translation>Lire un fichier…</translation>
  </message>
  <message>
   <source>Read offcuts</source>
   <translation>Lire les chutes</translation>
  </message>
  <message>
   <source>Read to</source>
   <translation>Lu à</translation>
  </message>
  <message>
   <source>Reading</source>
   <translation>Mesure</translation>
  </message>
  <message>
   <source>Readings taken elsewhere</source>
   <translation>Mesures prises ailleurs</translation>
  </message>
  <message>
   <source>Readings when this task is closed</source>
   <translation>Mesures quand ce panneau est fermé</translation>
  </message>
  <message>
   <source>Readings: {} to look at</source>
   <translation>Mesures : {} à examiner</translation>
  </message>
  <message>
   <source>Rear</source>
   <translation>Arrière</translation>
  </message>
  <message>
   <source>Rear row at</source>
   <translation>Rangée arrière à</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Enlever</translation>
  </message>
  <message>
   <source>Remove the place</source>
   <translation>Enlever l'endroit</translation>
  </message>
  <message>
   <source>Remove this bay</source>
   <translation>Enlever cette travée</translation>
  </message>
  <message>
   <source>Residual</source>
   <translation>Écart</translation>
  </message>
  <message>
   <source>Returns</source>
   <translation>Retours de mur</translation>
  </message>
  <message>
   <source>Right</source>
   <translation>Droite</translation>
  </message>
  <message>
   <source>Right click: all commands of this step.</source>
   <translation>Clic droit : toutes les commandes de cette étape.</translation>
  </message>
  <message>
   <source>Right end at</source>
   <translation>Bout droit à</translation>
  </message>
  <message>
   <source>Right wall</source>
   <translation>Mur de droite</translation>
  </message>
  <message>
   <source>Rise above</source>
   <translation>Montée en haut</translation>
  </message>
  <message>
   <source>Rise below</source>
   <translation>Montée en bas</translation>
  </message>
  <message>
   <source>Rod</source>
   <translation>Tringle</translation>
  </message>
  <message>
   <source>Rods</source>
   <translation>Tringles</translation>
  </message>
  <message>
   <source>Room</source>
   <translation>Pièce</translation>
  </message>
  <message>
   <source>Room to leave</source>
   <translation>Place à laisser</translation>
  </message>
  <message>
   <source>Rounds</source>
   <translation>Quarts-de-rond</translation>
  </message>
  <message>
   <source>Router bit</source>
   <translation>Fraise</translation>
  </message>
  <message>
   <source>Rules</source>
   <translation>Règles</translation>
  </message>
  <message>
   <source>Run</source>
   <translation>Sens</translation>
  </message>
  <message>
   <source>STEP file</source>
   <translation>Fichier STEP</translation>
  </message>
  <message>
   <source>SVG, to draw on</source>
   <translation>SVG, à retoucher</translation>
  </message>
  <message>
   <source>Sans Serif</source>
   <translation>Sans Serif</translation>
  </message>
  <message>
   <source>Saw and sheets</source>
   <translation>Scie et panneaux bruts</translation>
  </message>
  <message>
   <source>Saw: {} x {}, {} thick</source>
   <translation>Scie : {} x {}, {} d'épaisseur</translation>
  </message>
  <message>
   <source>Scale 1 : {}.</source>
   <translation>Échelle 1 : {}.</translation>
  </message>
  <message>
   <source>Screws</source>
   <translation>Vis</translation>
  </message>
  <message>
   <source>Scribe</source>
   <translation>Ajuster au mur</translation>
  </message>
  <message>
   <source>Search for fewer cuts</source>
   <translation>Chercher moins de coupes</translation>
  </message>
  <message>
   <source>Search for fewer sheets</source>
   <translation>Chercher moins de panneaux bruts</translation>
  </message>
  <message>
   <source>Searched in steps of {}, with as much to spare all round.</source>
   <translation>Cherché par pas de {}, avec autant de réserve tout autour.</translation>
  </message>
  <message>
   <source>Sections</source>
   <translation>Coupes</translation>
  </message>
  <message>
   <source>Seed</source>
   <translation>Graine</translation>
  </message>
  <message>
   <source>Select the closet that this is for.</source>
   <translation>Choisir le placard auquel ceci est destiné.</translation>
  </message>
  <message>
   <source>Set back</source>
   <translation>Retrait</translation>
  </message>
  <message>
   <source>Setback</source>
   <translation>Retrait</translation>
  </message>
  <message>
   <source>Severity</source>
   <translation>Gravité</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Panneaux bruts</translation>
  </message>
  <message>
   <source>Sheets: {}</source>
   <translation>Panneaux bruts : {}</translation>
  </message>
  <message>
   <source>Shelf above</source>
   <translation>Étagère au-dessus</translation>
  </message>
  <message>
   <source>Shelf band</source>
   <translation>Chant d'étagère</translation>
  </message>
  <message>
   <source>Shelf joint</source>
   <translation>Assemblage d'étagère</translation>
  </message>
  <message>
   <source>Shelf lip</source>
   <translation>Retombée</translation>
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation>Étagère du dessus…</translation>
  </message>
  <message>
   <source>Shelf play</source>
   <translation>Jeu d'étagère</translation>
  </message>
  <message>
   <source>Shelf rail</source>
   <translation>Traverse d'étagère</translation>
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation>Étagères d'une pièce dans un angle du fond</translation>
  </message>
  <message>
   <source>Shoe shelves</source>
   <translation>Étagères à chaussures</translation>
  </message>
  <message>
   <source>Shoe shelves…</source>
   <translation>Étagères à chaussures…</translation>
  </message>
  <message>
   <source>ShoeShelves</source>
   <translation>ShoeShelves</translation>
  </message>
  <message>
   <source>Shop figures</source>
   <translation>Valeurs d'atelier</translation>
  </message>
  <message>
   <source>Shop figures: grooves and shelf pins</source>
   <translation>Valeurs d'atelier : rainures et taquets d'étagère</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Afficher</translation>
  </message>
  <message>
   <source>Show all</source>
   <translation>Tout afficher</translation>
  </message>
  <message>
   <source>Show and hide</source>
   <translation>Afficher et masquer</translation>
  </message>
  <message>
   <source>Show casing and baseboard</source>
   <translation>Afficher chambranle et plinthe du mur</translation>
  </message>
  <message>
   <source>Show everything</source>
   <translation>Tout afficher</translation>
  </message>
  <message>
   <source>Show it</source>
   <translation>L'afficher</translation>
  </message>
  <message>
   <source>Show larger</source>
   <translation>Agrandir</translation>
  </message>
  <message>
   <source>Show the ceiling of the room</source>
   <translation>Afficher le plafond de la pièce</translation>
  </message>
  <message>
   <source>Show the floor of the room</source>
   <translation>Afficher le sol de la pièce</translation>
  </message>
  <message>
   <source>Show the readings also while the survey's task is closed</source>
   <translation>Afficher les mesures même quand le panneau du relevé est fermé</translation>
  </message>
  <message>
   <source>Show the wall around the opening</source>
   <translation>Afficher le mur autour de l'ouverture</translation>
  </message>
  <message>
   <source>Show the walls of the room</source>
   <translation>Afficher les murs de la pièce</translation>
  </message>
  <message>
   <source>Show what must stay clear</source>
   <translation>Afficher ce qui doit rester dégagé</translation>
  </message>
  <message>
   <source>Show what the wall around the opening hides</source>
   <translation>Afficher ce que cache le mur autour de l'ouverture</translation>
  </message>
  <message>
   <source>ShowReadings</source>
   <translation>ShowReadings</translation>
  </message>
  <message>
   <source>Side</source>
   <translation>Côté</translation>
  </message>
  <message>
   <source>Side gap</source>
   <translation>Jeu latéral</translation>
  </message>
  <message>
   <source>Single panels</source>
   <translation>Panneaux seuls</translation>
  </message>
  <message>
   <source>Slide</source>
   <translation>Coulisse</translation>
  </message>
  <message>
   <source>Slide length</source>
   <translation>Longueur de coulisse</translation>
  </message>
  <message>
   <source>Sloped shelves for shoes in one compartment</source>
   <translation>Étagères inclinées pour chaussures dans une case</translation>
  </message>
  <message>
   <source>Sold as {}</source>
   <translation>Vendu comme {}</translation>
  </message>
  <message>
   <source>Solids</source>
   <translation>Solides</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Source</translation>
  </message>
  <message>
   <source>Spacing</source>
   <translation>Espacement</translation>
  </message>
  <message>
   <source>Spot</source>
   <translation>Endroit</translation>
  </message>
  <message>
   <source>Spread</source>
   <translation>Dispersion</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Se place à l'arrière d'un volume utile plus profond, sinon à l'avant</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front.</source>
   <translation>Se place à l'arrière d'un volume utile plus profond, sinon à l'avant.</translation>
  </message>
  <message>
   <source>Stands on</source>
   <translation>Posé sur</translation>
  </message>
  <message>
   <source>Start</source>
   <translation>Début</translation>
  </message>
  <message>
   <source>Start a closet, or look at an example first.</source>
   <translation>Commencer un placard, ou regarder d'abord un exemple.</translation>
  </message>
  <message>
   <source>Starts at</source>
   <translation>Commence à</translation>
  </message>
  <message>
   <source>Step {} of {}: {}</source>
   <translation>Étape {} sur {} : {}</translation>
  </message>
  <message>
   <source>Steps</source>
   <translation>Étapes</translation>
  </message>
  <message>
   <source>Stile</source>
   <translation>Montant</translation>
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation>Montants et traverses devant un caisson</translation>
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation>Les montants descendent jusqu'au sol, sinon jusqu'au bord inférieur de la traverse basse</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Arrêt</translation>
  </message>
  <message>
   <source>Stop first</source>
   <translation>Arrêt au début</translation>
  </message>
  <message>
   <source>Stop last</source>
   <translation>Arrêt à la fin</translation>
  </message>
  <message>
   <source>Stop: take the best so far</source>
   <translation>Arrêter : prendre le meilleur trouvé</translation>
  </message>
  <message>
   <source>Stopped</source>
   <translation>Arrêtées</translation>
  </message>
  <message>
   <source>Strip</source>
   <translation>Bande</translation>
  </message>
  <message>
   <source>Strip widths</source>
   <translation>Largeurs des bandes</translation>
  </message>
  <message>
   <source>Supports</source>
   <translation>Supports</translation>
  </message>
  <message>
   <source>Supports between the ends, None as many as the span asks for</source>
   <translation>Supports entre les extrémités, None autant que la portée en demande</translation>
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation>Des compas tiennent l'abattant à toute hauteur</translation>
  </message>
  <message>
   <source>Survey</source>
   <translation>Relevé</translation>
  </message>
  <message>
   <source>Survey sheet</source>
   <translation>Feuille de relevé</translation>
  </message>
  <message>
   <source>SurveyPanel</source>
   <translation>SurveyPanel</translation>
  </message>
  <message>
   <source>Surveyed</source>
   <translation>Relevé</translation>
  </message>
  <message>
   <source>TOML (*.toml)</source>
   <translation>TOML (*.toml)</translation>
  </message>
  <message>
   <source>Table saw at home</source>
   <translation>Scie sur table à la maison</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut.</source>
   <translation>Enlevé sur chaque rive d'un panneau brut avant de débiter une pièce.</translation>
  </message>
  <message>
   <source>Tape, class</source>
   <translation>Mètre, classe</translation>
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation>La travée prend la largeur du meuble, sauf si elle a la sienne</translation>
  </message>
  <message>
   <source>The bay that it stands in</source>
   <translation>La travée où il se trouve</translation>
  </message>
  <message>
   <source>The bay that it stands in, None to stand free</source>
   <translation>La travée où il se trouve, None pour le placer librement</translation>
  </message>
  <message>
   <source>The bill as CSV, drawings as DXF, solids as STEP</source>
   <translation>La nomenclature en CSV, les dessins en DXF, les solides en STEP</translation>
  </message>
  <message>
   <source>The bill is in {}</source>
   <translation>La nomenclature est dans {}</translation>
  </message>
  <message>
   <source>The carcasses alone</source>
   <translation>Les caissons seuls</translation>
  </message>
  <message>
   <source>The casing around the opening, on the room's side; 0 where there is none.</source>
   <translation>Le chambranle autour de l'ouverture, côté pièce ; 0 s'il n'y en a pas.</translation>
  </message>
  <message>
   <source>The closet has no parts yet: add a carcass or a panel first.</source>
   <translation>Le placard n'a pas encore de pièces : ajouter d'abord un caisson ou un panneau.</translation>
  </message>
  <message>
   <source>The closet has sizes only: they draw it, and every reading is left blank.</source>
   <translation>Le placard n'a que des dimensions : elles le dessinent, et toutes les mesures restent vides.</translation>
  </message>
  <message>
   <source>The closet's own door, flush with the room's side of the wall.</source>
   <translation>La porte du placard lui-même, affleurée au mur côté pièce.</translation>
  </message>
  <message>
   <source>The component's name</source>
   <translation>Le nom du composant</translation>
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again first.</source>
   <translation>Le plan de débit est périmé : replanifier d'abord les panneaux bruts.</translation>
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again, or draw the parts alone.</source>
   <translation>Le plan de débit est périmé : replanifier les panneaux bruts, ou dessiner les pièces seules.</translation>
  </message>
  <message>
   <source>The cutting order, as text and as pictures</source>
   <translation>L'ordre de débit, en texte et en images</translation>
  </message>
  <message>
   <source>The empty room</source>
   <translation>La pièce vide</translation>
  </message>
  <message>
   <source>The envelope</source>
   <translation>Le volume utile</translation>
  </message>
  <message>
   <source>The fronts</source>
   <translation>Les façades</translation>
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation>Le bord ferré d'une porte simple</translation>
  </message>
  <message>
   <source>The joinery of its laps</source>
   <translation>L'assemblage de ses mi-bois</translation>
  </message>
  <message>
   <source>The joinery of the boxes</source>
   <translation>L'assemblage des caisses</translation>
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation>L'angle du fond, gauche ou droit</translation>
  </message>
  <message>
   <source>The materials, joints and figures that were last accepted with OK for a component of the same kind. Sizes are those of the new place.</source>
   <translation>Les matériaux, assemblages et valeurs acceptés en dernier avec OK pour un composant du même genre. Les dimensions sont celles du nouvel emplacement.</translation>
  </message>
  <message>
   <source>The page that is there stays: delete it once the new one will do.</source>
   <translation>La page présente reste : la supprimer quand la nouvelle convient.</translation>
  </message>
  <message>
   <source>The place and the people</source>
   <translation>Le lieu et les personnes</translation>
  </message>
  <message>
   <source>The plan cuts around it.</source>
   <translation>Le plan coupe autour.</translation>
  </message>
  <message>
   <source>The plan uses the largest sound rectangle, {} x {}, from {} and {} on; it is cut out first.</source>
   <translation>Le plan utilise le plus grand rectangle sain, {} x {}, à partir de {} et {} ; il est découpé d'abord.</translation>
  </message>
  <message>
   <source>The readings agree with each other.</source>
   <translation>Les mesures concordent entre elles.</translation>
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation>Le jeu autour d'une façade encastrée et entre deux façades</translation>
  </message>
  <message>
   <source>The sheets</source>
   <translation>Les panneaux bruts</translation>
  </message>
  <message>
   <source>The sheets are not planned yet: lay them out first, or draw the parts alone.</source>
   <translation>Les panneaux bruts ne sont pas encore planifiés : les planifier d'abord, ou dessiner les pièces seules.</translation>
  </message>
  <message>
   <source>The sheets are not planned yet: the bill cannot count them.</source>
   <translation>Les panneaux bruts ne sont pas encore planifiés : la nomenclature ne peut pas les compter.</translation>
  </message>
  <message>
   <source>The space between two fixed shelves, from the bottom, 1 first.</source>
   <translation>L'espace entre deux étagères fixes, depuis le bas, 1 d'abord.</translation>
  </message>
  <message>
   <source>The step to which the tape was read.</source>
   <translation>Le pas de lecture du mètre.</translation>
  </message>
  <message>
   <source>The store saws</source>
   <translation>Le magasin scie</translation>
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation>Le dessus est un abattant, ferré sur une bande à l'arrière</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>Il n'y a pas de placard dans ce document : en commencer un d'abord.</translation>
  </message>
  <message>
   <source>They are a list of their own in the document.</source>
   <translation>Elles forment une liste à part dans le document.</translation>
  </message>
  <message>
   <source>They are used before anything is bought, wherever that saves something. Without a width it is a length of a bar.</source>
   <translation>Elles sont employées avant tout achat, là où cela épargne quelque chose. Sans largeur, c'est une longueur de barre.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Épaisseur</translation>
  </message>
  <message>
   <source>Thickness by caliper, in the middle of three edges. Grooves follow it.</source>
   <translation>Épaisseur au pied à coulisse, au milieu de trois bords. Les rainures la suivent.</translation>
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation>Épaisseur du dessus qui est déposé</translation>
  </message>
  <message>
   <source>Thickness of the wall at the opening.</source>
   <translation>Épaisseur du mur à l'ouverture.</translation>
  </message>
  <message>
   <source>Thickness, opens to (°)</source>
   <translation>Épaisseur, s'ouvre à (°)</translation>
  </message>
  <message>
   <source>To</source>
   <translation>À</translation>
  </message>
  <message>
   <source>To be written: {}</source>
   <translation>À écrire : {}</translation>
  </message>
  <message>
   <source>To floor</source>
   <translation>Jusqu'au sol</translation>
  </message>
  <message>
   <source>To measure the closet afresh, whatever was read before.</source>
   <translation>Pour mesurer le placard à neuf, quoi qu'on ait lu avant.</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Dessus</translation>
  </message>
  <message>
   <source>Top and bottom by</source>
   <translation>Dessus et fond bas par</translation>
  </message>
  <message>
   <source>Top lies</source>
   <translation>Pose du dessus</translation>
  </message>
  <message>
   <source>Top rail</source>
   <translation>Traverse haute</translation>
  </message>
  <message>
   <source>Top run</source>
   <translation>Sens du dessus</translation>
  </message>
  <message>
   <source>Travel</source>
   <translation>Course</translation>
  </message>
  <message>
   <source>Tree only</source>
   <translation>Arborescence seule</translation>
  </message>
  <message>
   <source>Trim</source>
   <translation>Affranchissement</translation>
  </message>
  <message>
   <source>Turn the part</source>
   <translation>Tourner la pièce</translation>
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation>Deux ouvertures laissent entrer l'air, abattant fermé</translation>
  </message>
  <message>
   <source>Undersides above the floor</source>
   <translation>Dessous au-dessus du sol</translation>
  </message>
  <message>
   <source>Upper</source>
   <translation>Supérieure</translation>
  </message>
  <message>
   <source>Usable length, along the grain if it has any</source>
   <translation>Longueur utile, dans le sens du fil s'il y en a un</translation>
  </message>
  <message>
   <source>Usable width</source>
   <translation>Largeur utile</translation>
  </message>
  <message>
   <source>Use</source>
   <translation>Usage</translation>
  </message>
  <message>
   <source>Use the offcuts at hand first</source>
   <translation>Employer d'abord les chutes disponibles</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valeur</translation>
  </message>
  <message>
   <source>Vents</source>
   <translation>Aérations</translation>
  </message>
  <message>
   <source>Waits until everything can be built</source>
   <translation>Attend que tout soit réalisable</translation>
  </message>
  <message>
   <source>Wall around the opening</source>
   <translation>Mur autour de l'ouverture</translation>
  </message>
  <message>
   <source>Wall over it</source>
   <translation>Mur au-dessus</translation>
  </message>
  <message>
   <source>Wall thickness</source>
   <translation>Épaisseur du mur</translation>
  </message>
  <message>
   <source>Wall to wall, the tape level.</source>
   <translation>De mur à mur, mètre de niveau.</translation>
  </message>
  <message>
   <source>Wall, end</source>
   <translation>Mur, bout</translation>
  </message>
  <message>
   <source>Walls</source>
   <translation>Murs</translation>
  </message>
  <message>
   <source>Warnings: {}</source>
   <translation>Avertissements : {}</translation>
  </message>
  <message>
   <source>Ways are looked for in an empty closet, from a room before it that is free. The picture moves in steps of {} and {}° at most; nothing in the document moves.</source>
   <translation>Les chemins sont cherchés dans un placard vide, depuis une pièce libre devant lui. L'image avance par pas de {} et {}° au plus ; rien ne bouge dans le document.</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Poids</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Quoi</translation>
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation>Ce qui le ferme à l'avant</translation>
  </message>
  <message>
   <source>What closes the opening: drawers and doors inside have to clear it.</source>
   <translation>Ce qui ferme l'ouverture : les tiroirs et les portes à l'intérieur doivent passer devant.</translation>
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation>Ce qui couvre le jeu à cet endroit</translation>
  </message>
  <message>
   <source>What fits</source>
   <translation>Ce qui entre</translation>
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation>Ce qu'on y pend, qui fixe sa hauteur</translation>
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation>Ce qui tient les bouts d'une tringle en travers</translation>
  </message>
  <message>
   <source>What is dangerous, doubtful or not checked</source>
   <translation>Ce qui est dangereux, douteux ou non vérifié</translation>
  </message>
  <message>
   <source>What is not known is not checked, and the findings say so.</source>
   <translation>Ce qui n'est pas connu n'est pas vérifié, et les constats le disent.</translation>
  </message>
  <message>
   <source>What it comes to</source>
   <translation>Ce que cela coûte</translation>
  </message>
  <message>
   <source>What it was</source>
   <translation>Ce que c'était</translation>
  </message>
  <message>
   <source>What new closets and new cut layouts start with. Those that are there keep what they have.</source>
   <translation>Départ des nouveaux placards et plans de débit. Ceux qui existent gardent le leur.</translation>
  </message>
  <message>
   <source>What opens</source>
   <translation>Ce qui s'ouvre</translation>
  </message>
  <message>
   <source>What the job took goes out of the list; what it leaves, and is large enough to keep, comes in.</source>
   <translation>Ce que le travail a pris sort de la liste ; ce qu'il laisse, et qui est assez grand pour être gardé, y entre.</translation>
  </message>
  <message>
   <source>What the readings say of each other</source>
   <translation>Ce que les mesures disent les unes des autres</translation>
  </message>
  <message>
   <source>What the tape read, or the sizes of the closet</source>
   <translation>Ce que le mètre a lu, ou les dimensions du placard</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Que faire</translation>
  </message>
  <message>
   <source>What would help: {}.</source>
   <translation>Ce qui aiderait : {}.</translation>
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation>Où l'on peut visser à travers</translation>
  </message>
  <message>
   <source>Where it hangs</source>
   <translation>Où elle pend</translation>
  </message>
  <message>
   <source>Where it stands</source>
   <translation>Où il se trouve</translation>
  </message>
  <message>
   <source>Where the closet is cut.</source>
   <translation>Où le placard est coupé.</translation>
  </message>
  <message>
   <source>Where the leaves lie, of which board, with which gaps and pulls</source>
   <translation>Où se trouvent les vantaux, de quel panneau, avec quels jeux et poignées</translation>
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation>Où finit le montant gauche</translation>
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation>Où finit le montant droit</translation>
  </message>
  <message>
   <source>Where they lie</source>
   <translation>Où ils se trouvent</translation>
  </message>
  <message>
   <source>Whether its grain must run along a part's length</source>
   <translation>Si son fil doit suivre la longueur d'une pièce</translation>
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation>Laquelle de ses travées, depuis la gauche, 1 d'abord</translation>
  </message>
  <message>
   <source>Which sheets to buy and how to cut them</source>
   <translation>Quels panneaux bruts acheter et comment les débiter</translation>
  </message>
  <message>
   <source>Which side</source>
   <translation>Quel côté</translation>
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation>Quel espace entre les étagères fixes, depuis le bas, 1 d'abord</translation>
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation>Sens du fil du dessus ; d'avant en arrière il est résistant entre traverses</translation>
  </message>
  <message>
   <source>Who cuts what</source>
   <translation>Qui débite quoi</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members of a frame</source>
   <translation>Plus grande distance libre entre entretoises d'un cadre</translation>
  </message>
  <message>
   <source>Widest clear distance between the cross members of a base frame.</source>
   <translation>Plus grande distance libre entre les entretoises d'un cadre de socle.</translation>
  </message>
  <message>
   <source>Width</source>
   <translation>Largeur</translation>
  </message>
  <message>
   <source>Width at the back, high up</source>
   <translation>Largeur au fond, en haut</translation>
  </message>
  <message>
   <source>Width at the back, low down</source>
   <translation>Largeur au fond, en bas</translation>
  </message>
  <message>
   <source>Width at the front, high up</source>
   <translation>Largeur à l'avant, en haut</translation>
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation>Largeur à l'avant, en bas</translation>
  </message>
  <message>
   <source>Width back high</source>
   <translation>Largeur fond haut</translation>
  </message>
  <message>
   <source>Width back low</source>
   <translation>Largeur fond bas</translation>
  </message>
  <message>
   <source>Width first, or the volume, which matters under a slope.</source>
   <translation>La largeur d'abord, ou le volume, qui compte sous une pente.</translation>
  </message>
  <message>
   <source>Width front high</source>
   <translation>Largeur avant haut</translation>
  </message>
  <message>
   <source>Width front low</source>
   <translation>Largeur avant bas</translation>
  </message>
  <message>
   <source>Width of that strip</source>
   <translation>Largeur de cette bande</translation>
  </message>
  <message>
   <source>Width of the cut that the blade makes.</source>
   <translation>Largeur de la coupe que fait la lame.</translation>
  </message>
  <message>
   <source>Width of the members as sawn, None takes the board's own</source>
   <translation>Largeur des éléments tels que sciés, None prend celle de la planche</translation>
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation>Largeur des montants centraux</translation>
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation>Largeur des montants ; contre le mur, sans ce qui dépasse le côté</translation>
  </message>
  <message>
   <source>Width, height</source>
   <translation>Largeur, hauteur</translation>
  </message>
  <message>
   <source>Widths</source>
   <translation>Largeurs</translation>
  </message>
  <message>
   <source>Workbench</source>
   <translation>Atelier</translation>
  </message>
  <message>
   <source>Write a file…</source>
   <translation>Écrire un fichier…</translation>
  </message>
  <message>
   <source>Write offcuts</source>
   <translation>Écrire les chutes</translation>
  </message>
  <message>
   <source>Write the bill</source>
   <translation>Écrire la nomenclature</translation>
  </message>
  <message>
   <source>Write the names on the parts that can be seen.</source>
   <translation>Écrire les noms sur les pièces visibles.</translation>
  </message>
  <message>
   <source>Write the solids</source>
   <translation>Écrire les solides</translation>
  </message>
  <message>
   <source>Write the survey sheet</source>
   <translation>Écrire la feuille de relevé</translation>
  </message>
  <message>
   <source>Written: {}</source>
   <translation>Écrit : {}</translation>
  </message>
  <message>
   <source>Your boards, prices and slides, laid over those that are shipped.</source>
   <translation>Vos panneaux, prix et coulisses, superposés à ceux fournis.</translation>
  </message>
  <message>
   <source>a cheaper one may exist</source>
   <translation>il peut en exister un moins cher</translation>
  </message>
  <message>
   <source>a pair, hinged at both sides</source>
   <translation>une paire, articulée des deux côtés</translation>
  </message>
  <message>
   <source>across</source>
   <translation>en travers</translation>
  </message>
  <message>
   <source>across the width</source>
   <translation>dans la largeur</translation>
  </message>
  <message>
   <source>add a carcass for it to stand in first</source>
   <translation>ajouter d'abord un caisson pour l'y placer</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>étagère réglable</translation>
  </message>
  <message>
   <source>agrees</source>
   <translation>concorde</translation>
  </message>
  <message>
   <source>all that is left</source>
   <translation>tout le reste</translation>
  </message>
  <message>
   <source>along</source>
   <translation>en long</translation>
  </message>
  <message>
   <source>along the bench</source>
   <translation>le long du banc</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>dans la longueur</translation>
  </message>
  <message>
   <source>aluminium tube</source>
   <translation>tube d'aluminium</translation>
  </message>
  <message>
   <source>aluminium tube 30 x 1.5 mm</source>
   <translation>tube d'aluminium 30 x 1.5 mm</translation>
  </message>
  <message>
   <source>anti-tip anchor, strap and brackets</source>
   <translation>ancrage anti-basculement, sangle et équerres</translation>
  </message>
  <message>
   <source>any</source>
   <translation>quelconque</translation>
  </message>
  <message>
   <source>any number</source>
   <translation>sans limite</translation>
  </message>
  <message>
   <source>apart</source>
   <translation>éclaté</translation>
  </message>
  <message>
   <source>apron</source>
   <translation>ceinture</translation>
  </message>
  <message>
   <source>as the carcass</source>
   <translation>comme le caisson</translation>
  </message>
  <message>
   <source>as the catalogue says</source>
   <translation>selon le catalogue</translation>
  </message>
  <message>
   <source>assembled pieces</source>
   <translation>meubles montés</translation>
  </message>
  <message>
   <source>at front or start</source>
   <translation>à l'avant ou au début</translation>
  </message>
  <message>
   <source>at midspan</source>
   <translation>à mi-portée</translation>
  </message>
  <message>
   <source>at rear or end</source>
   <translation>à l'arrière ou à la fin</translation>
  </message>
  <message>
   <source>at the free end</source>
   <translation>à l'extrémité libre</translation>
  </message>
  <message>
   <source>at the rear wall</source>
   <translation>au mur du fond</translation>
  </message>
  <message>
   <source>back</source>
   <translation>dos</translation>
  </message>
  <message>
   <source>backs</source>
   <translation>dos</translation>
  </message>
  <message>
   <source>band</source>
   <translation>chant</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>barre</translation>
  </message>
  <message>
   <source>base</source>
   <translation>socle</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>cadre de socle</translation>
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation>cadre de socle ajusté au sol</translation>
  </message>
  <message>
   <source>bay</source>
   <translation>travée</translation>
  </message>
  <message>
   <source>beech dowel 8 x 40 mm</source>
   <translation>tourillon en hêtre 8 x 40 mm</translation>
  </message>
  <message>
   <source>behind the left return: {}, {} l</source>
   <translation>derrière le retour de gauche : {}, {} l</translation>
  </message>
  <message>
   <source>behind the right return: {}, {} l</source>
   <translation>derrière le retour de droite : {}, {} l</translation>
  </message>
  <message>
   <source>bench</source>
   <translation>banc</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>face du banc</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>cadre du banc</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>dessus du banc</translation>
  </message>
  <message>
   <source>benches</source>
   <translation>bancs</translation>
  </message>
  <message>
   <source>beside the last</source>
   <translation>à côté du dernier</translation>
  </message>
  <message>
   <source>between the sides</source>
   <translation>entre les côtés</translation>
  </message>
  <message>
   <source>bill</source>
   <translation>nomenclature</translation>
  </message>
  <message>
   <source>bill and papers</source>
   <translation>nomenclature et documents</translation>
  </message>
  <message>
   <source>birch plywood 12 mm</source>
   <translation>contreplaqué de bouleau 12 mm</translation>
  </message>
  <message>
   <source>birch plywood 18 mm</source>
   <translation>contreplaqué de bouleau 18 mm</translation>
  </message>
  <message>
   <source>books</source>
   <translation>livres</translation>
  </message>
  <message>
   <source>bottom</source>
   <translation>fond bas</translation>
  </message>
  <message>
   <source>bottom-corner roller slide, three-quarter extension</source>
   <translation>coulisse à galets sous la caisse, sortie trois quarts</translation>
  </message>
  <message>
   <source>box room (mm)</source>
   <translation>débarras (mm)</translation>
  </message>
  <message>
   <source>bracket that hangs a 1 1/4 in pole under a panel</source>
   <translation>support qui suspend une tringle de 1 1/4 in sous un panneau</translation>
  </message>
  <message>
   <source>bracket that hangs a 27 mm rod under a panel</source>
   <translation>support qui suspend une tringle de 27 mm sous un panneau</translation>
  </message>
  <message>
   <source>bracket that hangs a 30 mm rod under a panel</source>
   <translation>support qui suspend une tringle de 30 mm sous un panneau</translation>
  </message>
  <message>
   <source>brick</source>
   <translation>brique</translation>
  </message>
  <message>
   <source>budget</source>
   <translation>durée</translation>
  </message>
  <message>
   <source>butt hinge 60 mm with its screws</source>
   <translation>charnière 60 mm avec ses vis</translation>
  </message>
  <message>
   <source>butt, screwed</source>
   <translation>d'about, vissé</translation>
  </message>
  <message>
   <source>by its kind</source>
   <translation>selon son type</translation>
  </message>
  <message>
   <source>by readings</source>
   <translation>par mesures</translation>
  </message>
  <message>
   <source>by rule</source>
   <translation>par règle</translation>
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation>par vis ou clous à travers les côtés</translation>
  </message>
  <message>
   <source>by sizes</source>
   <translation>par dimensions</translation>
  </message>
  <message>
   <source>by the gap</source>
   <translation>selon le jeu</translation>
  </message>
  <message>
   <source>by the inside width</source>
   <translation>selon la largeur intérieure</translation>
  </message>
  <message>
   <source>by the opening</source>
   <translation>selon l'ouverture</translation>
  </message>
  <message>
   <source>cancelled</source>
   <translation>annulé</translation>
  </message>
  <message>
   <source>cannot be built</source>
   <translation>irréalisable</translation>
  </message>
  <message>
   <source>cannot be right</source>
   <translation>impossible</translation>
  </message>
  <message>
   <source>cantilever</source>
   <translation>porte-à-faux</translation>
  </message>
  <message>
   <source>carcass</source>
   <translation>caisson</translation>
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation>chambranle et plinthe du mur</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catalogue</translation>
  </message>
  <message>
   <source>ceiling</source>
   <translation>plafond</translation>
  </message>
  <message>
   <source>centimetres, to 1 mm</source>
   <translation>centimètres, à 1 mm</translation>
  </message>
  <message>
   <source>centre rail under the box</source>
   <translation>coulisse centrale sous la caisse</translation>
  </message>
  <message>
   <source>cheapest</source>
   <translation>le moins cher</translation>
  </message>
  <message>
   <source>checks</source>
   <translation>contrôles</translation>
  </message>
  <message>
   <source>child's reach</source>
   <translation>portée d'enfant</translation>
  </message>
  <message>
   <source>children-unknown</source>
   <translation>children-unknown</translation>
  </message>
  <message>
   <source>chipboard screw 3.5 x 16 mm</source>
   <translation>vis à aggloméré 3.5 x 16 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 20 mm</source>
   <translation>vis à aggloméré 4 x 20 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 25 mm</source>
   <translation>vis à aggloméré 4 x 25 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 30 mm</source>
   <translation>vis à aggloméré 4 x 30 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 40 mm</source>
   <translation>vis à aggloméré 4 x 40 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 50 mm</source>
   <translation>vis à aggloméré 4 x 50 mm</translation>
  </message>
  <message>
   <source>choose a file</source>
   <translation>choisir un fichier</translation>
  </message>
  <message>
   <source>choose a folder</source>
   <translation>choisir un dossier</translation>
  </message>
  <message>
   <source>clamped</source>
   <translation>encastré</translation>
  </message>
  <message>
   <source>cleat</source>
   <translation>tasseau</translation>
  </message>
  <message>
   <source>cleats</source>
   <translation>tasseaux</translation>
  </message>
  <message>
   <source>clock</source>
   <translation>horloge</translation>
  </message>
  <message>
   <source>closet</source>
   <translation>placard</translation>
  </message>
  <message>
   <source>components</source>
   <translation>composants</translation>
  </message>
  <message>
   <source>concealed hinge for a 35 mm cup, with its plate</source>
   <translation>charnière invisible à cuvette de 35 mm, avec son embase</translation>
  </message>
  <message>
   <source>concealed hinge, 35 mm cup, opens 110 degrees</source>
   <translation>charnière invisible, cuvette 35 mm, ouverture 110 degrés</translation>
  </message>
  <message>
   <source>concealed undermount slide, full extension</source>
   <translation>coulisse invisible sous caisse, sortie totale</translation>
  </message>
  <message>
   <source>concealed wide-angle hinge for a 35 mm cup, with its plate</source>
   <translation>charnière invisible grand angle à cuvette de 35 mm, avec son embase</translation>
  </message>
  <message>
   <source>concealed wide-angle hinge, 35 mm cup, opens 165 degrees</source>
   <translation>charnière invisible grand angle, cuvette 35 mm, ouverture 165 degrés</translation>
  </message>
  <message>
   <source>concrete</source>
   <translation>béton</translation>
  </message>
  <message>
   <source>contents</source>
   <translation>contenu</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>étagère d'angle</translation>
  </message>
  <message>
   <source>crosscut</source>
   <translation>coupe en travers</translation>
  </message>
  <message>
   <source>cut from above</source>
   <translation>coupe de dessus</translation>
  </message>
  <message>
   <source>cut from the front</source>
   <translation>coupe de face</translation>
  </message>
  <message>
   <source>cut from the left</source>
   <translation>coupe de gauche</translation>
  </message>
  <message>
   <source>cut from the right</source>
   <translation>coupe de droite</translation>
  </message>
  <message>
   <source>cut layout</source>
   <translation>plan de débit</translation>
  </message>
  <message>
   <source>cutting.txt; cutting/, {} pictures</source>
   <translation>cutting.txt ; cutting/, {} images</translation>
  </message>
  <message>
   <source>damaged place {}</source>
   <translation>endroit abîmé {}</translation>
  </message>
  <message>
   <source>danger</source>
   <translation>danger</translation>
  </message>
  <message>
   <source>dangers</source>
   <translation>dangers</translation>
  </message>
  <message>
   <source>dangers and warnings</source>
   <translation>dangers et avertissements</translation>
  </message>
  <message>
   <source>dead space</source>
   <translation>espace perdu</translation>
  </message>
  <message>
   <source>decimal inches, to 0.001</source>
   <translation>pouces décimaux, à 0.001</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>profondeur</translation>
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation>diagonale en élévation</translation>
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation>diagonale en plan</translation>
  </message>
  <message>
   <source>divider</source>
   <translation>montant intermédiaire</translation>
  </message>
  <message>
   <source>done</source>
   <translation>fait</translation>
  </message>
  <message>
   <source>door</source>
   <translation>porte</translation>
  </message>
  <message>
   <source>doors</source>
   <translation>portes</translation>
  </message>
  <message>
   <source>double</source>
   <translation>double</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>douteux</translation>
  </message>
  <message>
   <source>doubts</source>
   <translation>doutes</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>tourillons</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>arrière de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>fond de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>avant de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>côté de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer slide, 10 in, a pair</source>
   <translation>coulisse de tiroir, 10 in, la paire</translation>
  </message>
  <message>
   <source>drawer slide, 24 in, a pair</source>
   <translation>coulisse de tiroir, 24 in, la paire</translation>
  </message>
  <message>
   <source>drawer slide, 250 mm, a pair</source>
   <translation>coulisse de tiroir, 250 mm, la paire</translation>
  </message>
  <message>
   <source>drawer slide, 600 mm, a pair</source>
   <translation>coulisse de tiroir, 600 mm, la paire</translation>
  </message>
  <message>
   <source>drawers</source>
   <translation>tiroirs</translation>
  </message>
  <message>
   <source>drawings</source>
   <translation>dessins</translation>
  </message>
  <message>
   <source>drill</source>
   <translation>foret</translation>
  </message>
  <message>
   <source>drilling</source>
   <translation>perçage</translation>
  </message>
  <message>
   <source>drop</source>
   <translation>abaissement</translation>
  </message>
  <message>
   <source>edge-glued pine panel 18 mm</source>
   <translation>panneau lamellé-collé de pin 18 mm</translation>
  </message>
  <message>
   <source>edge-glued pine panel 27 mm</source>
   <translation>panneau lamellé-collé de pin 27 mm</translation>
  </message>
  <message>
   <source>edit {} and give it a width that leaves room for another</source>
   <translation>modifier {} et lui donner une largeur qui laisse place à un autre</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>vide</translation>
  </message>
  <message>
   <source>end</source>
   <translation>bout</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>volume utile</translation>
  </message>
  <message>
   <source>equal</source>
   <translation>égal</translation>
  </message>
  <message>
   <source>everything</source>
   <translation>tout</translation>
  </message>
  <message>
   <source>everything, each part too</source>
   <translation>tout, chaque pièce aussi</translation>
  </message>
  <message>
   <source>existing</source>
   <translation>existant</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>meuble existant</translation>
  </message>
  <message>
   <source>expected {}, give or take {}</source>
   <translation>attendu {}, à {} près</translation>
  </message>
  <message>
   <source>exploded</source>
   <translation>éclaté</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>pieds</translation>
  </message>
  <message>
   <source>fewest</source>
   <translation>le moins</translation>
  </message>
  <message>
   <source>file</source>
   <translation>fichier</translation>
  </message>
  <message>
   <source>filler</source>
   <translation>fileur</translation>
  </message>
  <message>
   <source>filler strip</source>
   <translation>bande de fileur</translation>
  </message>
  <message>
   <source>fillers</source>
   <translation>fileurs</translation>
  </message>
  <message>
   <source>finishing nail 1.8 x 40 mm</source>
   <translation>pointe tête perdue 1.8 x 40 mm</translation>
  </message>
  <message>
   <source>finishing nail 2.0 x 50 mm</source>
   <translation>pointe tête perdue 2.0 x 50 mm</translation>
  </message>
  <message>
   <source>first</source>
   <translation>premier</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>étagère fixe</translation>
  </message>
  <message>
   <source>flanges</source>
   <translation>platines</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>à plat</translation>
  </message>
  <message>
   <source>floor</source>
   <translation>sol</translation>
  </message>
  <message>
   <source>flush with the side</source>
   <translation>au nu du côté</translation>
  </message>
  <message>
   <source>folder</source>
   <translation>dossier</translation>
  </message>
  <message>
   <source>follows from readings in the room</source>
   <translation>découle de mesures dans la pièce</translation>
  </message>
  <message>
   <source>free</source>
   <translation>libre</translation>
  </message>
  <message>
   <source>free in the closet</source>
   <translation>libre dans le placard</translation>
  </message>
  <message>
   <source>from above</source>
   <translation>de dessus</translation>
  </message>
  <message>
   <source>from front to rear</source>
   <translation>d'avant en arrière</translation>
  </message>
  <message>
   <source>from the front</source>
   <translation>de face</translation>
  </message>
  <message>
   <source>from the side</source>
   <translation>de côté</translation>
  </message>
  <message>
   <source>front</source>
   <translation>avant</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>retombée avant</translation>
  </message>
  <message>
   <source>front wall</source>
   <translation>mur avant</translation>
  </message>
  <message>
   <source>fronts</source>
   <translation>façades</translation>
  </message>
  <message>
   <source>ft-in</source>
   <translation>ft-in</translation>
  </message>
  <message>
   <source>full</source>
   <translation>complet</translation>
  </message>
  <message>
   <source>full overlay</source>
   <translation>applique totale</translation>
  </message>
  <message>
   <source>general</source>
   <translation>général</translation>
  </message>
  <message>
   <source>grain along</source>
   <translation>fil selon</translation>
  </message>
  <message>
   <source>groove</source>
   <translation>rainure</translation>
  </message>
  <message>
   <source>guide</source>
   <translation>guide</translation>
  </message>
  <message>
   <source>half lap</source>
   <translation>mi-bois</translation>
  </message>
  <message>
   <source>half overlay</source>
   <translation>semi-applique</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>tringle</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 1 1/4 in pole</source>
   <translation>naissance fermée pour tringle de 1 1/4 in</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 27 mm tube</source>
   <translation>naissance fermée pour tube de 27 mm</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 30 mm tube</source>
   <translation>naissance fermée pour tube de 30 mm</translation>
  </message>
  <message>
   <source>hanging rod socket for 1 1/4 in pole</source>
   <translation>support d'extrémité pour tringle de 1 1/4 in</translation>
  </message>
  <message>
   <source>hanging rod support for 27 mm tube</source>
   <translation>support intermédiaire pour tube de 27 mm</translation>
  </message>
  <message>
   <source>hanging rod support for 30 mm tube</source>
   <translation>support intermédiaire pour tube de 30 mm</translation>
  </message>
  <message>
   <source>hanging rod, aluminium tube 30 x 1.5 mm, 2 m</source>
   <translation>tringle, tube d'aluminium 30 x 1.5 mm, 2 m</translation>
  </message>
  <message>
   <source>hanging rod, oak pole 1 1/4 in, 8 ft</source>
   <translation>tringle, bois rond de chêne 1 1/4 in, 8 ft</translation>
  </message>
  <message>
   <source>hanging rod, pine pole 1 1/4 in, 8 ft</source>
   <translation>tringle, bois rond de pin 1 1/4 in, 8 ft</translation>
  </message>
  <message>
   <source>hanging rod, steel tube 27 x 1.2 mm, 2.5 m</source>
   <translation>tringle, tube d'acier 27 x 1.2 mm, 2.5 m</translation>
  </message>
  <message>
   <source>hardboard</source>
   <translation>panneau dur</translation>
  </message>
  <message>
   <source>hardboard 3.2 mm</source>
   <translation>panneau dur 3.2 mm</translation>
  </message>
  <message>
   <source>hardboard 6 mm</source>
   <translation>panneau dur 6 mm</translation>
  </message>
  <message>
   <source>has sizes that I give</source>
   <translation>a des dimensions que je donne</translation>
  </message>
  <message>
   <source>height</source>
   <translation>hauteur</translation>
  </message>
  <message>
   <source>height of the opening</source>
   <translation>hauteur de l'ouverture</translation>
  </message>
  <message>
   <source>height over the opening</source>
   <translation>hauteur au-dessus de l'ouverture</translation>
  </message>
  <message>
   <source>heights</source>
   <translation>hauteurs</translation>
  </message>
  <message>
   <source>help</source>
   <translation>aide</translation>
  </message>
  <message>
   <source>hinged at the left</source>
   <translation>articulée à gauche</translation>
  </message>
  <message>
   <source>hinged at the right</source>
   <translation>articulée à droite</translation>
  </message>
  <message>
   <source>hollow block</source>
   <translation>bloc creux</translation>
  </message>
  <message>
   <source>home</source>
   <translation>maison</translation>
  </message>
  <message>
   <source>icons</source>
   <translation>icônes</translation>
  </message>
  <message>
   <source>in</source>
   <translation>fond</translation>
  </message>
  <message>
   <source>in a groove all round</source>
   <translation>en rainure tout autour</translation>
  </message>
  <message>
   <source>in grooves</source>
   <translation>en rainures</translation>
  </message>
  <message>
   <source>in steps of</source>
   <translation>par pas de</translation>
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
   <translation>encastré</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>assemblage</translation>
  </message>
  <message>
   <source>just inside the front</source>
   <translation>juste derrière l'avant</translation>
  </message>
  <message>
   <source>kept for</source>
   <translation>gardé pour</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>trait de scie</translation>
  </message>
  <message>
   <source>layout</source>
   <translation>plan de débit</translation>
  </message>
  <message>
   <source>lean</source>
   <translation>dévers</translation>
  </message>
  <message>
   <source>left</source>
   <translation>gauche</translation>
  </message>
  <message>
   <source>left by</source>
   <translation>laissé par</translation>
  </message>
  <message>
   <source>length</source>
   <translation>longueur</translation>
  </message>
  <message>
   <source>length from</source>
   <translation>longueur de</translation>
  </message>
  <message>
   <source>let in under the back</source>
   <translation>encastré sous le dos</translation>
  </message>
  <message>
   <source>levelling shim, tapered</source>
   <translation>cale biaise de mise à niveau</translation>
  </message>
  <message>
   <source>lid</source>
   <translation>abattant</translation>
  </message>
  <message>
   <source>lid support that holds at any height, no adjustment</source>
   <translation>compas d'abattant tenant à toute hauteur, sans réglage</translation>
  </message>
  <message>
   <source>light</source>
   <translation>éclairage</translation>
  </message>
  <message>
   <source>light-clearance</source>
   <translation>light-clearance</translation>
  </message>
  <message>
   <source>limit {}</source>
   <translation>limite {}</translation>
  </message>
  <message>
   <source>linen</source>
   <translation>linge</translation>
  </message>
  <message>
   <source>long</source>
   <translation>long</translation>
  </message>
  <message>
   <source>look</source>
   <translation>regarder</translation>
  </message>
  <message>
   <source>lower</source>
   <translation>inférieur</translation>
  </message>
  <message>
   <source>material</source>
   <translation>matériau</translation>
  </message>
  <message>
   <source>melamine iron-on band 0.4 mm</source>
   <translation>chant mélaminé thermocollant 0.4 mm</translation>
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation>panneau de particules mélaminé</translation>
  </message>
  <message>
   <source>metres, to 1 mm</source>
   <translation>mètres, à 1 mm</translation>
  </message>
  <message>
   <source>millimetres, to 0.1 mm</source>
   <translation>millimètres, à 0.1 mm</translation>
  </message>
  <message>
   <source>millimetres, to 1 mm</source>
   <translation>millimètres, à 1 mm</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>manquant</translation>
  </message>
  <message>
   <source>most</source>
   <translation>au plus</translation>
  </message>
  <message>
   <source>moulding</source>
   <translation>moulure</translation>
  </message>
  <message>
   <source>mullion</source>
   <translation>montant central</translation>
  </message>
  <message>
   <source>must not be empty</source>
   <translation>ne doit pas être vide</translation>
  </message>
  <message>
   <source>nail</source>
   <translation>clou</translation>
  </message>
  <message>
   <source>nails</source>
   <translation>clous</translation>
  </message>
  <message>
   <source>name</source>
   <translation>nom</translation>
  </message>
  <message>
   <source>next</source>
   <translation>suivant</translation>
  </message>
  <message>
   <source>no</source>
   <translation>non</translation>
  </message>
  <message>
   <source>no carcass</source>
   <translation>aucun caisson</translation>
  </message>
  <message>
   <source>no choice costs less</source>
   <translation>aucun choix ne coûte moins</translation>
  </message>
  <message>
   <source>no choice takes less length; prices are lacking</source>
   <translation>aucun choix ne prend moins de longueur ; des prix manquent</translation>
  </message>
  <message>
   <source>no closet</source>
   <translation>aucun placard</translation>
  </message>
  <message>
   <source>no document</source>
   <translation>aucun document</translation>
  </message>
  <message>
   <source>no light</source>
   <translation>pas d'éclairage</translation>
  </message>
  <message>
   <source>no limit</source>
   <translation>sans limite</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>aucun plan n'en achète moins</translation>
  </message>
  <message>
   <source>no plan needs fewer</source>
   <translation>aucun plan n'en demande moins</translation>
  </message>
  <message>
   <source>nobody named</source>
   <translation>personne n'est nommé</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>encore aucun</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>non vérifié</translation>
  </message>
  <message>
   <source>not checked by others</source>
   <translation>non contrôlé par d'autres</translation>
  </message>
  <message>
   <source>not checked: {}</source>
   <translation>non vérifié : {}</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>inconnu</translation>
  </message>
  <message>
   <source>not measured</source>
   <translation>non mesuré</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>non planifié</translation>
  </message>
  <message>
   <source>not proved: at least {}</source>
   <translation>non prouvé : au moins {}</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>non indiqué</translation>
  </message>
  <message>
   <source>not taken</source>
   <translation>non pris</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>non écrit</translation>
  </message>
  <message>
   <source>note</source>
   <translation>remarque</translation>
  </message>
  <message>
   <source>notes</source>
   <translation>remarques</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>rien</translation>
  </message>
  <message>
   <source>nothing found</source>
   <translation>rien trouvé</translation>
  </message>
  <message>
   <source>nothing to cut</source>
   <translation>rien à couper</translation>
  </message>
  <message>
   <source>oak pole</source>
   <translation>tringle ronde en chêne</translation>
  </message>
  <message>
   <source>oak pole 1 1/4 in</source>
   <translation>tringle ronde en chêne 1 1/4 in</translation>
  </message>
  <message>
   <source>obstacle {}</source>
   <translation>obstacle {}</translation>
  </message>
  <message>
   <source>obstacles</source>
   <translation>obstacles</translation>
  </message>
  <message>
   <source>of the thickness</source>
   <translation>de l'épaisseur</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>chute</translation>
  </message>
  <message>
   <source>offcuts</source>
   <translation>chutes</translation>
  </message>
  <message>
   <source>old-paint</source>
   <translation>old-paint</translation>
  </message>
  <message>
   <source>on cleats</source>
   <translation>sur tasseaux</translation>
  </message>
  <message>
   <source>on pins</source>
   <translation>sur taquets</translation>
  </message>
  <message>
   <source>on top of its supports</source>
   <translation>sur ses supports</translation>
  </message>
  <message>
   <source>open</source>
   <translation>ouvert</translation>
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation>lampe nue ou partiellement fermée, ou suspension</translation>
  </message>
  <message>
   <source>others</source>
   <translation>autres</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>périmé</translation>
  </message>
  <message>
   <source>over the lintel: {}, {} l</source>
   <translation>au-dessus du linteau : {}, {} l</translation>
  </message>
  <message>
   <source>over the sides</source>
   <translation>sur les côtés</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>étagère du dessus</translation>
  </message>
  <message>
   <source>overhang</source>
   <translation>débord</translation>
  </message>
  <message>
   <source>overlap</source>
   <translation>recouvrement</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>panneau</translation>
  </message>
  <message>
   <source>panel nail 1.6 x 25 mm</source>
   <translation>pointe à panneau 1.6 x 25 mm</translation>
  </message>
  <message>
   <source>panel {}</source>
   <translation>panneau {}</translation>
  </message>
  <message>
   <source>panels</source>
   <translation>panneaux</translation>
  </message>
  <message>
   <source>papers</source>
   <translation>documents</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>parts/, {} drawings</source>
   <translation>parts/, {} dessins</translation>
  </message>
  <message>
   <source>past the side</source>
   <translation>au-delà du côté</translation>
  </message>
  <message>
   <source>pictures</source>
   <translation>images</translation>
  </message>
  <message>
   <source>pine board 1x4</source>
   <translation>planche de pin 1x4</translation>
  </message>
  <message>
   <source>pine board 1x6</source>
   <translation>planche de pin 1x6</translation>
  </message>
  <message>
   <source>pine pole</source>
   <translation>tringle ronde en pin</translation>
  </message>
  <message>
   <source>pine pole 1 1/4 in</source>
   <translation>tringle ronde en pin 1 1/4 in</translation>
  </message>
  <message>
   <source>place</source>
   <translation>place</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>plan</translation>
  </message>
  <message>
   <source>planned</source>
   <translation>planifié</translation>
  </message>
  <message>
   <source>plaster on lath</source>
   <translation>plâtre sur lattis</translation>
  </message>
  <message>
   <source>plastic band 0.5 mm</source>
   <translation>chant plastique 0.5 mm</translation>
  </message>
  <message>
   <source>plastic band 1 mm</source>
   <translation>chant plastique 1 mm</translation>
  </message>
  <message>
   <source>plastic band 2 mm</source>
   <translation>chant plastique 2 mm</translation>
  </message>
  <message>
   <source>pocket screw 4 x 32 mm, coarse thread, washer head</source>
   <translation>vis en biais 4 x 32 mm, gros filet, tête à embase</translation>
  </message>
  <message>
   <source>pocket screws</source>
   <translation>vis en biais</translation>
  </message>
  <message>
   <source>porch (inches)</source>
   <translation>porche (pouces)</translation>
  </message>
  <message>
   <source>proved</source>
   <translation>prouvé</translation>
  </message>
  <message>
   <source>pull or knob with its screws</source>
   <translation>poignée ou bouton avec ses vis</translation>
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation>mettre un relevé dans le groupe du placard</translation>
  </message>
  <message>
   <source>quarter round</source>
   <translation>quart-de-rond</translation>
  </message>
  <message>
   <source>quarter round 12 mm, pine</source>
   <translation>quart-de-rond 12 mm, pin</translation>
  </message>
  <message>
   <source>quarter round 19 mm, pine</source>
   <translation>quart-de-rond 19 mm, pin</translation>
  </message>
  <message>
   <source>rabbet</source>
   <translation>feuillure</translation>
  </message>
  <message>
   <source>rail</source>
   <translation>traverse</translation>
  </message>
  <message>
   <source>readings that do not agree</source>
   <translation>mesures qui ne concordent pas</translation>
  </message>
  <message>
   <source>rear</source>
   <translation>arrière</translation>
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation>lampe fermée ou LED, encastrée</translation>
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation>fluorescent, encastré</translation>
  </message>
  <message>
   <source>resources</source>
   <translation>ressources</translation>
  </message>
  <message>
   <source>return beside the opening</source>
   <translation>retour de mur à côté de l'ouverture</translation>
  </message>
  <message>
   <source>right</source>
   <translation>droite</translation>
  </message>
  <message>
   <source>rip</source>
   <translation>coupe en long</translation>
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation>coupes en long et en travers</translation>
  </message>
  <message>
   <source>rips only</source>
   <translation>coupes en long seules</translation>
  </message>
  <message>
   <source>rise</source>
   <translation>montée</translation>
  </message>
  <message>
   <source>rods</source>
   <translation>tringles</translation>
  </message>
  <message>
   <source>room</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>rules</source>
   <translation>règles</translation>
  </message>
  <message>
   <source>screw</source>
   <translation>vis</translation>
  </message>
  <message>
   <source>screw cover cap, self-adhesive, 12 mm</source>
   <translation>cache-vis autocollant, 12 mm</translation>
  </message>
  <message>
   <source>screws</source>
   <translation>vis</translation>
  </message>
  <message>
   <source>scribe</source>
   <translation>marge d'ajustage</translation>
  </message>
  <message>
   <source>scribe moulding 20 x 6 mm, pine</source>
   <translation>couvre-joint d'ajustage 20 x 6 mm, pin</translation>
  </message>
  <message>
   <source>scribe moulding 32 x 6 mm, pine</source>
   <translation>couvre-joint d'ajustage 32 x 6 mm, pin</translation>
  </message>
  <message>
   <source>scribe moulding 45 x 8 mm, pine</source>
   <translation>couvre-joint d'ajustage 45 x 8 mm, pin</translation>
  </message>
  <message>
   <source>seconds</source>
   <translation>secondes</translation>
  </message>
  <message>
   <source>seeing</source>
   <translation>voir</translation>
  </message>
  <message>
   <source>setback</source>
   <translation>retrait</translation>
  </message>
  <message>
   <source>shared</source>
   <translation>partagé</translation>
  </message>
  <message>
   <source>sheets</source>
   <translation>panneaux bruts</translation>
  </message>
  <message>
   <source>sheets/, {} drawings</source>
   <translation>sheets/, {} dessins</translation>
  </message>
  <message>
   <source>shelf pin 5 mm</source>
   <translation>taquet d'étagère 5 mm</translation>
  </message>
  <message>
   <source>shelf-use</source>
   <translation>shelf-use</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>cale</translation>
  </message>
  <message>
   <source>shims</source>
   <translation>cales</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>étagère à chaussures</translation>
  </message>
  <message>
   <source>short</source>
   <translation>court</translation>
  </message>
  <message>
   <source>side</source>
   <translation>côté</translation>
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension</source>
   <translation>coulisse latérale à billes, sortie totale</translation>
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension, inch lengths</source>
   <translation>coulisse latérale à billes, sortie totale, longueurs en pouces</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 12 in</source>
   <translation>coulisse de tiroir latérale à sortie totale, 12 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 14 in</source>
   <translation>coulisse de tiroir latérale à sortie totale, 14 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 16 in</source>
   <translation>coulisse de tiroir latérale à sortie totale, 16 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 18 in</source>
   <translation>coulisse de tiroir latérale à sortie totale, 18 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 20 in</source>
   <translation>coulisse de tiroir latérale à sortie totale, 20 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 22 in</source>
   <translation>coulisse de tiroir latérale à sortie totale, 22 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 300 mm</source>
   <translation>coulisse de tiroir latérale à sortie totale, 300 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 350 mm</source>
   <translation>coulisse de tiroir latérale à sortie totale, 350 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 400 mm</source>
   <translation>coulisse de tiroir latérale à sortie totale, 400 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 450 mm</source>
   <translation>coulisse de tiroir latérale à sortie totale, 450 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 500 mm</source>
   <translation>coulisse de tiroir latérale à sortie totale, 500 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 550 mm</source>
   <translation>coulisse de tiroir latérale à sortie totale, 550 mm</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>appuis simples</translation>
  </message>
  <message>
   <source>sockets</source>
   <translation>supports de tringle</translation>
  </message>
  <message>
   <source>softwood stud 2x4 (38 x 89 mm)</source>
   <translation>montant résineux 2x4 (38 x 89 mm)</translation>
  </message>
  <message>
   <source>solid lumber</source>
   <translation>bois massif</translation>
  </message>
  <message>
   <source>spot</source>
   <translation>endroit</translation>
  </message>
  <message>
   <source>stages</source>
   <translation>passes</translation>
  </message>
  <message>
   <source>start</source>
   <translation>début</translation>
  </message>
  <message>
   <source>steel angle bracket 60 x 60 x 40 mm with its screws</source>
   <translation>équerre en acier 60 x 60 x 40 mm avec ses vis</translation>
  </message>
  <message>
   <source>steel studs</source>
   <translation>montants d'ossature en acier</translation>
  </message>
  <message>
   <source>steel tube</source>
   <translation>tube d'acier</translation>
  </message>
  <message>
   <source>steel tube 27 x 1.2 mm</source>
   <translation>tube d'acier 27 x 1.2 mm</translation>
  </message>
  <message>
   <source>stiff</source>
   <translation>rigide</translation>
  </message>
  <message>
   <source>stile</source>
   <translation>montant</translation>
  </message>
  <message>
   <source>stop</source>
   <translation>butée</translation>
  </message>
  <message>
   <source>store</source>
   <translation>magasin</translation>
  </message>
  <message>
   <source>strip</source>
   <translation>bande</translation>
  </message>
  <message>
   <source>studs-unknown</source>
   <translation>studs-unknown</translation>
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation>lampe fermée ou LED, en saillie</translation>
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation>fluorescent, en saillie</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>relevé</translation>
  </message>
  <message>
   <source>the material's own</source>
   <translation>celui du matériau</translation>
  </message>
  <message>
   <source>the same board</source>
   <translation>le même panneau</translation>
  </message>
  <message>
   <source>the whole closet</source>
   <translation>tout le placard</translation>
  </message>
  <message>
   <source>there</source>
   <translation>là</translation>
  </message>
  <message>
   <source>there is no sheet</source>
   <translation>il n'y a pas de panneau brut ici</translation>
  </message>
  <message>
   <source>tick one at least</source>
   <translation>en cocher au moins un</translation>
  </message>
  <message>
   <source>tidy</source>
   <translation>simplifier</translation>
  </message>
  <message>
   <source>to</source>
   <translation>à</translation>
  </message>
  <message>
   <source>to the wall</source>
   <translation>au mur</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>retrait de plinthe</translation>
  </message>
  <message>
   <source>together</source>
   <translation>assemblé</translation>
  </message>
  <message>
   <source>tongue and groove</source>
   <translation>rainure et languette</translation>
  </message>
  <message>
   <source>top</source>
   <translation>dessus</translation>
  </message>
  <message>
   <source>translations</source>
   <translation>traductions</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation>deux charges égales aux quarts extérieurs</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation>deux charges égales aux quarts extérieurs, flèche sous une charge</translation>
  </message>
  <message>
   <source>two sliding panels</source>
   <translation>deux panneaux coulissants</translation>
  </message>
  <message>
   <source>uniform</source>
   <translation>uniforme</translation>
  </message>
  <message>
   <source>up</source>
   <translation>haut</translation>
  </message>
  <message>
   <source>upper</source>
   <translation>supérieur</translation>
  </message>
  <message>
   <source>upright</source>
   <translation>sur chant</translation>
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation>contreplaqué tout plis</translation>
  </message>
  <message>
   <source>veneer-core plywood 1/2 in (15/32 category)</source>
   <translation>contreplaqué tout plis 1/2 in (catégorie 15/32)</translation>
  </message>
  <message>
   <source>veneer-core plywood 1/4 in</source>
   <translation>contreplaqué tout plis 1/4 in</translation>
  </message>
  <message>
   <source>veneer-core plywood 12 mm</source>
   <translation>contreplaqué tout plis 12 mm</translation>
  </message>
  <message>
   <source>veneer-core plywood 18 mm</source>
   <translation>contreplaqué tout plis 18 mm</translation>
  </message>
  <message>
   <source>veneer-core plywood 3/4 in (23/32 category)</source>
   <translation>contreplaqué tout plis 3/4 in (catégorie 23/32)</translation>
  </message>
  <message>
   <source>veneer-core plywood 6 mm</source>
   <translation>contreplaqué tout plis 6 mm</translation>
  </message>
  <message>
   <source>view</source>
   <translation>vue</translation>
  </message>
  <message>
   <source>volume</source>
   <translation>volume</translation>
  </message>
  <message>
   <source>waiting</source>
   <translation>en attente</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>mur</translation>
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
   <translation>murs</translation>
  </message>
  <message>
   <source>warning</source>
   <translation>avertissement</translation>
  </message>
  <message>
   <source>warnings</source>
   <translation>avertissements</translation>
  </message>
  <message>
   <source>washer 20 mm across, for screws to 6 mm</source>
   <translation>rondelle de 20 mm, pour vis jusqu'à 6 mm</translation>
  </message>
  <message>
   <source>what does not go in</source>
   <translation>ce qui n'entre pas</translation>
  </message>
  <message>
   <source>what is not checked</source>
   <translation>ce qui n'est pas vérifié</translation>
  </message>
  <message>
   <source>what is selected</source>
   <translation>ce qui est choisi</translation>
  </message>
  <message>
   <source>what is shown</source>
   <translation>ce qui est affiché</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 16 mm</source>
   <translation>panneau de particules mélaminé blanc 16 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 18 mm</source>
   <translation>panneau de particules mélaminé blanc 18 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 19 mm</source>
   <translation>panneau de particules mélaminé blanc 19 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 3/4 in</source>
   <translation>panneau de particules mélaminé blanc 3/4 in</translation>
  </message>
  <message>
   <source>whole</source>
   <translation>entier</translation>
  </message>
  <message>
   <source>width</source>
   <translation>largeur</translation>
  </message>
  <message>
   <source>width first</source>
   <translation>largeur d'abord</translation>
  </message>
  <message>
   <source>width from</source>
   <translation>largeur de</translation>
  </message>
  <message>
   <source>width of the opening</source>
   <translation>largeur de l'ouverture</translation>
  </message>
  <message>
   <source>width that is left</source>
   <translation>largeur restante</translation>
  </message>
  <message>
   <source>wood screw 5 x 70 mm</source>
   <translation>vis à bois 5 x 70 mm</translation>
  </message>
  <message>
   <source>wood screw 5 x 90 mm</source>
   <translation>vis à bois 5 x 90 mm</translation>
  </message>
  <message>
   <source>wood screw 6 x 100 mm</source>
   <translation>vis à bois 6 x 100 mm</translation>
  </message>
  <message>
   <source>wood screw No. 10 x 3 in</source>
   <translation>vis à bois n° 10 x 3 in</translation>
  </message>
  <message>
   <source>wood screw No. 8 x 1 1/4 in</source>
   <translation>vis à bois n° 8 x 1 1/4 in</translation>
  </message>
  <message>
   <source>wood screw No. 8 x 2 in</source>
   <translation>vis à bois n° 8 x 2 in</translation>
  </message>
  <message>
   <source>wood studs</source>
   <translation>montants d'ossature en bois</translation>
  </message>
  <message>
   <source>wood veneer iron-on band 0.6 mm</source>
   <translation>chant placage bois thermocollant 0.6 mm</translation>
  </message>
  <message>
   <source>wooden runner, box on wood</source>
   <translation>coulisseau en bois, caisse sur bois</translation>
  </message>
  <message>
   <source>write no file</source>
   <translation>n'écrire aucun fichier</translation>
  </message>
  <message>
   <source>written</source>
   <translation>écrit</translation>
  </message>
  <message>
   <source>wrong</source>
   <translation>faux</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>oui</translation>
  </message>
  <message>
   <source>{} % of it is controlled by other readings; w = {}</source>
   <translation>{} % en est contrôlé par d'autres mesures ; w = {}</translation>
  </message>
  <message>
   <source>{} behind what is met first</source>
   <translation>{} derrière ce qui est rencontré d'abord</translation>
  </message>
  <message>
   <source>{} components, {} parts, {:.1f} kg</source>
   <translation>{} composants, {} pièces, {:.1f} kg</translation>
  </message>
  <message>
   <source>{} dangers</source>
   <translation>{} dangers</translation>
  </message>
  <message>
   <source>{} does not go in: {}.</source>
   <translation>{} n'entre pas : {}.</translation>
  </message>
  <message>
   <source>{} drawings written to {}</source>
   <translation>{} dessins écrits dans {}</translation>
  </message>
  <message>
   <source>{} goes in: {}.</source>
   <translation>{} entre : {}.</translation>
  </message>
  <message>
   <source>{} is cut</source>
   <translation>{} est débité</translation>
  </message>
  <message>
   <source>{} names are left out: their parts are hidden from here, or there is no room. Turn or zoom the view, or pull the parts apart.</source>
   <translation>{} noms sont omis : leurs pièces sont cachées d'ici, ou la place manque. Tourner ou zoomer la vue, ou éclater les pièces.</translation>
  </message>
  <message>
   <source>{} not checked</source>
   <translation>{} non vérifiés</translation>
  </message>
  <message>
   <source>{} notes</source>
   <translation>{} remarques</translation>
  </message>
  <message>
   <source>{} of {}</source>
   <translation>{} sur {}</translation>
  </message>
  <message>
   <source>{} of {} cannot open all the way.</source>
   <translation>{} sur {} ne s'ouvrent pas jusqu'au bout.</translation>
  </message>
  <message>
   <source>{} of {}: {}
{} x {}, yield {:.0%}</source>
   <translation>{} sur {} : {}
{} x {}, rendement {:.0%}</translation>
  </message>
  <message>
   <source>{} parts, {:.1f} kg</source>
   <translation>{} pièces, {:.1f} kg</translation>
  </message>
  <message>
   <source>{} pictures written to {}</source>
   <translation>{} images écrites dans {}</translation>
  </message>
  <message>
   <source>{} solids, each with its name, where it stands; millimetres.</source>
   <translation>{} solides, chacun avec son nom, à sa place ; millimètres.</translation>
  </message>
  <message>
   <source>{} warnings</source>
   <translation>{} avertissements</translation>
  </message>
  <message>
   <source>{} {} deep</source>
   <translation>{} {} de profondeur</translation>
  </message>
  <message>
   <source>{}, by length: {} ({})</source>
   <translation>{}, par longueur : {} ({})</translation>
  </message>
  <message>
   <source>{}: 1 sheet, yield {:.0%} ({})</source>
   <translation>{} : 1 panneau brut, rendement {:.0%} ({})</translation>
  </message>
  <message>
   <source>{}: measured from the corner with the dot.</source>
   <translation>{} : mesuré depuis le coin marqué d'un point.</translation>
  </message>
  <message>
   <source>{}: measured from the end with the dot.</source>
   <translation>{} : mesuré depuis le bout marqué d'un point.</translation>
  </message>
  <message>
   <source>{}: {count} sheets, yield {:.0%} ({})</source>
   <translation>{} : {count} panneaux bruts, rendement {:.0%} ({})</translation>
  </message>
  <message>
   <source>{}: {} and {}</source>
   <translation>{} : {} et {}</translation>
  </message>
  <message>
   <source>{}: {} expected</source>
   <translation>{} : {} attendu</translation>
  </message>
  <message>
   <source>{}: {} sheets so far, at least {} needed</source>
   <translation>{} : {} panneaux bruts jusqu'ici, au moins {} nécessaires</translation>
  </message>
  <message>
   <source>{}: {} x {}, at {} and {}</source>
   <translation>{} : {} x {}, à {} et {}</translation>
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
   <translation>✓ oui</translation>
  </message>
  <message>
   <source>✗ no</source>
   <translation>✗ non</translation>
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
   <translation>Ajouter une travée</translation>
  </message>
  <message>
   <source>Divide the selected carcass once more: a bay beside the selected one, or at the right</source>
   <translation>Diviser encore le caisson choisi : une travée à côté de celle choisie, ou à droite</translation>
  </message>
  <message>
   <source>Select the carcass, or the bay beside which to divide it.</source>
   <translation>Choisir le caisson, ou la travée à côté de laquelle le diviser.</translation>
  </message>
  <message>
   <source>There is no carcass in this document: add one first.</source>
   <translation>Il n'y a pas de caisson dans ce document : en ajouter un d'abord.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bench</name>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation>Un banc dans une travée d'un caisson, ou libre dans le placard</translation>
  </message>
  <message>
   <source>Bench…</source>
   <translation>Banc…</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Façade</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Dessus</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bill</name>
  <message>
   <source>Bill of materials…</source>
   <translation>Nomenclature…</translation>
  </message>
  <message>
   <source>Show and write the cut list, what to buy, the groove set-ups and the findings</source>
   <translation>Afficher et écrire la liste de débit, les achats, les réglages de rainure et les constats</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_BillSheet</name>
  <message>
   <source>Bill as a spreadsheet</source>
   <translation>Nomenclature en feuille de calcul</translation>
  </message>
  <message>
   <source>Keep the bill in the document as a spreadsheet that follows every change; formulas can use its cells</source>
   <translation>Garder la nomenclature dans le document comme feuille de calcul qui suit chaque modification ; des formules peuvent utiliser ses cellules</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_BoxRoom</name>
  <message>
   <source>Example: the box room at number nine</source>
   <translation>Exemple : le débarras du numéro neuf</translation>
  </message>
  <message>
   <source>Open an example in millimetres; its readings and sizes are invented</source>
   <translation>Ouvrir un exemple en millimètres ; ses mesures et dimensions sont inventées</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Carcass</name>
  <message>
   <source>Add a carcass with its sides, dividers, shelves, back and base to the closet</source>
   <translation>Ajouter au placard un caisson avec côtés, montants intermédiaires, étagères, dos et socle</translation>
  </message>
  <message>
   <source>Carcass…</source>
   <translation>Caisson…</translation>
  </message>
  <message>
   <source>Select the closet that the carcass is for.</source>
   <translation>Choisir le placard auquel le caisson est destiné.</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>Il n'y a pas de placard dans ce document : en commencer un d'abord.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Checks</name>
  <message>
   <source>Checks…</source>
   <translation>Contrôles…</translation>
  </message>
  <message>
   <source>See what is dangerous, doubtful or not checked in a closet, and what to do about it</source>
   <translation>Voir ce qui est dangereux, douteux ou non vérifié dans un placard, et que faire</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Contents</name>
  <message>
   <source>Contents</source>
   <translation>Contenu</translation>
  </message>
  <message>
   <source>Put drawers, doors, rods and the like into a closet</source>
   <translation>Placer tiroirs, portes, tringles et autres dans un placard</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_CornerShelves</name>
  <message>
   <source>Corner shelves…</source>
   <translation>Étagères d'angle…</translation>
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation>Étagères d'une pièce dans un angle du fond</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Doors</name>
  <message>
   <source>A door, or a pair, in front of one compartment</source>
   <translation>Une porte, ou une paire, devant une case</translation>
  </message>
  <message>
   <source>Doors…</source>
   <translation>Portes…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Drawers</name>
  <message>
   <source>A bank of drawers in one compartment, with slides and fronts</source>
   <translation>Un bloc de tiroirs dans une case, avec coulisses et façades</translation>
  </message>
  <message>
   <source>Drawers…</source>
   <translation>Tiroirs…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Drawing</name>
  <message>
   <source>Drawing page…</source>
   <translation>Page de dessin…</translation>
  </message>
  <message>
   <source>Make a page to print with the front, the plan and sections of the closet and their sizes</source>
   <translation>Faire une page à imprimer avec la face, le plan et les coupes du placard et leurs cotes</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Duplicate</name>
  <message>
   <source>Copy the selected component into the next free place; a carcass comes with what is in it</source>
   <translation>Copier l'élément sélectionné à la prochaine place libre ; un caisson vient avec ce qu'il contient</translation>
  </message>
  <message>
   <source>Duplicate</source>
   <translation>Dupliquer</translation>
  </message>
  <message>
   <source>Select the carcass, component or panel to copy, or a part of it.</source>
   <translation>Sélectionner le caisson, l'élément ou le panneau à copier, ou une de ses pièces.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Dxf</name>
  <message>
   <source>Export DXF…</source>
   <translation>Exporter en DXF…</translation>
  </message>
  <message>
   <source>Write drawings of the cut layout, of each sheet or of each part</source>
   <translation>Écrire les dessins du plan de débit, de chaque panneau brut ou de chaque pièce</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Examples</name>
  <message>
   <source>Examples</source>
   <translation>Exemples</translation>
  </message>
  <message>
   <source>Open an example closet in a document of its own</source>
   <translation>Ouvrir un placard d'exemple dans son propre document</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Existing</name>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation>Un coffre ou meuble de réemploi, intégré tel quel</translation>
  </message>
  <message>
   <source>Existing piece…</source>
   <translation>Meuble existant…</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Dessus</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_FaceFrame</name>
  <message>
   <source>Face frame…</source>
   <translation>Cadre de façade…</translation>
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation>Montants et traverses devant un caisson</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Fillers</name>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation>Fileurs, ajustages et moulures qui ferment les jeux avec murs, plafond et sol</translation>
  </message>
  <message>
   <source>Fillers…</source>
   <translation>Fileurs…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_GoesIn</name>
  <message>
   <source>Does it go in…</source>
   <translation>Est-ce que ça entre…</translation>
  </message>
  <message>
   <source>See whether the selected pieces, or all, come in through the opening, and play how</source>
   <translation>Voir si les meubles choisis, ou tous, entrent par l'ouverture, et jouer comment</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Guide</name>
  <message>
   <source>Show or close the list that says what is done, what is next and what is wrong</source>
   <translation>Afficher ou fermer le panneau qui dit ce qui est fait, ce qui suit et ce qui ne va pas</translation>
  </message>
  <message>
   <source>Steps of the work</source>
   <translation>Étapes du travail</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Help</name>
  <message>
   <source>Back</source>
   <translation>Retour</translation>
  </message>
  <message>
   <source>Closet help</source>
   <translation>Aide sur le placard</translation>
  </message>
  <message>
   <source>Read what each command is for, what to enter and what comes out</source>
   <translation>Lire à quoi sert chaque commande, ce qu'il faut saisir et ce qui en sort</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Language</name>
  <message>
   <source>en</source>
   <translation>fr</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Layout</name>
  <message>
   <source>Lay out the sheets…</source>
   <translation>Planifier les panneaux bruts…</translation>
  </message>
  <message>
   <source>Plan which sheets to buy and how to rip and crosscut them into the closet's parts</source>
   <translation>Planifier quels panneaux bruts acheter et comment les couper en long et en travers pour les pièces du placard</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Look</name>
  <message>
   <source>Look inside…</source>
   <translation>Regarder dedans…</translation>
  </message>
  <message>
   <source>Pull the closet apart in the view, play its assembly, cut it open, hide kinds of parts or show their names</source>
   <translation>Éclater le placard dans la vue, jouer son montage, le couper, masquer des types de pièces ou montrer leurs noms</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Offcuts</name>
  <message>
   <source>List the offcuts that are at hand, to be used before anything is bought</source>
   <translation>Lister les chutes disponibles, à employer avant tout achat</translation>
  </message>
  <message>
   <source>Offcuts at hand…</source>
   <translation>Chutes disponibles…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Opens</name>
  <message>
   <source>Show the space that drawers, pull-outs, doors and lids open into, and what they hit</source>
   <translation>Afficher l'espace où s'ouvrent tiroirs, éléments coulissants, portes et abattants, et ce qu'ils heurtent</translation>
  </message>
  <message>
   <source>What opens…</source>
   <translation>Ce qui s'ouvre…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_OverShelf</name>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation>Une étagère au-dessus des caissons, de mur à mur</translation>
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation>Étagère du dessus…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Panel</name>
  <message>
   <source>Add a single panel with grooves, rabbets and edge bands</source>
   <translation>Ajouter un panneau seul avec rainures, feuillures et chants</translation>
  </message>
  <message>
   <source>Grooved panel…</source>
   <translation>Panneau rainuré…</translation>
  </message>
  <message>
   <source>Select the closet that the panel is for.</source>
   <translation>Choisir le placard auquel le panneau est destiné.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Papers</name>
  <message>
   <source> and </source>
   <translation> et </translation>
  </message>
  <message>
   <source>1 DANGER: read this before anything is cut, carried or filled; {0}</source>
   <translation>1 DANGER : à lire avant de couper, porter ou remplir quoi que ce soit ; {0}</translation>
  </message>
  <message>
   <source>1 sheet</source>
   <translation>1 panneau brut</translation>
  </message>
  <message>
   <source>A reading at a return or behind a baseboard is taken above it. Doubtful readings are found when all of them are entered; a reading taken twice by two people is found sooner.</source>
   <translation>Une mesure à un retour de mur ou derrière une plinthe se prend au-dessus. Les mesures douteuses se voient quand toutes sont saisies ; prises deux fois par deux personnes, elles se voient plus tôt.</translation>
  </message>
  <message>
   <source>Anchor to the structure; local codes and a licensed professional come first.</source>
   <translation>Ancrer à la structure ; les règles locales et un professionnel agréé priment.</translation>
  </message>
  <message>
   <source>Cut by length</source>
   <translation>Coupé à longueur</translation>
  </message>
  <message>
   <source>Cut from bars</source>
   <translation>Coupé dans des barres</translation>
  </message>
  <message>
   <source>DANGER</source>
   <translation>DANGER</translation>
  </message>
  <message>
   <source>DANGER: {0}</source>
   <translation>DANGER : {0}</translation>
  </message>
  <message>
   <source>Each cut: its number, as on the picture of the sheet; the piece that is sawn; the fence, which is what stays between fence (or straightedge) and blade; what lies at the fence after the cut, and what is left.</source>
   <translation>Chaque coupe : son numéro, comme sur l'image du panneau ; la pièce que l'on scie ; la cote au guide, c'est-à-dire ce qui reste entre le guide (ou la règle) et la lame ; ce qui se trouve au guide après la coupe, et ce qui reste.</translation>
  </message>
  <message>
   <source>Fasten the work, wear eye and ear protection, feed against the bit's turn and take deep grooves in several steps of depth; the machine's own manual goes before this list.</source>
   <translation>Fixer la pièce, porter une protection des yeux et des oreilles, avancer contre la rotation de la fraise et faire les rainures profondes en plusieurs passes de profondeur ; la notice de la machine prime sur cette liste.</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Constats</translation>
  </message>
  <message>
   <source>First {0}: {1}.</source>
   <translation>D'abord {0} : {1}.</translation>
  </message>
  <message>
   <source>Groove set-ups</source>
   <translation>Réglages de rainurage</translation>
  </message>
  <message>
   <source>Materials</source>
   <translation>Matériaux</translation>
  </message>
  <message>
   <source>Measure on site before anything is cut; exact sizes are in the bill.</source>
   <translation>Mesurer sur place avant toute coupe ; les cotes exactes sont dans la nomenclature.</translation>
  </message>
  <message>
   <source>NOTE: {0}</source>
   <translation>REMARQUE : {0}</translation>
  </message>
  <message>
   <source>One piece after the other from the same end; mark each one after the cut before it, then the kerf needs no arithmetic.</source>
   <translation>Une pièce après l'autre depuis le même bout ; tracer chacune après la coupe précédente, ainsi le trait de scie ne demande aucun calcul.</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <source>Purchases</source>
   <translation>Achats</translation>
  </message>
  <message>
   <source>Reused</source>
   <translation>Réemployé</translation>
  </message>
  <message>
   <source>Saw to the cut size; the finished size has the edge bands on, and positions are measured from the finished rims. Columns in mm are exact, those without are rounded.</source>
   <translation>Scier à la cote de débit ; la cote finie comprend les chants, et les positions se mesurent depuis les rives finies. Les colonnes en mm sont exactes, les autres sont arrondies.</translation>
  </message>
  <message>
   <source>Support the sheet on both sides of the cut, clamp the straightedge, set the blade just through; eyes, ears and lungs protected; the saw's own manual goes before this list. Mark a part from the one it must meet wherever you can, and check the first cut before the others.</source>
   <translation>Soutenir le panneau des deux côtés de la coupe, serrer la règle, régler la lame pour qu'elle dépasse à peine ; yeux, oreilles et poumons protégés ; la notice de la scie prime sur cette liste. Tracer une pièce sur celle qu'elle doit rejoindre chaque fois que possible, et vérifier la première coupe avant les autres.</translation>
  </message>
  <message>
   <source>Survey: {0}</source>
   <translation>Relevé : {0}</translation>
  </message>
  <message>
   <source>Then take the readings in the order of their numbers; read each to the tape's nearest step, and write down what you read, not what you expect.</source>
   <translation>Ensuite prendre les mesures dans l'ordre de leurs numéros ; lire chacune à la graduation la plus proche du mètre, et noter ce qu'on lit, non ce qu'on attend.</translation>
  </message>
  <message>
   <source>WARNING: {0}</source>
   <translation>AVERTISSEMENT : {0}</translation>
  </message>
  <message>
   <source>Ways to buy</source>
   <translation>Façons d'acheter</translation>
  </message>
  <message>
   <source>What must stay clear (pipe, socket, beam), from the front left corner: x to the right, y into the depth, z up  ·  [[survey.obstacle]]  ·  Obstacles</source>
   <translation>Ce qui doit rester dégagé (tuyau, prise, poutre), depuis le coin avant gauche : x à droite, y en profondeur, z en haut  ·  [[survey.obstacle]]  ·  Obstacles</translation>
  </message>
  <message>
   <source>a cheaper choice may exist</source>
   <translation>un choix moins cher peut exister</translation>
  </message>
  <message>
   <source>a plan with less may be possible</source>
   <translation>un plan avec moins est peut-être possible</translation>
  </message>
  <message>
   <source>access</source>
   <translation>accès</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>étagère réglable</translation>
  </message>
  <message>
   <source>allows for the mitre at its end: mark the long point, {0}, at the wall</source>
   <translation>tient compte de l'onglet à la fin : marquer la pointe longue, {0}, au mur</translation>
  </message>
  <message>
   <source>allows for the mitre at its start and end: mark the long point, {0}, at the wall</source>
   <translation>tient compte des onglets au début et à la fin : marquer la pointe longue, {0}, au mur</translation>
  </message>
  <message>
   <source>allows for the mitre at its start: mark the long point, {0}, at the wall</source>
   <translation>tient compte de l'onglet au début : marquer la pointe longue, {0}, au mur</translation>
  </message>
  <message>
   <source>along the end</source>
   <translation>le long de la fin</translation>
  </message>
  <message>
   <source>along the front</source>
   <translation>le long de l'avant</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>dans la longueur</translation>
  </message>
  <message>
   <source>along the rear</source>
   <translation>le long de l'arrière</translation>
  </message>
  <message>
   <source>along the start</source>
   <translation>le long du début</translation>
  </message>
  <message>
   <source>along the width</source>
   <translation>dans la largeur</translation>
  </message>
  <message>
   <source>any way</source>
   <translation>indifférent</translation>
  </message>
  <message>
   <source>arrow: grain</source>
   <translation>flèche : sens du fil</translation>
  </message>
  <message>
   <source>as it is: greatest width, depth and height</source>
   <translation>tel quel : largeur, profondeur et hauteur maximales</translation>
  </message>
  <message>
   <source>at hand: {0}</source>
   <translation>disponible : {0}</translation>
  </message>
  <message>
   <source>at home</source>
   <translation>à la maison</translation>
  </message>
  <message>
   <source>at least {0} needed</source>
   <translation>au moins {0} nécessaires</translation>
  </message>
  <message>
   <source>at the fence then</source>
   <translation>ensuite au guide</translation>
  </message>
  <message>
   <source>at the store</source>
   <translation>au magasin</translation>
  </message>
  <message>
   <source>back</source>
   <translation>dos</translation>
  </message>
  <message>
   <source>band end</source>
   <translation>chant fin</translation>
  </message>
  <message>
   <source>band front</source>
   <translation>chant avant</translation>
  </message>
  <message>
   <source>band rear</source>
   <translation>chant arrière</translation>
  </message>
  <message>
   <source>band start</source>
   <translation>chant début</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>barre</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>cadre de socle</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>face du banc</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>cadre du banc</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>dessus du banc</translation>
  </message>
  <message>
   <source>best found</source>
   <translation>meilleur trouvé</translation>
  </message>
  <message>
   <source>bit mm</source>
   <translation>fraise mm</translation>
  </message>
  <message>
   <source>blue: at the store; red: at home; fence: what stays between fence or straightedge and blade</source>
   <translation>bleu : au magasin ; rouge : à la maison ; cote au guide : ce qui reste entre le guide ou la règle et la lame</translation>
  </message>
  <message>
   <source>board</source>
   <translation>planche</translation>
  </message>
  <message>
   <source>bottom</source>
   <translation>fond bas</translation>
  </message>
  <message>
   <source>bought m²</source>
   <translation>m² achetés</translation>
  </message>
  <message>
   <source>bring to size first: {0}</source>
   <translation>mettre d'abord à la cote : {0}</translation>
  </message>
  <message>
   <source>by</source>
   <translation>par</translation>
  </message>
  <message>
   <source>by length</source>
   <translation>à longueur</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catalogue</translation>
  </message>
  <message>
   <source>children</source>
   <translation>enfants</translation>
  </message>
  <message>
   <source>cleat</source>
   <translation>tasseau</translation>
  </message>
  <message>
   <source>component</source>
   <translation>composant</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>étagère d'angle</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>coût</translation>
  </message>
  <message>
   <source>cost each</source>
   <translation>prix unitaire</translation>
  </message>
  <message>
   <source>count</source>
   <translation>nombre</translation>
  </message>
  <message>
   <source>crosscut</source>
   <translation>coupe en travers</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>coupe</translation>
  </message>
  <message>
   <source>cut it out first, the saw on the damaged side: {0}, from the corner that the defects are measured from; the sizes below are of the sound part</source>
   <translation>la découper d'abord, la scie du côté abîmé : {0}, depuis le coin d'où les défauts sont mesurés ; les cotes ci-dessous sont celles de la partie saine</translation>
  </message>
  <message>
   <source>cut length</source>
   <translation>longueur de débit</translation>
  </message>
  <message>
   <source>cut length mm</source>
   <translation>longueur de débit mm</translation>
  </message>
  <message>
   <source>cut width</source>
   <translation>largeur de débit</translation>
  </message>
  <message>
   <source>cut width mm</source>
   <translation>largeur de débit mm</translation>
  </message>
  <message>
   <source>date</source>
   <translation>date</translation>
  </message>
  <message>
   <source>depth mm</source>
   <translation>profondeur mm</translation>
  </message>
  <message>
   <source>divider</source>
   <translation>montant intermédiaire</translation>
  </message>
  <message>
   <source>door</source>
   <translation>porte</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>tourillons</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>arrière de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>fond de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>avant de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>côté de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawn by</source>
   <translation>dessiné par</translation>
  </message>
  <message>
   <source>edge band</source>
   <translation>chant plaqué</translation>
  </message>
  <message>
   <source>edge to be banded</source>
   <translation>rive à plaquer</translation>
  </message>
  <message>
   <source>end aslant: {0}</source>
   <translation>fin en biais : {0}</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>volume utile</translation>
  </message>
  <message>
   <source>every line has a price</source>
   <translation>chaque ligne a un prix</translation>
  </message>
  <message>
   <source>every {0} across the width</source>
   <translation>tous les {0} dans la largeur</translation>
  </message>
  <message>
   <source>every {0} along the length</source>
   <translation>tous les {0} dans la longueur</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>meuble existant</translation>
  </message>
  <message>
   <source>feet and inches</source>
   <translation>pieds et pouces</translation>
  </message>
  <message>
   <source>fence</source>
   <translation>cote au guide</translation>
  </message>
  <message>
   <source>filler</source>
   <translation>fileur</translation>
  </message>
  <message>
   <source>findings</source>
   <translation>constats</translation>
  </message>
  <message>
   <source>first {0} from the start and {1} from the front</source>
   <translation>premier à {0} du début et {1} de l'avant</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>étagère fixe</translation>
  </message>
  <message>
   <source>from</source>
   <translation>de</translation>
  </message>
  <message>
   <source>from {0} on</source>
   <translation>à partir de {0}</translation>
  </message>
  <message>
   <source>front</source>
   <translation>façade</translation>
  </message>
  <message>
   <source>front aslant: {0}</source>
   <translation>avant en biais : {0}</translation>
  </message>
  <message>
   <source>front elevation</source>
   <translation>vue de face</translation>
  </message>
  <message>
   <source>front elevation, plan and sections; sizes between boards are clear</source>
   <translation>vue de face, plan et coupes ; les cotes entre panneaux sont libres</translation>
  </message>
  <message>
   <source>front elevation; heights between shelves and widths of bays are clear</source>
   <translation>vue de face ; hauteurs entre étagères et largeurs de travées sont libres</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>retombée avant</translation>
  </message>
  <message>
   <source>fronts and doors as one faces them; distances are from the left and the lower edge of the rectangle around each</source>
   <translation>façades et portes vues de face ; les distances partent du bord gauche et du bord inférieur du rectangle englobant</translation>
  </message>
  <message>
   <source>gap back,</source>
   <translation>jeu derrière,</translation>
  </message>
  <message>
   <source>gap floor,</source>
   <translation>jeu au sol,</translation>
  </message>
  <message>
   <source>gap left,</source>
   <translation>jeu à gauche,</translation>
  </message>
  <message>
   <source>gap right,</source>
   <translation>jeu à droite,</translation>
  </message>
  <message>
   <source>gap top,</source>
   <translation>jeu en haut,</translation>
  </message>
  <message>
   <source>grain</source>
   <translation>sens du fil</translation>
  </message>
  <message>
   <source>groove</source>
   <translation>rainure</translation>
  </message>
  <message>
   <source>groove for {0}: {1}</source>
   <translation>rainure pour {0} : {1}</translation>
  </message>
  <message>
   <source>groove in the underside</source>
   <translation>rainure en sous-face</translation>
  </message>
  <message>
   <source>grooves</source>
   <translation>rainures</translation>
  </message>
  <message>
   <source>hand saw or mitre saw</source>
   <translation>scie à main ou à onglet</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>tringle</translation>
  </message>
  <message>
   <source>hardware</source>
   <translation>quincaillerie</translation>
  </message>
  <message>
   <source>heaviest</source>
   <translation>le plus lourd</translation>
  </message>
  <message>
   <source>hole</source>
   <translation>trou</translation>
  </message>
  <message>
   <source>hole for {0}</source>
   <translation>trou pour {0}</translation>
  </message>
  <message>
   <source>in the middle of the thickness</source>
   <translation>au milieu de l'épaisseur</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>pouces</translation>
  </message>
  <message>
   <source>keep clear of what is damaged, {0}: all from the same end</source>
   <translation>éviter ce qui est abîmé, {0} : tout depuis le même bout</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>trait de scie</translation>
  </message>
  <message>
   <source>kerf {0}</source>
   <translation>trait de scie {0}</translation>
  </message>
  <message>
   <source>left</source>
   <translation>reste</translation>
  </message>
  <message>
   <source>left edge in by {0} below, {1} above</source>
   <translation>bord gauche en retrait : {0} en bas, {1} en haut</translation>
  </message>
  <message>
   <source>left larger on purpose, the other side smaller by that: {0}</source>
   <translation>laissé plus grand exprès, l'autre côté plus petit d'autant : {0}</translation>
  </message>
  <message>
   <source>left whole: {0}</source>
   <translation>reste entier : {0}</translation>
  </message>
  <message>
   <source>left whole: {0}, and {1} smaller</source>
   <translation>reste entier : {0}, et {1} plus petits</translation>
  </message>
  <message>
   <source>left: {0}</source>
   <translation>reste : {0}</translation>
  </message>
  <message>
   <source>length</source>
   <translation>longueur</translation>
  </message>
  <message>
   <source>length mm</source>
   <translation>longueur mm</translation>
  </message>
  <message>
   <source>lengths</source>
   <translation>longueurs</translation>
  </message>
  <message>
   <source>lid</source>
   <translation>abattant</translation>
  </message>
  <message>
   <source>light</source>
   <translation>éclairage</translation>
  </message>
  <message>
   <source>limit</source>
   <translation>limite</translation>
  </message>
  <message>
   <source>limit {0}</source>
   <translation>limite {0}</translation>
  </message>
  <message>
   <source>load</source>
   <translation>transport</translation>
  </message>
  <message>
   <source>lower edge in by {0} left, {1} right</source>
   <translation>bord inférieur en retrait : {0} à gauche, {1} à droite</translation>
  </message>
  <message>
   <source>lower face</source>
   <translation>face inférieure</translation>
  </message>
  <message>
   <source>lower face up</source>
   <translation>face inférieure dessus</translation>
  </message>
  <message>
   <source>machining</source>
   <translation>usinage</translation>
  </message>
  <message>
   <source>material</source>
   <translation>matériau</translation>
  </message>
  <message>
   <source>measured {0}</source>
   <translation>mesuré {0}</translation>
  </message>
  <message>
   <source>message</source>
   <translation>constat</translation>
  </message>
  <message>
   <source>moulding</source>
   <translation>moulure</translation>
  </message>
  <message>
   <source>mullion</source>
   <translation>montant central</translation>
  </message>
  <message>
   <source>name</source>
   <translation>nom</translation>
  </message>
  <message>
   <source>near side of the bit from the near wall, mm</source>
   <translation>côté proche de la fraise depuis la paroi proche, mm</translation>
  </message>
  <message>
   <source>no bit chosen</source>
   <translation>aucune fraise choisie</translation>
  </message>
  <message>
   <source>no choice costs less</source>
   <translation>aucun choix ne coûte moins</translation>
  </message>
  <message>
   <source>no choice takes less length; prices are lacking</source>
   <translation>aucun choix ne prend moins de longueur ; des prix manquent</translation>
  </message>
  <message>
   <source>no findings</source>
   <translation>aucun constat</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>aucun plan n'achète moins</translation>
  </message>
  <message>
   <source>no.</source>
   <translation>n°</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>not planned yet: plan the cutting to know how many</source>
   <translation>pas encore planifié : planifier le débit pour en connaître le nombre</translation>
  </message>
  <message>
   <source>notch at the end and front corner</source>
   <translation>entaille au coin fin et avant</translation>
  </message>
  <message>
   <source>notch at the end and rear corner</source>
   <translation>entaille au coin fin et arrière</translation>
  </message>
  <message>
   <source>notch at the start and front corner</source>
   <translation>entaille au coin début et avant</translation>
  </message>
  <message>
   <source>notch at the start and rear corner</source>
   <translation>entaille au coin début et arrière</translation>
  </message>
  <message>
   <source>note</source>
   <translation>remarque</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>rien</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>chute</translation>
  </message>
  <message>
   <source>offcut {0}</source>
   <translation>chute {0}</translation>
  </message>
  <message>
   <source>offcuts used</source>
   <translation>chutes employées</translation>
  </message>
  <message>
   <source>others: {0} parts, see the bill</source>
   <translation>autres : {0} pièces, voir la nomenclature</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>étagère du dessus</translation>
  </message>
  <message>
   <source>pack of {0}</source>
   <translation>paquet de {0}</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>panneau</translation>
  </message>
  <message>
   <source>paper</source>
   <translation>papier</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>pièces</translation>
  </message>
  <message>
   <source>passes</source>
   <translation>passes</translation>
  </message>
  <message>
   <source>piece</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>pièces</translation>
  </message>
  <message>
   <source>plan, from above, without what lies over {0}; widths of bays are clear</source>
   <translation>plan, vu de dessus, sans ce qui est au-dessus de {0} ; les largeurs de travées sont libres</translation>
  </message>
  <message>
   <source>plan, without what lies over {0}</source>
   <translation>plan, sans ce qui est au-dessus de {0}</translation>
  </message>
  <message>
   <source>pocket</source>
   <translation>trou de poche</translation>
  </message>
  <message>
   <source>proved to be the cheapest of these sizes</source>
   <translation>prouvé le moins cher pour ces formats</translation>
  </message>
  <message>
   <source>pull</source>
   <translation>poignée</translation>
  </message>
  <message>
   <source>pulled apart, parts and fittings before the carcasses</source>
   <translation>éclaté, pièces et aménagements devant les caissons</translation>
  </message>
  <message>
   <source>rabbet</source>
   <translation>feuillure</translation>
  </message>
  <message>
   <source>rabbet for {0}: {1}</source>
   <translation>feuillure pour {0} : {1}</translation>
  </message>
  <message>
   <source>rail</source>
   <translation>traverse</translation>
  </message>
  <message>
   <source>range</source>
   <translation>dispersion</translation>
  </message>
  <message>
   <source>rear aslant: {0}</source>
   <translation>arrière en biais : {0}</translation>
  </message>
  <message>
   <source>rest mm</source>
   <translation>reste mm</translation>
  </message>
  <message>
   <source>right edge in by {0} below, {1} above</source>
   <translation>bord droit en retrait : {0} en bas, {1} en haut</translation>
  </message>
  <message>
   <source>right through</source>
   <translation>de part en part</translation>
  </message>
  <message>
   <source>rip</source>
   <translation>coupe en long</translation>
  </message>
  <message>
   <source>rip to {0}</source>
   <translation>déligner à {0}</translation>
  </message>
  <message>
   <source>ripped to {0}</source>
   <translation>déligné à {0}</translation>
  </message>
  <message>
   <source>rod</source>
   <translation>tringle</translation>
  </message>
  <message>
   <source>roll</source>
   <translation>rouleau</translation>
  </message>
  <message>
   <source>room</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>rough, off by up to {0}: measure the first strip before the next is cut</source>
   <translation>approximatif, jusqu'à {0} d'écart : mesurer la première bande avant de couper la suivante</translation>
  </message>
  <message>
   <source>rule</source>
   <translation>règle</translation>
  </message>
  <message>
   <source>saw</source>
   <translation>scie</translation>
  </message>
  <message>
   <source>sawn {0} wider to be scribed</source>
   <translation>scié {0} plus large, à ajuster</translation>
  </message>
  <message>
   <source>scale</source>
   <translation>échelle</translation>
  </message>
  <message>
   <source>section {0}–{0}</source>
   <translation>coupe {0}–{0}</translation>
  </message>
  <message>
   <source>severity</source>
   <translation>gravité</translation>
  </message>
  <message>
   <source>sheet</source>
   <translation>panneau brut</translation>
  </message>
  <message>
   <source>sheets</source>
   <translation>panneaux bruts</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>cale</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>étagère à chaussures</translation>
  </message>
  <message>
   <source>side</source>
   <translation>côté</translation>
  </message>
  <message>
   <source>size</source>
   <translation>format</translation>
  </message>
  <message>
   <source>sizes</source>
   <translation>formats</translation>
  </message>
  <message>
   <source>sizes in</source>
   <translation>cotes en</translation>
  </message>
  <message>
   <source>sound part of {0}, its corner at {1} and {2}</source>
   <translation>partie saine de {0}, son coin à {1} et {2}</translation>
  </message>
  <message>
   <source>source</source>
   <translation>source</translation>
  </message>
  <message>
   <source>source: {0}</source>
   <translation>source : {0}</translation>
  </message>
  <message>
   <source>start aslant: {0}</source>
   <translation>début en biais : {0}</translation>
  </message>
  <message>
   <source>stile</source>
   <translation>montant</translation>
  </message>
  <message>
   <source>stopped {0} from the end and squared with a chisel</source>
   <translation>arrêtée à {0} de la fin et équarrie au ciseau</translation>
  </message>
  <message>
   <source>stopped {0} from the front and squared with a chisel</source>
   <translation>arrêtée à {0} de l'avant et équarrie au ciseau</translation>
  </message>
  <message>
   <source>stopped {0} from the rear and squared with a chisel</source>
   <translation>arrêtée à {0} de l'arrière et équarrie au ciseau</translation>
  </message>
  <message>
   <source>stopped {0} from the start and squared with a chisel</source>
   <translation>arrêtée à {0} du début et équarrie au ciseau</translation>
  </message>
  <message>
   <source>strip widths</source>
   <translation>largeurs de bandes</translation>
  </message>
  <message>
   <source>subject</source>
   <translation>objet</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>relevé</translation>
  </message>
  <message>
   <source>take home</source>
   <translation>à emporter</translation>
  </message>
  <message>
   <source>the bit is wider than the groove: take one of at most {0} mm</source>
   <translation>la fraise est plus large que la rainure : en prendre une de {0} mm au plus</translation>
  </message>
  <message>
   <source>the bit stands over the rim</source>
   <translation>la fraise dépasse la rive</translation>
  </message>
  <message>
   <source>the carcasses alone</source>
   <translation>les caissons seuls</translation>
  </message>
  <message>
   <source>the fewest possible</source>
   <translation>le moins possible</translation>
  </message>
  <message>
   <source>the piece clamped; none of the saws can hold or reach it</source>
   <translation>la pièce serrée ; aucune des scies ne peut la tenir ou l'atteindre</translation>
  </message>
  <message>
   <source>the room as measured, empty</source>
   <translation>la pièce telle que mesurée, vide</translation>
  </message>
  <message>
   <source>thickness</source>
   <translation>épaisseur</translation>
  </message>
  <message>
   <source>thickness mm</source>
   <translation>épaisseur mm</translation>
  </message>
  <message>
   <source>title</source>
   <translation>désignation</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>plinthe de socle</translation>
  </message>
  <message>
   <source>tongue</source>
   <translation>languette</translation>
  </message>
  <message>
   <source>top</source>
   <translation>dessus</translation>
  </message>
  <message>
   <source>total</source>
   <translation>total</translation>
  </message>
  <message>
   <source>under each name: a table [[survey.extra]] in the job file  ·  a line of the survey's ExtraReadings in FreeCAD, “Readings taken elsewhere” in its panel</source>
   <translation>sous chaque nom : une table [[survey.extra]] du fichier de travail  ·  une ligne d'ExtraReadings du relevé dans FreeCAD, « Mesures prises ailleurs » dans son panneau</translation>
  </message>
  <message>
   <source>under each name: key in the job file  ·  property of the survey in FreeCAD</source>
   <translation>sous chaque nom : clé dans le fichier de travail  ·  propriété du relevé dans FreeCAD</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>unité</translation>
  </message>
  <message>
   <source>upper edge in by {0} left, {1} right</source>
   <translation>bord supérieur en retrait : {0} à gauche, {1} à droite</translation>
  </message>
  <message>
   <source>upper face</source>
   <translation>face supérieure</translation>
  </message>
  <message>
   <source>upper face up</source>
   <translation>face supérieure dessus</translation>
  </message>
  <message>
   <source>used %</source>
   <translation>utilisé %</translation>
  </message>
  <message>
   <source>value</source>
   <translation>valeur</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>mur</translation>
  </message>
  <message>
   <source>waste</source>
   <translation>perte</translation>
  </message>
  <message>
   <source>weight each kg</source>
   <translation>poids unitaire kg</translation>
  </message>
  <message>
   <source>weight kg</source>
   <translation>poids kg</translation>
  </message>
  <message>
   <source>weight of sheets, boards and bars; hardware and edge band not counted</source>
   <translation>poids des panneaux bruts, planches et barres ; quincaillerie et chant non comptés</translation>
  </message>
  <message>
   <source>what</source>
   <translation>quoi</translation>
  </message>
  <message>
   <source>what to do</source>
   <translation>que faire</translation>
  </message>
  <message>
   <source>width</source>
   <translation>largeur</translation>
  </message>
  <message>
   <source>width mm</source>
   <translation>largeur mm</translation>
  </message>
  <message>
   <source>without 1 line that no price is known for</source>
   <translation>sans 1 ligne dont le prix est inconnu</translation>
  </message>
  <message>
   <source>without {0} lines that no price is known for</source>
   <translation>sans {0} lignes dont le prix est inconnu</translation>
  </message>
  <message>
   <source>work</source>
   <translation>travail</translation>
  </message>
  <message>
   <source>{0} (width x depth x height)</source>
   <translation>{0} (largeur x profondeur x hauteur)</translation>
  </message>
  <message>
   <source>{0} DANGERS: read this before anything is cut, carried or filled; {1}</source>
   <translation>{0} DANGERS : à lire avant de couper, porter ou remplir quoi que ce soit ; {1}</translation>
  </message>
  <message>
   <source>{0} above the lower face</source>
   <translation>à {0} au-dessus de la face inférieure</translation>
  </message>
  <message>
   <source>{0} across</source>
   <translation>{0} de diamètre</translation>
  </message>
  <message>
   <source>{0} along the length, {1} along the width</source>
   <translation>{0} dans la longueur, {1} dans la largeur</translation>
  </message>
  <message>
   <source>{0} at the end</source>
   <translation>{0} à la fin</translation>
  </message>
  <message>
   <source>{0} at the end for {1}</source>
   <translation>{0} à la fin pour {1}</translation>
  </message>
  <message>
   <source>{0} at the front</source>
   <translation>{0} à l'avant</translation>
  </message>
  <message>
   <source>{0} at the front for {1}</source>
   <translation>{0} à l'avant pour {1}</translation>
  </message>
  <message>
   <source>{0} at the rear</source>
   <translation>{0} à l'arrière</translation>
  </message>
  <message>
   <source>{0} at the rear for {1}</source>
   <translation>{0} à l'arrière pour {1}</translation>
  </message>
  <message>
   <source>{0} at the start</source>
   <translation>{0} au début</translation>
  </message>
  <message>
   <source>{0} at the start for {1}</source>
   <translation>{0} au début pour {1}</translation>
  </message>
  <message>
   <source>{0} at {1}</source>
   <translation>{0} à {1}</translation>
  </message>
  <message>
   <source>{0} by the plan, {1} to spare</source>
   <translation>{0} selon le plan, {1} en réserve</translation>
  </message>
  <message>
   <source>{0} deep</source>
   <translation>{0} de profondeur</translation>
  </message>
  <message>
   <source>{0} for {1}</source>
   <translation>{0} pour {1}</translation>
  </message>
  <message>
   <source>{0} from behind</source>
   <translation>{0}, par l'arrière</translation>
  </message>
  <message>
   <source>{0} from the end</source>
   <translation>à {0} de la fin</translation>
  </message>
  <message>
   <source>{0} from the front</source>
   <translation>à {0} de l'avant</translation>
  </message>
  <message>
   <source>{0} from the rear</source>
   <translation>à {0} de l'arrière</translation>
  </message>
  <message>
   <source>{0} from the start</source>
   <translation>à {0} du début</translation>
  </message>
  <message>
   <source>{0} from the start and {1} from the front</source>
   <translation>à {0} du début et {1} de l'avant</translation>
  </message>
  <message>
   <source>{0} holes</source>
   <translation>{0} trous</translation>
  </message>
  <message>
   <source>{0} holes for {1}</source>
   <translation>{0} trous pour {1}</translation>
  </message>
  <message>
   <source>{0} in the end for {1}</source>
   <translation>{0} dans la fin pour {1}</translation>
  </message>
  <message>
   <source>{0} in the front for {1}</source>
   <translation>{0} dans l'avant pour {1}</translation>
  </message>
  <message>
   <source>{0} in the rear for {1}</source>
   <translation>{0} dans l'arrière pour {1}</translation>
  </message>
  <message>
   <source>{0} in the start for {1}</source>
   <translation>{0} dans le début pour {1}</translation>
  </message>
  <message>
   <source>{0} long</source>
   <translation>{0} de long</translation>
  </message>
  <message>
   <source>{0} m of rims and {1} for waste</source>
   <translation>{0} m de rives et {1} pour les pertes</translation>
  </message>
  <message>
   <source>{0} m of rims in {1} strips</source>
   <translation>{0} m de rives en {1} bandes</translation>
  </message>
  <message>
   <source>{0} needed</source>
   <translation>{0} nécessaires</translation>
  </message>
  <message>
   <source>{0} needed: {1}</source>
   <translation>{0} nécessaires : {1}</translation>
  </message>
  <message>
   <source>{0} of sheets, boards and bars to bring home; spares, hardware and edge band not counted</source>
   <translation>{0} de panneaux bruts, planches et barres à rapporter ; réserve, quincaillerie et chant non comptés</translation>
  </message>
  <message>
   <source>{0} of {1}</source>
   <translation>{0} sur {1}</translation>
  </message>
  <message>
   <source>{0} of {1}, yield {2}, {3}</source>
   <translation>{0} × {1}, rendement {2}, {3}</translation>
  </message>
  <message>
   <source>{0} off each end first</source>
   <translation>d'abord {0} à chaque bout</translation>
  </message>
  <message>
   <source>{0} parts, seen from the right, no perspective</source>
   <translation>{0} pièces, vues de la droite, sans perspective</translation>
  </message>
  <message>
   <source>{0} pockets</source>
   <translation>{0} trous de poche</translation>
  </message>
  <message>
   <source>{0} rest</source>
   <translation>{0} reste</translation>
  </message>
  <message>
   <source>{0} sheets</source>
   <translation>{0} panneaux bruts</translation>
  </message>
  <message>
   <source>{0} to {1}</source>
   <translation>{0} à {1}</translation>
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation>{0} affranchi {1}</translation>
  </message>
  <message>
   <source>{0} used</source>
   <translation>{0} utilisé</translation>
  </message>
  <message>
   <source>{0} wide</source>
   <translation>{0} de large</translation>
  </message>
  <message>
   <source>{0} wide, {1} deep</source>
   <translation>{0} de large, {1} de profondeur</translation>
  </message>
  <message>
   <source>{0}, front at the left</source>
   <translation>{0}, avant à gauche</translation>
  </message>
  <message>
   <source>{0}, parts take {1} of {2} m²; parts lie as they are sawn, the machined face up</source>
   <translation>{0}, les pièces prennent {1} de {2} m² ; les pièces sont posées telles que sciées, face usinée dessus</translation>
  </message>
  <message>
   <source>{0}, rounded to {1}</source>
   <translation>{0}, arrondis à {1}</translation>
  </message>
  <message>
   <source>{0}, {1} of them at hand</source>
   <translation>{0}, dont {1} sous la main</translation>
  </message>
  <message>
   <source>{0}: 1 part</source>
   <translation>{0} : 1 pièce</translation>
  </message>
  <message>
   <source>{0}: crosscut to {1}</source>
   <translation>{0} : en travers à {1}</translation>
  </message>
  <message>
   <source>{0}: rip to {1}</source>
   <translation>{0} : en long à {1}</translation>
  </message>
  <message>
   <source>{0}: {1}</source>
   <translation>{0} : {1}</translation>
  </message>
  <message>
   <source>{0}: {1} parts</source>
   <translation>{0} : {1} pièces</translation>
  </message>
  <message>
   <source>{0}: {1}, yield {2}, {3}</source>
   <translation>{0} : {1}, rendement {2}, {3}</translation>
  </message>
  <message>
   <source>{0}; {1} at the high level</source>
   <translation>{0} ; {1} au niveau haut</translation>
  </message>
  <message>
   <source>{1} of {0}</source>
   <translation>{1} × {0}</translation>
  </message>
  <message>
   <source>± Lean, from the low to the high level: + where the wall comes into the closet on its way up. Rise: + where the floor goes up on the way named.</source>
   <translation>± Dévers, du niveau bas au niveau haut : + là où le mur entre dans le placard en montant. Montée : + là où le sol monte sur le trajet nommé.</translation>
  </message>
  <message>
   <source>– {0} from below</source>
   <translation>– {0} depuis le bas</translation>
  </message>
  <message>
   <source>– {0} from the left,</source>
   <translation>– {0} depuis la gauche,</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Pictures</name>
  <message>
   <source>Draw the closet from the front with sizes, from above, at an angle and pulled apart, and save the pictures into a folder</source>
   <translation>Dessiner le placard de face avec cotes, de dessus, en biais et éclaté, et enregistrer les images dans un dossier</translation>
  </message>
  <message>
   <source>Save pictures…</source>
   <translation>Enregistrer les images…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Porch</name>
  <message>
   <source>Example: the porch closet</source>
   <translation>Exemple : le placard du porche</translation>
  </message>
  <message>
   <source>Open an example in inches; its readings and sizes are invented</source>
   <translation>Ouvrir un exemple en pouces ; ses mesures et dimensions sont inventées</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Rods</name>
  <message>
   <source>A hanging rod, or two, in one compartment</source>
   <translation>Une tringle, ou deux, dans une case</translation>
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation>Tringle…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Said</name>
  <message>
   <source> ({0} alike)</source>
   <translation> ({0} identiques)</translation>
  </message>
  <message>
   <source> and may break in time</source>
   <translation> et peut rompre avec le temps</translation>
  </message>
  <message>
   <source> and {0} in the middle</source>
   <translation> et {0} au milieu</translation>
  </message>
  <message>
   <source> of the {0} wall</source>
   <translation> du mur de {0}</translation>
  </message>
  <message>
   <source> of {0} x {1}</source>
   <translation> de {0} x {1}</translation>
  </message>
  <message>
   <source> offcut {0}</source>
   <translation> chute {0}</translation>
  </message>
  <message>
   <source> to the {0}</source>
   <translation> vers la {0}</translation>
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
   <translation>(0 traverse le chant)</translation>
  </message>
  <message>
   <source>+ into the closet on its way up</source>
   <translation>+ vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>+ inward</source>
   <translation>+ vers l'intérieur</translation>
  </message>
  <message>
   <source>+ where it rises</source>
   <translation>+ là où il monte</translation>
  </message>
  <message>
   <source>, as do {0} others</source>
   <translation>, comme {0} autres</translation>
  </message>
  <message>
   <source>, for which a weak board is not strong enough</source>
   <translation>, pour quoi un panneau faible n'est pas assez résistant</translation>
  </message>
  <message>
   <source>, for which it is too soft</source>
   <translation>, pour quoi il est trop tendre</translation>
  </message>
  <message>
   <source>, grain {0}</source>
   <translation>, fil {0}</translation>
  </message>
  <message>
   <source>, its lip glued and screwed on</source>
   <translation>, sa retombée collée et vissée</translation>
  </message>
  <message>
   <source>, or a reading is wrong: {0}</source>
   <translation>, ou une mesure est fausse : {0}</translation>
  </message>
  <message>
   <source>, pines</source>
   <translation>, pins</translation>
  </message>
  <message>
   <source>, wherever the studs are: survey the first</source>
   <translation>, où que soient les montants d'ossature : relever d'abord le premier</translation>
  </message>
  <message>
   <source>, which pulls its screws out</source>
   <translation>, ce qui arrache ses vis</translation>
  </message>
  <message>
   <source>1 divider to carry it</source>
   <translation>1 montant intermédiaire pour la porter</translation>
  </message>
  <message>
   <source>1 opening is</source>
   <translation>1 ouverture est</translation>
  </message>
  <message>
   <source>1 part weighs</source>
   <translation>1 pièce pèse</translation>
  </message>
  <message>
   <source>1 strip</source>
   <translation>1 bande</translation>
  </message>
  <message>
   <source>16 CFR 1213, bunk beds, taken as a guide: nothing is published for closets</source>
   <translation>16 CFR 1213, lits superposés, pris comme guide : rien n'est publié pour les placards</translation>
  </message>
  <message>
   <source>2 or more, or none for no limit</source>
   <translation>2 ou plus, ou rien pour aucune limite</translation>
  </message>
  <message>
   <source>2010 ADA Standards 308.2.1 and 308.3.1; homes are not bound by them</source>
   <translation>2010 ADA Standards 308.2.1 et 308.3.1 ; les logements n'y sont pas tenus</translation>
  </message>
  <message>
   <source>2010 ADA Standards, advisory 308.1, children's reach ranges</source>
   <translation>2010 ADA Standards, advisory 308.1, portées de main des enfants</translation>
  </message>
  <message>
   <source>300 lb a person: International Residential Code Table R301.5 note c, stair treads; no standard for built-in benches was found</source>
   <translation>300 lb par personne : International Residential Code Table R301.5 note c, marches d'escalier ; aucune norme trouvée pour les bancs intégrés</translation>
  </message>
  <message>
   <source>: the kerf takes the next one</source>
   <translation>: le trait de scie prend le suivant</translation>
  </message>
  <message>
   <source>; a screw {0} thick and {1} deep in the face of its own board may hold {2} ({3})</source>
   <translation>; une vis de {0} de diamètre enfoncée de {1} dans la face de son propre panneau peut tenir {2} ({3})</translation>
  </message>
  <message>
   <source>; a thicker bottom, or a batten under its middle</source>
   <translation>; un fond plus épais, ou un tasseau sous son milieu</translation>
  </message>
  <message>
   <source>; each of its {0} pins carries {1}: the pins are not checked ({2})</source>
   <translation>; chacun de ses {0} taquets porte {1} : les taquets ne sont pas vérifiés ({2})</translation>
  </message>
  <message>
   <source>; if its ends could not turn at all, {0}</source>
   <translation>; si ses extrémités ne pouvaient pas du tout tourner, {0}</translation>
  </message>
  <message>
   <source>; measure the {0} next</source>
   <translation>; mesurer ensuite : {0}</translation>
  </message>
  <message>
   <source>; positive where it leans into the closet on its way up</source>
   <translation>; positif s'il penche vers l'intérieur du placard en montant</translation>
  </message>
  <message>
   <source>; sag as you entered it</source>
   <translation>; flèche telle que saisie</translation>
  </message>
  <message>
   <source>; take the {0} as well</source>
   <translation>; prendre aussi : {0}</translation>
  </message>
  <message>
   <source>; the anchors must hold {0}</source>
   <translation>; les ancrages doivent tenir {0}</translation>
  </message>
  <message>
   <source>; the heaviest that it is sold as weighs {0}</source>
   <translation> ; le plus lourd vendu pèse {0}</translation>
  </message>
  <message>
   <source>; the softest boards published would not pass</source>
   <translation>; les panneaux les plus souples publiés ne passeraient pas</translation>
  </message>
  <message>
   <source>; whether the heads pull through this board is not published</source>
   <translation>; rien n'est publié sur l'arrachement des têtes à travers ce panneau</translation>
  </message>
  <message>
   <source>; {0} strips then need {1} sheets, not {2}</source>
   <translation>; {0} bandes demandent alors {1} panneaux bruts, pas {2}</translation>
  </message>
  <message>
   <source>; {0} would sag </source>
   <translation>; {0} fléchirait : </translation>
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation>Une scie circulaire guidée par une règle est à la maison</translation>
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation>Une profondeur donnée par la fraction est arrondie vers le bas à un multiple de ceci</translation>
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation>Une scie sur table est à la maison</translation>
  </message>
  <message>
   <source>ANSI A208.1 class M</source>
   <translation>ANSI A208.1 classe M</translation>
  </message>
  <message>
   <source>APA Panel Design Specification: 16 % moisture or more, 0.85 stiffness, 0.75 strength</source>
   <translation>APA Panel Design Specification : 16 % d'humidité ou plus, rigidité 0.85, résistance 0.75</translation>
  </message>
  <message>
   <source>ASTM D245 as NDS uses it: 2.1 times the 875 psi x 1.1 that spruce-pine-fir No. 2 may carry laid flat (875 psi and 1.1 quoted; 2.1 from memory)</source>
   <translation>ASTM D245 telle que NDS l'emploie : 2.1 fois les 875 psi x 1.1 que l'épicéa-pin-sapin (spruce-pine-fir) No. 2 peut porter à plat (875 psi et 1.1 cités ; 2.1 de mémoire)</translation>
  </message>
  <message>
   <source>ASTM F2057-23 as 16 CFR 1261 (test figures from memory)</source>
   <translation>ASTM F2057-23 comme 16 CFR 1261 (valeurs d'essai de mémoire)</translation>
  </message>
  <message>
   <source>ASTM F963 4.27: no drop of more than 1/2 in (12 mm) from 2 in above closed to 60° (from memory); CPSC: 21 deaths 1973 to 1981</source>
   <translation>ASTM F963 4.27 : pas de chute de plus de 1/2 in (12 mm) de 2 in au-dessus de la fermeture à 60° (de mémoire) ; CPSC : 21 décès de 1973 à 1981</translation>
  </message>
  <message>
   <source>ASTM F963 4.27: two openings, 2 in² together, 6 in apart, opened with 10 lbf (from memory, to be checked); ASTM F2598: from 1.1 ft³</source>
   <translation>ASTM F963 4.27 : deux ouvertures, 2 in² ensemble, distantes de 6 in, ouvrant sous 10 lbf (de mémoire, à vérifier) ; ASTM F2598 : à partir de 1.1 ft³</translation>
  </message>
  <message>
   <source>AWS 2009 takes shelf rests of ANSI/BHMA A156.9 grade 1; ask the maker for the load</source>
   <translation>AWS 2009 prend des taquets d'étagère selon ANSI/BHMA A156.9 grade 1 ; demander la charge au fabricant</translation>
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation>Classe de précision du mètre</translation>
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation>Un autre nombre peut trouver un autre plan</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.21</source>
   <translation>Architectural Woodwork Standards, édition 1 (2009), 1.2.21</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.9</source>
   <translation>Architectural Woodwork Standards, édition 1 (2009), 1.2.9</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.16</source>
   <translation>Architectural Woodwork Standards, édition 1 (2009), 4.4.16</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.18</source>
   <translation>Architectural Woodwork Standards, édition 1 (2009), 4.4.18</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.4.5</source>
   <translation>Architectural Woodwork Standards, édition 1 (2009), 4.4.4.5</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details</source>
   <translation>Architectural Woodwork Standards, édition 1 (2009), détails de mur à mur</translation>
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation>Surface des pièces sur surface des panneaux bruts, en pour cent</translation>
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation>Surface de ceux qui sont rectangulaires, en m²</translation>
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation>Travées qui avaient des objets</translation>
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation>Planches et barres à couper à longueur</translation>
  </message>
  <message>
   <source>CPSC advice on tip-over</source>
   <translation>CPSC, conseils contre le basculement</translation>
  </message>
  <message>
   <source>CSV</source>
   <translation>CSV</translation>
  </message>
  <message>
   <source>Class of this object in the workbench</source>
   <translation>Classe de cet objet dans l'atelier</translation>
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation>Largeur libre ; 0 partage le reste avec les autres travées de ce genre</translation>
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation>Colonnes qui contiennent la nomenclature</translation>
  </message>
  <message>
   <source>Component and name</source>
   <translation>Composant et nom</translation>
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation>Débité dans un panneau conservé d'un meuble existant</translation>
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation>Coupes par panneau brut faites au magasin ; 0 : sans limite</translation>
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation>Rainure la plus profonde permise, en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>Degrees to which the closet's own door opens</source>
   <translation>Degrés jusqu'où s'ouvre la porte du placard lui-même</translation>
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation>Profondeur d'un trou borgne</translation>
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation>Profondeur d'une rainure en fraction de l'épaisseur du panneau</translation>
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation>Profondeur de toutes les rainures ; 0 : par la fraction</translation>
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation>Profondeur d'un volume utile de dimensions données</translation>
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation>Profondeur des rainures ; 0 : par règle</translation>
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation>Profondeur de la plus grande boîte d'aplomb et de niveau qui entre</translation>
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation>Diamètre des trous de taquets</translation>
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation>Diamètre de la fraise disponible ; 0 : non indiqué</translation>
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation>Sens des premières coupes sur un panneau brut entier</translation>
  </message>
  <message>
   <source>E of metal hardly scatters</source>
   <translation>E du métal ne varie guère</translation>
  </message>
  <message>
   <source>EN 14322 (from memory)</source>
   <translation>EN 14322 (de mémoire)</translation>
  </message>
  <message>
   <source>EN 1995-1-1 Tables 2.3 and 3.1 (quoted)</source>
   <translation>EN 1995-1-1 Tables 2.3 et 3.1 (cité)</translation>
  </message>
  <message>
   <source>EN 1995-1-1 service class 1; EN 312, EN 622: boards for dry conditions</source>
   <translation>EN 1995-1-1 classe de service 1 ; EN 312, EN 622 : panneaux pour milieu sec</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 13 to 20 mm</source>
   <translation>EN 312 type P2, plus de 13 à 20 mm</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 20 to 25 mm (from memory)</source>
   <translation>EN 312 type P2, de plus de 20 à 25 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 25 to 32 mm (from memory)</source>
   <translation>EN 312 type P2, de plus de 25 à 32 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 32 to 40 mm (from memory)</source>
   <translation>EN 312 type P2, de plus de 32 à 40 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 40 mm (from memory)</source>
   <translation>EN 312 type P2, plus de 40 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EN 312, EN 622: boards for use in dry conditions</source>
   <translation>EN 312, EN 622 : panneaux utilisés en milieu sec</translation>
  </message>
  <message>
   <source>EN 336 class 2, and PS 20-20 for green lumber</source>
   <translation>EN 336 classe 2, et PS 20-20 pour le bois vert</translation>
  </message>
  <message>
   <source>EN 622-1, MDF (from memory)</source>
   <translation>EN 622-1, MDF (de mémoire)</translation>
  </message>
  <message>
   <source>EN 622-1, hardboard (from memory)</source>
   <translation>EN 622-1, panneau dur (de mémoire)</translation>
  </message>
  <message>
   <source>EN 622-5, over 12 to 19 mm</source>
   <translation>EN 622-5, plus de 12 à 19 mm</translation>
  </message>
  <message>
   <source>EN 622-5, over 19 to 30 mm (from memory)</source>
   <translation>EN 622-5, de plus de 19 à 30 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EN 622-5, over 30 to 45 mm (from memory)</source>
   <translation>EN 622-5, de plus de 30 à 45 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EN 622-5, over 45 mm (from memory)</source>
   <translation>EN 622-5, plus de 45 mm (de mémoire)</translation>
  </message>
  <message>
   <source>EPA 40 CFR 745 (renovation, repair and painting); 16 CFR 1303</source>
   <translation>EPA 40 CFR 745 (rénovation, réparation et peinture) ; 16 CFR 1303</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation>Chant acheté en plus de la longueur des rives, en fraction</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation>Chant des bords avant des étagères, ou de leurs retombées : auto comme le caisson, vide pour aucun, ou une clé du catalogue</translation>
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Chant des bords avant visibles : auto pour celui du matériau, vide pour aucun, ou une clé du catalogue</translation>
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Chant : auto pour celui du matériau, vide pour aucun, ou une clé du catalogue</translation>
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation>Erreur du niveau ou du fil à plomb sur un mètre</translation>
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation>Fichier avec vos matériaux et prix ; vide : seulement ceux fournis</translation>
  </message>
  <message>
   <source>Findings about it</source>
   <translation>Doutes à son sujet</translation>
  </message>
  <message>
   <source>Findings about the design</source>
   <translation>Doutes sur la conception</translation>
  </message>
  <message>
   <source>Findings about the readings</source>
   <translation>Doutes sur les mesures</translation>
  </message>
  <message>
   <source>Finished length</source>
   <translation>Longueur finie</translation>
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation>Longueur finie, chants compris</translation>
  </message>
  <message>
   <source>Finished width</source>
   <translation>Largeur finie</translation>
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation>Largeur finie, chants compris</translation>
  </message>
  <message>
   <source>FreeCAD wrote only part of it</source>
   <translation>FreeCAD n'en a écrit qu'une partie</translation>
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation>D'un panneau fixe au trou le plus proche</translation>
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation>De mur proche à mur proche</translation>
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation>D'un trou au suivant</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation>De cette rive à la paroi proche de la première rainure</translation>
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation>De l'avant du caisson à l'avant du socle</translation>
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation>Du bord avant à la rangée avant</translation>
  </message>
  <message>
   <source>From the left</source>
   <translation>Depuis la gauche</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation>Des bords arrière à la face arrière du dos</translation>
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation>Les rainures s'arrêtent avant un bord avant plaqué et traversent un bord nu</translation>
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation>Rainures, trous et entailles en toutes lettres</translation>
  </message>
  <message>
   <source>Height above the floor of the {0} readings</source>
   <translation>Hauteur au-dessus du sol des mesures : {0}</translation>
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation>Hauteur d'un tasseau</translation>
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation>Hauteur d'une bande devant chaque étagère ; 0 : aucune</translation>
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation>Hauteur d'un volume utile de dimensions données</translation>
  </message>
  <message>
   <source>Height of the base</source>
   <translation>Hauteur du socle</translation>
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation>Hauteur de la plus grande boîte d'aplomb et de niveau qui entre</translation>
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation>Profondeur maximale du volume utile ; 0 : celle de la pièce</translation>
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation>Retrait d'une étagère réglable derrière les bords avant</translation>
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation>De combien un panneau reste en deçà du fond de sa rainure</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation>Retrait des rainures depuis le bord avant ; 0 les fait traverser</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation>De combien les rainures restent à l'écart de l'avant ou du début</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation>De combien les rainures restent à l'écart de l'arrière ou de la fin</translation>
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation>Probabilité que les jeux soient tenus, vu les mesures</translation>
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation>Durée de la recherche de moins de coupes ensuite, par matériau</translation>
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation>Durée de la recherche de moins de panneaux bruts, par matériau</translation>
  </message>
  <message>
   <source>How many there are</source>
   <translation>Combien il y en a</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation>Combien de fois le débit peut changer de sens, le premier compté ; 0 : sans limite</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation>De combien une étagère réglable est plus courte que sa travée</translation>
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation>De combien une rainure est plus large que le panneau qu'elle reçoit</translation>
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation>Nombre de fois que le plan a été dessiné</translation>
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation>Écriture des longueurs dans les textes</translation>
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation>Assemblage du dessus et du fond bas avec les côtés</translation>
  </message>
  <message>
   <source>International Residential Code R602: 16 or 24 in from centre to centre</source>
   <translation>International Residential Code R602 : 16 ou 24 in d'axe en axe</translation>
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation>Ses travées de gauche à droite</translation>
  </message>
  <message>
   <source>JSON</source>
   <translation>JSON</translation>
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation>Clé de son panneau dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation>Clé des panneaux du dos ; vide : par règle</translation>
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation>Clé des panneaux du socle ; vide : comme le caisson</translation>
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation>Clé du panneau dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation>Clé des panneaux dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation>Clé des panneaux qui entrent dans les rainures ; vide : le même</translation>
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation>Clé de la classe de barre dans le catalogue</translation>
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation>Clé des panneaux des bandes ; vide : comme le caisson</translation>
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation>LED ou fluorescent identifié pour l'usage en rangement de placard</translation>
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation>Distance minimale du bord arrière à la rangée arrière</translation>
  </message>
  <message>
   <source>Least gap to keep at the {0}</source>
   <translation>Jeu minimal à garder, côté {0}</translation>
  </message>
  <message>
   <source>Left end at</source>
   <translation>Bout gauche à</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation>Distance du côté gauche à la gauche du volume utile</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation>Distance du côté gauche à la gauche du volume utile, tel que construit</translation>
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation>Longueur à couper dans la barre</translation>
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation>Longueur à scier, sans les chants</translation>
  </message>
  <message>
   <source>MDF: ANSI A208.2 least screw holding (from memory)</source>
   <translation>MDF : ANSI A208.2, tenue minimale des vis (de mémoire)</translation>
  </message>
  <message>
   <source>NDS 12.2.2: 2850·G²·D lb per inch of thread, not in end grain</source>
   <translation>NDS 12.2.2 : 2850·G²·D lb par pouce de filet, pas en bois de bout</translation>
  </message>
  <message>
   <source>NDS 12.2.3: 1380·G^2.5·D lb per inch (quoted), not in end grain</source>
   <translation>NDS 12.2.3 : 1380·G^2.5·D lb par pouce (cité), pas en bois de bout</translation>
  </message>
  <message>
   <source>NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi quoted, 135 psi from memory)</source>
   <translation>NDS Supplement Table 4A, épicéa-pin-sapin (spruce-pine-fir) No. 2 (875 psi cité, 135 psi de mémoire)</translation>
  </message>
  <message>
   <source>NEC 300.4(A)(1): cables may lie 1-1/4 in (32 mm) behind a stud's face (quoted)</source>
   <translation>NEC 300.4(A)(1) : des câbles peuvent passer à 1-1/4 in (32 mm) derrière la face d'un montant d'ossature (cité)</translation>
  </message>
  <message>
   <source>NEC 314.29 (quoted) and 240.24(D)</source>
   <translation>NEC 314.29 (cité) et 240.24(D)</translation>
  </message>
  <message>
   <source>NEC 410.16 and the closet storage space of NEC 410.2: 600 mm from sides and back up to 1.8 m or the highest rod, 300 mm or the shelf's depth above</source>
   <translation>NEC 410.16 et l'espace de rangement de placard de NEC 410.2 : 600 mm depuis les côtés et le fond jusqu'à 1.8 m ou la tringle la plus haute, 300 mm ou la profondeur de l'étagère au-dessus</translation>
  </message>
  <message>
   <source>NEC 410.16(B)</source>
   <translation>NEC 410.16(B)</translation>
  </message>
  <message>
   <source>NIOSH 94-110, hands {0} ahead, {1} up, poor grip</source>
   <translation>NIOSH 94-110, mains à {0} devant, {1} de haut, mauvaise prise</translation>
  </message>
  <message>
   <source>NIOSH 94-110, load constant; size: common practice, no published source</source>
   <translation>NIOSH 94-110, constante de charge ; dimension : usage courant, sans source publiée</translation>
  </message>
  <message>
   <source>NIOSH 94-110, load constant; team lifting: HSE L23 (quoted)</source>
   <translation>NIOSH 94-110, constante de charge ; levage à plusieurs : HSE L23 (cité)</translation>
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation>Nom de la pièce dans son composant</translation>
  </message>
  <message>
   <source>Number of adjustable shelves, loose on pins</source>
   <translation>Nombre d'étagères réglables sur taquets</translation>
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation>Nombre de travées, chacune un objet à part</translation>
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation>Nombre d'étagères fixes</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Nombre de rainures</translation>
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation>Nombre de pièces à débiter dans des panneaux</translation>
  </message>
  <message>
   <source>OSHA 29 CFR 1910.213</source>
   <translation>OSHA 29 CFR 1910.213</translation>
  </message>
  <message>
   <source>OUT OF DATE: the closet has changed since; make the page again</source>
   <translation>PÉRIMÉ : le placard a changé depuis ; refaire la page</translation>
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation>Chutes disponibles</translation>
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation>Un panneau brut de réserve pour autant d'un matériau ; 0 : aucune réserve</translation>
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation>Profondeur extérieure telle que construite</translation>
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation>Profondeur extérieure ; 0 : celle du volume utile</translation>
  </message>
  <message>
   <source>Outer diameter</source>
   <translation>Diamètre extérieur</translation>
  </message>
  <message>
   <source>Outer height as built</source>
   <translation>Hauteur extérieure telle que construite</translation>
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation>Hauteur extérieure, socle compris ; 0 : celle du volume utile</translation>
  </message>
  <message>
   <source>Outer width as built</source>
   <translation>Largeur extérieure telle que construite</translation>
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation>Largeur extérieure ; 0 : ce que laisse le volume utile</translation>
  </message>
  <message>
   <source>PS 1-19, unsanded, and EN 315, sanded</source>
   <translation>PS 1-19, non poncé, et EN 315, poncé</translation>
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation>Des pièces ont été déplacées à la main depuis le plan</translation>
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation>Rang parmi les pièces de son composant</translation>
  </message>
  <message>
   <source>Plan which sheets to take for a list of parts, and how to cut them.</source>
   <translation>Planifier quels panneaux bruts prendre pour une liste de pièces, et comment les débiter.</translation>
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation>Mesures prises ailleurs, telles qu'écrites par le formulaire du relevé</translation>
  </message>
  <message>
   <source>Right end at</source>
   <translation>Bout droit à</translation>
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation>Rives avec un chant, et lequel</translation>
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation>Lignes qui contiennent la nomenclature</translation>
  </message>
  <message>
   <source>STEP file</source>
   <translation>Fichier STEP</translation>
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation>Scies à la place de toutes celles-ci, un texte JSON chacune</translation>
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation>À activer pour replanifier au prochain recalcul</translation>
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation>À activer pour réécrire la nomenclature au prochain recalcul</translation>
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation>Nombre de panneaux bruts d'un matériau jusqu'auquel aucun n'est en réserve</translation>
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation>Panneaux bruts à débiter</translation>
  </message>
  <message>
   <source>Shelf pins</source>
   <translation>Taquets d'étagère</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Se place à l'arrière d'un volume utile plus profond, sinon à l'avant</translation>
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation>Se place à côté du caisson précédent, sinon à X</translation>
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation>Somme de ce qui a un prix, dans la monnaie du catalogue</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation>Enlevé sur chaque rive d'un panneau brut avant de débiter une pièce</translation>
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation>La travée où il se trouve ; vide : par son numéro</translation>
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation>La nomenclature dont les cellules contiennent les lignes</translation>
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation>La nomenclature, une ligne de valeurs séparées par des virgules chacune</translation>
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation>La monnaie du catalogue</translation>
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation>Le placard dont il découle</translation>
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation>Le placard que concerne la nomenclature</translation>
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation>Le placard dont les pièces sont débitées</translation>
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation>Le composant auquel elle appartient</translation>
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation>Le plan de débit dont les panneaux bruts sont achetés ; aucun : pas encore planifié</translation>
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation>La conception, le plan de débit ou le catalogue a changé depuis</translation>
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation>Le bas du volume utile au-dessus de l'angle avant gauche de la pièce</translation>
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation>La face avant du volume utile depuis l'angle avant gauche de la pièce</translation>
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation>La face gauche du volume utile depuis l'angle avant gauche de la pièce</translation>
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation>La face qui porte les rainures</translation>
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation>Le dernier fichier lu, aucun si vide</translation>
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation>Distance de l'avant à l'avant du volume utile, tel que construit</translation>
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation>Les chutes disponibles, un texte JSON chacune</translation>
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation>Les chutes disponibles ; aucune : tout est acheté</translation>
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation>Les pièces, le catalogue ou les réglages ont changé depuis</translation>
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation>Le plan des planches et barres, en données</translation>
  </message>
  <message>
   <source>The plan, as data</source>
   <translation>Le plan, en données</translation>
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation>La rive depuis laquelle les rainures sont mesurées</translation>
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation>Le pas de lecture du mètre</translation>
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation>Le relevé dont il occupe le volume utile</translation>
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation>Les façons d'acheter comparées, en données</translation>
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation>Épaisseur mesurée, sinon telle que vendue</translation>
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation>Épaisseur en mm mesurée, par clé du matériau</translation>
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation>Épaisseur de paroi d'un tube ; 0 : plein</translation>
  </message>
  <message>
   <source>Time-Saver Standards; double hang: common practice, no published source</source>
   <translation>Time-Saver Standards ; double penderie : usage courant, sans source publiée</translation>
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation>Affranchir chaque panneau brut selon Affranchissement, non selon le catalogue</translation>
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation>Dessous de chaque étagère fixe au-dessus du plancher de la travée en mm ; aucun : espaces égaux</translation>
  </message>
  <message>
   <source>Version of this object's properties</source>
   <translation>Version des propriétés de cet objet</translation>
  </message>
  <message>
   <source>W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping</source>
   <translation>W. Baarda, A testing procedure for use in geodetic networks (1968) : data snooping</translation>
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation>Poids en kg ; 0 : inconnu</translation>
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation>Poids de toutes les pièces en kg</translation>
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation>Poids de la pièce finie en kg</translation>
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation>Ce qui porte les étagères fixes</translation>
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation>Ce qui ferme ou contrevente le caisson à l'arrière</translation>
  </message>
  <message>
   <source>What closes the opening</source>
   <translation>Ce qui ferme l'ouverture</translation>
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation>Ce qui le précède dans l'ordre du placard</translation>
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation>Ce qui est connu du lieu et des personnes, tel qu'écrit par son formulaire</translation>
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation>Dans quoi ou devant quoi il se trouve</translation>
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation>Ce qui doit rester entre rainures dos à dos, en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation>Ce qui doit rester dégagé, tel qu'écrit par le formulaire du relevé</translation>
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation>Ce qui doit rester sous un trou borgne</translation>
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation>Ce qui doit être le plus grand dans le volume utile</translation>
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation>Arrondi des longueurs dans les textes, en mm pour les styles métriques, sinon en pouces</translation>
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation>Pour quoi la nomenclature a été écrite</translation>
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation>Ce sur quoi repose le caisson</translation>
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation>De quoi les cellules ont été remplies</translation>
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation>D'où découle le volume utile : les mesures, ou les dimensions données</translation>
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation>Ce qu'est la pièce dans le placard</translation>
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation>Pour quoi le plan a été fait</translation>
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation>De quoi la forme a été faite</translation>
  </message>
  <message>
   <source>What the store saws</source>
   <translation>Ce que le magasin scie</translation>
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation>Où sont les titres et les noms</translation>
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation>Sens du fil</translation>
  </message>
  <message>
   <source>Where the top lies</source>
   <translation>Où se trouve le dessus</translation>
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation>Si un achat n'a pas de prix</translation>
  </message>
  <message>
   <source>Whether the {0} was read</source>
   <translation>Si la mesure a été lue : {0}</translation>
  </message>
  <message>
   <source>Whether {0} is left to the rule</source>
   <translation>Si {0} est laissé à la règle</translation>
  </message>
  <message>
   <source>Who cuts</source>
   <translation>Qui débite</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation>Plus grande distance libre entre entretoises</translation>
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation>Largeur d'un volume utile de dimensions données</translation>
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation>Largeur de la plus grande boîte d'aplomb et de niveau qui entre</translation>
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation>Largeur du trait de la scie</translation>
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation>Largeur à scier, sans les chants</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 Table 5-6: coefficient of variation of E 22 % (from memory)</source>
   <translation>Wood Handbook FPL-GTR-190 Table 5-6 : coefficient de variation de E 22 % (de mémoire)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 chapter 8 (from memory)</source>
   <translation>Wood Handbook FPL-GTR-190 chapitre 8 (de mémoire)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 eq. 13-2 and Table 13-5 (pine, from memory); moisture: common practice</source>
   <translation>Wood Handbook FPL-GTR-190 eq. 13-2 et Table 13-5 (pin, de mémoire) ; humidité : usage courant</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190, eq. 9-2 and Table 9-1</source>
   <translation>Wood Handbook FPL-GTR-190, eq. 9-2 et Table 9-1</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1 (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1 (de mémoire)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, MDF</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, MDF</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, panneau dur (de mémoire)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard, low end (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, panneau dur, bas de la plage (de mémoire)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, particleboard</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, panneau de particules</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, contreplaqué</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood, low end</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, contreplaqué, bas de la plage</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1; birch mill sheets</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1 ; fiches d'usine du bouleau</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 5-3b, softwoods</source>
   <translation>Wood Handbook FPL-GTR-282 Table 5-3b, résineux</translation>
  </message>
  <message>
   <source>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</source>
   <translation>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</translation>
  </message>
  <message>
   <source>a board's price is for one size</source>
   <translation>le prix d'un panneau vaut pour une seule dimension</translation>
  </message>
  <message>
   <source>a cheaper plan may exist</source>
   <translation>il peut exister un plan moins cher</translation>
  </message>
  <message>
   <source>a child of {0} years reaches {1} of {2} shelves and rods</source>
   <translation>un enfant de {0} ans atteint {1} des {2} étagères et tringles</translation>
  </message>
  <message>
   <source>a child shut in gets no air: two openings that no wall, floor or contents can cover, and a lid that opens from inside, with no latch; {0}</source>
   <translation>un enfant enfermé n'a pas d'air : deux ouvertures que ni mur, ni sol, ni contenu ne peuvent couvrir, et un abattant qui s'ouvre de l'intérieur, sans loquet ; {0}</translation>
  </message>
  <message>
   <source>a cleat glued and screwed under the rear edge</source>
   <translation>un tasseau collé et vissé sous le bord arrière</translation>
  </message>
  <message>
   <source>a corner at {0}, {1} mm</source>
   <translation>un coin à {0}, {1} mm</translation>
  </message>
  <message>
   <source>a file with prices must state theirs</source>
   <translation>un fichier avec des prix doit indiquer leur monnaie</translation>
  </message>
  <message>
   <source>a fraction follows whole inches or feet only; {0}</source>
   <translation>une fraction ne suit que des pouces ou pieds entiers ; {0}</translation>
  </message>
  <message>
   <source>a fraction has one number above and one below the slash; {0}</source>
   <translation>une fraction a un nombre au-dessus et un au-dessous de la barre ; {0}</translation>
  </message>
  <message>
   <source>a fraction is read in inches or feet, not in {0}; mark it as inches (72 5/16") or type a decimal (1832.5 mm)</source>
   <translation>une fraction se lit en pouces ou en pieds, pas en {0} ; la marquer en pouces (72 5/16") ou écrire un décimal (1832.5 mm)</translation>
  </message>
  <message>
   <source>a front lip</source>
   <translation>une retombée avant</translation>
  </message>
  <message>
   <source>a joint between two of its pieces lies over no upright: put a batten under it, or make it in other pieces</source>
   <translation>un joint entre deux de ses morceaux n'est sur aucun montant : mettre un tasseau dessous, ou le faire en d'autres morceaux</translation>
  </message>
  <message>
   <source>a length of a bar has no width: give where it starts and ends</source>
   <translation>un bout de barre n'a pas de largeur : indiquer où cela commence et finit</translation>
  </message>
  <message>
   <source>a lighter or narrower leaf, hinges further apart, or longer screws into a doubled side; screws in a board near its edge need pilot holes</source>
   <translation>un vantail plus léger ou plus étroit, des charnières plus espacées, ou des vis plus longues dans un côté doublé ; les vis d'un panneau près de son bord demandent un avant-trou</translation>
  </message>
  <message>
   <source>a new entry must state it; {0}</source>
   <translation>une nouvelle entrée doit l'indiquer ; {0}</translation>
  </message>
  <message>
   <source>a pair, hinged at both sides</source>
   <translation>une paire, articulée des deux côtés</translation>
  </message>
  <message>
   <source>a price must be 0 or more</source>
   <translation>un prix doit valoir 0 ou plus</translation>
  </message>
  <message>
   <source>a rail more under it, a thicker top, or its grain from rail to rail</source>
   <translation>une traverse de plus dessous, un dessus plus épais, ou son fil de traverse à traverse</translation>
  </message>
  <message>
   <source>a strip from cleat to cleat: lower bound theorem of plates; Wood Handbook Table 9-1</source>
   <translation>une bande de tasseau à tasseau : théorème statique (borne inférieure) des plaques ; Wood Handbook Table 9-1</translation>
  </message>
  <message>
   <source>a thicker or stiffer board, shorter legs, or a leg under its front</source>
   <translation>un panneau plus épais ou plus raide, des branches plus courtes, ou un pied sous l'avant</translation>
  </message>
  <message>
   <source>a weak board may break under {0} in time</source>
   <translation>un panneau faible peut rompre sous {0} avec le temps</translation>
  </message>
  <message>
   <source>a weak board may break under {0} in time{1}{2}</source>
   <translation>un panneau faible peut rompre sous {0} avec le temps{1}{2}</translation>
  </message>
  <message>
   <source>a whole sheet{0} {1}{2}</source>
   <translation>un panneau entier{0} {1}{2}</translation>
  </message>
  <message>
   <source>a {0} must state it</source>
   <translation>un {0} doit l'indiquer</translation>
  </message>
  <message>
   <source>above 0</source>
   <translation>au-dessus de 0</translation>
  </message>
  <message>
   <source>above the bay's floor</source>
   <translation>au-dessus du plancher de la travée</translation>
  </message>
  <message>
   <source>above the bay's floor, clear of the {0} cleat</source>
   <translation>au-dessus du plancher de la travée, à l'écart du tasseau de {0}</translation>
  </message>
  <message>
   <source>above the bottom and its inset</source>
   <translation>au-dessus du fond et de son retrait</translation>
  </message>
  <message>
   <source>above the floor</source>
   <translation>au-dessus du sol</translation>
  </message>
  <message>
   <source>above the floor, to lie on the door</source>
   <translation>au-dessus du sol, pour se trouver sur la porte</translation>
  </message>
  <message>
   <source>above the floor, with room for its cleats</source>
   <translation>au-dessus du sol, avec place pour ses tasseaux</translation>
  </message>
  <message>
   <source>above the floor, {0} mm below what lies above it</source>
   <translation>au-dessus du sol, {0} mm sous ce qui se trouve au-dessus</translation>
  </message>
  <message>
   <source>across the width</source>
   <translation>dans la largeur</translation>
  </message>
  <message>
   <source>add a larger sheet</source>
   <translation>ajouter un panneau brut plus grand</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>étagère réglable</translation>
  </message>
  <message>
   <source>adjustable shelves</source>
   <translation>étagères réglables</translation>
  </message>
  <message>
   <source>allowable lateral load, older NDS: screws C·D², nails C·D^1.5, end grain 2/3</source>
   <translation>charge latérale admissible, NDS ancienne : vis C·D², clous C·D^1.5, bois de bout 2/3</translation>
  </message>
  <message>
   <source>allowed for the least strength of its standard; for the mean strengths published {0} to {1}</source>
   <translation>admis pour la résistance minimale de sa norme ; pour les résistances moyennes publiées {0} à {1}</translation>
  </message>
  <message>
   <source>allowed for the least yield of its grade, {0}</source>
   <translation>admis pour la limite élastique minimale de sa nuance, {0}</translation>
  </message>
  <message>
   <source>allowed for the weakest twentieth; clear wood bears {0} on average in a short test</source>
   <translation>admis pour le vingtième le plus faible ; le bois sans défaut porte {0} en moyenne dans un essai court</translation>
  </message>
  <message>
   <source>along the bench</source>
   <translation>le long du banc</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>dans la longueur</translation>
  </message>
  <message>
   <source>aluminium 6063-T5: E 69 GPa; least yield 110 N/mm² (quoted) over 1.95 (from memory)</source>
   <translation>aluminium 6063-T5 : E 69 GPa ; limite élastique minimale 110 N/mm² (cité) sur 1.95 (de mémoire)</translation>
  </message>
  <message>
   <source>aluminium tube</source>
   <translation>tube d'aluminium</translation>
  </message>
  <message>
   <source>an object by material</source>
   <translation>un objet par matériau</translation>
  </message>
  <message>
   <source>anchor it; heavy things low; nothing tempting on top</source>
   <translation>l'ancrer ; le lourd en bas ; rien de tentant dessus</translation>
  </message>
  <message>
   <source>angle to which the closet's own door opens</source>
   <translation>angle jusqu'où s'ouvre la porte du placard lui-même</translation>
  </message>
  <message>
   <source>another line has the same id; give the quantity instead</source>
   <translation>une autre ligne a le même id ; donner plutôt la quantité</translation>
  </message>
  <message>
   <source>another line prices the same</source>
   <translation>une autre ligne donne le prix de la même chose</translation>
  </message>
  <message>
   <source>another line says something else of the same part</source>
   <translation>une autre ligne dit autre chose de la même pièce</translation>
  </message>
  <message>
   <source>another one has the same key</source>
   <translation>un autre a la même clé</translation>
  </message>
  <message>
   <source>anti-tip anchors</source>
   <translation>ancrages antibasculement</translation>
  </message>
  <message>
   <source>anti-tip anchors made to ASTM F3096, 50 lbf each (quoted)</source>
   <translation>ancrages antibasculement selon ASTM F3096, 50 lbf chacun (cité)</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in brick; old mortar and perforated brick hold less</source>
   <translation>demander au fabricant des ancrages les charges dans la brique ; un vieux mortier et la brique creuse tiennent moins</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in concrete</source>
   <translation>demander au fabricant des ancrages les charges dans le béton</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in hollow block</source>
   <translation>demander au fabricant des ancrages les charges dans le bloc creux</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in this gauge of steel, or have plywood or lumber set between the studs behind the cleats</source>
   <translation>demander au fabricant des ancrages les charges dans cette épaisseur d'acier, ou faire poser du contreplaqué ou du bois entre les montants d'ossature derrière les tasseaux</translation>
  </message>
  <message>
   <source>assemble it inside</source>
   <translation>le monter à l'intérieur</translation>
  </message>
  <message>
   <source>assembled it {0}: assemble it where it stands, or tip it up with help, never alone</source>
   <translation>monté, il {0} : le monter à sa place, ou le redresser avec de l'aide, jamais seul</translation>
  </message>
  <message>
   <source>at least {0}</source>
   <translation>au moins {0}</translation>
  </message>
  <message>
   <source>at least {0} are needed</source>
   <translation>au moins {0} sont nécessaires</translation>
  </message>
  <message>
   <source>at least {0}°</source>
   <translation>au moins {0}°</translation>
  </message>
  <message>
   <source>at midspan</source>
   <translation>à mi-portée</translation>
  </message>
  <message>
   <source>at most {0} pieces in all</source>
   <translation>au plus {0} morceaux en tout</translation>
  </message>
  <message>
   <source>at most {0} without one</source>
   <translation>au plus {0} sans</translation>
  </message>
  <message>
   <source>at most {0}; measure what is sound and list that</source>
   <translation>au plus {0} ; mesurer ce qui est sain et l'inscrire</translation>
  </message>
  <message>
   <source>at the free end</source>
   <translation>à l'extrémité libre</translation>
  </message>
  <message>
   <source>at the rear wall</source>
   <translation>au mur du fond</translation>
  </message>
  <message>
   <source>back</source>
   <translation>dos</translation>
  </message>
  <message>
   <source>back baseboard</source>
   <translation>plinthe du mur du fond</translation>
  </message>
  <message>
   <source>back bow</source>
   <translation>bombement du fond</translation>
  </message>
  <message>
   <source>back bow up</source>
   <translation>bombement vertical du fond</translation>
  </message>
  <message>
   <source>back cleat {0}</source>
   <translation>tasseau de dos {0}</translation>
  </message>
  <message>
   <source>back lean</source>
   <translation>dévers du fond</translation>
  </message>
  <message>
   <source>back skew</source>
   <translation>biais du fond</translation>
  </message>
  <message>
   <source>back to dividers</source>
   <translation>dos aux montants intermédiaires</translation>
  </message>
  <message>
   <source>back twist</source>
   <translation>gauchissement du fond</translation>
  </message>
  <message>
   <source>back wall</source>
   <translation>mur du fond</translation>
  </message>
  <message>
   <source>back {0}</source>
   <translation>dos {0}</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>barre</translation>
  </message>
  <message>
   <source>base cross member {0}</source>
   <translation>entretoise de socle {0}</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>cadre de socle</translation>
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation>cadre de socle ajusté au sol</translation>
  </message>
  <message>
   <source>base front rail</source>
   <translation>traverse avant de socle</translation>
  </message>
  <message>
   <source>base height</source>
   <translation>hauteur du socle</translation>
  </message>
  <message>
   <source>base rear rail</source>
   <translation>traverse arrière de socle</translation>
  </message>
  <message>
   <source>base setback</source>
   <translation>retrait du socle</translation>
  </message>
  <message>
   <source>bay</source>
   <translation>travée</translation>
  </message>
  <message>
   <source>bay {0}</source>
   <translation>travée {0}</translation>
  </message>
  <message>
   <source>bay {0} loose shelf {1}</source>
   <translation>travée {0} étagère réglable {1}</translation>
  </message>
  <message>
   <source>bay {0} rail {1}</source>
   <translation>travée {0} traverse {1}</translation>
  </message>
  <message>
   <source>bay {0} shelf {1}</source>
   <translation>travée {0} étagère {1}</translation>
  </message>
  <message>
   <source>bay {0} {1} cleat</source>
   <translation>travée {0} tasseau de {1}</translation>
  </message>
  <message>
   <source>bays</source>
   <translation>travées</translation>
  </message>
  <message>
   <source>beam</source>
   <translation>poutre</translation>
  </message>
  <message>
   <source>bearers to posts</source>
   <translation>supports aux poteaux</translation>
  </message>
  <message>
   <source>below the upper rod</source>
   <translation>sous la tringle supérieure</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>face du banc</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>cadre du banc</translation>
  </message>
  <message>
   <source>bench rails to trestles</source>
   <translation>traverses du banc aux tréteaux</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>dessus du banc</translation>
  </message>
  <message>
   <source>bench top to rails</source>
   <translation>dessus du banc aux traverses</translation>
  </message>
  <message>
   <source>beside what stands there</source>
   <translation>à côté de ce qui s'y trouve</translation>
  </message>
  <message>
   <source>between the sides</source>
   <translation>entre les côtés</translation>
  </message>
  <message>
   <source>bill</source>
   <translation>nomenclature</translation>
  </message>
  <message>
   <source>bill and papers</source>
   <translation>nomenclature et documents</translation>
  </message>
  <message>
   <source>boards or bars that can be bought, whose parts have no width; may come again</source>
   <translation>planches ou barres à acheter, dont les pièces n'ont pas de largeur ; peut être répété</translation>
  </message>
  <message>
   <source>bottom and top to sides and dividers</source>
   <translation>fond bas et dessus aux côtés et montants intermédiaires</translation>
  </message>
  <message>
   <source>bottom rail</source>
   <translation>traverse basse</translation>
  </message>
  <message>
   <source>bow of the back wall from left to right</source>
   <translation>bombement du mur du fond de gauche à droite</translation>
  </message>
  <message>
   <source>bow of the back wall on its way up</source>
   <translation>bombement du mur du fond en montant</translation>
  </message>
  <message>
   <source>bow of the ceiling from left to right</source>
   <translation>bombement du plafond de gauche à droite</translation>
  </message>
  <message>
   <source>bow of the floor from left to right</source>
   <translation>bombement du sol de gauche à droite</translation>
  </message>
  <message>
   <source>bow of the left wall</source>
   <translation>bombement du mur de gauche</translation>
  </message>
  <message>
   <source>bow of the right wall</source>
   <translation>bombement du mur de droite</translation>
  </message>
  <message>
   <source>bow of the side walls</source>
   <translation>bombement des murs latéraux</translation>
  </message>
  <message>
   <source>box front</source>
   <translation>avant de caisse</translation>
  </message>
  <message>
   <source>butt, screwed</source>
   <translation>d'about, vissé</translation>
  </message>
  <message>
   <source>by readings</source>
   <translation>par mesures</translation>
  </message>
  <message>
   <source>by rule</source>
   <translation>par règle</translation>
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation>par vis ou clous à travers les côtés</translation>
  </message>
  <message>
   <source>by sizes</source>
   <translation>par dimensions</translation>
  </message>
  <message>
   <source>by the gap</source>
   <translation>selon le jeu</translation>
  </message>
  <message>
   <source>by the inside width</source>
   <translation>selon la largeur intérieure</translation>
  </message>
  <message>
   <source>by the opening</source>
   <translation>selon l'ouverture</translation>
  </message>
  <message>
   <source>cables and pipes run in walls: find them with a detector, switch the circuit off, and drive no screw deeper than it needs; {0}</source>
   <translation>câbles et tuyaux passent dans les murs : les repérer au détecteur, couper le circuit, et n'enfoncer aucune vis plus que nécessaire ; {0}</translation>
  </message>
  <message>
   <source>cannot be built</source>
   <translation>irréalisable</translation>
  </message>
  <message>
   <source>cannot be opened ({0})</source>
   <translation>ne peut pas être ouvert ({0})</translation>
  </message>
  <message>
   <source>cannot be read from {0}; {1}</source>
   <translation>illisible depuis {0} ; {1}</translation>
  </message>
  <message>
   <source>cannot be right</source>
   <translation>impossible</translation>
  </message>
  <message>
   <source>cannot be written ({0}); see whether the folder may be written to and the disk has room</source>
   <translation>ne peut pas être écrit ({0}) ; voir si l'écriture dans le dossier est permise et si le disque a de la place</translation>
  </message>
  <message>
   <source>cannot come out: {0} in the way</source>
   <translation>ne peut pas sortir : gêné par {0}</translation>
  </message>
  <message>
   <source>cannot stand open while {0} does</source>
   <translation>ne peut pas rester ouvert tant que {0} l'est</translation>
  </message>
  <message>
   <source>carcass</source>
   <translation>caisson</translation>
  </message>
  <message>
   <source>carcass to base frame</source>
   <translation>caisson au cadre de socle</translation>
  </message>
  <message>
   <source>carcasses</source>
   <translation>caissons</translation>
  </message>
  <message>
   <source>carry it upright between two, one hand under the lower edge and one on top, in gloves, and not in wind; stand it steeply against a wall, and chock it; or have it cut to the strips that you need where you buy it</source>
   <translation>le porter debout à deux, une main sous le bord inférieur et une en haut, avec des gants, et pas par vent ; le poser presque droit contre un mur, et le caler ; ou le faire couper à l'achat aux bandes voulues</translation>
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation>chambranle et plinthe du mur</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catalogue</translation>
  </message>
  <message>
   <source>ceiling bow</source>
   <translation>bombement du plafond</translation>
  </message>
  <message>
   <source>ceiling twist</source>
   <translation>gauchissement du plafond</translation>
  </message>
  <message>
   <source>cells</source>
   <translation>cellules</translation>
  </message>
  <message>
   <source>centre</source>
   <translation>centre</translation>
  </message>
  <message>
   <source>chi-squared test, 0.1 %</source>
   <translation>test du khi-deux, 0.1 %</translation>
  </message>
  <message>
   <source>child's reach</source>
   <translation>portée d'enfant</translation>
  </message>
  <message>
   <source>children climb open shelves and drawers like a ladder: fasten everything to the wall before use, heavy things low, nothing tempting on top, nothing poisonous, sharp or small within reach; {0}</source>
   <translation>les enfants grimpent aux étagères et tiroirs ouverts comme à une échelle : tout fixer au mur avant usage, le lourd en bas, rien de tentant dessus, rien de toxique, tranchant ou petit à portée ; {0}</translation>
  </message>
  <message>
   <source>circular saw along a straightedge</source>
   <translation>scie circulaire sur règle</translation>
  </message>
  <message>
   <source>circumstances</source>
   <translation>circonstances</translation>
  </message>
  <message>
   <source>clear height under the rails</source>
   <translation>hauteur libre sous les traverses</translation>
  </message>
  <message>
   <source>clear of the door</source>
   <translation>à l'écart de la porte</translation>
  </message>
  <message>
   <source>clearance above</source>
   <translation>jeu au-dessus</translation>
  </message>
  <message>
   <source>clearance at each side</source>
   <translation>jeu de chaque côté</translation>
  </message>
  <message>
   <source>clearances</source>
   <translation>jeux</translation>
  </message>
  <message>
   <source>cleat height</source>
   <translation>hauteur du tasseau</translation>
  </message>
  <message>
   <source>cleats of shoe shelves</source>
   <translation>tasseaux des étagères à chaussures</translation>
  </message>
  <message>
   <source>cleats on the side walls, or a height at which it lies on a carcass</source>
   <translation>des tasseaux aux murs latéraux, ou une hauteur où elle pose sur un caisson</translation>
  </message>
  <message>
   <source>cleats to sides and dividers</source>
   <translation>tasseaux aux côtés et montants intermédiaires</translation>
  </message>
  <message>
   <source>cleats to the studs</source>
   <translation>tasseaux aux montants d'ossature</translation>
  </message>
  <message>
   <source>climate</source>
   <translation>climat</translation>
  </message>
  <message>
   <source>closet</source>
   <translation>placard</translation>
  </message>
  <message>
   <source>closet planning, as quoted: 24 in with the rod 12 in from the wall</source>
   <translation>conception de placards, telle que citée : 24 in avec la tringle à 12 in du mur</translation>
  </message>
  <message>
   <source>closetbench: {0}
</source>
   <translation>closetbench : {0}
</translation>
  </message>
  <message>
   <source>closets in the file</source>
   <translation>placards dans le fichier</translation>
  </message>
  <message>
   <source>clothes</source>
   <translation>vêtements</translation>
  </message>
  <message>
   <source>clothes on hangers are deeper than the bay: they stand out at the front or rub against a door</source>
   <translation>les vêtements sur cintres sont plus profonds que la travée : ils dépassent à l'avant ou frottent contre une porte</translation>
  </message>
  <message>
   <source>clothes on hangers are wider than the bay: they rub against its sides</source>
   <translation>les vêtements sur cintres sont plus larges que la travée : ils frottent contre ses côtés</translation>
  </message>
  <message>
   <source>clothes on the {0}</source>
   <translation>vêtements : {0}</translation>
  </message>
  <message>
   <source>cm centimetre centimetres centimeter centimeters</source>
   <translation>cm centimetre centimetres centimeter centimeters</translation>
  </message>
  <message>
   <source>column</source>
   <translation>colonne</translation>
  </message>
  <message>
   <source>comes out only after {0} is opened to {1}° or more</source>
   <translation>ne sort qu'après ouverture de {0} à {1}° ou plus</translation>
  </message>
  <message>
   <source>comes out with less than {0} to spare beside {1}: the tape knows it no better; move it away or measure there again</source>
   <translation>sort avec moins de {0} de jeu à côté de : {1} ; le mètre ne le sait pas mieux ; l'éloigner ou mesurer là encore une fois</translation>
  </message>
  <message>
   <source>comes twice in one object; give it once</source>
   <translation>figure deux fois dans un objet ; le donner une fois</translation>
  </message>
  <message>
   <source>common practice, no published source</source>
   <translation>usage courant, sans source publiée</translation>
  </message>
  <message>
   <source>compartment</source>
   <translation>case</translation>
  </message>
  <message>
   <source>confidence</source>
   <translation>confiance</translation>
  </message>
  <message>
   <source>contradict each other by {0} mm or more; measure these again</source>
   <translation>se contredisent de {0} mm ou plus ; les reprendre</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>étagère d'angle</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>coût</translation>
  </message>
  <message>
   <source>creep: NDS 3.5.2 (seasoned lumber 1.5), APA Panel Design Specification 4.5 (plywood 2), trade guide for MDF shelves (1.5), EN 1995-1-1 Table 3.2 (quoted) with four fifths of the load lasting</source>
   <translation>fluage : NDS 3.5.2 (bois sec 1.5), APA Panel Design Specification 4.5 (contreplaqué 2), guide professionnel pour étagères en MDF (1.5), EN 1995-1-1 Table 3.2 (cité) avec quatre cinquièmes de la charge de longue durée</translation>
  </message>
  <message>
   <source>currency</source>
   <translation>monnaie</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>coupe</translation>
  </message>
  <message>
   <source>cut layout</source>
   <translation>plan de débit</translation>
  </message>
  <message>
   <source>cut settings</source>
   <translation>réglages de débit</translation>
  </message>
  <message>
   <source>cuts</source>
   <translation>coupes</translation>
  </message>
  <message>
   <source>damp</source>
   <translation>humide</translation>
  </message>
  <message>
   <source>dead space</source>
   <translation>espace perdu</translation>
  </message>
  <message>
   <source>deepest groove as a fraction of the thickness</source>
   <translation>rainure la plus profonde en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>defect</source>
   <translation>défaut</translation>
  </message>
  <message>
   <source>defect {0}</source>
   <translation>défaut {0}</translation>
  </message>
  <message>
   <source>defects</source>
   <translation>défauts</translation>
  </message>
  <message>
   <source>defects = [{0}]</source>
   <translation>defects = [{0}]</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>profondeur</translation>
  </message>
  <message>
   <source>depth along the back</source>
   <translation>profondeur le long du fond</translation>
  </message>
  <message>
   <source>depth along the left wall</source>
   <translation>profondeur le long du mur de gauche</translation>
  </message>
  <message>
   <source>depth along the right wall</source>
   <translation>profondeur le long du mur de droite</translation>
  </message>
  <message>
   <source>depth along the side</source>
   <translation>profondeur le long du côté</translation>
  </message>
  <message>
   <source>depth between front and rear post</source>
   <translation>profondeur entre poteau avant et arrière</translation>
  </message>
  <message>
   <source>depth for hangers</source>
   <translation>profondeur pour cintres</translation>
  </message>
  <message>
   <source>depth in the middle, high</source>
   <translation>profondeur au milieu, haut</translation>
  </message>
  <message>
   <source>depth in the middle, low</source>
   <translation>profondeur au milieu, bas</translation>
  </message>
  <message>
   <source>depth near the left wall, high</source>
   <translation>profondeur près du mur de gauche, haut</translation>
  </message>
  <message>
   <source>depth near the right wall, high</source>
   <translation>profondeur près du mur de droite, haut</translation>
  </message>
  <message>
   <source>diagonal at the back, rising to the left</source>
   <translation>diagonale au fond, montant vers la gauche</translation>
  </message>
  <message>
   <source>diagonal at the back, rising to the right</source>
   <translation>diagonale au fond, montant vers la droite</translation>
  </message>
  <message>
   <source>diagonal at the front, rising to the left</source>
   <translation>diagonale à l'avant, montant vers la gauche</translation>
  </message>
  <message>
   <source>diagonal at the front, rising to the right</source>
   <translation>diagonale à l'avant, montant vers la droite</translation>
  </message>
  <message>
   <source>diagonal from front left to back right</source>
   <translation>diagonale de l'avant gauche au fond droit</translation>
  </message>
  <message>
   <source>diagonal from front left to back right, high</source>
   <translation>diagonale de l'avant gauche au fond droit, haut</translation>
  </message>
  <message>
   <source>diagonal from front right to back left</source>
   <translation>diagonale de l'avant droit au fond gauche</translation>
  </message>
  <message>
   <source>diagonal from front right to back left, high</source>
   <translation>diagonale de l'avant droit au fond gauche, haut</translation>
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation>diagonale en élévation</translation>
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation>diagonale en plan</translation>
  </message>
  <message>
   <source>distance</source>
   <translation>distance</translation>
  </message>
  <message>
   <source>distance from a fixed panel</source>
   <translation>distance d'un panneau fixe</translation>
  </message>
  <message>
   <source>distance from the front</source>
   <translation>distance à l'avant</translation>
  </message>
  <message>
   <source>distance from the left</source>
   <translation>distance à la gauche</translation>
  </message>
  <message>
   <source>distance of a pull's holes</source>
   <translation>entraxe des trous d'une poignée</translation>
  </message>
  <message>
   <source>distance of the front row</source>
   <translation>distance de la rangée avant</translation>
  </message>
  <message>
   <source>distance of the pull from the free edge</source>
   <translation>distance de la poignée au bord libre</translation>
  </message>
  <message>
   <source>distance of the rear row</source>
   <translation>distance de la rangée arrière</translation>
  </message>
  <message>
   <source>distance of the rod from the rear</source>
   <translation>distance de la tringle à l'arrière</translation>
  </message>
  <message>
   <source>divider {0}</source>
   <translation>montant intermédiaire {0}</translation>
  </message>
  <message>
   <source>dividers with loose shelves on both sides are drilled right through; the pins of both bays share the holes</source>
   <translation>les montants intermédiaires avec étagères réglables des deux côtés sont percés de part en part ; les taquets des deux travées partagent les trous</translation>
  </message>
  <message>
   <source>does not clear {0}, which stands before it when open: keep the pull-out farther from the hinges, or take hinges that throw the door clear</source>
   <translation>ne passe pas {0}, qui se trouve devant une fois ouverte : éloigner l'élément coulissant des charnières, ou prendre des charnières qui dégagent la porte</translation>
  </message>
  <message>
   <source>does not go in through the opening assembled ({0}), but its parts do: assemble it inside</source>
   <translation>n'entre pas monté par l'ouverture ({0}), mais ses pièces si : le monter à l'intérieur</translation>
  </message>
  <message>
   <source>does not go in through the opening: {0}; {1}</source>
   <translation>n'entre pas par l'ouverture : {0} ; {1}</translation>
  </message>
  <message>
   <source>does not go with {0} mm for the {1} of its kind: one was read in another unit; write the unit behind it</source>
   <translation>ne va pas avec {0} mm pour {1} du même genre : l'un a été lu dans une autre unité ; écrire l'unité derrière</translation>
  </message>
  <message>
   <source>drawer</source>
   <translation>tiroir</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>arrière de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>fond de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>avant de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>côté de caisse de tiroir</translation>
  </message>
  <message>
   <source>drawer boxes</source>
   <translation>caisses de tiroir</translation>
  </message>
  <message>
   <source>drawer fronts and the boxes behind them</source>
   <translation>les façades de tiroirs et les caisses derrière elles</translation>
  </message>
  <message>
   <source>drawer {0}</source>
   <translation>tiroir {0}</translation>
  </message>
  <message>
   <source>drilling masonry raises silica dust: drill with extraction and wear a respirator (OSHA limit 50 µg/m³, 29 CFR 1926.1153)</source>
   <translation>percer la maçonnerie soulève de la poussière de silice : percer avec aspiration et porter un masque respiratoire (limite OSHA 50 µg/m³, 29 CFR 1926.1153)</translation>
  </message>
  <message>
   <source>each of its {0} carries {1} on {2} x {3}</source>
   <translation>chacun de ses {0} porte {1} sur {2} x {3}</translation>
  </message>
  <message>
   <source>edge band on the {0}</source>
   <translation>chant : {0}</translation>
  </message>
  <message>
   <source>edge distance of the cups</source>
   <translation>distance des cuvettes au bord</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>vide</translation>
  </message>
  <message>
   <source>end clearance</source>
   <translation>jeu en bout</translation>
  </message>
  <message>
   <source>end cleats</source>
   <translation>tasseaux d'extrémité</translation>
  </message>
  <message>
   <source>end cleats to sides and dividers</source>
   <translation>tasseaux d'extrémité aux côtés et montants intermédiaires</translation>
  </message>
  <message>
   <source>ends</source>
   <translation>bouts</translation>
  </message>
  <message>
   <source>ends in the middle; {0}</source>
   <translation>finit au milieu ; {0}</translation>
  </message>
  <message>
   <source>ends of hanging rods</source>
   <translation>bouts de tringles</translation>
  </message>
  <message>
   <source>enter the kind of wall, and the studs' spacing and place</source>
   <translation>saisir le genre de mur, et l'espacement et la place des montants d'ossature</translation>
  </message>
  <message>
   <source>enter the readings, or a width, depth and height</source>
   <translation>saisir les mesures, ou une largeur, profondeur et hauteur</translation>
  </message>
  <message>
   <source>enter the use of the shelves: linen, general, books or stiff</source>
   <translation>saisir l'usage des étagères : linge, général, livres ou rigide</translation>
  </message>
  <message>
   <source>entry</source>
   <translation>entrée</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>volume utile</translation>
  </message>
  <message>
   <source>error of the level</source>
   <translation>erreur du niveau</translation>
  </message>
  <message>
   <source>every one needs a key</source>
   <translation>chacun a besoin d'une clé</translation>
  </message>
  <message>
   <source>every part needs one</source>
   <translation>chaque pièce en a besoin</translation>
  </message>
  <message>
   <source>every plumb and level reading is 0, and 0 counts as read: take them with a level, or a wall that leans will not show</source>
   <translation>toutes les mesures d'aplomb et de niveau sont à 0, et 0 compte comme lu : les prendre au niveau, sinon un mur qui penche ne se verra pas</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>meuble existant</translation>
  </message>
  <message>
   <source>existing piece to the carcass</source>
   <translation>meuble existant au caisson</translation>
  </message>
  <message>
   <source>extra readings</source>
   <translation>mesures supplémentaires</translation>
  </message>
  <message>
   <source>extra {0}</source>
   <translation>{0} supplémentaire</translation>
  </message>
  <message>
   <source>face frame to the carcass</source>
   <translation>cadre de façade au caisson</translation>
  </message>
  <message>
   <source>file</source>
   <translation>fichier</translation>
  </message>
  <message>
   <source>filler strip</source>
   <translation>bande de fileur</translation>
  </message>
  <message>
   <source>fillers to carcasses</source>
   <translation>fileurs aux caissons</translation>
  </message>
  <message>
   <source>find out what the lath is nailed to, probe for the studs, and enter them as wood studs; the plaster and the lath carry nothing</source>
   <translation>trouver sur quoi le lattis est cloué, sonder les montants d'ossature, et les saisir comme montants en bois ; le plâtre et le lattis ne portent rien</translation>
  </message>
  <message>
   <source>first cut</source>
   <translation>première coupe</translation>
  </message>
  <message>
   <source>first stud</source>
   <translation>premier montant d'ossature</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>étagère fixe</translation>
  </message>
  <message>
   <source>fixed shelves</source>
   <translation>étagères fixes</translation>
  </message>
  <message>
   <source>fixed shelves to sides and dividers</source>
   <translation>étagères fixes aux côtés et montants intermédiaires</translation>
  </message>
  <message>
   <source>floor bow</source>
   <translation>bombement du sol</translation>
  </message>
  <message>
   <source>floor rise</source>
   <translation>pente du sol en largeur</translation>
  </message>
  <message>
   <source>floor run</source>
   <translation>pente du sol en profondeur</translation>
  </message>
  <message>
   <source>floor twist</source>
   <translation>gauchissement du sol</translation>
  </message>
  <message>
   <source>flush with the side</source>
   <translation>au nu du côté</translation>
  </message>
  <message>
   <source>folder</source>
   <translation>dossier</translation>
  </message>
  <message>
   <source>foot</source>
   <translation>pied</translation>
  </message>
  <message>
   <source>for a {0}</source>
   <translation>pour un {0}</translation>
  </message>
  <message>
   <source>for hangers {0} mm wide on a rod {1}</source>
   <translation>pour cintres de {0} mm de large sur une tringle {1}</translation>
  </message>
  <message>
   <source>for shoes; {0} mm are there for {1}</source>
   <translation>pour chaussures ; {0} mm sont là pour {1}</translation>
  </message>
  <message>
   <source>for the mean strengths published </source>
   <translation>pour les résistances moyennes publiées </translation>
  </message>
  <message>
   <source>for the mean strengths published {0} to {1}</source>
   <translation>pour les résistances moyennes publiées {0} à {1}</translation>
  </message>
  <message>
   <source>free depth</source>
   <translation>profondeur libre</translation>
  </message>
  <message>
   <source>frequency multiplier</source>
   <translation>multiplicateur de fréquence</translation>
  </message>
  <message>
   <source>from above</source>
   <translation>de dessus</translation>
  </message>
  <message>
   <source>from front to rear</source>
   <translation>d'avant en arrière</translation>
  </message>
  <message>
   <source>from the floor to the floor of the bays</source>
   <translation>du sol au plancher des travées</translation>
  </message>
  <message>
   <source>from the front, to clear the pins</source>
   <translation>depuis l'avant, pour éviter les taquets</translation>
  </message>
  <message>
   <source>from the side</source>
   <translation>de côté</translation>
  </message>
  <message>
   <source>from {0}</source>
   <translation>depuis {0}</translation>
  </message>
  <message>
   <source>from {0} to {1} mm</source>
   <translation>de {0} à {1} mm</translation>
  </message>
  <message>
   <source>front</source>
   <translation>avant</translation>
  </message>
  <message>
   <source>front kick board</source>
   <translation>plinthe avant</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>retombée avant</translation>
  </message>
  <message>
   <source>front post</source>
   <translation>poteau avant</translation>
  </message>
  <message>
   <source>front screws</source>
   <translation>vis de façade</translation>
  </message>
  <message>
   <source>front wall</source>
   <translation>mur avant</translation>
  </message>
  <message>
   <source>fronts to drawer boxes</source>
   <translation>façades aux caisses de tiroir</translation>
  </message>
  <message>
   <source>full of clothes it weighs more than its {0} may carry</source>
   <translation>plein de vêtements il pèse plus que ses {0} ne peuvent porter</translation>
  </message>
  <message>
   <source>full overlay</source>
   <translation>applique totale</translation>
  </message>
  <message>
   <source>gap</source>
   <translation>jeu</translation>
  </message>
  <message>
   <source>gap around the fronts</source>
   <translation>jeu autour des façades</translation>
  </message>
  <message>
   <source>general storage</source>
   <translation>rangement général</translation>
  </message>
  <message>
   <source>general storage with little sag</source>
   <translation>rangement général à faible flèche</translation>
  </message>
  <message>
   <source>geometry, hinges taken to turn about the edge of the leaf</source>
   <translation>géométrie, charnières supposées tourner autour du bord du vantail</translation>
  </message>
  <message>
   <source>geometry; ways that turn are searched with {0} mm to spare all round, the closet empty and its own door taken off</source>
   <translation>géométrie ; les passages en tournant sont cherchés avec {0} mm de jeu tout autour, le placard vide et sa porte déposée</translation>
  </message>
  <message>
   <source>given</source>
   <translation>donné</translation>
  </message>
  <message>
   <source>given twice</source>
   <translation>donné deux fois</translation>
  </message>
  <message>
   <source>glue the {0} as well, which then carries; or grooves</source>
   <translation>coller aussi {0}, qui alors porte ; ou des rainures</translation>
  </message>
  <message>
   <source>goes with no room that the other readings allow; about {0} mm was expected; measure it again</source>
   <translation>ne va avec aucune pièce que les autres mesures permettent ; environ {0} mm attendus ; à reprendre</translation>
  </message>
  <message>
   <source>grain</source>
   <translation>fil</translation>
  </message>
  <message>
   <source>grain = {0}</source>
   <translation>fil = {0}</translation>
  </message>
  <message>
   <source>greatest {0}</source>
   <translation>plus grand {0}</translation>
  </message>
  <message>
   <source>groove depth</source>
   <translation>profondeur de rainure</translation>
  </message>
  <message>
   <source>groove depth as a fraction of the thickness</source>
   <translation>profondeur de rainure en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>groove stop</source>
   <translation>arrêt de rainure</translation>
  </message>
  <message>
   <source>grooves and notches</source>
   <translation>rainures et entailles</translation>
  </message>
  <message>
   <source>grooves run through the edge band at the front; stop them short of it</source>
   <translation>les rainures traversent le chant à l'avant ; les arrêter avant</translation>
  </message>
  <message>
   <source>half lap</source>
   <translation>mi-bois</translation>
  </message>
  <message>
   <source>half overlay</source>
   <translation>semi-applique</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>tringle</translation>
  </message>
  <message>
   <source>hanging rods</source>
   <translation>tringles</translation>
  </message>
  <message>
   <source>hanging rods between the ends</source>
   <translation>tringles entre les extrémités</translation>
  </message>
  <message>
   <source>hangs lower or higher than rods usually do (one rod about {0} to {1})</source>
   <translation>pend plus bas ou plus haut que les tringles d'ordinaire (une tringle environ {0} à {1})</translation>
  </message>
  <message>
   <source>hangs lower than rods for {0} things usually do, under what lies above it</source>
   <translation>pend plus bas que les tringles pour vêtements ({0}) d'ordinaire, sous ce qui se trouve au-dessus</translation>
  </message>
  <message>
   <source>has been altered: its maker's label, its anti-tip kit and its test count no more; it is computed as new, and must be anchored; {0}</source>
   <translation>a été modifié : l'étiquette de son fabricant, son kit antibasculement et son essai ne comptent plus ; il est calculé comme neuf, et doit être ancré ; {0}</translation>
  </message>
  <message>
   <source>has fewer hinges than its height asks for</source>
   <translation>a moins de charnières que sa hauteur n'en demande</translation>
  </message>
  <message>
   <source>has no reserve for the {0} that furniture tests hang on rails</source>
   <translation>n'a pas de réserve pour les {0} que les essais de meubles pendent aux tringles</translation>
  </message>
  <message>
   <source>have it halved at the store</source>
   <translation>le faire couper en deux au magasin</translation>
  </message>
  <message>
   <source>head casing</source>
   <translation>chambranle de linteau</translation>
  </message>
  <message>
   <source>heading</source>
   <translation>titre</translation>
  </message>
  <message>
   <source>height</source>
   <translation>hauteur</translation>
  </message>
  <message>
   <source>height above the floor</source>
   <translation>hauteur au-dessus du sol</translation>
  </message>
  <message>
   <source>height at the back left</source>
   <translation>hauteur au fond à gauche</translation>
  </message>
  <message>
   <source>height at the back right</source>
   <translation>hauteur au fond à droite</translation>
  </message>
  <message>
   <source>height at the back, in the middle</source>
   <translation>hauteur au fond, au milieu</translation>
  </message>
  <message>
   <source>height at the front left</source>
   <translation>hauteur à l'avant à gauche</translation>
  </message>
  <message>
   <source>height at the front right</source>
   <translation>hauteur à l'avant à droite</translation>
  </message>
  <message>
   <source>height at the front, in the middle</source>
   <translation>hauteur à l'avant, au milieu</translation>
  </message>
  <message>
   <source>height for each shelf</source>
   <translation>hauteur par étagère</translation>
  </message>
  <message>
   <source>height of a door</source>
   <translation>hauteur d'une porte</translation>
  </message>
  <message>
   <source>height of a fixed shelf</source>
   <translation>hauteur d'une étagère fixe</translation>
  </message>
  <message>
   <source>height of a front</source>
   <translation>hauteur d'une façade</translation>
  </message>
  <message>
   <source>height of its centre</source>
   <translation>hauteur de son centre</translation>
  </message>
  <message>
   <source>height of shelf {0}</source>
   <translation>hauteur de l'étagère {0}</translation>
  </message>
  <message>
   <source>height of the baseboard</source>
   <translation>hauteur de la plinthe du mur</translation>
  </message>
  <message>
   <source>height of the bottom rail</source>
   <translation>hauteur de la traverse basse</translation>
  </message>
  <message>
   <source>height of the box</source>
   <translation>hauteur de la caisse</translation>
  </message>
  <message>
   <source>height of the cleats</source>
   <translation>hauteur des tasseaux</translation>
  </message>
  <message>
   <source>height of the feet</source>
   <translation>hauteur des pieds</translation>
  </message>
  <message>
   <source>height of the hands</source>
   <translation>hauteur des mains</translation>
  </message>
  <message>
   <source>height of the lip</source>
   <translation>hauteur de la retombée</translation>
  </message>
  <message>
   <source>height of the opening</source>
   <translation>hauteur de l'ouverture</translation>
  </message>
  <message>
   <source>height of the opening at the left jamb</source>
   <translation>hauteur de l'ouverture au tableau de gauche</translation>
  </message>
  <message>
   <source>height of the pull</source>
   <translation>hauteur de la poignée</translation>
  </message>
  <message>
   <source>height of the shelf rails</source>
   <translation>hauteur des traverses d'étagère</translation>
  </message>
  <message>
   <source>height of the shelves' lip</source>
   <translation>hauteur de la retombée des étagères</translation>
  </message>
  <message>
   <source>height of the stop</source>
   <translation>hauteur de la butée</translation>
  </message>
  <message>
   <source>height of the top rail</source>
   <translation>hauteur de la traverse haute</translation>
  </message>
  <message>
   <source>height of the upper rod</source>
   <translation>hauteur de la tringle supérieure</translation>
  </message>
  <message>
   <source>height of the wall over the opening</source>
   <translation>hauteur du mur au-dessus de l'ouverture</translation>
  </message>
  <message>
   <source>height over the opening</source>
   <translation>hauteur au-dessus de l'ouverture</translation>
  </message>
  <message>
   <source>heights</source>
   <translation>hauteurs</translation>
  </message>
  <message>
   <source>heights of the fronts</source>
   <translation>hauteurs des façades</translation>
  </message>
  <message>
   <source>hinge cup</source>
   <translation>cuvette de charnière</translation>
  </message>
  <message>
   <source>hinge it on the other side, make it narrower or part it in two</source>
   <translation>la ferrer de l'autre côté, la faire plus étroite ou la partager en deux</translation>
  </message>
  <message>
   <source>hinge plate</source>
   <translation>embase de charnière</translation>
  </message>
  <message>
   <source>hinge strip</source>
   <translation>bande de charnière</translation>
  </message>
  <message>
   <source>hinged at the left</source>
   <translation>articulée à gauche</translation>
  </message>
  <message>
   <source>hinged at the right</source>
   <translation>articulée à droite</translation>
  </message>
  <message>
   <source>holds back {0}</source>
   <translation>retient {0}</translation>
  </message>
  <message>
   <source>hollow block</source>
   <translation>bloc creux</translation>
  </message>
  <message>
   <source>in a groove all round</source>
   <translation>en rainure tout autour</translation>
  </message>
  <message>
   <source>in grooves</source>
   <translation>en rainures</translation>
  </message>
  <message>
   <source>in its compartment</source>
   <translation>dans sa case</translation>
  </message>
  <message>
   <source>in its lip; allowed for the least strength of that one's standard</source>
   <translation>dans sa retombée ; admis pour la résistance minimale de la norme de celle-ci</translation>
  </message>
  <message>
   <source>in the envelope</source>
   <translation>dans le volume utile</translation>
  </message>
  <message>
   <source>in this depth</source>
   <translation>dans cette profondeur</translation>
  </message>
  <message>
   <source>in {0} mm of depth with {1} mm behind it</source>
   <translation>dans {0} mm de profondeur avec {1} mm derrière</translation>
  </message>
  <message>
   <source>inset of the back</source>
   <translation>retrait du dos</translation>
  </message>
  <message>
   <source>is a board's key too; give the bar another</source>
   <translation>est aussi la clé d'un panneau ; en donner une autre à la barre</translation>
  </message>
  <message>
   <source>is fastened to nothing: find where its sides can be screwed through to the carcass, or anchor it to the wall, before its drawers are used; {0}</source>
   <translation>n'est fixé à rien : trouver où visser ses côtés au caisson, ou l'ancrer au mur, avant d'employer ses tiroirs ; {0}</translation>
  </message>
  <message>
   <source>is higher or lower than people sit well on</source>
   <translation>est plus haut ou plus bas qu'une bonne assise</translation>
  </message>
  <message>
   <source>is made for dry, heated rooms; ask its maker for figures in damp air</source>
   <translation>est fait pour pièces sèches et chauffées ; demander au fabricant ses valeurs en air humide</translation>
  </message>
  <message>
   <source>is more than three people should lift by hand</source>
   <translation>dépasse ce que trois personnes devraient soulever à la main</translation>
  </message>
  <message>
   <source>is no key of this table; {0}</source>
   <translation>n'est pas une clé de cette table ; {0}</translation>
  </message>
  <message>
   <source>is no table here; {0}</source>
   <translation>n'est pas une table ici ; {0}</translation>
  </message>
  <message>
   <source>is not JSON ({0})</source>
   <translation>n'est pas du JSON ({0})</translation>
  </message>
  <message>
   <source>is not in the catalogue; {0}</source>
   <translation>n'est pas dans le catalogue ; {0}</translation>
  </message>
  <message>
   <source>is not in the plan</source>
   <translation>n'est pas dans le plan</translation>
  </message>
  <message>
   <source>is not in the table of load cases; give the loads one by one</source>
   <translation>n'est pas dans la table des cas de charge ; donner les charges une à une</translation>
  </message>
  <message>
   <source>is not known; known: {0}</source>
   <translation>est inconnu ; connus : {0}</translation>
  </message>
  <message>
   <source>is not there</source>
   <translation>n'est pas là</translation>
  </message>
  <message>
   <source>is there twice; give it once</source>
   <translation>y est deux fois ; le donner une seule fois</translation>
  </message>
  <message>
   <source>is thinner than rods are made</source>
   <translation>est plus mince que les tringles ne se font</translation>
  </message>
  <message>
   <source>is too long and wide for one person to handle, though not too heavy</source>
   <translation>est trop long et large à manier pour une personne, quoique pas trop lourd</translation>
  </message>
  <message>
   <source>is too narrow for two cuts: leave nothing, exactly a kerf of {0} mm to a neighbour, or more than two</source>
   <translation>est trop étroit pour deux coupes : ne rien laisser, exactement un trait de scie de {0} mm jusqu'au voisin, ou plus de deux</translation>
  </message>
  <message>
   <source>is too near to what is stored: fire; move the shelf or the light; {0}</source>
   <translation>est trop près des affaires rangées : incendie ; déplacer l'étagère ou l'éclairage ; {0}</translation>
  </message>
  <message>
   <source>is too short</source>
   <translation>est trop court</translation>
  </message>
  <message>
   <source>is too thin for the pocket screws in the list: they come out at the face</source>
   <translation>est trop mince pour les vis en biais de la liste : elles ressortent à la face</translation>
  </message>
  <message>
   <source>is wider than the number of hinges is meant for: it sags and pulls on them; make a pair of it</source>
   <translation>est plus large que prévu pour ce nombre de charnières : elle s'affaisse et tire dessus ; en faire une paire</translation>
  </message>
  <message>
   <source>it cannot be made ({0})</source>
   <translation>ne peut pas être créé ({0})</translation>
  </message>
  <message>
   <source>it cannot be read ({0})</source>
   <translation>illisible ({0})</translation>
  </message>
  <message>
   <source>it cannot be read as TOML ({0})</source>
   <translation>illisible comme TOML ({0})</translation>
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder is there and may be written to</source>
   <translation>ne peut pas être écrit ({0}) ; voir si le dossier existe et si l'écriture y est permise</translation>
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder may be written to, the disk is full or another program has the file open</source>
   <translation>ne peut pas être écrit ({0}) ; voir si l'écriture est permise dans le dossier, si le disque est plein ou si un autre programme a ouvert le fichier</translation>
  </message>
  <message>
   <source>it carries {0} on {1} x {2}</source>
   <translation>il porte {0} sur {1} x {2}</translation>
  </message>
  <message>
   <source>it does not go straight through {0}</source>
   <translation>il ne passe pas tout droit par {0}</translation>
  </message>
  <message>
   <source>it gives {0} piece(s), {1} are named</source>
   <translation>il donne {0} pièce(s), {1} sont nommées</translation>
  </message>
  <message>
   <source>it has neither cleats nor a back of {0} to screw through, and </source>
   <translation>il n'a ni tasseaux ni dos de {0} où visser à travers, et </translation>
  </message>
  <message>
   <source>it is kept for that job</source>
   <translation>il est gardé pour ce travail</translation>
  </message>
  <message>
   <source>it is larger than the closet inside</source>
   <translation>il est plus grand que l'intérieur du placard</translation>
  </message>
  <message>
   <source>it leaves nothing of {0}; it must be less than {1}</source>
   <translation>il ne laisse rien de {0} ; il doit être inférieur à {1}</translation>
  </message>
  <message>
   <source>it misses {0}</source>
   <translation>il manque {0}</translation>
  </message>
  <message>
   <source>it must be 0 or more</source>
   <translation>doit valoir 0 ou plus</translation>
  </message>
  <message>
   <source>it must be 0 or more and leave something of {0}</source>
   <translation>doit valoir 0 ou plus et laisser quelque chose de {0}</translation>
  </message>
  <message>
   <source>it must be 0 or more, or none</source>
   <translation>doit valoir 0 ou plus, ou rien</translation>
  </message>
  <message>
   <source>it must be 2 or more (rips, then crosscuts), or none for no limit</source>
   <translation>doit valoir 2 ou plus (coupes en long, puis en travers), ou rien pour aucune limite</translation>
  </message>
  <message>
   <source>it must be a table</source>
   <translation>doit être une table</translation>
  </message>
  <message>
   <source>it must be more than 0</source>
   <translation>doit être supérieur à 0</translation>
  </message>
  <message>
   <source>it must be text in UTF-8</source>
   <translation>doit être du texte en UTF-8</translation>
  </message>
  <message>
   <source>it must lie within 0 to {0}, its start first</source>
   <translation>doit se trouver entre 0 et {0}, le début d'abord</translation>
  </message>
  <message>
   <source>it stands {0} from the wall: set it at the rear or anchor it with brackets</source>
   <translation>il est à {0} du mur : le placer à l'arrière ou l'ancrer par des équerres</translation>
  </message>
  <message>
   <source>item</source>
   <translation>article</translation>
  </message>
  <message>
   <source>its bottom sags {0} under {1} of clothes</source>
   <translation>son fond fléchit de {0} sous {1} de vêtements</translation>
  </message>
  <message>
   <source>its diagonal of {0} does not go up under {1}: put it on a base of its own</source>
   <translation>sa diagonale de {0} ne se redresse pas sous {1} : le poser sur un socle séparé</translation>
  </message>
  <message>
   <source>its end stile is cut with an allowance: offer it up plumb, scribe it to the wall and plane it down before the frame is joined</source>
   <translation>son montant d'extrémité est débité avec une marge : le présenter d'aplomb, l'ajuster au mur et le raboter avant d'assembler le cadre</translation>
  </message>
  <message>
   <source>its fronts are tapered to an opening that is out of square, each its own way: mark them as they are cut, measure both diagonals once more before that, and {0}</source>
   <translation>ses façades sont en biais pour une ouverture hors d'équerre, chacune à sa façon : les marquer au fil du débit, mesurer encore une fois les deux diagonales avant, et {0}</translation>
  </message>
  <message>
   <source>its hinges hold on to the face frame: take plates for frames, or pack the sides out flush with it; their holes are not drilled</source>
   <translation>ses charnières tiennent au cadre de façade : prendre des embases pour cadre, ou rembourrer les côtés au nu du cadre ; leurs trous ne sont pas percés</translation>
  </message>
  <message>
   <source>its lid is glued up of boards: screw two battens under it through slotted holes, or it cups</source>
   <translation>son abattant est collé de planches : visser dessous deux barres par des trous oblongs, sinon il tuile</translation>
  </message>
  <message>
   <source>its lip may break under {0} in time, if it is a weak one; the shelf alone would not{1}</source>
   <translation>sa retombée peut rompre sous {0} avec le temps, si elle est faible ; l'étagère seule non{1}</translation>
  </message>
  <message>
   <source>its own {0} hang on {1} x {2}</source>
   <translation>son poids propre de {0} pend à {1} x {2}</translation>
  </message>
  <message>
   <source>its rails may break in {0} under {1}</source>
   <translation>ses traverses peuvent rompre en {0} sous {1}</translation>
  </message>
  <message>
   <source>its rails sag {0} under {1}</source>
   <translation>ses traverses fléchissent de {0} sous {1}</translation>
  </message>
  <message>
   <source>its top hinge is pulled with {0} by its own {1}, and with {2} when somebody leans on it as in the test</source>
   <translation>sa charnière du haut est tirée de {0} par ses propres {1}, et de {2} quand quelqu'un s'y appuie comme dans l'essai</translation>
  </message>
  <message>
   <source>join it from two parts</source>
   <translation>l'assembler de deux pièces</translation>
  </message>
  <message>
   <source>joinery</source>
   <translation>assemblage</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>assemblage</translation>
  </message>
  <message>
   <source>joints of the face frame</source>
   <translation>assemblages du cadre de façade</translation>
  </message>
  <message>
   <source>just inside the front</source>
   <translation>juste derrière l'avant</translation>
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for</source>
   <translation>garde sous {0} pendant des années moins de réserve de résistance que n'en demande le calcul des bâtiments</translation>
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for; the weakest board of its kind would break at {1}{2}{3}</source>
   <translation>garde sous {0} pendant des années moins de réserve de résistance que n'en demande le calcul des bâtiments ; le panneau le plus faible de son genre romprait à {1}{2}{3}</translation>
  </message>
  <message>
   <source>kept panel</source>
   <translation>panneau conservé</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>trait de scie</translation>
  </message>
  <message>
   <source>key</source>
   <translation>clé</translation>
  </message>
  <message>
   <source>key = {0}</source>
   <translation>clé = {0}</translation>
  </message>
  <message>
   <source>kick boards to sides</source>
   <translation>plinthes aux côtés</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>type</translation>
  </message>
  <message>
   <source>known are {0}</source>
   <translation>connus : {0}</translation>
  </message>
  <message>
   <source>known: {0}</source>
   <translation>connus : {0}</translation>
  </message>
  <message>
   <source>larger than every sheet of {0}; the nearest, {1}, gives {2} x {3} inside its trim: </source>
   <translation>plus grand que tous les panneaux bruts de {0} ; le plus proche, {1}, donne {2} x {3} une fois affranchi : </translation>
  </message>
  <message>
   <source>lateral load</source>
   <translation>charge latérale</translation>
  </message>
  <message>
   <source>lean of the back wall at the left</source>
   <translation>dévers du mur du fond à gauche</translation>
  </message>
  <message>
   <source>lean of the back wall at the left, half way up</source>
   <translation>dévers du mur du fond à gauche, à mi-hauteur</translation>
  </message>
  <message>
   <source>lean of the back wall at the right</source>
   <translation>dévers du mur du fond à droite</translation>
  </message>
  <message>
   <source>lean of the back wall at the right, half way up</source>
   <translation>dévers du mur du fond à droite, à mi-hauteur</translation>
  </message>
  <message>
   <source>lean of the left edge</source>
   <translation>dévers du bord gauche</translation>
  </message>
  <message>
   <source>lean of the left wall at the back</source>
   <translation>dévers du mur de gauche au fond</translation>
  </message>
  <message>
   <source>lean of the left wall at the front</source>
   <translation>dévers du mur de gauche à l'avant</translation>
  </message>
  <message>
   <source>lean of the left wall at the front, half way up</source>
   <translation>dévers du mur de gauche à l'avant, à mi-hauteur</translation>
  </message>
  <message>
   <source>lean of the opening</source>
   <translation>dévers de l'ouverture</translation>
  </message>
  <message>
   <source>lean of the right edge</source>
   <translation>dévers du bord droit</translation>
  </message>
  <message>
   <source>lean of the right wall at the back</source>
   <translation>dévers du mur de droite au fond</translation>
  </message>
  <message>
   <source>lean of the right wall at the front</source>
   <translation>dévers du mur de droite à l'avant</translation>
  </message>
  <message>
   <source>lean of the right wall at the front, half way up</source>
   <translation>dévers du mur de droite à l'avant, à mi-hauteur</translation>
  </message>
  <message>
   <source>least web as a fraction of the thickness</source>
   <translation>âme minimale en fraction de l'épaisseur</translation>
  </message>
  <message>
   <source>leave nothing sound; take it out of the list</source>
   <translation>ne laissent rien de sain ; l'enlever de la liste</translation>
  </message>
  <message>
   <source>leaves a wide gap in its bay: let the bay follow it, or cover the gap with strips</source>
   <translation>laisse un grand jeu dans sa travée : laisser la travée le suivre, ou couvrir le jeu de bandes</translation>
  </message>
  <message>
   <source>leaves no box of {0} mm beside, below, above or in front of it; check its sizes, or move it</source>
   <translation>ne laisse aucune boîte de {0} mm à côté, dessous, dessus ou devant ; vérifier ses dimensions, ou le déplacer</translation>
  </message>
  <message>
   <source>left baseboard</source>
   <translation>plinthe du mur de gauche</translation>
  </message>
  <message>
   <source>left bow</source>
   <translation>bombement gauche</translation>
  </message>
  <message>
   <source>left casing</source>
   <translation>chambranle gauche</translation>
  </message>
  <message>
   <source>left end</source>
   <translation>bout gauche</translation>
  </message>
  <message>
   <source>left lean</source>
   <translation>dévers gauche</translation>
  </message>
  <message>
   <source>left return</source>
   <translation>retour de mur gauche</translation>
  </message>
  <message>
   <source>left side</source>
   <translation>côté gauche</translation>
  </message>
  <message>
   <source>left skew</source>
   <translation>biais gauche</translation>
  </message>
  <message>
   <source>left stile</source>
   <translation>montant gauche</translation>
  </message>
  <message>
   <source>left twist</source>
   <translation>gauchissement gauche</translation>
  </message>
  <message>
   <source>left wall</source>
   <translation>mur de gauche</translation>
  </message>
  <message>
   <source>length</source>
   <translation>longueur</translation>
  </message>
  <message>
   <source>length = {0}</source>
   <translation>longueur = {0}</translation>
  </message>
  <message>
   <source>length along the back</source>
   <translation>longueur le long du fond</translation>
  </message>
  <message>
   <source>length along the side</source>
   <translation>longueur le long du côté</translation>
  </message>
  <message>
   <source>length format</source>
   <translation>format des longueurs</translation>
  </message>
  <message>
   <source>length of the rod</source>
   <translation>longueur de la tringle</translation>
  </message>
  <message>
   <source>length step</source>
   <translation>pas des longueurs</translation>
  </message>
  <message>
   <source>length {0} of {1}</source>
   <translation>longueur {0} sur {1}</translation>
  </message>
  <message>
   <source>lengths</source>
   <translation>longueurs</translation>
  </message>
  <message>
   <source>less than 0 mm</source>
   <translation>moins de 0 mm</translation>
  </message>
  <message>
   <source>let in under the back</source>
   <translation>encastré sous le dos</translation>
  </message>
  <message>
   <source>let its grain run the other way</source>
   <translation>faire aller son fil dans l'autre sens</translation>
  </message>
  <message>
   <source>level it with shims: </source>
   <translation>le mettre de niveau par des cales : </translation>
  </message>
  <message>
   <source>levelling</source>
   <translation>mise à niveau</translation>
  </message>
  <message>
   <source>levelling {0}</source>
   <translation>mise à niveau {0}</translation>
  </message>
  <message>
   <source>levels</source>
   <translation>niveaux</translation>
  </message>
  <message>
   <source>lid supports on both sides, no latch, a gap at the hinge under {0} or over {1}</source>
   <translation>compas des deux côtés, pas de loquet, un jeu à la charnière sous {0} ou au-dessus de {1}</translation>
  </message>
  <message>
   <source>lies behind the {0} return: no drawer or pull-out there; shelves reached from the side and rods are at home there</source>
   <translation>se trouve derrière le retour de {0} : pas de tiroir ni d'élément coulissant là ; des étagères accessibles de côté et des tringles y conviennent</translation>
  </message>
  <message>
   <source>lies on no sheet; plan again</source>
   <translation>n'est sur aucun panneau brut ; replanifier</translation>
  </message>
  <message>
   <source>lies on {0} uprights and cleats at its ends: it takes two or it comes down</source>
   <translation>repose sur {0} montants et tasseaux à ses bouts : il en faut deux, sinon elle tombe</translation>
  </message>
  <message>
   <source>lies too far between its supports</source>
   <translation>est trop éloigné entre ses supports</translation>
  </message>
  <message>
   <source>lift</source>
   <translation>levage</translation>
  </message>
  <message>
   <source>light clearance</source>
   <translation>distance à l'éclairage</translation>
  </message>
  <message>
   <source>limits of the tools listed</source>
   <translation>limites des outils listés</translation>
  </message>
  <message>
   <source>line {0}</source>
   <translation>ligne {0}</translation>
  </message>
  <message>
   <source>linen and clothes</source>
   <translation>linge et vêtements</translation>
  </message>
  <message>
   <source>lines</source>
   <translation>lignes</translation>
  </message>
  <message>
   <source>link the bill that it shows</source>
   <translation>lier la nomenclature qu'elle montre</translation>
  </message>
  <message>
   <source>link the closet that the bill is for</source>
   <translation>lier le placard que concerne la nomenclature</translation>
  </message>
  <message>
   <source>link the closet whose parts are cut</source>
   <translation>lier le placard dont les pièces sont débitées</translation>
  </message>
  <message>
   <source>lips to shelves</source>
   <translation>retombées aux étagères</translation>
  </message>
  <message>
   <source>load</source>
   <translation>charge</translation>
  </message>
  <message>
   <source>load as you entered it; sag: </source>
   <translation>charge telle que saisie ; flèche : </translation>
  </message>
  <message>
   <source>load case</source>
   <translation>cas de charge</translation>
  </message>
  <message>
   <source>loaded beyond the ends of its cleats alone it pulls at the {0} x {1} that hold it down on them, at the corner with {2}</source>
   <translation>chargé seulement au-delà des bouts de ses tasseaux, il tire sur les {0} x {1} qui l'y retiennent, à l'angle avec {2}</translation>
  </message>
  <message>
   <source>loaded sideways</source>
   <translation>chargé latéralement</translation>
  </message>
  <message>
   <source>local codes and a licensed professional come first</source>
   <translation>les règles locales et un professionnel agréé priment</translation>
  </message>
  <message>
   <source>longer or more of them, glue as well, or grooves</source>
   <translation>plus longs ou plus nombreux, collés aussi, ou des rainures</translation>
  </message>
  <message>
   <source>longer than every clear stretch in stock; the longest is {0}: join it from two, or add a longer one</source>
   <translation>plus long que toute longueur sans défaut du stock ; la plus longue est {0} : l'assembler de deux, ou en ajouter une plus longue</translation>
  </message>
  <message>
   <source>longer than {0} and larger than {1}</source>
   <translation>plus long que {0} et plus grand que {1}</translation>
  </message>
  <message>
   <source>lower drawers, or a slide of a heavier class</source>
   <translation>des tiroirs plus bas, ou une coulisse de classe plus lourde</translation>
  </message>
  <message>
   <source>lower rod</source>
   <translation>tringle inférieure</translation>
  </message>
  <message>
   <source>lower than the 27 in from which the rule applies</source>
   <translation>plus bas que les 27 in à partir desquels la règle s'applique</translation>
  </message>
  <message>
   <source>m metre metres meter meters</source>
   <translation>m metre metres meter meters</translation>
  </message>
  <message>
   <source>make it smaller</source>
   <translation>le faire plus petit</translation>
  </message>
  <message>
   <source>make it smaller by {0}</source>
   <translation>le faire plus petit de {0}</translation>
  </message>
  <message>
   <source>make it with a hand saw or a mitre saw, the piece clamped</source>
   <translation>la faire à la scie à main ou à onglet, la pièce serrée</translation>
  </message>
  <message>
   <source>make its {0} {1} less</source>
   <translation>réduire {0} de {1}</translation>
  </message>
  <message>
   <source>make room for a copy first</source>
   <translation>faire d'abord de la place pour une copie</translation>
  </message>
  <message>
   <source>make them {0} wide or less</source>
   <translation>les faire larges de {0} ou moins</translation>
  </message>
  <message>
   <source>make these cuts at home, with help; or let the store show that its saw is better, and enter that</source>
   <translation>faire ces coupes à la maison, avec de l'aide ; ou faire montrer par le magasin que sa scie est meilleure, et le saisir</translation>
  </message>
  <message>
   <source>makes nothing at the {0}: the stile in front of {1} reaches to the wall there</source>
   <translation>ne fait rien côté {0} : le montant devant {1} y va jusqu'au mur</translation>
  </message>
  <message>
   <source>mark the low, middle and high level all round with the level, from the floor in the front left corner</source>
   <translation>tracer le niveau bas, médian et haut tout autour au niveau, depuis le sol à l'angle avant gauche</translation>
  </message>
  <message>
   <source>mass</source>
   <translation>masse</translation>
  </message>
  <message>
   <source>mass and pitch</source>
   <translation>masse et pas</translation>
  </message>
  <message>
   <source>mass of its drawers</source>
   <translation>masse de ses tiroirs</translation>
  </message>
  <message>
   <source>material</source>
   <translation>matériau</translation>
  </message>
  <message>
   <source>material = {0}</source>
   <translation>matériau = {0}</translation>
  </message>
  <message>
   <source>material {0}</source>
   <translation>matériau {0}</translation>
  </message>
  <message>
   <source>may come down: </source>
   <translation>peut tomber : </translation>
  </message>
  <message>
   <source>may come down: {0}, and {1}</source>
   <translation>peut tomber : {0}, et {1}</translation>
  </message>
  <message>
   <source>may tip off its cleats: {0}</source>
   <translation>peut basculer de ses tasseaux : {0}</translation>
  </message>
  <message>
   <source>measured</source>
   <translation>mesuré</translation>
  </message>
  <message>
   <source>measures {0}, outside the {1} of its standard: measure again</source>
   <translation>mesure {0}, hors des {1} de sa norme : à remesurer</translation>
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation>panneau de particules mélaminé</translation>
  </message>
  <message>
   <source>mill sheets</source>
   <translation>fiches d'usine</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>manquant</translation>
  </message>
  <message>
   <source>mixes metric and inch units; {0}</source>
   <translation>mélange unités métriques et pouces ; {0}</translation>
  </message>
  <message>
   <source>mm millimetre millimetres millimeter millimeters</source>
   <translation>mm millimetre millimetres millimeter millimeters</translation>
  </message>
  <message>
   <source>model</source>
   <translation>modèle</translation>
  </message>
  <message>
   <source>moisture</source>
   <translation>humidité</translation>
  </message>
  <message>
   <source>more are needed</source>
   <translation>il en faut plus</translation>
  </message>
  <message>
   <source>more or longer nails, or glue</source>
   <translation>des clous plus nombreux ou plus longs, ou de la colle</translation>
  </message>
  <message>
   <source>more stages than the settings allow</source>
   <translation>plus de passes que les réglages ne permettent</translation>
  </message>
  <message>
   <source>more than {0} times</source>
   <translation>plus de {0} fois</translation>
  </message>
  <message>
   <source>mouldings</source>
   <translation>moulures</translation>
  </message>
  <message>
   <source>mullion {0}</source>
   <translation>montant central {0}</translation>
  </message>
  <message>
   <source>must be 0 or 1 on a door</source>
   <translation>doit valoir 0 ou 1 sur une porte</translation>
  </message>
  <message>
   <source>must be 0 or more</source>
   <translation>doit valoir 0 ou plus</translation>
  </message>
  <message>
   <source>must be 0 or more and leave some of the run of {0} mm</source>
   <translation>doit valoir 0 ou plus et laisser une part de la longueur de {0} mm</translation>
  </message>
  <message>
   <source>must be 0 or more, downward</source>
   <translation>doit valoir 0 ou plus, vers le bas</translation>
  </message>
  <message>
   <source>must be 0 or more, or none</source>
   <translation>doit valoir 0 ou plus, ou rien</translation>
  </message>
  <message>
   <source>must be 0 to 10 mm in a metre</source>
   <translation>doit valoir 0 à 10 mm par mètre</translation>
  </message>
  <message>
   <source>must be 0 to 1000 mm</source>
   <translation>doit valoir 0 à 1000 mm</translation>
  </message>
  <message>
   <source>must be 0 to 20000 mm</source>
   <translation>doit valoir 0 à 20000 mm</translation>
  </message>
  <message>
   <source>must be 0 to 500 mm</source>
   <translation>doit valoir 0 à 500 mm</translation>
  </message>
  <message>
   <source>must be 0 to {0} mm</source>
   <translation>doit valoir 0 à {0} mm</translation>
  </message>
  <message>
   <source>must be 0 to {0} mm on a board {1} mm thick{2}</source>
   <translation>doit valoir 0 à {0} mm sur un panneau épais de {1} mm{2}</translation>
  </message>
  <message>
   <source>must be 0 unless fronts are inset: an overlay hides it</source>
   <translation>doit valoir 0 sauf façades encastrées : une applique le cache</translation>
  </message>
  <message>
   <source>must be 0.01 to 20 mm: the step to which the tape was read</source>
   <translation>doit valoir 0.01 à 20 mm : le pas de lecture du mètre</translation>
  </message>
  <message>
   <source>must be 0.5 to 0.999</source>
   <translation>doit valoir 0.5 à 0.999</translation>
  </message>
  <message>
   <source>must be 1</source>
   <translation>doit valoir 1</translation>
  </message>
  <message>
   <source>must be 1 or 2</source>
   <translation>doit valoir 1 ou 2</translation>
  </message>
  <message>
   <source>must be 1 or more</source>
   <translation>doit valoir 1 ou plus</translation>
  </message>
  <message>
   <source>must be 1 or more to have gaps beside</source>
   <translation>doit valoir 1 ou plus pour avoir des jeux à côté</translation>
  </message>
  <message>
   <source>must be 1 to 10</source>
   <translation>doit valoir 1 à 10</translation>
  </message>
  <message>
   <source>must be 1 to 10 mm, or a front rubs on its neighbour</source>
   <translation>doit valoir 1 à 10 mm, sinon une façade frotte sur sa voisine</translation>
  </message>
  <message>
   <source>must be 1 to {0} in {1}</source>
   <translation>doit valoir 1 à {0} dans {1}</translation>
  </message>
  <message>
   <source>must be 1 to {0} in {1}, bay {2}</source>
   <translation>doit valoir 1 à {0} dans {1}, travée {2}</translation>
  </message>
  <message>
   <source>must be 2 or more and leave {0} mm from one cup to the next in a door {1} mm high</source>
   <translation>doit valoir 2 ou plus et laisser {0} mm d'une cuvette à l'autre dans une porte haute de {1} mm</translation>
  </message>
  <message>
   <source>must be 2 under a lid: what lies between is in the way</source>
   <translation>doit valoir 2 sous un abattant : ce qui est entre gêne</translation>
  </message>
  <message>
   <source>must be 30 to 180 degrees</source>
   <translation>doit être de 30 à 180 degrés</translation>
  </message>
  <message>
   <source>must be 6 to 14 %</source>
   <translation>doit valoir 6 à 14 %</translation>
  </message>
  <message>
   <source>must be MATERIAL=LENGTH[@COST]</source>
   <translation>doit être MATERIAL=LENGTH[@COST]</translation>
  </message>
  <message>
   <source>must be MATERIAL=LENGTHxWIDTH[@COST]</source>
   <translation>doit être MATERIAL=LENGTHxWIDTH[@COST]</translation>
  </message>
  <message>
   <source>must be [from, to] along the length, or from, to, from, to with its width, in mm, each start first</source>
   <translation>doit être [de, à] le long de la longueur, ou de, à, de, à avec la largeur, en mm, chaque début d'abord</translation>
  </message>
  <message>
   <source>must be a finite decimal such as 0.5 or 0.01</source>
   <translation>doit être un décimal fini comme 0.5 ou 0.01</translation>
  </message>
  <message>
   <source>must be a finite number of millimetres</source>
   <translation>doit être un nombre fini de millimètres</translation>
  </message>
  <message>
   <source>must be a key of the catalogue</source>
   <translation>doit être une clé du catalogue</translation>
  </message>
  <message>
   <source>must be a length</source>
   <translation>doit être une longueur</translation>
  </message>
  <message>
   <source>must be a list</source>
   <translation>doit être une liste</translation>
  </message>
  <message>
   <source>must be a list of [from, to]</source>
   <translation>doit être une liste de [de, à]</translation>
  </message>
  <message>
   <source>must be a list of [from, to], or [from, to, from, to]</source>
   <translation>doit être une liste de [de, à] ou [de, à, de, à]</translation>
  </message>
  <message>
   <source>must be a list of lengths</source>
   <translation>doit être une liste de longueurs</translation>
  </message>
  <message>
   <source>must be a list of numbers</source>
   <translation>doit être une liste de nombres</translation>
  </message>
  <message>
   <source>must be a name such as EUR</source>
   <translation>doit être un nom comme EUR</translation>
  </message>
  <message>
   <source>must be a number</source>
   <translation>doit être un nombre</translation>
  </message>
  <message>
   <source>must be a number of mm</source>
   <translation>doit être un nombre de mm</translation>
  </message>
  <message>
   <source>must be a number of mm above 0</source>
   <translation>doit être un nombre de mm supérieur à 0</translation>
  </message>
  <message>
   <source>must be a number or a fraction</source>
   <translation>doit être un nombre ou une fraction</translation>
  </message>
  <message>
   <source>must be a number or none</source>
   <translation>doit être un nombre ou rien</translation>
  </message>
  <message>
   <source>must be a table of keys and values</source>
   <translation>doit être une table de clés et valeurs</translation>
  </message>
  <message>
   <source>must be a text</source>
   <translation>doit être un texte</translation>
  </message>
  <message>
   <source>must be a whole number</source>
   <translation>doit être un nombre entier</translation>
  </message>
  <message>
   <source>must be a whole number from {0} on</source>
   <translation>doit être un nombre entier à partir de {0}</translation>
  </message>
  <message>
   <source>must be above 0</source>
   <translation>doit être supérieur à 0</translation>
  </message>
  <message>
   <source>must be above 0 and at most 1000 kg</source>
   <translation>doit être supérieur à 0 et au plus 1000 kg</translation>
  </message>
  <message>
   <source>must be above 0 and at most as wide as the groove, {0} mm</source>
   <translation>doit être supérieur à 0 et au plus aussi large que la rainure, {0} mm</translation>
  </message>
  <message>
   <source>must be above 0 and at most {0}</source>
   <translation>doit être supérieur à 0 et au plus {0}</translation>
  </message>
  <message>
   <source>must be above 0 and at most {0} mm in a panel {1} mm thick</source>
   <translation>doit être supérieur à 0 et au plus {0} mm dans un panneau épais de {1} mm</translation>
  </message>
  <message>
   <source>must be above 0 and below 20 m</source>
   <translation>doit être supérieur à 0 et inférieur à 20 m</translation>
  </message>
  <message>
   <source>must be above 0 and below half of the {0} mm of a tube</source>
   <translation>doit être supérieur à 0 et inférieur à la moitié des {0} mm d'un tube</translation>
  </message>
  <message>
   <source>must be above 0 mm</source>
   <translation>doit être supérieur à 0 mm</translation>
  </message>
  <message>
   <source>must be above 0: a load needs an area</source>
   <translation>doit être supérieur à 0 : une charge demande une surface</translation>
  </message>
  <message>
   <source>must be an object with named values</source>
   <translation>doit être un objet avec des valeurs nommées</translation>
  </message>
  <message>
   <source>must be as wide as thick, straight along its length and without edge bands</source>
   <translation>doit être aussi large qu'épais, droit sur sa longueur et sans chants</translation>
  </message>
  <message>
   <source>must be at least 20 mm; make the frame's members narrower</source>
   <translation>doit valoir au moins 20 mm ; faire plus étroits les éléments du cadre</translation>
  </message>
  <message>
   <source>must be at least {0} mm</source>
   <translation>doit valoir au moins {0} mm</translation>
  </message>
  <message>
   <source>must be at least {0} mm for a hole {1} mm across</source>
   <translation>doit valoir au moins {0} mm pour un trou de {1} mm de diamètre</translation>
  </message>
  <message>
   <source>must be at least {0} mm for a strip; give it more clearance or cover it with a moulding</source>
   <translation>doit valoir au moins {0} mm pour une bande ; donner plus de jeu ou le couvrir d'une moulure</translation>
  </message>
  <message>
   <source>must be at least {0} mm for the shortest slide, {1} mm, with {2} mm behind it</source>
   <translation>doit valoir au moins {0} mm pour la coulisse la plus courte, {1} mm, avec {2} mm derrière</translation>
  </message>
  <message>
   <source>must be at least {0} mm for two rows of holes under loose shelves</source>
   <translation>doit valoir au moins {0} mm pour deux rangées de trous sous des étagères réglables</translation>
  </message>
  <message>
   <source>must be at least {0} mm of {1} mm where grooves meet back to back; make them shallower or move one shelf</source>
   <translation>doit valoir au moins {0} mm sur {1} mm là où des rainures sont dos à dos ; les faire moins profondes ou déplacer une étagère</translation>
  </message>
  <message>
   <source>must be at least {0} mm to hold a shelf; {1} mm lie between the sides for {2} bays</source>
   <translation>doit valoir au moins {0} mm pour tenir une étagère ; il y a {1} mm entre les côtés pour {2} travées</translation>
  </message>
  <message>
   <source>must be at least {0} mm, and only {1} mm are there{2}</source>
   <translation>doit valoir au moins {0} mm, et il n'y a que {1} mm{2}</translation>
  </message>
  <message>
   <source>must be at least {0} mm; check the readings and the clearances</source>
   <translation>doit valoir au moins {0} mm ; vérifier les mesures et les jeux</translation>
  </message>
  <message>
   <source>must be at least {0} mm; the opening is {1} mm wide</source>
   <translation>doit valoir au moins {0} mm ; l'ouverture a {1} mm de large</translation>
  </message>
  <message>
   <source>must be at least {0} mm{1}</source>
   <translation>doit valoir au moins {0} mm{1}</translation>
  </message>
  <message>
   <source>must be at most {0} mm for a {1}</source>
   <translation>doit valoir au plus {0} mm pour un {1}</translation>
  </message>
  <message>
   <source>must be at most {0} mm, or drill right through {1} mm</source>
   <translation>doit valoir au plus {0} mm, ou percer {1} mm de part en part</translation>
  </message>
  <message>
   <source>must be at most {0} mm, {1} mm less {2} mm of clearance</source>
   <translation>doit valoir au plus {0} mm, {1} mm moins {2} mm de jeu</translation>
  </message>
  <message>
   <source>must be at most {0} to leave {1} mm between them in {2} mm</source>
   <translation>doit valoir au plus {0} pour laisser {1} mm entre eux dans {2} mm</translation>
  </message>
  <message>
   <source>must be at most {0} to lie side by side in this depth</source>
   <translation>doit valoir au plus {0} pour être côte à côte dans cette profondeur</translation>
  </message>
  <message>
   <source>must be at most {0} {1} for a {2}</source>
   <translation>doit valoir au plus {0} {1} pour un {2}</translation>
  </message>
  <message>
   <source>must be fewer: {0} mm of clear height with {1} usable holes leave less than {2} mm between shelves</source>
   <translation>doit être moins nombreux : {0} mm de hauteur libre avec {1} trous utilisables laissent moins de {2} mm entre étagères</translation>
  </message>
  <message>
   <source>must be from {0} to {1} {2}</source>
   <translation>doit aller de {0} à {1} {2}</translation>
  </message>
  <message>
   <source>must be given and must differ from every other's</source>
   <translation>doit être donné et différer de tous les autres</translation>
  </message>
  <message>
   <source>must be given by their heights: the lowest lies over {0}</source>
   <translation>doit être donné par leurs hauteurs : la plus basse se trouve au-dessus de {0}</translation>
  </message>
  <message>
   <source>must be given once</source>
   <translation>doit être donné une fois</translation>
  </message>
  <message>
   <source>must be given where no carcass carries it</source>
   <translation>doit être donné là où aucun caisson ne le porte</translation>
  </message>
  <message>
   <source>must be given, one for each shelf</source>
   <translation>doit être donné, un par étagère</translation>
  </message>
  <message>
   <source>must be given: a {0} is hollow</source>
   <translation>doit être donné : un {0} est creux</translation>
  </message>
  <message>
   <source>must be groove, screws or nails; cleats carry shelves</source>
   <translation>doit être rainure, vis ou clous ; les tasseaux portent des étagères</translation>
  </message>
  <message>
   <source>must be inset or an overlay</source>
   <translation>doit être encastré ou en applique</translation>
  </message>
  <message>
   <source>must be larger than the edge band, {0} mm thick</source>
   <translation>doit être plus grand que le chant, épais de {0} mm</translation>
  </message>
  <message>
   <source>must be left open for {0} things, which hang on one rod</source>
   <translation>doit rester ouvert pour des vêtements ({0}), qui pendent à une tringle</translation>
  </message>
  <message>
   <source>must be left open: it stands in {0}</source>
   <translation>doit rester ouvert : il se trouve dans {0}</translation>
  </message>
  <message>
   <source>must be left out of a panel that is tapered or no flat board</source>
   <translation>doit être omis pour un panneau en biais ou qui n'est pas plat</translation>
  </message>
  <message>
   <source>must be lengths above 0 mm, rising</source>
   <translation>doit être des longueurs supérieures à 0 mm, croissantes</translation>
  </message>
  <message>
   <source>must be lengths from the front left corner, the first below the second</source>
   <translation>doit être des longueurs depuis l'angle avant gauche, la première inférieure à la seconde</translation>
  </message>
  <message>
   <source>must be less than half of {0} mm</source>
   <translation>doit être inférieur à la moitié de {0} mm</translation>
  </message>
  <message>
   <source>must be less than the depth of the groove, {0} mm</source>
   <translation>doit être inférieur à la profondeur de la rainure, {0} mm</translation>
  </message>
  <message>
   <source>must be less than the {0} kg of the whole</source>
   <translation>doit être inférieur aux {0} kg de l'ensemble</translation>
  </message>
  <message>
   <source>must be less than the {0} mm across</source>
   <translation>doit être inférieur aux {0} mm de travers</translation>
  </message>
  <message>
   <source>must be letters, digits, - and _ only</source>
   <translation>doit n'avoir que lettres, chiffres, - et _</translation>
  </message>
  <message>
   <source>must be more than 0</source>
   <translation>doit être supérieur à 0</translation>
  </message>
  <message>
   <source>must be more: nothing says where these are: {0}</source>
   <translation>doit être plus : rien ne dit où se trouvent : {0}</translation>
  </message>
  <message>
   <source>must be none, length or width, or free, along or across</source>
   <translation>doit être none, length ou width, ou free, along ou across</translation>
  </message>
  <message>
   <source>must be one of {0}</source>
   <translation>doit être l'un de {0}</translation>
  </message>
  <message>
   <source>must be one of {0} mm</source>
   <translation>doit être l'un de {0} mm</translation>
  </message>
  <message>
   <source>must be one value or more above 0, rising</source>
   <translation>doit être une ou plusieurs valeurs supérieures à 0, croissantes</translation>
  </message>
  <message>
   <source>must be shares of its length, rising between 0 and 1</source>
   <translation>doit être des parts de sa longueur, croissantes entre 0 et 1</translation>
  </message>
  <message>
   <source>must be simply supported or clamped</source>
   <translation>doit être sur appuis simples ou encastré</translation>
  </message>
  <message>
   <source>must be smaller than the panel, {0} x {1} mm</source>
   <translation>doit être plus petit que le panneau, {0} x {1} mm</translation>
  </message>
  <message>
   <source>must be solid lumber for a rail</source>
   <translation>doit être en bois massif pour une traverse</translation>
  </message>
  <message>
   <source>must be text in quotation marks</source>
   <translation>doit être du texte entre guillemets</translation>
  </message>
  <message>
   <source>must be the only one there</source>
   <translation>doit être le seul à cet endroit</translation>
  </message>
  <message>
   <source>must be the {0} mm between the sides, or leave one bay's width open</source>
   <translation>doit être les {0} mm entre les côtés, ou laisser ouverte la largeur d'une travée</translation>
  </message>
  <message>
   <source>must be there: gaps follow from its readings</source>
   <translation>doit être là : les jeux découlent de ses mesures</translation>
  </message>
  <message>
   <source>must be three heights above the floor, rising</source>
   <translation>doit être trois hauteurs au-dessus du sol, croissantes</translation>
  </message>
  <message>
   <source>must be true or false</source>
   <translation>doit être vrai ou faux</translation>
  </message>
  <message>
   <source>must be within {0} mm</source>
   <translation>doit se trouver dans {0} mm</translation>
  </message>
  <message>
   <source>must be {0}</source>
   <translation>doit être {0}</translation>
  </message>
  <message>
   <source>must be {0} mm or more</source>
   <translation>doit valoir {0} mm ou plus</translation>
  </message>
  <message>
   <source>must be {0} mm together, or leave one of them 0 to take what is left</source>
   <translation>doit valoir {0} mm ensemble, ou laisser l'un à 0 pour prendre le reste</translation>
  </message>
  <message>
   <source>must be {0} mm: a rod along the bay hangs {1} mm under what lies above; or leave it open</source>
   <translation>doit valoir {0} mm : une tringle le long de la travée pend à {1} mm sous ce qui se trouve au-dessus ; ou laisser ouvert</translation>
  </message>
  <message>
   <source>must be {0} to {1}</source>
   <translation>doit valoir {0} à {1}</translation>
  </message>
  <message>
   <source>must be {0} to {1} for the table of lateral loads</source>
   <translation>doit valoir {0} à {1} pour la table des charges latérales</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm</source>
   <translation>doit valoir {0} à {1} mm</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm along the {2}</source>
   <translation>doit valoir {0} à {1} mm selon {2}</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm{2}</source>
   <translation>doit valoir {0} à {1} mm{2}</translation>
  </message>
  <message>
   <source>must be {0}, as heights</source>
   <translation>doit être {0}, en hauteurs</translation>
  </message>
  <message>
   <source>must be {0}, as the heights given</source>
   <translation>doit être {0}, comme les hauteurs données</translation>
  </message>
  <message>
   <source>must be {0}, the number of heights given, or leave the heights out</source>
   <translation>doit être {0}, le nombre de hauteurs données, ou omettre les hauteurs</translation>
  </message>
  <message>
   <source>must come out of {0} x {1} mm side by side</source>
   <translation>doivent se tirer côte à côte de {0} x {1} mm</translation>
  </message>
  <message>
   <source>must end at the left or at the right</source>
   <translation>doit finir à gauche ou à droite</translation>
  </message>
  <message>
   <source>must hang on rods that run across</source>
   <translation>doit pendre à des tringles en travers</translation>
  </message>
  <message>
   <source>must have a name of its own</source>
   <translation>doit avoir son propre nom</translation>
  </message>
  <message>
   <source>must have one that is {0} mm wide or more for the widest gap; name one, or leave less clearance</source>
   <translation>doit en avoir une de {0} mm de large ou plus pour le plus grand jeu ; en nommer une, ou laisser moins de jeu</translation>
  </message>
  <message>
   <source>must keep clear of other cuts</source>
   <translation>doit rester à l'écart des autres usinages</translation>
  </message>
  <message>
   <source>must keep clear of the groove for {0}</source>
   <translation>doit rester à l'écart de la rainure pour {0}</translation>
  </message>
  <message>
   <source>must leave something of the sheet of {0}</source>
   <translation>doit laisser quelque chose du panneau brut de {0}</translation>
  </message>
  <message>
   <source>must leave the hole inside the panel, {0} x {1} mm</source>
   <translation>doit laisser le trou dans le panneau, {0} x {1} mm</translation>
  </message>
  <message>
   <source>must leave the hole inside the taper</source>
   <translation>doit laisser le trou dans le biais</translation>
  </message>
  <message>
   <source>must leave the panel within {0} x {1} mm</source>
   <translation>doit laisser le panneau dans {0} x {1} mm</translation>
  </message>
  <message>
   <source>must lie below the ceiling, {0} mm; enter the heights that were read</source>
   <translation>doit se trouver sous le plafond, {0} mm ; saisir les hauteurs lues</translation>
  </message>
  <message>
   <source>must lie within 0 and {0} mm</source>
   <translation>doit se trouver entre 0 et {0} mm</translation>
  </message>
  <message>
   <source>must lie within 0 to {0}, its start first</source>
   <translation>doit se trouver entre 0 et {0}, le début d'abord</translation>
  </message>
  <message>
   <source>must lie within 300 mm either way; enter the offset, not the distance</source>
   <translation>doit se trouver à 300 mm près de part et d'autre ; saisir l'écart, pas la distance</translation>
  </message>
  <message>
   <source>must lie within the span of {0} mm</source>
   <translation>doit se trouver dans la portée de {0} mm</translation>
  </message>
  <message>
   <source>must not be negative</source>
   <translation>ne doit pas être négatif</translation>
  </message>
  <message>
   <source>must not be negative; {0}</source>
   <translation>ne doit pas être négatif ; {0}</translation>
  </message>
  <message>
   <source>must not be wider than the closet behind it, {0} mm; measure between the jambs, and the width inside, again</source>
   <translation>ne doit pas être plus large que le placard derrière, {0} mm ; remesurer entre les tableaux, et la largeur intérieure</translation>
  </message>
  <message>
   <source>must not differ by more than a tenth; measure again</source>
   <translation>ne doivent pas différer de plus d'un dixième ; remesurer</translation>
  </message>
  <message>
   <source>must not lie in a notch</source>
   <translation>ne doit pas se trouver dans une entaille</translation>
  </message>
  <message>
   <source>must not run into another notch</source>
   <translation>ne doit pas rencontrer une autre entaille</translation>
  </message>
  <message>
   <source>must not run into each other</source>
   <translation>ne doivent pas se rencontrer</translation>
  </message>
  <message>
   <source>must not run into each other; move one</source>
   <translation>ne doivent pas se rencontrer ; en déplacer un</translation>
  </message>
  <message>
   <source>must say what it is</source>
   <translation>doit dire ce que c'est</translation>
  </message>
  <message>
   <source>must say where it was read: {0}</source>
   <translation>doit dire où cela a été lu : {0}</translation>
  </message>
  <message>
   <source>name of a component</source>
   <translation>nom d'un composant</translation>
  </message>
  <message>
   <source>narrowest strip</source>
   <translation>bande la plus étroite</translation>
  </message>
  <message>
   <source>nearest: {0}</source>
   <translation>le plus proche : {0}</translation>
  </message>
  <message>
   <source>nearly shut, its lid's weight turns it down with {0}, and as much more as lies on it: its supports must hold that together at every height; compare it with what they are made for</source>
   <translation>presque fermé, le poids de son abattant le rabat avec {0}, et autant que ce qui est posé dessus en plus : ses compas doivent tenir l'ensemble à toute hauteur ; comparer avec ce pour quoi ils sont faits</translation>
  </message>
  <message>
   <source>needs a base frame, but the {0} stands on the floor; use shims</source>
   <translation>demande un cadre de socle, mais {0} pose sur le sol ; employer des cales</translation>
  </message>
  <message>
   <source>needs one hole or more, a diameter above 0 and a pitch that leaves wood between</source>
   <translation>demande un trou ou plus, un diamètre supérieur à 0 et un pas qui laisse du bois entre</translation>
  </message>
  <message>
   <source>no board of the catalogue, no lip and no {0} dividers do</source>
   <translation>aucun panneau du catalogue, aucune retombée ni {0} montants intermédiaires n'y suffisent</translation>
  </message>
  <message>
   <source>no carcass</source>
   <translation>aucun caisson</translation>
  </message>
  <message>
   <source>no closet</source>
   <translation>aucun placard</translation>
  </message>
  <message>
   <source>no document</source>
   <translation>aucun document</translation>
  </message>
  <message>
   <source>no formula is published for this board; glue the joint, let the shelf into grooves, or test a corner</source>
   <translation>aucune formule n'est publiée pour ce panneau ; coller l'assemblage, encastrer l'étagère en rainures, ou essayer un angle</translation>
  </message>
  <message>
   <source>no length is that long; {0}</source>
   <translation>aucune longueur n'est aussi longue ; {0}</translation>
  </message>
  <message>
   <source>no length of it is in stock</source>
   <translation>aucune longueur n'en est en stock</translation>
  </message>
  <message>
   <source>no light</source>
   <translation>pas d'éclairage</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>aucun plan n'achète moins</translation>
  </message>
  <message>
   <source>no plan costs less</source>
   <translation>aucun plan ne coûte moins</translation>
  </message>
  <message>
   <source>no plan takes less length; prices are lacking</source>
   <translation>aucun plan ne prend moins de longueur ; des prix manquent</translation>
  </message>
  <message>
   <source>no plan was found for {0} parts of {1} m² on them; {2}: add sheets, or let the search take longer</source>
   <translation>aucun plan trouvé pour y placer {0} pièces de {1} m² ; {2} : ajouter des panneaux bruts, ou laisser durer la recherche</translation>
  </message>
  <message>
   <source>no published formula for screws loaded sideways in such boards</source>
   <translation>aucune formule publiée pour des vis chargées latéralement dans de tels panneaux</translation>
  </message>
  <message>
   <source>no room for a cleat between the shelves near the middle of the bay</source>
   <translation>pas de place pour un tasseau entre les étagères vers le milieu de la travée</translation>
  </message>
  <message>
   <source>no scatter is published ({0})</source>
   <translation>aucune dispersion n'est publiée ({0})</translation>
  </message>
  <message>
   <source>no screw of the catalogue holds in its fronts without coming out at their faces: add one to your catalogue, or take thicker fronts</source>
   <translation>aucune vis du catalogue ne tient dans ses façades sans ressortir à leur face : en ajouter une à votre catalogue, ou prendre des façades plus épaisses</translation>
  </message>
  <message>
   <source>no screw of the catalogue reaches through {0} of cleat, {1} of gap and {2} of lining far enough into a stud</source>
   <translation>aucune vis du catalogue ne traverse {0} de tasseau, {1} de jeu et {2} de parement assez loin dans un montant d'ossature</translation>
  </message>
  <message>
   <source>no sheet of it is in stock (there is: {0})</source>
   <translation>aucun panneau brut n'en est en stock (il y a : {0})</translation>
  </message>
  <message>
   <source>no span passes</source>
   <translation>aucune portée ne passe</translation>
  </message>
  <message>
   <source>no standard covers altered furniture; common practice</source>
   <translation>aucune norme ne couvre les meubles modifiés ; usage courant</translation>
  </message>
  <message>
   <source>no stud is sure to lie behind it</source>
   <translation>il n'est sûr d'aucun montant d'ossature derrière</translation>
  </message>
  <message>
   <source>no stud is sure to lie behind its top cleat{0}, or anchor it with brackets</source>
   <translation>il n'est sûr d'aucun montant d'ossature derrière son tasseau du haut{0}, ou l'ancrer par des équerres</translation>
  </message>
  <message>
   <source>no tool at hand makes cut {0} on {1} (fence {2})</source>
   <translation>aucun outil disponible ne fait la coupe {0} sur {1} (guide {2})</translation>
  </message>
  <message>
   <source>no way in was found</source>
   <translation>aucun chemin d'entrée trouvé</translation>
  </message>
  <message>
   <source>no withdrawal is published; take no {0}'s hold</source>
   <translation>aucune tenue à l'arrachement n'est publiée ; ne pas prendre celle d'un {0}</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>none for a drawer</source>
   <translation>aucune pour un tiroir</translation>
  </message>
  <message>
   <source>none from {0} to {1}</source>
   <translation>aucun de {0} à {1}</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>encore aucun</translation>
  </message>
  <message>
   <source>northern red oak: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation>chêne rouge du nord : Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (de mémoire)</translation>
  </message>
  <message>
   <source>not TOML</source>
   <translation>pas du TOML</translation>
  </message>
  <message>
   <source>not alone</source>
   <translation>pas seul</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>non vérifié</translation>
  </message>
  <message>
   <source>not checked by others</source>
   <translation>non contrôlé par d'autres</translation>
  </message>
  <message>
   <source>not checked: damp air; the shelves are taken to be in a dry, heated room</source>
   <translation>non vérifié : air humide ; les étagères sont supposées dans une pièce sèche et chauffée</translation>
  </message>
  <message>
   <source>not checked: how many screws find a stud, since their spacing is not known; find them and enter spacing and place; {0}</source>
   <translation>non vérifié : combien de vis trouvent un montant d'ossature, leur espacement n'étant pas connu ; les repérer et saisir espacement et place ; {0}</translation>
  </message>
  <message>
   <source>not checked: its legs are too long for their depth to be carried from wall to wall; put a leg, a bracket or a side panel under the free end of each; {0}</source>
   <translation>non vérifié : ses branches sont trop longues pour leur profondeur pour être portées de mur à mur ; mettre un pied, une équerre ou un panneau de côté sous le bout libre de chacune ; {0}</translation>
  </message>
  <message>
   <source>not checked: no design values are published for rails of {0}; take solid lumber, or ask its maker</source>
   <translation>non vérifié : aucune valeur de calcul n'est publiée pour des traverses en {0} ; prendre du bois massif, ou demander au fabricant</translation>
  </message>
  <message>
   <source>not checked: nobody is to sit on it, but somebody will; enter how many can</source>
   <translation>non vérifié : personne n'est censé s'y asseoir, mais quelqu'un le fera ; saisir combien le peuvent</translation>
  </message>
  <message>
   <source>not checked: strength and stability of {0}; {1}</source>
   <translation>non vérifié : résistance et stabilité de {0} ; {1}</translation>
  </message>
  <message>
   <source>not checked: what children reach and climb; say whether children live or visit here</source>
   <translation>non vérifié : ce que des enfants atteignent et escaladent ; dire si des enfants vivent ou viennent ici</translation>
  </message>
  <message>
   <source>not checked: what screws hold in {0}: {1}; {2}{3}</source>
   <translation>non vérifié : ce que tiennent les vis dans {0} : {1} ; {2}{3}</translation>
  </message>
  <message>
   <source>not checked: what the screws hold in, since the wall is not known; find out whether it is studs or masonry before you buy screws; {0}</source>
   <translation>non vérifié : dans quoi tiennent les vis, le mur n'étant pas connu ; trouver s'il est à ossature ou en maçonnerie avant d'acheter des vis ; {0}</translation>
  </message>
  <message>
   <source>not checked: whether a child shut in gets air, since the closed volume is not given</source>
   <translation>non vérifié : si un enfant enfermé a de l'air, le volume fermé n'étant pas donné</translation>
  </message>
  <message>
   <source>not checked: whether a light in the closet keeps clear of what is stored; say what light there is and how far it is from the nearest storage space; {0}</source>
   <translation>non vérifié : si un éclairage dans le placard reste à l'écart des affaires rangées ; dire quel éclairage il y a et à quelle distance du rangement le plus proche ; {0}</translation>
  </message>
  <message>
   <source>not checked: whether drawers and doors clear the closet's own door, since its opening is not measured; read the width of the opening</source>
   <translation>non vérifié : si les tiroirs et les portes passent devant la porte du placard lui-même, car son ouverture n'est pas mesurée ; mesurer la largeur de l'ouverture</translation>
  </message>
  <message>
   <source>not checked: whether it tips with its drawers open and whether what it stands on carries it; weigh it; {0}</source>
   <translation>non vérifié : s'il bascule tiroirs ouverts et si ce qui est dessous le porte ; le peser ; {0}</translation>
  </message>
  <message>
   <source>not checked: whether the closet covers outlets, junction boxes, registers or alarms; look before you fasten it; {0}</source>
   <translation>non vérifié : si le placard couvre des prises, boîtes de dérivation, bouches d'air ou détecteurs d'alarme ; regarder avant de le fixer ; {0}</translation>
  </message>
  <message>
   <source>not checked: whether the shelves carry what you will put on them, since that is not known; say what they are for</source>
   <translation>non vérifié : si les étagères portent ce que vous y mettrez, cela n'étant pas connu ; dire à quoi elles servent</translation>
  </message>
  <message>
   <source>not checked: whether walls, trim or a reused piece carry paint from before 1978, which may hold lead; {0}</source>
   <translation>non vérifié : si murs, boiseries ou meuble de réemploi portent une peinture d'avant 1978, qui peut contenir du plomb ; {0}</translation>
  </message>
  <message>
   <source>not checked: who reaches it, since its height is not given</source>
   <translation>non vérifié : qui l'atteint, sa hauteur n'étant pas donnée</translation>
  </message>
  <message>
   <source>not checked: {0} in the edges of {1}, for which nothing is published: glue it on as well, or screw it on through the sides</source>
   <translation>non vérifié : {0} dans les rives de {1}, pour quoi rien n'est publié : le coller aussi, ou le visser à travers les côtés</translation>
  </message>
  <message>
   <source>not checked: {0} is made for dry, heated rooms; ask its maker for figures in damp air, or take plywood or solid wood</source>
   <translation>non vérifié : {0} est fait pour pièces sèches et chauffées ; demander au fabricant ses valeurs en air humide, ou prendre du contreplaqué ou du bois massif</translation>
  </message>
  <message>
   <source>not checked: {0}, and the wall is not known or not computed; {1}</source>
   <translation>non vérifié : {0}, et le mur n'est pas connu ou pas calculé ; {1}</translation>
  </message>
  <message>
   <source>not checked: {0}, and whether a stud lies behind it is not known: find one, and put every screw into it; {1}</source>
   <translation>non vérifié : {0}, et on ne sait pas si un montant d'ossature est derrière : en trouver un, et y mettre toutes les vis ; {1}</translation>
  </message>
  <message>
   <source>not checked: {0}: {1}</source>
   <translation>non vérifié : {0} : {1}</translation>
  </message>
  <message>
   <source>not checked: {0}: {1}; {2}</source>
   <translation>non vérifié : {0} : {1} ; {2}</translation>
  </message>
  <message>
   <source>not measured, so taken for granted: {0}</source>
   <translation>non mesuré, donc admis : {0}</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>non planifié</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>non écrit</translation>
  </message>
  <message>
   <source>notch</source>
   <translation>entaille</translation>
  </message>
  <message>
   <source>nothing checks a reading, so that a wrong one would not show: {0}</source>
   <translation>rien ne contrôle une mesure, si bien qu'une fausse ne se verrait pas : {0}</translation>
  </message>
  <message>
   <source>nothing found</source>
   <translation>rien trouvé</translation>
  </message>
  <message>
   <source>nothing is there to be drilled</source>
   <translation>il n'y a rien à percer</translation>
  </message>
  <message>
   <source>nothing keeps the carcass square or takes the screws into the wall; add a back or cleats</source>
   <translation>rien ne tient le caisson d'équerre ni ne reçoit les vis au mur ; ajouter un dos ou des tasseaux</translation>
  </message>
  <message>
   <source>nothing to cut</source>
   <translation>rien à couper</translation>
  </message>
  <message>
   <source>number of fronts</source>
   <translation>nombre de façades</translation>
  </message>
  <message>
   <source>number of grooves</source>
   <translation>nombre de rainures</translation>
  </message>
  <message>
   <source>number of hinges</source>
   <translation>nombre de charnières</translation>
  </message>
  <message>
   <source>number of leaves</source>
   <translation>nombre de vantaux</translation>
  </message>
  <message>
   <source>number of shelves</source>
   <translation>nombre d'étagères</translation>
  </message>
  <message>
   <source>oak pole</source>
   <translation>tringle ronde en chêne</translation>
  </message>
  <message>
   <source>of bare lengths</source>
   <translation>de longueurs nues</translation>
  </message>
  <message>
   <source>of the length</source>
   <translation>de la longueur</translation>
  </message>
  <message>
   <source>of the sheets given here</source>
   <translation>des panneaux bruts donnés ici</translation>
  </message>
  <message>
   <source>off by up to {0}</source>
   <translation>inexact de {0} au plus</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>chute</translation>
  </message>
  <message>
   <source>offcut {0}</source>
   <translation>chute {0}</translation>
  </message>
  <message>
   <source>offcuts</source>
   <translation>chutes</translation>
  </message>
  <message>
   <source>on carpet, a child on {0}</source>
   <translation>sur moquette, un enfant sur {0}</translation>
  </message>
  <message>
   <source>on cleats</source>
   <translation>sur tasseaux</translation>
  </message>
  <message>
   <source>on pins</source>
   <translation>sur taquets</translation>
  </message>
  <message>
   <source>on top of its supports</source>
   <translation>sur ses supports</translation>
  </message>
  <message>
   <source>one at hand</source>
   <translation>un disponible</translation>
  </message>
  <message>
   <source>one of these must be wrong, and the readings do not say which: {0}; measure them again{1}. Until then they count for little</source>
   <translation>l'une de celles-ci doit être fausse, et les mesures ne disent pas laquelle : {0} ; les reprendre{1}. Jusque-là elles comptent peu</translation>
  </message>
  <message>
   <source>only the smallest unit may have a fraction; {0}</source>
   <translation>seule la plus petite unité peut avoir une fraction ; {0}</translation>
  </message>
  <message>
   <source>open lamps and pendants set clothes on fire and are not allowed in closets: have an enclosed one fitted; {0}</source>
   <translation>les lampes nues et suspensions mettent le feu aux vêtements et sont interdites dans les placards : en faire poser une fermée ; {0}</translation>
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation>lampe nue ou partiellement fermée, ou suspension</translation>
  </message>
  <message>
   <source>opening {0}, inside {1}</source>
   <translation>ouverture {0}, intérieur {1}</translation>
  </message>
  <message>
   <source>opens only {0}°, then {1} is in the way</source>
   <translation>ne s'ouvre que de {0}°, puis {1} gêne</translation>
  </message>
  <message>
   <source>option --length</source>
   <translation>option --length</translation>
  </message>
  <message>
   <source>option --offcut</source>
   <translation>option --offcut</translation>
  </message>
  <message>
   <source>option --sheet</source>
   <translation>option --sheet</translation>
  </message>
  <message>
   <source>option --stages</source>
   <translation>option --stages</translation>
  </message>
  <message>
   <source>option --{0}</source>
   <translation>option --{0}</translation>
  </message>
  <message>
   <source>or put a leg under midspan</source>
   <translation>ou mettre un pied à mi-portée</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>périmé</translation>
  </message>
  <message>
   <source>outlets and boxes must stay within reach, no breaker panel may be in a clothes closet, and no register or alarm may be covered: cut the back out around them, or have them moved; {0}</source>
   <translation>prises et boîtes doivent rester accessibles, aucun tableau électrique ne peut être dans un placard à vêtements, et aucune bouche d'air ni détecteur d'alarme ne peut être couvert : découper le dos autour, ou les faire déplacer ; {0}</translation>
  </message>
  <message>
   <source>over the opening</source>
   <translation>au-dessus de l'ouverture</translation>
  </message>
  <message>
   <source>over the sides</source>
   <translation>sur les côtés</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>étagère du dessus</translation>
  </message>
  <message>
   <source>overhang at the ends</source>
   <translation>débord aux extrémités</translation>
  </message>
  <message>
   <source>overhang at the top</source>
   <translation>débord en haut</translation>
  </message>
  <message>
   <source>overlap of a moulding</source>
   <translation>recouvrement d'une moulure</translation>
  </message>
  <message>
   <source>overlay at the {0}</source>
   <translation>recouvrement côté {0}</translation>
  </message>
  <message>
   <source>overlay of the fronts</source>
   <translation>recouvrement des façades</translation>
  </message>
  <message>
   <source>pack out the gap behind it solidly, and put its screws into studs; or blocking between the studs, or a side panel under the shelf; {0}</source>
   <translation>combler le jeu derrière par un appui plein, et mettre ses vis dans des montants d'ossature ; ou des entretoises entre les montants d'ossature, ou un panneau de côté sous l'étagère ; {0}</translation>
  </message>
  <message>
   <source>paint from before 1978 may hold lead: have it tested before you sand, saw, scrape or heat it; keep children away; in a home that is let, certified firms only above 6 ft² a room; {0}</source>
   <translation>une peinture d'avant 1978 peut contenir du plomb : la faire analyser avant de la poncer, scier, gratter ou chauffer ; tenir les enfants à l'écart ; dans un logement loué, seulement des entreprises certifiées au-delà de 6 ft² par pièce ; {0}</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>panneau</translation>
  </message>
  <message>
   <source>panel at the {0}</source>
   <translation>panneau côté {0}</translation>
  </message>
  <message>
   <source>panel {0}</source>
   <translation>panneau {0}</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pièce</translation>
  </message>
  <message>
   <source>part list</source>
   <translation>liste des pièces</translation>
  </message>
  <message>
   <source>part {0}</source>
   <translation>pièce {0}</translation>
  </message>
  <message>
   <source>part {0} is not on any sheet</source>
   <translation>la pièce {0} n'est sur aucun panneau brut</translation>
  </message>
  <message>
   <source>part {0} is not wanted</source>
   <translation>la pièce {0} n'est pas demandée</translation>
  </message>
  <message>
   <source>part {0} is placed twice</source>
   <translation>la pièce {0} est placée deux fois</translation>
  </message>
  <message>
   <source>part {0} is placed {1} times</source>
   <translation>la pièce {0} est placée {1} fois</translation>
  </message>
  <message>
   <source>particleboard: {0}</source>
   <translation>panneau de particules : {0}</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>pièces</translation>
  </message>
  <message>
   <source>parts {0} wide, {1}</source>
   <translation>pièces de {0} de large, {1}</translation>
  </message>
  <message>
   <source>passes to {0} between supports</source>
   <translation>passe jusqu'à {0} entre supports</translation>
  </message>
  <message>
   <source>past the side</source>
   <translation>au-delà du côté</translation>
  </message>
  <message>
   <source>piece {0}</source>
   <translation>morceau {0}</translation>
  </message>
  <message>
   <source>piece {0} is cut {1} times</source>
   <translation>la pièce {0} est coupée {1} fois</translation>
  </message>
  <message>
   <source>piece {0} is not wanted</source>
   <translation>la pièce {0} n'est pas demandée</translation>
  </message>
  <message>
   <source>piece {0} is on no stock length</source>
   <translation>la pièce {0} n'est sur aucune longueur</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>morceaux</translation>
  </message>
  <message>
   <source>pine pole</source>
   <translation>tringle ronde en pin</translation>
  </message>
  <message>
   <source>place</source>
   <translation>place</translation>
  </message>
  <message>
   <source>place of a load</source>
   <translation>place d'une charge</translation>
  </message>
  <message>
   <source>place of the {0}</source>
   <translation>place : {0}</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>plan</translation>
  </message>
  <message>
   <source>plan again with the wider kerf</source>
   <translation>replanifier avec le trait de scie plus large</translation>
  </message>
  <message>
   <source>plan of lengths</source>
   <translation>plan des longueurs</translation>
  </message>
  <message>
   <source>plan the sheets again first</source>
   <translation>replanifier d'abord les panneaux bruts</translation>
  </message>
  <message>
   <source>plan the sheets first</source>
   <translation>planifier d'abord les panneaux bruts</translation>
  </message>
  <message>
   <source>plaster on lath</source>
   <translation>plâtre sur lattis</translation>
  </message>
  <message>
   <source>play of a loose shelf</source>
   <translation>jeu d'une étagère réglable</translation>
  </message>
  <message>
   <source>pocket screws</source>
   <translation>vis en biais</translation>
  </message>
  <message>
   <source>ponderosa pine: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation>pin ponderosa : Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (de mémoire)</translation>
  </message>
  <message>
   <source>position</source>
   <translation>position</translation>
  </message>
  <message>
   <source>price</source>
   <translation>prix</translation>
  </message>
  <message>
   <source>prices are invented: enter your own, with their currency, in your catalogue</source>
   <translation>les prix sont inventés : saisir les vôtres, avec leur monnaie, dans votre catalogue</translation>
  </message>
  <message>
   <source>pulls</source>
   <translation>poignées</translation>
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation>mettre un relevé dans le groupe du placard</translation>
  </message>
  <message>
   <source>put it into the group of a closet</source>
   <translation>le mettre dans le groupe d'un placard</translation>
  </message>
  <message>
   <source>python3 -m closetbench layout</source>
   <translation>python3 -m closetbench layout</translation>
  </message>
  <message>
   <source>quantity</source>
   <translation>quantité</translation>
  </message>
  <message>
   <source>quarter round</source>
   <translation>quart-de-rond</translation>
  </message>
  <message>
   <source>rail bearer</source>
   <translation>support de traverse</translation>
  </message>
  <message>
   <source>rail {0}</source>
   <translation>traverse {0}</translation>
  </message>
  <message>
   <source>rails</source>
   <translation>traverses</translation>
  </message>
  <message>
   <source>reaches past the envelope at the {0}: take less overhang, or have the stile scribed to the wall</source>
   <translation>dépasse le volume utile côté {0} : prendre moins de débord, ou faire ajuster le montant au mur</translation>
  </message>
  <message>
   <source>reaches {0} past the last thing that carries it: put a cleat or an upright under its end</source>
   <translation>dépasse de {0} le dernier appui qui la porte : mettre un tasseau ou un montant sous son bout</translation>
  </message>
  <message>
   <source>readings</source>
   <translation>mesures</translation>
  </message>
  <message>
   <source>readings that do not agree</source>
   <translation>mesures qui ne concordent pas</translation>
  </message>
  <message>
   <source>rear face of a loose shelf's lip</source>
   <translation>face arrière de la retombée d'une étagère réglable</translation>
  </message>
  <message>
   <source>rear kick board</source>
   <translation>plinthe arrière</translation>
  </message>
  <message>
   <source>rear post</source>
   <translation>poteau arrière</translation>
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation>lampe fermée ou LED, encastrée</translation>
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation>fluorescent, encastré</translation>
  </message>
  <message>
   <source>reserved</source>
   <translation>réservé</translation>
  </message>
  <message>
   <source>resolution</source>
   <translation>résolution</translation>
  </message>
  <message>
   <source>resolution of the readings</source>
   <translation>résolution des mesures</translation>
  </message>
  <message>
   <source>rest {0}</source>
   <translation>reste {0}</translation>
  </message>
  <message>
   <source>return at the left of the opening</source>
   <translation>retour de mur à gauche de l'ouverture</translation>
  </message>
  <message>
   <source>return at the left of the opening, high</source>
   <translation>retour de mur à gauche de l'ouverture, haut</translation>
  </message>
  <message>
   <source>return at the right of the opening</source>
   <translation>retour de mur à droite de l'ouverture</translation>
  </message>
  <message>
   <source>return beside the opening</source>
   <translation>retour de mur à côté de l'ouverture</translation>
  </message>
  <message>
   <source>right baseboard</source>
   <translation>plinthe du mur de droite</translation>
  </message>
  <message>
   <source>right bow</source>
   <translation>bombement droit</translation>
  </message>
  <message>
   <source>right casing</source>
   <translation>chambranle droit</translation>
  </message>
  <message>
   <source>right end</source>
   <translation>bout droit</translation>
  </message>
  <message>
   <source>right return</source>
   <translation>retour de mur droit</translation>
  </message>
  <message>
   <source>right side</source>
   <translation>côté droit</translation>
  </message>
  <message>
   <source>right skew</source>
   <translation>biais droit</translation>
  </message>
  <message>
   <source>right stile</source>
   <translation>montant droit</translation>
  </message>
  <message>
   <source>right twist</source>
   <translation>gauchissement droit</translation>
  </message>
  <message>
   <source>right wall</source>
   <translation>mur de droite</translation>
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation>coupes en long et en travers</translation>
  </message>
  <message>
   <source>rips only</source>
   <translation>coupes en long seules</translation>
  </message>
  <message>
   <source>rise of the floor from front left to back right</source>
   <translation>montée du sol de l'avant gauche au fond droit</translation>
  </message>
  <message>
   <source>rise of the floor from front to back at the left</source>
   <translation>montée du sol de l'avant au fond à gauche</translation>
  </message>
  <message>
   <source>rise of the floor from front to back at the right</source>
   <translation>montée du sol de l'avant au fond à droite</translation>
  </message>
  <message>
   <source>rise of the floor from left to right at the back</source>
   <translation>montée du sol de gauche à droite au fond</translation>
  </message>
  <message>
   <source>rise of the floor from left to right at the front</source>
   <translation>montée du sol de gauche à droite à l'avant</translation>
  </message>
  <message>
   <source>rise of the floor from left to the middle at the back</source>
   <translation>montée du sol de gauche au milieu au fond</translation>
  </message>
  <message>
   <source>rise of the floor from left to the middle at the front</source>
   <translation>montée du sol de gauche au milieu à l'avant</translation>
  </message>
  <message>
   <source>rise of the lower edge</source>
   <translation>montée du bord inférieur</translation>
  </message>
  <message>
   <source>rise of the upper edge</source>
   <translation>montée du bord supérieur</translation>
  </message>
  <message>
   <source>round section</source>
   <translation>section ronde</translation>
  </message>
  <message>
   <source>rout with panel and straightedge clamped, against the bit's turn, in passes no deeper than half the bit's diameter; let the bit stop before you lift it; eyes and ears protected; the router's own manual comes first</source>
   <translation>défoncer panneau et règle serrés, contre la rotation de la fraise, en passes ne dépassant pas la moitié du diamètre de la fraise ; laisser la fraise s'arrêter avant de la relever ; yeux et oreilles protégés ; la notice de la défonceuse prime</translation>
  </message>
  <message>
   <source>router bit</source>
   <translation>fraise</translation>
  </message>
  <message>
   <source>row</source>
   <translation>rangée</translation>
  </message>
  <message>
   <source>sags</source>
   <translation>fléchit de</translation>
  </message>
  <message>
   <source>sags too much</source>
   <translation>fléchit trop</translation>
  </message>
  <message>
   <source>sags too much:</source>
   <translation>fléchit trop :</translation>
  </message>
  <message>
   <source>saw with the sheet held on both sides of the cut so that the kerf cannot close, the guard and the riving knife on, the blade just through, push sticks, nobody in line with the blade; eyes and ears protected; unplug before changing a blade; the saw's own manual comes first</source>
   <translation>scier le panneau brut soutenu des deux côtés de la coupe pour que le trait de scie ne se referme pas, capot et couteau diviseur en place, lame dépassant à peine, poussoirs, personne dans l'axe de la lame ; yeux et oreilles protégés ; débrancher avant de changer de lame ; la notice de la scie prime</translation>
  </message>
  <message>
   <source>saw {0}</source>
   <translation>scie {0}</translation>
  </message>
  <message>
   <source>say the unit of {0}; {1}</source>
   <translation>dire l'unité de {0} ; {1}</translation>
  </message>
  <message>
   <source>say which board they are in</source>
   <translation>dire dans quel panneau ils sont</translation>
  </message>
  <message>
   <source>says no {0}: {1}</source>
   <translation>n'indique pas {0} : {1}</translation>
  </message>
  <message>
   <source>screws through its cleats</source>
   <translation>vis à travers ses tasseaux</translation>
  </message>
  <message>
   <source>scribe allowance</source>
   <translation>marge d'ajustage</translation>
  </message>
  <message>
   <source>scribed to the floor</source>
   <translation>ajusté au sol</translation>
  </message>
  <message>
   <source>search, for each material</source>
   <translation>recherche, par matériau</translation>
  </message>
  <message>
   <source>seconds more for simpler cutting (as --seconds)</source>
   <translation>secondes de plus pour un débit plus simple (comme --seconds)</translation>
  </message>
  <message>
   <source>section</source>
   <translation>section</translation>
  </message>
  <message>
   <source>set the hinges so that their axis is plumb, or the door swings by itself</source>
   <translation>poser les charnières l'axe d'aplomb, sinon la porte bouge d'elle-même</translation>
  </message>
  <message>
   <source>set the rails upright ({0} high, not {1}), </source>
   <translation>mettre les traverses debout ({0} de haut, pas {1}), </translation>
  </message>
  <message>
   <source>setback of a loose shelf</source>
   <translation>retrait d'une étagère réglable</translation>
  </message>
  <message>
   <source>shallower legs, longer screws, or a leg under its front</source>
   <translation>des branches moins profondes, des vis plus longues, ou un pied sous l'avant</translation>
  </message>
  <message>
   <source>sheet</source>
   <translation>panneau brut</translation>
  </message>
  <message>
   <source>sheet size</source>
   <translation>dimension de panneau brut</translation>
  </message>
  <message>
   <source>sheet {0}</source>
   <translation>panneau brut {0}</translation>
  </message>
  <message>
   <source>sheet {0} is not in stock</source>
   <translation>le panneau brut {0} n'est pas en stock</translation>
  </message>
  <message>
   <source>sheet {0} is used {1} times, there are {2}</source>
   <translation>le panneau brut {0} est employé {1} fois, il y en a {2}</translation>
  </message>
  <message>
   <source>sheet {0} of {1}</source>
   <translation>panneau brut {0} sur {1}</translation>
  </message>
  <message>
   <source>sheet {0}, {1} wide, gives {2} of {3} and {4} are left{5}; at {6} or less it gives {7}{8}</source>
   <translation>le panneau brut {0}, large de {1}, donne {2} de {3} et il reste {4}{5} ; à {6} ou moins il donne {7}{8}</translation>
  </message>
  <message>
   <source>sheets in stock</source>
   <translation>panneaux bruts en stock</translation>
  </message>
  <message>
   <source>sheets that can be bought</source>
   <translation>panneaux bruts à acheter</translation>
  </message>
  <message>
   <source>shelf load</source>
   <translation>charge d'étagère</translation>
  </message>
  <message>
   <source>shelf pin holes</source>
   <translation>trous de taquets</translation>
  </message>
  <message>
   <source>shelf pins</source>
   <translation>taquets d'étagère</translation>
  </message>
  <message>
   <source>shelf {0}</source>
   <translation>étagère {0}</translation>
  </message>
  <message>
   <source>shelf {0} back cleat</source>
   <translation>étagère {0} tasseau de dos</translation>
  </message>
  <message>
   <source>shelf {0} side cleat</source>
   <translation>étagère {0} tasseau latéral</translation>
  </message>
  <message>
   <source>shelves lie level on both sides, so the second cannot be fastened straight through the divider: let shelves into grooves, carry them on cleats or set them off</source>
   <translation>des étagères sont au même niveau des deux côtés, la seconde ne peut donc pas être fixée droit à travers le montant intermédiaire : encastrer les étagères en rainures, les porter sur tasseaux ou les décaler</translation>
  </message>
  <message>
   <source>shelves to their cleats</source>
   <translation>étagères à leurs tasseaux</translation>
  </message>
  <message>
   <source>shim the slides plumb and parallel</source>
   <translation>caler les coulisses d'aplomb et parallèles</translation>
  </message>
  <message>
   <source>shimmed under its cross members alone, each field of it carries {0} with all shelves full over {1}</source>
   <translation>calé sous ses seules entretoises, chaque champ porte {0} toutes étagères pleines sur {1}</translation>
  </message>
  <message>
   <source>shims under the rails between the cross members too, closer cross members, or a higher base</source>
   <translation>des cales aussi sous les traverses entre les entretoises, des entretoises plus rapprochées, ou un socle plus haut</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>étagère à chaussures</translation>
  </message>
  <message>
   <source>shop</source>
   <translation>atelier</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>appuis simples</translation>
  </message>
  <message>
   <source>sitters</source>
   <translation>personnes assises</translation>
  </message>
  <message>
   <source>size</source>
   <translation>dimension</translation>
  </message>
  <message>
   <source>sizes and grooves use the nominal {0}, but boards sold as that may be {1}: measure the sheets before cutting and enter the thickness</source>
   <translation>dimensions et rainures emploient le nominal {0}, mais les panneaux vendus comme tels peuvent faire {1} : mesurer les panneaux bruts avant le débit et saisir l'épaisseur</translation>
  </message>
  <message>
   <source>skin under a blind hole</source>
   <translation>épaisseur restante sous un trou borgne</translation>
  </message>
  <message>
   <source>slide bearer</source>
   <translation>support de coulisse</translation>
  </message>
  <message>
   <source>slide length</source>
   <translation>longueur de coulisse</translation>
  </message>
  <message>
   <source>small table saw</source>
   <translation>petite scie sur table</translation>
  </message>
  <message>
   <source>solid lumber</source>
   <translation>bois massif</translation>
  </message>
  <message>
   <source>solid wood: it swells and shrinks by about {0} across the grain between winter and summer; fasten it firmly at one edge only and leave room at the other</source>
   <translation>bois massif : il gonfle et se rétracte d'environ {0} en travers du fil entre hiver et été ; ne le fixer ferme que sur un bord et laisser du jeu à l'autre</translation>
  </message>
  <message>
   <source>spacing of the base's cross members</source>
   <translation>espacement des entretoises du socle</translation>
  </message>
  <message>
   <source>span over</source>
   <translation>portée sur</translation>
  </message>
  <message>
   <source>spans to {0} pass</source>
   <translation>portées jusqu'à {0} passent</translation>
  </message>
  <message>
   <source>specific gravity</source>
   <translation>densité</translation>
  </message>
  <message>
   <source>split its {0} into pieces of {1} or less</source>
   <translation>partager {0} en morceaux de {1} ou moins</translation>
  </message>
  <message>
   <source>stages</source>
   <translation>passes</translation>
  </message>
  <message>
   <source>stands for none given; write another value</source>
   <translation>vaut pour non donné ; écrire une autre valeur</translation>
  </message>
  <message>
   <source>stands in {0}</source>
   <translation>se trouve dans {0}</translation>
  </message>
  <message>
   <source>stands out in front of the envelope: make the carcass shallower, or have it lie over the wall beside the opening on purpose</source>
   <translation>dépasse devant le volume utile : faire le caisson moins profond, ou le laisser exprès recouvrir le mur à côté de l'ouverture</translation>
  </message>
  <message>
   <source>start above the compartment's floor</source>
   <translation>départ au-dessus du plancher de la case</translation>
  </message>
  <message>
   <source>statics: the door's weight turns about its hinges, the top one is pulled; test load: ANSI/KCMA A161.1, 6.1 (as quoted)</source>
   <translation>statique : le poids de la porte tourne autour de ses charnières, celle du haut est tirée ; charge d'essai : ANSI/KCMA A161.1, 6.1 (tel que cité)</translation>
  </message>
  <message>
   <source>statics; {0}</source>
   <translation>statique ; {0}</translation>
  </message>
  <message>
   <source>steel studs</source>
   <translation>montants d'ossature en acier</translation>
  </message>
  <message>
   <source>steel tube</source>
   <translation>tube d'acier</translation>
  </message>
  <message>
   <source>steel: E 200 GPa; yield of soft tube 205 N/mm² over 1.67 (from memory)</source>
   <translation>acier : E 200 GPa ; limite élastique d'un tube doux 205 N/mm² sur 1.67 (de mémoire)</translation>
  </message>
  <message>
   <source>step of the groove depth</source>
   <translation>pas de la profondeur de rainure</translation>
  </message>
  <message>
   <source>stiffness</source>
   <translation>rigidité</translation>
  </message>
  <message>
   <source>stock length</source>
   <translation>longueur de stock</translation>
  </message>
  <message>
   <source>stock length {0}</source>
   <translation>longueur de stock {0}</translation>
  </message>
  <message>
   <source>stock length {0} is taken {1} times, there are {2}</source>
   <translation>la longueur {0} est prise {1} fois, il y en a {2}</translation>
  </message>
  <message>
   <source>stock lengths</source>
   <translation>longueurs de stock</translation>
  </message>
  <message>
   <source>stop {0}</source>
   <translation>butée {0}</translation>
  </message>
  <message>
   <source>stops</source>
   <translation>butées</translation>
  </message>
  <message>
   <source>stops to shoe shelves</source>
   <translation>butées aux étagères à chaussures</translation>
  </message>
  <message>
   <source>store cuts</source>
   <translation>coupes au magasin</translation>
  </message>
  <message>
   <source>store panel saw</source>
   <translation>scie à panneaux du magasin</translation>
  </message>
  <message>
   <source>straight through the opening</source>
   <translation>tout droit par l'ouverture</translation>
  </message>
  <message>
   <source>straightedge saw</source>
   <translation>scie sur règle</translation>
  </message>
  <message>
   <source>strip behind the lid</source>
   <translation>bande derrière l'abattant</translation>
  </message>
  <message>
   <source>stud spacing</source>
   <translation>espacement des montants d'ossature</translation>
  </message>
  <message>
   <source>style</source>
   <translation>style</translation>
  </message>
  <message>
   <source>sum of the bay widths</source>
   <translation>somme des largeurs de travée</translation>
  </message>
  <message>
   <source>supports</source>
   <translation>supports</translation>
  </message>
  <message>
   <source>supports at most {0} apart: {1} between the ends</source>
   <translation>supports distants d'au plus {0} : {1} entre les extrémités</translation>
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation>lampe fermée ou LED, en saillie</translation>
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation>fluorescent, en saillie</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>relevé</translation>
  </message>
  <message>
   <source>table</source>
   <translation>table</translation>
  </message>
  <message>
   <source>table saw</source>
   <translation>scie sur table</translation>
  </message>
  <message>
   <source>take a second person along, or let the store cut more</source>
   <translation>emmener une seconde personne, ou laisser le magasin couper davantage</translation>
  </message>
  <message>
   <source>take higher rails, </source>
   <translation>prendre des traverses plus hautes, </translation>
  </message>
  <message>
   <source>taken as heavy softwood: not known</source>
   <translation>pris comme résineux lourd : inconnu</translation>
  </message>
  <message>
   <source>taken to be straight, since no reading would show it: no {0}; hold a straightedge to them, or take the readings half way that the survey sheet asks for</source>
   <translation>supposé droit, aucune mesure ne le montrant : pas de {0} ; y présenter une règle, ou prendre les mesures à mi-chemin que demande la feuille de relevé</translation>
  </message>
  <message>
   <source>takes the place of the list's own</source>
   <translation>remplace ceux de la liste</translation>
  </message>
  <message>
   <source>takes the same space as {0}: move one of them or make it smaller</source>
   <translation>prend la même place que {0} : déplacer l'un d'eux ou le faire plus petit</translation>
  </message>
  <message>
   <source>takes three people</source>
   <translation>demande trois personnes</translation>
  </message>
  <message>
   <source>takes two people</source>
   <translation>demande deux personnes</translation>
  </message>
  <message>
   <source>taper of the {0}</source>
   <translation>biais : {0}</translation>
  </message>
  <message>
   <source>tapers</source>
   <translation>biais</translation>
  </message>
  <message>
   <source>text</source>
   <translation>texte</translation>
  </message>
  <message>
   <source>that is a folder; give a file's name</source>
   <translation>c'est un dossier ; donner le nom d'un fichier</translation>
  </message>
  <message>
   <source>that the summary is written in</source>
   <translation>dans laquelle le résumé est écrit</translation>
  </message>
  <message>
   <source>the back wall is plumb</source>
   <translation>le mur du fond est d'aplomb</translation>
  </message>
  <message>
   <source>the boring for the {0} is common practice: compare it with the sheet of the hinge in hand, and bore a trial piece first</source>
   <translation>le perçage pour {0} est d'usage courant : le comparer avec la fiche de la charnière en main, et percer d'abord une pièce d'essai</translation>
  </message>
  <message>
   <source>the cleats are too small for the screws into the wall</source>
   <translation>les tasseaux sont trop petits pour les vis au mur</translation>
  </message>
  <message>
   <source>the closet is as square in plan at the left as at the right</source>
   <translation>le placard est aussi d'équerre en plan à gauche qu'à droite</translation>
  </message>
  <message>
   <source>the closet's own door, open</source>
   <translation>la porte ouverte du placard lui-même</translation>
  </message>
  <message>
   <source>the comma can be read in two ways; type {0} or {1}</source>
   <translation>la virgule peut se lire de deux façons ; écrire {0} ou {1}</translation>
  </message>
  <message>
   <source>the design value is for the weakest twentieth of the grade, over 2.1 (ASTM D245)</source>
   <translation>la valeur de calcul vaut pour le vingtième le plus faible de la classe, sur 2.1 (ASTM D245)</translation>
  </message>
  <message>
   <source>the drawers pull out {0} of {1}; the rear stays inside</source>
   <translation>les tiroirs sortent de {0} sur {1} ; l'arrière reste dedans</translation>
  </message>
  <message>
   <source>the fence at {0} mm is not where the kerf is</source>
   <translation>le guide à {0} mm n'est pas au trait de scie</translation>
  </message>
  <message>
   <source>the figures of the {0} are no maker's: enter the sheet of the slide in hand as a class of your own before cutting</source>
   <translation>les valeurs de {0} ne sont d'aucun fabricant : saisir la fiche de la coulisse en main comme classe personnelle avant le débit</translation>
  </message>
  <message>
   <source>the file holds [[offcut]] tables only</source>
   <translation>le fichier ne contient que des tables [[offcut]]</translation>
  </message>
  <message>
   <source>the first line names the columns</source>
   <translation>la première ligne nomme les colonnes</translation>
  </message>
  <message>
   <source>the first names columns: {0}</source>
   <translation>la première nomme les colonnes : {0}</translation>
  </message>
  <message>
   <source>the floor falls too far to be shimmed: scribe the base frame to it</source>
   <translation>le sol descend trop pour être calé : y ajuster le cadre de socle</translation>
  </message>
  <message>
   <source>the floor is level from front to back</source>
   <translation>le sol est de niveau d'avant en arrière</translation>
  </message>
  <message>
   <source>the floor is level from left to right</source>
   <translation>le sol est de niveau de gauche à droite</translation>
  </message>
  <message>
   <source>the fraction after a whole number must be under 1; {0}</source>
   <translation>la fraction après un nombre entier doit être inférieure à 1 ; {0}</translation>
  </message>
  <message>
   <source>the front edge of a shelf</source>
   <translation>le bord avant d'une étagère</translation>
  </message>
  <message>
   <source>the front edges show the raw core of {0}; choose an edge band</source>
   <translation>les bords avant montrent l'âme brute de {0} ; choisir un chant</translation>
  </message>
  <message>
   <source>the front of an open drawer</source>
   <translation>l'avant d'un tiroir ouvert</translation>
  </message>
  <message>
   <source>the gap at the {0} is wider than a scribed filler usually covers</source>
   <translation>le jeu côté {0} est plus large que n'en couvre d'ordinaire un fileur ajusté</translation>
  </message>
  <message>
   <source>the gap between the shelf and the walls is wider than the quarter rounds: scribe it to the walls, or name a larger one</source>
   <translation>le jeu entre l'étagère et les murs est plus large que les quarts-de-rond : l'ajuster aux murs, ou nommer un plus grand</translation>
  </message>
  <message>
   <source>the gap under the base is wider than the quarter rounds: scribe the base frame to the floor, or name a larger one</source>
   <translation>le jeu sous le socle est plus large que les quarts-de-rond : ajuster le cadre de socle au sol, ou nommer un plus grand</translation>
  </message>
  <message>
   <source>the heading has {0}</source>
   <translation>le titre a {0}</translation>
  </message>
  <message>
   <source>the holes for a {0}{1} cannot be drilled: {2}; move it or what is in its way</source>
   <translation>les trous pour {0}{1} ne peuvent pas être percés : {2} ; le déplacer ou ce qui le gêne</translation>
  </message>
  <message>
   <source>the layout reckons with a kerf of {0}, the {1} takes {2}: the last parts of a row come out small</source>
   <translation>le plan de débit compte un trait de scie de {0}, {1} prend {2} : les dernières pièces d'une rangée sortent trop petites</translation>
  </message>
  <message>
   <source>the left return</source>
   <translation>le retour de mur gauche</translation>
  </message>
  <message>
   <source>the left wall is plumb</source>
   <translation>le mur de gauche est d'aplomb</translation>
  </message>
  <message>
   <source>the lid can fall on a child leaning in: fit supports that hold it at any height without adjustment, or make it a drawer; {0}</source>
   <translation>l'abattant peut tomber sur un enfant qui se penche dedans : poser des compas qui le tiennent à toute hauteur sans réglage, ou en faire un tiroir ; {0}</translation>
  </message>
  <message>
   <source>the lines before say {0}</source>
   <translation>les lignes précédentes disent {0}</translation>
  </message>
  <message>
   <source>the longest span that passes is {0}</source>
   <translation>la plus longue portée qui passe est {0}</translation>
  </message>
  <message>
   <source>the lower number of a fraction must not be 0; {0}</source>
   <translation>le nombre inférieur d'une fraction ne doit pas être 0 ; {0}</translation>
  </message>
  <message>
   <source>the middle of the closet's sliding panels</source>
   <translation>le milieu des panneaux coulissants du placard</translation>
  </message>
  <message>
   <source>the name must end in {0}</source>
   <translation>le nom doit finir par {0}</translation>
  </message>
  <message>
   <source>the number must be {0}</source>
   <translation>le nombre doit être {0}</translation>
  </message>
  <message>
   <source>the opening is in the middle of the front</source>
   <translation>l'ouverture est au milieu de l'avant</translation>
  </message>
  <message>
   <source>the part list, JSON or CSV</source>
   <translation>la liste des pièces, JSON ou CSV</translation>
  </message>
  <message>
   <source>the plan takes it, but it is not at hand</source>
   <translation>le plan le prend, mais il n'est pas disponible</translation>
  </message>
  <message>
   <source>the plan to write, JSON; else it is printed</source>
   <translation>le plan à écrire, JSON ; sinon il est affiché</translation>
  </message>
  <message>
   <source>the readings agree less well with flat walls than their tape allows; all sizes are less certain by this factor, and more readings would help</source>
   <translation>les mesures concordent moins bien avec des murs plans que leur mètre ne le permet ; toutes les dimensions sont moins sûres de ce facteur, et plus de mesures aideraient</translation>
  </message>
  <message>
   <source>the readings show a {0}{1}</source>
   <translation>les mesures montrent : {0}{1}</translation>
  </message>
  <message>
   <source>the right return</source>
   <translation>le retour de mur droit</translation>
  </message>
  <message>
   <source>the rule exempts units permanently attached to the building, and only those</source>
   <translation>la règle exempte les meubles fixés à demeure au bâtiment, et eux seuls</translation>
  </message>
  <message>
   <source>the same seed, the same plan</source>
   <translation>la même graine, le même plan</translation>
  </message>
  <message>
   <source>the screws of its supports, each of which carries up to {0}</source>
   <translation>les vis de ses supports, dont chacun porte jusqu'à {0}</translation>
  </message>
  <message>
   <source>the sizes of these hang on the {0}, and the sheet has nothing to spare for cutting them larger first: {1}</source>
   <translation>les cotes de ces pièces dépendent de la scie ({0}), et le panneau brut n'a rien de reste pour les couper d'abord plus grandes : {1}</translation>
  </message>
  <message>
   <source>the slides lie behind a face frame: pack them out by {0} at the left and {1} at the right, flush with the frame's edges</source>
   <translation>les coulisses sont derrière un cadre de façade : les rembourrer de {0} à gauche et de {1} à droite, au nu des bords du cadre</translation>
  </message>
  <message>
   <source>the span that passes is {0}</source>
   <translation>la portée qui passe est {0}</translation>
  </message>
  <message>
   <source>the top gives way under one person between two rails</source>
   <translation>le dessus cède sous une personne entre deux traverses</translation>
  </message>
  <message>
   <source>the top may break under one person between two rails</source>
   <translation>le dessus peut rompre sous une personne entre deux traverses</translation>
  </message>
  <message>
   <source>the wall above the opening</source>
   <translation>le mur au-dessus de l'ouverture</translation>
  </message>
  <message>
   <source>the wall is not known or not computed, so no screws for it are in the bill</source>
   <translation>le mur n'est pas connu ou pas calculé, donc ses vis ne sont pas dans la nomenclature</translation>
  </message>
  <message>
   <source>the {0}</source>
   <translation>{0}</translation>
  </message>
  <message>
   <source>the {0} cannot be right: {1} was read, {2} follows from the others; measure it again. The room is worked out without it</source>
   <translation>mesure impossible : {0} ; {1} a été lu, {2} découle des autres ; la reprendre. La pièce est calculée sans elle</translation>
  </message>
  <message>
   <source>there already is a piece {0}</source>
   <translation>il y a déjà un morceau {0}</translation>
  </message>
  <message>
   <source>there is no folder {0}; make it or choose another</source>
   <translation>il n'y a pas de dossier {0} ; le créer ou en choisir un autre</translation>
  </message>
  <message>
   <source>there is no piece {0} at this point</source>
   <translation>il n'y a pas de morceau {0} à ce point</translation>
  </message>
  <message>
   <source>there is no such offcut</source>
   <translation>il n'y a pas de telle chute</translation>
  </message>
  <message>
   <source>there is nothing to write yet</source>
   <translation>il n'y a encore rien à écrire</translation>
  </message>
  <message>
   <source>there must be one of it</source>
   <translation>il doit y en avoir un</translation>
  </message>
  <message>
   <source>they do not give {0} pieces of {1} m in all; add some</source>
   <translation>ils ne donnent pas {0} morceaux de {1} m en tout ; en ajouter</translation>
  </message>
  <message>
   <source>they reach only {0} into a stud</source>
   <translation>elles n'entrent que de {0} dans un montant d'ossature</translation>
  </message>
  <message>
   <source>thickness of a door</source>
   <translation>épaisseur d'une porte</translation>
  </message>
  <message>
   <source>thickness of the baseboard</source>
   <translation>épaisseur de la plinthe du mur</translation>
  </message>
  <message>
   <source>thickness of the board</source>
   <translation>épaisseur du panneau</translation>
  </message>
  <message>
   <source>thickness of the box's sides</source>
   <translation>épaisseur des côtés de la caisse</translation>
  </message>
  <message>
   <source>thickness of the casing</source>
   <translation>épaisseur du chambranle</translation>
  </message>
  <message>
   <source>thickness of the closet's own door</source>
   <translation>épaisseur de la porte du placard lui-même</translation>
  </message>
  <message>
   <source>thickness of the top</source>
   <translation>épaisseur du dessus</translation>
  </message>
  <message>
   <source>thickness of the wall at the opening</source>
   <translation>épaisseur du mur à l'ouverture</translation>
  </message>
  <message>
   <source>thing in the middle of a shelf</source>
   <translation>chose au milieu d'une étagère</translation>
  </message>
  <message>
   <source>tilted under the lintel</source>
   <translation>incliné sous le linteau</translation>
  </message>
  <message>
   <source>tilted up</source>
   <translation>redressé</translation>
  </message>
  <message>
   <source>title</source>
   <translation>titre</translation>
  </message>
  <message>
   <source>to be cut from a {0}</source>
   <translation>à débiter dans un {0}</translation>
  </message>
  <message>
   <source>to carry slides</source>
   <translation>pour porter des coulisses</translation>
  </message>
  <message>
   <source>to cover the dividers' edges and leave an opening</source>
   <translation>pour couvrir les bords des montants intermédiaires et laisser une ouverture</translation>
  </message>
  <message>
   <source>to cover the shelf's edge, from {0}</source>
   <translation>pour couvrir le bord de l'étagère, à partir de {0}</translation>
  </message>
  <message>
   <source>to cover the side's edge and leave an opening</source>
   <translation>pour couvrir le bord du côté et laisser une ouverture</translation>
  </message>
  <message>
   <source>to cover the slide, with {0} mm above and {1} mm below</source>
   <translation>pour couvrir la coulisse, avec {0} mm au-dessus et {1} mm au-dessous</translation>
  </message>
  <message>
   <source>to fit in</source>
   <translation>pour entrer</translation>
  </message>
  <message>
   <source>to fit the envelope</source>
   <translation>pour tenir dans le volume utile</translation>
  </message>
  <message>
   <source>to lie in the bay</source>
   <translation>pour se trouver dans la travée</translation>
  </message>
  <message>
   <source>to lie in what is left of the side</source>
   <translation>pour se trouver dans ce qui reste du côté</translation>
  </message>
  <message>
   <source>to the wall</source>
   <translation>au mur</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>retrait de plinthe</translation>
  </message>
  <message>
   <source>tongue and groove</source>
   <translation>rainure et languette</translation>
  </message>
  <message>
   <source>too many turns</source>
   <translation>trop de tours</translation>
  </message>
  <message>
   <source>too narrow for a strip to be scribed and fixed, and too wide for the mouldings: give it {0} more clearance</source>
   <translation>trop étroit pour une bande à ajuster et fixer, et trop large pour les moulures : lui donner {0} de jeu en plus</translation>
  </message>
  <message>
   <source>top rail</source>
   <translation>traverse haute</translation>
  </message>
  <message>
   <source>trim</source>
   <translation>affranchissement</translation>
  </message>
  <message>
   <source>trim the sheet less</source>
   <translation>moins affranchir le panneau brut</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>tube</translation>
  </message>
  <message>
   <source>turned in plan</source>
   <translation>tourné en plan</translation>
  </message>
  <message>
   <source>turned in the opening and set upright behind it</source>
   <translation>tourné dans l'ouverture et redressé derrière</translation>
  </message>
  <message>
   <source>turned past the jambs</source>
   <translation>tourné en passant les tableaux</translation>
  </message>
  <message>
   <source>turned up sideways</source>
   <translation>redressé sur le côté</translation>
  </message>
  <message>
   <source>turns over {0}</source>
   <translation>renverse : {0}</translation>
  </message>
  <message>
   <source>twist of the back wall</source>
   <translation>gauchissement du mur du fond</translation>
  </message>
  <message>
   <source>twist of the ceiling</source>
   <translation>gauchissement du plafond</translation>
  </message>
  <message>
   <source>twist of the floor</source>
   <translation>gauchissement du sol</translation>
  </message>
  <message>
   <source>twist of the left wall</source>
   <translation>gauchissement du mur de gauche</translation>
  </message>
  <message>
   <source>twist of the right wall</source>
   <translation>gauchissement du mur de droite</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation>deux charges égales aux quarts extérieurs</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation>deux charges égales aux quarts extérieurs, flèche sous une charge</translation>
  </message>
  <message>
   <source>two sliding panels</source>
   <translation>deux panneaux coulissants</translation>
  </message>
  <message>
   <source>unanchored it tips over {0}</source>
   <translation>non ancré, il bascule {0}</translation>
  </message>
  <message>
   <source>unanchored it withstands {0} what turns it over {1}</source>
   <translation>non ancré, il résiste à {0} ce qui le renverse {1}</translation>
  </message>
  <message>
   <source>under {0} ({1}) {2} of {3}{4}</source>
   <translation>sous {0} ({1}) {2} sur {3}{4}</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>unité</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>inconnu</translation>
  </message>
  <message>
   <source>unreadable</source>
   <translation>illisible</translation>
  </message>
  <message>
   <source>upper rod</source>
   <translation>tringle supérieure</translation>
  </message>
  <message>
   <source>use</source>
   <translation>usage</translation>
  </message>
  <message>
   <source>use every hole of the support, screws that bite at least two thirds of the panel, and through the panel into a stud or a cleat where you can</source>
   <translation>employer tous les trous du support, des vis qui mordent au moins deux tiers du panneau, et à travers le panneau dans un montant d'ossature ou un tasseau si possible</translation>
  </message>
  <message>
   <source>value</source>
   <translation>valeur</translation>
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation>contreplaqué tout plis</translation>
  </message>
  <message>
   <source>vertical panel saw at the store</source>
   <translation>scie à panneaux verticale du magasin</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>mur</translation>
  </message>
  <message>
   <source>ways in are looked for as if these were not there: {0}; see that the largest pieces pass them on their way</source>
   <translation>les passages sont cherchés comme si ceci n'était pas là : {0} ; vérifier que les plus grandes pièces le franchissent en chemin</translation>
  </message>
  <message>
   <source>ways to buy</source>
   <translation>façons d'acheter</translation>
  </message>
  <message>
   <source>web between them</source>
   <translation>âme entre elles</translation>
  </message>
  <message>
   <source>weight of a cut</source>
   <translation>poids d'une coupe</translation>
  </message>
  <message>
   <source>weight of a door</source>
   <translation>poids d'une porte</translation>
  </message>
  <message>
   <source>weight of a metre sawn</source>
   <translation>poids d'un mètre scié</translation>
  </message>
  <message>
   <source>weight of the offcut</source>
   <translation>poids de la chute</translation>
  </message>
  <message>
   <source>weights</source>
   <translation>poids</translation>
  </message>
  <message>
   <source>weights from memory</source>
   <translation>poids de mémoire</translation>
  </message>
  <message>
   <source>what is bought is sound; say offcut for one at hand</source>
   <translation>ce qui est acheté est sain ; indiquer offcut pour une pièce disponible</translation>
  </message>
  <message>
   <source>what its anti-tip anchors hold is for their maker to say, and needs a stud or masonry behind</source>
   <translation>ce que tiennent ses ancrages antibasculement, c'est à leur fabricant de le dire, et il faut un montant d'ossature ou de la maçonnerie derrière</translation>
  </message>
  <message>
   <source>what the supports hold, by their maker</source>
   <translation>ce que tiennent les supports, selon leur fabricant</translation>
  </message>
  <message>
   <source>wider than a filler usually is: make the carcass up to {0} larger</source>
   <translation>plus large qu'un fileur d'ordinaire : agrandir le caisson jusqu'à {0}</translation>
  </message>
  <message>
   <source>width</source>
   <translation>largeur</translation>
  </message>
  <message>
   <source>width = {0}</source>
   <translation>largeur = {0}</translation>
  </message>
  <message>
   <source>width at the back, high</source>
   <translation>largeur au fond, haut</translation>
  </message>
  <message>
   <source>width at the back, low</source>
   <translation>largeur au fond, bas</translation>
  </message>
  <message>
   <source>width at the back, middle</source>
   <translation>largeur au fond, milieu</translation>
  </message>
  <message>
   <source>width at the front, high</source>
   <translation>largeur à l'avant, haut</translation>
  </message>
  <message>
   <source>width at the front, low</source>
   <translation>largeur à l'avant, bas</translation>
  </message>
  <message>
   <source>width at the front, middle</source>
   <translation>largeur à l'avant, milieu</translation>
  </message>
  <message>
   <source>width first</source>
   <translation>largeur d'abord</translation>
  </message>
  <message>
   <source>width for hangers</source>
   <translation>largeur pour cintres</translation>
  </message>
  <message>
   <source>width of a door</source>
   <translation>largeur d'une porte</translation>
  </message>
  <message>
   <source>width of the box</source>
   <translation>largeur de la caisse</translation>
  </message>
  <message>
   <source>width of the casing</source>
   <translation>largeur du chambranle</translation>
  </message>
  <message>
   <source>width of the members</source>
   <translation>largeur des éléments</translation>
  </message>
  <message>
   <source>width of the mullions</source>
   <translation>largeur des montants centraux</translation>
  </message>
  <message>
   <source>width of the opening</source>
   <translation>largeur de l'ouverture</translation>
  </message>
  <message>
   <source>width of the opening, high</source>
   <translation>largeur de l'ouverture, haut</translation>
  </message>
  <message>
   <source>width of the stiles</source>
   <translation>largeur des montants</translation>
  </message>
  <message>
   <source>with all drawers open and full</source>
   <translation>tous tiroirs ouverts et pleins</translation>
  </message>
  <message>
   <source>with its doors open</source>
   <translation>portes ouvertes</translation>
  </message>
  <message>
   <source>wood</source>
   <translation>bois</translation>
  </message>
  <message>
   <source>wood and board dust harms lungs and may cause cancer: extraction at the tool, a respirator, sweep nothing dry; resin boards give off formaldehyde: air the room</source>
   <translation>la poussière de bois et de panneaux nuit aux poumons et peut causer le cancer : aspiration à l'outil, masque respiratoire, ne rien balayer à sec ; les panneaux à résine dégagent du formaldéhyde : aérer la pièce</translation>
  </message>
  <message>
   <source>wood studs</source>
   <translation>montants d'ossature en bois</translation>
  </message>
  <message>
   <source>works loose in time: </source>
   <translation>se desserre avec le temps : </translation>
  </message>
  <message>
   <source>your own load</source>
   <translation>votre propre charge</translation>
  </message>
  <message>
   <source>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</source>
   <translation>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</translation>
  </message>
  <message>
   <source>{0} ({1}), {2} used</source>
   <translation>{0} ({1}), {2} utilisé</translation>
  </message>
  <message>
   <source>{0} ({1}), {2} used, {3} cuts</source>
   <translation>{0} ({1}), {2} utilisé, {3} coupes</translation>
  </message>
  <message>
   <source>{0} [material.{1}]</source>
   <translation>{0} [material.{1}]</translation>
  </message>
  <message>
   <source>{0} above the floor</source>
   <translation>{0} au-dessus du sol</translation>
  </message>
  <message>
   <source>{0} after {1} must be under {2}; carry the rest into {3}</source>
   <translation>{0} après {1} doit être inférieur à {2} ; reporter le reste dans {3}</translation>
  </message>
  <message>
   <source>{0} along the sheet's {1}</source>
   <translation>{0} selon {1} du panneau brut</translation>
  </message>
  <message>
   <source>{0} and {1}</source>
   <translation>{0} et {1}</translation>
  </message>
  <message>
   <source>{0} and {1} are closer than the kerf</source>
   <translation>{0} et {1} sont plus proches que le trait de scie</translation>
  </message>
  <message>
   <source>{0} and {1} mm</source>
   <translation>{0} et {1} mm</translation>
  </message>
  <message>
   <source>{0} apart</source>
   <translation>{0} d'écart</translation>
  </message>
  <message>
   <source>{0} as carried from the store are too heavy, or too long and wide, for one person</source>
   <translation>{0}, portés tels quels depuis le magasin, sont trop lourds, ou trop longs et larges, pour une personne</translation>
  </message>
  <message>
   <source>{0} as carried from the store is too heavy, or too long and wide, for one person</source>
   <translation>{0}, porté tel quel depuis le magasin, est trop lourd, ou trop long et large, pour une personne</translation>
  </message>
  <message>
   <source>{0} at each edge</source>
   <translation>{0} à chaque bord</translation>
  </message>
  <message>
   <source>{0} at each side</source>
   <translation>{0} de chaque côté</translation>
  </message>
  <message>
   <source>{0} at the {1}</source>
   <translation>{0} côté {1}</translation>
  </message>
  <message>
   <source>{0} at {1} across, {2} deep</source>
   <translation>{0} à {1} de travers, {2} de profondeur</translation>
  </message>
  <message>
   <source>{0} back quarter round</source>
   <translation>quart-de-rond de fond, {0}</translation>
  </message>
  <message>
   <source>{0} below it</source>
   <translation>{0} au-dessous</translation>
  </message>
  <message>
   <source>{0} between the ends of its cleats under {1}, reckoned as a strip, which is more than it will</source>
   <translation>{0} entre les bouts de ses tasseaux sous {1}, calculé comme une bande, ce qui est plus que la réalité</translation>
  </message>
  <message>
   <source>{0} between the stiffest and the softest boards published ({1})</source>
   <translation>{0} entre les panneaux publiés les plus rigides et les plus souples ({1})</translation>
  </message>
  <message>
   <source>{0} board {1}</source>
   <translation>{0} planche {1}</translation>
  </message>
  <message>
   <source>{0} bottom</source>
   <translation>fond, {0}</translation>
  </message>
  <message>
   <source>{0} bow</source>
   <translation>bombement, {0}</translation>
  </message>
  <message>
   <source>{0} by the boards published ({1})</source>
   <translation>{0} selon les panneaux publiés ({1})</translation>
  </message>
  <message>
   <source>{0} cannot follow {1}; {2}</source>
   <translation>{0} ne peut pas suivre {1} ; {2}</translation>
  </message>
  <message>
   <source>{0} cleat</source>
   <translation>tasseau de {0}</translation>
  </message>
  <message>
   <source>{0} cm³ in common</source>
   <translation>{0} cm³ en commun</translation>
  </message>
  <message>
   <source>{0} dividers to carry it</source>
   <translation>{0} montants intermédiaires pour la porter</translation>
  </message>
  <message>
   <source>{0} door</source>
   <translation>porte, {0}</translation>
  </message>
  <message>
   <source>{0} expected, give or take {1}</source>
   <translation>{0} attendu, à {1} près</translation>
  </message>
  <message>
   <source>{0} fault(s); the plan must not be used</source>
   <translation>{0} défaut(s) ; le plan ne doit pas être employé</translation>
  </message>
  <message>
   <source>{0} filler</source>
   <translation>fileur de {0}</translation>
  </message>
  <message>
   <source>{0} front</source>
   <translation>façade, {0}</translation>
  </message>
  <message>
   <source>{0} gap at the {1}</source>
   <translation>jeu de {0} côté {1}</translation>
  </message>
  <message>
   <source>{0} high enough for a small child's body and too low for its head, the lowest as given: make what a toddler reaches lower or higher, or close it; {1}</source>
   <translation>{0} de hauteur suffisante pour le corps d'un petit enfant et trop faible pour sa tête, la plus basse telle que donnée : faire plus bas ou plus haut ce qu'un tout-petit atteint, ou le fermer ; {1}</translation>
  </message>
  <message>
   <source>{0} holds a defect</source>
   <translation>{0} contient un défaut</translation>
  </message>
  <message>
   <source>{0} in to {1} in</source>
   <translation>{0} in à {1} in</translation>
  </message>
  <message>
   <source>{0} in {1}, bay {2}</source>
   <translation>{0} dans {1}, travée {2}</translation>
  </message>
  <message>
   <source>{0} is cut {1} long</source>
   <translation>{0} est coupé à {1}</translation>
  </message>
  <message>
   <source>{0} is no number; {1}</source>
   <translation>{0} n'est pas un nombre ; {1}</translation>
  </message>
  <message>
   <source>{0} is no unit of length here; {1}</source>
   <translation>{0} n'est pas une unité de longueur ici ; {1}</translation>
  </message>
  <message>
   <source>{0} is not of {1}</source>
   <translation>{0} n'est pas en {1}</translation>
  </message>
  <message>
   <source>{0} is not sold {1} mm long as yet</source>
   <translation>{0} n'est pas encore vendu en longueur de {1} mm</translation>
  </message>
  <message>
   <source>{0} is outside the trimmed length</source>
   <translation>{0} est hors de la longueur affranchie</translation>
  </message>
  <message>
   <source>{0} kept from {1}</source>
   <translation>{0} conservé de {1}</translation>
  </message>
  <message>
   <source>{0} kg every {1} mm</source>
   <translation>{0} kg tous les {1} mm</translation>
  </message>
  <message>
   <source>{0} kg of {1}</source>
   <translation>{0} kg ({1})</translation>
  </message>
  <message>
   <source>{0} kg, or {1} m² over {2}</source>
   <translation>{0} kg, ou {1} m² sur {2}</translation>
  </message>
  <message>
   <source>{0} lap</source>
   <translation>mi-bois, {0}</translation>
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
   <translation>dévers, {0}</translation>
  </message>
  <message>
   <source>{0} left quarter round</source>
   <translation>quart-de-rond de gauche, {0}</translation>
  </message>
  <message>
   <source>{0} line {1}</source>
   <translation>{0} ligne {1}</translation>
  </message>
  <message>
   <source>{0} lip</source>
   <translation>retombée, {0}</translation>
  </message>
  <message>
   <source>{0} litres</source>
   <translation>{0} litres</translation>
  </message>
  <message>
   <source>{0} looks like a subtraction; {1}</source>
   <translation>{0} ressemble à une soustraction ; {1}</translation>
  </message>
  <message>
   <source>{0} mm at each end</source>
   <translation>{0} mm à chaque bout</translation>
  </message>
  <message>
   <source>{0} mm in a metre</source>
   <translation>{0} mm par mètre</translation>
  </message>
  <message>
   <source>{0} mm of {1} mm</source>
   <translation>{0} mm sur {1} mm</translation>
  </message>
  <message>
   <source>{0} mm to {1} mm</source>
   <translation>{0} mm à {1} mm</translation>
  </message>
  <message>
   <source>{0} mm wanted</source>
   <translation>{0} mm demandés</translation>
  </message>
  <message>
   <source>{0} more than one person should lift flat at arm's length: carry them upright and close, or by two</source>
   <translation>{0} plus que ce qu'une personne devrait soulever à plat à bout de bras : porter debout et près du corps, ou à deux</translation>
  </message>
  <message>
   <source>{0} moulding</source>
   <translation>moulure de {0}</translation>
  </message>
  <message>
   <source>{0} need the place of {1}</source>
   <translation>{0} demandent la place de {1}</translation>
  </message>
  <message>
   <source>{0} of clothes</source>
   <translation>{0} de vêtements</translation>
  </message>
  <message>
   <source>{0} of nominal {1} measures {2} to {3} ({4}, and {5} for the reading); measure again, or enter the board as a material of its own with its own nominal</source>
   <translation>{0} de nominal {1} mesure {2} à {3} ({4}, et {5} pour la lecture) ; remesurer, ou saisir le panneau comme matériau à part avec son propre nominal</translation>
  </message>
  <message>
   <source>{0} of the opening in {1}</source>
   <translation>{0} de l'ouverture dans {1}</translation>
  </message>
  <message>
   <source>{0} of travel</source>
   <translation>{0} de course</translation>
  </message>
  <message>
   <source>{0} of {1} mm</source>
   <translation>{0} × {1} mm</translation>
  </message>
  <message>
   <source>{0} of {1} mm at {2} mm</source>
   <translation>{0} de {1} mm à {2} mm</translation>
  </message>
  <message>
   <source>{0} of {1} shelves and rods lie outside the reach of somebody seated, the highest as given: keep what is used daily within it</source>
   <translation>{0} des {1} étagères et tringles sont hors de portée d'une personne assise, la plus haute telle que donnée : garder à sa portée ce qui sert chaque jour</translation>
  </message>
  <message>
   <source>{0} once it is stripped</source>
   <translation>{0} sans les éléments déposés</translation>
  </message>
  <message>
   <source>{0} openings are</source>
   <translation>{0} ouvertures sont</translation>
  </message>
  <message>
   <source>{0} or {1}</source>
   <translation>{0} ou {1}</translation>
  </message>
  <message>
   <source>{0} parts weigh</source>
   <translation>{0} pièces pèsent</translation>
  </message>
  <message>
   <source>{0} psi</source>
   <translation>{0} psi</translation>
  </message>
  <message>
   <source>{0} quarter round</source>
   <translation>quart-de-rond de {0}</translation>
  </message>
  <message>
   <source>{0} rest</source>
   <translation>reste, {0}</translation>
  </message>
  <message>
   <source>{0} right quarter round</source>
   <translation>quart-de-rond de droite, {0}</translation>
  </message>
  <message>
   <source>{0} rise</source>
   <translation>montée, {0}</translation>
  </message>
  <message>
   <source>{0} run</source>
   <translation>pente en profondeur, {0}</translation>
  </message>
  <message>
   <source>{0} sheets are named {1}</source>
   <translation>{0} panneaux bruts se nomment {1}</translation>
  </message>
  <message>
   <source>{0} sheet{1}</source>
   <translation>{0} plaque{1}</translation>
  </message>
  <message>
   <source>{0} shim {1}</source>
   <translation>{0} cale {1}</translation>
  </message>
  <message>
   <source>{0} skew</source>
   <translation>biais, {0}</translation>
  </message>
  <message>
   <source>{0} stands beside another number without a unit; {1}</source>
   <translation>{0} se trouve à côté d'un autre nombre sans unité ; {1}</translation>
  </message>
  <message>
   <source>{0} stile</source>
   <translation>montant de {0}</translation>
  </message>
  <message>
   <source>{0} stop</source>
   <translation>butée, {0}</translation>
  </message>
  <message>
   <source>{0} strips</source>
   <translation>{0} bandes</translation>
  </message>
  <message>
   <source>{0} strips need {1} widths and {2} kerfs</source>
   <translation>{0} bandes demandent {1} largeurs et {2} traits de scie</translation>
  </message>
  <message>
   <source>{0} thick</source>
   <translation>{0} d'épaisseur</translation>
  </message>
  <message>
   <source>{0} times</source>
   <translation>{0} fois</translation>
  </message>
  <message>
   <source>{0} to the studs</source>
   <translation>{0} aux montants d'ossature</translation>
  </message>
  <message>
   <source>{0} to the wall</source>
   <translation>{0} au mur</translation>
  </message>
  <message>
   <source>{0} to {1} by density</source>
   <translation>{0} à {1} selon la densité</translation>
  </message>
  <message>
   <source>{0} to {1} by density ({2})</source>
   <translation>{0} à {1} selon la densité ({2})</translation>
  </message>
  <message>
   <source>{0} to {1} by the density of its board</source>
   <translation>{0} à {1} selon la densité de son panneau</translation>
  </message>
  <message>
   <source>{0} to {1} by the density of its boards</source>
   <translation>{0} à {1} selon la densité de ses panneaux</translation>
  </message>
  <message>
   <source>{0} to {1} by the density published for the board</source>
   <translation>{0} à {1} selon la densité publiée du panneau</translation>
  </message>
  <message>
   <source>{0} to {1} by the density published for the boards</source>
   <translation>{0} à {1} selon la densité publiée des panneaux</translation>
  </message>
  <message>
   <source>{0} to {1} in the lightest and the heaviest softwood studs</source>
   <translation>{0} à {1} dans les montants d'ossature résineux les plus légers et les plus lourds</translation>
  </message>
  <message>
   <source>{0} to {1} long</source>
   <translation>{0} à {1} de long</translation>
  </message>
  <message>
   <source>{0} to {1} mm</source>
   <translation>{0} à {1} mm</translation>
  </message>
  <message>
   <source>{0} to {1} mm across</source>
   <translation>{0} à {1} mm en travers</translation>
  </message>
  <message>
   <source>{0} to {1} mm across, up to {2} mm high</source>
   <translation>{0} à {1} mm de travers, jusqu'à {2} mm de haut</translation>
  </message>
  <message>
   <source>{0} to {1} mm along its {2}</source>
   <translation>{0} à {1} mm le long : {2}</translation>
  </message>
  <message>
   <source>{0} to {1}, by the density of its boards</source>
   <translation>{0} à {1}, selon la densité de ses panneaux</translation>
  </message>
  <message>
   <source>{0} top filler</source>
   <translation>fileur du haut, {0}</translation>
  </message>
  <message>
   <source>{0} top moulding</source>
   <translation>moulure du haut, {0}</translation>
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation>{0}, affranchissement {1}</translation>
  </message>
  <message>
   <source>{0} twist</source>
   <translation>gauchissement, {0}</translation>
  </message>
  <message>
   <source>{0} under {1}</source>
   <translation>{0} sous {1}</translation>
  </message>
  <message>
   <source>{0} was not pasted: {1}
</source>
   <translation>{0} n'a pas été collé : {1}
</translation>
  </message>
  <message>
   <source>{0} without its edge bands</source>
   <translation>{0} sans ses chants</translation>
  </message>
  <message>
   <source>{0} would hold {1} of that</source>
   <translation>{0} tiendrait {1} de cela</translation>
  </message>
  <message>
   <source>{0} x {1} in {2}</source>
   <translation>{0} × {1} dans {2}</translation>
  </message>
  <message>
   <source>{0} x {1} mm</source>
   <translation>{0} x {1} mm</translation>
  </message>
  <message>
   <source>{0} x {1} through the top cleat, one into each stud, and as many through each other cleat, heads on washers{2}</source>
   <translation>{0} x {1} à travers le tasseau du haut, une dans chaque montant d'ossature, et autant à travers chaque autre tasseau, têtes sur rondelles{2}</translation>
  </message>
  <message>
   <source>{0} {1} at its top, each into a stud and, with a screw of its own, into the board{2}</source>
   <translation>{0} {1} à son sommet, chacun dans un montant d'ossature et, avec sa propre vis, dans le panneau{2}</translation>
  </message>
  <message>
   <source>{0} {1} cleat</source>
   <translation>{0} tasseau de {1}</translation>
  </message>
  <message>
   <source>{0} {1} end cleat</source>
   <translation>{0} tasseau d'extrémité de {1}</translation>
  </message>
  <message>
   <source>{0} {1} under {2}</source>
   <translation>{0} {1} sous {2}</translation>
  </message>
  <message>
   <source>{0} {1} under {2}{3}{4}{5}; after years about {6} ({7})</source>
   <translation>{0} {1} sous {2}{3}{4}{5} ; après des années environ {6} ({7})</translation>
  </message>
  <message>
   <source>{0}, bay {1}</source>
   <translation>{0}, travée {1}</translation>
  </message>
  <message>
   <source>{0}, divider {1}</source>
   <translation>{0}, montant intermédiaire {1}</translation>
  </message>
  <message>
   <source>{0}, gap at the {1}</source>
   <translation>{0}, jeu côté {1}</translation>
  </message>
  <message>
   <source>{0}, groove for {1}</source>
   <translation>{0}, rainure pour {1}</translation>
  </message>
  <message>
   <source>{0}, grooves for {1} and {2}</source>
   <translation>{0}, rainures pour {1} et {2}</translation>
  </message>
  <message>
   <source>{0}, hole for {1} in the {2}</source>
   <translation>{0}, trou pour {1} dans {2}</translation>
  </message>
  <message>
   <source>{0}, holes for {1}</source>
   <translation>{0}, trous pour {1}</translation>
  </message>
  <message>
   <source>{0}, holes for {1} and {2}</source>
   <translation>{0}, trous pour {1} et {2}</translation>
  </message>
  <message>
   <source>{0}, measured thickness</source>
   <translation>{0}, épaisseur mesurée</translation>
  </message>
  <message>
   <source>{0}, part {1}</source>
   <translation>{0}, pièce {1}</translation>
  </message>
  <message>
   <source>{0}, pocket for {1}</source>
   <translation>{0}, poche pour {1}</translation>
  </message>
  <message>
   <source>{0}, pulled at the edge</source>
   <translation>{0}, tiré au bord</translation>
  </message>
  <message>
   <source>{0}, screw point {1}</source>
   <translation>{0}, point de vissage {1}</translation>
  </message>
  <message>
   <source>{0}, shelf {1}</source>
   <translation>{0}, étagère {1}</translation>
  </message>
  <message>
   <source>{0}, spreadsheet</source>
   <translation>{0}, feuille de calcul</translation>
  </message>
  <message>
   <source>{0}, where it bends</source>
   <translation>{0}, où il fléchit</translation>
  </message>
  <message>
   <source>{0}, which reach only {1} into what holds them: no load is published for that</source>
   <translation>{0}, qui n'entrent que de {1} dans ce qui les tient : aucune charge n'est publiée pour cela</translation>
  </message>
  <message>
   <source>{0}, {1} deep</source>
   <translation>{0}, {1} de profondeur</translation>
  </message>
  <message>
   <source>{0}, {1} x {2} in {3}{4}</source>
   <translation>{0}, {1} x {2} dans {3}{4}</translation>
  </message>
  <message>
   <source>{0}, {1}: empty or outside the trimmed sheet</source>
   <translation>{0}, {1} : vide ou hors du panneau brut affranchi</translation>
  </message>
  <message>
   <source>{0}0 and {1}1</source>
   <translation>{0}0 et {1}1</translation>
  </message>
  <message>
   <source>{0}: bay {1}</source>
   <translation>{0} : travée {1}</translation>
  </message>
  <message>
   <source>{0}: bill</source>
   <translation>{0} : nomenclature</translation>
  </message>
  <message>
   <source>{0}: cut layout</source>
   <translation>{0} : plan de débit</translation>
  </message>
  <message>
   <source>{0}: made by another version of the workbench ({1} is unknown); it stays as it is
</source>
   <translation>{0} : fait par une autre version de l'atelier ({1} est inconnu) ; il reste tel quel
</translation>
  </message>
  <message>
   <source>{0}: no cuts are listed</source>
   <translation>{0} : aucune coupe n'est listée</translation>
  </message>
  <message>
   <source>{0}: not the sheet {1} of the stock</source>
   <translation>{0} : pas le panneau brut {1} du stock</translation>
  </message>
  <message>
   <source>{0}: not the stock length {1}</source>
   <translation>{0} : pas la longueur {1}</translation>
  </message>
  <message>
   <source>{0}: not to be sawn from edge to edge within the stages allowed</source>
   <translation>{0} : impossible à scier de bord à bord dans les passes permises</translation>
  </message>
  <message>
   <source>{0}: not turned, its grain must run across the sheet</source>
   <translation>{0} : non tourné, son fil doit aller en travers du panneau brut</translation>
  </message>
  <message>
   <source>{0}: of {1}, on a sheet of {2}</source>
   <translation>{0} : de {1}, sur un panneau brut de {2}</translation>
  </message>
  <message>
   <source>{0}: outside the trimmed sheet</source>
   <translation>{0} : hors du panneau brut affranchi</translation>
  </message>
  <message>
   <source>{0}: planned for a kerf of {1}, not {2}</source>
   <translation>{0} : planifié pour un trait de scie de {1}, pas {2}</translation>
  </message>
  <message>
   <source>{0}: the bound {1} is above the sheets used</source>
   <translation>{0} : la borne {1} dépasse les panneaux bruts employés</translation>
  </message>
  <message>
   <source>{0}: the cuts do not give part {1}</source>
   <translation>{0} : les coupes ne donnent pas la pièce {1}</translation>
  </message>
  <message>
   <source>{0}: the cuts do not give {1}</source>
   <translation>{0} : les coupes ne donnent pas {1}</translation>
  </message>
  <message>
   <source>{0}: top</source>
   <translation>{0} : dessus</translation>
  </message>
  <message>
   <source>{0}: turned, its grain must run along the sheet</source>
   <translation>{0} : tourné, son fil doit suivre la longueur du panneau brut</translation>
  </message>
  <message>
   <source>{0}: {1} and {2} are closer than the kerf</source>
   <translation>{0} : {1} et {2} sont plus proches que le trait de scie</translation>
  </message>
  <message>
   <source>{0}: {1} objects of the closet workbench had lost their program, as in a file saved without it; they can be edited again: {2}
</source>
   <translation>{0} : {1} objets de l'atelier placard avaient perdu leur programme, comme dans un fichier enregistré sans lui ; ils sont de nouveau modifiables : {2}
</translation>
  </message>
  <message>
   <source>{0}: {1} x {2} is not its size</source>
   <translation>{0} : {1} x {2} n'est pas sa dimension</translation>
  </message>
  <message>
   <source>{0}; 0: not taken</source>
   <translation>{0} ; 0 : non pris</translation>
  </message>
  <message>
   <source>{0}; EN 14749 (from memory)</source>
   <translation>{0} ; EN 14749 (de mémoire)</translation>
  </message>
  <message>
   <source>{0}; a nail may be pulled with {1}, so glue it on where doors hang on it</source>
   <translation>{0} ; un clou peut être tiré de {1}, donc le coller là où des portes y pendent</translation>
  </message>
  <message>
   <source>{0}; but look at the readings first: {1}</source>
   <translation>{0} ; mais regarder d'abord les mesures : {1}</translation>
  </message>
  <message>
   <source>{0}; changed in {1}</source>
   <translation>{0} ; modifié dans {1}</translation>
  </message>
  <message>
   <source>{0}; fasten it to the wall all the same</source>
   <translation>{0} ; le fixer quand même au mur</translation>
  </message>
  <message>
   <source>{0}; limit: common practice, no published source</source>
   <translation>{0} ; limite : usage courant, sans source publiée</translation>
  </message>
  <message>
   <source>{0}; load and limit: common practice, no published source</source>
   <translation>{0} ; charge et limite : usage courant, sans source publiée</translation>
  </message>
  <message>
   <source>{0}; may come again</source>
   <translation>{0} ; peut être répété</translation>
  </message>
  <message>
   <source>{0}; or build it in place</source>
   <translation>{0} ; ou le construire sur place</translation>
  </message>
  <message>
   <source>{0}; or one support more</source>
   <translation>{0} ; ou un support de plus</translation>
  </message>
  <message>
   <source>{0}; sag: Composite Panel Association shelving bulletin (as quoted)</source>
   <translation>{0} ; flèche : bulletin étagères de la Composite Panel Association (tel que cité)</translation>
  </message>
  <message>
   <source>{0}; studs of specific gravity {1}</source>
   <translation>{0} ; montants d'ossature de densité {1}</translation>
  </message>
  <message>
   <source>{0}; {1}: not given</source>
   <translation>{0} ; {1} : non donné</translation>
  </message>
  <message>
   <source>{0}; {1}; load: {2}</source>
   <translation>{0} ; {1} ; charge : {2}</translation>
  </message>
  <message>
   <source>{0}; {1}; statics</source>
   <translation>{0} ; {1} ; statique</translation>
  </message>
  <message>
   <source>{0}; {1}; {2}; load: {3}</source>
   <translation>{0} ; {1} ; {2} ; charge : {3}</translation>
  </message>
  <message>
   <source>{0}it would take {1} anchors of {2} each, but only {3} studs are sure to lie behind it{4}</source>
   <translation>{0}il faudrait {1} ancrages de {2} chacun, mais seuls {3} montants d'ossature sont sûrement derrière{4}</translation>
  </message>
  <message>
   <source>{0}{1}, and how it is fastened is not settled: {2}. Screw it into studs or masonry before anything is put into it</source>
   <translation>{0}{1}, et sa fixation n'est pas décidée : {2}. Le visser dans des montants d'ossature ou de la maçonnerie avant d'y mettre quoi que ce soit</translation>
  </message>
  <message>
   <source>{0}{1}: fasten it before anything is put into it, with {2}, which makes it withstand {3} of that</source>
   <translation>{0}{1} : le fixer avant d'y mettre quoi que ce soit, avec {2}, ce qui le fait résister à {3} de cela</translation>
  </message>
  <message>
   <source>{0}{1}; load: {2}</source>
   <translation>{0}{1} ; charge : {2}</translation>
  </message>
  <message>
   <source>{0}° open</source>
   <translation>ouvert à {0}°</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_ShoeShelves</name>
  <message>
   <source>Shoe shelves…</source>
   <translation>Étagères à chaussures…</translation>
  </message>
  <message>
   <source>Sloped shelves for shoes in one compartment</source>
   <translation>Étagères inclinées pour chaussures dans une case</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Start</name>
  <message>
   <source>Start a closet from readings in the room or from its sizes</source>
   <translation>Commencer un placard par des mesures dans la pièce ou par ses dimensions</translation>
  </message>
  <message>
   <source>Start a closet…</source>
   <translation>Commencer un placard…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Step</name>
  <message>
   <source>Export STEP…</source>
   <translation>Exporter en STEP…</translation>
  </message>
  <message>
   <source>Write the parts of the closet, or those selected, as named solids for other programs</source>
   <translation>Écrire les pièces du placard, ou celles choisies, en solides nommés pour d'autres programmes</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Survey</name>
  <message>
   <source>Back</source>
   <translation>Fond</translation>
  </message>
  <message>
   <source>Enter the readings taken in the closet and see which plumb, level box fits</source>
   <translation>Saisir les mesures prises dans le placard et voir quelle boîte d'aplomb et de niveau y entre</translation>
  </message>
  <message>
   <source>Select the closet to survey.</source>
   <translation>Choisir le placard à relever.</translation>
  </message>
  <message>
   <source>Survey…</source>
   <translation>Relevé…</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>Il n'y a pas de placard dans ce document : en commencer un d'abord.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_SurveySheet</name>
  <message>
   <source>Survey sheet…</source>
   <translation>Feuille de relevé…</translation>
  </message>
  <message>
   <source>Write a sheet with drawings of the closet, numbered readings to take and blanks for them</source>
   <translation>Écrire une feuille avec des dessins du placard, des mesures numérotées à prendre et leurs cases vides</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Closet</source>
   <translation>Placard</translation>
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation>Documents d'atelier du placard</translation>
  </message>
  <message>
   <source>Closet views</source>
   <translation>Vues du placard</translation>
  </message>
 </context>
</TS>
