"""Clips to listen to, and what is heard in them, in words that name no fault."""

from collections.abc import Iterator

from exercises.drills.asks import Json
from exercises.drills.kinds.knobs.control import POSITIONS, place_in_words
from exercises.drills.kinds.knobs.copy import made_so
from exercises.drills.kinds.set_sound_level.outcomes import setting
from exercises.drills.kinds.set_sound_level.takes import Takes
from exercises.drills.media.medium import SoundClip
from exercises.signal.meters.scale import in_words
from exercises.tape import Bench, History, Levels, Machines, SoundLevel, SoundMode
from exercises.tape.faults.meter import sound_of

EVERY = 8  # positions from one that can be listened to, to the next
LISTENED = range(0, POSITIONS, EVERY)
BY_HAND = SoundMode.BY_HAND
ON = {SoundMode.LIMITER: ", with the limiter", SoundMode.AUTOMATIC: ", with automatic gain"}


def clips(takes: Takes, gains: list[int], best: int, other: SoundLevel) -> tuple[SoundClip, ...]:
    """By hand at every position that can be listened to; then the other way, and the best."""
    document = takes.document(marked=False)
    near = [
        clip(takes, document, SoundLevel(BY_HAND, gains[position]), begun(position))
        for position in LISTENED
    ]
    where = "As first asked" + ON.get(other.mode, ", by hand")
    best_level = SoundLevel(BY_HAND, gains[best])
    return (
        *near,
        clip(takes, document, other, where),
        clip(takes, document, best_level, begun(best)),
    )


def begun(position: int) -> str:
    return f"By hand, {place_in_words(position)}"


def number(position: int) -> int:
    """Which clip is nearest to a position."""
    return LISTENED.index(min(LISTENED, key=lambda each: abs(each - position)))


def clip(takes: Takes, document: Json, level: SoundLevel, title: str) -> SoundClip:
    return SoundClip(
        title=title,
        words=tuple(heard(takes, level)),
        session=made_so(document, setting(level.mode, level.gain)),
        sounds=takes.sounds(),
        start=takes.at,
        end=takes.end,
    )


def heard(takes: Takes, level: SoundLevel) -> Iterator[str]:
    """The speech of both takes as it comes off the tape, and the room between the words."""
    bench, levels = takes.scene.bench, takes.levels
    first = SoundLevel(BY_HAND, -levels.first)
    for name, speech, made in (("First", levels.first, first), ("Second", levels.second, level)):
        carried = Levels(sound=speech, room=speech - levels.under)
        off = sound_of(History(machines=Machines(sound=made)), carried, bench)
        edge = rough(off, bench) or pressed(speech + made.gain, made, bench)
        yield f"{name} take: speech reaches {in_words(off)}{edge}; {pauses(carried, made, bench)}."


def rough(level: float, bench: Bench) -> str:
    return ", harsh at its loudest" if level > bench.limits.distorted_sound else ""


def pressed(level: float, made: SoundLevel, bench: Bench) -> str:
    taken = level - bench.limiter.out(level)
    held = made.mode is SoundMode.LIMITER and taken > bench.limits.limiting
    return ", soft words and loud ones alike" if held else ""


def pauses(carried: Levels, level: SoundLevel, bench: Bench) -> str:
    room = carried.room + level.gain
    if level.mode is not SoundMode.AUTOMATIC:
        return f"between words, the room lies {-room / 10:.0f} dB under line-up"
    most = room + bench.automatic_gain.settled(room)
    return f"between words, the room rises towards {-most / 10:.0f} dB under line-up"
