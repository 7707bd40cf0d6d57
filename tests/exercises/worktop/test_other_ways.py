"""Other right ways than the plan's: the judge takes them too."""

from dataclasses import replace

from exercises.drills.setting.settings import Settings
from exercises.tape import Assemble, Edit, Insert
from exercises.worktop.laying_out import lay_out
from exercises.worktop.set_up import SetUp, SheetRow
from exercises.worktop.shelf import practicals
from tests.exercises.worktop.benches import AT_ANY, AT_USUAL
from tests.exercises.worktop.careless import found, judged
from tests.exercises.worktop.hands import making


def assembled(set_up: SetUp, row: SheetRow, *, off: int = 0) -> Edit:
    """A line of the sheet, its shot some frames off on its source."""
    source = set_up.session.sources[row.tape]
    return Assemble(source, row.source_in + off, row.source_out + off, row.master_in)


def inserted(set_up: SetUp, row: SheetRow, *, sound: bool) -> Edit:
    source = set_up.session.sources[row.tape]
    return Insert(source, row.source_in, row.source_out, row.master_in, picture=True, sound=sound)


@AT_ANY
def test_a_leader_may_be_assembled_part_by_part_from_the_start(settings: Settings) -> None:
    set_up = lay_out(practicals()["leader"], settings)
    parts = [assembled(set_up, row) for row in set_up.sheet]

    assert parts[0].at == 0
    assert not found(judged(set_up, making(set_up, parts)))


@AT_ANY
def test_shots_of_one_tape_may_be_laid_together_over_black(settings: Settings) -> None:
    """In tape order: black first, as long as all of it, then inserts."""
    set_up = lay_out(practicals()["leader"], settings)
    black, bars, card, behind = set_up.sheet
    source = set_up.session.sources[black.tape]
    whole = Assemble(source, behind.source_in - behind.master_in, behind.source_out, at=0)
    over = [inserted(set_up, row, sound=True) for row in (card, bars)]

    assert not found(judged(set_up, making(set_up, [whole, *over])))


@AT_USUAL
def test_black_that_begins_behind_the_beginning_is_not_a_whole_leader(settings: Settings) -> None:
    set_up = lay_out(practicals()["leader"], settings)
    first, *parts = [assembled(set_up, row) for row in set_up.sheet]
    late = replace(first, in_=first.in_ + 250, at=250)

    assert "missing" in found(judged(set_up, making(set_up, [late, *parts])))


@AT_USUAL
def test_a_whole_shot_may_be_laid_again_where_a_part_would_do(settings: Settings) -> None:
    set_up = lay_out(practicals()["mend"], settings)
    _, tools, _, keeper, lever = set_up.sheet
    edits = [
        inserted(set_up, tools, sound=False),
        inserted(set_up, keeper, sound=True),
        assembled(set_up, lever),
    ]

    assert not found(judged(set_up, making(set_up, edits)))


@AT_USUAL
def test_a_shot_may_be_off_by_a_few_frames(settings: Settings) -> None:
    set_up = lay_out(practicals()["three-shots"], settings)
    edits, worse = ([assembled(set_up, row, off=off) for row in set_up.sheet] for off in (5, 6))

    assert not found(judged(set_up, making(set_up, edits)))
    assert found(judged(set_up, making(set_up, worse)))
