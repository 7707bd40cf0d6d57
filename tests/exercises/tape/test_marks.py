import pytest

from exercises.tape import Marks, Span


@pytest.mark.parametrize(
    "words", [(Span(5, 5),), (Span(6, 5),), (Span(0, 5), Span(4, 8)), (Span(5, 8), Span(0, 2))]
)
def test_marks_out_of_order_are_refused(words: tuple[Span, ...]) -> None:
    with pytest.raises(ValueError, match=r"^The marks are not in order: "):
        Marks(words=words)


def test_kinds_may_overlap_and_neighbours_touch() -> None:
    marks = Marks(words=(Span(0, 5), Span(5, 9)), noises=(Span(3, 7),))

    assert (marks.words[1].start, marks.noises[0].end) == (5, 7)
