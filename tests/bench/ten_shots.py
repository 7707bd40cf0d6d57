"""Planning briefs of ten shots, by judging what the plan makes; a part of the tape bench."""

from collections.abc import Iterator
from random import Random
from typing import NamedTuple

from exercises.tape import (
    Bench,
    Brief,
    Edit,
    Plan,
    Rate,
    Side,
    Source,
    Take,
    Tape,
    Wanted,
    judge,
    plan,
    record,
)
from tests.bench.stopwatch import milliseconds

BENCH = Bench.default(Rate.R25)
START = 500
BLANK = Tape.blank(30_000)
STRIPED = BLANK.with_pass(0, 30_000, "black")
REELS = {
    name: Source(name, tuple(Take(start, start + 2500) for start in range(0, 60_000, 3000)))
    for name in ("Tape 1", "Tape 2", "Tape 3")
} | {"black": Source("black", (Take(0, 100_000),))}
TURNS = 5
RANDOM = 100


class Shot(NamedTuple):
    """From which frame of which tape, and for how long."""

    source: str
    in_: int
    frames: int


class Row(NamedTuple):
    planned: float
    judged: float
    recordings: int
    exact: bool

    @property
    def ratio(self) -> float:
        return self.planned / self.judged


def briefs() -> Iterator[tuple[str, Brief, Tape]]:
    """Ten shots each, as they come in a learner's film."""
    plain = _laid([Shot(f"Tape {1 + n % 3}", 3000 * n + 400, 100 + 20 * n) for n in range(10)])
    yield "shot after shot on a blank tape", plain, BLANK
    yield "shot after shot on a tape of black", plain, STRIPED
    yield "shot after shot from the end of the pulses", plain, BLANK.with_pass(0, 900, "black")
    yield "an interview with nine cutaways", _interview(), BLANK
    yield "two people in turns, from two takes", _turns(), BLANK
    yield "sound that runs on under the next picture", _overlapping(), STRIPED


def _laid(shots: list[Shot]) -> Brief:
    return Brief(tuple(_track("picture", shots)), tuple(_track("sound", shots)))


def _track(side: Side, shots: list[Shot]) -> Iterator[Wanted]:
    at = START
    for source, in_, frames in shots:
        yield Wanted(side, source, in_, in_ + frames, at)
        at += frames


def _interview() -> Brief:
    """Nine cutaways over one talk: ten shots, nineteen pictures."""
    cuts = [Shot("Tape 2", 3000 * n + 300, 40) for n in range(9)]
    talk = [Shot("Tape 1", 400 + 100 * n, 60 if n < 9 else 100) for n in range(10)]
    pictures = [shot for pair in zip(talk, [*cuts, None], strict=True) for shot in pair if shot]
    return Brief(
        tuple(_track("picture", pictures)),
        tuple(_track("sound", [Shot("Tape 1", 400, 1000)])),
    )


def _turns() -> Brief:
    return _laid([Shot(f"Tape {1 + n % 2}", 500 + 100 * n + 300 * (n % 2), 100) for n in range(10)])


def _overlapping() -> Brief:
    shots = [Shot(f"Tape {1 + n % 3}", 3000 * n + 400, 100) for n in range(10)]
    sounds = [Shot(source, in_ + 20, frames) for source, in_, frames in shots[1:]]
    return Brief(
        tuple(_track("picture", shots)),
        tuple(_track("sound", [shots[0]._replace(frames=120), *sounds])),
    )


def random_brief(seed: int) -> tuple[Brief, Tape]:
    """Ten shots, some from a take that was used just before, some with another's sound."""
    random = Random(seed)
    pictures: list[Shot] = []
    sounds: list[Shot] = []
    used: list[tuple[str, int]] = []
    at = START
    for _ in range(10):
        frames = random.randint(30, 300)
        first = _chosen(random, used, at, frames)
        pictures.append(first)
        other = first if random.random() < 0.8 else _chosen(random, used, at, frames)
        sounds.append(other)
        at += frames
    brief = Brief(tuple(_track("picture", pictures)), tuple(_track("sound", sounds)))
    return brief, random.choice((BLANK, STRIPED, BLANK.with_pass(0, 1000, "black")))


def _chosen(random: Random, used: list[tuple[str, int]], at: int, frames: int) -> Shot:
    """A new shot, or one of the last three takes further on, where it has got to by now."""
    if used and random.random() < 0.4:
        source, offset = random.choice(used[-3:])
        if (at - offset) % 3000 + frames < 2500:
            return Shot(source, at - offset, frames)
    source = f"Tape {random.randint(1, 3)}"
    in_ = 3000 * random.randrange(20) + random.randint(200, 1500)
    used.append((source, at - in_))
    return Shot(source, in_, frames)


def measured(brief: Brief, tape: Tape, turns: int = TURNS) -> Row:
    found = plan(brief, tape, sources=REELS, bench=BENCH)
    assert isinstance(found, Plan), "every brief here has a plan"
    made = _made(tape, found.edits)

    def judged() -> bool:
        return judge(brief, made, before=tape, bench=BENCH, edits=found.edits).fulfilled

    assert judged(), "a plan does what it is for"
    timed = [
        (
            milliseconds(lambda: plan(brief, tape, sources=REELS, bench=BENCH)),
            milliseconds(judged),
        )
        for _ in range(turns)
    ]
    planning, judging = (min(side) for side in zip(*timed, strict=True))
    return Row(planning, judging, len(found.edits), found.exact)


def _made(tape: Tape, edits: tuple[Edit, ...]) -> Tape:
    for index, edit in enumerate(edits):
        tape = record(tape, edit, BENCH, index)
    return tape


def compared() -> dict[str, float]:
    """Prints a table; the figures are those of the worst brief, and of the random ones."""
    print("Plans for ten shots, by judging what they make.\n")
    print(f"{'':44}{'plan':>9}{'judged':>10}{'ratio':>7}{'recordings':>12}")
    rows = []
    for kind, brief, tape in briefs():
        row = measured(brief, tape)
        rows.append(row)
        print(
            f"{kind:44}{row.planned:6.1f} ms{row.judged:7.2f} ms{row.ratio:7.1f}"
            f"{row.recordings:12}{'' if row.exact else '  not exact'}"
        )
    tangled = sorted((measured(*random_brief(seed), turns=1) for seed in range(RANDOM)), key=_ratio)
    median, ninth, worst = (tangled[RANDOM * n // 10 - 1].ratio for n in (5, 9, 10))
    under, exact = (
        sum(row.ratio < 200 for row in tangled),
        sum(row.exact for row in tangled),
    )
    print(
        f"\n{RANDOM} random briefs that come back to takes and split sound: ratio {median:.0f} in "
        f"the middle, {ninth:.0f} for nine in ten, {worst:.0f} at the worst; {under} under 200, "
        f"{exact} exact."
    )
    print("Goal: the ratio under 200.\n")
    return {
        "plan_ms": max(row.planned for row in rows),
        "plan_by_judging": max(map(_ratio, rows)),
        "random_plan_by_judging_median": median,
        "random_plan_by_judging_9_in_10": ninth,
        "random_plans_under_200": under,
        "random_plans_exact": exact,
    }


def _ratio(row: Row) -> float:
    return row.ratio
