"""What an author of a practical gets wrong, told with file and line."""

from pathlib import Path

import pytest

from exercises.bench.checks import check_folder, check_practicals
from exercises.worktop.shelf import CONTENT

NAME = "01-another-take.toml"
SOUND = (CONTENT / "06-another-take.toml").read_text(encoding="utf-8")
TALK = (CONTENT / "05-another-sentence.toml").read_text(encoding="utf-8")


def told(folder: Path, text: str, name: str = NAME) -> list[str]:
    (folder / name).write_text(text, encoding="utf-8")
    return [str(error).removeprefix(f"{folder}/") for error in check_folder(folder)]


def line(text: str, part: str, *, nth: int = 1) -> int:
    """The line that is this, or has it as a part, for the nth time."""
    numbered = list(enumerate(text.splitlines(), 1))
    whole = [number for number, each in numbered if part == each]
    return (whole or [number for number, each in numbered if part in each])[nth - 1]


def changed(old: str, new: str, text: str = SOUND) -> str:
    assert old in text
    return text.replace(old, new, 1)


def test_the_practicals_of_the_course_are_sound() -> None:
    assert check_practicals() == []


def test_a_sound_file_has_nothing_told_of_it(tmp_path: Path) -> None:
    assert told(tmp_path, SOUND) == []


@pytest.mark.parametrize(
    ("old", "new", "where", "problem"),
    [
        (
            "minutes = 20",
            "minutes 20",
            "minutes 20",
            "Expected '=' after a key",
        ),
        ("minutes = 20", "hours = 1", "hours = 1", "hours is not known here."),
        ('lesson = "run-up"\n', "", "title =", "lesson is missing."),
        ('lesson = "run-up"', 'lesson = "running"', "lesson =", "lesson names no lesson of the"),
        ('shows = "lever"', 'shows = "levers"', 'shows = "levers"', 'takes[0].shows must be "har'),
        ('name = "7/3"', 'name = "7/2"', "[[tapes]]", "tapes has two that are named 7/2."),
        ('take = "5/1"', 'take = "5/9"', 'take = "5/9"', 'shots[1].take must be "3/1" or "7/1"'),
        (
            "start = 3",
            "start = 15",
            "lasts = 6",
            "shots[1].lasts wants 15 to 21 seconds",
        ),
        ("lasts = 6", "lasts = 6\nat = 45", "at = 45", "shots[1].at begins before another shot on"),
        ("length = 240", "length = 60", "length = 60", "length must be at least 62: the"),
        ("end = 40", "end = 300", "end = 300", "passes[0].end is behind the end of the master"),
        ("run_up = 150", "run_up = 60", "[[shots]]", "shots can’t be made with 25 frames a second"),
        ("end = 40", "end = 15", "[[shots]]", "and there is no black to lay it with."),
        ("lasts = 16", "lasts = 16\nmistake = { late = -20 }", "mistake", "begin before its tape"),
        ("tracking = 15", "tracking = 15\nreel = 1000", "reel", "reel must be at most 90."),
        (
            "lasts = 20",
            "lasts = 3500\n[tapes.takes.mistake]\nearly = 1",
            "early = 1",
            "not known here",
        ),
    ],
)
def test_a_mistake_is_told_with_its_line(
    tmp_path: Path, old: str, new: str, where: str, problem: str
) -> None:
    text = changed(old, new)

    (error,) = told(tmp_path, text)

    assert error.startswith(f"{NAME}:{line(text, where)}: (practicals.E00")
    assert problem in error


@pytest.mark.parametrize(
    ("old", "new", "where", "problem"),
    [
        (
            "lasts = 26",
            "lasts = 12",
            "lasts = 12",
            "lasts must be at least 22: its",
        ),
        ("line = 3", "line = 5", "line = 5", "shots[0].line must be at most 4."),
        (
            "line = 3",
            "line = 3\nlasts = 4",
            "lasts = 4",
            "shots[0].lasts has no place",
        ),
        ('"keeper-4"', '"keeper-9"', "lines = [", 'lines[1] must be "ask-1"'),
        ("start = 54", "start = 50", "[[kept]]", "lies over a shot on the sound track"),
        (
            'mode = "insert"',
            'mode = "overlay"',
            '"overlay"',
            "earlier[1].mode must be",
        ),
        ("line = 3\n", "line = 2\n", "[[shots]]", "shots are on the master already: nothing"),
    ],
)
def test_a_mistake_about_what_is_said_or_kept_is_told(
    tmp_path: Path, old: str, new: str, where: str, problem: str
) -> None:
    text = changed(old, new, TALK)

    (error,) = told(tmp_path, text)

    nth = 3 if where == "[[kept]]" else 1
    assert error.startswith(f"{NAME}:{line(text, where, nth=nth)}: (practicals.E001)")
    assert problem in error


def test_why_nothing_makes_the_shots_is_told_in_full(tmp_path: Path) -> None:
    (error,) = told(tmp_path, changed("run_up = 150", "run_up = 60"))

    assert error.endswith(
        "(practicals.E001) shots can’t be made with 25 frames a second, pre-roll 5 seconds, lock 5 "
        "seconds, relock 1 second, erase gap 2 seconds: The shot at 00:00:37:18 on Tape 7 has 3 s "
        "of run-up; the machines need 5 s."
    )


def test_a_practical_must_be_possible_at_the_hardest_bench_too(tmp_path: Path) -> None:
    """Twelve seconds of black are enough for most machines."""
    (error,) = told(tmp_path, changed("end = 40", "end = 12").replace("at = 40", "at = 12"))

    assert "lock 20 seconds" in error
    assert "needs 20 s" in error or "need 20 s" in error


def test_a_reel_must_stay_within_reach_of_the_control(tmp_path: Path) -> None:
    text = changed("tracking = 15", "tracking = 80\nreel = 60").replace("lasts = 4", "lasts = 400")

    (error,) = told(tmp_path, text)

    assert error.startswith(f"{NAME}:{line(text, 'reel = 60')}: ")
    assert "the player’s control reaches 100 %" in error


def test_a_file_that_is_no_text_or_has_another_name_is_told(tmp_path: Path) -> None:
    (tmp_path / "02-no-text.toml").write_bytes(b"title = \xff")
    errors = told(tmp_path, SOUND, "another-take.toml")

    assert errors == [
        "02-no-text.toml:1: (practicals.E001) A practical is UTF-8 text.",
        "another-take.toml:1: (practicals.E001) "
        "A practical’s file is named like 03-three-shots.toml.",
    ]


def test_no_two_have_one_number_or_one_name(tmp_path: Path) -> None:
    told(tmp_path, SOUND, "01-one.toml")
    told(tmp_path, SOUND, "01-two.toml")
    errors = told(tmp_path, SOUND, "02-one.toml")

    assert errors == [
        "01-two.toml:1: (practicals.E001) Another practical has this number already.",
        "02-one.toml:1: (practicals.E001) Another practical has this name already.",
    ]
