"""The planner against every list of recordings that there is."""

from random import Random

import pytest

from exercises.tape import Bench, Brief, Kept, Rate, Side, Source, Take, Tape, Wanted
from exercises.tape.planning.hindrances import Hindrances
from exercises.tape.planning.search import Search
from exercises.tape.planning.target import Target
from tests.exercises.tape.planning.every_list import Best, best

MOST = 2  # recordings up to which every list is tried

# Seeds of puzzles by how many recordings solve them; short ones, since every list is long.
SEEDS = {
    0: (1, 37),
    1: (18, 22, 23, 43, 61, 70, 77, 81, 113, 114),
    2: (5, 21, 59, 69, 78, 95, 108, 111, 143, 148, 215, 218),
    3: (47, 73, 88, 137, 158, 190),
    None: (3, 4, 6, 7),
}


def reel(name: str, random: Random) -> Source:
    takes: list[Take] = []
    at = random.randrange(2)
    for _ in range(random.choice((1, 1, 2, 2))):
        takes.append(Take(at, at + random.randint(3, 9)))
        at = takes[-1].end + random.choice((0, 0, 0, 4))
    return Source(name, tuple(takes))


def master(length: int, random: Random) -> Tape:
    """Blank, striped, or begun, with or without a jump of its pulses."""
    tape = Tape.blank(length)
    kind = random.random()
    if kind < 0.3:
        return tape.with_pass(0, length, "black")
    if kind < 0.7:
        start = random.randrange(2)
        end = random.randint(start + 1, length)
        tape = tape.with_pass(start, end, random.choice(("black", "old")))
        if random.random() < 0.4 and end < length:
            tape = tape.with_pass(end, random.randint(end + 1, length), "older")
    return tape


def shots(side: Side, length: int, random: Random, like: list[Wanted]) -> list[Wanted]:
    """Up to two shots of a track, now and then of a strand that the other track has."""
    found: list[Wanted] = []
    at = random.randrange(1, length)
    for _ in range(random.choice((0, 1, 1, 2))):
        if at >= length:
            break
        frames = random.randint(1, min(3, length - at))
        source, first = random.choice("AB"), random.randrange(8)
        if like and random.random() < 0.5:
            source, first = like[0].source, at - like[0].shift
        if first >= 0:
            found.append(Wanted(side, source, first, first + frames, at))
        at += frames + random.choice((0, 0, 1))
    return found


def kept(length: int, random: Random, picture: list[Wanted], sound: list[Wanted]) -> list[Kept]:
    start = random.randrange(length)
    end = random.randint(start + 1, length)
    stays, wanted = random.choice(
        (
            (Kept("picture", start, end), picture),
            (Kept("sound", start, end), sound),
            (Kept("control", start, end), []),
        )
    )
    clash = any(shot.at < end and start < shot.end for shot in wanted)
    return [] if clash or random.random() < 0.7 else [stays]


def target(seed: int) -> Target:
    random = Random(seed)
    length = random.choice((4, 5, 5, 6))
    bench = Bench(
        Rate.R25,
        lock=random.choice((0, 1, 2, 2, 3)),
        relock=random.choice((1, 1, 2)),
        erase_gap=random.choice((0, 1, 1, 2, 3)),
    )
    sources = {name: reel(name, random) for name in "AB"}
    if random.random() < 0.8:
        sources["black"] = Source("black", (Take(0, 60),))
    tape = master(length, random)
    picture = shots("picture", length, random, [])
    sound = shots("sound", length, random, picture)
    stays = kept(length, random, picture, sound)
    return Target(Brief(tuple(picture), tuple(sound), tuple(stays)), tape, sources, bench)


@pytest.mark.parametrize(
    ("seed", "count"), [(seed, count) for count, seeds in SEEDS.items() for seed in seeds]
)
def test_no_list_of_recordings_is_better_than_the_plan(seed: int, count: int | None) -> None:
    asked = target(seed)

    found = Search(asked).run()

    most = MOST if count is None else min(MOST, count)
    tried = best(asked.brief, asked.before, asked.sources, asked.bench, most)
    if found is None or len(found.edits) > MOST:
        assert tried is None
    else:
        assert Best(len(found.edits), found.frames) == tried
    assert (None if found is None else len(found.edits)) == count
    assert not (found and list(Hindrances(asked)))
