"""One sentence for any choice, from what the tape model makes of it."""

from dataclasses import replace

import pytest

from exercises.tape import (
    Brief,
    Carried,
    Edit,
    EditRefused,
    Kept,
    Machines,
    Marks,
    Player,
    Source,
    Span,
    Take,
    Tape,
    explain,
)
from tests.exercises.tape.judging.briefs import (
    BENCH,
    BRIDGE,
    HARBOUR,
    STRIPED,
    assemble,
    insert,
    picture,
    recorded,
    sound,
)

BLANK = Tape.blank(2000)
TWO_TAKES = Source("tape 3", (Take(0, 330), Take(330, 900)))
LEVER = Brief((picture("bridge", 300, 400, 500),))
LEVER_AND_SOUND = Brief(LEVER.picture, (sound("bridge", 300, 400, 500),))
OLD_SOUND = Brief(LEVER.picture, kept=(Kept("sound", 0, 2000),))


def begun(end: int) -> Tape:
    return BLANK.with_pass(0, end, "black")


@pytest.mark.parametrize(
    ("tape", "edit", "sentence"),
    [
        pytest.param(
            begun(550),
            insert(BRIDGE, 300, 400, 500, sound=False),
            "Insert laid the picture, but there are no pulses after 00:00:22:00: nothing locks, "
            "and it can’t be used.",
            id="no-pulses-after",
        ),
        pytest.param(
            BLANK,
            insert(BRIDGE, 300, 400, 500),
            "Insert laid the picture and sound, but there are no pulses there: nothing locks, and "
            "they can’t be used.",
            id="no-pulses",
        ),
        pytest.param(
            begun(520).with_pass(540, 900, "film"),
            insert(BRIDGE, 300, 400, 500, picture=False),
            "Insert laid the sound, but there are no pulses from 00:00:20:20 to 00:00:21:15: "
            "nothing locks, and it can’t be used.",
            id="a-hole-in-the-pulses",
        ),
        pytest.param(
            STRIPED,
            assemble(BRIDGE, 300, 400, 500),
            "Past its end assemble wiped 1 s 15 frames of tape, and with it the picture and sound "
            "from 00:00:24:00 to 00:00:25:15.",
            id="wiped",
        ),
        pytest.param(
            STRIPED,
            insert(BRIDGE, 1950, 2050, 500),
            "bridge is blank from 00:01:20:00 to 00:01:22:00, so nothing was laid from "
            "00:00:22:00 to 00:00:24:00.",
            id="nothing-to-copy",
        ),
        pytest.param(
            STRIPED,
            insert(BRIDGE, 50, 150, 500),
            "The first 2 s of it came over before the machines were locked: bridge has 2 s of "
            "run-up before 00:00:02:00, and they need 4 s.",
            id="source-run-up",
        ),
        pytest.param(
            begun(40),
            assemble(BRIDGE, 300, 400, 40),
            "The first 2 s 10 frames of it came over before the machines were locked: the master "
            "has 1 s 15 frames of run-up before 00:00:01:15, and they need 4 s.",
            id="master-run-up",
        ),
        pytest.param(
            STRIPED,
            insert(TWO_TAKES, 300, 400, 500),
            "A new take begins at 00:00:13:05 on tape 3, so the copy is unsteady from 00:00:21:05 "
            "to 00:00:22:00.",
            id="new-take",
        ),
        pytest.param(
            begun(500),
            assemble(BRIDGE, 300, 400, 500),
            "Assemble laid picture and sound from 00:00:20:00 to 00:00:24:00, and pulses that run "
            "on in phase with those before.",
            id="right-assemble",
        ),
        pytest.param(
            STRIPED,
            insert(BRIDGE, 300, 400, 500, sound=False),
            "Insert laid the picture from 00:00:20:00 to 00:00:24:00 over pulses that were there "
            "already, and left the sound and pulses as they were.",
            id="right-insert",
        ),
    ],
)
def test_choice_is_explained_by_what_came_of_it(tape: Tape, edit: Edit, sentence: str) -> None:
    assert explain(tape, edit, BENCH) == sentence


