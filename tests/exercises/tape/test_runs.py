"""The sequence of runs against a plain list with an entry a frame."""

from dataclasses import dataclass

from hypothesis import given
from hypothesis import strategies as st

from exercises.tape.runs import PAGE, Run, Runs

LENGTH = 40


@dataclass(frozen=True)
class Numbered:
    """A value that counts on: 5 is followed by 6."""

    number: int

    def rest(self, frames: int) -> "Numbered":
        return Numbered(self.number + frames)

    def goes_on(self, frames: int, other: "Numbered") -> bool:
        return other.number == self.number + frames


Patch = tuple[int, int, int | None]  # start, end, first number (None: wiped)


@st.composite
def patches(draw: st.DrawFn) -> list[Patch]:
    made = []
    for _ in range(draw(st.integers(0, 12))):
        start = draw(st.integers(0, LENGTH - 1))
        end = draw(st.integers(start + 1, LENGTH))
        # Numbers near the frame's own, so that neighbours often count on.
        number = draw(st.one_of(st.none(), st.integers(0, 1)))
        made.append((start, end, None if number is None else number + start))
    return made


def over(runs: Runs[Numbered], patch: Patch) -> Runs[Numbered]:
    start, end, number = patch
    return runs.over(start, end, [] if number is None else [Run(start, end, Numbered(number))])


def maximal(frames: list[int | None]) -> list[Run[Numbered]]:
    runs: list[Run[Numbered]] = []
    for frame, number in enumerate(frames):
        if number is None:
            continue
        if runs and runs[-1].end == frame and frames[frame - 1] == number - 1:
            runs[-1] = runs[-1]._replace(end=frame + 1)
        else:
            runs.append(Run(frame, frame + 1, Numbered(number)))
    return runs


@given(patches())
def test_runs_are_the_maximal_runs_of_the_frames(made: list[Patch]) -> None:
    runs: Runs[Numbered] = Runs()
    frames: list[int | None] = [None] * LENGTH
    for start, end, number in made:
        runs = over(runs, (start, end, number))
        for frame in range(start, end):
            frames[frame] = None if number is None else number + frame - start

        assert list(runs) == maximal(frames)
        for frame, held in enumerate(frames):
            run = runs.at(frame)
            assert (None if run is None else run.tail(frame).value.number) == held


def test_runs_over_many_pages_are_found_and_replaced() -> None:
    count = 10 * PAGE
    runs: Runs[Numbered] = Runs()
    # Outermost first, so that every page is cut in its middle.
    for step in (8, 4, 2, 1):
        for frame in range(0, 2 * count, 2 * step):
            runs = over(runs, (frame, frame + 1, 0))

    assert [run.start for run in runs] == list(range(0, 2 * count, 2))
    assert len(runs) == count
    assert [run.start for run in over(runs, (301, 1001, None))] == [
        *range(0, 301, 2),
        *range(1002, 2 * count, 2),
    ]
    assert list(over(runs, (0, 2 * count, 7))) == [Run(0, 2 * count, Numbered(7))]
    assert list(over(runs, (0, 2 * count, None))) == []


def test_run_joins_its_neighbours_across_pages() -> None:
    # Touching runs that don't go on into one another; somewhere a page ends between two.
    apart: Runs[Numbered] = Runs()
    for frame in range(5 * PAGE):
        apart = over(apart, (frame, frame + 1, 2 * frame))

    for frame in range(1, 5 * PAGE):
        goes_on = over(apart, (frame, frame + 1, 2 * frame - 1))
        assert goes_on.at(frame) == Run(frame - 1, frame + 1, Numbered(2 * frame - 2))
        leads_up = over(apart, (frame - 1, frame, 2 * frame - 1))
        assert leads_up.at(frame) == Run(frame - 1, frame + 1, Numbered(2 * frame - 1))
        assert len(goes_on) == len(leads_up) == len(apart) - 1


def test_runs_stay_as_they_were_when_others_are_made_from_them() -> None:
    before = over(Runs(), (0, 10, 0))
    kept = list(before)

    over(before, (2, 4, None))

    assert list(before) == kept


@given(patches())
def test_equal_runs_are_equal_however_they_came_about(made: list[Patch]) -> None:
    runs: Runs[Numbered] = Runs()
    for patch in made:
        runs = over(runs, patch)
    straight: Runs[Numbered] = Runs()
    for run in runs:
        straight = straight.over(run.start, run.end, [run])

    assert straight == runs
    assert hash(straight) == hash(runs)
    assert straight != over(runs, (LENGTH, LENGTH + 1, 500))
