"""What the recorder's meters show of what the player plays into it."""

from exercises.tape import SoundLevel, SoundMode
from exercises.tape.faults.meter import sound_of, white_of
from exercises.tape.history import Carried, History
from exercises.tape.levels import Levels
from exercises.tape.machines import Machines
from exercises.worktop.practical import BLACK
from exercises.worktop.worktop import Worktop


def levels_made(top: Worktop) -> tuple[int, int] | None:
    """IRE of the white, and the sound in 0.1 dB over line-up, as the recorder would lay them."""
    tape = top.source
    take = tape.take_at(top.player.at) if tape else None
    if tape is None or take is None or take.shows == BLACK:
        return None
    levels = Levels(white=take.white, sound=take.sound)
    recorder = top.recorder
    sound = SoundLevel(SoundMode(recorder.sound_mode), recorder.sound_gain)
    machines = Machines(picture_gain=recorder.picture_gain, sound=sound)
    made = History(Carried(levels), machines)
    return round(white_of(made, levels)), round(sound_of(made, levels, top.set_up.bench))


def meters_in_words(top: Worktop, start: int, end: int) -> str:
    """What they showed while the player ran from `start` to `end`."""
    tape = top.source
    takes = [take for take in tape.takes if take.start < end and take.end > start] if tape else []
    if not takes:
        return "There was no recording: the meters stayed down."
    levels = levels_made(top.with_player(at=max(takes[-1].start, start)))
    if levels is None:
        return "It was black: the meters stayed down."
    white, sound = levels
    return f"The recorder’s meters showed a white of {white} IRE, and the sound {volume(sound)}."


def volume(sound: int) -> str:
    """A sound level in words.

    >>> volume(0), volume(-45), volume(10)
    ('at 0', '4.5 dB under 0', '1 dB over 0')
    """
    side = "under" if sound < 0 else "over"
    return f"{abs(sound) / 10:g} dB {side} 0" if sound else "at 0"
