"""Words of sketches never lie on one another, however long a language makes them."""

from random import Random

import pytest

from closetbench.gui.drawings import DRAWINGS, MOST, rooms


def test_words_that_do_not_meet_have_all_their_room():
    assert rooms([((50.0, 10.0), 60.0), ((150.0, 10.0), 60.0)]) == [MOST, MOST]
    assert rooms([((50.0, 10.0), 80.0), ((60.0, 30.0), 80.0)]) == [MOST, MOST]


def test_words_that_meet_share_the_room_between_them_by_their_widths():
    # 100 apart, 4 between them: 2 x 96 = 192 for both, but neither may be wider than 92
    assert rooms([((0.0, 0.0), 500.0), ((100.0, 5.0), 500.0)]) == [MOST, MOST]
    assert rooms([((0.0, 0.0), 90.0), ((50.0, 5.0), 30.0)]) == pytest.approx([69.0, 23.0])


@pytest.mark.parametrize("kind", sorted(DRAWINGS))
def test_no_sketch_lays_long_words_on_each_other(kind):
    drawing, draw = DRAWINGS[kind], Random(1)
    places = [at for _, at in drawing.words] + [d.at for d in drawing.dims if not d.turned]
    for _ in range(50):
        words = [(at, draw.uniform(10.0, 140.0)) for at in places]
        shown = [min(width, room) for (_, width), room in zip(words, rooms(words), strict=True)]
        for i, (x, y) in enumerate(places):
            for j, (other, beside) in enumerate(places[:i]):
                apart = abs(x - other) >= (shown[i] + shown[j]) / 2
                assert apart or abs(y - beside) >= 9.0
