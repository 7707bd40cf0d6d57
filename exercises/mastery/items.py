"""What answers say about the questions: how hard, how telling, how much a set can be trusted.

An item is a question, or a group of like questions, that people got right or not. Only
somebody's first answer to an item counts here: later ones tell of practice.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import sqrt
from statistics import fmean, median

ENOUGH = 10  # people; with fewer no coefficient is given (common practice: the more the better)
TELLING = 0.2  # a discrimination below it tells little apart (common practice)
EASY, HARD = 0.95, 0.2
SAME = 0.6  # of the wrong answers
SLOW = 3  # times the median of the others

# By person, the items that they answered: whether the first answer was right.
Answers = Mapping[int, Mapping[str, bool]]


@dataclass(frozen=True, kw_only=True)
class Item:
    """What is known of an item.

    `right` is the share of all answers, `first` that of the people whose first one was.
    `discrimination` is None where too few have answered to say. `seconds` is the median time,
    `commonest` the share of the wrong answers that are the same one.
    """

    slug: str
    answers: int
    people: int
    right: float
    first: float
    discrimination: float | None
    seconds: float
    commonest: float = 0.0

    @property
    def is_enough(self) -> bool:
        """Whether as many people have answered as it takes to say something of the item."""
        return self.people >= ENOUGH


def point_biserial(rights: Sequence[bool], scores: Sequence[float]) -> float | None:
    """The correlation of right or not with a score; None where one of them is always the same."""
    share = fmean(rights)
    mean = fmean(scores)
    spread = sqrt(fmean((score - mean) ** 2 for score in scores))
    if not 0 < share < 1 or spread < 1e-12:
        return None
    of_right = fmean(score for right, score in zip(rights, scores, strict=True) if right)
    return (of_right - mean) / spread * sqrt(share / (1 - share))


def discriminations(answers: Answers) -> dict[str, float | None]:
    """By item, its point-biserial correlation with the rest score, the item left out of it.

    The rest score is the share right of a person's other items: people need not have answered
    the same ones. Where all have, it is the usual corrected item-total correlation. None where
    fewer than `ENOUGH` people have answered the item and another one.
    """
    rights: dict[str, list[bool]] = defaultdict(list)
    rests: dict[str, list[float]] = defaultdict(list)
    for given in answers.values():
        total, others = sum(given.values()), len(given) - 1
        for item, right in given.items() if others else ():
            rights[item].append(right)
            rests[item].append((total - right) / others)
    return {
        item: point_biserial(rights[item], rests[item]) if len(rights[item]) >= ENOUGH else None
        for item in dict.fromkeys(item for given in answers.values() for item in given)
    }


def complete(items: Iterable[str], answers: Answers) -> list[list[bool]]:
    """The rows of those who have answered every one of the items."""
    fixed = list(items)
    return [
        [given[item] for item in fixed]
        for given in answers.values()
        if all(item in given for item in fixed)
    ]


def usual_set(items: Iterable[str], answers: Answers) -> list[str]:
    """Items that `ENOUGH` people have answered all of, taken from the most answered on.

    Where there are not two such items, those that at least half of the people have answered.
    """
    counts = Counter(item for given in answers.values() for item in given)
    answered = [item for item in items if counts[item]]
    found: list[str] = []
    for item in sorted(answered, key=lambda each: -counts[each]):
        if len(complete([*found, item], answers)) >= ENOUGH:
            found.append(item)
    if len(found) > 1:
        return [item for item in answered if item in found]
    return [item for item in answered if 2 * counts[item] >= len(answers)]


def kr20(rows: Sequence[Sequence[bool]]) -> float | None:
    """Kuder and Richardson's formula 20 for a fixed set of items, a row a person.

    Their reliability: how far the same people would come out in the same order with as many
    other such items. Variances are those of the people there are. None for fewer than two items
    or where all people have the same sum.
    """
    count = len(rows[0]) if rows else 0
    sums = [sum(row) for row in rows]
    if count < 2 or len(set(sums)) < 2:
        return None
    mean = fmean(sums)
    variance = fmean((each - mean) ** 2 for each in sums)
    shares = [fmean(column) for column in zip(*rows, strict=True)]
    within = sum(share * (1 - share) for share in shares)
    return count / (count - 1) * (1 - within / variance)


def flags_of(item: Item, others: float) -> list[str]:
    """What is worth a look, each with its reason; `others` is the median time of all items.

    Nothing is said of what fewer than `ENOUGH` people have answered, nor of a discrimination
    that is low by no more than one standard error.
    """
    telling = item.discrimination
    margin = 1 / sqrt(item.people - 1) if item.people > 1 else 1  # of a correlation about 0
    slow = others > 0 and item.seconds > SLOW * others
    reasons = {
        "The best learners miss this one: it may say what it does not mean.": (
            telling is not None and telling < -margin
        ),
        "It hardly tells those who do well from those who don’t.": (
            telling is not None and -margin <= telling < TELLING - margin
        ),
        "Nearly everybody gets it right at once: it tells little any more.": item.first >= EASY,
        "Hardly anybody gets it right at once: is it taught before it is asked?": (
            item.first <= HARD
        ),
        "Most wrong answers are the same one: there is one idea to talk about.": (
            item.commonest >= SAME
        ),
        "It takes much longer than the others.": slow,
    }
    return [reason for reason, holds in reasons.items() if holds and item.is_enough]


def typical(seconds: Iterable[float]) -> float:
    """The median time; 0 for none."""
    times = list(seconds)
    return median(times) if times else 0.0
