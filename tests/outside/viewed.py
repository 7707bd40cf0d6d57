"""What a viewer sees when a tape is played: pictures, one after another, as the site draws them."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from exercises.signal.arrays import STANDARD, Picture, Size
from exercises.signal.displays import DISPLAYS
from exercises.signal.footage import frame as footage_frame
from exercises.signal.picture.seeing import Seeing, Seen
from exercises.tape import Bench, Tape


@dataclass(frozen=True, slots=True)
class Filmed:
    """What a source shows from one of its frames on.

    start     frame of the source; it shows frame ``first`` of the footage
    """

    start: int
    footage: str
    first: int = 0

    def picture(self, frame: int, size: Size) -> Picture:
        return footage_frame(self.footage, max(0, frame - self.start + self.first), size)


@dataclass(frozen=True, slots=True)
class Viewing:
    """A tape on its bench. ``reels`` has, by source, what was filmed, in order; a source
    that is not there is black. One picture is in memory at a time.
    """

    tape: Tape
    bench: Bench
    reels: Mapping[str, Sequence[Filmed]]

    def pictures(
        self, start: int, end: int, *, size: Size = STANDARD, display: str = "monitor"
    ) -> Iterator[Picture]:
        """``[start, end)`` of the tape as a display shows it."""
        if not 0 <= start < end <= self.tape.length:
            raise ValueError(f"Frames {start} to {end} are not on the tape.")
        seeing = Seeing(self.tape, self.bench)
        for at in range(start, end):
            seen = seeing.at(at)
            yield DISPLAYS[display](self._clean(seen, size), seen.look, at)

    def _clean(self, seen: Seen, size: Size) -> Picture:
        reel = self.reels.get(seen.source or "", ())
        filmed = [each for each in reel if each.start <= seen.frame]
        return (filmed[-1] if filmed else BLACK).picture(seen.frame, size)


BLACK = Filmed(0, "black")
