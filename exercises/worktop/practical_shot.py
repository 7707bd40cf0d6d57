"""What is wanted on the master, and what was laid there before, as an author tells of it."""

from dataclasses import dataclass
from typing import Literal

TrackChoice = Literal["both", "picture", "sound"]


@dataclass(frozen=True, slots=True, kw_only=True)
class WantedShot:
    """A shot of the finished master.

    start    seconds into the action of the take
    line     that line of the take is wanted, counted from 1; None: `start` and `lasts` hold
    through  the last line that is wanted; None: `line` alone
    at       seconds of the master; None: right after the shot before it on that track
    over     it lies over the shots before it in the list, in their place
    sheet    the take that the edit sheet names, where that is another
    """

    take: str
    track: TrackChoice = "both"
    start: int = 0
    lasts: int = 0
    line: int | None = None
    through: int | None = None
    at: int | None = None
    over: bool = False
    sheet: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierEdit:
    """An edit that was made before the learner sat down, well but for what is said.

    tracking  percent of a track that the player was off
    gain      0.1 dB that its sound was brought over line-up
    late      frames too late that it was laid
    short     frames too early that it was stopped
    """

    shot: WantedShot
    mode: Literal["assemble", "insert"]
    tracking: int = 0
    gain: int = 0
    late: int = 0
    short: int = 0
