from exercises.signal.sheet import FOLDER, ROWS


def test_every_fault_is_shown_at_three_strengths() -> None:
    assert [len(row.looks) for row in ROWS] == [3] * len(ROWS)


def test_every_row_is_told_of_in_words() -> None:
    told = (FOLDER / "SHEETS.md").read_text(encoding="utf-8")

    assert [row.name for row in ROWS if row.name.partition(", bars")[0] not in told] == []


def test_sheets_are_light_enough_to_keep() -> None:
    sheets = sorted(FOLDER.glob("*.jpg"))

    assert [sheet.name for sheet in sheets] == ["faults-525.jpg", "faults-625.jpg", "footage.jpg"]
    assert sum(sheet.stat().st_size for sheet in sheets) < 1_500_000
