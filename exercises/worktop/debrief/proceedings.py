"""All that was done at a bench, step by step, with the worktop before and after each."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from exercises.tape import Bench, Brief, Judgement, Plan, judge
from exercises.tape.planning import NoPlan
from exercises.worktop.actions import act
from exercises.worktop.debrief.made import EditMade, StepDone
from exercises.worktop.set_up import SetUp
from exercises.worktop.worktop import Worktop

Actions = Iterable[tuple[str, Mapping[str, Any]]]


@dataclass(frozen=True)
class Proceedings:
    set_up: SetUp
    steps: tuple[StepDone, ...]

    @classmethod
    def of(cls, set_up: SetUp, actions: Actions) -> "Proceedings":
        """Raises BenchRefused for an action that could not have been done."""
        return cls(set_up, tuple(_done(set_up, actions)))

    @property
    def bench(self) -> Bench:
        return self.set_up.bench

    @property
    def brief(self) -> Brief:
        return self.set_up.session.brief or Brief()

    @cached_property
    def top(self) -> Worktop:
        return self.steps[-1].after if self.steps else Worktop.at_first(self.set_up)

    @cached_property
    def made(self) -> tuple[EditMade, ...]:
        first = len(self.set_up.document["edits"])
        edits = self.top.session.edits[first:]
        recording = (step for step in self.steps if len(step.after.edits) > len(step.before.edits))
        return tuple(
            EditMade(index + 1, first + index, edit, step)
            for index, (edit, step) in enumerate(zip(edits, recording, strict=True))
        )

    @cached_property
    def by_index(self) -> Mapping[int | None, EditMade]:
        return {made.index: made for made in self.made}

    @cached_property
    def judgement(self) -> Judgement:
        edits = [made.edit for made in self.made]
        session = self.set_up.session
        return judge(
            self.brief,
            self.top.master,
            before=self.set_up.master,
            bench=self.bench,
            edits=edits,
            pace=session.pace,
        )

    @cached_property
    def plan(self) -> Plan | NoPlan:
        return self.set_up.session.planned(self.brief)

    def lateness(self, made: EditMade) -> int:
        """Frames, against the wanted shot that it lies nearest to; below 0, early."""
        edit = made.edit
        off = (
            edit.at - edit.in_ - shot.shift
            for shot in self.brief.wanted
            if shot.source == edit.source.name and max(shot.in_, edit.in_) < min(shot.out, edit.out)
        )
        return min(off, key=abs, default=0)

    def since_loaded(self, made: EditMade) -> tuple[StepDone, ...]:
        """The steps from when its source tape was last put into the player to the edit."""
        before = self.steps[: made.step.number - 1]
        loads = (
            step.number
            for step in before
            if step.name == "load" and step.arguments["machine"] == "player"
        )
        return before[max(loads, default=0) :]

    def rehearsed(self, made: EditMade) -> bool:
        """Whether this very edit was, so far as marks and cassettes go."""
        between = self.between(made)
        return any(step.name == "rehearse" and _alike(step, made) for step in between)

    def turned(self, made: EditMade, control: str) -> StepDone | None:
        """When a control was last turned before an edit."""
        before = reversed(self.steps[: made.step.number - 1])
        return next((step for step in before if step.name == control), None)

    def between(self, made: EditMade) -> tuple[StepDone, ...]:
        """The steps from the edit before it to this one."""
        first = self.made[made.number - 2].step.number if made.number > 1 else 0
        return self.steps[first : made.step.number - 1]

    def afterwards(self, made: EditMade) -> tuple[StepDone, ...]:
        """The steps from this edit to the one after it."""
        more = self.made[made.number :]
        end = more[0].step.number - 1 if more else len(self.steps)
        return self.steps[made.step.number : end]


def _alike(step: StepDone, made: EditMade) -> bool:
    marks = step.before.marks
    return (
        step.before.player.tape == made.edit.source.name
        and marks.source_in == made.edit.in_
        and marks.master_in == made.edit.at
    )


def _done(set_up: SetUp, actions: Actions) -> Iterator[StepDone]:
    top = Worktop.at_first(set_up)
    for number, (name, arguments) in enumerate(actions, 1):
        done = act(top, name, arguments)
        yield StepDone(number, name, arguments, top, done.top, done.sign)
        top = done.top
