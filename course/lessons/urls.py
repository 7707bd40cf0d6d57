from django.urls import path

from course.lessons.views import lessons, reading, shown

# /lessons/…
urlpatterns = [
    path("lessons/", lessons.lessons, name="lessons"),
    path("lessons/shown/<slug:name>/", shown.lesson_shown, name="lesson-shown"),
    path("lessons/<slug:slug>/", lessons.lesson, name="lesson"),
    path("lessons/<slug:slug>/checklist/", lessons.checklist, name="lesson-checklist"),
    path("lessons/<slug:slug>/reached/", reading.lesson_reached, name="lesson-reached"),
    path("lessons/<slug:slug>/read/", reading.lesson_read, name="lesson-read"),
    path("glossary/", lessons.glossary, name="glossary"),
]
