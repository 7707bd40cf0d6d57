"""Each difference by its name."""

import pytest

from exercises.tape import Brief, Condition, Edit, FaultKind, Judgement, Kept, Tape, Wanted
from tests.exercises.tape.judging.briefs import (
    BRIDGE,
    HARBOUR,
    STRIPED,
    assemble,
    insert,
    judged,
    picture,
    recorded,
    sound,
)

LEVER = picture("bridge", 300, 400, 500)
LEVER_SOUND = sound("bridge", 300, 400, 500)

Told = tuple[str, str, int, int, int | None, int | None, int | None]


def told(judgement: Judgement) -> list[Told]:
    return [
        (each.kind.value, each.track, each.start, each.end, each.shot, each.by, each.edit)
        for each in judgement.differences
    ]


def on_picture(wanted: Wanted, *edits: Edit) -> list[Told]:
    return told(judged(Brief(picture=(wanted,)), *edits))


def test_shot_where_it_is_wanted_is_a_match() -> None:
    judgement = judged(Brief((LEVER,), (LEVER_SOUND,)), insert(BRIDGE, 300, 400, 500))

    assert judgement.fulfilled
    assert [(m.track, m.start, m.end, m.shot) for m in judgement.matches] == [
        ("picture", 500, 600, 0),
        ("sound", 500, 600, 0),
    ]


@pytest.mark.parametrize(
    ("edit", "kind", "by"),
    [
        (insert(BRIDGE, 300, 400, 503), "late", 3),
        (insert(BRIDGE, 300, 400, 497), "early", 3),
        (insert(BRIDGE, 297, 400, 500), "late", 3),
        (insert(BRIDGE, 303, 403, 500), "early", 3),
        (insert(BRIDGE, 303, 400, 500), "early", 3),
        (insert(BRIDGE, 300, 397, 503), "late", 3),
        (insert(BRIDGE, 300, 400, 590), "late", 90),
        (insert(BRIDGE, 300, 400, 700), "late", 200),
        (insert(BRIDGE, 300, 400, 250), "early", 250),
    ],
)
def test_shot_that_is_moved_is_one_difference(edit: Edit, kind: str, by: int) -> None:
    assert on_picture(LEVER, edit) == [(kind, "picture", 500, 600, 0, by, 0)]


def test_shot_within_its_tolerance_is_right_and_beyond_it_is_not() -> None:
    wanted = picture("bridge", 300, 400, 500, tolerance=2)

    for at in (498, 499, 501, 502):
        assert judged(Brief((wanted,)), insert(BRIDGE, 300, 400, at)).fulfilled
    assert on_picture(wanted, insert(BRIDGE, 300, 400, 503)) == [
        ("late", "picture", 500, 600, 0, 3, 0)
    ]


def test_cut_may_be_off_by_the_tolerance() -> None:
    first = picture("bridge", 300, 400, 500, tolerance=2)
    second = picture("harbour", 300, 400, 600, tolerance=2)
    brief = Brief((first, second))

    def differences(cut: int) -> list[Told]:
        longer, shorter = (
            insert(BRIDGE, 300, cut - 200, 500),
            insert(HARBOUR, cut - 300, 400, cut),
        )
        return told(judged(brief, longer, shorter))

    assert [differences(cut) for cut in (598, 599, 600, 601, 602)] == [[]] * 5
    assert differences(603) == [("wrong-shot", "picture", 602, 603, 1, None, 0)]
    assert differences(597) == [("wrong-shot", "picture", 597, 598, 0, None, 1)]


def test_edge_may_hold_another_part_of_the_same_tape() -> None:
    wanted = picture("bridge", 300, 400, 500, tolerance=2)
    before = recorded(insert(BRIDGE, 700, 800, 450))

    assert judged(Brief((wanted,)), insert(BRIDGE, 302, 400, 502), on=before).fulfilled


def test_tolerance_leaves_at_least_a_frame_of_a_short_shot() -> None:
    wanted = picture("bridge", 300, 303, 500, tolerance=5)

    assert told(judged(Brief((wanted,)))) == [("wrong-shot", "picture", 501, 502, 0, None, None)]


def test_blank_tape_is_missing() -> None:
    judgement = judged(Brief((LEVER,), (LEVER_SOUND,)), on=Tape.blank(1000))

    assert told(judgement) == [
        ("missing", "picture", 500, 600, 0, None, None),
        ("missing", "sound", 500, 600, 0, None, None),
    ]


def test_part_of_a_shot_may_be_missing() -> None:
    edits = (insert(BRIDGE, 300, 350, 500),)

    assert told(judged(Brief((LEVER,)), *edits, on=Tape.blank(1000))) == [
        ("missing", "picture", 550, 600, 0, None, None)
    ]


def test_other_things_are_the_wrong_shot_and_the_wrong_sound() -> None:
    judgement = judged(
        Brief((LEVER,), (LEVER_SOUND,)),
        insert(HARBOUR, 300, 400, 500),
        insert(BRIDGE, 350, 400, 550, picture=True, sound=False),
    )

    assert told(judgement) == [
        ("wrong-shot", "picture", 500, 550, 0, None, 0),
        ("wrong-sound", "sound", 500, 600, 0, None, 0),
    ]


