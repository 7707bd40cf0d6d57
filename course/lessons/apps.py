from django.apps import AppConfig


class LessonsConfig(AppConfig):
    name = "course.lessons"
    verbose_name = "Lessons"
