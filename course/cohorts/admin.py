"""Django's admin, for administrators: people and cohorts."""

from typing import Any

from django.contrib import admin, messages
from django.contrib.admin.helpers import ACTION_CHECKBOX_NAME
from django.contrib.admin.utils import unquote
from django.contrib.auth.admin import UserAdmin
from django.contrib.auth.models import Group
from django.core.exceptions import BadRequest
from django.db.models import QuerySet
from django.http import Http404, HttpRequest, HttpResponse
from django.shortcuts import render
from django.urls import URLPattern, path

from course.cohorts.admin_forms import NewPersonForm, PersonForm, SetPasswordForm
from course.cohorts.joining import renew_code
from course.cohorts.limits import forget_failures
from course.cohorts.models import Cohort, Membership, Person
from course.cohorts.reset import ends, make_reset_link

admin.site.site_header = "Run-up administration"
admin.site.site_title = "Run-up"
admin.site.index_title = "Administration"
admin.site.unregister(Group)  # the role alone decides what somebody may do


LARGEST_KEY = 2**63 - 1  # of a `BigAutoField`


def refuse_odd_rows(request: HttpRequest) -> None:
    """The rows that an action is for are numbers, which Django would not ask before it looks."""
    for row in request.POST.getlist(ACTION_CHECKBOX_NAME):
        if not (row.isascii() and row.isdigit() and int(row[:20]) <= LARGEST_KEY):
            raise BadRequest("An action is for rows that are listed.")


class PlaceInline(admin.TabularInline):  # type: ignore[type-arg]
    model = Membership
    autocomplete_fields = ["person", "cohort"]
    verbose_name = "place in a cohort"
    verbose_name_plural = "places in cohorts"
    extra = 0


@admin.register(Person)
class PersonAdmin(UserAdmin):  # type: ignore[type-arg]
    form = PersonForm
    add_form = NewPersonForm
    add_form_template = None
    change_password_form = SetPasswordForm
    change_form_template = "cohorts/admin_person.html"
    list_display = ["name", "sign_in_name", "role", "email", "is_active", "last_login"]
    list_filter = ["role", "is_active", "cohorts"]
    search_fields = ["name", "sign_in_name", "email"]
    ordering = ["name", "pk"]
    fieldsets = [
        (None, {"fields": ["name", "sign_in_name", "email", "role", "is_active"]}),
        ("Dates", {"fields": ["joined_at", "last_login"]}),
    ]
    add_fieldsets = [
        (None, {"fields": ["name", "sign_in_name", "email", "role", "password1", "password2"]}),
    ]
    readonly_fields = ["joined_at", "last_login"]
    filter_horizontal = []
    inlines = [PlaceInline]
    actions = ["forget_failures"]

    def response_action(
        self, request: HttpRequest, *args: Any, **options: Any
    ) -> HttpResponse | None:
        refuse_odd_rows(request)
        return super().response_action(request, *args, **options)

    def get_urls(self) -> list[URLPattern]:
        link = path(
            "<id>/reset-link/", self.admin_site.admin_view(self.reset_link), name="reset-link"
        )
        return [link, *super().get_urls()]

    def reset_link(self, request: HttpRequest, id: str) -> HttpResponse:
        """Ask whether to make a link for a new password; by POST make and show it."""
        person = self.get_object(request, unquote(id))
        if not isinstance(person, Person) or not isinstance(request.user, Person):
            raise Http404
        context = {
            **self.admin_site.each_context(request),
            "title": f"A link for {person}",
            "person": person,
            "made": person.reset_links.select_related("made_by"),
        }
        if request.method == "POST":
            context["link"] = make_reset_link(request.user, person, request)
            context["ends"] = ends()
        return render(request, "cohorts/admin_reset_link.html", context)

    @admin.action(description="Forget failed sign-ins of selected people")
    def forget_failures(self, request: HttpRequest, people: QuerySet[Person]) -> None:
        for person in people:
            forget_failures(person.sign_in_name)
        messages.success(request, "Failed sign-ins are forgotten.")


@admin.register(Cohort)
class CohortAdmin(admin.ModelAdmin):  # type: ignore[type-arg]
    list_display = ["name", "learners_now", "joining_code", "started_at"]
    list_filter = ["instructors"]
    search_fields = ["name"]
    fields = ["name", "instructors", "joining_code", "started_at"]
    readonly_fields = ["joining_code"]
    autocomplete_fields = ["instructors"]
    inlines = [PlaceInline]
    actions = ["renew_codes"]
    view_on_site = False  # a cohort's own page is for those who teach it

    def response_action(
        self, request: HttpRequest, *args: Any, **options: Any
    ) -> HttpResponse | None:
        refuse_odd_rows(request)
        return super().response_action(request, *args, **options)

    def has_delete_permission(self, request: HttpRequest, obj: object = None) -> bool:
        """Nobody here: a cohort is archived by who teaches it, and goes on its day."""
        return False

    def get_queryset(self, request: HttpRequest) -> QuerySet[Cohort]:
        return Cohort.objects.with_sizes()

    @admin.display(description="learners", ordering="size")
    def learners_now(self, cohort: Cohort) -> int:
        return cohort.size  # type: ignore[attr-defined, no-any-return]

    @admin.display(ordering="join_code")
    def joining_code(self, cohort: Cohort) -> str:
        return cohort.spoken_code if cohort.pk else "made when the cohort is saved"

    @admin.action(description="Renew the joining codes of selected cohorts")
    def renew_codes(self, request: HttpRequest, cohorts: QuerySet[Cohort]) -> None:
        for cohort in cohorts:
            renew_code(cohort)
        messages.success(request, "The old joining codes no longer work.")
