"""People on the administrators' pages: deleted and renamed as everywhere else."""

from collections.abc import Iterable
from typing import Any

from django.contrib import admin
from django.db import transaction
from django.db.models import QuerySet
from django.http import HttpRequest, HttpResponse

from course.cohorts.admin import PersonAdmin
from course.cohorts.models import Person
from exercises.own_data.deletion import delete_learner, refusals_of
from exercises.own_data.renaming import tell_of_rename

admin.site.unregister(Person)


@admin.register(Person)
class PeopleAdmin(PersonAdmin):
    """People. Who can't be deleted is not offered for it."""

    delete_confirmation_template = "own_data/admin_person.html"
    delete_selected_confirmation_template = "own_data/admin_people.html"

    def has_delete_permission(self, request: HttpRequest, obj: Any = None) -> bool:
        allowed = super().has_delete_permission(request, obj)
        return allowed and (obj is None or not refusals_of([obj]))

    def render_change_form(
        self, request: HttpRequest, context: dict[str, Any], *args: Any, **options: Any
    ) -> HttpResponse:
        changed = [context["original"]] if context.get("original") else []
        told = {"kept_because": " ".join(refusals_of(changed).values())}
        return super().render_change_form(request, context | told, *args, **options)

    def get_deleted_objects(
        self, objs: Iterable[Person], request: HttpRequest
    ) -> tuple[list[str], dict[str, int], set[str], list[str]]:
        """In the words of the pages: whom, how many, and who can't be, with the reason."""
        people = list(objs)
        kept = [f"{person}: {reason}" for person, reason in refusals_of(people).items()]
        return [str(person) for person in people], {"people": len(people)}, set(), kept

    def save_model(self, request: HttpRequest, obj: Person, form: Any, change: bool) -> None:
        super().save_model(request, obj, form, change)
        if change and isinstance(request.user, Person):
            tell_of_rename(obj, form.initial["name"], by=request.user)

    def delete_model(self, request: HttpRequest, obj: Person) -> None:
        delete_learner(obj)

    def delete_queryset(self, request: HttpRequest, queryset: QuerySet[Person]) -> None:
        with transaction.atomic():
            for person in queryset:
                delete_learner(person)
