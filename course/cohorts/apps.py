from django.apps import AppConfig


class CohortsConfig(AppConfig):
    name = "course.cohorts"
    verbose_name = "People and cohorts"
