"""Joining a cohort, by a code or by a link."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from course.cohorts.joining import UNKNOWN, end_code, join, read_code, renew_code
from course.cohorts.models import CODE_LETTERS, Cohort, Membership, Person, new_join_code
from tests.pages import heading, notices, refusals, texts

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


@pytest.fixture
def code(harbour: Cohort) -> str:
    harbour.join_code = "BCDFGHJK"
    harbour.save()
    return harbour.join_code


def link(code: str) -> str:
    return reverse("join-link", args=[code])


@pytest.mark.parametrize(
    "typed",
    ["BCDFGHJK", "bcdf-ghjk", " b c d f g h j k ", "BCDF–GHJK", "ｂｃｄｆｇｈｊｋ", "bcdf\0ghjk."],
)
def test_code_is_read_however_it_is_typed(typed: str) -> None:
    assert read_code(typed) == "BCDFGHJK"


def test_code_has_no_letter_that_is_misread() -> None:
    codes = [new_join_code() for _ in range(200)]

    assert {len(code) for code in codes} == {8}
    assert set("".join(codes)) <= set(CODE_LETTERS)
    assert set(CODE_LETTERS) & set("AEIOUL01") == set()


def test_code_on_the_board_reads_as_the_code(harbour: Cohort) -> None:
    assert read_code(harbour.spoken_code) == harbour.join_code


def test_typed_code_leads_to_the_cohort(solo: Person, client_of: ClientOf, code: str) -> None:
    response = client_of(solo).post(reverse("join"), {"code": "bcdf ghjk"})

    assert response.headers["Location"] == link(code)


@pytest.mark.parametrize(
    ("typed", "refused"),
    [
        ("ZZZZZZZZ", UNKNOWN),
        ("---", UNKNOWN),
        ("", "This is still empty."),
        ("Z" * 61, "Use at most 60 characters. This has 61."),
    ],
)
def test_typed_code_that_is_no_good_is_refused(
    client: Client, code: str, typed: str, refused: str
) -> None:
    page = client.post(reverse("join"), {"code": typed})

    assert (page.status_code, refusals(page)) == (422, [refused])


@pytest.mark.parametrize("typed", ["ZZZZZZZZ", "Z" * 2000, "%F0%9F%8E%9E", "' OR 1=1", "."])
def test_unknown_link_says_so(client: Client, code: str, typed: str) -> None:
    page = client.get(f"/join/{typed}/")

    assert (page.status_code, heading(page), refusals(page)) == (404, "Join a cohort", [UNKNOWN])


def test_link_shows_which_cohort_and_whose(solo: Person, client_of: ClientOf, code: str) -> None:
    page = client_of(solo).get(link(code))

    assert heading(page) == "Harbour group"
    assert texts(page, "p", "lede") == [
        "Taught by Ines Marlow. "
        "Instructors see the name, e-mail and practice of the learners in their cohort."
    ]


def test_looking_at_the_link_joins_nothing(solo: Person, client_of: ClientOf, code: str) -> None:
    client_of(solo).get(link(code))

    assert list(solo.cohorts.all()) == []


def test_learner_confirms_and_joins(
    solo: Person, harbour: Cohort, client_of: ClientOf, code: str
) -> None:
    page = client_of(solo).post(link(code), follow=True)

    assert list(solo.cohorts.all()) == [harbour]
    assert notices(page) == ["You have joined Harbour group."]


def test_joining_twice_is_one_place(mina: Person, client_of: ClientOf, code: str) -> None:
    page = client_of(mina).post(link(code), follow=True)

    assert Membership.objects.filter(person=mina).count() == 1
    assert notices(page) == ["You are in Harbour group already. Nothing is changed."]


def test_link_tells_a_member_so(mina: Person, client_of: ClientOf, code: str) -> None:
    page = client_of(mina).get(link(code))

    assert texts(page, "p", "lede") == ["You are in this cohort already."]


@pytest.mark.django_db(transaction=True)
def test_joining_at_once_is_one_place(solo: Person, harbour: Cohort) -> None:
    start = Barrier(6)

    def one(_: int) -> bool:
        start.wait()
        try:
            return join(solo, harbour)
        finally:
            connection.close()

    with ThreadPoolExecutor(6) as pool:
        new = sorted(pool.map(one, range(6)))

    assert (new, Membership.objects.count()) == ([False] * 5 + [True], 1)


def test_learner_may_be_in_two_cohorts(
    mina: Person, slipway: Cohort, harbour: Cohort, client_of: ClientOf
) -> None:
    client_of(mina).post(link(slipway.join_code))

    assert list(mina.cohorts.all()) == [harbour, slipway]


def test_stranger_is_offered_an_account_or_a_sign_in(client: Client, code: str) -> None:
    page = client.get(link(code))

    assert texts(page, "a", "button") == ["Make an account and join", "I have an account"]


def test_stranger_signs_in_and_comes_back_to_confirm(client: Client, code: str) -> None:
    response = client.post(link(code))

    assert response.headers["Location"] == "/sign-in/?next=/join/BCDFGHJK/"


@pytest.mark.parametrize("who", ["ines", "rafe", "ada"])
def test_only_learners_join(
    request: pytest.FixtureRequest, client_of: ClientOf, code: str, who: str
) -> None:
    client = client_of(request.getfixturevalue(who))
    pages = [client.get(link(code)), client.post(link(code)), client.get(reverse("join"))]

    assert [page.status_code for page in pages] == [200, 403, 200]
    assert [heading(page) for page in pages] == ["Joining is for learners"] * 3
    assert Membership.objects.count() == 0


def test_only_learners_join_whichever_way_they_come(ines: Person, slipway: Cohort) -> None:
    with pytest.raises(PermissionDenied):
        join(ines, slipway)


@pytest.fixture
def at(monkeypatch: pytest.MonkeyPatch) -> Callable[[float], None]:
    """`at(seconds)` sets the clock that the throttle reads."""
    start = timezone.now()

    def set_clock(seconds: float) -> None:
        monkeypatch.setattr(
            "course.cohorts.throttle.timezone.now", lambda: start + timedelta(seconds=seconds)
        )

    set_clock(0)
    return set_clock


@pytest.mark.usefixtures("stopped_clock")
def test_guessing_codes_is_throttled_by_either_way(client: Client, code: str) -> None:
    statuses = [client.get(link(f"GUESS{n}")).status_code for n in range(50)]
    statuses += [client.post(reverse("join"), {"code": f"GUESS{n}"}).status_code for n in range(50)]
    then = [client.get(link(code)), client.post(reverse("join"), {"code": code})]

    assert statuses == [404] * 50 + [422] * 50
    assert [page.status_code for page in then] == [429, 429]


def test_who_guesses_without_end_keeps_no_right_code_out_for_long(
    client: Client, code: str, at: Callable[[float], None]
) -> None:
    for n in range(100):
        client.get(link(f"GUESS{n}"))
    came = []
    for n in range(1, 21):
        at(n * 0.4)
        client.get(link(f"ZZZ{n}"))
        at(n * 0.4 + 0.3)
        came.append(Client().get(link(code)).status_code)

    assert came == [200] * 20


@pytest.mark.usefixtures("stopped_clock")
def test_who_is_signed_in_is_kept_out_by_no_stranger(
    client: Client, solo: Person, client_of: ClientOf, code: str
) -> None:
    for n in range(100):
        client.get(link(f"GUESS{n}"))

    assert client.get(link(code)).status_code == 429
    assert client_of(solo).get(link(code)).status_code == 200


@pytest.mark.usefixtures("stopped_clock")
def test_guessing_is_throttled_for_who_is_signed_in(
    solo: Person, mina: Person, client_of: ClientOf, code: str
) -> None:
    guessing = client_of(solo)
    statuses = [guessing.get(link(f"GUESS{n}")).status_code for n in range(10)]

    assert statuses == [404] * 10
    assert guessing.get(link(code)).status_code == 429
    assert client_of(mina).get(link(code)).status_code == 200


def test_classroom_that_joins_by_one_link_is_not_throttled(client: Client, code: str) -> None:
    assert {Client().get(link(code)).status_code for _ in range(60)} == {200}


def test_renewed_code_opens_and_the_old_does_not(
    ines: Person, harbour: Cohort, client_of: ClientOf, client: Client, code: str
) -> None:
    client_of(ines).post(reverse("joining-code", args=[harbour.pk]))
    harbour.refresh_from_db()

    old, new = client.get(link(code)), client.get(link(harbour.join_code))
    assert (old.status_code, new.status_code) == (404, 200)


def test_code_works_to_the_end_of_its_last_day(
    solo: Person, harbour: Cohort, client: Client, code: str
) -> None:
    today = timezone.localdate()
    end_code(harbour, today)
    open_page = client.get(link(code))
    end_code(harbour, today - timedelta(days=1))
    ended = client.get(link(code))

    said = (
        f"This code worked until {today - timedelta(days=1):%-d %B %Y}. "
        "Ask your instructor for a new one."
    )
    assert (open_page.status_code, ended.status_code, refusals(ended)) == (200, 404, [said])
    assert refusals(client.post(reverse("join"), {"code": code})) == [said]
    assert refusals(client.get(reverse("new-account"), {"code": code})) == [said]


def test_ended_code_joins_nobody(
    solo: Person, harbour: Cohort, client_of: ClientOf, code: str
) -> None:
    end_code(harbour, timezone.localdate() - timedelta(days=1))
    client_of(solo).post(link(code))

    assert Membership.objects.count() == 0


def test_ended_code_is_not_counted_as_guessing(client: Client, harbour: Cohort, code: str) -> None:
    end_code(harbour, timezone.localdate() - timedelta(days=1))

    assert {Client().get(link(code)).status_code for _ in range(60)} == {404}


def test_archived_cohort_is_joined_by_nobody(client: Client, harbour: Cohort, code: str) -> None:
    harbour.archived_at = timezone.now()
    harbour.save()

    said = ["Harbour group is finished: nobody joins it any more."]
    assert refusals(client.get(link(code))) == said


def test_instructor_sets_the_last_day(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    url, day = reverse("joining-code-end", args=[harbour.pk]), timezone.localdate()
    client = client_of(ines)
    client.post(url, {"last_day": f"{day:%Y-%m-%d}"})
    harbour.refresh_from_db()

    assert (harbour.code_last_day, harbour.code_has_ended) == (day, False)
    client.post(url, {"last_day": ""})
    harbour.refresh_from_db()
    assert harbour.join_code_expires_at is None


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("2020-01-01", "This day has passed. Choose today or a later one."),
        ("soon", "Give the day as 2026-05-31."),
        ("9999-12-31", "Choose a day within the next ten years."),
    ],
)
def test_last_day_that_is_no_good_is_refused(
    ines: Person, harbour: Cohort, client_of: ClientOf, typed: str, said: str
) -> None:
    url = reverse("joining-code-end", args=[harbour.pk])
    page = client_of(ines).post(url, {"last_day": typed})

    assert (page.status_code, refusals(page)) == (422, [said])


def test_renewed_code_does_not_keep_a_passed_end(harbour: Cohort) -> None:
    end_code(harbour, timezone.localdate() - timedelta(days=1))
    renew_code(harbour)

    assert harbour.join_code_expires_at is None
