"""The bad edit among described ones is found by the tape model, and doubts are told."""

import pytest

from exercises.desk.forms.bad_edit import OwnBadEditForm
from exercises.drills.asks import Json
from exercises.drills.judging.rule import Rule
from exercises.drills.judging.rules import (
    ENDS,
    NO_GAP,
    NO_PULSES,
    ONE_PHASE,
    ONE_TAKE,
    ONE_TRACK,
    RUN_UP,
)
from exercises.drills.kinds.spot_the_bad_edit.answers import right_answers
from exercises.drills.own import DescribedEdits, Made, Recorded, drawn_edits, own_kind
from exercises.drills.setting.change import Mode
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.settings import USUAL
from exercises.tape import (
    Assemble,
    Bench,
    Condition,
    Insert,
    Rate,
    Source,
    Take,
    TapeMap,
    play,
    record,
)
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
        assert next(own_kind(**kind_spec(each)).candidates(0)) is None


def test_two_edits_beside_each_other_without_pulses_are_both_to_blame() -> None:
    """The one made later lies before the other; what is wrong is one stretch."""
    places = {"edit_1_at": "00:01:08:00", "edit_2_at": "00:01:00:00", "edit_2_end": "00:01:08:00"}
    beside = described(edit_1_mode="insert-both", **places)

    assert beside.case().blamed == {0, 1}


def test_nothing_wrong_is_an_answer_and_is_said() -> None:
    well = drawn_edits(described(edit_2_mode="assemble"))

    assert well.is_clear
    assert well.warnings == ["Nothing is wrong with the film: that is the right answer."]


