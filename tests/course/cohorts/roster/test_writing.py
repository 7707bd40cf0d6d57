"""A roster: every line's fate, then the writing of it, once."""

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier

import pytest
from django.db import connection
from django.utils import timezone
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Membership, Notice, Person, RosterUpload
from course.cohorts.roster.fates import digest_of
from course.cohorts.roster.reckoning import fates_of
from course.cohorts.roster.upload import purge
from course.cohorts.roster.writing import ChangedError, send, write
from tests.people import CohortFactory, learner

pytestmark = pytest.mark.django_db

HEAD = "name,e-mail,cohort,sign-in name\n"


@pytest.fixture
def quay(ines: Person) -> Cohort:
    """Another cohort of Ines's."""
    cohort = CohortFactory.create(name="Quay group")
    cohort.instructors.add(ines)
    return cohort


def told(instructor: Person, lines: str, cohort: Cohort | None = None) -> list[tuple[str, str]]:
    """Each line's fate, with the reason or the cohort that is left."""
    fates = fates_of(instructor, HEAD + lines, cohort)
    return [(str(fate.what), fate.reason or str(fate.leaves or "")) for fate in fates]


def sent(instructor: Person, lines: str, cohort: Cohort | None = None) -> RosterUpload:
    return send(instructor, (HEAD + lines).encode(), cohort)


def confirm(upload: RosterUpload) -> None:
    write(upload, digest_of(fates_of(upload.person, upload.text, upload.cohort)))


def places() -> list[tuple[str, str]]:
    return sorted(Membership.objects.values_list("person__name", "cohort__name"))


def test_every_fate(ines: Person, harbour: Cohort, quay: Cohort, mina: Person, tom: Person) -> None:
    lines = (
        "Mina Tarrant,,Harbour group,\n"
        ",TOM@quay-street.example,Quay group,\n"
        "Tom Brandreth,TOM@quay-street.example,Quay group,\n"
        "Wyn Carrow,wyn@quay-street.example,quay group,\n"
        "Wyn Carrow,wyn@quay-street.example,Harbour group,\n"
        "Mina Tarrant,,Quay group,mina\n"
    )

    assert told(ines, lines) == [
        ("same", ""),
        ("wrong", "There is no name in this line."),
        ("moves", "Harbour group"),
        ("new", ""),
        ("joins", ""),
        ("joins", ""),
    ]


def test_writing_does_what_was_told(
    ines: Person, harbour: Cohort, quay: Cohort, mina: Person, tom: Person
) -> None:
    confirm(sent(ines, "Mina Tarrant,,,\nTom Brandreth,,Quay group,\nWyn Carrow,,,\n", harbour))

    wyn = Person.objects.get(name="Wyn Carrow")
    assert places() == [
        ("Mina Tarrant", "Harbour group"),
        ("Tom Brandreth", "Quay group"),
        ("Wyn Carrow", "Harbour group"),
    ]
    assert (wyn.sign_in_name, wyn.is_learner, wyn.has_usable_password()) == (
        "wyn.carrow",
        True,
        False,
    )
    assert [(notice.person, notice.text) for notice in Notice.objects.order_by("person__name")] == [
        (
            tom,
            "Ines Marlow moved you from Harbour group to Quay group. All your answers are kept.",
        ),
        (
            wyn,
            "Ines Marlow made this account for you, in Harbour group, and a link to choose its "
            "password. Its instructors see your name, e-mail and practice.",
        ),
    ]


def test_same_file_again_changes_nothing(ines: Person, harbour: Cohort, quay: Cohort) -> None:
    lines = (
        "Wyn Carrow,wyn@quay-street.example,,\n"
        "Zoë Ågren,,,\n"
        "Wyn Carrow,,,wyn2\n"
        "Bo Lind,,Quay group,\n"
        "Bo Lind,,,\n"
    )
    confirm(sent(ines, lines, harbour))
    before = (places(), list(Person.objects.values_list("pk", "sign_in_name")))

    assert {what for what, _ in told(ines, lines, harbour)} == {"same"}
    confirm(sent(ines, lines, harbour))
    assert (places(), list(Person.objects.values_list("pk", "sign_in_name"))) == before
    assert len(before[0]) == 5


def test_others_people_are_neither_moved_nor_told_of(
    ines: Person, harbour: Cohort, lena: Person, rafe: Person
) -> None:
    lines = (
        "Lena Fosse,,,\n"
        "Lena Fosse,lena@quay-street.example,,\n"
        "Lena Fosse,,,lena\n"
        "Rafe Okell,,,rafe\n"
    )
    elsewhere = (
        "Somebody already signs in with this name. If it is this person, give them the joining "
        "code: they join by themselves. If not, choose another."
    )

    assert told(ines, lines.split("\n", 1)[0], harbour) == [("new", "")]
    assert told(ines, lines.split("\n", 1)[1], harbour) == [
        (
            "wrong",
            "There is an account with this e-mail address. "
            "Give this person the joining code: they join by themselves.",
        ),
        ("wrong", elsewhere),
        ("wrong", elsewhere),
    ]


