"""Rules of answering without knowing anything, in families: by what they go."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cache

from tests.exercises.drills.cues.part import Part, Pick, Whole

ALIKE = 2  # characters: texts that differ by less look alike
NUMBER = re.compile(r"[-−]?\d+(?:[.,:;]\d+)*")

Guess = tuple[str, str, float]  # family, rule, how likely it is right
FAMILIES = ("whole", "place", "length", "word", "number", "page", "count")


def guesses(part: Part, counts: Counter[str]) -> Iterator[Guess]:
    """What every rule that says something of a part comes to.

    `counts` has how often each text is shown among all questions.
    """
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
    yield from (("count", rule, part.share(at)) for rule, at in met(part.texts, counts))


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


def met(texts: Sequence[str], counts: Counter[str]) -> Iterator[tuple[str, list[int]]]:
    """Those that are shown most often, or least, among all questions."""
    often = [counts[text] for text in texts]
    for rule, count in (("commonest", max(often)), ("rarest", min(often))):
        yield rule, [at for at, each in enumerate(often) if each == count]
