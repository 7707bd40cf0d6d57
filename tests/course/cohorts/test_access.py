"""Who may see whom."""

from collections.abc import Callable

import pytest
from django.http import Http404
from django.test import Client
from django.urls import reverse

from course.cohorts.access import cohort_for, learner_for
from course.cohorts.models import Cohort, Membership, Person
from tests.pages import heading, texts

ClientOf = Callable[[Person], Client]


def sees_learner(person: Person, cohort: Cohort, learner: Person) -> bool:
    try:
        return learner_for(person, cohort.pk, learner.pk) == learner
    except Http404:
        return False


def sees_cohort(person: Person, cohort: Cohort) -> bool:
    try:
        return cohort_for(person, cohort.pk) == cohort
    except Http404:
        return False


def test_instructor_sees_own_cohorts_only(ines: Person, harbour: Cohort, slipway: Cohort) -> None:
    assert [sees_cohort(ines, cohort) for cohort in (harbour, slipway)] == [True, False]


def test_instructor_sees_learners_of_own_cohorts_only(
    ines: Person, harbour: Cohort, slipway: Cohort, mina: Person, lena: Person, solo: Person
) -> None:
    assert sees_learner(ines, harbour, mina)
    assert not sees_learner(ines, slipway, lena)
    assert not sees_learner(ines, harbour, lena)
    assert not sees_learner(ines, slipway, mina)
    assert not sees_learner(ines, harbour, solo)


def test_learner_in_two_cohorts_is_seen_in_each_by_its_instructor(
    ines: Person, rafe: Person, harbour: Cohort, slipway: Cohort, mina: Person
) -> None:
    Membership.objects.create(cohort=slipway, person=mina)

    assert sees_learner(ines, harbour, mina)
    assert sees_learner(rafe, slipway, mina)
    assert not sees_learner(rafe, harbour, mina)


def test_learner_who_became_an_instructor_is_a_learner_no_more(
    ines: Person, harbour: Cohort, mina: Person
) -> None:
    mina.role = Person.Role.INSTRUCTOR
    mina.save()

    assert not sees_learner(ines, harbour, mina)
    assert Cohort.objects.with_sizes().get(pk=harbour.pk).size == 0  # type: ignore[attr-defined]


def test_instructor_who_became_a_learner_sees_nobody(
    ines: Person, harbour: Cohort, mina: Person
) -> None:
    ines.role = Person.Role.LEARNER
    ines.save()

    assert not sees_cohort(ines, harbour)
    assert not sees_learner(ines, harbour, mina)


def test_learners_and_administrators_see_no_cohort(
    ada: Person, mina: Person, harbour: Cohort
) -> None:
    assert [sees_cohort(person, harbour) for person in (ada, mina)] == [False, False]


def test_two_instructors_of_one_cohort_both_see_it(
    ines: Person, rafe: Person, harbour: Cohort, mina: Person
) -> None:
    harbour.instructors.add(rafe)

    assert sees_learner(ines, harbour, mina)
    assert sees_learner(rafe, harbour, mina)


@pytest.mark.parametrize("pk", [0, 10**9, 10**30])
def test_cohort_that_does_not_exist_is_as_one_of_others(ines: Person, pk: int) -> None:
    with pytest.raises(Http404):
        cohort_for(ines, pk)


def test_number_too_long_for_a_number_is_no_page(ines: Person, client_of: ClientOf) -> None:
    response = client_of(ines).get(f"/cohorts/{'9' * 5000}/joining-code/")

    assert (response.status_code, heading(response)) == (404, "There is no such page")


def test_stranger_is_sent_to_sign_in_and_back(client: Client, harbour: Cohort) -> None:
    response = client.get(reverse("joining-code", args=[harbour.pk]), {"a": "1"})

    expected = f"/sign-in/?next=/cohorts/{harbour.pk}/joining-code/%3Fa%3D1"
    assert (response.status_code, response.headers["Location"]) == (302, expected)


def test_stranger_who_sent_a_form_comes_back_to_its_page(client: Client, harbour: Cohort) -> None:
    response = client.post(reverse("joining-code", args=[harbour.pk]))

    expected = f"/sign-in/?next=/cohorts/{harbour.pk}/joining-code/"
    assert response.headers["Location"] == expected


def test_fragment_asked_for_by_a_stranger_turns_the_whole_page(client: Client) -> None:
    headers = {
        "HX-Request": "true",
        "HX-Current-URL": "http://testserver/drills/choose-the-mode/?again=1",
    }
    response = client.post(reverse("details"), headers=headers)

    expected = "/sign-in/?next=/drills/choose-the-mode/%3Fagain%3D1"
    assert (response.status_code, response.headers["HX-Redirect"]) == (200, expected)


def test_page_of_another_site_is_no_place_to_come_back_to(client: Client) -> None:
    headers = {"HX-Request": "true", "HX-Current-URL": "http://elsewhere.example/drills/"}
    response = client.post(reverse("details"), headers=headers)

    assert response.headers["HX-Redirect"] == "/sign-in/?next="


@pytest.mark.parametrize("page", ["cohorts", "new-cohort"])
def test_learner_is_told_that_a_page_is_for_instructors(
    mina: Person, client_of: ClientOf, page: str
) -> None:
    response = client_of(mina).get(reverse(page))

    assert response.status_code == 403
    assert texts(response, "p", "lede") == ["This page is for instructors."]


def test_closed_account_is_a_stranger(mina: Person, client_of: ClientOf) -> None:
    client = client_of(mina)
    mina.is_active = False
    mina.save()

    assert client.get(reverse("account")).headers["Location"] == "/sign-in/?next=/account/"
