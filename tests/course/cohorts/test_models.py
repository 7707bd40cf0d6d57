"""The people and cohorts themselves."""

import pytest
from django.conf import settings
from django.core.management import call_command
from django.db import IntegrityError
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


@pytest.mark.django_db
def test_first_administrator_is_made_on_the_command_line(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("DJANGO_SUPERUSER_PASSWORD", PASSWORD)
    call_command(
        "createsuperuser", interactive=False, sign_in_name="Keeper", name="Keeper", verbosity=0
    )
    keeper = Person.objects.get(sign_in_name="keeper")

    assert (keeper.role, keeper.is_staff, keeper.is_superuser) == ("administrator", True, True)
    assert Client().login(username="keeper", password=PASSWORD)


def test_role_alone_makes_a_superuser(mina: Person) -> None:
    mina.is_superuser = True
    mina.save()

    assert Person.objects.get(pk=mina.pk).is_superuser is False


def test_sign_in_names_that_differ_in_capitals_are_one(mina: Person) -> None:
    with pytest.raises(IntegrityError):
        Person.objects.create_user("MINA", name="Another Mina")
