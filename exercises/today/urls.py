from django.urls import path

from exercises.today import views

urlpatterns = [
    # /
    path("", views.today, name="today"),
]
