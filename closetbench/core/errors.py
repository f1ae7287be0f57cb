"""The errors that bad input raises.

Each names the object, the property, the value and the limit, so that a form can
put the message beside the field and a job file can point at the key.
"""

from __future__ import annotations


class ClosetError(ValueError):
    """Input that cannot be built from.

    ``subject``: the object ("carcass A"); ``prop``: its property ("width");
    ``value``: what was given, as the user would read it; ``limit``: what is allowed
    and, where there is one, the way out.
    """

    def __init__(self, subject: str, prop: str, value: object, limit: str) -> None:
        self.subject = subject
        self.prop = prop
        self.value = value
        self.limit = limit
        super().__init__(subject, prop, value, limit)

    def __str__(self) -> str:
        return f"{self.subject}: {self.prop} is {self.value}; {self.limit}"


class LengthError(ClosetError):
    """A length that cannot be read or is out of range."""


class CatalogueError(ClosetError):
    """A material, sheet or price that the catalogue cannot take or does not have."""


class SurveyError(ClosetError):
    """Readings that do not describe a room."""


class LayoutError(ClosetError):
    """Parts that cannot be laid out, or a layout that its verifier refuses."""


class DocumentError(ClosetError):
    """A document that cannot be written or read."""
