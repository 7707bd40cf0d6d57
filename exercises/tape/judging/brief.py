"""What is wanted of a master: the brief that a finished tape is judged by."""

from dataclasses import dataclass
from itertools import pairwise

from exercises.tape.tape import SIDES, Side, TrackName


@dataclass(frozen=True, slots=True)
class Wanted:
    """``[in_, out)`` of a source, wanted on one track from master frame ``at`` on.

    ``tolerance`` is by how many frames the shot may lie early or late, and by how many
    its first and last frame may be off; at least one frame of it must be there.
    """

    track: Side
    source: str
    in_: int
    out: int
    at: int
    tolerance: int = 0

    @property
    def end(self) -> int:
        """The first frame of the master beyond the shot."""
        return self.at + self.out - self.in_

    @property
    def shift(self) -> int:
        """Master frame less source frame, all through the shot."""
        return self.at - self.in_

    @property
    def slack(self) -> int:
        """By how many frames its first and its last frame may be off."""
        return min(self.tolerance, (self.out - self.in_ - 1) // 2)


@dataclass(frozen=True, slots=True)
class Kept:
    """``[start, end)`` of a track that must stay as it was, and play as it did."""

    track: TrackName
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Brief:
    """What a master must hold, per track; what it must keep; what it may not exceed.

    picture, sound      in order along the tape, not overlapping. Where a track with
                        wanted shots wants nothing, nothing new may lie but black. A
                        track without any may hold what it likes.
    kept                stretches that stay untouched
    highest_generation  of anything wanted; None: any
    black               the source that pulses may be laid with where nothing is wanted
    """

    picture: tuple[Wanted, ...] = ()
    sound: tuple[Wanted, ...] = ()
    kept: tuple[Kept, ...] = ()
    highest_generation: int | None = None
    black: str = "black"

    def __post_init__(self) -> None:
        for side in SIDES:
            for before, after in pairwise(self.on(side)):
                if after.at < before.end:
                    raise ValueError(f"Two shots are wanted at once on the {side} track: {after}.")

    def on(self, side: Side) -> tuple[Wanted, ...]:
        """What is wanted on one track."""
        return self.picture if side == "picture" else self.sound

    @property
    def wanted(self) -> tuple[Wanted, ...]:
        return self.picture + self.sound
