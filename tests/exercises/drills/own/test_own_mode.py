"""The answer to a described change is computed, and doubts are told."""

import pytest

from exercises.desk.forms.mode import OwnModeForm
from exercises.drills.own import Described, drawn, own_kind
from exercises.tape import Assemble, Bench, Insert, Rate, Source, Take, Tape, record
from tests.own import CUTAWAY

pytestmark = pytest.mark.django_db


def described(**changed: str) -> Described:
    form = OwnModeForm(CUTAWAY | changed)
    assert form.is_valid(), form.errors
    return form.described()


@pytest.mark.parametrize(
    ("changed", "right"),
    [
        ({}, ["Insert picture"]),
        ({"tracks": "both"}, ["Insert picture and sound"]),
        ({"tracks": "sound"}, ["Insert sound"]),
        # Where the pulses end, only an assemble lays more.
        ({"tracks": "both", "at": "00:01:30:00"}, ["Assemble"]),
        # Inside it, with nothing after it to keep, two ways do.
        ({"tracks": "both", "freed": "after"}, ["Assemble", "Insert picture and sound"]),
        # Two seconds of run-up on the source tape, where the bench needs five.
        ({"in_": "00:05:02:00", "out": "00:05:08:00"}, ["No single recording makes it"]),
        ({"in_": "00:05:02:00", "out": "00:05:08:00", "lock": "2"}, ["Insert picture"]),
        # Past the end of the pulses an insert can't be played.
        ({"at": "00:01:28:00"}, ["No single recording makes it"]),
    ],
)
def test_right_answers_are_computed(changed: dict[str, str], right: list[str]) -> None:
    assert drawn(described(**changed)).right == right


def test_two_right_answers_are_warned_of_and_make_no_question() -> None:
    both = described(tracks="both", freed="after")
    shown = drawn(both)

    assert not shown.is_clear
    assert shown.warnings == [
        "2 choices are right: assemble and insert picture and sound. It can’t be published like "
        "this. Say more of what must stay, or change what is on the tape."
    ]
    assert not any(kind_of(both).candidates(0))
    with pytest.raises(LookupError, match="makes no question"):
        kind_of(both).make(0)


def test_none_right_and_missing_run_up_are_warned_of() -> None:
    assert drawn(described(in_="00:05:02:00", out="00:05:08:00")).warnings == [
        "No mode makes this change: “No single recording makes it” is the right answer.",
        "The take has less run-up before the edit in than the bench needs.",
    ]


def kind_of(spec: Described):  # type: ignore[no-untyped-def]
    return own_kind(
        slug="own-1", form="mode", title="T", skill="run-up", revision=1, spec=spec.as_json()
    )


def test_described_survives_being_kept() -> None:
    assert Described.from_json(described().as_json()) == described()


def test_master_is_the_one_that_the_edits_make() -> None:
    """The rows say what two recordings left; the tape model makes the same tape by edits."""
    bench = Bench.default(Rate.R25)
    winch = Source("the winch", (Take(0, 4000),))
    blank = Tape.blank(15_000).with_pass(0, 1500, "black")
    made = record(blank, Assemble(winch, 1500, 2250, 1500), bench)
    rows = described().master()

    assert [run[:2] for run in rows.control.runs] == [run[:2] for run in made.control.runs]
    assert [run[:2] for run in rows.sound.runs] == [run[:2] for run in made.sound.runs]


def test_insert_row_leaves_the_pulses() -> None:
    rows = described(
        row_3_start="00:01:05:00",
        row_3_end="00:01:08:00",
        row_3_what="picture",
        row_3_pulses="keep",
    ).master()
    gull = Source("Shot 3", (Take(0, 4000),))
    made = record(
        described().master(),
        Insert(gull, 1625, 1700, 1625, picture=True, sound=False),
        Bench.default(Rate.R25),
    )

    assert rows.control == described().master().control
    assert [run[:2] for run in rows.picture.runs] == [run[:2] for run in made.picture.runs]


def test_shown_gives_nothing_away() -> None:
    question = kind_of(described()).make(7)

    assert question.right == {"mode": "insert-picture"}
    assert question.shown["map"]["faults"] is None
    assert kind_of(described()).make(8) == question


def test_answer_is_judged_with_its_consequence() -> None:
    kind = kind_of(described())
    verdict = kind.grade(kind.make(0), {"mode": "assemble"})

    assert not verdict.right
    assert verdict.misconceptions == ("assemble-picks-tracks", "assemble-ends-clean")
