"""Every address answers each role as `tests/addresses.py` says."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import timedelta
from http.cookies import SimpleCookie

import pytest
from django.db import connection, transaction
from django.http import HttpResponse
from django.test import Client
from django.urls import NoReverseMatch, URLPattern, URLResolver, get_resolver, reverse
from django.utils import timezone

from course.cohorts.agreeing import ask as ask_for
from course.cohorts.models import Cohort, Person
from course.cohorts.roster.writing import send
from course.lessons.shelf import shelf
from exercises.assignments.verbs import Terms, set_assignment
from exercises.bench.media_address import address as run_address
from exercises.bench.verbs import begin
from exercises.drills.register import KINDS
from exercises.models import Attempt, OwnDrill
from exercises.practice.attempts import ask, submit
from exercises.practice.media_address import token_of
from exercises.practice.sittings import start
from exercises.sign_offs.verbs import Decision, sign_off
from exercises.worktop.practical import Way
from exercises.worktop.shelf import practicals
from tests.addresses import ROLES, TABLE
from tests.answers import right_answer
from tests.own import picture_sent, published
from tests.people import CohortFactory, instructor, learner

ClientOf = Callable[[Person], Client]
DRILL = "choose-the-mode"


@dataclass(frozen=True)
class World:
    """One learner with an answer given, a question open and a picture shown; a cohort."""

    cohort: Cohort
    learner: Person
    attempt: Attempt
    open_token: str
    picture: str
    card: str
    sitting: str
    run: str
    run_picture: str
    assignment: int
    roster: str
    own: OwnDrill
    sent: str
    asked_link: int

    def arguments(self, words: str) -> list[object]:
        found: dict[str, object] = {
            "cohort": self.cohort.pk,
            "person": self.learner.pk,
            "fellow": self.cohort.instructors.get().pk,
            "code": self.cohort.join_code,
            "drill": DRILL,
            "lesson": shelf().lessons[0].slug,
            "lesson-picture": next(iter(shelf().media)),
            "bench-day": "your-first-bench-day",
            "attempt": self.attempt.key,
            "open": self.open_token,
            "picture": self.picture,
            "card": self.card,
            "sitting": self.sitting,
            "practical": "three-shots",
            "run": self.run,
            "zero": 0,
            "run-picture": self.run_picture,
            "assignment": self.assignment,
            "roster": self.roster,
            "table": "answers",
            "own-form": "mode",
            "own": self.own.pk,
            "own-slug": self.own.slug,
            "sent": self.sent,
            "asked-link": self.asked_link,
            "uid": "no-uid",
            "token": "no-token",
        }
        return [found[word] for word in words.split()]


# Django's own admin: its pages are for administrators; everybody else is turned away.
ADMIN_STATUSES = (302, 302, 302, 302, 200, 302)


def asked_of(cohort: Cohort) -> int:
    """A request to those who teach the cohort, by another instructor of one of its learners."""
    orla, quay = instructor("Orla Finch"), CohortFactory.create(name="Quay group")
    quay.instructors.add(orla)
    return ask_for(orla, learner("Pia Roscarrock", cohort, quay)).pk


@pytest.fixture
def world(harbour: Cohort, mina: Person, ines: Person) -> World:
    answered = ask(mina, KINDS[DRILL])
    attempt = submit(answered, right_answer(answered))
    picture = token_of(ask(mina, KINDS["spot-by-eye"]), 0)
    decision = Decision(state="supervised", bench="Bench 1", note="", key="a" * 32)
    card = sign_off(ines, mina, harbour, decision).code
    opens = timezone.now() - timedelta(days=1)
    columns = {"what": "drills", "title": "Care", "questions": 3, "right_needed": 2}
    times = {"opens_at": opens, "due_at": opens + timedelta(days=9)}
    terms = Terms(columns=columns | times, people=[mina])
    assignment = set_assignment(ines, harbour, terms).pk
    sitting = start(mina, [], 5).token
    run = begin(mina, practicals()["three-shots"], Way.ALONE)
    run_picture = run_address(run, 0, 0).rstrip("/").rpartition("/")[2]
    waiting = ask(mina, KINDS[DRILL]).token
    roster = send(ines, b"name\nWyn Carrow\n", harbour).token
    own = published(ines, harbour)
    sent = picture_sent(mina, published(ines, harbour, form="picture")).name
    shown = (waiting, picture, card, sitting, run.token, run_picture)
    told = (assignment, roster, own, sent, asked_of(harbour))
    return World(harbour, mina, attempt, *shown, *told)


@pytest.fixture
def clients(
    mina: Person, tom: Person, ines: Person, rafe: Person, ada: Person, client_of: ClientOf
) -> dict[str, Client]:
    people = (mina, tom, ines, rafe, ada)
    return dict(zip(ROLES, [*map(client_of, people), Client()], strict=True))


def names(patterns: list[URLPattern | URLResolver], space: str = "") -> Iterator[str]:
    """Each pattern's name, with its namespace; one without a name by its route."""
    for pattern in patterns:
        if isinstance(pattern, URLResolver):
            inner = f"{pattern.namespace}:" if pattern.namespace else ""
            yield from names(pattern.url_patterns, space + inner)
        else:
            yield space + (pattern.name or str(pattern.pattern))


