"""The administrators' pages delete people by the one verb, and offer no other way."""

from collections.abc import Callable
from typing import Any

import pytest
from django.contrib.admin.models import LogEntry
from django.core.exceptions import PermissionDenied
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.models import SignOff
from exercises.own_data.deletion import ANSWERS, GONE, ONLY_LEARNERS, delete_learner
from exercises.sign_offs.verbs import Decision, sign_off
from tests.pages import texts
from tests.people import PASSWORD, learner

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
PEOPLE = reverse("admin:cohorts_person_changelist")


def sign(by: Person, person: Person, cohort: Cohort) -> SignOff:
    decision = Decision(state="alone", bench="Bench 1", note="", key=f"k{person.pk}")
    return sign_off(by, person, cohort, decision)


def delete_one(client: Client, person: Person) -> Any:
    url = reverse("admin:cohorts_person_delete", args=[person.pk])
    return client.post(url, {"post": "yes"})


def delete_many(client: Client, *people: Person, sure: bool = True) -> Any:
    chosen = {"action": "delete_selected", "_selected_action": [each.pk for each in people]}
    return client.post(PEOPLE, chosen | ({"post": "yes"} if sure else {}))


@pytest.mark.parametrize("way", [delete_one, delete_many])
def test_sign_off_outlives_the_learner(
    ada: Person, ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf, way: Any
) -> None:
    made = sign(ines, mina, harbour)
    response = way(client_of(ada), mina)

    stays = SignOff.objects.get()
    assert response.status_code == 302
    assert (stays.pk, stays.instructor, stays.cohort) == (made.pk, ines, harbour)
    assert (stays.person.name, stays.person.is_deleted) == ("Former learner", True)


def test_many_are_deleted_together(
    ada: Person, ines: Person, mina: Person, tom: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    sign(ines, mina, harbour)
    client = client_of(ada)
    asked = delete_many(client, mina, tom, sure=False)
    delete_many(client, mina, tom)

    assert "Mina Tarrant (mina)" in texts(asked, "li")
    assert not Person.objects.filter(name__in=[mina.name, tom.name]).exists()
    assert SignOff.objects.count() == 1


def test_who_signed_is_deleted_in_no_company(
    ada: Person, ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    sign(ines, mina, harbour)
    page = delete_many(client_of(ada), ines, mina)

    assert f"Ines Marlow: {ONLY_LEARNERS}" in texts(page, "li")
    assert "_selected_action" not in page.content.decode()
    assert Person.objects.filter(name__in=[ines.name, mina.name]).count() == 2
    assert SignOff.objects.get().person.name == "Mina Tarrant"


@pytest.mark.parametrize("who", ["ines", "ada"])
def test_deleting_staff_is_not_offered(
    request: pytest.FixtureRequest, ada: Person, client_of: ClientOf, who: str
) -> None:
    person, client = request.getfixturevalue(who), client_of(ada)
    page = client.get(reverse("admin:cohorts_person_change", args=[person.pk]))

    assert "Delete" not in texts(page, "a")
    assert texts(page, "p", "help") == [ONLY_LEARNERS]
    assert delete_one(client, person).status_code == 403
    assert Person.objects.filter(pk=person.pk).exists()


def test_deleting_a_learner_is_offered(ada: Person, mina: Person, client_of: ClientOf) -> None:
    page = client_of(ada).get(reverse("admin:cohorts_person_change", args=[mina.pk]))

    assert "Delete" in texts(page, "a")
    assert texts(page, "p", "help") == []


def test_learner_who_signed_as_an_instructor_stays(
    ada: Person, ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    sign(ines, mina, harbour)
    ines.role = Person.Role.LEARNER
    ines.save()
    own = client_of(ines).post(reverse("delete-account"), {"password": PASSWORD})

    assert (own.status_code, texts(own, "p", "lede")) == (403, [ANSWERS])
    assert delete_one(client_of(ada), ines).status_code == 403
    with pytest.raises(PermissionDenied):
        delete_learner(ines)
    assert SignOff.objects.get().instructor.name == "Ines Marlow"


def test_closed_account_of_a_learner_is_deleted(
    ada: Person, mina: Person, client_of: ClientOf
) -> None:
    Person.objects.filter(pk=mina.pk).update(is_active=False)
    delete_one(client_of(ada), mina)

    assert not Person.objects.filter(pk=mina.pk).exists()


def test_deleted_account_is_not_offered_again(
    ada: Person, ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    made, client = sign(ines, mina, harbour), client_of(ada)
    delete_one(client, mina)
    page = client.get(reverse("admin:cohorts_person_change", args=[mina.pk]))
    code = SignOff.objects.get(pk=made.pk).code
    delete_learner(mina)

    assert texts(page, "p", "help") == [GONE]
    assert SignOff.objects.get(pk=made.pk).code == code


def test_administrators_log_keeps_no_name_of_the_deleted(
    ada: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client = client_of(ada)
    place = {
        "memberships-TOTAL_FORMS": "1",
        "memberships-INITIAL_FORMS": "1",
        "memberships-0-id": str(mina.memberships.get().pk),
        "memberships-0-person": str(mina.pk),
        "memberships-0-cohort": str(harbour.pk),
        "memberships-0-joined_at_0": "2026-03-02",
        "memberships-0-joined_at_1": "09:00",
    }
    fields = {"name": mina.name, "sign_in_name": "mina", "role": "learner", "is_active": "on"}
    client.post(reverse("admin:cohorts_person_change", args=[mina.pk]), fields | place)
    before = LogEntry.objects.count()
    delete_one(client, mina)

    assert (before, LogEntry.objects.count()) == (1, 2)
    assert not [each for each in LogEntry.objects.values() if "Mina" in str(each)]


def test_cohorts_are_not_deleted_here(ada: Person, harbour: Cohort, client_of: ClientOf) -> None:
    client = client_of(ada)
    page = client.get(reverse("admin:cohorts_cohort_changelist"))
    one = client.post(reverse("admin:cohorts_cohort_delete", args=[harbour.pk]), {"post": "yes"})
    chosen = {"action": "delete_selected", "_selected_action": [harbour.pk], "post": "yes"}
    client.post(reverse("admin:cohorts_cohort_changelist"), chosen)

    assert "Delete selected cohorts" not in texts(page, "option")
    assert one.status_code == 403
    assert Cohort.objects.filter(pk=harbour.pk).exists()


@pytest.mark.parametrize("number", [1, 4])
def test_asking_about_many_asks_the_database_constantly(
    ada: Person,
    harbour: Cohort,
    client_of: ClientOf,
    number: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    people = [learner(f"Extra{each} Person", harbour) for each in range(number)]
    client = client_of(ada)

    # Session, person; the list's filter, counted twice; the chosen; nine ways to answer for
    # others; the chosen once more, counted for the heading.
    with django_assert_num_queries(16):
        delete_many(client, *people, sure=False)
