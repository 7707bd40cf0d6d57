"""The faults that content makes, found frame by frame from a document, as they are told.

Nothing here is shared with the model but the tape itself, asked frame by frame. A frame is
known by where it comes from: its source and source frame.
"""

from itertools import groupby
from typing import Any

from exercises.tape import Tape, Track
from exercises.tape.track import Laid

Document = dict[str, Any]
Found = tuple[str, int, int, int]  # kind, start, end, value
Frame = tuple[str, int] | None


def frames(track: Track[Laid], length: int) -> list[Frame]:
    held = [track.at(frame) for frame in range(length)]
    return [
        None if run is None else (run.value.source, run.value.frame + frame - run.start)
        for frame, run in enumerate(held)
    ]


def shots(shown: list[Frame]) -> list[tuple[int, int, Frame]]:
    """Stretches in which each frame follows the one before it on the same source, or blank."""
    cuts = [0]
    for frame in range(1, len(shown)):
        before, here = shown[frame - 1], shown[frame]
        follows = before and here and here == (before[0], before[1] + 1)
        if not (follows or before is here is None):
            cuts.append(frame)
    ends = [*cuts[1:], len(shown)]
    return [(start, end, shown[start]) for start, end in zip(cuts, ends, strict=True)]


def slow_flashes(tape: Tape, most: int) -> set[Found]:
    """Short stretches with a picture somewhere close on both sides."""
    found = set()
    stretches = shots(frames(tape.picture, tape.length))
    for number, (start, end, shown) in enumerate(stretches):
        if end - start > most:
            continue
        around = (stretches[:number][::-1], stretches[number + 1 :])
        if shown is None:
            between = all(side for side in around)
        else:
            between = all(side and _close(side, most) for side in around)
        if between:
            found.add(("flash-frames", start, end, end - start))
    return found


def _close(side: list[tuple[int, int, Frame]], most: int) -> bool:
    """Whether there is a picture on this side, with at most a flash of nothing before it."""
    start, end, shown = side[0]
    return shown is not None or (end - start <= most and len(side) > 1)


def slow_words(tape: Tape, document: Document) -> set[Found]:
    """Words and breaths at the ends of each stretch of sound, from the document's marks."""
    found: set[Found] = set()
    for start, end, shown in shots(frames(tape.sound, tape.length)):
        if shown is None:
            continue
        source, first = shown
        last = first + end - start
        for word in _marks(document, source, first, "words"):
            if word["start"] < first < word["end"]:
                kept = min(word["end"] - first, end - start)
                found.add(("clipped-word", start, start + kept, first - word["start"]))
        for breath in _marks(document, source, first, "breaths"):
            if breath["start"] <= first < breath["end"]:
                heard = breath["end"] - first
                found.add(("stray-breath", start, min(end, start + heard), heard))
        for word in _marks(document, source, last - 1, "words"):
            if word["start"] < last < word["end"]:
                kept = min(last - word["start"], end - start)
                found.add(("clipped-word", end - kept, end, word["end"] - last))
        for breath in _marks(document, source, last - 1, "breaths"):
            if breath["start"] < last <= breath["end"]:
                heard = last - breath["start"]
                found.add(("stray-breath", max(start, end - heard), end, heard))
    return found


def _marks(document: Document, source: str, frame: int, kind: str) -> list[dict[str, int]]:
    """The marks of the take that holds this frame."""
    for take in document["sources"].get(source, {"takes": []})["takes"]:
        if take["start"] <= frame < take["end"]:
            marks: list[dict[str, int]] = take.get("marks", {}).get(kind, [])
            return marks
    return []


def slow_steps(tape: Tape, document: Document) -> set[Found]:
    """Frames where picture and sound of one take that belong together are not the same."""
    rate = 25 if document["rate"] == "25" else 30000 / 1001
    ahead = [0] * tape.length
    pictures, sounds = frames(tape.picture, tape.length), frames(tape.sound, tape.length)
    for frame, (shown, heard) in enumerate(zip(pictures, sounds, strict=True)):
        if shown and heard and shown[0] == heard[0]:
            take = _take(document, *shown)
            if take and take is _take(document, *heard) and take.get("sync"):
                ahead[frame] = heard[1] - shown[1]
    found, at = set(), 0
    for frames_ahead, group in groupby(ahead):
        end = at + len(list(group))
        milliseconds = 1000 * frames_ahead / rate
        if milliseconds > 45 or milliseconds < -125:
            found.add(("sound-out-of-step", at, end, round(milliseconds)))
        at = end
    return found


def _take(document: Document, source: str, frame: int) -> Document | None:
    for take in document["sources"].get(source, {"takes": []})["takes"]:
        if take["start"] <= frame < take["end"]:
            found: Document = take
            return found
    return None
