"""How the lessons and the glossary are worded: short, British, one word a thing, nothing twice."""

import re
from itertools import combinations

import pytest

from course.lessons.shelf import shelf
from tests.course.lessons.words import AMERICAN, other_words, runs, sentences, words

SHELF = shelf()
TEXTS = {lesson.slug: list(lesson.texts()) for lesson in SHELF.lessons}
TEXTS["glossary"] = [term.means for term in SHELF.glossary.terms]
every_text = pytest.mark.parametrize("texts", TEXTS.values(), ids=TEXTS)

LONGEST = 25  # words in a sentence
REPEATED = 10  # words in a row that two lessons may not share
# Longer sentences and longer echoes that are needed, each with the reason.
LONG: dict[str, str] = {}
ECHOES: dict[str, str] = {}


@every_text
def test_sentences_are_short(texts: list[str]) -> None:
    long = [each for each in sentences(texts) if len(words(each)) > LONGEST]

    assert [each for each in long if each not in LONG] == []


def test_long_sentences_that_are_allowed_are_still_there() -> None:
    said = {each for texts in TEXTS.values() for each in sentences(texts)}

    assert set(LONG) - said == set()


@every_text
def test_text_can_be_read_at_fourteen(texts: list[str]) -> None:
    # Automated readability index (Senter and Smith, AMRL-TR-66-220, 1967): 9 is age 14 to 15.
    said = [words(each) for each in sentences(texts)]
    letters = sum(len(word) for each in said for word in each)
    count = sum(map(len, said))
    index = 4.71 * letters / count + 0.5 * count / len(said) - 21.43

    assert index <= 9


@every_text
def test_spelling_is_british(texts: list[str]) -> None:
    assert [found[0] for text in texts for found in AMERICAN.finditer(text)] == []


@pytest.mark.parametrize(
    "word",
    ["color", "center", "gray", "labeled", "recognized", "organize", "practicing", "toward"],
)
def test_american_spelling_would_be_found(word: str) -> None:
    assert AMERICAN.search(f"So {word} it is.") is not None


@pytest.mark.parametrize(
    "word",
    ["colour", "centre", "grey", "labelled", "recognised", "practise", "licensed", "size", "seize"],
)
def test_british_spelling_would_pass(word: str) -> None:
    assert AMERICAN.search(f"So {word} it is.") is None


@every_text
def test_a_thing_has_one_word(texts: list[str]) -> None:
    assert [found for text in texts if (found := other_words(text))] == []


@pytest.mark.parametrize("word", ["audio", "Decks", "drop frame", "run up", "students"])
def test_other_word_for_a_thing_would_be_found(word: str) -> None:
    assert len(other_words(f"So {word} it is.")) == 1


@every_text
def test_quotation_marks_are_printed_ones(texts: list[str]) -> None:
    assert [found for text in texts for found in re.findall(r"['\"]|\.\.\.| - ", text)] == []


def test_nothing_is_said_twice_in_two_lessons() -> None:
    lessons = {lesson.slug: TEXTS[lesson.slug] for lesson in SHELF.lessons}
    said = {name: runs(texts, REPEATED) - set(ECHOES) for name, texts in lessons.items()}
    echoes = {
        (one, other): said[one] & said[other]
        for one, other in combinations(said, 2)
        if said[one] & said[other]
    }

    assert echoes == {}


def test_words_said_again_would_be_found() -> None:
    first = runs(["One two three four. Five six seven."], 3)

    assert first == {"one two three", "two three four", "five six seven"}
