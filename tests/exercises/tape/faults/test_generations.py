from dataclasses import replace
from math import log10

import pytest

from exercises.tape import Carried, FaultKind, Machines, Recorder, Severity, Source, Take
from tests.exercises.tape.faults.benchwork import BENCH, BLACK, found, insert, limited, tape, told

KIND = FaultKind.TOO_MANY_GENERATIONS


def copy_of(generation: int, *chain: int) -> Source:
    return tape(Take(0, 1000, generation, Carried(chain=chain)))


@pytest.mark.parametrize(("generation", "snrs"), [(1, []), (7, []), (8, [365]), (15, [340])])
def test_equal_copies_at_46_db_reach_grade_4_up_to_the_eighth(
    generation: int, snrs: list[int]
) -> None:
    shot = insert(copy_of(generation), 0, 100, 500)
    if snrs:
        assert snrs == [round(460 - 100 * log10(generation + 1))]

    assert told(KIND, shot) == [(500, 600, 0, snr) for snr in snrs]


def test_whole_chain_counts_not_the_last_machine() -> None:
    poor, good = copy_of(1, 370), copy_of(1, 460)

    assert told(KIND, insert(poor, 0, 100, 500)) == [(500, 600, 0, 365)]
    assert told(KIND, insert(good, 0, 100, 500)) == []


def test_poor_recorder_counts_in_the_copy_it_makes() -> None:
    machines = Machines(recorder=Recorder(snr=370))

    assert told(KIND, insert(copy_of(1), 0, 100, 500, machines=machines)) == [(500, 600, 0, 365)]


def test_bench_sets_the_grade_and_how_well_it_records() -> None:
    shot = insert(copy_of(1), 0, 100, 500)
    poor = replace(BENCH, snr=390)

    assert told(KIND, shot, bench=limited(grade=5)) == [(500, 600, 0, 430)]
    assert [fault[:3] for fault in told(KIND, shot, on=BLACK, bench=poor)] == [(500, 600, 0)]


def test_severity_is_the_grade_that_is_left() -> None:
    noiseless = replace(limited(grade=5), snr=900)

    def severity(snr: int) -> Severity:
        shot = insert(copy_of(1, snr), 0, 100, 500)
        return found(KIND, shot, bench=noiseless)[0].severity

    # 45.5, 36.6, 29.9 and 25.4 dB are grades 5 to 2.
    assert [severity(snr) for snr in (454, 367, 365, 300, 298, 255, 253, 100)] == [
        *(Severity.PERCEPTIBLE, Severity.PERCEPTIBLE),
        *(Severity.SLIGHTLY_ANNOYING, Severity.SLIGHTLY_ANNOYING),
        *(Severity.ANNOYING, Severity.ANNOYING),
        *(Severity.VERY_ANNOYING, Severity.VERY_ANNOYING),
    ]


def test_sound_is_not_graded_by_a_formula_for_pictures() -> None:
    assert told(KIND, insert(copy_of(9), 0, 100, 500, tracks="sound")) == []
