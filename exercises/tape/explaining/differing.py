"""What differs from a brief, in words."""

from exercises.tape.bench import Bench
from exercises.tape.judging.brief import Brief, Wanted
from exercises.tape.judging.difference import Difference, DifferenceKind
from exercises.tape.timecode import label
from exercises.tape.wording import lasting

IT_IS = {
    "picture": ("picture", "is", "was"),
    "sound": ("sound", "is", "was"),
    "control": ("pulses", "are", "were"),
}


def differing(each: Difference, brief: Brief, bench: Bench) -> str:
    """What is wrong, in a sentence; where it is wrong is the difference's own to say.

    >>> from exercises.tape.rate import Rate
    >>> bench = Bench.default(Rate.R25)
    >>> differing(Difference(DifferenceKind.SOUND_LOST, "sound", 0, 50), Brief(), bench)
    'The sound that was there is gone.'
    """
    it, is_, was = IT_IS[each.track]
    match each.kind:
        case DifferenceKind.EARLY | DifferenceKind.LATE:
            return f"The {it} lies {lasting(each.by or 0, bench.rate)} too {each.kind.value}."
        case DifferenceKind.MISSING:
            return f"The {it} {is_} missing; {_wanted(each, brief, bench)}."
        case DifferenceKind.WRONG_SHOT | DifferenceKind.WRONG_SOUND:
            return f"Another {it} lies there; {_wanted(each, brief, bench)}."
        case DifferenceKind.TOUCHED:
            return f"The {it} that had to stay {was} recorded over."
        case DifferenceKind.EXTRA:
            return f"There {is_} {it} where none {is_} wanted."
        case DifferenceKind.GENERATION:
            many = "generation" if each.by == 1 else "generations"
            return f"The {it} {is_} {each.by} {many} too many."
    return f"The {it} that {was} there {is_} gone."


def _wanted(each: Difference, brief: Brief, bench: Bench) -> str:
    shot: Wanted | None = None
    if each.shot is not None and each.track != "control":
        shot = brief.on(each.track)[each.shot]
    if shot is None:
        return "it had to stay"
    at = label(each.start - shot.shift, bench.rate, bench.drop_frame)
    return f"{shot.source} is wanted there, from {at} on"
