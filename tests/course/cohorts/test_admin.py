"""Django's admin: for administrators alone, by the site's own door."""

from collections.abc import Callable

import pytest
from django.contrib import admin
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Membership, Person, ResetLink
from tests.pages import heading, texts
from tests.people import PASSWORD, PersonFactory

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
PEOPLE = reverse("admin:cohorts_person_changelist")
NO_PLACES = {
    "memberships-TOTAL_FORMS": "0",
    "memberships-INITIAL_FORMS": "0",
}


def change_page(person: Person) -> str:
    return reverse("admin:cohorts_person_change", args=[person.pk])


def test_stranger_comes_in_by_the_sites_own_door(client: Client, ada: Person) -> None:
    response = client.get(PEOPLE, follow=True)

    assert response.redirect_chain[-1] == (f"/sign-in/?next={PEOPLE}", 302)
    assert heading(response) == "Sign in"


def test_administrator_who_signs_in_there_comes_to_the_admin(client: Client, ada: Person) -> None:
    door = client.get(PEOPLE, follow=True)
    fields = {"sign_in_name": "ada", "password": PASSWORD, "next": door.context["next"]}
    response = client.post(reverse("sign-in"), fields, follow=True)

    assert response.redirect_chain[-1] == (PEOPLE, 302)
    assert response.status_code == 200


@pytest.mark.parametrize(
    ("wanted", "goes_to"),
    [
        (PEOPLE, PEOPLE),
        ("", "/admin/"),
        ("/admin/login/", "/admin/login/"),
        ("https://elsewhere.example/", "/admin/"),
        ("//admin/", "/admin/"),
    ],
)
def test_door_leads_no_further_than_this_site(
    ada: Person, client_of: ClientOf, wanted: str, goes_to: str
) -> None:
    response = client_of(ada).get(reverse("administration-door"), {"next": wanted})

    assert response.headers["Location"] == goes_to


def test_admins_own_form_takes_no_password(client: Client, ada: Person) -> None:
    fields = {"username": "ada", "password": PASSWORD, "next": "/admin/"}
    response = client.post("/admin/login/", fields)

    assert (response.status_code, "_auth_user_id" in client.session) == (405, False)


@pytest.mark.parametrize("who", ["ines", "mina"])
def test_others_are_told_whom_the_admin_is_for(
    request: pytest.FixtureRequest, client_of: ClientOf, who: str
) -> None:
    response = client_of(request.getfixturevalue(who)).get(PEOPLE, follow=True)

    assert response.status_code == 403
    assert texts(response, "p", "lede") == ["This page is for administrators."]


def test_admin_knows_people_and_cohorts_and_no_groups() -> None:
    ours = {m.__name__ for m in admin.site._registry if m._meta.app_label in {"cohorts", "auth"}}

    assert ours == {"Person", "Cohort"}


