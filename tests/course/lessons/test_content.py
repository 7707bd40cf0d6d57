"""The lessons themselves: complete, true, short of sentence, the same in their words."""

import re
from collections.abc import Iterator
from itertools import combinations

import pytest

from course.lessons.claims import confirm
from course.lessons.lesson import Box, Claim, Diagram, Lesson, PlacedDrill
from course.lessons.shelf import CONTENT, read_shelf

SHELF = read_shelf(CONTENT)
LESSONS = [pytest.param(lesson, id=lesson.slug) for lesson in SHELF.lessons]
CLAIMS = [
    pytest.param(lesson, claim, id=f"{lesson.slug}: {claim.text}")
    for lesson in SHELF.lessons
    for claim in lesson.front.claims
]
every_lesson = pytest.mark.parametrize("lesson", LESSONS)

# American spellings, by how the words begin or end.
AMERICAN = re.compile(
    r"\b(color|center|centimeter|millimeter|gray|labor|favor|neighbor|behavior|honor|catalog"
    r"|dialog|fulfill|judgment|defense|traveled|labeled|canceled|modeled|leveled|signaled"
    r"|practiced|practicing|to practice|toward|aluminum|program|license"
    r"|(?!size|seize|prize)\w+iz(e|es|ed|ing|ation))\b",
    re.IGNORECASE,
)
# One word a thing: on the left what is not said, on the right what is said instead.
OTHER_WORDS = {
    r"decks?|VTR|VCR": "player, recorder, machine",
    r"footage|clips?|rushes": "shot, take",
    r"audio|soundtrack": "sound, sound track",
    r"timecode|time-code": "time code",
    r"pre roll|preroll|runup|run up": "pre-roll, run-up",
    r"in[- ]points?|out[- ]points?|mark[- ]in|mark[- ]out": "edit in, edit out",
    r"master tapes?|the master|programme master": "edit master",
    r"camera tapes? master|raw tapes?": "source tape",
    r"control pulses|sync pulses|CTL": "pulses",
    r"out of step|pulses in step": "in phase, out of phase",
    r"SNR|S/N": "signal-to-noise",
    r"video": "picture, videotape",
}
LENGTH = re.compile(r"\d+ seconds?|\d+\.\d dB")
# Some sentence must be as long as this to count as said twice.
REPEATED_WORDS = 7


def sentences(lesson: Lesson) -> Iterator[str]:
    for text in lesson.texts():
        yield from filter(None, re.split(r"(?<=[.!?])\)?\s+", text.strip()))


def words(text: str) -> list[str]:
    return re.findall(r"[\w’'-]+(?:[:.,]\w+)*", text)


def test_every_file_is_on_the_shelf() -> None:
    assert SHELF.problems == ()
    assert len(SHELF.lessons) == len(list(CONTENT.glob("*.md"))) >= 3


def test_first_lessons_are_in_the_order_of_the_course() -> None:
    assert [str(lesson) for lesson in SHELF.lessons][:7] == [
        "Lesson 1: What an edit is",
        "Lesson 2: What is on the tape",
        "Lesson 3: The machines",
        "Lesson 4: Setting up the player",
        "Lesson 5: Setting up the recorder",
        "Lesson 6: Picture and sound levels",
        "Lesson 7: Assemble and insert",
    ]


@every_lesson
def test_lesson_has_all_that_belongs_to_one(lesson: Lesson) -> None:
    parts = list(lesson.all_parts())
    boxes = [part for part in parts if isinstance(part, Box)]
    wrong = [box for box in boxes if box.kind == "goes-wrong"]

    assert 8 <= lesson.front.minutes <= 15
    assert len(lesson.front.outcome) >= 3
    assert len(lesson.front.summary) == 5
    assert lesson.front.sources
    assert len({part.name for part in parts if isinstance(part, Diagram)}) >= 2
    assert [box.kind for box in boxes].count("example") == 1
    assert wrong
    assert all(any(isinstance(part, Diagram) for part in box.parts) for box in wrong)
    assert 2 <= sum(isinstance(part, PlacedDrill) for part in parts) <= 4
    assert {part.slug for part in parts if isinstance(part, PlacedDrill)} <= set(
        lesson.front.drills
    )


@every_lesson
def test_lesson_is_read_in_the_time_it_says(lesson: Lesson) -> None:
    # 100 to 130 words a minute: a text that teaches, with maps to look at and questions.
    count = len(words(lesson.text()))

    assert count / 130 <= lesson.front.minutes <= count / 100
    assert 900 <= count <= 1600


@every_lesson
def test_lesson_says_where_its_facts_come_from(lesson: Lesson) -> None:
    assert any("common practice" in source for source in lesson.front.sources)
    assert all(len(words(source)) >= 3 for source in lesson.front.sources)


@every_lesson
def test_sentences_are_short(lesson: Lesson) -> None:
    assert [each for each in sentences(lesson) if len(words(each)) > 25] == []


@every_lesson
def test_lesson_can_be_read_at_fourteen(lesson: Lesson) -> None:
    # Automated readability index (Senter and Smith, AMRL-TR-66-220, 1967): 9 is age 14 to 15.
    text = [words(each) for each in sentences(lesson)]
    letters = sum(len(word) for each in text for word in each)
    count = sum(map(len, text))
    index = 4.71 * letters / count + 0.5 * count / len(text) - 21.43

    assert index <= 9


@every_lesson
def test_spelling_is_british(lesson: Lesson) -> None:
    assert [found[0] for found in AMERICAN.finditer(lesson.text())] == []


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


@every_lesson
def test_a_thing_has_one_word(lesson: Lesson) -> None:
    used = {
        found[0]: instead
        for pattern, instead in OTHER_WORDS.items()
        for found in re.finditer(rf"\b({pattern})\b", lesson.text(), re.IGNORECASE)
    }

    assert used == {}


@every_lesson
def test_quotation_marks_are_printed_ones(lesson: Lesson) -> None:
    assert re.findall(r"['\"]|\.\.\.| - ", lesson.text()) == []


def test_nothing_is_said_twice_in_two_lessons() -> None:
    said = {
        lesson.slug: {
            " ".join(words(each)).lower()
            for each in sentences(lesson)
            if len(words(each)) >= REPEATED_WORDS
        }
        for lesson in SHELF.lessons
    }

    assert [said[one] & said[other] for one, other in combinations(said, 2)] == [
        set() for _ in combinations(said, 2)
    ]


@pytest.mark.parametrize(("lesson", "claim"), CLAIMS)
def test_claim_is_confirmed_by_the_tape_model(lesson: Lesson, claim: Claim) -> None:
    assert claim.text in lesson.text()
    confirm(lesson, claim)


@every_lesson
def test_every_length_told_of_a_diagram_is_claimed(lesson: Lesson) -> None:
    boxes = [part for part in lesson.parts if isinstance(part, Box) and part.kind != "caution"]
    told = {
        length
        for box in boxes
        for part in box.parts
        for text in part.texts()
        for length in LENGTH.findall(text)
    }
    claimed = {length for claim in lesson.front.claims for length in LENGTH.findall(claim.text)}

    assert told - claimed == set()
