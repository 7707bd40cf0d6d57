"""Two tape machines frame by frame, written from the model's description alone.

Slow, and independent of `exercises.tape`: the judge of the judges.
"""

from dataclasses import dataclass, field
from typing import Any

Copy = tuple[str, int, bool]  # source, source frame, settled
Takes = list[tuple[int, int]]

RATES = {"29.97": 30, "25": 25}


@dataclass
class Machines:
    """A master as lists of frames; `control` holds the number of each frame's phase, 0 for none."""

    second: int
    control: list[int]
    picture: list[Copy | None]
    sound: list[Copy | None]
    phases: int = 0
    sources: dict[str, Takes] = field(default_factory=dict)

    @property
    def lock(self) -> int:
        return 5 * self.second

    def new_phase(self) -> int:
        self.phases += 1
        return self.phases

    def copy(self) -> "Machines":
        return Machines(
            self.second,
            self.control[:],
            self.picture[:],
            self.sound[:],
            self.phases,
            self.sources,
        )

    def run_up(self, at: int) -> int:
        """Frames before `at` in one phase."""
        frames = 0
        while (
            at - frames > 0
            and self.control[at - 1]
            and (self.control[at - frames - 1] == self.control[at - 1])
        ):
            frames += 1
        return frames

    def make(self, edit: dict[str, Any]) -> None:
        """Record one edit of a session document."""
        at, n = edit["at"], edit["out"] - edit["in"]
        takes = self.sources[edit["source"]]
        holder = next((take for take in takes if take[0] <= edit["in"] < take[1]), None)
        source_run_up = edit["in"] - holder[0] if holder else 0
        master_run_up = self.run_up(at)
        unsettled = max(0, self.lock - master_run_up, self.lock - source_run_up)
        copies = [self.copied(edit, takes, offset, unsettled) for offset in range(n)]
        if edit["mode"] == "assemble":
            phase = self.control[at - 1] if master_run_up >= self.lock else self.new_phase()
            self.control[at : at + n] = [phase] * n
            self.picture[at : at + n] = copies
            self.sound[at : at + n] = copies
            self.wipe(at + n)
            return
        if edit["picture"]:
            self.picture[at : at + n] = copies
        if edit["sound"]:
            self.sound[at : at + n] = copies

    def copied(
        self, edit: dict[str, Any], takes: Takes, offset: int, unsettled: int
    ) -> Copy | None:
        frame = edit["in"] + offset
        take = next((take for take in takes if take[0] <= frame < take[1]), None)
        if take is None:
            return None
        jumped = take[0] > edit["in"] and frame < take[0] + self.second
        return edit["source"], frame, offset >= unsettled and not jumped

    def wipe(self, start: int) -> None:
        """The erase gap; pulses beyond it no longer run on from any before it."""
        end = min(start + 2 * self.second, len(self.control))
        gap = end - start
        self.control[start:end] = [0] * gap
        self.picture[start:end] = [None] * gap
        self.sound[start:end] = [None] * gap

    def steady(self) -> list[bool]:
        """Whether each frame has pulses, and a second of them in its phase before it."""
        found, since, before = [], 0, 0
        for phase in self.control:
            since = since + 1 if phase and phase == before else 0
            before = phase
            found.append(bool(phase) and since >= self.second)
        return found

    def clean(self, track: str) -> list[tuple[str, int] | None]:
        """What plays cleanly, frame by frame: the source and its frame."""
        copies: list[Copy | None] = getattr(self, track)
        return [
            copy[:2] if copy and copy[2] and steady else None
            for copy, steady in zip(copies, self.steady(), strict=True)
        ]


def threaded(document: dict[str, Any], edits: list[dict[str, Any]] | None = None) -> Machines:
    """The machines after a document's edits, or after other edits in their place."""
    length = document["master"]["length"]
    machines = Machines(RATES[document["rate"]], [0] * length, [None] * length, [None] * length)
    for name, source in document["sources"].items():
        machines.sources[name] = [(take["start"], take["end"]) for take in source["takes"]]
    for laid in document["master"]["recorded"]:
        start, end = laid["start"], laid["end"]
        machines.control[start:end] = [machines.new_phase()] * (end - start)
        copies: list[Copy | None] = [(laid["what"], frame, True) for frame in range(end - start)]
        machines.picture[start:end] = copies
        machines.sound[start:end] = copies
    for edit in document["edits"] if edits is None else edits:
        machines.make(edit)
    return machines
