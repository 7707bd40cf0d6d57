"""Chains counted again, and the answers of those who believe otherwise."""

from functools import cache
from itertools import pairwise

import pytest

from exercises.drills.asks import Choice
from exercises.drills.kind import slug_of
from exercises.drills.kinds.which_generation import KIND as WHICH_GENERATION
from exercises.drills.kinds.which_generation.chains import CHAINS
from exercises.drills.question import Question
from exercises.tape import simulate
from tests.exercises.drills.made import many


def asked(count: int = 200) -> list[Question]:
    return many(WHICH_GENERATION, count)


def sources(question: Question) -> dict[str, str]:
    """For each tape, the one that it is a copy of; nothing for a camera original."""
    return {
        tape: told.split(",")[0].removeprefix("Copy of ") if told.startswith("Copy") else ""
        for tape, told in question.shown["tapes"]
    }


def counted(tape: str, copied: dict[str, str]) -> int:
    return 1 + (counted(copied[tape], copied) if copied[tape] else 0)


def test_generations_follow_from_what_is_shown() -> None:
    for seed, question in enumerate(asked(60)):
        copied = sources(question)
        later = sum(tape in ("Edit master", "Festival copy", "Saloon copy") for tape in copied)
        found = [[str(counted(tape, copied) + later)] for _, tape in question.shown["shots"]]

        assert question.right["generations"] == found, seed


def test_generation_is_that_of_the_tape_model() -> None:
    """The shot copied once more by the model from a take one generation earlier."""
    for seed, question in enumerate(asked(20)):
        for [generation] in question.right["generations"]:
            assert recorded_from(int(generation) - 1) == {int(generation)}, seed


@cache
def recorded_from(generation: int) -> set[int]:
    """The generations on a tape that is recorded from one."""
    take = {"start": 0, "end": 400, "generation": generation}
    edit = {"mode": "assemble", "source": "A", "in": 200, "out": 300, "at": 0}
    answer = simulate(
        {"master": {"length": 400}, "sources": {"A": {"takes": [take]}}, "edits": [edit]}
    )
    tracks = answer["tracks"]
    assert isinstance(tracks, dict)
    return {run["generation"] for run in tracks["picture"]}


def gone(question: Question) -> bool:
    """Whether the story's last sentence takes a tape away."""
    ends = ("recorded over since.", "played no more.", "no longer be had.")
    return bool(question.shown["story"].endswith(ends))


def test_best_tape_is_the_camera_original_or_else_a_copy_of_it() -> None:
    for question in asked():
        best, tapes = question.right["again"], dict(question.shown["tapes"])

        if gone(question):
            assert tapes[sources(question)[best]].startswith("Camera original")
        else:
            assert tapes[best].startswith("Camera original")


def test_camera_original_is_gone_about_every_second_time() -> None:
    assert 70 <= sum(map(gone, asked())) <= 130


def test_tape_that_is_gone_is_still_among_the_options() -> None:
    for question in filter(gone, asked()):
        lost = question.shown["story"].rsplit(". ", 1)[1].split(" ")[:2]

        assert " ".join(lost) in question.asks[2].every()


def test_every_chain_occurs() -> None:
    assert {question.situation for question in asked()} == {
        slug_of(chain.__name__) for chain in CHAINS
    }


def test_figures_of_believers_are_far_apart() -> None:
    for question in asked():
        figures = sorted({answer["noise"] for _, answer in question.believed})

        assert min(b - a for a, b in pairwise(figures)) > 0.3


@pytest.mark.parametrize(("beside", "right"), [(0.1, True), (-0.1, True), (0.2, False)])
def test_figure_has_a_tolerance(beside: float, right: bool) -> None:
    question = asked()[0]
    answer = dict(question.right) | {"noise": round(question.right["noise"] + beside, 1)}
    verdict = WHICH_GENERATION.grade(question, answer)

    assert (verdict.right, verdict.score) == (right, 100 if right else 67)


def test_belief_is_found_with_a_figure_beside() -> None:
    question = asked()[0]
    held, answer = question.believed[-1]
    near = answer | {"noise": answer["noise"] + 0.1}

    assert WHICH_GENERATION.grade(question, near).misconceptions == tuple(held)


def test_right_tape_is_not_always_at_one_place() -> None:
    places = []
    for question in asked():
        ask = question.asks[2]
        assert isinstance(ask, Choice)
        places.append(list(ask.every()).index(question.right["again"]))

    assert all(places.count(place) > 20 for place in range(3))
