"""What a practical is: the tapes on the shelf, the edit master, and what it has to become.

Everything is told as an author tells it: in whole seconds and, where a machine has to lock, in
percent of the run-up that locks it. `set_up.py` lays it out in frames at somebody's own bench.
"""

from dataclasses import dataclass
from enum import StrEnum
from typing import Literal

from exercises.tape import SoundMode

MASTER = "Edit master"
BLACK = "black"  # the cassette that black is recorded from; the tape model knows it by this name

TrackChoice = Literal["both", "picture", "sound"]


class Way(StrEnum):
    """How much of a practical is shown before the learner's hands are on it."""

    WATCH = "watch"
    FINISH = "finish"
    ALONE = "alone"


@dataclass(frozen=True, slots=True, kw_only=True)
class PracticalTake:
    """One uninterrupted recording on a source tape.

    shows   what is seen: a scene of the film or a test pattern (`signal.footage`)
    log     what the shot log says of it
    before  seconds of blank tape before it
    run_up  what the camera ran before the action, in percent of what locks a machine
    lasts   seconds of the action
    lines   what is said, by the names of the recorded lines
    """

    name: str
    shows: str
    log: str
    before: int
    run_up: int
    lasts: int
    lines: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class PracticalTape:
    """A source tape and the machine it was recorded on.

    tracking  where the player's control follows its tracks, in percent of a track off the middle
    skew      where it is straight, in 0.1 µs
    reel      by how much `tracking` moves along the reel, in percent of a track in ten minutes
    signal    what the tracking meter shows at its peak, in hundredths of its scale
    white     IRE of its white
    sound     level of its speech, in 0.1 dB over line-up
    """

    name: str
    takes: tuple[PracticalTake, ...]
    tracking: int = 0
    skew: int = 0
    reel: int = 0
    signal: int = 80
    white: int = 100
    sound: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class WantedShot:
    """A shot of the finished master.

    start  seconds into the action of the take; with `line`, that line of the take is wanted
    at     seconds of the master; None: right after the shot before it on that track
    """

    take: str
    track: TrackChoice = "both"
    start: int = 0
    lasts: int = 0
    line: int | None = None
    at: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierEdit:
    """An edit that was made before the learner sat down."""

    shot: WantedShot
    mode: Literal["assemble", "insert"]
    tracking: int = 0
    gain: int = 0


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
    """`slug` and `number` come from the file's name. `minutes` is the bench time there is.

    `unaided`: the tape map of the master stays hidden until the debrief. `tolerance` is in frames.
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
