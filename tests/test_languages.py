"""The languages that documents are written in."""

from __future__ import annotations

from closetbench.languages import COMMON, MESSAGES, PAPERS, Language, language

KNOWN = {
    (MESSAGES, "it tips over {0}"): "es kippt {0}",
    (MESSAGES, "on carpet"): "auf Teppich",
    (COMMON, "front"): "Front",
    (PAPERS, "{0} of {1}"): "{0} von {1}",
    (PAPERS, "front"): "Vorderseite",
}
TEXTS = ["it tips over {0}"]


def test_a_text_of_a_paper_goes_before_what_the_windows_call_it() -> None:
    words = Language(KNOWN, TEXTS)
    assert words("front") == "Vorderseite"
    assert words.message("front") == "Front"
    assert words("{0} of {1}", 1, "{2}") == "1 von {2}"
    assert words("it tips over on carpet") == "es kippt auf Teppich"


def test_languages_are_known_by_their_codes() -> None:
    assert language("de")("kerf") == "Schnittfuge"
    assert language("de-AT")("kerf") == "Schnittfuge"
    assert language("es-ES")("kerf") == language("es")("kerf") == "ancho de corte"
    assert language("en")("kerf {0}", 3) == "kerf 3"
    assert language("xx")("kerf") == "kerf"
