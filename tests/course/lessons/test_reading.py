"""How far somebody has read: kept by small posts, shown on the list."""

import re
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime
from threading import Barrier

import pytest
from django.db import connection
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Person
from course.lessons.models import Reading
from course.lessons.reading import finish, reach, reading_of, readings_of
from course.lessons.shelf import shelf

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
LESSON = shelf().lessons[1]
FIRST, SECOND, THIRD = (section.id for section in LESSON.contents[:3])
REACHED = reverse("lesson-reached", args=[LESSON.slug])
READ = reverse("lesson-read", args=[LESSON.slug])
EARLY, LATE = datetime(2026, 3, 2, 9, tzinfo=UTC), datetime(2026, 3, 3, 9, tzinfo=UTC)


def test_nobody_has_read_anything_at_first(mina: Person) -> None:
    assert [(each.begun, each.done) for each in readings_of(mina)] == [
        (False, False) for _ in shelf().lessons
    ]


def test_section_in_view_is_kept(mina: Person, client_of: ClientOf) -> None:
    answer = client_of(mina).post(REACHED, {"section": SECOND})

    assert (answer.status_code, answer.content) == (204, b"")
    assert reading_of(mina, LESSON).section == LESSON.contents[1].title
    assert Reading.objects.count() == 1


def test_furthest_section_stays(mina: Person) -> None:
    for section in (FIRST, THIRD, SECOND):
        reach(mina, LESSON, section)

    assert Reading.objects.get().section == THIRD


def test_section_that_is_no_longer_there_gives_way(mina: Person) -> None:
    Reading.objects.create(person=mina, lesson=LESSON.slug, section="gone")
    assert reading_of(mina, LESSON).section == ""

    reach(mina, LESSON, FIRST)

    assert Reading.objects.get().section == FIRST


def test_summary_in_view_is_the_end(mina: Person, client_of: ClientOf) -> None:
    client_of(mina).post(REACHED, {"section": "summary"})

    assert reading_of(mina, LESSON).done


@pytest.mark.parametrize(
    ("sent", "sentence"),
    [
        ({}, "Name the section that was reached."),
        ({"section": "no-such-place"}, "The lesson has no such section."),
        ({"section": "x" * 10_000}, "The lesson has no such section."),
    ],
)
def test_section_that_is_not_of_the_lesson_is_refused(
    mina: Person, client_of: ClientOf, sent: dict[str, str], sentence: str
) -> None:
    answer = client_of(mina).post(REACHED, sent)

    assert (answer.status_code, answer.content.decode()) == (422, sentence)
    assert Reading.objects.count() == 0


def test_button_marks_a_lesson_as_read_once(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)
    for _ in range(2):
        answer = client.post(READ)

    assert answer["Location"] == f"/lessons/{LESSON.slug}/#next-step"
    assert Reading.objects.filter(lesson=LESSON.slug, done_at__isnull=False).count() == 1


def test_first_reading_counts(mina: Person) -> None:
    finish(mina, LESSON, EARLY)
    finish(mina, LESSON, LATE)
    reach(mina, LESSON, THIRD, LATE)

    reading = Reading.objects.get()
    assert (reading.done_at, reading.done) == (EARLY, True)


def test_link_to_the_button_leads_to_the_lesson(mina: Person, client_of: ClientOf) -> None:
    assert client_of(mina).get(READ)["Location"] == f"/lessons/{LESSON.slug}/#next-step"
    assert Reading.objects.count() == 0


def test_list_says_what_was_read_and_where_to_go_on(mina: Person, client_of: ClientOf) -> None:
    finish(mina, shelf().lessons[0])
    reach(mina, LESSON, SECOND)
    html = client_of(mina).get(reverse("lessons")).content.decode()
    kickers = [" ".join(each.split()) for each in re.findall(r'"kicker">([^<]*)<', html)]

    assert [kicker.split(" · ")[2:] for kicker in kickers[:3]] == [["read"], ["begun"], []]
    assert f'<a href="/lessons/{LESSON.slug}/#{SECOND}">' in html


def test_own_reading_only_is_seen(mina: Person, tom: Person) -> None:
    finish(mina, LESSON)

    assert not reading_of(tom, LESSON).done


def test_page_asks_for_each_section_once_and_offers_the_button(
    mina: Person, client_of: ClientOf, client: Client
) -> None:
    page = reverse("lesson", args=[LESSON.slug])
    html = client_of(mina).get(page).content.decode()

    sections = [*(section.id for section in LESSON.contents), "summary"]
    assert re.findall(r"""hx-vals='{"section": "([^"]+)"}'""", html) == sections
    assert html.count("Mark this lesson as read") == 1
    stranger = client.get(page).content.decode()
    assert ("hx-vals" in stranger, "Mark this lesson" in stranger) == (False, False)


def test_page_of_a_lesson_that_was_read_says_when(mina: Person, client_of: ClientOf) -> None:
    finish(mina, LESSON, EARLY)
    html = client_of(mina).get(reverse("lesson", args=[LESSON.slug])).content.decode()

    assert "You read this lesson on 2 March 2026." in html
    assert '"section": "summary"' not in html


def test_reading_goes_with_the_person(mina: Person) -> None:
    finish(mina, LESSON)
    mina.delete()

    assert Reading.objects.count() == 0


@pytest.mark.django_db(transaction=True)
def test_told_at_the_same_moment_is_kept_once(mina: Person) -> None:
    start = Barrier(4)

    def one(number: int) -> None:
        start.wait()
        if number % 2:
            finish(mina, LESSON)
        else:
            reach(mina, LESSON, SECOND)
        connection.close()

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(one, range(4)))

    assert [reading.done for reading in Reading.objects.all()] == [True]
