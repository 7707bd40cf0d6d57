"""The people and cohorts themselves."""

from django.conf import settings
from django.test import Client

from course.cohorts.models import Cohort, Person
from tests.people import PASSWORD


def test_named_people_are_who_they_say(
    ines: Person, mina: Person, tom: Person, lena: Person, harbour: Cohort, slipway: Cohort
) -> None:
    assert list(harbour.learners.all()) == [mina, tom]
    assert list(slipway.learners.all()) == [lena]
    assert list(Cohort.objects.taught_by(ines)) == [harbour]


def test_password_of_a_named_person_opens_the_door(mina: Person) -> None:
    assert Client().login(username="mina", password=PASSWORD)


def test_settings_of_the_tests_come_from_their_environment() -> None:
    assert "run-up-tests-" in str(settings.DATA_DIR)
    assert settings.HTTPS is False
