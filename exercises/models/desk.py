"""Drills that instructors write, and every revision of them."""

from typing import Any, Self

from django.conf import settings
from django.db import models
from django.urls import reverse
from django.utils import timezone

from course.append_only import AppendOnly
from course.cohorts.models import Cohort
from exercises.drills.kind import Kind
from exercises.drills.own import FORMS, own_kind
from exercises.drills.register import KINDS, SET_ONLY, kind
from exercises.mastery.skills import SKILLS
from exercises.models.tokens import new_token

PREFIX = "own-"


def form_choices() -> list[tuple[str, str]]:
    """A callable, so that a new form needs no migration."""
    return [(form.slug, form.title) for form in FORMS.values()]


class OwnDrillQuerySet(models.QuerySet["OwnDrill"]):
    def live(self) -> Self:
        """Those that are asked: published, and not retired."""
        return self.filter(retired_at=None).exclude(published=None)

    def for_learner(self, person: Any) -> Self:
        return self.live().filter(cohorts__in=person.cohorts.filter(archived_at=None)).distinct()

    def at_desk_of(self, person: Any) -> Self:
        """Those that an instructor wrote, and those published to cohorts that they teach."""
        taught = Cohort.objects.taught_by(person)
        return self.filter(models.Q(made_by=person) | models.Q(cohorts__in=taught)).distinct()

    def with_latest(self) -> Self:
        """Each with what its page and the lists show."""
        return self.select_related("published", "made_by").prefetch_related("cohorts", "revisions")


class OwnDrill(models.Model):
    """A drill that an instructor wrote. What it asks stands in its revisions.

    Learners of its `cohorts` are asked the `published` revision until it is retired.
    """

    made_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, models.RESTRICT, related_name="own_drills"
    )
    form = models.CharField(max_length=20, choices=form_choices)
    made_at = models.DateTimeField(default=timezone.now)
    published = models.ForeignKey(
        "OwnRevision", models.RESTRICT, null=True, blank=True, related_name="+"
    )
    published_at = models.DateTimeField(null=True, blank=True)
    cohorts = models.ManyToManyField(Cohort, blank=True, related_name="own_drills")
    retired_at = models.DateTimeField(null=True, blank=True)
    key = models.CharField("idempotency key", max_length=32, unique=True, default=new_token)

    objects = OwnDrillQuerySet.as_manager()

    class Meta:
        verbose_name = "drill of an instructor"
        verbose_name_plural = "drills of instructors"

    def __str__(self) -> str:
        return f"{self.slug}, by {self.made_by}"

    def get_absolute_url(self) -> str:
        return reverse("own-drill", args=[self.pk])

    @property
    def slug(self) -> str:
        return f"{PREFIX}{self.pk}"

    @property
    def form_title(self) -> str:
        return FORMS[self.form].title

    @property
    def latest(self) -> "OwnRevision":
        """The last revision; each drill is made with one."""
        return max(self.revisions.all(), key=lambda each: each.number)

    @property
    def kind(self) -> Kind:
        """What is asked: the published revision; the last one of a drill never published."""
        return (self.published or self.latest).kind_of(self)


class OwnRevision(AppendOnly):
    """What an instructor wrote, as it was at one time. Rows are added, never changed."""

    drill = models.ForeignKey(OwnDrill, models.CASCADE, related_name="revisions")
    number = models.PositiveSmallIntegerField()
    title = models.CharField(max_length=120)
    skill = models.CharField(max_length=50)
    spec = models.JSONField()
    by = models.ForeignKey(settings.AUTH_USER_MODEL, models.RESTRICT, related_name="+")
    at = models.DateTimeField(default=timezone.now)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["drill", "number"], name="one_revision_a_number"),
        ]

    def __str__(self) -> str:
        return f"{self.title}, revision {self.number}"

    @property
    def skill_title(self) -> str:
        return SKILLS[self.skill].title

    @property
    def is_asked(self) -> bool:
        """Whether it is the revision that is asked now."""
        return self.drill.published_id == self.pk and self.drill.retired_at is None

    @property
    def kind(self) -> Kind:
        return self.kind_of(self.drill)

    def kind_of(self, drill: OwnDrill) -> Kind:
        return own_kind(
            slug=drill.slug,
            form=drill.form,
            title=self.title,
            skill=self.skill,
            revision=self.number,
            spec=self.spec,
            own=self.pk,
        )


def pk_of(slug: str) -> int:
    """The drill that a slug names; 0, which none has, where it names none."""
    number = slug.removeprefix(PREFIX)
    return int(number) if number.isascii() and number.isdigit() and len(number) < 19 else 0


def kind_now(slug: str) -> Kind | None:
    """What is asked under a slug now; None where its drill is retired, or there is none."""
    if slug in KINDS or slug in SET_ONLY:
        return kind(slug)
    found = OwnDrill.objects.live().select_related("published").filter(pk=pk_of(slug)).first()
    return found.kind if found else None
