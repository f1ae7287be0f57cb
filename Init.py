"""FreeCAD executes this file at start-up, with and without windows: it only registers.

Documents are watched from the start, so that a closet saved where the add-on was missing
comes back to life as soon as it is opened, whichever workbench is active. FreeCAD is told of
our material cards before it looks for any.
"""


def _start():
    import FreeCAD

    from closetbench.model import card_library, watch

    watch.install()
    card_library.register()
    FreeCAD.__unit_test__ += ["closetbench.selftest"]  # imported once somebody runs it


_start()
