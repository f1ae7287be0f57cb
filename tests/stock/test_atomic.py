"""A file is written whole or not at all, and a refusal says where and why."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from closetbench.core.errors import DocumentError
from closetbench.stock.atomic import make_folder, write_bytes_atomically, write_text_atomically


def test_text_is_written_as_utf8_with_its_line_ends(tmp_path: Path) -> None:
    path = tmp_path / "bill.csv"
    assert write_text_atomically(path, "18 mm ×\r\nnext\n") == path
    assert path.read_bytes() == "18 mm ×\r\nnext\n".encode()
    assert [p.name for p in tmp_path.iterdir()] == ["bill.csv"]


def test_an_old_file_is_replaced_and_keeps_its_mode(tmp_path: Path) -> None:
    path = tmp_path / "a.dxf"
    path.write_text("old")
    path.chmod(0o640)
    write_bytes_atomically(path, b"new")
    assert path.read_bytes() == b"new"
    assert path.stat().st_mode & 0o777 == 0o640


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    real = tmp_path / "real.csv"
    real.write_text("old")
    link = tmp_path / "link.csv"
    link.symlink_to(real)
    write_text_atomically(link, "new")
    assert link.is_symlink()
    assert real.read_text() == "new"


@pytest.mark.parametrize(
    ("name", "reason"),
    [
        ("none/there/a.csv", "there is no folder"),
        ("folder", "that is a folder"),
        ("file/a.csv", "there is no folder"),
        ("x" * 300, "cannot be written"),
        ("nul\0byte", "null"),
    ],
)
def test_bad_places_are_named(tmp_path: Path, name: str, reason: str) -> None:
    (tmp_path / "folder").mkdir()
    (tmp_path / "file").write_text("")
    with pytest.raises(DocumentError) as caught:
        write_text_atomically(tmp_path / name, "x", "bill")
    assert caught.value.subject == "bill"
    assert caught.value.value == tmp_path / name
    assert reason in str(caught.value)
    assert sorted(p.name for p in tmp_path.iterdir()) == ["file", "folder"]


def test_a_folder_that_may_not_be_written_to(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    # A privileged user may write anywhere, so the refusal is put in by hand.
    def refuse(*_args: object, **_more: object) -> object:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("builtins.open", refuse)
    with pytest.raises(DocumentError) as caught:
        write_text_atomically(tmp_path / "a.csv", "x")
    assert "Permission denied" in caught.value.limit
    assert str(tmp_path / "a.csv") in str(caught.value)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("step", ["fsync", "replace"])
def test_a_failure_half_way_leaves_the_old_file_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    def fail(*_args: object) -> None:
        raise OSError(28, "No space left on device")

    path = tmp_path / "a.csv"
    path.write_text("old")
    monkeypatch.setattr(os, step, fail)
    with pytest.raises(DocumentError, match="No space left"):
        write_text_atomically(path, "new")
    assert path.read_text() == "old"
    assert [p.name for p in tmp_path.iterdir()] == ["a.csv"]


def test_folders_are_made_with_those_above(tmp_path: Path) -> None:
    make_folder(tmp_path / "a" / "b", "sheets")
    make_folder(tmp_path / "a" / "b", "sheets")
    assert (tmp_path / "a" / "b").is_dir()
    (tmp_path / "file").write_text("")
    with pytest.raises(DocumentError, match=r"sheets: folder is .*file/b; it cannot be made"):
        make_folder(tmp_path / "file" / "b", "sheets")
