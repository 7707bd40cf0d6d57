"""What the planner records, and when it says that nothing will do."""

from dataclasses import replace

import pytest

from exercises.tape import (
    Brief,
    Carried,
    Kept,
    Levels,
    Machines,
    Marks,
    Plan,
    Recorder,
    SoundLevel,
    Source,
    Span,
    Take,
    Tape,
    plan,
)
from exercises.tape.history import History
from tests.exercises.tape.judging.briefs import (
    BENCH,
    BLACK,
    BRIDGE,
    HARBOUR,
    STRIPED,
    insert,
    picture,
    recorded,
    sound,
)
from tests.exercises.tape.planning.planned import Told, both, brief, recordings, why_not

BLANK = Tape.blank(3000)
TWO_TAKES = Source("two takes", (Take(0, 330), Take(330, 900)))
LEVER = both("bridge", 300, 400, 500)


def begun(end: int) -> Tape:
    return BLANK.with_pass(0, end, "black")


@pytest.mark.parametrize(
    ("asked", "tape", "expected"),
    [
        pytest.param(brief(*LEVER), recorded(insert(BRIDGE, 300, 400, 500)), [], id="it-is-there"),
        pytest.param(
            brief(*LEVER), begun(500), [("assemble", "bridge", 300, 400, 500)], id="next-shot"
        ),
        pytest.param(
            brief(*LEVER),
            BLANK,
            [("assemble", "black", 100, 200, 400), ("assemble", "bridge", 300, 400, 500)],
            id="first-shot-after-black",
        ),
        pytest.param(
            brief(*LEVER),
            begun(550),
            [("assemble", "bridge", 300, 400, 500)],
            id="over-the-end-of-the-pulses",
        ),
        pytest.param(
            brief(picture("bridge", 300, 400, 500), kept=(Kept("sound", 0, 3000),)),
            begun(3000),
            [("picture", "bridge", 300, 400, 500)],
            id="new-picture-old-sound",
        ),
        pytest.param(
            brief(
                sound("bridge", 300, 500, 500),
                picture("bridge", 300, 360, 500),
                picture("harbour", 300, 350, 560),
                picture("bridge", 410, 500, 610),
            ),
            begun(500),
            [("assemble", "bridge", 300, 500, 500), ("picture", "harbour", 300, 350, 560)],
            id="cutaway-over-a-shot-laid-whole",
        ),
        pytest.param(
            brief(*LEVER, *both("harbour", 300, 400, 900)),
            BLANK,
            [
                ("assemble", "black", 100, 600, 400),
                ("picture and sound", "bridge", 300, 400, 500),
                ("assemble", "harbour", 300, 400, 900),
            ],
            id="one-black-for-two-places",
        ),
        pytest.param(
            brief(*LEVER, kept=(Kept("picture", 641, 900), Kept("sound", 641, 900))),
            begun(500).with_pass(641, 900, "film"),
            [("assemble", "bridge", 300, 400, 500)],
            id="an-assemble-just-short-of-what-stays",
        ),
    ],
)
def test_plan_records_as_little_as_can_be(asked: Brief, tape: Tape, expected: list[Told]) -> None:
    assert recordings(asked, tape) == expected


def test_plan_begins_early_where_the_source_has_no_run_up_and_covers_that() -> None:
    asked = brief(*both("harbour", 300, 400, 400), *both("two takes", 350, 450, 500))
    sources = {"two takes": TWO_TAKES, "harbour": HARBOUR, "black": BLACK}

    found = plan(asked, BLANK, sources=sources, bench=BENCH)

    assert recordings(asked, BLANK, **sources) == [
        ("assemble", "black", 100, 200, 300),
        ("assemble", "two takes", 250, 450, 400),
        ("picture and sound", "harbour", 300, 400, 400),
    ]
    assert isinstance(found, Plan)
    assert found.recordings[1].reason == (
        "There are no pulses from 00:00:16:00 on: assemble lays them, in phase with those before. "
        "It begins 4 s before the shot, so that both machines are locked by then; what it lays "
        "there is recorded over."
    )


def test_plan_moves_a_cut_within_its_tolerance_for_the_run_up_only() -> None:
    late = both("bridge", 98, 400, 500, 3)

    assert recordings(brief(*late), begun(3000)) == [("picture and sound", "bridge", 100, 400, 502)]
    assert recordings(brief(*both("harbour", 300, 400, 400, 3), *late), begun(3000)) == [
        ("picture and sound", "harbour", 300, 402, 400),
        ("picture and sound", "bridge", 100, 400, 502),
    ]
    assert why_not(brief(*both("bridge", 96, 400, 500, 3)), begun(3000)) == (
        "The shot at 00:00:03:21 on bridge has 3 s 21 frames of run-up; the machines need 4 s.",
    )


def test_plan_leaves_alone_what_lies_within_its_tolerance() -> None:
    held = recorded(insert(BRIDGE, 300, 400, 502))

    assert recordings(brief(*both("bridge", 300, 400, 500, 3)), held) == []
    assert recordings(brief(*both("bridge", 300, 400, 500, 1)), held) == [
        ("picture and sound", "bridge", 300, 400, 500)
    ]


def test_plan_brings_speech_to_line_up_and_keeps_to_the_recorder() -> None:
    quiet = Source("quiet", (Take(0, 900, carried=Carried(Levels(sound=-60))),))
    second = History(machines=Machines(recorder=Recorder("second")))
    tape = Tape.blank(3000).with_pass(0, 3000, "black", made=second)

    found = plan(brief(*both("quiet", 300, 400, 500)), tape, sources={"quiet": quiet}, bench=BENCH)

    assert isinstance(found, Plan)
    assert [edit.machines for edit in found.edits] == [
        Machines(recorder=Recorder("second"), sound=SoundLevel(gain=60))
    ]


