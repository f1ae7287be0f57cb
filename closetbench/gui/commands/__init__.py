"""Our commands. Their modules import panels and the core only when a command runs."""
