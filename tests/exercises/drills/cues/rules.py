"""Rules of answering without knowing anything, in families: by what they go."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from functools import cache

from tests.exercises.drills.cues.part import Part, Pick, Whole

ALIKE = 2  # characters: texts that differ by less look alike
COMMON = 0.25  # of the questions: a text that stands in so many is seen again and again
NUMBER = re.compile(r"[-−]?\d+(?:[.,:;]\d+)*")

Guess = tuple[str, str, float]  # family, rule, how likely it is right


def guesses(part: Part) -> Iterator[Guess]:
    """What every rule that says something of a part comes to."""
    if isinstance(part, Whole):
        yield from (("whole", rule, float(way == part.right)) for rule, way in part.ways.items())
        return
    yield from (("place", rule, part.share([at])) for rule, at in places(part))
    if part.start is not None:
        return
    yield from (("length", rule, part.share(at)) for rule, at in lengths(part.texts))
    yield from (("word", rule, part.share(at)) for rule, at in words(part.texts))
    yield from (("number", rule, part.share([at])) for rule, at in ranks(part.raw))
    yield from (("page", rule, part.share([at])) for rule, at in named(part))


def places(part: Pick) -> Iterator[tuple[str, int]]:
    count = len(part.texts)
    yield from ((f"place {at + 1}", at) for at in range(count))
    yield from ((f"place {count - at} from the end", at) for at in range(count))
    if part.start is not None:
        yield "as it stands", part.start
        yield "turned round", count - 1 - part.start


@cache
def lengths(texts: Sequence[str]) -> list[tuple[str, list[int]]]:
    long = [len(text) for text in texts]
    return [
        ("longest", [at for at, each in enumerate(long) if each >= max(long) - ALIKE]),
        ("shortest", [at for at, each in enumerate(long) if each <= min(long) + ALIKE]),
    ]


@cache
def words_of(text: str) -> frozenset[str]:
    return frozenset(re.findall(r"[\w’]+", text.lower()))


@cache
def words(texts: Sequence[str]) -> list[tuple[str, list[int]]]:
    """Those that have a word and those that have it not; and those with most words of their own."""
    said = Counter(word for text in texts for word in words_of(text))
    found = []
    for word, count in said.items():
        if count < len(texts):
            has = [at for at, text in enumerate(texts) if word in words_of(text)]
            found += [
                (f"has “{word}”", has),
                (f"has no “{word}”", [at for at in range(len(texts)) if at not in has]),
            ]
    own = [sum(said[word] == 1 for word in words_of(text)) for text in texts]
    shared = [sum(said[word] > 1 for word in words_of(text)) for text in texts]
    for rule, counts in (("own words", own), ("shared words", shared)):
        found.append((rule, [at for at, each in enumerate(counts) if each == max(counts)]))
    return found


def ranks(texts: Sequence[str]) -> Iterator[tuple[str, int]]:
    """By size, where each text has one number; texts without any stand aside."""
    found = {at: NUMBER.findall(text) for at, text in enumerate(texts)}
    sizes = {at: size(numbers[0]) for at, numbers in found.items() if len(numbers) == 1}
    if len(sizes) < 3 or len(set(sizes.values())) < len(sizes):
        return
    by_size = sorted(sizes, key=lambda at: sizes[at])
    yield from ((f"number {rank}", at) for rank, at in enumerate(by_size, 1))
    yield "largest number", by_size[-1]
    yield "second largest number", by_size[-2]
    yield "middle number", by_size[len(by_size) // 2]


def size(number: str) -> float:
    digits = re.sub(r"[:;]", "", number).replace("−", "-")
    return float(digits.replace(",", "")) if digits.count(".") < 2 else 0


def named(part: Pick) -> Iterator[tuple[str, int]]:
    """Where and how often the page names what may be picked."""
    first = {at: part.page.find(text) for at, text in enumerate(part.raw)}
    if min(first.values()) < 0:
        return
    often = {at: part.page.count(text) for at, text in enumerate(part.raw)}
    yield "named first", min(first, key=lambda at: first[at])
    yield "named last", max(first, key=lambda at: first[at])
    yield "named most often", max(often, key=lambda at: often[at])
    yield "named least often", min(often, key=lambda at: often[at])


class Usual:
    """Among common texts, the one that was right most often where it could be picked."""

    def __init__(self, seen: Sequence[Part]) -> None:
        shown: dict[str, int] = defaultdict(int)
        right: dict[str, float] = defaultdict(float)
        for part in seen:
            if isinstance(part, Pick) and not part.is_known and part.start is None:
                for at, text in enumerate(part.texts):
                    shown[text] += 1
                    right[text] += at in part.right
        common = (text for text, count in shown.items() if count >= COMMON * len(seen))
        self.shares = {text: right[text] / shown[text] for text in common}

    def share(self, part: Part) -> float:
        """How likely it is right to go by what was right before."""
        if isinstance(part, Whole):
            return part.chance
        known = {at: self.shares[text] for at, text in enumerate(part.texts) if text in self.shares}
        if not known:
            return part.chance
        return part.share([at for at in known if known[at] == max(known.values())])
