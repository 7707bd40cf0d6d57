"""Faults in words, from their measurements."""

from exercises.tape.faults.fault import Fault, FaultKind, Unit

# What a mark on a map is labelled.
LABELS = {
    FaultKind.FLASH_FRAMES: "flash frames",
    FaultKind.CLIPPED_WORD: "clipped word",
    FaultKind.STRAY_BREATH: "stray breath",
    FaultKind.PICTURE_LEVEL_JUMP: "picture jumps",
    FaultKind.SOUND_LEVEL_JUMP: "sound jumps",
    FaultKind.FLAT_PICTURE: "flat picture",
    FaultKind.CLIPPED_PICTURE: "clipped picture",
    FaultKind.WEAK_SOUND: "weak sound",
    FaultKind.DISTORTED_SOUND: "distorted sound",
    FaultKind.PRESSED_SOUND: "pressed sound",
    FaultKind.NOISY_PAUSES: "noisy pause",
    FaultKind.NOISE_BAND: "noise band",
    FaultKind.BENT_VERTICALS: "bent verticals",
    FaultKind.MIXED_RECORDERS: "mixed recorders",
    FaultKind.RECORDER_OFF_POSITION: "recorder off position",
    FaultKind.TOO_MANY_GENERATIONS: "too many generations",
    FaultKind.SOUND_OUT_OF_STEP: "out of step",
}

# What is seen or heard, and why; `value` and `limit` come with their unit.
SENTENCES = {
    FaultKind.FLASH_FRAMES: "{value} of something else between two shots",
    FaultKind.CLIPPED_WORD: "an edit point inside a word cuts off {value} of it",
    FaultKind.STRAY_BREATH: "{value} of a breath left at the edit point",
    FaultKind.PICTURE_LEVEL_JUMP: "the white jumps by {value} at the cut (up to {limit} pass)",
    FaultKind.SOUND_LEVEL_JUMP: "the sound jumps by {value} at the cut (up to {limit} pass)",
    FaultKind.FLAT_PICTURE: "flat picture: the white is only at {value} "
    "(from {limit} on it passes)",
    FaultKind.CLIPPED_PICTURE: "clipped picture: the white is at {value} (up to {limit} passes)",
    FaultKind.WEAK_SOUND: "weak sound: {value} (from {limit} on it passes)",
    FaultKind.DISTORTED_SOUND: "distorted sound: {value} (up to {limit} passes)",
    FaultKind.PRESSED_SOUND: "pressed sound: the limiter takes {value} off the speech "
    "(up to {limit} passes)",
    FaultKind.NOISY_PAUSES: "automatic gain lifts the pause to {value} (up to {limit} passes)",
    FaultKind.NOISE_BAND: "noise band: bad tracking let the heads’ signal fall by {value} "
    "in the copy",
    FaultKind.BENT_VERTICALS: "bent verticals: skew made a step of {value} in the copy",
    FaultKind.MIXED_RECORDERS: "this picture and the one before it come from two recorders",
    FaultKind.RECORDER_OFF_POSITION: "the recorder’s tracking was {value} off its fixed position",
    FaultKind.TOO_MANY_GENERATIONS: "too many generations: signal-to-noise is {value}, not {limit}",
    FaultKind.SOUND_OUT_OF_STEP: "the sound comes {value} its picture",
}

LEVELS = {FaultKind.WEAK_SOUND, FaultKind.DISTORTED_SOUND, FaultKind.NOISY_PAUSES}


def label(fault: Fault) -> str:
    return LABELS[fault.kind]


def sentence(fault: Fault) -> str:
    """What is wrong, as the end of a sentence that began with the place."""
    value, unit, limit = fault.measured
    return SENTENCES[fault.kind].format(
        value=_told(fault.kind, value, unit), limit=_told(fault.kind, limit, unit)
    )


def _told(kind: FaultKind, value: int, unit: Unit) -> str:
    """A measurement as it is spoken of: tenths as wholes, a sign as a word."""
    told = amount(abs(value), unit)
    if kind in LEVELS:
        return f"{told} {'under' if value < 0 else 'over'} line-up" if value else "line-up level"
    if kind is FaultKind.SOUND_OUT_OF_STEP:
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