def test_tape_is_the_one_that_the_edits_make() -> None:
    """By hand from the tape model: 20 s assembled after the black, 8 s inserted after them.

    The insert lays no pulses, so no machine locks from 00:01:20:00 on, 2000 frames in.
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


FREE = "Servo not locked, counter standing still"


def test_question_gives_nothing_away_and_feedback_explains() -> None:
    kind = own_kind(**kind_spec(described()))
    question = kind.make(0, USUAL)
    wrong = kind.grade(question, {"fault": "nothing", "edit": "tape", "mend": "later"})

    assert question.shown["rows"] == [
        ["00:00:56:00", "black", "silence", "Servo locked"],
        ["00:01:00:00", "the keeper at his crank", "the crank and the chain", "Servo locked"],
        ["00:01:20:00", "a barge passing, drifting and tearing", "its engine, wavering", FREE],
        ["00:01:28:00", "snow", "hiss", FREE],
    ]
    assert "pulses" not in str(question.shown["edits"])
    assert set(wrong.misconceptions) == {"insert-lays-pulses", "tape-fault", "mend-later"}
    assert wrong.feedback["happened"][-1] == (
        "Edit 2 is an insert: it lays no pulses, and the tape had none there."
    )
    assert question.rule
    assert question.rule["text"].startswith("An insert lays no pulses")


@pytest.mark.parametrize(
    ("changed", "broken", "cause"),
    [
        ({}, NO_PULSES, "Edit 2 is an insert: it lays no pulses, and the tape had none there."),
        (
            {"edit_2_mode": "assemble", "edit_2_at": "00:01:22:00", "edit_2_end": "00:01:30:00"},
            NO_GAP,
            "Edit 2 begins at 00:01:22:00, but what comes before it ends at 00:01:20:00. "
            "An assemble fills no hole before it.",
        ),
        (
            {"edit_2_mode": "assemble", **INSIDE},
            ENDS,
            "Edit 2 is an assemble. Past its end, 00:01:10:00, it wiped 2 seconds of the film; "
            "the old pulses beyond are out of phase with its own.",
        ),
        # All that lay beyond it is wiped: no pulses are left to be out of phase.
        (
            {"edit_2_mode": "assemble", "erase_gap": "10", **INSIDE},
            ENDS,
            "Edit 2 is an assemble. Past its end, 00:01:10:00, it wiped 10 seconds of the film.",
        ),
        (
            {"edit_2_mode": "assemble", "erase_gap": "0", **INSIDE},
            ENDS,
            "Edit 2 is an assemble. Past its end, 00:01:10:00, the old pulses are out of phase.",
        ),
        (
            {**SECOND_PASS, "edit_2_mode": "assemble"},
            RUN_UP,
            "Edit 1 is an assemble with 3 seconds of pulses in phase before it. A machine needs "
            "5 seconds; so its pulses begin anew instead of running on.",
        ),
        (
            {**SECOND_PASS, "row_2_end": "00:02:00:00", "edit_1_mode": "insert-both"},
            RUN_UP,
            "Before edit 1 the edit master has 3 seconds of pulses in phase; "
            "the recorder needs 5 seconds.",
        ),
        (
            {"edit_2_mode": "assemble", "edit_2_run_up": "2"},
            RUN_UP,
            "Edit 2 begins 2 seconds after the start of its take; the player needs 5 seconds.",
        ),
        (
            {**SECOND_PASS, "row_2_start": "00:01:10:00", "row_2_end": "00:02:00:00"}
            | {"row_1_end": "00:01:10:00", "edit_1_mode": "insert-both"},
            ONE_PHASE,
            "Edit 1 is an insert across the place where the pulses begin anew. "
            "An insert leaves the pulses as they are.",
        ),
        (
            {"edit_2_mode": "assemble", "edit_2_beyond": "-3"},
            ONE_TAKE,
            "The take ends at 00:02:15:00 on Tape 2, before edit 2 does. "
            "From there on the player gave nothing to record.",
        ),
        (
            {"edit_2_meant": "picture", **INSIDE},
            ONE_TRACK,
            "Edit 2 recorded picture and sound, and only the picture was meant.",
        ),
    ],
)
def test_cause_is_told_with_the_rule_that_was_broken(
    changed: dict[str, str], broken: Rule, cause: str
) -> None:
    spec = described(**changed)
    question = own_kind(**kind_spec(spec)).make(0, USUAL)

    assert question.key["told"]["happened"][-1] == cause
    assert question.rule == broken.at(spec.bench)


def test_fault_on_tape_that_every_edit_left_alone_is_warned_of_and_makes_no_question() -> None:
    """The pulses begin anew at 00:01:25:00, between two inserts: neither of them did that."""
    between = described(
        **SECOND_PASS
        | {"row_1_end": "00:01:25:00", "row_2_start": "00:01:25:00", "row_2_end": "00:02:00:00"},
        edit_1_mode="insert-both",
        edit_2_at="00:01:35:00",
        edit_2_end="00:01:40:00",
    )

    assert drawn_edits(between).warnings == [
        "Something is wrong where edit 2 left the tape alone, so no edit is to blame for it. It "
        "can’t be published like this. Let the edits follow one another, or lie on tape with "
        "pulses throughout."
    ]
    assert next(own_kind(**kind_spec(between)).candidates(0)) is None


def test_learners_see_the_tape_before_the_edits_and_no_faults() -> None:
    """A minute of black and blank tape: from six seconds before the film, run-up and roll."""
    shown = own_kind(**kind_spec(described())).make(0, USUAL).shown
    assert shown["map"]["faults"] is None
    assert TapeMap.from_json(shown["map"]).described() == (
        "The tape from 00:00:54:00 to 00:01:37:00.",
        "Film in at 00:01:00:00.",
        "Film out at 00:01:28:00.",
        "Picture track: black from 00:00:54:00 to 00:01:00:00 (its 00:00:54:00 on, generation 1).",
        "Sound track: black from 00:00:54:00 to 00:01:00:00 (its 00:00:54:00 on, generation 1).",
        "Control track: pulses from 00:00:54:00 to 00:01:00:00.",
    )


def drawn_at_random(seed: int) -> DescribedEdits:
    """Up to three recordings and four edits in any places, to the second."""
    draw, second = Draw(seed), 25

    def recording() -> Recorded:
        start = draw.whole(0, 90)
        return Recorded(
            start=start * second,
            end=(start + draw.whole(1, 80)) * second,
            what=draw.pick(("both", "picture", "sound", "black", "nothing")),
            name="an old exercise",
            pulses=draw.pick(("anew", "on", "keep")),
        )

    def edit() -> Made:
        mode, at, lasts = draw.pick(tuple(Mode)), draw.whole(10, 120), draw.whole(1, 40)
        return Made(
            mode=mode.value,
            meant=draw.pick((mode.tracks, mode.tracks, mode.tracks[:1])),
            at=at * second,
            end=(at + lasts) * second,
            run_up=draw.pick((0, 2, 5, 10)) * second,
            beyond=draw.pick((5, 5, -draw.below(lasts))) * second,
            picture="the keeper",
            sound="the crank",
            purpose="The bridge opens.",
        )

    return DescribedEdits(
        rate="25",
        length=200 * second,
        lock=draw.pick((1, 5, 10)),
        erase_gap=draw.pick((0, 2, 5)),
        story="Nobody knows.",
        recorded=tuple(recording() for _ in range(draw.below(4))),
        edits=tuple(edit() for _ in range(draw.whole(1, 4))),
    )


def test_any_edits_are_drawn_and_asked_or_refused() -> None:
    asked = 0
    for seed in range(150):
        spec = drawn_at_random(seed)
        shown = drawn_edits(DescribedEdits.from_json(spec.as_json()))
        question = next(own_kind(**kind_spec(spec)).candidates(0))

        assert shown.is_clear == (question is not None)
        if question:
            asked += 1
            words = [ask.in_words(question.right[ask.name]) for ask in question.asks]
            assert [answer for _, answer in shown.right] == words
        else:
            assert shown.warnings
    assert asked > 12


def test_edit_to_blame_always_touches_the_fault() -> None:
    """And what plays there was not so before it, or was no part of the film."""
    found = 0
    for seed in range(250):
        case = drawn_at_random(seed).case()
        right = right_answers(case)
        if right is None or case.fault is None:
            continue
        found += 1
        number = int(right["edit"])
        change = case.steps[number - 1].change
        worst = next(stretch for stretch in case.faults if stretch.fault is case.fault)
        assert worst.start <= change.end
        assert change.at <= worst.end
        earlier = case.all_states[number - 2].faults() if number > 1 else ()
        assert worst not in earlier
    assert found > 20