def statuses(clients: dict[str, Client], method: str, url: str) -> tuple[int, ...]:
    return tuple(getattr(clients[role], method)(url).status_code for role in ROLES)


def test_every_address_has_a_row() -> None:
    known = {name for name, *_ in TABLE} | {"admin/password_change/"}
    site = {name for name in names(get_resolver().url_patterns) if not name.startswith("admin:")}

    assert site == known


KEPT_BY_NOBODY = "private, no-store"
OF_ANYBODY = {"lesson-shown"}  # a lesson's pictures and sounds, the same for all


def test_every_address_answers_each_role_and_no_cache_keeps_what_is_theirs(
    world: World, clients: dict[str, Client]
) -> None:
    """Each row finds the world as it was: nothing of what a request changes outlasts the row."""
    signed_in = {
        role: client.cookies.output(header="", sep=";") for role, client in clients.items()
    }
    differing, kept = {}, set()
    for name, method, words, expected in TABLE:
        url = reverse(name, args=world.arguments(words))
        with transaction.atomic():
            answers = {role: getattr(clients[role], method)(url) for role in ROLES}
            transaction.set_rollback(True)
        for role, client in clients.items():
            client.cookies = SimpleCookie(signed_in[role])
        got = tuple(answer.status_code for answer in answers.values())
        if got != expected:
            differing[name, method, words] = got
        kept |= {name for role, answer in answers.items() if may_be_kept(name, role, answer)}

    assert differing == {}
    assert kept == {"sign-out"}  # after which nobody is signed in


def may_be_kept(name: str, role: str, answer: HttpResponse) -> bool:
    """Does a cache on the way keep what somebody signed in is sent?"""
    if role == "nobody" or (name in OF_ANYBODY and answer.status_code == 200):
        return False
    return answer.headers.get("Cache-Control") != KEPT_BY_NOBODY


# What has to be kept first: a new question, a try of a joining code.
NEEDS_THE_DISK = {"drill", "sitting", "join-link"}


@pytest.mark.django_db(transaction=True)
def test_pages_are_read_where_nothing_can_be_kept(world: World, clients: dict[str, Client]) -> None:
    for client in clients.values():
        client.raise_request_exception = False
    asked = [
        (name, reverse(name, args=world.arguments(words)), expected)
        for name, method, words, expected in TABLE
        if method == "get"
    ]
    with only_reading():
        got = {(name, url): statuses(clients, "get", url) for name, url, _ in asked}

    differing = {name for name, url, expected in asked if got[name, url] != expected}
    assert differing == NEEDS_THE_DISK
    assert {status for each in got.values() for status in each} <= {200, 302, 403, 404, 503}


@contextmanager
def only_reading() -> Iterator[None]:
    """A database that takes no changes, as on a disk that is full."""
    off, on = {
        "sqlite": ("PRAGMA query_only = ON", "PRAGMA query_only = OFF"),
        "postgresql": (
            "SET default_transaction_read_only = ON",
            "SET default_transaction_read_only = OFF",
        ),
    }[connection.vendor]
    with connection.cursor() as cursor:
        cursor.execute(off)
        try:
            yield
        finally:
            cursor.execute(on)


@pytest.mark.parametrize("path", ["/no/such/page/", "/record", "/admin/password_change/"])
def test_no_cache_keeps_what_is_no_page_of_theirs(
    path: str, mina: Person, client_of: ClientOf
) -> None:
    assert client_of(mina).get(path).headers.get("Cache-Control") == KEPT_BY_NOBODY


# What stays with one instructor where two teach a cohort: their drafts, their files, themselves.
OF_ONE = {"revise-own", "publish-own", "retire-own", "roster-upload"}


def test_whoever_teaches_with_them_gets_what_an_instructor_gets(
    world: World, rafe: Person, client_of: ClientOf
) -> None:
    asked = [
        (name, method, reverse(name, args=world.arguments(words)), expected)
        for name, method, words, expected in TABLE
    ]
    world.cohort.instructors.add(rafe)
    differ = {}
    for name, method, url, expected in asked:
        client = client_of(rafe)
        with transaction.atomic():
            status = getattr(client, method)(url).status_code
            transaction.set_rollback(True)
        if status != expected[ROLES.index("instructor")]:
            differ[name] = status

    assert differ == dict.fromkeys(OF_ONE, 404)


@pytest.mark.parametrize("name", ["index", "cohorts_person_changelist", "cohorts_cohort_add"])
def test_administration_is_for_administrators(name: str, clients: dict[str, Client]) -> None:
    assert statuses(clients, "get", reverse(f"admin:{name}")) == ADMIN_STATUSES


def test_every_address_admin_turns_a_learner_away(world: World, client_of: ClientOf) -> None:
    pages = [name for name in names(get_resolver().url_patterns) if name.startswith("admin:")]
    client = client_of(world.learner)
    reached = []
    for name in pages:
        for arguments in ([], ["1"], ["cohorts"], ["1", "1"]):
            try:
                url = reverse(name, args=arguments)
            except NoReverseMatch:
                continue  # it takes another number of arguments
            reached.append(client.get(url).status_code)

    assert len(reached) >= len(set(pages)) - 2
    assert set(reached) <= {302, 403, 404}
