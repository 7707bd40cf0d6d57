"""People and the cohorts they are in."""

import secrets
from datetime import date, timedelta
from typing import Any, ClassVar, Self

from django.contrib.auth.base_user import AbstractBaseUser, BaseUserManager
from django.contrib.auth.models import PermissionsMixin
from django.core.validators import RegexValidator
from django.db import models
from django.urls import reverse
from django.utils import timezone

from course.cohorts.bench_changes import BenchChange
from course.cohorts.benches import Bench
from course.cohorts.link_requests import LinkAgreement, LinkRequest
from course.cohorts.notices import Notice
from course.cohorts.roster.upload import RosterUpload
from course.cohorts.visible import refuse_invisible

__all__ = [
    "Bench",
    "BenchChange",
    "Cohort",
    "LinkAgreement",
    "LinkRequest",
    "Membership",
    "Notice",
    "Person",
    "ResetLink",
    "RosterUpload",
    "Tries",
]

# No vowels, and nothing that is read wrongly off a whiteboard: 0 O 1 I L.
CODE_LETTERS = "BCDFGHJKMNPQRSTVWXYZ23456789"


CODE_LENGTH = 8


def new_join_code() -> str:
    return "".join(secrets.choice(CODE_LETTERS) for _ in range(CODE_LENGTH))


class PersonManager(BaseUserManager["Person"]):
    def create_user(
        self, sign_in_name: str, password: str | None = None, **fields: Any
    ) -> "Person":
        person = self.model(sign_in_name=sign_in_name, **fields)
        person.set_password(password)
        person.save(using=self._db)
        return person

    def create_superuser(self, sign_in_name: str, password: str, **fields: Any) -> "Person":
        return self.create_user(sign_in_name, password, role=Person.Role.ADMINISTRATOR, **fields)

    def get_by_natural_key(self, username: str | None) -> "Person":
        return self.get(sign_in_name=self.model.normalize_username(username or ""))

    def learning_in(self, cohort: "Cohort") -> "models.QuerySet[Person]":
        """The cohort's learners; somebody who has become an instructor is one no more."""
        return self.filter(memberships__cohort=cohort, role=Person.Role.LEARNER)


class Person(AbstractBaseUser, PermissionsMixin):
    """Somebody who signs in: a learner, an instructor or an administrator."""

    class Role(models.TextChoices):
        LEARNER = "learner", "Learner"
        INSTRUCTOR = "instructor", "Instructor"
        ADMINISTRATOR = "administrator", "Administrator"

    sign_in_name = models.CharField(
        "sign-in name",
        max_length=150,
        unique=True,
        validators=[
            RegexValidator(
                r"^[\w.@-]+\Z",
                "Use letters, figures and . _ - @ only, without spaces.",
            ),
            refuse_invisible,
        ],
        error_messages={"unique": "Someone already signs in with this name. Choose another."},
    )
    name = models.CharField(max_length=120, validators=[refuse_invisible])
    email = models.EmailField("e-mail", blank=True)
    role = models.CharField(max_length=20, choices=Role, default=Role.LEARNER)
    is_active = models.BooleanField(
        "open", default=True, help_text="A closed account can’t be signed in to."
    )
    # Deleted on their word; the row stays for what others answer for, and says nothing.
    is_deleted = models.BooleanField("deleted", default=False, editable=False)
    joined_at = models.DateTimeField(default=timezone.now)
    in_words = models.BooleanField("describe pictures and sounds in words", default=False)

    objects = PersonManager()

    USERNAME_FIELD = "sign_in_name"
    EMAIL_FIELD = "email"
    REQUIRED_FIELDS: ClassVar[list[str]] = ["name"]

    class Meta:
        verbose_name_plural = "people"
        ordering = ["name", "pk"]

    def __str__(self) -> str:
        return self.name

    def save(self, *args: Any, **kwargs: Any) -> None:
        # The admin site asks for these two; the role decides them, nothing else does.
        self.is_superuser = self.is_administrator
        self.sign_in_name = self.normalize_username(self.sign_in_name)
        super().save(*args, **kwargs)

    @classmethod
    def normalize_username(cls, username: str) -> str:
        """Sign-in names are told apart without regard to capitals or outer space."""
        return super().normalize_username(username).strip().lower()

    @property
    def is_staff(self) -> bool:
        return self.is_administrator

    @property
    def is_administrator(self) -> bool:
        return self.role == self.Role.ADMINISTRATOR

    @property
    def is_instructor(self) -> bool:
        return self.role == self.Role.INSTRUCTOR

    @property
    def is_learner(self) -> bool:
        return self.role == self.Role.LEARNER

    def get_full_name(self) -> str:
        return self.name

    def get_short_name(self) -> str:
        return self.name


