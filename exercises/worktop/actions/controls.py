"""Setting the controls of the two machines."""

from dataclasses import replace

from exercises.drills.kinds.knobs.control import place_in_words
from exercises.drills.kinds.set_tracking.meter import in_words
from exercises.tape import SoundMode
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.done import BenchRefused, Done
from exercises.worktop.worktop import FURTHEST, Worktop

TURN = 2  # seconds to turn a control and look (common practice)
LOUDEST = 200  # 0.1 dB that a level control goes, either way


def tracking(top: Worktop, *, to: int) -> Done:
    turned = replace(turn(top).with_player(tracking=position(to)), tracked=True)
    told = f"The player’s tracking stands {placed(to)}."
    tape = top.source
    if tape and tape.take_at(top.player.at):
        meter = Adjusted(turned.player, tape, top.set_up.bench.rate).meter
        told += f" Its meter shows {in_words(meter)}."
    return Done(turned, told)


def skew(top: Worktop, *, to: int) -> Done:
    told = f"The player’s skew stands {placed(to)}."
    return Done(turn(top).with_player(skew=position(to)), told)


def recorder_tracking(top: Worktop, *, to: int) -> Done:
    where = "at its fixed position, with a click" if to == 0 else placed(to)
    told = f"The recorder’s tracking stands {where}."
    return Done(turn(top).with_recorder(tracking=position(to)), told)


def mode(top: Worktop, *, mode: str, picture: bool = True, sound: bool = True) -> Done:
    if mode not in ("assemble", "insert"):
        raise BenchRefused("This recorder has two modes: assemble and insert.")
    if mode == "insert" and not (picture or sound):
        raise BenchRefused("An insert records picture, sound, or both: choose at least one.")
    tracks = [name for name, on in (("picture", picture), ("sound", sound)) if on]
    told = "assemble" if mode == "assemble" else f"insert, {' and '.join(tracks)}"
    turned = turn(top).with_recorder(mode=mode, picture=picture, sound=sound)
    return Done(turned, f"The recorder is set to {told}.")


def picture_level(top: Worktop, *, gain: int | None) -> Done:
    """`gain` in 0.1 dB; None leaves it to the recorder."""
    told = "automatic" if gain is None else f"by hand, {decibels(level(gain))}"
    return Done(turn(top).with_recorder(picture_gain=gain), f"Picture level is {told}.")


def sound_level(top: Worktop, *, mode: str, gain: int) -> Done:
    if mode not in list(SoundMode):
        raise BenchRefused("Sound level is set by hand, with the limiter, or by automatic gain.")
    turned = turn(top).with_recorder(sound_mode=mode, sound_gain=level(gain))
    named = {"by hand": "by hand", "limiter": "with the limiter", "automatic": "by automatic gain"}
    return Done(turned, f"Sound level is set {named[mode]}, the control at {decibels(gain)}.")


def monitor(top: Worktop, *, shows: str) -> Done:
    if shows not in ("input", "tape"):
        raise BenchRefused("The recorder’s monitor shows its input or its tape.")
    what = "what comes in" if shows == "input" else "what is on its tape"
    return Done(top.with_recorder(shows=shows), f"The recorder’s monitor shows {what}.")


def turn(top: Worktop) -> Worktop:
    return top.spending(TURN * top.set_up.bench.rate.nominal)


def position(to: int) -> int:
    if not -FURTHEST <= to <= FURTHEST:
        raise BenchRefused(f"The control goes {FURTHEST} places to either side.")
    return to


def level(gain: int) -> int:
    if not -LOUDEST <= gain <= LOUDEST:
        raise BenchRefused(f"The control goes {LOUDEST // 10} dB to either side.")
    return gain


def placed(to: int) -> str:
    return place_in_words(to + FURTHEST) if -FURTHEST <= to <= FURTHEST else ""


def decibels(gain: int) -> str:
    return f"{gain / 10:+g} dB" if gain else "0 dB"
