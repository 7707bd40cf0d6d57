"""A picture that was sent as an answer."""

from django.db import models

from course.append_only import AppendOnly, AppendOnlyQuerySet
from exercises.models.attempt import Attempt

SMALL = 240  # pixels a side, in lists


class Upload(AppendOnly):
    """A picture that came with an attempt. Its file is kept under `name`: see `uploads`.

    `width` and `height` are in pixels, `size` in bytes.
    """

    attempt = models.OneToOneField(Attempt, models.CASCADE, related_name="upload")
    name = models.CharField(max_length=32, unique=True)
    width = models.PositiveSmallIntegerField()
    height = models.PositiveSmallIntegerField()
    size = models.PositiveIntegerField(help_text="in bytes")

    objects: models.Manager["Upload"] = AppendOnlyQuerySet["Upload"].as_manager()

    class Meta:
        verbose_name = "picture sent"
        verbose_name_plural = "pictures sent"

    def __str__(self) -> str:
        return f"picture of {self.attempt}"

    @property
    def small_size(self) -> tuple[int, int]:
        """Its width and height in lists, in pixels."""
        longest = max(self.width, self.height, SMALL)
        return self.width * SMALL // longest or 1, self.height * SMALL // longest or 1
