"""What the user sees in FreeCAD: commands, task panels, view providers."""
