"""The tape model against the same rules told frame by frame."""

import json
from random import Random
from typing import Any

import pytest
from hypothesis import given, settings

from exercises.tape import simulate
from tests.exercises.tape.slow_machines import slow_answer
from tests.strategies import Document, documents


@given(documents())
@settings(max_examples=150)
def test_answer_is_the_slow_machines_answer(document: Document) -> None:
    assert played(document) == slow_answer(document)


@pytest.mark.parametrize("seed", range(60))
def test_answer_after_many_edits_is_the_slow_machines_answer(seed: int) -> None:
    document = long_document(Random(seed))

    assert played(document) == slow_answer(document)
    assert json.dumps(played(document)) == json.dumps(slow_answer(document))


def played(document: Document) -> Document:
    """What the model says of tracks and states; the slow machines know no further faults."""
    answer = simulate(document)
    return {part: answer[part] for part in ("tracks", "states")}


def long_document(random: Random) -> dict[str, Any]:
    """Up to 60 edits on a tape of up to 1,200 frames, with one bench or another."""
    length = random.randint(300, 1200)
    split = random.randint(1, length)
    recorded = [{"start": 0, "end": split, "what": "black"}]
    if split < length and random.random() < 0.5:
        recorded.append({"start": split, "end": length, "what": "black", "generation": 3})
    return {
        "rate": random.choice(("29.97", "25")),
        "bench": random.choice(
            ({}, {"lock": 20, "relock": 7, "erase_gap": 9}, {"lock": 0, "erase_gap": 0})
        ),
        "master": {"length": length, "recorded": recorded if random.random() < 0.8 else []},
        "sources": {name: {"takes": takes(random)} for name in "ABC"},
        "edits": [edit(random, length) for _ in range(random.randint(1, 60))],
    }


def takes(random: Random) -> list[dict[str, int]]:
    made, start = [], random.randint(0, 50)
    for _ in range(random.randint(0, 6)):
        end = start + random.randint(1, 400)
        made.append({"start": start, "end": end, "generation": random.randint(1, 3)})
        start = end + random.choice((0, 0, 1, 40))
    return made


def edit(random: Random, length: int) -> dict[str, Any]:
    frames = random.choice((1, 2, random.randint(1, 60), random.randint(1, 300)))
    first = random.randint(0, 900)
    made: dict[str, Any] = {
        "mode": random.choice(("assemble", "insert", "insert")),
        "source": random.choice("ABC"),
        "in": first,
        "out": first + frames,
        "at": random.randint(0, length - frames),
    }
    if made["mode"] == "insert":
        picture, sound = random.choice(((True, False), (False, True), (True, True)))
        made |= {"picture": picture, "sound": sound}
    return made
