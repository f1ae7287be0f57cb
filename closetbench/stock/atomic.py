"""Writing a file whole or not at all: beside its place first, then renamed into it."""

from __future__ import annotations

import contextlib
import os
import secrets
import shutil
from pathlib import Path

from closetbench.core.errors import DocumentError


def write_bytes_atomically(path: str | Path, data: bytes, subject: str = "document") -> Path:
    """Put ``data`` at ``path`` in one step and return the path.

    A file that was there stays as it was until the new one is complete; a link is
    followed. Raises ``DocumentError`` that names the path and the reason.
    """
    place = Path(path)
    try:
        _write(Path(os.path.realpath(place)), data)
    except _NoPlace as refusal:
        raise DocumentError(subject, "file", place, str(refusal)) from None
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise DocumentError(
            subject, "file", place,
            f"it cannot be written ({reason}); see whether the folder may be written to, the "
            "disk is full or another program has the file open",
        ) from error
    return place


class _NoPlace(Exception):
    """Why no file can be at a path."""


def _write(target: Path, data: bytes) -> None:
    if target.is_dir():
        raise _NoPlace("that is a folder; give a file's name")
    if not target.parent.is_dir():
        raise _NoPlace(f"there is no folder {target.parent}; make it or choose another")
    beside = target.with_name(f".{target.name[:40]}.{secrets.token_hex(4)}.part")
    try:
        with open(beside, "xb") as stream:
            stream.write(data)
            stream.flush()
            os.fsync(stream.fileno())
        if target.exists():
            shutil.copymode(target, beside)
        os.replace(beside, target)
    finally:
        with contextlib.suppress(OSError):
            beside.unlink()


def write_text_atomically(path: str | Path, text: str, subject: str = "document") -> Path:
    """Put ``text`` at ``path`` as UTF-8, line ends as they are; see ``write_bytes_atomically``."""
    return write_bytes_atomically(path, text.encode("utf-8", "replace"), subject)


def make_folder(folder: str | Path, subject: str) -> None:
    """Make a folder with those above it, if it is not there; ``DocumentError`` where not."""
    try:
        Path(folder).mkdir(parents=True, exist_ok=True)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise DocumentError(subject, "folder", folder, f"it cannot be made ({reason})") from error
