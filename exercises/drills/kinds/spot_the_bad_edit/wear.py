"""What a tape has been through, which the tape model knows nothing of.

Where a tape has lost its coat or is scratched, what plays drops out for moments: white streaks in
the picture, dips in the sound (common practice). It does so whenever it is played, and whatever
is laid there drops out again.
"""

from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass
from typing import Self

from exercises.drills.asks import Json
from exercises.tape import SIDES, Laid, Run, Side, Tape

MASTER = ""  # in the place of a source tape's name


@dataclass(frozen=True, slots=True)
class Wear:
    """`[start, end)` of a tape that is worn where these tracks lie."""

    tape: str
    start: int
    end: int
    tracks: tuple[Side, ...]

    def as_json(self) -> Json:
        return {**asdict(self), "tracks": list(self.tracks)}

    @classmethod
    def from_json(cls, stored: Json) -> Self:
        return cls(**{**stored, "tracks": tuple(stored["tracks"])})


def dropping_out(tape: Tape, worn: Sequence[Wear]) -> Iterator[tuple[int, int, Side]]:
    """The stretches of an edit master that drop out, each with its track."""
    for each in worn:
        for track in each.tracks:
            runs = tape.on(track).runs
            spans = filter(None, (_span(run, each) for run in runs))
            yield from ((start, end, track) for start, end in spans)


def _span(run: Run[Laid], worn: Wear) -> tuple[int, int] | None:
    if worn.tape not in (MASTER, run.value.source):
        return None
    shift = run.start - run.value.frame if worn.tape else 0
    start, end = max(run.start, worn.start + shift), min(run.end, worn.end + shift)
    return (start, end) if start < end else None


def drops(tape: Tape, worn: Sequence[Wear], frame: int) -> tuple[bool, ...]:
    """Whether picture and sound drop out at a frame."""
    found = {track for start, end, track in dropping_out(tape, worn) if start <= frame < end}
    return tuple(track in found for track in SIDES)
