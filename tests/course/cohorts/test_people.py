"""Moving learners, taking them out, and who teaches a cohort."""

from collections.abc import Callable

import pytest
from django.core.exceptions import PermissionDenied
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from course.cohorts.moving import move, remove
from course.cohorts.teaching import LastInstructorError, add_instructor, remove_instructor
from tests.pages import notices, refusals, texts
from tests.people import CohortFactory

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


@pytest.fixture
def quay(ines: Person) -> Cohort:
    """Another cohort of Ines's."""
    cohort = CohortFactory.create(name="Quay group")
    cohort.instructors.add(ines)
    return cohort


def told(person: Person) -> list[str]:
    return [notice.text for notice in person.notices.all()]


def address(name: str, cohort: Cohort, *others: Person) -> str:
    return reverse(name, args=[cohort.pk, *(each.pk for each in others)])


def test_moved_learner_is_in_the_other_cohort_and_told(
    ines: Person, harbour: Cohort, quay: Cohort, mina: Person, client_of: ClientOf
) -> None:
    url = address("move-person", harbour, mina)
    page = client_of(ines).post(url, {"cohort": quay.pk}, follow=True)

    assert list(mina.cohorts.all()) == [quay]
    assert notices(page) == ["Mina Tarrant is in Quay group now, with all their answers."]
    assert told(mina) == [
        "Ines Marlow moved you from Harbour group to Quay group. All your answers are kept."
    ]


def test_moving_twice_moves_once(
    ines: Person, harbour: Cohort, quay: Cohort, mina: Person, client_of: ClientOf
) -> None:
    url, client = address("move-person", harbour, mina), client_of(ines)
    pages = [client.post(url, {"cohort": quay.pk}, follow=True) for _ in range(2)]

    assert notices(pages[1]) == [
        "Mina Tarrant is not in Harbour group any more. Nothing is changed."
    ]
    assert (list(mina.cohorts.all()), len(told(mina))) == ([quay], 1)


@pytest.mark.parametrize("archived", [False, True])
def test_learner_is_moved_to_own_current_cohorts_only(
    ines: Person,
    harbour: Cohort,
    slipway: Cohort,
    quay: Cohort,
    mina: Person,
    client_of: ClientOf,
    archived: bool,
) -> None:
    if archived:
        quay.archived_at = quay.started_at
        quay.save()
    target = quay if archived else slipway
    page = client_of(ines).post(address("move-person", harbour, mina), {"cohort": target.pk})

    assert page.context["form"].errors["cohort"] == [
        "You teach no such cohort. Choose one of the list."
    ]
    with pytest.raises(PermissionDenied):
        move(ines, mina, harbour, target)
    assert list(mina.cohorts.all()) == [harbour]


def test_removed_learner_studies_alone(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    page = client_of(ines).post(address("remove-person", harbour, mina), follow=True)

    assert notices(page) == [
        "Mina Tarrant is not in Harbour group any more. Their answers are theirs."
    ]
    assert list(mina.cohorts.all()) == []
    assert client_of(mina).get("/").status_code == 200
    assert len(told(mina)) == 1


def test_only_who_teaches_both_moves_or_removes(
    rafe: Person, harbour: Cohort, slipway: Cohort, mina: Person
) -> None:
    with pytest.raises(PermissionDenied):
        move(rafe, mina, harbour, slipway)
    with pytest.raises(PermissionDenied):
        remove(rafe, mina, harbour)

    assert list(mina.cohorts.all()) == [harbour]


def test_added_instructor_sees_the_cohort(
    ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    url, client = address("instructors", harbour), client_of(ines)
    pages = [client.post(url, {"sign_in_name": " RAFE "}, follow=True) for _ in range(2)]

    assert [notices(page) for page in pages] == [
        ["Rafe Okell teaches Harbour group, too."],
        ["Rafe Okell teaches Harbour group already."],
    ]
    assert client_of(rafe).get(harbour.get_absolute_url()).status_code == 200
    assert told(rafe) == ["Ines Marlow has made you an instructor of Harbour group."]


@pytest.mark.parametrize("name", ["mina", "ada", "nobody"])
def test_only_instructors_are_added(
    ines: Person, harbour: Cohort, mina: Person, ada: Person, client_of: ClientOf, name: str
) -> None:
    page = client_of(ines).post(address("instructors", harbour), {"sign_in_name": name})

    assert refusals(page) == ["No instructor signs in with this name."]
    assert list(harbour.instructors.all()) == [ines]


def test_last_instructor_stays(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    page = client_of(ines).post(address("instructor-removed", harbour, ines), follow=True)

    assert notices(page) == ["Somebody must teach Harbour group. Add another instructor first."]
    assert list(harbour.instructors.all()) == [ines]


def test_closed_account_is_nobody_who_teaches(ines: Person, rafe: Person, harbour: Cohort) -> None:
    add_instructor(ines, harbour, "rafe")
    rafe.is_active = False
    rafe.save()

    with pytest.raises(LastInstructorError):
        remove_instructor(ines, harbour, ines)


def test_removed_instructor_sees_the_cohort_no_more(
    ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    add_instructor(ines, harbour, "rafe")
    page = client_of(ines).post(address("instructor-removed", harbour, rafe), follow=True)

    assert notices(page) == ["Rafe Okell teaches Harbour group no more."]
    assert client_of(rafe).get(harbour.get_absolute_url()).status_code == 404


def test_instructor_who_stops_teaching_is_led_to_the_rest(
    ines: Person, rafe: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    add_instructor(ines, harbour, "rafe")
    response = client_of(ines).post(address("instructor-removed", harbour, ines))

    assert response.headers["Location"] == reverse("cohorts")
    assert list(harbour.instructors.all()) == [rafe]


def test_others_let_nobody_teach(rafe: Person, harbour: Cohort) -> None:
    with pytest.raises(PermissionDenied):
        add_instructor(rafe, harbour, "rafe")


def test_person_page_leads_to_moving(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    page = client_of(ines).get(address("move-person", harbour, mina))

    assert texts(page, "p", "plain") == ["You teach no other cohort. Start one."]