@pytest.mark.parametrize(
    ("lines", "reason"),
    [
        ("Wyn,no address,,", "“no address” is not an e-mail address."),
        ("Wyn,,,two words", "Use letters, figures and . _ - @ only, without spaces."),
        ("Wyn,,,,,more", "This line has more cells than the first line has columns."),
        ("Wyn\x07,,,", "There is a character in this that can’t be seen. Type it again."),
        (f"{'W' * 121},,,", "Use at most 120 characters. This has 121."),
        ("Wyn,,Slipway group,", "You teach no cohort named Slipway group."),
        (
            "Mina Tarrant,other@quay-street.example,,",
            "You have a learner of this name with another e-mail address, or none. Put the "
            "sign-in name in the line: theirs, or a new one for somebody else.",
        ),
    ],
)
def test_wrong_line_says_why(
    ines: Person, harbour: Cohort, slipway: Cohort, mina: Person, lines: str, reason: str
) -> None:
    assert told(ines, lines, harbour) == [("wrong", reason)]


def test_lines_that_contradict_one_another_are_left_out(ines: Person, harbour: Cohort) -> None:
    lines = (
        "Wyn Carrow,w@quay-street.example,,\n"
        "Wyn Carrow,w@quay-street.example,,\n"
        "Bo Lind,w@quay-street.example,,\n"
        "Wyn Carrow,,,\n"
        "Wyn Carrow,w@quay-street.example,,wyn9\n"
    )

    assert told(ines, lines, harbour) == [
        ("new", ""),
        ("wrong", "Line 2 has the same person."),
        ("wrong", "Line 2 has this with another name."),
        (
            "wrong",
            "Line 2 has the same name. Give an e-mail address or sign-in name in both lines.",
        ),
        ("wrong", "Line 2 has the same e-mail address."),
    ]


def test_line_without_a_cohort_needs_one(ines: Person, harbour: Cohort) -> None:
    assert told(ines, "Wyn Carrow,,,") == [("wrong", "This line names no cohort.")]


def test_archived_cohort_takes_nobody_and_loses_nobody(
    ines: Person, harbour: Cohort, quay: Cohort, mina: Person
) -> None:
    harbour.archived_at = timezone.now()
    harbour.save()

    assert told(ines, "Wyn,,Harbour group,\nMina Tarrant,,Quay group,") == [
        ("wrong", "You teach no cohort named Harbour group."),
        ("joins", ""),
    ]


def test_closed_account_is_left_out(ines: Person, harbour: Cohort, mina: Person) -> None:
    mina.is_active = False
    mina.save()

    assert told(ines, "Mina Tarrant,,,", harbour) == [
        ("wrong", "This account is closed. An administrator can open it again.")
    ]


def test_sign_in_names_are_made_free(ines: Person, harbour: Cohort) -> None:
    learner("Wyn.Carrow Other")
    lines = HEAD + "Wyn Carrow,a@quay-street.example,,\nWyn Carrow,b@quay-street.example,,\n佳,,,\n"

    names = [fate.sign_in_name for fate in fates_of(ines, lines, harbour)]

    assert names == ["wyn.carrow2", "wyn.carrow3", "learner"]


def test_what_changed_since_the_preview_is_not_written(
    ines: Person, harbour: Cohort, slipway: Cohort
) -> None:
    upload = sent(ines, "Wyn Carrow,,,\n", harbour)
    seen = digest_of(fates_of(ines, upload.text, harbour))
    learner("Wyn.Carrow Other", slipway)

    with pytest.raises(ChangedError):
        write(upload, seen)

    assert (places(), RosterUpload.objects.get().written_at) == (
        [("Wyn.Carrow Other", "Slipway group")],
        None,
    )


@pytest.mark.django_db(transaction=True)
def test_written_once_however_often_it_is_confirmed(ines: Person, harbour: Cohort) -> None:
    upload = sent(ines, "Wyn Carrow,,,\n", harbour)
    seen = digest_of(fates_of(ines, upload.text, harbour))
    together = Barrier(4)

    def one(_: int) -> list[int]:
        together.wait()
        try:
            own = RosterUpload.objects.get(pk=upload.pk)
            write(own, seen)
            return list(own.made)
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        made = list(pool.map(one, range(4)))

    assert made == [[Person.objects.get(name="Wyn Carrow").pk]] * 4
    assert places() == [("Wyn Carrow", "Harbour group")]


def test_a_thousand_people_take_few_queries(
    ines: Person, harbour: Cohort, django_assert_max_num_queries: DjangoAssertNumQueries
) -> None:
    upload = sent(ines, "".join(f"Person {n},,,\n" for n in range(1000)), harbour)

    with django_assert_max_num_queries(60):
        confirm(upload)

    assert harbour.memberships.count() == 1000


def test_names_are_not_kept_after_writing(ines: Person, harbour: Cohort) -> None:
    upload = sent(ines, "Wyn Carrow,,,\n", harbour)
    confirm(upload)

    assert RosterUpload.objects.get().text == ""


def test_what_is_never_written_goes_after_a_day(ines: Person, harbour: Cohort) -> None:
    sent(ines, "Wyn Carrow,,,\n", harbour)
    now = timezone.now()

    purge(now + timedelta(hours=23))
    assert RosterUpload.objects.count() == 1
    purge(now + timedelta(hours=25))
    assert RosterUpload.objects.count() == 0
