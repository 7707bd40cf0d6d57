"""What a brief asks for: shots where they lie, each cut where another lies over it."""

from collections.abc import Iterator, Sequence

from exercises.drills.asks import Json
from exercises.tape import DocumentError
from exercises.worktop.laying.shots import LaidShot
from exercises.worktop.practical_shot import WantedShot

MEETS = (
    "begins before another shot on the {side} track has ended; "
    "say over = true, if it belongs over that one"
)


def as_wanted(
    shots: Sequence[WantedShot], laid: Sequence[LaidShot], side: str, *, locked: int
) -> list[Json]:
    """What is wanted on one track, in order, as a brief has it: from frame `locked` on.

    Raises DocumentError for a shot that meets another and is not said to lie over it.
    """
    wanted: list[LaidShot] = []
    for number, (told, shot) in enumerate(zip(shots, laid, strict=True)):
        if side not in shot.sides:
            continue
        if not told.over and any(shot.at < each.end and each.at < shot.end for each in wanted):
            raise DocumentError(f"shots[{number}].at", MEETS.format(side=side))
        wanted = [part for each in wanted for part in beside(each, shot)] + [shot]
    return [
        {"source": shot.tape, "in": shot.in_, "out": shot.out, "at": shot.at}
        for shot in _from(locked, sorted(wanted, key=lambda shot: shot.at))
    ]


def _from(frame: int, wanted: Sequence[LaidShot]) -> Iterator[LaidShot]:
    """Shots without what lies before a frame."""
    for shot in wanted:
        before = max(0, frame - shot.at)
        if shot.at + before < shot.end:
            yield shot._replace(in_=shot.in_ + before, at=shot.at + before)


def beside(under: LaidShot, over: LaidShot) -> Iterator[LaidShot]:
    """What is left of a shot on a track where another lies over it."""
    if over.at >= under.end or over.end <= under.at:
        yield under
        return
    if under.at < over.at:
        yield under._replace(out=under.in_ + over.at - under.at)
    if over.end < under.end:
        yield under._replace(in_=under.in_ + over.end - under.at, at=over.end)
