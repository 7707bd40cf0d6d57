"""Careless hands at a practice bench: each has one habit that spoils a tape."""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

from exercises.tape import Assemble, Edit, Insert, Judgement
from exercises.worktop.set_up import SetUp
from tests.exercises.worktop.hands import Taken, by_the_plan, done, making, plan_of

Habit = Callable[[SetUp], Iterator[Taken]]

CONTROLS = ("tracking", "skew", "recorder-tracking", "picture-level", "sound-level")


def judged(set_up: SetUp, actions: Iterable[Taken]) -> Judgement:
    """What the judge says of the tape that they leave."""
    brief = set_up.session.brief
    assert brief is not None
    return done(set_up, actions).session.judged(brief)


def found(judgement: Judgement) -> set[str]:
    """The kinds of all differences, states and faults."""
    return {
        *(each.kind.value for each in judgement.differences),
        *(each.state.value for each in judgement.states),
        *(each.kind.value for each in judgement.faults),
    }


def leaving(*names: str) -> Habit:
    """Leaves these controls as they stand."""
    return lambda set_up: (each for each in by_the_plan(set_up) if each[0] not in names)


def setting_once(*names: str) -> Habit:
    """Sets these for the first shot, and takes them to be set for the day."""

    def actions(set_up: SetUp) -> Iterator[Taken]:
        touched = set()
        for name, arguments in by_the_plan(set_up):
            if name not in touched:
                yield name, arguments
            touched |= {name} & set(names)

    return actions


def editing(change: Callable[[SetUp, Edit], Edit | None]) -> Habit:
    """Makes the recordings of the plan, but otherwise."""

    def actions(set_up: SetUp) -> Iterator[Taken]:
        edits = (change(set_up, edit) for edit in plan_of(set_up).edits)
        return making(set_up, [edit for edit in edits if edit])

    return actions


def as_insert(_: SetUp, edit: Edit) -> Edit:
    return Insert(edit.source, edit.in_, edit.out, edit.at, picture=True, sound=True)


def as_assemble(_: SetUp, edit: Edit) -> Edit:
    return Assemble(edit.source, edit.in_, edit.out, edit.at)


def without_black(set_up: SetUp, edit: Edit) -> Edit | None:
    """Inserts straight on the tape as it is."""
    return None if edit.source.name == "Black" else as_insert(set_up, edit)


def half_a_second_late(set_up: SetUp, edit: Edit) -> Edit:
    """Marks both tapes where a hand reacts, not where the words begin."""
    late = set_up.bench.rate.nominal // 2
    return Insert(edit.source, edit.in_ + late, edit.out, edit.at + late, picture=False, sound=True)


def where_it_stopped(set_up: SetUp, edit: Edit) -> Edit:
    """Marks the master where the recorder stands after the last edit, its post-roll included."""
    return edit if edit.source.name == "Black" else replace(edit, at=edit.at + set_up.post_roll)


def by_the_sheet(set_up: SetUp) -> Iterator[Taken]:
    """Makes what the edit sheet says, and looks at nothing else."""
    sources, laid = set_up.session.sources, 0
    edits: list[Edit] = []
    for row in set_up.sheet:
        shot = (sources[row.tape], row.source_in, row.source_out, row.master_in)
        both, new = row.track == "both", row.master_in >= laid
        picture, sound = (row.track in ("both", side) for side in ("picture", "sound"))
        insert = Insert(*shot, picture=picture, sound=sound)
        edits.append(Assemble(*shot) if both and new else insert)
        laid = max(laid, row.master_in + row.source_out - row.source_in)
    return making(set_up, edits)
