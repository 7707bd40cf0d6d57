from django.urls import path

from exercises.record import views

urlpatterns = [
    # /record/…
    path("record/", views.record, name="record"),
]
