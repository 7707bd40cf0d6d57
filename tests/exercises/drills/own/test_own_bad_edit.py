"""The bad edit among described ones is found by the tape model, and doubts are told."""

import random

import pytest

from exercises.drills.asks import Json
from exercises.drills.own import DescribedEdits, drawn_edits, own_kind
from exercises.drills.settings import USUAL
from exercises.forms.own_bad_edit import OwnBadEditForm
from exercises.tape import Assemble, Bench, Condition, Insert, Rate, Source, Take, play, record
from tests.own import UNSEEN

pytestmark = pytest.mark.django_db
INSIDE = {"edit_2_at": "00:01:05:00", "edit_2_end": "00:01:10:00"}

SECOND_PASS = {
    "row_2_start": "00:00:57:00",
    "row_2_end": "00:01:00:00",
    "row_2_what": "black",
    "row_2_pulses": "anew",
}


def described(**changed: str) -> DescribedEdits:
    form = OwnBadEditForm(UNSEEN | changed)
    assert form.is_valid(), form.errors
    return form.described()


def kind_spec(spec: DescribedEdits) -> Json:
    return {
        "slug": "own-1",
        "form": "bad-edit",
        "title": "The barge",
        "skill": "run-up",
        "revision": 1,
        "spec": spec.as_json(),
    }


@pytest.mark.parametrize(
    ("changed", "right"),
    [
        # An insert lays no pulses, and there were none: lay it again, by assemble.
        ({}, ["no-pulses", "2", "assemble"]),
        ({"edit_2_mode": "assemble"}, ["nothing", "nothing", "leave"]),
        # The player had two seconds of run-up and needs five.
        ({"edit_2_mode": "assemble", "edit_2_run_up": "2"}, ["unsettled", "2", "insert-both"]),
        (
            {"edit_2_mode": "assemble", "edit_2_run_up": "2", "lock": "2"},
            ["nothing"] * 2 + ["leave"],
        ),
        # The take ended three seconds before the edit did.
        ({"edit_2_mode": "assemble", "edit_2_beyond": "-3"}, ["blank", "2", "insert-both"]),
        # Two seconds were left between the shots.
        (
            {"edit_2_mode": "assemble", "edit_2_at": "00:01:22:00", "edit_2_end": "00:01:30:00"},
            ["no-pulses", "2", "assemble"],
        ),
        # Only the barge's picture was meant, over the keeper's sound.
        ({"edit_2_meant": "picture", **INSIDE}, ["over", "2", "insert-sound"]),
        # An assemble inside the film wipes two seconds past its end.
        (
            {"edit_2_mode": "assemble", "edit_2_meant": "picture", **INSIDE},
            ["no-pulses", "2", "assemble"],
        ),
        # A second pass of black left the first edit three seconds of pulses in phase.
        ({**SECOND_PASS, "edit_2_mode": "assemble"}, ["roll", "1", "assemble"]),
    ],
)
def test_right_answers_are_computed(changed: dict[str, str], right: list[str]) -> None:
    question = own_kind(**kind_spec(described(**changed))).make(0, USUAL)

    assert list(question.right.values()) == right


def test_two_bad_edits_and_nothing_that_mends_are_warned_of_and_make_no_question() -> None:
    two = described(edit_1_run_up="2", edit_2_run_up="2", edit_2_mode="assemble")
    lost = described(row_1_start="00:00:58:00", edit_2_mode="assemble")

    assert drawn_edits(two).warnings == [
        "Edit 1 and edit 2 are to blame, and a drill asks for one. It can’t be published like "
        "this. Put all but one of them right."
    ]
    assert drawn_edits(lost).warnings == [
        "No single recording puts it right, and the drill asks for the one that does. It can’t be "
        "published like this. Let less go wrong, or leave more tape with pulses before it."
    ]
    for each in (two, lost):
        assert not drawn_edits(each).is_clear
        assert next(own_kind(**kind_spec(each)).candidates(0, USUAL), None) is None


def test_nothing_wrong_is_an_answer_and_is_said() -> None:
    well = drawn_edits(described(edit_2_mode="assemble"))

    assert well.is_clear
    assert well.warnings == ["Nothing is wrong with the film: that is the right answer."]


def test_tape_is_the_one_that_the_edits_make() -> None:
    """By hand from the tape model: 20 s assembled after the black, 8 s inserted after them.

    The insert lays no pulses, so nothing plays from 00:01:20:00 on, 2000 frames in.
    """
    bench, second = Bench.default(Rate.R25), 25
    crank = Source("crank", (Take(0, 35 * second),))
    barge = Source("barge", (Take(0, 23 * second),))
    tape = described().master()
    tape = record(tape, Assemble(crank, 250, 750, 1500), bench)
    tape = record(tape, Insert(barge, 250, 450, 2000, picture=True, sound=True), bench)

    states = [(each.start, each.state) for each in play(tape, bench)]
    last = described().case().last.tape

    assert last.control == tape.control
    assert [(each.start, each.state) for each in play(last, bench)] == states
    assert (2000, Condition.NO_CONTROL) in states


def test_question_gives_nothing_away_and_feedback_explains() -> None:
    kind = own_kind(**kind_spec(described()))
    question = kind.make(0, USUAL)
    wrong = kind.grade(question, {"fault": "nothing", "edit": "tape", "mend": "later"})

    assert question.shown["rows"] == [
        ["00:00:56:00", "black", "silence", "Servo locked"],
        ["00:01:00:00", "the keeper at his crank", "the crank and the chain", "Servo locked"],
        ["00:01:20:00", "snow", "hiss", "Servo not locked, counter standing still"],
    ]
    assert "pulses" not in str(question.shown["edits"])
    assert set(wrong.misconceptions) == {"insert-lays-pulses", "tape-fault", "mend-later"}
    assert wrong.feedback["happened"][-1] == (
        "Edit 2 is an insert: it lays no pulses, and the tape had none there."
    )
    assert wrong.feedback["rule"]["text"].startswith("An insert lays no pulses")


@pytest.mark.parametrize("seed", range(40))
def test_any_edits_are_drawn_and_asked_or_refused(seed: int) -> None:
    draw = random.Random(seed)
    at = [f"00:0{draw.randrange(3)}:{draw.randrange(60):02}:00" for _ in range(2)]
    modes = [draw.choice(["assemble", "insert-both", "insert-picture", "insert-sound"]) for _ in at]
    spec = described(
        **{f"edit_{n}_at": place for n, place in enumerate(at, 1)},
        **{f"edit_{n}_end": f"00:03:{draw.randrange(60):02}:12" for n in (1, 2)},
        **{f"edit_{n}_mode": mode for n, mode in enumerate(modes, 1)},
        edit_1_run_up=str(draw.randrange(8)),
        edit_2_beyond=str(draw.randrange(-9, 5)),
    )
    shown = drawn_edits(DescribedEdits.from_json(spec.as_json()))
    question = next(own_kind(**kind_spec(spec)).candidates(0, USUAL), None)

    assert shown.is_clear == (question is not None)
    if question:
        words = [ask.in_words(question.right[ask.name]) for ask in question.asks]
        assert [answer for _, answer in shown.right] == words
    else:
        assert shown.warnings
