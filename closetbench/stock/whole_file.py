"""Writing a text file whole or not at all."""

from __future__ import annotations

import contextlib
import os
import secrets
from pathlib import Path

from closetbench.core.errors import DocumentError


def write_whole(path: Path, text: str, subject: str) -> None:
    """Write beside the place first, then rename into it. Raise DocumentError on failure."""
    beside = path.with_name(f".{path.name[:40]}.{secrets.token_hex(4)}.part")
    try:
        with open(beside, "x", encoding="utf-8", newline="\n") as stream:
            stream.write(text)
            stream.flush()
            os.fsync(stream.fileno())
        os.replace(beside, path)
    except OSError as error:
        reason = error.strerror or str(error)
        raise DocumentError(subject, "file", path, f"it cannot be written ({reason})") from None
    finally:
        with contextlib.suppress(OSError):
            beside.unlink()
