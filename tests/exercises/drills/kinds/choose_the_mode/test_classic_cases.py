"""Ten cases that anybody who has edited tape to tape would decide alike.

All of them are common practice, without a source. The masters are made by hand, not by the
drill's own situations; 29.97, so 150 frames of run-up and 60 wiped past an assemble.
"""

import pytest

from exercises.drills.kinds.choose_the_mode.answers import right_answers
from exercises.drills.kinds.choose_the_mode.scenario import Task, news, stays
from exercises.drills.setting.change import Change
from exercises.tape import SIDES, Assemble, Bench, Rate, Side, Source, Take, Tape, record

BENCH = Bench.default(Rate.R29_97)
TAPE_1 = Source("Tape 1", (Take(0, 3000),))
TAPE_2 = Source("Tape 2", (Take(1000, 4000),))

BLANK = Tape.blank(9000)
BLACK = BLANK.with_pass(0, 9000, "black")
# A leader, then a film of two shots laid by assemble, from 600 to 1800; blank from there on.
LEADER = BLANK.with_pass(0, 600, "leader")
FIRST = record(LEADER, Assemble(TAPE_1, 300, 900, 600), BENCH)
FILM = record(FIRST, Assemble(TAPE_1, 1200, 1800, 1200), BENCH)

PICTURE: tuple[Side, ...] = ("picture",)
SOUND: tuple[Side, ...] = ("sound",)

CASES = {
    "continuing the master": (FILM, 1800, 300, 1300, SIDES, 9000, ["assemble"]),
    "the next shot on a blacked tape": (BLACK, 1800, 300, 1300, SIDES, 9000, ["insert-both"]),
    "a whole shot in the middle": (FILM, 900, 300, 1300, SIDES, 9000, ["insert-both"]),
    "new picture under a kept voice": (FILM, 900, 300, 1300, PICTURE, 9000, ["insert-picture"]),
    "new sound under a kept picture": (FILM, 900, 300, 1300, SOUND, 9000, ["insert-sound"]),
    "a longer ending": (FILM, 1500, 600, 1300, SIDES, 1500, ["assemble"]),
    "a new tape without a leader": (BLANK, 600, 300, 1300, SIDES, 9000, ["cannot"]),
    "a take from its first frame": (FILM, 1800, 300, 1000, SIDES, 9000, ["cannot"]),
    "a picture past the end, voice kept": (FILM, 1500, 600, 1300, PICTURE, 9000, ["cannot"]),
    "after three seconds of leader": (
        BLANK.with_pass(510, 600, "leader"),
        600,
        300,
        1300,
        SIDES,
        9000,
        ["cannot"],
    ),
}


@pytest.mark.parametrize(
    ("master", "at", "frames", "in_", "tracks", "free_from", "right"), CASES.values(), ids=CASES
)
def test_classic_case_common_practice(
    master: Tape,
    at: int,
    frames: int,
    in_: int,
    tracks: tuple[Side, ...],
    free_from: int,
    right: list[str],
) -> None:
    change = Change(source=TAPE_2, in_=in_, out=in_ + frames, at=at, tracks=tracks)
    kept = stays(master, BENCH, change, loose=(), free_from=free_from, pushed=False)
    task = Task(BENCH, master, change, (*news(change, None), *kept))

    assert right_answers(task) == right


def test_hole_without_pulses_between_two_films_cannot_be_filled_common_practice() -> None:
    master = FILM.with_pass(2100, 4000, "another film")
    change = Change(source=TAPE_2, in_=1300, out=1600, at=1800, tracks=SIDES)
    kept = stays(master, BENCH, change, loose=(), free_from=9000, pushed=False)

    assert right_answers(Task(BENCH, master, change, (*news(change, None), *kept))) == ["cannot"]


def test_dissolve_cannot_be_made_with_two_machines_common_practice() -> None:
    change = Change(source=TAPE_2, in_=1300, out=1600, at=1800, tracks=SIDES)
    kept = stays(FILM, BENCH, change, loose=(), free_from=9000, pushed=False)

    assert right_answers(Task(BENCH, FILM, change, (*news(change, (1800, 1845)), *kept))) == [
        "cannot"
    ]


def test_nothing_moves_to_make_room_common_practice() -> None:
    change = Change(source=TAPE_2, in_=1300, out=1600, at=1200, tracks=SIDES)
    kept = stays(FILM, BENCH, change, loose=(), free_from=1800, pushed=True)

    assert right_answers(Task(BENCH, FILM, change, (*news(change, None), *kept))) == ["cannot"]