class CohortQuerySet(models.QuerySet["Cohort"]):
    def taught_by(self, person: Person) -> Self:
        """The cohorts whose people this person may see."""
        return self.filter(instructors=person) if person.is_instructor else self.none()

    def current(self) -> Self:
        """Those that are not archived."""
        return self.filter(archived_at=None)

    def archived(self) -> Self:
        return self.exclude(archived_at=None)

    def locked(self) -> "list[Cohort]":
        """All of them, locked in one order: two who lock some never wait for each other."""
        return list(self.select_for_update(of=("self",)).order_by("pk"))

    def with_sizes(self) -> Self:
        """Each with `size`, the number of its learners."""
        learners = models.Q(learners__role=Person.Role.LEARNER)
        return self.annotate(size=models.Count("learners", filter=learners, distinct=True))


class Cohort(models.Model):
    """A group that learns together, with the instructors who look after it."""

    name = models.CharField(max_length=120, validators=[refuse_invisible])
    join_code = models.CharField(max_length=12, unique=True, default=new_join_code)
    instructors = models.ManyToManyField(
        Person, related_name="taught_cohorts", limit_choices_to={"role": Person.Role.INSTRUCTOR}
    )
    learners = models.ManyToManyField(Person, through="Membership", related_name="cohorts")
    bench = models.ForeignKey(Bench, models.SET_NULL, null=True, blank=True, related_name="cohorts")
    started_at = models.DateTimeField(default=timezone.now)
    join_code_expires_at = models.DateTimeField(null=True, blank=True)
    archived_at = models.DateTimeField(null=True, blank=True)
    remove_on = models.DateField(null=True, blank=True)

    objects = CohortQuerySet.as_manager()

    class Meta:
        ordering = ["name", "pk"]

    def __str__(self) -> str:
        return self.name

    def get_absolute_url(self) -> str:
        return reverse("cohort", args=[self.pk])

    @property
    def spoken_code(self) -> str:
        """The joining code as it is read out and written on a board: in two halves."""
        half = CODE_LENGTH // 2
        return f"{self.join_code[:half]}-{self.join_code[half:]}"

    @property
    def is_archived(self) -> bool:
        return self.archived_at is not None

    @property
    def code_last_day(self) -> date | None:
        """The last day on which the joining code works, where the workshop is."""
        ends = self.join_code_expires_at
        return timezone.localdate(ends - timedelta(seconds=1)) if ends else None

    @property
    def code_has_ended(self) -> bool:
        ends = self.join_code_expires_at
        return ends is not None and ends <= timezone.now()


class Membership(models.Model):
    """A learner's place in a cohort."""

    cohort = models.ForeignKey(Cohort, models.CASCADE, related_name="memberships")
    person = models.ForeignKey(
        Person,
        models.CASCADE,
        related_name="memberships",
        limit_choices_to={"role": Person.Role.LEARNER},
    )
    joined_at = models.DateTimeField(default=timezone.now)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["cohort", "person"], name="one_place_in_a_cohort"),
        ]

    def __str__(self) -> str:
        # Without the person: the log of the administrators' pages keeps this for good.
        return f"a place in {self.cohort}"


class ResetLink(models.Model):
    """That a link for a new password was made, by whom and for whom; never the link itself."""

    made_by = models.ForeignKey(Person, models.SET_NULL, null=True, related_name="reset_links_made")
    for_person = models.ForeignKey(Person, models.CASCADE, related_name="reset_links")
    at = models.DateTimeField(default=timezone.now)

    class Meta:
        ordering = ["-pk"]

    def __str__(self) -> str:
        return f"for {self.for_person} at {self.at:%F %R}"


class Tries(models.Model):
    """When all that was tried by one key will have worn off; see `throttle`."""

    key = models.CharField(max_length=64, unique=True)
    about = models.CharField(max_length=64, blank=True, db_index=True)
    worn_off_at = models.DateTimeField(db_index=True)  # the index is for throttle.purge

    class Meta:
        verbose_name_plural = "tries"

    def __str__(self) -> str:
        return f"until {self.worn_off_at:%F %T}"
