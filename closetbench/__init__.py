"""Closetbench: from tape readings of a crooked closet to parts that are cut once."""

__version__ = "0.1.0"
