"""The workbench in the languages that it speaks."""

import pytest

pytestmark = pytest.mark.gui


@pytest.mark.parametrize(
    ("language", "name"),
    [
        ("de", "German"), pytest.param("fr", "French", marks=pytest.mark.once),
        pytest.param("es-ES", "Spanish", marks=pytest.mark.once),
    ],
)
def test_language(gui, language, name):
    run = gui("language.py", timeout=300, language=language, name=name)
    assert run.records["seen"] > 300


@pytest.mark.ends
def test_papers(gui):
    run = gui("papers_language.py", timeout=300, language="de", name="German")
    assert run.checks > 8
