from dataclasses import dataclass
from enum import StrEnum
from typing import Self

from exercises.drills.asks import Json
from exercises.tape import SIDES, Assemble, Edit, Insert, Side, Source


class Mode(StrEnum):
    """The ways of recording that a two-machine bench has."""

    ASSEMBLE = "assemble"
    INSERT_PICTURE = "insert-picture"
    INSERT_SOUND = "insert-sound"
    INSERT_BOTH = "insert-both"

    @property
    def tracks(self) -> tuple[Side, ...]:
        """Which of picture and sound it records."""
        return {"insert-picture": SIDES[:1], "insert-sound": SIDES[1:]}.get(self, SIDES)

    @property
    def words(self) -> str:
        return {
            "assemble": "Assemble",
            "insert-picture": "Insert picture",
            "insert-sound": "Insert sound",
            "insert-both": "Insert picture and sound",
        }[self]


# From the least work to the most; assemble lays everything from there on again.
BY_WORK = (Mode.INSERT_PICTURE, Mode.INSERT_SOUND, Mode.INSERT_BOTH, Mode.ASSEMBLE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """`[in_, out)` of a source tape, wanted on some tracks of the master from `at` on.

    How it is recorded is left open: `edit` is the attempt in one mode.
    """

    source: Source
    in_: int
    out: int
    at: int
    tracks: tuple[Side, ...]

    @property
    def end(self) -> int:
        """The first frame of the master beyond it."""
        return self.at + self.out - self.in_

    def edit(self, mode: Mode) -> Edit:
        if mode is Mode.ASSEMBLE:
            return Assemble(self.source, self.in_, self.out, self.at)
        picture, sound = (track in mode.tracks for track in SIDES)
        return Insert(self.source, self.in_, self.out, self.at, picture=picture, sound=sound)

    def as_json(self) -> Json:
        place = {"source": self.source.name, "in": self.in_, "out": self.out, "at": self.at}
        return {**place, "tracks": list(self.tracks)}

    @classmethod
    def from_json(cls, stored: Json, source: Source) -> Self:
        return cls(
            source=source,
            in_=stored["in"],
            out=stored["out"],
            at=stored["at"],
            tracks=tuple(stored["tracks"]),
        )
