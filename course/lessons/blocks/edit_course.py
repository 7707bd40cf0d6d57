"""A block `edit-course`: one edit on both machines, from parked to parked.

rate       25 or 29.97
source     frame of the edit in on the source tape
master     frame of the edit in on the edit master
length     from edit in to edit out
pre_roll   how far both machines are wound back before the edit in
post_roll  how far they play on behind the edit out
lock       what they need to lock; without it, the usual
run_up     {source, master}: pulses in phase before the edit in; without, as long as the pre-roll
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any, ClassVar

from course.lessons.blocks.figure import KEYS, Figure, common
from course.lessons.blocks.given import Given
from exercises.drills.setting.phrases import length as lasting
from exercises.drills.setting.phrases import listed
from exercises.drills.setting.settings import PRE_ROLL
from exercises.tape import Bench, Rate, label

RATES = ("25", "29.97")
SIDES = ("source", "master")
MACHINES = {"source": "player", "master": "recorder"}
LONGEST, LATEST = 120, 3 * 60 * 60  # seconds, of an edit and into a tape
ASIDE = 9  # percent of the drawing at either end, where the machines stand
TICKS, STEPS = 9, (1, 2, 5, 10, 20, 30)  # on the axis at most, and seconds between them


@dataclass(frozen=True, kw_only=True)
class EditCourse(Figure):
    """Times are frames from the edit in: those before it are negative."""

    part: ClassVar[str] = "edit-course"
    in_details: ClassVar[bool] = False

    rate: str
    source: int
    master: int
    length: int
    pre_roll: int
    post_roll: int
    lock: int
    run_up: Mapping[str, int]

    def code(self, side: str, time: int) -> str:
        """What the counter of a machine shows at a time."""
        edit_in: int = getattr(self, side)
        return label(edit_in + time, Rate(self.rate))

    def locked(self, side: str) -> int:
        """When a machine is locked: so long after it has come to pulses in phase."""
        return self.lock - min(self.run_up[side], self.pre_roll)

    @property
    def unsettled(self) -> int:
        """Frames at the beginning of the copy that are not settled."""
        return max(0, *(min(self.locked(side), self.length) for side in SIDES))

    @property
    def end(self) -> int:
        return self.length + self.post_roll

    def sentences(self) -> list[str]:
        """One for each numbered stretch, in order."""
        before, edit, behind = map(self._lasting, (self.pre_roll, self.length, self.post_roll))
        return [
            f"Parked: both machines stand {before} before the edit in, "
            f"{self._codes(-self.pre_roll)}.",
            f"Pre-roll, {before}: both machines play, and nothing is recorded. "
            f"{self._run_ups()} {self._locks()}",
            f"The edit, {edit}: the recorder records. Edit in: {self._codes(0)}. "
            f"Edit out, the first frame behind it: {self._codes(self.length)}."
            + self._told_unsettled(),
            f"Post-roll, {behind}: both machines play on, and nothing is recorded.",
            f"Parked again: {self._codes(self.end)}.",
        ]

    def _codes(self, time: int) -> str:
        player, recorder = (self.code(side, time) for side in SIDES)
        return f"the player at {player}, the recorder at {recorder}"

    def _run_ups(self) -> str:
        player, recorder = (self._lasting(self.run_up[side]) for side in SIDES)
        return f"Run-up: {player} on the source tape, {recorder} on the edit master."

    def _locks(self) -> str:
        last = max(self.locked(side) for side in SIDES)
        if last > 0:
            late = [f"the {MACHINES[side]}" for side in SIDES if self.locked(side) > 0]
            are = "is" if len(late) == 1 else "are"
            return f"At the edit in, {listed(late)} {are} not locked yet."
        if not last:
            return "Both are locked just as the edit in comes."
        return f"Both are locked {self._lasting(-last)} before the edit in."

    def _told_unsettled(self) -> str:
        unsettled = self.unsettled
        return f" Its first {self._lasting(unsettled)} are unsettled." if unsettled else ""

    def _lasting(self, frames: int) -> str:
        return lasting(frames, Rate(self.rate))

    @cached_property
    def drawing(self) -> Mapping[str, Any]:
        """Numbers for the template, in percent of the width."""
        edges = [0.0, *map(self._x, (-self.pre_roll, 0, self.length, self.end)), 100.0]
        names = ("parked", "pre-roll", "edit", "post-roll", "parked")
        stretches = [
            {"name": name, "number": number, **_span(first, last)}
            for number, (name, first, last) in enumerate(
                zip(names, edges, edges[1:], strict=False), start=1
            )
            if first < last
        ]
        return {
            "stretches": stretches,
            "machines": [self._machine(side) for side in SIDES],
            "edit_in": f"{self._x(0)}%",
            "edit_out": f"{self._x(self.length)}%",
            "ticks": list(self._ticks()),
        }

    def _machine(self, side: str) -> Mapping[str, Any]:
        first, last = self._x(-self.pre_roll), self._x(self.end)
        pulses = self._x(-min(self.run_up[side], self.pre_roll))
        longer = self.run_up[side] > self.pre_roll
        locked = min(self.locked(side), self.end)
        return {
            "name": MACHINES[side],
            "records": side == "master",
            "plays": _span(first, last),
            "edit": _span(self._x(0), self._x(self.length)),
            "run_up": _span(0 if longer else pulses, self._x(0)),
            "locked": f"{self._x(locked)}%",
            "is_late": locked > 0,
        }

    def _x(self, time: int) -> float:
        whole = self.pre_roll + self.end
        return round(ASIDE + (100 - 2 * ASIDE) * (time + self.pre_roll) / whole, 2)

    def _ticks(self) -> Iterator[Mapping[str, str]]:
        """Whole seconds from the edit in."""
        second = Rate(self.rate).nominal
        first, last = -(self.pre_roll // second), self.end // second
        step = next((each for each in STEPS if (last - first) / each < TICKS), STEPS[-1])
        for at in range(-(-first // step) * step, last + 1, step):
            name = f"{at:+d}".replace("-", "−") if at else "0"
            yield {"x": f"{self._x(at * second)}%", "name": name}


def _span(first: float, last: float) -> dict[str, str]:
    width = round(last - first, 2)
    return {
        "x": f"{first}%",
        "width": f"{width}%",
        "middle": f"{round((first + last) / 2, 2)}%",
        "room": "none" if width < 7 else "little" if width < 17 else "much",
    }


def read_edit_course(given: Given) -> EditCourse:
    given.only(*KEYS, "rate", *SIDES, "length", "pre_roll", "post_roll", "lock", "run_up")
    rate = given.one_of("rate", RATES, default="25")
    second = Rate(rate).nominal
    pre_roll = given.whole("pre_roll", *(each * second for each in PRE_ROLL))
    run_ups = given.table("run_up")
    run_ups.only(*SIDES)
    edits_in = {side: given.whole(side, pre_roll, LATEST * second) for side in SIDES}
    return EditCourse(
        **common(given),
        rate=rate,
        source=edits_in["source"],
        master=edits_in["master"],
        length=given.whole("length", 1, LONGEST * second),
        pre_roll=pre_roll,
        post_roll=given.whole("post_roll", 1, PRE_ROLL[1] * second),
        lock=given.whole("lock", 1, pre_roll, default=Bench.default(Rate(rate)).lock),
        run_up={side: run_ups.whole(side, 0, edits_in[side], default=pre_roll) for side in SIDES},
    )
