"""What the figures of a bench are called, and how each is said."""

from typing import Any

from course.cohorts.benches import Bench
from exercises.drills.setting.settings import Meter

LABELS = {
    "name": "Name of the bench",
    "line_system": "Lines and frames",
    "drop_frame": "Its time code is drop-frame",
    "pre_roll": "Pre-roll, in seconds",
    "source_run_up": "Run-up when shooting, in seconds",
    "lock": "Time to lock, in frames",
    "relock": "Rolling after a jump, in frames",
    "erase_gap": "Erase gap, in frames",
    "meters": "Meters",
    "who_to_ask": "Who to ask",
    "local_rules": "Rules of your workshop",
}
METERS = {
    Meter.WAVEFORM: "waveform monitor",
    Meter.PICTURE_NEEDLE: "needle for the picture level",
    Meter.VU: "VU meter",
    Meter.TRACKING: "tracking meter",
}


def changed_words(figure: str, before: Any, after: Any) -> str:
    """One change in words: "Erase gap, in frames: 0 instead of 70"."""
    if figure == "local_rules":
        return f"{LABELS[figure]}: {rules_changed(before.splitlines(), after.splitlines())}"
    return f"{LABELS[figure]}: {said(figure, after)} instead of {said(figure, before)}"


def said(figure: str, value: Any) -> str:
    if figure == "meters":
        return ", ".join(METERS[Meter(each)] for each in value) or "none"
    if figure == "line_system":
        return Bench.LineSystem(value).label
    if figure == "drop_frame":
        return "yes" if value else "no"
    if isinstance(value, str):
        return f"“{value}”" if value else "nothing"
    return str(value)


def rules_changed(before: list[str], after: list[str]) -> str:
    """Rule by rule: what is new, and what was taken out."""
    new = [f"new, “{rule}”" for rule in after if rule not in before]
    out = [f"taken out, “{rule}”" for rule in before if rule not in after]
    return "; ".join(new + out) or "in another order"
