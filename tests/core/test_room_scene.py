"""What is drawn of the room: readings in their places, walls that meet, sizes that agree."""

import math
from dataclasses import replace

import pytest

from closetbench.core.closet import ClosetDesign, build_envelope
from closetbench.core.convex import volume
from closetbench.core.reading_lines import Trust, reading_lines
from closetbench.core.returns import dead_spaces
from closetbench.core.room_scene import Kind, room_scene
from closetbench.core.survey import Obstacle, Reading, ReadingKind, Survey
from closetbench.job import read_job
from closetbench.resources import RESOURCES


def example(name):
    return read_job(RESOURCES / "examples" / name).design


@pytest.fixture(scope="module")
def box_room():
    design = example("box-room.toml")
    return design.survey, *build_envelope(design)


@pytest.mark.parametrize("name", ["box-room.toml", "porch-closet.toml", "box-room-blunder.toml"])
def test_lines_are_as_long_as_the_adjusted_readings(name):
    design = example(name)
    room, envelope = build_envelope(design)
    lines = reading_lines(design.survey, room, envelope)
    assert [line.reading for line in lines] == list(room.readings)
    for line in lines:
        if not line.offset:
            # but for the tape's own error, which is in every reading alike
            assert math.dist(line.start, line.end) == pytest.approx(
                line.reading.adjusted, abs=0.5), line.reading.name


def test_an_offset_is_what_its_line_leans(box_room):
    survey, room, envelope = box_room
    by_key = {line.reading.key: line for line in reading_lines(survey, room, envelope)}
    lean = by_key["lean_left_front"]
    assert lean.end[0] - lean.start[0] == pytest.approx(lean.reading.adjusted, abs=0.01)
    assert lean.end[2] - lean.start[2] == pytest.approx(2100.0)


def test_the_blunder_is_wrong_and_no_other():
    for name, key in (("box-room-blunder.toml", "depth_right"),):
        design = example(name)
        room, envelope = build_envelope(design)
        lines = reading_lines(design.survey, room, envelope)
        assert [x.reading.key for x in lines if x.trust is Trust.WRONG] == [key]
        assert sum(x.trust is Trust.AGREES for x in lines) > len(lines) / 2


def test_a_reading_that_nothing_checks_says_so(box_room):
    survey, room, envelope = box_room
    by_key = {line.reading.key: line for line in reading_lines(survey, room, envelope)}
    assert by_key["rise_left"].trust is Trust.UNCHECKED
    assert by_key["width_front_low"].trust is Trust.AGREES


def test_a_return_alone_ends_where_the_tape_did():
    survey = Survey(*[1200.0] * 6, *[2400.0] * 4, 600.0, 600.0, return_left=150.0)
    room, envelope = build_envelope(ClosetDesign("one", survey))
    assert room.opening is None
    line = next(x for x in reading_lines(survey, room, envelope)
                if x.reading.key == "return_left")
    assert math.dist(line.start, line.end) == pytest.approx(150.0, abs=0.5)


def test_extra_readings_of_every_kind_have_a_line():
    places = {"x": 300.0, "y": 200.0, "z": 400.0, "x2": 900.0, "y2": 500.0, "z2": 1500.0}
    base = Survey(*[1200.0] * 6, *[2400.0] * 4, 600.0, 600.0, opening_width=1000.0,
                  return_left=100.0, opening_height=2000.0)
    from closetbench.core.survey import Side

    for kind in ReadingKind:
        survey = replace(base, extras=(Reading(kind, 1.0, side=Side.LEFT, **places),))
        room, envelope = build_envelope(ClosetDesign("one", base))
        # judged as the room stands without it: its line is where it would be taken
        probe = replace(room, readings=(*room.readings, replace(
            room.readings[0], key="extra 1", name="extra")))
        assert len(reading_lines(survey, probe, envelope)) == len(probe.readings), kind


def points(shown):
    return {(round(x, 3), round(y, 3), round(z, 3)) for f in shown.faces for x, y, z in f}


def test_walls_floor_and_ceiling_meet_in_the_corners(box_room):
    _, room, envelope = box_room
    scene = {s.name: s for s in room_scene(room, envelope)}
    for a, b in (("left wall", "back wall"), ("right wall", "back wall"),
                 ("left wall", "floor"), ("right wall", "ceiling"), ("back wall", "floor")):
        assert len(points(scene[a]) & points(scene[b])) >= 2, (a, b)
    assert {s.kind for s in scene.values()} == set(Kind) - {Kind.OBSTACLES}


def test_a_bent_wall_is_drawn_bent(box_room):
    survey, _, _ = box_room
    bent = replace(survey, width_front_mid=survey.width_front_mid + 30,
                   width_back_mid=survey.width_back_mid + 30)
    room, envelope = build_envelope(ClosetDesign("bent", bent))
    assert any(room.left.c[3:])
    wall = next(s for s in room_scene(room, envelope) if s.name == "left wall")
    assert len(wall.faces) > 16
    for ring in wall.faces:
        for x, y, z in ring:
            on = room.left.at(y + envelope.y0, z + envelope.z0) - envelope.x0
            assert x == pytest.approx(on, abs=1e-6)


def test_dead_space_is_measured_as_the_core_does(box_room):
    _, room, envelope = box_room
    shown = [s for s in room_scene(room, envelope) if s.kind is Kind.DEAD_SPACE]
    spaces = dead_spaces(room, envelope)
    assert [(s.name, s.sizes, s.litres) for s in shown] == [
        (d.where, (d.depth,), d.litres) for d in spaces]
    for one, space in zip(shown, spaces, strict=True):
        assert volume(one.faces) / 1e6 == pytest.approx(space.litres)
    assert any(s.name == "right" and 330 < s.sizes[0] < 385 for s in shown)


def test_trim_and_obstacles_have_their_sizes(box_room):
    survey, _, _ = box_room
    survey = replace(survey, obstacles=(Obstacle("pipe", 1700.0, 500.0, 0, 1760.0, 560.0, 2300),))
    room, envelope = build_envelope(ClosetDesign("one", survey))
    scene = {s.name: s for s in room_scene(room, envelope)}
    assert volume(scene["pipe"].faces) == pytest.approx(60 * 60 * 2300)
    assert volume(scene["head casing"].faces) == pytest.approx(
        (room.opening.width + 140) * 70 * 15)
    assert volume(scene["left baseboard"].faces) == pytest.approx(640 * 12 * 60, rel=0.02)
    assert volume(scene["right return"].faces) == pytest.approx(384 * 120 * 2410, rel=0.02)
    for one in scene.values():
        if one.kind in (Kind.FRONT, Kind.TRIM, Kind.OBSTACLES, Kind.DEAD_SPACE):
            assert volume(one.faces) > 0, one.name


@pytest.mark.parametrize("name", ["box-room.toml", "porch-closet.toml", "box-room-blunder.toml"])
def test_walls_lie_on_the_surfaces_that_the_readings_gave(name):
    room, e = build_envelope(example(name))
    shown = {s.name: s for s in room_scene(room, e)}
    for title, off in (
        ("left wall", lambda x, y, z: x - room.left.at(y, z)),
        ("right wall", lambda x, y, z: x - room.right.at(y, z)),
        ("back wall", lambda x, y, z: y - room.back.at(x, z)),
        ("floor", lambda x, y, z: z - room.floor.at(x, y)),
        ("ceiling", lambda x, y, z: z - room.ceiling.at(x, y)),
    ):
        for ring in shown[title].faces:
            for x, y, z in ring:
                assert off(x + e.x0, y + e.y0, z + e.z0) == pytest.approx(0.0, abs=1e-5), title
