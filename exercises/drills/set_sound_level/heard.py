"""Clips to listen to, and what is heard in them, in words that name no fault."""

from collections.abc import Iterator

from exercises.drills.asks import Json
from exercises.drills.knobs.control import POSITIONS, told
from exercises.drills.knobs.copy import made_so
from exercises.drills.media import Clip
from exercises.drills.set_sound_level.modes import MODES, setting
from exercises.drills.set_sound_level.takes import Takes
from exercises.signal.meters.scale import in_words
from exercises.tape import Bench, Levels, Made, Making, SoundLevel, SoundMode
from exercises.tape.faults.meter import sound_of

EVERY = 8  # positions from one that can be listened to, to the next
LISTENED = range(0, POSITIONS, EVERY)


def clips(takes: Takes, gains: list[int], best: int, mode: str) -> tuple[Clip, ...]:
    """Every mode at every position that can be listened to, and at last the best of all."""
    document = takes.document(marked=False)
    return (
        *(
            clip(takes, document, option.value, gains[position], told(position))
            for position in LISTENED
            for option in MODES.options
        ),
        clip(takes, document, mode, gains[best], told(best)),
    )


def number(position: int, mode: str) -> int:
    """Which clip is nearest to a setting."""
    nearest = min(LISTENED, key=lambda each: abs(each - position))
    modes = [option.value for option in MODES.options]
    return LISTENED.index(nearest) * len(modes) + modes.index(mode)


def clip(takes: Takes, document: Json, mode: str, gain: int, where: str) -> Clip:
    return Clip(
        title=f"{MODES.in_words(mode)}, {where}",
        words=tuple(heard(takes, SoundLevel(SoundMode(mode), gain))),
        session=made_so(document, setting(mode, gain)),
        sounds=takes.sounds(),
        start=takes.at,
        end=takes.end,
    )


def heard(takes: Takes, level: SoundLevel) -> Iterator[str]:
    """The speech of both takes as it comes off the tape, and the room between the words."""
    bench, levels = takes.scene.bench, takes.levels
    for name, speech in (("First", levels.first), ("Second", levels.second)):
        carried = Levels(sound=speech, room=levels.room)
        off = sound_of(Made(making=Making(sound=level)), carried, bench)
        speech_told = f"speech reaches {in_words(off)}{edge(off, bench)}"
        yield f"{name} take: {speech_told}; {pauses(carried, level, bench)}."


def edge(level: float, bench: Bench) -> str:
    return ", harsh at its loudest" if level > bench.limits.distorted_sound else ""


def pauses(carried: Levels, level: SoundLevel, bench: Bench) -> str:
    room = carried.room + level.gain
    if level.mode is not SoundMode.AUTOMATIC:
        return f"between words, the room lies {-room / 10:.0f} dB under line-up"
    most = room + bench.automatic_gain.settled(room)
    return f"between words, the room rises towards {-most / 10:.0f} dB under line-up"
