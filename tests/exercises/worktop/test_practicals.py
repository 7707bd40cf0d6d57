"""The practicals: each can be done at any bench, by careful hands, in its time."""

from dataclasses import fields

import pytest

from exercises.drills.setting.settings import USUAL, Settings
from exercises.worktop.guide import guided
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import KeptStretch, KnobsLeft, MasterPass, Practical, Way
from exercises.worktop.practical_shot import EarlierEdit, WantedShot
from exercises.worktop.practical_tape import LogMistake, PracticalTake, PracticalTape
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import CONTENT, practicals
from tests.exercises.worktop.benches import AT_ANY, AT_USUAL, EACH
from tests.exercises.worktop.careless import by_the_sheet, found, judged
from tests.exercises.worktop.hands import done, making, plan_of

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


@AT_USUAL
@pytest.mark.parametrize("slug", ["line-up", "three-shots", "cutaway", "another-sentence", "drift"])
def test_the_sheet_alone_is_enough_where_nothing_is_wrong_with_it(
    slug: str, settings: Settings
) -> None:
    """Of those that need no black first, and no eye for what is good already."""
    set_up = lay_out(practicals()[slug], settings)

    assert found(judged(set_up, by_the_sheet(set_up))) == set()


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
