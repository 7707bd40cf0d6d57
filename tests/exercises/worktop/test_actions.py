"""What hands do at the practice bench, and what the tape model makes of it."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from exercises.drills.setting.settings import USUAL
from exercises.tape import answer, simulate
from exercises.worktop.actions import act, replay
from exercises.worktop.done import BenchRefused
from exercises.worktop.laying_out import lay_out
from exercises.worktop.played import TimedMotion, played
from exercises.worktop.practical import Practical
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf import practicals
from exercises.worktop.worktop import Worktop
from tests.exercises.worktop.hands import Taken, by_the_plan, done

SET_UP = lay_out(practicals()["three-shots"], USUAL)
SECOND = 25

FRAMES = st.integers(-100, 6100)
MACHINES = st.sampled_from(["player", "recorder"])
TAPES = st.sampled_from(["Tape 3", "Tape 5", "Edit master", "Tape 9"])
ACTIONS = st.one_of(
    st.tuples(st.just("load"), st.fixed_dictionaries({"machine": MACHINES, "tape": TAPES})),
    st.tuples(st.just("take-out"), st.fixed_dictionaries({"machine": MACHINES})),
    st.tuples(st.just("wind"), st.fixed_dictionaries({"machine": MACHINES, "to": FRAMES})),
    st.tuples(st.just("step"), st.fixed_dictionaries({"machine": MACHINES, "by": FRAMES})),
    st.tuples(st.just("play"), st.fixed_dictionaries({"machine": MACHINES, "frames": FRAMES})),
    st.tuples(st.just("tracking"), st.fixed_dictionaries({"to": st.integers(-22, 22)})),
    st.tuples(
        st.just("mode"),
        st.fixed_dictionaries(
            {
                "mode": st.sampled_from(["assemble", "insert", "overlay"]),
                "picture": st.booleans(),
                "sound": st.booleans(),
            }
        ),
    ),
    st.tuples(
        st.just("mark"),
        st.fixed_dictionaries(
            {
                "which": st.sampled_from(["source_in", "source_out", "master_in", "end"]),
                "at": st.one_of(st.none(), FRAMES),
            }
        ),
    ),
    st.tuples(
        st.sampled_from(["next-take", "rehearse", "record", "look-back"]),
        st.just({}),
    ),
    st.tuples(st.just("stop"), st.fixed_dictionaries({"after": FRAMES})),
)


def tracks(found: Any) -> Any:
    return found["tracks"], found["states"]


READY: list[Taken] = [
    ("load", {"machine": "recorder", "tape": "Edit master"}),
    ("load", {"machine": "player", "tape": "Tape 3"}),
]


def marked(source_in: int, source_out: int, master_in: int) -> list[Taken]:
    frames = {"source_in": source_in, "source_out": source_out, "master_in": master_in}
    return [*READY, *(("mark", {"which": name, "at": at}) for name, at in frames.items())]


@given(st.lists(ACTIONS, max_size=60))
@settings(max_examples=60, deadline=None)
def test_whatever_hands_do_replays_to_the_same_tape_as_simulate_makes(
    actions: list[Taken],
) -> None:
    top, kept = Worktop.at_first(SET_UP), []
    for name, arguments in [*READY, *actions]:
        try:
            top = act(top, name, arguments).top
        except BenchRefused:
            continue
        kept.append((name, json.loads(json.dumps(arguments))))

    again = replay(SetUp.from_json(json.loads(json.dumps(SET_UP.as_json()))), kept)
    stored = Worktop.from_json(SET_UP, json.loads(json.dumps(top.as_json())))
    assert again == stored == top
    assert top.done == len(kept)
    assert again.master == stored.master == again.session.recorded()
    assert tracks(simulate(json.loads(json.dumps(top.document)))) == tracks(answer(again.session))


@pytest.mark.parametrize("practical", practicals().values(), ids=lambda each: each.slug)
def test_the_planners_plan_done_by_hand_fulfils_the_brief(practical: Practical) -> None:
    set_up = lay_out(practical, USUAL)

    top = done(set_up, by_the_plan(set_up))

    assert set_up.session.brief is not None
    judgement = top.session.judged(set_up.session.brief)
    assert judgement.fulfilled, judgement


def test_an_edit_without_run_up_shows_a_late_lamp_and_records_what_is_unsettled() -> None:
    take = SET_UP.by_name["Tape 3"].takes[0]
    top = replay(SET_UP, marked(take.start + SECOND, take.start + 8 * SECOND, 40 * SECOND))

    made = act(top, "record", {})

    assert made.told.endswith("came on late: the player’s 4 seconds after the edit in.")
    laid = made.top.master.picture.at(40 * SECOND)
    assert laid is not None
    assert not laid.value.settled


def test_a_source_tape_in_the_recorder_is_protected() -> None:
    top = replay(
        SET_UP,
        [
            ("load", {"machine": "recorder", "tape": "Tape 5"}),
            ("load", {"machine": "player", "tape": "Tape 3"}),
        ],
    )

    made = act(top, "record", {})

    assert made.sign == "no record"
    assert made.top.edits == ()


def test_a_recording_without_an_end_runs_until_it_is_stopped() -> None:
    marks = [each for each in marked(475, 675, 1000) if each[1].get("which") != "source_out"]
    running = act(replay(SET_UP, marks), "record", {}).top

    with pytest.raises(BenchRefused, match="Stop it first"):
        act(running, "rehearse", {})
    stopped = act(running, "stop", {"after": 100}).top

    assert [(each["at"], each["out"]) for each in stopped.edits] == [(1000, 575)]


def test_nothing_follows_a_hand_in() -> None:
    with pytest.raises(BenchRefused, match="handed in"):
        act(replay(SET_UP, [("hand-in", {})]), "load", {"machine": "player", "tape": "Tape 3"})


def test_the_clock_runs_by_what_the_machines_do() -> None:
    """A change of cassette takes 30 s, winding a tenth of playing (common practice)."""
    top = replay(SET_UP, [*READY, ("wind", {"machine": "player", "to": 1000})])

    assert top.clock == 2 * 30 * SECOND + 100


def test_each_picture_of_what_ran_has_its_time() -> None:
    before = replay(SET_UP, [*READY, ("wind", {"machine": "player", "to": 475})])
    arguments = {"machine": "player", "frames": 4 * SECOND}

    motion, _ = played(before, "play", arguments, act(before, "play", arguments).top)

    assert isinstance(motion, TimedMotion)
    assert (motion.times[0], motion.times[12]) == ("00:00:19:00", "00:00:21:00")
