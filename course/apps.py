from django.apps import AppConfig
from django.db.backends.signals import connection_created


class CourseConfig(AppConfig):
    name = "course"
    verbose_name = "Course"

    def ready(self) -> None:
        from course import checks  # noqa: F401  registers itself
        from course.data_dir import close_database, close_to_others

        connection_created.connect(close_database, dispatch_uid="course.data_dir.close_database")
        close_to_others()
