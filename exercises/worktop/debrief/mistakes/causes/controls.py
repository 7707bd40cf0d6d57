"""Edits that were made with a control where it does not belong."""

from collections.abc import Sequence

from exercises.tape import SoundMode
from exercises.worktop.actions.controls import decibels, placed
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.mistakes.finding import Finding
from exercises.worktop.debrief.proceedings import Proceedings
from exercises.worktop.debrief.tone import tone_in_words, tone_off

Parts = Sequence[Finding]

BY_IT = ", and whoever sets levels by it sets them wrong"


def tracking(made: EditMade, parts: Parts, run: Proceedings) -> str:
    player = made.step.before.player
    off = abs(Adjusted(player, made.tape, run.bench.rate).tracking_at(made.edit.in_))
    stood = f"the player’s tracking {placed(player.tracking)}, {off} % of a track off"
    return f"was made with {stood}; {_turned(made, run, 'tracking')}"


def skew(made: EditMade, parts: Parts, run: Proceedings) -> str:
    player = made.step.before.player
    off = abs(Adjusted(player, made.tape, run.bench.rate).skew)
    stood = f"the player’s skew {placed(player.skew)}, {off / 10:g} µs off"
    return f"was made with {stood}; {_turned(made, run, 'skew')}"


def recorder(made: EditMade, parts: Parts, run: Proceedings) -> str:
    stood = f"the recorder’s tracking {placed(made.step.before.recorder.tracking)}"
    fixed = "off its fixed position"
    return f"was made with {stood}, {fixed}; {_turned(made, run, 'recorder-tracking')}"


def picture_level(made: EditMade, parts: Parts, run: Proceedings) -> str:
    gain = made.step.before.recorder.picture_gain
    stood = "left to the recorder" if gain is None else f"by hand at {decibels(gain)}"
    return f"was made with the picture level {stood}; {_turned(made, run, 'picture-level')}"


def sound_level(made: EditMade, parts: Parts, run: Proceedings) -> str:
    recorder = made.step.before.recorder
    way = {
        SoundMode.BY_HAND: "set by hand",
        SoundMode.LIMITER: "with the limiter",
        SoundMode.AUTOMATIC: "by automatic gain",
    }[SoundMode(recorder.sound_mode)]
    stood = f"{way} at {decibels(recorder.sound_gain)}"
    told = f"was made with the sound level {stood}; {_turned(made, run, 'sound-level')}"
    return f"{told}; it laid {tone_in_words(made)}{BY_IT}" if tone_off(made) else told


def _turned(made: EditMade, run: Proceedings, control: str) -> str:
    """When the control was last turned, and for which tape."""
    last = run.turned(made, control)
    if last is None:
        return "you had not turned it"
    tape = last.before.player.tape
    other = tape and tape != made.edit.source.name
    return f"last turned at step {last.number}{f', for {tape}' if other else ''}"
