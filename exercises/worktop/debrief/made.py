"""A step that was done at the bench, and an edit that was made by one."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from exercises.tape import Edit, Tape
from exercises.tape.explaining import Account
from exercises.worktop.shelf_tape import ShelfTape
from exercises.worktop.worktop import Worktop


@dataclass(frozen=True, slots=True, eq=False)
class StepDone:
    """An action that was done, counted from 1; `sign` is what a machine showed that would not."""

    number: int
    name: str
    arguments: Mapping[str, Any]
    before: Worktop
    after: Worktop
    sign: str


@dataclass(frozen=True, eq=False)
class EditMade:
    """An edit of the learner's, counted from 1; `index` is its place in the whole session."""

    number: int
    index: int
    edit: Edit
    step: StepDone

    @property
    def tape(self) -> ShelfTape:
        return self.step.before.set_up.by_name[self.edit.source.name]

    @property
    def before(self) -> Tape:
        return self.step.before.master

    @cached_property
    def account(self) -> Account:
        return Account(self.before, self.edit, self.step.before.set_up.bench)

    def covers(self, frame: int) -> bool:
        return self.edit.at <= frame < self.edit.end

    def wiped(self, frame: int) -> bool:
        start, end = self.account.wiped
        return start <= frame < end
