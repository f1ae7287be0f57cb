"""Where the files that ship with the package are, and the catalogue read from them."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from closetbench.core.catalogue import read_catalogue
from closetbench.core.errors import CatalogueError
from closetbench.core.materials import Catalogue
from closetbench.core.price_book import read_price_book

RESOURCES = Path(__file__).resolve().parent.parent / "resources"


def load_catalogue(user_file: Path | None = None) -> Catalogue:
    """Our catalogue, with the user's file laid over it: TOML, or a price book as CSV.

    A file is read again only when it has changed. Raises CatalogueError naming the file
    where it cannot be read or does not hold a catalogue.
    """
    if user_file is None:
        return _shipped()
    path = user_file.expanduser().absolute()
    try:
        state = path.stat()
    except OSError as error:
        raise _unreadable(path, error) from None
    return _with_user_file(path, state.st_mtime_ns, state.st_size)


@lru_cache(maxsize=1)
def _shipped() -> Catalogue:
    """The files of the catalogue folder in the order of their names, each over the last."""
    folder = RESOURCES / "catalogue"
    paths = sorted(folder.glob("*.toml"))
    if not paths:
        raise CatalogueError(str(folder), "files", "none", "the installation is not complete")
    catalogue = Catalogue()
    for path in paths:
        catalogue = read_catalogue(_text(path), path.name, catalogue)
    return catalogue


@lru_cache(maxsize=4)
def _with_user_file(path: Path, mtime_ns: int, size: int) -> Catalogue:
    read = read_price_book if path.suffix.lower() == ".csv" else read_catalogue
    return read(_text(path), str(path), _shipped())


def _text(path: Path) -> str:
    try:
        return path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise _unreadable(path, error) from None


def _unreadable(path: Path, error: OSError | UnicodeDecodeError) -> CatalogueError:
    why = "it is not UTF-8 text" if isinstance(error, UnicodeDecodeError) else error.strerror
    return CatalogueError(str(path), "file", "unreadable", f"cannot be read: {why}")
