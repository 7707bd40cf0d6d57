"""The tone beside bars: whoever copies from a tape later sets every level by it."""

from exercises.worktop.debrief.made import EditMade
from exercises.worktop.debrief.wording import tracks_of
from exercises.worktop.meters import levels_made, volume

TRUE = 10  # 0.1 dB that a tone may lie off line-up (common practice)
BARS = "bars-"  # what every pattern of bars is called by: all of them have tone


def tone_off(made: EditMade) -> int:
    """0.1 dB over line-up that an edit laid tone, where that is too far off; else 0."""
    take = made.tape.take_at(made.edit.in_)
    if take is None or not take.shows.startswith(BARS) or "sound" not in tracks_of(made.edit):
        return 0
    found = levels_made(made.step.before.with_player(at=made.edit.in_))
    return found[1] if found and abs(found[1]) > TRUE else 0


def tone_in_words(made: EditMade) -> str:
    """`tone 7 dB under line-up`."""
    return f"tone {volume(tone_off(made)).removesuffix(' 0')} line-up"
