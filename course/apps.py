from django.apps import AppConfig


class CourseConfig(AppConfig):
    name = "course"
    verbose_name = "Course"

    def ready(self) -> None:
        from course import checks  # noqa: F401  registers itself
