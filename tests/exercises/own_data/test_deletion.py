"""Deleting a learner: what goes, what stays, and who may."""

from collections.abc import Callable

import pytest
from django.apps import apps
from django.core.exceptions import PermissionDenied
from django.db.models import RESTRICT, ForeignKey
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from course.cohorts.models import Cohort, Membership, Person
from course.cohorts.telling import tell
from course.lessons.models import Reading
from exercises.bench.sheets import SheetSaid, keep_sheet
from exercises.drills.register import KINDS
from exercises.models import Attempt, BenchSheet, SignOff
from exercises.own_data.deletion import ANSWERED_FOR, delete_learner
from exercises.practice.attempts import ask, submit
from exercises.practice.sittings import start
from exercises.reviews.verbs import Said, reply, review
from exercises.sign_offs.verbs import Decision, sign_off, withdraw
from tests.answers import right_answer
from tests.pages import notices, refusals
from tests.people import PASSWORD

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


def practise(person: Person) -> None:
    start(person, [], 3)
    asked = ask(person, KINDS["choose-the-mode"])
    submit(asked, right_answer(asked))
    Reading.objects.create(person=person, lesson="what-an-edit-is")
    tell(person, "You were moved.")


def sign(ines: Person, mina: Person, harbour: Cohort) -> SignOff:
    decision = Decision(state="alone", bench="Bench 1", note="Well done, Mina.", key="k")
    made = sign_off(ines, mina, harbour, decision)
    withdraw(ines, made, "Mina is away.")
    return made


def left_of(pk: int) -> dict[str, int]:
    """Rows that still name the person, by table and column."""
    found = {
        f"{model._meta.label}.{field.name}": model._base_manager.filter(**{field.name: pk}).count()
        for model in apps.get_models()
        for field in [*model._meta.concrete_fields, *model._meta.local_many_to_many]
        if field.related_model is Person
    }
    return {column: count for column, count in found.items() if count}


def test_deleted_learner_leaves_nothing(mina: Person, tom: Person) -> None:
    practise(mina)
    practise(tom)
    before = left_of(tom.pk)
    delete_learner(mina)

    assert left_of(mina.pk) == {}
    assert not Person.objects.filter(name="Mina Tarrant").exists()
    assert left_of(tom.pk) == before
    assert Attempt.objects.get().person == tom


def test_sign_off_stays_without_the_person(ines: Person, mina: Person, harbour: Cohort) -> None:
    practise(mina)
    made = sign(ines, mina, harbour)
    delete_learner(mina)

    stays = SignOff.objects.get()
    person = stays.person
    assert left_of(mina.pk) == {"exercises.SignOff.person": 1}
    assert (stays.state, stays.at, stays.instructor, stays.cohort) == (
        made.state,
        made.at,
        ines,
        harbour,
    )
    assert (stays.note, stays.evidence, stays.withdrawal.reason) == ("", {}, "")
    assert (made.person_name, stays.person_name) == ("Mina Tarrant", "Former learner")
    assert stays.instructor_name == "Ines Marlow"
    assert made.code != stays.code
    assert (person.name, person.email, person.is_active) == ("Former learner", "", False)
    assert "mina" not in person.sign_in_name
    assert not person.has_usable_password()


def test_card_of_a_deleted_account_counts_no_more(
    client: Client, ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    sign(ines, mina, harbour)
    delete_learner(mina)
    stays = SignOff.objects.get()

    checked = client.get(reverse("verify-card", args=[stays.code]))
    page = client_of(ines).get(reverse("sign-off", args=[harbour.pk, stays.code]))

    assert checked.status_code == 404
    assert stays.get_absolute_url().encode() not in page.content
    assert reverse("withdraw-sign-off", args=[harbour.pk, stays.code]).encode() not in page.content


def test_pages_of_the_instructor_still_open(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    made = sign(ines, mina, harbour)
    delete_learner(mina)
    made.refresh_from_db()
    client = client_of(ines)
    pages = [
        client.get(reverse("sign-offs", args=[harbour.pk])),
        client.get(reverse("sign-off", args=[harbour.pk, made.code])),
        client.get(reverse("results-table", args=[harbour.pk, "sign-offs"])),
    ]

    assert [page.status_code for page in pages] == [200, 200, 200]


def test_all_that_somebody_answers_for_is_asked_about() -> None:
    restricted = {
        (model, field.name)
        for model in apps.get_models()
        for field in model._meta.concrete_fields
        if isinstance(field, ForeignKey)
        and field.related_model is Person
        and field.remote_field.on_delete is RESTRICT
    }

    assert restricted == {*ANSWERED_FOR, (SignOff, "person")}


def test_own_bench_sheets_go_with_the_learner(mina: Person) -> None:
    told = SheetSaid(day=timezone.localdate(), edits=1, habits={}, wrong="", key="e" * 32)
    keep_sheet(mina, mina, told)

    delete_learner(mina)

    assert not BenchSheet.objects.exists()


def test_own_replies_hold_nobody_back(ines: Person, mina: Person) -> None:
    asked = ask(mina, KINDS["free-answer"])
    attempt = submit(asked, right_answer(asked))
    review(ines, attempt, Said(what="score", text="Name the mode.", score=40, key="c" * 32))
    reply(mina, attempt, "It was an insert.")
    delete_learner(mina)

    assert not Person.objects.filter(pk=mina.pk).exists()


def test_only_learners_are_deleted(ines: Person, harbour: Cohort) -> None:
    with pytest.raises(PermissionDenied):
        delete_learner(ines)


def test_learner_deletes_themselves_with_the_password(mina: Person, client_of: ClientOf) -> None:
    client, elsewhere, url = client_of(mina), client_of(mina), reverse("delete-account")
    wrong = client.post(url, {"password": "wrong"})
    kept = Person.objects.filter(pk=mina.pk).exists()
    done = client.post(url, {"password": PASSWORD}, follow=True)

    assert (refusals(wrong), kept) == (["That is not your password. Nothing is deleted."], True)
    assert notices(done) == ["Your account is deleted, with all that was kept about you."]
    assert not Person.objects.filter(pk=mina.pk).exists()
    assert elsewhere.get(reverse("account")).status_code == 302


def test_instructor_deletes_by_name(
    ines: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    client, url = client_of(ines), reverse("delete-person", args=[harbour.pk, mina.pk])
    wrong = client.post(url, {"name": "Tom Brandreth"})
    done = client.post(url, {"name": " mina  tarrant"}, follow=True)

    assert refusals(wrong) == ["This is not their name. Nothing is deleted."]
    assert notices(done) == ["The account of Mina Tarrant is deleted."]


def test_name_with_what_can_not_be_seen_is_typed_as_it_is_seen(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    Person.objects.filter(pk=mina.pk).update(name="Mina\u200b Tarrant")  # as was once taken
    url = reverse("delete-person", args=[harbour.pk, mina.pk])
    client_of(ines).post(url, {"name": "mina tarrant"})

    assert not Person.objects.filter(pk=mina.pk).exists()


def test_instructor_deletes_nobody_whom_others_teach(
    ines: Person, harbour: Cohort, slipway: Cohort, mina: Person, client_of: ClientOf
) -> None:
    Membership.objects.create(cohort=slipway, person=mina)
    client, url = client_of(ines), reverse("delete-person", args=[harbour.pk, mina.pk])

    statuses = [client.get(url).status_code, client.post(url, {"name": mina.name}).status_code]
    assert (statuses, Person.objects.filter(pk=mina.pk).exists()) == ([200, 403], True)
