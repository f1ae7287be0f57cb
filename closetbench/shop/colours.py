"""The colours of pictures: woods and stones, pale enough for words on top."""

from __future__ import annotations

from closetbench.core.parts import Role

ROLE_COLOURS = {
    Role.SIDE: "#c7b08a",
    Role.DIVIDER: "#b59b74",
    Role.TOP: "#d6c39f",
    Role.BOTTOM: "#cdb891",
    Role.FIXED_SHELF: "#e0cfad",
    Role.ADJUSTABLE_SHELF: "#a9bca6",
    Role.BACK: "#e6dfd0",
    Role.CLEAT: "#9aa7b1",
    Role.TOE_KICK: "#857a6d",
    Role.BASE_FRAME: "#a3968a",
    Role.PANEL: "#c6a6a0",
    Role.BOX_SIDE: "#d9c8b4",
    Role.BOX_FRONT: "#d3c0aa",
    Role.BOX_BACK: "#d3c0aa",
    Role.BOX_BOTTOM: "#e3d9ca",
    Role.FRONT: "#8fa3a8",
    Role.DOOR: "#9db3b2",
    Role.STILE: "#b98d63",
    Role.RAIL: "#c69c73",
    Role.MULLION: "#b98d63",
    Role.BENCH_FRAME: "#d7b98c",
    Role.BENCH_TOP: "#c08a5a",
    Role.BENCH_FACE: "#a98f77",
    Role.LID: "#c08a5a",
    Role.SHOE_SHELF: "#b7b58c",
    Role.CORNER_SHELF: "#b3bda0",
    Role.OVER_SHELF: "#cfc39f",
    Role.LIP: "#a88a6a",
    Role.ROD: "#8d949c",
    Role.EXISTING: "#a8795a",
    Role.FILLER: "#cdb48c",
    Role.MOULDING: "#e2cfa8",
    Role.SHIM: "#d9b36a",
}
OTHER = "#bcb6ae"
BAND = "#3c6e91"


def role_colour(role: Role) -> str:
    """The colour of a role."""
    return ROLE_COLOURS.get(role, OTHER)


def shaded(colour: str, light: float) -> str:
    """A colour made darker (``light`` under 1) or lighter (over 1)."""
    parts = [int(colour[i:i + 2], 16) for i in (1, 3, 5)]
    if light <= 1:
        mixed = [v * light for v in parts]
    else:
        mixed = [v + (255 - v) * (light - 1) for v in parts]
    return "#" + "".join(f"{min(255, max(0, round(v))):02x}" for v in mixed)
