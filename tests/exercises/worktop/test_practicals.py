"""The practicals: each can be done at any bench, and each is spoiled by the habit it is about."""

from dataclasses import fields, replace

import pytest

from exercises.drills.setting.settings import USUAL, Settings
from exercises.tape import Rate
from exercises.worktop.guide import guided
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import KeptStretch, KnobsLeft, MasterPass, Practical, Way
from exercises.worktop.practical_shot import EarlierEdit, WantedShot
from exercises.worktop.practical_tape import LogMistake, PracticalTake, PracticalTape
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import CONTENT, practicals
from tests.exercises.drills.benches import LIMITS
from tests.exercises.worktop.careless import (
    CONTROLS,
    Habit,
    as_assemble,
    as_insert,
    by_the_sheet,
    editing,
    found,
    half_a_second_late,
    judged,
    leaving,
    setting_once,
    spoiled,
    where_it_stopped,
    without_black,
)
from tests.exercises.worktop.hands import done, making, plan_of

AT_29_97 = Settings.usual(Rate.R29_97)
DROP_FRAME = replace(AT_29_97, bench=replace(AT_29_97.bench, drop_frame=True))
USUAL_BENCHES = {"625": USUAL, "525": AT_29_97, "525, drop-frame": DROP_FRAME}
BENCHES = USUAL_BENCHES | {f"{name}, at a limit": each for name, each in LIMITS.items()}

EACH = pytest.mark.parametrize("practical", practicals().values(), ids=practicals())
AT_ANY = pytest.mark.parametrize("settings", BENCHES.values(), ids=BENCHES)
AT_USUAL = pytest.mark.parametrize("settings", USUAL_BENCHES.values(), ids=USUAL_BENCHES)

TABLES = {"tapes", "tapes.takes", "shots", "passes", "earlier", "earlier.shot", "kept", "left"}
WRITTEN = (
    Practical,
    PracticalTape,
    PracticalTake,
    LogMistake,
    WantedShot,
    EarlierEdit,
    MasterPass,
    KeptStretch,
    KnobsLeft,
)

SPOILED_BY: dict[str, list[tuple[Habit, set[str]]]] = {
    "line-up": [
        (leaving("picture-level", "sound-level"), {"weak-sound", "clipped-picture"}),
        (setting_once("sound-level"), {"distorted-sound", "sound-level-jump"}),
        (leaving("recorder-tracking"), {"recorder-off-position"}),
    ],
    "leader": [(editing(without_black), {"no-control"})],
    "three-shots": [(setting_once("tracking", "skew"), {"noise-band", "bent-verticals"})],
    "cutaway": [
        (editing(as_assemble), {"touched", "sound-lost", "pulses-lost"}),
        (editing(as_insert), {"touched"}),
    ],
    "another-sentence": [
        (editing(as_insert), {"touched"}),
        (editing(half_a_second_late), {"clipped-word"}),
        (leaving("sound-level"), {"weak-sound"}),
    ],
    "another-take": [(by_the_sheet, {"unsettled", "wrong-shot", "wrong-sound"})],
    "drift": [(setting_once("tracking"), {"noise-band"})],
    "mend": [
        (editing(as_insert), {"no-control"}),
        (leaving("sound-level"), {"sound-level-jump", "distorted-sound"}),
    ],
    "two-minutes": [
        (editing(where_it_stopped), {"late", "no-control"}),
        (leaving("recorder-tracking"), {"recorder-off-position"}),
    ],
    "believe-the-tape": [(by_the_sheet, {"early", "wrong-shot", "unsettled"})],
}
HABITS = [(slug, *each) for slug, habits in SPOILED_BY.items() for each in habits]


def on_the_sheet(set_up: SetUp) -> set[tuple[str, str]]:
    return {(row.take, row.shows) for row in set_up.sheet}


def test_ten_practicals_go_from_being_shown_to_being_alone() -> None:
    ways = [practical.ways for practical in practicals().values()]

    assert [practical.number for practical in practicals().values()] == list(range(1, 11))
    assert ways == [tuple(Way)] * 5 + [(Way.FINISH, Way.ALONE)] * 3 + [(Way.ALONE,)] * 2
    assert [each.slug for each in practicals().values() if each.unaided] == [
        "two-minutes",
        "believe-the-tape",
    ]


