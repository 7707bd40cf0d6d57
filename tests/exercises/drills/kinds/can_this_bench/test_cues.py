"""Whoever knows nothing of two machines answers no better than by the words of the story."""

from collections.abc import Callable, Iterator

import pytest

from exercises.drills.kinds.can_this_bench import KIND as CAN_THIS_BENCH
from tests.exercises.drills.cues.part import Pick, parts
from tests.exercises.drills.cues.rules import words_of
from tests.exercises.drills.cues.table import MORE
from tests.exercises.drills.made import many
from tests.exercises.drills.skeletons import skeleton


def asked() -> Iterator[tuple[frozenset[str], Pick]]:
    """The words of all that is read before its answers, and these."""
    for question in many(CAN_THIS_BENCH, 1_000):
        story = words_of(skeleton(" ".join(map(str, question.shown.values()))))
        (part,) = parts(question)
        assert isinstance(part, Pick)
        yield story, part


@pytest.mark.parametrize("pick", [max, min])
def test_words_of_the_story_do_not_tell(pick: Callable[[list[int]], int]) -> None:
    """The answer that has most words in common with the story, or fewest."""
    gains = []
    for story, part in asked():
        common = [len(words_of(text) & story) for text in part.texts]
        picked = [at for at, count in enumerate(common) if count == pick(common)]
        gains.append(part.share(picked) - part.chance)

    assert sum(gains) / len(gains) <= MORE
