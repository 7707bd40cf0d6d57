"""Pictures for afterwards: as it was, without the fault, and with the fault that was chosen."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from exercises.drills.kinds.spot_by_eye.faults import PictureStretch, Seen
from exercises.drills.kinds.spot_by_eye.form import Showing
from exercises.drills.media.described import picture_in_words
from exercises.drills.media.medium import SMALL, Picture, Still
from exercises.drills.media.seen import Screen

WELL: Mapping[str, Any] = {"snr": 43.0, "copies": 2}

# What each fault looks like, plainly; a jump or a flash is no single picture.
EXAMPLES: Mapping[str, Mapping[str, Any]] = {
    Seen.NOISE_BAND: {"tracking": 64.0},
    Seen.BENT: {"skew": 6.0},
    Seen.FLAT: {"source": 58.0},
    Seen.CLIPPED: {"gain": 3.5},
    Seen.GENERATIONS: {"snr": 29.0, "copies": 6},
    Seen.ROLL: {"settling": 0.35},
    Seen.SNOW: {"blank": True},
    Seen.WORN: {"dropouts": 9.0},
}


def still(title: str, picture: Picture) -> Still:
    return Still(title=title, words=(picture_in_words(picture),), picture=picture, size=SMALL)


def well(picture: Picture) -> Picture:
    """The same frame as a well-made copy shows it."""
    return replace(picture, look={"lines": picture.look["lines"], **WELL})


def faulty_frames(found: list[PictureStretch], showing: Showing) -> tuple[int, ...]:
    """The frame to look at again; at a jump, both sides of it."""
    first = found[0]
    if first.seen is Seen.JUMP:
        return showing.cut - 1, showing.cut
    return tuple(n for n in showing.frames if first.start <= n < first.end)[:1]


def answered(screen: Screen, found: list[PictureStretch], showing: Showing) -> list[Still]:
    """The frames as they are, then the last of them as it was meant."""
    frames = faulty_frames(found, showing) if found else showing.frames[:1]
    names = ("Before the cut", "After the cut") if len(frames) > 1 else ("As it is",)
    shown = [still(name, screen.at(frame)) for name, frame in zip(names, frames, strict=True)]
    if not found:
        return shown
    before = screen.at(frames[0])
    clean = well(_meant(screen, frames[-1], found[0]))
    if found[0].seen is Seen.JUMP:
        kept = {name: before.look[name] for name in ("source", "gain") if name in before.look}
        clean = replace(clean, look={**clean.look, **kept})
    return [*shown, still("Without the fault", clean)]


def _meant(screen: Screen, frame: int, fault: PictureStretch) -> Picture:
    """What was to be seen there: a flash is of another shot, and snow is of none."""
    if fault.seen is Seen.FLASH:
        return screen.at(fault.end)
    if fault.seen is not Seen.SNOW:
        return screen.at(frame)
    frames = range(fault.start - 1, -1, -1)
    return next(each for each in map(screen.at, frames) if not each.look.get("blank"))


def example(fault: str, picture: Picture) -> Still:
    """The same frame with another fault."""
    clean = well(picture)
    spoilt = replace(clean, look={**clean.look, **EXAMPLES[fault]})
    return still("What was chosen looks like this", spoilt)
