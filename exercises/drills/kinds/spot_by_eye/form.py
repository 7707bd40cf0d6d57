"""How a film is shown: one picture, one on either side of the cut, or all across it."""

from dataclasses import dataclass
from enum import StrEnum

from exercises.drills.kinds.spot_by_eye.faults import Where
from exercises.drills.media.described import motion, picture_in_words
from exercises.drills.media.medium import Medium, Motion, Still
from exercises.drills.media.seen import Screen
from exercises.drills.setting.draw import Draw

AROUND = 14  # frames shown in motion on either side of the cut


class Form(StrEnum):
    STILL = "still"
    PAIR = "pair"
    MOTION = "motion"


@dataclass(frozen=True, slots=True)
class Showing:
    """`frames` of the edit master that are shown, in order, around its `cut`."""

    form: Form
    frames: tuple[int, ...]
    cut: int

    @property
    def start(self) -> int:
        return self.frames[0]

    @property
    def end(self) -> int:
        return self.frames[-1] + 1

    def media(self, screen: Screen) -> list[Medium]:
        pictures = tuple(screen.at(frame) for frame in self.frames)
        if self.form is Form.MOTION:
            rate = float(screen.seeing.bench.rate.fraction)
            moving = Motion(
                title="The pictures around the cut, one after another",
                words=motion(pictures),
                pictures=pictures,
                rate=round(rate, 2),
            )
            return [moving]
        titles = ("Before the cut", "After the cut") if self.form is Form.PAIR else ("The picture",)
        return [
            Still(title=title, words=(picture_in_words(picture),), picture=picture)
            for title, picture in zip(titles, pictures, strict=True)
        ]


def showing(form: Form, draw: Draw, cut: int, place: Where | None = None) -> Showing:
    """`place` is the side of the cut that a still is of."""
    if form is Form.MOTION:
        return Showing(form, tuple(range(cut - AROUND, cut + AROUND)), cut)
    after, before = cut + draw.whole(2, 8), cut - draw.whole(4, 12)
    if form is Form.PAIR:
        return Showing(form, (before, after), cut)
    return Showing(form, (before if place is Where.BEFORE else after,), cut)
