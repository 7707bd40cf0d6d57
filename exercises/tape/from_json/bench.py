from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from exercises.tape.bench import Bench
from exercises.tape.from_json.bounds import GRADES, LEVEL, SNR, WHITE, NumberBounds
from exercises.tape.from_json.document_value import LIMIT, DocumentValue
from exercises.tape.gain_control import AutomaticGain, Limiter
from exercises.tape.limits import Limits
from exercises.tape.rate import Rate

FRAMES = NumberBounds(0, LIMIT)
MILLISECONDS = NumberBounds(1, 60_000)

BENCH = {"lock": FRAMES, "relock": FRAMES, "erase_gap": FRAMES, "snr": SNR}
PARTS = ("limiter", "automatic_gain", "limits")
LIMITER = {"threshold": LEVEL, "ratio": NumberBounds(1, 100)}
AUTOMATIC_GAIN = {
    "target": LEVEL,
    "most": NumberBounds(0, 600),
    "attack": MILLISECONDS,
    "release": MILLISECONDS,
}
LIMITS = {
    "flash_frames": FRAMES,
    "clipped_word": FRAMES,
    "stray_breath": FRAMES,
    "picture_step": WHITE,
    "sound_step": NumberBounds(0, 600),
    "flat_picture": WHITE,
    "clipped_picture": WHITE,
    "weak_sound": LEVEL,
    "distorted_sound": LEVEL,
    "limiting": NumberBounds(0, 600),
    "noise_floor": LEVEL,
    "envelope_loss": NumberBounds(0, 400),
    "skew": NumberBounds(0, 200),
    "recorder_tracking": NumberBounds(0, 100),
    "recorders": NumberBounds(1, 2),
    "grade": GRADES,
    "sound_early": FRAMES,
    "sound_late": FRAMES,
    "sound_early_most": FRAMES,
    "sound_late_most": FRAMES,
}
# Limits of which the first must not be above the second.
ORDERED = (
    ("flat_picture", "clipped_picture"),
    ("weak_sound", "distorted_sound"),
    ("sound_early", "sound_early_most"),
    ("sound_late", "sound_late_most"),
)


def read_bench(given: DocumentValue | None, rate: Rate) -> Bench:
    bench = Bench.default(rate)
    if given is None:
        return bench
    fields = given.known_fields((), (*BENCH, "drop_frame", *PARTS))
    figures: dict[str, Any] = {
        key: BENCH[key].read(field) for key, field in fields.items() if key in BENCH
    }
    return replace(
        bench,
        **figures,
        limiter=Limiter(**_figures(fields.get("limiter"), LIMITER)),
        automatic_gain=AutomaticGain(**_figures(fields.get("automatic_gain"), AUTOMATIC_GAIN)),
        limits=_limits(fields.get("limits")),
        drop_frame="drop_frame" in fields and _drops(fields["drop_frame"], rate),
    )


def _drops(given: DocumentValue, rate: Rate) -> bool:
    drops = given.truth()
    if drops and rate is not Rate.R29_97:
        given.refuse(f"must be false: there is no drop-frame code at {rate.label}")
    return drops


def _limits(given: DocumentValue | None) -> Limits:
    limits = Limits(**_figures(given, LIMITS))
    for lower, upper in ORDERED:
        least, most = getattr(limits, lower), getattr(limits, upper)
        if given is not None and least > most:
            given.refuse(f"{lower} ({least}) must not be above {upper} ({most})")
    return limits


def _figures(given: DocumentValue | None, known: Mapping[str, NumberBounds]) -> dict[str, int]:
    if given is None:
        return {}
    return {key: known[key].read(field) for key, field in given.known_fields((), known).items()}
