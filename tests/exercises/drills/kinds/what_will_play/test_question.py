"""Every right answer, decided again frame by frame; and that questions tell beliefs apart."""

import json
from collections import Counter
from collections.abc import Iterator
from functools import cache
from itertools import pairwise
from typing import Any

import pytest

from exercises.drills.asks import AnswerRefused, Table
from exercises.drills.beliefs.including import goes_without_saying
from exercises.drills.kind import slug_of
from exercises.drills.kinds.what_will_play import KIND as WHAT_PLAYS
from exercises.drills.kinds.what_will_play.situations import SITUATIONS
from exercises.drills.question import Question
from exercises.tape import Rate, label
from tests.exercises.drills.frames import Machines, threaded
from tests.exercises.drills.made import made, many

FAULTS = ("blank", "no-lock", "rolls", "unsteady", "no-picture", "no-sound")


def asked(count: int = 200) -> list[Question]:
    return many(WHAT_PLAYS, count)


def table(question: Question) -> Table:
    (ask,) = question.asks
    assert isinstance(ask, Table)
    return ask


def seen(machines: Machines, steady: list[bool], frame: int) -> str:
    """What a frame shows: a fault, or "plays"."""
    picture, sound = machines.picture[frame], machines.sound[frame]
    if not machines.control[frame]:
        return "no-lock" if picture or sound else "blank"
    if not steady[frame]:
        return "rolls"
    if picture is None:
        return "no-picture"
    if not picture[2]:
        return "unsteady"
    if sound is None:
        return "no-sound"
    return "plays" if sound[2] else "unsteady"


def copied(machines: Machines, frame: int) -> tuple[Any, ...]:
    """The source tapes that picture and sound come from."""
    copies = machines.picture[frame], machines.sound[frame]
    return tuple(copy and copy[0] for copy in copies)


@cache
def played(seed: int) -> Machines:
    return threaded(made(WHAT_PLAYS, seed).key["session"])


def stretches(question: Question) -> Iterator[tuple[str, range]]:
    """What is right for each stretch, and its frames."""
    edges = pairwise(question.key["edges"])
    for [answer], (start, end) in zip(question.right["plays"], edges, strict=True):
        yield answer, range(start, end)


def test_right_answer_is_right_for_an_independent_judge() -> None:
    for seed, question in enumerate(asked(30)):
        machines = played(seed)
        steady = machines.steady()
        for answer, frames in stretches(question):
            shown = {seen(machines, steady, frame) for frame in frames}

            assert shown == {answer if answer in FAULTS else "plays"}, seed


def test_stretches_that_play_alike_are_copied_from_one_tape() -> None:
    for seed, question in enumerate(asked(30)):
        for answer, frames in stretches(question):
            if answer not in FAULTS:
                assert len({copied(played(seed), frame) for frame in frames}) == 1, seed


def test_page_says_what_lies_where_before_the_edits() -> None:
    for question in asked():
        past = question.key["session"]["edits"][: question.key["past"]]
        rate = next(rate for rate in Rate if rate.label == question.key["session"]["rate"])

        assert [row[:3] for row in question.shown["lies"]] == [
            [
                label(edit["at"], rate),
                label(edit["at"] + edit["out"] - edit["in"], rate),
                edit["source"],
            ]
            for edit in past
        ]


def test_stretches_are_eight_to_twelve() -> None:
    lengths = {len(table(question).lines) for question in asked()}

    assert lengths <= set(range(8, 13))


def test_each_subset_of_the_beliefs_answers_otherwise() -> None:
    """But for sets of which one belief goes further than another."""
    for question in asked():
        kept = question.believed
        first = {json.dumps(answer): held for held, answer in reversed(kept)}
        alike = [(held, first[json.dumps(answer)]) for held, answer in kept]
        beliefs = {belief for held, _ in kept for belief in held}

        assert len(kept) == 2 ** len(beliefs)
        assert [
            (more, held)
            for more, held in alike
            if more != held and not (len(more) > 1 and goes_without_saying(more, held))
        ] == []
        assert kept[0] == [[], question.right]


def test_all_that_anybody_expects_is_among_the_options() -> None:
    for question in asked():
        for _, answer in question.believed:
            assert len(table(question).texts(answer["plays"])) == len(table(question).lines)


def test_every_situation_occurs() -> None:
    assert {question.situation for question in asked()} == {
        slug_of(each.__name__) for each in SITUATIONS
    }


def test_beliefs_are_touched_by_more_than_one_situation() -> None:
    situations: dict[str, set[str]] = {}
    for question in asked():
        for held, _ in question.believed:
            for belief in held:
                situations.setdefault(belief, set()).add(question.situation)

    assert Counter({belief: len(found) for belief, found in situations.items()}) == {
        "assemble-ends-clean": 5,
        "assemble-picks-tracks": 1,
        "black-is-blank": 8,
        "gap-heals": 2,
        "insert-ends-ragged": 8,
        "insert-lays-pulses": 3,
        "insert-pushes-along": 6,
        "insert-takes-both": 5,
        "late-is-safer": 2,
        "no-master-run-up": 6,
        "no-source-run-up": 7,
        "plays-without-pulses": 3,
        "pre-roll-makes-run-up": 2,
        "touching-takes-share-pulses": 2,
    }


def test_hardly_a_seed_is_rejected() -> None:
    drawn = [next(WHAT_PLAYS.candidates(seed)) for seed in range(100)]

    assert sum(question is None for question in drawn) < 10


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (lambda sent: [], "Choose from the lists."),
        (lambda sent: [""] * len(sent), "Choose from the lists."),
        (lambda sent: sent[:-1], "That is not one of the answers."),
        (lambda sent: [*sent, sent[0]], "That is not one of the answers."),
        (lambda sent: ["x" * 10_000, *sent[1:]], "That is not one of the answers."),
        (lambda sent: ["", *sent[1:]], "Something is still to be chosen in the row “00:"),
    ],
)
def test_bad_answer_is_refused_with_a_sentence(change: Any, sentence: str) -> None:
    ask = table(asked()[0])
    sent = ask.typed(asked()[0].right["plays"])

    with pytest.raises(AnswerRefused) as refusal:
        ask.read(change(sent))

    assert str(refusal.value).startswith(sentence)


def test_one_wrong_stretch_costs_its_share() -> None:
    question = asked()[0]
    rows = [list(row) for row in question.right["plays"]]
    rows[0] = ["no-sound"]
    verdict = WHAT_PLAYS.grade(question, {"plays": rows})

    assert (verdict.right, verdict.score) == (False, 100 * (len(rows) - 1) // len(rows))
    assert verdict.feedback["credit"] == (
        f"{len(rows) - 1} of {len(rows)} stretches right; each counts as much as another."
    )
    assert verdict.misconceptions == ()


def test_two_beliefs_are_found_in_one_answer() -> None:
    question = next(q for q in asked() if q.situation == "after-a-hole")
    both = ["gap-heals", "no-master-run-up"]
    answer = next(answer for held, answer in question.believed if held == both)

    assert list(WHAT_PLAYS.grade(question, answer).misconceptions) == both
