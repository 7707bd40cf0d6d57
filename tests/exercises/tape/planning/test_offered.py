from collections.abc import Sequence

from exercises.tape import Assemble, Bench, Edit, Insert, Rate, Source, Take, Tape, Wanted, record
from exercises.tape.judging import Demand, first_miss
from exercises.tape.planning.offered import Offered, Reached, fewest, lays_nothing_else

BENCH = Bench.default(Rate.R25)
SHOTS = Source("Tape 1", (Take(0, 3000),))
BLACK = Tape.blank(3000).with_pass(0, 2000, "black")


def edit(at: int, frames: int = 100) -> Insert:
    return Insert(SHOTS, at, at + frames, at, picture=True, sound=False)


def offered(edits: Sequence[Edit], film: list[Demand]) -> Offered[Edit]:
    return Offered(
        [(each.at, each) for each in edits],
        lambda tape, each: record(tape, each, BENCH),
        lambda tape: first_miss(film, tape, BENCH),
    )


def film(*shots: tuple[int, int]) -> list[Demand]:
    return [Demand.over("picture", start, end, "Tape 1", start) for start, end in shots]


def test_one_long_recording_goes_before_two_short_ones() -> None:
    edits = [edit(500), edit(600), edit(500, 200)]

    assert fewest(BLACK, [offered(edits, film((500, 700)))], 3) == (edits[2],)


def test_first_of_two_that_do_alike_is_chosen() -> None:
    wide, narrow = edit(500, 300), edit(500, 200)

    assert fewest(BLACK, [offered([wide, narrow], film((500, 700)))], 3) == (wide,)


def test_recordings_are_made_from_left_to_right() -> None:
    first, second = edit(500), edit(900)

    chosen = fewest(BLACK, [offered([second, first], film((500, 600), (900, 1000)))], 3)

    assert chosen == (first, second)


def test_no_way_goes_back_over_what_has_been_recorded() -> None:
    edits = [edit(500), edit(500, 200)]

    assert list(Reached(BLACK, offered(edits, film((500, 700)))).ways(2)) == []


def test_any_of_several_aims_will_do_if_it_takes_fewer() -> None:
    two = offered([edit(500), edit(900)], film((500, 600), (900, 1000)))
    one = offered([edit(900)], film((900, 1000)))

    assert fewest(BLACK, [two, one], 3) == (edit(900),)


def test_none_where_it_takes_more_than_are_allowed_or_nothing_will_do() -> None:
    aim = offered([edit(500), edit(900)], film((500, 600), (900, 1000)))

    assert fewest(BLACK, [aim], 1) is None
    assert fewest(BLACK, [offered([edit(500)], film((900, 1000)))], 3) is None


def test_edit_that_lays_something_else_where_a_shot_is_wanted() -> None:
    wanted = [Wanted("picture", "Tape 1", 550, 650, 550), Wanted("sound", "Tape 1", 0, 100, 500)]

    assert lays_nothing_else(edit(500), wanted)
    assert not lays_nothing_else(Assemble(SHOTS, 500, 600, 500), wanted)
    assert not lays_nothing_else(Insert(SHOTS, 0, 100, 500, picture=True, sound=False), wanted)
