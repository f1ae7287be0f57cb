<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Component and name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth along the left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth along the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth at the right; 0: not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diagonal from front left to back right; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diagonal from front right to back left; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubts about it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubts about the design</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubts about the readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band at the end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band at the start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the leaf's edge to the boring's, 0 takes the hinge's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, 0 takes 305 mm or the middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height above the floor of the high readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height above the floor of the low readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height above the floor of the mid readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the back left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the back right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the front left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the front right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the right; 0: not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the base</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the boxes' sides, 0 takes all that the slide leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the opening; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the wall over the opening; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left (mm)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hinges on each leaf, -1 takes what its height and weight ask for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, by rule by its kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far they come out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How high it is, 0 for all that is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How many there are</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the members are joined</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In kg, with its drawers; 0 where nobody has weighed it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its depth, 0 takes the envelope's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, by rule beside what stands there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its right end's, 0 runs to the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its underside above the floor, 0 lies on the highest carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its board, empty takes the shelf's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its edge band, auto for the material's own, empty for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, auto for the material's own, empty for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the edge band of their long edges, auto for the material's own, empty for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the face's board, empty takes the top's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of their board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of their board, empty takes the carcass's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of their edge band, auto for the material's own, empty for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean of the back wall at the left; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean of the back wall at the right; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean of the left wall at the back; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean of the left wall at the front; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean of the right wall at the back; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean of the right wall at the front; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap to keep at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap to keep at the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap to keep at the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap to keep at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap to keep at the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length of the slides, 0 takes the longest that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of loose shelves on pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of strips, empty takes the carcass's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the pull's middle above the floor, 0 takes 1,000 mm or the nearest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the rod's axis above the floor, 0 by its use or as high as it can be</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the upper of two rods, 0 by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer diameter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer height as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer width as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Over its top, 0 takes what is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Over its top, 0 takes what is there; it stands at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rabbet at the end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rabbet at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rabbet at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rabbet at the start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Return at the left of the opening; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Return at the right of the opening; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rise of the floor from front to back at the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rise of the floor from left to right at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rise of the floor from left to right at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Smallest gap at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Smallest gap at the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Smallest gap at the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Smallest gap at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Smallest gap at the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Supports between the ends, -1 as many as the span asks for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan, as data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of the baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of the casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of the wall at the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Undersides above the floor (mm)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the store saws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the top lies</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where they lie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether FrontLap is left to the rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether X is left to the rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether the lean of the right wall at the back was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether the lean of the right wall at the front was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest gap at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest gap at the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest gap at the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest gap at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest gap at the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, high up; 0: not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, low down; 0: not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, high up; 0: not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of that strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the members as sawn, 0 takes the board's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the opening; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench</name>
  <message>
   <source>(-?[0-9]+(?:\.[0-9]+)?)(?: (to|and|x) (-?[0-9]+(?:\.[0-9]+)?))? mm\b</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>(?P&lt;carcass&gt;.+), bay (?P&lt;number&gt;\d+)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, offcut at hand: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, turned {}°</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>.pdf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>.png</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 danger</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 for a door, 2 for a pair hinged at both sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 not checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1 warning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>3 to 4</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>5 to 8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>9 to 12</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; dangers in this closet: {}, see the checks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A bank of drawers in one opening, with slides and fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A baseboard that stays; 0 where there is none or it comes off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A door, or a pair, in front of one opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A drawing for each part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A drawing for each sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A few more, so that no single wrong reading stays unnoticed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A file with boards, bands and prices of your own, laid over those that come along.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A fixed shelf lies over it and follows its height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A hanging rod, or two, in one opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A sheet to spare for each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A strip along its front edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Above the floor as found, feet included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Accuracy class that is printed on the tape.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Across the bay or along its depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add a reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add an obstacle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Add one that is recommended</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Adjustable</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Against back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Against the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All sheets in one drawing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Allowance for scribing an end stile to the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Along back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Along side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Along the left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Along the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Along the wall, from the front line to the back wall, on the floor.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another number may find another plan; the same one finds the same again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another task is open: finish it with OK or Cancel first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>App::Property</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>As it will be written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ask for the readings that point out a wrong one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At an angle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At least {}: not everything has a price.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back inset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Back wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Backs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Band waste</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bands at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Base</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Base height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Base material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bays, from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Benches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bench…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>BillPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Board that goes into the grooves: its measured thickness sets their width.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Boards as measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bottom inset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bottom material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bottom rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Box height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Box material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By calliper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CSV file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cannot be right: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CarcassPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Carcasses and shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Casing and baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Catalogue of your own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ceiling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Changes of direction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Checks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Choose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Circular saw on a straightedge at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear of shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear size of the opening, jamb to jamb and floor to lintel.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear width of the bay. Left empty, it shares what the others leave.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear widths: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clearance kept at each side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clearance kept under the shelf above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cleat height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Click on a finding to see what it is about; double-click to edit that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Close the checks and say what they have to know.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closet views</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ClosetPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ClosetPart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closetbench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ClosetbenchRoom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closetbench_Choice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Compartment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Component</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Corner shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Corner shelves…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CornerShelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Count</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cup edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cut layout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cut open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CutLayout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cuts: {} at the store, {} at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cuts: {} wide, {} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dead space</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth at most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth at the left, mouldings and fronts included, pulls not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the leg along the rear wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the leg along the side wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diagonal to the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diagonal to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the bit at hand: the bill then gives the passes for each groove.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the hole for a pull</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Direction of the cuts that are made first on a whole sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Distance of its left side from the left of the envelope. Left empty, it stands beside the carcass before it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Does it go in?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doors and lids are taken to turn about the edge that their hinges hold; look at the hinges' own drawing where it is close.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doors…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubtful: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawer boxes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawers…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band bought over the length of the rims.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips. Automatic: as the carcass's.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edit {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>End clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter what was read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Envelope: {} wide, {} deep, {} high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Error of the level or the plumb line over one metre.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Everything opens freely.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exact.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Existing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Existing pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Existing piece…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ExistingPiece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Expected</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Face frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Face frame…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Face material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>FaceFrame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>File</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fillers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fillers and mouldings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fillers…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished size, edge bands included.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fitted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fixed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fixed at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fixed shelves by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fixed shelves, let into the sides at equal clear heights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Floor to ceiling, the tape plumb, close to the corner.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Floor to the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Floor to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Folder for the drawings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Folder for the pictures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Follows the formula {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For fewer cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For fewer sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For panels of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fraction of the thickness that must stay between two cuts that meet from both faces. ``least_skin``: mm that must stay under a blind hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From an end the grooves run across the width, from an edge along the length.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From hole to hole of a pull with two, 0 for a knob with one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From its front edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From near wall to near wall.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From that rim to the near wall of the first groove.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the front of the carcass to the kick board or the frame's front rail.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the leaf's edge to the boring's, None takes the hinge's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the left, 1 first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the pull's middle to the free edge of the leaf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the rear edges to the back's rear face: room to scribe to the wall.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the rear of the opening to the rod's axis, None takes 305 mm or the middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the side wall to the jamb, inside.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the sides' lower edge to the bottom's groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the underside of the lintel to the ceiling, inside.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Front elevation with sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Front row at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fronts, doors, face frames</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gap above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gaps kept with</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Goes in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grain</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grain along</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grained</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Groove depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Groove stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Groove wider than the panel in it, mm. ``end_clearance``: how far a tongue stays short of the bottom of its groove, mm. ``depth_fraction`` of the grooved panel's thickness, taken down to a multiple of ``depth_step`` (a router is set in steps), unless ``depth`` is given. ``most_fraction``: deepest groove allowed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Groove wider than the panel in it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>GroovedPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>GroovedPanelPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooves and rabbets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height above the floor at which these readings are taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the left, feet and top included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a rail before each fixed shelf, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a strip in front of each shelf, level with its upper face; 0 for none. It stiffens the shelf, which is that much less deep.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the bottom rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the boxes' sides, None takes all that the slide leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the cleats on the walls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the cleats on the walls, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the feet that are taken off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the stop above the shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the top rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heights of the fixed shelves' undersides above the bay's floor, set apart by semicolons. Left empty, the clear heights are equal.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heights of the fronts from the bottom, one of them 0 to take what is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hide everything else</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>High</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hinge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hinged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hinges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hinges on each leaf, None takes what its height and weight ask for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Holder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hole depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a moulding lies on the carcass at least, 6 mm as above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a stile reaches past the carcass's side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a tongue stays short of the bottom of its groove.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far above the compartment's floor it begins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far above the compartment's floor it begins.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far an overlay front laps over what bounds its opening, None by its kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through. By rule: stopped behind a banded edge, through a bare one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far it reaches over the frame at both ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its front stays behind the carcass's front edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its lower edge rises to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its right edge leans to the right, upwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far its upper edge rises to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the frame reaches past the carcass's top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the grooves stay away from the rims that they run between; 0 runs through.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the left edge of an inset front's opening leans to the right, upwards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the mouldings that are taken off stand out at each side and in front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the parts are pulled apart in the view; they stay where they are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the top reaches over the frame and its face at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far they come out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How front and back of a box meet its sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How high it is, None for all that is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How likely all least gaps are kept, given how well the room is known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How long to search, per material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted as one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much lower the front of a shelf lies than its rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How sure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the bases meet the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the bottom is held</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the long rails lie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How the members are joined</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>I</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>II</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>III</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In all {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In front of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In front of each fixed and loose shelf, which is that much less deep;</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In kg, with its drawers; None where nobody has weighed it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In the 3D view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In the face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Inset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>It stays where it was: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its cuts, at most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its depth, None takes the envelope's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its left end's distance from the envelope's left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its left end's distance from the envelope's left, None beside what stands there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its right end's, None runs to the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its underside above the floor, None lies on the highest carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its way in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Joint</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Joints, base and back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep for nobody</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kerf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of a class of bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of a hinge class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of a slide class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its board, None takes the shelf's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its edge band, None for the material's own, "" for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the band on the shelves' front edges, None as on the carcass's, "" none; a shelf behind a lip has none, and the lip has it on its long edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boards or sheets that its members are cut from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the bottoms' board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boxes' board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the edge band for visible front edges; None takes the material's own, "" bands nothing. ``groove_stop``: how far grooves stay back from the front edge; None stops them 10 mm short where the front is banded and runs them through where not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the edge band of shelves and stops, None for the material's own, "" for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the edge band of their long edges, None for the material's own, "" for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the face's board, None takes the top's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the members' lumber</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the top's board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of their board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of their board, None takes the carcass's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of their edge band, None for the material's own, "" for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keys of the flat mouldings and of the quarter rounds for the foot of the base to choose from; without rounds the foot stays open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kind of file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Largest is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>LayoutPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lean right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least skin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least web</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Leave all readings blank</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left end at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left on to be scribed away, 6 mm (common practice, no published source)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left side's distance from the envelope's left, None: beside the carcass before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length along the rear wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length along the side wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length of the slides, None takes the longest that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Level offset of the floor: above 0 where it rises.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Level, in a metre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Levelling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lid support</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lip material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Loads, wall, damp, children, light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Loads, wall, damp, children, light…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Loose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Loose shelves on pins.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>MDF</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>MDF 12 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>MDF 18 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>MDF 3/4 in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>MDF 6 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Make {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Margin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mating</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Measured from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Member</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Members every</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Millimetres, as sawn and before banding. Depth and side of each cut are in the layers' names.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>More about the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Most fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Moulding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mouldings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mullion</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the carcass or bench that it stands in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the carcass that it stands in front of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Names of the parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Narrowest and widest strip: 20 mm (common practice, no published source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nearest hole to a fixed panel; ``depth`` of a blind hole; ``play``: how much shorter than its bay a loose shelf is (2 to 3 mm, common practice, no published source)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No carcass that is up to 15 mm less deep would save a sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not checked does not mean safe; {}. Each figure is only as good as what was entered.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not planned yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not shown by this choice: {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing can be checked: the closet cannot be built. {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing of this kind was found.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was found.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of drawers of equal height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of fixed shelves, spread to equal clear heights, unless ``heights`` gives the height of each one's underside above the bay's floor. ``adjustable``: number of loose shelves on pins, each put into the highest free space</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of its drawers, one above the other</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of long rails, the front and the rear one included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of openings under it, posts between them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of pieces it is made in, end to end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Obstacles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of its seat above what it stands on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of strips, None takes the carcass's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the pull's middle above the floor, None takes 1,000 mm or the nearest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the rod's axis above the floor, None by its use or as high as it can be</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the strip, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Of the upper of two rods, None by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Offcuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>OffcutsPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>On one sheet. A piece that is too much for one person to carry is cut smaller at the store where it can be.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>On the floor, from the front corner to the back corner across.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Once a job is cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One after another, as they go together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One sheet of a material more for each so many, where more than four are needed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One step back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One step on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Opening {} x {}, inside {} x {} x {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Opens</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Other shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Out of date: the parts or the settings have changed since; plan again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer size, base included. Left empty, it is what the envelope leaves.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer: {} wide, {} high, {} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Over its top, None takes what is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Over its top, None takes what is there; it stands at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Over shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>OverShelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Overhang</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Overhang ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Overhang top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Overlap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Own catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>PDF (*.pdf);;SVG (*.svg);;PNG (*.png)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>PDF, for the printer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>PNG, for the screen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pages A4; the name's ending says PDF, SVG or PNG.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Panels kept from what is taken off it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Papers print</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts were moved by hand.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pictures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pin holes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pin pitch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pitch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plan its sheets first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plan the sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plan the sheets first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plan, from above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Play</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Played back from apart to together it shows the order of assembly: from the floor up, then what goes in, then the fronts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plumb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plumb offset between the low and the high level: above 0 where the wall leans into the closet on its way up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Position {} of {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pull edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pull height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pull hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pull spacing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pulled apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pulls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pulls on each front, 0 for none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rabbets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rabbets at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read offcuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Readings taken elsewhere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Readings when this panel is closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rear row at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Remove this bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Residual</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Returns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Right end at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rise above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rise below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Room to leave</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rounds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Router bit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rules</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>STEP file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>SVG, to draw on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saw and sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saw: {} x {}, {} thick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Screws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Scribe</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Searched in steps of {}, with as much to spare all round.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Seed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Select the closet that this is for.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Setback</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Severity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf joint</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf play</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shoe shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shoe shelves…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShoeShelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shop figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shop figures: grooves and shelf pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show and hide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show casing and baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show everything</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show larger</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show the ceiling of the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show the floor of the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show the readings also while the survey's panel is closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show the wall around the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show the walls of the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show what must stay clear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show what the wall around the opening hides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowCeiling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowDeadSpace</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowFloor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowFront</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowObstacles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowReadings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowTrim</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ShowWalls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Side gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Single panels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Slide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Slide length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sloped shelves for shoes in one opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sold as {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Solids</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Spacing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Spot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Spread</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Starts at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Step {} of {}: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stile</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stiles run down to the floor, else to the bottom rail's lower edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stop first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stop last</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stop: take the best so far</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stopped</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Strip widths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Supports</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Supports between the ends, None as many as the span asks for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Supports hold the lid at any height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Survey sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>SurveyPanel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>TOML (*.toml)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Table saw at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tape, class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bay takes its width from the piece, unless it has one of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bay that it stands in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bay that it stands in, None to stand free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The carcasses alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The casing around the opening, on the room's side; 0 where there is none.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet has no parts yet: add a carcass or a panel first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet has sizes only: they draw it, and every reading is left blank.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The component's name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The cut layout is out of date: plan the sheets again, or draw the parts alone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The empty room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The hinged edge of a single door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The joinery of its laps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The joinery of the boxes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The left or the right rear corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The place and the people</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The readings agree with each other.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The reveal around an inset front and between any two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The sheets are not planned yet: lay them out first, or draw the parts alone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The sheets are not planned yet: the bill cannot count them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The space between two fixed shelves, from the bottom, 1 first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The step to which the tape was read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The store saws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The top is a lid, hinged to a strip at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>They are a list of their own in the document.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>They are used before anything is bought, wherever that saves something. Without a width it is a length of a bar.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness by caliper, in the middle of three edges. Grooves follow it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of the top that is taken off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of the wall at the opening.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To be written: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To measure the closet afresh, whatever was read before.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Top and bottom by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Top lies</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Top rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Top run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Travel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tree only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trim</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Turn the part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Two openings let air in with the lid shut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Undersides above the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Upper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Usable length, along the grain if it has any</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Usable width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Use the offcuts at hand first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Vents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wall around the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wall over it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wall thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wall to wall, the tape level.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wall, end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Walls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ways are looked for in an empty closet, from a room before it that is free. The picture moves in steps of {} and {}° at most; nothing in the document moves.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What closes it at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What covers the gap there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What hangs on it, which says how high it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What holds the ends of a rod that runs across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is not known is not checked, and the findings say so.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it comes to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it was</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What opens</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the job took goes out of the list; what it leaves, and is large enough to keep, comes in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the readings say of each other</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What to do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What would help: {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where it can be screwed through</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where it hangs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where it stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the closet is cut.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the leaves lie, of which board, with which gaps and pulls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the left stile ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the right stile ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where they lie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether its grain must run along a part's length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which of its bays, from the left, 1 first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which space between the fixed shelves, from the bottom, 1 first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which way the top's grain runs; from front to rear it is strong between rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who cuts what</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest clear distance between cross members of a frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest clear distance between the cross members of a base frame.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, high up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the back, low down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, high up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width at the front, low down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width back high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width back low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width first, or the volume, which matters under a slope.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width front high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width front low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of that strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the cut that the blade makes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the members as sawn, None takes the board's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the mullions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the stiles, at an end to the wall without what reaches past the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width, height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Workbench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write a file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write offcuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the names on the parts that can be seen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the solids</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the survey sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Written: {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a cheaper one may exist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>across the width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>add a carcass for it to stand in first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>agrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>all that is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>along</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>along the bench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>along the length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>aluminium tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>aluminium tube 30 x 1.5 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>any</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>any number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>apron</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as the catalogue says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>assembled pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at front or start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at midspan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at rear or end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at the free end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at the rear wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>backs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>behind the left return: {}, {} l</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>behind the right return: {}, {} l</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>benches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>beside the last</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>between the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bill_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>birch plywood 12 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>birch plywood 18 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>books</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bottom-corner roller slide, three-quarter extension</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>brick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>budget</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>butt, screwed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by its kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the inside width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cancelled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cantilever</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carcass_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ceiling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>centimetres, to 1 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>centre rail under the box</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>checks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>child's reach</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>children-unknown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choose a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choose a folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clamped</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>climate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>closet_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>components</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>concealed hinge, 35 mm cup, opens 110 degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>concealed undermount slide, full extension</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>concealed wide-angle hinge, 35 mm cup, opens 165 degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>concrete</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>contents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>corner shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>corner_shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>crosscut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut from above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut from the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut from the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut from the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>danger</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dangers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dangers and warnings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dead space</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>decimal inches, to 0.001</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>divider</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>doors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>double</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>doubtful</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dowels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>edge-glued pine panel 18 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>edge-glued pine panel 27 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>edit {} and give it a width that leaves room for another</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>equal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>everything</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>everything, each part too</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>existing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>existing piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>expected {}, give or take {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>exploded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>face_frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>filler strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fillers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>flanges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>flat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>flush with the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>follows from readings in the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>free</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>free in the closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from front to rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from_front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ft-in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full overlay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>general</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grain along</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grooved_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>half lap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>half overlay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hanging rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hardboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hardboard 3.2 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hardboard 6 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has sizes that I give</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height over the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hollow block</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>icons</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in a groove all round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in steps of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in-frac</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>jamb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>just inside the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kept for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>layout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>layout_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>let in under the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>levels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>light-clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>limit {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>linen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lintel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lower</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>melamine iron-on band 0.4 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>metres, to 1 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>millimetres, to 0.1 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>millimetres, to 1 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>moulding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mullion</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not be empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no choice costs less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no plan needs fewer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked by others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not proved: at least {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not said</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>notes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>oak pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>oak pole 1 1/4 in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>obstacle {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>obstacles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offcut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offcuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offcuts_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>old-paint</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on top of its supports</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outlets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over the lintel: {}, {} l</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over_shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>panel {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>panels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>papers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>parts/, {} drawings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>past the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pictures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pine board 1x4</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pine board 1x6</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pine pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pine pole 1 1/4 in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plaster on lath</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plastic band 0.5 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plastic band 1 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plastic band 2 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pocket screws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>proved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>proved to be the cheapest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quarter round 12 mm, pine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quarter round 19 mm, pine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rabbet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>resources</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>return beside the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rips only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sag_over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scribe moulding 20 x 6 mm, pine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scribe moulding 32 x 6 mm, pine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scribe moulding 45 x 8 mm, pine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>seeing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shared</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheets/, {} drawings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf-use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shims</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shoe shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shoe_shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>short</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>side-mounted ball-bearing slide, full extension, inch lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>simply supported</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sockets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>softwood stud 2x4 (38 x 89 mm)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>solid lumber</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>spot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steel studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steel tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steel tube 27 x 1.2 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stiff</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stile</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>store</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>studs-unknown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>survey_panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the material's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the same board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the whole closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tick one at least</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>toe kick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tongue and groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>translations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>uniform</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>upper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>upright</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood 1/2 in (15/32 category)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood 1/4 in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood 12 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood 18 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood 3/4 in (23/32 category)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood 6 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>volume</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wall-not-computed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wall-unknown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>walls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>warning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>warnings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>web</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what does not go in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what is not checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what is selected</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what is shown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>white melamine-faced particleboard 16 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>white melamine-faced particleboard 18 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>white melamine-faced particleboard 19 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>white melamine-faced particleboard 3/4 in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width that is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wires</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood veneer iron-on band 0.6 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wooden runner, box on wood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write no file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>yes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} % of it is controlled by other readings; w = {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} behind what is met first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} components, {} parts, {:.1f} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} dangers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} does not go in: {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} drawings written to {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} goes in: {}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} is cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} names are left out: their parts are hidden from here, or there is no room. Turn or zoom the view, or pull the parts apart.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} not checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} notes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} of {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} of {} cannot open all the way.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} of {}: {}
{} x {}, yield {:.0%}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} parts, {:.1f} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} pictures written to {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} solids, each with its name, where it stands; millimetres.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} warnings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{} {} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}, by length: {} ({})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: 1 sheet, yield {:.0%} ({})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {count} sheets, yield {:.0%} ({})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} expected</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} sheets so far, at least {} needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{}: {} x {}, at {} and {}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>–</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>✓</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>✓ yes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>✗ no</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>✗ {}</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Bay</name>
  <message>
   <source>Add a bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Divide the selected carcass once more: a bay beside the selected one, or at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Select the carcass, or the bay beside which to divide it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no carcass in this document: add one first.</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Bench</name>
  <message>
   <source>A bench in a bay of a carcass, or free in the closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bench…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Bill</name>
  <message>
   <source>Bill of materials…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Show and write the cut list, what to buy, the groove set-ups and the findings</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_BillSheet</name>
  <message>
   <source>Bill as a spreadsheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep the bill in the document as a spreadsheet that follows every change; formulas can use its cells</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_BoxRoom</name>
  <message>
   <source>Example: the box room at number nine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open an example in millimetres; its readings and sizes are invented</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Carcass</name>
  <message>
   <source>Add a carcass with its sides, dividers, shelves, back and base to the closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Carcass…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Select the closet that the carcass is for.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Checks</name>
  <message>
   <source>Checks…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>See what is dangerous, doubtful or not checked in a closet, and what to do about it</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Contents</name>
  <message>
   <source>Contents</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put drawers, doors, rods and the like into a closet</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_CornerShelves</name>
  <message>
   <source>Corner shelves…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelves of one piece in a rear corner</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Doors</name>
  <message>
   <source>A door, or a pair, in front of one opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doors…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Drawers</name>
  <message>
   <source>A bank of drawers in one opening, with slides and fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Drawers…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Dxf</name>
  <message>
   <source>Export DXF…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write drawings of the cut layout, of each sheet or of each part</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Examples</name>
  <message>
   <source>Examples</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open an example closet in a document of its own</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Existing</name>
  <message>
   <source>A reused chest or cabinet, built in as it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Existing piece…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_FaceFrame</name>
  <message>
   <source>Face frame…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stiles and rails in front of one carcass</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Fillers</name>
  <message>
   <source>Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fillers…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_GoesIn</name>
  <message>
   <source>Does it go in…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>See whether the selected pieces, or all, come in through the opening, and play how</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Layout</name>
  <message>
   <source>Lay out the sheets…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plan which sheets to buy and how to rip and crosscut them into the closet's parts</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Look</name>
  <message>
   <source>Look inside…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pull the closet apart in the view, play its assembly, cut it open, hide kinds of parts or show their names</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Offcuts</name>
  <message>
   <source>List the offcuts that are at hand, to be used before anything is bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Offcuts at hand…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Opens</name>
  <message>
   <source>Show the space that drawers, pull-outs, doors and lids open into, and what they hit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What opens…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_OverShelf</name>
  <message>
   <source>A shelf over the carcasses, from wall to wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf over the top…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Panel</name>
  <message>
   <source>Add a single panel with grooves, rabbets and edge bands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooved panel…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Select the closet that the panel is for.</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Pictures</name>
  <message>
   <source>Draw the closet from the front with sizes, from above, at an angle and pulled apart, and save the pictures into a folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Save pictures…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Porch</name>
  <message>
   <source>Example: the porch closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open an example in inches; its readings and sizes are invented</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Rods</name>
  <message>
   <source>A hanging rod, or two, in one opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hanging rod…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Said</name>
  <message>
   <source> ({0} alike)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> and may break in time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> and {0} in the middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> of the {0} wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> offcut {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source> to the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>" in inch inches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>' ft foot feet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>(0 runs through the edge band)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>+ into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>+ inward</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>+ where it rises</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, as do {0} others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, for which a weak board is not strong enough</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, for which it is too soft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, grain {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, its lip glued and screwed on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, or a reading is wrong: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, pines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, wherever the studs are: survey the first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>, which pulls its screws out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>16 CFR 1213, bunk beds, taken as a guide: nothing is published for closets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>2 or more, or none for no limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>2010 ADA Standards 308.2.1 and 308.3.1; homes are not bound by them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>2010 ADA Standards, advisory 308.1, children's reach ranges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>300 lb a person: International Residential Code Table R301.5 note c, stair treads; no standard for built-in benches was found</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>: the kerf takes the next one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; a screw {0} thick and {1} deep in the face of its own board may hold {2} ({3})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; a thicker bottom, or a batten under its middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; each of its {0} pins carries {1}: the pins are not checked ({2})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; if its ends could not turn at all, {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; measure the {0} next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; positive where it leans into the closet on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; sag as you entered it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; take the {0} as well</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; the anchors must hold {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; the softest boards published would not pass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; whether the heads pull through this board is not published</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; {0} strips then need {1} sheets, not {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>; {0} would sag </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A circular saw along a straightedge is at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A depth by the fraction is taken down to a multiple of this</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A table saw is at home</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ANSI A208.1 class M</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>APA Panel Design Specification: 16 % moisture or more, 0.85 stiffness, 0.75 strength</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ASTM D245 as NDS uses it: 2.1 times the 875 psi x 1.1 that spruce-pine-fir No. 2 may carry laid flat (875 psi and 1.1 quoted; 2.1 from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ASTM F2057-23 as 16 CFR 1261 (test figures from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ASTM F963 4.27: two openings, 2 in² together, 6 in apart, opened with 10 lbf (from memory, to be checked); ASTM F2598: from 1.1 ft³</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Accuracy class of the tape</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another number may find another plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.21</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 1.2.9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.16</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.18</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), 4.4.4.5</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Area of the parts over the area of the sheets, in percent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Area of those that are rectangles, in m²</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bays that there were objects for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Boards and bars to be cut by length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CPSC advice on tip-over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>CSV</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Class of this object in the workbench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Clear width; 0 shares what is left with the other such bays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Columns that hold the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Component and name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cut from a panel that is kept from an existing piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cuts on a sheet that the store makes; 0: any number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Deepest groove allowed as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of a blind hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of a groove as a fraction of the panel's thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of all grooves; 0: by the fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of an envelope of given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the grooves; 0: by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Depth of the largest plumb and level box that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the holes for shelf pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diameter of the router bit at hand; 0: not said</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Direction of the cuts made first on a whole sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubts about it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubts about the design</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Doubts about the readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>E of metal hardly scatters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 14322 (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 1995-1-1 Tables 2.3 and 3.1 (quoted)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 1995-1-1 service class 1; EN 312, EN 622: boards for dry conditions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 312 type P2, over 13 to 20 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 312, EN 622: boards for use in dry conditions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 336 class 2, and PS 20-20 for green lumber</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 622-1, MDF (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 622-1, hardboard (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EN 622-5, over 12 to 19 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>EPA 40 CFR 745 (renovation, repair and painting); 16 CFR 1303</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band bought over the length of the rims, as a fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty for none, or a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band of the visible front edges: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Edge band: auto for the material's own, empty for none, or a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Error of the level or plumb line in a metre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>File with materials and prices of your own; empty: only those that come along</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished length, edge bands included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Finished width, edge bands included</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>FreeCAD wrote only part of it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From a fixed panel to the nearest hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From near wall to near wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From one hole to the next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From that rim to the near wall of the first groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the carcass front to the base's front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the front edge to the front row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From the rear edges to the back's rear face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooves stop short of a banded front edge and run through a bare one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grooves, holes and notches in words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height above the floor of the {0} readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of a strip before each shelf; 0: none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of an envelope of given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the base</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Height of the largest plumb and level box that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How deep the envelope may go at most; 0: as deep as the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a loose shelf stays behind the front edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far a panel stays short of the bottom of its groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far grooves stay back from the front edge; 0 runs them through</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the grooves stay away from the front or the start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How far the grooves stay away from the rear or the end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How likely the clearances are kept, given the readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How long to look for fewer cuts then, per material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How long to look for fewer sheets, per material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How many there are</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How many times the cutting may change direction, the first counted; 0: no limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much shorter than its bay a loose shelf is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How much wider a groove is than the panel in it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How often the plan was drawn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How texts print lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>How top and bottom are joined to the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>International Residential Code R602: 16 or 24 in from centre to centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Its bays from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>JSON</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of its board in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the back's boards; empty: by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the base's boards; empty: as the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the board in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boards in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the boards that go into the grooves; empty: the same</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the class of bar in the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Key of the strips' boards; empty: as the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>LED or fluorescent identified for use in closet storage</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least distance from the rear edge to the rear row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Least gap to keep at the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left end at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left side's distance from the envelope's left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left side's distance from the envelope's left as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length to cut from the bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Length to saw, without the edge bands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>MDF: ANSI A208.2 least screw holding (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NDS 12.2.2: 2850·G²·D lb per inch of thread, not in end grain</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NDS 12.2.3: 1380·G^2.5·D lb per inch (quoted), not in end grain</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi quoted, 135 psi from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NEC 314.29 (quoted) and 240.24(D)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NEC 410.16 and the closet storage space of NEC 410.2: 600 mm from sides and back up to 1.8 m or the highest rod, 300 mm or the shelf's depth above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NEC 410.16(B)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NIOSH 94-110, hands {0} ahead, {1} up, poor grip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NIOSH 94-110, load constant; size: common practice, no published source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>NIOSH 94-110, load constant; team lifting: HSE L23 (quoted)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name of the piece within its component</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of bays, each an object of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of fixed shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of loose shelves on pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Number of parts to be cut from boards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>OSHA 29 CFR 1910.213</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Offcuts at hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One sheet to spare for each so many of a material; 0: none to spare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer depth as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer depth; 0: that of the envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer diameter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer height as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer height, base included; 0: that of the envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer width as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Outer width; 0: what the envelope leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>PS 1-19, unsanded, and EN 315, sanded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Parts were moved by hand since the plan was made</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Place among its component's parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Plan which sheets to take for a list of parts, and how to cut them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Readings taken anywhere else, as written by the survey's form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Right end at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rims with an edge band, and which</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rows that hold the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>STEP file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Saws in the place of all these, a text of JSON each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set it to plan again in the next recompute</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Set it to write the bill again in the next recompute</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheets of a material up to which none is to spare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheets to be cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shelf pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands at the rear of a deeper envelope, else at its front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stands beside the carcass before it, else at X</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sum of what has a price, in the catalogue's currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Taken off each edge of a sheet before any part is cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bay that it stands in; empty: by its number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bill whose lines the cells hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The bill, a line of comma-separated values each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The catalogue's currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet that it follows from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet that the bill is for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The closet whose parts are cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The component that it belongs to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The cut layout whose sheets are bought; none: not planned yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The design, the layout or the catalogue has changed since</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope's floor above the room's front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope's front face from the room's front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The envelope's left face from the room's front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The face that the grooves are in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file that they were read from last, none if empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The front's distance from the envelope's front as built</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The offcuts at hand, a text of JSON each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The offcuts at hand; none: everything is bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The parts, the catalogue or the settings have changed since</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan of boards and bars, as data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The plan, as data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The rim that the grooves are measured from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The step to which the tape was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The survey whose envelope it stands in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The ways to buy that were compared, as data</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness as measured, else as sold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness in mm as measured, by key of the material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thickness of a tube's wall; 0: solid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Time-Saver Standards; double hang: common practice, no published source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Trim every sheet by Trim, not as the catalogue says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Underside of each fixed shelf above the bay's floor in mm; none: equal spaces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Version of this object's properties</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight in kg; 0: not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight of all parts in kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight of the finished piece in kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What carries the fixed shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What closes or braces the carcass at the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What comes before it in the closet's order</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is known about the place and the people, as written by its form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What it stands in or in front of</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What must stay between grooves back to back, as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What must stay clear, as written by the survey's form</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What must stay under a blind hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What of the envelope is to be largest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What texts round lengths to, in mm for metric styles, else in inches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the bill was written for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the carcass stands on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the cells were filled from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the envelope follows from: the readings, or the given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the piece is in the closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the plan was made for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the shape was made from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What the store saws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where heads and names stand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the grain runs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Where the top lies</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether something to be bought has no price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether the {0} was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Whether {0} is left to the rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Who cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Widest clear distance between cross members</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of an envelope of given sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the largest plumb and level box that fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width of the saw's cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Width to saw, without the edge bands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 Table 5-6: coefficient of variation of E 22 % (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 chapter 8 (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190 eq. 13-2 and Table 13-5 (pine, from memory); moisture: common practice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-190, eq. 9-2 and Table 9-1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1 (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, MDF</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, hardboard, low end (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, particleboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1, plywood, low end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 12-1; birch mill sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wood Handbook FPL-GTR-282 Table 5-3b, softwoods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a board's price is for one size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a child of {0} years reaches {1} of {2} shelves and rods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a child shut in gets no air: two openings that no wall, floor or contents can cover, and a lid that opens from inside, with no latch; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a cleat glued and screwed under the rear edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a corner at {0}, {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a file with prices must state theirs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a fraction follows whole inches or feet only; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a fraction has one number above and one below the slash; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a front lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a joint between two of its pieces lies over no upright: put a batten under it, or make it in other pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a lighter or narrower leaf, hinges further apart, or longer screws into a doubled side; screws in a board near its edge need pilot holes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a new entry must state it; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a price must be 0 or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a rail more under it, a thicker top, or its grain from rail to rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a strip from cleat to cleat: lower bound theorem of plates; Wood Handbook Table 9-1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a thicker or stiffer board, shorter legs, or a leg under its front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a weak board may break under {0} in time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a weak board may break under {0} in time{1}{2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a whole sheet {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a {0} must state it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above 0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the bay's floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the bay's floor, clear of the {0} cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the bottom and its inset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the floor, to lie on the door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the floor, with room for its cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above the floor, {0} mm below what lies above it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>across the width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>add a larger sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>adjustable shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>adjustable shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>allowed for the least strength of its standard; for the mean strengths published {0} to {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>allowed for the least yield of its grade, {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>allowed for the weakest twentieth; clear wood bears {0} on average in a short test</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>along the bench</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>along the length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>aluminium tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an object by material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>anchor it; heavy things low; nothing tempting on top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another line has the same id; give the quantity instead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another line prices the same</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another line says something else of the same part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another one has the same key</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>anti-tip anchors</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>anti-tip anchors made to ASTM F3096, 50 lbf each (quoted)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ask the maker of the anchors for loads in brick; old mortar and perforated brick hold less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ask the maker of the anchors for loads in concrete</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ask the maker of the anchors for loads in hollow block</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ask the maker of the anchors for loads in this gauge of steel, or have plywood or lumber set between the studs behind the cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>assemble it inside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>assembled it {0}: assemble it where it stands, or tip it up with help, never alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at least {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at least {0} are needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at least {0}°</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at midspan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at most {0} pieces in all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at most {0} without one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at the free end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>at the rear wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back bow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back bow up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back cleat {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back lean</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back skew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back to dividers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back twist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>back {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base cross member {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base frame scribed to the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base front rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base rear rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>base setback</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay {0} loose shelf {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay {0} rail {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay {0} shelf {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bay {0} {1} cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>beam</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bearers to posts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>below the upper rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench rails to trestles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bench top to rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>beside what stands there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>between the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bottom and top to sides and dividers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bottom rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the back wall from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the back wall on its way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the ceiling from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the floor from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bow of the side walls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>box front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>butt, screwed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by rule</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by screws or nails through the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the inside width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cables and pipes run in walls: find them with a detector, switch the circuit off, and drive no screw deeper than it needs; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be opened ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be read from {0}; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot be written ({0}); see whether the folder may be written to and the disk has room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot come out: {0} in the way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot stand open while {0} does</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carcass to base frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carcasses</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carry it upright between two, one hand under the lower edge and one on top, in gloves, and not in wind; stand it steeply against a wall, and chock it; or have it cut to the strips that you need where you buy it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>casing and baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ceiling bow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ceiling twist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cells</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>chi-squared test, 0.1 %</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>child's reach</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>children climb open shelves and drawers like a ladder: fasten everything to the wall before use, heavy things low, nothing tempting on top, nothing poisonous, sharp or small within reach; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>circular saw along a straightedge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>circumstances</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clear height under the rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clear of the door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clearance above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clearance at each side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clearances</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleat height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleats of shoe shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleats on the side walls, or a height at which it lies on a carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleats to sides and dividers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleats to the studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>climate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>closet planning, as quoted: 24 in with the rod 12 in from the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>closetbench: {0}
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>closets in the file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clothes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clothes on hangers are deeper than the bay: they stand out at the front or rub against a door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clothes on hangers are wider than the bay: they rub against its sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clothes on the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cm centimetre centimetres centimeter centimeters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>column</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>comes out only after {0} is opened to {1}° or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>common practice, no published source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>compartment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>confidence</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>contradict each other by {0} mm or more; measure these again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>corner shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cost</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>creep: NDS 3.5.2 (seasoned lumber 1.5), APA Panel Design Specification 4.5 (plywood 2), trade guide for MDF shelves (1.5), EN 1995-1-1 Table 3.2 (quoted) with four fifths of the load lasting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>currency</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut layout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cut settings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>damp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dead space</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>deepest groove as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>defect</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth along the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth along the left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth along the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth along the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth between front and rear post</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth for hangers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth in the middle, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth in the middle, low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth near the left wall, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>depth near the right wall, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal at the back, rising to the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal at the back, rising to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal at the front, rising to the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal at the front, rising to the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal from front left to back right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal from front left to back right, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal from front right to back left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal from front right to back left, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal in elevation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>diagonal in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance from a fixed panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance from the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance from the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance of a pull's holes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance of the front row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance of the pull from the free edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance of the rear row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>distance of the rod from the rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>divider {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dividers with loose shelves on both sides are drilled right through; the pins of both bays share the holes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not clear {0}, which stands before it when open: keep the pull-out farther from the hinges, or take hinges that throw the door clear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not go in through the opening assembled ({0}), but its parts do: assemble it inside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not go in through the opening: {0}; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>does not go with {0} mm for the {1} of its kind: one was read in another unit; write the unit behind it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer box side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer boxes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>drawer {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>each of its {0} carries {1} on {2} x {3}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>edge band on the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>edge distance of the cups</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>end clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>end cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>end cleats to sides and dividers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ends in the middle; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ends of hanging rods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>enter the kind of wall, and the studs' spacing and place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>enter the readings, or a width, depth and height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>enter the use of the shelves: linen, general, books or stiff</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>entry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>error of the level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every one needs a key</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every part needs one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every plumb and level reading is 0, and 0 counts as read: take them with a level, or a wall that leans will not show</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>existing piece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>existing piece to the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>extra readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>extra {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>face frame to the carcass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>filler strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fillers to carcasses</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>find out what the lath is nailed to, probe for the studs, and enter them as wood studs; the plaster and the lath carry nothing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>first cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>first stud</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fixed shelves to sides and dividers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floor bow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floor rise</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floor run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>floor twist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>flush with the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>foot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for a {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for hangers {0} mm wide on a rod {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for shoes; {0} mm are there for {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for the mean strengths published </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>for the mean strengths published {0} to {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>free depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>frequency multiplier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from front to rear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from the floor to the floor of the bays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from the front, to clear the pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>from {0} to {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front kick board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front post</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front screws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>front wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fronts to drawer boxes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full of clothes it weighs more than its {0} may carry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>full overlay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gap around the fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>general storage</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>general storage with little sag</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>geometry, hinges taken to turn about the edge of the leaf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>geometry; ways that turn are searched with {0} mm to spare all round, the closet empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>given twice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>glue the {0} as well, which then carries; or grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>goes with no room that the other readings allow; about {0} mm was expected; measure it again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grain</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grain = {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>greatest {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>groove depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>groove depth as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>groove stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grooves and notches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grooves run through the edge band at the front; stop them short of it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>half lap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>half overlay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hanging rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hanging rods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hanging rods between the ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hangs lower or higher than rods usually do (one rod about {0} to {1})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hangs lower than rods for {0} things usually do, under what lies above it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has been altered: its maker's label, its anti-tip kit and its test count no more; it is computed as new, and must be anchored; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has fewer hinges than its height asks for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has no reserve for the {0} that furniture tests hang on rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>have it halved at the store</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>have it made at the store, or cut along a straightedge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>head casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height above the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height at the back left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height at the back right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height at the back, in the middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height at the front left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height at the front right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height at the front, in the middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height for each shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of a door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of a fixed shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of a front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of its centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of shelf {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the bottom rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the box</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the feet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the hands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the opening at the left jamb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the pull</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the shelf rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the shelves' lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the top rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the upper rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height of the wall over the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>height over the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heights of the fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hinge cup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hinge it on the other side, make it narrower or part it in two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hinge plate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hinge strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>holds back {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hollow block</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in a groove all round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in its compartment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in its lip; allowed for the least strength of that one's standard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in the envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in this depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in {0} mm of depth with {1} mm behind it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inset of the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is a board's key too; give the bar another</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is fastened to nothing: find where its sides can be screwed through to the carcass, or anchor it to the wall, before its drawers are used; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is higher or lower than people sit well on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is made for dry, heated rooms; ask its maker for figures in damp air</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is more than three people should lift by hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is no key of this table; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is no table here; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not JSON ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not in the catalogue; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not in the table of load cases; give the loads one by one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not known; known: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is not there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is thinner than rods are made</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too long and wide for one person to handle, though not too heavy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too narrow for two cuts: leave nothing, exactly a kerf of {0} mm to a neighbour, or more than two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too near to what is stored: fire; move the shelf or the light; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too short</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is too thin for the pocket screws in the list: they come out at the face</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>is wider than the number of hinges is meant for: it sags and pulls on them; make a pair of it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it cannot be read ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it cannot be read as TOML ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it cannot be written ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it cannot be written ({0}); see whether the folder is there and may be written to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it carries {0} on {1} x {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it does not go straight through {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it gives {0} piece(s), {1} are named</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it has neither cleats nor a back of {0} to screw through, and </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is kept for that job</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it is larger than the closet inside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it leaves nothing of {0}; it must be less than {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it misses {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be 0 or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be 0 or more and leave something of {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be 0 or more, or none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be 2 or more (rips, then crosscuts), or none for no limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be more than 0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must be text in UTF-8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it must lie within 0 to {0}, its start first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it stands {0} from the wall: set it at the rear or anchor it with brackets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>item</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its bottom sags {0} under {1} of clothes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its diagonal of {0} does not go up under {1}: put it on a base of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its end stile is cut with an allowance: offer it up plumb, scribe it to the wall and plane it down before the frame is joined</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its fronts are tapered to an opening that is out of square, each its own way: mark them as they are cut, measure both diagonals once more before that, and {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its hinges hold on to the face frame: take plates for frames, or pack the sides out flush with it; their holes are not drilled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its lid is glued up of boards: screw two battens under it through slotted holes, or it cups</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its lip may break under {0} in time, if it is a weak one; the shelf alone would not{1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its own {0} hang on {1} x {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its rails may break in {0} under {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its rails sag {0} under {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its top hinge is pulled with {0} by its own {1}, and with {2} when somebody leans on it as in the test</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>join it from two parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>joinery</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>joint</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>joints of the face frame</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>just inside the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>keeps less strength in reserve under {0} for years than building design asks for; the weakest board of its kind would break at {1}{2}{3}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kept panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kerf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>key</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>key = {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kick boards to sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>known are {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>known: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>larger than every sheet of {0}; the nearest, {1}, gives {2} x {3} inside its trim: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lateral load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the back wall at the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the back wall at the left, half way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the back wall at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the back wall at the right, half way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the left edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the left wall at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the left wall at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the left wall at the front, half way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the right edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the right wall at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the right wall at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lean of the right wall at the front, half way up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>least web as a fraction of the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>leaves a wide gap in its bay: let the bay follow it, or cover the gap with strips</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>leaves no box of {0} mm beside, below, above or in front of it; check its sizes, or move it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left bow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left lean</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left skew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left stile</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left twist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length = {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length along the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length along the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length format</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length of the rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>less than 0 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>let in under the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>let its grain run the other way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>level it with shims: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>levelling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>levels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lid supports on both sides, no latch, a gap at the hinge under {0} or over {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lies behind the {0} return: no drawer or pull-out there; shelves reached from the side and rods are at home there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lies on no sheet; plan again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lies on {0} uprights and cleats at its ends: it takes two or it comes down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lies too far between its supports</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lift</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>light clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>limits of the tools listed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>linen and clothes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>link the bill that it shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>link the closet that the bill is for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>link the closet whose parts are cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lips to shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>load as you entered it; sag: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>load case</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>loaded beyond the ends of its cleats alone it pulls at the {0} x {1} that hold it down on them, at the corner with {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>loaded sideways</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>local codes and a licensed professional come first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>longer or more of them, glue as well, or grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>longer than every clear stretch in stock; the longest is {0}: join it from two, or add a longer one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>longer than {0} and larger than {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lower drawers, or a slide of a heavier class</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lower rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lower than the 27 in from which the rule applies</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>m metre metres meter meters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>make it smaller</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>make it smaller by {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>make its {0} {1} less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>make them {0} wide or less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>makes nothing at the {0}: the {1} stile of {2} reaches to the wall there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mark the low, middle and high level all round with the level, from the floor in the front left corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mass and pitch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mass of its drawers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>material = {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>material {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>may come down: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>may come down: {0}, and {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>may tip off its cleats: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measures {0}, outside the {1} of its standard: measure again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>melamine-faced particleboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mill sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>missing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mixes metric and inch units; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mm millimetre millimetres millimeter millimeters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>model</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>moisture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>more are needed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>more or longer nails, or glue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>more stages than the settings allow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>more than {0} times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mouldings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mullion {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 or 1 on a door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 or more and leave some of the run of {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 or more, downward</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 or more, or none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 to 10 mm in a metre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 to 1000 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 to 20000 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 to 500 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 to {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 to {0} mm on a board {1} mm thick{2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0 unless fronts are inset: an overlay hides it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0.01 to 20 mm: the step to which the tape was read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 0.5 to 0.999</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 or 2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 or more to have gaps beside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 to 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 to 10 mm, or a front rubs on its neighbour</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 to {0} in {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 1 to {0} in {1}, bay {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 2 or more and leave {0} mm from one cup to the next in a door {1} mm high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 2 under a lid: what lies between is in the way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be 6 to 14 %</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be MATERIAL=LENGTHxWIDTH[@COST]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a finite decimal such as 0.5 or 0.01</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a finite number of millimetres</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a key of the catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a list of lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a list of numbers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a name such as EUR</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number of mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number of mm above 0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number or a fraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a number or none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a table of keys and values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be a whole number from {0} on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 and at most 1000 kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 and at most as wide as the groove, {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 and at most {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 and at most {0} mm in a panel {1} mm thick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 and below 20 m</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 and below half of the {0} mm of a tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0 mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be above 0: a load needs an area</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be an object with named values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least 20 mm; make the frame's members narrower</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm for a hole {1} mm across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm for a strip; give it more clearance or cover it with a moulding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm for the shortest slide, {1} mm, with {2} mm behind it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm for two rows of holes under loose shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm of {1} mm where grooves meet back to back; make them shallower or move one shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm to hold a shelf; {1} mm lie between the sides for {2} bays</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm, and only {1} mm are there{2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm; check the readings and the clearances</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm; the opening is {1} mm wide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at least {0} mm{1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at most {0} mm for a {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at most {0} mm, or drill right through {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at most {0} mm, {1} mm less {2} mm of clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at most {0} to leave {1} mm between them in {2} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at most {0} to lie side by side in this depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be at most {0} {1} for a {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be fewer: {0} mm of clear height with {1} usable holes leave less than {2} mm between shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be from {0} to {1} {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be given and must differ from every other's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be given by their heights: the lowest lies over {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be given once</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be given where no carcass carries it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be given, one for each shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be given: a {0} is hollow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be groove, screws or nails; cleats carry shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be inset or an overlay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be larger than the edge band, {0} mm thick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be left open for {0} things, which hang on one rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be left open: it stands in {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be left out of a panel that is tapered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be lengths above 0 mm, rising</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be lengths from the front left corner, the first below the second</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be less than half of {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be less than the depth of the groove, {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be less than the {0} kg of the whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be less than the {0} mm across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be letters, digits, - and _ only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be more than 0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be more: nothing says where these are: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be none, length or width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be one of {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be one of {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be one value or more above 0, rising</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be simply supported or clamped</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be smaller than the panel, {0} x {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be solid lumber for a rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be text in quotation marks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be the only one there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be the {0} mm between the sides, or leave one bay's width open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be there: gaps follow from its readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be three heights above the floor, rising</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be within {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} mm or more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} mm together, or leave one of them 0 to take what is left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} mm: a rod along the bay hangs {1} mm under what lies above; or leave it open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} to {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} to {1} for the table of lateral loads</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} to {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} to {1} mm along the {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0} to {1} mm{2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0}, as heights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0}, as the heights given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must be {0}, the number of heights given, or leave the heights out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must come out of {0} x {1} mm side by side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must end at the left or at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must hang on rods that run across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must have a name of its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must have one that is {0} mm wide or more for the widest gap; name one, or leave less clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must keep clear of other cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must keep clear of the groove for {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must leave something of the sheet of {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must leave the hole inside the panel, {0} x {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must leave the hole inside the taper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must leave the panel within {0} x {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must lie below the ceiling, {0} mm; enter the heights that were read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must lie within 0 and {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must lie within 300 mm either way; enter the offset, not the distance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must lie within the span of {0} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not be negative</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not be negative; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not be wider than the closet behind it, {0} mm; measure between the jambs, and the width inside, again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not differ by more than a tenth; measure again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not lie in a notch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not run into another notch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not run into each other</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must not run into each other; move one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must say what it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>must say where it was read: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>name of a component</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>narrowest strip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nearest: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nearly shut, its lid's weight turns it down with {0}, and as much more as lies on it: its supports must hold that together at every height; compare it with what they are made for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>needs a base frame, but the {0} stands on the floor; use shims</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>needs one hole or more, a diameter above 0 and a pitch that leaves wood between</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no board of the catalogue, no lip and no {0} dividers do</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no formula is published for this board; glue the joint, let the shelf into grooves, or test a corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no length is that long; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no length of it is in stock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no light</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no plan takes less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no plan was found for {0} parts of {1} m² on them; {2}: add sheets, or let the search take longer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no published formula for screws loaded sideways in such boards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no room for a cleat between the shelves near the middle of the bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no scatter is published ({0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no screw of the catalogue holds in its fronts without coming out at their faces: add one to your catalogue, or take thicker fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no screw of the catalogue reaches through {0} of cleat, {1} of gap and {2} of lining far enough into a stud</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no sheet of it is in stock (there is: {0})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no span passes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no standard covers altered furniture; common practice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no stud is sure to lie behind it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no stud is sure to lie behind its top cleat{0}, or anchor it with brackets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no tool at hand makes cut {0} on {1} (fence {2})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no way in was found</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no withdrawal is published; take no {0}'s hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none for a drawer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none from {0} to {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>northern red oak: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not TOML</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked by others</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: damp air; the shelves are taken to be in a dry, heated room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: how many screws find a stud, since their spacing is not known; find them and enter spacing and place; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: its legs are too long for their depth to be carried from wall to wall; put a leg, a bracket or a side panel under the free end of each; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: no design values are published for rails of {0}; take solid lumber, or ask its maker</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: nobody is to sit on it, but somebody will; enter how many can</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: strength and stability of {0}; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: what children reach and climb; say whether children live or visit here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: what screws hold in {0}: {1}; {2}{3}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: what the screws hold in, since the wall is not known; find out whether it is studs or masonry before you buy screws; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: whether a child shut in gets air, since the closed volume is not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: whether a light in the closet keeps clear of what is stored; say what light there is and how far it is from the nearest storage space; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: whether it tips with its drawers open and whether what it stands on carries it; weigh it; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: whether the closet covers outlets, junction boxes, registers or alarms; look before you fasten it; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: whether the shelves carry what you will put on them, since that is not known; say what they are for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: whether walls, trim or a reused piece carry paint from before 1978, which may hold lead; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: who reaches it, since its height is not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: {0} in the edges of {1}, for which nothing is published: glue it on as well, or screw it on through the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: {0} is made for dry, heated rooms; ask its maker for figures in damp air, or take plywood or solid wood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: {0}, and the wall is not known or not computed; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: {0}, and whether a stud lies behind it is not known: find one, and put every screw into it; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: {0}: {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not checked: {0}: {1}; {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not measured, so taken for granted: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>notch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing checks a reading, so that a wrong one would not show: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing is there to be drilled</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing keeps the carcass square or takes the screws into the wall; add a back or cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>number of fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>number of grooves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>number of hinges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>number of leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>number of shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>oak pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of bare lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of the length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>of the sheets given here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offcut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offcut {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offcuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on carpet, a child on {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on top of its supports</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one at hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one of these must be wrong, and the readings do not say which: {0}; measure them again{1}. Until then they count for little</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>only the smallest unit may have a fraction; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open lamps and pendants set clothes on fire and are not allowed in closets: have an enclosed one fitted; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open or partly enclosed lamp, or pendant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>opening {0}, inside {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>opens only {0}°, then {1} is in the way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>option --offcut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>option --sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>option --stages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>option --{0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>or put a leg under midspan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>out of date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outlets and boxes must stay within reach, no breaker panel may be in a clothes closet, and no register or alarm may be covered: cut the back out around them, or have them moved; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over the sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>over-the-top shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overhang at the ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overhang at the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overlap of a moulding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overlay at the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overlay of the fronts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pack out the gap behind it solidly, and put its screws into studs; or blocking between the studs, or a side panel under the shelf; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>paint from before 1978 may hold lead: have it tested before you sand, saw, scrape or heat it; keep children away; in a home that is let, certified firms only above 6 ft² a room; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>panel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>panel at the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>panel {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part {0} is not on any sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part {0} is not wanted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part {0} is placed twice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part {0} is placed {1} times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>particleboard: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>parts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>parts {0} wide, {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>passes to {0} between supports</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>past the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>piece {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pine pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place of a load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place of the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plan again with the wider kerf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plan of lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plan the sheets again first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plan the sheets first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plaster on lath</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>play of a loose shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pocket screws</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ponderosa pine: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>position</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>prices are invented: enter your own, with their currency, in your catalogue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pulls</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>put a survey into the closet's group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>put it into the group of a closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>python3 -m closetbench layout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quantity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rail bearer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rail {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reaches past the envelope at the {0}: take less overhang, or have the stile scribed to the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reaches {0} past the last thing that carries it: put a cleat or an upright under its end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rear face of a loose shelf's lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rear kick board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rear post</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>recessed, enclosed lamp or LED</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>recessed, fluorescent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reserved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>resolution</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>resolution of the readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rest {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>return at the left of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>return at the left of the opening, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>return at the right of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>return beside the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right bow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right skew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right stile</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right twist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rips and crosscuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rips only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from front left to back right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from front to back at the left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from front to back at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from left to right at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from left to right at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from left to the middle at the back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the floor from left to the middle at the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the lower edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rise of the upper edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round section</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rout with panel and straightedge clamped, against the bit's turn, in passes no deeper than half the bit's diameter; let the bit stop before you lift it; eyes and ears protected; the router's own manual comes first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>router bit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sags too much:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saw with the sheet held on both sides of the cut so that the kerf cannot close, the guard and the riving knife on, the blade just through, push sticks, nobody in line with the blade; eyes and ears protected; unplug before changing a blade; the saw's own manual comes first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>saw {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>say the unit of {0}; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>say which board they are in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>says no {0}: {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>screws through its cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scribe allowance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scribed to the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>search, for each material</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>seconds more for simpler cutting (as --seconds)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>section</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>set the hinges so that their axis is plumb, or the door swings by itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>set the rails upright ({0} high, not {1}), </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>setback of a loose shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shallower legs, longer screws, or a leg under its front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet {0} is not in stock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet {0} is used {1} times, there are {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet {0} of {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheet {0}, {1} wide, gives {2} strip{3} of {4} and {5} are left{6}; at {7} or less it gives {8}{9}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheets in stock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheets that can be bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf pin holes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf pins</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf {0} back cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelf {0} side cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelves lie level on both sides, so the second cannot be fastened straight through the divider: let shelves into grooves, carry them on cleats or set them off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shelves to their cleats</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shim the slides plumb and parallel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shimmed under its cross members alone, each field of it carries {0} with all shelves full over {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shims under the rails between the cross members too, closer cross members, or a higher base</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shoe shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>simply supported</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sitters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sizes and grooves use the nominal {0}, but boards sold as that may be {1}: measure the sheets before cutting and enter the thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>skin under a blind hole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slide bearer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slide length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>small table saw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>solid lumber</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>solid wood: it swells and shrinks by about {0} across the grain between winter and summer; fasten it firmly at one edge only and leave room at the other</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>spacing of the base's cross members</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>span over</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>spans to {0} pass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>specific gravity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>split its {0} into pieces of {1} or less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stands for none given; write another value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stands in {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stands out in front of the envelope: make the carcass shallower, or have it lie over the wall beside the opening on purpose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>start above the compartment's floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>statics; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steel studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steel tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>step of the groove depth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stiffness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stock length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stock length {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stock lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stop {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stops</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stops to shoe shelves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>store cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>store panel saw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>straight through the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>straightedge saw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>strip behind the lid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stud spacing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>style</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sum of the bay widths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>supports</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>supports at most {0} apart: {1} between the ends</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surface, enclosed lamp or LED</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>surface, fluorescent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>survey</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>table saw</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>take a second person along, or let the store cut more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>take higher rails, </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken as heavy softwood: not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken to be straight, since no reading would show it: no {0}; hold a straightedge to them, or take the readings half way that the survey sheet asks for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>takes the place of the list's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>takes the same space as {0}: move one of them or make it smaller</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>takes three people</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>takes two people</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taper of the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tapers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the back wall is plumb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the boring for the {0} is common practice: compare it with the sheet of the hinge in hand, and bore a trial piece first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the cleats are too small for the screws into the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the closet is as square in plan at the left as at the right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the comma can be read in two ways; type {0} or {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the design value is for the weakest twentieth of the grade, over 2.1 (ASTM D245)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the drawers pull out {0} of {1}; the rear stays inside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fence at {0} mm is not where the kerf is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the figures of the {0} are no maker's: enter the sheet of the slide in hand as a class of your own before cutting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the file holds [[offcut]] tables only</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the first line names the columns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the first names columns: {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the floor falls too far to be shimmed: scribe the base frame to it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the floor is level from front to back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the floor is level from left to right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the fraction after a whole number must be under 1; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the front edge of a shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the front edges show the raw core of {0}; choose an edge band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the front of an open drawer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the gap at the {0} is wider than a scribed filler usually covers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the gap under the base is wider than the quarter rounds: scribe the base frame to the floor, or name a larger one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the heading has {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the holes for a {0}{1} cannot be drilled: {2}; move it or what is in its way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the layout reckons with a kerf of {0}, the {1} takes {2}: the last parts of a row come out small</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the left return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the left wall is plumb</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the lid can fall on a child leaning in: fit supports that hold it at any height without adjustment, or make it a drawer; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the lines before say {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the longest span that passes is {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the lower number of a fraction must not be 0; {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the name must end in {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the number must be {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the opening is in the middle of the front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the part list, JSON or CSV</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the plan takes it, but it is not at hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the plan to write, JSON; else it is printed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the readings agree less well with flat walls than their tape allows; all sizes are less certain by this factor, and more readings would help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the readings show a {0}{1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the right return</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the rule exempts units permanently attached to the building, and only those</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the same seed, the same plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the screws of its supports, each of which carries up to {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the slides lie behind a face frame: pack them out by {0} at the left and {1} at the right, flush with the frame's edges</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the span that passes is {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the top gives way under one person between two rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the top may break under one person between two rails</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the wall above the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the wall is not known or not computed, so no screws for it are in the bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the {0} cannot be right: {1} was read, {2} follows from the others; measure it again. The room is worked out without it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there already is a piece {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no piece {0} at this point</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is no such offcut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there is nothing to write yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>there must be one of it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>they do not give {0} pieces of {1} m in all; add some</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>they reach only {0} into a stud</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of a door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the baseboard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the box's sides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the top</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thickness of the wall at the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thing in the middle of a shelf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tilted under the lintel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tilted up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>title</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to be cut from a {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to carry slides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to cover the dividers' edges and leave an opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to cover the shelf's edge, from {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to cover the side's edge and leave an opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to cover the slide, with {0} mm above and {1} mm below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to fit in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to fit the envelope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to level {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to lie in the bay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to lie in what is left of the side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>toe kick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tongue and groove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too many turns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too narrow for a strip to be scribed and fixed, and too wide for the mouldings: give it {0} more clearance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>top rail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>trim</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>trim the sheet less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>turned in plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>turned in the opening and set upright behind it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>turned past the jambs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>turned up sideways</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>turns over {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>twist of the back wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>twist of the ceiling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>twist of the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>twist of the left wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>twist of the right wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two equal loads at the outer quarter points</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>two equal loads at the outer quarter points, deflection at a load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unanchored it tips over {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unanchored it withstands {0} what turns it over {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>under {0} ({1}) {2} of {3}{4}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unknown</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unreadable</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>upper rod</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>use every hole of the support, screws that bite at least two thirds of the panel, and through the panel into a stud or a cleat where you can</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>veneer-core plywood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>vertical panel saw at the store</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ways to buy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>web between them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight of a cut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight of a door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight of a metre sawn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight of the offcut</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what its anti-tip anchors hold is for their maker to say, and needs a stud or masonry behind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what the supports hold, by their maker</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wider than a filler usually is: make the carcass up to {0} larger</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width = {0}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width at the back, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width at the back, low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width at the back, middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width at the front, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width at the front, low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width at the front, middle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width for hangers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of a door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the box</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the casing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the members</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the mullions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the opening</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the opening, high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>width of the stiles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>with all drawers open and full</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood and board dust harms lungs and may cause cancer: extraction at the tool, a respirator, sweep nothing dry; resin boards give off formaldehyde: air the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wood studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>works loose in time: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>your own load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} (Wood Handbook FPL-GTR-190 Table 5-6)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} [material.{1}]</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} above the floor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} after {1} must be under {2}; carry the rest into {3}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} along the sheet's {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} and {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} and {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} apart</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} as carried from the store {1} too heavy, or too long and wide, for one person</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} at each edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} at each side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} at the {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} at {1} across, {2} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} below it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} between the ends of its cleats under {1}, reckoned as a strip, which is more than it will</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} between the stiffest and the softest boards published ({1})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} board {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} bottom</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} bow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} by the boards published ({1})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} cannot follow {1}; {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} cm³ in common</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} divider{1} to carry it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} door</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} expected, give or take {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} fault(s); the plan must not be used</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} front</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} gap at the {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} in {1}, bay {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} is no number; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} is no unit of length here; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} is not sold {1} mm long as yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} kept from {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} kg every {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} kg, or {1} m² over {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} lap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} lbf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} lbf·ft</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} lean</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} line {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} lip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} litres</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} looks like a subtraction; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} mm at each end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} mm in a metre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} mm wanted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} moulding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} need the place of {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of clothes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of nominal {1} measures {2} to {3} ({4}, and {5} for the reading); measure again, or enter the board as a material of its own with its own nominal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of the opening in {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of travel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of {1} mm at {2} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} of {1} shelves and rods lie outside the reach of somebody seated, the highest as given: keep what is used daily within it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} once it is stripped</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} psi</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} quarter round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} rest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} rise</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} sheets are named {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} sheet{1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} skew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} stands beside another number without a unit; {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} strips need {1} widths and {2} kerfs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} thick</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to the studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to the wall</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} by density</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} by density ({2})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} by the density of its board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} by the density of its boards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} by the density published for the board</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} by the density published for the boards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} in the lightest and the heaviest softwood studs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1} mm across, up to {2} mm high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} to {1}, by the density of its boards</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} top filler</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} top moulding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} trim {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} twist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} under {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} without its edge bands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} would hold {1} of that</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} x {1} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} x {1} through the top cleat, one into each stud, and as many through each other cleat, heads on washers{2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} at its top, each into a stud and, with a screw of its own, into the board{2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} end cleat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} high enough for a small child's body and too low for its head, the lowest as given: make what a toddler reaches lower or higher, or close it; {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} more than one person should lift flat at arm's length: carry them upright and close, or by two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} under {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0} {1} under {2}{3}{4}{5}; after years about {6} ({7})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, bay {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, divider {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, gap at the {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, groove for {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, grooves for {1} and {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, hole for {1} in the {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, holes for {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, holes for {1} and {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, measured thickness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, part {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, pocket for {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, pulled at the edge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, screw point {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, shelf {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, spreadsheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, which reach only {1} into what holds them: no load is published for that</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, {1} deep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, {1} x {2} in {3}{4}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}, {1}: empty or outside the trimmed sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}0 and {1}1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: bay {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: bill</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: cut layout</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: made by another version of the workbench ({1} is unknown); it stays as it is
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: not the sheet {1} of the stock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: not to be sawn from edge to edge within the stages allowed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: not turned, its grain must run across the sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: of {1}, on a sheet of {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: outside the trimmed sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: planned for a kerf of {1}, not {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: the bound {1} is above the sheets used</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: the cuts do not give part {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: the cuts do not give {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: turned, its grain must run along the sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: {1} ({2}), {3} used, {4} cuts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: {1} and {2} are closer than the kerf</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: {1} objects of the closet workbench had lost their program, as in a file saved without it; they can be edited again: {2}
</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: {1} stile</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}: {1} x {2} is not its size</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; 0: not taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; EN 14749 (from memory)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; a nail may be pulled with {1}, so glue it on where doors hang on it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; changed in {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; fasten it to the wall all the same</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; limit: common practice, no published source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; load and limit: common practice, no published source</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; may come again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; or build it in place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; or one support more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; sag: Composite Panel Association shelving bulletin (as quoted)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; studs of specific gravity {1}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; {1}: not given</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; {1}; load: {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; {1}; statics</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}; {1}; {2}; load: {3}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}it would take {1} anchors of {2} each, but only {3} studs are sure to lie behind it{4}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}{1}, and how it is fastened is not settled: {2}. Screw it into studs or masonry before anything is put into it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}{1}: fasten it before anything is put into it, with {2}, which makes it withstand {3} of that</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}{1}; load: {2}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{0}° open</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_ShoeShelves</name>
  <message>
   <source>Shoe shelves…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sloped shelves for shoes in one opening</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Start</name>
  <message>
   <source>Start a closet from readings in the room or from its sizes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Start a closet…</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Step</name>
  <message>
   <source>Export STEP…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write the parts of the closet, or those selected, as named solids for other programs</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_Survey</name>
  <message>
   <source>Enter the readings taken in the closet and see which plumb, level box fits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Select the closet to survey.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Survey…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no closet in this document: start one first.</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Closetbench_SurveySheet</name>
  <message>
   <source>Survey sheet…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write a sheet with drawings of the closet, numbered readings to take and blanks for them</source>
   <translation type="unfinished" />
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Closet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closet shop papers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Closet views</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
