"""FreeCAD document objects: properties in, parts and results out; the core does the sums.

Who depends on whom: ``Survey`` <- ``Carcass`` (and its ``Bay``s) <- ``ClosetPart``. The
``Closet`` is a group that holds them all, so that it can be hidden, moved into an
``App::Part`` or deleted as a whole. A group depends on what it holds, which is why
nothing in it may depend on the group, and why ``CutLayout`` and ``Bill``, which do, are
shown under it but not held by it.
"""
