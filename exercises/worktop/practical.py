"""What a practical is: the tapes on the shelf, the edit master, and what it has to become.

Everything is told as an author tells it: in whole seconds and, where a machine has to lock, in
percent of the run-up that locks it. `laying_out.py` lays it out in frames at somebody's own bench.
"""

from dataclasses import dataclass
from enum import StrEnum
from typing import Literal

from exercises.tape import SoundMode
from exercises.worktop.practical_shot import EarlierEdit, WantedShot
from exercises.worktop.practical_tape import PracticalTape

MASTER = "Edit master"
BLACK = "black"  # what a take shows that is nothing but black


class Way(StrEnum):
    """How much of a practical is shown before the learner's hands are on it."""

    WATCH = "watch"
    FINISH = "finish"
    ALONE = "alone"


@dataclass(frozen=True, slots=True, kw_only=True)
class MasterPass:
    """Seconds `start` to `end` of the master, recorded in one go."""

    start: int
    end: int
    what: str


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptStretch:
    """Seconds `start` to `end` of a track that must stay as they were."""

    track: Literal["picture", "sound", "control"]
    start: int
    end: int


@dataclass(frozen=True, slots=True, kw_only=True)
class KnobsLeft:
    """How whoever was at the bench before left it; controls in positions from the middle."""

    tracking: int = 0
    skew: int = 0
    recorder_tracking: int = 0
    picture_gain: int | None = None
    sound_mode: SoundMode = SoundMode.BY_HAND
    sound_gain: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Practical:
    """`slug` and `number` come from the file's name.

    `minutes` is the bench time there is on a bench whose pre-roll is usual. `unaided`: the tape
    map of the master stays hidden until the debrief. `tolerance` is in frames.
    """

    slug: str
    number: int
    title: str
    purpose: str
    brief: str
    lesson: str
    minutes: int
    length: int
    tapes: tuple[PracticalTape, ...]
    shots: tuple[WantedShot, ...]
    passes: tuple[MasterPass, ...] = ()
    earlier: tuple[EarlierEdit, ...] = ()
    kept: tuple[KeptStretch, ...] = ()
    left: KnobsLeft = KnobsLeft()
    tolerance: int = 5
    unaided: bool = False
    ways: tuple[Way, ...] = (Way.ALONE,)

    @property
    def paragraphs(self) -> list[str]:
        """The brief, each paragraph on one line."""
        return [" ".join(each.split()) for each in self.brief.split("\n\n")]
