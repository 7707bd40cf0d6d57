from dataclasses import dataclass
from typing import Literal

from exercises.tape.errors import EditRefused
from exercises.tape.history import PLAINLY, History
from exercises.tape.runs import Run
from exercises.tape.track import PULSES, Laid, Pulses, Track

TrackName = Literal["picture", "sound", "control"]
Side = Literal["picture", "sound"]
SIDES: tuple[Side, Side] = ("picture", "sound")


@dataclass(frozen=True, slots=True)
class Tape:
    """Three tracks over one time axis, in whole frames: a value.

    An edit returns a new tape and leaves the old one usable, so that "what would the
    other mode have done?" is a second call.
    """

    length: int
    control: Track[Pulses]
    picture: Track[Laid]
    sound: Track[Laid]

    @classmethod
    def blank(cls, length: int) -> "Tape":
        return cls(length, Track(), Track(), Track())

    def with_pass(
        self, start: int, end: int, what: str, generation: int = 1, *, made: History = PLAINLY
    ) -> "Tape":
        """This tape with an uninterrupted recording of ``what``, from its frame 0.

        Its pulses are in phase inside it and begin a phase of their own, also where it
        meets another pass. Its generation is as given: nothing was copied here.
        """
        if not 0 <= start < end <= self.length:
            raise EditRefused(f"A pass from {start} to {end} does not fit a tape of {self.length}.")
        laid = [Run(start, end, Laid(what, 0, generation, True, made))]
        return Tape(
            self.length,
            self.control.over(start, end, [Run(start, end, PULSES)], cause=None),
            self.picture.over(start, end, laid, cause=None),
            self.sound.over(start, end, laid, cause=None),
        )

    def on(self, side: Side) -> Track[Laid]:
        """One of the two tracks that are seen and heard."""
        return self.picture if side == "picture" else self.sound

    def run_up(self, frame: int) -> int:
        """Frames immediately before ``frame`` whose pulses are in phase, up to it."""
        run = self.control.at(frame - 1)
        return 0 if run is None else frame - run.start
