"""Whoever knows nothing of levels answers no better than by chance, whatever rule they go by."""

import pytest

from exercises.drills.kind import Kind
from exercises.drills.knobs.aim import Aim
from exercises.drills.knobs.control import POSITIONS
from exercises.drills.paper_levels import PAPER_LEVELS
from exercises.drills.read_the_bench import READ_THE_BENCH
from exercises.drills.set_picture_level import SET_PICTURE_LEVEL
from exercises.drills.set_sound_level import SET_SOUND_LEVEL
from exercises.drills.spot_by_ear import SPOT_BY_EAR
from tests.exercises.drills.blind import asked, chance, right, rules

KNOBS = (SET_PICTURE_LEVEL, SET_SOUND_LEVEL)
KINDS = (PAPER_LEVELS, READ_THE_BENCH, SET_SOUND_LEVEL, SPOT_BY_EAR)
SEEDS = range(1_000)
MORE = 0.05  # than by chance


@pytest.mark.parametrize("drill", KINDS, ids=lambda drill: drill.slug)
def test_no_blind_rule_is_much_better_than_chance(drill: Kind) -> None:
    questions = [each for seed in SEEDS for each in asked(drill.make(seed))]
    found = {name: right(rule, questions) for name, rule in rules(questions).items()}
    best = dict(sorted(found.items(), key=lambda entry: -entry[1])[:5])

    assert max(best.values()) <= chance(questions) + MORE, best


@pytest.mark.parametrize("drill", KNOBS, ids=lambda drill: drill.slug)
def test_no_place_of_a_control_is_right_much_more_often_than_by_chance(drill: Kind) -> None:
    aims = [Aim.from_json(drill.make(seed).key["aim"]) for seed in SEEDS]
    shares = [sum(aim.is_right(at) for aim in aims) / len(aims) for at in range(POSITIONS)]

    assert max(shares) <= sum(shares) / POSITIONS + MORE
