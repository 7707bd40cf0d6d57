import pytest

from course.lessons.blocks.sound import Heard
from course.lessons.diagrams import read_diagram
from tests.course.lessons.blocks.reading import figure, refusal

MAP = read_diagram(
    """
name = "map"
title = "One answer, twice"
caption = "Listen."
rate = "25"
bench = { erase_gap = 0 }
master = { length = 1500, recorded = [{ start = 0, end = 250, what = "black" }] }
sources.A.takes = [{ start = 0, end = 1000 }]
edits = [
  { mode = "assemble", source = "A", in = 300, out = 450, at = 250, \
sound_level = { mode = "automatic" } },
  { mode = "assemble", source = "A", in = 300, out = 450, at = 250 },
]
""",
    1,
)
MAPS = {"map": MAP}
SAYS = 'says = { A = { lines = ["keeper-2"], begin = 12000 } }\n'
HEARD = 'map = "map"\nstart = 250\nend = 400\n'


def heard(toml: str) -> Heard:
    read = figure("sound", toml, MAPS)
    assert isinstance(read, Heard)
    return read


def test_sound_is_told_in_words() -> None:
    assert heard(HEARD + SAYS).sentences() == [
        "6.0 seconds of sound.",
        "From 0.0 seconds on, the keeper says: "
        "“You take up the slack, and then you wait for high water.”",
        "The loudest words stand at line-up.",
    ]


def test_pauses_swell_under_automatic_gain() -> None:
    *_, pauses = heard(HEARD + "edits = 1\n" + SAYS).sentences()

    assert pauses.startswith("In the pauses the room swells, up to ")
    assert pauses.endswith(" dB under line-up.")


def test_words_outside_the_stretch_are_not_told() -> None:
    first = heard('map = "map"\nstart = 250\nend = 280\n' + SAYS).sentences()

    assert first[1] == "From 0.0 seconds on, the keeper says: “You take up the slack,”"


def test_tape_without_pulses_is_silent() -> None:
    assert heard('map = "map"\nstart = 300\nend = 450\n' + SAYS).sentences()[-1] == (
        "Nothing is heard from 4.0 to 6.0 seconds."
    )


def test_tape_before_the_speech_has_its_room() -> None:
    late = 'says = { A = { lines = ["keeper-2"], begin = 60000 } }'

    assert heard(HEARD + late).sentences()[1] == "From 0.0 seconds on: the room, and nobody speaks."


def test_sound_does_not_count_as_a_diagram() -> None:
    assert heard(HEARD + SAYS).is_seen is False


@pytest.mark.parametrize(
    ("toml", "line", "sentence"),
    [
        ('map = "other"', 1, "There is no tape map “other” further up."),
        (HEARD, 0, "says has nothing for “A”, which is heard there."),
        (HEARD + 'says = { B = { lines = ["keeper-2"] } }', 4, "The map has no source “B”."),
        (HEARD + "[says.A]\nlines = []", 5, "lines are one or more of ask-1, "),
        (HEARD + '[says.A]\nlines = ["song"]', 5, "lines are one or more of ask-1, "),
        (
            HEARD + '[says.A]\nlines = ["keeper-2"]\nroom = "cave"',
            6,
            "room in A is one of room, harbour.",
        ),
        (
            'map = "map"\nstart = 250\nend = 751\n' + SAYS,
            3,
            "end is a whole number from 251 to 750.",
        ),
        (
            'map = "map"\nstart = 250\nend = 250\n' + SAYS,
            3,
            "end is a whole number from 251 to 750.",
        ),
        (HEARD + "edits = 3\n" + SAYS, 4, "edits is a whole number from 0 to 2."),
    ],
)
def test_mistake_is_told_with_its_line(toml: str, line: int, sentence: str) -> None:
    told_line, told = refusal("sound", toml, MAPS)

    assert (told_line, told[: len(sentence)]) == (line, sentence)
