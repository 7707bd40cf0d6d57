"""A practical in frames, at benches that need more or less."""

import json
from dataclasses import replace

import pytest

from exercises.drills.setting.settings import USUAL, Settings
from exercises.signal.speech.line import lines
from exercises.tape import Rate
from exercises.worktop.laying_out import lay_out
from exercises.worktop.practical import Practical
from exercises.worktop.practical_shot import EarlierEdit, WantedShot
from exercises.worktop.practical_tape import LogMistake, PracticalTake, PracticalTape
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from tests.exercises.drills.benches import LIMITS

SECOND = 25
HARDEST = LIMITS["625, most"]
TALK = PracticalTake(
    name="1/1",
    shows="keeper",
    log="The keeper.",
    before=30,
    run_up=200,
    lasts=20,
    lines=("keeper-3", "keeper-5", "keeper-8"),
    mistake=LogMistake(late=-3, run_up=40),
)
TOOLS = PracticalTake(
    name="1/2", shows="tools", log="Tools.", before=2, run_up=100, lasts=9, white=70, sound=-90
)
TAPE = PracticalTape(name="Tape 1", takes=(TALK, TOOLS), white=90, sound=-30)
ONE = Practical(
    slug="one",
    number=1,
    title="One",
    purpose="For a test.",
    brief="Lay one shot.",
    lesson="run-up",
    minutes=10,
    length=120,
    tapes=(TAPE,),
    shots=(WantedShot(take="1/2", start=1, lasts=6, at=40),),
)


def laid(settings: Settings = USUAL, **changes: object) -> SetUp:
    return lay_out(replace(ONE, **changes), settings)  # type: ignore[arg-type]


def on_the_picture_track(set_up: SetUp) -> list[tuple[int, int]]:
    """Where wanted pictures lie, in frames of the master."""
    wanted = set_up.document["brief"]["picture"]
    return [(each["at"], each["at"] + each["out"] - each["in"]) for each in wanted]


def test_run_ups_are_as_long_as_the_machines_need_and_the_film_is_not() -> None:
    usual, hardest = laid().tapes[0].takes, laid(HARDEST).tapes[0].takes

    assert [take.action - take.start for take in usual] == [250, 125]
    assert [take.action - take.start for take in hardest] == [1000, 500]
    assert [take.end - take.action for take in usual] == [500, 225]
    assert [take.end - take.action for take in hardest] == [500, 225]


def test_a_longer_pre_roll_gets_the_minutes_that_it_costs() -> None:
    """Three times 15 seconds for each shot, to the nearest minute."""
    two = ONE.shots * 2

    assert [laid(bench).minutes for bench in (USUAL, HARDEST)] == [10, 11]
    assert laid(HARDEST, shots=(two[0], replace(two[1], at=60))).minutes == 12
    assert laid(LIMITS["625, least"]).minutes == 10
    slower = replace(USUAL, bench=replace(USUAL.bench, lock=130), pre_roll=150)
    assert laid(slower).minutes == 10


def test_the_log_is_wrong_where_the_author_says_so() -> None:
    wrong, right = laid().tapes[0].takes

    assert wrong.logged.action == wrong.action - 3 * SECOND
    assert wrong.logged.action - wrong.logged.start == 50
    assert (right.logged.start, right.logged.end) == (right.start, right.end)


def test_a_take_has_the_levels_of_its_tape_or_its_own() -> None:
    assert [(take.white, take.sound) for take in laid().tapes[0].takes] == [(90, -30), (70, -90)]


def test_lines_are_wanted_from_before_the_first_to_behind_the_last() -> None:
    """8 frames before, 10 behind, 1.5 s between two lines."""
    row = laid(shots=(WantedShot(take="1/1", line=2, through=3, at=40),)).sheet[0]
    spoken = lines()["keeper-5"].length + 1500 + lines()["keeper-8"].length

    assert row.says == "My father kept it before me. I can hear it if the wheels are dry."
    assert row.source_out - row.source_in == pytest.approx(8 + 10 + spoken * SECOND / 1000, abs=1)


def test_a_shot_that_lies_over_another_is_wanted_in_its_place() -> None:
    under = WantedShot(take="1/1", lasts=10, at=40)
    over = WantedShot(take="1/2", track="picture", lasts=4, at=43, over=True)
    set_up = laid(shots=(under, over))
    sound = set_up.document["brief"]["sound"]

    assert on_the_picture_track(set_up) == [(1000, 1075), (1075, 1175), (1175, 1250)]
    assert [(each["at"], each["out"] - each["in"]) for each in sound] == [(1000, 250)]
    assert [row.track for row in set_up.sheet] == ["both", "picture"]


def test_an_earlier_edit_is_well_made_but_for_what_is_said() -> None:
    shot = WantedShot(take="1/2", start=1, lasts=4, at=40)
    well = EarlierEdit(shot=shot, mode="assemble")
    badly = replace(well, late=7, short=2, gain=60, tracking=40)
    (good,), (bad,) = (laid(earlier=(each,)).document["edits"] for each in (well, badly))

    assert good["sound_level"] == {"mode": "by hand", "gain": 90}
    assert bad == good | {
        "at": good["at"] + 7,
        "out": good["out"] - 2,
        "sound_level": {"mode": "by hand", "gain": 150},
        "player": {"tracking": 40},
    }


@pytest.mark.parametrize("practical", practicals().values(), ids=practicals())
def test_what_is_kept_of_a_set_up_is_all_of_it(practical: Practical) -> None:
    set_up = lay_out(practical, Settings.usual(Rate.R29_97))

    assert SetUp.from_json(json.loads(json.dumps(set_up.as_json()))) == set_up