@pytest.mark.parametrize(
    ("brief", "tape", "edit", "sentence"),
    [
        pytest.param(
            LEVER,
            STRIPED,
            assemble(BRIDGE, 300, 400, 500),
            "Assemble laid picture and sound from 00:00:20:00 to 00:00:24:00, and pulses that run "
            "on in phase with those before.",
            id="nobody-needs-what-it-wiped",
        ),
        pytest.param(
            OLD_SOUND,
            begun(600),
            assemble(BRIDGE, 300, 400, 500),
            "Assemble records all three tracks: it recorded over the sound that had to stay, from "
            "00:00:20:00 to 00:00:24:00.",
            id="recorded-over",
        ),
        pytest.param(
            OLD_SOUND,
            STRIPED,
            insert(BRIDGE, 300, 400, 500),
            "Insert recorded over the sound that had to stay, from 00:00:20:00 to 00:00:24:00.",
            id="one-track-too-many",
        ),
        pytest.param(
            Brief(LEVER.picture, kept=(Kept("picture", 641, 900),)),
            STRIPED,
            assemble(BRIDGE, 300, 400, 500),
            "Behind what assemble wiped the old pulses go on out of phase, and the picture rolls "
            "from 00:00:25:15 to 00:00:26:10.",
            id="rolls-behind",
        ),
        pytest.param(
            LEVER_AND_SOUND,
            STRIPED,
            insert(BRIDGE, 300, 400, 500, sound=False),
            "Insert left the sound as it was, and a new sound is wanted from 00:00:20:00 to "
            "00:00:24:00.",
            id="one-track-too-few",
        ),
        pytest.param(
            LEVER,
            STRIPED,
            insert(BRIDGE, 300, 400, 503),
            "The picture lies 3 frames too late, from 00:00:20:00 to 00:00:24:00.",
            id="late",
        ),
        pytest.param(
            LEVER,
            STRIPED,
            insert(HARBOUR, 300, 400, 500),
            "It laid another picture than is wanted, from 00:00:20:00 to 00:00:24:00.",
            id="wrong-shot",
        ),
        pytest.param(
            LEVER,
            STRIPED,
            insert(BRIDGE, 300, 410, 500),
            "It laid picture from 00:00:24:00 to 00:00:24:10, where none is wanted.",
            id="extra",
        ),
        pytest.param(
            Brief((picture("bridge", 2300, 2400, 500),), highest_generation=2),
            STRIPED,
            insert(BRIDGE, 2300, 2400, 500),
            "Its picture is 1 generation too many, from 00:00:20:00 to 00:00:24:00.",
            id="generation",
        ),
        pytest.param(
            LEVER,
            STRIPED,
            insert(BRIDGE, 50, 400, 250),
            "It laid picture from 00:00:10:00 to 00:00:20:00, where none is wanted.",
            id="what-nobody-wants-may-be-unsteady",
        ),
    ],
)
def test_choice_is_explained_by_what_was_wanted(
    brief: Brief, tape: Tape, edit: Edit, sentence: str
) -> None:
    assert explain(tape, edit, BENCH, brief) == sentence


def test_pulses_that_begin_anew_are_told_where_the_copy_is_steady() -> None:
    at_once = replace(BENCH, lock=0)

    assert explain(begun(500), assemble(BRIDGE, 300, 400, 600), at_once) == (
        "The master has no run-up before 00:00:24:00, so the pulses begin anew there, and the "
        "picture rolls from 00:00:24:00 to 00:00:24:20."
    )


def test_fault_in_the_making_is_told() -> None:
    off = replace(insert(BRIDGE, 300, 400, 500), machines=Machines(player=Player(tracking=70)))

    assert explain(STRIPED, off, BENCH, LEVER_AND_SOUND) == (
        "On the picture track, from 00:00:20:00 to 00:00:24:00: noise band: bad tracking let the "
        "heads’ signal fall by 10.5 dB in the copy."
    )


def test_cut_inside_a_word_is_told() -> None:
    talk = Source("talk", (Take(0, 900, carried=Carried(marks=Marks(words=(Span(290, 310),)))),))
    brief = Brief((picture("talk", 300, 400, 500),), (sound("talk", 300, 400, 500),))

    assert explain(STRIPED, insert(talk, 300, 400, 500), BENCH, brief) == (
        "On the sound track, from 00:00:20:00 to 00:00:20:10: an edit point inside a word cuts "
        "off 10 frames of it."
    )


def test_recording_that_does_not_fit_is_refused() -> None:
    with pytest.raises(EditRefused):
        explain(BLANK, insert(BRIDGE, 300, 400, 1950), BENCH)


def test_explaining_changes_nothing() -> None:
    tape = recorded(insert(BRIDGE, 300, 400, 500))

    explain(tape, assemble(HARBOUR, 300, 400, 450), BENCH, LEVER_AND_SOUND)

    assert tape == recorded(insert(BRIDGE, 300, 400, 500))
