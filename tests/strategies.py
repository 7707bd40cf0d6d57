"""What hypothesis draws: session documents, on short tapes with short run-ups.

Everything is small on purpose, so that run-ups are often just long or short enough and
edits often touch, end with or lie inside one another.
"""

from collections.abc import Callable
from itertools import pairwise
from typing import Any

from hypothesis import strategies as st

Document = dict[str, Any]
Draw = Callable[..., Any]

LENGTH = 60


@st.composite
def _ranges(draw: Draw, *, longest: int, most: int) -> list[tuple[int, int]]:
    """Ranges in order, not overlapping, some of them touching."""
    cuts = sorted(draw(st.sets(st.integers(0, longest), max_size=2 * most)))
    return [pair for pair in pairwise(cuts) if draw(st.booleans())]


@st.composite
def benches(draw: Draw) -> Document:
    constants = {"lock": 8, "relock": 4, "erase_gap": 6}
    return {name: draw(st.integers(0, most)) for name, most in constants.items()}


@st.composite
def takes(draw: Draw) -> list[Document]:
    ranges = draw(_ranges(longest=LENGTH, most=4))
    return [
        {"start": start, "end": end, "generation": draw(st.integers(1, 3))} for start, end in ranges
    ]


@st.composite
def masters(draw: Draw) -> Document:
    length = draw(st.integers(1, LENGTH))
    ranges = draw(_ranges(longest=length, most=3))
    passes = [
        {"start": start, "end": end, "what": draw(st.sampled_from(("black", "A")))}
        for start, end in ranges
    ]
    return {"length": length, "recorded": passes}


@st.composite
def edits(draw: Draw, length: int, mode: str | None = None) -> Document:
    frames = draw(st.integers(1, min(length, 20)))
    first = draw(st.integers(0, LENGTH))
    edit = {
        "mode": mode or draw(st.sampled_from(("assemble", "insert"))),
        "source": draw(st.sampled_from(("A", "B"))),
        "in": first,
        "out": first + frames,
        "at": draw(st.integers(0, length - frames)),
    }
    if edit["mode"] == "insert":
        edit["picture"] = draw(st.booleans())
        edit["sound"] = draw(st.booleans()) or not edit["picture"]
    return edit


@st.composite
def documents(draw: Draw, most: int = 8) -> Document:
    master = draw(masters())
    return {
        "rate": draw(st.sampled_from(("29.97", "25"))),
        "bench": draw(benches()),
        "master": master,
        "sources": {name: {"takes": draw(takes())} for name in ("A", "B")},
        "edits": draw(st.lists(edits(master["length"]), max_size=most)),
    }


@st.composite
def carried(draw: Draw, start: int, end: int, generation: int) -> Document:
    """What a take or pass ``[start, end)`` may say that it carries."""
    levels = {
        "white": st.integers(0, 140),
        "sound": st.integers(-300, 100),
        "room": st.integers(-900, -200),
    }
    kinds = ("words", "breaths", "noises", "room_tone")
    known: Document = {
        "levels": st.one_of(st.just("none"), st.fixed_dictionaries({}, optional=levels)),
        "chain": st.lists(st.integers(300, 500), max_size=generation),
        "marks": st.fixed_dictionaries({}, optional={kind: spans(start, end) for kind in kinds}),
    }
    said: Document = draw(st.fixed_dictionaries({}, optional=known))
    return said


@st.composite
def spans(draw: Draw, start: int, end: int) -> list[Document]:
    ranges = draw(_ranges(longest=end - start, most=4))
    return [{"start": start + first, "end": start + last} for first, last in ranges]


def makings() -> st.SearchStrategy[Document]:
    """How an edit may say that it was made."""
    some = st.fixed_dictionaries
    gain = st.integers(-200, 200)
    drift = some(
        {"seed": st.integers(0, 9)},
        optional={
            "tracking": st.integers(0, 100),
            "skew": st.integers(0, 100),
            "reel": st.integers(-100, 100),
        },
    )
    tracking, skew = st.integers(-100, 100), st.integers(-200, 200)
    mode = st.sampled_from(("by hand", "limiter", "automatic"))
    return some(
        {},
        optional={
            "player": some({}, optional={"tracking": tracking, "skew": skew, "drift": drift}),
            "recorder": recorders(),
            "picture_level": st.one_of(st.just("automatic"), some({"gain": gain})),
            "sound_level": some({}, optional={"mode": mode, "gain": gain}),
        },
    )


def recorders() -> st.SearchStrategy[Document]:
    known: Document = {
        "name": st.sampled_from(("recorder 1", "recorder 2")),
        "tracking": st.integers(-100, 100),
        "snr": st.integers(300, 500),
    }
    return st.fixed_dictionaries({}, optional=known)


@st.composite
def made_documents(draw: Draw, most: int = 8) -> Document:
    """Documents that say how their recordings were made."""
    document: Document = draw(documents(most))
    for source in document["sources"].values():
        for take in source["takes"]:
            take |= draw(carried(take["start"], take["end"], take["generation"]))
            take["sync"] = draw(st.booleans())
    for recorded in document["master"]["recorded"]:
        recorded |= draw(carried(0, recorded["end"] - recorded["start"], 1))
        recorded["recorder"] = draw(recorders())
    for edit in document["edits"]:
        edit |= draw(makings())
    return document
