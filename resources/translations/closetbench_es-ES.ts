<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es-ES" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation>1 para una puerta, 2 para una pareja con bisagras a ambos lados</translation>
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation>Hay sierra circular con regla guía en casa</translation>
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation>La profundidad por fracción se redondea hacia abajo a un múltiplo de este valor</translation>
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation>Una balda fija queda encima y sigue su altura</translation>
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation>Hay sierra de mesa en casa</translation>
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation>Clase de precisión de la cinta</translation>
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation>A lo ancho del hueco o a lo largo de su profundidad</translation>
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation>Margen para ajustar a la pared un montante extremo</translation>
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation>Otro número puede dar otro plan</translation>
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation>Superficie de las piezas entre la de los tableros, en porcentaje</translation>
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation>Superficie de los rectangulares, en m²</translation>
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation>Huecos para los que había objetos</translation>
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation>Tablas y perfiles que se cortan a medida de largo</translation>
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation>Ancho libre; 0 reparte lo restante con los demás huecos iguales</translation>
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation>Margen libre a cada lado</translation>
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation>Margen libre bajo la balda superior</translation>
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation>Columnas que ocupa la lista</translation>
  </message>
  <message>
   <source>Component and name</source>
   <translation>Componente y nombre</translation>
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation>Cortado de un panel conservado de un mueble existente</translation>
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation>Cortes por tablero que hace la tienda; 0: sin límite</translation>
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation>Ranura más profunda admitida, como fracción del grueso</translation>
  </message>
  <message>
   <source>Degrees to which the closet's own door opens</source>
   <translation>Grados hasta los que abre la puerta propia del armario</translation>
  </message>
  <message>
   <source>Depth along the left wall</source>
   <translation>Profundidad junto a la pared izquierda</translation>
  </message>
  <message>
   <source>Depth along the right wall</source>
   <translation>Profundidad junto a la pared derecha</translation>
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation>Profundidad a la izquierda, con molduras y frentes, sin tiradores</translation>
  </message>
  <message>
   <source>Depth at the right; 0: not given</source>
   <translation>Profundidad a la derecha; 0: no dada</translation>
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation>Profundidad de un taladro ciego</translation>
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation>Profundidad de una ranura como fracción del grueso del panel</translation>
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation>Profundidad de todas las ranuras; 0: por la fracción</translation>
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation>Profundidad de un espacio útil de medidas dadas</translation>
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation>Profundidad de las ranuras; 0: según regla</translation>
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation>Profundidad de la mayor caja a plomo y a nivel que cabe</translation>
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation>Profundidad del ala a lo largo de la pared trasera</translation>
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation>Profundidad del ala a lo largo de la pared lateral</translation>
  </message>
  <message>
   <source>Diagonal from front left to back right; 0: not taken</source>
   <translation>Diagonal de delante izquierda a fondo derecha; 0: no tomada</translation>
  </message>
  <message>
   <source>Diagonal from front right to back left; 0: not taken</source>
   <translation>Diagonal de delante derecha a fondo izquierda; 0: no tomada</translation>
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation>Diámetro del taladro para un tirador</translation>
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation>Diámetro de los taladros para soportes de balda</translation>
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation>Diámetro de la fresa disponible; 0: no indicado</translation>
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation>Dirección de los primeros cortes en un tablero entero</translation>
  </message>
  <message>
   <source>Edge band at the end</source>
   <translation>Canto en el final</translation>
  </message>
  <message>
   <source>Edge band at the front</source>
   <translation>Canto delante</translation>
  </message>
  <message>
   <source>Edge band at the rear</source>
   <translation>Canto detrás</translation>
  </message>
  <message>
   <source>Edge band at the start</source>
   <translation>Canto en el inicio</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation>Canto que se compra de más sobre el largo de los bordes, como fracción</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation>Canto de los bordes frontales de las baldas, o de sus refuerzos: auto como el del cuerpo, vacío para ninguno, o una clave del catálogo</translation>
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Canto de los bordes frontales visibles: auto para el propio del material, vacío para ninguno, o una clave del catálogo</translation>
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Canto: auto para el propio del material, vacío para ninguno, o una clave del catálogo</translation>
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation>Error del nivel o la plomada en un metro</translation>
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation>Archivo con materiales y precios propios; vacío: solo los incluidos</translation>
  </message>
  <message>
   <source>Findings about it</source>
   <translation>Dudas al respecto</translation>
  </message>
  <message>
   <source>Findings about the design</source>
   <translation>Dudas sobre el diseño</translation>
  </message>
  <message>
   <source>Findings about the readings</source>
   <translation>Dudas sobre las lecturas</translation>
  </message>
  <message>
   <source>Finished length</source>
   <translation>Largo acabado</translation>
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation>Largo acabado, cantos incluidos</translation>
  </message>
  <message>
   <source>Finished width</source>
   <translation>Ancho acabado</translation>
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation>Ancho acabado, cantos incluidos</translation>
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation>De un panel fijo al taladro más próximo</translation>
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation>De taladro a taladro de un tirador de dos, 0 para un pomo de uno</translation>
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation>De pared próxima a pared próxima</translation>
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation>De un taladro al siguiente</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation>De ese borde a la pared más próxima de la primera ranura</translation>
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation>Del frente del cuerpo al frente del zócalo</translation>
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation>Del borde frontal a la fila delantera</translation>
  </message>
  <message>
   <source>From the leaf's edge to the boring's, 0 takes the hinge's own</source>
   <translation>Del borde de la hoja al del taladro, 0 toma el propio de la bisagra</translation>
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation>Del centro del tirador al borde libre de la hoja</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation>De los bordes traseros a la cara posterior de la trasera</translation>
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, 0 takes 305 mm or the middle</source>
   <translation>Del fondo del vano al eje de la barra, 0 toma 305 mm o el centro</translation>
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation>Del borde inferior de los laterales a la ranura del fondo</translation>
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation>Las ranuras se detienen antes de un borde frontal con canto y atraviesan uno sin él</translation>
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation>Ranuras, taladros y muescas en palabras</translation>
  </message>
  <message>
   <source>Height above the floor of the high readings</source>
   <translation>Altura sobre el suelo de las lecturas altas</translation>
  </message>
  <message>
   <source>Height above the floor of the low readings</source>
   <translation>Altura sobre el suelo de las lecturas bajas</translation>
  </message>
  <message>
   <source>Height above the floor of the mid readings</source>
   <translation>Altura sobre el suelo de las lecturas medias</translation>
  </message>
  <message>
   <source>Height at the back left</source>
   <translation>Altura al fondo a la izquierda</translation>
  </message>
  <message>
   <source>Height at the back right</source>
   <translation>Altura al fondo a la derecha</translation>
  </message>
  <message>
   <source>Height at the front left</source>
   <translation>Altura delante a la izquierda</translation>
  </message>
  <message>
   <source>Height at the front right</source>
   <translation>Altura delante a la derecha</translation>
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation>Altura a la izquierda, con patas y tapa</translation>
  </message>
  <message>
   <source>Height at the right; 0: not given</source>
   <translation>Altura a la derecha; 0: no dada</translation>
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation>Altura de un listón de apoyo</translation>
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation>Altura de un travesaño ante cada balda fija, 0 para ninguno</translation>
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation>Altura de una tira ante cada balda; 0: ninguna</translation>
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation>Altura de un espacio útil de medidas dadas</translation>
  </message>
  <message>
   <source>Height of the base</source>
   <translation>Altura del zócalo</translation>
  </message>
  <message>
   <source>Height of the baseboard</source>
   <translation>Altura del rodapié</translation>
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation>Altura del travesaño inferior</translation>
  </message>
  <message>
   <source>Height of the boxes' sides, 0 takes all that the slide leaves</source>
   <translation>Altura de los laterales de las cajas, 0 toma todo lo que deja la guía</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation>Altura de los listones en las paredes</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation>Altura de los listones en las paredes, 0 para ninguno</translation>
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation>Altura de las patas que se quitan</translation>
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation>Altura de la mayor caja a plomo y a nivel que cabe</translation>
  </message>
  <message>
   <source>Height of the opening; 0: not taken</source>
   <translation>Altura del hueco de entrada; 0: no tomada</translation>
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation>Altura del tope sobre la balda</translation>
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation>Altura del travesaño superior</translation>
  </message>
  <message>
   <source>Height of the wall over the opening; 0: not taken</source>
   <translation>Altura de la pared sobre el hueco de entrada; 0: no tomada</translation>
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left (mm)</source>
   <translation>Alturas de los frentes desde abajo, una de ellas 0 para tomar lo restante (mm)</translation>
  </message>
  <message>
   <source>Hinges on each leaf, -1 takes what its height and weight ask for</source>
   <translation>Bisagras por hoja, -1 toma las que piden su altura y su peso</translation>
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation>Profundidad máxima del espacio útil; 0: la de la sala</translation>
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation>Cuánto queda una balda suelta por detrás de los bordes frontales</translation>
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation>Cuánto apoya como mínimo una moldura en el cuerpo, 6 mm como arriba</translation>
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation>Cuánto se queda corto un panel del fondo de su ranura</translation>
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation>Cuánto sobresale un montante del lateral del cuerpo</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation>A qué altura sobre el suelo del compartimento empieza</translation>
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, by rule by its kind</source>
   <translation>Cuánto solapa un frente superpuesto lo que limita su vano, según regla por su tipo</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation>Cuánto quedan las ranuras por detrás del borde frontal; 0 las pasa de lado a lado</translation>
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation>Cuánto sobresale del marco en ambos extremos</translation>
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation>Cuánto queda su frente por detrás de los bordes frontales del cuerpo</translation>
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation>Cuánto sube su borde inferior hacia la derecha</translation>
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation>Cuánto se inclina su borde derecho hacia la derecha al subir</translation>
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation>Cuánto sube su borde superior hacia la derecha</translation>
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation>Cuánto sobresale el marco por encima del techo del cuerpo</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation>Cuánto se apartan las ranuras de la parte delantera o del inicio</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation>Cuánto se apartan las ranuras de la parte trasera o del final</translation>
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation>Cuánto se inclina a la derecha, al subir, el borde izquierdo del vano de un frente embutido</translation>
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation>Cuánto sobresalen a cada lado y delante las molduras que se quitan</translation>
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation>Cuánto vuela la tapa sobre el bastidor y su frente por delante</translation>
  </message>
  <message>
   <source>How far they come out</source>
   <translation>Cuánto salen</translation>
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation>Cómo se unen el frente y la trasera de una caja a sus laterales</translation>
  </message>
  <message>
   <source>How high it is, 0 for all that is left</source>
   <translation>Su altura, 0 para todo lo restante</translation>
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation>Probabilidad de que se cumplan los márgenes libres, según las lecturas</translation>
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation>Cuánto tiempo buscar después menos cortes, por material</translation>
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation>Cuánto tiempo buscar menos tableros, por material</translation>
  </message>
  <message>
   <source>How many there are</source>
   <translation>Cuántos hay</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation>Cuántas veces puede cambiar de dirección el corte, contando la primera; 0: sin límite</translation>
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation>Cuánto más bajo queda el frente de una balda que su parte trasera</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation>Cuánto más corta que su hueco es una balda suelta</translation>
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation>Cuánto más ancha es una ranura que el panel que entra en ella</translation>
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation>Cuántas veces se trazó el plan</translation>
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation>Cómo escriben los textos las longitudes</translation>
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation>Cómo se asientan los zócalos en el suelo</translation>
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation>Cómo se sujeta el fondo</translation>
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation>Cómo se colocan los travesaños largos</translation>
  </message>
  <message>
   <source>How the members are joined</source>
   <translation>Cómo se unen las piezas</translation>
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation>Cómo se unen techo y suelo a los laterales</translation>
  </message>
  <message>
   <source>In kg, with its drawers; 0 where nobody has weighed it</source>
   <translation>En kg, con sus cajones; 0 si nadie lo ha pesado</translation>
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation>Sus huecos de izquierda a derecha</translation>
  </message>
  <message>
   <source>Its depth, 0 takes the envelope's</source>
   <translation>Su profundidad, 0 toma la del espacio útil</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation>Distancia de su extremo izquierdo a la izquierda del espacio útil</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, by rule beside what stands there</source>
   <translation>Distancia de su extremo izquierdo a la izquierda del espacio útil, según regla junto a lo que ya hay</translation>
  </message>
  <message>
   <source>Its right end's, 0 runs to the right wall</source>
   <translation>La de su extremo derecho, 0 llega a la pared derecha</translation>
  </message>
  <message>
   <source>Its underside above the floor, 0 lies on the highest carcass</source>
   <translation>Su cara inferior sobre el suelo, 0 apoya en el cuerpo más alto</translation>
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation>Clave de una clase de perfil</translation>
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation>Clave de una clase de bisagra</translation>
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation>Clave de una clase de guía</translation>
  </message>
  <message>
   <source>Key of its board</source>
   <translation>Clave de su tabla</translation>
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation>Clave de su tabla en el catálogo</translation>
  </message>
  <message>
   <source>Key of its board, empty takes the shelf's</source>
   <translation>Clave de su tabla, vacío toma la de la balda</translation>
  </message>
  <message>
   <source>Key of its edge band, auto for the material's own, empty for none</source>
   <translation>Clave de su canto, auto para el propio del material, vacío para ninguno</translation>
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation>Clave de las tablas de la trasera; vacío: según regla</translation>
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation>Clave de las tablas del zócalo; vacío: como el cuerpo</translation>
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation>Clave de la tabla en el catálogo</translation>
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation>Clave de las tablas en el catálogo</translation>
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation>Clave de las tablas o tableros de los que se cortan sus piezas</translation>
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation>Clave de las tablas que entran en las ranuras; vacío: la misma</translation>
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation>Clave de la tabla de los fondos</translation>
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation>Clave de la tabla de las cajas</translation>
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation>Clave de la clase de perfil en el catálogo</translation>
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, auto for the material's own, empty for none</source>
   <translation>Clave del canto de baldas y topes, auto para el propio del material, vacío para ninguno</translation>
  </message>
  <message>
   <source>Key of the edge band of their long edges, auto for the material's own, empty for none</source>
   <translation>Clave del canto de sus bordes largos, auto para el propio del material, vacío para ninguno</translation>
  </message>
  <message>
   <source>Key of the face's board, empty takes the top's</source>
   <translation>Clave de la tabla del frente, vacío toma la de la tapa</translation>
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation>Clave de la madera de las piezas</translation>
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation>Clave de las tablas de las tiras; vacío: como el cuerpo</translation>
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation>Clave de la tabla de la tapa</translation>
  </message>
  <message>
   <source>Key of their board</source>
   <translation>Clave de su tabla</translation>
  </message>
  <message>
   <source>Key of their board, empty takes the carcass's</source>
   <translation>Clave de su tabla, vacío toma la del cuerpo</translation>
  </message>
  <message>
   <source>Key of their edge band, auto for the material's own, empty for none</source>
   <translation>Clave de su canto, auto para el propio del material, vacío para ninguno</translation>
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation>Claves de las molduras planas y de los cuartos de caña para el pie del zócalo entre las que elegir; sin cuartos de caña, el pie queda abierto</translation>
  </message>
  <message>
   <source>Lean of the back wall at the left; positive where it leans into the closet on its way up</source>
   <translation>Desplome de la pared trasera a la izquierda; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>Lean of the back wall at the right; positive where it leans into the closet on its way up</source>
   <translation>Desplome de la pared trasera a la derecha; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>Lean of the left wall at the back; positive where it leans into the closet on its way up</source>
   <translation>Desplome de la pared izquierda al fondo; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>Lean of the left wall at the front; positive where it leans into the closet on its way up</source>
   <translation>Desplome de la pared izquierda delante; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>Lean of the right wall at the back; positive where it leans into the closet on its way up</source>
   <translation>Desplome de la pared derecha al fondo; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>Lean of the right wall at the front; positive where it leans into the closet on its way up</source>
   <translation>Desplome de la pared derecha delante; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation>Distancia mínima del borde trasero a la fila trasera</translation>
  </message>
  <message>
   <source>Least gap to keep at the back</source>
   <translation>Holgura mínima que mantener al fondo</translation>
  </message>
  <message>
   <source>Least gap to keep at the floor</source>
   <translation>Holgura mínima que mantener en el suelo</translation>
  </message>
  <message>
   <source>Least gap to keep at the left</source>
   <translation>Holgura mínima que mantener a la izquierda</translation>
  </message>
  <message>
   <source>Least gap to keep at the right</source>
   <translation>Holgura mínima que mantener a la derecha</translation>
  </message>
  <message>
   <source>Least gap to keep at the top</source>
   <translation>Holgura mínima que mantener arriba</translation>
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation>Material que se deja para rebajar al ajustar, 6 mm (práctica habitual, sin fuente publicada)</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation>Distancia de su lado izquierdo a la izquierda del espacio útil</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation>Distancia de su lado izquierdo a la izquierda del espacio útil, según lo construido</translation>
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation>Largo junto a la pared trasera</translation>
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation>Largo junto a la pared lateral</translation>
  </message>
  <message>
   <source>Length of the slides, 0 takes the longest that fits</source>
   <translation>Largo de las guías, 0 toma la más larga que cabe</translation>
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation>Largo que cortar del perfil</translation>
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation>Largo de aserrado, sin los cantos</translation>
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation>Nombre de la pieza dentro de su componente</translation>
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation>Tira más estrecha y más ancha: 20 mm (práctica habitual, sin fuente publicada) y 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edición 1, 2009)</translation>
  </message>
  <message>
   <source>Number of adjustable shelves, loose on pins</source>
   <translation>Número de baldas sueltas sobre soportes</translation>
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation>Número de huecos, cada uno un objeto propio</translation>
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation>Número de cajones de igual altura</translation>
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation>Número de baldas fijas</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Número de ranuras</translation>
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation>Número de sus cajones, uno sobre otro</translation>
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation>Número de travesaños largos, contando el delantero y el trasero</translation>
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation>Número de vanos debajo, con pies entre ellos</translation>
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation>Número de piezas que se cortan de tablas</translation>
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation>Número de trozos en que se hace, a testa</translation>
  </message>
  <message>
   <source>Number of shelves</source>
   <translation>Número de baldas</translation>
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation>De su asiento sobre aquello en que apoya</translation>
  </message>
  <message>
   <source>Of strips, empty takes the carcass's</source>
   <translation>De las tiras, vacío toma la del cuerpo</translation>
  </message>
  <message>
   <source>Of the pull's middle above the floor, 0 takes 1,000 mm or the nearest</source>
   <translation>Del centro del tirador sobre el suelo, 0 toma 1.000 mm o lo más próximo</translation>
  </message>
  <message>
   <source>Of the rod's axis above the floor, 0 by its use or as high as it can be</source>
   <translation>Del eje de la barra sobre el suelo, 0 según su uso o lo más alto posible</translation>
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation>De la tira, 0 para ninguna</translation>
  </message>
  <message>
   <source>Of the upper of two rods, 0 by rule</source>
   <translation>De la superior de dos barras, 0 según regla</translation>
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation>Un tablero de reserva por cada tantos de un material; 0: ninguno</translation>
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation>Profundidad exterior según lo construido</translation>
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation>Profundidad exterior; 0: la del espacio útil</translation>
  </message>
  <message>
   <source>Outer diameter</source>
   <translation>Diámetro exterior</translation>
  </message>
  <message>
   <source>Outer height as built</source>
   <translation>Altura exterior según lo construido</translation>
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation>Altura exterior, zócalo incluido; 0: la del espacio útil</translation>
  </message>
  <message>
   <source>Outer width as built</source>
   <translation>Ancho exterior según lo construido</translation>
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation>Ancho exterior; 0: lo que deja el espacio útil</translation>
  </message>
  <message>
   <source>Over its top, 0 takes what is left</source>
   <translation>Sobre su techo, 0 toma lo que queda</translation>
  </message>
  <message>
   <source>Over its top, 0 takes what is there; it stands at the rear</source>
   <translation>Sobre su techo, 0 toma lo que hay; queda al fondo</translation>
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation>Paneles conservados de lo que se quita</translation>
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation>Se movieron piezas a mano después de hacer el plan</translation>
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation>Lugar entre las piezas de su componente</translation>
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation>Tiradores por frente, 0 para ninguno</translation>
  </message>
  <message>
   <source>Rabbet at the end</source>
   <translation>Rebaje al final</translation>
  </message>
  <message>
   <source>Rabbet at the front</source>
   <translation>Rebaje delante</translation>
  </message>
  <message>
   <source>Rabbet at the rear</source>
   <translation>Rebaje detrás</translation>
  </message>
  <message>
   <source>Rabbet at the start</source>
   <translation>Rebaje al inicio</translation>
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation>Lecturas tomadas en otros puntos, como las escribe el formulario de la medición</translation>
  </message>
  <message>
   <source>Return at the left of the opening; 0: not taken</source>
   <translation>Retorno a la izquierda del hueco de entrada; 0: no tomado</translation>
  </message>
  <message>
   <source>Return at the right of the opening; 0: not taken</source>
   <translation>Retorno a la derecha del hueco de entrada; 0: no tomado</translation>
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation>Bordes con canto, y cuál</translation>
  </message>
  <message>
   <source>Rise of the floor from front to back at the left</source>
   <translation>Desnivel del suelo de delante a atrás a la izquierda</translation>
  </message>
  <message>
   <source>Rise of the floor from left to right at the back</source>
   <translation>Desnivel del suelo de izquierda a derecha al fondo</translation>
  </message>
  <message>
   <source>Rise of the floor from left to right at the front</source>
   <translation>Desnivel del suelo de izquierda a derecha delante</translation>
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation>Filas que ocupa la lista</translation>
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation>Sierras en lugar de todas estas, un texto JSON cada una</translation>
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation>Activar para volver a planificar en el próximo recálculo</translation>
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation>Activar para volver a escribir la lista en el próximo recálculo</translation>
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation>Tableros de un material hasta los que no se reserva ninguno</translation>
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation>Tableros por cortar</translation>
  </message>
  <message>
   <source>Smallest gap at the back</source>
   <translation>Holgura menor al fondo</translation>
  </message>
  <message>
   <source>Smallest gap at the floor</source>
   <translation>Holgura menor en el suelo</translation>
  </message>
  <message>
   <source>Smallest gap at the left</source>
   <translation>Holgura menor a la izquierda</translation>
  </message>
  <message>
   <source>Smallest gap at the right</source>
   <translation>Holgura menor a la derecha</translation>
  </message>
  <message>
   <source>Smallest gap at the top</source>
   <translation>Holgura menor arriba</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Va al fondo de un espacio útil más profundo; si no, a su frente</translation>
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation>Va junto al cuerpo anterior; si no, en X</translation>
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation>Los montantes llegan al suelo; si no, al borde inferior del travesaño inferior</translation>
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation>Suma de lo que tiene precio, en la moneda del catálogo</translation>
  </message>
  <message>
   <source>Supports between the ends, -1 as many as the span asks for</source>
   <translation>Apoyos entre los extremos, -1 los que pida la luz</translation>
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation>Los soportes sujetan la tapa a cualquier altura</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation>Se quita de cada borde de un tablero antes de cortar ninguna pieza</translation>
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation>El hueco toma el ancho del mueble, salvo que tenga uno propio</translation>
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation>El hueco en el que está; vacío: por su número</translation>
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation>La lista cuyas líneas contienen las celdas</translation>
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation>La lista, cada línea con valores separados por comas</translation>
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation>La moneda del catálogo</translation>
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation>El armario del que se deduce</translation>
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation>El armario al que corresponde la lista</translation>
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation>El armario cuyas piezas se cortan</translation>
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation>El componente al que pertenece</translation>
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation>El plano de corte cuyos tableros se compran; ninguno: aún sin planificar</translation>
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation>El diseño, el plano de corte o el catálogo ha cambiado después</translation>
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation>El suelo del espacio útil sobre la esquina delantera izquierda de la sala</translation>
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation>La cara frontal del espacio útil desde la esquina delantera izquierda de la sala</translation>
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation>La cara izquierda del espacio útil desde la esquina delantera izquierda de la sala</translation>
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation>La cara en la que están las ranuras</translation>
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation>El último archivo del que se leyeron, ninguno si está vacío</translation>
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation>Distancia del frente al frente del espacio útil, según lo construido</translation>
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation>El borde con bisagras de una puerta sencilla</translation>
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation>La esquina trasera izquierda o la derecha</translation>
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation>Los retales disponibles, un texto JSON cada uno</translation>
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation>Los retales disponibles; ninguno: todo se compra</translation>
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation>Las piezas, el catálogo o los ajustes han cambiado después</translation>
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation>El plan de tablas y perfiles, como datos</translation>
  </message>
  <message>
   <source>The plan, as data</source>
   <translation>El plan, como datos</translation>
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation>La holgura en torno a un frente embutido y entre dos cualesquiera</translation>
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation>El borde desde el que se miden las ranuras</translation>
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation>El paso con que se leyó la cinta</translation>
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation>La medición en cuyo espacio útil está</translation>
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation>El asiento es una tapa con bisagras en una tira trasera</translation>
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation>Las formas de comprar que se compararon, como datos</translation>
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation>Grueso medido; si no, el de venta</translation>
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation>Grueso medido en mm, por clave del material</translation>
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation>Grueso de la pared de un tubo; 0: macizo</translation>
  </message>
  <message>
   <source>Thickness of the baseboard</source>
   <translation>Grueso del rodapié</translation>
  </message>
  <message>
   <source>Thickness of the casing</source>
   <translation>Grueso de la tapeta</translation>
  </message>
  <message>
   <source>Thickness of the closet's own door</source>
   <translation>Grueso de la puerta propia del armario</translation>
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation>Grueso de la tapa que se quita</translation>
  </message>
  <message>
   <source>Thickness of the wall at the opening</source>
   <translation>Grueso de la pared en el hueco de entrada</translation>
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation>Sanear cada tablero según Saneado, no como dice el catálogo</translation>
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation>Dos aberturas dejan entrar aire con la tapa cerrada</translation>
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation>Cara inferior de cada balda fija sobre el suelo del hueco en mm; ninguna: espacios iguales</translation>
  </message>
  <message>
   <source>Undersides above the floor (mm)</source>
   <translation>Caras inferiores sobre el suelo (mm)</translation>
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation>Peso en kg; 0: no conocido</translation>
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation>Peso de todas las piezas en kg</translation>
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation>Peso de la pieza acabada en kg</translation>
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation>Qué soporta las baldas fijas</translation>
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation>Qué lo cierra por delante</translation>
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation>Qué cierra o arriostra el cuerpo por detrás</translation>
  </message>
  <message>
   <source>What closes the opening</source>
   <translation>Lo que cierra el hueco de entrada</translation>
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation>Lo que lo precede en el orden del armario</translation>
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation>Qué cubre ahí la holgura</translation>
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation>Qué cuelga de ella, lo que determina su altura</translation>
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation>Qué sujeta los extremos de una barra que va a lo ancho</translation>
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation>Lo que se sabe del lugar y de las personas, como lo escribe su formulario</translation>
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation>Dentro o delante de qué está</translation>
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation>Lo que debe quedar entre ranuras espalda con espalda, como fracción del grueso</translation>
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation>Lo que debe quedar libre, como lo escribe el formulario de la medición</translation>
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation>Lo que debe quedar bajo un taladro ciego</translation>
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation>Qué medida del espacio útil se maximiza</translation>
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation>A qué se redondean las longitudes en los textos, en mm con estilos métricos; si no, en pulgadas</translation>
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation>Para qué se escribió la lista</translation>
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation>Sobre qué apoya el cuerpo</translation>
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation>Con qué se llenaron las celdas</translation>
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation>De qué se deduce el espacio útil: de las lecturas o de las medidas dadas</translation>
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation>Lo que es la pieza en el armario</translation>
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation>Para qué se hizo el plan</translation>
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation>De qué se hizo la forma</translation>
  </message>
  <message>
   <source>What the store saws</source>
   <translation>Lo que corta la tienda</translation>
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation>Dónde están encabezados y nombres</translation>
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation>Por dónde se puede atornillar</translation>
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation>Hacia dónde va la veta</translation>
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation>Dónde termina el montante izquierdo</translation>
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation>Dónde termina el montante derecho</translation>
  </message>
  <message>
   <source>Where the top lies</source>
   <translation>Dónde queda el techo</translation>
  </message>
  <message>
   <source>Where they lie</source>
   <translation>Dónde están</translation>
  </message>
  <message>
   <source>Whether FrontLap is left to the rule</source>
   <translation>Si FrontLap se deja a la regla</translation>
  </message>
  <message>
   <source>Whether X is left to the rule</source>
   <translation>Si X se deja a la regla</translation>
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation>Si algo que hay que comprar no tiene precio</translation>
  </message>
  <message>
   <source>Whether the lean of the right wall at the back was read</source>
   <translation>Si se leyó el desplome de la pared derecha al fondo</translation>
  </message>
  <message>
   <source>Whether the lean of the right wall at the front was read</source>
   <translation>Si se leyó el desplome de la pared derecha delante</translation>
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation>Cuál de sus huecos, desde la izquierda, 1 es el primero</translation>
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation>Qué espacio entre las baldas fijas, desde abajo, 1 es el primero</translation>
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation>Hacia dónde va la veta de la tapa; de delante a atrás es resistente entre travesaños</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation>Mayor distancia libre entre traviesas</translation>
  </message>
  <message>
   <source>Widest gap at the back</source>
   <translation>Holgura mayor al fondo</translation>
  </message>
  <message>
   <source>Widest gap at the floor</source>
   <translation>Holgura mayor en el suelo</translation>
  </message>
  <message>
   <source>Widest gap at the left</source>
   <translation>Holgura mayor a la izquierda</translation>
  </message>
  <message>
   <source>Widest gap at the right</source>
   <translation>Holgura mayor a la derecha</translation>
  </message>
  <message>
   <source>Widest gap at the top</source>
   <translation>Holgura mayor arriba</translation>
  </message>
  <message>
   <source>Width at the back, high</source>
   <translation>Ancho al fondo, alto</translation>
  </message>
  <message>
   <source>Width at the back, high up; 0: not given</source>
   <translation>Ancho al fondo, arriba; 0: no dado</translation>
  </message>
  <message>
   <source>Width at the back, low</source>
   <translation>Ancho al fondo, bajo</translation>
  </message>
  <message>
   <source>Width at the back, low down; 0: not given</source>
   <translation>Ancho al fondo, abajo; 0: no dado</translation>
  </message>
  <message>
   <source>Width at the back, middle</source>
   <translation>Ancho al fondo, medio</translation>
  </message>
  <message>
   <source>Width at the front, high</source>
   <translation>Ancho delante, alto</translation>
  </message>
  <message>
   <source>Width at the front, high up; 0: not given</source>
   <translation>Ancho delante, arriba; 0: no dado</translation>
  </message>
  <message>
   <source>Width at the front, low</source>
   <translation>Ancho delante, bajo</translation>
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation>Ancho delante, abajo</translation>
  </message>
  <message>
   <source>Width at the front, middle</source>
   <translation>Ancho delante, medio</translation>
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation>Ancho de un espacio útil de medidas dadas</translation>
  </message>
  <message>
   <source>Width of that strip</source>
   <translation>Ancho de esa tira</translation>
  </message>
  <message>
   <source>Width of the casing</source>
   <translation>Ancho de la tapeta</translation>
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation>Ancho de la mayor caja a plomo y a nivel que cabe</translation>
  </message>
  <message>
   <source>Width of the members as sawn, 0 takes the board's own</source>
   <translation>Ancho de aserrado de las piezas, 0 toma el propio de la tabla</translation>
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation>Ancho de los montantes centrales</translation>
  </message>
  <message>
   <source>Width of the opening; 0: not taken</source>
   <translation>Ancho del hueco de entrada; 0: no tomado</translation>
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation>Ancho del corte de la sierra</translation>
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation>Ancho de los montantes; en un extremo junto a la pared, sin lo que sobresale del lateral</translation>
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation>Ancho de aserrado, sin los cantos</translation>
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
   <translation>, retal disponible: {}</translation>
  </message>
  <message>
   <source>, sound part of {} x {}, its corner at {} and {}</source>
   <translation>, parte sana de {} x {}, su esquina en {} y {}</translation>
  </message>
  <message>
   <source>, turned {}°</source>
   <translation>, girado {}°</translation>
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
   <translation>1 peligro</translation>
  </message>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation>1 para una puerta, 2 para una pareja con bisagras a ambos lados</translation>
  </message>
  <message>
   <source>1 not checked</source>
   <translation>1 no comprobado</translation>
  </message>
  <message>
   <source>1 note</source>
   <translation>1 nota</translation>
  </message>
  <message>
   <source>1 warning</source>
   <translation>1 advertencia</translation>
  </message>
  <message>
   <source>3 to 4</source>
   <translation>3 a 4</translation>
  </message>
  <message>
   <source>5 to 8</source>
   <translation>5 a 8</translation>
  </message>
  <message>
   <source>9 to 12</source>
   <translation>9 a 12</translation>
  </message>
  <message>
   <source>; dangers in this closet: {}, see the checks</source>
   <translation>; peligros en este armario: {}, véanse las comprobaciones</translation>
  </message>
  <message>
   <source>A bank of drawers in one compartment, with slides and fronts</source>
   <translation>Un bloque de cajones en un compartimento, con guías y frentes</translation>
  </message>
  <message>
   <source>A baseboard that stays; 0 where there is none or it comes off.</source>
   <translation>Un rodapié que se queda; 0 si no hay o si se quita.</translation>
  </message>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation>Un banco en un hueco de un cuerpo, o libre en el armario</translation>
  </message>
  <message>
   <source>A door, or a pair, in front of one compartment</source>
   <translation>Una puerta, o una pareja, ante un compartimento</translation>
  </message>
  <message>
   <source>A drawing for each part</source>
   <translation>Un dibujo por pieza</translation>
  </message>
  <message>
   <source>A drawing for each sheet</source>
   <translation>Un dibujo por tablero</translation>
  </message>
  <message>
   <source>A few more, so that no single wrong reading stays unnoticed.</source>
   <translation>Algunas más, para que ninguna lectura errónea pase inadvertida.</translation>
  </message>
  <message>
   <source>A file with boards, bands and prices of your own, laid over those that come along.</source>
   <translation>Un archivo con tablas, cantos y precios propios, que prevalecen sobre los incluidos.</translation>
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation>Una balda fija queda encima y sigue su altura</translation>
  </message>
  <message>
   <source>A hanging rod, or two, in one compartment</source>
   <translation>Una barra, o dos, en un compartimento</translation>
  </message>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation>Una cómoda o mueble reutilizado, empotrado tal como es</translation>
  </message>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation>Una balda sobre los cuerpos, de pared a pared</translation>
  </message>
  <message>
   <source>A spare sheet for every</source>
   <translation>Un tablero de reserva por cada</translation>
  </message>
  <message>
   <source>A strip along its front edge</source>
   <translation>Una tira a lo largo de su borde frontal</translation>
  </message>
  <message>
   <source>Above the floor as found, feet included</source>
   <translation>Sobre el suelo existente, patas incluidas</translation>
  </message>
  <message>
   <source>Accuracy class that is printed on the tape.</source>
   <translation>Clase de precisión impresa en la cinta.</translation>
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation>A lo ancho del hueco o a lo largo de su profundidad</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Añadir</translation>
  </message>
  <message>
   <source>Add a bay</source>
   <translation>Añadir un hueco</translation>
  </message>
  <message>
   <source>Add a place</source>
   <translation>Añadir un lugar</translation>
  </message>
  <message>
   <source>Add a reading</source>
   <translation>Añadir una lectura</translation>
  </message>
  <message>
   <source>Add an obstacle</source>
   <translation>Añadir un obstáculo</translation>
  </message>
  <message>
   <source>Add one that is recommended</source>
   <translation>Añadir una recomendada</translation>
  </message>
  <message>
   <source>Adjustable</source>
   <translation>Regulable</translation>
  </message>
  <message>
   <source>Adjustable shelves, loose on pins.</source>
   <translation>Baldas sueltas sobre soportes.</translation>
  </message>
  <message>
   <source>Against back</source>
   <translation>Contra el fondo</translation>
  </message>
  <message>
   <source>Against the back</source>
   <translation>Contra el fondo</translation>
  </message>
  <message>
   <source>All pages</source>
   <translation>Todas las páginas</translation>
  </message>
  <message>
   <source>All sheets in one drawing</source>
   <translation>Todos los tableros en un dibujo</translation>
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation>Margen para ajustar a la pared un montante extremo</translation>
  </message>
  <message>
   <source>Along back</source>
   <translation>A lo largo del fondo</translation>
  </message>
  <message>
   <source>Along side</source>
   <translation>A lo largo del lateral</translation>
  </message>
  <message>
   <source>Along the left wall</source>
   <translation>A lo largo de la pared izquierda</translation>
  </message>
  <message>
   <source>Along the right wall</source>
   <translation>A lo largo de la pared derecha</translation>
  </message>
  <message>
   <source>Along the wall, from the front line to the back wall, on the floor.</source>
   <translation>A lo largo de la pared, de la línea frontal a la pared trasera, en el suelo.</translation>
  </message>
  <message>
   <source>Another number may find another plan; the same one finds the same again.</source>
   <translation>Otro número puede dar otro plan; el mismo vuelve a dar el mismo.</translation>
  </message>
  <message>
   <source>Another task is open: finish it with OK or Cancel first.</source>
   <translation>Hay otra tarea abierta: terminarla antes con OK o Cancelar (Cancel).</translation>
  </message>
  <message>
   <source>App::Property</source>
   <translation>App::Property</translation>
  </message>
  <message>
   <source>As it will be written</source>
   <translation>Como se escribirá</translation>
  </message>
  <message>
   <source>Ask for the readings that point out a wrong one</source>
   <translation>Pedir las lecturas que señalan una errónea</translation>
  </message>
  <message>
   <source>At</source>
   <translation>En</translation>
  </message>
  <message>
   <source>At an angle</source>
   <translation>En ángulo</translation>
  </message>
  <message>
   <source>At height</source>
   <translation>A la altura</translation>
  </message>
  <message>
   <source>At least {}: not everything has a price.</source>
   <translation>Al menos {}: no todo tiene precio.</translation>
  </message>
  <message>
   <source>Back</source>
   <translation>Trasera</translation>
  </message>
  <message>
   <source>Back inset</source>
   <translation>Retranqueo trasera</translation>
  </message>
  <message>
   <source>Back material</source>
   <translation>Material de la trasera</translation>
  </message>
  <message>
   <source>Back wall</source>
   <translation>Pared trasera</translation>
  </message>
  <message>
   <source>Backs</source>
   <translation>Traseras</translation>
  </message>
  <message>
   <source>Band</source>
   <translation>Canto</translation>
  </message>
  <message>
   <source>Band waste</source>
   <translation>Desperdicio de canto</translation>
  </message>
  <message>
   <source>Bands</source>
   <translation>Cantos</translation>
  </message>
  <message>
   <source>Bands at</source>
   <translation>Cantos en</translation>
  </message>
  <message>
   <source>Base</source>
   <translation>Zócalo</translation>
  </message>
  <message>
   <source>Base height</source>
   <translation>Alto del zócalo</translation>
  </message>
  <message>
   <source>Base material</source>
   <translation>Material del zócalo</translation>
  </message>
  <message>
   <source>Baseboard</source>
   <translation>Rodapié</translation>
  </message>
  <message>
   <source>Bay</source>
   <translation>Hueco</translation>
  </message>
  <message>
   <source>Bays</source>
   <translation>Huecos</translation>
  </message>
  <message>
   <source>Bays, from left to right</source>
   <translation>Huecos, de izquierda a derecha</translation>
  </message>
  <message>
   <source>Bench</source>
   <translation>Banco</translation>
  </message>
  <message>
   <source>Benches</source>
   <translation>Bancos</translation>
  </message>
  <message>
   <source>Bench…</source>
   <translation>Banco…</translation>
  </message>
  <message>
   <source>Bill</source>
   <translation>Lista</translation>
  </message>
  <message>
   <source>Bill and papers</source>
   <translation>Lista y documentos</translation>
  </message>
  <message>
   <source>Bill is up to date; drawings by DXF</source>
   <translation>La lista está al día; dibujos por DXF</translation>
  </message>
  <message>
   <source>BillPanel</source>
   <translation>BillPanel</translation>
  </message>
  <message>
   <source>Board that goes into the grooves: its measured thickness sets their width.</source>
   <translation>Tabla que entra en las ranuras: su grueso medido fija el ancho de estas.</translation>
  </message>
  <message>
   <source>Boards as measured</source>
   <translation>Tableros según medición</translation>
  </message>
  <message>
   <source>Bottom</source>
   <translation>Fondo</translation>
  </message>
  <message>
   <source>Bottom inset</source>
   <translation>Retranqueo del fondo</translation>
  </message>
  <message>
   <source>Bottom material</source>
   <translation>Material del fondo</translation>
  </message>
  <message>
   <source>Bottom rail</source>
   <translation>Travesaño inferior</translation>
  </message>
  <message>
   <source>Box height</source>
   <translation>Altura de la caja</translation>
  </message>
  <message>
   <source>Box material</source>
   <translation>Material de la caja</translation>
  </message>
  <message>
   <source>Boxes of boards with sides, bays, shelves, back and base</source>
   <translation>Cajas de tablas con laterales, huecos, baldas, trasera y zócalo</translation>
  </message>
  <message>
   <source>By caliper</source>
   <translation>Con pie de rey</translation>
  </message>
  <message>
   <source>By sizes; readings come later</source>
   <translation>Por medidas; las lecturas, después</translation>
  </message>
  <message>
   <source>CSV file</source>
   <translation>Archivo CSV</translation>
  </message>
  <message>
   <source>Cannot be built: {}</source>
   <translation>No se puede construir: {}</translation>
  </message>
  <message>
   <source>Cannot be right: {}</source>
   <translation>No puede ser correcto: {}</translation>
  </message>
  <message>
   <source>Carcass</source>
   <translation>Cuerpo</translation>
  </message>
  <message>
   <source>CarcassPanel</source>
   <translation>CarcassPanel</translation>
  </message>
  <message>
   <source>Carcasses</source>
   <translation>Cuerpos</translation>
  </message>
  <message>
   <source>Carcasses and shelves</source>
   <translation>Cuerpos y baldas</translation>
  </message>
  <message>
   <source>Casing</source>
   <translation>Tapeta</translation>
  </message>
  <message>
   <source>Casing and baseboard</source>
   <translation>Tapeta y rodapié</translation>
  </message>
  <message>
   <source>Catalogue of your own</source>
   <translation>Catálogo propio</translation>
  </message>
  <message>
   <source>Ceiling</source>
   <translation>Techo de la sala</translation>
  </message>
  <message>
   <source>Changes of direction</source>
   <translation>Cambios de dirección</translation>
  </message>
  <message>
   <source>Checks</source>
   <translation>Comprobaciones</translation>
  </message>
  <message>
   <source>Choose</source>
   <translation>Elegir</translation>
  </message>
  <message>
   <source>Choose a line above to list what is damaged on it.</source>
   <translation>Elegir arriba una línea para indicar lo que está dañado en ella.</translation>
  </message>
  <message>
   <source>Circular saw on a straightedge at home</source>
   <translation>Sierra circular con regla guía en casa</translation>
  </message>
  <message>
   <source>Clear of shelves</source>
   <translation>Separada de las baldas</translation>
  </message>
  <message>
   <source>Clear size of the opening, jamb to jamb and floor to lintel.</source>
   <translation>Medida libre del hueco de entrada, de jamba a jamba y del suelo al dintel.</translation>
  </message>
  <message>
   <source>Clear width</source>
   <translation>Ancho libre</translation>
  </message>
  <message>
   <source>Clear width of the bay. Left empty, it shares what the others leave.</source>
   <translation>Ancho libre del hueco. Si se deja vacío, comparte lo que dejan los demás.</translation>
  </message>
  <message>
   <source>Clear widths: {}</source>
   <translation>Anchos libres: {}</translation>
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation>Margen libre a cada lado</translation>
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation>Margen libre bajo la balda superior</translation>
  </message>
  <message>
   <source>Cleat</source>
   <translation>Listón de apoyo</translation>
  </message>
  <message>
   <source>Cleat height</source>
   <translation>Altura del listón</translation>
  </message>
  <message>
   <source>Click on a finding to see what it is about; double-click to edit that.</source>
   <translation>Clic en una observación para ver de qué trata; doble clic para editarlo.</translation>
  </message>
  <message>
   <source>Click to add one</source>
   <translation>Clic para añadir uno</translation>
  </message>
  <message>
   <source>Click to choose one</source>
   <translation>Clic para elegir uno</translation>
  </message>
  <message>
   <source>Click to plan the sheets</source>
   <translation>Clic para planificar los tableros</translation>
  </message>
  <message>
   <source>Click to start a closet</source>
   <translation>Clic para iniciar un armario</translation>
  </message>
  <message>
   <source>Click to write the bill</source>
   <translation>Clic para escribir la lista</translation>
  </message>
  <message>
   <source>Close the checks and say what they have to know.</source>
   <translation>Cerrar las comprobaciones e indicar lo que deben saber.</translation>
  </message>
  <message>
   <source>Closet</source>
   <translation>Armario empotrado</translation>
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation>Documentos de taller del armario</translation>
  </message>
  <message>
   <source>Closet views</source>
   <translation>Vistas del armario</translation>
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
   <translation>Ayuda de Closetbench</translation>
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
   <translation>Armarios empotrados</translation>
  </message>
  <message>
   <source>Compartment</source>
   <translation>Compartimento</translation>
  </message>
  <message>
   <source>Component</source>
   <translation>Componente</translation>
  </message>
  <message>
   <source>Components</source>
   <translation>Componentes</translation>
  </message>
  <message>
   <source>Corner</source>
   <translation>Esquina</translation>
  </message>
  <message>
   <source>Corner shelves</source>
   <translation>Baldas de esquina</translation>
  </message>
  <message>
   <source>Corner shelves…</source>
   <translation>Baldas de esquina…</translation>
  </message>
  <message>
   <source>CornerShelves</source>
   <translation>CornerShelves</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Cantidad</translation>
  </message>
  <message>
   <source>Cup edge</source>
   <translation>Borde de la cazoleta</translation>
  </message>
  <message>
   <source>Cut layout</source>
   <translation>Plano de corte</translation>
  </message>
  <message>
   <source>Cut open</source>
   <translation>Vista en corte</translation>
  </message>
  <message>
   <source>CutLayout</source>
   <translation>CutLayout</translation>
  </message>
  <message>
   <source>Cuts through the widest bays, seen from the right.</source>
   <translation>Corta por los huecos más anchos, visto desde la derecha.</translation>
  </message>
  <message>
   <source>Cuts: {} at the store, {} at home</source>
   <translation>Cortes: {} en la tienda, {} en casa</translation>
  </message>
  <message>
   <source>Cuts: {} wide, {} deep</source>
   <translation>Cortes: {} de ancho, {} de profundidad</translation>
  </message>
  <message>
   <source>Damaged places</source>
   <translation>Lugares dañados</translation>
  </message>
  <message>
   <source>Dangers: {}</source>
   <translation>Peligros: {}</translation>
  </message>
  <message>
   <source>Dead space</source>
   <translation>Espacio muerto</translation>
  </message>
  <message>
   <source>Defaults</source>
   <translation>Valores de partida</translation>
  </message>
  <message>
   <source>Depth</source>
   <translation>Profundidad</translation>
  </message>
  <message>
   <source>Depth at most</source>
   <translation>Profundidad máxima</translation>
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation>Profundidad a la izquierda, con molduras y frentes, sin tiradores</translation>
  </message>
  <message>
   <source>Depth at the right</source>
   <translation>Profundidad a la derecha</translation>
  </message>
  <message>
   <source>Depth back</source>
   <translation>Prof. al fondo</translation>
  </message>
  <message>
   <source>Depth fraction</source>
   <translation>Fracción de profundidad</translation>
  </message>
  <message>
   <source>Depth left</source>
   <translation>Prof. izquierda</translation>
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation>Profundidad del ala a lo largo de la pared trasera</translation>
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation>Profundidad del ala a lo largo de la pared lateral</translation>
  </message>
  <message>
   <source>Depth right</source>
   <translation>Prof. derecha</translation>
  </message>
  <message>
   <source>Depth side</source>
   <translation>Prof. lateral</translation>
  </message>
  <message>
   <source>Depth step</source>
   <translation>Paso de profundidad</translation>
  </message>
  <message>
   <source>Depths</source>
   <translation>Profundidades</translation>
  </message>
  <message>
   <source>Diagonal to the left</source>
   <translation>Diagonal hacia la izquierda</translation>
  </message>
  <message>
   <source>Diagonal to the right</source>
   <translation>Diagonal hacia la derecha</translation>
  </message>
  <message>
   <source>Diameter</source>
   <translation>Diámetro</translation>
  </message>
  <message>
   <source>Diameter of the bit at hand: the bill then gives the passes for each groove.</source>
   <translation>Diámetro de la fresa disponible: la lista da entonces las pasadas de cada ranura.</translation>
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation>Diámetro del taladro para un tirador</translation>
  </message>
  <message>
   <source>Direction of the cuts that are made first on a whole sheet.</source>
   <translation>Dirección de los cortes que se hacen primero en un tablero entero.</translation>
  </message>
  <message>
   <source>Distance of its left side from the left of the envelope. Left empty, it stands beside the carcass before it.</source>
   <translation>Distancia de su lado izquierdo a la izquierda del espacio útil. Si se deja vacío, queda junto al cuerpo anterior.</translation>
  </message>
  <message>
   <source>Does it go in?</source>
   <translation>¿Entra?</translation>
  </message>
  <message>
   <source>Doors</source>
   <translation>Puertas</translation>
  </message>
  <message>
   <source>Doors and lids are taken to turn about the edge that their hinges hold; look at the hinges' own drawing where it is close.</source>
   <translation>Se supone que puertas y tapas giran sobre el canto que sujetan sus bisagras; consultar el plano de las bisagras donde quede justo.</translation>
  </message>
  <message>
   <source>Doors…</source>
   <translation>Puertas…</translation>
  </message>
  <message>
   <source>Doubtful: {}</source>
   <translation>Dudoso: {}</translation>
  </message>
  <message>
   <source>Drawer boxes</source>
   <translation>Cajas de cajón</translation>
  </message>
  <message>
   <source>Drawers</source>
   <translation>Cajones</translation>
  </message>
  <message>
   <source>Drawers, doors, rods, a bench, a reused piece, fillers</source>
   <translation>Cajones, puertas, barras, un banco, un mueble reutilizado, listones de ajuste</translation>
  </message>
  <message>
   <source>Drawers…</source>
   <translation>Cajones…</translation>
  </message>
  <message>
   <source>Drawing page</source>
   <translation>Página de dibujo</translation>
  </message>
  <message>
   <source>Drawings</source>
   <translation>Dibujos</translation>
  </message>
  <message>
   <source>Drawn by</source>
   <translation>Dibujado por</translation>
  </message>
  <message>
   <source>Drill</source>
   <translation>Taladrado</translation>
  </message>
  <message>
   <source>Drop</source>
   <translation>Caída</translation>
  </message>
  <message>
   <source>Edge band</source>
   <translation>Canto</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims.</source>
   <translation>Canto que se compra de más sobre el largo de los bordes.</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips. Automatic: as the carcass's.</source>
   <translation>Canto de los bordes frontales de las baldas, o de sus refuerzos. Automático: como el del cuerpo.</translation>
  </message>
  <message>
   <source>Edit {}</source>
   <translation>Editar {}</translation>
  </message>
  <message>
   <source>End clearance</source>
   <translation>Holgura en el extremo</translation>
  </message>
  <message>
   <source>Enter what was read.</source>
   <translation>Introducir lo leído.</translation>
  </message>
  <message>
   <source>Envelope: {} wide, {} deep, {} high</source>
   <translation>Espacio útil: {} de ancho, {} de profundidad, {} de altura</translation>
  </message>
  <message>
   <source>Error of the level or the plumb line over one metre.</source>
   <translation>Error del nivel o de la plomada en un metro.</translation>
  </message>
  <message>
   <source>Everything opens freely.</source>
   <translation>Todo se abre libremente.</translation>
  </message>
  <message>
   <source>Exact.</source>
   <translation>Exacto.</translation>
  </message>
  <message>
   <source>Examples: {} and {}</source>
   <translation>Ejemplos: {} y {}</translation>
  </message>
  <message>
   <source>Existing</source>
   <translation>Existente</translation>
  </message>
  <message>
   <source>Existing pieces</source>
   <translation>Muebles existentes</translation>
  </message>
  <message>
   <source>Existing piece…</source>
   <translation>Mueble existente…</translation>
  </message>
  <message>
   <source>Expected</source>
   <translation>Esperado</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Cara</translation>
  </message>
  <message>
   <source>Face frame</source>
   <translation>Marco frontal</translation>
  </message>
  <message>
   <source>Face frame…</source>
   <translation>Marco frontal…</translation>
  </message>
  <message>
   <source>Face material</source>
   <translation>Material del frente</translation>
  </message>
  <message>
   <source>FaceFrame</source>
   <translation>FaceFrame</translation>
  </message>
  <message>
   <source>Feet</source>
   <translation>Patas</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Archivo</translation>
  </message>
  <message>
   <source>Fillers</source>
   <translation>Listones de ajuste</translation>
  </message>
  <message>
   <source>Fillers and mouldings</source>
   <translation>Listones de ajuste y molduras</translation>
  </message>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation>Listones de ajuste y molduras que cierran las holguras con paredes, techo y suelo</translation>
  </message>
  <message>
   <source>Fillers…</source>
   <translation>Listones de ajuste…</translation>
  </message>
  <message>
   <source>Finding</source>
   <translation>Observación</translation>
  </message>
  <message>
   <source>Finished size, edge bands included.</source>
   <translation>Medida acabada, cantos incluidos.</translation>
  </message>
  <message>
   <source>First</source>
   <translation>Primera</translation>
  </message>
  <message>
   <source>First at</source>
   <translation>Primera a</translation>
  </message>
  <message>
   <source>First cuts</source>
   <translation>Primeros cortes</translation>
  </message>
  <message>
   <source>Fit</source>
   <translation>Ajuste</translation>
  </message>
  <message>
   <source>Fitted</source>
   <translation>Encajado</translation>
  </message>
  <message>
   <source>Fixed</source>
   <translation>Fija</translation>
  </message>
  <message>
   <source>Fixed at</source>
   <translation>Fijas a</translation>
  </message>
  <message>
   <source>Fixed shelves by</source>
   <translation>Baldas fijas con</translation>
  </message>
  <message>
   <source>Fixed shelves, let into the sides at equal clear heights.</source>
   <translation>Baldas fijas, embutidas en los laterales a alturas libres iguales.</translation>
  </message>
  <message>
   <source>Floor</source>
   <translation>Suelo</translation>
  </message>
  <message>
   <source>Floor to ceiling, the tape plumb, close to the corner.</source>
   <translation>De suelo a techo, con la cinta a plomo, cerca de la esquina.</translation>
  </message>
  <message>
   <source>Floor to the back</source>
   <translation>Suelo hacia el fondo</translation>
  </message>
  <message>
   <source>Floor to the right</source>
   <translation>Suelo hacia la derecha</translation>
  </message>
  <message>
   <source>Folder</source>
   <translation>Carpeta</translation>
  </message>
  <message>
   <source>Folder for the drawings</source>
   <translation>Carpeta para los dibujos</translation>
  </message>
  <message>
   <source>Folder for the pictures</source>
   <translation>Carpeta para las imágenes</translation>
  </message>
  <message>
   <source>Follows the formula {}</source>
   <translation>Sigue la fórmula {}</translation>
  </message>
  <message>
   <source>For fewer cuts</source>
   <translation>Para menos cortes</translation>
  </message>
  <message>
   <source>For fewer sheets</source>
   <translation>Para menos tableros</translation>
  </message>
  <message>
   <source>For panels of</source>
   <translation>Para paneles de</translation>
  </message>
  <message>
   <source>Forget the last ones</source>
   <translation>Olvidar los últimos</translation>
  </message>
  <message>
   <source>Fraction of the thickness that must stay between two cuts that meet from both faces. ``least_skin``: mm that must stay under a blind hole</source>
   <translation>Fracción del grueso que debe quedar entre dos cortes que se enfrentan desde ambas caras. ``least_skin``: mm que deben quedar bajo un taladro ciego</translation>
  </message>
  <message>
   <source>Free</source>
   <translation>Libre</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Desde</translation>
  </message>
  <message>
   <source>From an end the grooves run across the width, from an edge along the length.</source>
   <translation>Desde un extremo, las ranuras van a lo ancho; desde un borde, a lo largo.</translation>
  </message>
  <message>
   <source>From floor</source>
   <translation>Desde el suelo</translation>
  </message>
  <message>
   <source>From front</source>
   <translation>Desde delante</translation>
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation>De taladro a taladro de un tirador de dos, 0 para un pomo de uno</translation>
  </message>
  <message>
   <source>From its front edge</source>
   <translation>Desde su borde frontal</translation>
  </message>
  <message>
   <source>From near wall to near wall.</source>
   <translation>De pared próxima a pared próxima.</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove.</source>
   <translation>De ese borde a la pared más próxima de la primera ranura.</translation>
  </message>
  <message>
   <source>From the front of the carcass to the kick board or the frame's front rail.</source>
   <translation>Del frente del cuerpo al frente del zócalo o al travesaño delantero del bastidor.</translation>
  </message>
  <message>
   <source>From the leaf's edge to the boring's, None takes the hinge's own</source>
   <translation>Del borde de la hoja al del taladro, None toma el propio de la bisagra</translation>
  </message>
  <message>
   <source>From the left</source>
   <translation>Desde la izq.</translation>
  </message>
  <message>
   <source>From the left, 1 first.</source>
   <translation>Desde la izquierda, 1 es el primero.</translation>
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation>Del centro del tirador al borde libre de la hoja</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face: room to scribe to the wall.</source>
   <translation>De los bordes traseros a la cara posterior de la trasera: espacio para ajustar a la pared.</translation>
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, None takes 305 mm or the middle</source>
   <translation>Del fondo del vano al eje de la barra, None toma 305 mm o el centro</translation>
  </message>
  <message>
   <source>From the side wall to the jamb, inside.</source>
   <translation>De la pared lateral a la jamba, por dentro.</translation>
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation>Del borde inferior de los laterales a la ranura del fondo</translation>
  </message>
  <message>
   <source>From the underside of the lintel to the ceiling, inside.</source>
   <translation>De la cara inferior del dintel al techo, por dentro.</translation>
  </message>
  <message>
   <source>Front</source>
   <translation>Frente</translation>
  </message>
  <message>
   <source>Front elevation with sizes</source>
   <translation>Alzado frontal con medidas</translation>
  </message>
  <message>
   <source>Front row at</source>
   <translation>Fila delantera a</translation>
  </message>
  <message>
   <source>Fronts and doors, to be drilled</source>
   <translation>Frentes y puertas, por taladrar</translation>
  </message>
  <message>
   <source>Fronts, doors, face frames</source>
   <translation>Frentes, puertas, marcos frontales</translation>
  </message>
  <message>
   <source>Gap</source>
   <translation>Holgura</translation>
  </message>
  <message>
   <source>Gap above</source>
   <translation>Holgura superior</translation>
  </message>
  <message>
   <source>Gaps kept with</source>
   <translation>Holguras con</translation>
  </message>
  <message>
   <source>Goes in</source>
   <translation>Entra</translation>
  </message>
  <message>
   <source>Grain</source>
   <translation>Veta</translation>
  </message>
  <message>
   <source>Grain along</source>
   <translation>Veta según</translation>
  </message>
  <message>
   <source>Grained</source>
   <translation>Con veta</translation>
  </message>
  <message>
   <source>Groove depth</source>
   <translation>Profundidad de ranura</translation>
  </message>
  <message>
   <source>Groove stop</source>
   <translation>Tope de ranura</translation>
  </message>
  <message>
   <source>Groove wider than the panel in it, mm. ``end_clearance``: how far a tongue stays short of the bottom of its groove, mm. ``depth_fraction`` of the grooved panel's thickness, taken down to a multiple of ``depth_step`` (a router is set in steps), unless ``depth`` is given. ``most_fraction``: deepest groove allowed</source>
   <translation>Lo que la ranura es más ancha que el panel que entra en ella, mm. ``end_clearance``: cuánto se queda corta una lengüeta del fondo de su ranura, mm. ``depth_fraction`` del grueso del panel ranurado, redondeada hacia abajo a un múltiplo de ``depth_step`` (la fresadora se ajusta por pasos), salvo que se dé ``depth``. ``most_fraction``: ranura más profunda admitida</translation>
  </message>
  <message>
   <source>Groove wider than the panel in it.</source>
   <translation>Lo que la ranura es más ancha que el panel que entra en ella.</translation>
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
   <translation>Ranuras</translation>
  </message>
  <message>
   <source>Grooves and rabbets</source>
   <translation>Ranuras y rebajes</translation>
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation>Barra…</translation>
  </message>
  <message>
   <source>Height</source>
   <translation>Altura</translation>
  </message>
  <message>
   <source>Height above the floor at which these readings are taken.</source>
   <translation>Altura sobre el suelo a la que se toman estas lecturas.</translation>
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation>Altura a la izquierda, con patas y tapa</translation>
  </message>
  <message>
   <source>Height at the right</source>
   <translation>Altura a la derecha</translation>
  </message>
  <message>
   <source>Height left</source>
   <translation>Altura izquierda</translation>
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation>Altura de un travesaño ante cada balda fija, 0 para ninguno</translation>
  </message>
  <message>
   <source>Height of a strip in front of each shelf, level with its upper face; 0 for none. It stiffens the shelf, which is that much less deep.</source>
   <translation>Altura de una tira delante de cada balda, enrasada con su cara superior; 0 para ninguna. Rigidiza la balda, que pierde esa profundidad.</translation>
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation>Altura del travesaño inferior</translation>
  </message>
  <message>
   <source>Height of the boxes' sides, None takes all that the slide leaves</source>
   <translation>Altura de los laterales de las cajas, None toma todo lo que deja la guía</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation>Altura de los listones en las paredes</translation>
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation>Altura de los listones en las paredes, 0 para ninguno</translation>
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation>Altura de las patas que se quitan</translation>
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation>Altura del tope sobre la balda</translation>
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation>Altura del travesaño superior</translation>
  </message>
  <message>
   <source>Height right</source>
   <translation>Altura derecha</translation>
  </message>
  <message>
   <source>Heights</source>
   <translation>Alturas</translation>
  </message>
  <message>
   <source>Heights of the fixed shelves' undersides above the bay's floor, set apart by semicolons. Left empty, the clear heights are equal.</source>
   <translation>Alturas de las caras inferiores de las baldas fijas sobre el suelo del hueco, separadas por punto y coma. Si se deja vacío, las alturas libres son iguales.</translation>
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left</source>
   <translation>Alturas de los frentes desde abajo, una de ellas 0 para tomar lo restante</translation>
  </message>
  <message>
   <source>Hide everything else</source>
   <translation>Ocultar todo lo demás</translation>
  </message>
  <message>
   <source>High</source>
   <translation>Arriba</translation>
  </message>
  <message>
   <source>Hinge</source>
   <translation>Bisagra</translation>
  </message>
  <message>
   <source>Hinged</source>
   <translation>Lado de bisagras</translation>
  </message>
  <message>
   <source>Hinges</source>
   <translation>Bisagras</translation>
  </message>
  <message>
   <source>Hinges on each leaf, None takes what its height and weight ask for</source>
   <translation>Bisagras por hoja, None toma las que piden su altura y su peso</translation>
  </message>
  <message>
   <source>Holder</source>
   <translation>Soporte</translation>
  </message>
  <message>
   <source>Hole depth</source>
   <translation>Profundidad de taladro</translation>
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation>Cuánto apoya como mínimo una moldura en el cuerpo, 6 mm como arriba</translation>
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation>Cuánto sobresale un montante del lateral del cuerpo</translation>
  </message>
  <message>
   <source>How far a tongue stays short of the bottom of its groove.</source>
   <translation>Cuánto se queda corta una lengüeta del fondo de su ranura.</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation>A qué altura sobre el suelo del compartimento empieza</translation>
  </message>
  <message>
   <source>How far above the compartment's floor it begins.</source>
   <translation>A qué altura sobre el suelo del compartimento empieza.</translation>
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, None by its kind</source>
   <translation>Cuánto solapa un frente superpuesto lo que limita su vano, None según su tipo</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through. By rule: stopped behind a banded edge, through a bare one.</source>
   <translation>Cuánto quedan las ranuras por detrás del borde frontal; 0 las pasa de lado a lado. Según regla: detenidas tras un borde con canto, pasantes por uno sin él.</translation>
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation>Cuánto sobresale del marco en ambos extremos</translation>
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation>Cuánto queda su frente por detrás de los bordes frontales del cuerpo</translation>
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation>Cuánto sube su borde inferior hacia la derecha</translation>
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation>Cuánto se inclina su borde derecho hacia la derecha al subir</translation>
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation>Cuánto sube su borde superior hacia la derecha</translation>
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation>Cuánto sobresale el marco por encima del techo del cuerpo</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rims that they run between; 0 runs through.</source>
   <translation>Cuánto se apartan las ranuras de los bordes entre los que van; 0 las pasa de lado a lado.</translation>
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation>Cuánto se inclina a la derecha, al subir, el borde izquierdo del vano de un frente embutido</translation>
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation>Cuánto sobresalen a cada lado y delante las molduras que se quitan</translation>
  </message>
  <message>
   <source>How far the parts are pulled apart in the view; they stay where they are.</source>
   <translation>Cuánto se separan las piezas en la vista; no se mueven de su sitio.</translation>
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation>Cuánto vuela la tapa sobre el bastidor y su frente por delante</translation>
  </message>
  <message>
   <source>How far they come out</source>
   <translation>Cuánto salen</translation>
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation>Cómo se unen el frente y la trasera de una caja a sus laterales</translation>
  </message>
  <message>
   <source>How high it is, None for all that is left</source>
   <translation>Su altura, None para todo lo restante</translation>
  </message>
  <message>
   <source>How likely all least gaps are kept, given how well the room is known.</source>
   <translation>Probabilidad de que se cumplan todas las holguras mínimas, según lo bien que se conoce la sala.</translation>
  </message>
  <message>
   <source>How long to search, per material</source>
   <translation>Cuánto tiempo buscar, por material</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted as one.</source>
   <translation>Cuántas veces puede cambiar de dirección el corte, contando la primera.</translation>
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation>Cuánto más bajo queda el frente de una balda que su parte trasera</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is.</source>
   <translation>Cuánto más corta que su hueco es una balda suelta.</translation>
  </message>
  <message>
   <source>How sure</source>
   <translation>Seguridad</translation>
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation>Cómo se asientan los zócalos en el suelo</translation>
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation>Cómo se sujeta el fondo</translation>
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation>Cómo se colocan los travesaños largos</translation>
  </message>
  <message>
   <source>How the members are joined</source>
   <translation>Cómo se unen las piezas</translation>
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
   <translation>En</translation>
  </message>
  <message>
   <source>In all {}.</source>
   <translation>En total {}.</translation>
  </message>
  <message>
   <source>In front of</source>
   <translation>Delante de</translation>
  </message>
  <message>
   <source>In front of each fixed and loose shelf, which is that much less deep;</source>
   <translation>Delante de cada balda fija y suelta, que pierde esa profundidad;</translation>
  </message>
  <message>
   <source>In kg, with its drawers; None where nobody has weighed it</source>
   <translation>En kg, con sus cajones; None si nadie lo ha pesado</translation>
  </message>
  <message>
   <source>In the 3D view</source>
   <translation>En la vista 3D</translation>
  </message>
  <message>
   <source>In the closet: {}</source>
   <translation>En el armario: {}</translation>
  </message>
  <message>
   <source>In the face</source>
   <translation>En la cara</translation>
  </message>
  <message>
   <source>Inset</source>
   <translation>Retranqueo</translation>
  </message>
  <message>
   <source>It stays where it was: {}</source>
   <translation>Se queda donde estaba: {}</translation>
  </message>
  <message>
   <source>Its cuts, at most</source>
   <translation>Sus cortes, como máximo</translation>
  </message>
  <message>
   <source>Its depth, None takes the envelope's</source>
   <translation>Su profundidad, None toma la del espacio útil</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation>Distancia de su extremo izquierdo a la izquierda del espacio útil</translation>
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, None beside what stands there</source>
   <translation>Distancia de su extremo izquierdo a la izquierda del espacio útil, None junto a lo que ya hay</translation>
  </message>
  <message>
   <source>Its own door</source>
   <translation>Su propia puerta</translation>
  </message>
  <message>
   <source>Its right end's, None runs to the right wall</source>
   <translation>La de su extremo derecho, None llega a la pared derecha</translation>
  </message>
  <message>
   <source>Its underside above the floor, None lies on the highest carcass</source>
   <translation>Su cara inferior sobre el suelo, None apoya en el cuerpo más alto</translation>
  </message>
  <message>
   <source>Its way in</source>
   <translation>Su camino de entrada</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Unión</translation>
  </message>
  <message>
   <source>Joints, base and back</source>
   <translation>Uniones, zócalo y trasera</translation>
  </message>
  <message>
   <source>Keep for nobody</source>
   <translation>Guardar para nadie</translation>
  </message>
  <message>
   <source>Kept</source>
   <translation>Conservado</translation>
  </message>
  <message>
   <source>Kerf</source>
   <translation>Ancho de corte</translation>
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation>Clave de una clase de perfil</translation>
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation>Clave de una clase de bisagra</translation>
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation>Clave de una clase de guía</translation>
  </message>
  <message>
   <source>Key of its board</source>
   <translation>Clave de su tabla</translation>
  </message>
  <message>
   <source>Key of its board, None takes the shelf's</source>
   <translation>Clave de su tabla, None toma la de la balda</translation>
  </message>
  <message>
   <source>Key of its edge band, None for the material's own, "" for none</source>
   <translation>Clave de su canto, None para el propio del material, "" para ninguno</translation>
  </message>
  <message>
   <source>Key of the band on the shelves' front edges, None as on the carcass's, "" none; a shelf behind a lip has none, and the lip has it on its long edges</source>
   <translation>Clave del canto de los bordes frontales de las baldas, None como el del cuerpo, "" ninguno; una balda tras un refuerzo no lleva, y el refuerzo lo lleva en sus bordes largos</translation>
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation>Clave de las tablas o tableros de los que se cortan sus piezas</translation>
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation>Clave de la tabla de los fondos</translation>
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation>Clave de la tabla de las cajas</translation>
  </message>
  <message>
   <source>Key of the edge band for visible front edges; None takes the material's own, "" bands nothing. ``groove_stop``: how far grooves stay back from the front edge; None stops them 10 mm short where the front is banded and runs them through where not</source>
   <translation>Clave del canto de los bordes frontales visibles; None toma el propio del material, "" no pone ninguno. ``groove_stop``: cuánto quedan las ranuras por detrás del borde frontal; None las detiene 10 mm antes donde el frente lleva canto y las hace pasantes donde no</translation>
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, None for the material's own, "" for none</source>
   <translation>Clave del canto de baldas y topes, None para el propio del material, "" para ninguno</translation>
  </message>
  <message>
   <source>Key of the edge band of their long edges, None for the material's own, "" for none</source>
   <translation>Clave del canto de sus bordes largos, None para el propio del material, "" para ninguno</translation>
  </message>
  <message>
   <source>Key of the face's board, None takes the top's</source>
   <translation>Clave de la tabla del frente, None toma la de la tapa</translation>
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation>Clave de la madera de las piezas</translation>
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation>Clave de la tabla de la tapa</translation>
  </message>
  <message>
   <source>Key of their board</source>
   <translation>Clave de su tabla</translation>
  </message>
  <message>
   <source>Key of their board, None takes the carcass's</source>
   <translation>Clave de su tabla, None toma la del cuerpo</translation>
  </message>
  <message>
   <source>Key of their edge band, None for the material's own, "" for none</source>
   <translation>Clave de su canto, None para el propio del material, "" para ninguno</translation>
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation>Claves de las molduras planas y de los cuartos de caña para el pie del zócalo entre las que elegir; sin cuartos de caña, el pie queda abierto</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Tipo</translation>
  </message>
  <message>
   <source>Kind of file</source>
   <translation>Tipo de archivo</translation>
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation>LED o fluorescente homologada para el interior de armarios</translation>
  </message>
  <message>
   <source>Lap</source>
   <translation>Solape</translation>
  </message>
  <message>
   <source>Largest is</source>
   <translation>Maximizar</translation>
  </message>
  <message>
   <source>Lay</source>
   <translation>Colocación</translation>
  </message>
  <message>
   <source>LayoutPanel</source>
   <translation>LayoutPanel</translation>
  </message>
  <message>
   <source>Lean left</source>
   <translation>Desplome izq.</translation>
  </message>
  <message>
   <source>Lean right</source>
   <translation>Desplome der.</translation>
  </message>
  <message>
   <source>Least</source>
   <translation>Mínimo</translation>
  </message>
  <message>
   <source>Least gap</source>
   <translation>Holgura mínima</translation>
  </message>
  <message>
   <source>Least skin</source>
   <translation>Grueso restante</translation>
  </message>
  <message>
   <source>Least web</source>
   <translation>Alma mínima</translation>
  </message>
  <message>
   <source>Leave all readings blank</source>
   <translation>Dejar en blanco todas las lecturas</translation>
  </message>
  <message>
   <source>Leaves</source>
   <translation>Hojas</translation>
  </message>
  <message>
   <source>Left</source>
   <translation>Izquierda</translation>
  </message>
  <message>
   <source>Left end at</source>
   <translation>Extremo izquierdo a</translation>
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation>Material que se deja para rebajar al ajustar, 6 mm (práctica habitual, sin fuente publicada)</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left, None: beside the carcass before</source>
   <translation>Distancia de su lado izquierdo a la izquierda del espacio útil, None: junto al cuerpo anterior</translation>
  </message>
  <message>
   <source>Left wall</source>
   <translation>Pared izquierda</translation>
  </message>
  <message>
   <source>Length</source>
   <translation>Largo</translation>
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation>Largo junto a la pared trasera</translation>
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation>Largo junto a la pared lateral</translation>
  </message>
  <message>
   <source>Length of the slides, None takes the longest that fits</source>
   <translation>Largo de las guías, None toma la más larga que cabe</translation>
  </message>
  <message>
   <source>Level offset of the floor: above 0 where it rises.</source>
   <translation>Desnivel del suelo: mayor que 0 donde sube.</translation>
  </message>
  <message>
   <source>Level, in a metre</source>
   <translation>Nivel, en un metro</translation>
  </message>
  <message>
   <source>Levelling</source>
   <translation>Nivelación</translation>
  </message>
  <message>
   <source>Lid</source>
   <translation>Tapa</translation>
  </message>
  <message>
   <source>Lid support</source>
   <translation>Soporte de tapa</translation>
  </message>
  <message>
   <source>Limit</source>
   <translation>Límite</translation>
  </message>
  <message>
   <source>Lip</source>
   <translation>Refuerzo frontal</translation>
  </message>
  <message>
   <source>Lip material</source>
   <translation>Material del refuerzo</translation>
  </message>
  <message>
   <source>Loads, wall, damp, children, light</source>
   <translation>Cargas, pared, humedad, niños, luz</translation>
  </message>
  <message>
   <source>Loads, wall, damp, children, light…</source>
   <translation>Cargas, pared, humedad, niños, luz…</translation>
  </message>
  <message>
   <source>Loose</source>
   <translation>Suelta</translation>
  </message>
  <message>
   <source>Low</source>
   <translation>Abajo</translation>
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
   <translation>Hacer {}</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Margen</translation>
  </message>
  <message>
   <source>Material</source>
   <translation>Material</translation>
  </message>
  <message>
   <source>Materials, kinds and figures as they come with the workbench, in the place of those that were last accepted</source>
   <translation>Materiales, clases y datos tal como vienen con el entorno, en lugar de los últimos aceptados</translation>
  </message>
  <message>
   <source>Mating</source>
   <translation>Encaje</translation>
  </message>
  <message>
   <source>Measured from</source>
   <translation>Medido desde</translation>
  </message>
  <message>
   <source>Member</source>
   <translation>Pieza</translation>
  </message>
  <message>
   <source>Members every</source>
   <translation>Piezas cada</translation>
  </message>
  <message>
   <source>Middle</source>
   <translation>Centro</translation>
  </message>
  <message>
   <source>Millimetres, as sawn and before banding. Depth and side of each cut are in the layers' names.</source>
   <translation>Milímetros, tal como se asierra y antes de cantear. La profundidad y la cara de cada corte figuran en los nombres de las capas.</translation>
  </message>
  <message>
   <source>More about the room</source>
   <translation>Más sobre la sala</translation>
  </message>
  <message>
   <source>Most</source>
   <translation>Máximo</translation>
  </message>
  <message>
   <source>Most fraction</source>
   <translation>Fracción máxima</translation>
  </message>
  <message>
   <source>Moulding</source>
   <translation>Moldura</translation>
  </message>
  <message>
   <source>Mouldings</source>
   <translation>Molduras</translation>
  </message>
  <message>
   <source>Move {}</source>
   <translation>Mover {}</translation>
  </message>
  <message>
   <source>Mullion</source>
   <translation>Montante central</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Nombre</translation>
  </message>
  <message>
   <source>Name of the carcass or bench that it stands in</source>
   <translation>Nombre del cuerpo o banco en el que está</translation>
  </message>
  <message>
   <source>Name of the carcass that it stands in front of</source>
   <translation>Nombre del cuerpo ante el que está</translation>
  </message>
  <message>
   <source>Names of the parts</source>
   <translation>Nombres de las piezas</translation>
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation>Tira más estrecha y más ancha: 20 mm (práctica habitual, sin fuente publicada) y 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edición 1, 2009)</translation>
  </message>
  <message>
   <source>Nearest hole to a fixed panel; ``depth`` of a blind hole; ``play``: how much shorter than its bay a loose shelf is (2 to 3 mm, common practice, no published source)</source>
   <translation>Taladro más próximo a un panel fijo; ``depth`` de un taladro ciego; ``play``: cuánto más corta que su hueco es una balda suelta (2 a 3 mm, práctica habitual, sin fuente publicada)</translation>
  </message>
  <message>
   <source>Needs a carcass</source>
   <translation>Requiere un cuerpo</translation>
  </message>
  <message>
   <source>Needs a closet</source>
   <translation>Requiere un armario</translation>
  </message>
  <message>
   <source>Needs a cut layout</source>
   <translation>Requiere un plano de corte</translation>
  </message>
  <message>
   <source>New components start as the last ones</source>
   <translation>Los componentes nuevos empiezan como los últimos</translation>
  </message>
  <message>
   <source>New components start with what comes with the workbench.</source>
   <translation>Los componentes nuevos empiezan con lo que viene con el entorno.</translation>
  </message>
  <message>
   <source>No box fits into the room as entered</source>
   <translation>Ninguna caja cabe en la sala según lo introducido</translation>
  </message>
  <message>
   <source>No carcass that is up to 15 mm less deep would save a sheet.</source>
   <translation>Ningún cuerpo con hasta 15 mm menos de profundidad ahorraría un tablero.</translation>
  </message>
  <message>
   <source>Not checked does not mean safe; {}. Each figure is only as good as what was entered.</source>
   <translation>No comprobado no significa seguro; {}. Cada cifra vale solo lo que valga lo introducido.</translation>
  </message>
  <message>
   <source>Not planned yet.</source>
   <translation>Aún sin planificar.</translation>
  </message>
  <message>
   <source>Not shown by this choice: {}.</source>
   <translation>No se muestra con esta elección: {}.</translation>
  </message>
  <message>
   <source>Nothing can be checked: the closet cannot be built. {}</source>
   <translation>No se puede comprobar nada: el armario no se puede construir. {}</translation>
  </message>
  <message>
   <source>Nothing found</source>
   <translation>No se encontró nada</translation>
  </message>
  <message>
   <source>Nothing is damaged.</source>
   <translation>No hay nada dañado.</translation>
  </message>
  <message>
   <source>Nothing of this kind was found.</source>
   <translation>No se encontró nada de este tipo.</translation>
  </message>
  <message>
   <source>Nothing to cut yet</source>
   <translation>Aún nada que cortar</translation>
  </message>
  <message>
   <source>Nothing was found.</source>
   <translation>No se encontró nada.</translation>
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation>Número de cajones de igual altura</translation>
  </message>
  <message>
   <source>Number of fixed shelves, spread to equal clear heights, unless ``heights`` gives the height of each one's underside above the bay's floor. ``adjustable``: number of loose shelves on pins, each put into the highest free space</source>
   <translation>Número de baldas fijas, repartidas a alturas libres iguales, salvo que ``heights`` dé la altura de la cara inferior de cada una sobre el suelo del hueco. ``adjustable``: número de baldas sueltas sobre soportes, cada una en el espacio libre más alto</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Número de ranuras</translation>
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation>Número de sus cajones, uno sobre otro</translation>
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation>Número de travesaños largos, contando el delantero y el trasero</translation>
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation>Número de vanos debajo, con pies entre ellos</translation>
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation>Número de trozos en que se hace, a testa</translation>
  </message>
  <message>
   <source>Number of shelves</source>
   <translation>Número de baldas</translation>
  </message>
  <message>
   <source>Obstacles</source>
   <translation>Obstáculos</translation>
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation>De su asiento sobre aquello en que apoya</translation>
  </message>
  <message>
   <source>Of strips, None takes the carcass's</source>
   <translation>De las tiras, None toma la del cuerpo</translation>
  </message>
  <message>
   <source>Of the pull's middle above the floor, None takes 1,000 mm or the nearest</source>
   <translation>Del centro del tirador sobre el suelo, None toma 1.000 mm o lo más próximo</translation>
  </message>
  <message>
   <source>Of the rod's axis above the floor, None by its use or as high as it can be</source>
   <translation>Del eje de la barra sobre el suelo, None según su uso o lo más alto posible</translation>
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation>De la tira, 0 para ninguna</translation>
  </message>
  <message>
   <source>Of the upper of two rods, None by rule</source>
   <translation>De la superior de dos barras, None según regla</translation>
  </message>
  <message>
   <source>Offcuts</source>
   <translation>Retales</translation>
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation>Retales disponibles</translation>
  </message>
  <message>
   <source>OffcutsPanel</source>
   <translation>OffcutsPanel</translation>
  </message>
  <message>
   <source>On one sheet. A piece that is too much for one person to carry is cut smaller at the store where it can be.</source>
   <translation>En un tablero. Lo que una sola persona no puede llevar se corta más pequeño en la tienda, si es posible.</translation>
  </message>
  <message>
   <source>On the floor, from the front corner to the back corner across.</source>
   <translation>En el suelo, de la esquina delantera a la esquina trasera opuesta.</translation>
  </message>
  <message>
   <source>Once a job is cut</source>
   <translation>Una vez cortado un trabajo</translation>
  </message>
  <message>
   <source>One after another, as they go together</source>
   <translation>Uno tras otro, según se montan</translation>
  </message>
  <message>
   <source>One sheet of a material more for each so many, where more than four are needed.</source>
   <translation>Un tablero más de un material por cada tantos, si se necesitan más de cuatro.</translation>
  </message>
  <message>
   <source>One step back</source>
   <translation>Un paso atrás</translation>
  </message>
  <message>
   <source>One step on</source>
   <translation>Un paso adelante</translation>
  </message>
  <message>
   <source>Opening</source>
   <translation>Hueco de entrada</translation>
  </message>
  <message>
   <source>Opening {} x {}, inside {} x {} x {}</source>
   <translation>Hueco de entrada {} x {}, interior {} x {} x {}</translation>
  </message>
  <message>
   <source>Opens</source>
   <translation>Se abre</translation>
  </message>
  <message>
   <source>Other shelves</source>
   <translation>Otras baldas</translation>
  </message>
  <message>
   <source>Out of date: the design has changed</source>
   <translation>Anticuado: el diseño ha cambiado</translation>
  </message>
  <message>
   <source>Out of date: the parts or the settings have changed since; plan again.</source>
   <translation>Anticuado: las piezas o los ajustes han cambiado después; volver a planificar.</translation>
  </message>
  <message>
   <source>Outer size, base included. Left empty, it is what the envelope leaves.</source>
   <translation>Medida exterior, zócalo incluido. Si se deja vacío, es lo que deja el espacio útil.</translation>
  </message>
  <message>
   <source>Outer: {} wide, {} high, {} deep</source>
   <translation>Exterior: {} de ancho, {} de altura, {} de profundidad</translation>
  </message>
  <message>
   <source>Over its top, None takes what is left</source>
   <translation>Sobre su techo, None toma lo que queda</translation>
  </message>
  <message>
   <source>Over its top, None takes what is there; it stands at the rear</source>
   <translation>Sobre su techo, None toma lo que hay; queda al fondo</translation>
  </message>
  <message>
   <source>Over shelf</source>
   <translation>Balda superior</translation>
  </message>
  <message>
   <source>OverShelf</source>
   <translation>OverShelf</translation>
  </message>
  <message>
   <source>Overhang</source>
   <translation>Vuelo</translation>
  </message>
  <message>
   <source>Overhang ends</source>
   <translation>Vuelo en extremos</translation>
  </message>
  <message>
   <source>Overhang top</source>
   <translation>Vuelo superior</translation>
  </message>
  <message>
   <source>Overlap</source>
   <translation>Solape</translation>
  </message>
  <message>
   <source>Own catalogue</source>
   <translation>Catálogo propio</translation>
  </message>
  <message>
   <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
   <translation>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</translation>
  </message>
  <message>
   <source>PDF or SVG file</source>
   <translation>Archivo PDF o SVG</translation>
  </message>
  <message>
   <source>PDF, for the printer</source>
   <translation>PDF, para la impresora</translation>
  </message>
  <message>
   <source>PNG, for the screen</source>
   <translation>PNG, para la pantalla</translation>
  </message>
  <message>
   <source>Pages A4; the name's ending says PDF, SVG or PNG.</source>
   <translation>Páginas A4; la terminación del nombre indica PDF, SVG o PNG.</translation>
  </message>
  <message>
   <source>Panel</source>
   <translation>Panel</translation>
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation>Paneles conservados de lo que se quita</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papel</translation>
  </message>
  <message>
   <source>Papers print</source>
   <translation>Los documentos usan</translation>
  </message>
  <message>
   <source>Part</source>
   <translation>Pieza</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Piezas</translation>
  </message>
  <message>
   <source>Parts of</source>
   <translation>Piezas de</translation>
  </message>
  <message>
   <source>Parts were moved by hand.</source>
   <translation>Se movieron piezas a mano.</translation>
  </message>
  <message>
   <source>Pictures</source>
   <translation>Imágenes</translation>
  </message>
  <message>
   <source>Piece</source>
   <translation>Pieza</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Piezas</translation>
  </message>
  <message>
   <source>Pin holes</source>
   <translation>Taladros de soportes</translation>
  </message>
  <message>
   <source>Pin pitch</source>
   <translation>Paso de taladros</translation>
  </message>
  <message>
   <source>Pitch</source>
   <translation>Paso</translation>
  </message>
  <message>
   <source>Place</source>
   <translation>Lugar</translation>
  </message>
  <message>
   <source>Plan its sheets first.</source>
   <translation>Planificar antes sus tableros.</translation>
  </message>
  <message>
   <source>Plan the sheets</source>
   <translation>Planificar los tableros</translation>
  </message>
  <message>
   <source>Plan the sheets first.</source>
   <translation>Planificar antes los tableros.</translation>
  </message>
  <message>
   <source>Plan, from above</source>
   <translation>Planta, desde arriba</translation>
  </message>
  <message>
   <source>Play</source>
   <translation>Juego</translation>
  </message>
  <message>
   <source>Played back from apart to together it shows the order of assembly: from the floor up, then what goes in, then the fronts.</source>
   <translation>Reproducida de separado a unido, muestra el orden de montaje: del suelo hacia arriba, luego lo que va dentro, luego los frentes.</translation>
  </message>
  <message>
   <source>Plumb</source>
   <translation>A plomo</translation>
  </message>
  <message>
   <source>Plumb offset between the low and the high level: above 0 where the wall leans into the closet on its way up.</source>
   <translation>Desvío de la plomada entre el nivel bajo y el alto: mayor que 0 donde la pared se inclina hacia dentro del armario al subir.</translation>
  </message>
  <message>
   <source>Position {} of {}</source>
   <translation>Posición {} de {}</translation>
  </message>
  <message>
   <source>Print the page to a file</source>
   <translation>Imprimir la página en un archivo</translation>
  </message>
  <message>
   <source>Pull edge</source>
   <translation>Borde del tirador</translation>
  </message>
  <message>
   <source>Pull height</source>
   <translation>Altura del tirador</translation>
  </message>
  <message>
   <source>Pull hole</source>
   <translation>Taladro del tirador</translation>
  </message>
  <message>
   <source>Pull spacing</source>
   <translation>Distancia del tirador</translation>
  </message>
  <message>
   <source>Pulled apart</source>
   <translation>Despiezado</translation>
  </message>
  <message>
   <source>Pulls</source>
   <translation>Tiradores</translation>
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation>Tiradores por frente, 0 para ninguno</translation>
  </message>
  <message>
   <source>Rabbets</source>
   <translation>Rebajes</translation>
  </message>
  <message>
   <source>Rabbets at</source>
   <translation>Rebajes en</translation>
  </message>
  <message>
   <source>Rails</source>
   <translation>Travesaños</translation>
  </message>
  <message>
   <source>Read</source>
   <translation>Leído</translation>
  </message>
  <message>
   <source>Read a file…</source>
   <translation>Leer un archivo…</translation>
  </message>
  <message>
   <source>Read offcuts</source>
   <translation>Leer retales</translation>
  </message>
  <message>
   <source>Read to</source>
   <translation>Leído a</translation>
  </message>
  <message>
   <source>Reading</source>
   <translation>Lectura</translation>
  </message>
  <message>
   <source>Readings taken elsewhere</source>
   <translation>Lecturas tomadas en otros puntos</translation>
  </message>
  <message>
   <source>Readings when this task is closed</source>
   <translation>Lecturas con este panel cerrado</translation>
  </message>
  <message>
   <source>Readings: {} to look at</source>
   <translation>Lecturas: {} por revisar</translation>
  </message>
  <message>
   <source>Rear</source>
   <translation>Detrás</translation>
  </message>
  <message>
   <source>Rear row at</source>
   <translation>Fila trasera a</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Quitar</translation>
  </message>
  <message>
   <source>Remove the place</source>
   <translation>Quitar el lugar</translation>
  </message>
  <message>
   <source>Remove this bay</source>
   <translation>Quitar este hueco</translation>
  </message>
  <message>
   <source>Residual</source>
   <translation>Residuo</translation>
  </message>
  <message>
   <source>Returns</source>
   <translation>Retornos</translation>
  </message>
  <message>
   <source>Right</source>
   <translation>Derecha</translation>
  </message>
  <message>
   <source>Right click: all commands of this step.</source>
   <translation>Clic derecho: todas las órdenes de este paso.</translation>
  </message>
  <message>
   <source>Right end at</source>
   <translation>Extremo derecho a</translation>
  </message>
  <message>
   <source>Right wall</source>
   <translation>Pared derecha</translation>
  </message>
  <message>
   <source>Rise above</source>
   <translation>Subida superior</translation>
  </message>
  <message>
   <source>Rise below</source>
   <translation>Subida inferior</translation>
  </message>
  <message>
   <source>Rod</source>
   <translation>Barra</translation>
  </message>
  <message>
   <source>Rods</source>
   <translation>Barras</translation>
  </message>
  <message>
   <source>Room</source>
   <translation>Sala</translation>
  </message>
  <message>
   <source>Room to leave</source>
   <translation>Espacio que dejar</translation>
  </message>
  <message>
   <source>Rounds</source>
   <translation>Cuartos de caña</translation>
  </message>
  <message>
   <source>Router bit</source>
   <translation>Fresa</translation>
  </message>
  <message>
   <source>Rules</source>
   <translation>Reglas</translation>
  </message>
  <message>
   <source>Run</source>
   <translation>Dirección</translation>
  </message>
  <message>
   <source>STEP file</source>
   <translation>Archivo STEP</translation>
  </message>
  <message>
   <source>SVG, to draw on</source>
   <translation>SVG, para dibujar encima</translation>
  </message>
  <message>
   <source>Sans Serif</source>
   <translation>Sans Serif</translation>
  </message>
  <message>
   <source>Saw and sheets</source>
   <translation>Sierra y tableros</translation>
  </message>
  <message>
   <source>Saw: {} x {}, {} thick</source>
   <translation>Aserrar: {} x {}, {} de grueso</translation>
  </message>
  <message>
   <source>Scale 1 : {}.</source>
   <translation>Escala 1 : {}.</translation>
  </message>
  <message>
   <source>Screws</source>
   <translation>Tornillos</translation>
  </message>
  <message>
   <source>Scribe</source>
   <translation>Ajuste a la pared</translation>
  </message>
  <message>
   <source>Search for fewer cuts</source>
   <translation>Buscar menos cortes</translation>
  </message>
  <message>
   <source>Search for fewer sheets</source>
   <translation>Buscar menos tableros</translation>
  </message>
  <message>
   <source>Searched in steps of {}, with as much to spare all round.</source>
   <translation>Buscado en pasos de {}, con otro tanto de margen alrededor.</translation>
  </message>
  <message>
   <source>Sections</source>
   <translation>Secciones</translation>
  </message>
  <message>
   <source>Seed</source>
   <translation>Semilla</translation>
  </message>
  <message>
   <source>Select the closet that this is for.</source>
   <translation>Seleccionar el armario al que va esto.</translation>
  </message>
  <message>
   <source>Set back</source>
   <translation>Retranqueo</translation>
  </message>
  <message>
   <source>Setback</source>
   <translation>Retranqueo</translation>
  </message>
  <message>
   <source>Severity</source>
   <translation>Gravedad</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Tableros</translation>
  </message>
  <message>
   <source>Sheets: {}</source>
   <translation>Tableros: {}</translation>
  </message>
  <message>
   <source>Shelf above</source>
   <translation>Balda encima</translation>
  </message>
  <message>
   <source>Shelf band</source>
   <translation>Canto de balda</translation>
  </message>
  <message>
   <source>Shelf joint</source>
   <translation>Unión de balda</translation>
  </message>
  <message>
   <source>Shelf lip</source>
   <translation>Refuerzo</translation>
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation>Balda superior…</translation>
  </message>
  <message>
   <source>Shelf play</source>
   <translation>Juego de balda</translation>
  </message>
  <message>
   <source>Shelf rail</source>
   <translation>Travesaño de balda</translation>
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation>Baldas de una pieza en una esquina trasera</translation>
  </message>
  <message>
   <source>Shoe shelves</source>
   <translation>Baldas para zapatos</translation>
  </message>
  <message>
   <source>Shoe shelves…</source>
   <translation>Baldas para zapatos…</translation>
  </message>
  <message>
   <source>ShoeShelves</source>
   <translation>ShoeShelves</translation>
  </message>
  <message>
   <source>Shop figures</source>
   <translation>Datos de taller</translation>
  </message>
  <message>
   <source>Shop figures: grooves and shelf pins</source>
   <translation>Datos de taller: ranuras y soportes de balda</translation>
  </message>
  <message>
   <source>Show</source>
   <translation>Mostrar</translation>
  </message>
  <message>
   <source>Show all</source>
   <translation>Mostrar todo</translation>
  </message>
  <message>
   <source>Show and hide</source>
   <translation>Mostrar y ocultar</translation>
  </message>
  <message>
   <source>Show casing and baseboard</source>
   <translation>Mostrar tapeta y rodapié</translation>
  </message>
  <message>
   <source>Show everything</source>
   <translation>Mostrar todo</translation>
  </message>
  <message>
   <source>Show it</source>
   <translation>Mostrarlo</translation>
  </message>
  <message>
   <source>Show larger</source>
   <translation>Mostrar más grande</translation>
  </message>
  <message>
   <source>Show the ceiling of the room</source>
   <translation>Mostrar el techo de la sala</translation>
  </message>
  <message>
   <source>Show the floor of the room</source>
   <translation>Mostrar el suelo de la sala</translation>
  </message>
  <message>
   <source>Show the readings also while the survey's task is closed</source>
   <translation>Mostrar las lecturas también con el panel de la medición cerrado</translation>
  </message>
  <message>
   <source>Show the wall around the opening</source>
   <translation>Mostrar la pared en torno al hueco de entrada</translation>
  </message>
  <message>
   <source>Show the walls of the room</source>
   <translation>Mostrar las paredes de la sala</translation>
  </message>
  <message>
   <source>Show what must stay clear</source>
   <translation>Mostrar lo que debe quedar libre</translation>
  </message>
  <message>
   <source>Show what the wall around the opening hides</source>
   <translation>Mostrar lo que oculta la pared en torno al hueco de entrada</translation>
  </message>
  <message>
   <source>ShowReadings</source>
   <translation>ShowReadings</translation>
  </message>
  <message>
   <source>Side</source>
   <translation>Lado</translation>
  </message>
  <message>
   <source>Side gap</source>
   <translation>Holgura lateral</translation>
  </message>
  <message>
   <source>Single panels</source>
   <translation>Paneles sueltos</translation>
  </message>
  <message>
   <source>Slide</source>
   <translation>Guía</translation>
  </message>
  <message>
   <source>Slide length</source>
   <translation>Largo de la guía</translation>
  </message>
  <message>
   <source>Sloped shelves for shoes in one compartment</source>
   <translation>Baldas inclinadas para zapatos en un compartimento</translation>
  </message>
  <message>
   <source>Sold as {}</source>
   <translation>Se vende como {}</translation>
  </message>
  <message>
   <source>Solids</source>
   <translation>Sólidos</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Fuente</translation>
  </message>
  <message>
   <source>Spacing</source>
   <translation>Separación</translation>
  </message>
  <message>
   <source>Spot</source>
   <translation>Punto</translation>
  </message>
  <message>
   <source>Spread</source>
   <translation>Dispersión</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Va al fondo de un espacio útil más profundo; si no, a su frente</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front.</source>
   <translation>Va al fondo de un espacio útil más profundo; si no, a su frente.</translation>
  </message>
  <message>
   <source>Stands on</source>
   <translation>Apoya en</translation>
  </message>
  <message>
   <source>Start</source>
   <translation>Inicio</translation>
  </message>
  <message>
   <source>Start a closet, or look at an example first.</source>
   <translation>Iniciar un armario, o mirar antes un ejemplo.</translation>
  </message>
  <message>
   <source>Starts at</source>
   <translation>Empieza a</translation>
  </message>
  <message>
   <source>Step {} of {}: {}</source>
   <translation>Paso {} de {}: {}</translation>
  </message>
  <message>
   <source>Steps</source>
   <translation>Pasos</translation>
  </message>
  <message>
   <source>Stile</source>
   <translation>Montante</translation>
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation>Montantes y travesaños ante un cuerpo</translation>
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation>Los montantes llegan al suelo; si no, al borde inferior del travesaño inferior</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Tope</translation>
  </message>
  <message>
   <source>Stop first</source>
   <translation>Tope inicial</translation>
  </message>
  <message>
   <source>Stop last</source>
   <translation>Tope final</translation>
  </message>
  <message>
   <source>Stop: take the best so far</source>
   <translation>Parar: tomar lo mejor hasta ahora</translation>
  </message>
  <message>
   <source>Stopped</source>
   <translation>Parado</translation>
  </message>
  <message>
   <source>Strip</source>
   <translation>Tira</translation>
  </message>
  <message>
   <source>Strip widths</source>
   <translation>Anchos de tira</translation>
  </message>
  <message>
   <source>Supports</source>
   <translation>Apoyos</translation>
  </message>
  <message>
   <source>Supports between the ends, None as many as the span asks for</source>
   <translation>Apoyos entre los extremos, None los que pida la luz</translation>
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation>Los soportes sujetan la tapa a cualquier altura</translation>
  </message>
  <message>
   <source>Survey</source>
   <translation>Medición</translation>
  </message>
  <message>
   <source>Survey sheet</source>
   <translation>Hoja de medición</translation>
  </message>
  <message>
   <source>SurveyPanel</source>
   <translation>SurveyPanel</translation>
  </message>
  <message>
   <source>Surveyed</source>
   <translation>Medido</translation>
  </message>
  <message>
   <source>TOML (*.toml)</source>
   <translation>TOML (*.toml)</translation>
  </message>
  <message>
   <source>Table saw at home</source>
   <translation>Sierra de mesa en casa</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut.</source>
   <translation>Se quita de cada borde de un tablero antes de cortar ninguna pieza.</translation>
  </message>
  <message>
   <source>Tape, class</source>
   <translation>Cinta, clase</translation>
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation>El hueco toma el ancho del mueble, salvo que tenga uno propio</translation>
  </message>
  <message>
   <source>The bay that it stands in</source>
   <translation>El hueco en el que está</translation>
  </message>
  <message>
   <source>The bay that it stands in, None to stand free</source>
   <translation>El hueco en el que está, None para dejarlo libre</translation>
  </message>
  <message>
   <source>The bill as CSV, drawings as DXF, solids as STEP</source>
   <translation>La lista como CSV, dibujos como DXF, sólidos como STEP</translation>
  </message>
  <message>
   <source>The bill is in {}</source>
   <translation>La lista de materiales está en {}</translation>
  </message>
  <message>
   <source>The carcasses alone</source>
   <translation>Los cuerpos solos</translation>
  </message>
  <message>
   <source>The casing around the opening, on the room's side; 0 where there is none.</source>
   <translation>La tapeta en torno al hueco de entrada, del lado de la sala; 0 si no hay.</translation>
  </message>
  <message>
   <source>The closet has no parts yet: add a carcass or a panel first.</source>
   <translation>El armario aún no tiene piezas: añadir antes un cuerpo o un panel.</translation>
  </message>
  <message>
   <source>The closet has sizes only: they draw it, and every reading is left blank.</source>
   <translation>El armario solo tiene medidas: lo dibujan, y toda lectura queda en blanco.</translation>
  </message>
  <message>
   <source>The closet's own door, flush with the room's side of the wall.</source>
   <translation>La puerta propia del armario, a ras de la pared por el lado de la sala.</translation>
  </message>
  <message>
   <source>The component's name</source>
   <translation>El nombre del componente</translation>
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again first.</source>
   <translation>El plano de corte está anticuado: volver a planificar antes los tableros.</translation>
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again, or draw the parts alone.</source>
   <translation>El plano de corte está anticuado: volver a planificar los tableros, o dibujar solo las piezas.</translation>
  </message>
  <message>
   <source>The cutting order, as text and as pictures</source>
   <translation>El orden de corte, como texto y en imágenes</translation>
  </message>
  <message>
   <source>The empty room</source>
   <translation>La sala vacía</translation>
  </message>
  <message>
   <source>The envelope</source>
   <translation>El espacio útil</translation>
  </message>
  <message>
   <source>The fronts</source>
   <translation>Los frentes</translation>
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation>El borde con bisagras de una puerta sencilla</translation>
  </message>
  <message>
   <source>The joinery of its laps</source>
   <translation>La unión de sus solapes</translation>
  </message>
  <message>
   <source>The joinery of the boxes</source>
   <translation>Las uniones de las cajas</translation>
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation>La esquina trasera izquierda o la derecha</translation>
  </message>
  <message>
   <source>The materials, joints and figures that were last accepted with OK for a component of the same kind. Sizes are those of the new place.</source>
   <translation>Los materiales, uniones y datos que se aceptaron por última vez con OK para un componente de la misma clase. Las medidas son las del lugar nuevo.</translation>
  </message>
  <message>
   <source>The page that is there stays: delete it once the new one will do.</source>
   <translation>La página existente se queda: borrarla cuando la nueva esté bien.</translation>
  </message>
  <message>
   <source>The place and the people</source>
   <translation>El lugar y las personas</translation>
  </message>
  <message>
   <source>The plan cuts around it.</source>
   <translation>El plan corta alrededor.</translation>
  </message>
  <message>
   <source>The plan uses the largest sound rectangle, {} x {}, from {} and {} on; it is cut out first.</source>
   <translation>El plan usa el mayor rectángulo sano, {} x {}, a partir de {} y {}; se corta primero.</translation>
  </message>
  <message>
   <source>The readings agree with each other.</source>
   <translation>Las lecturas concuerdan entre sí.</translation>
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation>La holgura en torno a un frente embutido y entre dos cualesquiera</translation>
  </message>
  <message>
   <source>The sheets</source>
   <translation>Los tableros</translation>
  </message>
  <message>
   <source>The sheets are not planned yet: lay them out first, or draw the parts alone.</source>
   <translation>Los tableros aún no están planificados: distribuirlos antes, o dibujar solo las piezas.</translation>
  </message>
  <message>
   <source>The sheets are not planned yet: the bill cannot count them.</source>
   <translation>Los tableros aún no están planificados: la lista no puede contarlos.</translation>
  </message>
  <message>
   <source>The space between two fixed shelves, from the bottom, 1 first.</source>
   <translation>El espacio entre dos baldas fijas, desde abajo, 1 es el primero.</translation>
  </message>
  <message>
   <source>The step to which the tape was read.</source>
   <translation>El paso con que se leyó la cinta.</translation>
  </message>
  <message>
   <source>The store saws</source>
   <translation>La tienda corta</translation>
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation>El asiento es una tapa con bisagras en una tira trasera</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>No hay ningún armario en este documento: iniciar antes uno.</translation>
  </message>
  <message>
   <source>They are a list of their own in the document.</source>
   <translation>Son una lista propia en el documento.</translation>
  </message>
  <message>
   <source>They are used before anything is bought, wherever that saves something. Without a width it is a length of a bar.</source>
   <translation>Se usan antes de comprar nada, siempre que eso ahorre algo. Sin ancho es un largo de perfil.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Grueso</translation>
  </message>
  <message>
   <source>Thickness by caliper, in the middle of three edges. Grooves follow it.</source>
   <translation>Grueso con pie de rey, en el centro de tres bordes. Las ranuras lo siguen.</translation>
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation>Grueso de la tapa que se quita</translation>
  </message>
  <message>
   <source>Thickness of the wall at the opening.</source>
   <translation>Grueso de la pared en el hueco de entrada.</translation>
  </message>
  <message>
   <source>Thickness, opens to (°)</source>
   <translation>Grueso, abre hasta (°)</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Hasta</translation>
  </message>
  <message>
   <source>To be written: {}</source>
   <translation>Por escribir: {}</translation>
  </message>
  <message>
   <source>To floor</source>
   <translation>Hasta el suelo</translation>
  </message>
  <message>
   <source>To measure the closet afresh, whatever was read before.</source>
   <translation>Para volver a medir el armario, sin contar con lo leído antes.</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Techo</translation>
  </message>
  <message>
   <source>Top and bottom by</source>
   <translation>Techo y suelo con</translation>
  </message>
  <message>
   <source>Top lies</source>
   <translation>El techo queda</translation>
  </message>
  <message>
   <source>Top rail</source>
   <translation>Travesaño superior</translation>
  </message>
  <message>
   <source>Top run</source>
   <translation>Veta superior</translation>
  </message>
  <message>
   <source>Travel</source>
   <translation>Recorrido</translation>
  </message>
  <message>
   <source>Tree only</source>
   <translation>Solo el árbol</translation>
  </message>
  <message>
   <source>Trim</source>
   <translation>Saneado</translation>
  </message>
  <message>
   <source>Turn the part</source>
   <translation>Girar la pieza</translation>
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation>Dos aberturas dejan entrar aire con la tapa cerrada</translation>
  </message>
  <message>
   <source>Undersides above the floor</source>
   <translation>Caras inferiores sobre el suelo</translation>
  </message>
  <message>
   <source>Upper</source>
   <translation>Superior</translation>
  </message>
  <message>
   <source>Usable length, along the grain if it has any</source>
   <translation>Largo útil, según la veta si la hay</translation>
  </message>
  <message>
   <source>Usable width</source>
   <translation>Ancho útil</translation>
  </message>
  <message>
   <source>Use</source>
   <translation>Uso</translation>
  </message>
  <message>
   <source>Use the offcuts at hand first</source>
   <translation>Usar primero los retales disponibles</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valor</translation>
  </message>
  <message>
   <source>Vents</source>
   <translation>Aberturas de aire</translation>
  </message>
  <message>
   <source>Waits until everything can be built</source>
   <translation>Espera a que todo se pueda construir</translation>
  </message>
  <message>
   <source>Wall around the opening</source>
   <translation>Pared en torno al hueco de entrada</translation>
  </message>
  <message>
   <source>Wall over it</source>
   <translation>Pared encima</translation>
  </message>
  <message>
   <source>Wall thickness</source>
   <translation>Grueso de pared</translation>
  </message>
  <message>
   <source>Wall to wall, the tape level.</source>
   <translation>De pared a pared, con la cinta a nivel.</translation>
  </message>
  <message>
   <source>Wall, end</source>
   <translation>Pared, extremo</translation>
  </message>
  <message>
   <source>Walls</source>
   <translation>Paredes</translation>
  </message>
  <message>
   <source>Warnings: {}</source>
   <translation>Advertencias: {}</translation>
  </message>
  <message>
   <source>Ways are looked for in an empty closet, from a room before it that is free. The picture moves in steps of {} and {}° at most; nothing in the document moves.</source>
   <translation>Se buscan caminos en un armario vacío, desde una sala libre delante de él. La imagen se mueve en pasos de {} y {}° como máximo; en el documento nada se mueve.</translation>
  </message>
  <message>
   <source>Weight</source>
   <translation>Peso</translation>
  </message>
  <message>
   <source>What</source>
   <translation>Qué</translation>
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation>Qué lo cierra por delante</translation>
  </message>
  <message>
   <source>What closes the opening: drawers and doors inside have to clear it.</source>
   <translation>Lo que cierra el hueco de entrada: los cajones y las puertas interiores deben pasar sin tocarlo.</translation>
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation>Qué cubre ahí la holgura</translation>
  </message>
  <message>
   <source>What fits</source>
   <translation>Lo que cabe</translation>
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation>Qué cuelga de ella, lo que determina su altura</translation>
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation>Qué sujeta los extremos de una barra que va a lo ancho</translation>
  </message>
  <message>
   <source>What is dangerous, doubtful or not checked</source>
   <translation>Lo peligroso, dudoso o no comprobado</translation>
  </message>
  <message>
   <source>What is not known is not checked, and the findings say so.</source>
   <translation>Lo que no se sabe no se comprueba, y las observaciones lo dicen.</translation>
  </message>
  <message>
   <source>What it comes to</source>
   <translation>Lo que resulta</translation>
  </message>
  <message>
   <source>What it was</source>
   <translation>Lo que era</translation>
  </message>
  <message>
   <source>What new closets and new cut layouts start with. Those that are there keep what they have.</source>
   <translation>Con qué empiezan los armarios y planos de corte nuevos. Los existentes conservan lo que tienen.</translation>
  </message>
  <message>
   <source>What opens</source>
   <translation>Lo que se abre</translation>
  </message>
  <message>
   <source>What the job took goes out of the list; what it leaves, and is large enough to keep, comes in.</source>
   <translation>Lo que gastó el trabajo sale de la lista; lo que deja, si es bastante grande para guardarlo, entra.</translation>
  </message>
  <message>
   <source>What the readings say of each other</source>
   <translation>Lo que dicen las lecturas unas de otras</translation>
  </message>
  <message>
   <source>What the tape read, or the sizes of the closet</source>
   <translation>Lo que leyó la cinta, o las medidas del armario</translation>
  </message>
  <message>
   <source>What to do</source>
   <translation>Qué hacer</translation>
  </message>
  <message>
   <source>What would help: {}.</source>
   <translation>Lo que ayudaría: {}.</translation>
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation>Por dónde se puede atornillar</translation>
  </message>
  <message>
   <source>Where it hangs</source>
   <translation>Dónde cuelga</translation>
  </message>
  <message>
   <source>Where it stands</source>
   <translation>Dónde está</translation>
  </message>
  <message>
   <source>Where the closet is cut.</source>
   <translation>Por dónde se corta el armario.</translation>
  </message>
  <message>
   <source>Where the leaves lie, of which board, with which gaps and pulls</source>
   <translation>Dónde están las hojas, de qué tabla, con qué holguras y tiradores</translation>
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation>Dónde termina el montante izquierdo</translation>
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation>Dónde termina el montante derecho</translation>
  </message>
  <message>
   <source>Where they lie</source>
   <translation>Dónde están</translation>
  </message>
  <message>
   <source>Whether its grain must run along a part's length</source>
   <translation>Si su veta debe ir a lo largo de una pieza</translation>
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation>Cuál de sus huecos, desde la izquierda, 1 es el primero</translation>
  </message>
  <message>
   <source>Which sheets to buy and how to cut them</source>
   <translation>Qué tableros comprar y cómo cortarlos</translation>
  </message>
  <message>
   <source>Which side</source>
   <translation>Qué lado</translation>
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation>Qué espacio entre las baldas fijas, desde abajo, 1 es el primero</translation>
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation>Hacia dónde va la veta de la tapa; de delante a atrás es resistente entre travesaños</translation>
  </message>
  <message>
   <source>Who cuts what</source>
   <translation>Quién corta qué</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members of a frame</source>
   <translation>Mayor distancia libre entre traviesas de un bastidor</translation>
  </message>
  <message>
   <source>Widest clear distance between the cross members of a base frame.</source>
   <translation>Mayor distancia libre entre las traviesas del bastidor de un zócalo.</translation>
  </message>
  <message>
   <source>Width</source>
   <translation>Ancho</translation>
  </message>
  <message>
   <source>Width at the back, high up</source>
   <translation>Ancho al fondo, arriba</translation>
  </message>
  <message>
   <source>Width at the back, low down</source>
   <translation>Ancho al fondo, abajo</translation>
  </message>
  <message>
   <source>Width at the front, high up</source>
   <translation>Ancho delante, arriba</translation>
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation>Ancho delante, abajo</translation>
  </message>
  <message>
   <source>Width back high</source>
   <translation>Ancho fondo alto</translation>
  </message>
  <message>
   <source>Width back low</source>
   <translation>Ancho fondo bajo</translation>
  </message>
  <message>
   <source>Width first, or the volume, which matters under a slope.</source>
   <translation>Primero el ancho, o el volumen, que importa bajo un techo inclinado.</translation>
  </message>
  <message>
   <source>Width front high</source>
   <translation>Ancho delante alto</translation>
  </message>
  <message>
   <source>Width front low</source>
   <translation>Ancho delante bajo</translation>
  </message>
  <message>
   <source>Width of that strip</source>
   <translation>Ancho de esa tira</translation>
  </message>
  <message>
   <source>Width of the cut that the blade makes.</source>
   <translation>Ancho del corte que hace la hoja.</translation>
  </message>
  <message>
   <source>Width of the members as sawn, None takes the board's own</source>
   <translation>Ancho de aserrado de las piezas, None toma el propio de la tabla</translation>
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation>Ancho de los montantes centrales</translation>
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation>Ancho de los montantes; en un extremo junto a la pared, sin lo que sobresale del lateral</translation>
  </message>
  <message>
   <source>Width, height</source>
   <translation>Ancho, altura</translation>
  </message>
  <message>
   <source>Widths</source>
   <translation>Anchos</translation>
  </message>
  <message>
   <source>Workbench</source>
   <translation>Entorno</translation>
  </message>
  <message>
   <source>Write a file…</source>
   <translation>Escribir un archivo…</translation>
  </message>
  <message>
   <source>Write offcuts</source>
   <translation>Escribir retales</translation>
  </message>
  <message>
   <source>Write the bill</source>
   <translation>Escribir la lista</translation>
  </message>
  <message>
   <source>Write the names on the parts that can be seen.</source>
   <translation>Escribir los nombres en las piezas visibles.</translation>
  </message>
  <message>
   <source>Write the solids</source>
   <translation>Escribir los sólidos</translation>
  </message>
  <message>
   <source>Write the survey sheet</source>
   <translation>Escribir la hoja de medición</translation>
  </message>
  <message>
   <source>Written: {}</source>
   <translation>Escrito: {}</translation>
  </message>
  <message>
   <source>Your boards, prices and slides, laid over those that are shipped.</source>
   <translation>Tablas, precios y guías propios, que prevalecen sobre los incluidos.</translation>
  </message>
  <message>
   <source>a cheaper one may exist</source>
   <translation>puede haber uno más barato</translation>
  </message>
  <message>
   <source>a pair, hinged at both sides</source>
   <translation>un par, con bisagras a ambos lados</translation>
  </message>
  <message>
   <source>across</source>
   <translation>a lo ancho</translation>
  </message>
  <message>
   <source>across the width</source>
   <translation>a lo ancho</translation>
  </message>
  <message>
   <source>add a carcass for it to stand in first</source>
   <translation>añadir antes un cuerpo en el que colocarlo</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>balda regulable</translation>
  </message>
  <message>
   <source>agrees</source>
   <translation>concuerda</translation>
  </message>
  <message>
   <source>all that is left</source>
   <translation>todo lo restante</translation>
  </message>
  <message>
   <source>along</source>
   <translation>a lo largo</translation>
  </message>
  <message>
   <source>along the bench</source>
   <translation>a lo largo del banco</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>a lo largo</translation>
  </message>
  <message>
   <source>aluminium tube</source>
   <translation>tubo de aluminio</translation>
  </message>
  <message>
   <source>aluminium tube 30 x 1.5 mm</source>
   <translation>tubo de aluminio 30 x 1.5 mm</translation>
  </message>
  <message>
   <source>anti-tip anchor, strap and brackets</source>
   <translation>anclaje antivuelco, cinta y escuadras</translation>
  </message>
  <message>
   <source>any</source>
   <translation>cualquiera</translation>
  </message>
  <message>
   <source>any number</source>
   <translation>cualquier número</translation>
  </message>
  <message>
   <source>apart</source>
   <translation>separado</translation>
  </message>
  <message>
   <source>apron</source>
   <translation>faldón</translation>
  </message>
  <message>
   <source>as the carcass</source>
   <translation>como el cuerpo</translation>
  </message>
  <message>
   <source>as the catalogue says</source>
   <translation>como dice el catálogo</translation>
  </message>
  <message>
   <source>assembled pieces</source>
   <translation>piezas montadas</translation>
  </message>
  <message>
   <source>at front or start</source>
   <translation>delante o en el inicio</translation>
  </message>
  <message>
   <source>at midspan</source>
   <translation>en el centro de la luz</translation>
  </message>
  <message>
   <source>at rear or end</source>
   <translation>detrás o en el final</translation>
  </message>
  <message>
   <source>at the free end</source>
   <translation>en el extremo libre</translation>
  </message>
  <message>
   <source>at the rear wall</source>
   <translation>en la pared trasera</translation>
  </message>
  <message>
   <source>back</source>
   <translation>trasera</translation>
  </message>
  <message>
   <source>backs</source>
   <translation>traseras</translation>
  </message>
  <message>
   <source>band</source>
   <translation>canto</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>perfil</translation>
  </message>
  <message>
   <source>base</source>
   <translation>zócalo</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>bastidor del zócalo</translation>
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation>bastidor del zócalo ajustado al suelo</translation>
  </message>
  <message>
   <source>bay</source>
   <translation>hueco</translation>
  </message>
  <message>
   <source>beech dowel 8 x 40 mm</source>
   <translation>espiga de haya 8 x 40 mm</translation>
  </message>
  <message>
   <source>behind the left return: {}, {} l</source>
   <translation>tras el retorno izquierdo: {}, {} l</translation>
  </message>
  <message>
   <source>behind the right return: {}, {} l</source>
   <translation>tras el retorno derecho: {}, {} l</translation>
  </message>
  <message>
   <source>bench</source>
   <translation>banco</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>frente del banco</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>bastidor del banco</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>tapa del banco</translation>
  </message>
  <message>
   <source>benches</source>
   <translation>bancos</translation>
  </message>
  <message>
   <source>beside the last</source>
   <translation>junto al último</translation>
  </message>
  <message>
   <source>between the sides</source>
   <translation>entre los laterales</translation>
  </message>
  <message>
   <source>bill</source>
   <translation>lista</translation>
  </message>
  <message>
   <source>bill and papers</source>
   <translation>lista y documentos</translation>
  </message>
  <message>
   <source>birch plywood 12 mm</source>
   <translation>contrachapado de abedul 12 mm</translation>
  </message>
  <message>
   <source>birch plywood 18 mm</source>
   <translation>contrachapado de abedul 18 mm</translation>
  </message>
  <message>
   <source>books</source>
   <translation>libros</translation>
  </message>
  <message>
   <source>bottom</source>
   <translation>suelo</translation>
  </message>
  <message>
   <source>bottom-corner roller slide, three-quarter extension</source>
   <translation>guía de rodillos de esquina inferior, extracción de tres cuartos</translation>
  </message>
  <message>
   <source>box room (mm)</source>
   <translation>trastero (mm)</translation>
  </message>
  <message>
   <source>bracket that hangs a 1 1/4 in pole under a panel</source>
   <translation>soporte que cuelga una barra de 1 1/4 in bajo un panel</translation>
  </message>
  <message>
   <source>bracket that hangs a 27 mm rod under a panel</source>
   <translation>soporte que cuelga una barra de 27 mm bajo un panel</translation>
  </message>
  <message>
   <source>bracket that hangs a 30 mm rod under a panel</source>
   <translation>soporte que cuelga una barra de 30 mm bajo un panel</translation>
  </message>
  <message>
   <source>brick</source>
   <translation>ladrillo</translation>
  </message>
  <message>
   <source>budget</source>
   <translation>tiempo</translation>
  </message>
  <message>
   <source>butt hinge 60 mm with its screws</source>
   <translation>bisagra de libro 60 mm con sus tornillos</translation>
  </message>
  <message>
   <source>butt, screwed</source>
   <translation>a tope, atornillada</translation>
  </message>
  <message>
   <source>by its kind</source>
   <translation>según su tipo</translation>
  </message>
  <message>
   <source>by readings</source>
   <translation>por lecturas</translation>
  </message>
  <message>
   <source>by rule</source>
   <translation>según regla</translation>
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation>con tornillos o clavos a través de los laterales</translation>
  </message>
  <message>
   <source>by sizes</source>
   <translation>por medidas</translation>
  </message>
  <message>
   <source>by the gap</source>
   <translation>según la holgura</translation>
  </message>
  <message>
   <source>by the inside width</source>
   <translation>según el ancho interior</translation>
  </message>
  <message>
   <source>by the opening</source>
   <translation>según el vano</translation>
  </message>
  <message>
   <source>cancelled</source>
   <translation>cancelado</translation>
  </message>
  <message>
   <source>cannot be built</source>
   <translation>no se puede construir</translation>
  </message>
  <message>
   <source>cannot be right</source>
   <translation>no puede ser correcto</translation>
  </message>
  <message>
   <source>cantilever</source>
   <translation>voladizo</translation>
  </message>
  <message>
   <source>carcass</source>
   <translation>cuerpo</translation>
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation>tapeta y rodapié</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catálogo</translation>
  </message>
  <message>
   <source>ceiling</source>
   <translation>techo de la sala</translation>
  </message>
  <message>
   <source>centimetres, to 1 mm</source>
   <translation>centímetros, a 1 mm</translation>
  </message>
  <message>
   <source>centre rail under the box</source>
   <translation>guía central bajo la caja</translation>
  </message>
  <message>
   <source>cheapest</source>
   <translation>lo más barato</translation>
  </message>
  <message>
   <source>checks</source>
   <translation>comprobaciones</translation>
  </message>
  <message>
   <source>child's reach</source>
   <translation>alcance de los niños</translation>
  </message>
  <message>
   <source>children-unknown</source>
   <translation>children-unknown</translation>
  </message>
  <message>
   <source>chipboard screw 3.5 x 16 mm</source>
   <translation>tornillo para aglomerado 3.5 x 16 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 20 mm</source>
   <translation>tornillo para aglomerado 4 x 20 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 25 mm</source>
   <translation>tornillo para aglomerado 4 x 25 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 30 mm</source>
   <translation>tornillo para aglomerado 4 x 30 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 40 mm</source>
   <translation>tornillo para aglomerado 4 x 40 mm</translation>
  </message>
  <message>
   <source>chipboard screw 4 x 50 mm</source>
   <translation>tornillo para aglomerado 4 x 50 mm</translation>
  </message>
  <message>
   <source>choose a file</source>
   <translation>elegir un archivo</translation>
  </message>
  <message>
   <source>choose a folder</source>
   <translation>elegir una carpeta</translation>
  </message>
  <message>
   <source>clamped</source>
   <translation>empotrado</translation>
  </message>
  <message>
   <source>cleat</source>
   <translation>listón de apoyo</translation>
  </message>
  <message>
   <source>cleats</source>
   <translation>listones de apoyo</translation>
  </message>
  <message>
   <source>clock</source>
   <translation>reloj</translation>
  </message>
  <message>
   <source>closet</source>
   <translation>armario empotrado</translation>
  </message>
  <message>
   <source>components</source>
   <translation>componentes</translation>
  </message>
  <message>
   <source>concealed hinge for a 35 mm cup, with its plate</source>
   <translation>bisagra de cazoleta de 35 mm, con su placa</translation>
  </message>
  <message>
   <source>concealed hinge, 35 mm cup, opens 110 degrees</source>
   <translation>bisagra oculta, cazoleta de 35 mm, apertura de 110 grados</translation>
  </message>
  <message>
   <source>concealed undermount slide, full extension</source>
   <translation>guía oculta bajo cajón, extracción total</translation>
  </message>
  <message>
   <source>concealed wide-angle hinge for a 35 mm cup, with its plate</source>
   <translation>bisagra de cazoleta de 35 mm de gran apertura, con su placa</translation>
  </message>
  <message>
   <source>concealed wide-angle hinge, 35 mm cup, opens 165 degrees</source>
   <translation>bisagra oculta de gran ángulo, cazoleta de 35 mm, apertura de 165 grados</translation>
  </message>
  <message>
   <source>concrete</source>
   <translation>hormigón</translation>
  </message>
  <message>
   <source>contents</source>
   <translation>contenido</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>balda de esquina</translation>
  </message>
  <message>
   <source>crosscut</source>
   <translation>corte transversal</translation>
  </message>
  <message>
   <source>cut from above</source>
   <translation>cortado desde arriba</translation>
  </message>
  <message>
   <source>cut from the front</source>
   <translation>cortado desde delante</translation>
  </message>
  <message>
   <source>cut from the left</source>
   <translation>cortado desde la izquierda</translation>
  </message>
  <message>
   <source>cut from the right</source>
   <translation>cortado desde la derecha</translation>
  </message>
  <message>
   <source>cut layout</source>
   <translation>plano de corte</translation>
  </message>
  <message>
   <source>cutting.txt; cutting/, {} pictures</source>
   <translation>cutting.txt; cutting/, {} imágenes</translation>
  </message>
  <message>
   <source>damaged place {}</source>
   <translation>lugar dañado {}</translation>
  </message>
  <message>
   <source>danger</source>
   <translation>peligro</translation>
  </message>
  <message>
   <source>dangers</source>
   <translation>peligros</translation>
  </message>
  <message>
   <source>dangers and warnings</source>
   <translation>peligros y advertencias</translation>
  </message>
  <message>
   <source>dead space</source>
   <translation>espacio muerto</translation>
  </message>
  <message>
   <source>decimal inches, to 0.001</source>
   <translation>pulgadas decimales, a 0.001</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>profundidad</translation>
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation>diagonal en alzado</translation>
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation>diagonal en planta</translation>
  </message>
  <message>
   <source>divider</source>
   <translation>divisoria</translation>
  </message>
  <message>
   <source>done</source>
   <translation>hecho</translation>
  </message>
  <message>
   <source>door</source>
   <translation>puerta</translation>
  </message>
  <message>
   <source>doors</source>
   <translation>puertas</translation>
  </message>
  <message>
   <source>double</source>
   <translation>doble</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>dudoso</translation>
  </message>
  <message>
   <source>doubts</source>
   <translation>dudas</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>espigas</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>trasera de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>fondo de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>frente de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>lateral de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer slide, 10 in, a pair</source>
   <translation>guía de cajón, 10 in, un par</translation>
  </message>
  <message>
   <source>drawer slide, 24 in, a pair</source>
   <translation>guía de cajón, 24 in, un par</translation>
  </message>
  <message>
   <source>drawer slide, 250 mm, a pair</source>
   <translation>guía de cajón, 250 mm, un par</translation>
  </message>
  <message>
   <source>drawer slide, 600 mm, a pair</source>
   <translation>guía de cajón, 600 mm, un par</translation>
  </message>
  <message>
   <source>drawers</source>
   <translation>cajones</translation>
  </message>
  <message>
   <source>drawings</source>
   <translation>dibujos</translation>
  </message>
  <message>
   <source>drill</source>
   <translation>broca</translation>
  </message>
  <message>
   <source>drilling</source>
   <translation>taladrado</translation>
  </message>
  <message>
   <source>drop</source>
   <translation>descenso</translation>
  </message>
  <message>
   <source>edge-glued pine panel 18 mm</source>
   <translation>panel de pino alistonado 18 mm</translation>
  </message>
  <message>
   <source>edge-glued pine panel 27 mm</source>
   <translation>panel de pino alistonado 27 mm</translation>
  </message>
  <message>
   <source>edit {} and give it a width that leaves room for another</source>
   <translation>editar {} y darle un ancho que deje sitio a otro</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>vacío</translation>
  </message>
  <message>
   <source>end</source>
   <translation>final</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>espacio útil</translation>
  </message>
  <message>
   <source>equal</source>
   <translation>igual</translation>
  </message>
  <message>
   <source>everything</source>
   <translation>todo</translation>
  </message>
  <message>
   <source>everything, each part too</source>
   <translation>todo, también cada pieza</translation>
  </message>
  <message>
   <source>existing</source>
   <translation>existente</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>mueble existente</translation>
  </message>
  <message>
   <source>expected {}, give or take {}</source>
   <translation>se esperaba {}, con un margen de {}</translation>
  </message>
  <message>
   <source>exploded</source>
   <translation>despiezado</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>patas</translation>
  </message>
  <message>
   <source>fewest</source>
   <translation>los menos</translation>
  </message>
  <message>
   <source>file</source>
   <translation>archivo</translation>
  </message>
  <message>
   <source>filler</source>
   <translation>listón de ajuste</translation>
  </message>
  <message>
   <source>filler strip</source>
   <translation>tira de ajuste</translation>
  </message>
  <message>
   <source>fillers</source>
   <translation>listones de ajuste</translation>
  </message>
  <message>
   <source>finishing nail 1.8 x 40 mm</source>
   <translation>clavo sin cabeza 1.8 x 40 mm</translation>
  </message>
  <message>
   <source>finishing nail 2.0 x 50 mm</source>
   <translation>clavo sin cabeza 2.0 x 50 mm</translation>
  </message>
  <message>
   <source>first</source>
   <translation>primero</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>balda fija</translation>
  </message>
  <message>
   <source>flanges</source>
   <translation>soportes de brida</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>plano</translation>
  </message>
  <message>
   <source>floor</source>
   <translation>suelo de la sala</translation>
  </message>
  <message>
   <source>flush with the side</source>
   <translation>enrasado con el lateral</translation>
  </message>
  <message>
   <source>folder</source>
   <translation>carpeta</translation>
  </message>
  <message>
   <source>follows from readings in the room</source>
   <translation>se deduce de lecturas en la sala</translation>
  </message>
  <message>
   <source>free</source>
   <translation>libre</translation>
  </message>
  <message>
   <source>free in the closet</source>
   <translation>libre en el armario</translation>
  </message>
  <message>
   <source>from above</source>
   <translation>desde arriba</translation>
  </message>
  <message>
   <source>from front to rear</source>
   <translation>de delante a atrás</translation>
  </message>
  <message>
   <source>from the front</source>
   <translation>desde delante</translation>
  </message>
  <message>
   <source>from the side</source>
   <translation>desde el lado</translation>
  </message>
  <message>
   <source>front</source>
   <translation>frente</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>refuerzo frontal</translation>
  </message>
  <message>
   <source>front wall</source>
   <translation>pared delantera</translation>
  </message>
  <message>
   <source>fronts</source>
   <translation>frentes</translation>
  </message>
  <message>
   <source>ft-in</source>
   <translation>ft-in</translation>
  </message>
  <message>
   <source>full</source>
   <translation>lleno</translation>
  </message>
  <message>
   <source>full overlay</source>
   <translation>superpuesto total</translation>
  </message>
  <message>
   <source>general</source>
   <translation>general</translation>
  </message>
  <message>
   <source>grain along</source>
   <translation>veta según</translation>
  </message>
  <message>
   <source>groove</source>
   <translation>ranura</translation>
  </message>
  <message>
   <source>guide</source>
   <translation>guía</translation>
  </message>
  <message>
   <source>half lap</source>
   <translation>a media madera</translation>
  </message>
  <message>
   <source>half overlay</source>
   <translation>superpuesto medio</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>barra</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 1 1/4 in pole</source>
   <translation>soporte cerrado para barra de 1 1/4 in</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 27 mm tube</source>
   <translation>soporte cerrado para tubo de 27 mm</translation>
  </message>
  <message>
   <source>hanging rod flange, closed, for 30 mm tube</source>
   <translation>soporte cerrado para tubo de 30 mm</translation>
  </message>
  <message>
   <source>hanging rod socket for 1 1/4 in pole</source>
   <translation>soporte de extremo para barra de 1 1/4 in</translation>
  </message>
  <message>
   <source>hanging rod support for 27 mm tube</source>
   <translation>soporte intermedio para tubo de 27 mm</translation>
  </message>
  <message>
   <source>hanging rod support for 30 mm tube</source>
   <translation>soporte intermedio para tubo de 30 mm</translation>
  </message>
  <message>
   <source>hanging rod, aluminium tube 30 x 1.5 mm, 2 m</source>
   <translation>barra de colgar, tubo de aluminio 30 x 1.5 mm, 2 m</translation>
  </message>
  <message>
   <source>hanging rod, oak pole 1 1/4 in, 8 ft</source>
   <translation>barra de colgar, palo de roble 1 1/4 in, 8 ft</translation>
  </message>
  <message>
   <source>hanging rod, pine pole 1 1/4 in, 8 ft</source>
   <translation>barra de colgar, palo de pino 1 1/4 in, 8 ft</translation>
  </message>
  <message>
   <source>hanging rod, steel tube 27 x 1.2 mm, 2.5 m</source>
   <translation>barra de colgar, tubo de acero 27 x 1.2 mm, 2.5 m</translation>
  </message>
  <message>
   <source>hardboard</source>
   <translation>tablero de fibras duro</translation>
  </message>
  <message>
   <source>hardboard 3.2 mm</source>
   <translation>tablero de fibras duro 3.2 mm</translation>
  </message>
  <message>
   <source>hardboard 6 mm</source>
   <translation>tablero de fibras duro 6 mm</translation>
  </message>
  <message>
   <source>has sizes that I give</source>
   <translation>tiene las medidas que doy</translation>
  </message>
  <message>
   <source>height</source>
   <translation>altura</translation>
  </message>
  <message>
   <source>height of the opening</source>
   <translation>altura del hueco de entrada</translation>
  </message>
  <message>
   <source>height over the opening</source>
   <translation>altura sobre el hueco de entrada</translation>
  </message>
  <message>
   <source>heights</source>
   <translation>alturas</translation>
  </message>
  <message>
   <source>help</source>
   <translation>ayuda</translation>
  </message>
  <message>
   <source>hinged at the left</source>
   <translation>con bisagras a la izquierda</translation>
  </message>
  <message>
   <source>hinged at the right</source>
   <translation>con bisagras a la derecha</translation>
  </message>
  <message>
   <source>hollow block</source>
   <translation>bloque hueco</translation>
  </message>
  <message>
   <source>home</source>
   <translation>casa</translation>
  </message>
  <message>
   <source>icons</source>
   <translation>icons</translation>
  </message>
  <message>
   <source>in</source>
   <translation>en</translation>
  </message>
  <message>
   <source>in a groove all round</source>
   <translation>en una ranura todo alrededor</translation>
  </message>
  <message>
   <source>in grooves</source>
   <translation>en ranuras</translation>
  </message>
  <message>
   <source>in steps of</source>
   <translation>en pasos de</translation>
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
   <translation>embutido</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>unión</translation>
  </message>
  <message>
   <source>just inside the front</source>
   <translation>justo detrás del frente</translation>
  </message>
  <message>
   <source>kept for</source>
   <translation>guardado para</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>ancho de corte</translation>
  </message>
  <message>
   <source>layout</source>
   <translation>plano de corte</translation>
  </message>
  <message>
   <source>lean</source>
   <translation>desplome</translation>
  </message>
  <message>
   <source>left</source>
   <translation>izquierda</translation>
  </message>
  <message>
   <source>left by</source>
   <translation>queda por</translation>
  </message>
  <message>
   <source>length</source>
   <translation>largo</translation>
  </message>
  <message>
   <source>length from</source>
   <translation>largo desde</translation>
  </message>
  <message>
   <source>let in under the back</source>
   <translation>embutido bajo la trasera</translation>
  </message>
  <message>
   <source>levelling shim, tapered</source>
   <translation>cuña de nivelación</translation>
  </message>
  <message>
   <source>lid</source>
   <translation>tapa</translation>
  </message>
  <message>
   <source>lid support that holds at any height, no adjustment</source>
   <translation>compás de tapa que aguanta a cualquier altura, sin ajuste</translation>
  </message>
  <message>
   <source>light</source>
   <translation>luz</translation>
  </message>
  <message>
   <source>light-clearance</source>
   <translation>light-clearance</translation>
  </message>
  <message>
   <source>limit {}</source>
   <translation>límite {}</translation>
  </message>
  <message>
   <source>linen</source>
   <translation>ropa blanca</translation>
  </message>
  <message>
   <source>long</source>
   <translation>largo</translation>
  </message>
  <message>
   <source>look</source>
   <translation>aspecto</translation>
  </message>
  <message>
   <source>lower</source>
   <translation>inferior</translation>
  </message>
  <message>
   <source>material</source>
   <translation>material</translation>
  </message>
  <message>
   <source>melamine iron-on band 0.4 mm</source>
   <translation>canto de melamina termoadhesivo 0.4 mm</translation>
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation>tablero de partículas melaminizado</translation>
  </message>
  <message>
   <source>metres, to 1 mm</source>
   <translation>metros, a 1 mm</translation>
  </message>
  <message>
   <source>millimetres, to 0.1 mm</source>
   <translation>milímetros, a 0.1 mm</translation>
  </message>
  <message>
   <source>millimetres, to 1 mm</source>
   <translation>milímetros, a 1 mm</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>falta</translation>
  </message>
  <message>
   <source>most</source>
   <translation>como máximo</translation>
  </message>
  <message>
   <source>moulding</source>
   <translation>moldura</translation>
  </message>
  <message>
   <source>mullion</source>
   <translation>montante central</translation>
  </message>
  <message>
   <source>must not be empty</source>
   <translation>no debe estar vacío</translation>
  </message>
  <message>
   <source>nail</source>
   <translation>clavo</translation>
  </message>
  <message>
   <source>nails</source>
   <translation>clavos</translation>
  </message>
  <message>
   <source>name</source>
   <translation>nombre</translation>
  </message>
  <message>
   <source>next</source>
   <translation>siguiente</translation>
  </message>
  <message>
   <source>no</source>
   <translation>no</translation>
  </message>
  <message>
   <source>no carcass</source>
   <translation>ningún cuerpo</translation>
  </message>
  <message>
   <source>no choice costs less</source>
   <translation>ninguna opción cuesta menos</translation>
  </message>
  <message>
   <source>no choice takes less length; prices are lacking</source>
   <translation>ninguna opción requiere menos longitud; faltan precios</translation>
  </message>
  <message>
   <source>no closet</source>
   <translation>ningún armario</translation>
  </message>
  <message>
   <source>no document</source>
   <translation>ningún documento</translation>
  </message>
  <message>
   <source>no light</source>
   <translation>sin luz</translation>
  </message>
  <message>
   <source>no limit</source>
   <translation>sin límite</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>ningún plan compra menos</translation>
  </message>
  <message>
   <source>no plan needs fewer</source>
   <translation>ningún plan necesita menos</translation>
  </message>
  <message>
   <source>nobody named</source>
   <translation>nadie nombrado</translation>
  </message>
  <message>
   <source>none</source>
   <translation>ninguno</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>aún ninguno</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>no comprobado</translation>
  </message>
  <message>
   <source>not checked by others</source>
   <translation>no comprobado por otras</translation>
  </message>
  <message>
   <source>not checked: {}</source>
   <translation>no comprobado: {}</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>no conocido</translation>
  </message>
  <message>
   <source>not measured</source>
   <translation>no medido</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>no planificado</translation>
  </message>
  <message>
   <source>not proved: at least {}</source>
   <translation>no demostrado: al menos {}</translation>
  </message>
  <message>
   <source>not said</source>
   <translation>no indicado</translation>
  </message>
  <message>
   <source>not taken</source>
   <translation>no tomado</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>no escrito</translation>
  </message>
  <message>
   <source>note</source>
   <translation>nota</translation>
  </message>
  <message>
   <source>notes</source>
   <translation>notas</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nada</translation>
  </message>
  <message>
   <source>nothing found</source>
   <translation>no se encontró nada</translation>
  </message>
  <message>
   <source>nothing to cut</source>
   <translation>nada que cortar</translation>
  </message>
  <message>
   <source>oak pole</source>
   <translation>barra de roble</translation>
  </message>
  <message>
   <source>oak pole 1 1/4 in</source>
   <translation>barra de roble 1 1/4 in</translation>
  </message>
  <message>
   <source>obstacle {}</source>
   <translation>obstáculo {}</translation>
  </message>
  <message>
   <source>obstacles</source>
   <translation>obstáculos</translation>
  </message>
  <message>
   <source>of the thickness</source>
   <translation>del grueso</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>retal</translation>
  </message>
  <message>
   <source>offcuts</source>
   <translation>retales</translation>
  </message>
  <message>
   <source>old-paint</source>
   <translation>old-paint</translation>
  </message>
  <message>
   <source>on cleats</source>
   <translation>sobre listones</translation>
  </message>
  <message>
   <source>on pins</source>
   <translation>sobre soportes</translation>
  </message>
  <message>
   <source>on top of its supports</source>
   <translation>sobre sus apoyos</translation>
  </message>
  <message>
   <source>open</source>
   <translation>abierto</translation>
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation>lámpara abierta o semicerrada, o colgante</translation>
  </message>
  <message>
   <source>others</source>
   <translation>otros</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>anticuado</translation>
  </message>
  <message>
   <source>over the lintel: {}, {} l</source>
   <translation>sobre el dintel: {}, {} l</translation>
  </message>
  <message>
   <source>over the sides</source>
   <translation>sobre los laterales</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>balda superior</translation>
  </message>
  <message>
   <source>overhang</source>
   <translation>vuelo</translation>
  </message>
  <message>
   <source>overlap</source>
   <translation>solape</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>panel</translation>
  </message>
  <message>
   <source>panel nail 1.6 x 25 mm</source>
   <translation>clavo para trasera 1.6 x 25 mm</translation>
  </message>
  <message>
   <source>panel {}</source>
   <translation>panel {}</translation>
  </message>
  <message>
   <source>panels</source>
   <translation>paneles</translation>
  </message>
  <message>
   <source>papers</source>
   <translation>documentos</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pieza</translation>
  </message>
  <message>
   <source>parts/, {} drawings</source>
   <translation>parts/, {} dibujos</translation>
  </message>
  <message>
   <source>past the side</source>
   <translation>más allá del lateral</translation>
  </message>
  <message>
   <source>pictures</source>
   <translation>imágenes</translation>
  </message>
  <message>
   <source>pine board 1x4</source>
   <translation>tabla de pino 1x4</translation>
  </message>
  <message>
   <source>pine board 1x6</source>
   <translation>tabla de pino 1x6</translation>
  </message>
  <message>
   <source>pine pole</source>
   <translation>barra de pino</translation>
  </message>
  <message>
   <source>pine pole 1 1/4 in</source>
   <translation>barra de pino 1 1/4 in</translation>
  </message>
  <message>
   <source>place</source>
   <translation>lugar</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>plan</translation>
  </message>
  <message>
   <source>planned</source>
   <translation>planificado</translation>
  </message>
  <message>
   <source>plaster on lath</source>
   <translation>enlucido sobre listonado</translation>
  </message>
  <message>
   <source>plastic band 0.5 mm</source>
   <translation>canto de plástico 0.5 mm</translation>
  </message>
  <message>
   <source>plastic band 1 mm</source>
   <translation>canto de plástico 1 mm</translation>
  </message>
  <message>
   <source>plastic band 2 mm</source>
   <translation>canto de plástico 2 mm</translation>
  </message>
  <message>
   <source>pocket screw 4 x 32 mm, coarse thread, washer head</source>
   <translation>tornillo oculto en ángulo 4 x 32 mm, rosca gruesa, cabeza con arandela</translation>
  </message>
  <message>
   <source>pocket screws</source>
   <translation>tornillos ocultos en ángulo</translation>
  </message>
  <message>
   <source>porch (inches)</source>
   <translation>porche (pulgadas)</translation>
  </message>
  <message>
   <source>proved</source>
   <translation>demostrado</translation>
  </message>
  <message>
   <source>pull or knob with its screws</source>
   <translation>tirador o pomo con sus tornillos</translation>
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation>poner una medición en el grupo del armario</translation>
  </message>
  <message>
   <source>quarter round</source>
   <translation>cuarto de caña</translation>
  </message>
  <message>
   <source>quarter round 12 mm, pine</source>
   <translation>cuarto de caña 12 mm, pino</translation>
  </message>
  <message>
   <source>quarter round 19 mm, pine</source>
   <translation>cuarto de caña 19 mm, pino</translation>
  </message>
  <message>
   <source>rabbet</source>
   <translation>rebaje</translation>
  </message>
  <message>
   <source>rail</source>
   <translation>travesaño</translation>
  </message>
  <message>
   <source>readings that do not agree</source>
   <translation>lecturas que no concuerdan</translation>
  </message>
  <message>
   <source>rear</source>
   <translation>detrás</translation>
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation>lámpara o LED cerrada, empotrada</translation>
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation>fluorescente empotrada</translation>
  </message>
  <message>
   <source>resources</source>
   <translation>recursos</translation>
  </message>
  <message>
   <source>return beside the opening</source>
   <translation>retorno junto al hueco de entrada</translation>
  </message>
  <message>
   <source>right</source>
   <translation>derecha</translation>
  </message>
  <message>
   <source>rip</source>
   <translation>al hilo</translation>
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation>cortes al hilo y transversales</translation>
  </message>
  <message>
   <source>rips only</source>
   <translation>solo cortes al hilo</translation>
  </message>
  <message>
   <source>rise</source>
   <translation>desnivel</translation>
  </message>
  <message>
   <source>rods</source>
   <translation>barras</translation>
  </message>
  <message>
   <source>room</source>
   <translation>sala</translation>
  </message>
  <message>
   <source>rules</source>
   <translation>reglas</translation>
  </message>
  <message>
   <source>screw</source>
   <translation>tornillo</translation>
  </message>
  <message>
   <source>screw cover cap, self-adhesive, 12 mm</source>
   <translation>tapatornillos adhesivo, 12 mm</translation>
  </message>
  <message>
   <source>screws</source>
   <translation>tornillos</translation>
  </message>
  <message>
   <source>scribe</source>
   <translation>margen de ajuste</translation>
  </message>
  <message>
   <source>scribe moulding 20 x 6 mm, pine</source>
   <translation>moldura de ajuste 20 x 6 mm, pino</translation>
  </message>
  <message>
   <source>scribe moulding 32 x 6 mm, pine</source>
   <translation>moldura de ajuste 32 x 6 mm, pino</translation>
  </message>
  <message>
   <source>scribe moulding 45 x 8 mm, pine</source>
   <translation>moldura de ajuste 45 x 8 mm, pino</translation>
  </message>
  <message>
   <source>seconds</source>
   <translation>segundos</translation>
  </message>
  <message>
   <source>seeing</source>
   <translation>visual</translation>
  </message>
  <message>
   <source>setback</source>
   <translation>retranqueo</translation>
  </message>
  <message>
   <source>shared</source>
   <translation>compartido</translation>
  </message>
  <message>
   <source>sheets</source>
   <translation>tableros</translation>
  </message>
  <message>
   <source>sheets/, {} drawings</source>
   <translation>sheets/, {} dibujos</translation>
  </message>
  <message>
   <source>shelf pin 5 mm</source>
   <translation>soporte de balda 5 mm</translation>
  </message>
  <message>
   <source>shelf-use</source>
   <translation>shelf-use</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>calzo</translation>
  </message>
  <message>
   <source>shims</source>
   <translation>calzos</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>balda para zapatos</translation>
  </message>
  <message>
   <source>short</source>
   <translation>corto</translation>
  </message>
  <message>
   <source>side</source>
   <translation>lado</translation>
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension</source>
   <translation>guía lateral de bolas, extracción total</translation>
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension, inch lengths</source>
   <translation>guía lateral de bolas, extracción total, largos en pulgadas</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 12 in</source>
   <translation>guía de cajón lateral de extracción total, 12 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 14 in</source>
   <translation>guía de cajón lateral de extracción total, 14 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 16 in</source>
   <translation>guía de cajón lateral de extracción total, 16 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 18 in</source>
   <translation>guía de cajón lateral de extracción total, 18 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 20 in</source>
   <translation>guía de cajón lateral de extracción total, 20 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 22 in</source>
   <translation>guía de cajón lateral de extracción total, 22 in</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 300 mm</source>
   <translation>guía de cajón lateral de extracción total, 300 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 350 mm</source>
   <translation>guía de cajón lateral de extracción total, 350 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 400 mm</source>
   <translation>guía de cajón lateral de extracción total, 400 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 450 mm</source>
   <translation>guía de cajón lateral de extracción total, 450 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 500 mm</source>
   <translation>guía de cajón lateral de extracción total, 500 mm</translation>
  </message>
  <message>
   <source>side-mounted drawer slide, full extension, 550 mm</source>
   <translation>guía de cajón lateral de extracción total, 550 mm</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>biapoyado</translation>
  </message>
  <message>
   <source>sockets</source>
   <translation>portabarras</translation>
  </message>
  <message>
   <source>softwood stud 2x4 (38 x 89 mm)</source>
   <translation>montante de conífera 2x4 (38 x 89 mm)</translation>
  </message>
  <message>
   <source>solid lumber</source>
   <translation>madera maciza</translation>
  </message>
  <message>
   <source>spot</source>
   <translation>punto</translation>
  </message>
  <message>
   <source>stages</source>
   <translation>etapas</translation>
  </message>
  <message>
   <source>start</source>
   <translation>inicio</translation>
  </message>
  <message>
   <source>steel angle bracket 60 x 60 x 40 mm with its screws</source>
   <translation>escuadra de acero 60 x 60 x 40 mm con sus tornillos</translation>
  </message>
  <message>
   <source>steel studs</source>
   <translation>montantes de acero</translation>
  </message>
  <message>
   <source>steel tube</source>
   <translation>tubo de acero</translation>
  </message>
  <message>
   <source>steel tube 27 x 1.2 mm</source>
   <translation>tubo de acero 27 x 1.2 mm</translation>
  </message>
  <message>
   <source>stiff</source>
   <translation>rígida</translation>
  </message>
  <message>
   <source>stile</source>
   <translation>montante</translation>
  </message>
  <message>
   <source>stop</source>
   <translation>tope</translation>
  </message>
  <message>
   <source>store</source>
   <translation>tienda</translation>
  </message>
  <message>
   <source>strip</source>
   <translation>listón</translation>
  </message>
  <message>
   <source>studs-unknown</source>
   <translation>studs-unknown</translation>
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation>lámpara o LED cerrada, de superficie</translation>
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation>fluorescente de superficie</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>medición</translation>
  </message>
  <message>
   <source>the material's own</source>
   <translation>el propio del material</translation>
  </message>
  <message>
   <source>the same board</source>
   <translation>la misma tabla</translation>
  </message>
  <message>
   <source>the whole closet</source>
   <translation>el armario entero</translation>
  </message>
  <message>
   <source>there</source>
   <translation>ahí</translation>
  </message>
  <message>
   <source>there is no sheet</source>
   <translation>ahí no hay ningún tablero</translation>
  </message>
  <message>
   <source>tick one at least</source>
   <translation>marcar al menos uno</translation>
  </message>
  <message>
   <source>tidy</source>
   <translation>ordenado</translation>
  </message>
  <message>
   <source>to</source>
   <translation>a</translation>
  </message>
  <message>
   <source>to the wall</source>
   <translation>a la pared</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>retranqueo del zócalo</translation>
  </message>
  <message>
   <source>together</source>
   <translation>unido</translation>
  </message>
  <message>
   <source>tongue and groove</source>
   <translation>machihembrado</translation>
  </message>
  <message>
   <source>top</source>
   <translation>techo</translation>
  </message>
  <message>
   <source>translations</source>
   <translation>traducciones</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation>dos cargas iguales en los cuartos exteriores</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation>dos cargas iguales en los cuartos exteriores, flecha en una carga</translation>
  </message>
  <message>
   <source>two sliding panels</source>
   <translation>dos hojas correderas</translation>
  </message>
  <message>
   <source>uniform</source>
   <translation>uniforme</translation>
  </message>
  <message>
   <source>up</source>
   <translation>arriba</translation>
  </message>
  <message>
   <source>upper</source>
   <translation>superior</translation>
  </message>
  <message>
   <source>upright</source>
   <translation>de canto</translation>
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation>contrachapado de chapas</translation>
  </message>
  <message>
   <source>veneer-core plywood 1/2 in (15/32 category)</source>
   <translation>contrachapado de chapas 1/2 in (categoría 15/32)</translation>
  </message>
  <message>
   <source>veneer-core plywood 1/4 in</source>
   <translation>contrachapado de chapas 1/4 in</translation>
  </message>
  <message>
   <source>veneer-core plywood 12 mm</source>
   <translation>contrachapado de chapas 12 mm</translation>
  </message>
  <message>
   <source>veneer-core plywood 18 mm</source>
   <translation>contrachapado de chapas 18 mm</translation>
  </message>
  <message>
   <source>veneer-core plywood 3/4 in (23/32 category)</source>
   <translation>contrachapado de chapas 3/4 in (categoría 23/32)</translation>
  </message>
  <message>
   <source>veneer-core plywood 6 mm</source>
   <translation>contrachapado de chapas 6 mm</translation>
  </message>
  <message>
   <source>view</source>
   <translation>vista</translation>
  </message>
  <message>
   <source>volume</source>
   <translation>volumen</translation>
  </message>
  <message>
   <source>waiting</source>
   <translation>en espera</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>pared</translation>
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
   <translation>paredes</translation>
  </message>
  <message>
   <source>warning</source>
   <translation>advertencia</translation>
  </message>
  <message>
   <source>warnings</source>
   <translation>advertencias</translation>
  </message>
  <message>
   <source>washer 20 mm across, for screws to 6 mm</source>
   <translation>arandela de 20 mm, para tornillos de hasta 6 mm</translation>
  </message>
  <message>
   <source>what does not go in</source>
   <translation>lo que no entra</translation>
  </message>
  <message>
   <source>what is not checked</source>
   <translation>lo que no se comprueba</translation>
  </message>
  <message>
   <source>what is selected</source>
   <translation>lo seleccionado</translation>
  </message>
  <message>
   <source>what is shown</source>
   <translation>lo mostrado</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 16 mm</source>
   <translation>tablero de partículas melaminizado blanco 16 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 18 mm</source>
   <translation>tablero de partículas melaminizado blanco 18 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 19 mm</source>
   <translation>tablero de partículas melaminizado blanco 19 mm</translation>
  </message>
  <message>
   <source>white melamine-faced particleboard 3/4 in</source>
   <translation>tablero de partículas melaminizado blanco 3/4 in</translation>
  </message>
  <message>
   <source>whole</source>
   <translation>entero</translation>
  </message>
  <message>
   <source>width</source>
   <translation>ancho</translation>
  </message>
  <message>
   <source>width first</source>
   <translation>primero el ancho</translation>
  </message>
  <message>
   <source>width from</source>
   <translation>ancho desde</translation>
  </message>
  <message>
   <source>width of the opening</source>
   <translation>ancho del hueco de entrada</translation>
  </message>
  <message>
   <source>width that is left</source>
   <translation>ancho restante</translation>
  </message>
  <message>
   <source>wood screw 5 x 70 mm</source>
   <translation>tirafondo 5 x 70 mm</translation>
  </message>
  <message>
   <source>wood screw 5 x 90 mm</source>
   <translation>tirafondo 5 x 90 mm</translation>
  </message>
  <message>
   <source>wood screw 6 x 100 mm</source>
   <translation>tirafondo 6 x 100 mm</translation>
  </message>
  <message>
   <source>wood screw No. 10 x 3 in</source>
   <translation>tirafondo n.º 10 x 3 in</translation>
  </message>
  <message>
   <source>wood screw No. 8 x 1 1/4 in</source>
   <translation>tirafondo n.º 8 x 1 1/4 in</translation>
  </message>
  <message>
   <source>wood screw No. 8 x 2 in</source>
   <translation>tirafondo n.º 8 x 2 in</translation>
  </message>
  <message>
   <source>wood studs</source>
   <translation>montantes de madera</translation>
  </message>
  <message>
   <source>wood veneer iron-on band 0.6 mm</source>
   <translation>canto de chapa de madera termoadhesivo 0.6 mm</translation>
  </message>
  <message>
   <source>wooden runner, box on wood</source>
   <translation>corredera de madera, caja sobre madera</translation>
  </message>
  <message>
   <source>write no file</source>
   <translation>no escribir archivo</translation>
  </message>
  <message>
   <source>written</source>
   <translation>escrito</translation>
  </message>
  <message>
   <source>wrong</source>
   <translation>erróneo</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>sí</translation>
  </message>
  <message>
   <source>{} % of it is controlled by other readings; w = {}</source>
   <translation>El {} % está controlado por otras lecturas; w = {}</translation>
  </message>
  <message>
   <source>{} behind what is met first</source>
   <translation>{} detrás de lo primero que se encuentra</translation>
  </message>
  <message>
   <source>{} components, {} parts, {:.1f} kg</source>
   <translation>{} componentes, {} piezas, {:.1f} kg</translation>
  </message>
  <message>
   <source>{} dangers</source>
   <translation>{} peligros</translation>
  </message>
  <message>
   <source>{} does not go in: {}.</source>
   <translation>{} no entra: {}.</translation>
  </message>
  <message>
   <source>{} drawings written to {}</source>
   <translation>{} dibujos escritos en {}</translation>
  </message>
  <message>
   <source>{} goes in: {}.</source>
   <translation>{} entra: {}.</translation>
  </message>
  <message>
   <source>{} is cut</source>
   <translation>{} está cortado</translation>
  </message>
  <message>
   <source>{} names are left out: their parts are hidden from here, or there is no room. Turn or zoom the view, or pull the parts apart.</source>
   <translation>Se omiten {} nombres: sus piezas no se ven desde aquí, o no hay sitio. Girar o ampliar la vista, o despiezar.</translation>
  </message>
  <message>
   <source>{} not checked</source>
   <translation>{} no comprobados</translation>
  </message>
  <message>
   <source>{} notes</source>
   <translation>{} notas</translation>
  </message>
  <message>
   <source>{} of {}</source>
   <translation>{} de {}</translation>
  </message>
  <message>
   <source>{} of {} cannot open all the way.</source>
   <translation>{} de {} no pueden abrirse del todo.</translation>
  </message>
  <message>
   <source>{} of {}: {}
{} x {}, yield {:.0%}</source>
   <translation>{} de {}: {}
{} x {}, rendimiento {:.0%}</translation>
  </message>
  <message>
   <source>{} parts, {:.1f} kg</source>
   <translation>{} piezas, {:.1f} kg</translation>
  </message>
  <message>
   <source>{} pictures written to {}</source>
   <translation>{} imágenes escritas en {}</translation>
  </message>
  <message>
   <source>{} solids, each with its name, where it stands; millimetres.</source>
   <translation>{} sólidos, cada uno con su nombre, en su sitio; milímetros.</translation>
  </message>
  <message>
   <source>{} warnings</source>
   <translation>{} advertencias</translation>
  </message>
  <message>
   <source>{} {} deep</source>
   <translation>{} {} de profundidad</translation>
  </message>
  <message>
   <source>{}, by length: {} ({})</source>
   <translation>{}, por largo: {} ({})</translation>
  </message>
  <message>
   <source>{}: 1 sheet, yield {:.0%} ({})</source>
   <translation>{}: 1 tablero, rendimiento {:.0%} ({})</translation>
  </message>
  <message>
   <source>{}: measured from the corner with the dot.</source>
   <translation>{}: medido desde la esquina con el punto.</translation>
  </message>
  <message>
   <source>{}: measured from the end with the dot.</source>
   <translation>{}: medido desde el extremo con el punto.</translation>
  </message>
  <message>
   <source>{}: {count} sheets, yield {:.0%} ({})</source>
   <translation>{}: {count} tableros, rendimiento {:.0%} ({})</translation>
  </message>
  <message>
   <source>{}: {} and {}</source>
   <translation>{}: {} y {}</translation>
  </message>
  <message>
   <source>{}: {} expected</source>
   <translation>{}: se espera {}</translation>
  </message>
  <message>
   <source>{}: {} sheets so far, at least {} needed</source>
   <translation>{}: {} tableros hasta ahora, se necesitan al menos {}</translation>
  </message>
  <message>
   <source>{}: {} x {}, at {} and {}</source>
   <translation>{}: {} x {}, en {} y {}</translation>
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
   <translation>✓ sí</translation>
  </message>
  <message>
   <source>✗ no</source>
   <translation>✗ no</translation>
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
   <translation>Añadir un hueco</translation>
  </message>
  <message>
   <source>Divide the selected carcass once more: a bay beside the selected one, or at the right</source>
   <translation>Dividir una vez más el cuerpo seleccionado: un hueco junto al seleccionado, o a la derecha</translation>
  </message>
  <message>
   <source>Select the carcass, or the bay beside which to divide it.</source>
   <translation>Seleccionar el cuerpo, o el hueco junto al que dividirlo.</translation>
  </message>
  <message>
   <source>There is no carcass in this document: add one first.</source>
   <translation>No hay ningún cuerpo en este documento: añadir antes uno.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bench</name>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation>Un banco en un hueco de un cuerpo, o libre en el armario</translation>
  </message>
  <message>
   <source>Bench…</source>
   <translation>Banco…</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Frente</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Asiento</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Bill</name>
  <message>
   <source>Bill of materials…</source>
   <translation>Lista de materiales…</translation>
  </message>
  <message>
   <source>Show and write the cut list, what to buy, the groove set-ups and the findings</source>
   <translation>Mostrar y escribir la lista de corte, lo que comprar, los ajustes de ranurado y las observaciones</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_BillSheet</name>
  <message>
   <source>Bill as a spreadsheet</source>
   <translation>Lista como hoja de cálculo</translation>
  </message>
  <message>
   <source>Keep the bill in the document as a spreadsheet that follows every change; formulas can use its cells</source>
   <translation>Guardar la lista en el documento como hoja de cálculo que sigue cada cambio; las fórmulas pueden usar sus celdas</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_BoxRoom</name>
  <message>
   <source>Example: the box room at number nine</source>
   <translation>Ejemplo: el trastero del número nueve</translation>
  </message>
  <message>
   <source>Open an example in millimetres; its readings and sizes are invented</source>
   <translation>Abrir un ejemplo en milímetros; sus lecturas y medidas son inventadas</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Carcass</name>
  <message>
   <source>Add a carcass with its sides, dividers, shelves, back and base to the closet</source>
   <translation>Añadir al armario un cuerpo con sus laterales, divisorias, baldas, trasera y zócalo</translation>
  </message>
  <message>
   <source>Carcass…</source>
   <translation>Cuerpo…</translation>
  </message>
  <message>
   <source>Select the closet that the carcass is for.</source>
   <translation>Seleccionar el armario al que va el cuerpo.</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>No hay ningún armario en este documento: iniciar antes uno.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Checks</name>
  <message>
   <source>Checks…</source>
   <translation>Comprobaciones…</translation>
  </message>
  <message>
   <source>See what is dangerous, doubtful or not checked in a closet, and what to do about it</source>
   <translation>Ver lo peligroso, dudoso o no comprobado de un armario, y qué hacer al respecto</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Contents</name>
  <message>
   <source>Contents</source>
   <translation>Contenido</translation>
  </message>
  <message>
   <source>Put drawers, doors, rods and the like into a closet</source>
   <translation>Poner cajones, puertas, barras y similares en un armario</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_CornerShelves</name>
  <message>
   <source>Corner shelves…</source>
   <translation>Baldas de esquina…</translation>
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation>Baldas de una pieza en una esquina trasera</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Doors</name>
  <message>
   <source>A door, or a pair, in front of one compartment</source>
   <translation>Una puerta, o una pareja, ante un compartimento</translation>
  </message>
  <message>
   <source>Doors…</source>
   <translation>Puertas…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Drawers</name>
  <message>
   <source>A bank of drawers in one compartment, with slides and fronts</source>
   <translation>Un bloque de cajones en un compartimento, con guías y frentes</translation>
  </message>
  <message>
   <source>Drawers…</source>
   <translation>Cajones…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Drawing</name>
  <message>
   <source>Drawing page…</source>
   <translation>Página de dibujo…</translation>
  </message>
  <message>
   <source>Make a page to print with the front, the plan and sections of the closet and their sizes</source>
   <translation>Hacer una página para imprimir con el frente, la planta y secciones del armario y sus medidas</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Duplicate</name>
  <message>
   <source>Copy the selected component into the next free place; a carcass comes with what is in it</source>
   <translation>Copiar el componente seleccionado en el siguiente sitio libre; un cuerpo va con lo que contiene</translation>
  </message>
  <message>
   <source>Duplicate</source>
   <translation>Duplicar</translation>
  </message>
  <message>
   <source>Select the carcass, component or panel to copy, or a part of it.</source>
   <translation>Seleccionar el cuerpo, el componente o el panel que se quiere copiar, o una de sus piezas.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Dxf</name>
  <message>
   <source>Export DXF…</source>
   <translation>Exportar DXF…</translation>
  </message>
  <message>
   <source>Write drawings of the cut layout, of each sheet or of each part</source>
   <translation>Escribir dibujos del plano de corte, de cada tablero o de cada pieza</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Examples</name>
  <message>
   <source>Examples</source>
   <translation>Ejemplos</translation>
  </message>
  <message>
   <source>Open an example closet in a document of its own</source>
   <translation>Abrir un armario de ejemplo en un documento propio</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Existing</name>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation>Una cómoda o mueble reutilizado, empotrado tal como es</translation>
  </message>
  <message>
   <source>Existing piece…</source>
   <translation>Mueble existente…</translation>
  </message>
  <message>
   <source>Top</source>
   <translation>Tapa</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_FaceFrame</name>
  <message>
   <source>Face frame…</source>
   <translation>Marco frontal…</translation>
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation>Montantes y travesaños ante un cuerpo</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Fillers</name>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation>Listones de ajuste y molduras que cierran las holguras con paredes, techo y suelo</translation>
  </message>
  <message>
   <source>Fillers…</source>
   <translation>Listones de ajuste…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_GoesIn</name>
  <message>
   <source>Does it go in…</source>
   <translation>¿Entra?…</translation>
  </message>
  <message>
   <source>See whether the selected pieces, or all, come in through the opening, and play how</source>
   <translation>Ver si las piezas seleccionadas, o todas, entran por el hueco de entrada, y reproducir cómo</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Guide</name>
  <message>
   <source>Show or close the list that says what is done, what is next and what is wrong</source>
   <translation>Mostrar o cerrar el panel que dice qué está hecho, qué sigue y qué está mal</translation>
  </message>
  <message>
   <source>Steps of the work</source>
   <translation>Pasos del trabajo</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Help</name>
  <message>
   <source>Back</source>
   <translation>Atrás</translation>
  </message>
  <message>
   <source>Closet help</source>
   <translation>Ayuda sobre el armario</translation>
  </message>
  <message>
   <source>Read what each command is for, what to enter and what comes out</source>
   <translation>Leer para qué sirve cada orden, qué hay que introducir y qué sale</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Language</name>
  <message>
   <source>en</source>
   <translation>es</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Layout</name>
  <message>
   <source>Lay out the sheets…</source>
   <translation>Distribuir en tableros…</translation>
  </message>
  <message>
   <source>Plan which sheets to buy and how to rip and crosscut them into the closet's parts</source>
   <translation>Planificar qué tableros comprar y cómo cortarlos al hilo y al través para las piezas del armario</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Look</name>
  <message>
   <source>Look inside…</source>
   <translation>Ver el interior…</translation>
  </message>
  <message>
   <source>Pull the closet apart in the view, play its assembly, cut it open, hide kinds of parts or show their names</source>
   <translation>Despiezar el armario en la vista, reproducir su montaje, verlo en corte, ocultar tipos de piezas o mostrar sus nombres</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Offcuts</name>
  <message>
   <source>List the offcuts that are at hand, to be used before anything is bought</source>
   <translation>Enumerar los retales disponibles, que se usan antes de comprar nada</translation>
  </message>
  <message>
   <source>Offcuts at hand…</source>
   <translation>Retales disponibles…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Opens</name>
  <message>
   <source>Show the space that drawers, pull-outs, doors and lids open into, and what they hit</source>
   <translation>Mostrar el espacio al que se abren cajones, extraíbles, puertas y tapas, y con qué chocan</translation>
  </message>
  <message>
   <source>What opens…</source>
   <translation>Lo que se abre…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_OverShelf</name>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation>Una balda sobre los cuerpos, de pared a pared</translation>
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation>Balda superior…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Panel</name>
  <message>
   <source>Add a single panel with grooves, rabbets and edge bands</source>
   <translation>Añadir un panel suelto con ranuras, rebajes y cantos</translation>
  </message>
  <message>
   <source>Grooved panel…</source>
   <translation>Panel ranurado…</translation>
  </message>
  <message>
   <source>Select the closet that the panel is for.</source>
   <translation>Seleccionar el armario al que va el panel.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Papers</name>
  <message>
   <source> and </source>
   <translation> y </translation>
  </message>
  <message>
   <source>1 DANGER: read this before anything is cut, carried or filled; {0}</source>
   <translation>1 PELIGRO: léase antes de cortar, cargar o llenar nada; {0}</translation>
  </message>
  <message>
   <source>1 sheet</source>
   <translation>1 tablero</translation>
  </message>
  <message>
   <source>A reading at a return or behind a baseboard is taken above it. Doubtful readings are found when all of them are entered; a reading taken twice by two people is found sooner.</source>
   <translation>Una lectura en un retorno o detrás de un rodapié se toma por encima. Las lecturas dudosas se descubren al introducirlas todas; tomadas dos veces por dos personas, se descubren antes.</translation>
  </message>
  <message>
   <source>Anchor to the structure; local codes and a licensed professional come first.</source>
   <translation>Anclar a la estructura; priman la normativa local y un profesional titulado.</translation>
  </message>
  <message>
   <source>Cut by length</source>
   <translation>Cortado a medida de largo</translation>
  </message>
  <message>
   <source>Cut from bars</source>
   <translation>Cortado de perfiles</translation>
  </message>
  <message>
   <source>DANGER</source>
   <translation>PELIGRO</translation>
  </message>
  <message>
   <source>DANGER: {0}</source>
   <translation>PELIGRO: {0}</translation>
  </message>
  <message>
   <source>Each cut: its number, as on the picture of the sheet; the piece that is sawn; the fence, which is what stays between fence (or straightedge) and blade; what lies at the fence after the cut, and what is left.</source>
   <translation>Cada corte: su número, como en la imagen del tablero; la pieza que se sierra; la medida al tope, o sea lo que queda entre el tope (o la regla guía) y el disco; lo que queda junto al tope tras el corte, y lo que sobra.</translation>
  </message>
  <message>
   <source>Fasten the work, wear eye and ear protection, feed against the bit's turn and take deep grooves in several steps of depth; the machine's own manual goes before this list.</source>
   <translation>Sujetar la pieza, llevar protección ocular y auditiva, avanzar contra el giro de la fresa y hacer las ranuras hondas en varios pasos de profundidad; el manual de la máquina prima sobre esta lista.</translation>
  </message>
  <message>
   <source>Findings</source>
   <translation>Observaciones</translation>
  </message>
  <message>
   <source>First {0}: {1}.</source>
   <translation>Primero {0}: {1}.</translation>
  </message>
  <message>
   <source>Groove set-ups</source>
   <translation>Ajustes para ranurar</translation>
  </message>
  <message>
   <source>Materials</source>
   <translation>Materiales</translation>
  </message>
  <message>
   <source>Measure on site before anything is cut; exact sizes are in the bill.</source>
   <translation>Medir en obra antes de cortar nada; las medidas exactas están en la lista.</translation>
  </message>
  <message>
   <source>NOTE: {0}</source>
   <translation>NOTA: {0}</translation>
  </message>
  <message>
   <source>One piece after the other from the same end; mark each one after the cut before it, then the kerf needs no arithmetic.</source>
   <translation>Una pieza tras otra desde el mismo extremo; marcar cada una después del corte anterior, así el ancho de corte no exige cálculos.</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Piezas</translation>
  </message>
  <message>
   <source>Purchases</source>
   <translation>Compras</translation>
  </message>
  <message>
   <source>Reused</source>
   <translation>Reutilizado</translation>
  </message>
  <message>
   <source>Saw to the cut size; the finished size has the edge bands on, and positions are measured from the finished rims. Columns in mm are exact, those without are rounded.</source>
   <translation>Serrar a la medida de corte; la medida acabada incluye los cantos, y las posiciones se miden desde los bordes acabados. Las columnas en mm son exactas, las demás están redondeadas.</translation>
  </message>
  <message>
   <source>Support the sheet on both sides of the cut, clamp the straightedge, set the blade just through; eyes, ears and lungs protected; the saw's own manual goes before this list. Mark a part from the one it must meet wherever you can, and check the first cut before the others.</source>
   <translation>Apoyar el tablero a ambos lados del corte, sujetar con sargentos la regla guía, ajustar el disco para que apenas sobresalga; ojos, oídos y pulmones protegidos; el manual de la sierra prima sobre esta lista. Marcar una pieza sobre aquella con la que debe encajar siempre que se pueda, y comprobar el primer corte antes que los demás.</translation>
  </message>
  <message>
   <source>Survey: {0}</source>
   <translation>Medición: {0}</translation>
  </message>
  <message>
   <source>Then take the readings in the order of their numbers; read each to the tape's nearest step, and write down what you read, not what you expect.</source>
   <translation>Después tomar las lecturas en el orden de sus números; leer cada una a la división más próxima de la cinta y anotar lo que se lee, no lo que se espera.</translation>
  </message>
  <message>
   <source>WARNING: {0}</source>
   <translation>ADVERTENCIA: {0}</translation>
  </message>
  <message>
   <source>Ways to buy</source>
   <translation>Formas de comprar</translation>
  </message>
  <message>
   <source>What must stay clear (pipe, socket, beam), from the front left corner: x to the right, y into the depth, z up  ·  [[survey.obstacle]]  ·  Obstacles</source>
   <translation>Lo que debe quedar libre (tubo, enchufe, viga), desde la esquina delantera izquierda: x a la derecha, y hacia el fondo, z hacia arriba  ·  [[survey.obstacle]]  ·  Obstacles</translation>
  </message>
  <message>
   <source>a cheaper choice may exist</source>
   <translation>puede haber una elección más barata</translation>
  </message>
  <message>
   <source>a plan with less may be possible</source>
   <translation>quizá sea posible un plan con menos</translation>
  </message>
  <message>
   <source>access</source>
   <translation>acceso</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>balda regulable</translation>
  </message>
  <message>
   <source>allows for the mitre at its end: mark the long point, {0}, at the wall</source>
   <translation>incluye el inglete del final: marcar la punta larga, {0}, en la pared</translation>
  </message>
  <message>
   <source>allows for the mitre at its start and end: mark the long point, {0}, at the wall</source>
   <translation>incluye los ingletes del inicio y del final: marcar la punta larga, {0}, en la pared</translation>
  </message>
  <message>
   <source>allows for the mitre at its start: mark the long point, {0}, at the wall</source>
   <translation>incluye el inglete del inicio: marcar la punta larga, {0}, en la pared</translation>
  </message>
  <message>
   <source>along the end</source>
   <translation>a lo largo del final</translation>
  </message>
  <message>
   <source>along the front</source>
   <translation>a lo largo del borde delantero</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>a lo largo</translation>
  </message>
  <message>
   <source>along the rear</source>
   <translation>a lo largo del borde trasero</translation>
  </message>
  <message>
   <source>along the start</source>
   <translation>a lo largo del inicio</translation>
  </message>
  <message>
   <source>along the width</source>
   <translation>a lo ancho</translation>
  </message>
  <message>
   <source>any way</source>
   <translation>indiferente</translation>
  </message>
  <message>
   <source>arrow: grain</source>
   <translation>flecha: veta</translation>
  </message>
  <message>
   <source>as it is: greatest width, depth and height</source>
   <translation>tal cual: ancho, profundidad y altura máximos</translation>
  </message>
  <message>
   <source>at hand: {0}</source>
   <translation>disponible: {0}</translation>
  </message>
  <message>
   <source>at home</source>
   <translation>en casa</translation>
  </message>
  <message>
   <source>at least {0} needed</source>
   <translation>al menos {0} necesarios</translation>
  </message>
  <message>
   <source>at the fence then</source>
   <translation>luego junto al tope</translation>
  </message>
  <message>
   <source>at the store</source>
   <translation>en la tienda</translation>
  </message>
  <message>
   <source>back</source>
   <translation>trasera</translation>
  </message>
  <message>
   <source>band end</source>
   <translation>canto final</translation>
  </message>
  <message>
   <source>band front</source>
   <translation>canto delantero</translation>
  </message>
  <message>
   <source>band rear</source>
   <translation>canto trasero</translation>
  </message>
  <message>
   <source>band start</source>
   <translation>canto inicio</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>perfil</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>bastidor del zócalo</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>frente del banco</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>bastidor del banco</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>tapa del banco</translation>
  </message>
  <message>
   <source>best found</source>
   <translation>lo mejor hallado</translation>
  </message>
  <message>
   <source>bit mm</source>
   <translation>fresa mm</translation>
  </message>
  <message>
   <source>blue: at the store; red: at home; fence: what stays between fence or straightedge and blade</source>
   <translation>azul: en la tienda; rojo: en casa; medida al tope: lo que queda entre el tope o la regla guía y el disco</translation>
  </message>
  <message>
   <source>board</source>
   <translation>tabla</translation>
  </message>
  <message>
   <source>bottom</source>
   <translation>suelo</translation>
  </message>
  <message>
   <source>bought m²</source>
   <translation>m² comprados</translation>
  </message>
  <message>
   <source>bring to size first: {0}</source>
   <translation>llevar primero a su medida: {0}</translation>
  </message>
  <message>
   <source>by</source>
   <translation>por</translation>
  </message>
  <message>
   <source>by length</source>
   <translation>a medida de largo</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catálogo</translation>
  </message>
  <message>
   <source>children</source>
   <translation>niños</translation>
  </message>
  <message>
   <source>cleat</source>
   <translation>listón de apoyo</translation>
  </message>
  <message>
   <source>component</source>
   <translation>componente</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>balda de esquina</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>coste</translation>
  </message>
  <message>
   <source>cost each</source>
   <translation>precio unitario</translation>
  </message>
  <message>
   <source>count</source>
   <translation>cantidad</translation>
  </message>
  <message>
   <source>crosscut</source>
   <translation>corte transversal</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>corte</translation>
  </message>
  <message>
   <source>cut it out first, the saw on the damaged side: {0}, from the corner that the defects are measured from; the sizes below are of the sound part</source>
   <translation>recortarla primero, la sierra por el lado dañado: {0}, desde la esquina desde la que se miden los defectos; las medidas de abajo son de la parte sana</translation>
  </message>
  <message>
   <source>cut length</source>
   <translation>largo de corte</translation>
  </message>
  <message>
   <source>cut length mm</source>
   <translation>largo de corte mm</translation>
  </message>
  <message>
   <source>cut width</source>
   <translation>ancho de corte</translation>
  </message>
  <message>
   <source>cut width mm</source>
   <translation>ancho de corte mm</translation>
  </message>
  <message>
   <source>date</source>
   <translation>fecha</translation>
  </message>
  <message>
   <source>depth mm</source>
   <translation>profundidad mm</translation>
  </message>
  <message>
   <source>divider</source>
   <translation>divisoria</translation>
  </message>
  <message>
   <source>door</source>
   <translation>puerta</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>espigas</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>trasera de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>fondo de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>frente de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>lateral de la caja de cajón</translation>
  </message>
  <message>
   <source>drawn by</source>
   <translation>dibujado por</translation>
  </message>
  <message>
   <source>edge band</source>
   <translation>canto</translation>
  </message>
  <message>
   <source>edge to be banded</source>
   <translation>borde a cantear</translation>
  </message>
  <message>
   <source>end aslant: {0}</source>
   <translation>final sesgado: {0}</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>espacio útil</translation>
  </message>
  <message>
   <source>every line has a price</source>
   <translation>cada línea tiene precio</translation>
  </message>
  <message>
   <source>every {0} across the width</source>
   <translation>cada {0} a lo ancho</translation>
  </message>
  <message>
   <source>every {0} along the length</source>
   <translation>cada {0} a lo largo</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>mueble existente</translation>
  </message>
  <message>
   <source>feet and inches</source>
   <translation>pies y pulgadas</translation>
  </message>
  <message>
   <source>fence</source>
   <translation>medida al tope</translation>
  </message>
  <message>
   <source>filler</source>
   <translation>listón de ajuste</translation>
  </message>
  <message>
   <source>findings</source>
   <translation>observaciones</translation>
  </message>
  <message>
   <source>first {0} from the start and {1} from the front</source>
   <translation>primero a {0} del inicio y {1} del borde delantero</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>balda fija</translation>
  </message>
  <message>
   <source>from</source>
   <translation>de</translation>
  </message>
  <message>
   <source>from {0} on</source>
   <translation>a partir de {0}</translation>
  </message>
  <message>
   <source>front</source>
   <translation>frente</translation>
  </message>
  <message>
   <source>front aslant: {0}</source>
   <translation>borde delantero sesgado: {0}</translation>
  </message>
  <message>
   <source>front elevation</source>
   <translation>alzado frontal</translation>
  </message>
  <message>
   <source>front elevation, plan and sections; sizes between boards are clear</source>
   <translation>alzado, planta y secciones; las medidas entre tablas son libres</translation>
  </message>
  <message>
   <source>front elevation; heights between shelves and widths of bays are clear</source>
   <translation>alzado frontal; alturas entre baldas y anchos de los huecos son medidas libres</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>refuerzo frontal</translation>
  </message>
  <message>
   <source>fronts and doors as one faces them; distances are from the left and the lower edge of the rectangle around each</source>
   <translation>frentes y puertas vistos de frente; las distancias parten del borde izquierdo y del inferior del rectángulo que rodea a cada uno</translation>
  </message>
  <message>
   <source>gap back,</source>
   <translation>holgura detrás,</translation>
  </message>
  <message>
   <source>gap floor,</source>
   <translation>holgura al suelo,</translation>
  </message>
  <message>
   <source>gap left,</source>
   <translation>holgura izquierda,</translation>
  </message>
  <message>
   <source>gap right,</source>
   <translation>holgura derecha,</translation>
  </message>
  <message>
   <source>gap top,</source>
   <translation>holgura arriba,</translation>
  </message>
  <message>
   <source>grain</source>
   <translation>veta</translation>
  </message>
  <message>
   <source>groove</source>
   <translation>ranura</translation>
  </message>
  <message>
   <source>groove for {0}: {1}</source>
   <translation>ranura para {0}: {1}</translation>
  </message>
  <message>
   <source>groove in the underside</source>
   <translation>ranura en la cara inferior</translation>
  </message>
  <message>
   <source>grooves</source>
   <translation>ranuras</translation>
  </message>
  <message>
   <source>hand saw or mitre saw</source>
   <translation>serrucho o ingletadora</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>barra</translation>
  </message>
  <message>
   <source>hardware</source>
   <translation>herrajes</translation>
  </message>
  <message>
   <source>heaviest</source>
   <translation>la más pesada</translation>
  </message>
  <message>
   <source>hole</source>
   <translation>taladro</translation>
  </message>
  <message>
   <source>hole for {0}</source>
   <translation>taladro para {0}</translation>
  </message>
  <message>
   <source>in the middle of the thickness</source>
   <translation>en la mitad del grueso</translation>
  </message>
  <message>
   <source>inches</source>
   <translation>pulgadas</translation>
  </message>
  <message>
   <source>keep clear of what is damaged, {0}: all from the same end</source>
   <translation>evitar lo dañado, {0}: todo desde el mismo extremo</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>ancho de corte</translation>
  </message>
  <message>
   <source>kerf {0}</source>
   <translation>ancho de corte {0}</translation>
  </message>
  <message>
   <source>left</source>
   <translation>sobra</translation>
  </message>
  <message>
   <source>left edge in by {0} below, {1} above</source>
   <translation>borde izquierdo metido {0} abajo, {1} arriba</translation>
  </message>
  <message>
   <source>left larger on purpose, the other side smaller by that: {0}</source>
   <translation>dejado más grande a propósito, el otro lado más pequeño en lo mismo: {0}</translation>
  </message>
  <message>
   <source>left whole: {0}</source>
   <translation>queda entero: {0}</translation>
  </message>
  <message>
   <source>left whole: {0}, and {1} smaller</source>
   <translation>queda entero: {0}, y {1} menores</translation>
  </message>
  <message>
   <source>left: {0}</source>
   <translation>sobra: {0}</translation>
  </message>
  <message>
   <source>length</source>
   <translation>largo</translation>
  </message>
  <message>
   <source>length mm</source>
   <translation>largo mm</translation>
  </message>
  <message>
   <source>lengths</source>
   <translation>largos</translation>
  </message>
  <message>
   <source>lid</source>
   <translation>tapa</translation>
  </message>
  <message>
   <source>light</source>
   <translation>luz</translation>
  </message>
  <message>
   <source>limit</source>
   <translation>límite</translation>
  </message>
  <message>
   <source>limit {0}</source>
   <translation>límite {0}</translation>
  </message>
  <message>
   <source>load</source>
   <translation>transporte</translation>
  </message>
  <message>
   <source>lower edge in by {0} left, {1} right</source>
   <translation>borde inferior metido {0} a la izquierda, {1} a la derecha</translation>
  </message>
  <message>
   <source>lower face</source>
   <translation>cara inferior</translation>
  </message>
  <message>
   <source>lower face up</source>
   <translation>cara inferior arriba</translation>
  </message>
  <message>
   <source>machining</source>
   <translation>mecanizado</translation>
  </message>
  <message>
   <source>material</source>
   <translation>material</translation>
  </message>
  <message>
   <source>measured {0}</source>
   <translation>medido {0}</translation>
  </message>
  <message>
   <source>message</source>
   <translation>observación</translation>
  </message>
  <message>
   <source>moulding</source>
   <translation>moldura</translation>
  </message>
  <message>
   <source>mullion</source>
   <translation>montante central</translation>
  </message>
  <message>
   <source>name</source>
   <translation>nombre</translation>
  </message>
  <message>
   <source>near side of the bit from the near wall, mm</source>
   <translation>lado próximo de la fresa desde la pared próxima, mm</translation>
  </message>
  <message>
   <source>no bit chosen</source>
   <translation>ninguna fresa elegida</translation>
  </message>
  <message>
   <source>no choice costs less</source>
   <translation>ninguna elección cuesta menos</translation>
  </message>
  <message>
   <source>no choice takes less length; prices are lacking</source>
   <translation>ninguna elección lleva menos largo; faltan precios</translation>
  </message>
  <message>
   <source>no findings</source>
   <translation>ninguna observación</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>ningún plan compra menos</translation>
  </message>
  <message>
   <source>no.</source>
   <translation>n.º</translation>
  </message>
  <message>
   <source>none</source>
   <translation>ninguno</translation>
  </message>
  <message>
   <source>not planned yet: plan the cutting to know how many</source>
   <translation>aún sin planificar: planificar el corte para saber cuántos</translation>
  </message>
  <message>
   <source>notch at the end and front corner</source>
   <translation>muesca en la esquina final y delantera</translation>
  </message>
  <message>
   <source>notch at the end and rear corner</source>
   <translation>muesca en la esquina final y trasera</translation>
  </message>
  <message>
   <source>notch at the start and front corner</source>
   <translation>muesca en la esquina inicial y delantera</translation>
  </message>
  <message>
   <source>notch at the start and rear corner</source>
   <translation>muesca en la esquina inicial y trasera</translation>
  </message>
  <message>
   <source>note</source>
   <translation>nota</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nada</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>retal</translation>
  </message>
  <message>
   <source>offcut {0}</source>
   <translation>retal {0}</translation>
  </message>
  <message>
   <source>offcuts used</source>
   <translation>retales usados</translation>
  </message>
  <message>
   <source>others: {0} parts, see the bill</source>
   <translation>otros: {0} piezas, véase la lista</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>balda superior</translation>
  </message>
  <message>
   <source>pack of {0}</source>
   <translation>paquete de {0}</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>panel</translation>
  </message>
  <message>
   <source>paper</source>
   <translation>papel</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pieza</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>piezas</translation>
  </message>
  <message>
   <source>passes</source>
   <translation>pasadas</translation>
  </message>
  <message>
   <source>piece</source>
   <translation>pieza</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>piezas</translation>
  </message>
  <message>
   <source>plan, from above, without what lies over {0}; widths of bays are clear</source>
   <translation>planta, desde arriba, sin lo que queda por encima de {0}; los anchos de los huecos son medidas libres</translation>
  </message>
  <message>
   <source>plan, without what lies over {0}</source>
   <translation>planta, sin lo que queda por encima de {0}</translation>
  </message>
  <message>
   <source>pocket</source>
   <translation>taladro oblicuo</translation>
  </message>
  <message>
   <source>proved to be the cheapest of these sizes</source>
   <translation>probado como lo más barato con estos formatos</translation>
  </message>
  <message>
   <source>pull</source>
   <translation>tirador</translation>
  </message>
  <message>
   <source>pulled apart, parts and fittings before the carcasses</source>
   <translation>despiezado, piezas y equipamiento delante de los cuerpos</translation>
  </message>
  <message>
   <source>rabbet</source>
   <translation>rebaje</translation>
  </message>
  <message>
   <source>rabbet for {0}: {1}</source>
   <translation>rebaje para {0}: {1}</translation>
  </message>
  <message>
   <source>rail</source>
   <translation>travesaño</translation>
  </message>
  <message>
   <source>range</source>
   <translation>dispersión</translation>
  </message>
  <message>
   <source>rear aslant: {0}</source>
   <translation>borde trasero sesgado: {0}</translation>
  </message>
  <message>
   <source>rest mm</source>
   <translation>sobra mm</translation>
  </message>
  <message>
   <source>right edge in by {0} below, {1} above</source>
   <translation>borde derecho metido {0} abajo, {1} arriba</translation>
  </message>
  <message>
   <source>right through</source>
   <translation>pasante</translation>
  </message>
  <message>
   <source>rip</source>
   <translation>al hilo</translation>
  </message>
  <message>
   <source>rip to {0}</source>
   <translation>aserrar al hilo a {0}</translation>
  </message>
  <message>
   <source>ripped to {0}</source>
   <translation>aserrado al hilo a {0}</translation>
  </message>
  <message>
   <source>rod</source>
   <translation>barra de colgar</translation>
  </message>
  <message>
   <source>roll</source>
   <translation>rollo</translation>
  </message>
  <message>
   <source>room</source>
   <translation>sala</translation>
  </message>
  <message>
   <source>rough, off by up to {0}: measure the first strip before the next is cut</source>
   <translation>tosco, hasta {0} de error: medir la primera tira antes de cortar la siguiente</translation>
  </message>
  <message>
   <source>rule</source>
   <translation>regla</translation>
  </message>
  <message>
   <source>saw</source>
   <translation>sierra</translation>
  </message>
  <message>
   <source>sawn {0} wider to be scribed</source>
   <translation>aserrado {0} más ancho, para ajustar</translation>
  </message>
  <message>
   <source>scale</source>
   <translation>escala</translation>
  </message>
  <message>
   <source>section {0}–{0}</source>
   <translation>sección {0}–{0}</translation>
  </message>
  <message>
   <source>severity</source>
   <translation>gravedad</translation>
  </message>
  <message>
   <source>sheet</source>
   <translation>tablero</translation>
  </message>
  <message>
   <source>sheets</source>
   <translation>tableros</translation>
  </message>
  <message>
   <source>shim</source>
   <translation>calzo</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>balda para zapatos</translation>
  </message>
  <message>
   <source>side</source>
   <translation>lateral</translation>
  </message>
  <message>
   <source>size</source>
   <translation>formato</translation>
  </message>
  <message>
   <source>sizes</source>
   <translation>formatos</translation>
  </message>
  <message>
   <source>sizes in</source>
   <translation>medidas en</translation>
  </message>
  <message>
   <source>sound part of {0}, its corner at {1} and {2}</source>
   <translation>parte sana de {0}, su esquina en {1} y {2}</translation>
  </message>
  <message>
   <source>source</source>
   <translation>fuente</translation>
  </message>
  <message>
   <source>source: {0}</source>
   <translation>fuente: {0}</translation>
  </message>
  <message>
   <source>start aslant: {0}</source>
   <translation>inicio sesgado: {0}</translation>
  </message>
  <message>
   <source>stile</source>
   <translation>montante</translation>
  </message>
  <message>
   <source>stopped {0} from the end and squared with a chisel</source>
   <translation>parada a {0} del final y escuadrada con formón</translation>
  </message>
  <message>
   <source>stopped {0} from the front and squared with a chisel</source>
   <translation>parada a {0} del borde delantero y escuadrada con formón</translation>
  </message>
  <message>
   <source>stopped {0} from the rear and squared with a chisel</source>
   <translation>parada a {0} del borde trasero y escuadrada con formón</translation>
  </message>
  <message>
   <source>stopped {0} from the start and squared with a chisel</source>
   <translation>parada a {0} del inicio y escuadrada con formón</translation>
  </message>
  <message>
   <source>strip widths</source>
   <translation>anchos de tira</translation>
  </message>
  <message>
   <source>subject</source>
   <translation>objeto</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>toma de medidas</translation>
  </message>
  <message>
   <source>take home</source>
   <translation>llevar a casa</translation>
  </message>
  <message>
   <source>the bit is wider than the groove: take one of at most {0} mm</source>
   <translation>la fresa es más ancha que la ranura: tomar una de {0} mm como máximo</translation>
  </message>
  <message>
   <source>the bit stands over the rim</source>
   <translation>la fresa sobresale del borde</translation>
  </message>
  <message>
   <source>the carcasses alone</source>
   <translation>solo los cuerpos</translation>
  </message>
  <message>
   <source>the fewest possible</source>
   <translation>los mínimos posibles</translation>
  </message>
  <message>
   <source>the piece clamped; none of the saws can hold or reach it</source>
   <translation>la pieza sujeta; ninguna de las sierras puede sujetarla o alcanzarla</translation>
  </message>
  <message>
   <source>the room as measured, empty</source>
   <translation>la sala según medida, vacía</translation>
  </message>
  <message>
   <source>thickness</source>
   <translation>grueso</translation>
  </message>
  <message>
   <source>thickness mm</source>
   <translation>grueso mm</translation>
  </message>
  <message>
   <source>title</source>
   <translation>designación</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>tabla del zócalo</translation>
  </message>
  <message>
   <source>tongue</source>
   <translation>lengüeta</translation>
  </message>
  <message>
   <source>top</source>
   <translation>techo</translation>
  </message>
  <message>
   <source>total</source>
   <translation>total</translation>
  </message>
  <message>
   <source>under each name: a table [[survey.extra]] in the job file  ·  a line of the survey's ExtraReadings in FreeCAD, “Readings taken elsewhere” in its panel</source>
   <translation>bajo cada nombre: una tabla [[survey.extra]] del archivo de trabajo  ·  una línea de ExtraReadings de la medición en FreeCAD, «Lecturas tomadas en otros puntos» en su panel</translation>
  </message>
  <message>
   <source>under each name: key in the job file  ·  property of the survey in FreeCAD</source>
   <translation>bajo cada nombre: clave en el archivo de trabajo  ·  propiedad de la medición en FreeCAD</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>unidad</translation>
  </message>
  <message>
   <source>upper edge in by {0} left, {1} right</source>
   <translation>borde superior metido {0} a la izquierda, {1} a la derecha</translation>
  </message>
  <message>
   <source>upper face</source>
   <translation>cara superior</translation>
  </message>
  <message>
   <source>upper face up</source>
   <translation>cara superior arriba</translation>
  </message>
  <message>
   <source>used %</source>
   <translation>aprovechado %</translation>
  </message>
  <message>
   <source>value</source>
   <translation>valor</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>pared</translation>
  </message>
  <message>
   <source>waste</source>
   <translation>desperdicio</translation>
  </message>
  <message>
   <source>weight each kg</source>
   <translation>peso por pieza kg</translation>
  </message>
  <message>
   <source>weight kg</source>
   <translation>peso kg</translation>
  </message>
  <message>
   <source>weight of sheets, boards and bars; hardware and edge band not counted</source>
   <translation>peso de tableros, tablas y barras; herrajes y canto no contados</translation>
  </message>
  <message>
   <source>what</source>
   <translation>qué</translation>
  </message>
  <message>
   <source>what to do</source>
   <translation>qué hacer</translation>
  </message>
  <message>
   <source>width</source>
   <translation>ancho</translation>
  </message>
  <message>
   <source>width mm</source>
   <translation>ancho mm</translation>
  </message>
  <message>
   <source>without 1 line that no price is known for</source>
   <translation>sin 1 línea cuyo precio se desconoce</translation>
  </message>
  <message>
   <source>without {0} lines that no price is known for</source>
   <translation>sin {0} líneas cuyo precio se desconoce</translation>
  </message>
  <message>
   <source>work</source>
   <translation>trabajo</translation>
  </message>
  <message>
   <source>{0} (width x depth x height)</source>
   <translation>{0} (ancho x profundidad x altura)</translation>
  </message>
  <message>
   <source>{0} DANGERS: read this before anything is cut, carried or filled; {1}</source>
   <translation>{0} PELIGROS: léase antes de cortar, cargar o llenar nada; {1}</translation>
  </message>
  <message>
   <source>{0} above the lower face</source>
   <translation>a {0} de la cara inferior</translation>
  </message>
  <message>
   <source>{0} across</source>
   <translation>{0} de diámetro</translation>
  </message>
  <message>
   <source>{0} along the length, {1} along the width</source>
   <translation>{0} a lo largo, {1} a lo ancho</translation>
  </message>
  <message>
   <source>{0} at the end</source>
   <translation>{0} al final</translation>
  </message>
  <message>
   <source>{0} at the end for {1}</source>
   <translation>{0} al final para {1}</translation>
  </message>
  <message>
   <source>{0} at the front</source>
   <translation>{0} en el borde delantero</translation>
  </message>
  <message>
   <source>{0} at the front for {1}</source>
   <translation>{0} en el borde delantero para {1}</translation>
  </message>
  <message>
   <source>{0} at the rear</source>
   <translation>{0} en el borde trasero</translation>
  </message>
  <message>
   <source>{0} at the rear for {1}</source>
   <translation>{0} en el borde trasero para {1}</translation>
  </message>
  <message>
   <source>{0} at the start</source>
   <translation>{0} al inicio</translation>
  </message>
  <message>
   <source>{0} at the start for {1}</source>
   <translation>{0} al inicio para {1}</translation>
  </message>
  <message>
   <source>{0} at {1}</source>
   <translation>{0} a {1}</translation>
  </message>
  <message>
   <source>{0} by the plan, {1} to spare</source>
   <translation>{0} según el plan, {1} de reserva</translation>
  </message>
  <message>
   <source>{0} deep</source>
   <translation>{0} de profundidad</translation>
  </message>
  <message>
   <source>{0} for {1}</source>
   <translation>{0} para {1}</translation>
  </message>
  <message>
   <source>{0} from behind</source>
   <translation>{0}, por detrás</translation>
  </message>
  <message>
   <source>{0} from the end</source>
   <translation>a {0} del final</translation>
  </message>
  <message>
   <source>{0} from the front</source>
   <translation>a {0} del borde delantero</translation>
  </message>
  <message>
   <source>{0} from the rear</source>
   <translation>a {0} del borde trasero</translation>
  </message>
  <message>
   <source>{0} from the start</source>
   <translation>a {0} del inicio</translation>
  </message>
  <message>
   <source>{0} from the start and {1} from the front</source>
   <translation>a {0} del inicio y {1} del borde delantero</translation>
  </message>
  <message>
   <source>{0} holes</source>
   <translation>{0} taladros</translation>
  </message>
  <message>
   <source>{0} holes for {1}</source>
   <translation>{0} taladros para {1}</translation>
  </message>
  <message>
   <source>{0} in the end for {1}</source>
   <translation>{0} en el final para {1}</translation>
  </message>
  <message>
   <source>{0} in the front for {1}</source>
   <translation>{0} en el borde delantero para {1}</translation>
  </message>
  <message>
   <source>{0} in the rear for {1}</source>
   <translation>{0} en el borde trasero para {1}</translation>
  </message>
  <message>
   <source>{0} in the start for {1}</source>
   <translation>{0} en el inicio para {1}</translation>
  </message>
  <message>
   <source>{0} long</source>
   <translation>{0} de largo</translation>
  </message>
  <message>
   <source>{0} m of rims and {1} for waste</source>
   <translation>{0} m de bordes y {1} de desperdicio</translation>
  </message>
  <message>
   <source>{0} m of rims in {1} strips</source>
   <translation>{0} m de bordes en {1} tiras</translation>
  </message>
  <message>
   <source>{0} needed</source>
   <translation>{0} necesarios</translation>
  </message>
  <message>
   <source>{0} needed: {1}</source>
   <translation>{0} necesarios: {1}</translation>
  </message>
  <message>
   <source>{0} of sheets, boards and bars to bring home; spares, hardware and edge band not counted</source>
   <translation>{0} de tableros, tablas y barras que llevar a casa; repuestos, herrajes y canto no contados</translation>
  </message>
  <message>
   <source>{0} of {1}</source>
   <translation>{0} de {1}</translation>
  </message>
  <message>
   <source>{0} of {1}, yield {2}, {3}</source>
   <translation>{0} × {1}, aprovechamiento {2}, {3}</translation>
  </message>
  <message>
   <source>{0} off each end first</source>
   <translation>primero {0} en cada extremo</translation>
  </message>
  <message>
   <source>{0} parts, seen from the right, no perspective</source>
   <translation>{0} piezas, vistas desde la derecha, sin perspectiva</translation>
  </message>
  <message>
   <source>{0} pockets</source>
   <translation>{0} taladros oblicuos</translation>
  </message>
  <message>
   <source>{0} rest</source>
   <translation>{0} sobra</translation>
  </message>
  <message>
   <source>{0} sheets</source>
   <translation>{0} tableros</translation>
  </message>
  <message>
   <source>{0} to {1}</source>
   <translation>{0} a {1}</translation>
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation>{0} saneado {1}</translation>
  </message>
  <message>
   <source>{0} used</source>
   <translation>{0} aprovechado</translation>
  </message>
  <message>
   <source>{0} wide</source>
   <translation>{0} de ancho</translation>
  </message>
  <message>
   <source>{0} wide, {1} deep</source>
   <translation>{0} de ancho, {1} de profundidad</translation>
  </message>
  <message>
   <source>{0}, front at the left</source>
   <translation>{0}, frente a la izquierda</translation>
  </message>
  <message>
   <source>{0}, parts take {1} of {2} m²; parts lie as they are sawn, the machined face up</source>
   <translation>{0}, las piezas ocupan {1} de {2} m²; las piezas están como se sierran, la cara mecanizada arriba</translation>
  </message>
  <message>
   <source>{0}, rounded to {1}</source>
   <translation>{0}, redondeo a {1}</translation>
  </message>
  <message>
   <source>{0}, {1} of them at hand</source>
   <translation>{0}, {1} de ellos disponibles</translation>
  </message>
  <message>
   <source>{0}: 1 part</source>
   <translation>{0}: 1 pieza</translation>
  </message>
  <message>
   <source>{0}: crosscut to {1}</source>
   <translation>{0}: al través a {1}</translation>
  </message>
  <message>
   <source>{0}: rip to {1}</source>
   <translation>{0}: al hilo a {1}</translation>
  </message>
  <message>
   <source>{0}: {1}</source>
   <translation>{0}: {1}</translation>
  </message>
  <message>
   <source>{0}: {1} parts</source>
   <translation>{0}: {1} piezas</translation>
  </message>
  <message>
   <source>{0}: {1}, yield {2}, {3}</source>
   <translation>{0}: {1}, aprovechamiento {2}, {3}</translation>
  </message>
  <message>
   <source>{0}; {1} at the high level</source>
   <translation>{0}; {1} en el nivel alto</translation>
  </message>
  <message>
   <source>{1} of {0}</source>
   <translation>{1} × {0}</translation>
  </message>
  <message>
   <source>± Lean, from the low to the high level: + where the wall comes into the closet on its way up. Rise: + where the floor goes up on the way named.</source>
   <translation>± Desplome, del nivel bajo al alto: + donde la pared entra en el armario al subir. Subida: + donde el suelo sube en el trayecto indicado.</translation>
  </message>
  <message>
   <source>– {0} from below</source>
   <translation>– {0} desde abajo</translation>
  </message>
  <message>
   <source>– {0} from the left,</source>
   <translation>– {0} desde la izquierda,</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Pictures</name>
  <message>
   <source>Draw the closet from the front with sizes, from above, at an angle and pulled apart, and save the pictures into a folder</source>
   <translation>Dibujar el armario de frente con medidas, desde arriba, en ángulo y despiezado, y guardar las imágenes en una carpeta</translation>
  </message>
  <message>
   <source>Save pictures…</source>
   <translation>Guardar imágenes…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Porch</name>
  <message>
   <source>Example: the porch closet</source>
   <translation>Ejemplo: el armario del porche</translation>
  </message>
  <message>
   <source>Open an example in inches; its readings and sizes are invented</source>
   <translation>Abrir un ejemplo en pulgadas; sus lecturas y medidas son inventadas</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Rods</name>
  <message>
   <source>A hanging rod, or two, in one compartment</source>
   <translation>Una barra, o dos, en un compartimento</translation>
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation>Barra…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Said</name>
  <message>
   <source> ({0} alike)</source>
   <translation> ({0} iguales)</translation>
  </message>
  <message>
   <source> and may break in time</source>
   <translation> y puede romperse con el tiempo</translation>
  </message>
  <message>
   <source> and {0} in the middle</source>
   <translation> y {0} en el centro</translation>
  </message>
  <message>
   <source> of the {0} wall</source>
   <translation> de la pared {0}</translation>
  </message>
  <message>
   <source> of {0} x {1}</source>
   <translation> de {0} x {1}</translation>
  </message>
  <message>
   <source> offcut {0}</source>
   <translation> retal {0}</translation>
  </message>
  <message>
   <source> to the {0}</source>
   <translation> a {0}</translation>
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
   <translation>(0: atraviesa el canto)</translation>
  </message>
  <message>
   <source>+ into the closet on its way up</source>
   <translation>+ hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>+ inward</source>
   <translation>+ hacia dentro</translation>
  </message>
  <message>
   <source>+ where it rises</source>
   <translation>+ donde sube</translation>
  </message>
  <message>
   <source>, as do {0} others</source>
   <translation>, igual que otros {0}</translation>
  </message>
  <message>
   <source>, for which a weak board is not strong enough</source>
   <translation>, para lo que una tabla floja no es lo bastante resistente</translation>
  </message>
  <message>
   <source>, for which it is too soft</source>
   <translation>, para lo que es demasiado blando</translation>
  </message>
  <message>
   <source>, grain {0}</source>
   <translation>, veta {0}</translation>
  </message>
  <message>
   <source>, its lip glued and screwed on</source>
   <translation>, con su refuerzo frontal encolado y atornillado</translation>
  </message>
  <message>
   <source>, or a reading is wrong: {0}</source>
   <translation>, o hay una lectura errónea: {0}</translation>
  </message>
  <message>
   <source>, pines</source>
   <translation>, pinos</translation>
  </message>
  <message>
   <source>, wherever the studs are: survey the first</source>
   <translation>, dondequiera que estén los montantes: medir primero</translation>
  </message>
  <message>
   <source>, which pulls its screws out</source>
   <translation>, lo que arranca sus tornillos</translation>
  </message>
  <message>
   <source>1 divider to carry it</source>
   <translation>1 divisoria para sostenerla</translation>
  </message>
  <message>
   <source>1 opening is</source>
   <translation>1 abertura es</translation>
  </message>
  <message>
   <source>1 part weighs</source>
   <translation>1 pieza pesa</translation>
  </message>
  <message>
   <source>1 strip</source>
   <translation>1 tira</translation>
  </message>
  <message>
   <source>16 CFR 1213, bunk beds, taken as a guide: nothing is published for closets</source>
   <translation>16 CFR 1213, literas, tomado como guía: no hay nada publicado para armarios empotrados</translation>
  </message>
  <message>
   <source>2 or more, or none for no limit</source>
   <translation>2 o más, o nada para no limitar</translation>
  </message>
  <message>
   <source>2010 ADA Standards 308.2.1 and 308.3.1; homes are not bound by them</source>
   <translation>2010 ADA Standards 308.2.1 y 308.3.1; no son obligatorias para viviendas</translation>
  </message>
  <message>
   <source>2010 ADA Standards, advisory 308.1, children's reach ranges</source>
   <translation>2010 ADA Standards, advisory 308.1, alcances de niños</translation>
  </message>
  <message>
   <source>300 lb a person: International Residential Code Table R301.5 note c, stair treads; no standard for built-in benches was found</source>
   <translation>300 lb por persona: International Residential Code Table R301.5 note c, peldaños de escalera; no se encontró norma para bancos empotrados</translation>
  </message>
  <message>
   <source>: the kerf takes the next one</source>
   <translation>: el ancho de corte se lleva el siguiente</translation>
  </message>
  <message>
   <source>; a screw {0} thick and {1} deep in the face of its own board may hold {2} ({3})</source>
   <translation>; un tornillo de {0} de grueso y {1} de profundidad en la cara de su propia tabla puede aguantar {2} ({3})</translation>
  </message>
  <message>
   <source>; a thicker bottom, or a batten under its middle</source>
   <translation>; un fondo más grueso, o un listón bajo su centro</translation>
  </message>
  <message>
   <source>; each of its {0} pins carries {1}: the pins are not checked ({2})</source>
   <translation>; cada uno de sus {0} soportes carga {1}: los soportes no se comprueban ({2})</translation>
  </message>
  <message>
   <source>; if its ends could not turn at all, {0}</source>
   <translation>; si sus extremos no pudieran girar nada, {0}</translation>
  </message>
  <message>
   <source>; measure the {0} next</source>
   <translation>; medir a continuación: {0}</translation>
  </message>
  <message>
   <source>; positive where it leans into the closet on its way up</source>
   <translation>; positivo si se inclina hacia dentro del armario al subir</translation>
  </message>
  <message>
   <source>; sag as you entered it</source>
   <translation>; flecha según lo introducido</translation>
  </message>
  <message>
   <source>; take the {0} as well</source>
   <translation>; tomar también: {0}</translation>
  </message>
  <message>
   <source>; the anchors must hold {0}</source>
   <translation>; los anclajes deben aguantar {0}</translation>
  </message>
  <message>
   <source>; the heaviest that it is sold as weighs {0}</source>
   <translation>; lo más pesado que se vende pesa {0}</translation>
  </message>
  <message>
   <source>; the softest boards published would not pass</source>
   <translation>; las tablas más blandas publicadas no cumplirían</translation>
  </message>
  <message>
   <source>; whether the heads pull through this board is not published</source>
   <translation>; no está publicado si las cabezas atraviesan esta tabla</translation>
  </message>
  <message>
   <source>; {0} strips then need {1} sheets, not {2}</source>
   <translation>; {0} tiras necesitan entonces {1} tableros, no {2}</translation>
  </message>
  <message>
   <source>; {0} would sag </source>
   <translation>; {0} flectaría: </translation>
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation>Hay sierra circular con regla guía en casa</translation>
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation>La profundidad por fracción se redondea hacia abajo a un múltiplo de este valor</translation>
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation>Hay sierra de mesa en casa</translation>
  </message>
  <message>
   <source>ANSI A208.1 class M</source>
   <translation>ANSI A208.1 class M</translation>
  </message>
  <message>
   <source>APA Panel Design Specification: 16 % moisture or more, 0.85 stiffness, 0.75 strength</source>
   <translation>APA Panel Design Specification: 16 % de humedad o más, rigidez 0.85, resistencia 0.75</translation>
  </message>
  <message>
   <source>ASTM D245 as NDS uses it: 2.1 times the 875 psi x 1.1 that spruce-pine-fir No. 2 may carry laid flat (875 psi and 1.1 quoted; 2.1 from memory)</source>
   <translation>ASTM D245 como la usa NDS: 2.1 veces los 875 psi x 1.1 que puede soportar en plano spruce-pine-fir No. 2 (875 psi y 1.1 citados; 2.1 de memoria)</translation>
  </message>
  <message>
   <source>ASTM F2057-23 as 16 CFR 1261 (test figures from memory)</source>
   <translation>ASTM F2057-23 como 16 CFR 1261 (datos de ensayo de memoria)</translation>
  </message>
  <message>
   <source>ASTM F963 4.27: no drop of more than 1/2 in (12 mm) from 2 in above closed to 60° (from memory); CPSC: 21 deaths 1973 to 1981</source>
   <translation>ASTM F963 4.27: ninguna caída de más de 1/2 in (12 mm) desde 2 in sobre el cierre hasta 60° (de memoria); CPSC: 21 muertes de 1973 a 1981</translation>
  </message>
  <message>
   <source>ASTM F963 4.27: two openings, 2 in² together, 6 in apart, opened with 10 lbf (from memory, to be checked); ASTM F2598: from 1.1 ft³</source>
   <translation>ASTM F963 4.27: dos aberturas, 2 in² en total, separadas 6 in, abierta con 10 lbf (de memoria, por comprobar); ASTM F2598: desde 1.1 ft³</translation>
  </message>
  <message>
   <source>AWS 2009 takes shelf rests of ANSI/BHMA A156.9 grade 1; ask the maker for the load</source>
   <translation>AWS 2009 usa soportes de balda según ANSI/BHMA A156.9 grade 1; preguntar la carga al fabricante</translation>
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation>Clase de precisión de la cinta</translation>
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation>Otro número puede dar otro plan</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.21</source>
   <translation>Architectural Woodwork Standards, edición 1 (2009), 1.2.21</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.9</source>
   <translation>Architectural Woodwork Standards, edición 1 (2009), 1.2.9</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.16</source>
   <translation>Architectural Woodwork Standards, edición 1 (2009), 4.4.16</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.18</source>
   <translation>Architectural Woodwork Standards, edición 1 (2009), 4.4.18</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.4.5</source>
   <translation>Architectural Woodwork Standards, edición 1 (2009), 4.4.4.5</translation>
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details</source>
   <translation>Architectural Woodwork Standards, edición 1 (2009), detalles de pared a pared</translation>
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation>Superficie de las piezas entre la de los tableros, en porcentaje</translation>
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation>Superficie de los rectangulares, en m²</translation>
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation>Huecos para los que había objetos</translation>
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation>Tablas y perfiles que se cortan a medida de largo</translation>
  </message>
  <message>
   <source>CPSC advice on tip-over</source>
   <translation>Consejos de CPSC sobre el vuelco</translation>
  </message>
  <message>
   <source>CSV</source>
   <translation>CSV</translation>
  </message>
  <message>
   <source>Class of this object in the workbench</source>
   <translation>Clase de este objeto en el entorno</translation>
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation>Ancho libre; 0 reparte lo restante con los demás huecos iguales</translation>
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation>Columnas que ocupa la lista</translation>
  </message>
  <message>
   <source>Component and name</source>
   <translation>Componente y nombre</translation>
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation>Cortado de un panel conservado de un mueble existente</translation>
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation>Cortes por tablero que hace la tienda; 0: sin límite</translation>
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation>Ranura más profunda admitida, como fracción del grueso</translation>
  </message>
  <message>
   <source>Degrees to which the closet's own door opens</source>
   <translation>Grados hasta los que abre la puerta propia del armario</translation>
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation>Profundidad de un taladro ciego</translation>
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation>Profundidad de una ranura como fracción del grueso del panel</translation>
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation>Profundidad de todas las ranuras; 0: por la fracción</translation>
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation>Profundidad de un espacio útil de medidas dadas</translation>
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation>Profundidad de las ranuras; 0: según regla</translation>
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation>Profundidad de la mayor caja a plomo y a nivel que cabe</translation>
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation>Diámetro de los taladros para soportes de balda</translation>
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation>Diámetro de la fresa disponible; 0: no indicado</translation>
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation>Dirección de los primeros cortes en un tablero entero</translation>
  </message>
  <message>
   <source>E of metal hardly scatters</source>
   <translation>E de los metales apenas varía</translation>
  </message>
  <message>
   <source>EN 14322 (from memory)</source>
   <translation>EN 14322 (de memoria)</translation>
  </message>
  <message>
   <source>EN 1995-1-1 Tables 2.3 and 3.1 (quoted)</source>
   <translation>EN 1995-1-1 Tables 2.3 and 3.1 (citado)</translation>
  </message>
  <message>
   <source>EN 1995-1-1 service class 1; EN 312, EN 622: boards for dry conditions</source>
   <translation>EN 1995-1-1 clase de servicio 1; EN 312, EN 622: tableros para ambiente seco</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 13 to 20 mm</source>
   <translation>EN 312 tipo P2, más de 13 hasta 20 mm</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 20 to 25 mm (from memory)</source>
   <translation>EN 312 tipo P2, más de 20 a 25 mm (de memoria)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 25 to 32 mm (from memory)</source>
   <translation>EN 312 tipo P2, más de 25 a 32 mm (de memoria)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 32 to 40 mm (from memory)</source>
   <translation>EN 312 tipo P2, más de 32 a 40 mm (de memoria)</translation>
  </message>
  <message>
   <source>EN 312 type P2, over 40 mm (from memory)</source>
   <translation>EN 312 tipo P2, más de 40 mm (de memoria)</translation>
  </message>
  <message>
   <source>EN 312, EN 622: boards for use in dry conditions</source>
   <translation>EN 312, EN 622: tableros para uso en ambiente seco</translation>
  </message>
  <message>
   <source>EN 336 class 2, and PS 20-20 for green lumber</source>
   <translation>EN 336 clase 2, y PS 20-20 para madera verde</translation>
  </message>
  <message>
   <source>EN 622-1, MDF (from memory)</source>
   <translation>EN 622-1, MDF (de memoria)</translation>
  </message>
  <message>
   <source>EN 622-1, hardboard (from memory)</source>
   <translation>EN 622-1, tablero de fibras duro (de memoria)</translation>
  </message>
  <message>
   <source>EN 622-5, over 12 to 19 mm</source>
   <translation>EN 622-5, más de 12 hasta 19 mm</translation>
  </message>
  <message>
   <source>EN 622-5, over 19 to 30 mm (from memory)</source>
   <translation>EN 622-5, más de 19 a 30 mm (de memoria)</translation>
  </message>
  <message>
   <source>EN 622-5, over 30 to 45 mm (from memory)</source>
   <translation>EN 622-5, más de 30 a 45 mm (de memoria)</translation>
  </message>
  <message>
   <source>EN 622-5, over 45 mm (from memory)</source>
   <translation>EN 622-5, más de 45 mm (de memoria)</translation>
  </message>
  <message>
   <source>EPA 40 CFR 745 (renovation, repair and painting); 16 CFR 1303</source>
   <translation>EPA 40 CFR 745 (reforma, reparación y pintura); 16 CFR 1303</translation>
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation>Canto que se compra de más sobre el largo de los bordes, como fracción</translation>
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation>Canto de los bordes frontales de las baldas, o de sus refuerzos: auto como el del cuerpo, vacío para ninguno, o una clave del catálogo</translation>
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Canto de los bordes frontales visibles: auto para el propio del material, vacío para ninguno, o una clave del catálogo</translation>
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation>Canto: auto para el propio del material, vacío para ninguno, o una clave del catálogo</translation>
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation>Error del nivel o la plomada en un metro</translation>
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation>Archivo con materiales y precios propios; vacío: solo los incluidos</translation>
  </message>
  <message>
   <source>Findings about it</source>
   <translation>Dudas al respecto</translation>
  </message>
  <message>
   <source>Findings about the design</source>
   <translation>Dudas sobre el diseño</translation>
  </message>
  <message>
   <source>Findings about the readings</source>
   <translation>Dudas sobre las lecturas</translation>
  </message>
  <message>
   <source>Finished length</source>
   <translation>Largo acabado</translation>
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation>Largo acabado, cantos incluidos</translation>
  </message>
  <message>
   <source>Finished width</source>
   <translation>Ancho acabado</translation>
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation>Ancho acabado, cantos incluidos</translation>
  </message>
  <message>
   <source>FreeCAD wrote only part of it</source>
   <translation>FreeCAD solo escribió una parte</translation>
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation>De un panel fijo al taladro más próximo</translation>
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation>De pared próxima a pared próxima</translation>
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation>De un taladro al siguiente</translation>
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation>De ese borde a la pared más próxima de la primera ranura</translation>
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation>Del frente del cuerpo al frente del zócalo</translation>
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation>Del borde frontal a la fila delantera</translation>
  </message>
  <message>
   <source>From the left</source>
   <translation>Desde la izquierda</translation>
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation>De los bordes traseros a la cara posterior de la trasera</translation>
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation>Las ranuras se detienen antes de un borde frontal con canto y atraviesan uno sin él</translation>
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation>Ranuras, taladros y muescas en palabras</translation>
  </message>
  <message>
   <source>Height above the floor of the {0} readings</source>
   <translation>Altura sobre el suelo de las lecturas {0}</translation>
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation>Altura de un listón de apoyo</translation>
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation>Altura de una tira ante cada balda; 0: ninguna</translation>
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation>Altura de un espacio útil de medidas dadas</translation>
  </message>
  <message>
   <source>Height of the base</source>
   <translation>Altura del zócalo</translation>
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation>Altura de la mayor caja a plomo y a nivel que cabe</translation>
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation>Profundidad máxima del espacio útil; 0: la de la sala</translation>
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation>Cuánto queda una balda suelta por detrás de los bordes frontales</translation>
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation>Cuánto se queda corto un panel del fondo de su ranura</translation>
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation>Cuánto quedan las ranuras por detrás del borde frontal; 0 las pasa de lado a lado</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation>Cuánto se apartan las ranuras de la parte delantera o del inicio</translation>
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation>Cuánto se apartan las ranuras de la parte trasera o del final</translation>
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation>Probabilidad de que se cumplan los márgenes libres, según las lecturas</translation>
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation>Cuánto tiempo buscar después menos cortes, por material</translation>
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation>Cuánto tiempo buscar menos tableros, por material</translation>
  </message>
  <message>
   <source>How many there are</source>
   <translation>Cuántos hay</translation>
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation>Cuántas veces puede cambiar de dirección el corte, contando la primera; 0: sin límite</translation>
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation>Cuánto más corta que su hueco es una balda suelta</translation>
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation>Cuánto más ancha es una ranura que el panel que entra en ella</translation>
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation>Cuántas veces se trazó el plan</translation>
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation>Cómo escriben los textos las longitudes</translation>
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation>Cómo se unen techo y suelo a los laterales</translation>
  </message>
  <message>
   <source>International Residential Code R602: 16 or 24 in from centre to centre</source>
   <translation>International Residential Code R602: 16 o 24 in entre ejes</translation>
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation>Sus huecos de izquierda a derecha</translation>
  </message>
  <message>
   <source>JSON</source>
   <translation>JSON</translation>
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation>Clave de su tabla en el catálogo</translation>
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation>Clave de las tablas de la trasera; vacío: según regla</translation>
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation>Clave de las tablas del zócalo; vacío: como el cuerpo</translation>
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation>Clave de la tabla en el catálogo</translation>
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation>Clave de las tablas en el catálogo</translation>
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation>Clave de las tablas que entran en las ranuras; vacío: la misma</translation>
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation>Clave de la clase de perfil en el catálogo</translation>
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation>Clave de las tablas de las tiras; vacío: como el cuerpo</translation>
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation>LED o fluorescente homologada para el interior de armarios</translation>
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation>Distancia mínima del borde trasero a la fila trasera</translation>
  </message>
  <message>
   <source>Least gap to keep at the {0}</source>
   <translation>Holgura mínima que mantener en: {0}</translation>
  </message>
  <message>
   <source>Left end at</source>
   <translation>Extremo izquierdo a</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation>Distancia de su lado izquierdo a la izquierda del espacio útil</translation>
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation>Distancia de su lado izquierdo a la izquierda del espacio útil, según lo construido</translation>
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation>Largo que cortar del perfil</translation>
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation>Largo de aserrado, sin los cantos</translation>
  </message>
  <message>
   <source>MDF: ANSI A208.2 least screw holding (from memory)</source>
   <translation>MDF: ANSI A208.2 agarre mínimo de tornillos (de memoria)</translation>
  </message>
  <message>
   <source>NDS 12.2.2: 2850·G²·D lb per inch of thread, not in end grain</source>
   <translation>NDS 12.2.2: 2850·G²·D lb por pulgada de rosca, no en testa</translation>
  </message>
  <message>
   <source>NDS 12.2.3: 1380·G^2.5·D lb per inch (quoted), not in end grain</source>
   <translation>NDS 12.2.3: 1380·G^2.5·D lb por pulgada (citado), no en testa</translation>
  </message>
  <message>
   <source>NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi quoted, 135 psi from memory)</source>
   <translation>NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi citado, 135 psi de memoria)</translation>
  </message>
  <message>
   <source>NEC 300.4(A)(1): cables may lie 1-1/4 in (32 mm) behind a stud's face (quoted)</source>
   <translation>NEC 300.4(A)(1): puede haber cables a 1-1/4 in (32 mm) tras la cara de un montante (citado)</translation>
  </message>
  <message>
   <source>NEC 314.29 (quoted) and 240.24(D)</source>
   <translation>NEC 314.29 (citado) y 240.24(D)</translation>
  </message>
  <message>
   <source>NEC 410.16 and the closet storage space of NEC 410.2: 600 mm from sides and back up to 1.8 m or the highest rod, 300 mm or the shelf's depth above</source>
   <translation>NEC 410.16 y el espacio de almacenaje de armarios de NEC 410.2: 600 mm desde los lados y el fondo hasta 1.8 m o la barra más alta; por encima, 300 mm o la profundidad de la balda</translation>
  </message>
  <message>
   <source>NEC 410.16(B)</source>
   <translation>NEC 410.16(B)</translation>
  </message>
  <message>
   <source>NIOSH 94-110, hands {0} ahead, {1} up, poor grip</source>
   <translation>NIOSH 94-110, manos {0} al frente, {1} de altura, mal agarre</translation>
  </message>
  <message>
   <source>NIOSH 94-110, load constant; size: common practice, no published source</source>
   <translation>NIOSH 94-110, constante de carga; tamaño: práctica habitual, sin fuente publicada</translation>
  </message>
  <message>
   <source>NIOSH 94-110, load constant; team lifting: HSE L23 (quoted)</source>
   <translation>NIOSH 94-110, constante de carga; levantamiento en equipo: HSE L23 (citado)</translation>
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation>Nombre de la pieza dentro de su componente</translation>
  </message>
  <message>
   <source>Number of adjustable shelves, loose on pins</source>
   <translation>Número de baldas sueltas sobre soportes</translation>
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation>Número de huecos, cada uno un objeto propio</translation>
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation>Número de baldas fijas</translation>
  </message>
  <message>
   <source>Number of grooves</source>
   <translation>Número de ranuras</translation>
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation>Número de piezas que se cortan de tablas</translation>
  </message>
  <message>
   <source>OSHA 29 CFR 1910.213</source>
   <translation>OSHA 29 CFR 1910.213</translation>
  </message>
  <message>
   <source>OUT OF DATE: the closet has changed since; make the page again</source>
   <translation>ANTICUADA: el armario ha cambiado después; volver a hacer la página</translation>
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation>Retales disponibles</translation>
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation>Un tablero de reserva por cada tantos de un material; 0: ninguno</translation>
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation>Profundidad exterior según lo construido</translation>
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation>Profundidad exterior; 0: la del espacio útil</translation>
  </message>
  <message>
   <source>Outer diameter</source>
   <translation>Diámetro exterior</translation>
  </message>
  <message>
   <source>Outer height as built</source>
   <translation>Altura exterior según lo construido</translation>
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation>Altura exterior, zócalo incluido; 0: la del espacio útil</translation>
  </message>
  <message>
   <source>Outer width as built</source>
   <translation>Ancho exterior según lo construido</translation>
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation>Ancho exterior; 0: lo que deja el espacio útil</translation>
  </message>
  <message>
   <source>PS 1-19, unsanded, and EN 315, sanded</source>
   <translation>PS 1-19, sin lijar, y EN 315, lijado</translation>
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation>Se movieron piezas a mano después de hacer el plan</translation>
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation>Lugar entre las piezas de su componente</translation>
  </message>
  <message>
   <source>Plan which sheets to take for a list of parts, and how to cut them.</source>
   <translation>Planificar qué tableros tomar para una lista de piezas y cómo cortarlos.</translation>
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation>Lecturas tomadas en otros puntos, como las escribe el formulario de la medición</translation>
  </message>
  <message>
   <source>Right end at</source>
   <translation>Extremo derecho a</translation>
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation>Bordes con canto, y cuál</translation>
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation>Filas que ocupa la lista</translation>
  </message>
  <message>
   <source>STEP file</source>
   <translation>Archivo STEP</translation>
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation>Sierras en lugar de todas estas, un texto JSON cada una</translation>
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation>Activar para volver a planificar en el próximo recálculo</translation>
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation>Activar para volver a escribir la lista en el próximo recálculo</translation>
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation>Tableros de un material hasta los que no se reserva ninguno</translation>
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation>Tableros por cortar</translation>
  </message>
  <message>
   <source>Shelf pins</source>
   <translation>Soportes de balda</translation>
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation>Va al fondo de un espacio útil más profundo; si no, a su frente</translation>
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation>Va junto al cuerpo anterior; si no, en X</translation>
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation>Suma de lo que tiene precio, en la moneda del catálogo</translation>
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation>Se quita de cada borde de un tablero antes de cortar ninguna pieza</translation>
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation>El hueco en el que está; vacío: por su número</translation>
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation>La lista cuyas líneas contienen las celdas</translation>
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation>La lista, cada línea con valores separados por comas</translation>
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation>La moneda del catálogo</translation>
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation>El armario del que se deduce</translation>
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation>El armario al que corresponde la lista</translation>
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation>El armario cuyas piezas se cortan</translation>
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation>El componente al que pertenece</translation>
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation>El plano de corte cuyos tableros se compran; ninguno: aún sin planificar</translation>
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation>El diseño, el plano de corte o el catálogo ha cambiado después</translation>
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation>El suelo del espacio útil sobre la esquina delantera izquierda de la sala</translation>
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation>La cara frontal del espacio útil desde la esquina delantera izquierda de la sala</translation>
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation>La cara izquierda del espacio útil desde la esquina delantera izquierda de la sala</translation>
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation>La cara en la que están las ranuras</translation>
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation>El último archivo del que se leyeron, ninguno si está vacío</translation>
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation>Distancia del frente al frente del espacio útil, según lo construido</translation>
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation>Los retales disponibles, un texto JSON cada uno</translation>
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation>Los retales disponibles; ninguno: todo se compra</translation>
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation>Las piezas, el catálogo o los ajustes han cambiado después</translation>
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation>El plan de tablas y perfiles, como datos</translation>
  </message>
  <message>
   <source>The plan, as data</source>
   <translation>El plan, como datos</translation>
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation>El borde desde el que se miden las ranuras</translation>
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation>El paso con que se leyó la cinta</translation>
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation>La medición en cuyo espacio útil está</translation>
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation>Las formas de comprar que se compararon, como datos</translation>
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation>Grueso medido; si no, el de venta</translation>
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation>Grueso medido en mm, por clave del material</translation>
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation>Grueso de la pared de un tubo; 0: macizo</translation>
  </message>
  <message>
   <source>Time-Saver Standards; double hang: common practice, no published source</source>
   <translation>Time-Saver Standards; doble barra: práctica habitual, sin fuente publicada</translation>
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation>Sanear cada tablero según Saneado, no como dice el catálogo</translation>
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation>Cara inferior de cada balda fija sobre el suelo del hueco en mm; ninguna: espacios iguales</translation>
  </message>
  <message>
   <source>Version of this object's properties</source>
   <translation>Versión de las propiedades de este objeto</translation>
  </message>
  <message>
   <source>W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping</source>
   <translation>W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping</translation>
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation>Peso en kg; 0: no conocido</translation>
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation>Peso de todas las piezas en kg</translation>
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation>Peso de la pieza acabada en kg</translation>
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation>Qué soporta las baldas fijas</translation>
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation>Qué cierra o arriostra el cuerpo por detrás</translation>
  </message>
  <message>
   <source>What closes the opening</source>
   <translation>Lo que cierra el hueco de entrada</translation>
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation>Lo que lo precede en el orden del armario</translation>
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation>Lo que se sabe del lugar y de las personas, como lo escribe su formulario</translation>
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation>Dentro o delante de qué está</translation>
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation>Lo que debe quedar entre ranuras espalda con espalda, como fracción del grueso</translation>
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation>Lo que debe quedar libre, como lo escribe el formulario de la medición</translation>
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation>Lo que debe quedar bajo un taladro ciego</translation>
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation>Qué medida del espacio útil se maximiza</translation>
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation>A qué se redondean las longitudes en los textos, en mm con estilos métricos; si no, en pulgadas</translation>
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation>Para qué se escribió la lista</translation>
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation>Sobre qué apoya el cuerpo</translation>
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation>Con qué se llenaron las celdas</translation>
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation>De qué se deduce el espacio útil: de las lecturas o de las medidas dadas</translation>
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation>Lo que es la pieza en el armario</translation>
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation>Para qué se hizo el plan</translation>
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation>De qué se hizo la forma</translation>
  </message>
  <message>
   <source>What the store saws</source>
   <translation>Lo que corta la tienda</translation>
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation>Dónde están encabezados y nombres</translation>
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation>Hacia dónde va la veta</translation>
  </message>
  <message>
   <source>Where the top lies</source>
   <translation>Dónde queda el techo</translation>
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation>Si algo que hay que comprar no tiene precio</translation>
  </message>
  <message>
   <source>Whether the {0} was read</source>
   <translation>Si se leyó: {0}</translation>
  </message>
  <message>
   <source>Whether {0} is left to the rule</source>
   <translation>Si {0} se deja a la regla</translation>
  </message>
  <message>
   <source>Who cuts</source>
   <translation>Quién corta</translation>
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation>Mayor distancia libre entre traviesas</translation>
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation>Ancho de un espacio útil de medidas dadas</translation>
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation>Ancho de la mayor caja a plomo y a nivel que cabe</translation>
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation>Ancho del corte de la sierra</translation>
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation>Ancho de aserrado, sin los cantos</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 Table 5-6: coefficient of variation of E 22 % (from memory)</source>
   <translation>Wood Handbook FPL-GTR-190 Table 5-6: coeficiente de variación de E 22 % (de memoria)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 chapter 8 (from memory)</source>
   <translation>Wood Handbook FPL-GTR-190 chapter 8 (de memoria)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 eq. 13-2 and Table 13-5 (pine, from memory); moisture: common practice</source>
   <translation>Wood Handbook FPL-GTR-190 eq. 13-2 and Table 13-5 (pino, de memoria); humedad: práctica habitual</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190, eq. 9-2 and Table 9-1</source>
   <translation>Wood Handbook FPL-GTR-190, eq. 9-2 and Table 9-1</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1 (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1 (de memoria)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, MDF</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, MDF</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, tablero de fibras duro (de memoria)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard, low end (from memory)</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, tablero de fibras duro, extremo inferior (de memoria)</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, particleboard</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, tablero de partículas</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, contrachapado</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood, low end</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1, contrachapado, extremo inferior</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1; birch mill sheets</source>
   <translation>Wood Handbook FPL-GTR-282 Table 12-1; hojas de fabricantes de abedul</translation>
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 5-3b, softwoods</source>
   <translation>Wood Handbook FPL-GTR-282 Table 5-3b, coníferas</translation>
  </message>
  <message>
   <source>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</source>
   <translation>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</translation>
  </message>
  <message>
   <source>a board's price is for one size</source>
   <translation>el precio de una tabla vale para una sola medida</translation>
  </message>
  <message>
   <source>a cheaper plan may exist</source>
   <translation>puede haber un plan más barato</translation>
  </message>
  <message>
   <source>a child of {0} years reaches {1} of {2} shelves and rods</source>
   <translation>un niño de {0} años alcanza {1} de {2} baldas y barras</translation>
  </message>
  <message>
   <source>a child shut in gets no air: two openings that no wall, floor or contents can cover, and a lid that opens from inside, with no latch; {0}</source>
   <translation>un niño encerrado no recibe aire: dos aberturas que ninguna pared, suelo ni contenido pueda tapar, y una tapa que se abra desde dentro, sin pestillo; {0}</translation>
  </message>
  <message>
   <source>a cleat glued and screwed under the rear edge</source>
   <translation>un listón encolado y atornillado bajo el borde trasero</translation>
  </message>
  <message>
   <source>a corner at {0}, {1} mm</source>
   <translation>una esquina en {0}, {1} mm</translation>
  </message>
  <message>
   <source>a file with prices must state theirs</source>
   <translation>un archivo con precios debe indicar su moneda</translation>
  </message>
  <message>
   <source>a fraction follows whole inches or feet only; {0}</source>
   <translation>una fracción solo puede seguir a pulgadas o pies enteros; {0}</translation>
  </message>
  <message>
   <source>a fraction has one number above and one below the slash; {0}</source>
   <translation>una fracción tiene un número encima y otro debajo de la barra; {0}</translation>
  </message>
  <message>
   <source>a fraction is read in inches or feet, not in {0}; mark it as inches (72 5/16") or type a decimal (1832.5 mm)</source>
   <translation>una fracción se lee en pulgadas o pies, no en {0}; marcarla como pulgadas (72 5/16") o escribir un decimal (1832.5 mm)</translation>
  </message>
  <message>
   <source>a front lip</source>
   <translation>un refuerzo frontal</translation>
  </message>
  <message>
   <source>a joint between two of its pieces lies over no upright: put a batten under it, or make it in other pieces</source>
   <translation>una junta entre dos de sus trozos no cae sobre ningún apoyo vertical: poner un listón debajo, o hacerla en otros trozos</translation>
  </message>
  <message>
   <source>a length of a bar has no width: give where it starts and ends</source>
   <translation>un trozo de barra no tiene ancho: indicar dónde empieza y termina</translation>
  </message>
  <message>
   <source>a lighter or narrower leaf, hinges further apart, or longer screws into a doubled side; screws in a board near its edge need pilot holes</source>
   <translation>una hoja más ligera o estrecha, bisagras más separadas, o tornillos más largos en un lateral doblado; los tornillos cerca del borde de una tabla necesitan pretaladro</translation>
  </message>
  <message>
   <source>a new entry must state it; {0}</source>
   <translation>una entrada nueva debe indicarlo; {0}</translation>
  </message>
  <message>
   <source>a pair, hinged at both sides</source>
   <translation>un par, con bisagras a ambos lados</translation>
  </message>
  <message>
   <source>a price must be 0 or more</source>
   <translation>un precio debe ser 0 o más</translation>
  </message>
  <message>
   <source>a rail more under it, a thicker top, or its grain from rail to rail</source>
   <translation>un travesaño más debajo, una tapa más gruesa, o su veta de travesaño a travesaño</translation>
  </message>
  <message>
   <source>a strip from cleat to cleat: lower bound theorem of plates; Wood Handbook Table 9-1</source>
   <translation>una tira de listón a listón: teorema del límite inferior de placas; Wood Handbook Table 9-1</translation>
  </message>
  <message>
   <source>a thicker or stiffer board, shorter legs, or a leg under its front</source>
   <translation>una tabla más gruesa o rígida, alas más cortas, o una pata bajo su frente</translation>
  </message>
  <message>
   <source>a weak board may break under {0} in time</source>
   <translation>una tabla floja puede romperse bajo {0} con el tiempo</translation>
  </message>
  <message>
   <source>a weak board may break under {0} in time{1}{2}</source>
   <translation>una tabla floja puede romperse bajo {0} con el tiempo{1}{2}</translation>
  </message>
  <message>
   <source>a whole sheet{0} {1}{2}</source>
   <translation>un tablero entero{0} {1}{2}</translation>
  </message>
  <message>
   <source>a {0} must state it</source>
   <translation>{0} debe indicarlo</translation>
  </message>
  <message>
   <source>above 0</source>
   <translation>mayor que 0</translation>
  </message>
  <message>
   <source>above the bay's floor</source>
   <translation>sobre el suelo del hueco</translation>
  </message>
  <message>
   <source>above the bay's floor, clear of the {0} cleat</source>
   <translation>sobre el suelo del hueco, libre del listón {0}</translation>
  </message>
  <message>
   <source>above the bottom and its inset</source>
   <translation>sobre el fondo y su retranqueo</translation>
  </message>
  <message>
   <source>above the floor</source>
   <translation>sobre el suelo</translation>
  </message>
  <message>
   <source>above the floor, to lie on the door</source>
   <translation>sobre el suelo, para quedar sobre la puerta</translation>
  </message>
  <message>
   <source>above the floor, with room for its cleats</source>
   <translation>sobre el suelo, con sitio para sus listones</translation>
  </message>
  <message>
   <source>above the floor, {0} mm below what lies above it</source>
   <translation>sobre el suelo, {0} mm por debajo de lo que tiene encima</translation>
  </message>
  <message>
   <source>across the width</source>
   <translation>a lo ancho</translation>
  </message>
  <message>
   <source>add a larger sheet</source>
   <translation>añadir un tablero mayor</translation>
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation>balda regulable</translation>
  </message>
  <message>
   <source>adjustable shelves</source>
   <translation>baldas regulables</translation>
  </message>
  <message>
   <source>allowable lateral load, older NDS: screws C·D², nails C·D^1.5, end grain 2/3</source>
   <translation>carga lateral admisible, NDS antigua: tornillos C·D², clavos C·D^1.5, testa 2/3</translation>
  </message>
  <message>
   <source>allowed for the least strength of its standard; for the mean strengths published {0} to {1}</source>
   <translation>admisible para la resistencia mínima de su norma; para las resistencias medias publicadas, {0} a {1}</translation>
  </message>
  <message>
   <source>allowed for the least yield of its grade, {0}</source>
   <translation>admisible para el límite elástico mínimo de su grado, {0}</translation>
  </message>
  <message>
   <source>allowed for the weakest twentieth; clear wood bears {0} on average in a short test</source>
   <translation>admisible para el 5 % más débil; la madera limpia soporta {0} de media en un ensayo corto</translation>
  </message>
  <message>
   <source>along the bench</source>
   <translation>a lo largo del banco</translation>
  </message>
  <message>
   <source>along the length</source>
   <translation>a lo largo</translation>
  </message>
  <message>
   <source>aluminium 6063-T5: E 69 GPa; least yield 110 N/mm² (quoted) over 1.95 (from memory)</source>
   <translation>aluminio 6063-T5: E 69 GPa; límite elástico mínimo 110 N/mm² (citado) entre 1.95 (de memoria)</translation>
  </message>
  <message>
   <source>aluminium tube</source>
   <translation>tubo de aluminio</translation>
  </message>
  <message>
   <source>an object by material</source>
   <translation>un objeto por material</translation>
  </message>
  <message>
   <source>anchor it; heavy things low; nothing tempting on top</source>
   <translation>anclarlo; lo pesado abajo; nada tentador encima</translation>
  </message>
  <message>
   <source>angle to which the closet's own door opens</source>
   <translation>ángulo hasta el que abre la puerta propia del armario</translation>
  </message>
  <message>
   <source>another line has the same id; give the quantity instead</source>
   <translation>otra línea tiene el mismo id; dar en su lugar la cantidad</translation>
  </message>
  <message>
   <source>another line prices the same</source>
   <translation>otra línea da precio a lo mismo</translation>
  </message>
  <message>
   <source>another line says something else of the same part</source>
   <translation>otra línea dice otra cosa de la misma pieza</translation>
  </message>
  <message>
   <source>another one has the same key</source>
   <translation>otra tiene la misma clave</translation>
  </message>
  <message>
   <source>anti-tip anchors</source>
   <translation>anclajes antivuelco</translation>
  </message>
  <message>
   <source>anti-tip anchors made to ASTM F3096, 50 lbf each (quoted)</source>
   <translation>anclajes antivuelco según ASTM F3096, 50 lbf cada uno (citado)</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in brick; old mortar and perforated brick hold less</source>
   <translation>preguntar al fabricante de los anclajes por las cargas en ladrillo; el mortero viejo y el ladrillo hueco aguantan menos</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in concrete</source>
   <translation>preguntar al fabricante de los anclajes por las cargas en hormigón</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in hollow block</source>
   <translation>preguntar al fabricante de los anclajes por las cargas en bloque hueco</translation>
  </message>
  <message>
   <source>ask the maker of the anchors for loads in this gauge of steel, or have plywood or lumber set between the studs behind the cleats</source>
   <translation>preguntar al fabricante de los anclajes por las cargas en este espesor de acero, o hacer colocar contrachapado o madera entre los montantes tras los listones</translation>
  </message>
  <message>
   <source>assemble it inside</source>
   <translation>montarlo dentro</translation>
  </message>
  <message>
   <source>assembled it {0}: assemble it where it stands, or tip it up with help, never alone</source>
   <translation>montado, {0}: montarlo en su sitio, o levantarlo con ayuda, nunca solo</translation>
  </message>
  <message>
   <source>at least {0}</source>
   <translation>al menos {0}</translation>
  </message>
  <message>
   <source>at least {0} are needed</source>
   <translation>se necesitan al menos {0}</translation>
  </message>
  <message>
   <source>at least {0}°</source>
   <translation>al menos {0}°</translation>
  </message>
  <message>
   <source>at midspan</source>
   <translation>en el centro de la luz</translation>
  </message>
  <message>
   <source>at most {0} pieces in all</source>
   <translation>como máximo {0} piezas en total</translation>
  </message>
  <message>
   <source>at most {0} without one</source>
   <translation>como máximo {0} sin él</translation>
  </message>
  <message>
   <source>at most {0}; measure what is sound and list that</source>
   <translation>como máximo {0}; medir lo que está sano y anotarlo</translation>
  </message>
  <message>
   <source>at the free end</source>
   <translation>en el extremo libre</translation>
  </message>
  <message>
   <source>at the rear wall</source>
   <translation>en la pared trasera</translation>
  </message>
  <message>
   <source>back</source>
   <translation>trasera</translation>
  </message>
  <message>
   <source>back baseboard</source>
   <translation>rodapié trasero</translation>
  </message>
  <message>
   <source>back bow</source>
   <translation>comba del fondo</translation>
  </message>
  <message>
   <source>back bow up</source>
   <translation>comba del fondo en altura</translation>
  </message>
  <message>
   <source>back cleat {0}</source>
   <translation>listón trasero {0}</translation>
  </message>
  <message>
   <source>back lean</source>
   <translation>desplome del fondo</translation>
  </message>
  <message>
   <source>back skew</source>
   <translation>desvío del fondo</translation>
  </message>
  <message>
   <source>back to dividers</source>
   <translation>trasera a divisorias</translation>
  </message>
  <message>
   <source>back twist</source>
   <translation>alabeo del fondo</translation>
  </message>
  <message>
   <source>back wall</source>
   <translation>pared trasera</translation>
  </message>
  <message>
   <source>back {0}</source>
   <translation>trasera {0}</translation>
  </message>
  <message>
   <source>bar</source>
   <translation>perfil</translation>
  </message>
  <message>
   <source>base cross member {0}</source>
   <translation>traviesa del zócalo {0}</translation>
  </message>
  <message>
   <source>base frame</source>
   <translation>bastidor del zócalo</translation>
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation>bastidor del zócalo ajustado al suelo</translation>
  </message>
  <message>
   <source>base front rail</source>
   <translation>travesaño delantero del zócalo</translation>
  </message>
  <message>
   <source>base height</source>
   <translation>altura del zócalo</translation>
  </message>
  <message>
   <source>base rear rail</source>
   <translation>travesaño trasero del zócalo</translation>
  </message>
  <message>
   <source>base setback</source>
   <translation>retranqueo del zócalo</translation>
  </message>
  <message>
   <source>bay</source>
   <translation>hueco</translation>
  </message>
  <message>
   <source>bay {0}</source>
   <translation>hueco {0}</translation>
  </message>
  <message>
   <source>bay {0} loose shelf {1}</source>
   <translation>hueco {0}, balda suelta {1}</translation>
  </message>
  <message>
   <source>bay {0} rail {1}</source>
   <translation>hueco {0}, travesaño {1}</translation>
  </message>
  <message>
   <source>bay {0} shelf {1}</source>
   <translation>hueco {0}, balda {1}</translation>
  </message>
  <message>
   <source>bay {0} {1} cleat</source>
   <translation>hueco {0}, listón {1}</translation>
  </message>
  <message>
   <source>bays</source>
   <translation>huecos</translation>
  </message>
  <message>
   <source>beam</source>
   <translation>viga</translation>
  </message>
  <message>
   <source>bearers to posts</source>
   <translation>largueros de apoyo a pies</translation>
  </message>
  <message>
   <source>below the upper rod</source>
   <translation>bajo la barra superior</translation>
  </message>
  <message>
   <source>bench face</source>
   <translation>frente del banco</translation>
  </message>
  <message>
   <source>bench frame</source>
   <translation>bastidor del banco</translation>
  </message>
  <message>
   <source>bench rails to trestles</source>
   <translation>travesaños del banco a caballetes</translation>
  </message>
  <message>
   <source>bench top</source>
   <translation>tapa del banco</translation>
  </message>
  <message>
   <source>bench top to rails</source>
   <translation>tapa del banco a travesaños</translation>
  </message>
  <message>
   <source>beside what stands there</source>
   <translation>junto a lo que ya hay</translation>
  </message>
  <message>
   <source>between the sides</source>
   <translation>entre los laterales</translation>
  </message>
  <message>
   <source>bill</source>
   <translation>lista</translation>
  </message>
  <message>
   <source>bill and papers</source>
   <translation>lista y documentos</translation>
  </message>
  <message>
   <source>boards or bars that can be bought, whose parts have no width; may come again</source>
   <translation>tablas o perfiles que se pueden comprar, cuyas piezas no tienen ancho; puede repetirse</translation>
  </message>
  <message>
   <source>bottom and top to sides and dividers</source>
   <translation>suelo y techo a laterales y divisorias</translation>
  </message>
  <message>
   <source>bottom rail</source>
   <translation>travesaño inferior</translation>
  </message>
  <message>
   <source>bow of the back wall from left to right</source>
   <translation>comba de la pared trasera de izquierda a derecha</translation>
  </message>
  <message>
   <source>bow of the back wall on its way up</source>
   <translation>comba de la pared trasera en altura</translation>
  </message>
  <message>
   <source>bow of the ceiling from left to right</source>
   <translation>comba del techo de izquierda a derecha</translation>
  </message>
  <message>
   <source>bow of the floor from left to right</source>
   <translation>comba del suelo de izquierda a derecha</translation>
  </message>
  <message>
   <source>bow of the left wall</source>
   <translation>comba de la pared izquierda</translation>
  </message>
  <message>
   <source>bow of the right wall</source>
   <translation>comba de la pared derecha</translation>
  </message>
  <message>
   <source>bow of the side walls</source>
   <translation>comba de las paredes laterales</translation>
  </message>
  <message>
   <source>box front</source>
   <translation>frente de la caja</translation>
  </message>
  <message>
   <source>butt, screwed</source>
   <translation>a tope, atornillada</translation>
  </message>
  <message>
   <source>by readings</source>
   <translation>por lecturas</translation>
  </message>
  <message>
   <source>by rule</source>
   <translation>según regla</translation>
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation>con tornillos o clavos a través de los laterales</translation>
  </message>
  <message>
   <source>by sizes</source>
   <translation>por medidas</translation>
  </message>
  <message>
   <source>by the gap</source>
   <translation>según la holgura</translation>
  </message>
  <message>
   <source>by the inside width</source>
   <translation>según el ancho interior</translation>
  </message>
  <message>
   <source>by the opening</source>
   <translation>según el vano</translation>
  </message>
  <message>
   <source>cables and pipes run in walls: find them with a detector, switch the circuit off, and drive no screw deeper than it needs; {0}</source>
   <translation>por las paredes pasan cables y tuberías: localizarlos con un detector, cortar el circuito y no meter ningún tornillo más hondo de lo necesario; {0}</translation>
  </message>
  <message>
   <source>cannot be built</source>
   <translation>no se puede construir</translation>
  </message>
  <message>
   <source>cannot be opened ({0})</source>
   <translation>no se puede abrir ({0})</translation>
  </message>
  <message>
   <source>cannot be read from {0}; {1}</source>
   <translation>no se puede leer desde {0}; {1}</translation>
  </message>
  <message>
   <source>cannot be right</source>
   <translation>no puede ser correcto</translation>
  </message>
  <message>
   <source>cannot be written ({0}); see whether the folder may be written to and the disk has room</source>
   <translation>no se puede escribir ({0}); ver si se permite escribir en la carpeta y si hay espacio en el disco</translation>
  </message>
  <message>
   <source>cannot come out: {0} in the way</source>
   <translation>no puede salir: {0} estorba</translation>
  </message>
  <message>
   <source>cannot stand open while {0} does</source>
   <translation>no puede estar abierto mientras lo está {0}</translation>
  </message>
  <message>
   <source>carcass</source>
   <translation>cuerpo</translation>
  </message>
  <message>
   <source>carcass to base frame</source>
   <translation>cuerpo a bastidor del zócalo</translation>
  </message>
  <message>
   <source>carcasses</source>
   <translation>cuerpos</translation>
  </message>
  <message>
   <source>carry it upright between two, one hand under the lower edge and one on top, in gloves, and not in wind; stand it steeply against a wall, and chock it; or have it cut to the strips that you need where you buy it</source>
   <translation>llevarlo de canto entre dos, una mano bajo el borde inferior y otra arriba, con guantes y sin viento; apoyarlo muy vertical contra una pared y calzarlo; o hacerlo cortar donde se compra en las tiras necesarias</translation>
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation>tapeta y rodapié</translation>
  </message>
  <message>
   <source>catalogue</source>
   <translation>catálogo</translation>
  </message>
  <message>
   <source>ceiling bow</source>
   <translation>comba del techo</translation>
  </message>
  <message>
   <source>ceiling twist</source>
   <translation>alabeo del techo</translation>
  </message>
  <message>
   <source>cells</source>
   <translation>celdas</translation>
  </message>
  <message>
   <source>centre</source>
   <translation>centro</translation>
  </message>
  <message>
   <source>chi-squared test, 0.1 %</source>
   <translation>prueba de ji cuadrado, 0.1 %</translation>
  </message>
  <message>
   <source>child's reach</source>
   <translation>alcance de los niños</translation>
  </message>
  <message>
   <source>children climb open shelves and drawers like a ladder: fasten everything to the wall before use, heavy things low, nothing tempting on top, nothing poisonous, sharp or small within reach; {0}</source>
   <translation>los niños trepan por baldas y cajones abiertos como por una escalera: fijar todo a la pared antes de usarlo, lo pesado abajo, nada tentador encima, nada venenoso, cortante ni pequeño a su alcance; {0}</translation>
  </message>
  <message>
   <source>circular saw along a straightedge</source>
   <translation>sierra circular con regla guía</translation>
  </message>
  <message>
   <source>circumstances</source>
   <translation>circunstancias</translation>
  </message>
  <message>
   <source>clear height under the rails</source>
   <translation>altura libre bajo los travesaños</translation>
  </message>
  <message>
   <source>clear of the door</source>
   <translation>libre de la puerta</translation>
  </message>
  <message>
   <source>clearance above</source>
   <translation>margen libre encima</translation>
  </message>
  <message>
   <source>clearance at each side</source>
   <translation>margen libre a cada lado</translation>
  </message>
  <message>
   <source>clearances</source>
   <translation>márgenes libres</translation>
  </message>
  <message>
   <source>cleat height</source>
   <translation>altura del listón</translation>
  </message>
  <message>
   <source>cleats of shoe shelves</source>
   <translation>listones de baldas para zapatos</translation>
  </message>
  <message>
   <source>cleats on the side walls, or a height at which it lies on a carcass</source>
   <translation>listones en las paredes laterales, o una altura a la que apoye en un cuerpo</translation>
  </message>
  <message>
   <source>cleats to sides and dividers</source>
   <translation>listones a laterales y divisorias</translation>
  </message>
  <message>
   <source>cleats to the studs</source>
   <translation>listones a los montantes de la pared</translation>
  </message>
  <message>
   <source>climate</source>
   <translation>clima</translation>
  </message>
  <message>
   <source>closet</source>
   <translation>armario empotrado</translation>
  </message>
  <message>
   <source>closet planning, as quoted: 24 in with the rod 12 in from the wall</source>
   <translation>planificación de armarios, según cita: 24 in con la barra a 12 in de la pared</translation>
  </message>
  <message>
   <source>closetbench: {0}
</source>
   <translation>closetbench: {0}
</translation>
  </message>
  <message>
   <source>closets in the file</source>
   <translation>armarios en el archivo</translation>
  </message>
  <message>
   <source>clothes</source>
   <translation>ropa</translation>
  </message>
  <message>
   <source>clothes on hangers are deeper than the bay: they stand out at the front or rub against a door</source>
   <translation>la ropa en perchas es más profunda que el hueco: sobresale por delante o roza con una puerta</translation>
  </message>
  <message>
   <source>clothes on hangers are wider than the bay: they rub against its sides</source>
   <translation>la ropa en perchas es más ancha que el hueco: roza con sus lados</translation>
  </message>
  <message>
   <source>clothes on the {0}</source>
   <translation>la ropa en {0}</translation>
  </message>
  <message>
   <source>cm centimetre centimetres centimeter centimeters</source>
   <translation>cm centimetre centimetres centimeter centimeters</translation>
  </message>
  <message>
   <source>column</source>
   <translation>columna</translation>
  </message>
  <message>
   <source>comes out only after {0} is opened to {1}° or more</source>
   <translation>sale solo después de abrir {0} a {1}° o más</translation>
  </message>
  <message>
   <source>comes out with less than {0} to spare beside {1}: the tape knows it no better; move it away or measure there again</source>
   <translation>sale con menos de {0} de holgura junto a: {1}; la cinta no lo sabe mejor; apartarlo o volver a medir allí</translation>
  </message>
  <message>
   <source>comes twice in one object; give it once</source>
   <translation>aparece dos veces en un objeto; indicarlo una vez</translation>
  </message>
  <message>
   <source>common practice, no published source</source>
   <translation>práctica habitual, sin fuente publicada</translation>
  </message>
  <message>
   <source>compartment</source>
   <translation>compartimento</translation>
  </message>
  <message>
   <source>confidence</source>
   <translation>confianza</translation>
  </message>
  <message>
   <source>contradict each other by {0} mm or more; measure these again</source>
   <translation>se contradicen en {0} mm o más; volver a medirlas</translation>
  </message>
  <message>
   <source>corner shelf</source>
   <translation>balda de esquina</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>coste</translation>
  </message>
  <message>
   <source>creep: NDS 3.5.2 (seasoned lumber 1.5), APA Panel Design Specification 4.5 (plywood 2), trade guide for MDF shelves (1.5), EN 1995-1-1 Table 3.2 (quoted) with four fifths of the load lasting</source>
   <translation>fluencia: NDS 3.5.2 (madera seca 1.5), APA Panel Design Specification 4.5 (contrachapado 2), guía del sector para baldas de MDF (1.5), EN 1995-1-1 Table 3.2 (citado) con cuatro quintos de la carga permanentes</translation>
  </message>
  <message>
   <source>currency</source>
   <translation>moneda</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>cortado</translation>
  </message>
  <message>
   <source>cut layout</source>
   <translation>plano de corte</translation>
  </message>
  <message>
   <source>cut settings</source>
   <translation>ajustes de corte</translation>
  </message>
  <message>
   <source>cuts</source>
   <translation>cortes</translation>
  </message>
  <message>
   <source>damp</source>
   <translation>humedad</translation>
  </message>
  <message>
   <source>dead space</source>
   <translation>espacio muerto</translation>
  </message>
  <message>
   <source>deepest groove as a fraction of the thickness</source>
   <translation>ranura más profunda, como fracción del grueso</translation>
  </message>
  <message>
   <source>defect</source>
   <translation>defecto</translation>
  </message>
  <message>
   <source>defect {0}</source>
   <translation>defecto {0}</translation>
  </message>
  <message>
   <source>defects</source>
   <translation>defectos</translation>
  </message>
  <message>
   <source>defects = [{0}]</source>
   <translation>defects = [{0}]</translation>
  </message>
  <message>
   <source>depth</source>
   <translation>profundidad</translation>
  </message>
  <message>
   <source>depth along the back</source>
   <translation>profundidad junto al fondo</translation>
  </message>
  <message>
   <source>depth along the left wall</source>
   <translation>profundidad junto a la pared izquierda</translation>
  </message>
  <message>
   <source>depth along the right wall</source>
   <translation>profundidad junto a la pared derecha</translation>
  </message>
  <message>
   <source>depth along the side</source>
   <translation>profundidad junto al lateral</translation>
  </message>
  <message>
   <source>depth between front and rear post</source>
   <translation>profundidad entre pie delantero y trasero</translation>
  </message>
  <message>
   <source>depth for hangers</source>
   <translation>profundidad para perchas</translation>
  </message>
  <message>
   <source>depth in the middle, high</source>
   <translation>profundidad en el centro, alta</translation>
  </message>
  <message>
   <source>depth in the middle, low</source>
   <translation>profundidad en el centro, baja</translation>
  </message>
  <message>
   <source>depth near the left wall, high</source>
   <translation>profundidad cerca de la pared izquierda, alta</translation>
  </message>
  <message>
   <source>depth near the right wall, high</source>
   <translation>profundidad cerca de la pared derecha, alta</translation>
  </message>
  <message>
   <source>diagonal at the back, rising to the left</source>
   <translation>diagonal al fondo, subiendo a la izquierda</translation>
  </message>
  <message>
   <source>diagonal at the back, rising to the right</source>
   <translation>diagonal al fondo, subiendo a la derecha</translation>
  </message>
  <message>
   <source>diagonal at the front, rising to the left</source>
   <translation>diagonal delante, subiendo a la izquierda</translation>
  </message>
  <message>
   <source>diagonal at the front, rising to the right</source>
   <translation>diagonal delante, subiendo a la derecha</translation>
  </message>
  <message>
   <source>diagonal from front left to back right</source>
   <translation>diagonal de delante izquierda a fondo derecha</translation>
  </message>
  <message>
   <source>diagonal from front left to back right, high</source>
   <translation>diagonal de delante izquierda a fondo derecha, alta</translation>
  </message>
  <message>
   <source>diagonal from front right to back left</source>
   <translation>diagonal de delante derecha a fondo izquierda</translation>
  </message>
  <message>
   <source>diagonal from front right to back left, high</source>
   <translation>diagonal de delante derecha a fondo izquierda, alta</translation>
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation>diagonal en alzado</translation>
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation>diagonal en planta</translation>
  </message>
  <message>
   <source>distance</source>
   <translation>distancia</translation>
  </message>
  <message>
   <source>distance from a fixed panel</source>
   <translation>distancia a un panel fijo</translation>
  </message>
  <message>
   <source>distance from the front</source>
   <translation>distancia desde delante</translation>
  </message>
  <message>
   <source>distance from the left</source>
   <translation>distancia desde la izquierda</translation>
  </message>
  <message>
   <source>distance of a pull's holes</source>
   <translation>distancia entre taladros de un tirador</translation>
  </message>
  <message>
   <source>distance of the front row</source>
   <translation>distancia de la fila delantera</translation>
  </message>
  <message>
   <source>distance of the pull from the free edge</source>
   <translation>distancia del tirador al borde libre</translation>
  </message>
  <message>
   <source>distance of the rear row</source>
   <translation>distancia de la fila trasera</translation>
  </message>
  <message>
   <source>distance of the rod from the rear</source>
   <translation>distancia de la barra al fondo</translation>
  </message>
  <message>
   <source>divider {0}</source>
   <translation>divisoria {0}</translation>
  </message>
  <message>
   <source>dividers with loose shelves on both sides are drilled right through; the pins of both bays share the holes</source>
   <translation>las divisorias con baldas sueltas a ambos lados se taladran de parte a parte; los soportes de los dos huecos comparten los taladros</translation>
  </message>
  <message>
   <source>does not clear {0}, which stands before it when open: keep the pull-out farther from the hinges, or take hinges that throw the door clear</source>
   <translation>no libra {0}, que queda delante al abrirse: apartar más el extraíble de las bisagras, o poner bisagras que aparten la puerta</translation>
  </message>
  <message>
   <source>does not go in through the opening assembled ({0}), but its parts do: assemble it inside</source>
   <translation>no entra montado por el hueco de entrada ({0}), pero sus piezas sí: montarlo dentro</translation>
  </message>
  <message>
   <source>does not go in through the opening: {0}; {1}</source>
   <translation>no entra por el hueco de entrada: {0}; {1}</translation>
  </message>
  <message>
   <source>does not go with {0} mm for the {1} of its kind: one was read in another unit; write the unit behind it</source>
   <translation>no concuerda con {0} mm para {1} de su tipo: uno se leyó en otra unidad; escribir la unidad detrás</translation>
  </message>
  <message>
   <source>drawer</source>
   <translation>cajón</translation>
  </message>
  <message>
   <source>drawer box back</source>
   <translation>trasera de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation>fondo de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box front</source>
   <translation>frente de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer box side</source>
   <translation>lateral de la caja de cajón</translation>
  </message>
  <message>
   <source>drawer boxes</source>
   <translation>cajas de cajón</translation>
  </message>
  <message>
   <source>drawer fronts and the boxes behind them</source>
   <translation>los frentes de cajón y las cajas que llevan detrás</translation>
  </message>
  <message>
   <source>drawer {0}</source>
   <translation>cajón {0}</translation>
  </message>
  <message>
   <source>drilling masonry raises silica dust: drill with extraction and wear a respirator (OSHA limit 50 µg/m³, 29 CFR 1926.1153)</source>
   <translation>taladrar fábrica levanta polvo de sílice: taladrar con aspiración y llevar mascarilla respiratoria (límite OSHA 50 µg/m³, 29 CFR 1926.1153)</translation>
  </message>
  <message>
   <source>each of its {0} carries {1} on {2} x {3}</source>
   <translation>cada uno de sus {0} carga {1} sobre {2} x {3}</translation>
  </message>
  <message>
   <source>edge band on the {0}</source>
   <translation>canto en {0}</translation>
  </message>
  <message>
   <source>edge distance of the cups</source>
   <translation>distancia al borde de las cazoletas</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>vacío</translation>
  </message>
  <message>
   <source>end clearance</source>
   <translation>holgura en el extremo</translation>
  </message>
  <message>
   <source>end cleats</source>
   <translation>listones extremos</translation>
  </message>
  <message>
   <source>end cleats to sides and dividers</source>
   <translation>listones extremos a laterales y divisorias</translation>
  </message>
  <message>
   <source>ends</source>
   <translation>extremos</translation>
  </message>
  <message>
   <source>ends in the middle; {0}</source>
   <translation>termina en el medio; {0}</translation>
  </message>
  <message>
   <source>ends of hanging rods</source>
   <translation>extremos de las barras</translation>
  </message>
  <message>
   <source>enter the kind of wall, and the studs' spacing and place</source>
   <translation>introducir el tipo de pared, y la separación y posición de los montantes</translation>
  </message>
  <message>
   <source>enter the readings, or a width, depth and height</source>
   <translation>introducir las lecturas, o ancho, profundidad y altura</translation>
  </message>
  <message>
   <source>enter the use of the shelves: linen, general, books or stiff</source>
   <translation>introducir el uso de las baldas: ropa blanca, general, libros o rígida</translation>
  </message>
  <message>
   <source>entry</source>
   <translation>entrada</translation>
  </message>
  <message>
   <source>envelope</source>
   <translation>espacio útil</translation>
  </message>
  <message>
   <source>error of the level</source>
   <translation>error del nivel</translation>
  </message>
  <message>
   <source>every one needs a key</source>
   <translation>todas necesitan una clave</translation>
  </message>
  <message>
   <source>every part needs one</source>
   <translation>todas las piezas necesitan una</translation>
  </message>
  <message>
   <source>every plumb and level reading is 0, and 0 counts as read: take them with a level, or a wall that leans will not show</source>
   <translation>toda lectura de plomo y de nivel es 0, y 0 cuenta como leído: tomarlas con un nivel, o no se verá una pared inclinada</translation>
  </message>
  <message>
   <source>existing piece</source>
   <translation>mueble existente</translation>
  </message>
  <message>
   <source>existing piece to the carcass</source>
   <translation>mueble existente al cuerpo</translation>
  </message>
  <message>
   <source>extra readings</source>
   <translation>lecturas adicionales</translation>
  </message>
  <message>
   <source>extra {0}</source>
   <translation>{0} adicional</translation>
  </message>
  <message>
   <source>face frame to the carcass</source>
   <translation>marco frontal al cuerpo</translation>
  </message>
  <message>
   <source>file</source>
   <translation>archivo</translation>
  </message>
  <message>
   <source>filler strip</source>
   <translation>tira de ajuste</translation>
  </message>
  <message>
   <source>fillers to carcasses</source>
   <translation>listones de ajuste a cuerpos</translation>
  </message>
  <message>
   <source>find out what the lath is nailed to, probe for the studs, and enter them as wood studs; the plaster and the lath carry nothing</source>
   <translation>averiguar a qué está clavado el listonado, buscar los montantes e introducirlos como montantes de madera; el enlucido y el listonado no soportan nada</translation>
  </message>
  <message>
   <source>first cut</source>
   <translation>primer corte</translation>
  </message>
  <message>
   <source>first stud</source>
   <translation>primer montante</translation>
  </message>
  <message>
   <source>fixed shelf</source>
   <translation>balda fija</translation>
  </message>
  <message>
   <source>fixed shelves</source>
   <translation>baldas fijas</translation>
  </message>
  <message>
   <source>fixed shelves to sides and dividers</source>
   <translation>baldas fijas a laterales y divisorias</translation>
  </message>
  <message>
   <source>floor bow</source>
   <translation>comba del suelo</translation>
  </message>
  <message>
   <source>floor rise</source>
   <translation>desnivel del suelo a lo ancho</translation>
  </message>
  <message>
   <source>floor run</source>
   <translation>desnivel del suelo a lo profundo</translation>
  </message>
  <message>
   <source>floor twist</source>
   <translation>alabeo del suelo</translation>
  </message>
  <message>
   <source>flush with the side</source>
   <translation>enrasado con el lateral</translation>
  </message>
  <message>
   <source>folder</source>
   <translation>carpeta</translation>
  </message>
  <message>
   <source>foot</source>
   <translation>pie</translation>
  </message>
  <message>
   <source>for a {0}</source>
   <translation>para {0}</translation>
  </message>
  <message>
   <source>for hangers {0} mm wide on a rod {1}</source>
   <translation>para perchas de {0} mm de ancho en una barra {1}</translation>
  </message>
  <message>
   <source>for shoes; {0} mm are there for {1}</source>
   <translation>para zapatos; hay {0} mm para {1}</translation>
  </message>
  <message>
   <source>for the mean strengths published </source>
   <translation>para las resistencias medias publicadas </translation>
  </message>
  <message>
   <source>for the mean strengths published {0} to {1}</source>
   <translation>para las resistencias medias publicadas, {0} a {1}</translation>
  </message>
  <message>
   <source>free depth</source>
   <translation>profundidad libre</translation>
  </message>
  <message>
   <source>frequency multiplier</source>
   <translation>multiplicador de frecuencia</translation>
  </message>
  <message>
   <source>from above</source>
   <translation>desde arriba</translation>
  </message>
  <message>
   <source>from front to rear</source>
   <translation>de delante a atrás</translation>
  </message>
  <message>
   <source>from the floor to the floor of the bays</source>
   <translation>del suelo de la sala al suelo de los huecos</translation>
  </message>
  <message>
   <source>from the front, to clear the pins</source>
   <translation>desde delante, para librar los soportes</translation>
  </message>
  <message>
   <source>from the side</source>
   <translation>desde el lado</translation>
  </message>
  <message>
   <source>from {0}</source>
   <translation>desde {0}</translation>
  </message>
  <message>
   <source>from {0} to {1} mm</source>
   <translation>de {0} a {1} mm</translation>
  </message>
  <message>
   <source>front</source>
   <translation>frente</translation>
  </message>
  <message>
   <source>front kick board</source>
   <translation>frente del zócalo delantero</translation>
  </message>
  <message>
   <source>front lip</source>
   <translation>refuerzo frontal</translation>
  </message>
  <message>
   <source>front post</source>
   <translation>pie delantero</translation>
  </message>
  <message>
   <source>front screws</source>
   <translation>tornillos de los frentes</translation>
  </message>
  <message>
   <source>front wall</source>
   <translation>pared delantera</translation>
  </message>
  <message>
   <source>fronts to drawer boxes</source>
   <translation>frentes a cajas de cajón</translation>
  </message>
  <message>
   <source>full of clothes it weighs more than its {0} may carry</source>
   <translation>llena de ropa pesa más de lo que puede cargar {0}</translation>
  </message>
  <message>
   <source>full overlay</source>
   <translation>superpuesto total</translation>
  </message>
  <message>
   <source>gap</source>
   <translation>holgura</translation>
  </message>
  <message>
   <source>gap around the fronts</source>
   <translation>holgura en torno a los frentes</translation>
  </message>
  <message>
   <source>general storage</source>
   <translation>almacenaje general</translation>
  </message>
  <message>
   <source>general storage with little sag</source>
   <translation>almacenaje general con poca flecha</translation>
  </message>
  <message>
   <source>geometry, hinges taken to turn about the edge of the leaf</source>
   <translation>geometría, suponiendo que las bisagras giran sobre el borde de la hoja</translation>
  </message>
  <message>
   <source>geometry; ways that turn are searched with {0} mm to spare all round, the closet empty and its own door taken off</source>
   <translation>geometría; los caminos con giro se buscan con {0} mm de holgura alrededor, el armario vacío y su puerta desmontada</translation>
  </message>
  <message>
   <source>given</source>
   <translation>dado</translation>
  </message>
  <message>
   <source>given twice</source>
   <translation>dado dos veces</translation>
  </message>
  <message>
   <source>glue the {0} as well, which then carries; or grooves</source>
   <translation>encolar también {0}, que entonces soporta; o ranuras</translation>
  </message>
  <message>
   <source>goes with no room that the other readings allow; about {0} mm was expected; measure it again</source>
   <translation>da una sala que las demás lecturas no admiten; se esperaban unos {0} mm; volver a medirla</translation>
  </message>
  <message>
   <source>grain</source>
   <translation>veta</translation>
  </message>
  <message>
   <source>grain = {0}</source>
   <translation>veta = {0}</translation>
  </message>
  <message>
   <source>greatest {0}</source>
   <translation>{0} máximo</translation>
  </message>
  <message>
   <source>groove depth</source>
   <translation>profundidad de ranura</translation>
  </message>
  <message>
   <source>groove depth as a fraction of the thickness</source>
   <translation>profundidad de ranura como fracción del grueso</translation>
  </message>
  <message>
   <source>groove stop</source>
   <translation>tope de ranura</translation>
  </message>
  <message>
   <source>grooves and notches</source>
   <translation>ranuras y muescas</translation>
  </message>
  <message>
   <source>grooves run through the edge band at the front; stop them short of it</source>
   <translation>las ranuras atraviesan el canto por delante; detenerlas antes</translation>
  </message>
  <message>
   <source>half lap</source>
   <translation>a media madera</translation>
  </message>
  <message>
   <source>half overlay</source>
   <translation>superpuesto medio</translation>
  </message>
  <message>
   <source>hanging rod</source>
   <translation>barra</translation>
  </message>
  <message>
   <source>hanging rods</source>
   <translation>barras</translation>
  </message>
  <message>
   <source>hanging rods between the ends</source>
   <translation>barras entre los extremos</translation>
  </message>
  <message>
   <source>hangs lower or higher than rods usually do (one rod about {0} to {1})</source>
   <translation>cuelga más baja o más alta de lo habitual en las barras (una barra, unos {0} a {1})</translation>
  </message>
  <message>
   <source>hangs lower than rods for {0} things usually do, under what lies above it</source>
   <translation>cuelga más baja de lo habitual en las barras para prendas {0}, bajo lo que tiene encima</translation>
  </message>
  <message>
   <source>has been altered: its maker's label, its anti-tip kit and its test count no more; it is computed as new, and must be anchored; {0}</source>
   <translation>ha sido modificado: la etiqueta del fabricante, su kit antivuelco y su ensayo ya no valen; se calcula de nuevo y debe anclarse; {0}</translation>
  </message>
  <message>
   <source>has fewer hinges than its height asks for</source>
   <translation>tiene menos bisagras de las que pide su altura</translation>
  </message>
  <message>
   <source>has no reserve for the {0} that furniture tests hang on rails</source>
   <translation>no tiene reserva para {0} que los ensayos de muebles cuelgan de las barras</translation>
  </message>
  <message>
   <source>have it halved at the store</source>
   <translation>hacerlo cortar por la mitad en la tienda</translation>
  </message>
  <message>
   <source>head casing</source>
   <translation>tapeta superior</translation>
  </message>
  <message>
   <source>heading</source>
   <translation>encabezado</translation>
  </message>
  <message>
   <source>height</source>
   <translation>altura</translation>
  </message>
  <message>
   <source>height above the floor</source>
   <translation>altura sobre el suelo</translation>
  </message>
  <message>
   <source>height at the back left</source>
   <translation>altura al fondo a la izquierda</translation>
  </message>
  <message>
   <source>height at the back right</source>
   <translation>altura al fondo a la derecha</translation>
  </message>
  <message>
   <source>height at the back, in the middle</source>
   <translation>altura al fondo, en el centro</translation>
  </message>
  <message>
   <source>height at the front left</source>
   <translation>altura delante a la izquierda</translation>
  </message>
  <message>
   <source>height at the front right</source>
   <translation>altura delante a la derecha</translation>
  </message>
  <message>
   <source>height at the front, in the middle</source>
   <translation>altura delante, en el centro</translation>
  </message>
  <message>
   <source>height for each shelf</source>
   <translation>altura por balda</translation>
  </message>
  <message>
   <source>height of a door</source>
   <translation>altura de una puerta</translation>
  </message>
  <message>
   <source>height of a fixed shelf</source>
   <translation>altura de una balda fija</translation>
  </message>
  <message>
   <source>height of a front</source>
   <translation>altura de un frente</translation>
  </message>
  <message>
   <source>height of its centre</source>
   <translation>altura de su centro</translation>
  </message>
  <message>
   <source>height of shelf {0}</source>
   <translation>altura de la balda {0}</translation>
  </message>
  <message>
   <source>height of the baseboard</source>
   <translation>altura del rodapié</translation>
  </message>
  <message>
   <source>height of the bottom rail</source>
   <translation>altura del travesaño inferior</translation>
  </message>
  <message>
   <source>height of the box</source>
   <translation>altura de la caja</translation>
  </message>
  <message>
   <source>height of the cleats</source>
   <translation>altura de los listones</translation>
  </message>
  <message>
   <source>height of the feet</source>
   <translation>altura de las patas</translation>
  </message>
  <message>
   <source>height of the hands</source>
   <translation>altura de las manos</translation>
  </message>
  <message>
   <source>height of the lip</source>
   <translation>altura del refuerzo frontal</translation>
  </message>
  <message>
   <source>height of the opening</source>
   <translation>altura del hueco de entrada</translation>
  </message>
  <message>
   <source>height of the opening at the left jamb</source>
   <translation>altura del hueco de entrada en la jamba izquierda</translation>
  </message>
  <message>
   <source>height of the pull</source>
   <translation>altura del tirador</translation>
  </message>
  <message>
   <source>height of the shelf rails</source>
   <translation>altura de los travesaños de balda</translation>
  </message>
  <message>
   <source>height of the shelves' lip</source>
   <translation>altura del refuerzo de las baldas</translation>
  </message>
  <message>
   <source>height of the stop</source>
   <translation>altura del tope</translation>
  </message>
  <message>
   <source>height of the top rail</source>
   <translation>altura del travesaño superior</translation>
  </message>
  <message>
   <source>height of the upper rod</source>
   <translation>altura de la barra superior</translation>
  </message>
  <message>
   <source>height of the wall over the opening</source>
   <translation>altura de la pared sobre el hueco de entrada</translation>
  </message>
  <message>
   <source>height over the opening</source>
   <translation>altura sobre el hueco de entrada</translation>
  </message>
  <message>
   <source>heights</source>
   <translation>alturas</translation>
  </message>
  <message>
   <source>heights of the fronts</source>
   <translation>alturas de los frentes</translation>
  </message>
  <message>
   <source>hinge cup</source>
   <translation>cazoleta de bisagra</translation>
  </message>
  <message>
   <source>hinge it on the other side, make it narrower or part it in two</source>
   <translation>poner las bisagras al otro lado, hacerla más estrecha o dividirla en dos</translation>
  </message>
  <message>
   <source>hinge plate</source>
   <translation>placa de bisagra</translation>
  </message>
  <message>
   <source>hinge strip</source>
   <translation>tira de bisagras</translation>
  </message>
  <message>
   <source>hinged at the left</source>
   <translation>con bisagras a la izquierda</translation>
  </message>
  <message>
   <source>hinged at the right</source>
   <translation>con bisagras a la derecha</translation>
  </message>
  <message>
   <source>holds back {0}</source>
   <translation>retiene {0}</translation>
  </message>
  <message>
   <source>hollow block</source>
   <translation>bloque hueco</translation>
  </message>
  <message>
   <source>in a groove all round</source>
   <translation>en una ranura todo alrededor</translation>
  </message>
  <message>
   <source>in grooves</source>
   <translation>en ranuras</translation>
  </message>
  <message>
   <source>in its compartment</source>
   <translation>en su compartimento</translation>
  </message>
  <message>
   <source>in its lip; allowed for the least strength of that one's standard</source>
   <translation>en su refuerzo frontal; admisible para la resistencia mínima de la norma de este</translation>
  </message>
  <message>
   <source>in the envelope</source>
   <translation>en el espacio útil</translation>
  </message>
  <message>
   <source>in this depth</source>
   <translation>en esta profundidad</translation>
  </message>
  <message>
   <source>in {0} mm of depth with {1} mm behind it</source>
   <translation>en {0} mm de profundidad con {1} mm detrás</translation>
  </message>
  <message>
   <source>inset of the back</source>
   <translation>retranqueo de la trasera</translation>
  </message>
  <message>
   <source>is a board's key too; give the bar another</source>
   <translation>es también clave de una tabla; dar otra al perfil</translation>
  </message>
  <message>
   <source>is fastened to nothing: find where its sides can be screwed through to the carcass, or anchor it to the wall, before its drawers are used; {0}</source>
   <translation>no está fijado a nada: buscar por dónde atornillar sus laterales al cuerpo, o anclarlo a la pared, antes de usar sus cajones; {0}</translation>
  </message>
  <message>
   <source>is higher or lower than people sit well on</source>
   <translation>es más alto o más bajo de lo cómodo para sentarse</translation>
  </message>
  <message>
   <source>is made for dry, heated rooms; ask its maker for figures in damp air</source>
   <translation>está hecho para estancias secas y calefactadas; pedir al fabricante valores en aire húmedo</translation>
  </message>
  <message>
   <source>is more than three people should lift by hand</source>
   <translation>es más de lo que deben levantar a mano tres personas</translation>
  </message>
  <message>
   <source>is no key of this table; {0}</source>
   <translation>no es clave de esta tabla; {0}</translation>
  </message>
  <message>
   <source>is no table here; {0}</source>
   <translation>no es tabla aquí; {0}</translation>
  </message>
  <message>
   <source>is not JSON ({0})</source>
   <translation>no es JSON ({0})</translation>
  </message>
  <message>
   <source>is not in the catalogue; {0}</source>
   <translation>no está en el catálogo; {0}</translation>
  </message>
  <message>
   <source>is not in the plan</source>
   <translation>no está en el plan</translation>
  </message>
  <message>
   <source>is not in the table of load cases; give the loads one by one</source>
   <translation>no está en la tabla de casos de carga; dar las cargas una a una</translation>
  </message>
  <message>
   <source>is not known; known: {0}</source>
   <translation>no se conoce; conocidos: {0}</translation>
  </message>
  <message>
   <source>is not there</source>
   <translation>no está</translation>
  </message>
  <message>
   <source>is there twice; give it once</source>
   <translation>está dos veces; darlo una sola vez</translation>
  </message>
  <message>
   <source>is thinner than rods are made</source>
   <translation>es más delgada de lo que se fabrican las barras</translation>
  </message>
  <message>
   <source>is too long and wide for one person to handle, though not too heavy</source>
   <translation>es demasiado largo y ancho para que lo maneje una persona, aunque no demasiado pesado</translation>
  </message>
  <message>
   <source>is too narrow for two cuts: leave nothing, exactly a kerf of {0} mm to a neighbour, or more than two</source>
   <translation>es demasiado estrecho para dos cortes: no dejar nada, exactamente un ancho de corte de {0} mm hasta el vecino, o más de dos</translation>
  </message>
  <message>
   <source>is too near to what is stored: fire; move the shelf or the light; {0}</source>
   <translation>está demasiado cerca de lo almacenado: incendio; mover la balda o la luz; {0}</translation>
  </message>
  <message>
   <source>is too short</source>
   <translation>es demasiado corto</translation>
  </message>
  <message>
   <source>is too thin for the pocket screws in the list: they come out at the face</source>
   <translation>es demasiado fino para los tornillos ocultos en ángulo de la lista: salen por la cara</translation>
  </message>
  <message>
   <source>is wider than the number of hinges is meant for: it sags and pulls on them; make a pair of it</source>
   <translation>es más ancha de lo previsto para ese número de bisagras: se descuelga y tira de ellas; hacerla de dos hojas</translation>
  </message>
  <message>
   <source>it cannot be made ({0})</source>
   <translation>no se puede crear ({0})</translation>
  </message>
  <message>
   <source>it cannot be read ({0})</source>
   <translation>no se puede leer ({0})</translation>
  </message>
  <message>
   <source>it cannot be read as TOML ({0})</source>
   <translation>no se puede leer como TOML ({0})</translation>
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder is there and may be written to</source>
   <translation>no se puede escribir ({0}); ver si la carpeta existe y se permite escribir en ella</translation>
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder may be written to, the disk is full or another program has the file open</source>
   <translation>no se puede escribir ({0}); ver si se permite escribir en la carpeta, si el disco está lleno o si otro programa tiene abierto el archivo</translation>
  </message>
  <message>
   <source>it carries {0} on {1} x {2}</source>
   <translation>carga {0} sobre {1} x {2}</translation>
  </message>
  <message>
   <source>it does not go straight through {0}</source>
   <translation>no pasa recto por {0}</translation>
  </message>
  <message>
   <source>it gives {0} piece(s), {1} are named</source>
   <translation>da {0} pieza(s), se nombran {1}</translation>
  </message>
  <message>
   <source>it has neither cleats nor a back of {0} to screw through, and </source>
   <translation>no tiene ni listones ni una trasera de {0} por la que atornillar, y </translation>
  </message>
  <message>
   <source>it is kept for that job</source>
   <translation>se guarda para ese trabajo</translation>
  </message>
  <message>
   <source>it is larger than the closet inside</source>
   <translation>es mayor que el armario por dentro</translation>
  </message>
  <message>
   <source>it leaves nothing of {0}; it must be less than {1}</source>
   <translation>no deja nada de {0}; debe ser menor que {1}</translation>
  </message>
  <message>
   <source>it misses {0}</source>
   <translation>no alcanza {0}</translation>
  </message>
  <message>
   <source>it must be 0 or more</source>
   <translation>debe ser 0 o más</translation>
  </message>
  <message>
   <source>it must be 0 or more and leave something of {0}</source>
   <translation>debe ser 0 o más y dejar algo de {0}</translation>
  </message>
  <message>
   <source>it must be 0 or more, or none</source>
   <translation>debe ser 0 o más, o ninguno</translation>
  </message>
  <message>
   <source>it must be 2 or more (rips, then crosscuts), or none for no limit</source>
   <translation>debe ser 2 o más (cortes al hilo, luego transversales), o ninguno para no limitar</translation>
  </message>
  <message>
   <source>it must be a table</source>
   <translation>debe ser una tabla</translation>
  </message>
  <message>
   <source>it must be more than 0</source>
   <translation>debe ser mayor que 0</translation>
  </message>
  <message>
   <source>it must be text in UTF-8</source>
   <translation>debe ser texto en UTF-8</translation>
  </message>
  <message>
   <source>it must lie within 0 to {0}, its start first</source>
   <translation>debe estar entre 0 y {0}, primero su inicio</translation>
  </message>
  <message>
   <source>it stands {0} from the wall: set it at the rear or anchor it with brackets</source>
   <translation>está a {0} de la pared: ponerlo al fondo o anclarlo con escuadras</translation>
  </message>
  <message>
   <source>item</source>
   <translation>artículo</translation>
  </message>
  <message>
   <source>its bottom sags {0} under {1} of clothes</source>
   <translation>su fondo flecta {0} bajo {1} de ropa</translation>
  </message>
  <message>
   <source>its diagonal of {0} does not go up under {1}: put it on a base of its own</source>
   <translation>su diagonal de {0} no se levanta bajo {1}: ponerlo sobre un zócalo aparte</translation>
  </message>
  <message>
   <source>its end stile is cut with an allowance: offer it up plumb, scribe it to the wall and plane it down before the frame is joined</source>
   <translation>su montante extremo se corta con margen: presentarlo a plomo, ajustarlo a la pared y cepillarlo antes de unir el marco</translation>
  </message>
  <message>
   <source>its fronts are tapered to an opening that is out of square, each its own way: mark them as they are cut, measure both diagonals once more before that, and {0}</source>
   <translation>sus frentes van en cuña para un vano fuera de escuadra, cada uno a su modo: marcarlos al cortarlos, volver a medir antes ambas diagonales, y {0}</translation>
  </message>
  <message>
   <source>its hinges hold on to the face frame: take plates for frames, or pack the sides out flush with it; their holes are not drilled</source>
   <translation>sus bisagras se sujetan al marco frontal: usar placas para marcos, o suplementar los laterales hasta enrasar con él; sus taladros no se hacen</translation>
  </message>
  <message>
   <source>its lid is glued up of boards: screw two battens under it through slotted holes, or it cups</source>
   <translation>su tapa es de tablas encoladas: atornillar debajo dos listones por agujeros rasgados, o se abarquilla</translation>
  </message>
  <message>
   <source>its lip may break under {0} in time, if it is a weak one; the shelf alone would not{1}</source>
   <translation>su refuerzo frontal puede romperse bajo {0} con el tiempo, si es flojo; la balda sola no{1}</translation>
  </message>
  <message>
   <source>its own {0} hang on {1} x {2}</source>
   <translation>su peso propio de {0} cuelga de {1} x {2}</translation>
  </message>
  <message>
   <source>its rails may break in {0} under {1}</source>
   <translation>sus travesaños pueden romperse en {0} bajo {1}</translation>
  </message>
  <message>
   <source>its rails sag {0} under {1}</source>
   <translation>sus travesaños flectan {0} bajo {1}</translation>
  </message>
  <message>
   <source>its top hinge is pulled with {0} by its own {1}, and with {2} when somebody leans on it as in the test</source>
   <translation>su bisagra superior sufre un tirón de {0} por su propio {1}, y de {2} cuando alguien se apoya en ella como en el ensayo</translation>
  </message>
  <message>
   <source>join it from two parts</source>
   <translation>unirlo de dos piezas</translation>
  </message>
  <message>
   <source>joinery</source>
   <translation>uniones</translation>
  </message>
  <message>
   <source>joint</source>
   <translation>unión</translation>
  </message>
  <message>
   <source>joints of the face frame</source>
   <translation>uniones del marco frontal</translation>
  </message>
  <message>
   <source>just inside the front</source>
   <translation>justo detrás del frente</translation>
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for</source>
   <translation>conserva bajo {0} durante años menos reserva de resistencia de la que pide el cálculo de edificios</translation>
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for; the weakest board of its kind would break at {1}{2}{3}</source>
   <translation>conserva bajo {0} durante años menos reserva de resistencia de la que pide el cálculo de edificios; la tabla más floja de su clase se rompería a {1}{2}{3}</translation>
  </message>
  <message>
   <source>kept panel</source>
   <translation>panel conservado</translation>
  </message>
  <message>
   <source>kerf</source>
   <translation>ancho de corte</translation>
  </message>
  <message>
   <source>key</source>
   <translation>clave</translation>
  </message>
  <message>
   <source>key = {0}</source>
   <translation>clave = {0}</translation>
  </message>
  <message>
   <source>kick boards to sides</source>
   <translation>frentes del zócalo a laterales</translation>
  </message>
  <message>
   <source>kind</source>
   <translation>tipo</translation>
  </message>
  <message>
   <source>known are {0}</source>
   <translation>se conocen {0}</translation>
  </message>
  <message>
   <source>known: {0}</source>
   <translation>conocidos: {0}</translation>
  </message>
  <message>
   <source>larger than every sheet of {0}; the nearest, {1}, gives {2} x {3} inside its trim: </source>
   <translation>mayor que cualquier tablero de {0}; el más próximo, {1}, da {2} x {3} dentro del saneado: </translation>
  </message>
  <message>
   <source>lateral load</source>
   <translation>carga lateral</translation>
  </message>
  <message>
   <source>lean of the back wall at the left</source>
   <translation>desplome de la pared trasera a la izquierda</translation>
  </message>
  <message>
   <source>lean of the back wall at the left, half way up</source>
   <translation>desplome de la pared trasera a la izquierda, a media altura</translation>
  </message>
  <message>
   <source>lean of the back wall at the right</source>
   <translation>desplome de la pared trasera a la derecha</translation>
  </message>
  <message>
   <source>lean of the back wall at the right, half way up</source>
   <translation>desplome de la pared trasera a la derecha, a media altura</translation>
  </message>
  <message>
   <source>lean of the left edge</source>
   <translation>desplome del borde izquierdo</translation>
  </message>
  <message>
   <source>lean of the left wall at the back</source>
   <translation>desplome de la pared izquierda al fondo</translation>
  </message>
  <message>
   <source>lean of the left wall at the front</source>
   <translation>desplome de la pared izquierda delante</translation>
  </message>
  <message>
   <source>lean of the left wall at the front, half way up</source>
   <translation>desplome de la pared izquierda delante, a media altura</translation>
  </message>
  <message>
   <source>lean of the opening</source>
   <translation>desplome del vano</translation>
  </message>
  <message>
   <source>lean of the right edge</source>
   <translation>desplome del borde derecho</translation>
  </message>
  <message>
   <source>lean of the right wall at the back</source>
   <translation>desplome de la pared derecha al fondo</translation>
  </message>
  <message>
   <source>lean of the right wall at the front</source>
   <translation>desplome de la pared derecha delante</translation>
  </message>
  <message>
   <source>lean of the right wall at the front, half way up</source>
   <translation>desplome de la pared derecha delante, a media altura</translation>
  </message>
  <message>
   <source>least web as a fraction of the thickness</source>
   <translation>alma mínima como fracción del grueso</translation>
  </message>
  <message>
   <source>leave nothing sound; take it out of the list</source>
   <translation>no dejan nada sano; quitarlo de la lista</translation>
  </message>
  <message>
   <source>leaves a wide gap in its bay: let the bay follow it, or cover the gap with strips</source>
   <translation>deja una holgura ancha en su hueco: hacer que el hueco lo siga, o tapar la holgura con tiras</translation>
  </message>
  <message>
   <source>leaves no box of {0} mm beside, below, above or in front of it; check its sizes, or move it</source>
   <translation>no deja ninguna caja de {0} mm a su lado, debajo, encima ni delante; comprobar sus medidas o moverlo</translation>
  </message>
  <message>
   <source>left baseboard</source>
   <translation>rodapié izquierdo</translation>
  </message>
  <message>
   <source>left bow</source>
   <translation>comba izquierda</translation>
  </message>
  <message>
   <source>left casing</source>
   <translation>tapeta izquierda</translation>
  </message>
  <message>
   <source>left end</source>
   <translation>extremo izquierdo</translation>
  </message>
  <message>
   <source>left lean</source>
   <translation>desplome izquierdo</translation>
  </message>
  <message>
   <source>left return</source>
   <translation>retorno izquierdo</translation>
  </message>
  <message>
   <source>left side</source>
   <translation>lateral izquierdo</translation>
  </message>
  <message>
   <source>left skew</source>
   <translation>desvío izquierdo</translation>
  </message>
  <message>
   <source>left stile</source>
   <translation>montante izquierdo</translation>
  </message>
  <message>
   <source>left twist</source>
   <translation>alabeo izquierdo</translation>
  </message>
  <message>
   <source>left wall</source>
   <translation>pared izquierda</translation>
  </message>
  <message>
   <source>length</source>
   <translation>largo</translation>
  </message>
  <message>
   <source>length = {0}</source>
   <translation>largo = {0}</translation>
  </message>
  <message>
   <source>length along the back</source>
   <translation>largo junto al fondo</translation>
  </message>
  <message>
   <source>length along the side</source>
   <translation>largo junto al lateral</translation>
  </message>
  <message>
   <source>length format</source>
   <translation>formato de longitudes</translation>
  </message>
  <message>
   <source>length of the rod</source>
   <translation>largo de la barra</translation>
  </message>
  <message>
   <source>length step</source>
   <translation>paso de longitud</translation>
  </message>
  <message>
   <source>length {0} of {1}</source>
   <translation>largo {0} de {1}</translation>
  </message>
  <message>
   <source>lengths</source>
   <translation>largos</translation>
  </message>
  <message>
   <source>less than 0 mm</source>
   <translation>menor que 0 mm</translation>
  </message>
  <message>
   <source>let in under the back</source>
   <translation>embutido bajo la trasera</translation>
  </message>
  <message>
   <source>let its grain run the other way</source>
   <translation>poner su veta en el otro sentido</translation>
  </message>
  <message>
   <source>level it with shims: </source>
   <translation>nivelarlo con calzos: </translation>
  </message>
  <message>
   <source>levelling</source>
   <translation>nivelación</translation>
  </message>
  <message>
   <source>levelling {0}</source>
   <translation>nivelación {0}</translation>
  </message>
  <message>
   <source>levels</source>
   <translation>niveles</translation>
  </message>
  <message>
   <source>lid supports on both sides, no latch, a gap at the hinge under {0} or over {1}</source>
   <translation>soportes de tapa a ambos lados, sin pestillo, una holgura en la bisagra menor de {0} o mayor de {1}</translation>
  </message>
  <message>
   <source>lies behind the {0} return: no drawer or pull-out there; shelves reached from the side and rods are at home there</source>
   <translation>queda tras el retorno {0}: ahí ningún cajón ni extraíble; sí baldas accesibles de lado y barras</translation>
  </message>
  <message>
   <source>lies on no sheet; plan again</source>
   <translation>no está en ningún tablero; volver a planificar</translation>
  </message>
  <message>
   <source>lies on {0} uprights and cleats at its ends: it takes two or it comes down</source>
   <translation>apoya en {0} verticales y listones en sus extremos: necesita dos o se cae</translation>
  </message>
  <message>
   <source>lies too far between its supports</source>
   <translation>tiene los apoyos demasiado separados</translation>
  </message>
  <message>
   <source>lift</source>
   <translation>elevación</translation>
  </message>
  <message>
   <source>light clearance</source>
   <translation>distancia a la luz</translation>
  </message>
  <message>
   <source>limits of the tools listed</source>
   <translation>límites de las herramientas indicadas</translation>
  </message>
  <message>
   <source>line {0}</source>
   <translation>línea {0}</translation>
  </message>
  <message>
   <source>linen and clothes</source>
   <translation>ropa blanca y prendas</translation>
  </message>
  <message>
   <source>lines</source>
   <translation>líneas</translation>
  </message>
  <message>
   <source>link the bill that it shows</source>
   <translation>enlazar la lista que muestra</translation>
  </message>
  <message>
   <source>link the closet that the bill is for</source>
   <translation>enlazar el armario al que corresponde la lista</translation>
  </message>
  <message>
   <source>link the closet whose parts are cut</source>
   <translation>enlazar el armario cuyas piezas se cortan</translation>
  </message>
  <message>
   <source>lips to shelves</source>
   <translation>refuerzos a baldas</translation>
  </message>
  <message>
   <source>load</source>
   <translation>carga</translation>
  </message>
  <message>
   <source>load as you entered it; sag: </source>
   <translation>carga según lo introducido; flecha: </translation>
  </message>
  <message>
   <source>load case</source>
   <translation>caso de carga</translation>
  </message>
  <message>
   <source>loaded beyond the ends of its cleats alone it pulls at the {0} x {1} that hold it down on them, at the corner with {2}</source>
   <translation>cargado más allá de los extremos de sus listones solos, tira de los {0} x {1} que lo sujetan a ellos, en la esquina con {2}</translation>
  </message>
  <message>
   <source>loaded sideways</source>
   <translation>carga lateral</translation>
  </message>
  <message>
   <source>local codes and a licensed professional come first</source>
   <translation>priman la normativa local y un profesional titulado</translation>
  </message>
  <message>
   <source>longer or more of them, glue as well, or grooves</source>
   <translation>más largos o más, encolar también, o ranuras</translation>
  </message>
  <message>
   <source>longer than every clear stretch in stock; the longest is {0}: join it from two, or add a longer one</source>
   <translation>más largo que cualquier tramo limpio en existencias; el mayor es {0}: unirlo de dos, o añadir uno más largo</translation>
  </message>
  <message>
   <source>longer than {0} and larger than {1}</source>
   <translation>más largo que {0} y mayor que {1}</translation>
  </message>
  <message>
   <source>lower drawers, or a slide of a heavier class</source>
   <translation>cajones más bajos, o una guía de clase más pesada</translation>
  </message>
  <message>
   <source>lower rod</source>
   <translation>barra inferior</translation>
  </message>
  <message>
   <source>lower than the 27 in from which the rule applies</source>
   <translation>más bajo que las 27 in desde las que se aplica la regla</translation>
  </message>
  <message>
   <source>m metre metres meter meters</source>
   <translation>m metre metres meter meters</translation>
  </message>
  <message>
   <source>make it smaller</source>
   <translation>hacerlo más pequeño</translation>
  </message>
  <message>
   <source>make it smaller by {0}</source>
   <translation>hacerlo {0} más pequeño</translation>
  </message>
  <message>
   <source>make it with a hand saw or a mitre saw, the piece clamped</source>
   <translation>hacerlo con serrucho o ingletadora, con la pieza sujeta</translation>
  </message>
  <message>
   <source>make its {0} {1} less</source>
   <translation>hacer su {0} {1} menor</translation>
  </message>
  <message>
   <source>make room for a copy first</source>
   <translation>hacer sitio primero para una copia</translation>
  </message>
  <message>
   <source>make them {0} wide or less</source>
   <translation>hacerlos de {0} de ancho o menos</translation>
  </message>
  <message>
   <source>make these cuts at home, with help; or let the store show that its saw is better, and enter that</source>
   <translation>hacer estos cortes en casa, con ayuda; o que la tienda muestre que su sierra es mejor, e introducirlo</translation>
  </message>
  <message>
   <source>makes nothing at the {0}: the stile in front of {1} reaches to the wall there</source>
   <translation>no aporta nada en {0}: el montante ante {1} llega ahí a la pared</translation>
  </message>
  <message>
   <source>mark the low, middle and high level all round with the level, from the floor in the front left corner</source>
   <translation>marcar con el nivel la altura baja, media y alta todo alrededor, desde el suelo en la esquina delantera izquierda</translation>
  </message>
  <message>
   <source>mass</source>
   <translation>masa</translation>
  </message>
  <message>
   <source>mass and pitch</source>
   <translation>masa y paso</translation>
  </message>
  <message>
   <source>mass of its drawers</source>
   <translation>masa de sus cajones</translation>
  </message>
  <message>
   <source>material</source>
   <translation>material</translation>
  </message>
  <message>
   <source>material = {0}</source>
   <translation>material = {0}</translation>
  </message>
  <message>
   <source>material {0}</source>
   <translation>material {0}</translation>
  </message>
  <message>
   <source>may come down: </source>
   <translation>puede caerse: </translation>
  </message>
  <message>
   <source>may come down: {0}, and {1}</source>
   <translation>puede caerse: {0}, y {1}</translation>
  </message>
  <message>
   <source>may tip off its cleats: {0}</source>
   <translation>puede volcar de sus listones: {0}</translation>
  </message>
  <message>
   <source>measured</source>
   <translation>medido</translation>
  </message>
  <message>
   <source>measures {0}, outside the {1} of its standard: measure again</source>
   <translation>mide {0}, fuera de {1} de su norma: volver a medir</translation>
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation>tablero de partículas melaminizado</translation>
  </message>
  <message>
   <source>mill sheets</source>
   <translation>hojas de fabricantes</translation>
  </message>
  <message>
   <source>missing</source>
   <translation>falta</translation>
  </message>
  <message>
   <source>mixes metric and inch units; {0}</source>
   <translation>mezcla unidades métricas y pulgadas; {0}</translation>
  </message>
  <message>
   <source>mm millimetre millimetres millimeter millimeters</source>
   <translation>mm millimetre millimetres millimeter millimeters</translation>
  </message>
  <message>
   <source>model</source>
   <translation>modelo</translation>
  </message>
  <message>
   <source>moisture</source>
   <translation>humedad</translation>
  </message>
  <message>
   <source>more are needed</source>
   <translation>se necesitan más</translation>
  </message>
  <message>
   <source>more or longer nails, or glue</source>
   <translation>más clavos o más largos, o cola</translation>
  </message>
  <message>
   <source>more stages than the settings allow</source>
   <translation>más etapas de las que admiten los ajustes</translation>
  </message>
  <message>
   <source>more than {0} times</source>
   <translation>más de {0} veces</translation>
  </message>
  <message>
   <source>mouldings</source>
   <translation>molduras</translation>
  </message>
  <message>
   <source>mullion {0}</source>
   <translation>montante central {0}</translation>
  </message>
  <message>
   <source>must be 0 or 1 on a door</source>
   <translation>debe ser 0 o 1 en una puerta</translation>
  </message>
  <message>
   <source>must be 0 or more</source>
   <translation>debe ser 0 o más</translation>
  </message>
  <message>
   <source>must be 0 or more and leave some of the run of {0} mm</source>
   <translation>debe ser 0 o más y dejar algo del recorrido de {0} mm</translation>
  </message>
  <message>
   <source>must be 0 or more, downward</source>
   <translation>debe ser 0 o más, hacia abajo</translation>
  </message>
  <message>
   <source>must be 0 or more, or none</source>
   <translation>debe ser 0 o más, o ninguno</translation>
  </message>
  <message>
   <source>must be 0 to 10 mm in a metre</source>
   <translation>debe ser de 0 a 10 mm en un metro</translation>
  </message>
  <message>
   <source>must be 0 to 1000 mm</source>
   <translation>debe ser de 0 a 1000 mm</translation>
  </message>
  <message>
   <source>must be 0 to 20000 mm</source>
   <translation>debe ser de 0 a 20000 mm</translation>
  </message>
  <message>
   <source>must be 0 to 500 mm</source>
   <translation>debe ser de 0 a 500 mm</translation>
  </message>
  <message>
   <source>must be 0 to {0} mm</source>
   <translation>debe ser de 0 a {0} mm</translation>
  </message>
  <message>
   <source>must be 0 to {0} mm on a board {1} mm thick{2}</source>
   <translation>debe ser de 0 a {0} mm en una tabla de {1} mm de grueso{2}</translation>
  </message>
  <message>
   <source>must be 0 unless fronts are inset: an overlay hides it</source>
   <translation>debe ser 0 salvo con frentes embutidos: uno superpuesto lo tapa</translation>
  </message>
  <message>
   <source>must be 0.01 to 20 mm: the step to which the tape was read</source>
   <translation>debe ser de 0.01 a 20 mm: el paso con que se leyó la cinta</translation>
  </message>
  <message>
   <source>must be 0.5 to 0.999</source>
   <translation>debe ser de 0.5 a 0.999</translation>
  </message>
  <message>
   <source>must be 1</source>
   <translation>debe ser 1</translation>
  </message>
  <message>
   <source>must be 1 or 2</source>
   <translation>debe ser 1 o 2</translation>
  </message>
  <message>
   <source>must be 1 or more</source>
   <translation>debe ser 1 o más</translation>
  </message>
  <message>
   <source>must be 1 or more to have gaps beside</source>
   <translation>debe ser 1 o más para tener holguras al lado</translation>
  </message>
  <message>
   <source>must be 1 to 10</source>
   <translation>debe ser de 1 a 10</translation>
  </message>
  <message>
   <source>must be 1 to 10 mm, or a front rubs on its neighbour</source>
   <translation>debe ser de 1 a 10 mm, o un frente roza con su vecino</translation>
  </message>
  <message>
   <source>must be 1 to {0} in {1}</source>
   <translation>debe ser de 1 a {0} en {1}</translation>
  </message>
  <message>
   <source>must be 1 to {0} in {1}, bay {2}</source>
   <translation>debe ser de 1 a {0} en {1}, hueco {2}</translation>
  </message>
  <message>
   <source>must be 2 or more and leave {0} mm from one cup to the next in a door {1} mm high</source>
   <translation>debe ser 2 o más y dejar {0} mm de una cazoleta a la siguiente en una puerta de {1} mm de altura</translation>
  </message>
  <message>
   <source>must be 2 under a lid: what lies between is in the way</source>
   <translation>debe ser 2 bajo una tapa: lo que queda en medio estorba</translation>
  </message>
  <message>
   <source>must be 30 to 180 degrees</source>
   <translation>debe ser de 30 a 180 grados</translation>
  </message>
  <message>
   <source>must be 6 to 14 %</source>
   <translation>debe ser del 6 al 14 %</translation>
  </message>
  <message>
   <source>must be MATERIAL=LENGTH[@COST]</source>
   <translation>debe ser MATERIAL=LENGTH[@COST]</translation>
  </message>
  <message>
   <source>must be MATERIAL=LENGTHxWIDTH[@COST]</source>
   <translation>debe ser MATERIAL=LENGTHxWIDTH[@COST]</translation>
  </message>
  <message>
   <source>must be [from, to] along the length, or from, to, from, to with its width, in mm, each start first</source>
   <translation>debe ser [de, a] a lo largo, o de, a, de, a con el ancho, en mm, cada inicio primero</translation>
  </message>
  <message>
   <source>must be a finite decimal such as 0.5 or 0.01</source>
   <translation>debe ser un decimal finito como 0.5 o 0.01</translation>
  </message>
  <message>
   <source>must be a finite number of millimetres</source>
   <translation>debe ser un número finito de milímetros</translation>
  </message>
  <message>
   <source>must be a key of the catalogue</source>
   <translation>debe ser una clave del catálogo</translation>
  </message>
  <message>
   <source>must be a length</source>
   <translation>debe ser una longitud</translation>
  </message>
  <message>
   <source>must be a list</source>
   <translation>debe ser una lista</translation>
  </message>
  <message>
   <source>must be a list of [from, to]</source>
   <translation>debe ser una lista de [from, to]</translation>
  </message>
  <message>
   <source>must be a list of [from, to], or [from, to, from, to]</source>
   <translation>debe ser una lista de [de, a] o [de, a, de, a]</translation>
  </message>
  <message>
   <source>must be a list of lengths</source>
   <translation>debe ser una lista de longitudes</translation>
  </message>
  <message>
   <source>must be a list of numbers</source>
   <translation>debe ser una lista de números</translation>
  </message>
  <message>
   <source>must be a name such as EUR</source>
   <translation>debe ser un nombre como EUR</translation>
  </message>
  <message>
   <source>must be a number</source>
   <translation>debe ser un número</translation>
  </message>
  <message>
   <source>must be a number of mm</source>
   <translation>debe ser un número de mm</translation>
  </message>
  <message>
   <source>must be a number of mm above 0</source>
   <translation>debe ser un número de mm mayor que 0</translation>
  </message>
  <message>
   <source>must be a number or a fraction</source>
   <translation>debe ser un número o una fracción</translation>
  </message>
  <message>
   <source>must be a number or none</source>
   <translation>debe ser un número o ninguno</translation>
  </message>
  <message>
   <source>must be a table of keys and values</source>
   <translation>debe ser una tabla de claves y valores</translation>
  </message>
  <message>
   <source>must be a text</source>
   <translation>debe ser un texto</translation>
  </message>
  <message>
   <source>must be a whole number</source>
   <translation>debe ser un número entero</translation>
  </message>
  <message>
   <source>must be a whole number from {0} on</source>
   <translation>debe ser un número entero desde {0}</translation>
  </message>
  <message>
   <source>must be above 0</source>
   <translation>debe ser mayor que 0</translation>
  </message>
  <message>
   <source>must be above 0 and at most 1000 kg</source>
   <translation>debe ser mayor que 0 y como máximo 1000 kg</translation>
  </message>
  <message>
   <source>must be above 0 and at most as wide as the groove, {0} mm</source>
   <translation>debe ser mayor que 0 y como máximo del ancho de la ranura, {0} mm</translation>
  </message>
  <message>
   <source>must be above 0 and at most {0}</source>
   <translation>debe ser mayor que 0 y como máximo {0}</translation>
  </message>
  <message>
   <source>must be above 0 and at most {0} mm in a panel {1} mm thick</source>
   <translation>debe ser mayor que 0 y como máximo {0} mm en un panel de {1} mm de grueso</translation>
  </message>
  <message>
   <source>must be above 0 and below 20 m</source>
   <translation>debe ser mayor que 0 y menor que 20 m</translation>
  </message>
  <message>
   <source>must be above 0 and below half of the {0} mm of a tube</source>
   <translation>debe ser mayor que 0 y menor que la mitad de los {0} mm de un tubo</translation>
  </message>
  <message>
   <source>must be above 0 mm</source>
   <translation>debe ser mayor que 0 mm</translation>
  </message>
  <message>
   <source>must be above 0: a load needs an area</source>
   <translation>debe ser mayor que 0: una carga necesita una superficie</translation>
  </message>
  <message>
   <source>must be an object with named values</source>
   <translation>debe ser un objeto con valores con nombre</translation>
  </message>
  <message>
   <source>must be as wide as thick, straight along its length and without edge bands</source>
   <translation>debe ser tan ancho como grueso, recto en su largo y sin cantos</translation>
  </message>
  <message>
   <source>must be at least 20 mm; make the frame's members narrower</source>
   <translation>debe ser al menos 20 mm; hacer más estrechas las piezas del marco</translation>
  </message>
  <message>
   <source>must be at least {0} mm</source>
   <translation>debe ser al menos {0} mm</translation>
  </message>
  <message>
   <source>must be at least {0} mm for a hole {1} mm across</source>
   <translation>debe ser al menos {0} mm para un taladro de {1} mm de diámetro</translation>
  </message>
  <message>
   <source>must be at least {0} mm for a strip; give it more clearance or cover it with a moulding</source>
   <translation>debe ser al menos {0} mm para una tira; darle más margen libre o taparlo con una moldura</translation>
  </message>
  <message>
   <source>must be at least {0} mm for the shortest slide, {1} mm, with {2} mm behind it</source>
   <translation>debe ser al menos {0} mm para la guía más corta, {1} mm, con {2} mm detrás</translation>
  </message>
  <message>
   <source>must be at least {0} mm for two rows of holes under loose shelves</source>
   <translation>debe ser al menos {0} mm para dos filas de taladros bajo baldas sueltas</translation>
  </message>
  <message>
   <source>must be at least {0} mm of {1} mm where grooves meet back to back; make them shallower or move one shelf</source>
   <translation>debe ser al menos {0} mm de {1} mm donde las ranuras se encuentran espalda con espalda; hacerlas menos profundas o mover una balda</translation>
  </message>
  <message>
   <source>must be at least {0} mm to hold a shelf; {1} mm lie between the sides for {2} bays</source>
   <translation>debe ser al menos {0} mm para sostener una balda; hay {1} mm entre los laterales para {2} huecos</translation>
  </message>
  <message>
   <source>must be at least {0} mm, and only {1} mm are there{2}</source>
   <translation>debe ser al menos {0} mm, y solo hay {1} mm{2}</translation>
  </message>
  <message>
   <source>must be at least {0} mm; check the readings and the clearances</source>
   <translation>debe ser al menos {0} mm; comprobar las lecturas y los márgenes libres</translation>
  </message>
  <message>
   <source>must be at least {0} mm; the opening is {1} mm wide</source>
   <translation>debe ser al menos {0} mm; el vano tiene {1} mm de ancho</translation>
  </message>
  <message>
   <source>must be at least {0} mm{1}</source>
   <translation>debe ser al menos {0} mm{1}</translation>
  </message>
  <message>
   <source>must be at most {0} mm for a {1}</source>
   <translation>debe ser como máximo {0} mm para {1}</translation>
  </message>
  <message>
   <source>must be at most {0} mm, or drill right through {1} mm</source>
   <translation>debe ser como máximo {0} mm, o taladrar de parte a parte {1} mm</translation>
  </message>
  <message>
   <source>must be at most {0} mm, {1} mm less {2} mm of clearance</source>
   <translation>debe ser como máximo {0} mm, {1} mm menos {2} mm de margen libre</translation>
  </message>
  <message>
   <source>must be at most {0} to leave {1} mm between them in {2} mm</source>
   <translation>debe ser como máximo {0} para dejar {1} mm entre ellos en {2} mm</translation>
  </message>
  <message>
   <source>must be at most {0} to lie side by side in this depth</source>
   <translation>debe ser como máximo {0} para caber uno junto a otro en esta profundidad</translation>
  </message>
  <message>
   <source>must be at most {0} {1} for a {2}</source>
   <translation>debe ser como máximo {0} {1} para {2}</translation>
  </message>
  <message>
   <source>must be fewer: {0} mm of clear height with {1} usable holes leave less than {2} mm between shelves</source>
   <translation>deben ser menos: {0} mm de altura libre con {1} taladros útiles dejan menos de {2} mm entre baldas</translation>
  </message>
  <message>
   <source>must be from {0} to {1} {2}</source>
   <translation>debe ser de {0} a {1} {2}</translation>
  </message>
  <message>
   <source>must be given and must differ from every other's</source>
   <translation>debe darse y ser distinto de todos los demás</translation>
  </message>
  <message>
   <source>must be given by their heights: the lowest lies over {0}</source>
   <translation>debe darse por sus alturas: el más bajo queda sobre {0}</translation>
  </message>
  <message>
   <source>must be given once</source>
   <translation>debe darse una vez</translation>
  </message>
  <message>
   <source>must be given where no carcass carries it</source>
   <translation>debe darse donde ningún cuerpo lo sostiene</translation>
  </message>
  <message>
   <source>must be given, one for each shelf</source>
   <translation>debe darse, uno por cada balda</translation>
  </message>
  <message>
   <source>must be given: a {0} is hollow</source>
   <translation>debe darse: {0} es hueco</translation>
  </message>
  <message>
   <source>must be groove, screws or nails; cleats carry shelves</source>
   <translation>debe ser ranura, tornillos o clavos; los listones sostienen baldas</translation>
  </message>
  <message>
   <source>must be inset or an overlay</source>
   <translation>debe ser embutido o superpuesto</translation>
  </message>
  <message>
   <source>must be larger than the edge band, {0} mm thick</source>
   <translation>debe ser mayor que el canto, de {0} mm de grueso</translation>
  </message>
  <message>
   <source>must be left open for {0} things, which hang on one rod</source>
   <translation>debe dejarse abierto para prendas {0}, que cuelgan de una sola barra</translation>
  </message>
  <message>
   <source>must be left open: it stands in {0}</source>
   <translation>debe dejarse abierto: está en {0}</translation>
  </message>
  <message>
   <source>must be left out of a panel that is tapered or no flat board</source>
   <translation>debe omitirse en un panel en cuña o que no sea una tabla plana</translation>
  </message>
  <message>
   <source>must be lengths above 0 mm, rising</source>
   <translation>deben ser longitudes mayores que 0 mm, crecientes</translation>
  </message>
  <message>
   <source>must be lengths from the front left corner, the first below the second</source>
   <translation>deben ser longitudes desde la esquina delantera izquierda, la primera menor que la segunda</translation>
  </message>
  <message>
   <source>must be less than half of {0} mm</source>
   <translation>debe ser menor que la mitad de {0} mm</translation>
  </message>
  <message>
   <source>must be less than the depth of the groove, {0} mm</source>
   <translation>debe ser menor que la profundidad de la ranura, {0} mm</translation>
  </message>
  <message>
   <source>must be less than the {0} kg of the whole</source>
   <translation>debe ser menor que los {0} kg del conjunto</translation>
  </message>
  <message>
   <source>must be less than the {0} mm across</source>
   <translation>debe ser menor que los {0} mm de diámetro</translation>
  </message>
  <message>
   <source>must be letters, digits, - and _ only</source>
   <translation>deben ser solo letras, cifras, - y _</translation>
  </message>
  <message>
   <source>must be more than 0</source>
   <translation>debe ser mayor que 0</translation>
  </message>
  <message>
   <source>must be more: nothing says where these are: {0}</source>
   <translation>debe ser más: nada dice dónde están estos: {0}</translation>
  </message>
  <message>
   <source>must be none, length or width, or free, along or across</source>
   <translation>debe ser none, length o width, o free, along o across</translation>
  </message>
  <message>
   <source>must be one of {0}</source>
   <translation>debe ser uno de {0}</translation>
  </message>
  <message>
   <source>must be one of {0} mm</source>
   <translation>debe ser uno de {0} mm</translation>
  </message>
  <message>
   <source>must be one value or more above 0, rising</source>
   <translation>debe ser uno o más valores mayores que 0, crecientes</translation>
  </message>
  <message>
   <source>must be shares of its length, rising between 0 and 1</source>
   <translation>deben ser fracciones de su largo, crecientes entre 0 y 1</translation>
  </message>
  <message>
   <source>must be simply supported or clamped</source>
   <translation>debe ser biapoyado o empotrado</translation>
  </message>
  <message>
   <source>must be smaller than the panel, {0} x {1} mm</source>
   <translation>debe ser menor que el panel, {0} x {1} mm</translation>
  </message>
  <message>
   <source>must be solid lumber for a rail</source>
   <translation>debe ser madera maciza para un travesaño</translation>
  </message>
  <message>
   <source>must be text in quotation marks</source>
   <translation>debe ser texto entre comillas</translation>
  </message>
  <message>
   <source>must be the only one there</source>
   <translation>debe ser el único ahí</translation>
  </message>
  <message>
   <source>must be the {0} mm between the sides, or leave one bay's width open</source>
   <translation>debe ser los {0} mm entre los laterales, o dejar abierto el ancho de un hueco</translation>
  </message>
  <message>
   <source>must be there: gaps follow from its readings</source>
   <translation>debe existir: las holguras se deducen de sus lecturas</translation>
  </message>
  <message>
   <source>must be three heights above the floor, rising</source>
   <translation>deben ser tres alturas sobre el suelo, crecientes</translation>
  </message>
  <message>
   <source>must be true or false</source>
   <translation>debe ser verdadero o falso</translation>
  </message>
  <message>
   <source>must be within {0} mm</source>
   <translation>debe estar dentro de {0} mm</translation>
  </message>
  <message>
   <source>must be {0}</source>
   <translation>debe ser {0}</translation>
  </message>
  <message>
   <source>must be {0} mm or more</source>
   <translation>debe ser {0} mm o más</translation>
  </message>
  <message>
   <source>must be {0} mm together, or leave one of them 0 to take what is left</source>
   <translation>deben ser {0} mm en total, o dejar uno en 0 para tomar lo restante</translation>
  </message>
  <message>
   <source>must be {0} mm: a rod along the bay hangs {1} mm under what lies above; or leave it open</source>
   <translation>debe ser {0} mm: una barra a lo largo del hueco cuelga {1} mm bajo lo que tiene encima; o dejarlo abierto</translation>
  </message>
  <message>
   <source>must be {0} to {1}</source>
   <translation>debe ser de {0} a {1}</translation>
  </message>
  <message>
   <source>must be {0} to {1} for the table of lateral loads</source>
   <translation>debe ser de {0} a {1} para la tabla de cargas laterales</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm</source>
   <translation>debe ser de {0} a {1} mm</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm along the {2}</source>
   <translation>debe ser de {0} a {1} mm según {2}</translation>
  </message>
  <message>
   <source>must be {0} to {1} mm{2}</source>
   <translation>debe ser de {0} a {1} mm{2}</translation>
  </message>
  <message>
   <source>must be {0}, as heights</source>
   <translation>debe ser {0}, como alturas</translation>
  </message>
  <message>
   <source>must be {0}, as the heights given</source>
   <translation>debe ser {0}, como las alturas dadas</translation>
  </message>
  <message>
   <source>must be {0}, the number of heights given, or leave the heights out</source>
   <translation>debe ser {0}, el número de alturas dadas, u omitir las alturas</translation>
  </message>
  <message>
   <source>must come out of {0} x {1} mm side by side</source>
   <translation>debe salir de {0} x {1} mm uno junto a otro</translation>
  </message>
  <message>
   <source>must end at the left or at the right</source>
   <translation>debe terminar a la izquierda o a la derecha</translation>
  </message>
  <message>
   <source>must hang on rods that run across</source>
   <translation>debe colgar de barras que vayan a lo ancho</translation>
  </message>
  <message>
   <source>must have a name of its own</source>
   <translation>debe tener un nombre propio</translation>
  </message>
  <message>
   <source>must have one that is {0} mm wide or more for the widest gap; name one, or leave less clearance</source>
   <translation>debe tener uno de {0} mm o más de ancho para la holgura mayor; nombrar uno, o dejar menos margen libre</translation>
  </message>
  <message>
   <source>must keep clear of other cuts</source>
   <translation>debe apartarse de otros cortes</translation>
  </message>
  <message>
   <source>must keep clear of the groove for {0}</source>
   <translation>debe apartarse de la ranura para {0}</translation>
  </message>
  <message>
   <source>must leave something of the sheet of {0}</source>
   <translation>debe dejar algo del tablero de {0}</translation>
  </message>
  <message>
   <source>must leave the hole inside the panel, {0} x {1} mm</source>
   <translation>debe dejar el taladro dentro del panel, {0} x {1} mm</translation>
  </message>
  <message>
   <source>must leave the hole inside the taper</source>
   <translation>debe dejar el taladro dentro de la cuña</translation>
  </message>
  <message>
   <source>must leave the panel within {0} x {1} mm</source>
   <translation>debe dejar el panel dentro de {0} x {1} mm</translation>
  </message>
  <message>
   <source>must lie below the ceiling, {0} mm; enter the heights that were read</source>
   <translation>debe quedar bajo el techo, {0} mm; introducir las alturas leídas</translation>
  </message>
  <message>
   <source>must lie within 0 and {0} mm</source>
   <translation>debe estar entre 0 y {0} mm</translation>
  </message>
  <message>
   <source>must lie within 0 to {0}, its start first</source>
   <translation>debe estar entre 0 y {0}, el inicio primero</translation>
  </message>
  <message>
   <source>must lie within 300 mm either way; enter the offset, not the distance</source>
   <translation>debe estar dentro de 300 mm a uno u otro lado; introducir el desvío, no la distancia</translation>
  </message>
  <message>
   <source>must lie within the span of {0} mm</source>
   <translation>debe estar dentro de la luz de {0} mm</translation>
  </message>
  <message>
   <source>must not be negative</source>
   <translation>no debe ser negativo</translation>
  </message>
  <message>
   <source>must not be negative; {0}</source>
   <translation>no debe ser negativo; {0}</translation>
  </message>
  <message>
   <source>must not be wider than the closet behind it, {0} mm; measure between the jambs, and the width inside, again</source>
   <translation>no debe ser más ancho que el armario detrás, {0} mm; volver a medir entre las jambas y el ancho interior</translation>
  </message>
  <message>
   <source>must not differ by more than a tenth; measure again</source>
   <translation>no deben diferir en más de un décimo; volver a medir</translation>
  </message>
  <message>
   <source>must not lie in a notch</source>
   <translation>no debe caer en una muesca</translation>
  </message>
  <message>
   <source>must not run into another notch</source>
   <translation>no debe meterse en otra muesca</translation>
  </message>
  <message>
   <source>must not run into each other</source>
   <translation>no deben cruzarse</translation>
  </message>
  <message>
   <source>must not run into each other; move one</source>
   <translation>no deben cruzarse; mover uno</translation>
  </message>
  <message>
   <source>must say what it is</source>
   <translation>debe decir qué es</translation>
  </message>
  <message>
   <source>must say where it was read: {0}</source>
   <translation>debe decir dónde se leyó: {0}</translation>
  </message>
  <message>
   <source>name of a component</source>
   <translation>nombre de un componente</translation>
  </message>
  <message>
   <source>narrowest strip</source>
   <translation>tira más estrecha</translation>
  </message>
  <message>
   <source>nearest: {0}</source>
   <translation>el más próximo: {0}</translation>
  </message>
  <message>
   <source>nearly shut, its lid's weight turns it down with {0}, and as much more as lies on it: its supports must hold that together at every height; compare it with what they are made for</source>
   <translation>casi cerrada, el peso de su tapa la hace bajar con {0}, y otro tanto lo que tenga encima: sus soportes deben aguantar ambos a cualquier altura; compararlo con aquello para lo que están hechos</translation>
  </message>
  <message>
   <source>needs a base frame, but the {0} stands on the floor; use shims</source>
   <translation>requiere un bastidor de zócalo, pero {0} apoya en el suelo; usar calzos</translation>
  </message>
  <message>
   <source>needs one hole or more, a diameter above 0 and a pitch that leaves wood between</source>
   <translation>necesita un taladro o más, un diámetro mayor que 0 y un paso que deje madera en medio</translation>
  </message>
  <message>
   <source>no board of the catalogue, no lip and no {0} dividers do</source>
   <translation>ninguna tabla del catálogo, ningún refuerzo frontal y ningunas divisorias {0} bastan</translation>
  </message>
  <message>
   <source>no carcass</source>
   <translation>ningún cuerpo</translation>
  </message>
  <message>
   <source>no closet</source>
   <translation>ningún armario</translation>
  </message>
  <message>
   <source>no document</source>
   <translation>ningún documento</translation>
  </message>
  <message>
   <source>no formula is published for this board; glue the joint, let the shelf into grooves, or test a corner</source>
   <translation>no hay fórmula publicada para esta tabla; encolar la unión, meter la balda en ranuras, o ensayar una esquina</translation>
  </message>
  <message>
   <source>no length is that long; {0}</source>
   <translation>ningún largo llega a tanto; {0}</translation>
  </message>
  <message>
   <source>no length of it is in stock</source>
   <translation>no hay ningún largo en existencias</translation>
  </message>
  <message>
   <source>no light</source>
   <translation>sin luz</translation>
  </message>
  <message>
   <source>no plan buys less</source>
   <translation>ningún plan compra menos</translation>
  </message>
  <message>
   <source>no plan costs less</source>
   <translation>ningún plan cuesta menos</translation>
  </message>
  <message>
   <source>no plan takes less length; prices are lacking</source>
   <translation>ningún plan lleva menos largo; faltan precios</translation>
  </message>
  <message>
   <source>no plan was found for {0} parts of {1} m² on them; {2}: add sheets, or let the search take longer</source>
   <translation>no se encontró plan para {0} piezas de {1} m² en ellos; {2}: añadir tableros, o dejar que la búsqueda dure más</translation>
  </message>
  <message>
   <source>no published formula for screws loaded sideways in such boards</source>
   <translation>no hay fórmula publicada para tornillos con carga lateral en esas tablas</translation>
  </message>
  <message>
   <source>no room for a cleat between the shelves near the middle of the bay</source>
   <translation>no hay sitio para un listón entre las baldas cerca del centro del hueco</translation>
  </message>
  <message>
   <source>no scatter is published ({0})</source>
   <translation>no hay dispersión publicada ({0})</translation>
  </message>
  <message>
   <source>no screw of the catalogue holds in its fronts without coming out at their faces: add one to your catalogue, or take thicker fronts</source>
   <translation>ningún tornillo del catálogo agarra en sus frentes sin salir por la cara: añadir uno al catálogo propio, o usar frentes más gruesos</translation>
  </message>
  <message>
   <source>no screw of the catalogue reaches through {0} of cleat, {1} of gap and {2} of lining far enough into a stud</source>
   <translation>ningún tornillo del catálogo atraviesa {0} de listón, {1} de holgura y {2} de revestimiento y entra lo bastante en un montante</translation>
  </message>
  <message>
   <source>no sheet of it is in stock (there is: {0})</source>
   <translation>no hay ningún tablero en existencias (hay: {0})</translation>
  </message>
  <message>
   <source>no span passes</source>
   <translation>ninguna luz cumple</translation>
  </message>
  <message>
   <source>no standard covers altered furniture; common practice</source>
   <translation>ninguna norma cubre los muebles modificados; práctica habitual</translation>
  </message>
  <message>
   <source>no stud is sure to lie behind it</source>
   <translation>no es seguro que haya un montante detrás</translation>
  </message>
  <message>
   <source>no stud is sure to lie behind its top cleat{0}, or anchor it with brackets</source>
   <translation>no es seguro que haya un montante tras su listón superior{0}, o anclarlo con escuadras</translation>
  </message>
  <message>
   <source>no tool at hand makes cut {0} on {1} (fence {2})</source>
   <translation>ninguna herramienta disponible hace el corte {0} en {1} (guía {2})</translation>
  </message>
  <message>
   <source>no way in was found</source>
   <translation>no se encontró camino de entrada</translation>
  </message>
  <message>
   <source>no withdrawal is published; take no {0}'s hold</source>
   <translation>no hay resistencia al arranque publicada; no contar con el agarre de {0}</translation>
  </message>
  <message>
   <source>none</source>
   <translation>ninguno</translation>
  </message>
  <message>
   <source>none for a drawer</source>
   <translation>ninguno para un cajón</translation>
  </message>
  <message>
   <source>none from {0} to {1}</source>
   <translation>ninguno de {0} a {1}</translation>
  </message>
  <message>
   <source>none yet</source>
   <translation>aún ninguno</translation>
  </message>
  <message>
   <source>northern red oak: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation>northern red oak (roble rojo): Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (de memoria)</translation>
  </message>
  <message>
   <source>not TOML</source>
   <translation>no es TOML</translation>
  </message>
  <message>
   <source>not alone</source>
   <translation>no a solas</translation>
  </message>
  <message>
   <source>not checked</source>
   <translation>no comprobado</translation>
  </message>
  <message>
   <source>not checked by others</source>
   <translation>no comprobado por otras</translation>
  </message>
  <message>
   <source>not checked: damp air; the shelves are taken to be in a dry, heated room</source>
   <translation>no comprobado: aire húmedo; se supone que las baldas están en una estancia seca y calefactada</translation>
  </message>
  <message>
   <source>not checked: how many screws find a stud, since their spacing is not known; find them and enter spacing and place; {0}</source>
   <translation>no comprobado: cuántos tornillos encuentran un montante, pues no se conoce su separación; localizarlos e introducir separación y posición; {0}</translation>
  </message>
  <message>
   <source>not checked: its legs are too long for their depth to be carried from wall to wall; put a leg, a bracket or a side panel under the free end of each; {0}</source>
   <translation>no comprobado: sus alas son demasiado largas para su profundidad para sostenerse de pared a pared; poner una pata, una escuadra o un panel lateral bajo el extremo libre de cada una; {0}</translation>
  </message>
  <message>
   <source>not checked: no design values are published for rails of {0}; take solid lumber, or ask its maker</source>
   <translation>no comprobado: no hay valores de cálculo publicados para travesaños de {0}; usar madera maciza, o preguntar al fabricante</translation>
  </message>
  <message>
   <source>not checked: nobody is to sit on it, but somebody will; enter how many can</source>
   <translation>no comprobado: nadie debe sentarse en él, pero alguien lo hará; introducir cuántos caben</translation>
  </message>
  <message>
   <source>not checked: strength and stability of {0}; {1}</source>
   <translation>no comprobado: resistencia y estabilidad de {0}; {1}</translation>
  </message>
  <message>
   <source>not checked: what children reach and climb; say whether children live or visit here</source>
   <translation>no comprobado: lo que los niños alcanzan y por donde trepan; decir si viven o vienen niños</translation>
  </message>
  <message>
   <source>not checked: what screws hold in {0}: {1}; {2}{3}</source>
   <translation>no comprobado: lo que los tornillos aguantan en {0}: {1}; {2}{3}</translation>
  </message>
  <message>
   <source>not checked: what the screws hold in, since the wall is not known; find out whether it is studs or masonry before you buy screws; {0}</source>
   <translation>no comprobado: en qué agarran los tornillos, pues no se conoce la pared; averiguar si es de montantes o de fábrica antes de comprar tornillos; {0}</translation>
  </message>
  <message>
   <source>not checked: whether a child shut in gets air, since the closed volume is not given</source>
   <translation>no comprobado: si un niño encerrado recibe aire, pues no se da el volumen cerrado</translation>
  </message>
  <message>
   <source>not checked: whether a light in the closet keeps clear of what is stored; say what light there is and how far it is from the nearest storage space; {0}</source>
   <translation>no comprobado: si una luz en el armario se aparta de lo almacenado; decir qué luz hay y a qué distancia está del espacio de almacenaje más próximo; {0}</translation>
  </message>
  <message>
   <source>not checked: whether drawers and doors clear the closet's own door, since its opening is not measured; read the width of the opening</source>
   <translation>no comprobado: si los cajones y las puertas libran la puerta propia del armario, pues su hueco de entrada no está medido; medir el ancho del hueco de entrada</translation>
  </message>
  <message>
   <source>not checked: whether it tips with its drawers open and whether what it stands on carries it; weigh it; {0}</source>
   <translation>no comprobado: si vuelca con los cajones abiertos y si lo soporta aquello en que apoya; pesarlo; {0}</translation>
  </message>
  <message>
   <source>not checked: whether the closet covers outlets, junction boxes, registers or alarms; look before you fasten it; {0}</source>
   <translation>no comprobado: si el armario tapa enchufes, cajas de conexión, rejillas o alarmas; mirar antes de fijarlo; {0}</translation>
  </message>
  <message>
   <source>not checked: whether the shelves carry what you will put on them, since that is not known; say what they are for</source>
   <translation>no comprobado: si las baldas soportan lo que se les ponga, pues no se sabe; decir para qué son</translation>
  </message>
  <message>
   <source>not checked: whether walls, trim or a reused piece carry paint from before 1978, which may hold lead; {0}</source>
   <translation>no comprobado: si paredes, molduras o un mueble reutilizado llevan pintura anterior a 1978, que puede contener plomo; {0}</translation>
  </message>
  <message>
   <source>not checked: who reaches it, since its height is not given</source>
   <translation>no comprobado: quién lo alcanza, pues no se da su altura</translation>
  </message>
  <message>
   <source>not checked: {0} in the edges of {1}, for which nothing is published: glue it on as well, or screw it on through the sides</source>
   <translation>no comprobado: {0} en los bordes de {1}, para los que no hay nada publicado: encolarlo también, o atornillarlo a través de los laterales</translation>
  </message>
  <message>
   <source>not checked: {0} is made for dry, heated rooms; ask its maker for figures in damp air, or take plywood or solid wood</source>
   <translation>no comprobado: {0} está hecho para estancias secas y calefactadas; pedir al fabricante valores en aire húmedo, o usar contrachapado o madera maciza</translation>
  </message>
  <message>
   <source>not checked: {0}, and the wall is not known or not computed; {1}</source>
   <translation>no comprobado: {0}, y la pared no se conoce o no se calcula; {1}</translation>
  </message>
  <message>
   <source>not checked: {0}, and whether a stud lies behind it is not known: find one, and put every screw into it; {1}</source>
   <translation>no comprobado: {0}, y no se sabe si hay un montante detrás: localizar uno y poner en él todos los tornillos; {1}</translation>
  </message>
  <message>
   <source>not checked: {0}: {1}</source>
   <translation>no comprobado: {0}: {1}</translation>
  </message>
  <message>
   <source>not checked: {0}: {1}; {2}</source>
   <translation>no comprobado: {0}: {1}; {2}</translation>
  </message>
  <message>
   <source>not measured, so taken for granted: {0}</source>
   <translation>no medido, así que se da por supuesto: {0}</translation>
  </message>
  <message>
   <source>not planned</source>
   <translation>no planificado</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>no escrito</translation>
  </message>
  <message>
   <source>notch</source>
   <translation>muesca</translation>
  </message>
  <message>
   <source>nothing checks a reading, so that a wrong one would not show: {0}</source>
   <translation>nada comprueba una lectura, así que una errónea no se vería: {0}</translation>
  </message>
  <message>
   <source>nothing found</source>
   <translation>no se encontró nada</translation>
  </message>
  <message>
   <source>nothing is there to be drilled</source>
   <translation>no hay nada que taladrar</translation>
  </message>
  <message>
   <source>nothing keeps the carcass square or takes the screws into the wall; add a back or cleats</source>
   <translation>nada mantiene el cuerpo a escuadra ni recibe los tornillos a la pared; añadir una trasera o listones</translation>
  </message>
  <message>
   <source>nothing to cut</source>
   <translation>nada que cortar</translation>
  </message>
  <message>
   <source>number of fronts</source>
   <translation>número de frentes</translation>
  </message>
  <message>
   <source>number of grooves</source>
   <translation>número de ranuras</translation>
  </message>
  <message>
   <source>number of hinges</source>
   <translation>número de bisagras</translation>
  </message>
  <message>
   <source>number of leaves</source>
   <translation>número de hojas</translation>
  </message>
  <message>
   <source>number of shelves</source>
   <translation>número de baldas</translation>
  </message>
  <message>
   <source>oak pole</source>
   <translation>barra de roble</translation>
  </message>
  <message>
   <source>of bare lengths</source>
   <translation>de largos sin canto</translation>
  </message>
  <message>
   <source>of the length</source>
   <translation>del largo</translation>
  </message>
  <message>
   <source>of the sheets given here</source>
   <translation>de los tableros dados aquí</translation>
  </message>
  <message>
   <source>off by up to {0}</source>
   <translation>desviado hasta {0}</translation>
  </message>
  <message>
   <source>offcut</source>
   <translation>retal</translation>
  </message>
  <message>
   <source>offcut {0}</source>
   <translation>retal {0}</translation>
  </message>
  <message>
   <source>offcuts</source>
   <translation>retales</translation>
  </message>
  <message>
   <source>on carpet, a child on {0}</source>
   <translation>sobre moqueta, un niño en {0}</translation>
  </message>
  <message>
   <source>on cleats</source>
   <translation>sobre listones</translation>
  </message>
  <message>
   <source>on pins</source>
   <translation>sobre soportes</translation>
  </message>
  <message>
   <source>on top of its supports</source>
   <translation>sobre sus apoyos</translation>
  </message>
  <message>
   <source>one at hand</source>
   <translation>una disponible</translation>
  </message>
  <message>
   <source>one of these must be wrong, and the readings do not say which: {0}; measure them again{1}. Until then they count for little</source>
   <translation>una de estas debe de ser errónea, y las lecturas no dicen cuál: {0}; volver a medirlas{1}. Hasta entonces cuentan poco</translation>
  </message>
  <message>
   <source>only the smallest unit may have a fraction; {0}</source>
   <translation>solo la unidad menor puede llevar fracción; {0}</translation>
  </message>
  <message>
   <source>open lamps and pendants set clothes on fire and are not allowed in closets: have an enclosed one fitted; {0}</source>
   <translation>las lámparas abiertas y colgantes prenden fuego a la ropa y no se permiten en armarios: hacer instalar una cerrada; {0}</translation>
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation>lámpara abierta o semicerrada, o colgante</translation>
  </message>
  <message>
   <source>opening {0}, inside {1}</source>
   <translation>hueco de entrada {0}, interior {1}</translation>
  </message>
  <message>
   <source>opens only {0}°, then {1} is in the way</source>
   <translation>se abre solo {0}°, luego estorba {1}</translation>
  </message>
  <message>
   <source>option --length</source>
   <translation>opción --length</translation>
  </message>
  <message>
   <source>option --offcut</source>
   <translation>opción --offcut</translation>
  </message>
  <message>
   <source>option --sheet</source>
   <translation>opción --sheet</translation>
  </message>
  <message>
   <source>option --stages</source>
   <translation>opción --stages</translation>
  </message>
  <message>
   <source>option --{0}</source>
   <translation>opción --{0}</translation>
  </message>
  <message>
   <source>or put a leg under midspan</source>
   <translation>o poner una pata en el centro de la luz</translation>
  </message>
  <message>
   <source>out of date</source>
   <translation>anticuado</translation>
  </message>
  <message>
   <source>outlets and boxes must stay within reach, no breaker panel may be in a clothes closet, and no register or alarm may be covered: cut the back out around them, or have them moved; {0}</source>
   <translation>los enchufes y cajas deben quedar accesibles, ningún cuadro eléctrico puede estar en un ropero, y no se puede tapar ninguna rejilla ni alarma: recortar la trasera en torno a ellos, o hacerlos trasladar; {0}</translation>
  </message>
  <message>
   <source>over the opening</source>
   <translation>sobre el hueco de entrada</translation>
  </message>
  <message>
   <source>over the sides</source>
   <translation>sobre los laterales</translation>
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation>balda superior</translation>
  </message>
  <message>
   <source>overhang at the ends</source>
   <translation>vuelo en los extremos</translation>
  </message>
  <message>
   <source>overhang at the top</source>
   <translation>vuelo superior</translation>
  </message>
  <message>
   <source>overlap of a moulding</source>
   <translation>solape de una moldura</translation>
  </message>
  <message>
   <source>overlay at the {0}</source>
   <translation>superposición en {0}</translation>
  </message>
  <message>
   <source>overlay of the fronts</source>
   <translation>superposición de los frentes</translation>
  </message>
  <message>
   <source>pack out the gap behind it solidly, and put its screws into studs; or blocking between the studs, or a side panel under the shelf; {0}</source>
   <translation>rellenar la holgura de detrás con algo macizo y poner sus tornillos en montantes; o refuerzos entre los montantes, o un panel lateral bajo la balda; {0}</translation>
  </message>
  <message>
   <source>paint from before 1978 may hold lead: have it tested before you sand, saw, scrape or heat it; keep children away; in a home that is let, certified firms only above 6 ft² a room; {0}</source>
   <translation>la pintura anterior a 1978 puede contener plomo: hacerla analizar antes de lijar, serrar, rascar o calentarla; alejar a los niños; en una vivienda alquilada, solo empresas certificadas a partir de 6 ft² por habitación; {0}</translation>
  </message>
  <message>
   <source>panel</source>
   <translation>panel</translation>
  </message>
  <message>
   <source>panel at the {0}</source>
   <translation>panel en {0}</translation>
  </message>
  <message>
   <source>panel {0}</source>
   <translation>panel {0}</translation>
  </message>
  <message>
   <source>part</source>
   <translation>pieza</translation>
  </message>
  <message>
   <source>part list</source>
   <translation>lista de piezas</translation>
  </message>
  <message>
   <source>part {0}</source>
   <translation>pieza {0}</translation>
  </message>
  <message>
   <source>part {0} is not on any sheet</source>
   <translation>la pieza {0} no está en ningún tablero</translation>
  </message>
  <message>
   <source>part {0} is not wanted</source>
   <translation>la pieza {0} no se pide</translation>
  </message>
  <message>
   <source>part {0} is placed twice</source>
   <translation>la pieza {0} está colocada dos veces</translation>
  </message>
  <message>
   <source>part {0} is placed {1} times</source>
   <translation>la pieza {0} está colocada {1} veces</translation>
  </message>
  <message>
   <source>particleboard: {0}</source>
   <translation>tablero de partículas: {0}</translation>
  </message>
  <message>
   <source>parts</source>
   <translation>piezas</translation>
  </message>
  <message>
   <source>parts {0} wide, {1}</source>
   <translation>piezas de {0} de ancho, {1}</translation>
  </message>
  <message>
   <source>passes to {0} between supports</source>
   <translation>cumple hasta {0} entre apoyos</translation>
  </message>
  <message>
   <source>past the side</source>
   <translation>más allá del lateral</translation>
  </message>
  <message>
   <source>piece {0}</source>
   <translation>pieza {0}</translation>
  </message>
  <message>
   <source>piece {0} is cut {1} times</source>
   <translation>la pieza {0} se corta {1} veces</translation>
  </message>
  <message>
   <source>piece {0} is not wanted</source>
   <translation>la pieza {0} no se pide</translation>
  </message>
  <message>
   <source>piece {0} is on no stock length</source>
   <translation>la pieza {0} no está en ninguna barra</translation>
  </message>
  <message>
   <source>pieces</source>
   <translation>piezas</translation>
  </message>
  <message>
   <source>pine pole</source>
   <translation>barra de pino</translation>
  </message>
  <message>
   <source>place</source>
   <translation>lugar</translation>
  </message>
  <message>
   <source>place of a load</source>
   <translation>lugar de una carga</translation>
  </message>
  <message>
   <source>place of the {0}</source>
   <translation>lugar de {0}</translation>
  </message>
  <message>
   <source>plan</source>
   <translation>plan</translation>
  </message>
  <message>
   <source>plan again with the wider kerf</source>
   <translation>volver a planificar con el ancho de corte mayor</translation>
  </message>
  <message>
   <source>plan of lengths</source>
   <translation>plan de largos</translation>
  </message>
  <message>
   <source>plan the sheets again first</source>
   <translation>volver a planificar antes los tableros</translation>
  </message>
  <message>
   <source>plan the sheets first</source>
   <translation>planificar antes los tableros</translation>
  </message>
  <message>
   <source>plaster on lath</source>
   <translation>enlucido sobre listonado</translation>
  </message>
  <message>
   <source>play of a loose shelf</source>
   <translation>juego de una balda suelta</translation>
  </message>
  <message>
   <source>pocket screws</source>
   <translation>tornillos ocultos en ángulo</translation>
  </message>
  <message>
   <source>ponderosa pine: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation>ponderosa pine (pino ponderosa): Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (de memoria)</translation>
  </message>
  <message>
   <source>position</source>
   <translation>posición</translation>
  </message>
  <message>
   <source>price</source>
   <translation>precio</translation>
  </message>
  <message>
   <source>prices are invented: enter your own, with their currency, in your catalogue</source>
   <translation>los precios son inventados: introducir los propios, con su moneda, en el catálogo propio</translation>
  </message>
  <message>
   <source>pulls</source>
   <translation>tiradores</translation>
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation>poner una medición en el grupo del armario</translation>
  </message>
  <message>
   <source>put it into the group of a closet</source>
   <translation>ponerlo en el grupo de un armario</translation>
  </message>
  <message>
   <source>python3 -m closetbench layout</source>
   <translation>python3 -m closetbench layout</translation>
  </message>
  <message>
   <source>quantity</source>
   <translation>cantidad</translation>
  </message>
  <message>
   <source>quarter round</source>
   <translation>cuarto de caña</translation>
  </message>
  <message>
   <source>rail bearer</source>
   <translation>larguero de apoyo</translation>
  </message>
  <message>
   <source>rail {0}</source>
   <translation>travesaño {0}</translation>
  </message>
  <message>
   <source>rails</source>
   <translation>travesaños</translation>
  </message>
  <message>
   <source>reaches past the envelope at the {0}: take less overhang, or have the stile scribed to the wall</source>
   <translation>sobresale del espacio útil en {0}: dar menos vuelo, o ajustar el montante a la pared</translation>
  </message>
  <message>
   <source>reaches {0} past the last thing that carries it: put a cleat or an upright under its end</source>
   <translation>sobresale {0} de lo último que lo sostiene: poner un listón o un apoyo vertical bajo su extremo</translation>
  </message>
  <message>
   <source>readings</source>
   <translation>lecturas</translation>
  </message>
  <message>
   <source>readings that do not agree</source>
   <translation>lecturas que no concuerdan</translation>
  </message>
  <message>
   <source>rear face of a loose shelf's lip</source>
   <translation>cara trasera del refuerzo de una balda suelta</translation>
  </message>
  <message>
   <source>rear kick board</source>
   <translation>frente del zócalo trasero</translation>
  </message>
  <message>
   <source>rear post</source>
   <translation>pie trasero</translation>
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation>lámpara o LED cerrada, empotrada</translation>
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation>fluorescente empotrada</translation>
  </message>
  <message>
   <source>reserved</source>
   <translation>reservado</translation>
  </message>
  <message>
   <source>resolution</source>
   <translation>resolución</translation>
  </message>
  <message>
   <source>resolution of the readings</source>
   <translation>resolución de las lecturas</translation>
  </message>
  <message>
   <source>rest {0}</source>
   <translation>resto {0}</translation>
  </message>
  <message>
   <source>return at the left of the opening</source>
   <translation>retorno a la izquierda del hueco de entrada</translation>
  </message>
  <message>
   <source>return at the left of the opening, high</source>
   <translation>retorno a la izquierda del hueco de entrada, alto</translation>
  </message>
  <message>
   <source>return at the right of the opening</source>
   <translation>retorno a la derecha del hueco de entrada</translation>
  </message>
  <message>
   <source>return beside the opening</source>
   <translation>retorno junto al hueco de entrada</translation>
  </message>
  <message>
   <source>right baseboard</source>
   <translation>rodapié derecho</translation>
  </message>
  <message>
   <source>right bow</source>
   <translation>comba derecha</translation>
  </message>
  <message>
   <source>right casing</source>
   <translation>tapeta derecha</translation>
  </message>
  <message>
   <source>right end</source>
   <translation>extremo derecho</translation>
  </message>
  <message>
   <source>right return</source>
   <translation>retorno derecho</translation>
  </message>
  <message>
   <source>right side</source>
   <translation>lateral derecho</translation>
  </message>
  <message>
   <source>right skew</source>
   <translation>desvío derecho</translation>
  </message>
  <message>
   <source>right stile</source>
   <translation>montante derecho</translation>
  </message>
  <message>
   <source>right twist</source>
   <translation>alabeo derecho</translation>
  </message>
  <message>
   <source>right wall</source>
   <translation>pared derecha</translation>
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation>cortes al hilo y transversales</translation>
  </message>
  <message>
   <source>rips only</source>
   <translation>solo cortes al hilo</translation>
  </message>
  <message>
   <source>rise of the floor from front left to back right</source>
   <translation>desnivel del suelo de delante izquierda a fondo derecha</translation>
  </message>
  <message>
   <source>rise of the floor from front to back at the left</source>
   <translation>desnivel del suelo de delante a atrás a la izquierda</translation>
  </message>
  <message>
   <source>rise of the floor from front to back at the right</source>
   <translation>desnivel del suelo de delante a atrás a la derecha</translation>
  </message>
  <message>
   <source>rise of the floor from left to right at the back</source>
   <translation>desnivel del suelo de izquierda a derecha al fondo</translation>
  </message>
  <message>
   <source>rise of the floor from left to right at the front</source>
   <translation>desnivel del suelo de izquierda a derecha delante</translation>
  </message>
  <message>
   <source>rise of the floor from left to the middle at the back</source>
   <translation>desnivel del suelo de la izquierda al centro al fondo</translation>
  </message>
  <message>
   <source>rise of the floor from left to the middle at the front</source>
   <translation>desnivel del suelo de la izquierda al centro delante</translation>
  </message>
  <message>
   <source>rise of the lower edge</source>
   <translation>subida del borde inferior</translation>
  </message>
  <message>
   <source>rise of the upper edge</source>
   <translation>subida del borde superior</translation>
  </message>
  <message>
   <source>round section</source>
   <translation>sección redonda</translation>
  </message>
  <message>
   <source>rout with panel and straightedge clamped, against the bit's turn, in passes no deeper than half the bit's diameter; let the bit stop before you lift it; eyes and ears protected; the router's own manual comes first</source>
   <translation>fresar con el panel y la regla guía sujetos, contra el giro de la fresa, en pasadas no más profundas que la mitad del diámetro de la fresa; dejar que la fresa pare antes de levantarla; ojos y oídos protegidos; prima el manual de la fresadora</translation>
  </message>
  <message>
   <source>router bit</source>
   <translation>fresa</translation>
  </message>
  <message>
   <source>row</source>
   <translation>fila</translation>
  </message>
  <message>
   <source>sags</source>
   <translation>flecta</translation>
  </message>
  <message>
   <source>sags too much</source>
   <translation>flecta demasiado</translation>
  </message>
  <message>
   <source>sags too much:</source>
   <translation>flecta demasiado:</translation>
  </message>
  <message>
   <source>saw with the sheet held on both sides of the cut so that the kerf cannot close, the guard and the riving knife on, the blade just through, push sticks, nobody in line with the blade; eyes and ears protected; unplug before changing a blade; the saw's own manual comes first</source>
   <translation>serrar con el tablero sujeto a ambos lados del corte para que este no pueda cerrarse, la protección y la cuchilla divisora puestas, la hoja asomando apenas, empujadores, nadie en línea con la hoja; ojos y oídos protegidos; desenchufar antes de cambiar la hoja; prima el manual de la sierra</translation>
  </message>
  <message>
   <source>saw {0}</source>
   <translation>sierra {0}</translation>
  </message>
  <message>
   <source>say the unit of {0}; {1}</source>
   <translation>decir la unidad de {0}; {1}</translation>
  </message>
  <message>
   <source>say which board they are in</source>
   <translation>decir en qué tabla están</translation>
  </message>
  <message>
   <source>says no {0}: {1}</source>
   <translation>no dice {0}: {1}</translation>
  </message>
  <message>
   <source>screws through its cleats</source>
   <translation>tornillos a través de sus listones</translation>
  </message>
  <message>
   <source>scribe allowance</source>
   <translation>margen de ajuste</translation>
  </message>
  <message>
   <source>scribed to the floor</source>
   <translation>ajustado al suelo</translation>
  </message>
  <message>
   <source>search, for each material</source>
   <translation>búsqueda, por cada material</translation>
  </message>
  <message>
   <source>seconds more for simpler cutting (as --seconds)</source>
   <translation>segundos más para un corte más sencillo (como --seconds)</translation>
  </message>
  <message>
   <source>section</source>
   <translation>sección</translation>
  </message>
  <message>
   <source>set the hinges so that their axis is plumb, or the door swings by itself</source>
   <translation>ajustar las bisagras de modo que su eje quede a plomo, o la puerta se mueve sola</translation>
  </message>
  <message>
   <source>set the rails upright ({0} high, not {1}), </source>
   <translation>poner los travesaños de canto ({0} de altura, no {1}), </translation>
  </message>
  <message>
   <source>setback of a loose shelf</source>
   <translation>retranqueo de una balda suelta</translation>
  </message>
  <message>
   <source>shallower legs, longer screws, or a leg under its front</source>
   <translation>alas menos profundas, tornillos más largos, o una pata bajo su frente</translation>
  </message>
  <message>
   <source>sheet</source>
   <translation>tablero</translation>
  </message>
  <message>
   <source>sheet size</source>
   <translation>medida del tablero</translation>
  </message>
  <message>
   <source>sheet {0}</source>
   <translation>tablero {0}</translation>
  </message>
  <message>
   <source>sheet {0} is not in stock</source>
   <translation>el tablero {0} no está en existencias</translation>
  </message>
  <message>
   <source>sheet {0} is used {1} times, there are {2}</source>
   <translation>el tablero {0} se usa {1} veces, hay {2}</translation>
  </message>
  <message>
   <source>sheet {0} of {1}</source>
   <translation>tablero {0} de {1}</translation>
  </message>
  <message>
   <source>sheet {0}, {1} wide, gives {2} of {3} and {4} are left{5}; at {6} or less it gives {7}{8}</source>
   <translation>el tablero {0}, de {1} de ancho, da {2} de {3} y sobran {4}{5}; con {6} o menos da {7}{8}</translation>
  </message>
  <message>
   <source>sheets in stock</source>
   <translation>tableros en existencias</translation>
  </message>
  <message>
   <source>sheets that can be bought</source>
   <translation>tableros que se pueden comprar</translation>
  </message>
  <message>
   <source>shelf load</source>
   <translation>carga de balda</translation>
  </message>
  <message>
   <source>shelf pin holes</source>
   <translation>taladros de soportes de balda</translation>
  </message>
  <message>
   <source>shelf pins</source>
   <translation>soportes de balda</translation>
  </message>
  <message>
   <source>shelf {0}</source>
   <translation>balda {0}</translation>
  </message>
  <message>
   <source>shelf {0} back cleat</source>
   <translation>balda {0}, listón trasero</translation>
  </message>
  <message>
   <source>shelf {0} side cleat</source>
   <translation>balda {0}, listón lateral</translation>
  </message>
  <message>
   <source>shelves lie level on both sides, so the second cannot be fastened straight through the divider: let shelves into grooves, carry them on cleats or set them off</source>
   <translation>hay baldas a la misma altura en ambos lados, así que la segunda no se puede fijar recta a través de la divisoria: meter las baldas en ranuras, ponerlas sobre listones o desplazarlas</translation>
  </message>
  <message>
   <source>shelves to their cleats</source>
   <translation>baldas a sus listones</translation>
  </message>
  <message>
   <source>shim the slides plumb and parallel</source>
   <translation>calzar las guías a plomo y paralelas</translation>
  </message>
  <message>
   <source>shimmed under its cross members alone, each field of it carries {0} with all shelves full over {1}</source>
   <translation>calzado solo bajo sus traviesas, cada tramo soporta {0} con todas las baldas llenas sobre {1}</translation>
  </message>
  <message>
   <source>shims under the rails between the cross members too, closer cross members, or a higher base</source>
   <translation>calzos también bajo los travesaños entre las traviesas, traviesas más juntas, o un zócalo más alto</translation>
  </message>
  <message>
   <source>shoe shelf</source>
   <translation>balda para zapatos</translation>
  </message>
  <message>
   <source>shop</source>
   <translation>taller</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>biapoyado</translation>
  </message>
  <message>
   <source>sitters</source>
   <translation>personas sentadas</translation>
  </message>
  <message>
   <source>size</source>
   <translation>medida</translation>
  </message>
  <message>
   <source>sizes and grooves use the nominal {0}, but boards sold as that may be {1}: measure the sheets before cutting and enter the thickness</source>
   <translation>medidas y ranuras usan el nominal {0}, pero las tablas vendidas así pueden tener {1}: medir los tableros antes de cortar e introducir el grueso</translation>
  </message>
  <message>
   <source>skin under a blind hole</source>
   <translation>grueso restante bajo un taladro ciego</translation>
  </message>
  <message>
   <source>slide bearer</source>
   <translation>apoyo de guía</translation>
  </message>
  <message>
   <source>slide length</source>
   <translation>largo de la guía</translation>
  </message>
  <message>
   <source>small table saw</source>
   <translation>sierra de mesa pequeña</translation>
  </message>
  <message>
   <source>solid lumber</source>
   <translation>madera maciza</translation>
  </message>
  <message>
   <source>solid wood: it swells and shrinks by about {0} across the grain between winter and summer; fasten it firmly at one edge only and leave room at the other</source>
   <translation>madera maciza: se hincha y merma unos {0} a través de la veta entre invierno y verano; fijarla firme solo por un borde y dejar espacio en el otro</translation>
  </message>
  <message>
   <source>spacing of the base's cross members</source>
   <translation>separación de las traviesas del zócalo</translation>
  </message>
  <message>
   <source>span over</source>
   <translation>luz sobre</translation>
  </message>
  <message>
   <source>spans to {0} pass</source>
   <translation>cumplen luces hasta {0}</translation>
  </message>
  <message>
   <source>specific gravity</source>
   <translation>densidad relativa</translation>
  </message>
  <message>
   <source>split its {0} into pieces of {1} or less</source>
   <translation>dividir su {0} en piezas de {1} o menos</translation>
  </message>
  <message>
   <source>stages</source>
   <translation>etapas</translation>
  </message>
  <message>
   <source>stands for none given; write another value</source>
   <translation>equivale a no dado; escribir otro valor</translation>
  </message>
  <message>
   <source>stands in {0}</source>
   <translation>está en {0}</translation>
  </message>
  <message>
   <source>stands out in front of the envelope: make the carcass shallower, or have it lie over the wall beside the opening on purpose</source>
   <translation>sobresale por delante del espacio útil: hacer el cuerpo menos profundo, o dejarlo a propósito sobre la pared junto al hueco de entrada</translation>
  </message>
  <message>
   <source>start above the compartment's floor</source>
   <translation>inicio sobre el suelo del compartimento</translation>
  </message>
  <message>
   <source>statics: the door's weight turns about its hinges, the top one is pulled; test load: ANSI/KCMA A161.1, 6.1 (as quoted)</source>
   <translation>estática: el peso de la puerta gira sobre sus bisagras, de la superior se tira; carga de ensayo: ANSI/KCMA A161.1, 6.1 (según cita)</translation>
  </message>
  <message>
   <source>statics; {0}</source>
   <translation>estática; {0}</translation>
  </message>
  <message>
   <source>steel studs</source>
   <translation>montantes de acero</translation>
  </message>
  <message>
   <source>steel tube</source>
   <translation>tubo de acero</translation>
  </message>
  <message>
   <source>steel: E 200 GPa; yield of soft tube 205 N/mm² over 1.67 (from memory)</source>
   <translation>acero: E 200 GPa; límite elástico del tubo blando 205 N/mm² entre 1.67 (de memoria)</translation>
  </message>
  <message>
   <source>step of the groove depth</source>
   <translation>paso de la profundidad de ranura</translation>
  </message>
  <message>
   <source>stiffness</source>
   <translation>rigidez</translation>
  </message>
  <message>
   <source>stock length</source>
   <translation>largo en existencias</translation>
  </message>
  <message>
   <source>stock length {0}</source>
   <translation>largo en existencias {0}</translation>
  </message>
  <message>
   <source>stock length {0} is taken {1} times, there are {2}</source>
   <translation>la barra {0} se toma {1} veces, hay {2}</translation>
  </message>
  <message>
   <source>stock lengths</source>
   <translation>largos en existencias</translation>
  </message>
  <message>
   <source>stop {0}</source>
   <translation>tope {0}</translation>
  </message>
  <message>
   <source>stops</source>
   <translation>topes</translation>
  </message>
  <message>
   <source>stops to shoe shelves</source>
   <translation>topes a baldas para zapatos</translation>
  </message>
  <message>
   <source>store cuts</source>
   <translation>cortes de la tienda</translation>
  </message>
  <message>
   <source>store panel saw</source>
   <translation>seccionadora de la tienda</translation>
  </message>
  <message>
   <source>straight through the opening</source>
   <translation>recto por el hueco de entrada</translation>
  </message>
  <message>
   <source>straightedge saw</source>
   <translation>sierra con regla guía</translation>
  </message>
  <message>
   <source>strip behind the lid</source>
   <translation>tira detrás de la tapa</translation>
  </message>
  <message>
   <source>stud spacing</source>
   <translation>separación de los montantes</translation>
  </message>
  <message>
   <source>style</source>
   <translation>estilo</translation>
  </message>
  <message>
   <source>sum of the bay widths</source>
   <translation>suma de los anchos de los huecos</translation>
  </message>
  <message>
   <source>supports</source>
   <translation>apoyos</translation>
  </message>
  <message>
   <source>supports at most {0} apart: {1} between the ends</source>
   <translation>apoyos a {0} como máximo: {1} entre los extremos</translation>
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation>lámpara o LED cerrada, de superficie</translation>
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation>fluorescente de superficie</translation>
  </message>
  <message>
   <source>survey</source>
   <translation>medición</translation>
  </message>
  <message>
   <source>table</source>
   <translation>tabla</translation>
  </message>
  <message>
   <source>table saw</source>
   <translation>sierra de mesa</translation>
  </message>
  <message>
   <source>take a second person along, or let the store cut more</source>
   <translation>llevar a una segunda persona, o dejar que la tienda corte más</translation>
  </message>
  <message>
   <source>take higher rails, </source>
   <translation>usar travesaños más altos, </translation>
  </message>
  <message>
   <source>taken as heavy softwood: not known</source>
   <translation>tomado como conífera pesada: no conocido</translation>
  </message>
  <message>
   <source>taken to be straight, since no reading would show it: no {0}; hold a straightedge to them, or take the readings half way that the survey sheet asks for</source>
   <translation>se suponen rectos, pues ninguna lectura lo mostraría: sin {0}; apoyarles una regla, o tomar las lecturas a media distancia que pide la hoja de medición</translation>
  </message>
  <message>
   <source>takes the place of the list's own</source>
   <translation>sustituye a lo que dice la lista</translation>
  </message>
  <message>
   <source>takes the same space as {0}: move one of them or make it smaller</source>
   <translation>ocupa el mismo espacio que {0}: mover uno de ellos o hacerlo más pequeño</translation>
  </message>
  <message>
   <source>takes three people</source>
   <translation>requiere tres personas</translation>
  </message>
  <message>
   <source>takes two people</source>
   <translation>requiere dos personas</translation>
  </message>
  <message>
   <source>taper of the {0}</source>
   <translation>cuña de {0}</translation>
  </message>
  <message>
   <source>tapers</source>
   <translation>cuñas</translation>
  </message>
  <message>
   <source>text</source>
   <translation>texto</translation>
  </message>
  <message>
   <source>that is a folder; give a file's name</source>
   <translation>eso es una carpeta; dar el nombre de un archivo</translation>
  </message>
  <message>
   <source>that the summary is written in</source>
   <translation>en el que se escribe el resumen</translation>
  </message>
  <message>
   <source>the back wall is plumb</source>
   <translation>la pared trasera está a plomo</translation>
  </message>
  <message>
   <source>the boring for the {0} is common practice: compare it with the sheet of the hinge in hand, and bore a trial piece first</source>
   <translation>el taladro para {0} es práctica habitual: compararlo con la ficha de la bisagra que se tiene, y taladrar antes una pieza de prueba</translation>
  </message>
  <message>
   <source>the cleats are too small for the screws into the wall</source>
   <translation>los listones son demasiado pequeños para los tornillos a la pared</translation>
  </message>
  <message>
   <source>the closet is as square in plan at the left as at the right</source>
   <translation>el armario está tan a escuadra en planta a la izquierda como a la derecha</translation>
  </message>
  <message>
   <source>the closet's own door, open</source>
   <translation>la puerta propia del armario, abierta</translation>
  </message>
  <message>
   <source>the comma can be read in two ways; type {0} or {1}</source>
   <translation>la coma se puede leer de dos maneras; escribir {0} o {1}</translation>
  </message>
  <message>
   <source>the design value is for the weakest twentieth of the grade, over 2.1 (ASTM D245)</source>
   <translation>el valor de cálculo es para el 5 % más débil de la clase, entre 2.1 (ASTM D245)</translation>
  </message>
  <message>
   <source>the drawers pull out {0} of {1}; the rear stays inside</source>
   <translation>los cajones salen {0} de {1}; la parte trasera queda dentro</translation>
  </message>
  <message>
   <source>the fence at {0} mm is not where the kerf is</source>
   <translation>la guía a {0} mm no está donde está el corte</translation>
  </message>
  <message>
   <source>the figures of the {0} are no maker's: enter the sheet of the slide in hand as a class of your own before cutting</source>
   <translation>los datos de {0} no son de ningún fabricante: introducir antes de cortar la ficha de la guía que se tiene como clase propia</translation>
  </message>
  <message>
   <source>the file holds [[offcut]] tables only</source>
   <translation>el archivo solo contiene tablas [[offcut]]</translation>
  </message>
  <message>
   <source>the first line names the columns</source>
   <translation>la primera línea nombra las columnas</translation>
  </message>
  <message>
   <source>the first names columns: {0}</source>
   <translation>la primera nombra columnas: {0}</translation>
  </message>
  <message>
   <source>the floor falls too far to be shimmed: scribe the base frame to it</source>
   <translation>el suelo cae demasiado para calzarlo: ajustar a él el bastidor del zócalo</translation>
  </message>
  <message>
   <source>the floor is level from front to back</source>
   <translation>el suelo está a nivel de delante a atrás</translation>
  </message>
  <message>
   <source>the floor is level from left to right</source>
   <translation>el suelo está a nivel de izquierda a derecha</translation>
  </message>
  <message>
   <source>the fraction after a whole number must be under 1; {0}</source>
   <translation>la fracción tras un número entero debe ser menor que 1; {0}</translation>
  </message>
  <message>
   <source>the front edge of a shelf</source>
   <translation>el borde frontal de una balda</translation>
  </message>
  <message>
   <source>the front edges show the raw core of {0}; choose an edge band</source>
   <translation>los bordes frontales muestran el alma vista de {0}; elegir un canto</translation>
  </message>
  <message>
   <source>the front of an open drawer</source>
   <translation>el frente de un cajón abierto</translation>
  </message>
  <message>
   <source>the gap at the {0} is wider than a scribed filler usually covers</source>
   <translation>la holgura en {0} es mayor de lo que suele cubrir un listón ajustado</translation>
  </message>
  <message>
   <source>the gap between the shelf and the walls is wider than the quarter rounds: scribe it to the walls, or name a larger one</source>
   <translation>la holgura entre la balda y las paredes es mayor que los cuartos de caña: ajustarla a las paredes, o nombrar uno mayor</translation>
  </message>
  <message>
   <source>the gap under the base is wider than the quarter rounds: scribe the base frame to the floor, or name a larger one</source>
   <translation>la holgura bajo el zócalo es mayor que los cuartos de caña: ajustar el bastidor del zócalo al suelo, o nombrar uno mayor</translation>
  </message>
  <message>
   <source>the heading has {0}</source>
   <translation>el encabezado tiene {0}</translation>
  </message>
  <message>
   <source>the holes for a {0}{1} cannot be drilled: {2}; move it or what is in its way</source>
   <translation>los taladros para {0}{1} no se pueden hacer: {2}; moverlo o mover lo que estorba</translation>
  </message>
  <message>
   <source>the layout reckons with a kerf of {0}, the {1} takes {2}: the last parts of a row come out small</source>
   <translation>el plano cuenta con un ancho de corte de {0}, {1} se lleva {2}: las últimas piezas de una fila salen pequeñas</translation>
  </message>
  <message>
   <source>the left return</source>
   <translation>el retorno izquierdo</translation>
  </message>
  <message>
   <source>the left wall is plumb</source>
   <translation>la pared izquierda está a plomo</translation>
  </message>
  <message>
   <source>the lid can fall on a child leaning in: fit supports that hold it at any height without adjustment, or make it a drawer; {0}</source>
   <translation>la tapa puede caer sobre un niño asomado: poner soportes que la sujeten a cualquier altura sin ajuste, o hacerlo cajón; {0}</translation>
  </message>
  <message>
   <source>the lines before say {0}</source>
   <translation>las líneas anteriores dicen {0}</translation>
  </message>
  <message>
   <source>the longest span that passes is {0}</source>
   <translation>la mayor luz que cumple es {0}</translation>
  </message>
  <message>
   <source>the lower number of a fraction must not be 0; {0}</source>
   <translation>el número inferior de una fracción no debe ser 0; {0}</translation>
  </message>
  <message>
   <source>the middle of the closet's sliding panels</source>
   <translation>el centro de las hojas correderas del armario</translation>
  </message>
  <message>
   <source>the name must end in {0}</source>
   <translation>el nombre debe terminar en {0}</translation>
  </message>
  <message>
   <source>the number must be {0}</source>
   <translation>el número debe ser {0}</translation>
  </message>
  <message>
   <source>the opening is in the middle of the front</source>
   <translation>el hueco de entrada está en el centro del frente</translation>
  </message>
  <message>
   <source>the part list, JSON or CSV</source>
   <translation>la lista de piezas, JSON o CSV</translation>
  </message>
  <message>
   <source>the plan takes it, but it is not at hand</source>
   <translation>el plan lo usa, pero no está disponible</translation>
  </message>
  <message>
   <source>the plan to write, JSON; else it is printed</source>
   <translation>el plan que escribir, JSON; si no, se imprime</translation>
  </message>
  <message>
   <source>the readings agree less well with flat walls than their tape allows; all sizes are less certain by this factor, and more readings would help</source>
   <translation>las lecturas concuerdan con paredes planas menos de lo que admite su cinta; todas las medidas son menos seguras en este factor, y más lecturas ayudarían</translation>
  </message>
  <message>
   <source>the readings show a {0}{1}</source>
   <translation>las lecturas muestran {0}{1}</translation>
  </message>
  <message>
   <source>the right return</source>
   <translation>el retorno derecho</translation>
  </message>
  <message>
   <source>the rule exempts units permanently attached to the building, and only those</source>
   <translation>la regla exime a las unidades fijadas permanentemente al edificio, y solo a esas</translation>
  </message>
  <message>
   <source>the same seed, the same plan</source>
   <translation>la misma semilla, el mismo plan</translation>
  </message>
  <message>
   <source>the screws of its supports, each of which carries up to {0}</source>
   <translation>los tornillos de sus apoyos, cada uno de los cuales carga hasta {0}</translation>
  </message>
  <message>
   <source>the sizes of these hang on the {0}, and the sheet has nothing to spare for cutting them larger first: {1}</source>
   <translation>las medidas de estas piezas dependen de la sierra ({0}), y al tablero no le sobra nada para cortarlas primero más grandes: {1}</translation>
  </message>
  <message>
   <source>the slides lie behind a face frame: pack them out by {0} at the left and {1} at the right, flush with the frame's edges</source>
   <translation>las guías quedan tras un marco frontal: suplementarlas {0} a la izquierda y {1} a la derecha, enrasadas con los bordes del marco</translation>
  </message>
  <message>
   <source>the span that passes is {0}</source>
   <translation>la luz que cumple es {0}</translation>
  </message>
  <message>
   <source>the top gives way under one person between two rails</source>
   <translation>la tapa cede bajo una persona entre dos travesaños</translation>
  </message>
  <message>
   <source>the top may break under one person between two rails</source>
   <translation>la tapa puede romperse bajo una persona entre dos travesaños</translation>
  </message>
  <message>
   <source>the wall above the opening</source>
   <translation>la pared sobre el hueco de entrada</translation>
  </message>
  <message>
   <source>the wall is not known or not computed, so no screws for it are in the bill</source>
   <translation>la pared no se conoce o no se calcula, así que la lista no incluye tornillos para ella</translation>
  </message>
  <message>
   <source>the {0}</source>
   <translation>{0}</translation>
  </message>
  <message>
   <source>the {0} cannot be right: {1} was read, {2} follows from the others; measure it again. The room is worked out without it</source>
   <translation>{0}: no puede ser correcto; se leyó {1}, de las demás se deduce {2}; volver a medirlo. La sala se calcula sin ello</translation>
  </message>
  <message>
   <source>there already is a piece {0}</source>
   <translation>ya hay una pieza {0}</translation>
  </message>
  <message>
   <source>there is no folder {0}; make it or choose another</source>
   <translation>no hay ninguna carpeta {0}; crearla o elegir otra</translation>
  </message>
  <message>
   <source>there is no piece {0} at this point</source>
   <translation>no hay ninguna pieza {0} en este punto</translation>
  </message>
  <message>
   <source>there is no such offcut</source>
   <translation>no hay tal retal</translation>
  </message>
  <message>
   <source>there is nothing to write yet</source>
   <translation>aún no hay nada que escribir</translation>
  </message>
  <message>
   <source>there must be one of it</source>
   <translation>debe haber uno</translation>
  </message>
  <message>
   <source>they do not give {0} pieces of {1} m in all; add some</source>
   <translation>no dan {0} piezas de {1} m en total; añadir algunas</translation>
  </message>
  <message>
   <source>they reach only {0} into a stud</source>
   <translation>solo entran {0} en un montante</translation>
  </message>
  <message>
   <source>thickness of a door</source>
   <translation>grueso de una puerta</translation>
  </message>
  <message>
   <source>thickness of the baseboard</source>
   <translation>grueso del rodapié</translation>
  </message>
  <message>
   <source>thickness of the board</source>
   <translation>grueso de la tabla</translation>
  </message>
  <message>
   <source>thickness of the box's sides</source>
   <translation>grueso de los laterales de la caja</translation>
  </message>
  <message>
   <source>thickness of the casing</source>
   <translation>grueso de la tapeta</translation>
  </message>
  <message>
   <source>thickness of the closet's own door</source>
   <translation>grueso de la puerta propia del armario</translation>
  </message>
  <message>
   <source>thickness of the top</source>
   <translation>grueso de la tapa</translation>
  </message>
  <message>
   <source>thickness of the wall at the opening</source>
   <translation>grueso de la pared en el hueco de entrada</translation>
  </message>
  <message>
   <source>thing in the middle of a shelf</source>
   <translation>objeto en el centro de una balda</translation>
  </message>
  <message>
   <source>tilted under the lintel</source>
   <translation>inclinado bajo el dintel</translation>
  </message>
  <message>
   <source>tilted up</source>
   <translation>inclinado hacia arriba</translation>
  </message>
  <message>
   <source>title</source>
   <translation>título</translation>
  </message>
  <message>
   <source>to be cut from a {0}</source>
   <translation>por cortar de {0}</translation>
  </message>
  <message>
   <source>to carry slides</source>
   <translation>para sostener guías</translation>
  </message>
  <message>
   <source>to cover the dividers' edges and leave an opening</source>
   <translation>para cubrir los bordes de las divisorias y dejar un vano</translation>
  </message>
  <message>
   <source>to cover the shelf's edge, from {0}</source>
   <translation>para cubrir el borde de la balda, desde {0}</translation>
  </message>
  <message>
   <source>to cover the side's edge and leave an opening</source>
   <translation>para cubrir el borde del lateral y dejar un vano</translation>
  </message>
  <message>
   <source>to cover the slide, with {0} mm above and {1} mm below</source>
   <translation>para cubrir la guía, con {0} mm encima y {1} mm debajo</translation>
  </message>
  <message>
   <source>to fit in</source>
   <translation>para caber</translation>
  </message>
  <message>
   <source>to fit the envelope</source>
   <translation>para caber en el espacio útil</translation>
  </message>
  <message>
   <source>to lie in the bay</source>
   <translation>para quedar en el hueco</translation>
  </message>
  <message>
   <source>to lie in what is left of the side</source>
   <translation>para quedar en lo que resta del lateral</translation>
  </message>
  <message>
   <source>to the wall</source>
   <translation>a la pared</translation>
  </message>
  <message>
   <source>toe kick</source>
   <translation>retranqueo del zócalo</translation>
  </message>
  <message>
   <source>tongue and groove</source>
   <translation>machihembrado</translation>
  </message>
  <message>
   <source>too many turns</source>
   <translation>demasiados giros</translation>
  </message>
  <message>
   <source>too narrow for a strip to be scribed and fixed, and too wide for the mouldings: give it {0} more clearance</source>
   <translation>demasiado estrecho para ajustar y fijar una tira, y demasiado ancho para las molduras: darle {0} más de margen libre</translation>
  </message>
  <message>
   <source>top rail</source>
   <translation>travesaño superior</translation>
  </message>
  <message>
   <source>trim</source>
   <translation>saneado</translation>
  </message>
  <message>
   <source>trim the sheet less</source>
   <translation>sanear menos el tablero</translation>
  </message>
  <message>
   <source>tube</source>
   <translation>tubo</translation>
  </message>
  <message>
   <source>turned in plan</source>
   <translation>girado en planta</translation>
  </message>
  <message>
   <source>turned in the opening and set upright behind it</source>
   <translation>girado en el hueco de entrada y puesto en pie detrás</translation>
  </message>
  <message>
   <source>turned past the jambs</source>
   <translation>girado para librar las jambas</translation>
  </message>
  <message>
   <source>turned up sideways</source>
   <translation>levantado de lado</translation>
  </message>
  <message>
   <source>turns over {0}</source>
   <translation>vuelca con {0}</translation>
  </message>
  <message>
   <source>twist of the back wall</source>
   <translation>alabeo de la pared trasera</translation>
  </message>
  <message>
   <source>twist of the ceiling</source>
   <translation>alabeo del techo</translation>
  </message>
  <message>
   <source>twist of the floor</source>
   <translation>alabeo del suelo</translation>
  </message>
  <message>
   <source>twist of the left wall</source>
   <translation>alabeo de la pared izquierda</translation>
  </message>
  <message>
   <source>twist of the right wall</source>
   <translation>alabeo de la pared derecha</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation>dos cargas iguales en los cuartos exteriores</translation>
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation>dos cargas iguales en los cuartos exteriores, flecha en una carga</translation>
  </message>
  <message>
   <source>two sliding panels</source>
   <translation>dos hojas correderas</translation>
  </message>
  <message>
   <source>unanchored it tips over {0}</source>
   <translation>sin anclar vuelca {0}</translation>
  </message>
  <message>
   <source>unanchored it withstands {0} what turns it over {1}</source>
   <translation>sin anclar resiste {0} lo que lo vuelca {1}</translation>
  </message>
  <message>
   <source>under {0} ({1}) {2} of {3}{4}</source>
   <translation>bajo {0} ({1}) {2} de {3}{4}</translation>
  </message>
  <message>
   <source>unit</source>
   <translation>unidad</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>desconocido</translation>
  </message>
  <message>
   <source>unreadable</source>
   <translation>ilegible</translation>
  </message>
  <message>
   <source>upper rod</source>
   <translation>barra superior</translation>
  </message>
  <message>
   <source>use</source>
   <translation>uso</translation>
  </message>
  <message>
   <source>use every hole of the support, screws that bite at least two thirds of the panel, and through the panel into a stud or a cleat where you can</source>
   <translation>usar todos los agujeros del soporte, tornillos que agarren al menos dos tercios del panel y, donde se pueda, a través del panel en un montante o un listón</translation>
  </message>
  <message>
   <source>value</source>
   <translation>valor</translation>
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation>contrachapado de chapas</translation>
  </message>
  <message>
   <source>vertical panel saw at the store</source>
   <translation>seccionadora vertical de la tienda</translation>
  </message>
  <message>
   <source>wall</source>
   <translation>pared</translation>
  </message>
  <message>
   <source>ways in are looked for as if these were not there: {0}; see that the largest pieces pass them on their way</source>
   <translation>los caminos de entrada se buscan como si esto no estuviera: {0}; comprobar que las piezas mayores lo libran al pasar</translation>
  </message>
  <message>
   <source>ways to buy</source>
   <translation>formas de comprar</translation>
  </message>
  <message>
   <source>web between them</source>
   <translation>alma entre ellas</translation>
  </message>
  <message>
   <source>weight of a cut</source>
   <translation>peso de un corte</translation>
  </message>
  <message>
   <source>weight of a door</source>
   <translation>peso de una puerta</translation>
  </message>
  <message>
   <source>weight of a metre sawn</source>
   <translation>peso de un metro aserrado</translation>
  </message>
  <message>
   <source>weight of the offcut</source>
   <translation>peso del retal</translation>
  </message>
  <message>
   <source>weights</source>
   <translation>pesos</translation>
  </message>
  <message>
   <source>weights from memory</source>
   <translation>pesos de memoria</translation>
  </message>
  <message>
   <source>what is bought is sound; say offcut for one at hand</source>
   <translation>lo que se compra está sano; indicar offcut para una pieza disponible</translation>
  </message>
  <message>
   <source>what its anti-tip anchors hold is for their maker to say, and needs a stud or masonry behind</source>
   <translation>lo que aguantan sus anclajes antivuelco debe decirlo su fabricante, y requiere un montante o fábrica detrás</translation>
  </message>
  <message>
   <source>what the supports hold, by their maker</source>
   <translation>lo que aguantan los soportes, según su fabricante</translation>
  </message>
  <message>
   <source>wider than a filler usually is: make the carcass up to {0} larger</source>
   <translation>más ancho de lo habitual en un listón de ajuste: hacer el cuerpo hasta {0} mayor</translation>
  </message>
  <message>
   <source>width</source>
   <translation>ancho</translation>
  </message>
  <message>
   <source>width = {0}</source>
   <translation>ancho = {0}</translation>
  </message>
  <message>
   <source>width at the back, high</source>
   <translation>ancho al fondo, alto</translation>
  </message>
  <message>
   <source>width at the back, low</source>
   <translation>ancho al fondo, bajo</translation>
  </message>
  <message>
   <source>width at the back, middle</source>
   <translation>ancho al fondo, medio</translation>
  </message>
  <message>
   <source>width at the front, high</source>
   <translation>ancho delante, alto</translation>
  </message>
  <message>
   <source>width at the front, low</source>
   <translation>ancho delante, bajo</translation>
  </message>
  <message>
   <source>width at the front, middle</source>
   <translation>ancho delante, medio</translation>
  </message>
  <message>
   <source>width first</source>
   <translation>primero el ancho</translation>
  </message>
  <message>
   <source>width for hangers</source>
   <translation>ancho para perchas</translation>
  </message>
  <message>
   <source>width of a door</source>
   <translation>ancho de una puerta</translation>
  </message>
  <message>
   <source>width of the box</source>
   <translation>ancho de la caja</translation>
  </message>
  <message>
   <source>width of the casing</source>
   <translation>ancho de la tapeta</translation>
  </message>
  <message>
   <source>width of the members</source>
   <translation>ancho de las piezas</translation>
  </message>
  <message>
   <source>width of the mullions</source>
   <translation>ancho de los montantes centrales</translation>
  </message>
  <message>
   <source>width of the opening</source>
   <translation>ancho del hueco de entrada</translation>
  </message>
  <message>
   <source>width of the opening, high</source>
   <translation>ancho del hueco de entrada, alto</translation>
  </message>
  <message>
   <source>width of the stiles</source>
   <translation>ancho de los montantes</translation>
  </message>
  <message>
   <source>with all drawers open and full</source>
   <translation>con todos los cajones abiertos y llenos</translation>
  </message>
  <message>
   <source>with its doors open</source>
   <translation>con las puertas abiertas</translation>
  </message>
  <message>
   <source>wood</source>
   <translation>madera</translation>
  </message>
  <message>
   <source>wood and board dust harms lungs and may cause cancer: extraction at the tool, a respirator, sweep nothing dry; resin boards give off formaldehyde: air the room</source>
   <translation>el polvo de madera y tablero daña los pulmones y puede causar cáncer: aspiración en la herramienta, mascarilla, no barrer nada en seco; los tableros con resina emiten formaldehído: ventilar la estancia</translation>
  </message>
  <message>
   <source>wood studs</source>
   <translation>montantes de madera</translation>
  </message>
  <message>
   <source>works loose in time: </source>
   <translation>se afloja con el tiempo: </translation>
  </message>
  <message>
   <source>your own load</source>
   <translation>carga propia</translation>
  </message>
  <message>
   <source>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</source>
   <translation>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</translation>
  </message>
  <message>
   <source>{0} ({1}), {2} used</source>
   <translation>{0} ({1}), {2} aprovechado</translation>
  </message>
  <message>
   <source>{0} ({1}), {2} used, {3} cuts</source>
   <translation>{0} ({1}), {2} aprovechado, {3} cortes</translation>
  </message>
  <message>
   <source>{0} [material.{1}]</source>
   <translation>{0} [material.{1}]</translation>
  </message>
  <message>
   <source>{0} above the floor</source>
   <translation>{0} sobre el suelo</translation>
  </message>
  <message>
   <source>{0} after {1} must be under {2}; carry the rest into {3}</source>
   <translation>{0} tras {1} debe ser menor que {2}; pasar el resto a {3}</translation>
  </message>
  <message>
   <source>{0} along the sheet's {1}</source>
   <translation>{0} según {1} del tablero</translation>
  </message>
  <message>
   <source>{0} and {1}</source>
   <translation>{0} y {1}</translation>
  </message>
  <message>
   <source>{0} and {1} are closer than the kerf</source>
   <translation>{0} y {1} están más cerca que el ancho de corte</translation>
  </message>
  <message>
   <source>{0} and {1} mm</source>
   <translation>{0} y {1} mm</translation>
  </message>
  <message>
   <source>{0} apart</source>
   <translation>{0} de separación</translation>
  </message>
  <message>
   <source>{0} as carried from the store are too heavy, or too long and wide, for one person</source>
   <translation>{0}, tal como se llevan de la tienda, son demasiado pesados, o demasiado largos y anchos, para una persona</translation>
  </message>
  <message>
   <source>{0} as carried from the store is too heavy, or too long and wide, for one person</source>
   <translation>{0}, tal como se lleva de la tienda, es demasiado pesado, o demasiado largo y ancho, para una persona</translation>
  </message>
  <message>
   <source>{0} at each edge</source>
   <translation>{0} en cada borde</translation>
  </message>
  <message>
   <source>{0} at each side</source>
   <translation>{0} a cada lado</translation>
  </message>
  <message>
   <source>{0} at the {1}</source>
   <translation>{0} en {1}</translation>
  </message>
  <message>
   <source>{0} at {1} across, {2} deep</source>
   <translation>{0} en {1} a lo ancho, {2} de profundidad</translation>
  </message>
  <message>
   <source>{0} back quarter round</source>
   <translation>{0}, cuarto de caña trasero</translation>
  </message>
  <message>
   <source>{0} below it</source>
   <translation>{0} debajo</translation>
  </message>
  <message>
   <source>{0} between the ends of its cleats under {1}, reckoned as a strip, which is more than it will</source>
   <translation>{0} entre los extremos de sus listones bajo {1}, calculado como una tira, que es más de lo que soportará</translation>
  </message>
  <message>
   <source>{0} between the stiffest and the softest boards published ({1})</source>
   <translation>{0} entre las tablas más rígidas y las más blandas publicadas ({1})</translation>
  </message>
  <message>
   <source>{0} board {1}</source>
   <translation>{0}, tabla {1}</translation>
  </message>
  <message>
   <source>{0} bottom</source>
   <translation>{0}, fondo</translation>
  </message>
  <message>
   <source>{0} bow</source>
   <translation>{0}, comba</translation>
  </message>
  <message>
   <source>{0} by the boards published ({1})</source>
   <translation>{0} según las tablas publicadas ({1})</translation>
  </message>
  <message>
   <source>{0} cannot follow {1}; {2}</source>
   <translation>{0} no puede seguir a {1}; {2}</translation>
  </message>
  <message>
   <source>{0} cleat</source>
   <translation>{0}, listón</translation>
  </message>
  <message>
   <source>{0} cm³ in common</source>
   <translation>{0} cm³ en común</translation>
  </message>
  <message>
   <source>{0} dividers to carry it</source>
   <translation>{0} divisorias para sostenerla</translation>
  </message>
  <message>
   <source>{0} door</source>
   <translation>{0}, puerta</translation>
  </message>
  <message>
   <source>{0} expected, give or take {1}</source>
   <translation>se esperaba {0}, con un margen de {1}</translation>
  </message>
  <message>
   <source>{0} fault(s); the plan must not be used</source>
   <translation>{0} fallo(s); el plan no debe usarse</translation>
  </message>
  <message>
   <source>{0} filler</source>
   <translation>{0}, listón de ajuste</translation>
  </message>
  <message>
   <source>{0} front</source>
   <translation>{0}, frente</translation>
  </message>
  <message>
   <source>{0} gap at the {1}</source>
   <translation>{0} de holgura en {1}</translation>
  </message>
  <message>
   <source>{0} high enough for a small child's body and too low for its head, the lowest as given: make what a toddler reaches lower or higher, or close it; {1}</source>
   <translation>{0} de altura bastante para el cuerpo de un niño pequeño e insuficiente para su cabeza, la más baja según lo dado: hacer más bajo o más alto lo que alcanza un niño pequeño, o cerrarlo; {1}</translation>
  </message>
  <message>
   <source>{0} holds a defect</source>
   <translation>{0} contiene un defecto</translation>
  </message>
  <message>
   <source>{0} in to {1} in</source>
   <translation>{0} in a {1} in</translation>
  </message>
  <message>
   <source>{0} in {1}, bay {2}</source>
   <translation>{0} en {1}, hueco {2}</translation>
  </message>
  <message>
   <source>{0} is cut {1} long</source>
   <translation>{0} se corta a {1}</translation>
  </message>
  <message>
   <source>{0} is no number; {1}</source>
   <translation>{0} no es un número; {1}</translation>
  </message>
  <message>
   <source>{0} is no unit of length here; {1}</source>
   <translation>{0} no es aquí una unidad de longitud; {1}</translation>
  </message>
  <message>
   <source>{0} is not of {1}</source>
   <translation>{0} no es de {1}</translation>
  </message>
  <message>
   <source>{0} is not sold {1} mm long as yet</source>
   <translation>{0} no se vende todavía de {1} mm de largo</translation>
  </message>
  <message>
   <source>{0} is outside the trimmed length</source>
   <translation>{0} queda fuera de la longitud saneada</translation>
  </message>
  <message>
   <source>{0} kept from {1}</source>
   <translation>{0} conservado de {1}</translation>
  </message>
  <message>
   <source>{0} kg every {1} mm</source>
   <translation>{0} kg cada {1} mm</translation>
  </message>
  <message>
   <source>{0} kg of {1}</source>
   <translation>{0} kg ({1})</translation>
  </message>
  <message>
   <source>{0} kg, or {1} m² over {2}</source>
   <translation>{0} kg, o {1} m² sobre {2}</translation>
  </message>
  <message>
   <source>{0} lap</source>
   <translation>{0}, solape</translation>
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
   <translation>{0}, desplome</translation>
  </message>
  <message>
   <source>{0} left quarter round</source>
   <translation>{0}, cuarto de caña izquierdo</translation>
  </message>
  <message>
   <source>{0} line {1}</source>
   <translation>{0}, línea {1}</translation>
  </message>
  <message>
   <source>{0} lip</source>
   <translation>{0}, refuerzo frontal</translation>
  </message>
  <message>
   <source>{0} litres</source>
   <translation>{0} litros</translation>
  </message>
  <message>
   <source>{0} looks like a subtraction; {1}</source>
   <translation>{0} parece una resta; {1}</translation>
  </message>
  <message>
   <source>{0} mm at each end</source>
   <translation>{0} mm en cada extremo</translation>
  </message>
  <message>
   <source>{0} mm in a metre</source>
   <translation>{0} mm en un metro</translation>
  </message>
  <message>
   <source>{0} mm of {1} mm</source>
   <translation>{0} mm de {1} mm</translation>
  </message>
  <message>
   <source>{0} mm to {1} mm</source>
   <translation>{0} mm a {1} mm</translation>
  </message>
  <message>
   <source>{0} mm wanted</source>
   <translation>se piden {0} mm</translation>
  </message>
  <message>
   <source>{0} more than one person should lift flat at arm's length: carry them upright and close, or by two</source>
   <translation>{0} más de lo que una persona debe levantar en plano con los brazos extendidos: llevar de canto y cerca del cuerpo, o entre dos</translation>
  </message>
  <message>
   <source>{0} moulding</source>
   <translation>{0}, moldura</translation>
  </message>
  <message>
   <source>{0} need the place of {1}</source>
   <translation>{0} necesitan el lugar de {1}</translation>
  </message>
  <message>
   <source>{0} of clothes</source>
   <translation>{0} de ropa</translation>
  </message>
  <message>
   <source>{0} of nominal {1} measures {2} to {3} ({4}, and {5} for the reading); measure again, or enter the board as a material of its own with its own nominal</source>
   <translation>{0} de nominal {1} mide de {2} a {3} ({4}, y {5} por la lectura); volver a medir, o introducir la tabla como material propio con su propio nominal</translation>
  </message>
  <message>
   <source>{0} of the opening in {1}</source>
   <translation>{0} del hueco de entrada en {1}</translation>
  </message>
  <message>
   <source>{0} of travel</source>
   <translation>{0} de recorrido</translation>
  </message>
  <message>
   <source>{0} of {1} mm</source>
   <translation>{0} × {1} mm</translation>
  </message>
  <message>
   <source>{0} of {1} mm at {2} mm</source>
   <translation>{0} de {1} mm a {2} mm</translation>
  </message>
  <message>
   <source>{0} of {1} shelves and rods lie outside the reach of somebody seated, the highest as given: keep what is used daily within it</source>
   <translation>{0} de {1} baldas y barras quedan fuera del alcance de una persona sentada, la más alta según lo dado: guardar dentro de él lo de uso diario</translation>
  </message>
  <message>
   <source>{0} once it is stripped</source>
   <translation>{0} sin lo que se le quita</translation>
  </message>
  <message>
   <source>{0} openings are</source>
   <translation>{0} aberturas son</translation>
  </message>
  <message>
   <source>{0} or {1}</source>
   <translation>{0} o {1}</translation>
  </message>
  <message>
   <source>{0} parts weigh</source>
   <translation>{0} piezas pesan</translation>
  </message>
  <message>
   <source>{0} psi</source>
   <translation>{0} psi</translation>
  </message>
  <message>
   <source>{0} quarter round</source>
   <translation>{0}, cuarto de caña</translation>
  </message>
  <message>
   <source>{0} rest</source>
   <translation>{0}, resto</translation>
  </message>
  <message>
   <source>{0} right quarter round</source>
   <translation>{0}, cuarto de caña derecho</translation>
  </message>
  <message>
   <source>{0} rise</source>
   <translation>{0}, desnivel a lo ancho</translation>
  </message>
  <message>
   <source>{0} run</source>
   <translation>{0}, desnivel a lo profundo</translation>
  </message>
  <message>
   <source>{0} sheets are named {1}</source>
   <translation>{0} tableros se nombran {1}</translation>
  </message>
  <message>
   <source>{0} sheet{1}</source>
   <translation>{0} tablero{1}</translation>
  </message>
  <message>
   <source>{0} shim {1}</source>
   <translation>{0}, calzo {1}</translation>
  </message>
  <message>
   <source>{0} skew</source>
   <translation>{0}, desvío</translation>
  </message>
  <message>
   <source>{0} stands beside another number without a unit; {1}</source>
   <translation>{0} está junto a otro número sin unidad; {1}</translation>
  </message>
  <message>
   <source>{0} stile</source>
   <translation>{0}, montante</translation>
  </message>
  <message>
   <source>{0} stop</source>
   <translation>{0}, tope</translation>
  </message>
  <message>
   <source>{0} strips</source>
   <translation>{0} tiras</translation>
  </message>
  <message>
   <source>{0} strips need {1} widths and {2} kerfs</source>
   <translation>{0} tiras necesitan {1} anchos y {2} anchos de corte</translation>
  </message>
  <message>
   <source>{0} thick</source>
   <translation>{0} de grueso</translation>
  </message>
  <message>
   <source>{0} times</source>
   <translation>{0} veces</translation>
  </message>
  <message>
   <source>{0} to the studs</source>
   <translation>{0} a los montantes de la pared</translation>
  </message>
  <message>
   <source>{0} to the wall</source>
   <translation>{0} a la pared</translation>
  </message>
  <message>
   <source>{0} to {1} by density</source>
   <translation>{0} a {1} según la densidad</translation>
  </message>
  <message>
   <source>{0} to {1} by density ({2})</source>
   <translation>{0} a {1} según la densidad ({2})</translation>
  </message>
  <message>
   <source>{0} to {1} by the density of its board</source>
   <translation>{0} a {1} según la densidad de su tabla</translation>
  </message>
  <message>
   <source>{0} to {1} by the density of its boards</source>
   <translation>{0} a {1} según la densidad de sus tablas</translation>
  </message>
  <message>
   <source>{0} to {1} by the density published for the board</source>
   <translation>{0} a {1} según la densidad publicada para la tabla</translation>
  </message>
  <message>
   <source>{0} to {1} by the density published for the boards</source>
   <translation>{0} a {1} según la densidad publicada para las tablas</translation>
  </message>
  <message>
   <source>{0} to {1} in the lightest and the heaviest softwood studs</source>
   <translation>{0} a {1} en los montantes de conífera más ligeros y más pesados</translation>
  </message>
  <message>
   <source>{0} to {1} long</source>
   <translation>{0} a {1} de largo</translation>
  </message>
  <message>
   <source>{0} to {1} mm</source>
   <translation>{0} a {1} mm</translation>
  </message>
  <message>
   <source>{0} to {1} mm across</source>
   <translation>{0} a {1} mm a lo ancho</translation>
  </message>
  <message>
   <source>{0} to {1} mm across, up to {2} mm high</source>
   <translation>{0} a {1} mm de ancho, hasta {2} mm de altura</translation>
  </message>
  <message>
   <source>{0} to {1} mm along its {2}</source>
   <translation>{0} a {1} mm a lo largo: {2}</translation>
  </message>
  <message>
   <source>{0} to {1}, by the density of its boards</source>
   <translation>{0} a {1}, según la densidad de sus tablas</translation>
  </message>
  <message>
   <source>{0} top filler</source>
   <translation>{0}, listón de ajuste superior</translation>
  </message>
  <message>
   <source>{0} top moulding</source>
   <translation>{0}, moldura superior</translation>
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation>{0}, saneado {1}</translation>
  </message>
  <message>
   <source>{0} twist</source>
   <translation>{0}, alabeo</translation>
  </message>
  <message>
   <source>{0} under {1}</source>
   <translation>{0} bajo {1}</translation>
  </message>
  <message>
   <source>{0} was not pasted: {1}
</source>
   <translation>{0} no se pegó: {1}
</translation>
  </message>
  <message>
   <source>{0} without its edge bands</source>
   <translation>{0} sin sus cantos</translation>
  </message>
  <message>
   <source>{0} would hold {1} of that</source>
   <translation>{0} aguantarían {1} de eso</translation>
  </message>
  <message>
   <source>{0} x {1} in {2}</source>
   <translation>{0} × {1} en {2}</translation>
  </message>
  <message>
   <source>{0} x {1} mm</source>
   <translation>{0} x {1} mm</translation>
  </message>
  <message>
   <source>{0} x {1} through the top cleat, one into each stud, and as many through each other cleat, heads on washers{2}</source>
   <translation>{0} x {1} a través del listón superior, uno en cada montante, y otros tantos a través de cada uno de los demás listones, cabezas sobre arandelas{2}</translation>
  </message>
  <message>
   <source>{0} {1} at its top, each into a stud and, with a screw of its own, into the board{2}</source>
   <translation>{0} {1} arriba, cada uno en un montante y, con tornillo propio, en la tabla{2}</translation>
  </message>
  <message>
   <source>{0} {1} cleat</source>
   <translation>{0}, listón {1}</translation>
  </message>
  <message>
   <source>{0} {1} end cleat</source>
   <translation>{0}, listón extremo {1}</translation>
  </message>
  <message>
   <source>{0} {1} under {2}</source>
   <translation>{0} {1} bajo {2}</translation>
  </message>
  <message>
   <source>{0} {1} under {2}{3}{4}{5}; after years about {6} ({7})</source>
   <translation>{0} {1} bajo {2}{3}{4}{5}; tras años, unos {6} ({7})</translation>
  </message>
  <message>
   <source>{0}, bay {1}</source>
   <translation>{0}, hueco {1}</translation>
  </message>
  <message>
   <source>{0}, divider {1}</source>
   <translation>{0}, divisoria {1}</translation>
  </message>
  <message>
   <source>{0}, gap at the {1}</source>
   <translation>{0}, holgura en {1}</translation>
  </message>
  <message>
   <source>{0}, groove for {1}</source>
   <translation>{0}, ranura para {1}</translation>
  </message>
  <message>
   <source>{0}, grooves for {1} and {2}</source>
   <translation>{0}, ranuras para {1} y {2}</translation>
  </message>
  <message>
   <source>{0}, hole for {1} in the {2}</source>
   <translation>{0}, taladro para {1} en {2}</translation>
  </message>
  <message>
   <source>{0}, holes for {1}</source>
   <translation>{0}, taladros para {1}</translation>
  </message>
  <message>
   <source>{0}, holes for {1} and {2}</source>
   <translation>{0}, taladros para {1} y {2}</translation>
  </message>
  <message>
   <source>{0}, measured thickness</source>
   <translation>{0}, grueso medido</translation>
  </message>
  <message>
   <source>{0}, part {1}</source>
   <translation>{0}, pieza {1}</translation>
  </message>
  <message>
   <source>{0}, pocket for {1}</source>
   <translation>{0}, caja para {1}</translation>
  </message>
  <message>
   <source>{0}, pulled at the edge</source>
   <translation>{0}, con tirón en el borde</translation>
  </message>
  <message>
   <source>{0}, screw point {1}</source>
   <translation>{0}, punto de atornillado {1}</translation>
  </message>
  <message>
   <source>{0}, shelf {1}</source>
   <translation>{0}, balda {1}</translation>
  </message>
  <message>
   <source>{0}, spreadsheet</source>
   <translation>{0}, hoja de cálculo</translation>
  </message>
  <message>
   <source>{0}, where it bends</source>
   <translation>{0}, donde se dobla</translation>
  </message>
  <message>
   <source>{0}, which reach only {1} into what holds them: no load is published for that</source>
   <translation>{0}, que solo entran {1} en lo que los sujeta: no hay carga publicada para eso</translation>
  </message>
  <message>
   <source>{0}, {1} deep</source>
   <translation>{0}, {1} de profundidad</translation>
  </message>
  <message>
   <source>{0}, {1} x {2} in {3}{4}</source>
   <translation>{0}, {1} x {2} en {3}{4}</translation>
  </message>
  <message>
   <source>{0}, {1}: empty or outside the trimmed sheet</source>
   <translation>{0}, {1}: vacío o fuera del tablero saneado</translation>
  </message>
  <message>
   <source>{0}0 and {1}1</source>
   <translation>{0}0 y {1}1</translation>
  </message>
  <message>
   <source>{0}: bay {1}</source>
   <translation>{0}: hueco {1}</translation>
  </message>
  <message>
   <source>{0}: bill</source>
   <translation>{0}: lista</translation>
  </message>
  <message>
   <source>{0}: cut layout</source>
   <translation>{0}: plano de corte</translation>
  </message>
  <message>
   <source>{0}: made by another version of the workbench ({1} is unknown); it stays as it is
</source>
   <translation>{0}: hecho con otra versión del entorno ({1} es desconocido); se queda como está
</translation>
  </message>
  <message>
   <source>{0}: no cuts are listed</source>
   <translation>{0}: no se indican cortes</translation>
  </message>
  <message>
   <source>{0}: not the sheet {1} of the stock</source>
   <translation>{0}: no es el tablero {1} de las existencias</translation>
  </message>
  <message>
   <source>{0}: not the stock length {1}</source>
   <translation>{0}: no es la barra {1}</translation>
  </message>
  <message>
   <source>{0}: not to be sawn from edge to edge within the stages allowed</source>
   <translation>{0}: no se puede serrar de borde a borde con las etapas admitidas</translation>
  </message>
  <message>
   <source>{0}: not turned, its grain must run across the sheet</source>
   <translation>{0}: sin girar, su veta debe ir a lo ancho del tablero</translation>
  </message>
  <message>
   <source>{0}: of {1}, on a sheet of {2}</source>
   <translation>{0}: de {1}, en un tablero de {2}</translation>
  </message>
  <message>
   <source>{0}: outside the trimmed sheet</source>
   <translation>{0}: fuera del tablero saneado</translation>
  </message>
  <message>
   <source>{0}: planned for a kerf of {1}, not {2}</source>
   <translation>{0}: planificado para un ancho de corte de {1}, no {2}</translation>
  </message>
  <message>
   <source>{0}: the bound {1} is above the sheets used</source>
   <translation>{0}: la cota {1} supera los tableros usados</translation>
  </message>
  <message>
   <source>{0}: the cuts do not give part {1}</source>
   <translation>{0}: los cortes no dan la pieza {1}</translation>
  </message>
  <message>
   <source>{0}: the cuts do not give {1}</source>
   <translation>{0}: los cortes no dan {1}</translation>
  </message>
  <message>
   <source>{0}: top</source>
   <translation>{0}: techo</translation>
  </message>
  <message>
   <source>{0}: turned, its grain must run along the sheet</source>
   <translation>{0}: girado, su veta debe ir a lo largo del tablero</translation>
  </message>
  <message>
   <source>{0}: {1} and {2} are closer than the kerf</source>
   <translation>{0}: {1} y {2} están más juntos que el ancho de corte</translation>
  </message>
  <message>
   <source>{0}: {1} objects of the closet workbench had lost their program, as in a file saved without it; they can be edited again: {2}
</source>
   <translation>{0}: {1} objetos del entorno de armarios habían perdido su programa, como en un archivo guardado sin él; se pueden volver a editar: {2}
</translation>
  </message>
  <message>
   <source>{0}: {1} x {2} is not its size</source>
   <translation>{0}: {1} x {2} no es su medida</translation>
  </message>
  <message>
   <source>{0}; 0: not taken</source>
   <translation>{0}; 0: no tomado</translation>
  </message>
  <message>
   <source>{0}; EN 14749 (from memory)</source>
   <translation>{0}; EN 14749 (de memoria)</translation>
  </message>
  <message>
   <source>{0}; a nail may be pulled with {1}, so glue it on where doors hang on it</source>
   <translation>{0}; un clavo puede sufrir un tirón de {1}, así que encolarlo donde cuelguen puertas de él</translation>
  </message>
  <message>
   <source>{0}; but look at the readings first: {1}</source>
   <translation>{0}; pero mirar antes las lecturas: {1}</translation>
  </message>
  <message>
   <source>{0}; changed in {1}</source>
   <translation>{0}; cambiado en {1}</translation>
  </message>
  <message>
   <source>{0}; fasten it to the wall all the same</source>
   <translation>{0}; fijarlo a la pared de todos modos</translation>
  </message>
  <message>
   <source>{0}; limit: common practice, no published source</source>
   <translation>{0}; límite: práctica habitual, sin fuente publicada</translation>
  </message>
  <message>
   <source>{0}; load and limit: common practice, no published source</source>
   <translation>{0}; carga y límite: práctica habitual, sin fuente publicada</translation>
  </message>
  <message>
   <source>{0}; may come again</source>
   <translation>{0}; puede repetirse</translation>
  </message>
  <message>
   <source>{0}; or build it in place</source>
   <translation>{0}; o construirlo en su sitio</translation>
  </message>
  <message>
   <source>{0}; or one support more</source>
   <translation>{0}; o un apoyo más</translation>
  </message>
  <message>
   <source>{0}; sag: Composite Panel Association shelving bulletin (as quoted)</source>
   <translation>{0}; flecha: boletín de baldas de Composite Panel Association (según cita)</translation>
  </message>
  <message>
   <source>{0}; studs of specific gravity {1}</source>
   <translation>{0}; montantes de densidad relativa {1}</translation>
  </message>
  <message>
   <source>{0}; {1}: not given</source>
   <translation>{0}; {1}: no dado</translation>
  </message>
  <message>
   <source>{0}; {1}; load: {2}</source>
   <translation>{0}; {1}; carga: {2}</translation>
  </message>
  <message>
   <source>{0}; {1}; statics</source>
   <translation>{0}; {1}; estática</translation>
  </message>
  <message>
   <source>{0}; {1}; {2}; load: {3}</source>
   <translation>{0}; {1}; {2}; carga: {3}</translation>
  </message>
  <message>
   <source>{0}it would take {1} anchors of {2} each, but only {3} studs are sure to lie behind it{4}</source>
   <translation>{0}harían falta {1} anclajes de {2} cada uno, pero solo es seguro que haya {3} montantes detrás{4}</translation>
  </message>
  <message>
   <source>{0}{1}, and how it is fastened is not settled: {2}. Screw it into studs or masonry before anything is put into it</source>
   <translation>{0}{1}, y no está decidido cómo se fija: {2}. Atornillarlo a montantes o fábrica antes de meter nada</translation>
  </message>
  <message>
   <source>{0}{1}: fasten it before anything is put into it, with {2}, which makes it withstand {3} of that</source>
   <translation>{0}{1}: fijarlo antes de meter nada, con {2}, lo que le hace resistir {3} de eso</translation>
  </message>
  <message>
   <source>{0}{1}; load: {2}</source>
   <translation>{0}{1}; carga: {2}</translation>
  </message>
  <message>
   <source>{0}° open</source>
   <translation>{0}° abierto</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_ShoeShelves</name>
  <message>
   <source>Shoe shelves…</source>
   <translation>Baldas para zapatos…</translation>
  </message>
  <message>
   <source>Sloped shelves for shoes in one compartment</source>
   <translation>Baldas inclinadas para zapatos en un compartimento</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Start</name>
  <message>
   <source>Start a closet from readings in the room or from its sizes</source>
   <translation>Iniciar un armario a partir de lecturas en la sala o de sus medidas</translation>
  </message>
  <message>
   <source>Start a closet…</source>
   <translation>Iniciar un armario…</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Step</name>
  <message>
   <source>Export STEP…</source>
   <translation>Exportar STEP…</translation>
  </message>
  <message>
   <source>Write the parts of the closet, or those selected, as named solids for other programs</source>
   <translation>Escribir las piezas del armario, o las seleccionadas, como sólidos con nombre para otros programas</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_Survey</name>
  <message>
   <source>Back</source>
   <translation>Fondo</translation>
  </message>
  <message>
   <source>Enter the readings taken in the closet and see which plumb, level box fits</source>
   <translation>Introducir las lecturas tomadas en el armario y ver qué caja a plomo y a nivel cabe</translation>
  </message>
  <message>
   <source>Select the closet to survey.</source>
   <translation>Seleccionar el armario que medir.</translation>
  </message>
  <message>
   <source>Survey…</source>
   <translation>Medición…</translation>
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation>No hay ningún armario en este documento: iniciar antes uno.</translation>
  </message>
 </context>
 <context>
  <name>Closetbench_SurveySheet</name>
  <message>
   <source>Survey sheet…</source>
   <translation>Hoja de medición…</translation>
  </message>
  <message>
   <source>Write a sheet with drawings of the closet, numbered readings to take and blanks for them</source>
   <translation>Escribir una hoja con dibujos del armario, lecturas numeradas que tomar y espacios para ellas</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Closet</source>
   <translation>Armario empotrado</translation>
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation>Documentos de taller del armario</translation>
  </message>
  <message>
   <source>Closet views</source>
   <translation>Vistas del armario</translation>
  </message>
 </context>
</TS>