def test_assemble_that_wipes_a_wanted_shot_loses_it() -> None:
    edits = insert(BRIDGE, 300, 400, 500), assemble(HARBOUR, 300, 400, 450)
    brief = Brief((LEVER,), (LEVER_SOUND,))

    judgement = judged(brief, edits[1], on=recorded(edits[0]))

    assert told(judgement) == [
        ("extra", "picture", 450, 500, None, None, 0),
        ("extra", "sound", 450, 500, None, None, 0),
        ("wrong-shot", "picture", 500, 550, 0, None, 0),
        ("wrong-sound", "sound", 500, 550, 0, None, 0),
        ("picture-lost", "picture", 550, 590, 0, None, 0),
        ("sound-lost", "sound", 550, 590, 0, None, 0),
    ]


def test_what_had_to_stay_is_touched_or_lost() -> None:
    kept = Kept("sound", 0, 1000), Kept("control", 0, 1000)

    judgement = judged(Brief((LEVER,), kept=kept), assemble(BRIDGE, 300, 400, 500))

    assert told(judgement) == [
        ("touched", "control", 500, 600, None, None, 0),
        ("touched", "sound", 500, 600, None, None, 0),
        ("pulses-lost", "control", 600, 640, None, None, 0),
        ("sound-lost", "sound", 600, 640, None, None, 0),
        ("touched", "control", 640, 1000, None, None, None),
    ]


def test_same_sound_recorded_again_was_touched() -> None:
    tape = recorded(insert(BRIDGE, 300, 400, 500))
    brief = Brief(kept=(Kept("sound", 400, 600),))

    judgement = judged(brief, insert(HARBOUR, 0, 1, 0), insert(BRIDGE, 350, 400, 550), on=tape)

    assert told(judgement) == [("touched", "sound", 550, 600, None, None, 1)]


def test_what_had_to_stay_may_not_play_worse_than_it_did() -> None:
    brief = Brief((LEVER,), kept=(Kept("picture", 640, 800), Kept("sound", 640, 800)))

    judgement = judged(brief, assemble(BRIDGE, 300, 400, 500))

    assert judgement.differences == ()
    assert judgement.states == ((640, 660, Condition.RELOCK, None),)
    assert not judgement.fulfilled


def test_what_had_to_stay_may_play_as_badly_as_it_did() -> None:
    brief = Brief((LEVER,), kept=(Kept("picture", 0, 400),))

    assert judged(brief, insert(BRIDGE, 300, 400, 500)).fulfilled


def test_more_than_is_wanted_is_extra() -> None:
    assert on_picture(LEVER, insert(BRIDGE, 300, 410, 500)) == [
        ("extra", "picture", 600, 610, None, None, 0)
    ]


def test_black_is_never_extra_and_nor_is_what_was_there() -> None:
    brief = Brief((LEVER,), black="harbour")
    before = recorded(insert(BRIDGE, 0, 50, 1000))

    judgement = judged(
        brief, insert(HARBOUR, 0, 300, 300), insert(BRIDGE, 300, 400, 500), on=before
    )

    assert told(judgement) == []


def test_track_that_the_brief_says_nothing_of_may_hold_anything() -> None:
    assert judged(Brief((LEVER,)), assemble(BRIDGE, 300, 400, 500)).fulfilled


def test_generation_above_the_highest_is_told() -> None:
    wanted = picture("bridge", 2300, 2400, 500)

    assert judged(Brief((wanted,), highest_generation=3), insert(BRIDGE, 2300, 2400, 500)).fulfilled
    assert told(
        judged(Brief((wanted,), highest_generation=2), insert(BRIDGE, 2300, 2400, 500))
    ) == [("generation", "picture", 500, 600, 0, 1, 0)]


def test_wanted_shot_that_does_not_play_is_no_difference_but_not_fulfilled() -> None:
    judgement = judged(Brief((LEVER,)), insert(BRIDGE, 300, 400, 500), on=Tape.blank(1000))

    assert judgement.differences == ()
    assert judgement.states == ((500, 600, Condition.NO_CONTROL, None),)
    assert not judgement.fulfilled


def test_missing_picture_hides_no_unsettled_sound() -> None:
    brief = Brief(sound=(sound("bridge", 30, 200, 500),))
    on = Tape.blank(2000)
    edits = (assemble(BRIDGE, 1000, 2600, 100), insert(BRIDGE, 30, 200, 500, picture=False))

    judgement = judged(brief, *edits, on=on)

    assert judgement.states == ((500, 570, Condition.UNSETTLED_SOUND, 1),)


def test_fault_outside_the_brief_does_not_count() -> None:
    flash = insert(HARBOUR, 500, 502, 700), insert(HARBOUR, 300, 302, 550)
    shot = insert(BRIDGE, 300, 400, 500)

    inside = judged(Brief((LEVER,)), shot, flash[1])
    outside = judged(Brief(picture=(LEVER,)), flash[0], shot, on=STRIPED)

    assert [fault.kind for fault in inside.faults] == [FaultKind.FLASH_FRAMES]
    assert outside.faults == ()
