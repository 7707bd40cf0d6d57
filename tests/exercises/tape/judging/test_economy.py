from exercises.tape import Brief, Pace, Rate, judge
from tests.exercises.tape.judging.briefs import (
    BENCH,
    BRIDGE,
    HARBOUR,
    STRIPED,
    insert,
    judged,
    picture,
    recorded,
)

EDITS = insert(BRIDGE, 300, 400, 500), insert(HARBOUR, 225, 325, 600)
PACE = Pace(pre_roll=100, post_roll=50, set_up=1000, change=700, shuttle=10)


def test_economy_counts_frames_at_the_bench() -> None:
    economy = judge(
        Brief(), recorded(*EDITS), before=STRIPED, bench=BENCH, edits=EDITS, pace=PACE
    ).economy

    assert (economy.recordings, economy.generations, economy.tape) == (2, 0, 2000)
    assert economy.set_up == 1000 + 1000 + 700
    # The master winds 400 and then 150 frames, the player 200 and 125; each check 250 back.
    assert economy.shuttle == (400 + 250) // 10 + (150 + 250) // 10
    assert economy.pre_roll == 2 * 150
    assert economy.record == 200
    assert economy.check == 2 * 250
    assert economy.bench == 2700 + 105 + 300 + 200 + 500
    assert economy.minutes(Rate.R25) == 3


def test_player_goes_on_where_it_was_when_its_tape_comes_back() -> None:
    edits = (*EDITS, insert(BRIDGE, 550, 600, 700))

    economy = judge(
        Brief(), recorded(*edits), before=STRIPED, bench=BENCH, edits=edits, pace=PACE
    ).economy

    # The tape of the bridge stands at 450, where its run-up begins; the master winds back 150.
    assert economy.shuttle == 105 + (150 + 200) // 10


def test_generations_are_those_of_what_was_wanted() -> None:
    brief = Brief((picture("bridge", 2300, 2400, 500), picture("harbour", 225, 325, 600)))

    assert judged(brief, insert(BRIDGE, 2300, 2400, 500), EDITS[1]).economy.generations == 3


def test_usual_pace_is_in_seconds_of_the_rate() -> None:
    assert Pace.default(Rate.R25) == Pace(125, 50, set_up=1500, change=1500, shuttle=10)
    assert Pace.default(Rate.R29_97) == Pace(150, 60, set_up=1800, change=1800, shuttle=10)
