"""The glossary itself: every word of the course, in order, and where it is taught."""

import re

import pytest
from django.test import Client
from django.urls import reverse

from course.lessons.problems import Problem
from course.lessons.shelf import CONTENT, lesson_place, shelf
from tests.course.lessons.sample import LESSON, SLUG, shelve

# The trade's own words that the site uses, one word a thing.
WORDS = """player, recorder, source tape, edit master, take, run-up, pre-roll, post-roll, edit in,
edit out, assemble, insert, picture track, sound track, control track, tracking, skew, picture
level, sound level, limiter, automatic gain, AGC, generation, bars and tone, black, leader, shot
log, paper edit, edit sheet, dub, bench, servo lock, cross-pulse display, underscan display,
lesson, drill, attempt, cohort, bench practical, readiness, sign-off"""
GLOSSARY = shelf().glossary


@pytest.mark.parametrize("word", [" ".join(word.split()) for word in WORDS.split(",")])
def test_word_of_the_trade_has_an_entry(word: str) -> None:
    assert word.casefold() in GLOSSARY.named


def test_entries_stand_in_the_order_of_the_alphabet() -> None:
    text = (CONTENT / "glossary.toml").read_text(encoding="utf-8")
    written = re.findall(r'^term = "(.*)"$', text, re.MULTILINE)

    assert written == sorted(written, key=str.casefold)
    assert [term.term for term in GLOSSARY.terms] == written


def test_entries_are_one_to_three_plain_sentences() -> None:
    sentences = {term.term: re.split(r"(?<=\.) ", term.means) for term in GLOSSARY.terms}
    long = {
        term: sentence
        for term, said in sentences.items()
        for sentence in said
        if len(sentence.split()) > 25
    }

    assert {term: said for term, said in sentences.items() if not 1 <= len(said) <= 3} == {}
    assert long == {}
    assert [term.term for term in GLOSSARY.terms if not term.means.endswith(".")] == []


def test_place_of_a_term_is_where_its_entry_says_or_it_first_stands_in_bold() -> None:
    shelved = shelf()

    assert shelved.teaches(GLOSSARY.named["run-up"]) == lesson_place(
        "what-is-on-the-tape", "run-up"
    )
    assert shelved.teaches(GLOSSARY.named["erase head"]) == lesson_place(
        "assemble-and-insert", "assemble-end"
    )


def test_place_that_is_not_there_is_told(tmp_path_factory: pytest.TempPathFactory) -> None:
    folder = tmp_path_factory.mktemp("content")
    text = f'[[terms]]\nterm = "x"\nmeans = "X."\ntaught = "{SLUG}#third"\n'
    (folder / "glossary.toml").write_text(text, encoding="utf-8")

    assert shelve(folder, LESSON).problems == (
        Problem(
            str(folder / "glossary.toml"),
            1,
            f"“x” is taught at “{SLUG}#third”, and there is no such place.",
        ),
    )


def test_glossary_that_can_not_be_read_is_told(
    tmp_path_factory: pytest.TempPathFactory,
) -> None:
    folder = tmp_path_factory.mktemp("content")
    (folder / "glossary.toml").write_text("[[terms]]\n", encoding="utf-8")
    shelved = shelve(folder, LESSON)

    assert shelved.problems == (
        Problem(str(folder / "glossary.toml"), 1, "A term has term and means."),
    )
    assert [lesson.slug for lesson in shelved.lessons] == [SLUG]


def test_stranger_reads_every_entry(client: Client, db: None) -> None:
    html = client.get(reverse("glossary")).content.decode()

    assert re.findall(r'<div id="([^"]+)" class="entry">', html) == [
        term.slug for term in GLOSSARY.terms
    ]
    assert html.count('href="/lessons/what-is-on-the-tape/#run-up"') >= 1


def test_lessons_lead_to_the_glossary(client: Client, db: None) -> None:
    html = client.get(reverse("lessons")).content.decode()

    assert html.count('href="/glossary/"') == 1


def test_every_link_to_a_term_finds_its_entry() -> None:
    slugs = {term.slug for term in GLOSSARY.terms}
    used = {use.term for lesson in shelf().lessons for use in lesson.terms}

    assert used - slugs == set()