def test_plan_does_over_what_was_badly_made_and_nothing_else() -> None:
    off = replace(insert(BRIDGE, 300, 400, 500), machines=Machines(recorder=Recorder(tracking=30)))
    tape = recorded(off, insert(HARBOUR, 300, 400, 600))

    assert recordings(brief(*LEVER, *both("harbour", 300, 400, 600)), tape) == [
        ("picture", "bridge", 300, 400, 500)
    ]


@pytest.mark.parametrize(
    ("asked", "tape", "reason"),
    [
        pytest.param(
            brief(*both("bridge", 50, 150, 500)),
            BLANK,
            "The shot at 00:00:02:00 on bridge has 2 s of run-up; the machines need 4 s.",
            id="run-up",
        ),
        pytest.param(
            brief(*both("bridge", 0, 150, 500)),
            BLANK,
            "The shot at 00:00:00:00 on bridge has no run-up; the machines need 4 s.",
            id="no-run-up",
        ),
        pytest.param(
            brief(*both("bridge", 1950, 2050, 500)),
            STRIPED,
            "The shot at 00:00:20:00 is not on bridge: it is blank from 00:01:20:00 to "
            "00:01:22:00.",
            id="blank",
        ),
        pytest.param(
            brief(*both("lever", 300, 400, 500)),
            STRIPED,
            "The shot at 00:00:20:00 is on lever, and there is no such tape.",
            id="no-tape",
        ),
        pytest.param(
            brief(*both("bridge", 2300, 2400, 500), highest_generation=2),
            STRIPED,
            "The shot at 00:00:20:00 is generation 2 on bridge; its copy is one more, and at "
            "most 2 is wanted.",
            id="generation",
        ),
        pytest.param(
            brief(*both("bridge", 300, 400, 60)),
            BLANK,
            "The shot at 00:00:02:10 begins 2 s 10 frames from the start of the tape; the "
            "machines need 4 s of run-up.",
            id="too-near-the-start",
        ),
        pytest.param(
            brief(*both("bridge", 300, 400, 0)),
            BLANK,
            "The shot at 00:00:00:00 begins at the start of the tape; the machines need 4 s of "
            "run-up.",
            id="at-the-start",
        ),
        pytest.param(
            brief(*LEVER, kept=(Kept("sound", 620, 800),)),
            begun(500).with_pass(620, 800, "film"),
            "Only an assemble lays the pulses that are missing at 00:00:20:00, and it wipes 1 s "
            "15 frames past its end; the sound from 00:00:24:20 to 00:00:32:00 has to stay.",
            id="what-an-assemble-wipes",
        ),
        pytest.param(
            brief(*LEVER, kept=(Kept("sound", 650, 800),)),
            begun(500).with_pass(600, 800, "film"),
            "Only an assemble lays the pulses that are missing at 00:00:20:00, and it wipes 1 s "
            "15 frames past its end; the sound from 00:00:26:00 to 00:00:32:00 has to stay.",
            id="what-would-roll-behind-an-assemble",
        ),
        pytest.param(
            brief(picture("bridge", 300, 400, 500), kept=(Kept("sound", 400, 600),)),
            begun(500),
            "There are no steady pulses at 00:00:20:00, and only an assemble lays them; it would "
            "record over the sound that has to stay there.",
            id="what-an-assemble-records-over",
        ),
        pytest.param(
            brief(picture("bridge", 300, 400, 500), kept=(Kept("picture", 400, 500),)),
            begun(440).with_pass(440, 600, "film"),
            "The master has 2 s 10 frames of run-up before 00:00:20:00, the machines need 4 s, "
            "and the picture there has to stay.",
            id="what-is-in-the-way-of-a-run-up",
        ),
    ],
)
def test_there_is_no_plan_and_the_reason_is_told(asked: Brief, tape: Tape, reason: str) -> None:
    assert why_not(asked, tape) == (reason,)


@pytest.mark.parametrize(
    ("tape", "reason"),
    [
        (
            BLANK,
            "The master has no run-up before 00:00:20:00, the machines need 4 s, and there is no "
            "black to lay it with.",
        ),
        (
            BLANK.with_pass(440, 500, "bars"),
            "The master has 2 s 10 frames of run-up before 00:00:20:00, the machines need 4 s, "
            "and there is no black to lay it with.",
        ),
    ],
)
def test_there_is_no_plan_without_black_where_pulses_are_missing(tape: Tape, reason: str) -> None:
    assert why_not(brief(*LEVER), tape, bridge=BRIDGE) == (reason,)


def test_there_is_no_plan_for_a_shot_that_a_new_take_begins_in() -> None:
    sources = {"two takes": TWO_TAKES}

    assert why_not(brief(*both("two takes", 300, 400, 500)), STRIPED, **sources) == (
        "Inside the shot at 00:00:20:00 a new take begins, at 00:00:13:05 on two takes, and no "
        "machine is steady on it at once.",
    )
    assert why_not(brief(*both("two takes", 350, 450, 500)), STRIPED, **sources) == (
        "The shot at 00:00:20:00 can only be recorded together with what is before it on its "
        "tape, and there is no black to cover that with.",
    )


def test_there_is_no_plan_for_a_cut_inside_a_word() -> None:
    marks = Marks(words=(Span(290, 310),))
    talk = Source("talk", (Take(0, 900, carried=Carried(marks=marks)),))

    assert why_not(brief(*both("talk", 300, 400, 500)), STRIPED, talk=talk) == (
        "Even the best list of recordings leaves a fault from 00:00:20:00 to 00:00:20:10: an edit "
        "point inside a word cuts off 10 frames of it.",
    )
