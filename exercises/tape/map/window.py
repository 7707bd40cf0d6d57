"""The window that a tape map looks through."""

from dataclasses import dataclass
from typing import Any

from exercises.tape.map.parts import Mark
from exercises.tape.rate import Rate
from exercises.tape.timecode import label


@dataclass(frozen=True, slots=True)
class Window:
    start: int
    end: int
    rate: Rate
    drop: bool = False

    def percent(self, frames: int) -> float:
        return round(100 * frames / (self.end - self.start), 3)

    def code(self, frame: int) -> str:
        """Time code of a frame; the clock begins again after a day."""
        return label(frame % self.rate.day(drop=self.drop), self.rate, self.drop)

    def mark(self, frame: int, name: str) -> Mark:
        left = self.percent(frame - self.start)
        return Mark(left=left, frame=frame, at=self.code(frame), name=name)

    def shows(self, start: int, end: int) -> bool:
        return start < self.end and end > self.start

    def place(self, start: int, end: int) -> dict[str, Any]:
        """Where a range lies in the window, as the parts of a map say it."""
        start, end = max(start, self.start), min(end, self.end)
        return {
            "left": self.percent(start - self.start),
            "width": self.percent(end - start),
            "start": start,
            "end": end,
            "starts": self.code(start),
            "ends": self.code(end),
        }
