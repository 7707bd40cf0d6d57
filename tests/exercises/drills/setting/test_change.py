import pytest

from exercises.drills.setting.change import Change, Mode
from exercises.tape import Assemble, Insert, Source, Take

SHOTS = Source("Tape 1", (Take(0, 3000),))
CHANGE = Change(source=SHOTS, in_=300, out=450, at=1000, tracks=("picture",))

EDITS = {
    Mode.ASSEMBLE: Assemble(SHOTS, 300, 450, 1000),
    Mode.INSERT_PICTURE: Insert(SHOTS, 300, 450, 1000, picture=True, sound=False),
    Mode.INSERT_SOUND: Insert(SHOTS, 300, 450, 1000, picture=False, sound=True),
    Mode.INSERT_BOTH: Insert(SHOTS, 300, 450, 1000, picture=True, sound=True),
}


@pytest.mark.parametrize("mode", Mode)
def test_edit_in_a_mode(mode: Mode) -> None:
    assert CHANGE.edit(mode) == EDITS[mode]


def test_change_survives_storing() -> None:
    assert Change.from_json(CHANGE.as_json(), SHOTS) == CHANGE


def test_change_ends_where_its_last_frame_does() -> None:
    assert CHANGE.end == 1150
