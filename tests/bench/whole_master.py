"""A 90-minute master of 600 edits, played back and judged; a part of the tape bench."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from random import Random

from exercises.tape import (
    Assemble,
    Bench,
    Brief,
    Carried,
    Drift,
    Edit,
    Insert,
    Levels,
    Machines,
    Marks,
    Player,
    Rate,
    Side,
    SoundLevel,
    SoundMode,
    Source,
    Span,
    Take,
    Tape,
    Wanted,
    judge,
    play,
    record,
)
from tests.bench.stopwatch import milliseconds

MASTER = 90 * 60 * Rate.R29_97.nominal
BENCH = Bench.default(Rate.R29_97)
SHOTS = 480  # assembled one after the other
CUTAWAYS = 120  # pictures laid over them afterwards
LEADER = 600  # black, to have a run-up
SHOT = (MASTER - LEADER) // SHOTS
TURNS = 5


LED = Tape.blank(MASTER).with_pass(0, LEADER, "black")


@dataclass(frozen=True)
class Work:
    """What is recorded, and what was wanted."""

    edits: list[Edit]
    brief: Brief

    def recorded(self) -> Tape:
        tape = LED
        for index, edit in enumerate(self.edits):
            tape = record(tape, edit, BENCH, index)
        return tape

    def judged(self, tape: Tape) -> bool:
        """Played back and judged, as a learner's master is."""
        play(tape, BENCH)
        return judge(self.brief, tape, before=LED, bench=BENCH, edits=self.edits).fulfilled


def measured(*, marked: bool) -> dict[str, float]:
    """How long the edits take, and how long it takes to play back and judge what they made."""
    whole = work(marked=marked)
    tape = whole.recorded()
    if not marked:
        assert whole.judged(tape), "a plain master is as wanted"
    turns = [
        (milliseconds(whole.recorded), milliseconds(lambda: whole.judged(tape)))
        for _ in range(TURNS)
    ]
    edits, judged = (min(side) for side in zip(*turns, strict=True))
    return {"edits_600_ms": edits, "judged_600_ms": judged, "judged_by_edits": judged / edits}


def work(*, marked: bool) -> Work:
    """Shots from three reels; ``marked`` has words, drift and automatic gain in every one."""
    reels = [_reel(f"Tape {number}", marked=marked) for number in (1, 2, 3)]
    machines = _restless() if marked else Machines()
    edits = [*_shots(reels, machines), *_cutaways(reels, machines)]
    assembled = [edit for edit in edits if isinstance(edit, Assemble)]
    sound = tuple(_wanted("sound", edit) for edit in assembled)
    return Work(edits, Brief(picture=tuple(_pictures(edits)), sound=sound))


def _shots(reels: list[Source], machines: Machines) -> Iterator[Edit]:
    random = Random(1)
    for number in range(SHOTS):
        first = 3000 * random.randrange(50) + 300
        yield Assemble(
            random.choice(reels), first, first + SHOT, LEADER + number * SHOT, machines=machines
        )


def _cutaways(reels: list[Source], machines: Machines) -> Iterator[Edit]:
    """Within every fourth shot, from another reel's."""
    random = Random(2)
    for number in range(CUTAWAYS):
        first = 3000 * random.randrange(50) + 900
        at = LEADER + 4 * number * SHOT + 100
        shot = random.choice(reels), first, first + 60, at
        yield Insert(*shot, picture=True, sound=False, machines=machines)


def _pictures(edits: list[Edit]) -> Iterator[Wanted]:
    cutaways = {(edit.at - LEADER) // SHOT: edit for edit in edits if isinstance(edit, Insert)}
    for number, shot in enumerate(edits[:SHOTS]):
        over = cutaways.get(number)
        if over is None:
            yield _wanted("picture", shot)
            continue
        before, after = over.at - shot.at, over.end - shot.at
        yield _wanted("picture", replace(shot, out=shot.in_ + before))
        yield _wanted("picture", over)
        yield _wanted("picture", replace(shot, in_=shot.in_ + after, at=over.end))


def _wanted(side: Side, edit: Edit) -> Wanted:
    return Wanted(side, edit.source.name, edit.in_, edit.out, edit.at)


def _reel(name: str, *, marked: bool) -> Source:
    starts = range(0, MASTER, 3000)
    return Source(name, tuple(_take(start, start + 2900, marked=marked) for start in starts))


def _take(start: int, end: int, *, marked: bool) -> Take:
    if not marked:
        return Take(start, end)
    words = tuple(Span(at, at + 12) for at in range(start, end - 12, 18))
    breaths = tuple(Span(at + 13, at + 17) for at in range(start, end - 18, 90))
    return Take(start, end, 1, Carried(Levels(95, -20), marks=Marks(words, breaths)), sync=True)


def _restless() -> Machines:
    return Machines(
        player=Player(tracking=30, skew=6, drift=Drift(5, tracking=15, skew=3)),
        sound=SoundLevel(SoundMode.AUTOMATIC),
    )
