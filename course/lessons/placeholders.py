"""The figures of a bench in a lesson's text: `{bench:pre-roll}` becomes “5 seconds”.

A lesson is read once, with its placeholders; `filled` gives the lesson as a bench has it.
"""

import re
from collections.abc import Callable
from dataclasses import fields, is_dataclass, replace
from html import escape
from typing import Any, TypeVar, cast

from course.lessons.problems import LessonProblem
from exercises.drills.setting.bench_figures import BenchFigures
from exercises.drills.setting.phrases import length, listed
from exercises.drills.setting.settings import Meter

PLACEHOLDER = re.compile(r"\{bench:(?P<name>[^{}]*)\}")
USUAL = BenchFigures.usual()
METERS = {
    Meter.WAVEFORM: "a waveform monitor",
    Meter.PICTURE_NEEDLE: "a needle for the picture level",
    Meter.VU: "a VU meter",
    Meter.TRACKING: "a tracking meter",
}
Value = TypeVar("Value")


def _frames(figures: BenchFigures, frames: int) -> str:
    return length(frames, figures.settings.bench.rate)


def _meters(figures: BenchFigures) -> str:
    there = figures.settings.meters
    return listed([name for meter, name in METERS.items() if meter in there] or ["no meters"])


def _time_code(figures: BenchFigures) -> str:
    if figures.settings.bench.rate.label == "25":
        return "25-frame time code"
    return "drop-frame time code" if figures.settings.drop_frame else "non-drop-frame time code"


WORDS: dict[str, Callable[[BenchFigures], str]] = {
    "name": lambda figures: figures.name or "your bench",
    "lines": lambda figures: "625" if figures.settings.bench.rate.label == "25" else "525",
    "frames": lambda figures: figures.settings.bench.rate.label,
    "time-code": _time_code,
    "pre-roll": lambda figures: _frames(figures, figures.settings.pre_roll),
    "source-run-up": lambda figures: _frames(figures, figures.settings.source_run_up),
    "lock": lambda figures: _frames(figures, figures.settings.bench.lock),
    "relock": lambda figures: _frames(figures, figures.settings.bench.relock),
    "erase-gap": lambda figures: _frames(figures, figures.settings.bench.erase_gap),
    "meters": _meters,
    "who-to-ask": lambda figures: figures.who_to_ask or "your instructor",
}


def fill(text: str, figures: BenchFigures = USUAL) -> str:
    return PLACEHOLDER.sub(lambda found: WORDS[found["name"]](figures), text)


def fill_html(html: str, figures: BenchFigures) -> str:
    """The same within HTML: what an instructor has typed stays text."""
    return PLACEHOLDER.sub(lambda found: escape(WORDS[found["name"]](figures)), html)


def filled(value: Value, figures: BenchFigures) -> Value:
    """A lesson, or any part of one, with the bench's figures in every text."""
    result: Any = value
    if isinstance(value, str):
        result = fill(value, figures)
    elif isinstance(value, tuple | list):
        make = getattr(type(value), "_make", type(value))  # of a named tuple, or of any other
        result = make(filled(each, figures) for each in value)
    elif isinstance(value, dict):
        result = {key: filled(each, figures) for key, each in value.items()}
    elif is_dataclass(value) and type(value).__module__.startswith("course.lessons."):
        result = replace(value, **_filled_fields(value, figures))  # type: ignore[type-var]
    return cast(Value, result)


def _filled_fields(value: Any, figures: BenchFigures) -> dict[str, Any]:
    given = {field.name: getattr(value, field.name) for field in fields(value) if field.init}
    return {
        name: fill_html(each, figures) if name == "html" else filled(each, figures)
        for name, each in given.items()
    }


def refuse_unknown(text: str) -> bool:
    """Whether a file has placeholders; LessonProblem for one that stands for nothing."""
    for line, words in enumerate(text.split("\n"), start=1):
        for found in PLACEHOLDER.finditer(words):
            if found["name"] not in WORDS:
                known = ", ".join(WORDS)
                raise LessonProblem(line, f"There is no figure “{found[0]}”; there are {known}.")
    return PLACEHOLDER.search(text) is not None
