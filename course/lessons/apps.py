from typing import Any

from django.apps import AppConfig
from django.utils.autoreload import BaseReloader, autoreload_started


class LessonsConfig(AppConfig):
    name = "course.lessons"
    verbose_name = "Lessons"

    def ready(self) -> None:
        from course.lessons import checks  # noqa: F401  registers itself

        autoreload_started.connect(watch_content)


def watch_content(sender: BaseReloader, **kwargs: Any) -> None:
    """While developing, a changed lesson restarts the server, as changed code does."""
    from course.lessons.shelf import CONTENT

    sender.watch_dir(CONTENT, "*.md")
    sender.watch_dir(CONTENT, "*.toml")
