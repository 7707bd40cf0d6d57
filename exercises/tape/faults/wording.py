"""Faults in words, from their measurements."""

from exercises.tape.faults.fault import Fault, Kind, Unit

# What a mark on a map is labelled.
LABELS = {
    Kind.FLASH_FRAMES: "flash frames",
    Kind.CLIPPED_WORD: "clipped word",
    Kind.STRAY_BREATH: "stray breath",
    Kind.PICTURE_LEVEL_JUMP: "picture jumps",
    Kind.SOUND_LEVEL_JUMP: "sound jumps",
    Kind.FLAT_PICTURE: "flat picture",
    Kind.CLIPPED_PICTURE: "clipped picture",
    Kind.WEAK_SOUND: "weak sound",
    Kind.DISTORTED_SOUND: "distorted sound",
    Kind.PRESSED_SOUND: "pressed sound",
    Kind.NOISY_PAUSES: "noisy pause",
    Kind.NOISE_BAND: "noise band",
    Kind.BENT_VERTICALS: "bent verticals",
    Kind.MIXED_RECORDERS: "mixed recorders",
    Kind.RECORDER_OFF_POSITION: "recorder off position",
    Kind.TOO_MANY_GENERATIONS: "too many generations",
    Kind.SOUND_OUT_OF_STEP: "out of step",
}

# What is seen or heard, and why; `value` and `limit` come with their unit.
SENTENCES = {
    Kind.FLASH_FRAMES: "{value} of something else between two shots",
    Kind.CLIPPED_WORD: "an edit point inside a word cuts off {value} of it",
    Kind.STRAY_BREATH: "{value} of a breath left at the edit point",
    Kind.PICTURE_LEVEL_JUMP: "the white jumps by {value} at the cut (up to {limit} pass)",
    Kind.SOUND_LEVEL_JUMP: "the sound jumps by {value} at the cut (up to {limit} pass)",
    Kind.FLAT_PICTURE: "flat picture: the white is only at {value} (from {limit} on it passes)",
    Kind.CLIPPED_PICTURE: "clipped picture: the white is at {value} (up to {limit} passes)",
    Kind.WEAK_SOUND: "weak sound: {value} (from {limit} on it passes)",
    Kind.DISTORTED_SOUND: "distorted sound: {value} (up to {limit} passes)",
    Kind.PRESSED_SOUND: "pressed sound: the limiter takes {value} off the speech "
    "(up to {limit} passes)",
    Kind.NOISY_PAUSES: "automatic gain lifts the pause to {value} (up to {limit} passes)",
    Kind.NOISE_BAND: "noise band: bad tracking let the heads’ signal fall by {value} in the copy",
    Kind.BENT_VERTICALS: "bent verticals: skew made a step of {value} in the copy",
    Kind.MIXED_RECORDERS: "this picture and the one before it come from two recorders",
    Kind.RECORDER_OFF_POSITION: "the recorder’s tracking was {value} off its fixed position",
    Kind.TOO_MANY_GENERATIONS: "too many generations: signal-to-noise is {value}, not {limit}",
    Kind.SOUND_OUT_OF_STEP: "the sound comes {value} its picture",
}

LEVELS = {Kind.WEAK_SOUND, Kind.DISTORTED_SOUND, Kind.NOISY_PAUSES}


def label(fault: Fault) -> str:
    return LABELS[fault.kind]


def sentence(fault: Fault) -> str:
    """What is wrong, as the end of a sentence that began with the place."""
    value, unit, limit = fault.measured
    return SENTENCES[fault.kind].format(
        value=_told(fault.kind, value, unit), limit=_told(fault.kind, limit, unit)
    )


def _told(kind: Kind, value: int, unit: Unit) -> str:
    """A measurement as it is spoken of: tenths as wholes, a sign as a word."""
    told = amount(abs(value), unit)
    if kind in LEVELS:
        return f"{told} {'under' if value < 0 else 'over'} line-up" if value else "line-up level"
    if kind is Kind.SOUND_OUT_OF_STEP:
        return f"{told} {'after' if value < 0 else 'before'}"
    return told


def amount(value: int, unit: Unit) -> str:
    """A number with its unit.

    >>> amount(45, Unit.DECIBEL_TENTHS), amount(1, Unit.FRAMES)
    ('4.5 dB', '1 frame')
    """
    match unit:
        case Unit.DECIBEL_TENTHS | Unit.MICROSECOND_TENTHS:
            return f"{value / 10:g} {unit.removeprefix('0.1 ')}"
        case Unit.FRAMES | Unit.RECORDERS if value == 1:
            return f"1 {unit.removesuffix('s')}"
    return f"{value} {unit}"
