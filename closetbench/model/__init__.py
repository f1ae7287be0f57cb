"""FreeCAD document objects: properties in, parts and results out; the core does the sums.

What the user decides (``Survey``, ``Carcass`` with its ``Bay``s, what stands in them, single
panels) is held by the ``Closet``, a group, which so depends on all of it and works it out as
one design. What follows (the parts, the ``CutLayout``, the ``Bill``) depends on the
``Closet`` and is therefore not held by it: the tree shows it there all the same.
"""
