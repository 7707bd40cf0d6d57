"""Rules of answering without knowing anything: how often each would be right.

A rule looks at the texts of a choice and at nothing else, and says which it might be; one of
those is picked blindly. `by_word` is about single words: pick what has it, or what has it not.
"""

import re
from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from exercises.drills.asks import Choice
from exercises.drills.kind import Question
from tests.exercises.drills.skeletons import skeleton

ALIKE = 2  # characters: texts that differ by less look alike

Rule = Callable[[Sequence[str]], Sequence[int]]


@dataclass(frozen=True)
class Asked:
    """The texts of a choice as they stand, which is right, and the story before them."""

    texts: tuple[str, ...]
    right: int
    situation: str

    def share(self, picked: Sequence[int]) -> float:
        """How likely it is right to pick any of these; of all, where the rule says nothing."""
        among = picked or range(len(self.texts))
        return (self.right in among) / len(among)


def asked(question: Question) -> list[Asked]:
    """One for each choice of a question; what was drawn into texts is taken out."""
    found = []
    for ask in question.asks:
        if isinstance(ask, Choice):
            values = [option.value for option in ask.options]
            texts = tuple(skeleton(option.text) for option in ask.options)
            right = values.index(question.right[ask.name])
            found.append(Asked(texts, right, question.situation))
    return found


def longest(texts: Sequence[str]) -> list[int]:
    most = max(map(len, texts))
    return [at for at, text in enumerate(texts) if len(text) >= most - ALIKE]


def shortest(texts: Sequence[str]) -> list[int]:
    least = min(map(len, texts))
    return [at for at, text in enumerate(texts) if len(text) <= least + ALIKE]


def words_of(text: str) -> set[str]:
    return set(re.findall(r"[\w’]+", text.lower()))


def own_word(texts: Sequence[str]) -> list[int]:
    """Those with the most words that none of the others has."""
    said = Counter(word for text in texts for word in words_of(text))
    own = [sum(said[word] == 1 for word in words_of(text)) for text in texts]
    return [at for at, count in enumerate(own) if count == max(own)]


def shared_words(texts: Sequence[str]) -> list[int]:
    """Those with the most words that others have too."""
    said = Counter(word for text in texts for word in words_of(text))
    shared = [sum(said[word] > 1 for word in words_of(text)) for text in texts]
    return [at for at, count in enumerate(shared) if count == max(shared)]


def by_place(place: int) -> Rule:
    return lambda texts: [place] if place < len(texts) else []


def by_word(word: str, *, having: bool) -> Rule:
    return lambda texts: [at for at, text in enumerate(texts) if (word in words_of(text)) is having]


def by_count(counts: Counter[str], *, most: bool) -> Rule:
    """The text that turns up most or least among all the questions."""

    def rule(texts: Sequence[str]) -> list[int]:
        pick = max if most else min
        best = pick(counts[text] for text in texts)
        return [at for at, text in enumerate(texts) if counts[text] == best]

    return rule


def rules(questions: Sequence[Asked]) -> dict[str, Rule]:
    """All of them, by what they go by."""
    counts = Counter(text for each in questions for text in each.texts)
    words = sorted({word for text in counts for word in words_of(text)})
    places = range(max(len(each.texts) for each in questions))
    return {
        "longest": longest,
        "shortest": shortest,
        "own word": own_word,
        "shared words": shared_words,
        "commonest": by_count(counts, most=True),
        "rarest": by_count(counts, most=False),
        **{f"place {place + 1}": by_place(place) for place in places},
        **{f"has “{word}”": by_word(word, having=True) for word in words},
        **{f"has no “{word}”": by_word(word, having=False) for word in words},
    }


def chance(questions: Iterable[Asked]) -> float:
    shares = [each.share(()) for each in questions]
    return sum(shares) / len(shares)


def right(rule: Rule, questions: Iterable[Asked]) -> float:
    """How often a rule is right."""
    shares = [each.share(rule(each.texts)) for each in questions]
    return sum(shares) / len(shares)
