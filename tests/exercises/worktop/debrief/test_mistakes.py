"""How a mistake is put together and told, and what is drawn of it."""

from dataclasses import replace

import pytest

from exercises.drills.setting.phrases import code
from exercises.drills.setting.settings import USUAL
from exercises.tape import Edit, FaultKind, TapeMap
from exercises.worktop.debrief import debrief
from exercises.worktop.debrief.mistakes import MistakeKind, causes
from exercises.worktop.debrief.mistakes.kinds import OF_FAULT
from exercises.worktop.debrief.mistakes.prevention import PREVENTIONS
from exercises.worktop.laying_out import lay_out
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.careless import (
    Habit,
    as_assemble,
    as_insert,
    editing,
    leaving,
    setting_once,
)
from tests.exercises.worktop.hands import by_the_plan


def test_every_kind_of_mistake_and_of_fault_is_told() -> None:
    assert set(causes.TOLD) == set(PREVENTIONS) == set(MistakeKind)
    assert set(OF_FAULT) == set(FaultKind)


def test_a_wiped_stretch_is_one_mistake_on_three_tracks() -> None:
    set_up = lay_out(practicals()["cutaway"], USUAL)

    _, wiped = debrief(set_up, editing(as_assemble)(set_up)).mistakes

    assert {part["kind"] for part in wiped["parts"]} >= {
        "picture-lost",
        "sound-lost",
        "pulses-lost",
        "no-control",
        "relock",
    }
    assert wiped["cause"] == (
        "Edit 1, an assemble from 00:00:45:00 to 00:00:50:00, wiped 2 seconds of tape past its end."
    )


TAUGHT = [
    ("drift", setting_once("tracking"), "drift"),
    ("three-shots", setting_once("tracking"), "set-up-first"),
    ("cutaway", editing(as_insert), "which-mode"),
]


@pytest.mark.parametrize(("slug", "habit", "section"), TAUGHT, ids=[slug for slug, *_ in TAUGHT])
def test_what_would_have_prevented_it_goes_by_how_it_came_about(
    slug: str, habit: Habit, section: str
) -> None:
    set_up = lay_out(practicals()[slug], USUAL)

    (mistake,) = debrief(set_up, habit(set_up)).mistakes

    assert mistake["prevented"]["section"] == section


def test_run_up_in_a_take_that_touches_is_a_belief_of_its_own() -> None:
    practical = practicals()["three-shots"]
    tape, other = practical.tapes
    touching = replace(tape, takes=(tape.takes[0], replace(tape.takes[1], before=0)))
    set_up = lay_out(replace(practical, tapes=(touching, other)), USUAL)
    take = set_up.by_name["Tape 3"].takes[1]

    def right_away(_: SetUp, edit: Edit) -> Edit:
        here = take.start <= edit.in_ < take.end
        return replace(edit, in_=take.start + 25, out=take.start + 225) if here else edit

    found = debrief(set_up, editing(right_away)(set_up))

    assert "touching-takes-share-pulses" in found.beliefs


def test_a_word_that_a_wipe_cuts_is_part_of_the_wipe() -> None:
    set_up = lay_out(practicals()["another-sentence"], USUAL)

    over, wiped = debrief(set_up, editing(as_assemble)(set_up)).mistakes

    assert (over["kind"], wiped["kind"]) == ("recorded-over", "wiped")
    assert over["wrong"] == "The picture and pulses there were recorded over."
    assert "stray-breath" in [part["kind"] for part in wiped["parts"]]


def test_what_was_wrong_before_is_nobodys_mistake() -> None:
    set_up = lay_out(practicals()["mend"], USUAL)

    found = debrief(set_up, []).mistakes

    assert {tuple(each["edits"]) for each in found} == {()}
    assert "It was so before you sat down." in [each["cause"] for each in found]


def test_the_map_shows_the_part_that_matters_and_numbers_the_learners_own_edits() -> None:
    set_up = lay_out(practicals()["mend"], USUAL)

    shown = TapeMap.from_json(debrief(set_up, leaving("sound-level")(set_up)).map)

    first, last = set_up.document["brief"]["picture"][0], set_up.document["brief"]["picture"][-1]
    run_up, gap, aside = set_up.bench.lock, set_up.bench.erase_gap, 50
    assert shown.start == max(0, first["at"] - run_up - aside)
    assert shown.end == last["at"] + last["out"] - last["in"] + gap + aside
    passes = "over line-up (up to 3 dB over line-up passes)"
    assert [
        (mark.edit, mark.sentence) for mark in shown.faults or () if mark.state == "distorted-sound"
    ] == [
        (1, f"distorted sound: 4 dB {passes} (edit 2)"),
        (2, f"distorted sound: 7 dB {passes} (edit 3)"),
    ]


@pytest.mark.parametrize("slug", ["leader", "three-shots", "mend"])
def test_a_tape_without_a_mistake_has_nothing_marked_on_its_map(slug: str) -> None:
    """Not its blank end, nor the roll where its pulses begin, nor what nobody asked to mend."""
    set_up = lay_out(practicals()[slug], USUAL)

    shown = TapeMap.from_json(debrief(set_up, by_the_plan(set_up)).map)

    assert not shown.faults
    assert "All of it plays cleanly." not in shown.described()


def test_what_an_earlier_edit_spoiled_is_from_before() -> None:
    set_up = lay_out(practicals()["mend"], USUAL)

    shown = TapeMap.from_json(debrief(set_up, []).map)

    assert shown.faults
    assert {mark.edit for mark in shown.faults} == {None}
    assert any(mark.sentence.endswith("(from before)") for mark in shown.faults)
    assert not any("(edit" in mark.sentence for mark in shown.faults)


def test_places_are_those_of_the_sheet_though_five_frames_would_pass() -> None:
    set_up = lay_out(practicals()["three-shots"], USUAL)
    first, second, third = set_up.sheet
    assert set_up.document["brief"]["tolerance"] == 5

    found = debrief(set_up, [])

    (missing,) = found.mistakes
    ends = third.master_in + third.source_out - third.source_in
    assert (missing["starts"], missing["ends"]) == ("00:00:40:00", code(ends, set_up.bench))
    assert {part["starts"] for part in missing["parts"]} <= {
        code(row.master_in, set_up.bench) for row in (first, second, third)
    }
    (marked,) = TapeMap.from_json(found.map).faults or ()
    assert (marked.starts, marked.ends) == (missing["starts"], missing["ends"])
    assert missing["parts"][0]["told"].endswith(f"from {code(first.source_in, set_up.bench)} on.")
