"""What a monitor shows of a tape, frame by frame, as pictures that a question may show."""

from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any

from exercises.drills.media.medium import Picture
from exercises.signal.picture import Look
from exercises.signal.picture.seeing import Seeing
from exercises.tape import Bench, Tape

BLACK = "black"


@dataclass(frozen=True, slots=True)
class Footage:
    """What a source tape shows: a scene, whose frame 0 is at `start` of the tape.

    `dropouts`: how many the tape itself has in a frame, on average.
    """

    scene: str
    start: int = 0
    dropouts: float = 0.0


class Screen:
    """A tape in a well-adjusted player, seen with the edges of the picture in view.

    `footage` has what each of its sources shows.
    """

    def __init__(self, tape: Tape, bench: Bench, footage: Mapping[str, Footage]) -> None:
        self.tape = tape
        self.footage = footage
        self.seeing = Seeing(tape, bench)

    def at(self, frame: int) -> Picture:
        seen = self.seeing.at(frame)
        shown = self.footage.get(seen.source or BLACK, Footage(BLACK))
        number = max(0, seen.frame - shown.start) if seen.source else frame
        under = fields_of(seen.look)
        if shown.dropouts:
            under["dropouts"] = shown.dropouts
        return Picture(scene=shown.scene, frame=number, look=under, display="underscan")


def fields_of(look: Look) -> dict[str, Any]:
    """What differs from a plain look, as JSON has it."""
    told = {
        each.name: getattr(look, each.name)
        for each in fields(Look)
        if getattr(look, each.name) != each.default
    }
    rounded = {name: round(value, 3) for name, value in told.items() if isinstance(value, float)}
    return {**told, **rounded, "lines": look.lines.total}
