"""Two machines, frame by frame: the rules of recording and playback as they are told.

Nothing here is shared with the tape model, and nothing is quick: each track is a list
with an entry a frame. What the model answers to a document must be what this answers.
"""

from itertools import count
from typing import Any

Document = dict[str, Any]

SECONDS = {"lock": 5, "relock": 1, "erase_gap": 2}


class SlowMaster:
    def __init__(self, length: int) -> None:
        self.pulse: list[int | None] = [None] * length  # which phase the pulse belongs to
        self.picture: list[tuple[Any, ...] | None] = [None] * length
        self.sound: list[tuple[Any, ...] | None] = [None] * length
        self.touched: dict[str, list[int | None]] = {
            track: [None] * length for track in ("pulse", "picture", "sound")
        }
        self.phases = count()

    def run_up(self, at: int) -> int:
        frames = 0
        while (
            at - frames > 0
            and self.pulse[at - 1] is not None
            and self.pulse[at - frames - 1] == self.pulse[at - 1]
        ):
            frames += 1
        return frames

    def record_pass(self, recorded: Document) -> None:
        phase = next(self.phases)
        for offset, frame in enumerate(range(recorded["start"], recorded["end"])):
            self.pulse[frame] = phase
            copy = (recorded["what"], offset, recorded.get("generation", 1), True)
            self.picture[frame] = self.sound[frame] = copy


def slow_answer(document: Document) -> Document:
    second = 25 if document.get("rate") == "25" else 30
    bench = {name: seconds * second for name, seconds in SECONDS.items()}
    bench |= document.get("bench", {})
    master = SlowMaster(document["master"]["length"])
    for recorded in document["master"].get("recorded", []):
        master.record_pass(recorded)
    for index, edit in enumerate(document["edits"]):
        _edit(master, edit, index, bench, document["sources"][edit["source"]]["takes"])
    return {"tracks": _tracks(master), "states": _states(master, bench["relock"])}


def _edit(
    master: SlowMaster, edit: Document, index: int, bench: dict[str, int], takes: list[Document]
) -> None:
    length, at, frames = len(master.pulse), edit["at"], edit["out"] - edit["in"]
    master_run_up = master.run_up(at)
    unsettled = max(
        0, bench["lock"] - master_run_up, bench["lock"] - _source_run_up(takes, edit["in"])
    )
    for offset in range(frames):
        copy = _copied(edit, offset, takes, unsettled, bench["relock"])
        for track in ("picture", "sound"):
            if edit["mode"] == "assemble" or edit[track]:
                getattr(master, track)[at + offset] = copy
                master.touched[track][at + offset] = index
    if edit["mode"] == "insert":
        return

    in_phase = master_run_up >= bench["lock"] and master_run_up > 0
    phase = master.pulse[at - 1] if in_phase else next(master.phases)
    for frame in range(at, at + frames):
        master.pulse[frame] = phase
        master.touched["pulse"][frame] = index
    wiped_to = min(at + frames + bench["erase_gap"], length)
    for frame in range(at + frames, wiped_to):
        master.pulse[frame] = master.picture[frame] = master.sound[frame] = None
        for track in ("pulse", "picture", "sound"):
            master.touched[track][frame] = index
    # What is left of an older run begins a phase of its own.
    if wiped_to < length and master.pulse[wiped_to] is not None:
        old, new = master.pulse[wiped_to], next(master.phases)
        for frame in range(wiped_to, length):
            if master.pulse[frame] != old:
                break
            master.pulse[frame] = new


def _take_of(takes: list[Document], frame: int) -> Document | None:
    for take in takes:
        if take["start"] <= frame < take["end"]:
            return take
    return None


def _source_run_up(takes: list[Document], frame: int) -> int:
    take = _take_of(takes, frame)
    return 0 if take is None else frame - int(take["start"])


def _copied(
    edit: Document, offset: int, takes: list[Document], unsettled: int, relock: int
) -> tuple[Any, ...] | None:
    frame = edit["in"] + offset
    take = _take_of(takes, frame)
    if take is None:
        return None
    jumped = edit["in"] < take["start"] < edit["out"] and frame - take["start"] < relock
    settled = offset >= unsettled and not jumped
    return (edit["source"], frame, take.get("generation", 1) + 1, settled)


def _tracks(master: SlowMaster) -> Document:
    control: list[Document] = []
    for frame, phase in enumerate(master.pulse):
        if phase is None:
            continue
        if frame and master.pulse[frame - 1] == phase:
            control[-1]["end"] = frame + 1
        else:
            control.append({"start": frame, "end": frame + 1})
    return {"control": control, "picture": _runs(master.picture), "sound": _runs(master.sound)}


def _runs(track: list[tuple[Any, ...] | None]) -> list[Document]:
    runs: list[Document] = []
    before = None
    for frame, copy in enumerate(track):
        if copy is not None:
            source, source_frame, generation, settled = copy
            if before == (source, source_frame - 1, generation, settled):
                runs[-1]["end"] = frame + 1
            else:
                runs.append(
                    {
                        "start": frame,
                        "end": frame + 1,
                        "source": source,
                        "in": source_frame,
                        "generation": generation,
                        "settled": settled,
                    }
                )
        before = copy
    return runs


def _states(master: SlowMaster, relock: int) -> list[Document]:
    states: list[Document] = []
    for frame in range(len(master.pulse)):
        state, track = _state(master, frame, relock)
        edit = master.touched[track][frame] if track else None
        if states and (states[-1]["state"], states[-1]["edit"]) == (state, edit):
            states[-1]["end"] = frame + 1
        else:
            states.append({"start": frame, "end": frame + 1, "state": state, "edit": edit})
    return states


def _state(master: SlowMaster, frame: int, relock: int) -> tuple[str, str | None]:
    picture, sound = master.picture[frame], master.sound[frame]
    if master.pulse[frame] is None:
        return "no-control", "pulse"
    if master.run_up(frame + 1) <= relock:
        return "relock", "pulse"
    if picture is None:
        return "no-picture", "picture"
    if not picture[3]:
        return "unsettled", "picture"
    if sound is None:
        return "no-sound", "sound"
    if not sound[3]:
        return "unsettled-sound", "sound"
    return "clean", None
