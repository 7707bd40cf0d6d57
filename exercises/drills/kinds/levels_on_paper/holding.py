"""What comes of a sound by what holds its level: the hand, a limiter, automatic gain."""

from collections.abc import Collection
from dataclasses import dataclass
from enum import StrEnum

from exercises.drills.beliefs import LEVEL_BELIEFS
from exercises.drills.kinds.levels_on_paper.case import Choosing
from exercises.tape import Bench, History, Machines, SoundLevel, SoundMode
from exercises.tape.faults.pauses import NOTICED

LIFTS, EVENS = "limiter-is-agc", "agc-evens-out"
ROOM = -400  # 0.1 dB over line-up, where nobody speaks
PAUSE = 1000  # ms


class Holding(StrEnum):
    ALONE = "alone"
    FOLLOWED = "followed"
    LIMITER = "limiter"
    AUTOMATIC = "automatic"


MODES = {Holding.LIMITER: SoundMode.LIMITER, Holding.AUTOMATIC: SoundMode.AUTOMATIC}
LEGENDS = {
    Holding.ALONE: "Then the control stays where it is, and nothing else is on. What comes of it?",
    Holding.FOLLOWED: "Then the control is raised by hand ahead of each soft sentence, and brought "
    "back after it. What comes of it?",
    Holding.LIMITER: "Then the control stays where it is, and the limiter is on. What comes of it?",
    Holding.AUTOMATIC: "And if automatic gain were on: what would come of it?",
}


class Held(StrEnum):
    STAYS = "stays"
    FOLLOWED = "followed"
    LIFTED = "lifted"
    HELD = "held"
    ROUGH = "rough"


TEXTS = {
    Held.STAYS: "All of it goes on tape as it is, what is soft stays soft",
    Held.FOLLOWED: "The soft sentences come up, and the room stays low",
    Held.LIFTED: "What is soft comes up, and the room with it in every pause",
    Held.HELD: "The sudden sound is held down, and all else stays as it is",
    Held.ROUGH: "The sudden sound turns rough, and all else stays as it is",
}
WHYS = {
    Held.STAYS: "Nothing there goes higher than the loudest words, so nothing is held down; "
    "and neither a control that stays nor a limiter lifts anything.",
    Held.FOLLOWED: "A hand knows which sentence is soft and leaves the pauses as they are. "
    "A few decibels, slowly, are not heard.",
    Held.LIFTED: "Automatic gain hears only how loud it is: in every pause it takes the room "
    "for soft speech and lifts it, so leave it off.",
    Held.HELD: "What comes without warning nobody can turn down in time. The limiter takes "
    "off its peak, and leaves alone all that is softer.",
    Held.ROUGH: "It lies beyond the end of the scale, and nothing holds it down. "
    "What the tape can’t hold is lost.",
}


@dataclass(frozen=True, slots=True)
class Heard:
    """A sound whose loudest words are at line-up; something sudden lies so far over it, in
    0.1 dB, or nothing does.
    """

    sudden: int = 0


def outcome(bench: Bench, heard: Heard, way: Holding, beliefs: Collection[str] = ()) -> Held:
    """What comes of it, by the rules or as a believer expects it."""
    if way is Holding.FOLLOWED:
        return Held.FOLLOWED
    made = History(machines=Machines(sound=SoundLevel(MODES.get(way, SoundMode.BY_HAND))))
    for belief in beliefs:
        if belief in LEVEL_BELIEFS:
            made, bench = LEVEL_BELIEFS[belief].sound(made), LEVEL_BELIEFS[belief].bench(bench)
    mode = made.machines.sound.mode
    if mode is SoundMode.AUTOMATIC:
        lifted = bench.automatic_gain.after(PAUSE, gain=0, level=ROOM)
        return Held.LIFTED if lifted >= NOTICED else Held.FOLLOWED
    held = bench.limiter.out(heard.sudden) if mode is SoundMode.LIMITER else heard.sudden
    if held > bench.limits.distorted_sound:
        return Held.ROUGH
    return Held.HELD if held < heard.sudden else Held.STAYS


def holding(bench: Bench, heard: Heard, way: Holding) -> Choosing:
    found = {Holding.LIMITER: (LIFTS,), Holding.AUTOMATIC: (EVENS,)}
    return Choosing(
        name="held",
        legend=LEGENDS[way],
        texts={what.value: text for what, text in TEXTS.items()},
        right=lambda beliefs: outcome(bench, heard, way, beliefs).value,
        beliefs=found.get(way, ()),
        why=WHYS[outcome(bench, heard, way)],
    )