@pytest.mark.parametrize("number", [1, 3])
def test_list_of_people_asks_the_database_constantly(
    ada: Person,
    client_of: ClientOf,
    number: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    PersonFactory.create_batch(number)
    client = client_of(ada)

    # Session, person; the filter's cohorts; people counted twice, and listed.
    with django_assert_num_queries(6):
        client.get(PEOPLE)


def test_nothing_of_a_password_is_shown(ada: Person, mina: Person, client_of: ClientOf) -> None:
    client = client_of(ada)
    algorithm, *rest = mina.password.split("$")
    pages = [client.get(url).content.decode() for url in (PEOPLE, change_page(mina))]

    assert [part for part in [algorithm, *rest] if any(part in page for page in pages)] == []


def test_people_are_found_by_name_and_role(
    ada: Person, mina: Person, ines: Person, client_of: ClientOf
) -> None:
    client = client_of(ada)
    by_name = client.get(PEOPLE, {"q": "tarr"}).context["cl"].result_list
    by_role = client.get(PEOPLE, {"role__exact": "instructor"}).context["cl"].result_list

    assert ([p.name for p in by_name], [p.name for p in by_role]) == (
        ["Mina Tarrant"],
        ["Ines Marlow"],
    )


def test_people_are_not_found_by_their_password(
    ada: Person, mina: Person, client_of: ClientOf
) -> None:
    response = client_of(ada).get(PEOPLE, {"password__startswith": "md5"})

    assert response.status_code == 400


def test_administrator_makes_an_instructor(ada: Person, client_of: ClientOf) -> None:
    fields = {
        "name": "Orla  Finch",
        "sign_in_name": " Orla ",
        "email": "",
        "role": "instructor",
        "password1": "leader-black-bars",
        "password2": "leader-black-bars",
    }
    client_of(ada).post(reverse("admin:cohorts_person_add"), fields | NO_PLACES)
    orla = Person.objects.get(sign_in_name="orla")

    assert (orla.name, orla.role, orla.is_superuser) == ("Orla Finch", "instructor", False)
    assert Client().login(username="orla", password="leader-black-bars")


def test_administrator_makes_an_administrator(
    ada: Person, ines: Person, client_of: ClientOf
) -> None:
    fields = {"name": ines.name, "sign_in_name": "ines", "role": "administrator", "is_active": "on"}
    client_of(ada).post(change_page(ines), fields | NO_PLACES)

    assert client_of(ines).get(PEOPLE).status_code == 200


@pytest.mark.parametrize(
    "name", ["MINA", " mina", "\uff4d\uff49\uff4e\uff41", "a b", "m\0", "x" * 151]
)
def test_sign_in_name_that_is_no_good_is_refused(
    ada: Person, mina: Person, tom: Person, client_of: ClientOf, name: str
) -> None:
    fields = {"name": tom.name, "sign_in_name": name, "role": "learner", "is_active": "on"}
    response = client_of(ada).post(change_page(tom), fields | NO_PLACES)
    tom.refresh_from_db()

    assert (response.status_code, tom.sign_in_name) == (200, "tom")


def fail_to_sign_in(name: str) -> None:
    """So often that the right password is refused as well."""
    for _ in range(5):
        Client().post(reverse("sign-in"), {"sign_in_name": name, "password": "wrong"})


def test_password_set_by_an_administrator_opens_a_throttled_account(
    ada: Person, mina: Person, client_of: ClientOf
) -> None:
    fail_to_sign_in("mina")
    fields = {
        "password1": "bars-and-leader",
        "password2": "bars-and-leader",
    }
    client_of(ada).post(reverse("admin:auth_user_password_change", args=[mina.pk]), fields)
    then = Client().post(
        reverse("sign-in"), {"sign_in_name": "mina", "password": "bars-and-leader"}
    )

    assert then.status_code == 302


def test_password_page_needs_a_password(ada: Person, mina: Person, client_of: ClientOf) -> None:
    fields = {"usable_password": "false", "unset-password": "1", "password1": "", "password2": ""}
    client_of(ada).post(reverse("admin:auth_user_password_change", args=[mina.pk]), fields)

    assert Client().login(username="mina", password=PASSWORD)


def test_administrator_forgets_failed_sign_ins(
    ada: Person, mina: Person, tom: Person, client_of: ClientOf
) -> None:
    fail_to_sign_in("mina")
    fail_to_sign_in("tom")
    client_of(ada).post(PEOPLE, {"action": "forget_failures", "_selected_action": [mina.pk]})

    right = [{"sign_in_name": name, "password": PASSWORD} for name in ("mina", "tom")]
    then = [Client().post(reverse("sign-in"), fields).status_code for fields in right]
    assert then == [302, 429]


def test_administrator_makes_a_link_for_an_instructor(
    ada: Person, ines: Person, client_of: ClientOf
) -> None:
    client, address = client_of(ada), reverse("admin:reset-link", args=[ines.pk])
    asked = client.get(address)
    (link,) = texts(client.post(address), "code")

    assert (asked.status_code, Client().get(link).status_code) == (200, 200)
    assert list(ResetLink.objects.values_list("made_by__name", "for_person__name")) == [
        ("Ada Quill", "Ines Marlow")
    ]


@pytest.mark.parametrize("id", ["0", "999", "x", "_00"])
def test_link_for_nobody_is_no_page(ada: Person, client_of: ClientOf, id: str) -> None:
    assert client_of(ada).get(f"/admin/cohorts/person/{id}/reset-link/").status_code == 404


def test_only_administrators_make_links_there(
    ines: Person, mina: Person, client_of: ClientOf
) -> None:
    response = client_of(ines).post(reverse("admin:reset-link", args=[mina.pk]))

    assert (response.status_code, ResetLink.objects.count()) == (302, 0)


def test_person_with_links_can_be_deleted(
    ada: Person, ines: Person, mina: Person, client_of: ClientOf
) -> None:
    ResetLink.objects.create(made_by=ines, for_person=mina)
    client = client_of(ada)
    client.post(reverse("admin:cohorts_person_delete", args=[mina.pk]), {"post": "yes"})

    assert not Person.objects.filter(pk=mina.pk).exists()


@pytest.mark.parametrize(("who", "places"), [("solo", 1), ("rafe", 0)])
def test_only_learners_are_given_places(
    request: pytest.FixtureRequest,
    ada: Person,
    harbour: Cohort,
    ines: Person,
    client_of: ClientOf,
    who: str,
    places: int,
) -> None:
    fields = {
        "name": harbour.name,
        "instructors": [ines.pk],
        "started_at_0": "2026-03-02",
        "started_at_1": "09:00",
        "memberships-TOTAL_FORMS": "1",
        "memberships-INITIAL_FORMS": "0",
        "memberships-0-person": str(request.getfixturevalue(who).pk),
        "memberships-0-joined_at_0": "2026-03-02",
        "memberships-0-joined_at_1": "09:00",
    }
    client_of(ada).post(reverse("admin:cohorts_cohort_change", args=[harbour.pk]), fields)

    assert Membership.objects.count() == places


def test_administrator_renews_joining_codes(
    ada: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    before = {harbour.pk: harbour.join_code, slipway.pk: slipway.join_code}
    url = reverse("admin:cohorts_cohort_changelist")
    client_of(ada).post(url, {"action": "renew_codes", "_selected_action": [harbour.pk]})
    after = dict(Cohort.objects.values_list("pk", "join_code"))

    assert [pk for pk in before if before[pk] != after[pk]] == [harbour.pk]


@pytest.mark.parametrize("model", ["person", "cohort"])
@pytest.mark.parametrize("page", ["changelist", "add"])
def test_every_page_of_the_admin_opens(
    ada: Person, harbour: Cohort, mina: Person, client_of: ClientOf, model: str, page: str
) -> None:
    assert client_of(ada).get(reverse(f"admin:cohorts_{model}_{page}")).status_code == 200


def test_password_page_of_the_admin_is_the_sites_own(ada: Person, client_of: ClientOf) -> None:
    response = client_of(ada).get(reverse("admin:password_change"))

    assert response.headers["Location"] == reverse("password")


@pytest.mark.parametrize("row", ["x", "", "9" * 30, "²", "-1"])
@pytest.mark.parametrize("action", ["delete_selected", "forget_failures", "renew_codes"])
def test_action_on_what_is_no_row_can_not_be_read(
    ada: Person, client_of: ClientOf, action: str, row: str
) -> None:
    of = "cohort" if action == "renew_codes" else "person"
    fields = {"action": action, "_selected_action": row}
    page = client_of(ada).post(reverse(f"admin:cohorts_{of}_changelist"), fields)

    assert (page.status_code, heading(page)) == (400, "That can’t be read")