@AT_ANY
@EACH
def test_careful_hands_fulfil_the_brief_in_time_at_any_bench(
    practical: Practical, settings: Settings
) -> None:
    set_up = lay_out(practical, settings)
    plan = plan_of(set_up)

    top = done(set_up, making(set_up, plan.edits))

    assert plan.exact
    assert set_up.session.brief is not None
    judgement = top.session.judged(set_up.session.brief)
    assert judgement.fulfilled, judgement
    minutes = top.clock / (60 * set_up.bench.rate.nominal)
    assert minutes < 0.75 * set_up.minutes


@AT_ANY
@EACH
def test_nothing_is_right_before_the_first_action(practical: Practical, settings: Settings) -> None:
    set_up = lay_out(practical, settings)

    assert found(judged(set_up, []))


@EACH
def test_no_bench_was_left_as_its_practical_needs_it(practical: Practical) -> None:
    assert spoiled(practical, leaving(*CONTROLS), USUAL)


@AT_USUAL
@pytest.mark.parametrize(("slug", "habit", "expected"), HABITS, ids=[slug for slug, *_ in HABITS])
def test_each_is_spoiled_by_the_habit_that_it_is_about(
    slug: str, habit: Habit, expected: set[str], settings: Settings
) -> None:
    assert spoiled(practicals()[slug], habit, settings) >= expected


@AT_USUAL
@pytest.mark.parametrize("slug", ["line-up", "three-shots", "cutaway", "another-sentence", "drift"])
def test_the_sheet_alone_is_enough_where_nothing_is_wrong_with_it(
    slug: str, settings: Settings
) -> None:
    """Of those that need no black first, and no eye for what is good already."""
    assert spoiled(practicals()[slug], by_the_sheet, settings) == set()


@AT_USUAL
@pytest.mark.parametrize("slug", [p.slug for p in practicals().values() if Way.FINISH in p.ways])
def test_what_is_shown_before_the_hands_are_on_it_is_right(slug: str, settings: Settings) -> None:
    set_up = lay_out(practicals()[slug], settings)
    *_, (step, top) = guided(set_up)

    assert step.name == "hand-in"
    assert set_up.session.brief is not None
    assert top.session.judged(set_up.session.brief).fulfilled


def test_the_sheet_names_the_take_of_the_log() -> None:
    set_up = lay_out(practicals()["another-take"], USUAL)
    row = set_up.sheet[2]
    take = set_up.by_name["Tape 7"].takes[0]

    assert (row.take, row.source_in) == ("7/1", take.action)
    assert take.action - take.start < set_up.bench.lock
    assert set_up.document["brief"]["picture"][2]["in"] == set_up.by_name["Tape 7"].takes[1].action


def test_three_mistakes_of_the_log_are_seen_on_the_tape() -> None:
    set_up = lay_out(practicals()["believe-the-tape"], USUAL)
    takes = {take.name: take for tape in set_up.tapes for take in tape.takes}
    wrong_place, short = takes["3/2"], takes["7/1"]

    assert ("5/1", "The keeper at the winch.") in on_the_sheet(set_up)
    assert (takes["5/1"].shows, takes["5/2"].shows) == ("lever", "winch")
    assert wrong_place.logged.start - wrong_place.start == 7 * 25
    assert short.logged.action - short.logged.start > set_up.bench.lock
    assert short.action - short.start < set_up.bench.lock
    true = {name for name, take in takes.items() if take.logged.start == take.start}
    assert set(takes) - true == {"3/2", "7/1"}


def test_what_an_author_may_write_is_described() -> None:
    described = (CONTENT.parent / "PRACTICALS.md").read_text(encoding="utf-8")
    keys = {each.name for part in WRITTEN for each in fields(part)} - {"slug", "number"}
    named = {key for key in keys if f"`{key}`" in described}

    assert keys - named <= {"tapes", "takes", "shots", "shot", "passes", "earlier", "kept", "left"}
    assert {table for table in TABLES if f"[{table}]" not in described} == set()
