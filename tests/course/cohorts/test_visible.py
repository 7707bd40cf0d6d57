"""A name can be seen, wherever one is taken."""

from collections.abc import Callable

import pytest
from django.core.exceptions import ValidationError
from django.core.management import CommandError, call_command
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from course.cohorts.roster.reckoning import fates_of
from course.cohorts.visible import NOTHING_SEEN, UNSEEN, as_seen, is_visible, refuse_invisible
from tests.pages import refusals

ClientOf = Callable[[Person], Client]

# Unicode 16.0, DerivedCoreProperties.txt, Default_Ignorable_Code_Point: what is drawn as nothing
# even where a font does not know it.
IGNORABLE = [
    (0x00AD, 0x00AD),
    (0x034F, 0x034F),
    (0x061C, 0x061C),
    (0x115F, 0x1160),
    (0x17B4, 0x17B5),
    (0x180B, 0x180F),
    (0x200B, 0x200F),
    (0x202A, 0x202E),
    (0x2060, 0x206F),
    (0x3164, 0x3164),
    (0xFE00, 0xFE0F),
    (0xFEFF, 0xFEFF),
    (0xFFA0, 0xFFA0),
    (0xFFF0, 0xFFF8),
    (0x1BCA0, 0x1BCA3),
    (0x1D173, 0x1D17A),
    (0xE0000, 0xE0FFF),
]
# The same file of the same version, White_Space in PropList.txt.
SPACES = "\t\n\v\f\r \x85\xa0\u1680\u2000\u200a\u2028\u2029\u202f\u205f\u3000"
# A zero-width space, a Hangul filler, accents with nothing under them, a blank Braille pattern.
BLANK = ["\u200b", "\u3164", "\u0301\u0308", "\u2800", "\u200b \u2060", "\ufe0f"]


def test_what_unicode_has_drawn_as_nothing_is_not_visible() -> None:
    seen = [
        hex(code)
        for low, high in IGNORABLE
        for code in range(low, high + 1)
        if is_visible(chr(code))
    ]

    assert seen == []


@pytest.mark.parametrize("text", ["", SPACES, *BLANK, "\U0001d159", "\ue000", "\ud800"])
def test_nothing_of_this_is_seen(text: str) -> None:
    assert not is_visible(text)


@pytest.mark.parametrize(
    "name", ["Mina", "Ó", "e\u0301", "Ли", "李", "ก็", "7", "·", "क्‍ष", "می‌رود", "\u200bMina"]
)
def test_names_of_all_scripts_are_seen(name: str) -> None:
    assert is_visible(name)


@pytest.mark.parametrize(
    "name", ["Mina", "Ó", "e\u0301", "Ли", "李", "ก็", "क्\u200dष", "می\u200cرود", "Mina O’Dare"]
)
def test_names_of_all_scripts_are_taken(name: str) -> None:
    refuse_invisible(name)


PASSING = ["Odo\u200b Farrant", "\u200bOdo Farrant", "Odo\u3164Farrant", "O\u00addo", "Odo\u200d"]


@pytest.mark.parametrize("name", PASSING)
def test_name_with_what_can_not_be_seen_is_refused(name: str) -> None:
    with pytest.raises(ValidationError, match=UNSEEN):
        refuse_invisible(name)


def test_names_that_look_alike_are_alike() -> None:
    assert as_seen("\u200bOdo\u200b  Farrant\u2060") == "Odo Farrant"


@pytest.mark.django_db
@pytest.mark.parametrize("name", PASSING)
def test_nobody_passes_as_another(mina: Person, client_of: ClientOf, name: str) -> None:
    page = client_of(mina).post(reverse("details"), {"name": name, "email": ""})

    assert (page.status_code, refusals(page)) == (422, [UNSEEN])


@pytest.mark.django_db
@pytest.mark.parametrize("name", BLANK)
def test_account_is_made_under_no_such_name(harbour: Cohort, name: str) -> None:
    fields = {
        "name": name,
        "sign_in_name": "peg",
        "new_password": "leader-black-bars",
        "again": "leader-black-bars",
    }
    for code in ("", harbour.join_code):
        page = Client().post(reverse("new-account"), fields | {"code": code})

        assert (page.status_code, refusals(page)) == (422, [NOTHING_SEEN])
    assert not Person.objects.filter(sign_in_name="peg").exists()


@pytest.mark.django_db
@pytest.mark.parametrize("name", BLANK)
def test_nobody_is_renamed_to_nothing(mina: Person, client_of: ClientOf, name: str) -> None:
    page = client_of(mina).post(reverse("details"), {"name": name, "email": ""})

    assert (page.status_code, refusals(page)) == (422, [NOTHING_SEEN])


@pytest.mark.django_db
@pytest.mark.parametrize("name", BLANK)
def test_line_of_a_roster_with_no_such_name_is_left_out(
    ines: Person, harbour: Cohort, name: str
) -> None:
    (fate,) = fates_of(ines, f"name,e-mail\n{name},peg@quay-street.example\n", harbour)

    assert (str(fate.what), fate.reason) == ("wrong", NOTHING_SEEN)


@pytest.mark.django_db
@pytest.mark.parametrize("where", ["person_add", "person_change", "cohort_change"])
def test_administrators_give_no_such_name(
    ada: Person, mina: Person, harbour: Cohort, client_of: ClientOf, where: str
) -> None:
    on = {"person_add": [], "person_change": [mina.pk], "cohort_change": [harbour.pk]}[where]
    response = client_of(ada).post(reverse(f"admin:cohorts_{where}", args=on), {"name": "\u3164"})

    assert response.context["adminform"].form.errors["name"] == [NOTHING_SEEN]


@pytest.mark.django_db
def test_first_administrator_has_no_such_name() -> None:
    with pytest.raises(CommandError, match=NOTHING_SEEN):
        call_command("createsuperuser", sign_in_name="ada", name="\u200b", interactive=False)


@pytest.mark.django_db
def test_sign_in_name_of_nothing_seen_is_refused(client: Client) -> None:
    fields = {"name": "Peg", "sign_in_name": "\u3164", "new_password": "leader-black-bars"}
    page = client.post(reverse("new-account"), fields | {"again": "leader-black-bars"})

    assert refusals(page) == [NOTHING_SEEN]


@pytest.mark.django_db
def test_cohort_has_no_such_name(ines: Person, client_of: ClientOf) -> None:
    page = client_of(ines).post(reverse("new-cohort"), {"name": "\u200b"})

    assert refusals(page) == [NOTHING_SEEN]
