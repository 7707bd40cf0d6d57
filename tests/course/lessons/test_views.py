import gzip
import re
from collections.abc import Callable
from html.parser import HTMLParser
from itertools import pairwise

import pytest
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.benches import usual_bench
from course.cohorts.models import Cohort, Person
from course.lessons.shelf import shelf

ClientOf = Callable[[Person], Client]

PAGES = [reverse("lessons"), *(reverse("lesson", args=[each.slug]) for each in shelf().lessons)]
every_page = pytest.mark.parametrize("page", PAGES)
# A lesson is read on a phone in a workshop: text, maps and all.
HEAVIEST, HEAVIEST_SENT = 100_000, 15_000


class Tags(HTMLParser):
    """Every tag of a page with its attributes, in order."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.found: list[tuple[str, dict[str, str | None]]] = []
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.found.append((tag, dict(attrs)))

    def values(self, name: str) -> list[str]:
        return [value for _, attributes in self.found if (value := attributes.get(name))]


def html_of(client: Client, page: str) -> str:
    response = client.get(page)
    assert response.status_code == 200
    return response.content.decode()


@every_page
def test_stranger_reads_without_a_query(
    client: Client, page: str, django_assert_num_queries: DjangoAssertNumQueries, db: None
) -> None:
    with django_assert_num_queries(0):
        html_of(client, page)


@every_page
def test_learner_reads_with_as_many_queries_whatever_the_lesson(
    client_of: ClientOf,
    mina: Person,
    page: str,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client = client_of(mina)

    # The session, the person, how far they have read; on a lesson, the bench of their cohort.
    with django_assert_num_queries(3 if page == reverse("lessons") else 4):
        html_of(client, page)


@pytest.mark.parametrize("name", ["ines", "ada", "solo"])
def test_everybody_reads_lessons(
    client_of: ClientOf, name: str, request: pytest.FixtureRequest
) -> None:
    client = client_of(request.getfixturevalue(name))

    assert [client.get(page).status_code for page in PAGES] == [200] * len(PAGES)


def test_list_says_what_each_lesson_teaches(client: Client) -> None:
    html = html_of(client, reverse("lessons"))

    for lesson in shelf().lessons:
        assert f"Lesson {lesson.number} · {lesson.front.minutes} minutes" in html
        assert f'<a href="/lessons/{lesson.slug}/">{lesson.title}</a>' in html
        assert all(ability in html for ability in lesson.front.outcome)
        assert " · ".join(drill.title for drill in lesson.drills) in html


def plain(html: str) -> str:
    return " ".join(re.sub("<[^>]+>", "", html).split())


def test_lesson_has_the_figures_of_the_readers_bench(
    client_of: ClientOf, client: Client, mina: Person, harbour: Cohort
) -> None:
    bench = usual_bench()
    bench.name, bench.pre_roll, bench.lock = "Bench 2", 7, 150
    bench.save()
    harbour.bench = bench
    harbour.save()
    page = reverse("lesson", args=["what-is-on-the-tape"])

    own, usual = plain(html_of(client_of(mina), page)), plain(html_of(client, page))

    assert "for Bench 2, count on 6 seconds." in own
    assert "The bench’s figures in this lesson are those of Bench 2." in own
    assert "for your bench, count on 5 seconds." in usual
    assert "are the usual ones, by common practice. Ask for those of your own bench." in usual


def test_unknown_lesson_is_not_found(client: Client, db: None) -> None:
    assert client.get("/lessons/no-such-lesson/").status_code == 404


@every_page
def test_lesson_is_only_read(client: Client, page: str) -> None:
    assert client.post(page).status_code == 405


def test_stranger_is_asked_to_sign_in_where_a_drill_is_placed(client: Client) -> None:
    html = html_of(client, reverse("lesson", args=["assemble-and-insert"]))
    links = re.findall(r'<a href="([^"]+)">Sign in to practise here</a>', html)

    assert links == [
        f"/sign-in/?next=/lessons/assemble-and-insert/%23drill-{number}" for number in (1, 2, 3)
    ]
    assert "hx-post" not in html


def test_learner_can_answer_where_a_drill_is_placed(client_of: ClientOf, mina: Person) -> None:
    html = html_of(client_of(mina), reverse("lesson", args=["assemble-and-insert"]))
    forms = [
        attributes
        for tag, attributes in Tags(html).found
        if tag == "form" and "hx-post" in attributes
    ]

    assert [form["action"] for form in forms] == [
        reverse("drill-ask", args=[slug])
        for slug in ("spot-the-bad-edit", "choose-the-mode", "choose-the-mode")
    ]
    assert all(form["action"] == form["hx-post"] for form in forms)
    assert {form["hx-target"] for form in forms} == {"closest .placed-drill"}
    assert {form["hx-swap"] for form in forms} == {"innerHTML"}
    assert {form["method"] for form in forms} == {"post"}


def buttons(html: str) -> list[str | None]:
    """Where the links that look like buttons lead."""
    return [
        attributes["href"]
        for tag, attributes in Tags(html).found
        if tag == "a" and attributes.get("class") == "button"
    ]


def test_drills_are_the_next_step(client_of: ClientOf, mina: Person, client: Client) -> None:
    page = reverse("lesson", args=["what-an-edit-is"])
    drills = ["/drills/choose-the-mode/", "/drills/spot-the-bad-edit/"]

    assert buttons(html_of(client_of(mina), page)) == drills
    assert buttons(html_of(client, page)) == [f"/sign-in/?next={drill}" for drill in drills]


def test_lesson_leads_to_its_neighbours(client: Client) -> None:
    tags = Tags(html_of(client, reverse("lesson", args=["what-is-on-the-tape"])))

    assert {
        attributes["rel"]: attributes["href"]
        for tag, attributes in tags.found
        if tag == "a" and "rel" in attributes
    } == {"prev": "/lessons/what-an-edit-is/", "next": "/lessons/the-machines/"}


@every_page
def test_names_on_a_page_are_unique_and_every_link_finds_its_place(
    client: Client, page: str
) -> None:
    tags = Tags(html_of(client, page))
    ids = tags.values("id")
    named = [name for value in tags.values("aria-labelledby") for name in value.split()]
    inside = [href[1:] for href in tags.values("href") if href.startswith("#")]

    assert len(ids) == len(set(ids))
    assert set(named) | set(inside) <= set(ids)


@every_page
def test_links_to_other_lessons_find_their_place(client: Client, page: str) -> None:
    for href in Tags(html_of(client, page)).values("href"):
        address, _, place = href.partition("#")
        if address.startswith("/lessons/"):
            ids = Tags(html_of(client, address)).values("id")
            assert not place or place in ids


@every_page
def test_nothing_is_inline(client_of: ClientOf, mina: Person, page: str) -> None:
    tags = Tags(html_of(client_of(mina), page))
    names = {name for _, attributes in tags.found for name in attributes}

    assert [
        tag for tag, attributes in tags.found if tag == "script" and "src" not in attributes
    ] == []
    assert [tag for tag, _ in tags.found if tag == "style"] == []
    assert {name for name in names if name == "style" or name.startswith("on")} == set()


@every_page
def test_headings_do_not_leave_out_an_order(client: Client, page: str) -> None:
    tags = Tags(html_of(client, page))
    orders = [int(tag[1]) for tag, _ in tags.found if re.fullmatch("h[1-6]", tag)]

    assert orders[0] == 1
    assert orders.count(1) == 1
    assert [late for early, late in pairwise(orders) if late > early + 1] == []


@every_page
def test_page_is_light(client: Client, page: str) -> None:
    html = html_of(client, page).encode()

    assert len(html) < HEAVIEST
    assert len(gzip.compress(html)) < HEAVIEST_SENT


def test_lesson_leads_to_its_practicals(mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get(reverse("lesson", args=["making-an-edit"])).content.decode()

    assert reverse("practical", args=["three-shots"]) in page
