from django.urls import path

from course.lessons import views

# /lessons/…
urlpatterns = [
    path("lessons/", views.lessons, name="lessons"),
    path("lessons/<slug:slug>/", views.lesson, name="lesson"),
    path("glossary/", views.glossary, name="glossary"),
]
