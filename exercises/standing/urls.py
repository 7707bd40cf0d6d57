from django.urls import path

from exercises.standing import views

urlpatterns = [
    # /record/…
    path("record/", views.record, name="record"),
    path("record/<str:key>/", views.attempt, name="attempt"),
]
